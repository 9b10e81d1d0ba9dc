using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Waiver;

/// <summary>Each waiver and release as a finding of its own: whether it binds, what it releases, and what is wrong with it.</summary>
public sealed class WaiverFindingsTests
{
    private static JobBuilder Job() => new JobBuilder().Notice("2026-03-02")
        .Furnished("2026-03-02", 100m).Furnished("2026-03-31", 200m).Furnished("2026-04-06", 400m);

    private static Finding Only(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Get("waiver.1");

    [Fact]
    [Proves("Civ. Code § 8122")]
    public void Each_paper_the_claimant_signed_is_a_finding_by_the_day_it_was_signed()
    {
        var assessment = Job().Waived("2026-05-01", WaiverForm.UnconditionalFinal)
            .Waived("2026-04-10", WaiverForm.ConditionalProgress, "2026-03-31").On("2026-06-01");
        Assert.Equal(300m, assessment.Get("waiver.1").Amount);
        Assert.Equal(700m, assessment.Get("waiver.2").Amount);
        Assert.Null(assessment.Find("waiver.3"));
        // Nothing but a form the claimant itself executed takes anything away: no paper, no finding and no step.
        Assert.Null(Job().On("2026-06-01").Find("waiver.1"));
        Assert.Equal(700m, Job().On("2026-06-01").Amount.Demand);
    }

    [Theory]
    [InlineData(true, Standing.Done, 400)]
    [InlineData(null, Standing.Done, 400)]
    [InlineData(false, Standing.InDoubt, 700)]
    [Proves("Civ. Code § 8126")]
    public void A_paper_off_the_form_is_void_unless_paid_in_full_and_a_file_that_is_silent_is_asked(bool? inForm, Standing expected,
        int demand)
    {
        var job = Job().Waived("2026-04-10", WaiverForm.UnconditionalProgress, "2026-03-31", inForm: inForm);
        Assert.Equal(expected, Only(job).Standing);
        Assert.Equal(inForm == false, Only(job).Sections.Contains("Civ. Code § 8126"));
        Assert.Equal(inForm is null, Only(job).Asks("follow the statutory form"));
        Assert.Equal(demand, job.On("2026-06-01").Amount.Demand);
    }

    [Theory]
    [InlineData(WaiverForm.ConditionalProgress, null, Standing.NotYet)]
    [InlineData(WaiverForm.ConditionalProgress, "2026-05-04", Standing.Done)]
    [InlineData(WaiverForm.ConditionalFinal, null, Standing.NotYet)]
    [InlineData(WaiverForm.ConditionalFinal, "2026-05-04", Standing.Done)]
    [InlineData(WaiverForm.UnconditionalProgress, null, Standing.Done)]
    [InlineData(WaiverForm.UnconditionalFinal, null, Standing.Done)]
    [Proves("Civ. Code § 8124(b)")]
    public void A_conditional_form_waits_for_its_payment_to_clear_and_an_unconditional_one_for_nothing(WaiverForm form, string? cleared,
        Standing expected)
    {
        Assert.Equal(expected, Only(Job().Waived("2026-04-10", form, "2026-03-31", cleared: cleared)).Standing);
        if (cleared is not null)
            Assert.Equal(Standing.NotYet, Only(Job().Waived("2026-04-10", form, "2026-03-31", cleared: cleared), "2026-05-03").Standing);
    }

    [Theory]
    [InlineData(WaiverForm.UnconditionalProgress, null, true)]
    [InlineData(WaiverForm.UnconditionalProgress, "2026-04-11", true)]
    [InlineData(WaiverForm.UnconditionalProgress, "2026-04-10", false)]
    [InlineData(WaiverForm.UnconditionalFinal, "2026-04-11", true)]
    [InlineData(WaiverForm.UnconditionalFinal, "2026-04-09", false)]
    [InlineData(WaiverForm.ConditionalProgress, null, false)]
    [InlineData(WaiverForm.ConditionalFinal, null, false)]
    [Proves("Civ. Code § 8134")]
    [Proves("Civ. Code § 8138")]
    public void An_unconditional_form_signed_with_the_payment_still_out_is_an_alarm(WaiverForm form, string? cleared, bool alarm) =>
        Assert.Equal(alarm, Only(Job().Waived("2026-04-10", form, "2026-03-31", cleared: cleared))
            .Says("signed before its payment cleared"));

    [Theory]
    [InlineData("2026-03-01", false)]
    [InlineData("2026-03-02", true)]
    [Proves("Civ. Code § 8134")]
    public void A_through_date_that_reaches_further_than_the_money_is_an_alarm(string through, bool alarm) =>
        Assert.Equal(alarm, Only(Job().Waived("2026-04-10", WaiverForm.UnconditionalProgress, through, cleared: "2026-04-09"))
            .Says("reaches further than the money"));

    [Fact]
    [Proves("Civ. Code § 8132")]
    public void A_progress_form_without_a_through_date_is_an_alarm() =>
        Assert.True(Only(Job().Waived("2026-04-10", WaiverForm.ConditionalProgress)).Says("no through date"));

    // 80 of retention; the exceptions of a final form save what they name and no more.
    [Theory]
    [InlineData(WaiverForm.UnconditionalFinal, null, "$80.00 of retention")]
    [InlineData(WaiverForm.ConditionalFinal, 79, "$1.00 of retention")]
    [InlineData(WaiverForm.UnconditionalFinal, 80, null)]
    [InlineData(WaiverForm.UnconditionalProgress, null, null)]
    [Proves("Civ. Code § 8136")]
    [Proves("Civ. Code § 8138")]
    public void Retention_that_a_final_form_swallows_is_an_alarm(WaiverForm form, int? excepted, string? alarm)
    {
        var waiver = Only(Job().Retained("2026-03-31", 80m).Waived("2026-04-10", form, "2026-03-31", excepted));
        Assert.Equal(alarm is not null, waiver.Says("a final form keeps no retention"));
        Assert.True(alarm is null || waiver.Says(alarm));
    }

    // Kept by a progress form: of 700 the form reaches 300 through 31 March; 80 of retention stay alive.
    [Fact]
    [Proves("Civ. Code § 8134")]
    [Proves("Civ. Code § 8138")]
    public void The_amount_released_leaves_retention_out_of_a_progress_form_and_in_a_final_one()
    {
        Assert.Equal(220m,
            Only(Job().Retained("2026-03-31", 80m).Waived("2026-04-10", WaiverForm.UnconditionalProgress, "2026-03-31")).Amount);
        Assert.Equal(700m, Only(Job().Retained("2026-03-31", 80m).Waived("2026-04-10", WaiverForm.UnconditionalFinal)).Amount);
    }

    // All four forms release rights under a written change order fully executed before they are signed, unless it is listed.
    [Theory]
    [InlineData("2026-04-09", true, null, true)]
    [InlineData("2026-04-10", true, null, true)]
    [InlineData("2026-04-11", true, null, false)]
    [InlineData("?", true, null, true)]
    [InlineData("2026-04-09", false, null, false)]
    [InlineData("2026-04-09", true, 50, false)]
    [Proves("Civ. Code § 8132")]
    public void A_written_change_order_off_the_list_of_exceptions_is_an_alarm(string changed, bool agreed, int? excepted, bool alarm) =>
        Assert.Equal(alarm,
            Only(Job().Changed(changed, 50m, agreed).Waived("2026-04-10", WaiverForm.ConditionalProgress, "2026-03-31", excepted))
                .Says("is released unless it is listed as an exception"));

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [Proves("Civ. Code § 8134")]
    public void Whether_the_released_money_is_retention_is_asked_until_the_file_says(bool said, bool asks)
    {
        var job = Job().Waived("2026-04-10", WaiverForm.UnconditionalProgress, "2026-03-31");
        Assert.Equal(asks, Only(said ? job.Retained("2026-03-31", 10m) : job).Asks("retention"));
    }
}
