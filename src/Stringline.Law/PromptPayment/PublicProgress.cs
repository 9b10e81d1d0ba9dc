using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>Progress payments on public work: from the public entity, and passed on by the one who hired the claimant.</summary>
internal static class PublicProgress
{
    /// <summary>
    /// What a direct contractor has requested of the entity, by the day of receipt; where that is not entered, by the day it was sent.
    /// </summary>
    public static List<SumDue> Requested(FactsAsOf facts, OpenDays calendar)
    {
        var sums = new List<SumDue>();
        var toPay = EntitysPayment.Of(facts).ToPay;
        foreach (var requested in facts.All<PaymentDemanded>())
        {
            if (DaySpan.Of(requested.On) is not { } on)
                continue;
            var received = requested.Received ?? on.Latest;
            var last = ReturnedRequest.Of(facts, requested).LastDay(received, facts.Numbers.On(toPay, received));
            sums.Add(new SumDue(requested, on.Earliest, calendar.RollForwardOnAnyList(last), requested.Amount));
        }

        return sums;
    }

    /// <summary>
    /// Public entity to contractor: some days after receipt of an undisputed and proper request; late money bears the legal rate, and no
    /// penalty by the month.
    /// </summary>
    public static Finding FromEntity(FactsAsOf facts, SumDue sum, string id)
    {
        var request = (PaymentDemanded)sum.Fact;
        var returned = ReturnedRequest.Of(facts, request);
        var interest = sum.Interest(LegalRate(facts, sum), facts.AsOf);
        var reading = new Reading($"last day for the payer", sum.Due);
        var disputed = IsDisputed(facts);
        var late = facts.AsOf > sum.Due;
        return new Finding
        {
            Id = id,
            Title = "Progress payment from the public entity",
            Standing = sum.Unpaid == 0 && interest == 0 ? Standing.Done
                : !late ? Standing.NotYet
                : disputed || returned.IsPending || facts.Job.Work.Body == PublicBody.UniversityOrCourt ? Standing.InDoubt
                : Standing.Open,
            Readings = [reading],
            Band = new Band(reading, reading),
            Amount = returned.IsPending ? 0m : interest,
            Explain = () => Why(facts, sum, request, interest, late),
            Ask = () => Questions(facts, sum, request, interest, disputed),
        };
    }

    /// <summary>The legal rate on judgments.</summary>
    [Rule("Code Civ. Proc. § 685.010(a)", Sure = Sure.FromMemory)]
    private static NumberRow LegalRate(FactsAsOf facts, SumDue sum) => facts.Numbers.On(Number.LegalRate, sum.Due);

    private static List<Reason> Why(FactsAsOf facts, SumDue sum, PaymentDemanded request, decimal interest, bool late)
    {
        var due = WhenDue(facts, request);
        var returned = ReturnedRequest.Of(facts, request);
        List<Reason> why = [due, .. returned.Why(request, interest)];
        if (returned.IsPending)
            return why;
        why.Add(late
            ? Reason.Of(due.Section, $"{sum.Unpaid} is unpaid. Simple interest at {LegalRate(facts, sum)} a year "
                + $"(Code Civ. Proc. § 685.010(a)) from the day after {sum.Due} to {facts.AsOf}, or to the day of "
                + $"payment: {interest}.", [request])
            : Reason.Of(due.Section, $"{sum.Unpaid} falls due by {sum.Due}.", [request]));
        if (request.Received is null)
            why.Add(Reason.Of(due.Section, $"The days run from receipt of the request, which the file does not give: they are counted from "
                + $"the day it was sent, the earliest it can be."));
        return why;
    }

    [Rule("Pub. Contract Code § 20104.50(b)")]
    [Rule("Pub. Contract Code § 10261.5(a)")]
    [Rule("Pub. Contract Code § 10853(a)")]
    private static Reason WhenDue(FactsAsOf facts, PaymentDemanded request)
    {
        var law = EntitysPayment.Of(facts);
        var received = request.Received ?? request.On.Latest ?? facts.AsOf;
        var (days, toReturn) = (facts.Numbers.On(law.ToPay, received), facts.Numbers.On(law.ToReturn, received));
        return (facts.Job.Work.Body, PublicPayer.IsState(facts)) switch
        {
            (PublicBody.StateUniversity, _) =>
                Reason.Of("Pub. Contract Code § 10853(a)", $"The Trustees of the State University pay within {days} after receipt of an "
                    + $"undisputed and properly submitted request; one that is not proper goes back within {toReturn.Spelled}.", [request]),
            (_, true) =>
                Reason.Of("Pub. Contract Code § 10261.5(a)", $"A State agency pays within {days} after receipt of an undisputed and "
                    + $"properly submitted request; one that is not proper goes back within {toReturn.Spelled}.", [request]),
            (PublicBody.UniversityOrCourt, _) =>
                Reason.Of("Pub. Contract Code § 20104.50(b)", $"A local agency pays within {days} after receipt of an undisputed and "
                    + $"properly submitted request; whether the section reaches the University, a court or the Legislature is "
                    + $"open.", [request]),
            _ => Reason.Of("Pub. Contract Code § 20104.50(b)", $"A local agency pays within {days} after receipt of an undisputed and "
                + $"properly submitted request, and a State agency likewise (Pub. Contract Code § 10261.5(a)); one that is not proper goes "
                + $"back within {toReturn.Spelled}.", [request]),
        };
    }

    private static List<Question> Questions(FactsAsOf facts, SumDue sum, PaymentDemanded request, decimal interest, bool disputed)
    {
        var questions = new List<Question>();
        if (ReturnedRequest.Of(facts, request).IsPending && sum.Unpaid > 0)
            questions.Add(
                new Question($"Was the corrected request received, and on which day? The days for payment run from "
                    + $"then.{MoneyKinds.PaymentDemanded.At("resubmitted"):aside}") { Corrects = request });
        if (request.Received is null && sum.Unpaid > 0)
            questions.Add(
                new Question($"On which day was the request received? The days for payment run from "
                    + $"then.{MoneyKinds.PaymentDemanded.At("received"):aside}") { Corrects = request });
        if (facts.Job.Work.Body is null)
            questions.Add(AskForBody(facts, request));
        if (disputed)
            questions.Add(
                new Question($"Is the dispute about this request? Only an undisputed one bears "
                    + $"interest.{MoneyKinds.Disputed.At("about"):aside}", Dollars: interest) { Corrects = facts.All<Disputed>()[0] });
        return questions;
    }

    private static Question AskForBody(FactsAsOf facts, PaymentDemanded request)
    {
        var received = request.Received ?? request.On.Latest ?? facts.AsOf;
        var (own, trustees) =
            (facts.Numbers.On(EntitysPayment.Of(facts).ToPay, received), facts.Numbers.On(Number.TrusteesProgress, received));
        return new Question($"Which public body contracted for the work? The Trustees of the State University "
            + $"have {trustees.Text}.{HeadField.WorkBody:aside}",
            Days: trustees.Count - own.Count);
    }

    private static bool IsDisputed(FactsAsOf facts)
    {
        foreach (var dispute in facts.All<Disputed>())
        {
            if (dispute.About is null or DisputeAbout.Progress)
                return true;
        }

        return false;
    }

    /// <summary>
    /// Prime contractor or subcontractor to the subcontractor below it: seven days after receipt. The section of the Public Contract Code
    /// stands among those on the State's contracts; all other public work is under the license law, where the days may be agreed otherwise.
    /// </summary>
    [Rule("Pub. Contract Code § 10262.5")]
    [Rule("Bus. & Prof. Code § 7108.5")]
    public static SumOwed FromHirer(FactsAsOf facts, SumDue sum)
    {
        return PublicPayer.IsState(facts) == true
            ? MoneyDue.Owed(facts, sum, "Pub. Contract Code § 10262.5",
                Reason.Of("Pub. Contract Code § 10262.5",
                    $"On State work due within {facts.Numbers.On(Number.StateHirersProgress, sum.From)} after the hirer was "
                        + $"paid {DaySpan.Of(sum.Fact.On)}; penalty {sum.Terms.PerMonth} of the amount a month.", [sum.Fact]))
            : MoneyDue.Owed(facts, sum, "Bus. & Prof. Code § 7108.5",
                Reason.Of("Bus. & Prof. Code § 7108.5", $"Due within {facts.Numbers.On(Number.HirersProgress, sum.From)} after the hirer "
                    + $"was paid {DaySpan.Of(sum.Fact.On)}, unless agreed otherwise in writing; penalty {sum.Terms.PerMonth} of the amount "
                    + $"a month.", [sum.Fact]));
    }

    /// <summary>
    /// The finding <c>prompt-payment.report</c>: on State work a subcontractor must report to the license board and the department what was
    /// not passed on. No number of days is set.
    /// </summary>
    [Rule("Pub. Contract Code § 10262")]
    public static Finding? Report(FactsAsOf facts, IEnumerable<(PaymentOf Of, SumOwed Owed)> sums)
    {
        // What is owed is surely so, and not in doubt, to a subcontractor alone.
        if (PublicPayer.IsState(facts) != true || !sums.Any(static sum => sum is (PaymentOf.Progress, { Standing: Standing.Open })))
            return null;
        return new Finding
        {
            Id = "prompt-payment.report",
            Title = "Report of a short payment",
            Standing = Standing.Open,
            Why = [Reason.Of("Pub. Contract Code § 10262", $"The subcontractor shall notify the Contractors State License Board and the "
                + $"department in writing of any payment below the amount or percentage approved for its item of work. No number of days "
                + $"is set: do it at once.")],
        };
    }
}
