using Stringline.Law.Bankruptcy;
using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PaymentBond;

/// <summary>A claim on the payment bond of a private work (Civ. Code §§ 8600-8614).</summary>
public static class PrivatePaymentBond
{
    /// <summary>
    /// The findings <c>payment-bond.notice-last-day</c>, <c>.amount</c> and <c>.action-last-day</c>; none where the file knows of no bond.
    /// </summary>
    public static IReadOnlyList<Finding> Findings(
        FactsAsOf facts, Reach reach, Amounts amounts, CompletionReadings completion, IReadOnlyList<OwnersNotice> notices,
            OpenDays calendar)
    {
        if (facts.Job.Work.PaymentBond is null && facts.Job.In(PartyCapacity.Surety).Count == 0)
            return [];
        var right = BondRight.OnPrivateWork(facts);
        var need = LaborerGivesNone(facts) ?? (reach.Kind == ReachKind.NoneDue
            ? new BondNoticeNeed(null, Standing.InDoubt) : BondNoticeNeed.Of(facts, reach, BondLaw.Private));
        var notice = BondNotice.Of(facts, need, BondServed.Of(facts), right, completion, notices, BondLaw.Private, calendar);
        var last = LastDayToSue(facts, notice, right, completion, calendar, out var stay);
        List<Finding> findings =
        [
            BondNotice.Finding(notice), BondAmount.Finding(facts, reach, amounts, notice, last, right, BondLaw.Private),
                ActionOnBond.Finding(last),
        ];
        if (stay?.Instead(facts, "payment-bond.stay-last-day", last.Deadline) is { } instead)
            findings.Add(instead);
        return findings;
    }

    // A completion before the recording may fail, where it is not certain: then the work may have been completed after it all the same; but
    // not after a day by which it certainly was.
    private static bool MayBeCompletedAfter(LocalDate bond, CompletionReadings completion)
    {
        var before = false;
        foreach (var reading in completion.Open)
        {
            if (reading.Firmness != Firmness.Certain)
                before |= bond >= reading.On.Earliest;
            else if (reading.On.Latest < bond)
                return false;
        }

        return before;
    }

    [Rule("Civ. Code § 8612(e)")]
    private static BondNoticeNeed? LaborerGivesNone(FactsAsOf facts) => facts.Job.Claimant.Role == ClaimantRole.Laborer
        ? new BondNoticeNeed(Reason.Of("Civ. Code § 8612(e)", $"A laborer need give no notice for a claim on the bond."), Standing.Lost)
        : null;

    /// <summary>
    /// Six months after completion where the bond was recorded before completion; else four years from when the claim accrued, so
    /// that the six months are planned on where the file does not show the recording. Of a bond recorded on the day of completion it may be
    /// said that it was recorded before, for a day has hours: both readings stand, the six months to plan on.
    /// </summary>
    [Rule("Civ. Code § 8609")]
    [Rule("Civ. Code § 8610")]
    [Rule("Civ. Code § 8610", Sure = Sure.OurReading)]
    [Rule("Code Civ. Proc. § 337(a)", Sure = Sure.OurReading)]
    private static Outcome LastDayToSue(FactsAsOf facts, Outcome notice, BondRight right, CompletionReadings completion, OpenDays calendar,
        out StayedSuit? stay)
    {
        var recorded = facts.Job.Work.PaymentBond?.Recorded;
        var readings = new List<Reading>();
        var why = new List<Reason>(right.Why);
        if (notice.Standing == Standing.Lost)
            why.Add(Reason.Of("Civ. Code § 8612(a)", $"The bond is enforced by one who gave preliminary notice or notice to surety and "
                + $"principal, and neither was given in time.", [.. notice.Why]));
        foreach (var reading in completion.Open)
        {
            // A completion in doubt on both sides of the recording gives the four years on one side and the six months on the other.
            foreach (var completed in CandidateDays.AroundDay(reading.On, recorded))
            {
                var name = reading.WordsOn(completed);
                if (recorded is not { } day || day <= completed)
                {
                    var months = facts.Numbers.On(Number.SueOnBond, completed);
                    readings.AddRange(Deadline.Months($"{months.Spelled} after {name}", completed, months, calendar));
                    why.Add(Reason.Of("Civ. Code § 8610",
                        $"On the reading «{name}» the action is brought within {months.Spelled} after {completed}.", reading.Why));
                }

                if (recorded >= completed)
                {
                    var years = facts.Numbers.On(Number.SueOnBondNotRecorded, facts.FirstFurnished?.Earliest ?? completed);
                    var first = years.LastDay(facts.FirstFurnished?.Earliest ?? completed);
                    var last = facts.Numbers.LastDay(Number.SueOnBondNotRecorded, facts.LastFurnished?.Earliest ?? completed);
                    readings.Add(Deadline.Own($"{years.Spelled} from the first work, since the bond was not recorded before {name}", first,
                        calendar));
                    if (last != first)
                        readings.Add(Deadline.Own($"{years.Spelled} from the last work, since the bond was not recorded before {name}",
                            last, calendar));
                    why.Add(Reason.NotApplied("Civ. Code § 8610",
                        $"On the reading «{name}» the bond was recorded on {recorded!.Value}, not surely before "
                            + $"completion.", [.. reading.Why.Facts]));
                    why.Add(Reason.Of("Code Civ. Proc. § 337(a)", $"So the general {years.Spelled} apply. They begin as each sum falls "
                        + $"due: counted from the first work they end on {first}, from the last on {last}; plan on the "
                        + $"earlier.", reading.Why));
                }
            }
        }

        if (recorded is { } bond && MayBeCompletedAfter(bond, completion))
        {
            var earliest = bond;
            if (facts.LastFurnished is { } worked)
                earliest = LocalDate.Max(earliest, worked.Earliest);
            var months = facts.Numbers.On(Number.SueOnBond, earliest);
            readings.AddRange(Deadline.Months(
                $"{months.Spelled}, if the work was completed only after the bond was recorded", earliest, months, calendar));
            why.Add(Reason.Of("Civ. Code § 8610", $"It may be that the work was completed only when the bond had been recorded "
                + $"on {bond}. Then the action is brought within {months.Spelled} after completion, {earliest} at the earliest."));
        }

        if (readings.Count == 0)
            why.Add(Reason.Of("Civ. Code § 8610", $"The time to sue is counted from completion of the work, and nothing in the file "
                + $"completes it."));
        if (recorded is null)
            why.Add(Reason.Of("Civ. Code § 8610", $"The file does not show that the bond was recorded before completion; "
                + $"the {facts.Numbers.On(Number.SueOnBond, facts.AsOf).Spelled} are planned on, and an unrecorded bond "
                + $"leaves {facts.Numbers.On(Number.SueOnBondNotRecorded, facts.AsOf).Spelled} (Code Civ. Proc. § 337)."));
        why.AddRange(ActionOnBond.Why(facts, BondLaw.Private, null));
        var stayed = stay = ActionOnBond.StayOf(facts, readings);
        var standing = notice.Standing == Standing.Lost ? Standing.Lost
            : ActionOnBond.StandingOf(facts, readings, completion.EndFirm && recorded is not null, null, stay);
        stay?.AddTo(readings, standing);
        why.AddRange(ActionOnBond.WhyStayed(facts, stay, standing));
        return new Outcome(
            Deadline.Of(right.Limit(standing), readings, calendar, endKnown: completion.EndKnown && stay is not { HasNoEnd: true }),
            new Words(() => why, () =>
            [
                .. right.Questions, .. ActionOnBond.Questions(facts), .. notice.Standing == Standing.Lost
                    ? [] : ActionOnBond.AskStay(stayed, standing),
                .. recorded is null
                    ? (Question[])[new Question($"On which day was the payment bond recorded?{HeadField.WorkPaymentBondRecorded:aside}")]
                    : [],
            ]));
    }
}
