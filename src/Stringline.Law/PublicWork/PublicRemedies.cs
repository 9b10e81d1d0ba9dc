using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PaymentBond;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.PromptPayment;
using Stringline.Law.Reasoning;
using Stringline.Law.StopPaymentNotice;
using Stringline.Law.Counting;

namespace Stringline.Law.PublicWork;

/// <summary>What replaces the lien on public work: the stop payment notice and the payment bond (Civ. Code §§ 9100, 9350-9566).</summary>
public static class PublicRemedies
{
    /// <summary>All findings of public work but the lien and the license.</summary>
    public static IEnumerable<Finding> Findings(
        FactsAsOf facts, Reach reach, CompletionReadings completion, IReadOnlyList<OwnersNotice> owners, Amounts amounts, OpenDays calendar)
    {
        if (NotForDirectContractor(facts, amounts) is { } none)
        {
            yield return PublicCompletion.Finding(facts, completion);
            yield return Deadline.WithoutDay(Standing.Lost).Finding("stop-payment-notice.last-day", "Stop payment notice: last day to give", [none]);
            foreach (var finding in PublicMoneyDue.Findings(facts, completion, calendar))
                yield return finding;
            yield break;
        }

        var notice = PublicNotice.LastDay(facts, reach, calendar);
        yield return notice;
        if (PublicNotice.ReachesBackTo(facts, reach, notice) is { } reaches)
            yield return reaches;
        if (StateOfficer.Finding(facts) is { } officer)
            yield return officer;
        yield return PublicCompletion.Finding(facts, completion);
        var timeToGive = TimeToGive.Of(facts, completion, owners, calendar);
        var time = new TimeOfGiving(timeToGive.Readings, timeToGive.EndFirm, timeToGive.EndFirm);
        var stopPayment = PublicStopPayment.Findings(facts, reach, notice, amounts, time, timeToGive.Why, timeToGive.Questions, completion, owners, calendar);
        var release = SummaryRelease.Findings(facts, calendar);
        foreach (var finding in stopPayment)
            yield return MoneyReleased.Limit(facts, finding, release);
        if (MoneyOut.Finding(facts, stopPayment[0], completion, owners, calendar) is { } moneyOut)
            yield return moneyOut;
        foreach (var finding in PublicPaymentBond.Findings(facts, reach, amounts, time, completion, owners, calendar))
            yield return finding;
        foreach (var finding in release)
            yield return finding;
        foreach (var finding in PublicMoneyDue.Findings(facts, completion, calendar))
            yield return finding;
    }

    [Rule("Civ. Code § 9100(b)")]
    private static Reason? NotForDirectContractor(FactsAsOf facts, Amounts amounts) => facts.Job.Claimant.Role == ClaimantRole.DirectContractor
        ? Reason.Of("Civ. Code § 9100(b)", $"A direct contractor has neither the stop payment notice nor the payment bond, and owes no preliminary notice. What is due to it under the contract is a debt of the public entity: {amounts.DemandOf(Remedy.Debt)}.")
        : null;
}
