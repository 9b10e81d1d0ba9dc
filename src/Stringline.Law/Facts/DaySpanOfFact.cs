using Stringline.Law.Counting;

namespace Stringline.Law.Facts;

/// <summary>A day fact as the span that is counted with.</summary>
public static class DaySpanOfFact
{
    extension(DaySpan)
    {
        /// <summary>The span of a day fact, or null where the day is unknown.</summary>
        public static DaySpan? Of(DayFact fact) =>
            fact is { Earliest: { } earliest, Latest: { } latest } ? new DaySpan(earliest, latest) : null;
    }
}
