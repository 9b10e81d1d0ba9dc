using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>
/// A designer's notice within 20 days after the work of improvement commenced covers all its design services (Civ. Code § 8204(b)).
/// Commenced Monday 20 October 2025: the twentieth day is Sunday 9 November, planned on Friday 7 November; it would roll to Monday the
/// 10th.
/// </summary>
public sealed class DesignNoticeTests
{
    private static JobBuilder Designer(string? commenced = "2025-10-20", string hiredBy = "direct") =>
        new JobBuilder().Role(ClaimantRole.DesignProfessional, hiredBy)
        .Work(w => w with { Commenced = commenced is null ? null : JobBuilder.Day(commenced) })
        .Furnished("2025-03-05", 24000m, until: "2025-06-30").Ended("2025-06-30");

    private static Finding Notice(JobBuilder job, string asOf) => job.On(asOf).Get("preliminary-notice.last-day");

    [Theory]
    [InlineData("2025-10-28", Standing.Open, 24000)]
    [InlineData("2025-11-09", Standing.InDoubt, 24000)]
    [InlineData("2025-11-10", Standing.InDoubt, 24000)] // in time only if the Sunday rolls
    [InlineData("2025-11-11", Standing.Lost, 0)]
    [Proves("Civ. Code § 8204(b)")]
    public void Not_given_it_is_open_while_twenty_days_after_commencement_run(string asOf, Standing expected, int demand)
    {
        var assessment = Designer().On(asOf);
        var notice = assessment.Get("preliminary-notice.last-day");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal("2025-11-07", notice.Plan());
        Assert.Equal(["2025-11-09 20 days after the work commenced"], notice.Lines());
        Assert.Equal(demand, assessment.Amount.Demand);
    }

    [Theory]
    [InlineData("2025-10-28", Standing.Open)]
    [InlineData("2025-11-11", Standing.Lost)]
    [Proves("Civ. Code § 8204(b)")]
    [Proves("Civ. Code § 8200(e)(2)")]
    public void Hired_by_the_owner_the_same_days_run_toward_the_lender(string asOf, Standing expected) =>
        Assert.Equal(expected, Notice(Designer(hiredBy: "owner").Lender(), asOf).Standing);

    [Theory]
    [InlineData("2025-03-25", Standing.Open)]
    [InlineData("2025-03-26", Standing.InDoubt)]
    [InlineData("2025-10-28", Standing.InDoubt)]
    [Proves("Civ. Code § 8204(b)")]
    public void While_nobody_says_when_the_work_commenced_it_is_never_lost_and_the_day_is_asked(string asOf, Standing expected)
    {
        var assessment = Designer(commenced: null).On(asOf);
        var notice = assessment.Get("preliminary-notice.last-day");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal("2025-03-25", notice.Plan());
        Assert.Null(notice.Band!.Latest);
        Assert.EndsWith("(work.commenced)", notice.Questions.Single(q => q.Text.Contains("commence", StringComparison.Ordinal)).Text,
            StringComparison.Ordinal);
        Assert.Equal(24000m, assessment.Amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8204(b)")]
    public void A_notice_given_while_the_commencement_is_unknown_is_in_doubt_and_the_demand_is_claimed_with_it()
    {
        var assessment = Designer(commenced: null).Notice("2025-09-15").On("2025-10-28");
        var notice = assessment.Get("preliminary-notice.last-day");
        Assert.Equal(Standing.InDoubt, notice.Standing);
        Assert.Equal(24000m, notice.Questions.Single(q => q.Text.Contains("(work.commenced)", StringComparison.Ordinal)).Dollars);
        Assert.Equal(24000m, assessment.Amount.Demand);
    }

    [Theory]
    [InlineData("2025-11-05", Standing.Kept, 24000)]
    [InlineData("2025-11-09", Standing.Kept, 24000)]
    [InlineData("2025-11-10", Standing.InDoubt, 24000)]
    [InlineData("2025-11-11", Standing.Lost, 0)]
    [Proves("Civ. Code § 8204(b)")]
    public void Given_in_those_days_it_is_kept_beside_the_day_that_was_kept(string given, Standing expected, int demand)
    {
        var assessment = Designer().Notice(given).On("2025-12-01");
        Assert.Equal(expected, assessment.Get("preliminary-notice.last-day").Standing);
        Assert.Equal("2025-11-07", assessment.Get("preliminary-notice.last-day").Plan());
        Assert.Equal(demand, assessment.Amount.Demand);
    }

    // Commenced before the services: the twentieth day after first furnishing, 25 March 2025, is the later one. Nobody but a designer has
    // the other.
    [Theory]
    [InlineData(ClaimantRole.DesignProfessional, "2025-02-03", "2025-03-25")]
    [InlineData(ClaimantRole.DesignProfessional, "2025-03-05", "2025-03-25")]
    [InlineData(ClaimantRole.DesignProfessional, "2025-03-06", "2025-03-26")]
    [InlineData(ClaimantRole.Supplier, "2025-10-20", "2025-03-25")]
    [Proves("Civ. Code § 8204(b)")]
    public void The_later_of_the_two_twentieth_days_is_the_last(ClaimantRole role, string commenced, string last) =>
        Assert.Equal([last], Notice(Designer(commenced).Role(role, "direct"), "2025-03-10").DaysOf());
}
