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
    public static IEnumerable<Finding> Of(FactsAsOf facts, Waterfall demand)
    {
        var number = 0;
        foreach (var effect in demand.Waivers)
        {
            number++;
            var waiver = effect.Waiver;
            var section = Released.Section(waiver.Form);
            yield return new Finding
            {
                Id = $"waiver.{number}",
                Title = Title(waiver.Form),
                Standing = waiver.InStatutoryForm == false ? Standing.InDoubt : effect.Binds ? Standing.Done : Standing.NotYet,
                Amount = effect.Released,
                Explain = () => [Binding(effect, section), .. Alarms(facts, effect, section)],
                Ask = () => Questions(facts, effect),
            };
        }
    }

    private static string Title(WaiverForm form) => form switch
    {
        WaiverForm.ConditionalProgress => "Conditional waiver and release on progress payment",
        WaiverForm.UnconditionalProgress => "Unconditional waiver and release on progress payment",
        WaiverForm.ConditionalFinal => "Conditional waiver and release on final payment",
        WaiverForm.UnconditionalFinal => "Unconditional waiver and release on final payment",
        _ => throw new InvalidOperationException($"No such form: {form}."),
    };

    private static bool IsFinal(Waived waiver) => waiver.Form is WaiverForm.ConditionalFinal or WaiverForm.UnconditionalFinal;

    private static bool IsUnconditional(Waived waiver) => waiver.Form is WaiverForm.UnconditionalProgress or WaiverForm.UnconditionalFinal;

    [Rule("Civ. Code § 8124(b)")]
    private static Reason Binding(WaiverEffect effect, string section)
    {
        var waiver = effect.Waiver;
        if (waiver.InStatutoryForm == false)
            return Reason.Of("Civ. Code § 8126", $"It does not follow the statutory form: it is void and binds nobody, unless the claimant was in fact paid in full.", [waiver]);
        if (IsUnconditional(waiver))
            return Reason.Of(section, $"Unconditional: it binds on signing, paid or not. It releases {effect.Released} that is unpaid.", [waiver]);
        return effect.Binds
            ? Reason.Of("Civ. Code § 8124(b)", $"Conditional, and the payment cleared on {waiver.PaymentCleared!.Value}: it binds and releases {effect.Released} that is unpaid.", [waiver])
            : Reason.Of("Civ. Code § 8124(b)", $"Conditional, and the file shows no cleared payment: it releases nothing yet. Once paid it would release {effect.Released} that is unpaid.", [waiver]);
    }

    private static IEnumerable<Reason> Alarms(FactsAsOf facts, WaiverEffect effect, string section)
    {
        var waiver = effect.Waiver;
        if (waiver.InStatutoryForm == false)
            yield break;
        if (IsUnconditional(waiver) && BeforePaymentCleared(waiver))
            yield return Reason.Of(section, $"Alarm: an unconditional form was signed before its payment cleared. The lead-in of the section allows it only once payment is received, so it may be void; but the form itself says that it binds even unpaid, and that is acted on.", [waiver]);
        if (!IsFinal(waiver) && effect.Released > 0)
            yield return waiver.Through is { } through
                ? Reason.Of(section, $"Alarm: its through date reaches further than the money. {effect.Released} of work up to {through} is unpaid and released with it (Tesco Controls v. Monterey Mechanical (2004) 124 Cal.App.4th 780).", [waiver])
                : Reason.Of(section, $"Alarm: the file gives no through date, so all work is taken as released. {effect.Released} of it is unpaid.", [waiver]);
        if (IsFinal(waiver) && RetentionBeyondExceptions(facts, waiver) is var swallowed and > 0)
            yield return Reason.Of(section, $"Alarm: a final form keeps no retention; {swallowed} of retention is not among its exceptions and goes with it.", [waiver]);
        if (UnlistedChange(facts, waiver) is { } change)
            yield return Reason.Of(section, $"Alarm: a written change order that may have been signed before it ({change.Amount}) is released unless it is listed as an exception.", [waiver, change]);
    }

    [Rule("Civ. Code § 8134")]
    [Rule("Civ. Code § 8138")]
    private static bool BeforePaymentCleared(Waived waiver) =>
        waiver.PaymentCleared is not { } cleared || (waiver.On.Earliest is { } signed && cleared > signed);

    [Rule("Civ. Code § 8136")]
    [Rule("Civ. Code § 8138")]
    private static decimal RetentionBeyondExceptions(FactsAsOf facts, Waived waiver) =>
        Math.Max(0, Total.Of(facts.All<Retained>(), r => r.Amount) - (waiver.Excepted ?? 0));

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

    private static List<Question> Questions(FactsAsOf facts, WaiverEffect effect)
    {
        var questions = new List<Question>();
        if (effect.Waiver.InStatutoryForm is null)
            questions.Add(new Question("Does the paper follow the statutory form? It is taken to.", Dollars: effect.Released));
        if (!IsFinal(effect.Waiver) && effect.Released > 0 && facts.All<Retained>().Count == 0)
            questions.Add(new Question("Is part of the released amount retention, or an unpaid extra? The progress form keeps those: enter retained, or excepted.", Dollars: effect.Released));
        return questions;
    }
}
