using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// When work may be suspended under the claims procedure of private work: notice to the owner that payment is due, or that the claim is
/// denied; some days after it a notice of intent; then work may stop until payment is received (Civ. Code § 8850(k)).
/// </summary>
internal static class ClaimSuspension
{
    private const string Section = "Civ. Code § 8850(k)";
    private const string Id = "dispute-claim.suspension-first-day";
    private const string Title = "Claim under the 2026 procedure: suspend work, first day";

    /// <summary>The right of one whose claim the owner received.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="claim">The claim.</param>
    /// <param name="statement">The owner's statement on it.</param>
    /// <param name="calendar">The calendar.</param>
    /// <returns>The finding <c>dispute-claim.suspension-first-day</c>; null where nothing is due, all being disputed.</returns>
    [Rule(Section)]
    public static Finding? Of(FactsAsOf facts, DisputeClaimSent claim, OwnersStatement statement, OpenDays calendar)
    {
        var answers = facts.All<DisputeClaimAnswered>();
        var answered = answers.Count > 0 ? answers[^1] : null;
        LocalDate due;
        if (answered is null)
            due = statement.Last.Day.PlusDays(1);
        else if (answered is { Undisputed: > 0, On.Latest: { } on })
            due = calendar.RollForwardOnAnyList(facts.Numbers.LastDay(Number.OwnerPays, on)).PlusDays(1);
        else
            return null;
        var told = NoticeSent.Of(facts, SuspensionNotice.PaymentDue, due);
        if (told.Entry is null)
            return NotTold(facts, claim, due, answered is null, calendar);
        var isSure = PrivateClaim.IsSure(facts, claim) && (answered is not null || statement.Standing == Standing.Open);
        return Told(facts, told, due, isSure, calendar);
    }

    private static Finding NotTold(FactsAsOf facts, DisputeClaimSent claim, LocalDate due, bool isDenied, OpenDays calendar)
    {
        var first = LocalDate.Max(facts.AsOf, due);
        // The second notice is mailed on a day on which the post office is open.
        var days = facts.Numbers.On(Number.SecondSuspensionNotice, first);
        var second = calendar.RollForwardOnAnyList(days.LastDay(first));
        var wait = facts.Numbers.On(Number.SuspendAfterClaim, second);
        var stop = wait.FirstDayAfter(second);
        return Finding(facts.AsOf < due
            ? Standing.NotYet : Standing.InDoubt, new Reading($"if the first notice is mailed on the first day it can be", stop),
            [Reason.Of(Section, $"From {due} tell the owner, by registered or certified mail with return receipt requested, "
                + $"that {(isDenied ? "the claim is denied by silence" : "payment is due")}. Mailed on {first}, {days.Spelled} after it, "
                + $"on {second}, a {wait.Count}-day notice of intent to stop work may be mailed the same way; work may stop "
                + $"from {stop}.", [claim])],
            [new Question($"Has the owner been told by such mail, and when?{DisputeKinds.SuspensionNoticeSent:aside}")]);
    }

    private static Finding Told(FactsAsOf facts, NoticeSent told, LocalDate due, bool isSure, OpenDays calendar)
    {
        var days = facts.Numbers.On(Number.SecondSuspensionNotice, told.On.Latest);
        var from = days.LastDay(told.On.Latest);
        var intent = NoticeSent.Of(facts, SuspensionNotice.StopWork, from);
        var second = intent.Entry is null ? calendar.RollForwardOnAnyList(LocalDate.Max(facts.AsOf, from)) : intent.On.Latest;
        var wait = facts.Numbers.On(Number.SuspendAfterClaim, second);
        var stop = wait.FirstDayAfter(second);
        var isGood = isSure && told.IsGood && (intent.Entry is null || intent.IsGood);
        return Finding(
            facts.AsOf < stop ? Standing.NotYet : isGood ? Standing.Open : Standing.InDoubt,
            new Reading(intent.Entry is null
                ? (Sentence)$"if the {wait.Count}-day notice is mailed on the first day it can be"
                : $"the {NumberWords.Ordinal(wait.Count + 1)} day after the {wait.Count}-day notice", stop),
            [
                Reason.Of(Section, $"The owner was told {told.On} that payment is due or the claim denied.", [told.Entry!]),
                intent.Entry is null
                    ? Reason.Of(Section, $"{LawText.Capital(days.Spelled)} after that, on {second} at the earliest, mail the owner "
                        + $"a {wait.Count}-day notice of intent to stop work by registered or certified mail with return receipt "
                        + $"requested; work may stop from {stop}.")
                    : Reason.Of(Section, $"The {wait.Count}-day notice of intent to stop work was mailed {intent.On}: work may stop "
                        + $"from {stop}, until payment is received.", [intent.Entry]),
                .. told.Flaws($"before {due}, on which payment was first overdue or the claim denied"),
                .. intent.Flaws($"less than {days.Spelled} after the first, before {from}"),
            ],
            [.. told.Questions, .. intent.Questions]);
    }

    /// <summary>
    /// The subcontractor has the same right to suspend. Its day can be told once the contractor has presented the claim and the file says
    /// when the owner received it; to stop before is a breach, so no earlier day is shown.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="claim">The claim.</param>
    /// <param name="calendar">The calendar.</param>
    [Rule(Section)]
    public static Finding? OfSubcontractor(FactsAsOf facts, DisputeClaimSent claim, OpenDays calendar)
    {
        var presented = facts.All<ClaimRequestAnswered>() is { Count: > 0 } answers && answers[^1].Presented == true;
        var (statement, days) =
            (facts.Numbers.On(Number.OwnersStatement, facts.AsOf), facts.Numbers.On(Number.SecondSuspensionNotice, facts.AsOf));
        var wait = facts.Numbers.On(Number.SuspendAfterClaim, facts.AsOf);
        return presented && claim.Received is not null
            ? Of(facts, claim, PrivateClaim.StatementOn(facts, claim, calendar), calendar) : new Finding
        {
            Id = Id,
            Title = Title,
            Standing = Standing.NotYet,
            Why =
            [
                Reason.Of(Section, $"The subcontractors too may suspend work. Once the owner has received the claim from the contractor "
                    + $"and its {statement} have gone by in silence, or once the part that it does not dispute is overdue, tell the owner "
                    + $"so by registered or certified mail with return receipt requested; {days.Spelled} after that mail it "
                    + $"a {wait.Count}-day notice of intent to stop work in the same way; then work may stop.", [claim]),
            ],
            Questions =
            [
                presented
                    ? new Question($"On which day did the owner receive the claim from the "
                        + $"contractor?{DisputeKinds.DisputeClaimSent.At("received"):aside}") { Corrects = claim }
                    : new Question(
                        $"Did the contractor present the claim to the owner?{DisputeKinds.ClaimRequestAnswered.At("presented"):aside}"),
            ],
        };
    }

    private static Finding Finding(Standing standing, Reading reading, IReadOnlyList<Reason> why, IReadOnlyList<Question> questions) =>
        new()
    {
        Id = Id,
        Title = Title,
        Standing = standing,
        Readings = [reading],
        Band = new Band(reading, reading),
        Why = why,
        Questions = questions,
    };

    /// <summary>One of the two notices, as it was sent.</summary>
    /// <param name="Entry">The first that was not sent too early, else the last; null where none on a known day is told.</param>
    /// <param name="On">Its day.</param>
    /// <param name="IsEarly">Whether it was, or may have been, sent too early.</param>
    private readonly record struct NoticeSent(SuspensionNoticeSent? Entry, DaySpan On, bool IsEarly)
    {
        /// <summary>Whether it counts: not too early, and by the mail asked for as far as the file says.</summary>
        public bool IsGood => !IsEarly && !IsBadMail;

        private bool IsBadMail => Entry is { Manner: not (null or Manner.CertifiedMail or Manner.RegisteredMail) };

        /// <summary>What is to be asked of it.</summary>
        public Question[] Questions => Entry is { Manner: null }
            ? [new Question($"Was the notice before suspending work sent by registered or certified mail with return receipt "
                + $"requested?{DisputeKinds.SuspensionNoticeSent.At("manner"):aside}") { Corrects = Entry }]
            : [];

        public static NoticeSent Of(FactsAsOf facts, SuspensionNotice notice, LocalDate from)
        {
            NoticeSent found = default;
            foreach (var sent in facts.All<SuspensionNoticeSent>())
            {
                if (sent.Notice != notice || DaySpan.Of(sent.On) is not { } on)
                    continue;
                found = new NoticeSent(sent, on, on.Earliest < from);
                if (found.IsGood)
                    break;
            }

            return found;
        }

        public IEnumerable<Reason> Flaws(Sentence early)
        {
            if (Entry is null)
                yield break;
            if (IsEarly)
                yield return Reason.Of(Section, $"This notice was or may have been sent {early}: too early, send it again.", [Entry]);
            if (IsBadMail)
                yield return Reason.Of(Section, $"This notice goes by registered or certified mail, return receipt requested: send it "
                    + $"again that way.", [Entry]);
        }
    }
}
