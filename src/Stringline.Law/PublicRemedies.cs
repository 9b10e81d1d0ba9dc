using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PaymentBond;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.PromptPayment;
using Stringline.Law.Reasoning;
using Stringline.Law.StopPaymentNotice;
using Stringline.Law.Counting;

namespace Stringline.Law;

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
            yield return Deadline.WithoutDay(Standing.Lost).Finding(StopPaymentLaw.ToGiveId, StopPaymentLaw.ToGiveTitle, [none]);
            foreach (var finding in PublicMoneyDue.Findings(facts, completion, calendar))
                yield return finding;
            yield break;
        }

        var notice = PublicNotice.LastDay(facts, reach, calendar);
        yield return PublicNotice.Finding(facts, reach, notice);
        if (PublicNotice.ReachesBackTo(facts, reach, notice.Standing) is { } reaches)
            yield return reaches;
        if (StateOfficer.Finding(facts) is { } officer)
            yield return officer;
        yield return PublicCompletion.Finding(facts, completion);
        var timeToGive = TimeToGive.Of(facts, completion, owners, calendar);
        var time = new TimeOfGiving(timeToGive.Readings, timeToGive.EndFirm, timeToGive.EndFirm);
        var stopPayment = PublicStopPayment.Of(facts, reach, notice, amounts, time, timeToGive.Why, timeToGive.Questions, calendar);
        var answers = SummaryRelease.Of(facts, calendar);
        var left = MoneyReleased.Limit(facts, stopPayment.Amount, answers);
        foreach (var finding in stopPayment.Findings(facts, left, time, completion, owners, calendar))
            yield return finding;
        if (MoneyOut.Finding(facts, stopPayment.ToGive.Standing, completion, owners, calendar) is { } moneyOut)
            yield return moneyOut;
        foreach (var finding in PublicPaymentBond.Findings(facts, reach, amounts, time, completion, owners, calendar))
            yield return finding;
        foreach (var finding in SummaryRelease.Findings(facts, answers))
            yield return finding;
        foreach (var finding in PublicMoneyDue.Findings(facts, completion, calendar))
            yield return finding;
    }

    [Rule("Civ. Code § 9100(b)")]
    private static Reason? NotForDirectContractor(FactsAsOf facts, Amounts amounts) =>
        facts.Job.Claimant.Role == ClaimantRole.DirectContractor
        ? Reason.Of("Civ. Code § 9100(b)", $"A direct contractor has neither the stop payment notice nor the payment bond, and owes no "
            + $"preliminary notice. What is due to it under the contract is a debt of the public entity: {amounts.DemandOf(Remedy.Debt)}.")
        : null;
}
