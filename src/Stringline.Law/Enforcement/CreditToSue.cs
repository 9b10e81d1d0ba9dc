using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.Enforcement;

/// <summary>The time to sue after credit.</summary>
internal static class CreditToSue
{
    private const string Section = "Civ. Code § 8460(b)";

    /// <summary>
    /// 90 days after the credit ends, and never later than one year after the work was completed. Where the last credit was recorded
    /// late, and so holds only against those who have not bought or lent since, or may have been recorded before the claim, the time without it stands
    /// beside.
    /// </summary>
    [Rule("Civ. Code § 8460(b)")]
    public static Finding Finding(FactsAsOf facts, ClaimSuits suits, ClaimSuit leading, List<CreditRecorded> credits, CompletionReadings completion, OpenDays calendar)
    {
        var ninety = Period.LastDay(leading.Recorded.Earliest, ActionDays.DaysToSue);
        var latest = credits[0];
        CreditRecorded? inTime = null;
        foreach (var credit in credits)
        {
            if (credit.Until > latest.Until)
                latest = credit;
            if (Days.Of(credit.On) is { } on && on.Latest <= ninety && on.Earliest >= leading.Recorded.Latest && (inTime is null || credit.Until > inTime.Until))
                inTime = credit;
        }

        var readings = new List<Reading>();
        var why = new List<Reason>();
        AddAfter(latest, "90 days after the credit ends", Reason.Of(Section, $"The credit ends {latest.Until}; the action must be brought within 90 days after: {Period.LastDay(latest.Until, ActionDays.DaysToSue)}.", [latest]));
        if (inTime is null)
            AddEnd(ninety, "90 days after recording, if the notice of credit does not hold", Reason.Of("Civ. Code § 8460(b)", $"If the notice of credit was recorded before the claim, or late and someone had bought or taken a security in good faith before it, the time ended 90 days after the claim was recorded: {ninety}.", [leading.Claim]));
        else if (inTime.Until < latest.Until)
            AddAfter(inTime, "90 days after the credit recorded in time, if the late one does not hold", Reason.Of("Civ. Code § 8460(b)(2)", $"If someone bought or took a security in good faith before the later notice of credit, the credit that ends {inTime.Until} counts: {Period.LastDay(inTime.Until, ActionDays.DaysToSue)}.", [inTime]));

        // While an earlier claim stands the owner will say that this one is the same claim, whose 90 days ran from the first (decision 0008).
        foreach (var earlier in suits.Chain)
        {
            if (ReferenceEquals(earlier, leading))
                break;
            if (!credits.Exists(c => c.On.Latest <= earlier.FirstEnd))
                AddEnd(earlier.FirstEnd, $"90 days after the recording of the claim of {earlier.Recorded}, if that is the same claim and the notice of credit came too late for it", Reason.Of("Civ. Code § 8460(b)(2)", $"If the claim recorded {leading.Recorded} is that of {earlier.Recorded} amended, the notice of credit was recorded after the 90 days of the first, and holds only if nobody had bought or taken a security in good faith before it.", [earlier.Claim]));
        }

        if (suits.IsUnsure(leading))
        {
            foreach (var other in suits.Chain)
            {
                if (!ReferenceEquals(other, leading) && !credits.Exists(c => !Credit.IsOfEarlierClaim(c, other)))
                    AddEnd(other.FirstEnd, $"90 days after the recording of the claim of {other.Recorded}, which has no credit", Reason.Of("Civ. Code § 8460(a)", $"The claim to which the credit was given may not count; that recorded {other.Recorded} has no credit, and its 90 days end on {other.FirstEnd}.", [other.Claim]));
            }
        }

        void AddAfter(CreditRecorded credit, string name, Reason reason) => AddEnd(Period.LastDay(credit.Until, ActionDays.DaysToSue), name, reason);

        void AddEnd(LocalDate end, string name, Reason reason)
        {
            why.Add(reason);
            foreach (var reading in completion.Open)
            {
                foreach (var completed in DaysToTry.Ends(reading.On))
                {
                    var wall = Period.AddYears(completed, 1);
                    var of = reading.NameOn(completed);
                    readings.Add(wall < end ? Deadline.Own($"one year after {of}", wall, calendar) : Deadline.Own(name, end, calendar));
                }
            }

            // Where every completion may fail the year may not have begun, and the end of the credit alone ends the time.
            if (!completion.EndFirm)
                readings.Add(Deadline.Own(name, end, calendar));
        }

        foreach (var reading in completion.Open)
            why.Add(Reason.Of(Section, $"Never later than one year after completion of the work; on the reading «{reading.Name}» {new Days(Period.AddYears(reading.On.Earliest, 1), Period.AddYears(reading.On.Latest, 1))}.", reading.Why));
        if (completion.Open.Count == 0)
            why.Add(Reason.NotApplied(Section, $"The one year does not run: the work is not complete on any reading."));
        readings = Deadline.Sorted(readings);
        var suit = ClaimSuit.Of(facts, leading.Claim, leading.Recorded, readings, suits.Unsure, calendar);
        if (suit.Action is { } action)
            why.Add(Reason.Of(Section, $"Action filed {Days.Of(action.On)}.", [action]));
        why.Add(Reason.Of("Civ. Code § 8460(a)", $"Civ. Code § 8460(a) and its 90 days after recording do not apply where a notice of credit holds.", [leading.Claim]));

        // As for the action without credit: a released claim is nothing to enforce, and one that may be released is in doubt.
        var standing = suits.Released switch
        {
            Verdict.Yes => Standing.Done,
            Verdict.Open => Standing.InDoubt,
            Verdict.No => suit.Standing,
            _ => throw new InvalidOperationException($"No such verdict: {suits.Released}."),
        };
        return Deadline.Finding("credit.enforcement-last-day", "Action after credit", standing, readings, calendar, why,
            questions: [new Question("Is the agreement on credit mutual and signed by the owner? It must be one of claimant and owner.")]);
    }
}
