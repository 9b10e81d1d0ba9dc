using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>Action filed on Monday 1 June 2026: the twentieth day is Sunday 21 June, act by Thursday 18 June (Friday the 19th is Juneteenth).</summary>
public sealed class AfterFilingTests
{
    private static JobBuilder Job() => new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-03-02").Completed("2026-03-30").ClaimRecorded("2026-04-06").ActionFiled("2026-06-01");

    [Theory]
    [InlineData("2026-06-21", Standing.Open)]
    [InlineData("2026-06-22", Standing.InDoubt)]
    [InlineData("2027-06-22", Standing.InDoubt)]
    [Proves("Civ. Code § 8461")]
    public void The_notice_of_pendency_is_recorded_within_twenty_days_and_late_still_binds_whoever_comes_after(string asOf, Standing expected)
    {
        var last = Job().On(asOf).Get("lis-pendens.last-day");
        Assert.Equal(["2026-06-21"], last.DaysOf());
        Assert.Equal("2026-06-18", last.Plan());
        Assert.Equal(expected, last.Standing);
    }

    [Theory]
    [InlineData("2026-06-21", Standing.Kept)]
    [InlineData("2026-06-22", Standing.InDoubt)]
    [Proves("Civ. Code § 8461")]
    public void Recorded_on_the_twentieth_day_it_is_in_time(string recorded, Standing expected) =>
        Assert.Equal(expected, Job().LisPendens(recorded).On("2026-08-03").Get("lis-pendens.last-day").Standing);

    [Theory]
    [InlineData("2028-06-01", Standing.Open)]
    [InlineData("2028-06-02", Standing.InDoubt)]
    [Proves("Civ. Code § 8462")]
    public void After_two_years_without_a_trial_the_court_may_dismiss(string asOf, Standing expected)
    {
        var last = Job().On(asOf).Get("prosecution.last-day");
        Assert.Equal(["2028-06-01"], last.DaysOf());
        Assert.Equal(expected, last.Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8461")]
    [Proves("Civ. Code § 8462")]
    public void Without_an_action_neither_is_due()
    {
        var assessment = new JobBuilder().Furnished("2026-03-02", 10m).On("2026-06-01");
        Assert.Null(assessment.Find("lis-pendens.last-day"));
        Assert.Null(assessment.Find("prosecution.last-day"));
    }
}
