using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>
/// The releases and reductions of a file, put in order once, so that none is looked for by going through all. One that names no notice is
/// of the only one given by then; of several it may be any.
/// </summary>
internal sealed class ReleasesByNotice
{
    private static readonly ReleasedSoFar None = new(Verdict.No, 0m);

    private readonly Dictionary<string, ReleasedSoFar> named = new(StringComparer.Ordinal);

    // Those that name no notice, the latest first, with what each and all later ones release; first those of an unknown day.
    private readonly List<(LocalDate? Day, ReleasedSoFar So)> unnamed = [];

    /// <summary>Puts the releases in order.</summary>
    public ReleasesByNotice(FactsAsOf facts)
    {
        var papers = facts.All<StopPaymentGiven>();
        var so = None;
        foreach (var release in facts.All<StopPaymentReleased>().OrderByDescending(static r => r.On.Latest ?? LocalDate.MaxIsoValue))
        {
            if (release.Of is { } id)
            {
                named[id] = named.GetValueOrDefault(id, None).And(release, Verdict.Yes);
                continue;
            }

            so = so.And(release, GivenBy(papers, release.On.Latest) == 1 ? Verdict.Yes : Verdict.Open);
            unnamed.Add((release.On.Latest, so));
        }
    }

    /// <summary>Whether a notice was released whole.</summary>
    public Verdict IsReleased(StopPaymentGiven paper)
    {
        var (byName, byDay) = Of(paper);
        return byName.Whole == Verdict.Yes || byDay.Whole == Verdict.Yes ? Verdict.Yes : byDay.Whole;
    }

    /// <summary>By how much a notice was reduced, dollars and cents.</summary>
    public decimal ReducedBy(StopPaymentGiven paper)
    {
        var (byName, byDay) = Of(paper);
        return byName.Reduced + byDay.Reduced;
    }

    private (ReleasedSoFar ByName, ReleasedSoFar ByDay) Of(StopPaymentGiven paper)
    {
        var after = Bisection.First(unnamed.Count, place => paper.On.Earliest > unnamed[place].Day);
        return (paper.Id is { } id ? named.GetValueOrDefault(id, None) : None, after == 0 ? None : unnamed[after - 1].So);
    }

    // The notices stand in the order of their earliest days, those of an unknown day before all.
    private static int GivenBy(IReadOnlyList<StopPaymentGiven> papers, LocalDate? day) =>
        Bisection.First(papers.Count, place => papers[place].On.Earliest > day);

    private sealed record ReleasedSoFar(Verdict Whole, decimal Reduced)
    {
        public ReleasedSoFar And(StopPaymentReleased release, Verdict sure) => release.Amount is { } amount
            ? this with { Reduced = Reduced + amount }
            : this with { Whole = Whole == Verdict.Yes || sure == Verdict.Yes ? Verdict.Yes : Verdict.Open };
    }
}
