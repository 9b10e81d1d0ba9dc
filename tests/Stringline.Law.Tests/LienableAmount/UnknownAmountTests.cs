using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>An amount that the file does not give is unknown, and asked for; it is never nothing.</summary>
public sealed class UnknownAmountTests
{
    private static JobBuilder Finished() =>
        new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").NoParty("direct").Licensed("2012-06-01..")
        .Price(412_000m).Furnished("2026-04-01", until: "2026-09-15").Paid("2026-06-30", 180_000m);

    private static Question Asked(Assessment job) => Assert.Single(job.Find("amount")!.Questions, q => q.Dollars is not null);

    [Fact]
    [Proves("Civ. Code § 8430(a)")]
    public void A_finished_job_with_a_price_and_no_priced_deliveries_claims_the_price_less_what_was_paid()
    {
        Assert.Equal(232_000m, Finished().Completed("2026-10-05").On("2026-10-25").Amount.Demand);
        Assert.Equal(232_000m, Finished().Ended("2026-09-15").On("2026-10-25").Amount.Demand);
        Assert.Equal(232_000m, Finished().Ended("2026-09-15").Completed("2026-10-05").On("2026-10-25").Amount.Demand);
        var publicJob = new JobBuilder().PublicWork().Role(ClaimantRole.Subcontractor).Price(412_000m)
            .Furnished("2026-04-01", until: "2026-09-15").Paid("2026-06-30", 180_000m)
            .Notice("2026-04-01", Manner.CertifiedMail, "city", "direct");
        Assert.Equal(232_000m, publicJob.Completed("2026-10-05", CompletionTheory.Acceptance).On("2026-10-25").Amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)")]
    public void While_work_goes_on_an_unpriced_job_is_asked_what_the_work_was_worth()
    {
        foreach (var job in (JobBuilder[])[Finished(), Finished().Completed("2026-10-05", contested: true), Finished()
            .Completed("2026-11-05")])
        {
            var answer = job.On("2026-10-25");
            Assert.Equal(["agreed-price 412000.00", "value-unknown -232000.00", "paid -180000.00"], answer.Amount.Lines());
            Assert.True(answer.Amount.IsUnknown);
            Assert.Equal((0m, 0m, 232_000m), (answer.Amount.Demand, answer.Amount.AtLeast, answer.Amount.AtMost));
            Assert.Equal(232_000m, Asked(answer).Dollars);
            Assert.Contains("or is it finished?", Asked(answer).Text, StringComparison.Ordinal);
            Assert.All(answer.Next, n => Assert.Null(n.AtStake));
            Assert.Contains(answer.ClaimObstacles, o => o.Text.EndsWith("(furnished.amount).", StringComparison.Ordinal));
            Assert.DoesNotContain(answer.ClaimObstacles, o => o.Text.Contains("$0.00", StringComparison.Ordinal));
        }
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)")]
    public void Payments_for_work_that_is_not_priced_are_no_overpayment()
    {
        var answer = new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 400m).Furnished("2026-03-09").Paid("2026-04-01", 500m)
            .On("2026-06-01");
        Assert.Equal(["agreed-price 400.00", "paid -500.00", "value-unknown 100.00"], answer.Amount.Lines());
        Assert.True(answer.Amount.IsUnknown);
        Assert.Contains("(furnished.amount)", Assert.Single(answer.Find("amount")!.Questions).Text, StringComparison.Ordinal);
    }

    // The step that says so stands among the value of the work, before what was received; where only some work has no price, at the end.
    [Theory]
    [InlineData(1_000.00, 400.00, "agreed-price 1000.00", "value-unknown -600.00", "paid -400.00")]
    [InlineData(0.50, 0.20, "agreed-price 0.50", "value-unknown -0.30", "paid -0.20")]
    [InlineData(1_000.00, 1_000.00, "agreed-price 1000.00", "paid -1000.00", null)] // received in full, the price is owed in full
    [InlineData(1_000.00, 1_000.40, "agreed-price 1000.00", "paid -1000.40", "overpaid 0.40")]
    [Proves("Civ. Code § 8430(a)")]
    public void While_work_goes_on_the_steps_lead_from_the_price_to_what_was_received(double price, double paid, string first,
        string second, string? third)
    {
        var amount = new JobBuilder().Notice("2026-03-02").Price((decimal)price).Furnished("2026-03-02").Paid("2026-04-01", (decimal)paid)
            .On("2026-06-01").Amount;
        Assert.Equal(third is null ? [first, second] : [first, second, third], amount.Lines());
        Assert.Equal(paid < price, amount.IsUnknown);
        Assert.Equal(paid < price ? (decimal)(price - paid) : 0m, Math.Round(amount.AtMost, 2));
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)")]
    public void Work_without_a_price_adds_no_step_where_what_is_priced_is_exactly_paid() =>
        Assert.Equal(["agreed-price 400.00", "paid -400.00"], new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 400m)
            .Furnished("2026-03-09").Paid("2026-04-01", 400m).On("2026-06-01").Amount.Lines());

    // Civ. Code § 1479: interest due is paid first, and lowers no price: of 1,000 received 100 went to it, and 100 of the price is not yet
    // received.
    [Theory]
    [InlineData(ChargeKind.Interest, 1_000, 100)]
    [InlineData(ChargeKind.Interest, 1_100, null)]
    [InlineData(ChargeKind.Finance, 1_000, 100)]
    [Proves("Civ. Code § 1479")]
    [Proves("Civ. Code § 8430(a)")]
    public void What_went_to_interest_and_charges_is_not_received_for_the_work(ChargeKind of, int paid, int? open)
    {
        foreach (var priced in (decimal?[])[null, 400m])
        {
            var answer = new JobBuilder().Notice("2026-03-02").Price(1_000m).Furnished("2026-03-02", priced).Charged("2026-03-01", 100m, of)
                .Paid("2026-04-01", paid).On("2026-06-01");
            Assert.Equal(priced is null && open is not null, answer.Amount.IsUnknown);
            Assert.Equal((decimal?)open, answer.Find("amount")?.Questions.Single().Dollars);
        }
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)")]
    public void A_price_above_what_was_paid_with_nothing_left_of_what_is_priced_is_asked_about()
    {
        static JobBuilder Job(decimal paid) =>
            new JobBuilder().Notice("2026-03-02").Price(1_000m).Furnished("2026-03-02", 400m).Paid("2026-04-01", paid);
        var answer = Job(400m).On("2026-06-01");
        Assert.False(answer.Amount.IsUnknown);
        Assert.Equal(600m, Asked(answer).Dollars);
        Assert.Null(Job(399.99m).On("2026-06-01").Find("amount"));
        Assert.Null(Job(1_000m).On("2026-06-01").Find("amount"));
        Assert.Equal(0.01m, Asked(Job(999.99m).On("2026-06-01")).Dollars);
    }

    [Fact]
    public void A_job_paid_in_full_or_not_begun_is_not_asked_about()
    {
        Assert.Null(Finished().Ended("2026-09-15").Paid("2026-10-01", 232_000m).On("2026-10-25").Find("amount"));
        Assert.Null(new JobBuilder().Price(1_000m).On("2026-10-25").Find("amount"));
        Assert.Null(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 400m).Paid("2026-04-01", 400m).On("2026-06-01")
            .Find("amount"));
    }

    // Notice on 20 April reaches back to 31 March: the span lies on both sides.
    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void A_span_on_both_sides_of_the_twenty_days_is_a_band_and_not_nothing()
    {
        var answer = new JobBuilder().Notice("2026-04-20").Furnished("2026-03-02", 2_400m, until: "2026-04-13").Paid("2026-05-01", 150m)
            .On("2026-06-01");
        Assert.Equal((0m, 0m, 2_250m), (answer.Amount.Demand, answer.Amount.AtLeast, answer.Amount.AtMost));
        Assert.Equal(2_250m, Asked(answer).Dollars);
        Assert.Contains("split", Asked(answer).Text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)")]
    public void A_contract_that_ended_unperformed_does_not_earn_the_whole_price()
    {
        static JobBuilder Job(ContractEnd how) => Finished().Ended("2026-09-15")
            .Add(i => new ContractEnded { Index = i, On = JobBuilder.When("2026-09-16"), How = how, ByPayer = true });
        Assert.Equal(232_000m, Job(ContractEnd.Performed).On("2026-10-25").Amount.Demand);
        foreach (var how in (ContractEnd[])[ContractEnd.Breached, ContractEnd.Abandoned, ContractEnd.Rescinded, ContractEnd.Terminated])
            Assert.True(Job(how).On("2026-10-25").Amount.IsUnknown);
    }
}
