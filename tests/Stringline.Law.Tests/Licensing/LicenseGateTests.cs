using Stringline.Law.Facts;
using Stringline.Law.Licensing;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Licensing;

public sealed class LicenseGateTests
{
    private static JobBuilder Subcontractor() => new JobBuilder().Role(ClaimantRole.Subcontractor)
        .Furnished("2026-03-02", 100m).Furnished("2026-03-20", 100m);

    private static Standing Found(JobBuilder job) => job.On("2026-04-01").Get("license").Standing;

    [Theory]
    [InlineData("2026-03-02..2026-03-20", Standing.Kept)]
    [InlineData("2026-01-01..", Standing.Kept)]
    [InlineData("2026-03-03..2026-03-20", Standing.Lost)]
    [InlineData("2026-03-02..2026-03-19", Standing.InDoubt)]
    [InlineData("2026-03-01..2026-03-19", Standing.InDoubt)]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    [Proves("Bus. & Prof. Code § 7031(e)")]
    public void One_day_of_work_without_a_license_bars_everything_unless_it_was_licensed_before_and_a_court_so_finds(string span,
        Standing expected) =>
        Assert.Equal(expected, Found(Subcontractor().Licensed(span)));

    [Theory]
    [InlineData("2026-03-10", "2026-03-11", Standing.Kept)]
    [InlineData("2026-03-10", "2026-03-12", Standing.InDoubt)]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void Two_spans_must_meet_without_a_day_between_them(string firstEnds, string secondBegins, Standing expected) =>
        Assert.Equal(expected, Found(Subcontractor().Licensed($"2026-01-01..{firstEnds}", $"{secondBegins}..2026-12-31")));

    // American Building Innovation v. Balfour Beatty (2024) 104 Cal.App.5th 954: licensed at first, suspended midway; no
    // recovery, also not for the licensed days.
    [Fact]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    [Proves("Bus. & Prof. Code § 7031(c)")]
    public void A_license_lost_midway_without_good_faith_takes_the_lien_with_it()
    {
        var assessment = new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2015-01-01..2018-01-24")
            .Claimant(c => c with { License = c.License! with { GoodFaith = false } })
            .Furnished("2017-08-01", 100m).Furnished("2018-05-31", 100m).Notice("2017-08-02").Ended("2018-05-31")
            .On("2018-06-01");
        Assert.Equal(Standing.Lost, assessment.Get("license").Standing);
        Assert.Equal(Standing.Lost, assessment.Get("lien-right").Standing);
        Assert.NotEmpty(assessment.ClaimObstacles);
        Assert.Contains("2018-01-25", assessment.Get("license").Why[0].Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-03-01..2026-03-10", "2026-03-05..", Standing.InDoubt)]
    [InlineData("2026-03-01..2026-03-10", "2026-03-01..", Standing.Kept)]
    [InlineData("2026-03-01..2026-03-10", "2026-03-11..", Standing.Lost)]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void A_first_day_in_doubt_leaves_the_license_in_doubt_unless_every_day_agrees(string first, string span, Standing expected) =>
        Assert.Equal(expected,
            Found(new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed(span).Furnished(first, 100m).Furnished("2026-03-20")));

    [Theory]
    [InlineData("2026-03-20..2026-03-30", "2026-03-30", Standing.Kept)]
    [InlineData("2026-03-20..2026-03-30", "2026-03-25", Standing.InDoubt)]
    [InlineData("2026-03-20..2026-03-30", "2026-03-19", Standing.InDoubt)]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void A_last_day_in_doubt_does_the_same(string last, string licenseEnds, Standing expected) =>
        Assert.Equal(expected, Found(new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed($"2026-01-01..{licenseEnds}")
            .Furnished("2026-03-02", 100m).Furnished(last)));

    [Fact]
    public void An_unknown_day_of_work_leaves_the_license_in_doubt()
    {
        var license = Subcontractor().Furnished("?").Licensed("2026-01-01..").On("2026-04-01").Get("license");
        Assert.Equal(Standing.InDoubt, license.Standing);
        Assert.Single(license.Questions);
    }

    [Fact]
    public void A_license_without_days_is_in_doubt_and_before_any_work_it_is_open()
    {
        Assert.Equal(Standing.InDoubt, Found(Subcontractor().Licensed()));
        Assert.Equal(Standing.Open, Found(new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2026-01-01..")));
    }

    [Theory]
    [InlineData(ClaimantRole.DirectContractor, Standing.InDoubt)]
    [InlineData(ClaimantRole.Subcontractor, Standing.InDoubt)]
    [InlineData(ClaimantRole.Supplier, Standing.Kept)]
    [InlineData(ClaimantRole.EquipmentLessor, Standing.Kept)]
    [InlineData(ClaimantRole.Laborer, Standing.Kept)]
    [InlineData(ClaimantRole.DesignProfessional, Standing.Kept)]
    [Proves("Bus. & Prof. Code § 7026")]
    [Proves("Bus. & Prof. Code § 7052")]
    public void A_silent_file_is_a_doubt_for_a_contractor_and_none_for_one_who_only_furnishes(ClaimantRole role, Standing expected)
    {
        var license = new JobBuilder().Role(role).Furnished("2026-03-02", 100m).On("2026-04-01").Get("license");
        Assert.Equal(expected, license.Standing);
        Assert.Single(license.Questions);
    }

    [Theory]
    [InlineData(ClaimantRole.Subcontractor, Standing.InDoubt)]
    [InlineData(ClaimantRole.Supplier, Standing.Kept)]
    [Proves("Bus. & Prof. Code § 7026")]
    [Proves("Bus. & Prof. Code § 7052")]
    public void Saying_that_no_license_is_needed_does_not_settle_it_for_a_contractor(ClaimantRole role, Standing expected) =>
        Assert.Equal(expected, Found(new JobBuilder().Role(role).Claimant(c => c with { License = new License { Required = false } })
            .Furnished("2026-03-02")));

    [Fact]
    public void The_first_uncovered_day_is_found_through_overlapping_spans_in_any_order()
    {
        LicenseSpan[] active =
            [new(Day("2026-02-01"), Day("2026-02-20")), new(Day("2026-01-01"), Day("2026-02-10")), new(Day("2026-02-22"), null)];
        Assert.Equal(Day("2026-02-21"), LicenseGate.FirstUncoveredDay(active, Day("2026-01-01"), Day("2026-03-01")));
        Assert.Null(LicenseGate.FirstUncoveredDay(active, Day("2026-01-01"), Day("2026-02-20")));
        Assert.Null(LicenseGate.FirstUncoveredDay(active, Day("2026-02-22"), Day("2030-01-01")));
        Assert.Equal(Day("2025-12-31"), LicenseGate.FirstUncoveredDay(active, Day("2025-12-31"), Day("2026-01-05")));
        Assert.Equal(Day("2026-01-01"), LicenseGate.FirstUncoveredDay([], Day("2026-01-01"), Day("2026-01-01")));
        // A span of one day covers that day.
        Assert.Null(LicenseGate.FirstUncoveredDay([new(Day("2026-01-01"), Day("2026-01-01"))], Day("2026-01-01"), Day("2026-01-01")));
    }
}
