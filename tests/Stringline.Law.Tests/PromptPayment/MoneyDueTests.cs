using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>When progress payments and retention are due. The payer's last day is rolled, the claimant's never.</summary>
public sealed class MoneyDueTests
{
    private static JobBuilder Direct() =>
        new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Licensed("2020-01-01..").Furnished("2026-03-02", 50000m);

    private static JobBuilder Sub(ClaimantRole role = ClaimantRole.Subcontractor) =>
        new JobBuilder().Role(role).Licensed("2020-01-01..").Notice("2026-03-02").Furnished("2026-03-02", 50000m);

    // Demanded Monday 1 June: Wednesday 1 July. Demanded Wednesday 3 June: Friday 3 July is Independence Day observed by the courts, so
    // Monday 6 July.
    [Theory]
    [InlineData("2026-06-01", "2026-07-01")]
    [InlineData("2026-06-03", "2026-07-06")]
    [Proves("Civ. Code § 8800(a)")]
    public void The_owner_pays_within_thirty_days_after_a_demand(string demanded, string due) =>
        Assert.Equal([due], Direct().PaymentDemanded(demanded, 12000m).On("2026-06-10").Get("prompt-payment.progress").DaysOf());

    // The notice complies with §§ 8100-8118: not by e-mail, fax or plain mail (§§ 8106, 8110); left and mailed on 3 June it is complete on
    // the
    // 8th (§ 8116(c)), and the thirtieth day is Wednesday 8 July. By hand on the 1st: 1 July.
    [Theory]
    [InlineData(Manner.Personal, null, "2026-07-01")]
    [InlineData(Manner.CertifiedMail, null, "2026-07-01")]
    [InlineData(Manner.Substituted, "2026-06-03", "2026-07-08")]
    [InlineData(Manner.Substituted, null, "2026-07-06")]
    [InlineData(Manner.Email, null, null)]
    [InlineData(Manner.Fax, null, null)]
    [InlineData(Manner.FirstClassMail, null, null)]
    [InlineData(Manner.CertificateOfMailing, null, null)]
    [InlineData(Manner.Other, null, null)]
    [Proves("Civ. Code § 8800(a)")]
    [Proves("Civ. Code § 8106")]
    public void The_thirty_days_run_from_a_demand_given_as_a_notice_is(Manner manner, string? mailed, string? due)
    {
        var progress = Direct().Add(i => Demand(i, manner) with { Mailed = mailed is null ? null : Day(mailed) }).On("2026-10-01")
            .Get("prompt-payment.progress");
        Assert.Equal(due is null ? [] : [due], progress.DaysOf());
        Assert.Equal(due is null ? Standing.NotYet : Standing.Open, progress.Standing);
        Assert.Equal(due is null, progress.RuledOut("Civ. Code § 8800(a)"));
        Assert.Equal(due is null, progress.Why.Any(r => !r.Applied && r.Text.Contains("Give it again by hand", StringComparison.Ordinal)));
        Assert.False(progress.Asks("(payment-demanded.manner)"));
    }

    [Theory]
    [InlineData("2026-06-10", Standing.NotYet)]
    [InlineData("2026-10-01", Standing.Open)]
    [Proves("Civ. Code § 8800(a)")]
    public void How_a_demand_was_given_is_asked_while_it_matters(string asOf, Standing expected)
    {
        var on = Direct().PaymentDemanded("2026-06-01", 12000m, manner: null).On(asOf).Get("prompt-payment.progress");
        Assert.Equal((expected, true), (on.Standing, on.Asks("(payment-demanded.manner)")));
        Assert.False(Direct().PaymentDemanded("2026-06-01", 12000m, manner: null).Paid("2026-06-02", 12000m).On(asOf)
            .Get("prompt-payment.progress").Asks("(payment-demanded.manner)"));
    }

    [Theory]
    [InlineData("owner", true)]
    [InlineData("bank", false)]
    [Proves("Civ. Code § 8800(a)")]
    public void It_goes_to_the_owner(string to, bool counts)
    {
        var progress =
            Direct().Lender().Add(i => Demand(i, Manner.CertifiedMail) with { To = [to] }).On("2026-10-01").Get("prompt-payment.progress");
        Assert.Equal(counts ? Standing.Open : Standing.NotYet, progress.Standing);
        Assert.Equal(!counts, progress.Why.Any(r => !r.Applied && r.Text.Contains("Give it to the owner", StringComparison.Ordinal)));
    }

    // Sent by e-mail on 1 June, and again by hand on the 15th: one sum, due on Wednesday 15 July. Given again for less, both are told.
    [Theory]
    [InlineData(12000, "2026-06-15", 1)]
    [InlineData(11999, "2026-06-15", 2)]
    [InlineData(12000, "2026-05-29", 2)]
    [Proves("Civ. Code § 8800(a)")]
    public void A_demand_that_was_given_again_is_one_sum(int amount, string again, int rows)
    {
        var on = Direct().Add(i => Demand(i, Manner.Email)).Add(i => Demand(i, Manner.Personal) with { On = When(again), Amount = amount })
            .On("2026-10-01");
        var progress = on.Get("prompt-payment.progress");
        Assert.Equal(again == "2026-06-15" ? ["2026-07-15"] : ["2026-06-29"], progress.DaysOf());
        Assert.Equal(rows == 2, on.Find("prompt-payment.progress.2") is not null);
        Assert.Equal(rows == 2 ? Standing.NotYet : null, on.Find("prompt-payment.progress.2")?.Standing);
    }

    // "Except as otherwise agreed in writing": sixty days after the bill of 1 June are Friday 31 July; ten days leave the owner the thirty
    // of the section.
    [Theory]
    [InlineData(60, true, "2026-07-31")]
    [InlineData(60, null, "2026-07-31")]
    [InlineData(60, false, "2026-07-01")]
    [InlineData(10, true, "2026-07-01")]
    [InlineData(30, true, "2026-07-01")]
    [Proves("Civ. Code § 8800(a)")]
    public void A_later_day_that_was_agreed_in_writing_takes_the_place_of_the_thirty(int days, bool? written, string due)
    {
        var progress = Direct().Contract(c => c with { PaymentDueDays = days, Written = written }).Add(i => Demand(i, Manner.Personal))
            .On("2026-10-01").Get("prompt-payment.progress");
        Assert.Equal([due], progress.DaysOf());
        Assert.Equal(due == "2026-07-31", progress.Says("agreed on a later day"));
    }

    private static PaymentDemanded Demand(int index, Manner manner) =>
        new() { Index = index, On = When("2026-06-01"), Amount = 12000m, Manner = manner };

    [Theory]
    [InlineData("2026-07-01", Standing.NotYet, 0)]
    [InlineData("2026-07-02", Standing.Open, 0)]
    [InlineData("2026-10-01", Standing.Open, 720)]
    [Proves("Civ. Code § 8800(a)")]
    [Proves("Civ. Code § 8800(c)")]
    public void What_the_owner_holds_after_that_costs_two_percent_a_month(string asOf, Standing expected, int penalty)
    {
        var due = Direct().PaymentDemanded("2026-06-01", 12000m).On(asOf).Get("prompt-payment.progress");
        Assert.Equal(expected, due.Standing);
        Assert.Equal(penalty, due.Amount);
        Assert.Null(due.ActBy);
    }

    // 4,000 in dispute: 6,000 may be held, and 2% x 3 months on the other 6,000 are 360.
    [Fact]
    [Proves("Civ. Code § 8800(b)")]
    public void Of_a_good_faith_dispute_150_percent_is_left_out() =>
        Assert.Equal(360m, Direct().PaymentDemanded("2026-06-01", 12000m).Disputed("2026-06-05", 4000m).On("2026-10-01")
            .Get("prompt-payment.progress").Amount);

    [Theory]
    [InlineData("2026-06-20", 12000, Standing.Done)]
    [InlineData("2026-06-20", 11999, Standing.Open)]
    [InlineData("2026-05-31", 12000, Standing.Open)]
    [Proves("Civ. Code § 8800(a)")]
    public void A_payment_after_the_demand_answers_it(string paid, int amount, Standing expected) =>
        Assert.Equal(expected, Direct().PaymentDemanded("2026-06-01", 12000m).Paid(paid, amount).On("2026-07-20")
            .Get("prompt-payment.progress").Standing);

    // Received Monday 16 March: Monday 23 March.
    [Theory]
    [InlineData("2026-03-23", Standing.NotYet, 0)]
    [InlineData("2026-03-24", Standing.Open, 0)]
    [InlineData("2026-06-22", Standing.Open, 480)]
    [InlineData("2026-06-23", Standing.Open, 720)]
    [Proves("Bus. & Prof. Code § 7108.5")]
    public void A_contractor_pays_its_subcontractor_within_seven_days_of_being_paid(string asOf, Standing expected, int penalty)
    {
        var due = Sub().HirerPaid("2026-03-16", 12000m).On(asOf).Get("prompt-payment.progress");
        Assert.Equal(["2026-03-23"], due.DaysOf());
        Assert.Equal(expected, due.Standing);
        Assert.Equal(penalty, due.Amount);
    }

    [Theory]
    [InlineData(ClaimantRole.Supplier)]
    [InlineData(ClaimantRole.EquipmentLessor)]
    [Proves("Bus. & Prof. Code § 7108.5")]
    public void Whether_it_helps_anyone_but_a_subcontractor_is_in_doubt(ClaimantRole role) =>
        Assert.Equal(Standing.InDoubt, Sub(role).HirerPaid("2026-03-16", 12000m).On("2026-06-23").Get("prompt-payment.progress").Standing);

    // Completed Monday 1 June: the 45th day is Thursday 16 July. Completed by 5 June at the latest: Monday 20 July.
    [Theory]
    [InlineData("2026-06-01", "2026-07-16")]
    [InlineData("2026-06-01..2026-06-05", "2026-07-20")]
    [Proves("Civ. Code § 8812")]
    public void The_owner_pays_retention_within_45_days_after_completion_at_its_latest(string completed, string due) =>
        Assert.Equal([due], Direct().Retained("2026-05-01", 12000m).Completed(completed).On("2026-06-20").Get("retention.due").DaysOf());

    [Theory]
    [InlineData("2026-07-16", Standing.NotYet, 0)]
    [InlineData("2026-07-17", Standing.Open, 0)]
    [InlineData("2026-10-16", Standing.Open, 720)]
    [Proves("Civ. Code § 8812")]
    [Proves("Civ. Code § 8818")]
    public void Retention_held_after_that_costs_two_percent_a_month(string asOf, Standing expected, int penalty)
    {
        var due = Direct().Retained("2026-05-01", 12000m).Completed("2026-06-01").On(asOf).Get("retention.due");
        Assert.Equal(expected, due.Standing);
        Assert.Equal(penalty, due.Amount);
    }

    [Fact]
    [Proves("Civ. Code § 8812(c)")]
    public void Of_the_owners_retention_150_percent_of_a_dispute_may_be_held() =>
        Assert.Equal(360m, Direct().Retained("2026-05-01", 12000m).Completed("2026-06-01").Disputed("2026-06-05", 4000m).On("2026-10-16")
            .Get("retention.due").Amount);

    [Fact]
    [Proves("Civ. Code § 8812")]
    public void Before_completion_or_without_retention_nothing_is_due()
    {
        Assert.Null(Direct().Retained("2026-05-01", 12000m).On("2026-10-16").Find("retention.due"));
        Assert.Null(Direct().Completed("2026-06-01").On("2026-10-16").Find("retention.due"));
    }

    // Received Monday 11 May: Thursday 21 May.
    [Theory]
    [InlineData("2026-05-21", Standing.NotYet, 0)]
    [InlineData("2026-05-22", Standing.Open, 0)]
    [InlineData("2026-08-20", Standing.Open, 480)]
    [InlineData("2026-08-21", Standing.Open, 720)]
    [Proves("Civ. Code § 8814")]
    [Proves("Civ. Code § 8818")]
    public void A_contractor_passes_retention_on_within_ten_days_of_receiving_it(string asOf, Standing expected, int penalty)
    {
        var due = Sub().HirerPaid("2026-05-11", 12000m, PaymentOf.Retention).On(asOf).Get("retention.due");
        Assert.Equal(["2026-05-21"], due.DaysOf());
        Assert.Equal(expected, due.Standing);
        Assert.Equal(penalty, due.Amount);
    }

    // United Riggers & Erectors v. Coast Iron & Steel (2018) 4 Cal.5th 1082: a dispute about other money excuses nothing.
    [Fact]
    [Proves("Civ. Code § 8814(c)")]
    [Proves("Civ. Code § 8814")]
    public void A_dispute_leaves_retention_in_doubt_with_both_penalties_until_it_is_said_what_it_is_about()
    {
        var due = Sub().HirerPaid("2026-05-11", 12000m, PaymentOf.Retention).Disputed("2026-05-15", 4000m).On("2026-08-21")
            .Get("retention.due");
        Assert.Equal(Standing.InDoubt, due.Standing);
        Assert.Equal(360m, due.Amount);
        Assert.True(due.Says("the penalty for 3 whole months is $720.00"));
        Assert.Equal(360m, Assert.Single(due.Questions).Dollars);
    }

    [Fact]
    [Proves("Civ. Code § 8430(a)")]
    public void No_penalty_ever_enters_the_demand() =>
        Assert.Equal(50000m, Sub().HirerPaid("2026-03-16", 12000m).HirerPaid("2026-05-11", 12000m, PaymentOf.Retention)
            .On("2027-03-16").Amount.Demand);

    // Civ. Code § 1479: a payment is applied once, to the obligation earliest in date of maturity. 12,000 came for two demands of 12,000.
    [Fact]
    [Proves("Civ. Code § 1479")]
    public void A_payment_answers_one_demand_only_the_earliest()
    {
        var answer = Direct().PaymentDemanded("2026-06-01", 12000m).PaymentDemanded("2026-06-08", 12000m).Paid("2026-06-20", 12000m)
            .On("2026-07-20");
        Assert.Equal(Standing.Done, answer.Get("prompt-payment.progress").Standing);
        Assert.Equal(Standing.Open, answer.Get("prompt-payment.progress.2").Standing);
    }

    // Due 1 July. 2% x 2 months on 5,000 that came on 1 September, and 2% x 3 months on the 7,000 that never came: 200 + 420.
    [Fact]
    [Proves("Civ. Code § 8800(c)")]
    public void What_came_late_costs_until_it_came() =>
        Assert.Equal(620m, Direct().PaymentDemanded("2026-06-01", 12000m).Paid("2026-09-01", 5000m).On("2026-10-01")
            .Get("prompt-payment.progress").Amount);

    // Paid whole on 1 September, two months late: 480, which the payment does not wipe out.
    [Fact]
    [Proves("Civ. Code § 8800(c)")]
    public void Paying_late_does_not_end_the_penalty_that_has_run()
    {
        var due = Direct().PaymentDemanded("2026-06-01", 12000m).Paid("2026-09-01", 12000m).On("2027-06-01").Get("prompt-payment.progress");
        Assert.Equal(480m, due.Amount);
        Assert.Equal(Standing.Open, due.Standing);
        Assert.True(due.Says("Paid since"));
    }

    // Of 12,000 held, 5,000 came on 1 July after completion: 2% x 3 months on 7,000 from 16 July are 420; that it was retention is asked.
    [Fact]
    [Proves("Civ. Code § 8812")]
    public void Money_received_after_completion_that_answers_no_demand_lowers_the_owners_retention()
    {
        var due = Direct().Retained("2026-05-01", 12000m).Completed("2026-06-01").Paid("2026-07-01", 5000m).On("2026-10-16")
            .Get("retention.due");
        Assert.Equal(420m, due.Amount);
        Assert.Equal(5000m, Assert.Single(due.Questions).Dollars);
        Assert.Equal(720m, Direct().Retained("2026-05-01", 12000m).Completed("2026-06-01").Paid("2026-05-20", 5000m).On("2026-10-16")
            .Get("retention.due").Amount);
    }

    // Civ. Code § 8800(d): 20,000 of work, 12,000 retained, two demands of 10,000. The one of 1 to 20 June is due on 20 July, that of 5
    // June on
    // 6 July: the retention is taken out of the latter first. 8,000 are left for two months from 20 July.
    [Fact]
    [Proves("Civ. Code § 8800(d)")]
    public void Retention_is_taken_out_of_the_demand_that_falls_due_first()
    {
        var answer = Direct().Contract(c => c with { Price = 50000m }).Retained("2026-04-01", 42000m)
            .PaymentDemanded("2026-06-01..2026-06-20", 10000m).PaymentDemanded("2026-06-05", 10000m).On("2026-10-01");
        Assert.Equal(["2026-07-06"], answer.Get("prompt-payment.progress").DaysOf());
        Assert.Equal(Standing.Done, answer.Get("prompt-payment.progress").Standing);
        Assert.Equal(320m, answer.Get("prompt-payment.progress.2").Amount);
    }

    // 48,000 of 50,000 are no retention. Demanded with a second demand of one dollar: what the two are beyond that is taken out of the
    // first.
    [Theory]
    [InlineData(48001, 959.98, true)]
    [InlineData(47999, 959.98, false)]
    [InlineData(47000, 940, false)]
    [Proves("Civ. Code § 8800(d)")]
    public void Only_what_is_demanded_beyond_the_work_without_retention_is_retention(int demanded, decimal penalty, bool told)
    {
        var due = Direct().Contract(c => c with { Price = 50000m }).Retained("2026-04-01", 2000m).PaymentDemanded("2026-06-01", demanded)
            .PaymentDemanded("2026-06-02", 1m).On("2026-08-01");
        Assert.Equal(penalty, due.Get("prompt-payment.progress").Amount);
        Assert.Equal(told, due.Get("prompt-payment.progress").Says("$2.00 of what was demanded is retention"));
        Assert.Equal(told, due.Get("prompt-payment.progress").Says("is retention"));
        Assert.False(due.Get("prompt-payment.progress.2").Says("is retention"));
    }

    // Civ. Code § 8814: the share is of retention alone; a progress payment takes nothing of it.
    [Fact]
    [Proves("Civ. Code § 8814")]
    public void A_progress_payment_takes_nothing_of_the_share_of_retention()
    {
        var answer = Sub().Retained("2026-03-10", 1000m).HirerPaid("2026-03-16", 5000m).HirerPaid("2026-05-11", 3000m, PaymentOf.Retention)
            .On("2026-08-21");
        Assert.Equal(400m, answer.Get("prompt-payment.progress").Amount); // four months from 23 March
        Assert.Equal(60m, answer.Get("retention.due").Amount); // 1,000 for three months from 21 May
    }

    // Civ. Code § 8814(a): "that subcontractor's share of the payment". What was entered beyond what was retained is warned of.
    [Fact]
    [Proves("Civ. Code § 8814")]
    public void More_than_was_retained_is_warned_of()
    {
        var due = Sub().Retained("2026-03-10", 1000m).HirerPaid("2026-05-11", 3000m, PaymentOf.Retention).On("2026-08-21")
            .Get("retention.due");
        Assert.Equal((Standing.Open, (decimal?)60m), (due.Standing, due.Amount));
        Assert.True(due.Says("each subcontractor's share"));
        var asked = Assert.Single(due.Questions, q => q.Text.EndsWith("(hirer-paid.amount)", StringComparison.Ordinal));
        Assert.Equal(2_000m, asked.Dollars);
        Assert.IsType<HirerPaid>(asked.Corrects);
        Assert.False(Sub().Retained("2026-03-10", 1000m).HirerPaid("2026-05-11", 1000m, PaymentOf.Retention).On("2026-08-21")
            .Get("retention.due").Asks("(hirer-paid.amount)"));
    }
}
