using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>Charges that are not for work: owed perhaps, but part of no claim.</summary>
internal static class ChargesLeftOut
{
    /// <summary>The charges of the file as things owed, so that payments may go to them.</summary>
    public static List<Obligation> Of(FactsAsOf facts)
    {
        var all = facts.All<Charged>();
        var charges = new List<Obligation>(all.Count);
        foreach (var charged in all)
        {
            charges.Add(new Obligation
            {
                Order = facts.Furnished.Count + charges.Count,
                Due = charged.On.Latest ?? facts.AsOf,
                Ref = charged.Ref,
                IsWork = false,
                IsInterest = charged.Of == ChargeKind.Interest,
                Value = charged.Amount,
                Unpaid = charged.Amount,
            });
        }

        return charges;
    }

    /// <summary>Charges that are not for work are named and left out.</summary>
    [Rule("Civ. Code § 8430(a)", Sure = Sure.Opinion)]
    public static void Write(FactsAsOf facts, RemedyLaw law, List<Obligation> charges, List<WaterfallStep> steps)
    {
        if (charges.Count == 0)
            return;
        var charged = facts.All<Charged>();
        var each = new Reason[charged.Count];
        for (var i = 0; i < each.Length; i++)
            each[i] = Reason.NotApplied(law.Charges, $"{charged[i].Amount}: {Why(charged[i].Of)}", charged[i]);
        steps.Add(new WaterfallStep("charges-left-out", "Charges left out", 0m,
            Reason.Of(law.Charges, $"{Total.Of(charges, c => c.Value)} was billed for what is not work; none of it is part of the claim.",
                each)));
    }

    private static string Why(ChargeKind kind) => kind switch
    {
        ChargeKind.Interest => "interest is not the value or price of work (Carmel Development v. Anderson (2020) 48 Cal.App.5th 492).",
        ChargeKind.Finance => "finance and service charges are not the value or price of work (from memory).",
        ChargeKind.Delay =>
            "delay and disruption are not the value or price of work (Lambert v. Superior Court (1991) 228 Cal.App.3d 383).",
        ChargeKind.LostProfit => "lost profit is not the value or price of work (from memory).",
        ChargeKind.AttorneyFees =>
            "attorney's fees are no part of the lien (Abbett Electric v. California Federal Savings (1991) 230 Cal.App.3d 355).",
        ChargeKind.Other => "the file says that it is not for work.",
        _ => throw new InvalidOperationException($"No such charge: {kind}."),
    };
}
