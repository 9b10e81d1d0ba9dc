namespace Stringline.Law.Facts;

/// <summary>
/// The day on which something happened, as well as it is known: exactly, within a span, or not at all.
/// A California local date; never a moment in a time zone.
/// </summary>
/// <remarks>The three cases are the only ones; a switch over them is exhaustive.</remarks>
public abstract record DayFact
{
    private DayFact()
    {
    }

    /// <summary>The first day it can have been, or null when the day is unknown.</summary>
    public abstract LocalDate? Earliest { get; }

    /// <summary>The last day it can have been, or null when the day is unknown.</summary>
    public abstract LocalDate? Latest { get; }

    /// <summary>A known day.</summary>
    /// <param name="Day">The day.</param>
    public sealed record Exact(LocalDate Day) : DayFact
    {
        /// <inheritdoc/>
        public override LocalDate? Earliest => Day;

        /// <inheritdoc/>
        public override LocalDate? Latest => Day;
    }

    /// <summary>A day in doubt between two days, both included.</summary>
    public sealed record Between : DayFact
    {
        /// <summary>Makes the span.</summary>
        /// <param name="first">The first day it can have been.</param>
        /// <param name="last">The last day it can have been; not before <paramref name="first"/>.</param>
        /// <exception cref="ArgumentException">The last day is before the first.</exception>
        public Between(LocalDate first, LocalDate last)
        {
            if (last < first)
                throw new ArgumentException("The last day is before the first.", nameof(last));
            First = first;
            Last = last;
        }

        /// <summary>The first day it can have been.</summary>
        public LocalDate First { get; }

        /// <summary>The last day it can have been.</summary>
        public LocalDate Last { get; }

        /// <inheritdoc/>
        public override LocalDate? Earliest => First;

        /// <inheritdoc/>
        public override LocalDate? Latest => Last;
    }

    /// <summary>It happened, but nobody knows when.</summary>
    public sealed record Unknown : DayFact
    {
        /// <inheritdoc/>
        public override LocalDate? Earliest => null;

        /// <inheritdoc/>
        public override LocalDate? Latest => null;
    }

    /// <summary>A known day.</summary>
    public static DayFact On(LocalDate day) => new Exact(day);
}
