using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.Enforcement;

/// <summary>The time to bring an action on a recorded claim of lien (Civ. Code § 8460(a)).</summary>
public static class ActionDays
{
    /// <summary>Days after recording.</summary>
    public const int DaysToSue = 90;

    private const string Section = "Civ. Code § 8460(a)";

    /// <summary>
    /// The finding <c>enforcement.last-day</c>: 90 days after recording, without any credit. Without an action the claim expires.
    /// </summary>
    [Rule("Civ. Code § 8460(a)")]
    public static Finding Finding(FactsAsOf facts, ClaimRecorded? counts, OpenDays calendar)
    {
        if (counts is not { } claim || Days.Of(claim.On) is not { } recorded)
        {
            return Deadline.Finding("enforcement.last-day", "Action to enforce the lien", Standing.NotYet, [], calendar,
                [Reason.Of(Section, $"An action must be brought within {DaysToSue} days after the claim is recorded; none that counts is recorded yet.")]);
        }

        var readings = new List<Reading>();
        foreach (var day in recorded.IsExact ? new[] { recorded.Earliest } : [recorded.Earliest, recorded.Latest])
            readings.Add(Deadline.Own(recorded.IsExact ? $"{DaysToSue} days after recording" : $"recorded on {LawText.IsoDay(day)}", Period.LastDay(day, DaysToSue), calendar));
        var why = new List<Reason>
        {
            Reason.Of(Section, $"Claim recorded {recorded}; the action must be brought by {readings[0].Day}, else the claim expires and cannot be enforced. Neither a demand nor a notice of pendency of action stops the time.", [claim]),
        };
        return Deadline.Finding("enforcement.last-day", "Action to enforce the lien",
            StandingOf(facts, RecordedClaim.IsReleased(facts, counts), recorded, readings, why), readings, calendar, why);
    }

    private static Standing StandingOf(FactsAsOf facts, Verdict released, Days recorded, List<Reading> readings, List<Reason> why)
    {
        if (released != Verdict.No)
            return released == Verdict.Yes ? Standing.Done : Standing.InDoubt;
        foreach (var action in facts.All<ActionFiled>())
        {
            if (Days.Of(action.On) is not { } filed || filed.Latest < recorded.Earliest)
                continue;
            why.Add(Reason.Of(Section, $"Action filed {filed}.", [action]));
            if (filed.Latest <= readings[0].Day)
                return Standing.Kept;
            if (filed.Earliest <= (readings[^1].Rolled ?? readings[^1].Day))
            {
                why.Add(filed.Earliest > readings[^1].Day
                    ? Reason.Of("Code Civ. Proc. § 12a", $"Filed after the ninetieth day but by the day to which it rolls: in time under Mox, Inc. v. Leventhal (1928) 89 Cal.App. 253.")
                    : Reason.Of(Section, $"Whether that was within the {DaysToSue} days turns on a day that is in doubt."));
                return Standing.InDoubt;
            }
        }

        foreach (var credit in facts.All<CreditRecorded>())
        {
            why.Add(Reason.Of("Civ. Code § 8460(b)", $"A notice of credit was recorded; the time to sue then runs from the end of the credit, {credit.Until}.", [credit]));
            return Standing.InDoubt;
        }

        if (facts.AsOf <= readings[0].Day)
            return Standing.Open;
        return facts.AsOf > (readings[^1].Rolled ?? readings[^1].Day) ? Standing.Lost : Standing.InDoubt;
    }
}
