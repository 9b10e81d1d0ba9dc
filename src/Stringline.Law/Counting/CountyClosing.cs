namespace Stringline.Law.Counting;

/// <summary>
/// A day on which a county's office is closed for the whole day. For that office's business it counts as a holiday
/// (Code Civ. Proc. § 12b).
/// </summary>
/// <remarks>
/// Counties keep their own calendars: one may close on a Monday near 31 March on which no court closes, and close
/// unforeseen. Days appointed by the Governor or the President (Gov. Code § 6700(a)) are entered here as well.
/// </remarks>
/// <param name="County">The county's name without the word County, such as <c>Yolo</c>.</param>
/// <param name="Day">The closed day.</param>
/// <param name="Why">Why, in words.</param>
/// <param name="Source">Where it was read.</param>
/// <param name="Read">The day on which it was read.</param>
public sealed record CountyClosing(string County, LocalDate Day, string Why, string Source, LocalDate Read)
{
    /// <summary>How well it is known that the office is closed that day.</summary>
    public Sure Sure { get; init; } = Sure.Read;
}
