using Stringline.Exchange;

namespace Stringline.Desk.Entering.Forms;

/// <summary>The claim of lien and what comes after it.</summary>
internal static class ClaimForms
{
    private const string Group = "The claim and after";

    /// <summary>The forms.</summary>
    public static IReadOnlyList<EntryForm> All { get; } =
    [
        new("claim-served", "Copy of the claim served", Group, "A copy of the claim of lien, with the notice that the statute prescribes, went to the owner.")
        {
            DayLabel = "The day it was handed over or mailed", StartsToday = true, Fields = [Usual.To("Who was served"), Usual.Manner, Usual.Article], Section = "Civ. Code § 8416(c)",
        },
        new("claim-recorded", "Claim of lien recorded", Group, "The recorder took it. From this day you have 90 days to sue or to record a notice of credit.")
        {
            DayLabel = "The day of recording, as stamped",
            StartsToday = true,
            Fields =
            [
                Usual.MaybeAmount("The demand it states"),
                Usual.Instrument,
                new("county", "County", Answer.County) { Hint = "nothing for the county of the site" },
                new("lien", "Which lien", Answer.OneOf) { Choices = Usual.Words(JobFileWords.LienKind, "mechanics lien", "design professional's lien", "mechanics lien converted from a design professional's lien") },
                Usual.Earlier("amends", "It says that it amends", "claim-recorded", "nothing where it stands alone"),
                Usual.Structure("On which structure"),
                Usual.Lacks("such as its signature, its verification, or the notice in 10-point boldface (Civ. Code § 8416(a))"),
            ],
            Section = "Civ. Code §§ 8412, 8414",
        },
        new("credit-recorded", "Notice of credit recorded", Group, "You and the owner agreed on credit: the time to sue runs from its end.")
        {
            DayLabel = "The day of recording, as stamped",
            StartsToday = true,
            Fields = [new("until", "The credit ends on", Answer.Day) { Required = true }, Usual.Instrument],
            Section = "Civ. Code § 8460(b)",
        },
        new("action-filed", "Suit filed", Group, "An action to enforce the lien was filed.")
        {
            DayLabel = "The day it was filed",
            StartsToday = true,
            Fields =
            [
                new("enforces", "What it is on", Answer.Several) { Choices = Usual.Words(JobFileWords.ActionOn, "the recorded claim of lien", "a stop payment notice", "a payment bond", "a lien release bond", "the debt, as on the contract") },
                Usual.Earlier("claim", "Which recorded claim", "claim-recorded", "nothing where there is only one"),
                new("against", "Who was sued", Answer.Parties),
                new("court", "Court", Answer.Line) { Repeats = true, Offers = true },
                new("case", "Case number", Answer.Line),
                new("smallClaims", "in a small claims court", Answer.Tick),
            ],
            Section = "Civ. Code § 8460(a)",
        },
        new("action-served", "Summons served", Group, "The suit was served on the owner.")
        {
            DayLabel = "The day it was served", Fields = [Usual.MaybeTo("Who was served"), Usual.Earlier("of", "Which suit", "action-filed", "nothing where there is only one")], Section = "Code Civ. Proc. § 583.420",
        },
        new("trial-begun", "Trial begun", Group, "The suit was brought to trial.")
        {
            DayLabel = "The first day of trial", Fields = [Usual.Earlier("of", "Which suit", "action-filed", "nothing where there is only one")], Section = "Civ. Code § 8462",
        },
        new("action-ended", "Suit ended", Group, "Judgment, dismissal, settlement, or an order that the claim be released.")
        {
            DayLabel = "The day it ended",
            Fields =
            [
                new("how", "How it ended", Answer.OneOf) { Required = true, Choices = Usual.Words(JobFileWords.ActionEnd, "judgment for you", "judgment against you", "dismissed", "settled", "the claim was ordered released") },
                Usual.YesNo("withoutPrejudice", "Does the order say that it is without prejudice?", "Civ. Code § 8490"),
                Usual.Earlier("of", "Which suit", "action-filed", "nothing where there is only one"),
            ],
            Section = "Civ. Code § 8490",
        },
        new("lis-pendens-recorded", "Notice of pendency recorded", Group, "The notice of pendency of action (lis pendens), due within 20 days after the suit.")
        {
            DayLabel = "The day of recording, as stamped",
            StartsToday = true,
            Fields =
            [
                Usual.Instrument,
                Usual.YesNo("mailedFirst", "Was it mailed to the other parties and owners before, registered or certified, return receipt?", "Code Civ. Proc. § 405.22"),
                Usual.YesNo("proofRecorded", "Was a proof of that service recorded with it?", "Code Civ. Proc. § 405.23"),
            ],
            Section = "Civ. Code § 8461",
        },
        new("release-recorded", "Release recorded", Group, "The claim of lien was released.")
        {
            DayLabel = "The day of recording, as stamped",
            StartsToday = true,
            Fields = [new("satisfied", "Does it say that the debt is satisfied?", Answer.YesOrNo) { Hint = "no, where it only gives up the claim" }, Usual.Instrument],
        },
        new("lower-tier-claim", "A claim from below", Group, "Someone working under your own contract claimed a lien, or gave a stop payment notice.")
        {
            DayLabel = "The day it was recorded", Fields = [Usual.Amount("Amount claimed"), new("by", "By whom", Answer.Line), new("stopPaymentNotice", "it is a stop payment notice", Answer.Tick)], Section = "Civ. Code §§ 8434, 8542",
        },
    ];
}
