using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// Work completed on Monday 4 May 2026: the time to give the notice ends on Sunday 2 August, and 90 days after it, unrolled, is Saturday
/// 31 October, which would roll to Monday 2 November. The day to plan on is Friday 30 October.
/// </summary>
public sealed class StopPaymentDaysTests
{
    private static JobBuilder Job() =>
        new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1000m).Ended("2026-04-06").Completed("2026-05-04");

    [Theory]
    [InlineData("2026-06-25", Standing.NotYet)]
    [InlineData("2026-06-26", Standing.Open)]
    [Proves("Civ. Code § 8550(a)")]
    public void No_action_before_the_eleventh_day_after_giving(string asOf, Standing expected)
    {
        var first = Job().StopPaymentGiven("2026-06-15", 1000m).On(asOf).Get("stop-payment-notice.action-first-day");
        Assert.Equal(["2026-06-26"], first.DaysOf());
        Assert.Equal(expected, first.Standing);
        Assert.Null(first.ActBy);
    }

    [Theory]
    [InlineData("2026-06-25", Standing.NotYet)]
    [InlineData("2026-06-26", Standing.InDoubt)]
    [InlineData("2026-06-28", Standing.InDoubt)]
    [InlineData("2026-06-29", Standing.Open)]
    [Proves("Civ. Code § 8550(a)")]
    public void Given_on_a_day_in_doubt_the_first_day_is_in_doubt(string asOf, Standing expected) =>
        Assert.Equal(expected, Job().StopPaymentGiven("2026-06-15..2026-06-18", 1000m).On(asOf)
            .Get("stop-payment-notice.action-first-day").Standing);

    [Theory]
    [InlineData("2026-06-15")]
    [InlineData("2026-07-31")]
    [Proves("Civ. Code § 8550(b)")]
    public void The_ninety_days_to_sue_run_from_the_end_of_the_time_to_give_and_not_from_the_giving(string given)
    {
        var last = Job().StopPaymentGiven(given, 1000m).On("2026-08-01").Get("stop-payment-notice.action-last-day");
        Assert.Equal(["2026-10-31"], last.DaysOf());
        Assert.Equal(JobBuilder.Day("2026-11-02"), last.Readings[0].Rolled);
        Assert.Equal("2026-10-30", last.Plan());
    }

    [Theory]
    [InlineData(true, "2026-10-31", Standing.InDoubt)]
    [InlineData(true, "2026-11-02", Standing.InDoubt)]
    [InlineData(true, "2026-11-03", Standing.Lost)]
    [InlineData(false, "2026-10-31", Standing.Lost)]
    [Proves("Civ. Code § 8550(b)")]
    public void Without_an_action_in_that_time_the_notice_dies(bool given, string asOf, Standing expected)
    {
        var job = given ? Job().StopPaymentGiven("2026-06-15", 1000m) : Job();
        Assert.Equal(expected, job.On(asOf).Get("stop-payment-notice.action-last-day").Standing);
    }

    [Theory]
    [InlineData("2026-06-14", Standing.Lost)]
    [InlineData("2026-06-15", Standing.InDoubt)]
    [InlineData("2026-06-25", Standing.InDoubt)]
    [InlineData("2026-06-26", Standing.Kept)]
    [InlineData("2026-10-31", Standing.Kept)]
    [InlineData("2026-11-02", Standing.InDoubt)]
    [InlineData("2026-11-03", Standing.Lost)]
    [Proves("Civ. Code § 8550(a)")]
    [Proves("Civ. Code § 8550(b)")]
    public void An_action_counts_from_the_first_day_through_the_last(string filed, Standing expected) =>
        Assert.Equal(expected, Job().StopPaymentGiven("2026-06-15", 1000m).ActionFiled(filed).On("2026-12-01")
            .Get("stop-payment-notice.action-last-day").Standing);

    // Filed Wednesday 1 July: the fifth day is Monday 6 July. Brewer Corp. v. Point Center Financial (2014) 223 Cal.App.4th 831: a miss
    // that harms nobody is not fatal.
    [Theory]
    [InlineData("2026-07-06", Standing.Open)]
    [InlineData("2026-07-07", Standing.InDoubt)]
    [InlineData("2027-07-07", Standing.InDoubt)]
    [Proves("Civ. Code § 8550(e)")]
    public void Those_who_got_the_notice_are_told_of_the_action_within_five_days(string asOf, Standing expected)
    {
        var tell = Job().StopPaymentGiven("2026-06-15", 1000m).ActionFiled("2026-07-01").On(asOf).Get("stop-payment-notice.tell-of-action");
        Assert.Equal(["2026-07-06"], tell.DaysOf());
        Assert.Equal(expected, tell.Standing);
        Assert.Equal(["Civ. Code § 8550(e)"], tell.Sections);
    }

    [Fact]
    [Proves("Civ. Code § 8550(e)")]
    public void An_action_without_a_stop_payment_notice_is_told_to_nobody()
    {
        var assessment = Job().ActionFiled("2026-07-01").On("2026-07-02");
        Assert.Null(assessment.Find("stop-payment-notice.tell-of-action"));
        Assert.Null(assessment.Find("stop-payment-notice.action-first-day"));
    }
}
