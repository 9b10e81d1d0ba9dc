using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>Each dollar is due once and disputed once, and nobody is held to a section that does not name him.</summary>
public sealed class DisputesAndRetentionTests
{
    private static JobBuilder Direct(decimal price = 20_000m) => new JobBuilder().Role(ClaimantRole.DirectContractor, "owner")
        .NoParty("direct").Licensed("2012-06-01..").Price(price).Furnished("2025-08-05", price);

    private static JobBuilder Sub(string hiredBy = "direct", ClaimantRole role = ClaimantRole.Subcontractor) =>
        new JobBuilder().Party("sub", PartyCapacity.Subcontractor).Role(role, hiredBy).Licensed("2012-06-01..").Notice("2025-08-14")
        .Furnished("2025-08-05", 22_000m);

    // Demanded 1 October, due 31 October: three whole months by 15 February. Completed 22 October: retention by 8 December, two months.
    [Fact]
    [Proves("Civ. Code § 8800(d)")]
    public void Retention_inside_a_demand_is_counted_as_retention_alone()
    {
        var answer = Direct().Retained("2025-09-10", 2_000m).PaymentDemanded("2025-10-01", 20_000m).Completed("2025-10-22")
            .On("2026-02-15");
        Assert.Equal(1_080m, answer.Get("prompt-payment.progress").Amount);
        Assert.True(answer.Get("prompt-payment.progress").Says("$2,000.00 of what was demanded is retention"));
        Assert.Equal(80m, answer.Get("retention.due").Amount);
        // A demand without it is whole.
        var without =
            Direct().Retained("2025-09-10", 2_000m).PaymentDemanded("2025-10-01", 18_000m).On("2026-02-15").Get("prompt-payment.progress");
        Assert.Equal(1_080m, without.Amount);
        Assert.False(without.Says("is retention"));
        // Of a demand that holds a half of the retention only that half is taken out.
        Assert.Equal(1_080m, Direct().Retained("2025-09-10", 2_000m).PaymentDemanded("2025-10-01", 19_000m).On("2026-02-15")
            .Get("prompt-payment.progress").Amount);
        // Where something is not priced nobody can tell.
        Assert.Equal(1_200m, Direct().Furnished("2025-08-06").Retained("2025-09-10", 2_000m).PaymentDemanded("2025-10-01", 20_000m)
            .On("2026-02-15").Get("prompt-payment.progress").Amount);
    }

    private static JobBuilder TwoDemands(Func<int, Disputed> dispute) => Direct(40_000m)
        .PaymentDemanded("2025-09-01", 20_000m).Which(e => e with { Id = "first" }).PaymentDemanded("2025-10-01", 20_000m)
        .Which(e => e with { Id = "second" }).Add(i => dispute(i));

    // Due 1 and 31 October: four and three whole months by 15 February. 12,500 and 20,000: 1,000 and 1,200; the other way 1,600 and 750.
    [Fact]
    [Proves("Civ. Code § 8800(b)")]
    public void One_dispute_lets_a_part_of_one_sum_be_held()
    {
        static (decimal?, decimal?) Penalties(Assessment answer) =>
            (answer.Get("prompt-payment.progress").Amount, answer.Get("prompt-payment.progress.2").Amount);
        var open = TwoDemands(i => new Disputed { Index = i, On = When("2025-09-20"), Amount = 5_000m }).On("2026-02-15");
        Assert.Equal((1_000m, 1_200m), Penalties(open));
        var question = Assert.Single(open.Get("prompt-payment.progress").Questions);
        Assert.Equal((150m, 3), (question.Dollars, question.Corrects!.Index));
        var second = TwoDemands(i => new Disputed { Index = i, On = When("2025-09-20"), Amount = 5_000m, Demand = "second" })
            .On("2026-02-15");
        Assert.Equal((1_600m, 750m), Penalties(second));
        Assert.Empty(second.Get("prompt-payment.progress").Questions);
        Assert.Equal((1_600m, 1_200m),
            Penalties(TwoDemands(i => new Disputed { Index = i, On = When("2025-09-20"), Amount = 5_000m, About = DisputeAbout.OtherSums })
                .On("2026-02-15")));
        Assert.Equal((1_600m, 1_200m),
            Penalties(TwoDemands(i => new Disputed { Index = i, On = When("2025-09-20"), Amount = 5_000m, About = DisputeAbout.Retention })
                .On("2026-02-15")));
        Assert.Equal((1_000m, 1_200m),
            Penalties(TwoDemands(i => new Disputed { Index = i, On = When("2025-09-20"), Amount = 5_000m, About = DisputeAbout.Progress })
                .On("2026-02-15")));
    }

    [Theory]
    [InlineData("2025-10-31", 0)]
    [InlineData("2025-11-01", 1)]
    [Proves("Civ. Code § 8800(b)")]
    public void A_dispute_raised_after_the_due_day_is_asked_about(string raised, int asked)
    {
        var due = Direct().PaymentDemanded("2025-10-01", 20_000m).Disputed(raised, 5_000m).On("2026-02-15").Get("prompt-payment.progress");
        Assert.Equal(750m, due.Amount);
        Assert.Equal(asked, due.Questions.Count);
        Assert.All(due.Questions, q => Assert.Equal(450m, q.Dollars));
    }

    [Theory]
    [InlineData(true, Standing.InDoubt)]
    [InlineData(false, Standing.Open)]
    [Proves("Civ. Code § 8812")]
    public void On_a_contested_completion_retention_is_in_doubt(bool contested, Standing expected)
    {
        var due = Direct().Retained("2025-09-10", 2_000m).Completed("2025-10-22", contested: contested).On("2026-03-15")
            .Get("retention.due");
        Assert.Equal(expected, due.Standing);
        Assert.Equal(120m, due.Amount);
        Assert.Equal(contested, due.Says("not due yet"));
    }

    [Theory]
    [InlineData("direct", ClaimantRole.Subcontractor, Standing.Open)]
    [InlineData("sub", ClaimantRole.Subcontractor, Standing.InDoubt)]
    [InlineData("direct", ClaimantRole.Supplier, Standing.InDoubt)]
    [InlineData(null, ClaimantRole.Subcontractor, Standing.InDoubt)]
    [Proves("Civ. Code § 8810")]
    public void Only_a_direct_contractor_owes_retention_and_only_to_a_subcontractor(string? hiredBy, ClaimantRole role, Standing expected)
    {
        var due = Sub("direct", role).Claimant(c => c with { HiredBy = hiredBy }).Retained("2025-09-20", 2_200m)
            .HirerPaid("2025-11-03", 2_200m, PaymentOf.Retention).On("2026-02-15").Get("retention.due");
        Assert.Equal(expected, due.Standing);
        Assert.Equal(132m, due.Amount);
        Assert.Equal(hiredBy is null, due.Asks("(claimant.hiredBy)"));
    }

    // Completed 22 October: the 45th day is Saturday 6 December, so Monday the 8th.
    [Theory]
    [InlineData("2025-12-08", Standing.NotYet)]
    [InlineData("2025-12-09", Standing.InDoubt)]
    [Proves("Civ. Code § 8812")]
    public void Whether_the_contractor_received_retention_is_asked(string asOf, Standing expected)
    {
        var job = Sub().Retained("2025-09-20", 2_200m).Completed("2025-10-22");
        var due = job.On(asOf).Get("retention.due");
        Assert.Equal(expected, due.Standing);
        Assert.Equal(["2025-12-08"], due.DaysOf());
        Assert.Null(due.Amount);
        Assert.Equal(2_200m,
            Assert.Single(due.Questions, q => q.Text.EndsWith("by 2025-12-08. (hirer-paid)", StringComparison.Ordinal)).Dollars);
        Assert.Null(Sub("sub").Retained("2025-09-20", 2_200m).Completed("2025-10-22").On(asOf).Find("retention.due"));
        Assert.Null(Sub().Retained("2025-09-20", 2_200m).On(asOf).Find("retention.due"));
    }

    [Fact]
    [Proves("Civ. Code § 8814(c)")]
    public void A_dispute_that_says_what_it_is_about_leaves_no_doubt()
    {
        static Finding Due(DisputeAbout about) => Sub().HirerPaid("2025-11-03", 2_200m, PaymentOf.Retention)
            .Add(i => new Disputed { Index = i, On = When("2025-11-05"), Amount = 400m, About = about }).On("2026-02-15")
            .Get("retention.due");
        Assert.Equal((Standing.Open, 132m, 0),
            (Due(DisputeAbout.OtherSums).Standing, Due(DisputeAbout.OtherSums).Amount, Due(DisputeAbout.OtherSums).Questions.Count));
        // 600 of it may be held: 2 percent of 1,600 for three months.
        Assert.Equal((Standing.Open, 96m, 0),
            (Due(DisputeAbout.Retention).Standing, Due(DisputeAbout.Retention).Amount, Due(DisputeAbout.Retention).Questions.Count));
    }

    [Fact]
    [Proves("Civ. Code § 8802")]
    public void The_days_of_a_public_utility_stand_beside_the_seven()
    {
        static Finding Due(bool? utility) => Sub().Work(w => w with { PublicUtility = utility }).HirerPaid("2025-11-03", 2_200m)
            .On("2025-11-05").Get("prompt-payment.progress");
        Assert.Equal(["2025-11-10"], Due(true).DaysOf());
        Assert.True(Due(true).Says("21 days from receipt"));
        Assert.False(Due(null).Says("21 days"));
    }

    // Received Monday 12 January 2026: due on the 22nd; a month after is 22 February.
    [Theory]
    [InlineData("2026-02-22", "1 whole month")]
    [InlineData("2026-03-22", "2 whole months")]
    [Proves("Civ. Code § 8818")]
    public void One_month_is_said_as_one(string asOf, string months)
    {
        var due = new JobBuilder().Role(ClaimantRole.Subcontractor).Price(90_000m).Furnished("2025-08-05", 90_000m).Completed("2025-10-22")
            .Retained("2025-09-10", 4_500m)
            .HirerPaid("2026-01-12", 4_500m, PaymentOf.Retention).Disputed("2026-01-13", 4_500m).On(asOf).Get("retention.due");
        Assert.True(due.Says($"the penalty for {months} is"));
        Assert.False(due.Says("1 whole months"));
    }
}
