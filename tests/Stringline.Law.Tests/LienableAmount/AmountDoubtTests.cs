using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>What the finding about an amount says: between what figures it lies, why, and what would settle it.</summary>
public sealed class AmountDoubtTests
{
    // Notice on Monday 20 April 2026 reaches back to Tuesday 31 March (Civ. Code § 8204(a)).
    private static JobBuilder Late() => new JobBuilder().Notice("2026-04-20");

    private static JobBuilder InTime() => new JobBuilder().Notice("2026-03-02");

    private static JobBuilder Toward(JobBuilder job, string on, decimal credit, string? toward) =>
        job.Add(i => new Credited { Index = i, On = JobBuilder.When(on), Amount = credit, Toward = toward });

    private static void Is(JobBuilder job, Standing standing, decimal demand, decimal least, decimal most, string section, string says)
    {
        var answer = job.On("2026-06-01");
        var finding = answer.Get("amount");
        Assert.Equal((standing, demand), (finding.Standing, finding.Amount!.Value));
        Assert.Equal((demand, least, most), (answer.Amount.Demand, answer.Amount.AtLeast, answer.Amount.AtMost));
        var why = Assert.Single(finding.Why);
        Assert.Equal(section, why.Section);
        Assert.Contains(says, why.Text, StringComparison.Ordinal);
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)(2)")]
    public void An_amount_in_doubt_names_both_its_figures() =>
        Is(Late().Furnished("2026-03-02", 100m).Furnished("2026-03-30", 40m, until: "2026-04-06").Furnished("2026-04-13", 60m),
            Standing.InDoubt, 60m, 60m, 100m, "Civ. Code § 8430(a)(2)", "between $60.00 and $100.00; $60.00 is the figure");

    // Nobody knows what unpriced work was worth, so there is no figure to name, though both ends are nothing.
    [Fact]
    [Proves("Civ. Code § 8430(a)(2)")]
    public void An_amount_that_is_not_known_is_in_doubt_though_no_figure_can_be_named()
    {
        Is(InTime().Furnished("2026-03-02", 400m).Furnished("2026-03-09").Paid("2026-04-01", 400m), Standing.InDoubt, 0m, 0m, 0m,
            "Civ. Code § 8430(a)(2)", "so the amount is not known");
        var asked = Assert.Single(InTime().Furnished("2026-03-02", 400m).Furnished("2026-03-09").Paid("2026-04-01", 400m).On("2026-06-01")
            .Get("amount").Questions);
        Assert.Contains("furnished without a price", asked.Text, StringComparison.Ordinal);
        Assert.Null(asked.Dollars);
    }

    // Nothing is in doubt of what is entered; but something may not be entered.
    [Fact]
    [Proves("Civ. Code § 8430(a)(2)")]
    public void A_paid_file_with_a_price_left_over_is_open_and_says_what_is_left_of_what_is_entered() =>
        Is(InTime().Price(1_000m).Furnished("2026-03-02", 400m).Paid("2026-04-01", 400m), Standing.Open, 0m, 0m, 0m,
            "Civ. Code § 8430(a)(2)", "$0.00 is left of all that is entered");

    // Civ. Code § 8134 gives up "lien, stop payment notice, and payment bond rights", not the debt.
    [Theory]
    [InlineData(WaiverForm.UnconditionalProgress, 300.00)]
    [InlineData(WaiverForm.UnconditionalProgress, 0.50)]
    [InlineData(WaiverForm.ConditionalProgress, 300.00)]
    [Proves("Civ. Code § 8134")]
    public void What_a_release_takes_off_is_named_and_one_that_does_not_bind_takes_nothing(WaiverForm form, double released)
    {
        var job = InTime().Furnished("2026-03-02", (decimal)released).Furnished("2026-04-06", 400m)
            .Waived("2026-04-10", form, "2026-03-31");
        if (form == WaiverForm.ConditionalProgress)
        {
            Assert.Null(job.On("2026-06-01").Find("amount"));
            return;
        }

        Is(job, Standing.Open, 400m, 400m, 400m, "Civ. Code § 8430(a)(2)",
            $"A waiver and release takes {LawText.Money((decimal)released)} from the claim");
        var question = Assert.Single(job.On("2026-06-01").Get("amount").Questions);
        Assert.EndsWith("(paid)", question.Text, StringComparison.Ordinal);
        Assert.Equal((decimal)released, question.Dollars);
    }

    // Within reach 60; on both sides of the day 40 and 0.50, of which the first is paid in full; 100 out of reach beyond any doubt.
    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void What_straddles_the_reach_is_counted_as_far_as_it_is_unpaid_and_its_first_unpaid_entry_is_the_one_to_split()
    {
        static JobBuilder Job() => Late().Furnished("2026-03-02", 100m).Furnished("2026-03-29", 40m, "paid", "2026-04-06")
            .Furnished("2026-03-30", 0.50m, until: "2026-04-07").Furnished("2026-04-13", 60m);
        Is(Job().Paid("2026-05-04", 40m, "paid"), Standing.InDoubt, 60m, 60m, 60.50m, "Civ. Code § 8430(a)(2)",
            "between $60.00 and $60.50");
        var question = Assert.Single(Job().Paid("2026-05-04", 40m, "paid").On("2026-06-01").Get("amount").Questions);
        Assert.Equal((0.50m, 3), (question.Dollars, question.Corrects!.Index));
        Assert.Equal((40.50m, 2),
            (Job().On("2026-06-01").Get("amount").Questions[0].Dollars, Job().On("2026-06-01").Get("amount").Questions[0].Corrects!.Index));
        // All that straddled is paid: nothing is left to ask.
        Assert.Null(Job().Paid("2026-05-04", 140.50m).On("2026-06-01").Find("amount"));
    }

    // A direction to something that the file does not have is no direction: the credit may belong to either.
    [Theory]
    [InlineData(null, 2)]
    [InlineData("Z", 2)]
    [InlineData("A", null)]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void A_credit_for_something_unknown_is_as_one_for_nothing(string? toward, int? corrects)
    {
        var job = Toward(new JobBuilder().Furnished("2026-03-02", 300m, "A").Furnished("2026-04-06", 300m), "2026-05-04", 100m, toward)
            .Notice("2026-04-20");
        var answer = job.On("2026-06-01");
        Assert.Equal((300m, corrects is null ? 300m : 200m, 300m), (answer.Amount.Demand, answer.Amount.AtLeast, answer.Amount.AtMost));
        Assert.Equal(corrects, answer.Find("amount")?.Questions.Single().Corrects!.Index);
        Assert.Equal(corrects is null ? null : 100m, answer.Find("amount")?.Questions.Single().Dollars);
    }

    // Of several credits the first that is for no work is asked about, once.
    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void Of_several_credits_the_first_without_its_work_is_asked_about()
    {
        var job = Toward(
            Toward(Toward(new JobBuilder().Furnished("2026-03-02", 300m, "A").Furnished("2026-04-06", 300m), "2026-05-04", 10m, "A"),
                "2026-05-05", 20m, null), "2026-05-06", 30m, null);
        var question = Assert.Single(job.Notice("2026-04-20").On("2026-06-01").Get("amount").Questions);
        Assert.Equal((3, 50m), (question.Corrects!.Index, question.Dollars));
    }

    // Released to the signing, the lower figure is what the credit leaves of the work after it, and never less than nothing.
    [Theory]
    [InlineData(100, 50, 50)]
    [InlineData(100, 1_000, 0)]
    [Proves("Civ. Code § 8416(a)(1)")]
    [Proves("Civ. Code § 8134")]
    public void The_lower_figure_of_a_credit_is_reckoned_with_what_was_released(int later, int credit, int least)
    {
        var job = Late().Furnished("2026-03-02", 3_000m).Furnished("2026-04-06", 3_000m).Furnished("2026-05-04", later)
            .Waived("2026-04-21", WaiverForm.UnconditionalProgress, "2026-04-10")
            .Credited("2026-05-11", credit);
        var amount = job.On("2026-06-01").Amount;
        Assert.Equal(((decimal)later, (decimal)least, (decimal)later), (amount.Demand, amount.AtLeast, amount.AtMost));
        Assert.Contains(job.On("2026-06-01").Get("amount").Questions, q => q.Dollars == later - least
            && q.Text.EndsWith("(credited.toward)", StringComparison.Ordinal));
    }

    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void A_credit_that_lowers_nothing_is_not_asked_about()
    {
        // All that is within reach is released, and the credit may have been for it or not.
        var released = Late().Furnished("2026-03-02", 300m).Furnished("2026-04-06", 300m)
            .Waived("2026-04-21", WaiverForm.UnconditionalProgress, "2026-04-20").Credited("2026-05-11", 100m).On("2026-06-01");
        Assert.Equal((0m, 0m, 0m), (released.Amount.Demand, released.Amount.AtLeast, released.Amount.AtMost));
        Assert.DoesNotContain(released.Get("amount").Questions, q => q.Text.EndsWith("(credited.toward)", StringComparison.Ordinal));
        // The payment that follows takes what the credit left.
        Assert.Null(Late().Furnished("2026-03-02", 300m).Furnished("2026-04-06", 300m).Credited("2026-05-04", 100m).Paid("2026-05-11", 300m)
            .On("2026-06-01").Find("amount"));
    }

    // Price 1,000, of which some is priced as furnished and some is not. Credits are receipts as payments are.
    [Theory]
    [InlineData(1_000, 0, false, 0)]
    [InlineData(999, 0, true, 1)]
    [InlineData(900, 99, true, 1)]
    [InlineData(900, 100, false, 0)]
    [InlineData(399, 0, false, 1)] // 400 is priced, and 1 of that is unpaid
    [Proves("Civ. Code § 8430(a)(2)")]
    public void A_price_received_in_full_is_known_though_some_of_the_work_is_not_priced(int paid, int credited, bool unknown, int most)
    {
        var job = InTime().Price(1_000m).Furnished("2026-03-02", 400m).Furnished("2026-03-09").Paid("2026-04-01", paid);
        if (credited > 0)
            job.Credited("2026-04-02", credited);
        var answer = job.On("2026-06-01");
        Assert.Equal((unknown, (decimal)most), (answer.Amount.IsUnknown, answer.Amount.AtMost));
        Assert.Equal(unknown ? "InDoubt" : null, answer.Find("amount")?.Standing.ToString());
        Assert.Equal(unknown ? (decimal?)most : null, answer.Find("amount")?.Questions.Single().Dollars);
    }

    // All that is priced is paid, to the cent; below it the rest of the price is no question yet.
    [Theory]
    [InlineData(400.00, 0.00, 600.00)]
    [InlineData(399.50, 0.00, null)]
    [InlineData(300.00, 100.00, 600.00)]
    [InlineData(900.00, 99.50, 0.50)]
    [InlineData(900.00, 100.00, null)]
    [Proves("Civ. Code § 8430(a)(2)")]
    public void Whether_more_was_furnished_is_asked_once_all_that_is_priced_is_paid(double paid, double credited, double? asked)
    {
        var job = InTime().Price(1_000m).Furnished("2026-03-02", 400m).Paid("2026-04-01", (decimal)paid);
        if (credited > 0)
            job.Credited("2026-04-02", (decimal)credited);
        var finding = job.On("2026-06-01").Find("amount");
        Assert.Equal((decimal?)asked, finding?.Questions.Single().Dollars);
        Assert.Equal(asked is null ? null : "Open", finding?.Standing.ToString());
    }
}
