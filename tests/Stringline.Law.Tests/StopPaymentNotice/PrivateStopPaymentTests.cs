using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// Work completed on Monday 4 May 2026: the 90 days to record end on Sunday 2 August, which would roll to Monday 3 August; the day to
/// plan on is Friday 31 July.
/// </summary>
public sealed class PrivateStopPaymentTests
{
    private static JobBuilder Job(ClaimantRole role = ClaimantRole.Supplier, string hiredBy = "direct") =>
        new JobBuilder().Role(role, hiredBy).Licensed("2020-01-01..")
        .Notice("2026-03-02", Manner.CertifiedMail, "owner", "direct", "bank").Furnished("2026-03-02", 1000m).Ended("2026-04-06")
        .Completed("2026-05-04");

    [Theory]
    [InlineData("2026-08-02", Standing.InDoubt)]
    [InlineData("2026-08-03", Standing.InDoubt)]
    [InlineData("2026-08-04", Standing.Lost)]
    [Proves("Civ. Code § 8508(b)")]
    public void It_is_given_before_the_claimants_own_time_to_record_ends(string asOf, Standing expected)
    {
        var assessment = Job().On(asOf);
        var last = assessment.Get("stop-payment-notice.last-day");
        Assert.Equal(assessment.Get("claim-of-lien.last-day").Readings, last.Readings);
        Assert.Equal(["2026-08-02"], last.DaysOf());
        Assert.Equal("2026-07-31", last.Plan());
        Assert.Equal(expected, last.Standing);
    }

    [Theory]
    [InlineData("2026-08-02", Standing.Kept)]
    [InlineData("2026-08-03", Standing.InDoubt)]
    [InlineData("2026-08-04", Standing.Lost)]
    [Proves("Civ. Code § 8508(b)")]
    public void One_given_on_the_last_day_is_in_time_and_on_the_rolled_day_an_argument(string given, Standing expected)
    {
        var assessment = Job().StopPaymentGiven(given, 1000m).On("2026-10-01");
        Assert.Equal(expected, assessment.Get("stop-payment-notice.last-day").Standing);
        Assert.Equal(expected, assessment.Get("stop-payment-notice.owner").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8508(b)")]
    public void It_may_be_given_before_the_claimant_has_ceased_and_before_any_completion()
    {
        var job = new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1000m).StopPaymentGiven("2026-03-20", 1000m);
        Assert.Equal(Standing.Kept, job.On("2026-03-25").Get("stop-payment-notice.last-day").Standing);
        Assert.Equal(Standing.NotYet, new JobBuilder().Notice("2026-03-02").On("2026-03-25").Get("stop-payment-notice.last-day").Standing);
    }

    // A notice of completion recorded 18 May, its copy received, leaves 30 days to everyone but a direct contractor: 17 June.
    [Fact]
    [Proves("Civ. Code § 8508(b)")]
    public void A_notice_of_completion_shortens_it_too() =>
        Assert.Equal(["2026-06-17"], Job().OwnerRecorded("2026-05-18", states: "2026-05-04").OwnerToldUs("2026-05-20").On("2026-06-01")
            .Get("stop-payment-notice.last-day").DaysOf());

    [Theory]
    [InlineData(ClaimantRole.DirectContractor, "owner", Standing.Lost)]
    [InlineData(ClaimantRole.Subcontractor, "direct", Standing.Open)]
    [InlineData(ClaimantRole.Supplier, "direct", Standing.Open)]
    [InlineData(ClaimantRole.Supplier, "owner", Standing.Open)]
    [InlineData(ClaimantRole.EquipmentLessor, "direct", Standing.Open)]
    [InlineData(ClaimantRole.Laborer, "direct", Standing.Open)]
    [InlineData(ClaimantRole.DesignProfessional, "owner", Standing.Open)]
    [Proves("Civ. Code § 8520(a)")]
    public void To_the_owner_everyone_may_give_it_but_a_direct_contractor(ClaimantRole role, string hiredBy, Standing expected)
    {
        var assessment = Job(role, hiredBy).On("2026-06-01");
        Assert.Equal(expected, assessment.Get("stop-payment-notice.owner").Standing);
        Assert.Equal(expected, assessment.Get("stop-payment-notice.last-day").Standing);
        Assert.Null(assessment.Find("stop-payment-notice.lender"));
    }

    [Fact]
    [Proves("Civ. Code § 8530")]
    [Proves("Civ. Code § 8532")]
    public void To_a_lender_a_direct_contractor_may_give_it_too()
    {
        var assessment = Job(ClaimantRole.DirectContractor, "owner").Lender().On("2026-06-01");
        Assert.Equal(Standing.Lost, assessment.Get("stop-payment-notice.owner").Standing);
        Assert.Equal(Standing.Open, assessment.Get("stop-payment-notice.lender").Standing);
        Assert.Equal(Standing.Open, assessment.Get("stop-payment-notice.last-day").Standing);
        Assert.True(assessment.Get("stop-payment-notice.lender").Says("125 percent of the claim"));
        Assert.Equal(Standing.Kept, Job(ClaimantRole.DirectContractor, "owner").Lender().StopPaymentGiven("2026-06-01", 1000m, true, "bank")
            .On("2026-06-01").Get("stop-payment-notice.lender").Standing);
    }

    [Theory]
    [InlineData(ClaimantRole.Supplier, "direct", "2026-01-12", true)]
    [InlineData(ClaimantRole.Supplier, "direct", null, false)]
    [InlineData(ClaimantRole.DirectContractor, "owner", "2026-01-12", false)]
    [Proves("Civ. Code § 8536")]
    public void A_recorded_payment_bond_lets_the_lender_choose_except_against_a_direct_contractor(ClaimantRole role, string hiredBy,
        string? recorded, bool mayChoose) =>
        Assert.Equal(mayChoose, Job(role, hiredBy).Lender().PaymentBond(recorded).On("2026-06-01")
            .Get("stop-payment-notice.lender").Sections.Contains("Civ. Code § 8536(b)"));

    [Theory]
    [InlineData("2026-01-12", true)]
    [InlineData(null, false)]
    [Proves("Civ. Code § 8522")]
    public void A_recorded_payment_bond_lets_the_owner_decline_within_thirty_days(string? recorded, bool mayDecline)
    {
        var owner = Job().PaymentBond(recorded).On("2026-06-01").Get("stop-payment-notice.owner");
        Assert.Equal(mayDecline, owner.Sections.Contains("Civ. Code § 8522(b)"));
        // The owner withholds the claim as stated; the 125 percent belong to bonds.
        Assert.True(owner.Says("pay the claim as stated"));
        Assert.False(owner.Says("125 percent"));
    }

    // First furnished 2 March; the twentieth day is 22 March. A notice of 28 April reaches back to 8 April, after the last work.
    [Theory]
    [InlineData("2026-03-22", Standing.Open)]
    [InlineData("2026-03-23", Standing.InDoubt)] // in time by the roll of a Sunday
    [InlineData("2026-03-24", Standing.Narrowed)]
    [InlineData("2026-04-28", Standing.Lost)]
    [InlineData(null, Standing.Lost)]
    [Proves("Civ. Code § 8508(a)")]
    public void It_is_worth_what_the_preliminary_notice_is_worth(string? given, Standing expected)
    {
        var job = new JobBuilder().Furnished("2026-03-02", 400m).Furnished("2026-04-06", 600m).Ended("2026-04-06").Completed("2026-05-04");
        if (given is not null)
            job.Notice(given);
        var assessment = job.On("2026-06-01");
        Assert.Equal(expected, assessment.Get("stop-payment-notice.owner").Standing);
        Assert.Equal(expected == Standing.Lost, assessment.Get("stop-payment-notice.last-day").Standing == Standing.Lost);
    }

    // Romak Iron Works v. Prudential (1980) 104 Cal.App.3d 767; Brewer Corp. v. Point Center Financial (2014) 223 Cal.App.4th 831. Last
    // furnished 6 April: a notice of 26 April would still reach it.
    [Theory]
    [InlineData("2026-04-26", Standing.InDoubt)]
    [InlineData("2026-04-27", Standing.Lost)]
    [Proves("Civ. Code § 8508(a)")]
    [Proves("Civ. Code § 8530")]
    public void A_lender_never_told_is_out_of_reach_once_no_notice_could_reach_any_work(string asOf, Standing expected)
    {
        JobBuilder Told(ClaimantRole role, params string[] to) =>
            new JobBuilder().Role(role).Lender().Notice("2026-03-02", Manner.CertifiedMail, to)
            .Furnished("2026-03-02", 400m).Furnished("2026-04-06", 600m).Ended("2026-04-06");
        Assert.Equal(expected, Told(ClaimantRole.Supplier, "owner", "direct").On(asOf).Get("stop-payment-notice.lender").Standing);
        Assert.Equal(Standing.Open, Told(ClaimantRole.Supplier, "owner", "direct", "bank").On(asOf)
            .Get("stop-payment-notice.lender").Standing);
        // A laborer gives no preliminary notice at all.
        Assert.Equal(Standing.Open, Told(ClaimantRole.Laborer, "owner").On(asOf).Get("stop-payment-notice.lender").Standing);
        // One lender of two was told: each has its own row, and which of them holds the fund is not known.
        var two = Told(ClaimantRole.Supplier, "owner", "direct", "bank").Party("fund", PartyCapacity.ConstructionLender).On(asOf);
        Assert.Equal(Standing.Open, two.Get("stop-payment-notice.lender").Standing);
        Assert.Equal(Standing.InDoubt, two.Get("stop-payment-notice.lender.2").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8502(c)")]
    public void It_claims_only_what_is_due_for_work_through_its_day()
    {
        var job = new JobBuilder().Notice("2026-03-02").Price(5000m).Furnished("2026-03-02", 1000m).Furnished("2026-04-06", 600m)
            .Charged("2026-03-30", 55m, ChargeKind.Interest);
        Assert.Equal(1000m, job.On("2026-04-05").Get("stop-payment-notice.amount").Amount);
        Assert.Equal(1600m, job.On("2026-04-06").Get("stop-payment-notice.amount").Amount);
        var nothing = new JobBuilder().Notice("2026-03-02").On("2026-03-03").Get("stop-payment-notice.amount");
        Assert.Equal(0m, nothing.Amount);
        Assert.Equal(Standing.NotYet, nothing.Standing);
    }

    [Theory]
    [InlineData(1000, false)]
    [InlineData(1001, true)]
    [Proves("Civ. Code § 8504")]
    public void Claiming_more_than_the_file_supports_is_an_alarm(int claimed, bool alarm) =>
        Assert.Equal(alarm, Job().StopPaymentGiven("2026-06-01", claimed).On("2026-06-01").Get("stop-payment-notice.amount")
            .Says("the fund and the lien are forfeited"));

    // 125 percent of 1,000.01 is 1,250.0125, up to the next cent.
    [Fact]
    [Proves("Civ. Code § 8510")]
    public void A_bond_of_125_percent_of_what_is_claimed_frees_the_money()
    {
        Assert.True(Job().On("2026-06-01").Get("stop-payment-notice.amount").Says("$1,250.00"));
        Assert.True(Job().StopPaymentGiven("2026-06-01", 1000.01m).On("2026-06-01").Get("stop-payment-notice.amount").Says("$1,250.02"));
    }
}
