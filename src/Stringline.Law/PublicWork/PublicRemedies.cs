using Stringline.Law.Completion;
using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PaymentBond;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.PromptPayment;
using Stringline.Law.Reasoning;
using Stringline.Law.StopPaymentNotice;
using Stringline.Law.Time;

namespace Stringline.Law.PublicWork;

/// <summary>What replaces the lien on public work: the stop payment notice and the payment bond (Civ. Code §§ 9100, 9350-9566).</summary>
public static class PublicRemedies
{
    /// <summary>Days from a recorded notice of completion, acceptance or cessation.</summary>
    public const int DaysFromRecording = 30;

    /// <summary>Days from completion or cessation where none is recorded.</summary>
    public const int DaysFromCompletion = 90;

    /// <summary>All findings of public work but the lien and the licence.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, Reach reach, Waterfall demand, OpenDays calendar)
    {
        var notice = PublicNotice.LastDay(facts, reach, calendar);
        yield return notice;
        if (PublicNotice.ReachesBackTo(reach, notice) is { } reaches)
            yield return reaches;
        var completion = PublicCompletion.Of(facts);
        yield return PublicCompletion.Finding(facts, completion);
        if (NotForDirectContractor(facts) is { } none)
        {
            yield return Deadline.Finding("stop-payment-notice.last-day", "Stop payment notice: last day to give", Standing.Lost, [], calendar, [none]);
            foreach (var finding in PublicMoneyDue.Findings(facts, completion, calendar))
                yield return finding;
            yield break;
        }

        var owners = OwnersNotice.Of(facts, calendar);
        var timeToGive = TimeToGive(facts, completion, owners, calendar, out var why);
        yield return LastDayToGive(facts, reach, notice, timeToGive, completion, why, calendar);
        yield return Amount(facts, demand);
        foreach (var finding in StopPaymentDays.ActionWindow(facts, timeToGive, completion.EndKnown, completion.EndFirm, StopPaymentDays.Public, calendar))
            yield return finding;
        yield return BondNotice.Finding(facts, BondNoticeNotNeeded(reach), completion, owners, BondNotice.Public, calendar);
        yield return BondAction(facts, timeToGive, completion, calendar);
        foreach (var finding in PublicMoneyDue.Findings(facts, completion, calendar))
            yield return finding;
    }

    [Rule("Civ. Code § 9100(b)")]
    private static Reason? NotForDirectContractor(FactsAsOf facts) => facts.Job.Claimant.Role == ClaimantRole.DirectContractor
        ? Reason.Of("Civ. Code § 9100(b)", $"A direct contractor has neither the stop payment notice nor the payment bond; its claim is against the public entity under the contract.")
        : null;

    /// <summary>
    /// Before 30 days after a notice of completion, acceptance or cessation is recorded, else before 90 days after completion.
    /// No copy to the claimant is needed for the shorter time.
    /// </summary>
    [Rule("Civ. Code § 9356(a)")]
    [Rule("Civ. Code § 9356(b)", Sure = Sure.FromMemory)]
    private static List<Reading> TimeToGive(FactsAsOf facts, CompletionReadings completion, IReadOnlyList<OwnersNotice> owners, OpenDays calendar, out List<Reason> why)
    {
        why = [];
        var readings = new List<Reading>();
        foreach (var reading in completion.Open)
        {
            var last = Period.LastDay(reading.On.Earliest, DaysFromCompletion);
            readings.Add(Deadline.Own(reading.Name, last, calendar));
            why.Add(Reason.Of("Civ. Code § 9356(b)", $"On the reading «{reading.Name}», 90 days after {reading.On.Earliest}: {last}.", reading.Why));
            if (!reading.On.IsExact)
                readings.Add(Deadline.Own(reading.Name + ", at the latest", Period.LastDay(reading.On.Latest, DaysFromCompletion), calendar));
        }

        var fromRecording = new List<Reading>();
        var shortest = LocalDate.MaxIsoValue;
        foreach (var notice in owners)
        {
            if (notice.HasForm == Verdict.No)
            {
                why.Add(notice.PassedOver("Civ. Code § 9356(a)"));
                continue;
            }

            var last = notice.Recorded.Plus(DaysFromRecording);
            why.Add(Reason.Of("Civ. Code § 9356(a)", $"A {notice.Words} was recorded {notice.Recorded}: 30 days after it, {last}.", [notice.Entry]));
            if (notice.HasForm == Verdict.Yes && SurelyCounts(facts, notice, completion))
                shortest = LocalDate.Min(shortest, last.Latest);
            foreach (var recorded in DaysToTry.Ends(notice.Recorded))
                fromRecording.Add(Deadline.Own($"30 days after the {notice.Words} of {LawText.IsoDay(recorded)}", Period.LastDay(recorded, DaysFromRecording), calendar));
        }

        // Where a recorded notice surely counts, it replaces the longer time; else both readings stand and the shorter is planned on.
        return Deadline.Sorted([.. readings.Where(r => r.Day <= shortest), .. fromRecording]);
    }

    private static bool SurelyCounts(FactsAsOf facts, OwnersNotice notice, CompletionReadings completion) => notice.Entry.Notice switch
    {
        OwnerNotice.Cessation => completion.Open.Count > 0 && notice.CessationIsEffective(LaborStop.Of(facts), out _) == Verdict.Yes,
        OwnerNotice.Completion or OwnerNotice.Acceptance => completion.Open.Count > 0 && completion.Open.All(r => DaysToTry.Ends(r.On).All(completed =>
            DaysToTry.Ends(notice.Recorded).All(recorded => notice.IsEffectiveIfCompletedOn(completed, recorded)))),
        _ => throw new InvalidOperationException($"No such notice: {notice.Entry.Notice}."),
    };

    [Rule("Civ. Code § 9356(a)")]
    private static Finding LastDayToGive(
        FactsAsOf facts, Reach reach, Finding notice, List<Reading> timeToGive, CompletionReadings completion, List<Reason> why, OpenDays calendar)
    {
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
        else if (timeToGive.Count == 0)
        {
            standing = given is null ? Standing.Open : Standing.Kept;
        }
        else
        {
            standing = Deadline.StandingOf(facts.AsOf, timeToGive, given, completion.EndFirm);
        }

        if (reach.Kind == ReachKind.NotGiven && standing is Standing.Open)
            why.Add(Reason.Of("Civ. Code § 9300(c)", $"Preliminary notice is a condition: give it first."));
        return Deadline.Finding("stop-payment-notice.last-day", "Stop payment notice: last day to give", standing, timeToGive, calendar, why, completion.EndKnown);
    }

    [Rule("Civ. Code § 9352(c)")]
    [Rule("Civ. Code § 9364")]
    private static Finding Amount(FactsAsOf facts, Waterfall demand) => new()
    {
        Id = "stop-payment-notice.amount",
        Title = "Stop payment notice: amount it can hold",
        Standing = demand.Demand > 0 ? Standing.Open : Standing.NotYet,
        Amount = demand.Demand,
        Why =
        [
            Reason.Of("Civ. Code § 9352(c)", $"Only what is due for work provided through the day of the notice: {demand.Demand} as of {facts.AsOf}."),
            Reason.Of("Civ. Code § 9364", $"The direct contractor may be let free the money by a bond of 125 percent of the claim: {ReleaseBond.AmountFor(demand.Demand)}."),
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
    private static Finding BondAction(FactsAsOf facts, List<Reading> timeToGive, CompletionReadings completion, OpenDays calendar)
    {
        var readings = timeToGive.SelectMany(r => Deadline.SixMonths(r.Name, r.Day, calendar)).ToList();
        var why = timeToGive.Select(r => Reason.Of("Civ. Code § 9558", $"On the reading «{r.Name}» the time to give a stop payment notice ends {r.Day}; the action is brought within six months after it.")).ToList();
        if (why.Count == 0)
            why.Add(Reason.Of("Civ. Code § 9558", $"Six months after the time to give a stop payment notice ends; that time does not run yet."));
        var filed = facts.FirstDayOf<ActionFiled>();
        var standing = readings.Count == 0 ? Standing.NotYet : Deadline.StandingOf(facts.AsOf, readings, filed, completion.EndFirm);
        return Deadline.Finding("payment-bond.action-last-day", "Action on the payment bond", standing, readings, calendar, why, completion.EndKnown);
    }
}
