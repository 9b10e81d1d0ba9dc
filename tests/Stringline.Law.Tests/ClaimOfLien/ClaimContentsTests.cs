using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>
/// Completed Wednesday 22 October 2025, so a claim is recorded by Tuesday 20 January 2026. It is a "written statement, signed and verified
/// by the claimant, containing all of the following", the notice "in at least 10-point boldface type" (Civ. Code § 8416(a)).
/// </summary>
public sealed class ClaimContentsTests
{
    private static JobBuilder Job() => new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..").Price(6430m)
        .Furnished("2025-08-05", 6430m, until: "2025-10-10").Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22");

    private static JobBuilder Recorded(JobBuilder job, string on, string? lacks, string? id = null) =>
        job.ClaimServed(on).ClaimRecorded(on, 6430m, id: id).Which(e => (ClaimRecorded)e with { Lacks = lacks });

    [Theory]
    [InlineData(null, Standing.Kept, Standing.Open)]
    [InlineData("its verification", Standing.InDoubt, Standing.InDoubt)]
    [InlineData("the notice in boldface", Standing.InDoubt, Standing.InDoubt)]
    [Proves("Civ. Code § 8416(a)")]
    public void A_claim_that_lacks_something_is_in_doubt_and_so_is_the_action_on_it(string? lacks, Standing recorded, Standing action)
    {
        var on = Recorded(Job(), "2025-11-20", lacks).On("2025-12-05");
        var last = on.Get("claim-of-lien.last-day");
        Assert.Equal((recorded, action), (last.Standing, on.Get("enforcement.last-day").Standing));
        Assert.Equal(lacks is not null, last.Says($"lacks, as entered: {lacks}"));
        Assert.Equal(lacks is not null, last.Asks("(claim-recorded.lacks)"));
        // The way back: record anew by Tuesday 20 January.
        Assert.Equal("2026-01-20", last.Plan());
    }

    // § 8422(a) keeps a claim with mistakes alive, and no opinion was looked for on each thing that may be missing: never lost on it.
    [Fact]
    [Proves("Civ. Code § 8416(a)")]
    public void It_is_never_lost_on_what_it_lacks() =>
        Assert.Equal(Standing.InDoubt, Recorded(Job(), "2025-11-20", "its verification").On("2026-02-02")
            .Get("claim-of-lien.last-day").Standing);

    [Theory]
    [InlineData("2026-01-20", Standing.Kept)]
    [InlineData("2026-02-02", Standing.InDoubt)]
    [Proves("Civ. Code § 8416(a)")]
    public void A_whole_claim_recorded_anew_in_time_removes_the_doubt(string anew, Standing expected)
    {
        var on = Recorded(Recorded(Job(), "2025-11-20", "its verification", "first"), anew, null, "second").On("2026-02-05");
        Assert.Equal(expected, on.Get("claim-of-lien.last-day").Standing);
    }

    // Of any job: no claim that lacks something keeps the right, and none is lost by it.
    [Fact]
    [Proves("Civ. Code § 8416(a)")]
    public void What_claims_lack_keeps_nothing_and_loses_nothing() =>
        Gen.Select(LienJobGen.HalfAYear.Private, LienJobGen.HalfAYear.AsOf).Where(t => t.Item1.Entries.Any(static e => e is ClaimRecorded))
        .Sample(
            asked =>
            {
                Standing Of(string? lacks) =>
                    Assessment.Of(
                        asked.Item1 with { Entries =
                            [.. asked.Item1.Entries.Select(e => e is ClaimRecorded claim ? claim with { Lacks = lacks } : e)] },
                                asked.Item2, OpenDays.Statutory)
                    .Find("claim-of-lien.last-day")!.Standing;
                var (whole, lacking) = (Of(null), Of("its verification"));
                Assert.NotEqual(Standing.Kept, lacking);
                Assert.True(whole == Standing.Lost || lacking != Standing.Lost, $"{whole}, {lacking}");
            },
            print: t => $"{t.Item2}: {t.Item1.Print()}", iter: Times.AtMost(1000));

    // A converted lien is recorded as a mechanics lien (§ 8319(a)(4)); a design professional's lien is made by its recording (§ 8306(a)).
    [Theory]
    [InlineData(null, Standing.Kept)]
    [InlineData("its verification", Standing.InDoubt)]
    [Proves("Civ. Code § 8416(a)")]
    [Proves("Civ. Code § 8319(a)(4)")]
    public void A_converted_claim_that_lacks_something_is_in_doubt_until_a_whole_one_follows(string? lacks, Standing expected)
    {
        JobBuilder Converted() => Stringline.Law.Tests.DesignLien.Architect.Job().WillNotCommence("2025-09-22")
            .DefaultNotice("2025-10-20", 24_000m).ClaimRecorded("2025-11-07", 24_000m, lien: LienKind.Design)
            .Work(w => w with { Commenced = JobBuilder.Day("2025-12-01") }).ClaimRecorded("2025-12-10", 24_000m, lien: LienKind.Converted)
            .Which(e => (ClaimRecorded)e with { Lacks = lacks });
        Assert.Equal(expected, Converted().On("2025-12-15").Get("design-lien.conversion-last-day").Standing);
        Assert.Equal(lacks is not null, Converted().On("2025-12-15").Get("design-lien.conversion-last-day").Says("lacks, as entered"));
        Assert.Equal(Standing.Kept, Converted().ClaimRecorded("2025-12-12", 24_000m, lien: LienKind.Converted).On("2025-12-15")
            .Get("design-lien.conversion-last-day").Standing);
    }

    [Theory]
    [InlineData(null, Standing.Kept)]
    [InlineData("the name of the owner", Standing.InDoubt)]
    [Proves("Civ. Code § 8312")]
    public void A_design_claim_that_lacks_something_is_in_doubt(string? lacks, Standing expected)
    {
        var last = Stringline.Law.Tests.DesignLien.Architect.Job().WillNotCommence("2025-09-22").DefaultNotice("2025-10-20", 24_000m)
            .ClaimRecorded("2025-11-07", 24_000m, lien: LienKind.Design)
            .Which(e => (ClaimRecorded)e with { Lacks = lacks }).On("2025-11-20").Get("design-lien.last-day");
        Assert.Equal(expected, last.Standing);
        Assert.Equal(lacks is not null, last.Says("lacks, as entered"));
    }
}
