using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>
/// The claimant's own release or reduction of a stop payment notice (Civ. Code § 8128). It bars no later notice that is timely.
/// </summary>
public static class StopPaymentReleases
{
    /// <summary>Whether a notice was released whole.</summary>
    [Rule("Civ. Code § 8128")]
    internal static Verdict IsReleased(FactsAsOf facts, StopPaymentGiven paper)
    {
        return Of(facts).IsReleased(paper);
    }

    /// <summary>By how much a notice was reduced, dollars and cents.</summary>
    [Rule("Civ. Code § 8128")]
    public static decimal ReducedBy(FactsAsOf facts, StopPaymentGiven paper)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(paper);
        return Of(facts).ReducedBy(paper);
    }

    /// <summary>What a notice stands for after its reductions, dollars and cents; null where its sum is not told.</summary>
    public static decimal? StandsFor(FactsAsOf facts, StopPaymentGiven paper) => paper?.Amount - ReducedBy(facts, paper!);

    private static ReleasesByNotice Of(FactsAsOf facts) => facts.Once(static known => new ReleasesByNotice(known));
}
