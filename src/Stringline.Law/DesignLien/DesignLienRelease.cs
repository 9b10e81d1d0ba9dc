using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Law.DesignLien;

/// <summary>The document of satisfaction and release of a design professional's lien (Civ. Code § 8306(c)).</summary>
internal static class DesignLienRelease
{
    /// <summary>
    /// Whether a claim was released: by a release that says that the debt is satisfied, or one recorded on or after the claim.
    /// </summary>
    public static Verdict IsReleased(FactsAsOf facts, ClaimRecorded claim)
    {
        var verdict = Verdict.No;
        foreach (var release in facts.All<ReleaseRecorded>())
        {
            if (release.Satisfied == true || release.On.Earliest >= claim.On.Latest)
                return Verdict.Yes;
            if (!(release.On.Latest < claim.On.Earliest))
                verdict = Verdict.Open;
        }

        return verdict;
    }

    /// <summary>
    /// The finding <c>design-lien.release</c>: whoever is paid in part or in full shall record it. Null where nothing was paid on the lien.
    /// </summary>
    [Rule("Civ. Code § 8306(c)")]
    public static Finding? Finding(FactsAsOf facts, Waterfall fee, ClaimSuits suits)
    {
        if (suits.Leading is not { Standing: not Standing.Lost, Claim: var claim } || fee.IsUnknown)
            return null;
        var left = Math.Min(fee.Demand, claim.Amount ?? fee.Demand);
        var lien = Math.Min(claim.Amount ?? decimal.MaxValue, Overstated.DueWhenRecorded(facts, claim, fee));
        var paid = lien - left;
        if (paid <= 0)
            return null;
        var full = left == 0;
        return new Finding
        {
            Id = "design-lien.release",
            Title = full
                ? "Record the full satisfaction and release of the design professional's lien"
                : "Record the partial satisfaction and release of the design professional's lien",
            Standing = Standing.Open,
            Amount = paid,
            Explain = () =>
            [
                full
                    ? Reason.Of("Civ. Code § 8306(c)", $"The landowner fully satisfied the lien: the design professional shall execute and "
                        + $"record a document that evidences a full satisfaction and release of it.", [claim])
                    : Reason.Of("Civ. Code § 8306(c)", $"The landowner paid {paid} of the lien, and {left} is left: the design "
                        + $"professional shall execute and record a document that evidences a partial satisfaction and release of "
                        + $"it.", [claim]),
            ],
        };
    }
}
