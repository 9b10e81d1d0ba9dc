using Stringline.Exchange;

namespace Stringline.Desk.Entering.Forms;

/// <summary>Deliveries and work.</summary>
internal static class WorkForms
{
    private const string Group = "Deliveries and work";

    /// <summary>The forms.</summary>
    public static IReadOnlyList<EntryForm> All { get; } =
    [
        new("furnished", "Delivery, or work done", Group, "Labor, service, equipment or material furnished to the site on a day or over a span.")
        {
            Day = DayRule.Span,
            DayLabel = "When it was furnished",
            StartsToday = true,
            Fields =
            [
                new("amount", "Price", Answer.Money) { Hint = "nothing, where it is not priced yet" },
                new("text", "What was furnished", Answer.Lines),
                new("ref", "Reference", Answer.Line) { Hint = "such as your invoice's number; a payment can then name it" },
                Usual.Structure("Into which structure it went"),
            ],
        },
        new("furnishing-ended", "Furnished for the last time", Group, "You, and everyone working for you, will furnish no more on this job.") { DayLabel = "The last day" },
        new("change", "Change order or extra", Group, "Work was added to your contract, or taken out of it.")
        {
            StartsToday = true,
            Fields =
            [
                new("amount", "Dollars added", Answer.SignedMoney) { Required = true, Hint = "with a minus for a deduction" },
                new("agreed", "Agreed in writing", Answer.YesOrNo) { Required = true },
                Usual.Text(),
                Usual.YesNo("inDirectContract", "Is it in the direct contract, or in a change to it?", "Civ. Code § 8432(a)"),
                Usual.YesNo("knewOutside", "Did you know before the work that it is not in the direct contract?", "Civ. Code § 8432(a)"),
            ],
            Section = "Civ. Code § 8430(c)",
        },
        new("contract-ended", "Your contract ended", Group, "It was performed, broken, given up, or ended under its own terms.")
        {
            DayLabel = "The day it ended",
            Fields =
            [
                new("how", "How it ended", Answer.OneOf) { Required = true, Choices = Usual.Words(JobFileWords.ContractEnd, "it was performed", "it was breached", "the work was abandoned", "it was rescinded", "it was ended under its own terms") },
                Usual.YesNo("byPayer", "Was it the one who hired you who did it?", "no, where you did"),
            ],
            Section = "Civ. Code §§ 8412, 8430(c)",
        },
        new("work-will-not-commence", "The work will not begin", Group, "You learned, or had reason to know, that the work will not be commenced (for design professionals).") { DayLabel = "The day you knew", Section = "Civ. Code § 8312" },
    ];
}
