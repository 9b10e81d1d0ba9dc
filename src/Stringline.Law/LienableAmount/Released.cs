using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>What the claimant's own waivers and releases take out of the claim (Civ. Code §§ 8132-8138).</summary>
internal static class Released
{
    /// <summary>The section of a form on work of a kind.</summary>
    public static string Section(FactsAsOf facts, WaiverForm form) => Section(facts, form switch
    {
        WaiverForm.ConditionalProgress => "Civ. Code § 8132",
        WaiverForm.UnconditionalProgress => "Civ. Code § 8134",
        WaiverForm.ConditionalFinal => "Civ. Code § 8136",
        WaiverForm.UnconditionalFinal => "Civ. Code § 8138",
        _ => throw new InvalidOperationException($"No such form: {form}."),
    });

    /// <summary>A section of Title 1, which holds for private and public work; on federal work the one section there is.</summary>
    public static string Section(FactsAsOf facts, string titleOne) =>
        facts.Job.Work.Kind == WorkKind.Federal ? "40 U.S.C. § 3133(c)" : titleOne;

    /// <summary>
    /// Takes off what is released and unpaid, as far as it is a fact: what is in doubt is claimed with the doubt shown, since a figure too
    /// high in good faith does no harm (Civ. Code § 8422(a)) and one too low cannot be got back. A progress form releases all work through
    /// its date, paid or not (Tesco Controls v. Monterey Mechanical (2004) 124 Cal.App.4th 780), a final form all work; what the exceptions
    /// keep stays alive. Where several bind, the one that releases most counts.
    /// </summary>
    public static IReadOnlyList<WaiverEffect> TakeOff(FactsAsOf facts, List<Obligation> items, List<WaterfallStep> steps)
    {
        var waivers = facts.All<Waived>();
        if (waivers.Count == 0)
            return [];
        var effects = new WaiverEffect[waivers.Count];
        var why = new Reason[waivers.Count];
        decimal most = 0;
        for (var i = 0; i < effects.Length; i++)
        {
            effects[i] = Effect(facts, waivers[i], items);
            why[i] = Why(facts, effects[i]);
            most = effects[i].Binds ? Math.Max(most, effects[i].Released) : most;
        }

        steps.Add(new WaterfallStep("waived", "Released by waiver", -most,
            Reason.Of(Section(facts, "Civ. Code § 8124"), $"Rights that the claimant has released: {most}.", why)));
        return effects;
    }

    /// <summary>The waterfall with what waivers may release beyond what they surely do.</summary>
    public static Waterfall WithDoubt(Waterfall amount)
    {
        decimal surely = 0, atMost = 0;
        foreach (var waiver in amount.Waivers)
        {
            surely = waiver.Binds ? Math.Max(surely, waiver.Released) : surely;
            atMost = Math.Max(atMost, waiver.AtMost);
        }

        return atMost <= surely ? amount : amount with
        {
            AtLeast = Math.Max(0m, amount.AtLeast - (atMost - surely)),
            Questions = [.. amount.Questions,
                new Question($"How far does the waiver and release reach? What is open is asked beside it.", Dollars: atMost - surely)],
        };
    }

    private static WaiverEffect Effect(FactsAsOf facts, Waived waiver, List<Obligation> items)
    {
        var reach = WaiverReach.Of(waiver, items);
        var kept = WaiverExceptions.Of(facts, waiver, items);
        var surely = reach.Surely - Math.Min(reach.Surely, kept.AtMost);
        return new WaiverEffect(waiver, WaiverBinding.Of(facts, waiver), reach.Surely, reach.Surely - surely)
        {
            InDoubt = reach.AtMost - Math.Min(reach.AtMost, kept.Surely) - surely,
            Reach = reach,
            Exceptions = kept,
        };
    }

    private static Reason Why(FactsAsOf facts, WaiverEffect effect)
    {
        var section = Section(facts, effect.Waiver.Form);
        return effect.Binding switch
        {
            Verdict.Yes when effect.InDoubt > 0 =>
                Reason.Of(section, $"The waiver and release binds; {effect.Reached} of the work it reaches is unpaid "
                    + $"and {effect.Kept} of that is kept: {effect.Released} is released. Whether it releases {effect.InDoubt} more is in "
                    + $"doubt; that is claimed.", [effect.Waiver]),
            Verdict.Yes =>
                Reason.Of(section, $"The waiver and release binds; {effect.Reached} of the work it reaches is unpaid "
                    + $"and {effect.Kept} of that is kept: {effect.Released} is released.", [effect.Waiver]),
            Verdict.Open when facts.Job.Work.Kind != WorkKind.Federal && effect.Waiver.InStatutoryForm == false =>
                Reason.NotApplied("Civ. Code § 8124(a)", $"The paper does not follow the statutory form and releases nothing, unless it "
                    + $"settles a dispute and names the claim (Civ. Code § 8130); {effect.AtMost} hangs on that and is "
                    + $"claimed.", effect.Waiver),
            Verdict.Open =>
                Reason.NotApplied(section, $"Whether the waiver and release binds is in doubt; {effect.AtMost} hangs on it and is claimed.",
                    effect.Waiver),
            Verdict.No when facts.Job.Work.Kind != WorkKind.Federal && effect.Waiver.InStatutoryForm == false =>
                Reason.NotApplied("Civ. Code § 8124(a)", $"The paper does not follow the statutory form and releases nothing.",
                    effect.Waiver),
            Verdict.No =>
                Reason.NotApplied(section, $"The waiver and release does not bind: the file shows no cleared payment, or it was signed "
                    + $"before any work.", effect.Waiver),
            _ => throw new InvalidOperationException($"No such verdict: {effect.Binding}."),
        };
    }
}
