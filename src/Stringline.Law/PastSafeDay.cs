using Stringline.Law.Reasoning;

namespace Stringline.Law;

/// <summary>
/// Between the day to plan on and the last day itself, which is then a weekend or a holiday, nothing is simply open: offices are closed,
/// and whether a roll helps is an argument. One place for every deadline.
/// </summary>
internal static class PastSafeDay
{
    /// <summary>Puts in doubt what is open, or has not begun, though its day to act by is past.</summary>
    [Rule("Civ. Code § 10", Sure = Sure.OurReading)]
    internal static void Apply(List<Finding> findings, LocalDate asOf)
    {
        for (var i = 0; i < findings.Count; i++)
        {
            if (findings[i] is { IsDeadline: true, Standing: Standing.Open or Standing.NotYet, ActBy: { } actBy } finding && actBy < asOf)
                findings[i] = finding with { Standing = Standing.InDoubt, IsOnlyPastSafeDay = true, Why = [Past(finding, actBy), .. finding.Why] };
        }
    }

    private static Reason Past(Finding finding, LocalDate actBy) => Reason.Of("Civ. Code § 10",
        $"The day to plan on, {actBy}, is past. The last day itself, {finding.Readings[0].Day}, falls on a day on which offices are closed or has passed: act today in any way that is still open, and ask a lawyer whether the time rolls to the next open day.");
}
