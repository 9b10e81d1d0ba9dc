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
            Fields = [Usual.MaybeAmount("The demand it states"), Usual.Instrument, new("county", "County", Answer.County) { Hint = "nothing for the county of the site" }],
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
            Fields = [new("court", "Court", Answer.Line) { Repeats = true, Offers = true }, new("case", "Case number", Answer.Line)],
            Section = "Civ. Code § 8460(a)",
        },
        new("lis-pendens-recorded", "Notice of pendency recorded", Group, "The notice of pendency of action (lis pendens), due within 20 days after the suit.")
        {
            DayLabel = "The day of recording, as stamped", StartsToday = true, Fields = [Usual.Instrument], Section = "Civ. Code § 8461",
        },
        new("release-recorded", "Release recorded", Group, "The claim of lien was released.")
        {
            DayLabel = "The day of recording, as stamped",
            StartsToday = true,
            Fields = [new("satisfied", "Does it say that the debt is satisfied?", Answer.YesOrNo) { Hint = "no, where it only gives up the claim" }, Usual.Instrument],
        },
        new("lower-tier-claim", "A claim from below", Group, "Someone working under your own contract claimed a lien.")
        {
            DayLabel = "The day it was recorded", Fields = [Usual.Amount("Amount claimed"), new("by", "By whom", Answer.Line)], Section = "Civ. Code § 8434",
        },
    ];
}
