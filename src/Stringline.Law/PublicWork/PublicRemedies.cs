using Stringline.Law.Completion;
using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PaymentBond;
using Stringline.Law.Plan;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.PromptPayment;
using Stringline.Law.Reasoning;
using Stringline.Law.StopPaymentNotice;
using Stringline.Law.Time;

namespace Stringline.Law.PublicWork;

/// <summary>What replaces the lien on public work: the stop payment notice and the payment bond (Civ. Code §§ 9100, 9350-9566).</summary>
public static class PublicRemedies
{
    /// <summary>All findings of public work but the lien and the licence.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, Reach reach, Amounts amounts, PlanSettings plan, OpenDays calendar)
    {
        var owners = OwnersNotice.Of(facts, calendar);
        var completion = PublicCompletion.Of(facts, owners);
        if (NotForDirectContractor(facts, amounts) is { } none)
        {
            yield return PublicCompletion.Finding(facts, completion);
            yield return Deadline.Finding("stop-payment-notice.last-day", "Stop payment notice: last day to give", Standing.Lost, [], calendar, [none]);
            foreach (var finding in PublicMoneyDue.Findings(facts, completion, calendar))
                yield return finding;
            yield break;
        }

        var notice = PublicNotice.LastDay(facts, reach, calendar);
        yield return notice;
        if (PublicNotice.ReachesBackTo(reach, notice) is { } reaches)
            yield return reaches;
        yield return PublicCompletion.Finding(facts, completion);
        var timeToGive = TimeToGive.Of(facts, completion, owners, calendar);
        var stop = LastDayToGive(facts, reach, notice, timeToGive, calendar);
        yield return stop;
        yield return Amount(facts, amounts.DemandOf(Remedy.StopPaymentNotice));
        foreach (var finding in StopPaymentDays.ActionWindow(facts, timeToGive.Readings, timeToGive.EndKnown, timeToGive.EndFirm, StopPaymentDays.Public, calendar))
            yield return finding;
        var bond = BondNotice.Finding(facts, BondNoticeNotNeeded(reach), completion, owners, BondNotice.Public, calendar);
        yield return bond;
        if (PublicIndexWatch.Finding(facts, stop, bond, plan, calendar) is { } watch)
            yield return watch;
        yield return BondAction(facts, timeToGive, calendar);
        foreach (var finding in PublicMoneyDue.Findings(facts, completion, calendar))
            yield return finding;
    }

    [Rule("Civ. Code § 9100(b)")]
    private static Reason? NotForDirectContractor(FactsAsOf facts, Amounts amounts) => facts.Job.Claimant.Role == ClaimantRole.DirectContractor
        ? Reason.Of("Civ. Code § 9100(b)", $"A direct contractor has neither the stop payment notice nor the payment bond, and owes no preliminary notice. What is due to it under the contract is a debt of the public entity: {amounts.DemandOf(Remedy.Debt)}.")
        : null;

    [Rule("Civ. Code § 9356(a)")]
    private static Finding LastDayToGive(
        FactsAsOf facts, Reach reach, Finding notice, TimeToGive timeToGive, OpenDays calendar)
    {
        List<Reason> why = [.. timeToGive.Why];
        var given = StopPaymentDays.FirstGiven(facts, out var paper);
        if (paper is not null)
            why.Add(Reason.Of("Civ. Code § 9354", $"Stop payment notice given {given!.Value}, to the disbursing officer or the body that awarded the contract.", [paper]));
        why.Add(Reason.Of("Civ. Code § 9362", $"Pay the entity $10 with the notice, so that it tells you of the time to sue."));
        Standing standing;
        if (notice.Standing == Standing.Lost)
        {
            standing = Standing.Lost;
            why.Add(Reason.Of("Civ. Code § 9300(c)", $"Preliminary notice is a condition, and no work lies within its reach.", [.. notice.Why]));
        }
        else if (!facts.HasFurnished)
        {
            standing = Standing.NotYet;
        }
        else if (timeToGive.Readings.Count == 0)
        {
            standing = given is null ? Standing.Open : Standing.Kept;
        }
        else
        {
            standing = Deadline.StandingOf(facts.AsOf, timeToGive.Readings, given, timeToGive.EndFirm);
        }

        if (reach.Kind == ReachKind.NotGiven && standing is Standing.Open)
            why.Add(Reason.Of("Civ. Code § 9300(c)", $"Preliminary notice is a condition: give it first."));
        return Deadline.Finding("stop-payment-notice.last-day", "Stop payment notice: last day to give", standing, timeToGive.Readings, calendar, why, timeToGive.EndKnown, timeToGive.Questions);
    }

    [Rule("Civ. Code § 9352(c)")]
    [Rule("Civ. Code § 9364")]
    private static Finding Amount(FactsAsOf facts, decimal demand) => new()
    {
        Id = "stop-payment-notice.amount",
        Title = "Stop payment notice: amount it can hold",
        Standing = demand > 0 ? Standing.Open : Standing.NotYet,
        Amount = demand,
        Why =
        [
            Reason.Of("Civ. Code § 9352(c)", $"Only what is due for work provided through the day of the notice: {demand} as of {facts.AsOf}."),
            Reason.Of("Civ. Code § 9364", $"The direct contractor may be let free the money by a bond of 125 percent of the claim: {ReleaseBond.AmountFor(demand)}."),
        ],
    };

    [Rule("Civ. Code § 9560(a)")]
    private static Reason? BondNoticeNotNeeded(Reach reach) => reach.Kind switch
    {
        ReachKind.NoneDue => Reason.Of("Civ. Code § 9560(a)", $"No preliminary notice was due, so none is needed for the bond."),
        ReachKind.Whole => Reason.Of("Civ. Code § 9560(a)", $"Preliminary notice was given and covers everything furnished, so no other notice is needed for the bond."),
        // A late preliminary notice limits the stop payment notice; the bond notice has no look-back (American Buildings v. Bay
        // Commercial Construction (2002) 99 Cal.App.4th 1193), so it is worth giving.
        ReachKind.Late or ReachKind.NotGiven => null,
        _ => throw new InvalidOperationException($"No such reach: {reach.Kind}."),
    };

    /// <summary>From when the claimant ceases to provide work until six months after the end of the time to give a stop payment notice.</summary>
    [Rule("Civ. Code § 9558")]
    private static Finding BondAction(FactsAsOf facts, TimeToGive timeToGive, OpenDays calendar)
    {
        var readings = timeToGive.Readings.SelectMany(r => Deadline.SixMonths(r.Name, r.Day, calendar)).ToList();
        var why = timeToGive.Readings.Select(r => Reason.Of("Civ. Code § 9558", $"On the reading «{r.Name}» the time to give a stop payment notice ends {r.Day}; the action is brought within six months after it.")).ToList();
        if (why.Count == 0)
            why.Add(Reason.Of("Civ. Code § 9558", $"Six months after the time to give a stop payment notice ends; that time does not run yet."));
        var filed = facts.FirstDayOf<ActionFiled>();
        var standing = readings.Count == 0 ? Standing.NotYet : Deadline.StandingOf(facts.AsOf, readings, filed, timeToGive.EndFirm);
        return Deadline.Finding("payment-bond.action-last-day", "Action on the payment bond", standing, readings, calendar, why, timeToGive.EndKnown);
    }
}
