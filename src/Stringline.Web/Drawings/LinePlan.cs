using Stringline.Web.Html;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Drawings;

/// <summary>A peg on the cord: one entry, or several that stand too close to be told apart.</summary>
/// <param name="Entries">The entries, earliest first; at least one.</param>
/// <param name="First">The first day of the first.</param>
/// <param name="Last">The last day on which the last of them can have happened.</param>
/// <param name="InDoubt">Whether the day of any is not known exactly.</param>
internal sealed record Peg(IReadOnlyList<Entry> Entries, LocalDate First, LocalDate Last, bool InDoubt);

/// <summary>A day of the law below the cord, or the band in which it lies.</summary>
/// <param name="Finding">Whose it is.</param>
/// <param name="From">The earliest day.</param>
/// <param name="To">The latest day; null where no end is known.</param>
internal sealed record Lane(Finding Finding, LocalDate From, LocalDate? To);

/// <summary>What is drawn of a job: which days, which pegs, which bands. Nothing of it is law; days come from the assessment.</summary>
internal sealed record LinePlan(long Job, LocalDate AsOf, bool IsKnown, LocalDate Begin, LocalDate End, LocalDate From, LocalDate To,
    IReadOnlyList<Peg> Pegs, IReadOnlyList<Lane> Lanes)
{
    private const int LongestView = 365 * 12;
    private const int PegsAcross = 46;
    private const int MostLanes = 9;

    /// <summary>How many days are shown, both ends included.</summary>
    public int Span => Period.DaysBetween(From, To) + 1;

    /// <summary>Plans the line.</summary>
    /// <param name="job">The job.</param>
    /// <param name="from">The first day to show; null for the beginning.</param>
    /// <param name="to">The last day to show; null for the last day that matters.</param>
    public static LinePlan Of(OpenJob job, LocalDate? from, LocalDate? to)
    {
        var entries = new FactsAsOf(job.Facts, job.AsOf).Known.Where(entry => entry.On.Earliest is not null).ToList();
        var lanes = LanesOf(job.Assessment.Findings);
        var began = entries.Select(entry => entry.On.Earliest!.Value).Append(job.Facts.Contract.On ?? job.AsOf).Append(job.AsOf).Min();
        var last = entries.Select(LastDay).Append(job.AsOf).Max();
        var ends = lanes.Where(lane => lane.From <= last.PlusDays(400)).Select(lane => lane.To is { } end && end <= last.PlusDays(400)
            ? end : lane.From).Append(last).Max();
        var first = from ?? began.PlusDays(-7);
        var through = to ?? ends.PlusDays(14);
        if (through < first.PlusDays(13))
            through = first.PlusDays(13);
        if (through > first.PlusDays(LongestView))
            through = first.PlusDays(LongestView);
        return new LinePlan(
            job.Id, job.AsOf, job.Facts != job.Stored.Job, began, ends, first, through, Group(entries, first, through),
            [.. lanes.Where(lane => lane.From <= through && (lane.To ?? through) >= first).Take(MostLanes)]);
    }

    private static LocalDate LastDay(Entry entry) =>
        entry is Furnished { Until.Latest: { } until } ? until : entry.On.Latest ?? entry.On.Earliest!.Value;

    private static List<Lane> LanesOf(IReadOnlyList<Finding> findings) =>
    [
        .. findings
            .Where(finding => (finding.IsDeadline || finding.Id is "completion.day")
                && finding.Standing is not (Standing.Done or Standing.NotYet or Standing.Kept)
                && !finding.Id.StartsWith("back-plan", StringComparison.Ordinal))
            .Select(finding => finding.Band is { } band ? new Lane(finding, Earlier(band.Earliest.Day, finding.ActBy), band.Latest?.Day)
                : finding.ActBy is { } day ? new Lane(finding, day, day) : null)
            .OfType<Lane>()
            .OrderBy(lane => lane.Finding.ActBy ?? lane.From),
    ];

    private static LocalDate Earlier(LocalDate day, LocalDate? other) => other is { } known && known < day ? known : day;

    // Entries nearer to each other than a peg is wide share one.
    private static List<Peg> Group(List<Entry> entries, LocalDate from, LocalDate to)
    {
        var near = Math.Max(1, Period.DaysBetween(from, to) / PegsAcross);
        var pegs = new List<Peg>();
        var open = new List<Entry>();
        foreach (var entry in entries.Where(entry => LastDay(entry) >= from && entry.On.Earliest <= to).OrderBy(entry => entry.On.Earliest)
            .ThenBy(entry => entry.Index))
        {
            if (open.Count > 0 && Period.DaysBetween(open[0].On.Earliest!.Value, entry.On.Earliest!.Value) >= near)
                Close();
            open.Add(entry);
        }

        Close();
        return pegs;

        void Close()
        {
            if (open.Count == 0)
                return;
            pegs.Add(new Peg([.. open], open[0].On.Earliest!.Value, open.Max(LastDay), open.Exists(entry => entry.On is DayFact.Between)));
            open.Clear();
        }
    }

    /// <summary>What a peg is called: its entry, or how many there are and of what kinds.</summary>
    public static string Words(Peg peg)
    {
        if (peg.Entries is [var only])
            return EntryWords.Kind(only);
        var kinds = peg.Entries.GroupBy(EntryWords.Kind).OrderByDescending(kind => kind.Count()).ToList();
        return kinds.Count == 1
            ? $"{kinds[0].Key} ({peg.Entries.Count})"
            : $"{kinds[0].Key}, and {peg.Entries.Count - kinds[0].Count()} more";
    }

    /// <summary>The address of another view of the same line.</summary>
    public string At(LocalDate from, LocalDate to)
    {
        var query = QueryString.Create("from", LawText.IsoDay(from)).Add("to", LawText.IsoDay(to));
        return $"/job/{Job}{(IsKnown ? query.Add("known", LawText.IsoDay(AsOf)) : query)}#s-line";
    }

    /// <summary>The view in which the whole line is seen.</summary>
    public string Whole => $"/job/{Job}{(IsKnown ? QueryString.Create("known", LawText.IsoDay(AsOf)) : "")}#s-line";
}
