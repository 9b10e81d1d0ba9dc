using Stringline.Law.Facts;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>A credit belongs to the work it is for; where nobody says, both figures are shown.</summary>
public sealed class CreditsTests
{
    // Notice on 30 September reaches back to 10 September: "a" is out of reach, "b" within.
    private static JobBuilder Job(string? toward = null, decimal credit = 1_000m) =>
        new JobBuilder().Furnished("2025-08-05", 3_000m, "a").Furnished("2025-09-16", 3_000m, "b").Notice("2025-09-30")
        .Add(i => new Credited { Index = i, On = JobBuilder.When("2025-10-06"), Amount = credit, Toward = toward });

    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void An_undirected_credit_gives_an_upper_and_a_lower_figure_and_is_asked_about()
    {
        var answer = Job().On("2025-12-01");
        Assert.Equal((3_000m, 2_000m, 3_000m), (answer.Amount.Demand, answer.Amount.AtLeast, answer.Amount.AtMost));
        var question = Assert.Single(answer.Find("amount")!.Questions);
        Assert.Equal(1_000m, question.Dollars);
        Assert.EndsWith("(credited.toward)", question.Text, StringComparison.Ordinal);
        Assert.Equal(3, question.Corrects!.Index);
    }

    [Theory]
    [InlineData("a", 3_000)]
    [InlineData("b", 2_000)]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void A_credit_with_its_work_lowers_that_work(string toward, int demand)
    {
        var answer = Job(toward).On("2025-12-01");
        Assert.Equal(((decimal)demand, (decimal)demand, (decimal)demand),
            (answer.Amount.Demand, answer.Amount.AtLeast, answer.Amount.AtMost));
        Assert.Null(answer.Find("amount"));
    }

    // The first 3,000 of a credit of 4,000 toward "b" take "b" away; the rest goes to "a".
    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void What_a_directed_credit_leaves_over_goes_to_other_work()
    {
        var answer = Job("b", 4_000m).On("2025-12-01");
        Assert.Equal(["agreed-price 6000.00", "outside-reach -3000.00", "credited -4000.00", "paid-elsewhere 1000.00"],
            answer.Amount.Lines());
        Assert.Equal(2_000m, answer.Owed.Demand);
    }

    // Taken off "b" first, a payment of 3,000 that follows pays "a" whole: 2,000 of "b" are left, not 1,000.
    [Fact]
    [Proves("Civ. Code § 1479")]
    public void The_lower_figure_reckons_with_the_payments_that_follow()
    {
        var answer = Job().Paid("2025-10-20", 3_000m).On("2025-12-01");
        Assert.Equal((2_000m, 2_000m), (answer.Amount.Demand, answer.Amount.AtLeast));
        Assert.Null(answer.Find("amount"));
        var earlier = new JobBuilder().Furnished("2025-08-05", 3_000m, "a").Furnished("2025-09-16", 3_000m, "b").Notice("2025-09-30")
            .Paid("2025-10-01", 2_500m).Credited("2025-10-06", 1_000m).On("2025-12-01");
        Assert.Equal((2_500m, 2_000m), (earlier.Amount.Demand, earlier.Amount.AtLeast));
    }

    // Civ. Code § 8416(a)(1) deducts credits from the demand for work; what a charge comes to is not lowered by what is returned of the
    // work.
    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void A_credit_toward_a_charge_lowers_the_work_all_the_same()
    {
        var amount = new JobBuilder().Notice("2025-08-05").Furnished("2025-08-05", 100m).Charged("2025-08-06", 30m, ChargeKind.Finance, "F")
            .Add(i => new Credited { Index = i, On = JobBuilder.When("2025-10-06"), Amount = 30m, Toward = "F" }).On("2025-12-01").Amount;
        Assert.Equal((70m, 70m), (amount.Demand, amount.AtLeast));
        Assert.Equal(["agreed-price 100.00", "credited -30.00", "charges-left-out 0.00"], amount.Lines());
    }

    [Fact]
    public void Where_all_work_is_within_reach_nothing_is_asked() =>
        Assert.Null(new JobBuilder().Notice("2025-08-05").Furnished("2025-08-05", 3_000m, "a").Credited("2025-10-06", 1_000m)
            .On("2025-12-01").Find("amount"));
}
