using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Layout;
using Stringline.Papers.Mailing;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.StopPaymentNotice;

/// <summary>
/// The direct contractor's affidavit to the public entity for release of what it withholds on another's stop payment notice
/// (Civ. Code §§ 9400, 9402). The job file is the direct contractor's own; the claimant of the affidavit is whoever gave that notice.
/// </summary>
internal static class ReleaseAffidavitPaper
{
    private const string Section = "Civ. Code § 9402";
    private const string Called = "direct contractor";

    /// <summary>The paper.</summary>
    public static Paper Paper { get; } = new("release-affidavit", "Direct Contractor’s Affidavit for Release of Funds", Write)
    {
        Sections = "Civ. Code §§ 8102, 9400-9404",
        Use = PaperUse.Given,
        Works = [WorkKind.Public],
        Words = $"A direct contractor, to the public entity that withholds money on another’s stop payment notice; served with a copy.",
        Asks =
        [
            new(PaperInput.To, "Who gave the stop payment notice"),
            new(PaperInput.Grounds),
            new(PaperInput.Words, "The facts that support each ground"),
            new(PaperInput.Amount, "Dollars and cents of which release is demanded; nothing: all that is withheld under the notice"),
            new(PaperInput.Day, "The day the stop payment notice was given; nothing: a blank to fill in"),
        ],
        ProvedAs = ProvedNotice.ReleaseAffidavit,
        Effect = new(
            "Sworn and served, it has the public entity serve a copy on whoever gave the stop payment notice. Unless that one answers "
                + "under "
            + "oath in the time stated, 10 to 20 days, the money is released. In court the burden of proof is the direct contractor's.",
            "Civ. Code §§ 9404-9410"),
    };

    private static Bundle Write(Matter matter)
    {
        if (matter.Job.Claimant.Role != ClaimantRole.DirectContractor)
        {
            matter.Refuse("not-direct-contractor", new Place.OfHead("claimant.role"),
                $"The claimant is {NoticeContents.ARole(matter.Job.Claimant.Role)}.",
                $"Only a direct contractor may ask for this release.", "Civ. Code § 9400");
        }

        var entity = Addressees.WithAddress(matter, matter.In(PartyCapacity.PublicEntity), "Civ. Code § 8108");
        if (entity.Count == 0)
        {
            matter.Refuse("entity-missing", Place.Parties, $"No party with capacity {new FileWord(PartyCapacity.PublicEntity)} is there.",
                $"Add the public entity that withholds the money.", Section);
        }

        var giver = Giver(matter);
        var grounds = Grounds(matter);
        var allegation = matter.Need(matter.Options.Words, "facts-missing", Place.Of(PaperInput.Words),
            $"State the facts that support each ground: {new InputTold(PaperInput.Words, "The notice claims ...; in fact ...")}.",
                "Civ. Code § 9402(a)");
        var demand = Demand(matter, grounds);
        var affidavit = Affidavit(matter, entity, giver, grounds, allegation, demand);
        return new Bundle([affidavit, ProofOfNotice.Build(matter, ProvedNotice.ReleaseAffidavit, entity)],
            Guide(matter, entity));
    }

    private static PaperBuilder Affidavit(
        Matter matter, IReadOnlyList<Party> entity, Party? giver, IReadOnlyList<ReleaseGround> grounds, string? allegation,
        IReadOnlyList<string?> demand)
    {
        var leaf = new PaperBuilder("affidavit-for-release.pdf", "Direct Contractor’s Affidavit for Release of Funds");
        leaf.Head("Public works. California Civil Code sections 9400 to 9404");
        leaf.Line("Date", Day(matter.AsOf));
        Addressees.Put(leaf, matter, entity);
        leaf.Say($"{matter.Facts.Claimant}, the direct contractor, asks the public entity to release funds that it withholds under the "
            + "stop payment notice described here, given by the person named in paragraph 1 (“claimant”), and to serve on claimant the "
            + "copy of this affidavit that comes with it (Civil Code section 9404).");
        leaf.Field("Claimant, who gave the stop payment notice", giver is null ? null : NoticeContents.Person(matter, giver));
        leaf.Field("Stop payment notice given on", Given(matter));
        leaf.Field("Grounds for release", [.. grounds.Select(g => (string?)ReleaseGrounds.Words(g)).DefaultIfEmpty(null)]);
        leaf.Field("Facts that support them", allegation);
        leaf.Field("Demand for release", TypeStyle.BodyBold, demand);
        leaf.Field("Direct contractor’s address in California", Address(matter),
            "for service by mail on the direct contractor of any notice or document (section 9402, subdivision (c))");
        leaf.Field("Public entity", [.. entity.Select(p => NoticeContents.Person(matter, p)).DefaultIfEmpty(null)]);
        leaf.Field("Direct contractor, who makes this affidavit", [
            matter.Need(
                matter.Facts.Claimant, "claimant-name-missing", new Place.OfHead("claimant.name"),
                    $"Add the direct contractor's full name.",
                "Civ. Code § 8102(a)(5)"),
            .. NoticeContents.Reached(matter),
            .. matter.Facts.License is { } license ? [license] : Array.Empty<string?>()]);
        leaf.Field("Work under the direct contract", matter.Need(
            matter.Facts.Work, "work-missing", new Place.OfHead("contract.work"),
                $"Say in a few words what work the direct contract is for.",
            "Civ. Code § 8102(a)"));
        leaf.Field("Site", [.. NoticeContents.Site(matter)]);
        Signing.Claimant(leaf, matter, Section, Called);
        Signing.Verify(leaf, matter, "affidavit", Section, Called);
        return leaf;
    }

    // One affidavit answers one notice: the entity serves its copy on the claimant who gave it.
    private static Party? Giver(Matter matter)
    {
        List<Party> named = [.. matter.Named(matter.Options.To)];
        if (named is not [var giver])
        {
            matter.Refuse("notice-giver-missing", Place.Of(PaperInput.To),
                Sentence.Of(named.Count == 0 ? "Nobody is named." : $"{named.Count} are named."),
                $"Name the one who gave the stop payment notice, by its party "
                    + $"id{new ForTheAsker($": {new InputTold(PaperInput.To, "p2")}")}. Each notice takes an affidavit of its own.",
                "Civ. Code § 9404");
            return null;
        }

        if (giver.Capacity == PartyCapacity.PublicEntity)
        {
            matter.Refuse("notice-giver-is-entity", Place.Of(PaperInput.To),
                $"{OneLine(giver.Name)} is the public entity, to which the affidavit goes by itself.",
                $"Name the one who gave the stop payment notice.", "Civ. Code § 9404");
        }

        Addressees.WithAddress(matter, named, "Civ. Code § 9404");
        return giver;
    }

    private static List<ReleaseGround> Grounds(Matter matter)
    {
        List<ReleaseGround> grounds = [.. matter.Options.Grounds.Distinct().Order()];
        if (grounds.Count == 0)
        {
            matter.Refuse("grounds-missing", Place.Of(PaperInput.Grounds), $"No ground is named.",
                $"Name each that you allege: the claim is not of a type, or the claimant not a person, for which there is such a notice; "
                + $"the amount is excessive; there is no basis for the claim.", "Civ. Code § 9400");
        }

        return grounds;
    }

    // Where the amount alone is too high, a part is rightly withheld: only the rest may be demanded, and nobody but the contractor knows
    // it.
    private static string[] Demand(Matter matter, IReadOnlyList<ReleaseGround> grounds)
    {
        if (matter.Options.Amount is { } part)
            return [Dollars(part), $"({InWords(part)}), a portion of the funds withheld under the stop payment notice."];
        if (grounds is [ReleaseGround.Excessive])
        {
            matter.Refuse("portion-missing", Place.Of(PaperInput.Amount), $"Nothing is there.",
                $"The ground is that the amount is excessive: say how much of what is withheld is too much.", "Civ. Code § 9402(b)");
        }

        return ["All of the funds", "withheld under the stop payment notice."];
    }

    private static string? Given(Matter matter)
    {
        if (matter.Options.Day > matter.AsOf)
        {
            matter.Refuse("notice-in-the-future", Place.Of(PaperInput.Day), $"{Day(matter.Options.Day.Value)} is after {Day(matter.AsOf)}.",
                $"Give the day on which the stop payment notice was given, or leave it out: it is then a blank.", Section);
        }

        return matter.Options.Day is { } day ? Day(day) : null;
    }

    private static string? Address(Matter matter)
    {
        var address = matter.Need(
            matter.Facts.Address, "claimant-address-missing", new Place.OfHead("claimant.address"),
                $"Add the direct contractor's address in California.",
            "Civ. Code § 9402(c)");
        if (address is not null && !NamesTheState(address))
        {
            matter.Refuse("address-not-in-state", new Place.OfHead("claimant.address"),
                $"{OneLine(address)} does not say that it is in California.",
                $"State an address within California, with its state, at which the direct contractor can be served by mail.",
                "Civ. Code § 9402(c)");
        }

        return address;
    }

    private static bool NamesTheState(string address) =>
        address.Split([' ', ',', '.', '\n'], StringSplitOptions.RemoveEmptyEntries).Any(w => w is "CA" or "California" or "CALIFORNIA");

    private static Guide Guide(Matter matter, IReadOnlyList<Party> entity) => new()
    {
        To = entity,
        Manner = Addressees.Manner,
        First =
        [
            "It is sworn, and with the counteraffidavit it becomes the pleading in court and is received in evidence (§ 9410(a)); at the "
                + "hearing the direct contractor has the burden of proof (§ 9410(b)). Have counsel read it.",
            "The address in paragraph 6 must lie within California (§ 9402(c)): the copy of the counteraffidavit and every later paper go "
                + "there.",
            $"The public entity may in its discretion take a release bond of {matter.ByLaw(Number.BondAgainstPublicNotice)} of the claim "
                + $"instead (§ 9364).",
        ],
        Steps =
        [
            "Compare every fact with the stop payment notice and the papers that show it, then sign and verify in ink.",
            "Serve on the public entity the affidavit together with a copy of it (§ 9402). The entity serves the copy on the claimant, "
                + $"with a notice of {matter.ByLaw(Number.LeastToAnswer).Count} to {matter.ByLaw(Number.MostToAnswer)} to answer (§ 9404).",
            "Whoever serves it fills in and signs the proof of notice declaration that comes with it; attach the postal receipts to "
                + "it (§ 8118).",
        ],
        After =
        [
            "No counteraffidavit with proof of service in the time stated: the entity releases the funds demanded at once (§ 9406(b)). Ask "
                + "for the day that its notice states.",
            "A counteraffidavit: either side may sue for a declaration of rights, and then move for the hearing on not less than five "
                + "days’ notice (§ 9408). Serve the court’s order on the entity (§ 9412(d)).",
            "What is released leaves the claimant’s rights on the payment bond, and against whoever owes it, as they are (§ 9414).",
        ],
    };
}
