using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>The time to sue after credit.</summary>
internal static class CreditToSue
{
    private const string Section = "Civ. Code § 8460(b)";

    /// <summary>
    /// 90 days after the credit ends, and never later than one year after the work was completed. Where the last credit was recorded
    /// late, and so holds only against those who have not bought or lent since, or may have been recorded before the claim, the time
    /// without it stands beside.
    /// </summary>
    [Rule("Civ. Code § 8460(b)")]
    public static Outcome Of(
        FactsAsOf facts, ClaimSuits suits, ClaimSuit leading, List<CreditRecorded> credits, CompletionReadings completion,
            OpenDays calendar)
    {
        var toRecord = facts.Numbers.On(Number.RecordCredit, leading.Recorded.Earliest);
        var toSue = facts.Numbers.On(Number.SueOnClaim, leading.Recorded.Earliest);
        var lastToRecord = toRecord.LastDay(leading.Recorded.Earliest);
        var withoutCredit = toSue.LastDay(leading.Recorded.Earliest);
        var latest = credits[0];
        CreditRecorded? inTime = null;
        foreach (var credit in credits)
        {
            if (credit.Until > latest.Until)
                latest = credit;
            if (DaySpan.Of(credit.On) is { } on && on.Latest <= lastToRecord && on.Earliest >= leading.Recorded.Latest
                && (inTime is null || credit.Until > inTime.Until))
                inTime = credit;
        }

        var readings = new List<Reading>();
        var why = new List<Reason>();
        var afterCredit = facts.Numbers.On(Number.SueAfterCredit, latest.Until);
        AddAfter(latest, $"{afterCredit.Text} after the credit ends", Reason.Of(Section,
            $"The credit ends {latest.Until}; the action must be brought "
                + $"within {afterCredit} after: {afterCredit.LastDay(latest.Until)}.", [latest]));
        if (inTime is null)
            AddEnd(withoutCredit, $"{toSue.Text} after recording, if the notice of credit does not hold",
                Reason.Of("Civ. Code § 8460(b)", $"If the notice of credit was recorded before the claim, or late and someone had bought "
                    + $"or taken a security in good faith before it, the time ended {toSue} after the claim was "
                    + $"recorded: {withoutCredit}.", [leading.Claim]));
        else if (inTime.Until < latest.Until)
            AddAfter(inTime, $"{facts.Numbers.On(Number.SueAfterCredit, inTime.Until).Text} after the credit recorded in time, if the late "
                + $"one does not hold",
                Reason.Of("Civ. Code § 8460(b)(2)", $"If someone bought or took a security in good faith before the later notice of "
                    + $"credit, the credit that ends {inTime.Until} counts: {facts.Numbers.LastDay(Number.SueAfterCredit, inTime.Until)}.",
                    [inTime]));

        // While an earlier claim stands the owner will say that this one is the same claim, whose 90 days ran from the first (decision
        // 0008).
        foreach (var earlier in suits.Chain)
        {
            if (ReferenceEquals(earlier, leading))
                break;
            var ofEarlier = facts.Numbers.On(Number.RecordCredit, earlier.Recorded.Earliest);
            if (!credits.Exists(c => c.On.Latest <= ofEarlier.LastDay(earlier.Recorded.Earliest)))
                AddEnd(earlier.FirstEnd, $"{facts.Numbers.On(Number.SueOnClaim, earlier.Recorded.Earliest)} after the recording of the "
                    + $"claim of {earlier.Recorded}, if that is the same claim and the notice of credit came too late for "
                    + $"it", Reason.Of("Civ. Code § 8460(b)(2)",
                        $"If the claim recorded {leading.Recorded} is that of {earlier.Recorded} amended, the notice of credit was "
                            + $"recorded after the {ofEarlier} of the first, and holds only if nobody had bought or taken a security in "
                            + $"good faith before it.", [earlier.Claim]));
        }

        if (suits.IsUnsure(leading))
        {
            foreach (var other in suits.Chain)
            {
                if (!ReferenceEquals(other, leading) && !credits.Exists(c => !Credit.IsOfEarlierClaim(c, other)))
                    AddEnd(other.FirstEnd, $"{facts.Numbers.On(Number.SueOnClaim, other.Recorded.Earliest)} after the recording of the "
                        + $"claim of {other.Recorded}, which has no "
                        + $"credit",
                        Reason.Of("Civ. Code § 8460(a)", $"The claim to which the credit was given may not count; that "
                            + $"recorded {other.Recorded} has no credit, and "
                            + $"its {facts.Numbers.On(Number.SueOnClaim, other.Recorded.Earliest)} end on {other.FirstEnd}.",
                            [other.Claim]));
            }
        }

        void AddAfter(CreditRecorded credit, Sentence name, Reason reason) =>
            AddEnd(facts.Numbers.LastDay(Number.SueAfterCredit, credit.Until), name, reason);

        void AddEnd(LocalDate end, Sentence name, Reason reason)
        {
            why.Add(reason);
            foreach (var reading in completion.Open)
            {
                foreach (var completed in CandidateDays.Ends(reading.On))
                {
                    var atMost = facts.Numbers.On(Number.SueAfterCompletion, completed);
                    var wall = atMost.LastDay(completed);
                    var of = reading.WordsOn(completed);
                    readings.Add(wall < end
                        ? Deadline.Own($"{atMost.Spelled} after {of}", wall, calendar) : Deadline.Own(name, end, calendar));
                }
            }

            // Where every completion may fail the year may not have begun, and the end of the credit alone ends the time.
            if (!completion.EndFirm)
                readings.Add(Deadline.Own(name, end, calendar));
        }

        foreach (var reading in completion.Open)
        {
            var year = facts.Numbers.On(Number.SueAfterCompletion, reading.On.Earliest);
            var ends = reading.On.LastDay(facts.Numbers, Number.SueAfterCompletion);
            why.Add(Reason.Of(Section,
                $"Never later than {year.Spelled} after completion of the work; on the reading «{reading.Words}» {ends}.", reading.Why));
        }

        if (completion.Open.Count == 0)
        {
            var year = facts.Numbers.On(Number.SueAfterCompletion, facts.AsOf);
            why.Add(Reason.NotApplied(Section, $"The {year.Spelled} does not run: the work is not complete on any reading."));
        }

        readings = Deadline.Sorted(readings);
        var suit = ClaimSuit.Of(facts, leading.Claim, leading.Recorded, readings, suits.Unsure, calendar);
        if (suit.Action is { } action)
            why.Add(Reason.Of(Section, $"Action filed {DaySpan.Of(action.On)}.", [action]));
        why.Add(Reason.Of("Civ. Code § 8460(a)", $"Civ. Code § 8460(a) and its {toSue} after recording do not apply where a notice of "
            + $"credit holds.", [leading.Claim]));

        // As for the action without credit: a released claim is nothing to enforce, and one that may be released is in doubt.
        var standing = suits.Released switch
        {
            Verdict.Yes => Standing.Done,
            Verdict.Open => Standing.InDoubt,
            Verdict.No => suit.Standing,
            _ => throw new InvalidOperationException($"No such verdict: {suits.Released}."),
        };
        return new Outcome(Deadline.Of(standing, readings, calendar), new Words(why,
            [new Question($"Is the agreement on credit mutual and signed by the owner? It must be one of claimant and owner.")]));
    }

    /// <summary>The finding <c>credit.enforcement-last-day</c>, where a credit is recorded.</summary>
    public static Finding? Finding(Outcome? credit) => credit?.Finding("credit.enforcement-last-day", "Action after credit");
}
