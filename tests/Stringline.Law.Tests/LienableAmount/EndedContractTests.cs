using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>
/// What may be claimed where the contract was broken, abandoned or rescinded (Civ. Code § 8430(c)), and for work outside the direct
/// contract (§ 8432).
/// </summary>
public sealed class EndedContractTests
{
    private static JobBuilder Job(ContractEnd? how, bool? byPayer, decimal? value = 71_000m)
    {
        var job = new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").NoParty("direct").Licensed("2012-06-01..").Price(51_000m)
            .Contract(c => c with { ReasonableValue = value }).Furnished("2025-08-05", 51_000m, until: "2025-10-10").Ended("2025-10-10");
        return how is { } end
            ? job.Add(i => new ContractEnded { Index = i, On = JobBuilder.When("2025-10-11"), How = end, ByPayer = byPayer }) : job;
    }

    [Theory]
    [InlineData(ContractEnd.Breached, true, 71_000)]
    [InlineData(ContractEnd.Abandoned, true, 71_000)]
    [InlineData(ContractEnd.Rescinded, true, 71_000)]
    [InlineData(ContractEnd.Rescinded, null, 71_000)]
    [InlineData(ContractEnd.Rescinded, false, 71_000)]
    [InlineData(ContractEnd.Breached, false, 51_000)]
    [InlineData(ContractEnd.Abandoned, false, 51_000)]
    [InlineData(ContractEnd.Terminated, true, 51_000)]
    [InlineData(ContractEnd.Performed, true, 51_000)]
    [InlineData(null, null, 51_000)]
    [Proves("Civ. Code § 8430(c)")]
    public void After_the_payers_breach_abandonment_or_a_rescission_the_reasonable_value_counts_above_the_price(ContractEnd? how,
        bool? byPayer, int demand)
    {
        var answer = Job(how, byPayer).On("2025-12-01");
        Assert.Equal(demand, answer.Amount.Demand);
        Assert.Equal(demand, answer.Owed.Demand);
        Assert.Null(answer.Find("amount"));
    }

    [Theory]
    [InlineData(ContractEnd.Breached)]
    [InlineData(ContractEnd.Abandoned)]
    [Proves("Civ. Code § 8430(c)")]
    public void Whose_breach_it_was_is_asked_where_the_file_does_not_say(ContractEnd how)
    {
        var answer = Job(how, null).On("2025-12-01");
        Assert.Equal((51_000m, 71_000m), (answer.Amount.Demand, answer.Amount.AtMost));
        var question = Assert.Single(answer.Find("amount")!.Questions);
        Assert.Equal(20_000m, question.Dollars);
        Assert.EndsWith("(contract-ended.byPayer)", question.Text, StringComparison.Ordinal);
        Assert.IsType<ContractEnded>(question.Corrects);
    }

    // Whose breach it was moves nothing where the value is no more than the price; where the value is not given it may. A contract that was
    // terminated was not broken, and § 8430(c) does not speak of it.
    [Theory]
    [InlineData(ContractEnd.Breached, 51_000, false)]
    [InlineData(ContractEnd.Breached, 48_000, false)]
    [InlineData(ContractEnd.Breached, 51_001, true)]
    [InlineData(ContractEnd.Breached, null, true)]
    [InlineData(ContractEnd.Terminated, 71_000, false)]
    [InlineData(ContractEnd.Performed, 71_000, false)]
    [Proves("Civ. Code § 8430(c)")]
    public void Whose_breach_it_was_is_asked_only_where_the_answer_moves_the_amount(ContractEnd how, int? value, bool asks)
    {
        var finding = Job(how, null, value).On("2025-12-01").Find("amount");
        Assert.Equal(asks, finding is not null && finding.Asks("(contract-ended.byPayer)"));
        Assert.Equal(value is null ? null : asks ? value - 51_000m : null, finding?.Questions[0].Dollars);
    }

    // Value 300, price 100; 50 of it lie outside the direct contract. Of the two that end on 6 April the one begun that day lies beyond
    // what counts: what stands for the rest of the value is work of all days, and the notice reaches back to 31 March only.
    [Theory]
    [InlineData("2026-03-02")]
    [InlineData("?")]
    [Proves("Civ. Code § 8430(c)")]
    [Proves("Civ. Code § 8432(a)")]
    public void What_lies_outside_the_direct_contract_comes_off_what_was_begun_last(string first)
    {
        var job = new JobBuilder().Notice("2026-04-20").Price(50m).Contract(c => c with { ReasonableValue = 300m })
            .Furnished(first, 100m, until: "2026-03-02").Furnished("2026-04-06", 100m)
            .Add(i => new Change { Index = i, On = JobBuilder.When("2026-03-10"), Amount = 50m, Agreed = true, InDirectContract = false,
                KnewOutside = true })
            .Add(i => new ContractEnded { Index = i, On = JobBuilder.When("2026-04-13"), How = ContractEnd.Rescinded });
        Assert.Equal(50m, job.On("2026-06-01").Amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8430(c)")]
    public void After_a_breach_the_lien_is_never_more_than_the_reasonable_value()
    {
        var answer = Job(ContractEnd.Breached, true, 48_000m).On("2025-12-01");
        Assert.Equal(48_000m, answer.Amount.Demand);
        Assert.Equal(51_000m, answer.Owed.Demand);
        Assert.Null(answer.Find("amount"));
    }

    [Fact]
    [Proves("Civ. Code § 8430(c)")]
    public void After_the_payers_breach_the_value_is_asked_for_where_it_is_not_given()
    {
        var answer = Job(ContractEnd.Breached, true, null).On("2025-12-01");
        Assert.Equal(51_000m, answer.Amount.Demand);
        Assert.EndsWith("(contract.reasonableValue)", Assert.Single(answer.Find("amount")!.Questions).Text, StringComparison.Ordinal);
    }

    [Fact]
    [Proves("Civ. Code § 8430(c)")]
    public void The_steps_say_by_how_much_the_value_is_above_the_price()
    {
        Assert.Equal(["agreed-price 51000.00", "reasonable-value 20000.00"], Job(ContractEnd.Breached, true)
            .On("2025-12-01").Amount.Lines());
        var unpriced = new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").NoParty("direct").Licensed("2012-06-01..")
            .Price(51_000m)
            .Contract(c => c with { ReasonableValue = 71_000m }).Furnished("2025-08-05", until: "2025-10-10")
            .Add(i => new ContractEnded { Index = i, On = JobBuilder.When("2025-10-11"), How = ContractEnd.Breached, ByPayer = true })
            .On("2025-12-01");
        Assert.Equal(["agreed-price 51000.00", "reasonable-value 20000.00"], unpriced.Amount.Lines());
        Assert.False(unpriced.Amount.IsUnknown);
        // Furnished beyond the price counts too, up to the value.
        var beyond = new JobBuilder().Notice("2025-08-05").Price(100m).Contract(c => c with { ReasonableValue = 130m })
            .Furnished("2025-08-05", 150m)
            .Add(i => new ContractEnded { Index = i, On = JobBuilder.When("2025-10-11"), How = ContractEnd.Breached, ByPayer = true })
            .On("2025-12-01");
        Assert.Equal(["agreed-price 100.00", "reasonable-value 30.00"], beyond.Amount.Lines());
    }

    private static JobBuilder Extra(bool? inDirect, bool? knew, ClaimantRole role = ClaimantRole.Supplier, string hiredBy = "direct") =>
        new JobBuilder().Role(role, hiredBy).Licensed("2012-06-01..").Price(10_000m).Notice("2025-08-05")
        .Furnished("2025-08-05", 10_000m).Furnished("2025-09-05", 1_870m)
        .Add(i => new Change { Index = i, On = JobBuilder.When("2025-09-01"), Amount = 1_870m, Agreed = true, InDirectContract = inDirect,
            KnewOutside = knew });

    [Fact]
    [Proves("Civ. Code § 8432(a)")]
    public void An_extra_outside_the_direct_contract_of_which_the_claimant_knew_is_no_part_of_the_lien()
    {
        var answer = Extra(false, true).On("2025-12-01");
        Assert.Equal(["agreed-price 10000.00", "changes 1870.00", "outside-direct-contract -1870.00"], answer.Amount.Lines());
        Assert.Equal(10_000m, answer.Amount.Demand);
        Assert.Equal(11_870m, answer.AmountOf(Remedy.StopPaymentNotice)!.Demand);
        Assert.Equal(11_870m, answer.Find("stop-payment-notice.amount")!.Amount);
        Assert.Equal(11_870m, answer.Owed.Demand);
    }

    [Theory]
    [InlineData(null, null)]
    [InlineData(null, true)]
    [InlineData(false, null)]
    [Proves("Civ. Code § 8432(a)")]
    public void An_extra_of_which_it_is_not_said_is_asked_about_and_never_cut_in_silence(bool? inDirect, bool? knew)
    {
        var answer = Extra(inDirect, knew).On("2025-12-01");
        Assert.Equal((11_870m, 10_000m), (answer.Amount.Demand, answer.Amount.AtLeast));
        var question = Assert.Single(answer.Find("amount")!.Questions);
        Assert.Equal((1_870m, 3), (question.Dollars, question.Corrects!.Index));
        Assert.EndsWith(inDirect is null ? "(change.inDirectContract)" : "(change.knewOutside)", question.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true, null, ClaimantRole.Supplier, "direct")]
    [InlineData(true, true, ClaimantRole.Supplier, "direct")]
    [InlineData(false, false, ClaimantRole.Supplier, "direct")]
    [InlineData(null, false, ClaimantRole.Supplier, "direct")]
    [InlineData(null, null, ClaimantRole.DirectContractor, "owner")]
    [Proves("Civ. Code § 8432(a)")]
    public void An_extra_within_the_direct_contract_or_unknown_to_be_outside_counts(bool? inDirect, bool? knew, ClaimantRole role,
        string hiredBy)
    {
        var answer = Extra(inDirect, knew, role, hiredBy).On("2025-12-01");
        Assert.Equal((11_870m, 11_870m), (answer.Amount.Demand, answer.Amount.AtLeast));
        Assert.Null(answer.Find("amount"));
    }

    // A deduction is no work that could lie outside, and an extra that nobody agreed to in writing is not in the price.
    [Theory]
    [InlineData(-100.00, true, false, true, 9_900.00)]
    [InlineData(-100.00, true, null, null, 9_900.00)]
    [InlineData(1_870.00, false, false, true, 10_000.00)]
    [InlineData(1_870.00, false, null, null, 10_000.00)]
    [InlineData(0.00, true, null, null, 10_000.00)]
    [InlineData(0.50, true, false, true, 10_000.00)]
    [Proves("Civ. Code § 8432(a)")]
    public void Only_an_agreed_extra_can_lie_outside_the_direct_contract(double amount, bool agreed, bool? inDirect, bool? knew,
        double demand)
    {
        var answer = new JobBuilder().Notice("2025-08-05").Price(10_000m).Furnished("2025-08-05", 11_870m)
            .Add(i => new Change { Index = i, On = JobBuilder.When("2025-09-01"), Amount = (decimal)amount, Agreed = agreed,
                InDirectContract = inDirect, KnewOutside = knew }).On("2025-12-01");
        Assert.Equal(((decimal)demand, (decimal)demand), (answer.Amount.Demand, answer.Amount.AtLeast));
        Assert.Null(answer.Find("amount"));
        Assert.Equal(amount > 0 && agreed ? -(decimal)amount : 0m, answer.Amount.Step("outside-direct-contract"));
    }

    // Filed before the work of improvement commenced, the direct contract is notice to everyone on it.
    [Theory]
    [InlineData("2025-06-30", "2025-07-01", 10_000)]
    [InlineData("2025-07-01", "2025-07-01", 11_870)]
    [Proves("Civ. Code § 8432(b)")]
    public void A_direct_contract_filed_before_commencement_is_notice_of_what_is_outside_it(string filed, string commenced, int demand)
    {
        var job = Extra(false, false).Work(w =>
            w with { Commenced = JobBuilder.Day(commenced), DirectContract = new DirectContract { Filed = JobBuilder.Day(filed) } });
        Assert.Equal(demand, job.On("2025-12-01").Amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8432(a)")]
    public void Without_a_total_price_the_outside_extra_comes_off_what_was_furnished()
    {
        var answer = Extra(false, true).Contract(c => c with { Price = null }).On("2025-12-01");
        Assert.Equal(["agreed-price 11870.00", "changes 0.00", "outside-direct-contract -1870.00"], answer.Amount.Lines());
    }
}
