namespace Stringline.Law.Facts;

/// <summary>The claim of lien and what comes after it.</summary>
internal static class ClaimKinds
{
    private const string Group = "The claim and after";

    public static EntryKind ClaimServed { get; } = new(
        "claim-served", inFormat: 13, inJournal: 6,
        static (index, on) => new ClaimServed { Index = index, On = on, To = [], Manner = default },
        [
            new Field.Parties("to", "Who was served", e => ((ClaimServed)e).To, (e, ids) => (ClaimServed)e with { To = ids })
            { Required = true, Said = "to {0}" },
            Usual.Manner("How", e => (int)((ClaimServed)e).Manner, (e, word) => (ClaimServed)e with { Manner = (Manner)word }) with
            { Required = true, Repeats = true },
            Usual.Article(e => ((ClaimServed)e).Article, (e, text) => (ClaimServed)e with { Article = text }),
        ])
    {
        Meaning = "Copy of the claim of lien served.",
        Title = "Copy of the claim served",
        Group = Group,
        Help = "A copy of the claim of lien, with the notice that the statute prescribes, went to the owner.",
        Section = "Civ. Code § 8416(c)",
        DayLabel = "The day it was handed over or mailed",
        StartsToday = true,
        Words = "Claim served",
        Weighed = ["manner", "to", "article"],
    };

    public static EntryKind ClaimRecorded { get; } = new(
        "claim-recorded", inFormat: 14, inJournal: 5, static (index, on) => new ClaimRecorded { Index = index, On = on },
        [
            new Field.Text("county", "County", e => ((ClaimRecorded)e).County, (e, text) => (ClaimRecorded)e with { County = text })
            {
                Hint = "nothing for the county of the site",
                Meaning = "The county in which it was recorded; null for the county of the site.",
                Holds = TextHolds.County,
            },
            new Field.Money("amount", "The demand it states",
                e => ((ClaimRecorded)e).Amount, (e, dollars) => (ClaimRecorded)e with { Amount = dollars })
            { Meaning = "The demand it states." },
            Usual.Instrument(e => ((ClaimRecorded)e).Instrument, (e, text) => (ClaimRecorded)e with { Instrument = text }),
            new Field.Word("lien", "Which lien", JobFileWords.LienKind,
                e => (int?)((ClaimRecorded)e).Lien, (e, word) => (ClaimRecorded)e with { Lien = (LienKind)word })
            {
                Meaning = "Which lien it is for; absent: a mechanics lien, but for a design professional before the work commenced.",
                Choices = ["mechanics lien", "design professional's lien", "mechanics lien converted from a design professional's lien"],
                SaidWords = ["mechanics lien", "design professional's lien", "converted from a design professional's lien"],
                Said = "{0}",
            },
            new Field.Text("amends", "It says that it amends",
                e => ((ClaimRecorded)e).Amends, (e, text) => (ClaimRecorded)e with { Amends = text })
            {
                Hint = "nothing where it stands alone",
                Meaning = "The id of the earlier recorded claim that it says it amends.",
                Holds = TextHolds.Entry,
                Of = "claim-recorded",
                Said = "amends {0}",
            },
            new Field.Text("structure", "On which structure",
                e => ((ClaimRecorded)e).Structure, (e, text) => (ClaimRecorded)e with { Structure = text })
            {
                Hint = "nothing for the whole work",
                Meaning = "Id of the residential structure it is on; absent for the whole work.",
                Holds = TextHolds.Structure,
                Said = "{0}",
            },
            new Field.Text("lacks", "What it lacks, if anything",
                e => ((ClaimRecorded)e).Lacks, (e, text) => (ClaimRecorded)e with { Lacks = text })
            {
                Hint = "such as its signature, its verification, or the notice in 10-point boldface (Civ. Code § 8416(a))",
                Meaning = "What it lacks of what the section asks, such as its verification or the notice in boldface; absent: nothing.",
                Said = "lacks {0}",
            },
        ])
    {
        Meaning = "Claim of mechanics lien recorded.",
        Title = "Claim of lien recorded",
        Group = Group,
        Help = "The recorder took it. From this day you have 90 days to sue or to record a notice of credit.",
        Section = "Civ. Code §§ 8412, 8414",
        DayLabel = "The day of recording, as stamped",
        StartsToday = true,
        Words = "Claim of lien recorded",
        Form = ["amount", "instrument", "county", "lien", "amends", "structure", "lacks"],
        Told = ["lien", "structure", "amends", "instrument", "lacks"],
        Weighed = ["amount", "instrument", "county", "lien", "amends", "structure", "lacks"],
    };

    public static EntryKind CreditRecorded { get; } = new(
        "credit-recorded", inFormat: 15, inJournal: 8,
        static (index, on) => new CreditRecorded { Index = index, On = on, Until = default },
        [
            new Field.Day("until", "The credit ends on",
                e => ((CreditRecorded)e).Until, (e, day) => (CreditRecorded)e with { Until = day })
            { Meaning = "The day the credit ends.", Required = true, Said = "credit until {0}" },
            Usual.Instrument(e => ((CreditRecorded)e).Instrument, (e, text) => (CreditRecorded)e with { Instrument = text }),
        ])
    {
        Meaning = "Notice of credit recorded.",
        Title = "Notice of credit recorded",
        Group = Group,
        Help = "You and the owner agreed on credit: the time to sue runs from its end.",
        Section = "Civ. Code § 8460(b)",
        DayLabel = "The day of recording, as stamped",
        StartsToday = true,
        Words = "Notice of credit recorded",
    };

    public static EntryKind ActionFiled { get; } = new(
        "action-filed", inFormat: 16, inJournal: 1, static (index, on) => new ActionFiled { Index = index, On = on },
        [
            new Field.Text("court", "Court", e => ((ActionFiled)e).Court, (e, text) => (ActionFiled)e with { Court = text })
            {
                Repeats = true,
                Offers = true,
                Searched = Usual.Courts,
                Said = "{0}",
            },
            new Field.Text("case", "Case number", e => ((ActionFiled)e).Case, (e, text) => (ActionFiled)e with { Case = text })
            { Meaning = "Case number.", Searched = Usual.Cases, Said = "{0}" },
            new Field.Words("enforces", "What it is on", JobFileWords.ActionOn,
                e => [.. ((ActionFiled)e).Enforces.Select(on => (int)on)],
                (e, words) => (ActionFiled)e with { Enforces = [.. words.Select(word => (ActionOn)word)] })
            {
                Meaning = "What it enforces, each once; empty or absent where it is not known.",
                Choices =
                [
                    "the recorded claim of lien", "a stop payment notice", "a payment bond", "a lien release bond",
                    "the debt, as on the contract",
                ],
                SaidWords = ["the lien", "a stop payment notice", "a payment bond", "a lien release bond", "the debt"],
                Said = "on {0}",
            },
            new Field.Text("claim", "Which recorded claim",
                e => ((ActionFiled)e).Claim, (e, text) => (ActionFiled)e with { Claim = text })
            {
                Hint = "nothing where there is only one",
                Meaning = "The id of the recorded claim that it enforces.",
                Holds = TextHolds.Entry,
                Of = "claim-recorded",
            },
            new Field.Parties("against", "Who was sued", e => ((ActionFiled)e).Against, (e, ids) => (ActionFiled)e with { Against = ids })
            { Meaning = "Ids of the parties who were sued.", Said = "against {0}" },
            new Field.Tick("smallClaims", "in a small claims court",
                e => ((ActionFiled)e).SmallClaims, (e, truth) => (ActionFiled)e with { SmallClaims = truth })
            { Meaning = "Whether it was filed in a small claims court.", Said = "small claims" },
        ])
    {
        Meaning = "Action to enforce.",
        Title = "Suit filed",
        Group = Group,
        Help = "An action to enforce the lien was filed.",
        Section = "Civ. Code § 8460(a)",
        DayLabel = "The day it was filed",
        StartsToday = true,
        Words = "Action filed",
        Form = ["enforces", "claim", "against", "court", "case", "smallClaims"],
        Told = ["enforces", "against", "smallClaims", "court", "case"],
        Check = static (e, faults) =>
        {
            if (e is ActionFiled { Claim: not null, Enforces: { Count: > 0 } enforces } && !enforces.Contains(ActionOn.Lien))
                faults.Refuse("claim", "nothing: `enforces` does not say that the action is on a claim of lien");
        },
    };

    public static EntryKind ActionServed { get; } = new(
        "action-served", inFormat: 40, inJournal: 40, static (index, on) => new ActionServed { Index = index, On = on },
        [
            new Field.Parties("to", "Who was served", e => ((ActionServed)e).To, (e, ids) => (ActionServed)e with { To = ids })
            { Meaning = "Ids of the parties served.", Said = "on {0}" },
            new Field.Text("of", "Which suit", e => ((ActionServed)e).Of, (e, text) => (ActionServed)e with { Of = text })
            {
                Hint = "nothing where there is only one",
                Meaning = "The id of the action.",
                Holds = TextHolds.Entry,
                Of = "action-filed",
            },
        ])
    {
        Meaning = "The summons of the action was served on the owner.",
        Title = "Summons served",
        Group = Group,
        Help = "The suit was served on the owner.",
        Section = "Code Civ. Proc. § 583.420",
        DayLabel = "The day it was served",
        Words = "Summons served",
    };

    public static EntryKind TrialBegun { get; } = new(
        "trial-begun", inFormat: 41, inJournal: 41, static (index, on) => new TrialBegun { Index = index, On = on },
        [
            new Field.Text("of", "Which suit", e => ((TrialBegun)e).Of, (e, text) => (TrialBegun)e with { Of = text })
            {
                Hint = "nothing where there is only one",
                Meaning = "The id of the action.",
                Holds = TextHolds.Entry,
                Of = "action-filed",
            },
        ])
    {
        Meaning = "The action was brought to trial.",
        Title = "Trial begun",
        Group = Group,
        Help = "The suit was brought to trial.",
        Section = "Civ. Code § 8462",
        DayLabel = "The first day of trial",
        Words = "Trial begun",
    };

    public static EntryKind ActionEnded { get; } = new(
        "action-ended", inFormat: 42, inJournal: 42, static (index, on) => new ActionEnded { Index = index, On = on, How = default },
        [
            new Field.Word("how", "How it ended", JobFileWords.ActionEnd,
                e => (int)((ActionEnded)e).How, (e, word) => (ActionEnded)e with { How = (ActionEnd)word })
            {
                Meaning = "How.",
                Required = true,
                Choices = ["judgment for you", "judgment against you", "dismissed", "settled", "the claim was ordered released"],
                SaidWords =
                [
                    "judgment for the claimant", "judgment against the claimant", "dismissed", "settled", "claim ordered released",
                ],
                Said = "{0}",
            },
            new Field.YesNo("withoutPrejudice", "Does the order say that it is without prejudice?",
                e => ((ActionEnded)e).WithoutPrejudice, (e, truth) => (ActionEnded)e with { WithoutPrejudice = truth })
            {
                Hint = "Civ. Code § 8490",
                Meaning = "Whether the order says that it is without prejudice.",
                SaidOfYes = "without prejudice",
            },
            new Field.Text("of", "Which suit", e => ((ActionEnded)e).Of, (e, text) => (ActionEnded)e with { Of = text })
            {
                Hint = "nothing where there is only one",
                Meaning = "The id of the action.",
                Holds = TextHolds.Entry,
                Of = "action-filed",
            },
        ])
    {
        Meaning = "An action, or a petition to release the claim, ended.",
        Title = "Suit ended",
        Group = Group,
        Help = "Judgment, dismissal, settlement, or an order that the claim be released.",
        Section = "Civ. Code § 8490",
        DayLabel = "The day it ended",
        Words = "Suit ended",
    };

    public static EntryKind LisPendensRecorded { get; } = new(
        "lis-pendens-recorded", inFormat: 17, inJournal: 17, static (index, on) => new LisPendensRecorded { Index = index, On = on },
        [
            Usual.Instrument(e => ((LisPendensRecorded)e).Instrument, (e, text) => (LisPendensRecorded)e with { Instrument = text }),
            new Field.YesNo("mailedFirst", "Was it mailed to the other parties and owners before, registered or certified, return receipt?",
                e => ((LisPendensRecorded)e).MailedFirst, (e, truth) => (LisPendensRecorded)e with { MailedFirst = truth })
            {
                Hint = "Code Civ. Proc. § 405.22",
                Meaning = "Whether it was mailed, registered or certified with return receipt, to the adverse parties and owners before "
                    + "it was recorded.",
            },
            new Field.YesNo("proofRecorded", "Was a proof of that service recorded with it?",
                e => ((LisPendensRecorded)e).ProofRecorded, (e, truth) => (LisPendensRecorded)e with { ProofRecorded = truth })
            { Hint = "Code Civ. Proc. § 405.23", Meaning = "Whether a proof of that service was recorded with it." },
        ])
    {
        Meaning = "Notice of pendency of action recorded.",
        Title = "Notice of pendency recorded",
        Group = Group,
        Help = "The notice of pendency of action (lis pendens), due within 20 days after the suit.",
        Section = "Civ. Code § 8461",
        DayLabel = "The day of recording, as stamped",
        StartsToday = true,
        Words = "Notice of pendency recorded",
    };

    public static EntryKind ReleaseRecorded { get; } = new(
        "release-recorded", inFormat: 18, inJournal: 27, static (index, on) => new ReleaseRecorded { Index = index, On = on },
        [
            Usual.Instrument(e => ((ReleaseRecorded)e).Instrument, (e, text) => (ReleaseRecorded)e with { Instrument = text }),
            new Field.YesNo("satisfied", "Does it say that the debt is satisfied?",
                e => ((ReleaseRecorded)e).Satisfied, (e, truth) => (ReleaseRecorded)e with { Satisfied = truth })
            {
                Hint = "no, where it only gives up the claim",
                Meaning = "Whether it says that the debt is satisfied; false where it only gives up the claim.",
                SaidOfYes = "satisfied",
            },
        ])
    {
        Meaning = "Release of the claim recorded.",
        Title = "Release recorded",
        Group = Group,
        Help = "The claim of lien was released.",
        DayLabel = "The day of recording, as stamped",
        StartsToday = true,
        Words = "Release recorded",
        Form = ["satisfied", "instrument"],
        Told = ["satisfied", "instrument"],
    };

    public static EntryKind LowerTierClaim { get; } = new(
        "lower-tier-claim", inFormat: 29, inJournal: 18,
        static (index, on) => new LowerTierClaim { Index = index, On = on, Amount = default },
        [
            new Field.Money("amount", "Amount claimed",
                e => ((LowerTierClaim)e).Amount, (e, dollars) => (LowerTierClaim)e with { Amount = dollars })
            { Required = true, Range = MoneyRange.AboveZero },
            new Field.Text("by", "By whom", e => ((LowerTierClaim)e).By, (e, text) => (LowerTierClaim)e with { By = text })
            { Meaning = "Who claims.", Searched = Usual.Names, Said = "{0}" },
            new Field.Tick("stopPaymentNotice", "it is a stop payment notice",
                e => ((LowerTierClaim)e).StopPaymentNotice, (e, truth) => (LowerTierClaim)e with { StopPaymentNotice = truth })
            { Meaning = "Whether it is a stop payment notice; else it is a claim of lien.", Said = "stop payment notice" },
        ])
    {
        Meaning = "A claim of lien of someone working under the claimant's own contract.",
        Title = "A claim from below",
        Group = Group,
        Help = "Someone working under your own contract claimed a lien, or gave a stop payment notice.",
        Section = "Civ. Code §§ 8434, 8542",
        DayLabel = "The day it was recorded",
        Words = "Claim from below",
        Told = ["stopPaymentNotice", "by"],
    };

    /// <summary>Those of the group, in the order in which they are offered.</summary>
    public static IReadOnlyList<EntryKind> All { get; } =
    [
        ClaimServed, ClaimRecorded, CreditRecorded, ActionFiled, ActionServed, TrialBegun, ActionEnded, LisPendensRecorded,
        ReleaseRecorded, LowerTierClaim,
    ];
}
