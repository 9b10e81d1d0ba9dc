using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Enforcement;

/// <summary>
/// The owner's demand that the claimant record a release, with its grounds, at least ten days before a petition (Civ. Code §§ 8480, 8482).
/// </summary>
internal static class ReleaseDemandPaper
{
    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("release-demand", "Demand for Release of Claim of Lien", Write)
    {
        Sections = "Civ. Code §§ 8480, 8482",
        Use = PaperUse.Given,
        Works = [WorkKind.Private],
        Words = $"The owner, to a claimant who has not sued in time.",
        Asks = [new(PaperInput.Words, "The grounds of the demand; nothing: what the file shows"), new(PaperInput.Number)],
        ProvedAs = ProvedNotice.ReleaseDemand,
        Entries = [new("release-demanded", "It was given")],
    };

    private static Bundle Write(Matter matter)
    {
        const string section = "Civ. Code § 8482";
        var claim = RecordedClaims.Of(matter, section);
        NotWhileTimeRuns(matter);
        var owner = matter.Owner;
        if (owner is null)
        {
            matter.Refuse("owner-missing", Place.Parties, $"No party with capacity {new FileWord(PartyCapacity.Owner)} is there.",
                $"Add the owner who demands the release.", "Civ. Code § 8480");
        }

        var leaf = new PaperBuilder("demand-for-release.pdf", "Demand for Release of Claim of Lien")
        {
            SpeaksFor = OneLine(Clean(owner?.Name) ?? "the owner"),
        };
        leaf.Head("California Civil Code sections 8480 to 8482");
        var name = matter.Need(matter.Facts.Claimant, "claimant-name-missing", new Place.OfHead("claimant.name"),
            $"Add the claimant's full name.", section);
        var address = matter.Need(matter.Facts.Address, "claimant-address-missing", new Place.OfHead("claimant.address"),
            $"Add the claimant's address: on the claim, its notices, or the license board's record (Civ. Code § 8108(e)).", section);
        leaf.Line("Date", Day(matter.AsOf));
        leaf.Line("To", $"{name}, claimant\n{address}");
        leaf.Field(matter.Facts.SeveralOwners ? "One of the owners, who gives this notice" : "Owner, who gives this notice", 
            owner is null ? null : NoticeContents.Person(matter, owner with { Reputed = false }));
        leaf.Field(NoticeContents.ContractorLabel(matter), [.. NoticeContents.Contractors(matter)]);
        leaf.Field(NoticeContents.LenderLabel(matter), [.. NoticeContents.Lenders(matter)]);
        leaf.Field("Claim of lien", $"Claim of mechanics lien "
            + $"{RecordedClaims.Words(claim, matter)}{(claim.Amount is { } amount ? $", in the amount of {Dollars(amount)}" : "")}");
        leaf.Field("Property", [.. NoticeContents.Site(matter)]);
        leaf.Field("Grounds for the demand", Clean(matter.Options.Words) ?? Grounds(matter, claim));
        leaf.Say($"{(matter.Facts.SeveralOwners ? "The owner who gives this notice" : "The owner")} demands that you execute and record a "
            + "release of the claim of lien. If you do not, the owner may petition the "
            + $"court, {matter.ByLaw(Number.PetitionAfterDemand).Spelled} or more after this notice is given, for an order releasing the "
            + $"property from the claim. The prevailing "
            + "party in that proceeding recovers reasonable attorney’s fees (Civil Code section 8488).");
        leaf.Sign(null, "Owner, or title and authority to sign for the owner");
        return new Bundle([leaf], new Guide
        {
            Manner = $"To: {OneLine($"{name}, {address}")}. {Addressees.Manner}",
            First = [$"This is a paper of {matter.OneOwner}, who signs it, not the claimant. A claimant may print it to see what such a "
                + "demand would say."],
            Steps = ["The owner signs it in ink, with date and place, and keeps a signed copy.",
                "The owner gives it to the claimant, by hand or by mail, at the claimant’s address on the claim of lien, on its notices or "
                + "in the license board’s records (§ 8108(e)).",
                ProofOfNotice.Step(ProvedNotice.ReleaseDemand),
                $"Count {matter.ByLaw(Number.PetitionAfterDemand).Spelled} from the day it is given: no petition may be filed until they "
                    + $"have passed (§ 8482)."],
            After = [$"{EntryName.Enter("release-demanded")}its day."],
        });
    }

    private static void NotWhileTimeRuns(Matter matter)
    {
        if (matter.Known.All<ActionFiled>().Count > 0)
        {
            matter.Refuse("action-filed", Place.Journal, $"An action to enforce the claim is entered as filed.",
                $"A petition for release is only for a claim on which no action was commenced in time.", "Civ. Code § 8480");
        }
        else if (matter.Known.All<ClaimRecorded>().Count > 0 && matter.Assessment.Find("release.petition-first-day") is var petition
            && petition is not { Standing: Standing.Open })
            matter.Refuse("time-to-sue-runs", new Place.OfFinding("release.petition-first-day"), Sentence.Of(petition?.Band is { } band
                ? $"The owner may petition from {Day(band.Earliest.Day)}."
                : "The assessment shows no day from which the owner may petition."), $"Wait until the claimant's time to sue is over.",
                "Civ. Code §§ 8460, 8480");
    }

    private static string? Grounds(Matter matter, NamedClaim claim) =>
        claim.On is { } on && matter.Assessment.Find("enforcement.last-day")?.Band is { Earliest.Day: var ended }
        ? $"More than {matter.Assessment.Numbers.On(Number.SueOnClaim, on)} have passed since the claim was recorded "
            + $"on {Day(on)}. That time ended on {Day(ended)}. "
        + $"{(matter.Known.All<CreditRecorded>().Count == 0 ? "No notice of credit has been recorded, and no" : "No")} action to enforce "
        + "the lien was commenced within the time that Civil Code section 8460 allows, so that the claim has expired and is unenforceable."
        : null;
}
