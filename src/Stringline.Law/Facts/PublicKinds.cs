namespace Stringline.Law.Facts;

/// <summary>What happens on public works only.</summary>
internal static class PublicKinds
{
    private const string Group = "On public works only";

    public static EntryKind ReleaseAffidavitServed { get; } = new(
        "release-affidavit-served", inFormat: 57, inJournal: 55,
        static (index, on) => new ReleaseAffidavitServed { Index = index, On = on },
        [
            Usual.Manner("How it was served",
                e => (int?)((ReleaseAffidavitServed)e).Manner, (e, word) => (ReleaseAffidavitServed)e with { Manner = (Manner)word }) with
            { Meaning = "How." },
            new Field.Day("answerBy", "It asks for your answer by",
                e => ((ReleaseAffidavitServed)e).AnswerBy, (e, day) => (ReleaseAffidavitServed)e with { AnswerBy = day })
            { Meaning = "The day by which it asks for a counteraffidavit.", Said = "answer by {0}" },
            new Field.Money("amount", "How much is to be freed",
                e => ((ReleaseAffidavitServed)e).Amount, (e, dollars) => (ReleaseAffidavitServed)e with { Amount = dollars })
            {
                Hint = "nothing where it is the whole",
                Meaning = "The amount of which release is demanded; absent where it is the whole.",
                Range = MoneyRange.AboveZero,
            },
            new Field.Word("ground", "On which ground", JobFileWords.ReleaseGround,
                e => (int?)((ReleaseAffidavitServed)e).Ground,
                (e, word) => (ReleaseAffidavitServed)e with { Ground = (ReleaseGround)word })
            {
                Meaning = "The ground.",
                Choices =
                [
                    "no stop payment notice may be given for such a claim", "you are not one who may give it", "the amount is too high",
                    "there is no basis for the claim",
                ],
            },
        ])
    {
        Meaning = "The public entity served the claimant with the direct contractor's affidavit and demand for summary release; public "
            + "works only.",
        Title = "Affidavit to free the money held, served on you",
        Group = Group,
        Help = "The direct contractor asks the public body to free what it holds for you. You have 10 to 20 days to answer.",
        Section = "Civ. Code §§ 9400-9404",
        DayLabel = "The day it was served on you",
        Words = "Affidavit to free money served",
        OnlyOn = WorkKind.Public,
    };

    public static EntryKind CounteraffidavitServed { get; } = new(
        "counteraffidavit-served", inFormat: 58, inJournal: 56,
        static (index, on) => new CounteraffidavitServed { Index = index, On = on, To = [] },
        [
            new Field.Parties("to", "On whom it, or a copy, was served",
                e => ((CounteraffidavitServed)e).To, (e, ids) => (CounteraffidavitServed)e with { To = ids })
            { Required = true, Said = "to {0}" },
            Usual.Manner("How",
                e => (int?)((CounteraffidavitServed)e).Manner, (e, word) => (CounteraffidavitServed)e with { Manner = (Manner)word }) with
            { Meaning = "How." },
            new Field.YesNo("proof", "Did a proof of service of the contractor's copy go with it?",
                e => ((CounteraffidavitServed)e).Proof, (e, truth) => (CounteraffidavitServed)e with { Proof = truth })
            { Hint = "Civ. Code § 9406(a)", Meaning = "Whether a proof of service of the copy on the direct contractor went with it." },
        ])
    {
        Meaning = "The claimant's counteraffidavit was served; public works only.",
        Title = "Your counteraffidavit served",
        Group = Group,
        Help = "You answered that affidavit under oath.",
        Section = "Civ. Code § 9406",
        StartsToday = true,
        Words = "Counteraffidavit served",
        OnlyOn = WorkKind.Public,
    };

    public static EntryKind RightsActionFiled { get; } = new(
        "rights-action-filed", inFormat: 59, inJournal: 57, static (index, on) => new RightsActionFiled { Index = index, On = on },
        [
            new Field.Text("case", "Case number",
                e => ((RightsActionFiled)e).Case, (e, text) => (RightsActionFiled)e with { Case = text })
            { Meaning = "Case number.", Searched = Usual.Cases, Said = "{0}" },
        ])
    {
        Meaning = "An action for a declaration of rights was filed; public works only.",
        Title = "Action to declare rights filed",
        Group = Group,
        Help = "Somebody asked the court to decide on the money held.",
        Section = "Civ. Code § 9408(a)",
        DayLabel = "The day it was filed",
        Words = "Action to declare rights filed",
        OnlyOn = WorkKind.Public,
    };

    public static EntryKind HearingNoticed { get; } = new(
        "hearing-noticed", inFormat: 60, inJournal: 58,
        static (index, on) => new HearingNoticed { Index = index, On = on, Hearing = default },
        [
            Usual.Manner("How",
                e => (int?)((HearingNoticed)e).Manner, (e, word) => (HearingNoticed)e with { Manner = (Manner)word }) with
            { Meaning = "How." },
            new Field.Day("hearing", "The hearing is on",
                e => ((HearingNoticed)e).Hearing, (e, day) => (HearingNoticed)e with { Hearing = day })
            { Meaning = "The day of the hearing.", Required = true, Said = "hearing {0}" },
            new Field.Parties("to", "To whom it was given", e => ((HearingNoticed)e).To, (e, ids) => (HearingNoticed)e with { To = ids })
            { Meaning = "Ids of the parties to whom it was given.", Said = "to {0}" },
            new Field.Text("by", "Which direct contractor gave it",
                e => ((HearingNoticed)e).By, (e, text) => (HearingNoticed)e with { By = text })
            {
                Hint = "nothing where you gave it",
                Meaning = "Id of the direct contractor who gave it; absent: the claimant did, or nobody says.",
                Holds = TextHolds.Party,
                Among = PartyCapacity.DirectContractor,
                Said = "given by {0}",
            },
        ])
    {
        Meaning = "Notice of the hearing on summary release was given; public works only.",
        Title = "Notice of the hearing given",
        Group = Group,
        Help = "The day of the hearing on the money held was told.",
        Section = "Civ. Code § 9408(b), (c)",
        Words = "Notice of hearing given",
        OnlyOn = WorkKind.Public,
        Form = ["hearing", "to", "manner", "by"],
        Told = ["hearing", "to", "manner", "by"],
    };

    public static EntryKind ReleaseOrdered { get; } = new(
        "release-ordered", inFormat: 61, inJournal: 59, static (index, on) => new ReleaseOrdered { Index = index, On = on },
        [
            new Field.Money("amount", "How much was set free",
                e => ((ReleaseOrdered)e).Amount, (e, dollars) => (ReleaseOrdered)e with { Amount = dollars })
            {
                Hint = "nothing where it was denied",
                Meaning = "The amount set free; absent where release was denied.",
                Range = MoneyRange.AboveZero,
            },
        ])
    {
        Meaning = "The court decided on summary release; public works only.",
        Title = "The court decided on the money held",
        Group = Group,
        Help = "It set money free, or denied it.",
        Section = "Civ. Code § 9412",
        DayLabel = "The day of the order",
        OnlyOn = WorkKind.Public,
        WordsOf = static e => ((ReleaseOrdered)e).Amount is null ? "Court denied the release" : "Court set money free",
    };

    public static EntryKind FinalPayment { get; } = new(
        "final-payment", inFormat: 48, inJournal: 49, static (index, on) => new FinalPayment { Index = index, On = on })
    {
        Meaning = "The direct contractor received final payment from the public entity; public works only.",
        Title = "Direct contractor received final payment",
        Group = Group,
        Help = "The public body made the last payment.",
        Section = "Pub. Contract Code § 20104.2(a)",
        DayLabel = "The day it was received",
        Words = "Final payment received by the contractor",
        OnlyOn = WorkKind.Public,
    };

    public static EntryKind FinalDecisionServed { get; } = new(
        "final-decision-served", inFormat: 49, inJournal: 50, static (index, on) => new FinalDecisionServed { Index = index, On = on })
    {
        Meaning = "The State agency's final written decision on the claim was served; public works only.",
        Title = "Final written decision served",
        Group = Group,
        Help = "The State agency decided on the claim.",
        Section = "Pub. Contract Code § 10240.1",
        DayLabel = "The day it was served",
        Words = "Final decision served",
        OnlyOn = WorkKind.Public,
    };

    /// <summary>Those of the group, in the order in which they are offered.</summary>
    public static IReadOnlyList<EntryKind> All { get; } =
    [
        ReleaseAffidavitServed, CounteraffidavitServed, RightsActionFiled, HearingNoticed, ReleaseOrdered, FinalPayment,
        FinalDecisionServed,
    ];
}
