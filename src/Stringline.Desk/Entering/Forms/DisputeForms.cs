using Stringline.Exchange;

namespace Stringline.Desk.Entering.Forms;

/// <summary>What is done where payment is refused, before a suit.</summary>
internal static class DisputeForms
{
    private const string Group = "When payment is refused";

    /// <summary>The forms.</summary>
    public static IReadOnlyList<EntryForm> All { get; } =
    [
        new("dispute-claim-sent", "Claim sent to the owner for dispute resolution", Group, "A claim under the claim procedure of private or public works, by registered or certified mail.")
        {
            StartsToday = true,
            Fields =
            [
                Usual.MaybeAmount("Amount claimed", "if it is for money"),
                new("received", "The owner received it on", Answer.Day),
                Usual.MaybeManner("How it was sent"),
                new("extendedTo", "Time to answer extended to", Answer.Day) { Hint = "by agreement in writing" },
                new("nextMeeting", "On public works: its governing body meets next on", Answer.Day) { Hint = "where it must approve the answer; it then has until three days after that meeting" },
                new("documentsAsked", "On public works: a local agency asked for more documents on", Answer.Day) { Hint = "Pub. Contract Code § 20104.2" },
                new("documentsGiven", "It received them on", Answer.Day),
            ],
            Section = "Civ. Code § 8850",
        },
        new("dispute-claim-answered", "The owner answered that claim", Group, "The owner or public body said in writing what it disputes and what it does not.")
        {
            DayLabel = "The day it answered",
            Fields = [new("undisputed", "What it leaves undisputed", Answer.Money)],
            Section = "Civ. Code § 8850(d); Pub. Contract Code § 9204(d)(1)",
        },
        new("conference-demanded", "Conference demanded", Group, "You demanded a meeting to settle what is in dispute.")
        {
            StartsToday = true, Fields = [Usual.MaybeManner()], Section = "Civ. Code § 8850(e); Pub. Contract Code § 9204(d)(2)",
        },
        new("conference-held", "Conference held", Group, "The meeting to settle took place.")
        {
            DayLabel = "The day it was held", Section = "Civ. Code § 8850(e); Pub. Contract Code § 9204(d)(2)",
        },
        new("claim-request-made", "A subcontractor asked to have its claim presented", Group, "A subcontractor asked the contractor to present its claim to the owner.")
        {
            DayLabel = "The day it asked", Fields = [Usual.MaybeAmount("Amount claimed")], Section = "Civ. Code § 8850(j); Pub. Contract Code § 9204(d)(5)",
        },
        new("claim-request-answered", "The contractor answered that request", Group, "The contractor told the subcontractor whether it presented the claim.")
        {
            DayLabel = "The day it answered",
            Fields = [Usual.YesNo("presented", "Was the claim presented?")],
            Section = "Civ. Code § 8850(j); Pub. Contract Code § 9204(d)(5)",
        },
        new("disputed-work-done", "Told the payer that the disputed work is done", Group, "The payer answers within 10 days; retention held back for that work is due within 10 days after it accepts.")
        {
            StartsToday = true,
            Fields =
            [
                new("accepted", "The payer accepted the work on", Answer.Day),
                new("rejected", "The payer rejected it on", Answer.Day) { Hint = "not both" },
            ],
            Section = "Civ. Code § 8816",
        },
        new("stop-work-notice-given", "Stop work notice given", Group, "You gave notice that you will stop work unless you are paid; on private works.")
        {
            StartsToday = true, Section = "Civ. Code § 8834",
            Fields =
            [
                Usual.MaybeTo("To whom it, or a copy, went"),
                new("posted", "Notice of intent posted at the site and its main office on", Answer.Day) { Hint = "the first day it can have been, where that is in doubt" },
                new("postedBy", "Posted by that day at the latest", Answer.Day) { Hint = "only where the day is in doubt" },
            ],
        },
        new("suspension-notice-sent", "Notice before suspending work sent", Group, "Under the claim procedure of 2026, on private works: the notice that payment is due, and thirty days after it the ten-day notice of intent to stop work. Both go by registered or certified mail with return receipt requested.")
        {
            DayLabel = "The day it was mailed",
            StartsToday = true,
            Fields =
            [
                new("notice", "Which notice", Answer.OneOf)
                {
                    Required = true,
                    Choices = Usual.Words(JobFileWords.SuspensionNotice, "that payment is due, or that the claim is denied", "the ten-day notice of intent to stop work"),
                },
                Usual.MaybeManner(),
            ],
            Section = "Civ. Code § 8850(k)",
        },
        new("security-demanded", "Security demanded from the owner", Group, "You demanded the security that the owner of a large private work must give.")
        {
            StartsToday = true, Fields = [Usual.MaybeManner()], Section = "Civ. Code § 8712",
        },
        new("security-provided", "Security provided by the owner", Group, "The owner of a large private work gave the security: a bond, a letter of credit or an escrow account. Work may then no longer be suspended for want of it.")
        {
            DayLabel = "The day it was provided",
            Fields = [Usual.MaybeAmount("Amount of the security"), new("until", "It ended on", Answer.Day) { Hint = "only where it was not maintained" }],
            Section = "Civ. Code § 8712",
        },
    ];
}
