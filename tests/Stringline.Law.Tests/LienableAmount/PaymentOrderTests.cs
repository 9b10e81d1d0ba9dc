using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>Which of what is owed a payment pays (Civ. Code § 1479), seen by what is left of the demand.</summary>
public sealed class PaymentOrderTests
{
    /// <summary>Notice on 20 April reaches back to 31 March: A and B are out of reach, C and D within.</summary>
    private static JobBuilder Late() => new JobBuilder().Notice("2026-04-20")
        .Furnished("2026-03-02", 100m, "A").Furnished("2026-03-16", 200m, "B").Furnished("2026-04-06", 300m, "C")
        .Furnished("2026-04-13", 400m, "D");

    private static Waterfall Amount(JobBuilder job) => job.On("2026-06-01").Amount;

    [Theory]
    [InlineData(100, 700, 100)]
    [InlineData(300, 700, 300)]
    [InlineData(350, 650, 300)]
    [InlineData(1000, 0, 300)]
    [Proves("Civ. Code § 1479")]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void An_undirected_payment_pays_what_fell_due_earliest(int paid, int demand, int elsewhere)
    {
        var amount = Amount(Late().Paid("2026-05-04", paid));
        Assert.Equal(demand, amount.Demand);
        Assert.Equal(["agreed-price 1000.00", "outside-reach -300.00", $"paid -{paid}.00", $"paid-elsewhere {elsewhere}.00"],
            amount.Lines());
    }

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void A_directed_payment_pays_what_the_debtor_named_and_what_is_left_goes_by_the_order_of_law()
    {
        var amount = Amount(Late().Paid("2026-05-04", 350m, "C"));
        Assert.Equal(400m, amount.Demand);
        Assert.Equal(50m, amount.Step("paid-elsewhere"));
    }

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void A_direction_to_something_unknown_is_no_direction() =>
        Assert.Equal(Amount(Late().Paid("2026-05-04", 350m)).Demand, Amount(Late().Paid("2026-05-04", 350m, "Z")).Demand);

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void Interest_is_paid_before_principal_however_late_it_fell_due()
    {
        var amount = Amount(Late().Charged("2026-05-01", 30m, ChargeKind.Interest).Paid("2026-05-04", 330m));
        Assert.Equal(700m, amount.Demand);
        Assert.Equal(330m, amount.Step("paid-elsewhere"));
        Assert.Equal(0m, amount.Step("charges-left-out"));
        Assert.Equal(30m, amount.LeftOut);
    }

    // Finance charges are principal of their own day, not interest: a decision of this project.
    [Theory]
    [InlineData(ChargeKind.Interest, 680)]
    [InlineData(ChargeKind.Finance, 650)]
    [InlineData(ChargeKind.Delay, 650)]
    [Proves("Civ. Code § 1479")]
    public void Only_interest_goes_first_and_other_charges_wait_for_their_day(ChargeKind of, int demand) =>
        Assert.Equal(demand, Amount(Late().Charged("2026-05-01", 30m, of).Paid("2026-05-04", 350m)).Demand);

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void What_is_due_is_paid_before_what_is_not_and_interest_not_yet_due_waits_for_its_day()
    {
        // Paid on 20 March: A and B are due; C of 6 April comes before the interest of 1 May, and gets the 50 left over.
        var amount = Amount(Late().Charged("2026-05-01", 30m, ChargeKind.Interest).Paid("2026-03-20", 350m));
        Assert.Equal(650m, amount.Demand);
        Assert.Equal(300m, amount.Step("paid-elsewhere"));
    }

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void A_payment_before_anything_is_due_waits_for_the_earliest() =>
        Assert.Equal(650m, Amount(Late().Paid("2026-03-01", 350m)).Demand);

    [Theory]
    [InlineData(60, 100)]
    [InlineData(120, 80)]
    [Proves("Civ. Code § 1479")]
    public void At_one_maturity_the_unsecured_is_paid_before_the_secured(int paid, int demand)
    {
        // Two spans end on 6 April: one begins before the reach-back day of 31 March and is out of reach.
        var job = new JobBuilder().Notice("2026-04-20").Furnished("2026-03-02", 1m).Paid("2026-03-02", 1m)
            .Furnished("2026-04-06", 100m).Furnished("2026-03-16", 100m, until: "2026-04-06");
        Assert.Equal(demand, Amount(job.Paid("2026-05-04", paid)).Demand);
    }

    // 100 out of reach, then a charge of 100, then 300 within reach. A credit lowers the price of work only, so whichever of the two
    // comes first takes the 100 out of reach: a payment before the credit leaves it the work within reach, one after it pays the charge.
    [Theory]
    [InlineData("2026-05-04", null, "2026-05-11", 200)]
    [InlineData("2026-05-11", null, "2026-05-04", 300)]
    [InlineData("2026-05-04", "A", "2026-05-04", 200)]
    [InlineData("2026-05-04", null, "2026-05-04", 200)]
    [Proves("Civ. Code § 1479")]
    public void Each_sum_is_applied_when_it_comes_and_of_one_day_the_payment_before_the_credit(string paid, string? toward, string credited,
        int demand)
    {
        static JobBuilder Job() => new JobBuilder().Notice("2026-04-20")
            .Furnished("2026-03-02", 100m, "A").Charged("2026-03-10", 100m, ChargeKind.Finance).Furnished("2026-04-06", 300m);
        Assert.Equal(demand, Amount(Job().Paid(paid, 100m, toward).Credited(credited, 100m)).Demand);
        Assert.Equal(demand, Amount(Job().Credited(credited, 100m).Paid(paid, 100m, toward)).Demand);
    }

    // One invoice has 200 out of reach and 300 within, a charge of 100 falls due between. 100 toward the invoice first: its part out of
    // reach gets 100, the other payment the rest of it and the charge. The other way round 100 would go to the part within reach.
    [Fact]
    [Proves("Civ. Code § 1479")]
    public void Of_two_payments_on_one_day_the_directed_one_is_applied_first()
    {
        static JobBuilder Job() => new JobBuilder().Notice("2026-04-20")
            .Furnished("2026-03-02", 200m, "A").Charged("2026-04-01", 100m, ChargeKind.Finance).Furnished("2026-04-06", 300m, "A");
        Assert.Equal(300m, Amount(Job().Paid("2026-05-04", 100m, "A").Paid("2026-05-04", 200m)).Demand);
        Assert.Equal(300m, Amount(Job().Paid("2026-05-04", 200m).Paid("2026-05-04", 100m, "A")).Demand);
    }

    // A credit that says what work it is for lowers that work; the payment of the same day, which says nothing, gets what comes after.
    [Fact]
    [Proves("Civ. Code § 1479")]
    public void A_directed_credit_comes_before_an_undirected_payment_of_its_day()
    {
        static JobBuilder Job(params int[] paid)
        {
            var job = new JobBuilder().Notice("2026-04-20").Furnished("2026-03-02", 100m, "A")
                .Charged("2026-03-10", 100m, ChargeKind.Finance).Furnished("2026-04-06", 300m);
            foreach (var sum in paid)
                job.Paid("2026-05-04", sum);
            return job.Add(i => new Credited { Index = i, On = JobBuilder.When("2026-05-04"), Amount = 100m, Toward = "A" });
        }

        Assert.Equal(300m, Amount(Job(100)).Demand);
        Assert.Equal(300m, Amount(Job(10, 20, 30, 40)).Demand);
    }

    // Civ. Code § 1479, Three: of what is due, interest first. Not surely due when the payment came, it waits, and the demand is the lower.
    [Theory]
    [InlineData("2026-05-01", "2026-05-01", 680)]
    [InlineData("2026-05-02", "2026-05-01", 650)]
    [InlineData("2026-04-20..2026-05-02", "2026-05-01", 650)]
    [InlineData("2026-04-20..2026-05-01", "2026-05-01", 680)]
    [InlineData("2026-05-01", "2026-04-28..2026-05-04", 650)]
    [InlineData("2026-05-01", "2026-05-01..2026-05-04", 680)]
    [InlineData("2026-05-01", "?", 650)]
    [Proves("Civ. Code § 1479")]
    public void Interest_goes_first_only_if_it_was_surely_due_when_the_payment_came(string due, string paid, int demand) =>
        Assert.Equal(demand, Amount(Late().Charged(due, 30m, ChargeKind.Interest).Paid(paid, 350m)).Demand);

    [Theory]
    [InlineData("2026-03-01", null, 100)] // the charge fell due first
    [InlineData("2026-03-02", null, 100)] // on one day with the work: the lien secures the work, nothing secures the charge
    [InlineData("2026-03-03", null, 70)]
    [InlineData("2026-03-03", "F", 100)] // but the debtor named the charge
    [InlineData("?", null, 70)]
    [Proves("Civ. Code § 1479")]
    public void A_charge_is_paid_by_its_own_day_or_by_the_debtors_word(string charged, string? toward, int demand) =>
        Assert.Equal(demand,
            Amount(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 100m).Charged(charged, 30m, ChargeKind.Finance, "F")
                .Paid("2026-05-04", 30m, toward)).Demand);

    // The same among many: the charge of 2 March is paid before the work of that day, and the work of later days after both.
    [Fact]
    [Proves("Civ. Code § 1479")]
    public void Among_many_the_unsecured_of_one_day_is_paid_first()
    {
        var job = new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 100m, "A").Furnished("2026-03-03", 100m)
            .Furnished("2026-03-04", 100m).Furnished("2026-03-05", 100m).Charged("2026-03-02", 30m, ChargeKind.Finance);
        Assert.Equal(400m, Amount(job.Paid("2026-05-04", 30m)).Demand);
        Assert.Equal(399m, Amount(job.Paid("2026-05-05", 1m)).Demand);
    }

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void What_is_received_beyond_all_that_is_owed_is_shown_and_the_demand_is_nothing()
    {
        var amount = Amount(Late().Charged("2026-05-01", 30m, ChargeKind.Finance).Paid("2026-05-04", 1100m));
        Assert.Equal(
            ["agreed-price 1000.00", "outside-reach -300.00", "paid -1100.00", "paid-elsewhere 330.00", "charges-left-out 0.00",
                "overpaid 70.00"],
            amount.Lines());
        Assert.Equal(0m, amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void A_credit_lowers_the_price_of_work_and_never_pays_interest_or_charges()
    {
        var amount = Amount(Late().Charged("2026-03-01", 30m, ChargeKind.Interest).Credited("2026-05-04", 350m));
        Assert.Equal(["agreed-price 1000.00", "outside-reach -300.00", "credited -350.00", "paid-elsewhere 300.00",
            "charges-left-out 0.00"], amount.Lines());
        Assert.Equal(650m, amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void Credits_beyond_all_work_are_excess_even_where_interest_is_owed()
    {
        var amount = Amount(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 100m)
            .Charged("2026-03-10", 30m, ChargeKind.Interest).Credited("2026-05-04", 120m));
        Assert.Equal(0m, amount.Demand);
        Assert.Equal(20m, amount.Step("overpaid"));
    }

    [Theory]
    [InlineData(ChargeKind.Interest)]
    [InlineData(ChargeKind.Finance)]
    [InlineData(ChargeKind.Delay)]
    [InlineData(ChargeKind.LostProfit)]
    [InlineData(ChargeKind.AttorneyFees)]
    [InlineData(ChargeKind.Other)]
    [Proves("Civ. Code § 8430(a)")]
    public void No_charge_that_is_not_for_work_is_part_of_the_claim_and_each_is_named(ChargeKind of)
    {
        // Lambert v. Superior Court (1991) 228 Cal.App.3d 383 (delay); Abbett Electric v. California Federal Savings (1991)
        // 230 Cal.App.3d 355 (fees); Carmel Development v. Anderson (2020) 48 Cal.App.5th 492 (interest).
        var amount = Amount(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 100m).Charged("2026-03-10", 30m, of));
        Assert.Equal(["agreed-price 100.00", "charges-left-out 0.00"], amount.Lines());
        Assert.Equal(100m, amount.Demand);
        Assert.Equal(30m, amount.LeftOut);
        Assert.Contains("$30.00", Assert.Single(amount.Steps[1].Why.Children).Text, StringComparison.Ordinal);
    }

    // Abbett Electric: $314,652 of principal and $100,000 of fees under the contract; fees are no part of the lien.
    [Fact]
    [Proves("Civ. Code § 8430(a)")]
    public void Fees_under_the_contract_stay_out_of_the_lien() =>
        Assert.Equal(314_652m, new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Licensed("1970-01-01..")
            .Furnished("1981-01-05", 314_652m).Charged("1981-03-02", 100_000m, ChargeKind.AttorneyFees).On("1981-06-01").Amount.Demand);

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void Cents_are_exact()
    {
        var amount = Amount(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 0.10m).Furnished("2026-03-03", 0.20m)
            .Paid("2026-03-05", 0.29m));
        Assert.Equal(0.01m, amount.Demand);
        Assert.Equal(amount.Demand, amount.Steps.Sum(s => s.Amount));
    }
}
