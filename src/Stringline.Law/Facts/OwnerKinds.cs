namespace Stringline.Law.Facts;

/// <summary>What the owner did.</summary>
internal static class OwnerKinds
{
    private const string Group = "What the owner did";

    private static readonly string[] Notices = ["notice of completion", "notice of cessation", "notice of acceptance by a public body"];

    public static EntryKind OwnerRecorded { get; } = new(
        "owner-recorded", inFormat: 10, inJournal: 21,
        static (index, on) => new OwnerRecorded { Index = index, On = on, Notice = default },
        [
            new Field.Word("notice", "Which notice", JobFileWords.OwnerNotice,
                e => (int)((OwnerRecorded)e).Notice, (e, word) => (OwnerRecorded)e with { Notice = (OwnerNotice)word })
            { Required = true, Choices = Notices },
            Usual.Instrument(e => ((OwnerRecorded)e).Instrument, (e, text) => (OwnerRecorded)e with { Instrument = text }),
            new Field.Day("states", "The day it states",
                e => ((OwnerRecorded)e).States, (e, day) => (OwnerRecorded)e with { States = day })
            {
                Hint = "of completion, or on which labor ceased",
                Meaning = "The day of completion or cessation that it states.",
                Said = "states {0}",
            },
            new Field.Text("contractOf", "For one direct contract only: whose",
                e => ((OwnerRecorded)e).ContractOf, (e, text) => (OwnerRecorded)e with { ContractOf = text })
            {
                Hint = "nothing, where it is for the whole work",
                Meaning = "Id of the direct contractor for whose contract alone it was recorded; absent: for the whole work.",
                Holds = TextHolds.Party,
                Among = PartyCapacity.DirectContractor,
                TakesAnyParty = true,
            },
            new Field.Text("lacks", "What it lacks, if anything",
                e => ((OwnerRecorded)e).Lacks, (e, text) => (OwnerRecorded)e with { Lacks = text })
            {
                Hint = "such as the owner's signature, its verification, the true owner's or the direct contractor's name",
                Meaning = "What it lacks of what the Code asks of it, such as the owner's signature, its verification, or the name of "
                    + "the true owner or of the direct contractor.",
                Said = "lacks {0}",
            },
            new Field.Tick("heldIneffective", "a court has held, or the owner has granted in writing, that it has no effect",
                e => ((OwnerRecorded)e).HeldIneffective, (e, truth) => (OwnerRecorded)e with { HeldIneffective = truth })
            { Meaning = "A court has held, or the owner has granted in writing, that it has no effect; absent: no." },
        ])
    {
        Meaning = "The owner recorded a notice.",
        Title = "The owner recorded a notice",
        Group = Group,
        Help = "A notice of completion or of cessation stands in the county's index. It can shorten your time to 30 or 60 days.",
        Section = "Civ. Code §§ 8182, 8188",
        DayLabel = "The day it was recorded",
        Weighed = ["notice", "states", "contractOf", "instrument", "lacks", "heldIneffective"],
        WordsOf = static e => ((OwnerRecorded)e).Notice switch
        {
            OwnerNotice.Completion => "Owner recorded notice of completion",
            OwnerNotice.Acceptance => "Notice of acceptance recorded",
            _ => "Owner recorded notice of cessation",
        },
        Check = static (e, faults) => faults.AcceptanceIsPublic(((OwnerRecorded)e).Notice),
    };

    public static EntryKind OwnerToldUs { get; } = new(
        "owner-told-us", inFormat: 11, inJournal: 22, static (index, on) => new OwnerToldUs { Index = index, On = on, Notice = default },
        [
            new Field.Word("notice", "Which notice", JobFileWords.OwnerNotice,
                e => (int)((OwnerToldUs)e).Notice, (e, word) => (OwnerToldUs)e with { Notice = (OwnerNotice)word })
            { Required = true, Choices = Notices },
            new Field.Day("mailed", "Mailed on", e => ((OwnerToldUs)e).Mailed, (e, day) => (OwnerToldUs)e with { Mailed = day })
            {
                Hint = "the postmark; mail is given when it is deposited",
                Meaning = "The day it was mailed, if known.",
                Said = "mailed {0}",
            },
            Usual.Manner("How it came",
                e => (int?)((OwnerToldUs)e).Manner, (e, word) => (OwnerToldUs)e with { Manner = (Manner)word }) with
            { Meaning = "How it came." },
        ])
    {
        Meaning = "We received the owner's copy of that recorded notice.",
        Title = "The owner's copy of that notice came",
        Group = Group,
        Help = "The owner must tell you within 10 days of recording; whether and when it did can lengthen your time.",
        Section = "Civ. Code § 8190",
        DayLabel = "The day it came",
        Words = "Owner's copy came",
        Told = ["manner", "mailed"],
        Check = static (e, faults) => faults.AcceptanceIsPublic(((OwnerToldUs)e).Notice),
    };

    public static EntryKind NonresponsibilityRecorded { get; } = new(
        "nonresponsibility-recorded", inFormat: 30, inJournal: 19,
        static (index, on) => new NonresponsibilityRecorded { Index = index, On = on },
        [
            new Field.Day("posted", "Posted at the site on",
                e => ((NonresponsibilityRecorded)e).Posted, (e, day) => (NonresponsibilityRecorded)e with { Posted = day })
            { Meaning = "The day it was posted at the site." },
            new Field.Day("knew", "That owner learned of the work on",
                e => ((NonresponsibilityRecorded)e).Knew, (e, day) => (NonresponsibilityRecorded)e with { Knew = day })
            { Meaning = "The day on which that owner learned of the work." },
            new Field.YesNo("leaseRequiresWork", "Does the lease make the tenant do the work?",
                e => ((NonresponsibilityRecorded)e).LeaseRequiresWork,
                (e, truth) => (NonresponsibilityRecorded)e with { LeaseRequiresWork = truth })
            { Meaning = "Whether the lease in effect makes the tenant do the work." },
            new Field.Text("lacks", "What it lacks, if anything",
                e => ((NonresponsibilityRecorded)e).Lacks, (e, text) => (NonresponsibilityRecorded)e with { Lacks = text })
            {
                Hint = "such as its verification (Civ. Code § 8444(b))",
                Meaning = "What it lacks of what the Code asks of it, in words, such as its verification.",
                Said = "lacks {0}",
            },
        ])
    {
        Meaning = "An owner who did not contract for the work recorded a notice of nonresponsibility.",
        Title = "Notice of nonresponsibility",
        Group = Group,
        Help = "An owner who did not order the work says that it does not answer for it.",
        Section = "Civ. Code § 8444",
        DayLabel = "The day it was recorded",
        Words = "Notice of nonresponsibility",
    };

    public static EntryKind ReleaseDemanded { get; } = new(
        "release-demanded", inFormat: 20, inJournal: 26, static (index, on) => new ReleaseDemanded { Index = index, On = on },
        [
            new Field.Text("instrument", "Instrument number of the claim it names",
                e => ((ReleaseDemanded)e).Instrument, (e, text) => (ReleaseDemanded)e with { Instrument = text })
            { Meaning = "Recorder's instrument number.", Searched = Usual.Instruments, Said = "{0}" },
        ])
    {
        Meaning = "The owner demanded a release.",
        Title = "The owner demanded a release",
        Group = Group,
        Help = "Ten days after its demand the owner may petition the court.",
        Section = "Civ. Code § 8482",
        DayLabel = "The day it was demanded",
        Words = "Release demanded",
    };

    public static EntryKind ReleaseBondRecorded { get; } = new(
        "release-bond-recorded", inFormat: 19, inJournal: 25, static (index, on) => new ReleaseBondRecorded { Index = index, On = on },
        [
            new Field.Day("noticeGiven", "Notice of it was given to you on",
                e => ((ReleaseBondRecorded)e).NoticeGiven, (e, day) => (ReleaseBondRecorded)e with { NoticeGiven = day })
            { Meaning = "The day notice of it, with a copy, was given to the claimant." },
            new Field.Money("amount", "Amount of the bond",
                e => ((ReleaseBondRecorded)e).Amount, (e, dollars) => (ReleaseBondRecorded)e with { Amount = dollars })
            { Meaning = "Amount of the bond." },
            Usual.Instrument(e => ((ReleaseBondRecorded)e).Instrument, (e, text) => (ReleaseBondRecorded)e with { Instrument = text }),
        ])
    {
        Meaning = "Lien release bond recorded.",
        Title = "A lien release bond was recorded",
        Group = Group,
        Help = "A bond takes the place of the property.",
        Section = "Civ. Code § 8424",
        DayLabel = "The day it was recorded",
        Words = "Release bond recorded",
        Weighed = ["amount", "instrument", "noticeGiven"],
    };

    public static EntryKind ReleasePetitionServed { get; } = new(
        "release-petition-served", inFormat: 43, inJournal: 43,
        static (index, on) => new ReleasePetitionServed { Index = index, On = on },
        [
            Usual.Manner("How it was served",
                e => (int?)((ReleasePetitionServed)e).Manner, (e, word) => (ReleasePetitionServed)e with { Manner = (Manner)word }) with
            { Meaning = "How." },
            new Field.Day("hearing", "The hearing is on",
                e => ((ReleasePetitionServed)e).Hearing, (e, day) => (ReleasePetitionServed)e with { Hearing = day })
            { Meaning = "The day of the hearing.", Said = "hearing {0}" },
        ])
    {
        Meaning = "A petition to release the property from the claim was served on the claimant; private works only.",
        Title = "Petition to release the property served on you",
        Group = Group,
        Help = "The owner asks the court to free the property from your claim; on private works.",
        Section = "Civ. Code § 8486",
        DayLabel = "The day it was served on you",
        Words = "Petition to release served",
        OnlyOn = WorkKind.Private,
    };

    public static EntryKind StopPaymentDemanded { get; } = new(
        "stop-payment-demanded", inFormat: 36, inJournal: 34, static (index, on) => new StopPaymentDemanded { Index = index, On = on },
        [
            new Field.Text("from", "Which owner",
                e => ((StopPaymentDemanded)e).From, (e, text) => (StopPaymentDemanded)e with { From = text })
            {
                Meaning = "Id of the owner who demanded it.",
                Holds = TextHolds.Party,
                Among = PartyCapacity.Owner,
                Said = "by {0}",
            },
        ])
    {
        Meaning = "The owner demanded a stop payment notice in writing; private works only.",
        Title = "The owner demanded a stop payment notice",
        Group = Group,
        Help = "The owner asked you in writing for a stop payment notice; on private works.",
        Section = "Civ. Code § 8520(b)",
        DayLabel = "The day it was demanded",
        Words = "Stop payment notice demanded",
        OnlyOn = WorkKind.Private,
    };

    public static EntryKind BondObjected { get; } = new(
        "bond-objected", inFormat: 38, inJournal: 36, static (index, on) => new BondObjected { Index = index, On = on },
        [
            new Field.Text("by", "Which lender", e => ((BondObjected)e).By, (e, text) => (BondObjected)e with { By = text })
            {
                Meaning = "Id of the lender.",
                Holds = TextHolds.Party,
                Among = PartyCapacity.ConstructionLender,
                Said = "{0}",
            },
            new Field.Day("newBond", "Another bond was brought on",
                e => ((BondObjected)e).NewBond, (e, day) => (BondObjected)e with { NewBond = day })
            {
                Hint = "nothing while none was",
                Meaning = "The day another bond was brought; absent while none was.",
                Said = "another bond brought {0}",
            },
        ])
    {
        Meaning = "The construction lender objected to the bond that came with a stop payment notice; private works only.",
        Title = "The lender objected to your bond",
        Group = Group,
        Help = "The construction lender objected to the bond that came with the stop payment notice; on private works.",
        Section = "Civ. Code § 8534",
        DayLabel = "The day of the objection",
        Words = "Lender objected to the bond",
        OnlyOn = WorkKind.Private,
        Check = static (e, faults) => faults.NotBefore("newBond", ((BondObjected)e).NewBond, e.On),
    };

    public static EntryKind StopPaymentBondGiven { get; } = new(
        "stop-payment-bond-given", inFormat: 37, inJournal: 35, static (index, on) => new StopPaymentBondGiven { Index = index, On = on },
        [
            new Field.Money("amount", "Amount of the bond",
                e => ((StopPaymentBondGiven)e).Amount, (e, dollars) => (StopPaymentBondGiven)e with { Amount = dollars })
            { Meaning = "Amount of the bond.", Range = MoneyRange.AboveZero },
            new Field.Text("surety", "Its surety",
                e => ((StopPaymentBondGiven)e).Surety, (e, text) => (StopPaymentBondGiven)e with { Surety = text })
            {
                Meaning = "Id of the surety.",
                Holds = TextHolds.Party,
                Among = PartyCapacity.Surety,
                Said = "{0}",
            },
        ])
    {
        Meaning = "A bond that releases money held on a stop payment notice was given.",
        Title = "A bond freed the money held",
        Group = Group,
        Help = "A bond was given that takes the place of the money held on a stop payment notice.",
        Section = "Civ. Code §§ 8510, 9364",
        DayLabel = "The day it was given",
        Words = "Bond freed the money held",
    };

    /// <summary>Those of the group, in the order in which they are offered.</summary>
    public static IReadOnlyList<EntryKind> All { get; } =
    [
        OwnerRecorded, OwnerToldUs, NonresponsibilityRecorded, ReleaseDemanded, ReleaseBondRecorded, ReleasePetitionServed,
        StopPaymentDemanded, BondObjected, StopPaymentBondGiven,
    ];
}
