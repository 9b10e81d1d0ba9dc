using Stringline.Law.Counting;

namespace Stringline.Law.Numbers;

/// <summary>Periods that run from a day in doubt.</summary>
public static class PeriodFromSpan
{
    /// <summary>The last day of a period that runs from a day of the span, by the version of the number that governs that day.</summary>
    public static DaySpan LastDay(this DaySpan from, NumberTable numbers, Number number)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        var fromEarliest = numbers.LastDay(number, from.Earliest);
        if (from.IsExact)
            return new DaySpan(fromEarliest, fromEarliest);
        var fromLatest = numbers.LastDay(number, from.Latest);
        // A later version may be so much shorter that a later day gives an earlier end.
        return new DaySpan(LocalDate.Min(fromEarliest, fromLatest), LocalDate.Max(fromEarliest, fromLatest));
    }
}
