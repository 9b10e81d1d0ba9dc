namespace Stringline.Law.Facts;

/// <summary>What is done where payment is refused, before a suit.</summary>
internal static class DisputeKinds
{
    private const string Group = "When payment is refused";

    public static EntryKind DisputeClaimSent { get; } = new(
        "dispute-claim-sent", inFormat: 31, inJournal: 10, static (index, on) => new DisputeClaimSent { Index = index, On = on },
        [
            new Field.Money("amount", "Amount claimed",
                e => ((DisputeClaimSent)e).Amount, (e, dollars) => (DisputeClaimSent)e with { Amount = dollars })
            { Hint = "if it is for money", Range = MoneyRange.AboveZero },
            new Field.Day("received", "The owner received it on",
                e => ((DisputeClaimSent)e).Received, (e, day) => (DisputeClaimSent)e with { Received = day })
            { Meaning = "The day the owner received it.", Said = "received {0}" },
            Usual.Manner("How it was sent",
                e => (int?)((DisputeClaimSent)e).Manner, (e, word) => (DisputeClaimSent)e with { Manner = (Manner)word }) with
            { Meaning = "How it was sent." },
            new Field.Day("extendedTo", "Time to answer extended to",
                e => ((DisputeClaimSent)e).ExtendedTo, (e, day) => (DisputeClaimSent)e with { ExtendedTo = day })
            {
                Hint = "by agreement in writing",
                Meaning = "The day to which the parties extended, in writing, the payer's time to answer.",
                Said = "time to answer extended to {0}",
            },
            new Field.Day("nextMeeting", "On public works: its governing body meets next on",
                e => ((DisputeClaimSent)e).NextMeeting, (e, day) => (DisputeClaimSent)e with { NextMeeting = day })
            {
                Hint = "where it must approve the answer; it then has until three days after that meeting",
                Meaning = "The day on which the public entity's governing body meets next, where it must approve the answer; public "
                    + "works only.",
            },
            new Field.Day("documentsAsked", "On public works: a local agency asked for more documents on",
                e => ((DisputeClaimSent)e).DocumentsAsked, (e, day) => (DisputeClaimSent)e with { DocumentsAsked = day })
            {
                Hint = "Pub. Contract Code § 20104.2",
                Meaning = "The day on which a local agency asked in writing for further documents; public works only.",
                Said = "more documents asked for {0}",
            },
            new Field.Day("documentsGiven", "It received them on",
                e => ((DisputeClaimSent)e).DocumentsGiven, (e, day) => (DisputeClaimSent)e with { DocumentsGiven = day })
            { Meaning = "The day on which it received them.", Said = "given {0}" },
        ])
    {
        Meaning = "A claim under Civ. Code § 8850 sent by registered or certified mail.",
        Title = "Claim sent to the owner for dispute resolution",
        Group = Group,
        Help = "A claim under the claim procedure of private or public works, by registered or certified mail.",
        Section = "Civ. Code § 8850",
        StartsToday = true,
        Words = "Claim sent to the owner",
        Told = ["manner", "received", "extendedTo", "documentsAsked", "documentsGiven"],
        Check = static (e, faults) =>
        {
            var claim = (DisputeClaimSent)e;
            faults.NotBefore("extendedTo", claim.ExtendedTo, claim.On);
            if (claim.NextMeeting is not null)
                faults.OnlyOn(WorkKind.Public, "nextMeeting");
            faults.NotBefore("documentsAsked", claim.DocumentsAsked, claim.On);
            if (claim.DocumentsAsked is not null)
                faults.OnlyOn(WorkKind.Public, "documentsAsked");
            faults.Follows("documentsGiven", claim.DocumentsGiven, claim.DocumentsAsked, "the day on which they were asked for",
                "nothing: no `documentsAsked` says that any were asked for");
        },
    };

    public static EntryKind DisputeClaimAnswered { get; } = new(
        "dispute-claim-answered", inFormat: 45, inJournal: 44, static (index, on) => new DisputeClaimAnswered { Index = index, On = on },
        [
            new Field.Money("undisputed", "What it leaves undisputed",
                e => ((DisputeClaimAnswered)e).Undisputed, (e, dollars) => (DisputeClaimAnswered)e with { Undisputed = dollars })
            { Meaning = "What it leaves undisputed." },
        ])
    {
        Meaning = "The owner or public entity answered the claim in writing.",
        Title = "The owner answered that claim",
        Group = Group,
        Help = "The owner or public body said in writing what it disputes and what it does not.",
        Section = "Civ. Code § 8850(d); Pub. Contract Code § 9204(d)(1)",
        DayLabel = "The day it answered",
        Words = "Owner answered the claim",
    };

    public static EntryKind ConferenceDemanded { get; } = new(
        "conference-demanded", inFormat: 46, inJournal: 45, static (index, on) => new ConferenceDemanded { Index = index, On = on },
        [
            Usual.Manner("How",
                e => (int?)((ConferenceDemanded)e).Manner, (e, word) => (ConferenceDemanded)e with { Manner = (Manner)word }) with
            { Meaning = "How." },
        ])
    {
        Meaning = "A conference to settle the claim was demanded.",
        Title = "Conference demanded",
        Group = Group,
        Help = "You demanded a meeting to settle what is in dispute.",
        Section = "Civ. Code § 8850(e); Pub. Contract Code § 9204(d)(2)",
        StartsToday = true,
        Words = "Conference demanded",
    };

    public static EntryKind ConferenceHeld { get; } = new(
        "conference-held", inFormat: 47, inJournal: 46, static (index, on) => new ConferenceHeld { Index = index, On = on })
    {
        Meaning = "The conference was held.",
        Title = "Conference held",
        Group = Group,
        Help = "The meeting to settle took place.",
        Section = "Civ. Code § 8850(e); Pub. Contract Code § 9204(d)(2)",
        DayLabel = "The day it was held",
        Words = "Conference held",
    };

    public static EntryKind ClaimRequestMade { get; } = new(
        "claim-request-made", inFormat: 50, inJournal: 47, static (index, on) => new ClaimRequestMade { Index = index, On = on },
        [
            new Field.Money("amount", "Amount claimed",
                e => ((ClaimRequestMade)e).Amount, (e, dollars) => (ClaimRequestMade)e with { Amount = dollars })
            { Meaning = "What is claimed.", Range = MoneyRange.AboveZero },
        ])
    {
        Meaning = "A subcontractor asked the contractor to present its claim.",
        Title = "A subcontractor asked to have its claim presented",
        Group = Group,
        Help = "A subcontractor asked the contractor to present its claim to the owner.",
        Section = "Civ. Code § 8850(j); Pub. Contract Code § 9204(d)(5)",
        DayLabel = "The day it asked",
        Words = "Subcontractor asked to present its claim",
    };

    public static EntryKind ClaimRequestAnswered { get; } = new(
        "claim-request-answered", inFormat: 51, inJournal: 48, static (index, on) => new ClaimRequestAnswered { Index = index, On = on },
        [
            new Field.YesNo("presented", "Was the claim presented?",
                e => ((ClaimRequestAnswered)e).Presented, (e, truth) => (ClaimRequestAnswered)e with { Presented = truth })
            { Meaning = "Whether it was presented.", SaidOfYes = "presented", SaidOfNo = "not presented" },
        ])
    {
        Meaning = "The contractor told the subcontractor whether it presented the claim.",
        Title = "The contractor answered that request",
        Group = Group,
        Help = "The contractor told the subcontractor whether it presented the claim.",
        Section = "Civ. Code § 8850(j); Pub. Contract Code § 9204(d)(5)",
        DayLabel = "The day it answered",
        Words = "Contractor answered that request",
    };

    public static EntryKind DisputedWorkDone { get; } = new(
        "disputed-work-done", inFormat: 56, inJournal: 51, static (index, on) => new DisputedWorkDone { Index = index, On = on },
        [
            new Field.Day("accepted", "The payer accepted the work on",
                e => ((DisputedWorkDone)e).Accepted, (e, day) => (DisputedWorkDone)e with { Accepted = day })
            { Meaning = "The day on which the payer accepted that work.", Said = "accepted {0}" },
            new Field.Day("rejected", "The payer rejected it on",
                e => ((DisputedWorkDone)e).Rejected, (e, day) => (DisputedWorkDone)e with { Rejected = day })
            { Hint = "not both", Meaning = "The day on which the payer rejected it; not beside `accepted`.", Said = "rejected {0}" },
        ])
    {
        Meaning = "The claimant told the payer that the disputed work is done.",
        Title = "Told the payer that the disputed work is done",
        Group = Group,
        Help = "The payer answers within 10 days; retention held back for that work is due within 10 days after it accepts.",
        Section = "Civ. Code § 8816",
        StartsToday = true,
        Words = "Disputed work done",
        Check = static (e, faults) =>
        {
            var done = (DisputedWorkDone)e;
            faults.NotBefore("accepted", done.Accepted, done.On);
            faults.NotBefore("rejected", done.Rejected, done.On);
            if (done is { Accepted: not null, Rejected: not null })
                faults.Refuse("rejected", "nothing: `accepted` says that the work was accepted");
        },
    };

    public static EntryKind StopWorkNoticeGiven { get; } = new(
        "stop-work-notice-given", inFormat: 52, inJournal: 52, static (index, on) => new StopWorkNoticeGiven { Index = index, On = on },
        [
            new Field.Parties("to", "To whom it, or a copy, went",
                e => ((StopWorkNoticeGiven)e).To, (e, ids) => (StopWorkNoticeGiven)e with { To = ids })
            { Meaning = "Ids of the parties to whom it, or a copy, was given.", Said = "to {0}" },
            new Field.Day("posted", "Notice of intent posted at the site and its main office on",
                e => ((StopWorkNoticeGiven)e).Posted, (e, day) => (StopWorkNoticeGiven)e with { Posted = day })
            {
                Hint = "the first day it can have been, where that is in doubt",
                Meaning = "The day on which notice of intent was posted at the site and at its main office.",
                Said = "posted {0}",
            },
            new Field.Day("postedBy", "Posted by that day at the latest",
                e => ((StopWorkNoticeGiven)e).PostedBy, (e, day) => (StopWorkNoticeGiven)e with { PostedBy = day })
            {
                Hint = "only where the day is in doubt",
                Meaning = "The last day on which it can have been posted, where the day is in doubt.",
                Said = "posted by {0} at the latest",
            },
        ])
    {
        Meaning = "The contractor gave the stop work notice; private works only.",
        Title = "Stop work notice given",
        Group = Group,
        Help = "You gave notice that you will stop work unless you are paid; on private works.",
        Section = "Civ. Code § 8834",
        StartsToday = true,
        Words = "Stop work notice given",
        OnlyOn = WorkKind.Private,
        Check = static (e, faults) =>
        {
            if (e is StopWorkNoticeGiven { Posted: { } first, PostedBy: { } last })
                faults.NotBefore("postedBy", last, DayFact.On(first), "the first day on which it can have been posted");
        },
    };

    public static EntryKind SuspensionNoticeSent { get; } = new(
        "suspension-notice-sent", inFormat: 53, inJournal: 61,
        static (index, on) => new SuspensionNoticeSent { Index = index, On = on, Notice = default },
        [
            new Field.Word("notice", "Which notice", JobFileWords.SuspensionNotice,
                e => (int)((SuspensionNoticeSent)e).Notice, (e, word) => (SuspensionNoticeSent)e with { Notice = (SuspensionNotice)word })
            {
                Meaning = "Which: that payment is due or the claim denied, or the ten-day notice of intent to stop work.",
                Required = true,
                Choices = ["that payment is due, or that the claim is denied", "the ten-day notice of intent to stop work"],
            },
            Usual.Manner("How",
                e => (int?)((SuspensionNoticeSent)e).Manner, (e, word) => (SuspensionNoticeSent)e with { Manner = (Manner)word }) with
            { Meaning = "How." },
        ])
    {
        Meaning = "One of the two notices before work is suspended under the claims procedure of 2026 was sent to the owner; private "
            + "works only.",
        Title = "Notice before suspending work sent",
        Group = Group,
        Help = "Under the claim procedure of 2026, on private works: the notice that payment is due, and thirty days after it the "
            + "ten-day notice of intent to stop work. Both go by registered or certified mail with return receipt requested.",
        Section = "Civ. Code § 8850(k)",
        DayLabel = "The day it was mailed",
        StartsToday = true,
        OnlyOn = WorkKind.Private,
        WordsOf = static e =>
            ((SuspensionNoticeSent)e).Notice == SuspensionNotice.PaymentDue ? "Notice that payment is due" : "Ten-day notice sent",
    };

    public static EntryKind SecurityDemanded { get; } = new(
        "security-demanded", inFormat: 54, inJournal: 53, static (index, on) => new SecurityDemanded { Index = index, On = on },
        [
            Usual.Manner("How",
                e => (int?)((SecurityDemanded)e).Manner, (e, word) => (SecurityDemanded)e with { Manner = (Manner)word }) with
            { Meaning = "How." },
        ])
    {
        Meaning = "The direct contractor demanded security from the owner of a large project; private works only.",
        Title = "Security demanded from the owner",
        Group = Group,
        Help = "You demanded the security that the owner of a large private work must give.",
        Section = "Civ. Code § 8712",
        StartsToday = true,
        Words = "Security demanded",
        OnlyOn = WorkKind.Private,
    };

    public static EntryKind SecurityProvided { get; } = new(
        "security-provided", inFormat: 55, inJournal: 60, static (index, on) => new SecurityProvided { Index = index, On = on },
        [
            new Field.Money("amount", "Amount of the security",
                e => ((SecurityProvided)e).Amount, (e, dollars) => (SecurityProvided)e with { Amount = dollars })
            { Meaning = "Dollars and cents of the security.", Range = MoneyRange.AboveZero },
            new Field.Day("until", "It ended on", e => ((SecurityProvided)e).Until, (e, day) => (SecurityProvided)e with { Until = day })
            {
                Hint = "only where it was not maintained",
                Meaning = "The day on which it ended, where it was not maintained; absent: it stands.",
                Said = "ended {0}",
            },
        ])
    {
        Meaning = "The owner of a large project provided the security; private works only.",
        Title = "Security provided by the owner",
        Group = Group,
        Help = "The owner of a large private work gave the security: a bond, a letter of credit or an escrow account. Work may then no "
            + "longer be suspended for want of it.",
        Section = "Civ. Code § 8712",
        DayLabel = "The day it was provided",
        Words = "Security provided",
        OnlyOn = WorkKind.Private,
        Check = static (e, faults) => faults.NotBefore("until", ((SecurityProvided)e).Until, e.On),
    };

    /// <summary>Those of the group, in the order in which they are offered.</summary>
    public static IReadOnlyList<EntryKind> All { get; } =
    [
        DisputeClaimSent, DisputeClaimAnswered, ConferenceDemanded, ConferenceHeld, ClaimRequestMade, ClaimRequestAnswered,
        DisputedWorkDone, StopWorkNoticeGiven, SuspensionNoticeSent, SecurityDemanded, SecurityProvided,
    ];
}
