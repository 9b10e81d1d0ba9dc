using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>First furnished to a subcontractor on Monday 2 March 2026: a notice through Sunday 22 March covers everything.</summary>
public sealed class PublicNoticeTests
{
    private static JobBuilder Job(ClaimantRole role = ClaimantRole.Supplier) => new JobBuilder().Role(role).PublicWork()
        .Furnished("2026-03-02", 400m).Furnished("2026-04-06", 600m);

    private static Finding Notice(JobBuilder job, string asOf = "2026-05-01") => job.On(asOf).Get("preliminary-notice.last-day");

    [Theory]
    [InlineData("city", "direct", Standing.Kept)]
    [InlineData("city", "city", Standing.Narrowed)]
    [InlineData("direct", "direct", Standing.Narrowed)]
    [Proves("Civ. Code § 9300(a)")]
    public void It_is_due_to_the_public_entity_and_the_direct_contractor(string first, string second, Standing expected)
    {
        var notice = Notice(Job().Notice("2026-03-10", Manner.CertifiedMail, first, second));
        Assert.Equal(expected, notice.Standing);
        Assert.Contains("Civ. Code § 9300(a)(1)", notice.Sections);
        Assert.Contains("Civ. Code § 9300(a)(2)", notice.Sections);
    }

    [Theory]
    [InlineData(ClaimantRole.Laborer, "sub", true)]
    [InlineData(ClaimantRole.Subcontractor, "direct", true)]
    [InlineData(ClaimantRole.Supplier, "direct", true)]
    [InlineData(ClaimantRole.Supplier, "sub", false)]
    [InlineData(ClaimantRole.Subcontractor, "sub", false)]
    [Proves("Civ. Code § 9300(b)")]
    public void A_laborer_and_one_hired_by_the_direct_contractor_give_none(ClaimantRole role, string hiredBy, bool none)
    {
        var assessment = Job(role).Role(role, hiredBy).On("2026-05-01");
        Assert.Equal(none, assessment.Get("preliminary-notice.last-day").Standing == Standing.Kept);
        Assert.Equal(none, assessment.Find("preliminary-notice.reaches-back-to") is null);
        Assert.Equal(none ? 1000m : 0m, assessment.Amount.Demand);
    }

    [Theory]
    [InlineData("2026-03-22", "2026-03-02", Standing.Kept, 1000)]
    [InlineData("2026-03-23", "2026-03-03", Standing.Narrowed, 600)]
    [InlineData("2026-04-26", "2026-04-06", Standing.Narrowed, 600)]
    [InlineData("2026-04-27", "2026-04-07", Standing.Lost, 0)]
    [Proves("Civ. Code § 9304")]
    public void It_covers_work_within_twenty_days_before_it_and_after(string given, string from, Standing expected, int demand)
    {
        var assessment = Job().Ended("2026-04-06").Notice(given, Manner.CertifiedMail, "city", "direct").On("2026-05-01");
        Assert.Equal([from], assessment.Get("preliminary-notice.reaches-back-to").DaysOf());
        Assert.Equal(expected, assessment.Get("preliminary-notice.last-day").Standing);
        Assert.Equal(demand, assessment.Amount.Demand);
    }

    [Theory]
    [InlineData("2026-03-01", Standing.NotYet)]
    [InlineData("2026-03-22", Standing.InDoubt)]
    [InlineData("2026-03-23", Standing.Narrowed)]
    [Proves("Civ. Code § 9304")]
    public void While_none_is_given_each_day_after_the_twentieth_costs_a_day(string asOf, Standing expected)
    {
        var notice = Notice(Job(), asOf);
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(expected == Standing.NotYet ? null : "2026-03-20", notice.Plan());
    }

    [Fact]
    [Proves("Civ. Code § 9304")]
    public void A_notice_on_a_day_in_doubt_surely_covers_only_what_its_latest_day_covers()
    {
        var assessment = Job().Notice("2026-03-20..2026-03-25", Manner.CertifiedMail, "city", "direct").On("2026-05-01");
        Assert.Equal(["2026-02-28", "2026-03-05"], assessment.Get("preliminary-notice.reaches-back-to").DaysOf());
        Assert.Equal(600m, assessment.Amount.Demand);
        Assert.Equal(400m, assessment.Amount.InDoubt);
    }
}
