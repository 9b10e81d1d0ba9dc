using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>From the agreed price to the value of the work within reach (Civ. Code § 8430).</summary>
public sealed class WorkValueTests
{
    private static JobBuilder Supplier() => new JobBuilder().Notice("2026-03-02");

    private static Waterfall Amount(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Amount;

    [Fact]
    [Proves("Civ. Code § 8430(a)")]
    [Proves("Civ. Code § 8430(a)(2)")]
    public void Furnished_to_the_whole_price_the_demand_is_the_price()
    {
        var amount = Amount(Supplier().Price(1000m).Furnished("2026-03-02", 400m).Furnished("2026-04-06", 600m));
        Assert.Equal(["agreed-price 1000.00"], amount.Lines());
        Assert.Equal(1000m, amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)(1)")]
    public void Only_what_was_furnished_can_be_claimed()
    {
        var amount = Amount(Supplier().Price(1000m).Furnished("2026-03-02", 400m));
        Assert.Equal(["agreed-price 1000.00", "not-furnished -600.00"], amount.Lines());
        Assert.Equal(400m, amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)(2)")]
    public void What_was_furnished_beyond_the_price_is_named_and_not_claimed()
    {
        var amount = Amount(Supplier().Price(1000m).Furnished("2026-03-02", 800m).Furnished("2026-04-06", 450m));
        Assert.Equal(["agreed-price 1000.00", "beyond-price 0.00"], amount.Lines());
        Assert.Equal(1000m, amount.Demand);
        Assert.Contains("$250.00", amount.Steps[1].Why.Text, StringComparison.Ordinal);
    }

    // Basic Modular Facilities v. Ehsanipour (1999) 70 Cal.App.4th 1480: price $151,839, $154,884 after two changes, $137,092 paid.
    // The contract balance of $17,792 is our arithmetic on those figures.
    [Fact]
    [Proves("Civ. Code § 8430(c)")]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void Written_changes_raise_the_price()
    {
        var amount = Amount(new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Licensed("1990-01-01..").Price(151_839m)
            .Changed("1996-08-01", 2_000m).Changed("1996-10-01", 1_045m)
            .Furnished("1996-06-03", until: "1997-02-28").Ended("1997-02-28").Paid("1997-01-02", 137_092m), "1997-04-23");
        Assert.Equal(["agreed-price 151839.00", "changes 3045.00", "paid -137092.00"], amount.Lines());
        Assert.Equal(17_792m, amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8430(c)")]
    public void A_written_deduction_lowers_the_price_and_an_unagreed_change_is_named_and_left_out()
    {
        var amount = Amount(Supplier().Price(1000m).Changed("2026-03-10", -150m).Changed("2026-03-11", 75m, agreed: false)
            .Furnished("2026-03-02", 1000m));
        Assert.Equal(["agreed-price 1000.00", "changes -150.00", "beyond-price 0.00"], amount.Lines());
        Assert.Equal(850m, amount.Demand);
        var left = Assert.Single(amount.Steps[1].Why.Children);
        Assert.False(left.Applied);
        Assert.Contains("$75.00", left.Text, StringComparison.Ordinal);
    }

    [Fact]
    [Proves("Civ. Code § 8430(c)")]
    public void Deductions_beyond_the_price_leave_nothing_and_never_less()
    {
        var amount = Amount(Supplier().Price(100m).Changed("2026-03-10", -150m).Furnished("2026-03-02", 100m));
        Assert.Equal(["agreed-price 100.00", "changes -150.00", "beyond-price 0.00", "not-furnished 50.00"], amount.Lines());
        Assert.Equal(0m, amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)(2)")]
    [Proves("Civ. Code § 8430(c)")]
    public void Without_a_total_price_the_unit_prices_count_and_extras_only_through_what_was_furnished()
    {
        var amount = Amount(Supplier().Furnished("2026-03-02", 400m).Furnished("2026-04-06", 300m).Changed("2026-03-10", 75m)
            .Changed("2026-03-11", -50m));
        Assert.Equal(["agreed-price 700.00", "changes -50.00"], amount.Lines());
        Assert.Equal(650m, amount.Demand);
        Assert.Contains("$75.00", Assert.Single(amount.Steps[1].Why.Children).Text, StringComparison.Ordinal);
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)(2)")]
    public void Unit_prices_less_than_the_deductions_leave_nothing()
    {
        var amount = Amount(Supplier().Furnished("2026-03-02", 40m).Changed("2026-03-11", -50m));
        Assert.Equal(["agreed-price 40.00", "changes -50.00", "not-furnished 10.00"], amount.Lines());
        Assert.Equal(0m, amount.Demand);
    }

    [Theory]
    [InlineData(600, 600)]
    [InlineData(1000, 1000)]
    [InlineData(1200, 1000)]
    [Proves("Civ. Code § 8430(a)")]
    [Proves("Civ. Code § 8430(a)(1)")]
    public void The_lesser_of_price_and_reasonable_value_counts(int reasonable, int demand)
    {
        var amount =
            Amount(Supplier().Contract(c => c with { Price = 1000m, ReasonableValue = reasonable }).Furnished("2026-03-02", 1000m));
        Assert.Equal(demand, amount.Demand);
        Assert.Equal(demand - 1000m, amount.Step("reasonable-value"));
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)(1)")]
    public void Unpriced_work_counts_for_the_whole_price_once_furnishing_has_ended_and_is_unknown_before()
    {
        var job = Supplier().Price(1000m).Furnished("2026-03-02").Furnished("2026-04-06");
        Assert.Equal(["agreed-price 1000.00", "value-unknown -1000.00"], Amount(job).Lines());
        Assert.Equal(0m, Amount(job).Demand);
        Assert.True(Amount(job).IsUnknown);
        var ended = Amount(job.Ended("2026-04-06"));
        Assert.Equal(["agreed-price 1000.00"], ended.Lines());
        Assert.Equal(1000m, ended.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void The_whole_price_on_both_sides_of_the_reach_back_day_is_left_out_as_in_doubt()
    {
        // Notice 20 April reaches back to 31 March; the work ran from 2 March.
        var amount =
            Amount(new JobBuilder().Notice("2026-04-20").Price(1000m).Furnished("2026-03-02").Furnished("2026-04-06").Ended("2026-04-06"));
        Assert.Equal(["agreed-price 1000.00", "outside-reach -1000.00"], amount.Lines());
        Assert.Equal(0m, amount.Demand);
        Assert.Equal(1000m, amount.InDoubt);
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)")]
    public void Some_items_without_a_price_count_for_nothing_and_the_assumptions_say_so()
    {
        var assessment = Supplier().Furnished("2026-03-02", 400m).Furnished("2026-04-06").Ended("2026-04-06").On("2026-06-01");
        Assert.Equal(400m, assessment.Amount.Demand);
        Assert.Contains("Civ. Code § 8430(a)", assessment.Get("assumptions").Sections);
    }

    // American Buildings v. Bay Commercial Construction (2002) 99 Cal.App.4th 1193: $41,775 furnished, $625 of it within the 20 days
    // before the notice. The days are made up; the section is the public twin of § 8204.
    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void A_late_notice_leaves_only_what_lies_within_its_reach()
    {
        var amount = Amount(new JobBuilder().Furnished("2026-03-02", 41_150m).Furnished("2026-04-06", 625m).Notice("2026-04-20"));
        Assert.Equal(["agreed-price 41775.00", "outside-reach -41150.00"], amount.Lines());
        Assert.Equal(625m, amount.Demand);
        Assert.Equal(0m, amount.InDoubt);
    }

    // Notice on Monday 20 April 2026 reaches back to Tuesday 31 March.
    [Theory]
    [InlineData("2026-03-30", "2026-03-30", 0, 0)]
    [InlineData("2026-03-31", "2026-03-31", 100, 0)]
    [InlineData("2026-03-30", "2026-03-31", 0, 100)]
    [InlineData("2026-03-02", "2026-05-29", 0, 100)]
    [InlineData("2026-03-30..2026-04-01", "2026-03-30..2026-04-01", 0, 100)]
    [InlineData("2026-03-31..2026-04-01", "2026-03-31..2026-04-01", 100, 0)]
    [InlineData("?", "?", 0, 100)]
    [Proves("Civ. Code § 8204(a)")]
    public void Work_on_both_sides_of_the_reach_back_day_is_left_out_and_named_as_in_doubt(string from, string until, int demand,
        int inDoubt)
    {
        var amount = Amount(new JobBuilder().Furnished("2026-03-02", 1m).Furnished(from, 100m, until: until).Notice("2026-04-20"));
        Assert.Equal(demand, amount.Demand);
        Assert.Equal(inDoubt, amount.InDoubt);
        Assert.Equal(demand - 101m, amount.Step("outside-reach"));
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)(2)")]
    [Proves("Civ. Code § 8204(a)")]
    public void What_lies_beyond_the_price_is_the_last_that_was_furnished()
    {
        // 80 out of reach, 50 in reach of which 30 lies beyond the price of 100.
        var amount = Amount(new JobBuilder().Price(100m).Furnished("2026-03-02", 80m).Furnished("2026-04-06", 50m).Notice("2026-04-20"));
        Assert.Equal(["agreed-price 100.00", "beyond-price 0.00", "outside-reach -80.00"], amount.Lines());
        Assert.Equal(20m, amount.Demand);
    }

    // Both ended on 6 April. What began within reach, on the later day, lies beyond the price; what began before stays out of reach.
    [Theory]
    [InlineData("2026-03-16")]
    [InlineData("?")]
    [Proves("Civ. Code § 8430(a)(2)")]
    [Proves("Civ. Code § 8204(a)")]
    public void Of_two_items_that_end_on_one_day_the_one_begun_later_lies_beyond_the_price(string from)
    {
        foreach (var laterFirst in (bool[])[false, true])
        {
            var job = new JobBuilder().Price(150m).Notice("2026-04-20");
            if (laterFirst)
                job.Furnished("2026-04-06", 100m).Furnished(from, 100m, until: "2026-04-06");
            else
                job.Furnished(from, 100m, until: "2026-04-06").Furnished("2026-04-06", 100m);
            Assert.Equal(["agreed-price 150.00", "beyond-price 0.00", "outside-reach -100.00"], Amount(job.Furnished("2026-03-02", 0m))
                .Lines());
            Assert.Equal(50m, Amount(job).Demand);
        }
    }

    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void Even_cents_on_both_sides_of_the_reach_back_day_are_said_to_be_so()
    {
        var why = Amount(new JobBuilder().Furnished("2026-03-02", 80m).Furnished("2026-03-30", 0.50m, until: "2026-04-06")
            .Notice("2026-04-20")).Steps.Single(s => s.Id == "outside-reach").Why;
        Assert.Contains("$0.50", Assert.Single(why.Children).Text, StringComparison.Ordinal);
    }

    // Nothing is priced item by item, so the price stands for all the work from 30 March to 6 April.
    [Fact]
    [Proves("Civ. Code § 8430(a)(1)")]
    [Proves("Civ. Code § 8134")]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void The_whole_price_is_work_of_the_days_on_which_it_was_furnished()
    {
        static JobBuilder Job(string first = "2026-03-30", string last = "2026-04-06") =>
            Supplier().Price(1000m).Furnished(first).Furnished(last).Ended("2026-04-20");
        Assert.Equal(900m, Amount(Job().Credited("2026-05-04", 100m)).Demand);
        Assert.Equal(1000m, Amount(Job().Waived("2026-04-21", WaiverForm.UnconditionalProgress, "2026-03-29")).Demand);
        // One of its eight days; and none as a fact where the first may be later.
        Assert.Equal(875m, Amount(Job().Waived("2026-04-21", WaiverForm.UnconditionalProgress, "2026-03-30")).Demand);
        Assert.Equal(0m, Amount(Job().Waived("2026-04-21", WaiverForm.UnconditionalProgress, "2026-04-06")).Demand);
        Assert.Equal(1000m,
            Amount(Job("2026-03-30..2026-04-02").Waived("2026-04-21", WaiverForm.UnconditionalProgress, "2026-03-31")).Demand);
        // A charge of 8 April falls due before work that may have gone on to the 10th, and gets the payment.
        Assert.Equal(1000m,
            Amount(Job(last: "2026-04-06..2026-04-10").Charged("2026-04-08", 30m, ChargeKind.Finance).Paid("2026-05-04", 30m)).Demand);
        Assert.Equal(970m, Amount(Job().Charged("2026-04-08", 30m, ChargeKind.Finance).Paid("2026-05-04", 30m)).Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8430(c)")]
    public void A_whole_price_of_cents_is_claimed_and_one_below_nothing_is_not()
    {
        Assert.Equal(0.50m, Amount(Supplier().Price(0.50m).Furnished("2026-03-02").Ended("2026-04-06")).Demand);
        var below = Amount(Supplier().Price(100m).Changed("2026-03-10", -150m).Furnished("2026-03-02").Ended("2026-04-06"));
        Assert.Equal(["agreed-price 100.00", "changes -150.00", "not-furnished 50.00"], below.Lines());
        Assert.Equal(0m, below.Demand);
    }

    [Theory]
    [InlineData("0.50", "beyond-price 0.00")]
    [InlineData("0.00", null)]
    [Proves("Civ. Code § 8430(c)")]
    public void A_price_below_nothing_leaves_not_even_cents(string furnished, string? beyond)
    {
        var amount =
            Amount(Supplier().Price(100m).Changed("2026-03-10", -150m)
                .Furnished("2026-03-02", decimal.Parse(furnished, System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Equal(["agreed-price 100.00", "changes -150.00", .. beyond is null ? [] : (string[])[beyond], "not-furnished 50.00"],
            amount.Lines());
        Assert.Equal(0m, amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8430(c)")]
    public void Without_a_total_price_deductions_of_cents_count_and_extras_of_cents_do_not()
    {
        Assert.Equal(9.50m, Amount(Supplier().Furnished("2026-03-02", 10m).Changed("2026-03-10", -0.50m)).Demand);
        Assert.Equal(["agreed-price 10.00", "changes 0.00"], Amount(Supplier().Furnished("2026-03-02", 10m).Changed("2026-03-10", 0.50m))
            .Lines());
        Assert.Equal(["agreed-price 10.00", "changes -10.00"], Amount(Supplier().Furnished("2026-03-02", 10m).Changed("2026-03-10", -10m))
            .Lines());
        Assert.Equal(["agreed-price 10.00", "changes -10.50", "not-furnished 0.50"],
            Amount(Supplier().Furnished("2026-03-02", 10m).Changed("2026-03-10", -10.50m)).Lines());
    }

    [Fact]
    [Proves("Civ. Code § 8430(c)")]
    public void An_extra_that_nobody_agreed_to_in_writing_is_named_for_that_once()
    {
        var amount = Amount(Supplier().Furnished("2026-03-02", 400m).Changed("2026-03-10", 75m, agreed: false));
        Assert.Equal("Civ. Code § 8430(c)", Assert.Single(amount.Steps.Single(s => s.Id == "changes").Why.Children).Section);
    }

    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void What_lies_out_of_reach_is_named_by_its_entries()
    {
        var why = Amount(new JobBuilder().Furnished("2026-03-02", 80m).Furnished("2026-03-03", 0m).Furnished("2026-04-06", 50m)
            .Notice("2026-04-20")).Steps.Single(s => s.Id == "outside-reach").Why;
        Assert.Equal([0], why.Facts.Select(f => f.Index));
        Assert.Empty(why.Children);
        var whole = Amount(new JobBuilder().Price(1000m).Furnished("2026-03-02").Ended("2026-04-06").Notice("2026-04-20")).Steps
            .Single(s => s.Id == "outside-reach").Why;
        Assert.Equal([0], whole.Facts.Select(f => f.Index));
    }

    [Fact]
    public void Nothing_furnished_is_nothing_to_claim()
    {
        Assert.Equal(0m, Amount(new JobBuilder()).Demand);
        Assert.Equal(["agreed-price 1000.00", "not-furnished -1000.00"], Amount(new JobBuilder().Price(1000m)).Lines());
    }
}
