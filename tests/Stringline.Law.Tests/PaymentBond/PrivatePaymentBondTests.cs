using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PaymentBond;

/// <summary>
/// Private work completed on Monday 4 May 2026. Six months end on Wednesday 4 November; counted as 182 days, on Monday 2 November.
/// Last furnished Monday 6 April 2026: four years end on 6 April 2030.
/// </summary>
public sealed class PrivatePaymentBondTests
{
    private static JobBuilder Job(string? recorded = "2026-05-03", string completed = "2026-05-04") =>
        new JobBuilder().PaymentBond(recorded)
        .Notice("2026-03-02").Furnished("2026-03-02", 400m).Furnished("2026-04-06", 600m).Ended("2026-04-06").Completed(completed);

    private static Finding Action(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Get("payment-bond.action-last-day");

    [Theory]
    [InlineData("2026-11-02", Standing.Open)]
    [InlineData("2026-11-03", Standing.InDoubt)]
    [InlineData("2026-11-04", Standing.InDoubt)]
    [InlineData("2026-11-05", Standing.Lost)]
    [Proves("Civ. Code § 8610")]
    public void On_a_bond_recorded_before_completion_the_action_is_due_within_six_months_after_it(string asOf, Standing expected)
    {
        var action = Action(Job(), asOf);
        Assert.Equal(["2026-11-02", "2026-11-04"], action.DaysOf());
        Assert.Equal("2026-11-02", action.Plan());
        Assert.Equal(expected, action.Standing);
    }

    [Theory]
    [InlineData("2026-11-02", Standing.Kept)]
    [InlineData("2026-11-04", Standing.InDoubt)]
    [InlineData("2026-11-05", Standing.Lost)]
    [Proves("Civ. Code § 8610")]
    public void An_action_on_the_182nd_day_is_in_time_on_every_reading(string filed, Standing expected) =>
        Assert.Equal(expected, Action(Job().ActionFiled(filed), "2027-01-04").Standing);

    // The four years of Code Civ. Proc. § 337 for a bond recorded on or after completion. They begin as each sum falls due: nothing can
    // have fallen due before the first work of 2 March, and the last is of 6 April.
    [Fact]
    [Proves("Code Civ. Proc. § 337(a)")]
    [Proves("Civ. Code § 8609")]
    [Proves("Civ. Code § 8610")]
    public void A_bond_recorded_after_completion_leaves_four_years()
    {
        var action = Action(Job("2026-05-05"));
        Assert.Equal(["2030-03-02", "2030-04-06"], action.DaysOf());
        Assert.True(action.RuledOut("Civ. Code § 8610"));
        Assert.Equal(Standing.Open, Action(Job("2026-05-05"), "2026-12-01").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8610")]
    public void Where_the_recording_is_not_known_the_six_months_are_planned_on_and_nothing_is_called_lost()
    {
        var action = Action(Job(null), "2027-06-01");
        Assert.Equal("2026-11-02", action.Plan());
        Assert.Equal(Standing.InDoubt, action.Standing);
        Assert.True(action.Asks("On which day was the payment bond recorded"));
        Assert.False(Action(Job()).Asks("On which day was the payment bond recorded"));
    }

    [Fact]
    [Proves("Civ. Code § 8610")]
    public void Before_any_completion_the_time_does_not_run()
    {
        var action =
            Action(new JobBuilder().PaymentBond("2026-01-12").Notice("2026-03-02")
                .Work(w => w with { SubjectToAcceptanceBy = "City of Davis", PublicTakesOver = true }).Furnished("2026-03-02", 1m));
        Assert.Equal(Standing.NotYet, action.Standing);
        Assert.Null(action.ActBy);
    }

    // Last furnished 6 April, bond recorded 4 May, completion unknown: it may have come that day, after the bond, at the earliest.
    // Six months are 4 November, 182 days 2 November.
    [Fact]
    [Proves("Civ. Code § 8610")]
    public void While_completion_is_unknown_the_six_months_are_planned_on_even_if_the_bond_came_after_our_own_work()
    {
        var job = new JobBuilder().PaymentBond("2026-05-04").Notice("2026-03-02").Furnished("2026-03-02", 400m)
            .Furnished("2026-04-06", 600m).Ended("2026-04-06");
        Assert.Equal(["2026-11-02", "2026-11-04", "2030-03-02", "2030-04-06"], Action(job).DaysOf());
    }

    // Completed between 1 and 20 May, bond recorded on the 10th. By the 9th: recorded after completion, four years. On the 10th it may have
    // been recorded before: six months, at the earliest from the 10th: 10 November, or 182 days, Sunday 8 November.
    [Fact]
    [Proves("Civ. Code § 8610")]
    public void A_bond_recorded_while_completion_is_in_doubt_is_planned_on_the_six_months()
    {
        var job = Job("2026-05-10", "2026-05-01..2026-05-20");
        Assert.Equal("2026-11-06", Action(job).Plan());
        Assert.Equal("2030-04-06", Action(job).DaysOf()[^1]);
        Assert.Equal(Standing.InDoubt, Action(job, "2027-01-04").Standing);
    }

    // The six months do not run while the work waits for an acceptance; an action brought before they do is in time.
    [Theory]
    [InlineData(null, Standing.NotYet)]
    [InlineData("2026-06-15", Standing.Kept)]
    [Proves("Civ. Code § 8609")]
    public void An_action_brought_before_the_time_runs_is_kept(string? filed, Standing expected)
    {
        var job = new JobBuilder().PaymentBond("2026-03-01").Notice("2026-03-02").Furnished("2026-03-02", 400m).Ended("2026-04-06")
            .Work(w => w with { SubjectToAcceptanceBy = "City of Davis", PublicTakesOver = true });
        Assert.Equal(expected, Action(filed is null ? job : job.ActionOn(filed, Law.Facts.ActionOn.PaymentBond), "2026-07-01").Standing);
    }
}
