using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>The notice of pendency of the action (Civ. Code § 8461; Code Civ. Proc. §§ 405.22, 405.23).</summary>
internal static class LisPendens
{
    private const string Section = "Civ. Code § 8461";

    /// <summary>The finding <c>lis-pendens.last-day</c>. A late notice still binds whoever comes after it.</summary>
    [Rule("Civ. Code § 8461")]
    public static Finding Finding(FactsAsOf facts, ActionFiled action, DaySpan filed, OpenDays calendar)
    {
        var days = facts.Numbers.On(Number.RecordPendency, filed.Earliest);
        var last = days.LastDay(filed.Earliest);
        Reading[] readings = [Deadline.Own($"{days.Text} after the action was filed", last, calendar)];
        LisPendensRecorded? best = null;
        var good = Verdict.No;
        foreach (var recorded in facts.All<LisPendensRecorded>())
        {
            var so = IsGood(recorded, filed);
            if (so == Verdict.No || good == Verdict.Yes)
                continue;
            (best, good) = (recorded, so);
        }

        var standing = Deadline.StandingOf(facts.AsOf, readings, best is null ? null : DaySpan.Of(best.On), endFirm: false);
        return Deadline.Of(good == Verdict.Open ? Standing.InDoubt : standing, readings, calendar)
            .Finding("lis-pendens.last-day", "Notice of pendency of action",
            () => Why(facts, action, filed, last), () => Ask(facts, filed));
    }

    /// <summary>
    /// Recorded after the action was commenced. Void toward an adverse party or owner of record to whom it was not first mailed, or if no
    /// proof of that mailing was recorded with it.
    /// </summary>
    [Rule("Code Civ. Proc. § 405.22")]
    [Rule("Code Civ. Proc. § 405.23")]
    private static Verdict IsGood(LisPendensRecorded recorded, DaySpan filed)
    {
        if (DaySpan.Of(recorded.On) is not { } on || on.Latest < filed.Earliest || recorded.MailedFirst == false
            || recorded.ProofRecorded == false)
            return Verdict.No;
        return recorded is { MailedFirst: true, ProofRecorded: true } && on.Earliest >= filed.Latest ? Verdict.Yes : Verdict.Open;
    }

    private static List<Reason> Why(FactsAsOf facts, ActionFiled action, DaySpan filed, LocalDate last)
    {
        var why = new List<Reason>
        {
            Reason.Of(Section, $"The claimant records a notice of pendency of the action after it is commenced and on or "
                + $"before {last}; buyers and lenders are bound only from its recording.", [action]),
            Reason.Of("Code Civ. Proc. § 405.22", $"Before it is recorded it is mailed, registered or certified with return receipt "
                + $"requested, to every known address of the adverse parties and of the owners on the latest assessment roll; where no "
                + $"address is known a declaration under penalty of perjury is recorded instead. A copy is filed with the court at once, "
                + $"and whoever is joined later is served likewise."),
            Reason.Of("Code Civ. Proc. § 405.23", $"Without that, and a proof of service as Code Civ. Proc. § 1013a has it recorded with "
                + $"the notice, it is void toward the one who was left out."),
        };
        foreach (var recorded in facts.All<LisPendensRecorded>())
        {
            var on = DaySpan.Of(recorded.On);
            why.Add(on is { } day && day.Latest < filed.Earliest
                ? Reason.NotApplied(Section, $"The notice recorded {day} came before the action of {filed}: it gives notice of no action "
                    + $"on this claim.", recorded)
                : recorded.MailedFirst == false
                ? Reason.NotApplied("Code Civ. Proc. § 405.23", $"The notice recorded {on} was not mailed before: void. Mail and record it "
                    + $"again.", recorded)
                : recorded.ProofRecorded == false
                ? Reason.NotApplied("Code Civ. Proc. § 405.23", $"The notice recorded {on} has no proof of its mailing recorded with it: "
                    + $"void. Record it again with the proof.", recorded)
                : Reason.Of(Section, $"Notice of pendency of action recorded {on}.", [recorded]));
        }

        return why;
    }

    private static List<Question> Ask(FactsAsOf facts, DaySpan filed)
    {
        var questions = new List<Question>();
        foreach (var recorded in facts.All<LisPendensRecorded>())
        {
            if (IsGood(recorded, filed) != Verdict.Open)
                continue;
            if (recorded.MailedFirst is null)
                questions.Add(new Question($"Was the notice of pendency mailed, registered or certified with return receipt, to every "
                    + $"adverse party and owner before it was "
                    + $"recorded?{ClaimKinds.LisPendensRecorded.At("mailedFirst"):aside}") { Corrects = recorded });
            if (recorded.ProofRecorded is null)
                questions.Add(
                    new Question($"Was a proof of that mailing recorded with the notice of "
                        + $"pendency?{ClaimKinds.LisPendensRecorded.At("proofRecorded"):aside}") { Corrects = recorded });
        }

        return questions;
    }
}
