using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>What the claimant's waivers and releases take out of the claim (Civ. Code §§ 8124, 8132-8138).</summary>
public sealed class ReleasedTests
{
    private static JobBuilder Job() => new JobBuilder().Notice("2026-03-02")
        .Furnished("2026-03-02", 100m).Furnished("2026-03-31", 200m).Furnished("2026-04-06", 400m);

    private static Waterfall Amount(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Amount;

    [Theory]
    [InlineData("2026-03-30", 600)]
    [InlineData("2026-03-31", 400)]
    [InlineData("2026-04-05", 400)]
    [InlineData("2026-04-06", 0)]
    [InlineData(null, 0)]
    [Proves("Civ. Code § 8134")]
    public void An_unconditional_progress_form_releases_all_work_through_its_date_paid_or_not(string? through, int demand)
    {
        var amount = Amount(Job().Waived("2026-04-10", WaiverForm.UnconditionalProgress, through));
        Assert.Equal(demand, amount.Demand);
        Assert.Equal(["agreed-price 700.00", $"waived -{700 - demand}.00"], amount.Lines());
    }

    // Tesco Controls v. Monterey Mechanical (2004) 124 Cal.App.4th 780: once its condition is met a conditional progress form binds
    // through its date, not only to the extent of the money received.
    [Theory]
    [InlineData(null, "2026-06-01", 700)]
    [InlineData("2026-05-04", "2026-05-03", 700)]
    [InlineData("2026-05-04", "2026-05-04", 400)]
    [Proves("Civ. Code § 8132")]
    [Proves("Civ. Code § 8124")]
    public void A_conditional_progress_form_binds_once_its_payment_has_cleared(string? cleared, string asOf, int demand)
    {
        var amount = Amount(Job().Waived("2026-04-10", WaiverForm.ConditionalProgress, "2026-03-31", cleared: cleared), asOf);
        Assert.Equal(demand, amount.Demand);
        Assert.Equal(demand - 700m, amount.Step("waived"));
        Assert.Equal(demand < 700, Assert.Single(amount.Waivers).Binds);
        Assert.Equal(700m - demand, amount.Waivers[0].AtMost);
    }

    [Fact]
    [Proves("Civ. Code § 8132")]
    public void A_conditional_form_that_does_not_bind_is_named_with_its_reason()
    {
        var step = Assert.Single(Amount(Job().Waived("2026-04-10", WaiverForm.ConditionalProgress, "2026-03-31")).Steps,
            s => s.Id == "waived");
        var why = Assert.Single(step.Why.Children);
        Assert.False(why.Applied);
        Assert.Equal("Civ. Code § 8132", why.Section);
    }

    [Theory]
    [InlineData(null, 700)]
    [InlineData("2026-05-04", 0)]
    [Proves("Civ. Code § 8136")]
    public void A_conditional_final_form_releases_the_whole_job_once_paid(string? cleared, int demand) =>
        Assert.Equal(demand, Amount(Job().Waived("2026-04-10", WaiverForm.ConditionalFinal, cleared: cleared)).Demand);

    [Theory]
    [InlineData(null, 0)]
    [InlineData(250, 250)]
    [InlineData(900, 700)]
    [Proves("Civ. Code § 8138")]
    public void An_unconditional_final_form_leaves_only_the_sum_it_excepts(int? excepted, int demand)
    {
        var amount = Amount(Job().Waived("2026-04-10", WaiverForm.UnconditionalFinal, excepted: excepted));
        Assert.Equal(demand, amount.Demand);
        Assert.Equal(demand, Assert.Single(amount.Waivers).Kept);
        Assert.Equal(700m, amount.Waivers[0].Reached);
    }

    [Fact]
    [Proves("Civ. Code § 8132")]
    [Proves("Civ. Code § 8134")]
    [Proves("Civ. Code § 8138")]
    public void Retention_outlives_a_progress_form_and_not_a_final_one()
    {
        Assert.Equal(430m,
            Amount(Job().Retained("2026-03-31", 30m).Waived("2026-04-10", WaiverForm.UnconditionalProgress, "2026-03-31")).Demand);
        Assert.Equal(430m,
            Amount(Job().Retained("2026-03-31", 30m)
                .Waived("2026-04-10", WaiverForm.ConditionalProgress, "2026-03-31", cleared: "2026-04-20")).Demand);
        Assert.Equal(0m, Amount(Job().Retained("2026-03-31", 30m).Waived("2026-04-10", WaiverForm.UnconditionalFinal)).Demand);
    }

    // Civ. Code §§ 8132, 8134: the form keeps retentions, and says nothing of the day on which they were held.
    [Theory]
    [InlineData("2026-03-25..2026-03-31", 430)]
    [InlineData("2026-03-31..2026-04-01", 430)]
    [InlineData("2026-04-01", 430)]
    [InlineData("?", 430)]
    [Proves("Civ. Code § 8134")]
    public void Retention_of_any_day_outlives_a_progress_form(string retained, int demand) =>
        Assert.Equal(demand,
            Amount(Job().Retained(retained, 30m).Waived("2026-04-10", WaiverForm.UnconditionalProgress, "2026-03-31")).Demand);

    [Fact]
    [Proves("Civ. Code § 8124")]
    public void A_paper_out_of_form_is_named_with_the_section_that_asks_for_the_form()
    {
        var why = Assert.Single(Amount(Job().Waived("2026-04-10", WaiverForm.UnconditionalFinal, inForm: false)).Steps
            .Single(s => s.Id == "waived").Why.Children);
        Assert.False(why.Applied);
        Assert.Equal("Civ. Code § 8124(a)", why.Section);
    }

    [Fact]
    [Proves("Civ. Code § 8134")]
    public void Of_several_the_one_that_releases_most_counts_and_they_do_not_add_up()
    {
        var amount = Amount(Job().Waived("2026-03-05", WaiverForm.UnconditionalProgress, "2026-03-02")
            .Waived("2026-04-01", WaiverForm.UnconditionalProgress, "2026-03-31"));
        Assert.Equal(400m, amount.Demand);
        Assert.Equal(-300m, amount.Step("waived"));
        Assert.Equal([100m, 300m], amount.Waivers.Select(w => w.Released));
    }

    [Fact]
    [Proves("Civ. Code § 8134")]
    public void Only_what_is_unpaid_is_released()
    {
        var amount = Amount(Job().Paid("2026-04-08", 300m).Waived("2026-04-10", WaiverForm.UnconditionalProgress, "2026-03-31"));
        Assert.Equal(["agreed-price 700.00", "paid -300.00", "waived 0.00"], amount.Lines());
        Assert.Equal(400m, amount.Demand);
    }

    [Theory]
    [InlineData("2026-03-25", "2026-04-03", 150)] // three of ten days lie after it
    [InlineData("2026-03-22", "2026-03-31", 0)]
    [InlineData("2026-04-01", "2026-04-03", 500)]
    [Proves("Civ. Code § 8134")]
    public void Work_over_the_through_date_is_released_by_days(string from, string until, int demand) =>
        Assert.Equal(demand,
            Amount(new JobBuilder().Notice("2026-03-02").Furnished(from, 500m, until: until)
                .Waived("2026-04-10", WaiverForm.UnconditionalProgress, "2026-03-31")).Demand);

    [Fact]
    [Proves("Civ. Code § 8134")]
    public void Work_on_an_unknown_day_is_not_released_as_a_fact() =>
        Assert.Equal((500m, 0m),
            Reached(new JobBuilder().Role(ClaimantRole.Laborer).Furnished("?", 500m)
                .Waived("2026-04-10", WaiverForm.UnconditionalProgress, "2020-01-01")));

    private static (decimal Demand, decimal Reached) Reached(JobBuilder job) =>
        (Amount(job).Demand, Assert.Single(Amount(job).Waivers).Reached);

    // Nobody knows when it was begun; but it had ended by the through date, so that all of it was provided through it.
    [Theory]
    [InlineData("2026-03-31", 0, 500)]
    [InlineData("2026-04-01", 500, 0)]
    [Proves("Civ. Code § 8134")]
    public void Work_that_had_ended_by_the_through_date_is_released_whenever_it_was_begun(string until, int demand, int reached) =>
        Assert.Equal(((decimal)demand, (decimal)reached),
            Reached(new JobBuilder().Role(ClaimantRole.Laborer).Furnished("?", 500m, until: until)
                .Waived("2026-04-10", WaiverForm.UnconditionalProgress, "2026-03-31")));

    // A final form has no through date; one that the file gives all the same says nothing. It reaches no work of a day that may lie after
    // its signing.
    [Theory]
    [InlineData("2026-04-10", "2026-03-31", 0, 700)]
    [InlineData("2026-04-05..2026-04-10", null, 400, 300)]
    [InlineData("2026-04-06..2026-04-10", null, 0, 700)]
    [Proves("Civ. Code § 8138")]
    public void A_final_form_reaches_all_work_to_the_earliest_day_of_its_signing(string signedOn, string? through, int demand,
        int reached) =>
        Assert.Equal(((decimal)demand, (decimal)reached), Reached(Job().Waived(signedOn, WaiverForm.UnconditionalFinal, through)));

    // Paid beyond what the days through it come to, nothing of the span is released: 15 of 30 days of 2,400.00 are 1,200.00.
    [Theory]
    [InlineData(1_199, 1_200, 1)]
    [InlineData(1_200, 1_200, 0)]
    [InlineData(1_300, 1_100, 0)]
    [InlineData(2_400, 0, 0)]
    [Proves("Civ. Code § 8134")]
    public void What_was_paid_for_a_span_is_taken_off_its_days_through_the_date(int paid, int demand, int reached) =>
        Assert.Equal(((decimal)demand, (decimal)reached),
            Reached(new JobBuilder().Notice("2025-09-15").Furnished("2025-09-11", 2_400m, until: "2025-10-10").Paid("2025-10-02", paid)
            .Waived("2025-10-20", WaiverForm.UnconditionalProgress, "2025-09-25")));

    [Theory]
    [InlineData(false, 700)]
    [InlineData(true, 0)]
    [InlineData(null, 0)]
    [Proves("Civ. Code § 8124")]
    public void A_paper_that_does_not_follow_the_form_releases_nothing(bool? inForm, int demand) =>
        Assert.Equal(demand, Amount(Job().Waived("2026-04-10", WaiverForm.UnconditionalFinal, inForm: inForm)).Demand);

    [Fact]
    [Proves("Civ. Code § 8134")]
    public void What_lies_out_of_reach_is_not_released_twice()
    {
        // Notice 20 April reaches back to 31 March: 100 are out of reach, of the other 600 the form releases 200.
        var amount = Amount(new JobBuilder().Notice("2026-04-20").Furnished("2026-03-02", 100m).Furnished("2026-03-31", 200m)
            .Furnished("2026-04-06", 400m)
            .Waived("2026-04-21", WaiverForm.UnconditionalProgress, "2026-03-31"));
        Assert.Equal(["agreed-price 700.00", "outside-reach -100.00", "waived -200.00"], amount.Lines());
        Assert.Equal(400m, amount.Demand);
    }
}
