namespace Stringline.Law.Facts;

/// <summary>Notices that the claimant gives.</summary>
internal static class NoticeKinds
{
    private const string Group = "Notices given";

    public static EntryKind NoticeGiven { get; } = new(
        "notice-given", inFormat: 7, inJournal: 20,
        static (index, on) => new NoticeGiven { Index = index, On = on, Notice = default, To = [], Manner = default },
        [
            new Field.Word("notice", "Which notice", JobFileWords.Notice,
                e => (int)((NoticeGiven)e).Notice, (e, word) => (NoticeGiven)e with { Notice = (NoticeKind)word })
            { Required = true, Repeats = true, Choices = ["preliminary notice", "claim for payment after completion"] },
            new Field.Parties("to", "To whom", e => ((NoticeGiven)e).To, (e, ids) => (NoticeGiven)e with { To = ids })
            { Required = true, Said = "to {0}" },
            Usual.Manner("How", e => (int)((NoticeGiven)e).Manner, (e, word) => (NoticeGiven)e with { Manner = (Manner)word }) with
            { Required = true, Repeats = true },
            Usual.Article(e => ((NoticeGiven)e).Article, (e, text) => (NoticeGiven)e with { Article = text }),
            new Field.Money("estimate", "Estimate of the total price that it states",
                e => ((NoticeGiven)e).Estimate, (e, dollars) => (NoticeGiven)e with { Estimate = dollars })
            {
                Hint = "of a preliminary notice",
                Meaning = "The estimate of the total price that a preliminary notice states.",
                IsSum = false,
            },
            new Field.Word("estimateBasis", "How the estimate was reached", JobFileWords.Basis,
                e => (int?)((NoticeGiven)e).EstimateBasis, (e, word) => (NoticeGiven)e with { EstimateBasis = (EstimateBasis)word })
            { Meaning = "How the estimate was reached.", Choices = ["worked out from what was known of the work", "a stock figure"] },
            new Field.Text("lacks", "What it lacks, if anything",
                e => ((NoticeGiven)e).Lacks, (e, text) => (NoticeGiven)e with { Lacks = text })
            {
                Hint = "such as the statement of Civ. Code § 8202(a)",
                Meaning = "What the notice lacks of what the Code asks of it, in words.",
                Said = "lacks {0}",
            },
            Usual.Mailed(e => ((NoticeGiven)e).Mailed, (e, day) => (NoticeGiven)e with { Mailed = day }),
            Usual.Tries(e => ((NoticeGiven)e).Tries, (e, count) => (NoticeGiven)e with { Tries = count }),
        ])
    {
        Meaning = "A notice given by the claimant, and how.",
        Title = "Preliminary notice, or another notice",
        Group = Group,
        Help = "A notice went out: to whom, how, and what proves it.",
        Section = "Civ. Code § 8200",
        DayLabel = "The day it was handed over or mailed",
        StartsToday = true,
        Form = ["to", "notice", "manner", "article", "estimate", "estimateBasis", "lacks", "mailed", "tries"],
        Weighed = ["notice", "manner", "to", "article", "estimate", "estimateBasis", "lacks", "mailed", "tries"],
        WordsOf = static e => ((NoticeGiven)e).Notice == NoticeKind.Preliminary ? "Preliminary notice given" : "Notice given",
        Check = static (e, faults) =>
        {
            var notice = (NoticeGiven)e;
            faults.LeftAndMailed(notice, notice.Manner, notice.Mailed, notice.Tries);
        },
    };

    public static EntryKind StopPaymentGiven { get; } = new(
        "stop-payment-given", inFormat: 21, inJournal: 29, static (index, on) => new StopPaymentGiven { Index = index, On = on, To = [] },
        [
            new Field.Parties("to", "To whom", e => ((StopPaymentGiven)e).To, (e, ids) => (StopPaymentGiven)e with { To = ids })
            { Required = true, Said = "to {0}" },
            new Field.Money("amount", "Amount claimed",
                e => ((StopPaymentGiven)e).Amount, (e, dollars) => (StopPaymentGiven)e with { Amount = dollars })
            { Meaning = "Amount claimed." },
            new Field.Tick("bonded", "A bond came with it",
                e => ((StopPaymentGiven)e).Bonded, (e, truth) => (StopPaymentGiven)e with { Bonded = truth })
            { Meaning = "Whether a bond came with it; absent: no.", AlwaysWritten = true, Said = "bonded" },
            new Field.Money("bondAmount", "Amount of that bond",
                e => ((StopPaymentGiven)e).BondAmount, (e, dollars) => (StopPaymentGiven)e with { BondAmount = dollars })
            {
                Hint = "Civ. Code § 8532",
                Meaning = "The bond's amount.",
                Range = MoneyRange.AboveZero,
                IsSum = false,
            },
            Usual.Manner("How",
                e => (int?)((StopPaymentGiven)e).Manner, (e, word) => (StopPaymentGiven)e with { Manner = (Manner)word }) with
            { Meaning = "How it was given." },
            Usual.Article(e => ((StopPaymentGiven)e).Article, (e, text) => (StopPaymentGiven)e with { Article = text }),
            Usual.Mailed(e => ((StopPaymentGiven)e).Mailed, (e, day) => (StopPaymentGiven)e with { Mailed = day }),
            Usual.Tries(e => ((StopPaymentGiven)e).Tries, (e, count) => (StopPaymentGiven)e with { Tries = count }),
            new Field.Text("lacks", "What it lacks, if anything",
                e => ((StopPaymentGiven)e).Lacks, (e, text) => (StopPaymentGiven)e with { Lacks = text })
            { Hint = "such as its verification", Meaning = "What it lacks of what the Code asks of it, in words.", Said = "lacks {0}" },
            new Field.YesNo("tenDollars", "Were ten dollars paid with it, so that the public body tells you of the time to sue?",
                e => ((StopPaymentGiven)e).TenDollars, (e, truth) => (StopPaymentGiven)e with { TenDollars = truth })
            {
                Hint = "of a public work only (Civ. Code § 9362)",
                Meaning = "Only on a public work: whether ten dollars were paid with it, so that the public entity must tell of the "
                    + "time to sue.",
            },
        ])
    {
        Meaning = "Stop payment notice given.",
        Title = "Stop payment notice given",
        Group = Group,
        Help = "You told whoever holds the money to hold it back.",
        Section = "Civ. Code § 8502",
        StartsToday = true,
        Words = "Stop payment notice given",
        Form = ["to", "amount", "manner", "article", "mailed", "tries", "bonded", "bondAmount", "lacks", "tenDollars"],
        Told = ["to", "manner", "article", "bonded", "lacks"],
        Check = static (e, faults) =>
        {
            var notice = (StopPaymentGiven)e;
            faults.LeftAndMailed(notice, notice.Manner, notice.Mailed, notice.Tries);
            if (notice is { BondAmount: not null, Bonded: false })
                faults.Refuse("bondAmount", "nothing: `bonded` does not say that a bond came with it");
            if (notice.TenDollars is not null)
                faults.OnlyOn(WorkKind.Public, "tenDollars");
        },
    };

    public static EntryKind StopPaymentReleased { get; } = new(
        "stop-payment-released", inFormat: 35, inJournal: 33, static (index, on) => new StopPaymentReleased { Index = index, On = on },
        [
            new Field.Money("amount", "By how much it was reduced",
                e => ((StopPaymentReleased)e).Amount, (e, dollars) => (StopPaymentReleased)e with { Amount = dollars })
            {
                Hint = "nothing where the whole was released",
                Meaning = "By how much it was reduced; absent where the whole was released.",
                Range = MoneyRange.AboveZero,
            },
            new Field.Text("of", "Which notice", e => ((StopPaymentReleased)e).Of, (e, text) => (StopPaymentReleased)e with { Of = text })
            {
                Hint = "nothing where there is only one",
                Meaning = "The id of the stop payment notice.",
                Holds = TextHolds.Entry,
                Of = "stop-payment-given",
                Said = "{0}",
            },
        ])
    {
        Meaning = "A stop payment notice was released or reduced in writing.",
        Title = "Stop payment notice released or reduced",
        Group = Group,
        Help = "You gave up a stop payment notice in writing, or made it smaller.",
        Section = "Civ. Code § 8128",
        StartsToday = true,
        WordsOf = static e => ((StopPaymentReleased)e).Amount is null ? "Stop payment notice released" : "Stop payment notice reduced",
    };

    public static EntryKind ActionTold { get; } = new(
        "action-told", inFormat: 39, inJournal: 37, static (index, on) => new ActionTold { Index = index, On = on, To = [] },
        [
            new Field.Parties("to", "To whom", e => ((ActionTold)e).To, (e, ids) => (ActionTold)e with { To = ids })
            { Required = true, Said = "to {0}" },
            Usual.Manner("How", e => (int?)((ActionTold)e).Manner, (e, word) => (ActionTold)e with { Manner = (Manner)word }) with
            { Meaning = "How it was given." },
        ])
    {
        Meaning = "Those to whom a stop payment notice was given were told of the action on it.",
        Title = "Notice of the suit given",
        Group = Group,
        Help = "You told those to whom you gave the stop payment notice that you sued on it.",
        Section = "Civ. Code §§ 8550(e), 9504",
        StartsToday = true,
        Words = "Notice of the suit given",
    };

    public static EntryKind NoticeFiled { get; } = new(
        "notice-filed", inFormat: 34, inJournal: 39, static (index, on) => new NoticeFiled { Index = index, On = on },
        [
            Usual.Instrument(e => ((NoticeFiled)e).Instrument, (e, text) => (NoticeFiled)e with { Instrument = text }),
        ])
    {
        Meaning = "The preliminary notice was filed with the county recorder; private works only.",
        Title = "Preliminary notice filed with the recorder",
        Group = Group,
        Help = "The county recorder then mails you word of a notice of completion or cessation; on private works.",
        Section = "Civ. Code § 8214",
        StartsToday = true,
        Words = "Preliminary notice filed with the recorder",
        OnlyOn = WorkKind.Private,
    };

    public static EntryKind LenderSought { get; } = new(
        "lender-sought", inFormat: 33, inJournal: 38, static (index, on) => new LenderSought { Index = index, On = on },
        [
            new Field.Text("where", "Where you looked", e => ((LenderSought)e).Where, (e, text) => (LenderSought)e with { Where = text })
            {
                Hint = "such as the building permit and the recorded deeds of trust",
                Meaning = "Where, such as the permit or the deeds of trust.",
                Holds = TextHolds.Lines,
                Said = "{0}",
            },
        ])
    {
        Meaning = "A construction lender was looked for in the public record and none was found; private works only.",
        Title = "Construction lender looked for, and none found",
        Group = Group,
        Help = "You looked for a construction loan in the public record; on private works.",
        Section = "Civ. Code §§ 8170-8174",
        StartsToday = true,
        Words = "No construction lender found",
        OnlyOn = WorkKind.Private,
    };

    public static EntryKind BondNoticeGiven { get; } = new(
        "bond-notice-given", inFormat: 22, inJournal: 2, static (index, on) => new BondNoticeGiven { Index = index, On = on, To = [] },
        [
            new Field.Parties("to", "To whom", e => ((BondNoticeGiven)e).To, (e, ids) => (BondNoticeGiven)e with { To = ids })
            { Required = true, Said = "to {0}" },
            Usual.Manner("How",
                e => (int?)((BondNoticeGiven)e).Manner, (e, word) => (BondNoticeGiven)e with { Manner = (Manner)word }) with
            { Meaning = "How it was given." },
            Usual.Article(e => ((BondNoticeGiven)e).Article, (e, text) => (BondNoticeGiven)e with { Article = text }),
            Usual.Mailed(e => ((BondNoticeGiven)e).Mailed, (e, day) => (BondNoticeGiven)e with { Mailed = day }),
            Usual.Tries(e => ((BondNoticeGiven)e).Tries, (e, count) => (BondNoticeGiven)e with { Tries = count }),
            new Field.Money("amount", "The amount it states",
                e => ((BondNoticeGiven)e).Amount, (e, dollars) => (BondNoticeGiven)e with { Amount = dollars })
            { Meaning = "The amount it states.", IsSum = false },
        ])
    {
        Meaning = "Notice to surety and bond principal.",
        Title = "Notice of a bond claim given",
        Group = Group,
        Help = "Notice to the surety and to the principal of the payment bond.",
        Section = "Civ. Code § 8612",
        StartsToday = true,
        Words = "Bond notice given",
        Check = static (e, faults) =>
        {
            var notice = (BondNoticeGiven)e;
            faults.LeftAndMailed(notice, notice.Manner, notice.Mailed, notice.Tries);
        },
    };

    /// <summary>Those of the group, in the order in which they are offered.</summary>
    public static IReadOnlyList<EntryKind> All { get; } =
    [
        NoticeGiven, StopPaymentGiven, StopPaymentReleased, ActionTold, NoticeFiled, LenderSought, BondNoticeGiven,
    ];
}
