using Stringline.Exchange;

namespace Stringline.Desk.Entering.Forms;

/// <summary>Notices that the claimant gives.</summary>
internal static class NoticeForms
{
    private const string Group = "Notices given";

    /// <summary>The forms.</summary>
    public static IReadOnlyList<EntryForm> All { get; } =
    [
        new("notice-given", "Preliminary notice, or another notice", Group, "A notice went out: to whom, how, and what proves it.")
        {
            DayLabel = "The day it was handed over or mailed",
            StartsToday = true,
            Fields =
            [
                Usual.To("To whom"),
                new("notice", "Which notice", Answer.OneOf) { Required = true, Repeats = true, Choices = Usual.Words(JobFileWords.Notice, "preliminary notice", "claim for payment after completion") },
                Usual.Manner,
                Usual.Article,
                new("estimate", "Estimate of the total price that it states", Answer.Money) { Hint = "of a preliminary notice" },
                new("estimateBasis", "How the estimate was reached", Answer.OneOf) { Choices = Usual.Words(JobFileWords.Basis, "worked out from what was known of the work", "a stock figure") },
                Usual.Lacks("such as the statement of Civ. Code § 8202(a)"),
                Usual.Mailed,
                Usual.Tries,
            ],
            Section = "Civ. Code § 8200",
        },
        new("stop-payment-given", "Stop payment notice given", Group, "You told whoever holds the money to hold it back.")
        {
            StartsToday = true,
            Fields =
            [
                Usual.To("To whom"),
                Usual.MaybeAmount("Amount claimed"),
                Usual.MaybeManner(),
                Usual.Article,
                Usual.Mailed,
                Usual.Tries,
                new("bonded", "A bond came with it", Answer.Tick),
                new("bondAmount", "Amount of that bond", Answer.Money) { Hint = "Civ. Code § 8532" },
                Usual.Lacks("such as its verification"),
                Usual.YesNo("tenDollars", "Were ten dollars paid with it, so that the public body tells you of the time to sue?", "of a public work only (Civ. Code § 9362)"),
            ],
            Section = "Civ. Code § 8502",
        },
        new("stop-payment-released", "Stop payment notice released or reduced", Group, "You gave up a stop payment notice in writing, or made it smaller.")
        {
            StartsToday = true,
            Fields = [Usual.MaybeAmount("By how much it was reduced", "nothing where the whole was released"), Usual.Earlier("of", "Which notice", "stop-payment-given", "nothing where there is only one")],
            Section = "Civ. Code § 8128",
        },
        new("action-told", "Notice of the suit given", Group, "You told those to whom you gave the stop payment notice that you sued on it.")
        {
            StartsToday = true, Fields = [Usual.To("To whom"), Usual.MaybeManner()], Section = "Civ. Code §§ 8550(e), 9504",
        },
        new("notice-filed", "Preliminary notice filed with the recorder", Group, "The county recorder then mails you word of a notice of completion or cessation; on private works.")
        {
            StartsToday = true, Fields = [Usual.Instrument], Section = "Civ. Code § 8214",
        },
        new("lender-sought", "Construction lender looked for, and none found", Group, "You looked for a construction loan in the public record; on private works.")
        {
            StartsToday = true,
            Fields = [new("where", "Where you looked", Answer.Lines) { Hint = "such as the building permit and the recorded deeds of trust" }],
            Section = "Civ. Code §§ 8170-8174",
        },
        new("bond-notice-given", "Notice of a bond claim given", Group, "Notice to the surety and to the principal of the payment bond.")
        {
            StartsToday = true,
            Fields = [Usual.To("To whom"), Usual.MaybeManner(), Usual.Article, Usual.Mailed, Usual.Tries, Usual.MaybeAmount("The amount it states")],
            Section = "Civ. Code § 8612",
        },
    ];
}
