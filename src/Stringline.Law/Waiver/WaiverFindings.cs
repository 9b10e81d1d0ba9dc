using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Waiver;

/// <summary>Each waiver and release the claimant signed: whether it binds, what it releases, and what is wrong with it.</summary>
public static class WaiverFindings
{
    /// <summary>One finding a waiver, <c>waiver.1</c>, <c>waiver.2</c> and so on by the day signed.</summary>
    [Rule("Civ. Code § 8122")]
    [Rule("Civ. Code § 8126")]
    public static IReadOnlyList<Finding> Of(FactsAsOf facts, Waterfall demand)
    {
        if (demand.Waivers.Count == 0)
            return [];
        var number = 0;
        var findings = new List<Finding>(demand.Waivers.Count);
        foreach (var effect in demand.Waivers)
        {
            number++;
            var waiver = effect.Waiver;
            var section = Released.Section(facts, waiver.Form);
            findings.Add(new Finding
            {
                Id = $"waiver.{number}",
                Title = Title(waiver.Form),
                Standing = StandingOf(effect),
                Amount = effect.Released,
                Explain = () => [Binding(facts, effect, section), .. Alarms(facts, effect, section)],
                Ask = () => WaiverQuestions.Of(facts, effect),
            });
        }

        return findings;
    }

    private static Standing StandingOf(WaiverEffect effect) => effect.Binding switch
    {
        Verdict.Yes => effect.InDoubt > 0 ? Standing.InDoubt : Standing.Done,
        Verdict.Open => Standing.InDoubt,
        Verdict.No => Standing.NotYet,
        _ => throw new InvalidOperationException($"No such verdict: {effect.Binding}."),
    };

    private static string Title(WaiverForm form) => form switch
    {
        WaiverForm.ConditionalProgress => "Conditional waiver and release on progress payment",
        WaiverForm.UnconditionalProgress => "Unconditional waiver and release on progress payment",
        WaiverForm.ConditionalFinal => "Conditional waiver and release on final payment",
        WaiverForm.UnconditionalFinal => "Unconditional waiver and release on final payment",
        _ => throw new InvalidOperationException($"No such form: {form}."),
    };

    private static bool IsFinal(Waived waiver) => WaiverReach.IsFinal(waiver.Form);

    /// <summary>Whether it is one of the two unconditional forms.</summary>
    internal static bool IsUnconditional(Waived waiver) => waiver.Form is WaiverForm.UnconditionalProgress or WaiverForm.UnconditionalFinal;

    [Rule("Civ. Code § 8124(b)")]
    [Rule("Civ. Code § 8130")]
    private static Reason Binding(FactsAsOf facts, WaiverEffect effect, string section)
    {
        var waiver = effect.Waiver;
        var federal = facts.Job.Work.Kind == WorkKind.Federal;
        if (!federal && waiver.InStatutoryForm == false)
        {
            return effect.Binding == Verdict.Open
                ? Reason.Of("Civ. Code § 8126", $"It does not follow the statutory form: it is void, unless the claimant was in fact paid "
                    + $"in full. {effect.AtMost} hangs on it, and is claimed.", [waiver],
                    Reason.Of("Civ. Code § 8130", $"But an accord on a good-faith dispute, or the settlement of a pending action, binds if "
                        + $"it names the lien or claim."))
                : Reason.Of("Civ. Code § 8126", $"It does not follow the statutory form and settles nothing: it is void, unless the "
                    + $"claimant was in fact paid in full.", [waiver]);
        }

        if (federal && WaiverBinding.AfterFurnishing(facts, waiver) != Verdict.Yes)
            return Reason.Of(section, $"A waiver of the right on the bond is void unless it is in writing, signed, and executed after the "
                + $"claimant has furnished labor or material; this one was not, or it is not clear that it was.", [waiver]);
        if (IsUnconditional(waiver))
            return Reason.Of(section,
                $"Unconditional: it binds on signing, paid or not. It releases {effect.Released} that is unpaid.{More(effect)}", [waiver]);
        var evidence = Released.Section(facts, "Civ. Code § 8124(b)");
        return effect.Binding switch
        {
            Verdict.Yes =>
                Reason.Of(evidence, $"Conditional, and the payment cleared on {waiver.PaymentCleared!.Value}: it binds and "
                    + $"releases {effect.Released} that is unpaid.{More(effect)}", [waiver]),
            Verdict.Open =>
                Reason.Of(evidence, $"Conditional, and money that may be the payment it describes came in: once the check is paid by the "
                    + $"bank, or the claimant has acknowledged the payment in writing, it binds. {effect.AtMost} hangs on that and is "
                    + $"claimed; to claim knowingly what was released can cost the claim, so settle it first.", [waiver]),
            Verdict.No =>
                Reason.Of(evidence, $"Conditional, and the file shows no cleared payment: it releases nothing yet. Once paid it would "
                    + $"release {effect.Released} that is unpaid.", [waiver]),
            _ => throw new InvalidOperationException($"No such verdict: {effect.Binding}."),
        };
    }

    private static string More(WaiverEffect effect) =>
        effect.InDoubt > 0 ? $" Whether it releases {LawText.Money(effect.InDoubt)} more is in doubt; that is claimed with the doubt." : "";

    private static IEnumerable<Reason> Alarms(FactsAsOf facts, WaiverEffect effect, string section)
    {
        var waiver = effect.Waiver;
        if (waiver.InStatutoryForm == false && facts.Job.Work.Kind != WorkKind.Federal)
            yield break;
        if (waiver.On.Latest < facts.FirstFurnished?.Earliest)
            yield return Reason.Of(Released.Section(facts, "Civ. Code § 8122"), $"Alarm: it was signed before any work was furnished. "
                + $"Rights cannot be given up in advance{(waiver.Through > waiver.On.Latest
                    ? ", and its through date lies after its signing" : "")}.", [waiver]);
        else if (waiver.Through > waiver.On.Latest)
            yield return Reason.Of(Released.Section(facts, "Civ. Code § 8122"),
                $"Alarm: its through date lies after its signing; rights in work still to come cannot be given up in advance.", [waiver]);
        if (!IsUnconditional(waiver) || !BeforePaymentCleared(waiver) || PaidBeforeSigning(facts, waiver))
        {
            // No alarm: nothing was given up before it was paid.
        }
        else if (facts.Job.Work.Kind == WorkKind.Federal)
        {
            if (effect.Binding != Verdict.No)
                yield return Reason.Of(section, $"Alarm: it was signed without condition before its payment cleared. Where it binds, it "
                    + $"binds unpaid.", [waiver]);
        }
        else
            yield return Reason.Of(section, $"Alarm: an unconditional form was signed before its payment cleared. The lead-in of the "
                + $"section allows it only once payment is received, so it may be void; but the form itself says that it binds even "
                + $"unpaid, and that is acted on.", [waiver]);
        if (!IsFinal(waiver) && effect.Released > 0)
            yield return waiver.Through is { } through
                ? Reason.Of(section, $"Alarm: its through date reaches further than the money. {effect.Released} of work up "
                    + $"to {through} is unpaid and released with it (Tesco Controls v. Monterey Mechanical (2004) 124 Cal.App.4th "
                    + $"780).", [waiver])
                : Reason.Of(section, $"Alarm: the file gives no through date, so all work is taken as released. {effect.Released} of it is "
                    + $"unpaid.", [waiver]);
        if (IsFinal(waiver) && RetentionBeyondExceptions(facts, waiver) is var swallowed and > 0)
            yield return Reason.Of(section, $"Alarm: a final form keeps no retention; {swallowed} of retention is not among its exceptions "
                + $"and goes with it.", [waiver]);
        if (UnlistedChange(facts, waiver) is { } change)
            yield return Reason.Of(section, $"Alarm: a written change order that may have been signed before it "
                + $"({change.Amount}) is released unless it is listed as an exception.", [waiver, change]);
    }

    [Rule("Civ. Code § 8134")]
    [Rule("Civ. Code § 8138")]
    private static bool BeforePaymentCleared(Waived waiver) =>
        waiver.PaymentCleared is not { } cleared || (waiver.On.Earliest is { } signed && cleared > signed);

    [Rule("Civ. Code § 8136")]
    [Rule("Civ. Code § 8138")]
    private static decimal RetentionBeyondExceptions(FactsAsOf facts, Waived waiver) =>
        Total.Of(facts.All<Retained>(), r => r.Amount) - (waiver.Excepted ?? 0);

    private static Change? UnlistedChange(FactsAsOf facts, Waived waiver)
    {
        if (waiver.Excepted > 0)
            return null;
        foreach (var change in facts.All<Change>())
        {
            // Of two papers of one day either may have been first, and of a day that is not known too.
            if (change.Agreed && change.Amount > 0 && !(change.On.Earliest > waiver.On.Latest))
                return change;
        }

        return null;
    }

    /// <summary>Whether the file shows a receipt of at least the sum it describes on or before the day it was signed.</summary>
    internal static bool PaidBeforeSigning(FactsAsOf facts, Waived waiver)
    {
        if (waiver.PaymentCleared is not null || waiver.Amount is not { } amount)
            return false;
        foreach (var paid in facts.All<Paid>())
        {
            if (paid.Amount >= amount && paid.On.Latest <= waiver.On.Earliest)
                return true;
        }

        return false;
    }
}
