using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Waiver;

/// <summary>What would settle how far a waiver and release reaches.</summary>
internal static class WaiverQuestions
{
    /// <summary>The questions.</summary>
    public static List<Question> Of(FactsAsOf facts, WaiverEffect effect)
    {
        var questions = new List<Question>();
        var waiver = effect.Waiver;
        var whole = effect.Released + effect.InDoubt;
        void Ask(Sentence text, decimal dollars) => questions.Add(new Question(text, Dollars: dollars) { Corrects = waiver });

        // Federal work knows no statutory form.
        var onForms = facts.Job.Work.Kind != WorkKind.Federal;
        var offTheForm = onForms && waiver.InStatutoryForm == false;
        if (onForms && waiver.InStatutoryForm is null)
            Ask($"Does the paper follow the statutory form? It is taken to.{MoneyKinds.Waived.At("inStatutoryForm"):aside}", whole);
        if (offTheForm && waiver.Settlement is null)
            Ask($"Does the paper settle a dispute in good faith, or a pending action, and name the lien or claim? Then it may bind all the "
                + $"same.{MoneyKinds.Waived.At("settlement"):aside}", whole);
        if (effect.Binding == Verdict.No && (offTheForm || WaiverFindings.IsUnconditional(waiver)))
            return questions;
        if (effect.Binding == Verdict.Open && waiver.PaymentCleared is null && !WaiverFindings.IsUnconditional(waiver) && !offTheForm)
            Ask($"Has the bank paid the check that the form describes, or has the claimant acknowledged the payment in writing? On which "
                + $"day?{MoneyKinds.Waived.At("paymentCleared"):aside}", whole);
        if (WaiverFindings.PaidBeforeSigning(facts, waiver) && WaiverFindings.IsUnconditional(waiver))
            Ask($"Had the payment cleared when the form was signed?{MoneyKinds.Waived.At("paymentCleared"):aside}", effect.Released);
        if (waiver.On is DayFact.Unknown)
            Ask($"On which day was it signed?{MoneyKinds.Waived.At("on"):aside}", effect.InDoubt);
        else if (effect.Reach.AfterSigning > 0)
            Ask($"Was the work furnished after the signing meant to be given up as well? The form speaks of work that was provided.",
                effect.Reach.AfterSigning);
        if (effect.Reach.AcrossALine > 0 && LastDay(waiver) is { } last)
            questions.Add(new Question($"What was furnished by {last}, and what after? Split the entry there, with the value on each "
                + $"side.{WorkKinds.Furnished.At("amount"):aside}", Dollars: effect.Reach.AcrossALine));
        if (effect.Exceptions.Earlier > 0)
            Ask($"Does the form list the earlier conditional waivers that were not paid, by their days? What it lists it does not "
                + $"release.{MoneyKinds.Waived.At("unpaidWaivers"):aside}", Math.Min(effect.Exceptions.Earlier, effect.Reach.Surely));
        if (WaiverReach.IsFinal(waiver.Form))
            return questions;
        if (effect.Exceptions.Extras > 0)
            Ask($"Is part of it an unpaid extra? The form keeps unpaid extras in one sentence and gives up written change orders in "
                + $"another, unless they are listed.{MoneyKinds.Waived.At("excepted"):aside}",
                Math.Min(effect.Exceptions.Extras, effect.Reach.Surely));
        else if (effect.Released > 0)
            Ask($"Is part of the released amount an unpaid extra? The progress form keeps those.{MoneyKinds.Waived.At("excepted"):aside}",
                effect.Released);
        if (effect.Released > 0 && facts.All<Retained>().Count == 0)
            questions.Add(new Question($"Is part of the released amount retention? The progress form keeps it.{MoneyKinds.Retained:aside}",
                Dollars: effect.Released));
        if (effect.Exceptions.Retention > 0)
            questions.Add(new Question($"From which work was the retention held that came after the through date? Only what was held from "
                + $"work through it is kept by the form.{MoneyKinds.Retained:aside}",
                Dollars: Math.Min(effect.Exceptions.Retention, effect.Reach.Surely)));
        return questions;
    }

    private static LocalDate? LastDay(Waived waiver) =>
        !WaiverReach.IsFinal(waiver.Form) && waiver.Through is { } through && !(through > waiver.On.Earliest)
        ? through : waiver.On.Earliest;
}
