using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>What owner, lender and public entity demand or answer, and the bond of a notice to a lender.</summary>
public sealed class HoldersAnswersTests
{
    private static JobBuilder Demanded(JobBuilder job) =>
        job.Add(i => new StopPaymentDemanded { Index = i, On = JobBuilder.When("2025-11-03"), From = "owner" });

    // Demanded 3 November: our target is the 13th. No day takes the lien away for sure.
    [Theory]
    [InlineData("2025-11-13", Standing.Open)]
    [InlineData("2025-11-14", Standing.InDoubt)]
    [InlineData("2026-03-02", Standing.InDoubt)]
    [Proves("Civ. Code § 8520(b)")]
    public void An_owners_demand_is_answered_at_once_and_its_row_stays_until_it_is(string asOf, Standing expected)
    {
        var row = Demanded(UsualPrivate()).On(asOf).Get("stop-payment-notice.owner-demand");
        Assert.Equal(expected, row.Standing);
        Assert.Equal("2025-11-13", row.Plan());
        Assert.True(row.Says("forfeits the lien"));
        Assert.Equal(Standing.Kept, Demanded(UsualPrivate()).StopPaymentGiven("2025-11-10", 6430m).On(asOf)
            .Get("stop-payment-notice.owner-demand").Standing);
        Assert.Equal(expected, Demanded(UsualPrivate()).StopPaymentGiven("2025-11-10", 6430m, false, "direct").On(asOf)
            .Get("stop-payment-notice.owner-demand").Standing);
        Assert.Equal(expected, Demanded(UsualPrivate()).StopPaymentGiven("2025-11-10", 6430m).Paper(p => p with { Manner = Manner.Email })
            .On(asOf).Get("stop-payment-notice.owner-demand").Standing);
        Assert.Null(UsualPrivate().On(asOf).Find("stop-payment-notice.owner-demand"));
    }

    [Fact]
    [Proves("Civ. Code § 8520(b)")]
    public void Unanswered_it_puts_the_lien_in_doubt()
    {
        Assert.Equal(Standing.Open, Demanded(UsualPrivate()).On("2025-11-13").Get("lien-right").Standing);
        var unanswered = Demanded(UsualPrivate()).On("2025-11-14").Get("lien-right");
        Assert.Equal(Standing.InDoubt, unanswered.Standing);
        Assert.Contains("Civ. Code § 8520(b)", unanswered.Sections);
        Assert.Equal(Standing.Open, Demanded(UsualPrivate()).StopPaymentGiven("2025-11-10", 6430m).On("2025-11-14")
            .Get("lien-right").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8520(b)")]
    public void A_demand_reaches_a_direct_contractor_too()
    {
        JobBuilder Job() => Demanded(DirectContractor().Price(6430m).Furnished("2025-08-05", 6430m).Completed("2025-10-22"));
        var assessment = Job().On("2025-11-10");
        Assert.Equal(Standing.Open, assessment.Get("stop-payment-notice.owner-demand").Standing);
        Assert.Contains(assessment.Next, s => s.Finding == "stop-payment-notice.owner-demand");
        Assert.Equal(Standing.InDoubt, Job().On("2025-11-20").Get("stop-payment-notice.owner-demand").Standing);
        Assert.Equal(Standing.Kept, Job().StopPaymentGiven("2025-11-10", 6430m).On("2025-11-20")
            .Get("stop-payment-notice.owner-demand").Standing);
    }

    // The notice of 2 September came before the bond of 1 October: the owner may not decline.
    [Theory]
    [InlineData("2025-09-01", true)]
    [InlineData("2025-09-02", true)]
    [InlineData("2025-09-03", false)]
    [InlineData("2025-10-01", false)]
    [Proves("Civ. Code § 8522(b)")]
    public void The_owner_may_decline_only_for_a_bond_recorded_before_the_notice(string recorded, bool mayDecline)
    {
        var assessment = UsualPrivate().PaymentBond(recorded).StopPaymentGiven("2025-09-02", 6430m).On("2025-11-03");
        var owner = assessment.Get("stop-payment-notice.owner");
        Assert.Equal(mayDecline, owner.Sections.Contains("Civ. Code § 8522(b)"));
        Assert.Equal(!mayDecline, owner.RuledOut("Civ. Code § 8522(b)"));
        Assert.Equal(mayDecline, assessment.Find("stop-payment-notice.owner-answer") is not null);
    }

    // Received 2 September: 30 days end on Thursday 2 October. The owner's own day: a closed one rolls.
    [Theory]
    [InlineData("2025-09-02", "2025-10-02", "2025-10-02", Standing.Open)]
    [InlineData("2025-09-02", "2025-10-02", "2025-10-03", Standing.Done)]
    [InlineData("2025-09-04", "2025-10-06", "2025-10-06", Standing.Open)]
    [Proves("Civ. Code § 8522(b)")]
    public void Its_thirty_days_to_say_so_have_a_row(string given, string last, string asOf, Standing expected)
    {
        var answer =
            UsualPrivate().PaymentBond("2025-07-01").StopPaymentGiven(given, 6430m).On(asOf).Get("stop-payment-notice.owner-answer");
        Assert.Equal([last], answer.DaysOf());
        Assert.Equal(expected, answer.Standing);
        Assert.Null(answer.ActBy);
    }

    private static JobBuilder Bonded(decimal? bond, bool bonded = true) => Private(ClaimantRole.Subcontractor, "direct").Lender()
        .Furnished("2025-08-05", 33_600m).Notice("2025-08-14", Manner.CertifiedMail, "owner", "direct", "bank")
        .StopPaymentGiven("2025-10-06", 33_600m, bonded, "bank").Paper(p => p with { BondAmount = bond }).Completed("2025-10-22");

    [Theory]
    [InlineData("42000.00", Standing.Kept)]
    [InlineData("41999.99", Standing.InDoubt)]
    [InlineData("33600.00", Standing.InDoubt)]
    [InlineData(null, Standing.Kept)]
    [Proves("Civ. Code § 8532")]
    public void A_bond_of_less_than_125_percent_leaves_the_bonded_notice_in_doubt(string? bond, Standing expected)
    {
        var lender = Bonded(bond is null ? null : decimal.Parse(bond, System.Globalization.CultureInfo.InvariantCulture)).On("2025-12-01")
            .Get("stop-payment-notice.lender");
        Assert.Equal(expected, lender.Standing);
        Assert.Equal(bond is null, lender.Asks("It must be $42,000.00 at least. (stop-payment-given.bondAmount)"));
        Assert.Equal(expected == Standing.InDoubt, lender.Says("125 percent of the claim is $42,000.00"));
        Assert.Equal(Standing.Kept, Bonded(1m, bonded: false).On("2025-12-01").Get("stop-payment-notice.lender").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8536(b)")]
    [Proves("Civ. Code § 8538")]
    [Proves("Civ. Code § 8540")]
    [Proves("Civ. Code § 8558")]
    [Proves("Civ. Code § 8560")]
    public void What_a_bonded_notice_buys_is_said()
    {
        var lender = Bonded(42_000m).On("2025-12-01").Get("stop-payment-notice.lender");
        Assert.Contains("Civ. Code § 8540", lender.Sections);
        Assert.True(lender.Says("Bonded notices are paid first"));
        Assert.True(lender.Says("attorney's fees (Civ. Code § 8558) and interest from the day of the notice (Civ. Code § 8560)"));
        Assert.True(lender.Says("stamped envelope (Civ. Code § 8538)"));
        Assert.Contains("Civ. Code § 8536(b)", Bonded(42_000m).PaymentBond("2025-07-01").On("2025-12-01")
            .Get("stop-payment-notice.lender").Sections);
    }

    // Given 6 October: the lender objects by Monday 27 October (day 20 is Sunday the 26th). Objected the 20th: another bond by the 30th.
    [Theory]
    [InlineData("2025-10-20", null, "2025-10-30", Standing.Open, Standing.Kept)]
    [InlineData("2025-10-20", null, "2025-10-31", Standing.Lost, Standing.InDoubt)]
    [InlineData("2025-10-20", "2025-10-30", "2025-11-10", Standing.Kept, Standing.Kept)]
    [InlineData("2025-10-20", "2025-10-31", "2025-11-10", Standing.Lost, Standing.InDoubt)]
    [InlineData("2025-10-27", null, "2025-11-10", Standing.Lost, Standing.InDoubt)]
    [InlineData("2025-10-28", null, "2025-12-01", Standing.Kept, Standing.Kept)]
    [Proves("Civ. Code § 8534")]
    public void After_the_lenders_objection_another_bond_is_brought_within_ten_days(string objected, string? brought, string asOf,
        Standing row, Standing lender)
    {
        var assessment = Bonded(42_000m)
            .Add(i => new BondObjected { Index = i, On = JobBuilder.When(objected), By = "bank", NewBond = brought is null
                ? null : JobBuilder.Day(brought) }).On(asOf);
        Assert.Equal(row, assessment.Get("stop-payment-notice.new-bond").Standing);
        Assert.Equal(lender, assessment.Get("stop-payment-notice.lender").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8534")]
    public void An_objection_on_a_day_that_nobody_knows_is_in_doubt_and_answered_at_once()
    {
        var row = Bonded(42_000m).Add(i => new BondObjected { Index = i, On = JobBuilder.When("?"), By = "bank" }).On("2025-12-01")
            .Get("stop-payment-notice.new-bond");
        Assert.Equal(Standing.InDoubt, row.Standing);
        Assert.True(row.Says("bring one at once"));
    }

    [Fact]
    [Proves("Civ. Code § 8534")]
    public void An_objection_to_nothing_bonded_has_no_row()
    {
        JobBuilder Job(bool bonded, string by) => Bonded(42_000m, bonded).Party("fund", PartyCapacity.ConstructionLender, "Slate Fund")
            .Add(i => new BondObjected { Index = i, On = JobBuilder.When("2025-10-20"), By = by });
        Assert.Null(Job(false, "bank").On("2025-12-01").Find("stop-payment-notice.new-bond"));
        Assert.Null(Job(true, "fund").On("2025-12-01").Find("stop-payment-notice.new-bond"));
        Assert.NotNull(Job(true, "bank").On("2025-12-01").Find("stop-payment-notice.new-bond"));
    }

    // Accepted 22 October: ten days end on Saturday 1 November, so by Monday the 3rd.
    [Theory]
    [InlineData(true, "2025-11-03", Standing.Open)]
    [InlineData(true, "2025-11-04", Standing.Done)]
    [InlineData(false, "2025-11-03", null)]
    [InlineData(null, "2025-11-03", null)]
    [Proves("Civ. Code § 9362")]
    public void One_who_paid_ten_dollars_is_told_of_the_time_to_sue(bool? paid, string asOf, Standing? expected)
    {
        var job = Public().Furnished("2025-08-05", 6430m).NoticedPublic().StopPaymentGiven("2025-09-02", 6430m, false, "city")
            .Paper(p => p with { TenDollars = paid }).Accepted();
        var assessment = job.On(asOf);
        Assert.Equal(expected, assessment.Find("stop-payment-notice.entity-tells")?.Standing);
        if (expected is not null)
            Assert.Equal(["2025-11-03"], assessment.Get("stop-payment-notice.entity-tells").DaysOf());
        Assert.Equal(paid is null, assessment.Get("stop-payment-notice.last-day").Asks("(stop-payment-given.tenDollars)"));
        Assert.Equal(paid != true, assessment.Get("stop-payment-notice.last-day").Says("Pay the entity $10"));
    }

    [Fact]
    [Proves("Civ. Code § 9362")]
    public void A_recorded_notice_starts_ten_days_of_its_own()
    {
        var job = Public().Furnished("2025-08-05", 6430m).NoticedPublic().StopPaymentGiven("2025-09-02", 6430m, false, "city")
            .Paper(p => p with { TenDollars = true }).Accepted().OwnerRecorded("2025-10-30", states: "2025-10-22");
        Assert.Equal(["2025-11-03", "2025-11-10"], job.On("2025-11-05").Get("stop-payment-notice.entity-tells").DaysOf());
    }

    [Theory]
    [InlineData(PublicBody.GeneralServices, true)]
    [InlineData(PublicBody.State, true)]
    [InlineData(PublicBody.Local, false)]
    [InlineData(PublicBody.UniversityOrCourt, false)]
    [Proves("Civ. Code § 9354")]
    public void On_a_contract_of_the_State_the_director_is_asked_for(PublicBody body, bool director)
    {
        var last = UsualPublic().Work(w => w with { Body = body }).StopPaymentGiven("2025-11-03", 6430m, false, "city").On("2025-12-01")
            .Get("stop-payment-notice.last-day");
        Assert.Equal(director, last.Asks("to the director of the department"));
        Assert.Equal(!director, last.Asks("to the entity's disbursing office"));
    }

    // Given by our target it answers the demand; later, whether that was soon enough nobody can say, and the lien is in doubt with it.
    [Theory]
    [InlineData("2025-11-13", Standing.Kept)]
    [InlineData("2025-11-14", Standing.InDoubt)]
    [InlineData("?", Standing.InDoubt)]
    [Proves("Civ. Code § 8520(b)")]
    public void A_demand_answered_late_leaves_the_lien_in_doubt(string given, Standing expected)
    {
        var answer = Demanded(UsualPrivate()).StopPaymentGiven(given, 6430m).On("2025-12-01");
        Assert.Equal(expected, answer.Get("stop-payment-notice.owner-demand").Standing);
        Assert.Equal(expected == Standing.Kept ? Standing.Open : Standing.InDoubt, answer.Get("lien-right").Standing);
    }
}
