using Stringline.Law.Counting;

namespace Stringline.Law.Completion;

/// <summary>Which days of a doubt show every last day that it allows.</summary>
internal static class CandidateDays
{
    /// <summary>
    /// Days of completion to try. A last day is not monotonic in the day of completion: a notice of completion takes effect only for
    /// some of the days in doubt. The ends of the span and of the part for which it takes effect show every value.
    /// </summary>
    public static LocalDate[] Completions(CompletionReading reading, IReadOnlyList<OwnersNotice> notices)
    {
        if (reading.On.IsExact)
            return Ends(reading.On);
        var days = new WithinRange(reading.On);
        foreach (var notice in notices)
        {
            foreach (var recorded in Ends(notice.Recorded))
            {
                var served = notice.EarliestCompletionCovered(recorded);
                days.Try(served.PlusDays(-1));
                days.Try(served);
                days.Try(recorded);
                days.Try(recorded.PlusDays(1));
            }
        }

        return days.All();
    }

    /// <summary>
    /// Days of completion to try against a day, such as that on which a bond was recorded: the ends, that day and the next.
    /// </summary>
    public static LocalDate[] AroundDay(DaySpan completed, LocalDate? day)
    {
        if (completed.IsExact)
            return Ends(completed);
        var days = new WithinRange(completed);
        if (day is { } around)
        {
            days.Try(around);
            days.Try(around.PlusDays(1));
        }

        return days.All();
    }

    /// <summary>
    /// Days of recording to try. The earliest recording that takes effect may be the day of completion itself, inside the span. The
    /// recordings that take effect lie together, so if both ends do, all do.
    /// </summary>
    public static LocalDate[] Recordings(OwnersNotice notice, LocalDate completed)
    {
        var from = notice.CompletionToServe(completed);
        return from > notice.Recorded.Earliest && from < notice.Recorded.Latest
            ? [notice.Recorded.Earliest, from, notice.Recorded.Latest]
            : Ends(notice.Recorded);
    }

    /// <summary>Both ends of a doubt; one day where there is none.</summary>
    public static LocalDate[] Ends(DaySpan days) => days.IsExact ? [days.Earliest] : [days.Earliest, days.Latest];

    // Both ends of a doubt, and of other days those that lie between them, each once.
    private sealed class WithinRange
    {
        private readonly LocalDate first;
        private readonly int span;
        private readonly List<int> afterFirst;

        public WithinRange(DaySpan doubt)
        {
            first = doubt.Earliest;
            span = NodaTime.Period.DaysBetween(doubt.Earliest, doubt.Latest);
            afterFirst = [0, span];
        }

        public void Try(LocalDate day)
        {
            var offset = NodaTime.Period.DaysBetween(first, day);
            if (offset > 0 && offset < span && !afterFirst.Contains(offset))
                afterFirst.Add(offset);
        }

        public LocalDate[] All()
        {
            var days = new LocalDate[afterFirst.Count];
            for (var i = 0; i < days.Length; i++)
                days[i] = first.PlusDays(afterFirst[i]);
            return days;
        }
    }
}
