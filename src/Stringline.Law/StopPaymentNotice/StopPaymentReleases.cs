using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>The claimant's own release or reduction of a stop payment notice (Civ. Code § 8128). It bars no later notice that is timely.</summary>
public static class StopPaymentReleases
{
    /// <summary>Whether a notice was released whole.</summary>
    [Rule("Civ. Code § 8128")]
    internal static Verdict IsReleased(FactsAsOf facts, StopPaymentGiven paper)
    {
        var verdict = Verdict.No;
        foreach (var release in facts.All<StopPaymentReleased>())
        {
            if (release.Amount is not null)
                continue;
            switch (IsOf(facts, release, paper))
            {
                case Verdict.Yes:
                    return Verdict.Yes;
                case Verdict.Open:
                    verdict = Verdict.Open;
                    break;
                default:
                    break;
            }
        }

        return verdict;
    }

    /// <summary>By how much a notice was reduced, dollars and cents.</summary>
    [Rule("Civ. Code § 8128")]
    public static decimal ReducedBy(FactsAsOf facts, StopPaymentGiven paper)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(paper);
        var sum = 0m;
        foreach (var release in facts.All<StopPaymentReleased>())
        {
            if (release.Amount is { } amount && IsOf(facts, release, paper) != Verdict.No)
                sum += amount;
        }

        return sum;
    }

    /// <summary>What a notice stands for after its reductions, dollars and cents; null where its sum is not told.</summary>
    public static decimal? StandsFor(FactsAsOf facts, StopPaymentGiven paper) => paper?.Amount - ReducedBy(facts, paper!);

    // One that names no notice is of the only one given by then; of several it may be any.
    private static Verdict IsOf(FactsAsOf facts, StopPaymentReleased release, StopPaymentGiven paper)
    {
        if (release.Of is { } id)
            return id == paper.Id ? Verdict.Yes : Verdict.No;
        if (paper.On.Earliest > release.On.Latest)
            return Verdict.No;
        var others = 0;
        foreach (var other in facts.All<StopPaymentGiven>())
        {
            if (!ReferenceEquals(other, paper) && !(other.On.Earliest > release.On.Latest))
                others++;
        }

        return others == 0 ? Verdict.Yes : Verdict.Open;
    }
}
