using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.PaymentBond;

/// <summary>A claim on the payment bond of a private work (Civ. Code §§ 8600-8614).</summary>
public static class PrivatePaymentBond
{
    /// <summary>The findings <c>payment-bond.notice-last-day</c> and <c>payment-bond.action-last-day</c>; none where the file knows of no bond.</summary>
    public static IEnumerable<Finding> Findings(
        FactsAsOf facts, Reach reach, CompletionReadings completion, IReadOnlyList<OwnersNotice> notices, OpenDays calendar)
    {
        if (facts.Job.Work.PaymentBond is null && facts.Job.In(PartyCapacity.Surety).Count == 0)
            yield break;
        yield return BondNotice.Finding(facts, NoticeNotNeeded(facts, reach), completion, notices, BondNotice.Private, calendar);
        yield return LastDayToSue(facts, completion, calendar);
    }

    /// <summary>A laborer needs no notice, and a preliminary notice stands in for the bond notice.</summary>
    [Rule("Civ. Code § 8612(a)")]
    [Rule("Civ. Code § 8612(e)")]
    private static Reason? NoticeNotNeeded(FactsAsOf facts, Reach reach)
    {
        if (facts.Job.Claimant.Role == ClaimantRole.Laborer)
            return Reason.Of("Civ. Code § 8612(e)", $"A laborer need give no notice for a claim on the bond.");
        return reach.Kind switch
        {
            ReachKind.Whole => Reason.Of("Civ. Code § 8612(a)", $"Preliminary notice was given in time, so no other notice is needed for the bond."),
            ReachKind.NoneDue => null,
            ReachKind.Late or ReachKind.NotGiven => null,
            _ => throw new InvalidOperationException($"No such reach: {reach.Kind}."),
        };
    }

    /// <summary>
    /// Six months after completion where the bond was recorded before completion; else four years from when the claim accrued, so
    /// that the six months are planned on where the file does not show the recording.
    /// </summary>
    [Rule("Civ. Code § 8609")]
    [Rule("Civ. Code § 8610")]
    private static Finding LastDayToSue(FactsAsOf facts, CompletionReadings completion, OpenDays calendar)
    {
        var recorded = facts.Job.Work.PaymentBond?.Recorded;
        var readings = new List<Reading>();
        var why = new List<Reason>();
        foreach (var reading in completion.Open)
        {
            // A completion in doubt on both sides of the recording gives the four years on one side and the six months on the other.
            foreach (var completed in DaysToTry.AroundDay(reading.On, recorded))
            {
                var name = reading.NameOn(completed);
                if (recorded is { } day && day >= completed)
                {
                    var years = facts.LastFurnished is { } furnished ? Period.AddYears(furnished.Earliest, 4) : Period.AddYears(completed, 4);
                    readings.Add(Deadline.Own($"four years, since the bond was recorded after {name}", years, calendar));
                    why.Add(Reason.NotApplied("Civ. Code § 8610", $"On the reading «{name}» the bond was recorded on {day}, not before completion.", [.. reading.Why.Facts]));
                    why.Add(Reason.Of("Code Civ. Proc. § 337(a)", $"So the general four years apply, counted here from the last work: {years}.", reading.Why));
                    continue;
                }

                readings.AddRange(Deadline.SixMonths($"six months after {name}", completed, calendar));
                why.Add(Reason.Of("Civ. Code § 8610", $"On the reading «{name}» the action is brought within six months after {completed}.", reading.Why));
            }
        }

        // Where every completion may fail, the work may have been completed after the recording all the same.
        if (!completion.EndFirm && recorded is { } bond && completion.Open.Any(r => bond >= r.On.Earliest))
        {
            var earliest = bond.PlusDays(1);
            if (facts.LastFurnished is { } worked)
                earliest = LocalDate.Max(earliest, worked.Earliest);
            readings.AddRange(Deadline.SixMonths("six months, if the work was completed only after the bond was recorded", earliest, calendar));
            why.Add(Reason.Of("Civ. Code § 8610", $"No day of completion is certain. If the work was completed only after the bond was recorded on {bond}, the action is brought within six months after completion, {earliest} at the earliest."));
        }

        if (readings.Count == 0)
            why.Add(Reason.Of("Civ. Code § 8610", $"The time to sue is counted from completion of the work, and nothing in the file completes it."));
        if (recorded is null)
            why.Add(Reason.Of("Civ. Code § 8610", $"The file does not show that the bond was recorded before completion; the six months are planned on, and an unrecorded bond leaves four years (Code Civ. Proc. § 337)."));
        var filed = facts.FirstDayOf<ActionFiled>();
        var standing = readings.Count == 0 ? Standing.NotYet
            : Deadline.StandingOf(facts.AsOf, readings, filed, completion.EndFirm && recorded is not null);
        return Deadline.Finding("payment-bond.action-last-day", "Action on the payment bond", standing, readings, calendar, why, completion.EndKnown,
            recorded is null ? [new Question("On which day was the payment bond recorded? Add work.paymentBond.recorded.")] : []);
    }
}
