using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// When progress payments, retention and claims are due on public work. Shown beside the other remedies, never part of their amounts.
/// </summary>
public static class PublicMoneyDue
{
    /// <summary>
    /// The findings <c>prompt-payment.progress</c>, <c>prompt-payment.report</c>, <c>prompt-payment.carrier</c>, <c>retention.due</c>,
    /// <c>retention.cap</c> and <c>dispute-claim.*</c>, where the file has their facts; a second one of a kind is numbered.
    /// </summary>
    public static IReadOnlyList<Finding> Findings(FactsAsOf facts, CompletionReadings completion, OpenDays calendar)
    {
        var isDirect = facts.Job.Claimant.Role == ClaimantRole.DirectContractor;
        var findings = isDirect ? FromEntity(facts, completion, calendar) : FromHirer(facts, calendar);
        if (PublicRetentionCap.Finding(facts) is { } cap)
            findings.Add(cap);
        if (isDirect)
            findings.AddRange(ClaimSteps.Findings(facts, completion, calendar));
        else if (ContractorsAnswer.Finding(facts, calendar) is { } answer)
            findings.Add(answer);
        return findings;
    }

    private static List<Finding> FromHirer(FactsAsOf facts, OpenDays calendar)
    {
        var sums = MoneyDue.FromHirer(facts, calendar, of => ToPassOn(facts, of),
            static (facts, sum) => MoneyDue.ForSubcontractors(facts, PublicProgress.FromHirer(facts, sum)),
            static (facts, sum) => MoneyDue.ForSubcontractors(facts, PublicRetention.FromHirer(facts, sum)));
        var findings = MoneyDue.Findings(sums);
        if (PublicProgress.Report(facts, sums) is { } report)
            findings.Add(report);
        findings.AddRange(CarriersCharges.Findings(facts, calendar));
        return findings;
    }

    private static (Number Days, LateLaw Late) ToPassOn(FactsAsOf facts, PaymentOf of) => of switch
    {
        PaymentOf.Progress when PublicPayer.IsState(facts) == true => (Number.StateHirersProgress, LateLaw.StateHirersProgress),
        PaymentOf.Progress => (Number.HirersProgress, LateLaw.HirersProgress),
        PaymentOf.Retention => (Number.PassOnPublicRetention, LateLaw.PublicRetention),
        _ => throw new InvalidOperationException($"No such payment: {of}."),
    };

    private static List<Finding> FromEntity(FactsAsOf facts, CompletionReadings completion, OpenDays calendar)
    {
        var sums = PublicProgress.Requested(facts, calendar);
        var retention = PublicRetention.Held(facts, completion, calendar, out var completed);
        var undisputed = ClaimSteps.Undisputed(facts, calendar);
        SumDue.Receive([.. sums, .. retention is null ? (SumDue[])[] : [retention], .. undisputed is null ? (SumDue[])[] : [undisputed]],
            facts.All<Paid>());
        var findings = new List<Finding>();
        foreach (var sum in sums)
            findings.Add(PublicProgress.FromEntity(facts, sum, MoneyDue.Numbered("prompt-payment.progress", findings.Count + 1)));
        if (retention is not null)
            findings.Add(PublicRetention.FromEntity(facts, retention, completed!, calendar)
                .Finding("retention.due", "Retention from the public entity"));
        if (undisputed is not null)
            findings.Add(ClaimSteps.UndisputedPart(facts, undisputed));
        return findings;
    }
}
