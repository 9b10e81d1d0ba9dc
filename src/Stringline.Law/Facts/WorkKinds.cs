namespace Stringline.Law.Facts;

/// <summary>Deliveries and work.</summary>
internal static class WorkKinds
{
    private const string Group = "Deliveries and work";

    public static EntryKind Furnished { get; } = new(
        "furnished", inFormat: 1, inJournal: 12, static (index, on) => new Furnished { Index = index, On = on, Until = on },
        [
            new Field.LastDay("to", e => ((Furnished)e).Until, (e, day) => (Furnished)e with { Until = day }),
            new Field.Money("amount", "Price", e => ((Furnished)e).Amount, (e, dollars) => (Furnished)e with { Amount = dollars })
            { Hint = "nothing, where it is not priced yet", Meaning = "Its price." },
            new Field.Text("text", "What was furnished", e => ((Furnished)e).Text, (e, text) => (Furnished)e with { Text = text })
            { Meaning = "What it was.", Holds = TextHolds.Lines, Said = "{0}" },
            new Field.Text("ref", "Reference", e => ((Furnished)e).Ref, (e, text) => (Furnished)e with { Ref = text })
            {
                Hint = "such as your invoice's number; a payment can then name it",
                Meaning = "Reference by which payments may name it; unique in the file, but for an entry and the one it replaces.",
                Holds = TextHolds.OwnReference,
                Searched = Usual.References,
                Said = "{0}",
            },
            new Field.Text("structure", "Into which structure it went",
                e => ((Furnished)e).Structure, (e, text) => (Furnished)e with { Structure = text })
            {
                Hint = "nothing for the whole work",
                Meaning = "Id of the residential structure it went into; absent for the whole work.",
                Holds = TextHolds.Structure,
                Said = "{0}",
            },
        ])
    {
        Meaning = "Labor, service, equipment or material furnished on a day, on a day in doubt, or over a span.",
        Title = "Delivery, or work done",
        Group = Group,
        Help = "Labor, service, equipment or material furnished to the site on a day or over a span.",
        DayLabel = "When it was furnished",
        Day = DayRule.Span,
        StartsToday = true,
        Words = "Furnished",
        Weighed = ["structure"],
        Ties = ByReferenceThenSum,
    };

    public static EntryKind FurnishingEnded { get; } = new(
        "furnishing-ended", inFormat: 2, inJournal: 13, static (index, on) => new FurnishingEnded { Index = index, On = on })
    {
        Meaning = "The claimant will furnish no more.",
        Title = "Furnished for the last time",
        Group = Group,
        Help = "You, and everyone working for you, will furnish no more on this job.",
        DayLabel = "The last day",
        Words = "Furnished for the last time",
    };

    public static EntryKind Change { get; } = new(
        "change", inFormat: 3, inJournal: 3,
        static (index, on) => new Change { Index = index, On = on, Amount = default, Agreed = default },
        [
            new Field.Money("amount", "Dollars added", e => ((Change)e).Amount, (e, dollars) => (Change)e with { Amount = dollars })
            {
                Hint = "with a minus for a deduction",
                Meaning = "Added to the price; negative for a deduction.",
                Required = true,
                Range = MoneyRange.Any,
            },
            new Field.YesNo("agreed", "Agreed in writing", e => ((Change)e).Agreed, (e, truth) => (Change)e with { Agreed = truth })
            {
                Meaning = "Whether it was agreed in writing.",
                Required = true,
                SaidOfYes = "agreed in writing",
                SaidOfNo = "not agreed in writing",
            },
            new Field.Text("text", "What it was for", e => ((Change)e).Text, (e, text) => (Change)e with { Text = text })
            { Holds = TextHolds.Lines, Said = "{0}" },
            new Field.YesNo("inDirectContract", "Is it in the direct contract, or in a change to it?",
                e => ((Change)e).InDirectContract, (e, truth) => (Change)e with { InDirectContract = truth })
            {
                Hint = "Civ. Code § 8432(a)",
                Meaning = "Whether it is in the direct contract or a modification of it.",
                SaidOfYes = "in the direct contract",
                SaidOfNo = "not in the direct contract",
            },
            new Field.YesNo("knewOutside", "Did you know before the work that it is not in the direct contract?",
                e => ((Change)e).KnewOutside, (e, truth) => (Change)e with { KnewOutside = truth })
            {
                Hint = "Civ. Code § 8432(a)",
                Meaning = "Whether the claimant knew, or was on notice, before the work that it is not in the direct contract.",
            },
        ])
    {
        Meaning = "Change order or extra.",
        Title = "Change order or extra",
        Group = Group,
        Help = "Work was added to your contract, or taken out of it.",
        Section = "Civ. Code § 8430(c)",
        StartsToday = true,
        Words = "Change",
        Told = ["text", "agreed", "inDirectContract"],
        Check = static (e, faults) =>
        {
            if (e is Change { InDirectContract: true, KnewOutside: true })
                faults.Refuse("knewOutside", "false or nothing: `inDirectContract` says that it is in the direct contract");
        },
    };

    public static EntryKind ContractEnded { get; } = new(
        "contract-ended", inFormat: 44, inJournal: 54, static (index, on) => new ContractEnded { Index = index, On = on, How = default },
        [
            new Field.Word("how", "How it ended", JobFileWords.ContractEnd,
                e => (int)((ContractEnded)e).How, (e, word) => (ContractEnded)e with { How = (ContractEnd)word })
            {
                Meaning = "How.",
                Required = true,
                Choices =
                [
                    "it was performed", "it was breached", "the work was abandoned", "it was rescinded", "it was ended under its own terms",
                ],
                SaidWords = ["performed", "breached", "abandoned", "rescinded", "ended under its own terms"],
                Said = "{0}",
            },
            new Field.YesNo("byPayer", "Was it the one who hired you who did it?",
                e => ((ContractEnded)e).ByPayer, (e, truth) => (ContractEnded)e with { ByPayer = truth })
            {
                Hint = "no, where you did",
                Meaning = "Whether the payer did it: true, the one who hired the claimant; false, the claimant.",
                SaidOfYes = "by the one who hired",
                SaidOfNo = "by the claimant",
            },
        ])
    {
        Meaning = "The claimant's contract ended.",
        Title = "Your contract ended",
        Group = Group,
        Help = "It was performed, broken, given up, or ended under its own terms.",
        Section = "Civ. Code §§ 8412, 8430(c)",
        DayLabel = "The day it ended",
        Words = "Contract ended",
    };

    public static EntryKind WorkWillNotCommence { get; } = new(
        "work-will-not-commence", inFormat: 32, inJournal: 32, static (index, on) => new WorkWillNotCommence { Index = index, On = on })
    {
        Meaning = "The claimant knew, or had reason to know, that the work will not be commenced.",
        Title = "The work will not begin",
        Group = Group,
        Help = "You learned, or had reason to know, that the work will not be commenced (for design professionals).",
        Section = "Civ. Code § 8312",
        DayLabel = "The day you knew",
        Words = "Work will not begin",
    };

    /// <summary>Those of the group, in the order in which they are offered.</summary>
    public static IReadOnlyList<EntryKind> All { get; } =
    [
        Furnished, FurnishingEnded, Change, ContractEnded, WorkWillNotCommence,
    ];

    private static int ByReferenceThenSum(Entry one, Entry other)
    {
        var (a, b) = ((Furnished)one, (Furnished)other);
        var byReference = EntryOrder.ByTextThenSum(a.Ref ?? a.Text, a.Amount, b.Ref ?? b.Text, b.Amount);
        if (byReference != 0)
            return byReference;
        var byEnd = EntryOrder.ByDay(a.Until.Latest, b.Until.Latest);
        if (byEnd != 0)
            return byEnd;
        var byStartOfEnd = EntryOrder.ByDay(a.Until.Earliest, b.Until.Earliest);
        if (byStartOfEnd != 0)
            return byStartOfEnd;
        var byText = string.CompareOrdinal(a.Text, b.Text);
        return byText != 0 ? byText : string.CompareOrdinal(a.Ref, b.Ref);
    }
}
