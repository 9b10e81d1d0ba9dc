using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Enforcement;

/// <summary>A contractor's duty in the action on a lower tier's lien (Civ. Code § 8470).</summary>
internal static class LowerTierDefense
{
    /// <summary>The finding <c>lower-tier.defense</c>; null where no lower tier claims a lien, or the claimant is no contractor.</summary>
    [Rule("Civ. Code § 8470")]
    public static Finding? Finding(FactsAsOf facts)
    {
        if (facts.Job.Claimant.Role is not (ClaimantRole.DirectContractor or ClaimantRole.Subcontractor))
            return null;
        var sum = 0m;
        foreach (var claim in facts.All<LowerTierClaim>())
            sum += claim.StopPaymentNotice ? 0m : claim.Amount;
        return sum == 0m ? null : Defense(facts, sum);
    }

    private static Finding Defense(FactsAsOf facts, decimal sum) =>
        new()
        {
            Id = "lower-tier.defense",
            Title = "Defend an action on a lower tier's lien",
            Standing = Standing.Open,
            Amount = sum,
            Explain = () =>
            [
                Reason.Of("Civ. Code § 8470", $"In an action on a lien for work provided to a contractor, that contractor defends it at "
                    + $"its own expense. While it is pending the owner may withhold {sum} from the direct contractor, and after judgment "
                    + $"set it off with costs.", [.. facts.All<LowerTierClaim>()]),
            ],
        };
}
