using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>What the claimant's own waivers and releases take out of the claim (Civ. Code §§ 8132-8138).</summary>
internal static class Released
{
    /// <summary>Whether a waiver binds on a day: an unconditional one on signing, a conditional one once its payment has cleared; neither if it does not follow the form.</summary>
    [Rule("Civ. Code § 8124")]
    public static bool Binds(Waived waiver, LocalDate asOf) => waiver.InStatutoryForm != false && waiver.Form switch
    {
        WaiverForm.UnconditionalProgress or WaiverForm.UnconditionalFinal => true,
        WaiverForm.ConditionalProgress or WaiverForm.ConditionalFinal => waiver.PaymentCleared is { } cleared && cleared <= asOf,
        _ => throw new InvalidOperationException($"No such form: {waiver.Form}."),
    };

    /// <summary>The section of a form.</summary>
    public static string Section(WaiverForm form) => form switch
    {
        WaiverForm.ConditionalProgress => "Civ. Code § 8132",
        WaiverForm.UnconditionalProgress => "Civ. Code § 8134",
        WaiverForm.ConditionalFinal => "Civ. Code § 8136",
        WaiverForm.UnconditionalFinal => "Civ. Code § 8138",
        _ => throw new InvalidOperationException($"No such form: {form}."),
    };

    /// <summary>
    /// Takes off what is released and unpaid. A progress form releases all work through its date, paid or not (Tesco Controls v.
    /// Monterey Mechanical (2004) 124 Cal.App.4th 780), a final form all work; the excepted dollars stay alive. Where several
    /// bind, the one that releases most counts.
    /// </summary>
    [Rule("Civ. Code § 8132")]
    [Rule("Civ. Code § 8134")]
    [Rule("Civ. Code § 8136")]
    [Rule("Civ. Code § 8138")]
    public static IReadOnlyList<WaiverEffect> TakeOff(FactsAsOf facts, List<Obligation> items, List<WaterfallStep> steps)
    {
        var waivers = facts.All<Waived>();
        if (waivers.Count == 0)
            return [];
        var effects = new List<WaiverEffect>(waivers.Count);
        var why = new List<Reason>();
        decimal most = 0;
        foreach (var waiver in waivers)
        {
            var section = Section(waiver.Form);
            var unpaid = 0m;
            foreach (var item in items)
                unpaid += item.Secured && IsReleased(waiver, item) ? item.Unpaid : 0m;
            var kept = Math.Min(unpaid, (waiver.Excepted ?? 0) + RetentionKept(facts, waiver));
            var effect = new WaiverEffect(waiver, Binds(waiver, facts.AsOf), unpaid, kept);
            effects.Add(effect);
            if (!effect.Binds)
            {
                why.Add(waiver.InStatutoryForm == false
                    ? Reason.NotApplied("Civ. Code § 8124(a)", $"The paper does not follow the statutory form and releases nothing.", waiver)
                    : Reason.NotApplied(section, $"The conditional waiver and release does not bind: the file shows no cleared payment.", waiver));
                continue;
            }

            most = Math.Max(most, effect.Released);
            why.Add(Reason.Of(section, $"The waiver and release binds; {unpaid} of the work it reaches is unpaid and {kept} of that is kept: {effect.Released} is released.", [waiver]));
        }

        if (why.Count > 0)
            steps.Add(new WaterfallStep("waived", "Released by waiver", -most, Reason.Of("Civ. Code § 8124", $"Rights that the claimant has released: {most}.", [.. why])));
        return effects;
    }

    /// <summary>A progress form keeps retention; a final form does not.</summary>
    [Rule("Civ. Code § 8132")]
    [Rule("Civ. Code § 8134")]
    private static decimal RetentionKept(FactsAsOf facts, Waived waiver) => waiver.Form switch
    {
        WaiverForm.ConditionalProgress or WaiverForm.UnconditionalProgress => Total.Of(
            facts.All<Retained>().Where(r => waiver.Through is not { } through || r.On.Latest <= through), r => r.Amount),
        WaiverForm.ConditionalFinal or WaiverForm.UnconditionalFinal => 0m,
        _ => throw new InvalidOperationException($"No such form: {waiver.Form}."),
    };

    // Work on a day in doubt, or over days on both sides of the through date, counts as released: the safer side.
    private static bool IsReleased(Waived waiver, Obligation item) => waiver.Form switch
    {
        WaiverForm.ConditionalFinal or WaiverForm.UnconditionalFinal => true,
        WaiverForm.ConditionalProgress or WaiverForm.UnconditionalProgress =>
            item.From is not { } from || waiver.Through is not { } through || from <= through,
        _ => throw new InvalidOperationException($"No such form: {waiver.Form}."),
    };
}
