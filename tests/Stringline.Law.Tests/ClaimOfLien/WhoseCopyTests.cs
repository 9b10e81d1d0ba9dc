using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>Of which claim a served copy is, to whom one may go, and at what address (Civ. Code § 8416(a)(7), (c)).</summary>
public sealed class WhoseCopyTests
{
    private static JobBuilder Recorded(string on = "2025-11-20") =>
        new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..").Price(6430m)
        .Furnished("2025-08-05", 6430m, until: "2025-10-10").Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22")
        .ClaimRecorded(on, 6430m);

    private static Verdict[] Good(JobBuilder job)
    {
        var facts = job.FactsOn("2026-01-05");
        return [.. facts.All<ClaimRecorded>().Select(claim => ServiceOfClaim.Of(facts, claim).Good)];
    }

    // The affidavit of service is part of the claim, so a copy is that of the next claim recorded; what was mailed after the last claim
    // came too late for it. A file that tells of one copy and not of the other's shows no service of the other.
    [Theory]
    [InlineData(null, Verdict.Open, Verdict.Open)]
    [InlineData("2025-11-19", Verdict.Yes, Verdict.No)]
    [InlineData("2025-11-20", Verdict.Yes, Verdict.No)]
    [InlineData("2025-11-21", Verdict.No, Verdict.Yes)]
    [InlineData("2025-12-03", Verdict.No, Verdict.Yes)]
    [InlineData("2025-12-04", Verdict.No, Verdict.No)]
    [InlineData("2025-11-19..2025-11-21", Verdict.No, Verdict.No)]
    [Proves("Civ. Code § 8416(a)(7)")]
    public void A_copy_is_that_of_the_next_claim_recorded(string? served, Verdict first, Verdict second)
    {
        JobBuilder Two() => served is null
            ? Recorded().ClaimRecorded("2025-12-03", 6430m) : Recorded().ClaimRecorded("2025-12-03", 6430m).ClaimServed(served);
        Assert.Equal([first, second], Good(Two()));
        // A claim of a design professional's lien of another day is no claim of this kind.
        Assert.Equal([first, second], Good(Two().ClaimRecorded("2025-12-10", lien: LienKind.Design))[..2]);
    }

    // The first claim recorded on some day from the 20th to the 22nd.
    [Theory]
    [InlineData("2025-11-20", Verdict.Yes, Verdict.No)]
    [InlineData("2025-11-22", Verdict.No, Verdict.No)]
    [InlineData("2025-11-23", Verdict.No, Verdict.Yes)]
    [Proves("Civ. Code § 8416(a)(7)")]
    public void A_copy_inside_the_doubt_of_the_recording_may_have_come_after_it(string served, Verdict first, Verdict second) =>
        Assert.Equal([first, second], Good(Recorded("2025-11-20..2025-11-22").ClaimRecorded("2025-12-03", 6430m).ClaimServed(served)));

    // The first claim was served as the section says, nothing is told of the second; or the copy came after the first, and may be either's.
    [Theory]
    [InlineData(null, Standing.Kept)]
    [InlineData("2025-11-19", Standing.Kept)]
    [InlineData("2025-11-21", Standing.Kept)]
    [InlineData("2025-12-04", Standing.InDoubt)]
    [Proves("Civ. Code § 8416(e)")]
    public void Of_two_claims_one_that_was_served_keeps_the_right(string? served, Standing expected)
    {
        var two = Recorded().ClaimRecorded("2025-12-03", 6430m);
        var last = (served is null ? two : two.ClaimServed(served)).On("2026-01-05").Get("claim-of-lien.last-day");
        Assert.Equal(expected, last.Standing);
        Assert.Equal(served is not null, last.RuledOut("Civ. Code § 8416(a)(7)"));
    }

    // In time is not all; but what is too late is not saved by a doubt of its service.
    [Fact]
    [Proves("Civ. Code § 8416(e)")]
    public void A_claim_recorded_too_late_is_lost_however_its_copy_was_served() =>
        Assert.Equal(Standing.Lost, Recorded("2026-01-22").ClaimServed("2026-01-21", Manner.Personal).On("2026-02-02")
            .Get("claim-of-lien.last-day").Standing);

    [Theory]
    [InlineData(PartyCapacity.Owner, true, false)]
    [InlineData(PartyCapacity.ConstructionLender, true, true)]
    [InlineData(PartyCapacity.DirectContractor, true, true)]
    [InlineData(PartyCapacity.Subcontractor, false, false)]
    [InlineData(PartyCapacity.Surety, false, false)]
    [Proves("Civ. Code § 8416(c)(2)")]
    public void The_section_names_the_owner_and_in_its_place_the_lender_and_the_contractor(PartyCapacity capacity, bool named, bool inPlace)
    {
        var party = new Party { Id = "one", Capacity = capacity, Name = "Somebody" };
        Assert.Equal((named, inPlace), (ServiceOfClaim.IsNamed(party), ServiceOfClaim.StandsInOwnersPlace(party)));
    }

    // "At the owner's ... residence or place of business address or at the address shown by the building permit": that of the permit is the
    // owner's alone.
    [Theory]
    [InlineData(PartyCapacity.Owner, "1 Quay St", "1 Quay St")]
    [InlineData(PartyCapacity.Owner, " ", "9 Quay St")]
    [InlineData(PartyCapacity.Owner, null, "9 Quay St")]
    [InlineData(PartyCapacity.DirectContractor, "2 Quay St", "2 Quay St")]
    [InlineData(PartyCapacity.DirectContractor, null, null)]
    [Proves("Civ. Code § 8416(c)(1)")]
    public void The_address_of_the_permit_is_the_owners_alone(PartyCapacity capacity, string? own, string? expected) =>
        Assert.Equal(expected, ServiceOfClaim.AddressOf(new Party { Id = "one", Capacity = capacity, Name = "Somebody", Address = own },
            Recorded().Work(w => w with { Permit = new Permit { OwnerAddress = "9 Quay St" } }).Build().Work));

    // A claim of a design professional's lien is measured and asked about by its own sections.
    [Theory]
    [InlineData(LienKind.Design, false)]
    [InlineData(LienKind.Mechanics, true)]
    [Proves("Civ. Code § 8060(b)")]
    public void Of_a_design_lien_nothing_is_asked_here(LienKind lien, bool asks)
    {
        var job = new JobBuilder().Role(ClaimantRole.DesignProfessional, "owner").Price(24_000m)
            .Work(w => w with { Commenced = Day("2025-12-17") })
            .Furnished("2025-03-05", 24_000m, until: "2025-06-30").Ended("2025-06-30")
            .ClaimRecorded("2025-11-08", 24_000m, county: "Solano", lien: lien);
        var last = job.On("2026-01-05").Get("claim-of-lien.last-day");
        Assert.Equal((asks, asks), (last.Asks("(site.alsoIn)"), last.Asks("(claim-recorded.on)")));
    }
}
