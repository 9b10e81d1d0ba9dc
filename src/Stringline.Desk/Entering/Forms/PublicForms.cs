using Stringline.Exchange;
using Stringline.Law.Facts;

namespace Stringline.Desk.Entering.Forms;

/// <summary>What happens on public works only.</summary>
internal static class PublicForms
{
    private const string Group = "On public works only";

    /// <summary>The forms.</summary>
    public static IReadOnlyList<EntryForm> All { get; } =
    [
        new("release-affidavit-served", "Affidavit to free the money held, served on you", Group, "The direct contractor asks the public body to free what it holds for you. You have 10 to 20 days to answer.")
        {
            DayLabel = "The day it was served on you",
            Fields =
            [
                Usual.MaybeManner("How it was served"),
                new("answerBy", "It asks for your answer by", Answer.Day),
                Usual.MaybeAmount("How much is to be freed", "nothing where it is the whole"),
                new("ground", "On which ground", Answer.OneOf) { Choices = Usual.Words(JobFileWords.ReleaseGround, "no stop payment notice may be given for such a claim", "you are not one who may give it", "the amount is too high", "there is no basis for the claim") },
            ],
            Section = "Civ. Code §§ 9400-9404",
        },
        new("counteraffidavit-served", "Your counteraffidavit served", Group, "You answered that affidavit under oath.")
        {
            StartsToday = true,
            Fields = [Usual.To("On whom it, or a copy, was served"), Usual.MaybeManner(), Usual.YesNo("proof", "Did a proof of service of the contractor's copy go with it?", "Civ. Code § 9406(a)")],
            Section = "Civ. Code § 9406",
        },
        new("rights-action-filed", "Action to declare rights filed", Group, "Somebody asked the court to decide on the money held.")
        {
            DayLabel = "The day it was filed", Fields = [new("case", "Case number", Answer.Line)], Section = "Civ. Code § 9408(a)",
        },
        new("hearing-noticed", "Notice of the hearing given", Group, "The day of the hearing on the money held was told.")
        {
            Fields =
            [
                new("hearing", "The hearing is on", Answer.Day) { Required = true },
                Usual.MaybeTo("To whom it was given"),
                Usual.MaybeManner(),
                new("by", "Which direct contractor gave it", Answer.Party) { Among = PartyCapacity.DirectContractor, Hint = "nothing where you gave it" },
            ],
            Section = "Civ. Code § 9408(b), (c)",
        },
        new("release-ordered", "The court decided on the money held", Group, "It set money free, or denied it.")
        {
            DayLabel = "The day of the order", Fields = [Usual.MaybeAmount("How much was set free", "nothing where it was denied")], Section = "Civ. Code § 9412",
        },
        new("final-payment", "Direct contractor received final payment", Group, "The public body made the last payment.")
        {
            DayLabel = "The day it was received", Section = "Pub. Contract Code § 20104.2(a)",
        },
        new("final-decision-served", "Final written decision served", Group, "The State agency decided on the claim.")
        {
            DayLabel = "The day it was served", Section = "Pub. Contract Code § 10240.1",
        },
    ];
}
