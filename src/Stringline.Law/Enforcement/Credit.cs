using Stringline.Law.ClaimOfLien;
using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.Enforcement;

/// <summary>Extending the time to sue by credit (Civ. Code § 8460(b)).</summary>
public static class Credit
{
    private const string Section = "Civ. Code § 8460(b)";

    /// <summary>The findings <c>credit.last-day</c> and, once a notice of credit is recorded, <c>credit.enforcement-last-day</c>.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, ClaimRecorded? counts, CompletionReadings completion, OpenDays calendar)
    {
        if (counts is not { } claim || Days.Of(claim.On) is not { } recorded)
            yield break;
        var credits = facts.All<CreditRecorded>();
        yield return LastDayToRecord(facts, claim, recorded, credits, calendar);
        if (credits.Count > 0)
            yield return LastDayToSue(facts, claim, recorded, credits, completion, calendar);
    }

    /// <summary>
    /// Claimant and owner agree on credit, and notice of the fact and its terms is recorded within 90 days after the claim; or later,
    /// but then only before a purchaser or encumbrancer in good faith and for value. Credit may be given more than once
    /// (Richards v. Hillside Development (1960) 177 Cal.App.2d 776).
    /// </summary>
    [Rule("Civ. Code § 8460(b)(1)")]
    [Rule("Civ. Code § 8460(b)(2)")]
    private static Finding LastDayToRecord(FactsAsOf facts, ClaimRecorded claim, Days recorded, IReadOnlyList<CreditRecorded> credits, OpenDays calendar)
    {
        var lastDay = Period.LastDay(recorded.Earliest, ActionDays.DaysToSue);
        var why = new List<Reason>
        {
            Reason.Of("Civ. Code § 8460(b)(1)", $"If the owner agrees to give or take credit, record notice of the fact and terms of it by {lastDay}; have the owner sign it.", [claim]),
            Reason.Of("Civ. Code § 8460(b)(2)", $"Later it still counts, but only if nobody has bought or taken a security in good faith and for value in between."),
        };
        Days? firstRecorded = null;
        foreach (var credit in credits)
        {
            if (Days.Of(credit.On) is not { } on)
                continue;
            firstRecorded ??= on;
            why.Add(on.Latest <= lastDay
                ? Reason.Of("Civ. Code § 8460(b)(1)", $"Notice of credit recorded {on}, within the 90 days; the credit ends {credit.Until}.", [credit])
                : Reason.Of("Civ. Code § 8460(b)(2)", $"Notice of credit recorded {on}, after the 90 days: it holds only while nobody bought or took a security in good faith before it; the credit ends {credit.Until}.", [credit]));
        }

        List<Reading> readings = [Deadline.Own("90 days after the claim was recorded", lastDay, calendar)];
        // Past the ninetieth day a credit may still be good, so the right to give one is in doubt and never simply lost.
        var standing = UnlessReleased(facts, claim, Deadline.StandingOf(facts.AsOf, readings, firstRecorded, endFirm: false));
        return Deadline.Finding("credit.last-day", "Notice of credit: last day to record", standing, readings, calendar, why, endKnown: false);
    }

    /// <summary>
    /// 90 days after the credit ends, and never later than one year after the work was completed. Where the last credit was recorded
    /// late, and so holds only against those who have not bought or lent since, the time without it stands beside.
    /// </summary>
    [Rule("Civ. Code § 8460(b)")]
    private static Finding LastDayToSue(FactsAsOf facts, ClaimRecorded claim, Days recorded, IReadOnlyList<CreditRecorded> credits, CompletionReadings completion, OpenDays calendar)
    {
        var ninety = Period.LastDay(recorded.Earliest, ActionDays.DaysToSue);
        var latest = credits[0];
        CreditRecorded? inTime = null;
        foreach (var credit in credits)
        {
            if (credit.Until > latest.Until)
                latest = credit;
            if (Days.Of(credit.On) is { } on && on.Latest <= ninety && (inTime is null || credit.Until > inTime.Until))
                inTime = credit;
        }

        var readings = new List<Reading>();
        var why = new List<Reason>();
        AddAfter(latest, "90 days after the credit ends", Reason.Of(Section, $"The credit ends {latest.Until}; the action must be brought within 90 days after: {Period.LastDay(latest.Until, ActionDays.DaysToSue)}.", [latest]));
        if (inTime is null)
            AddEnd(ninety, "90 days after recording, if the late notice of credit does not hold", Reason.Of("Civ. Code § 8460(b)(2)", $"If someone bought or took a security in good faith before the notice of credit, the time ended 90 days after the claim was recorded: {ninety}.", [claim]));
        else if (inTime.Until < latest.Until)
            AddAfter(inTime, "90 days after the credit recorded in time, if the late one does not hold", Reason.Of("Civ. Code § 8460(b)(2)", $"If someone bought or took a security in good faith before the later notice of credit, the credit that ends {inTime.Until} counts: {Period.LastDay(inTime.Until, ActionDays.DaysToSue)}.", [inTime]));

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
        Days? filed = null;
        foreach (var action in facts.All<ActionFiled>())
        {
            // One brought before the claim was recorded does not enforce it.
            if (Days.Of(action.On)?.Latest < recorded.Earliest)
                continue;
            filed ??= Days.Of(action.On);
            why.Add(Reason.Of(Section, $"Action filed {Days.Of(action.On)}.", [action]));
        }

        return Deadline.Finding("credit.enforcement-last-day", "Action after credit", UnlessReleased(facts, claim, Deadline.StandingOf(facts.AsOf, readings, filed)), readings, calendar, why,
            questions: [new Question("Is the agreement on credit mutual and signed by the owner? It must be one of claimant and owner.")]);
    }

    // As for the action without credit: a released claim is nothing to enforce, and one that may be released is in doubt.
    private static Standing UnlessReleased(FactsAsOf facts, ClaimRecorded claim, Standing otherwise) => RecordedClaim.IsReleased(facts, claim) switch
    {
        Verdict.Yes => Standing.Done,
        Verdict.Open => Standing.InDoubt,
        _ => otherwise,
    };
}
