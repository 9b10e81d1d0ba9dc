using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Recording;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>Every reason why a claim of lien is not printed, all at once.</summary>
internal static class ClaimRefusals
{
    /// <summary>The reasons; none when the packet may be made.</summary>
    public static IReadOnlyList<Refusal> Of(Matter matter, EarlierClaim? earlier, PrintedFacts facts, Service service) =>
    [
        .. InTheWay(matter.Assessment, earlier, facts), .. Missing(matter.Job, facts), .. service.Refusals,
        .. Office(facts, matter.Options.Office),
    ];

    // A converted claim has conditions of its own: it needs no preliminary notice (Civ. Code § 8319(a)(4)).
    private static IEnumerable<Refusal> InTheWay(Assessment assessment, EarlierClaim? earlier, PrintedFacts facts)
    {
        var obstacles = earlier is Conversion ? assessment.ConvertedClaimObstacles : assessment.ClaimObstacles;
        if (obstacles.Count > 0)
            return [.. Obstacles(obstacles), .. MayConvert(assessment, earlier)];
        return earlier is Conversion ? Demand(facts) : [.. Right(assessment), .. Demand(facts)];
    }

    private static IEnumerable<Refusal> MayConvert(Assessment assessment, EarlierClaim? earlier)
    {
        if (earlier is null && assessment.Find(Law.DesignLien.Conversion.Id) is { Standing: Standing.Open or Standing.InDoubt } conversion)
        {
            yield return new Refusal("may-convert", new Place.OfFinding(conversion.Id),
                $"The design professional’s lien that ended when work commenced may be converted.",
                $"Make that claim with {new PaperName(ClaimPapers.Converted, The: true)}; none of the reasons here stands against "
                    + $"it.", "Civ. Code § 8319");
        }
    }

    /// <summary>What the law says must be mended first.</summary>
    private static IEnumerable<Refusal> Obstacles(IReadOnlyList<Law.Reasoning.Reason> obstacles) => obstacles.Select(o => new Refusal(
        "law", Place.Assessment, o.Sentence,
        Sentence.Join(" ", o.Children.Where(c => c.Applied).Select(c => c.Sentence)
            .DefaultIfEmpty(Sentence.Of("See what the assessment says and asks for."))),
        o.Section));

    /// <summary>The same asked of the findings, so that no assessment without obstacles slips through where a right is lost.</summary>
    private static IEnumerable<Refusal> Right(Assessment assessment)
    {
        foreach (var (id, lost) in (IEnumerable<(string, string)>)
            [("lien-right", "The right to a lien is lost."), ("claim-of-lien.last-day", "The time to record is over.")])
        {
            var finding = assessment.Find(id);
            if (finding is null)
            {
                yield return new Refusal("not-assessed", new Place.OfFinding(id), $"The assessment has no such finding.",
                    $"A claim of lien is for private work whose facts can be assessed: see what the assessment says and asks for.",
                    "Civ. Code § 8400");
            }
            else if (finding.Standing == Standing.Lost)
            {
                yield return new Refusal("right-lost", new Place.OfFinding(id), $"{lost} {Why(finding)}",
                    $"See the reasons; a packet is made only while the right stands.", string.Join("; ", finding.Sections));
            }
        }

        var first = assessment.Find("claim-of-lien.first-day");
        if (first is null or { Standing: Standing.Lost } or { Standing: Standing.InDoubt, Band: null or { Latest: null } })
        {
            yield return new Refusal("not-ceased", new Place.OfFinding("claim-of-lien.first-day"),
                $"The file does not show that the claimant's work has ended.{Then(first)}",
                $"Add a {new KindName("furnishing-ended")} entry with its day. A claim recorded before the claimant has ceased to provide "
                    + $"work (a direct "
                    + $"contractor: has completed the direct contract) is premature.",
                "Civ. Code §§ 8412, 8414");
        }
    }

    private static IEnumerable<Refusal> Demand(PrintedFacts facts)
    {
        if (facts.Demand <= 0)
        {
            yield return new Refusal("demand-not-positive", Place.Demand,
                $"The demand after all just credits and offsets is {Dollars(facts.Demand)}.",
                $"Nothing is left to claim; see the steps of the amount.", "Civ. Code § 8416(a)(1)");
        }
    }

    private static IEnumerable<Refusal> Missing(JobFile job, PrintedFacts facts)
    {
        if (facts.IsSplitWrong)
        {
            yield return new Refusal("shares-not-demand", new Place.OfHead("work.structures"),
                $"The shares of the structures come to {Dollars(facts.Works.Sum(w => w.Share ?? 0m))}, and the demand is "
                + $"{Dollars(facts.Demand)}.", $"Give each structure the amount that is due for it now, so that they come to the demand.",
                "Civ. Code § 8446(b)");
        }

        if (facts.Claimant is null)
            yield return Missing("claimant-name-missing", new Place.OfHead("claimant.name"), $"Add the claimant's full name.",
                "Civ. Code § 8416(a)");
        if (facts.Address is null)
            yield return Missing("claimant-address-missing", new Place.OfHead("claimant.address"), $"Add the claimant's address.",
                "Civ. Code § 8416(a)(6)");
        if (facts.Signer is null)
        {
            yield return Missing("signer-missing", new Place.OfHead("claimant.signer.name"),
                $"Add the name of the person who signs and verifies; it is typed under the signatures.", "Civ. Code § 8416(a)");
        }

        if (facts.Owners.Count == 0)
        {
            yield return new Refusal("owner-missing", Place.Parties,
                $"No party with capacity {new FileWord(PartyCapacity.Owner)} is there.",
                $"Add one with the name on the deed. If the owner is not known, add the person reasonably believed to be the owner, with "
                + $"{new FieldSaid("reputed", "true")}; the copy of the claim must go to that person.",
                "Civ. Code § 8416(a)(2), (a)(7); Gov. Code § 27288.1(a)");
        }

        if (facts.Work is null)
        {
            yield return Missing("work-missing", new Place.OfHead("contract.work"), $"Say in a few words what kind of work was furnished.",
                "Civ. Code § 8416(a)(3)");
        }

        if (facts.HiredBy is null)
        {
            yield return new Refusal("hirer-missing", new Place.OfHead("claimant.hiredBy"),
                Sentence.Of(job.Claimant.HiredBy is { Length: > 0 } id
                ? $"'{id}' is no party." : "Nothing is there."),
                $"Name the party id of the one who employed the claimant or to whom it furnished.", "Civ. Code § 8416(a)(4)");
        }
        else if (Clean(facts.HiredBy.Name) is null)
        {
            yield return new Refusal("hirer-missing", new Place.OfHead("claimant.hiredBy"), $"That party has no name.",
                $"Add the name of the one who employed the claimant or to whom it furnished.", "Civ. Code § 8416(a)(4)");
        }

        if (facts.Street is null && facts.Legal is null)
            yield return Missing("site-missing", new Place.OfHead("work.site"), $"Add the street address or the legal description.",
                "Civ. Code § 8416(a)(5)");
        if (facts.County is null)
        {
            yield return new Refusal("county-missing", new Place.OfHead("work.site.county"),
                Sentence.Of(string.IsNullOrWhiteSpace(job.Work.Site.County)
                ? "Nothing is there." : $"'{job.Work.Site.County}' is no county of California."),
                $"Name one of the 58 counties: the claim is recorded where the land lies.", "Civ. Code § 8060");
        }
    }

    private static Refusal Missing(string id, Place where, Sentence right, string section) =>
        new(id, where, $"Nothing is there.", right, section);

    private static IEnumerable<Refusal> Office(PrintedFacts facts, RecorderOffice? office)
    {
        if (office is not null && facts.County is not null && office.County != facts.County)
        {
            yield return new Refusal("wrong-county", new Place.OfHead("work.site.county"),
                $"The site is in {facts.County} County, the recorder is that of {office.County} County.",
                $"Record in the county of the site.", "Civ. Code § 8060");
        }
    }

    private static Sentence Then(Finding? finding) =>
        finding is not null && Why(finding) is { IsEmpty: false } why ? (Sentence)$" {why}" : Sentence.Empty;

    private static Sentence Why(Finding finding) => Sentence.Join(" ", finding.Why.Where(w => w.Applied).Select(w => w.Sentence));
}
