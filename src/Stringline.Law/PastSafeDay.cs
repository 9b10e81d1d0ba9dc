using Stringline.Law.Reasoning;

namespace Stringline.Law;

/// <summary>
/// Between the day to plan on and the last day itself, which is then a weekend or a holiday, nothing is simply open: offices are closed,
/// and whether a roll helps is an argument. One place for every deadline.
/// </summary>
internal static class PastSafeDay
{
    /// <summary>Why a deadline that is open, or has not begun, is in doubt: its day to act by is past. Null where it is not.</summary>
    [Rule("Civ. Code § 10", Sure = Sure.OurReading)]
    internal static Reason? WhyInDoubt(in Deadline deadline, LocalDate asOf)
    {
        if (deadline is not { Standing: Standing.Open or Standing.NotYet, ActBy: { } actBy } || actBy >= asOf)
            return null;
        var last = deadline.Readings[0].Day;
        return Reason.Of("Civ. Code § 10",
            $"The day to plan on, {actBy}, is past. The last day itself, {last}, falls on a day on which offices are closed or has passed: "
                + $"act today in any way that is still open, and ask a lawyer whether the time rolls to the next open day.");
    }
}
