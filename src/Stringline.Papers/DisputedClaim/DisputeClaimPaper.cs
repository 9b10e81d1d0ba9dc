using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.DisputedClaim;

/// <summary>
/// A contractor's claim under the claims procedure of public or of private work: a separate demand for payment or for time, with its
/// documentation, sent by registered or certified mail with return receipt requested (Pub. Contract Code § 9204(c)(1);
/// Civ. Code § 8850(c)(1)).
/// </summary>
internal static class DisputeClaimPaper
{
    /// <summary>How the claim, and the demand for a conference, go.</summary>
    public const string Manner =
        "How: by registered or certified mail, return receipt requested; sent any other way it does not count under the section. Keep the "
            + "postal receipt and the return receipt: the days run from the day it was received.";

    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("dispute-claim", "Claim under the Claims Procedure", Write)
    {
        Sections = "Pub. Contract Code §§ 9204, 20104.2; Civ. Code § 8850",
        Use = PaperUse.Sent,
        Works = [WorkKind.Private, WorkKind.Public],
        Words = $"A contractor, to the public entity or owner with which it has its contract, for money or time that is in dispute.",
        Asks = [new(PaperInput.Amount, AmountClaimed), new(PaperInput.ExtensionDays), new(PaperInput.Words, ForWhat),
            new(PaperInput.Documents)],
        Deadline = "dispute-claim.filing-last-day",
        Fits = now => now.Has<Disputed>() && !now.Has<DisputeClaimSent>() && now.Job.Claimant.Role == ClaimantRole.DirectContractor
            ? "A part of the money is disputed." : null,
        Entries = [new("dispute-claim-sent", "It was sent: day, amount, how; and when it was received")],
    };

    /// <summary>What the sum told is, of a claim and of the request to present one.</summary>
    internal const string AmountClaimed =
        "Dollars and cents claimed; nothing: what the file comes to without retention, unless only days are claimed";

    /// <summary>What the words told are, of the same.</summary>
    internal const string ForWhat = "For what work or event it is claimed, and why it is due";

    /// <summary>How the paper goes out.</summary>
    internal static string MailTo(IReadOnlyList<Party> payers) =>
        $"Mail one to {Each(payers)}; write the article number of the receipt on your copy.";

    /// <summary>Day, manner and addressees, below the heading.</summary>
    internal static void Head(PaperBuilder leaf, Matter matter, IReadOnlyList<Party> payers)
    {
        leaf.Line("Date", Day(matter.AsOf));
        leaf.Line("Sent by", "registered or certified mail, return receipt requested");
        Addressees.Put(leaf, matter, payers);
    }

    /// <summary>Who claims, for what work and where.</summary>
    internal static void Giver(PaperBuilder leaf, Matter matter, ClaimProcedure procedure)
    {
        NoticeContents.Giver(leaf, matter, "Claimant");
        leaf.Field("Work", matter.Need(matter.Facts.Work, "work-missing", new Place.OfHead("contract.work"),
            $"Say in a few words what work the contract is for.", procedure.Section));
        leaf.Field("Site", [.. NoticeContents.Site(matter)]);
    }

    /// <summary>Those who get one, in a step of the sheet.</summary>
    internal static string Each(IReadOnlyList<Party> to) => to.Count == 1 ? Addressees.InSentence(to[0]) : "each one named above";

    private static Bundle Write(Matter matter)
    {
        var supposed = new DisputeClaimSent
        {
            Index = matter.Job.Entries.Count, On = DayFact.On(matter.AsOf), Amount = matter.Options.Amount ?? matter.Assessment.Owed.Demand,
            Manner = Law.Facts.Manner.CertifiedMail,
        };
        var (procedure, says) = ClaimProcedure.Of(matter, matter.Assessment.Supposing(supposed));
        procedure.OnlyWithContract(matter);
        matter.NotIfLost("dispute-claim.filing-last-day", "The claim is filed too late.");
        var payers = procedure.Payers(matter);
        var body = ClaimBody.Of(matter, procedure.Section);
        return new Bundle([Claim(matter, procedure, payers, body)], new Guide
        {
            To = payers,
            Manner = Manner,
            First =
            [
                .. ClaimProcedure.Doubts(says, supposed),
                .. body.Cautions(),
                "The deadlines for lien, stop payment notice and bond keep running meanwhile.",
                "The contract may set notices and times of its own for changes and claims: compare it before you send this.",
                .. procedure.Payer == PartyCapacity.PublicEntity
                    ? (string[])["Whoever presents a false claim to a public entity answers for it (Gov. Code §§ 12650 and following, not "
                        + "verified). Have counsel read it."]
                    : [],
            ],
            Steps =
            [
                "Compare each sum and day with the documents, then sign in ink, with date and place, and enclose a copy of every "
                    + "document in the list.",
                MailTo(payers),
            ],
            After =
            [
                $"{EntryName.Enter("dispute-claim-sent")}its day, amount and how it was sent, and the day of receipt once the "
                    + "return receipt is back.",
                "When the time to answer is over, or an answer disputes a part, demand the conference: the paper “Demand for "
                    + "Conference on Claim”.",
            ],
        });
    }

    private static PaperBuilder Claim(Matter matter, ClaimProcedure procedure, IReadOnlyList<Party> payers, ClaimBody body)
    {
        var leaf = new PaperBuilder("claim.pdf", "Claim under the Claims Procedure");
        leaf.Head($"{procedure.Statute}, {procedure.Sent}");
        Head(leaf, matter, payers);
        leaf.Say($"{matter.Facts.Claimant} (“claimant”) makes this claim under {procedure.Statute}. It is a separate demand, made in "
            + "connection with the contract and the work described here.");
        body.Put(leaf, matter, procedure.Section);
        leaf.Field("Contract", matter.Job.Contract.On is { } made ? $"Contract of {Day(made)} with the {procedure.PayerWord}"
            : $"Contract with the {procedure.PayerWord}");
        Giver(leaf, matter, procedure);
        leaf.Say($"Please conduct a reasonable review of this claim and provide, "
            + $"{procedure.Answer}.{(procedure.Interest is { } interest ? $" {interest}" : "")}");
        Signing.Claimant(leaf, matter, procedure.Section);
        return leaf;
    }
}
