using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Time;

namespace Stringline.Law.ClaimOfLien;

/// <summary>
/// The first and the last day of the band of the last day to record, were one reading of completion ruled out or its day known. Every reading gives its
/// own days, so they are worked out once, and the ends without one of them are those of all before and all after it.
/// </summary>
internal sealed class BandEnds
{
    private readonly IReadOnlyList<CompletionReading> open;
    private readonly Func<CompletionReading, Ends> daysOf;

    // Of the first n readings, and of all from the n-th on.
    private readonly Ends?[] before;
    private readonly Ends?[] after;

    private BandEnds(IReadOnlyList<CompletionReading> open, Func<CompletionReading, Ends> daysOf)
    {
        this.open = open;
        this.daysOf = daysOf;
        Ends[] each = [.. open.Select(daysOf)];
        before = new Ends?[each.Length + 1];
        after = new Ends?[each.Length + 1];
        for (var i = 0; i < each.Length; i++)
            before[i + 1] = Ends.Of(before[i], each[i]);
        for (var i = each.Length - 1; i >= 0; i--)
            after[i] = Ends.Of(after[i + 1], each[i]);
    }

    /// <summary>The ends; null where the days of one reading hang on those of another, as of a work of several structures, or where there is but one.</summary>
    public static BandEnds? Of(FactsAsOf facts, CompletionReadings completion, IReadOnlyList<OwnersNotice> notices, OpenDays calendar)
    {
        if (completion.Open.Count < 2 || completion.Open.Any(static r => r.Structure is not null))
            return null;
        return new BandEnds(completion.Open, reading =>
        {
            var days = LastDay.WithoutReasons(facts, completion with { Open = [reading] }, notices, calendar).Readings;
            return new Ends(days[0].Day, days[^1].Day);
        });
    }

    /// <summary>The ends were the reading at a place ruled out.</summary>
    public Ends Without(int place) => Ends.Of(before[place], after[place + 1])!.Value;

    /// <summary>The ends were the reading at a place true on a day.</summary>
    public Ends On(int place, LocalDate day) => Ends.Of(Without(place), daysOf(open[place] with { On = new Reasoning.Days(day, day) }))!.Value;

    /// <summary>The first and the last day of a band.</summary>
    internal readonly record struct Ends(LocalDate Earliest, LocalDate Latest)
    {
        /// <summary>The ends of both.</summary>
        public static Ends? Of(Ends? one, Ends? other) => (one, other) switch
        {
            ({ } a, { } b) => new Ends(LocalDate.Min(a.Earliest, b.Earliest), LocalDate.Max(a.Latest, b.Latest)),
            _ => one ?? other,
        };
    }
}
