using Stringline.Law.Counting;

namespace Stringline.Comparison.Jobs;

/// <summary>
/// The weekdays that are closed on the State's or the courts' list, 2023 to 2029, for the engines that have no calendar of their
/// own. The list of days is the same for all; moving back past them is each engine's own work.
/// </summary>
public static class ClosedDays
{
    private static readonly int First = Serial.Of(new LocalDate(2023, 1, 1));
    private static readonly int Last = Serial.Of(new LocalDate(2029, 12, 31));

    public static readonly IReadOnlyList<int> Holidays =
        [.. Enumerable.Range(First, Last - First + 1).Where(day => !IsWeekend(day) && !OpenDays.Statutory.IsOpen(Serial.Day(day)))];

    private static readonly bool[] Closed =
        [.. Enumerable.Range(First, Last - First + 1).Select(day => IsWeekend(day) || Holidays.Contains(day))];

    /// <summary>The last open day on or before a day: a table look-up a day, the cheapest way we know.</summary>
    public static int OpenOnOrBefore(int day)
    {
        while (Closed[day - First])
            day--;
        return day;
    }

    // Serial 0 is a Saturday, so serial 1 is a Sunday.
    private static bool IsWeekend(int day) => day % 7 < 2;
}
