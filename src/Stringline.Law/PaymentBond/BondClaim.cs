using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PreliminaryNotice;

namespace Stringline.Law.PaymentBond;

/// <summary>What may be claimed on a payment bond with a notice to surety and principal.</summary>
public static class BondClaim
{
    /// <summary>
    /// The amount with its steps. The notice has no look-back: it reaches all unpaid work, whatever a late preliminary notice reaches
    /// (American Buildings v. Bay Commercial Construction (2002) 99 Cal.App.4th 1193, on the public twin).
    /// </summary>
    [Rule("Civ. Code § 8612(b)", Sure = Sure.Opinion)]
    [Rule("Civ. Code § 9560(b)", Sure = Sure.Opinion)]
    public static Waterfall Of(FactsAsOf facts) =>
        // One who has no bond to claim on is told so elsewhere; the figure is then what is owed.
        Demand.Of(facts, Reach.Everything, RemedyLaw.Of(Remedy.PaymentBond, facts.Job) is null ? Remedy.Debt : Remedy.PaymentBond);

    /// <summary>
    /// To whom notice goes as the principal of the bond: the one the file names. On private works an owner, a direct contractor or a
    /// subcontractor may be the principal; while nobody says which, each of them is told.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="isKnown">Whether the principal is known, so far as the law does not name it.</param>
    [Rule("Civ. Code § 8606")]
    [Rule("Civ. Code § 8612(b)")]
    public static IReadOnlyList<Party> ToldAsPrincipal(FactsAsOf facts, out bool isKnown)
    {
        ArgumentNullException.ThrowIfNull(facts);
        isKnown = facts.Job.Work.Kind != WorkKind.Private || facts.Job.Party(facts.Job.Work.PaymentBond?.Principal) is not null;
        var principals = BondServed.Principals(facts);
        return isKnown || principals.Count == 0
            ? principals
            : [.. principals, .. facts.Job.In(PartyCapacity.DirectContractor).Where(p => !principals.Contains(p)),
                .. facts.Job.In(PartyCapacity.Owner), .. facts.Job.In(PartyCapacity.Subcontractor)];
    }
}
