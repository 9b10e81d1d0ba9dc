using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Counting;

namespace Stringline.Law.ClaimOfLien;

/// <summary>
/// The first and the last day of the band of the last day to record, were one reading of completion ruled out or its day known. Every
/// reading gives its own days, so they are worked out once, and the ends without one of them are those of all before and all after it. Of
/// several structures those whose time is over are passed over, unless it is over for all.
/// </summary>
internal sealed class BandEnds
{
    private readonly IReadOnlyList<CompletionReading> open;
    private readonly Func<CompletionReading, Part> partOf;
    private readonly LocalDate asOf;

    // Each reading: its structure's place, and its own among the readings of that structure.
    private readonly (int Structure, int Place)[] places;
    private readonly List<Row> readingsOf = [];
    private readonly Sides<Whole> structures;

    private BandEnds(IReadOnlyList<CompletionReading> open, LocalDate asOf, Func<CompletionReading, Part> partOf)
    {
        (this.open, this.asOf, this.partOf) = (open, asOf, partOf);
        places = new (int, int)[open.Count];
        var known = new Dictionary<string, int>(StringComparer.Ordinal);
        var parts = new List<(bool IsOne, List<Part> Parts)>();
        for (var i = 0; i < open.Count; i++)
        {
            // A name that no structure has.
            var name = open[i].Structure is { } structure ? "of " + structure : "";
            if (!known.TryGetValue(name, out var at))
            {
                known.Add(name, at = parts.Count);
                parts.Add((name.Length > 0, []));
            }

            places[i] = (at, parts[at].Parts.Count);
            parts[at].Parts.Add(partOf(open[i]));
        }

        foreach (var (isOne, ofOne) in parts)
            readingsOf.Add(new Row(isOne, new Sides<Part>(ofOne, Part.Both)));
        structures = new Sides<Whole>([.. readingsOf.Select(row => WholeOf(row.IsStructure, row.Parts.All))], Whole.Both);
    }

    /// <summary>The ends; null where there is but one reading, without which something else may be read.</summary>
    public static BandEnds? Of(FactsAsOf facts, CompletionReadings completion, IReadOnlyList<OwnersNotice> notices, OpenDays calendar)
    {
        if (completion.Open.Count < 2)
            return null;
        return new BandEnds(completion.Open, facts.AsOf, reading =>
        {
            var days = LastDay.WithoutReasons(facts, completion with { Open = [reading] }, notices, calendar).Readings;
            return new Part(new Ends(days[0].Day, days[^1].Day), days.Max(static r => r.Rolled ?? r.Day));
        });
    }

    /// <summary>The ends were the reading at a place ruled out.</summary>
    public Ends Without(int place)
    {
        var (structure, own) = places[place];
        var row = readingsOf[structure];
        return In(structure, row.Parts.Without(own) is { } rest ? WholeOf(row.IsStructure, rest) : null);
    }

    /// <summary>The ends were the reading at a place true on a day.</summary>
    public Ends On(int place, LocalDate day)
    {
        var (structure, own) = places[place];
        var row = readingsOf[structure];
        var then = partOf(open[place] with { On = new DaySpan(day, day) });
        return In(structure, WholeOf(row.IsStructure, row.Parts.Without(own) is { } rest ? Part.Both(rest, then) : then));
    }

    // With another answer for one of the structures, or without it.
    private Ends In(int structure, Whole? instead)
    {
        var whole = (structures.Without(structure), instead) switch
        {
            ({ } a, { } b) => Whole.Both(a, b),
            var (a, b) => a ?? b!,
        };
        return whole.Running ?? whole.All;
    }

    private Whole WholeOf(bool isStructure, Part part) => new(part.Ends, isStructure && asOf > part.Rolled ? null : part.Ends);

    /// <summary>The first and the last day of a band.</summary>
    internal readonly record struct Ends(LocalDate Earliest, LocalDate Latest)
    {
        /// <summary>The ends of both.</summary>
        public static Ends Both(Ends a, Ends b) => new(LocalDate.Min(a.Earliest, b.Earliest), LocalDate.Max(a.Latest, b.Latest));
    }

    // The days of readings of one structure, and the latest to which one of them is rolled.
    private sealed record Part(Ends Ends, LocalDate Rolled)
    {
        public static Part Both(Part a, Part b) => new(Ends.Both(a.Ends, b.Ends), LocalDate.Max(a.Rolled, b.Rolled));
    }

    // The days of all structures, and of those whose time is not over.
    private sealed record Whole(Ends All, Ends? Running)
    {
        public static Whole Both(Whole a, Whole b) =>
            new(Ends.Both(a.All, b.All), (a.Running, b.Running) is ({ } x, { } y) ? Ends.Both(x, y) : a.Running ?? b.Running);
    }

    private sealed record Row(bool IsStructure, Sides<Part> Parts);

    // What a list comes to without one of its items: what all before it and all after it come to.
    private sealed class Sides<T> where T : class
    {
        private readonly T?[] before;
        private readonly T?[] after;
        private readonly Func<T, T, T> both;

        public Sides(List<T> items, Func<T, T, T> both)
        {
            this.both = both;
            before = new T?[items.Count + 1];
            after = new T?[items.Count + 1];
            for (var i = 0; i < items.Count; i++)
                before[i + 1] = Both(before[i], items[i]);
            for (var i = items.Count - 1; i >= 0; i--)
                after[i] = Both(items[i], after[i + 1]);
        }

        public T All => before[^1]!;

        public T? Without(int place) => Both(before[place], after[place + 1]);

        private T? Both(T? a, T? b) => a is null ? b : b is null ? a : both(a, b);
    }
}
