namespace Stringline.Law.Counting;

/// <summary>A rule that closes a weekday because a holiday falls on a weekend.</summary>
/// <param name="FallsOn">The weekday on which the holiday falls: Saturday or Sunday.</param>
/// <param name="MovesBy">Days from the holiday to the closed day: 1 is the Monday after a Sunday, -1 the Friday before a Saturday.</param>
/// <param name="List">The one list on which the closed day stands. The rule reaches only holidays on that list.</param>
/// <param name="Only">Ids of the holidays it reaches; null where it reaches every holiday on the list.</param>
/// <param name="Section">The section or rule.</param>
/// <param name="Sure">How well it is known.</param>
/// <param name="Note">What is from memory or open; empty where nothing is.</param>
public sealed record ObservanceRule(
    IsoDayOfWeek FallsOn, int MovesBy, HolidayLists List, IReadOnlyList<string>? Only, string Section, Sure Sure, string Note = "")
{
    /// <summary>Whether a holiday of that version, falling on that day, is also kept on another day by this rule.</summary>
    public bool Moves(HolidayRule holiday, LocalDate day) =>
        day.DayOfWeek == FallsOn && holiday.Lists.HasFlag(List) && (Only is null || Only.Contains(holiday.Id));
}
