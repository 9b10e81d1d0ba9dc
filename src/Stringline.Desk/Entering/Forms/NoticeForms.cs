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
            ],
            Section = "Civ. Code § 8200",
        },
        new("stop-payment-given", "Stop payment notice given", Group, "You told whoever holds the money to hold it back.")
        {
            StartsToday = true,
            Fields = [Usual.To("To whom"), Usual.MaybeAmount("Amount claimed"), new("bonded", "A bond came with it", Answer.Tick)],
            Section = "Civ. Code § 8502",
        },
        new("bond-notice-given", "Notice of a bond claim given", Group, "Notice to the surety and to the principal of the payment bond.")
        {
            StartsToday = true, Fields = [Usual.To("To whom")], Section = "Civ. Code § 8612",
        },
        new("dispute-claim-sent", "Claim sent to the owner for dispute resolution", Group, "A claim under the private works claim procedure, by registered or certified mail.")
        {
            StartsToday = true,
            Fields = [Usual.MaybeAmount("Amount claimed", "if it is for money"), new("received", "The owner received it on", Answer.Day)],
            Section = "Civ. Code § 8850",
        },
    ];
}
