using Stringline.Exchange;
using Stringline.Law.Facts;

namespace Stringline.Desk.Entering.Forms;

/// <summary>What the owner did.</summary>
internal static class OwnerForms
{
    private const string Group = "What the owner did";

    private static Asked Notice => new("notice", "Which notice", Answer.OneOf) { Required = true, Choices = Usual.Words(JobFileWords.OwnerNotice, "notice of completion", "notice of cessation", "notice of acceptance by a public body") };

    /// <summary>The forms.</summary>
    public static IReadOnlyList<EntryForm> All { get; } =
    [
        new("owner-recorded", "The owner recorded a notice", Group, "A notice of completion or of cessation stands in the county's index. It can shorten your time to 30 or 60 days.")
        {
            DayLabel = "The day it was recorded",
            Fields =
            [
                Notice,
                Usual.Instrument,
                new("states", "The day it states", Answer.Day) { Hint = "of completion, or on which labor ceased" },
                new("contractOf", "For one direct contract only: whose", Answer.Party) { Among = PartyCapacity.DirectContractor, Hint = "nothing, where it is for the whole work" },
                new("lacks", "What it lacks, if anything", Answer.Line) { Hint = "such as the owner's signature, its verification, the true owner's or the direct contractor's name" },
                new("heldIneffective", "a court has held, or the owner has granted in writing, that it has no effect", Answer.Tick),
            ],
            Section = "Civ. Code §§ 8182, 8188",
        },
        new("owner-told-us", "The owner's copy of that notice came", Group, "The owner must tell you within 10 days of recording; whether and when it did can lengthen your time.")
        {
            DayLabel = "The day it came",
            Fields = [Notice, new("mailed", "Mailed on", Answer.Day) { Hint = "the postmark; mail is given when it is deposited" }, Usual.MaybeManner("How it came")],
            Section = "Civ. Code § 8190",
        },
        new("nonresponsibility-recorded", "Notice of nonresponsibility", Group, "An owner who did not order the work says that it does not answer for it.")
        {
            DayLabel = "The day it was recorded",
            Fields =
            [
                new("posted", "Posted at the site on", Answer.Day),
                new("knew", "That owner learned of the work on", Answer.Day),
                new("leaseRequiresWork", "Does the lease make the tenant do the work?", Answer.YesOrNo),
                Usual.Lacks("such as its verification (Civ. Code § 8444(b))"),
            ],
            Section = "Civ. Code § 8444",
        },
        new("release-demanded", "The owner demanded a release", Group, "Ten days after its demand the owner may petition the court.")
        {
            DayLabel = "The day it was demanded",
            Fields = [new("instrument", "Instrument number of the claim it names", Answer.Line)],
            Section = "Civ. Code § 8482",
        },
        new("release-bond-recorded", "A lien release bond was recorded", Group, "A bond takes the place of the property.")
        {
            DayLabel = "The day it was recorded",
            Fields = [new("noticeGiven", "Notice of it was given to you on", Answer.Day), Usual.MaybeAmount("Amount of the bond"), Usual.Instrument],
            Section = "Civ. Code § 8424",
        },
        new("release-petition-served", "Petition to release the property served on you", Group, "The owner asks the court to free the property from your claim; on private works.")
        {
            DayLabel = "The day it was served on you",
            Fields = [Usual.MaybeManner("How it was served"), new("hearing", "The hearing is on", Answer.Day)],
            Section = "Civ. Code § 8486",
        },
        new("stop-payment-demanded", "The owner demanded a stop payment notice", Group, "The owner asked you in writing for a stop payment notice; on private works.")
        {
            DayLabel = "The day it was demanded",
            Fields = [new("from", "Which owner", Answer.Party) { Among = PartyCapacity.Owner }],
            Section = "Civ. Code § 8520(b)",
        },
        new("bond-objected", "The lender objected to your bond", Group, "The construction lender objected to the bond that came with the stop payment notice; on private works.")
        {
            DayLabel = "The day of the objection",
            Fields = [new("by", "Which lender", Answer.Party) { Among = PartyCapacity.ConstructionLender }, new("newBond", "Another bond was brought on", Answer.Day) { Hint = "nothing while none was" }],
            Section = "Civ. Code § 8534",
        },
        new("stop-payment-bond-given", "A bond freed the money held", Group, "A bond was given that takes the place of the money held on a stop payment notice.")
        {
            DayLabel = "The day it was given",
            Fields = [Usual.MaybeAmount("Amount of the bond"), new("surety", "Its surety", Answer.Party) { Among = PartyCapacity.Surety }],
            Section = "Civ. Code §§ 8510, 9364",
        },
    ];
}
