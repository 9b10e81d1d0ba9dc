using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>
/// A notice that lacks what the Code asks of it: Harold L. James, Inc. v. Five Points Ranch (1984) 158 Cal.App.3d 1, against
/// Civ. Code § 8102(b).
/// </summary>
public sealed class NoticeContentsTests
{
    private static JobBuilder Lacking(string on = "2026-03-10", string? lacks = "the statement of Civ. Code § 8202(a)(3)") =>
        new JobBuilder().Furnished("2026-03-02", 500m)
        .Notice(on).Which(e => (NoticeGiven)e with { Lacks = lacks });

    [Theory]
    [InlineData("the statement of Civ. Code § 8202(a)(3)", Standing.InDoubt)]
    [InlineData(null, Standing.Kept)]
    [Proves("Civ. Code § 8102(b)")]
    public void It_is_in_doubt_and_the_whole_sum_is_claimed_with_the_doubt(string? lacks, Standing expected)
    {
        var assessment = Lacking(lacks: lacks).On("2026-06-01");
        var notice = assessment.Get("preliminary-notice.last-day");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(500m, assessment.Amount.Demand);
        Assert.Equal(lacks is not null, notice.Says("Harold L. James"));
        Assert.Equal(lacks is not null, notice.Says("the statement of Civ. Code § 8202(a)(3)"));
        Assert.Equal(lacks is not null, assessment.Get("lien-right").Says("Preliminary notice: in doubt"));
    }

    [Theory]
    [InlineData("2026-03-22", Standing.Kept)]    // the good one alone is in time
    [InlineData("2026-03-23", Standing.InDoubt)]
    [InlineData("2026-04-10", Standing.InDoubt)]
    [Proves("Civ. Code § 8102(b)")]
    public void A_good_one_in_time_heals_it_and_a_later_one_leaves_the_doubt(string good, Standing expected) =>
        Assert.Equal(expected, Lacking().Notice(good).On("2026-06-01").Get("preliminary-notice.last-day").Standing);

    // The later good notice reaches back to 21 March: only the 500 of 2 March hang on the first.
    [Fact]
    [Proves("Civ. Code § 8102(b)")]
    public void Only_what_the_good_one_does_not_reach_hangs_on_the_doubtful_one()
    {
        var notice = Lacking().Furnished("2026-04-01", 300m).Notice("2026-04-10").On("2026-06-01").Get("preliminary-notice.last-day");
        Assert.True(notice.Says("$500.00"));
        Assert.False(notice.Says("$800.00"));
    }

    [Fact]
    [Proves("Civ. Code § 8102(b)")]
    public void On_public_work_too()
    {
        var job = new JobBuilder().PublicWork().Furnished("2026-03-02", 500m).Notice("2026-03-10", Manner.CertifiedMail, "city", "direct")
            .Which(e => (NoticeGiven)e with { Lacks = "the estimate" });
        Assert.Equal(Standing.InDoubt, job.On("2026-06-01").Get("preliminary-notice.last-day").Standing);
        Assert.Equal(500m, job.On("2026-06-01").Amount.Demand);
        Assert.DoesNotContain(job.On("2026-06-01").Get("preliminary-notice.last-day").Why.Tree(), r =>
            r.Text.Contains("8202", StringComparison.Ordinal));
    }
}
