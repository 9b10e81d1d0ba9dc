using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.PromptPayment;

/// <summary>The direct contractor's notice to the owner of a large project that demands the security it owes (Civ. Code § 8712).</summary>
internal static class SecurityDemandPaper
{
    private const string Section = "Civ. Code § 8712";
    private const string Due = "owners-security.due";

    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("security-demand", "Notice Demanding Security", Write)
    {
        Sections = "Civ. Code §§ 8102, 8710-8712",
        Use = PaperUse.Given,
        Works = [WorkKind.Private],
        Words = $"A direct contractor on a large project, to the owner who has given no security for payment.",
        Asks = [new(PaperInput.Amount, "Dollars and cents of the security; nothing: 15 percent of the price")],
        Deadline = Due,
        ProvedAs = ProvedNotice.Security,
        Fits = now => now.Assessment.Find(Due) is { Standing: Standing.Open } && !now.Has<SecurityDemanded>()
            ? "The owner owes security for payment." : null,
        Entries = [new("security-demanded", "It was given: day and manner")],
    };

    private static decimal Above(Matter matter, Number price) =>
        matter.Assessment.Numbers.On(price, matter.Job.Contract.On ?? matter.AsOf).Value;

    private static Bundle Write(Matter matter)
    {
        if (matter.Job.Claimant.Role != ClaimantRole.DirectContractor)
        {
            matter.Refuse("not-direct-contractor", new Place.OfHead("claimant.role"),
                $"The claimant is {NoticeContents.ARole(matter.Job.Claimant.Role)}.",
                $"Only a direct contractor may demand this security.", Section);
        }

        var due = matter.Assessment.Find(Due);
        if (due is null)
        {
            matter.Refuse("no-security-due", new Place.OfHead("contract.price"), $"The file does not show that the owner owes security.",
                $"It is owed where the price is above {Dollars(Above(matter, Number.FeePriceWithSecurity))}, or above {Dollars(
                    Above(matter, Number.LesserPriceWithSecurity))} "
                + $"for one who holds less than the fee.", "Civ. Code § 8700");
        }

        var owners = Addressees.WithAddress(matter, matter.In(PartyCapacity.Owner), "Civ. Code § 8108");
        if (owners.Count == 0)
            matter.Refuse("owner-missing", Place.Parties, $"No party with capacity {new FileWord(PartyCapacity.Owner)} is there.",
                $"Add the owner.", Section);
        var leaf = new PaperBuilder("notice-demanding-security.pdf", "Notice Demanding Security");
        leaf.Head("California Civil Code sections 8102 and 8710 to 8712");
        leaf.Line("Date", Day(matter.AsOf));
        Addressees.Put(leaf, matter, owners);
        leaf.Say($"{matter.Facts.Claimant} (“claimant”), the direct contractor, demands that the {matter.OwnerWord} provide security for "
            + $"the {(matter.Facts.SeveralOwners ? "owners’" : "owner’s")} payment "
            + "obligation under the contract, by a bond, an irrevocable letter of credit or a construction security escrow account (Civil "
            + "Code section 8720), and a copy, certified by the county recorder, of any recorded mortgage or deed of trust that secures "
            + "the construction loan (section 8710, subdivision (b)).");
        leaf.Say($"If the security is not provided "
            + $"within {matter.Assessment.Numbers.On(Number.SuspendForSecurity, matter.AsOf)} after this notice is given, the direct "
            + "contractor may suspend work until it is provided.");
        leaf.Field("Security demanded, not less than", TypeStyle.BodyBold,
            [(matter.Options.Amount ?? due?.Amount) is { } amount ? Dollars(amount) : null]);
        leaf.Field("Contract price", matter.Job.Contract.Price is { } price ? Dollars(price) : null);
        leaf.Field("Demand for payment to date", matter.Assessment.Owed is { IsUnknown: false } owed ? owed.Demand > 0
            ? $"{Dollars(owed.Demand)}, after deducting all just credits and offsets." : "None at this time." : null);
        NoticeContents.Put(leaf, matter);
        Signing.Claimant(leaf, matter, Section);
        return new Bundle([leaf, ProofOfNotice.Build(matter, ProvedNotice.Security, owners)], new Guide
        {
            To = owners,
            Manner = Addressees.Manner,
            First =
            [
                .. due is null ? Array.Empty<string>() : due.Why.Select(w => RefusalInWords.Said(w.Sentence)),
                .. due is null
                    ? Array.Empty<string>() : due.Questions.Select(q => "The file leaves open: " + RefusalInWords.Said(q.Sentence)),
                "A contractor that suspends work without this right is in breach of contract: have counsel read the file before work "
                    + "stops.",
            ],
            Steps = [$"Sign in ink, with date and place, and keep a signed copy. Mail one "
                + $"to {(owners.Count == 1 ? "the owner" : "each owner")}, or hand it over.",
                ProofOfNotice.WithIt],
            After = [$"{EntryName.Enter("security-demanded")}its day and how it was given. The assessment then says from which day "
                + "work may be suspended."],
        });
    }
}
