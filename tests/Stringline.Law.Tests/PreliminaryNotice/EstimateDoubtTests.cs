using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

public sealed class EstimateDoubtTests
{
    private static JobBuilder Job(decimal furnished) => new JobBuilder().Furnished("2026-03-02", furnished);

    [Theory]
    [InlineData("1000.00", "2000.00", null, false)] // twice the estimate is not yet far above it
    [InlineData("1000.00", "2000.01", null, true)]
    [InlineData("1000.00", "9000.00", EstimateBasis.WorkedOut, false)] // however wrong it proved
    [InlineData("1000.00", "9000.00", EstimateBasis.StockFigure, false)] // no doubt: the notice counts for nothing
    [Proves("Civ. Code § 8202(a)(2)")]
    public void An_estimate_is_asked_about_where_the_claim_is_far_above_it_and_nobody_says_how_it_was_reached(string estimate,
        string furnished, EstimateBasis? basis, bool asked)
    {
        var assessment = Job(Dollars(furnished)).NoticeEstimating("2026-03-03", Dollars(estimate), basis).On("2026-03-10");

        Assert.Equal(asked, assessment.Find("preliminary-notice.estimate") is { Standing: Standing.InDoubt });
        Assert.Equal(asked, assessment.Get("lien-right").Says("Estimate in the preliminary notice"));
        if (asked)
        {
            Assert.Equal(Dollars(furnished), assessment.Get("preliminary-notice.estimate").Questions.Single().Dollars);
            Assert.Equal([1], assessment.Get("preliminary-notice.estimate").Corrected("(notice-given.estimateBasis)"));
        }
    }

    // Sent by e-mail it is no notice, and its estimate harms nobody.
    [Fact]
    [Proves("Civ. Code § 8202(a)(2)")]
    public void Nothing_is_asked_of_a_paper_that_is_no_notice() =>
        Assert.Null(Job(9000m).NoticeEstimating("2026-03-03", 1000m).Which(e => (NoticeGiven)e with { Manner = Manner.Email })
            .On("2026-03-10").Find("preliminary-notice.estimate"));

    [Fact]
    [Proves("Civ. Code § 8202(a)(2)")]
    public void The_agreed_price_with_agreed_changes_is_set_beside_it_too()
    {
        var job = Job(100m).Price(1500m).Changed("2026-03-04", 501m).NoticeEstimating("2026-03-03", 1000m);
        Assert.NotNull(job.On("2026-03-10").Find("preliminary-notice.estimate"));
        Assert.Null(Job(100m).Price(1500m).Changed("2026-03-04", 501m, agreed: false).NoticeEstimating("2026-03-03", 1000m).On("2026-03-10")
            .Find("preliminary-notice.estimate"));
    }

    [Fact]
    [Proves("Civ. Code § 8202(a)(2)")]
    public void A_notice_with_a_stock_figure_counts_for_nothing_and_a_later_good_one_reaches_back_twenty_days()
    {
        var bad = Job(9000m).NoticeEstimating("2026-03-03", 1000m, EstimateBasis.StockFigure);
        var alone = bad.On("2026-04-20").Get("preliminary-notice.last-day");
        Assert.Equal(Standing.Narrowed, alone.Standing);
        Assert.True(alone.RuledOut("Civ. Code § 8202(a)(2)"));
        Assert.Equal(["2026-04-01"], bad.NoticeEstimating("2026-04-21", 9000m, EstimateBasis.WorkedOut).On("2026-04-22")
            .Get("preliminary-notice.reaches-back-to").DaysOf());
    }

    [Theory]
    [InlineData(2000, false)]
    [InlineData(2001, true)]
    [Proves("Civ. Code § 9303(b)")]
    public void A_public_notice_is_asked_the_same_under_its_own_section(int furnished, bool asked)
    {
        var assessment = new JobBuilder().PublicWork().Furnished("2026-03-02", furnished)
            .Notice("2026-03-03", Manner.CertifiedMail, "city", "direct").Which(e => (NoticeGiven)e with { Estimate = 1000m })
            .On("2026-03-10");
        var estimate = assessment.Find("preliminary-notice.estimate");
        Assert.Equal(asked, estimate is { Standing: Standing.InDoubt });
        Assert.True(!asked || estimate!.Sections.SequenceEqual(["Civ. Code § 9303(b)"]));
    }

    private static decimal Dollars(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
