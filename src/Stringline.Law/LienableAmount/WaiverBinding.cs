using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>Whether a waiver and release binds (Civ. Code §§ 8124-8130; on federal work 40 U.S.C. § 3133(c)).</summary>
internal static class WaiverBinding
{
    /// <summary>Whether it binds on the day of asking.</summary>
    public static Verdict Of(FactsAsOf facts, Waived waiver)
    {
        if (facts.Job.Work.Kind == WorkKind.Federal)
            return AfterFurnishing(facts, waiver) is var valid && valid == Verdict.Yes ? OfForm(facts, waiver) : valid;
        return waiver.InStatutoryForm == false ? OffTheForm(waiver) : OfForm(facts, waiver);
    }

    /// <summary>Off the form it binds only as the settlement of a dispute or action that names the lien or claim, if it is one.</summary>
    [Rule("Civ. Code § 8124")]
    [Rule("Civ. Code § 8130")]
    private static Verdict OffTheForm(Waived waiver) => waiver.Settlement == false ? Verdict.No : Verdict.Open;

    /// <summary>
    /// An unconditional one binds on signing. A conditional one once its payment has cleared, or the claimant has acknowledged the payment
    /// in writing: a receipt of the sum it describes makes that likely.
    /// </summary>
    [Rule("Civ. Code § 8124")]
    [Rule("Civ. Code § 8124(b)")]
    private static Verdict OfForm(FactsAsOf facts, Waived waiver) => waiver.Form switch
    {
        WaiverForm.UnconditionalProgress or WaiverForm.UnconditionalFinal => Verdict.Yes,
        WaiverForm.ConditionalProgress or WaiverForm.ConditionalFinal => waiver.PaymentCleared is { } cleared && cleared <= facts.AsOf
            ? Verdict.Yes
            : waiver.PaymentCleared is null && IsReceived(facts, waiver) ? Verdict.Open : Verdict.No,
        _ => throw new InvalidOperationException($"No such form: {waiver.Form}."),
    };

    private static bool IsReceived(FactsAsOf facts, Waived waiver)
    {
        var received = 0m;
        foreach (var paid in facts.All<Paid>())
        {
            if (!(paid.On.Latest < waiver.On.Earliest))
                received += paid.Amount;
        }

        return received > 0 && !(received < waiver.Amount);
    }

    /// <summary>
    /// A waiver of the right to sue on the federal bond is void unless executed after the claimant has furnished labor or material.
    /// </summary>
    [Rule("40 U.S.C. § 3133(c)", Sure = Sure.FromMemory)]
    internal static Verdict AfterFurnishing(FactsAsOf facts, Waived waiver)
    {
        if (!facts.HasFurnished)
            return Verdict.No;
        if (facts.FirstFurnished is not { } first || DaySpan.Of(waiver.On) is not { } signed)
            return Verdict.Open;
        return signed.Latest < first.Earliest ? Verdict.No : signed.Earliest >= first.Latest ? Verdict.Yes : Verdict.Open;
    }
}
