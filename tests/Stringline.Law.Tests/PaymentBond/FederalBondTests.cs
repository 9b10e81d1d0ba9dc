using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PaymentBond;

/// <summary>
/// Last furnished on Wednesday 15 April 2026: notice by Tuesday 14 July, action from Wednesday 15 July 2026 to Thursday 15 April 2027.
/// Counted apart with Python's calendar arithmetic; the text of 40 U.S.C. § 3133 is from memory.
/// </summary>
public sealed class FederalBondTests
{
    private static JobBuilder Job(string hiredBy = "sub", string last = "2026-04-15") =>
        new JobBuilder().Work(w => w with { Kind = WorkKind.Federal })
        .Party("sub", PartyCapacity.Subcontractor).Role(ClaimantRole.Supplier, hiredBy).Furnished("2026-03-02", 1m).Furnished(last, 1m);

    [Theory]
    [InlineData("2026-07-14", Standing.Open)]
    [InlineData("2026-07-15", Standing.Lost)]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void One_hired_by_a_subcontractor_gives_the_prime_notice_within_ninety_days_after_last_furnishing(string asOf, Standing expected)
    {
        var notice = Job().On(asOf).Get("federal-bond.notice-last-day");
        Assert.Equal(["2026-07-14"], notice.DaysOf());
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(expected == Standing.Open
            ? Standing.Kept : Standing.Lost, Job().BondNoticeGiven(asOf).On("2026-08-03").Get("federal-bond.notice-last-day").Standing);
    }

    [Fact]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void One_hired_by_the_prime_gives_none()
    {
        var notice = Job("direct").On("2027-01-04").Get("federal-bond.notice-last-day");
        Assert.Equal(Standing.Kept, notice.Standing);
        Assert.Empty(notice.Readings);
    }

    [Theory]
    [InlineData("2026-07-14", Standing.NotYet)]
    [InlineData("2026-07-15", Standing.Open)]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    public void The_action_waits_until_ninety_days_have_passed(string asOf, Standing expected)
    {
        var first = Job("direct").On(asOf).Get("federal-bond.action-first-day");
        Assert.Equal(["2026-07-15"], first.DaysOf());
        Assert.Equal(expected, first.Standing);
    }

    [Theory]
    [InlineData("2027-04-15", Standing.Open)]
    [InlineData("2027-04-16", Standing.Lost)]
    [Proves("40 U.S.C. § 3133(b)(4)")]
    public void The_action_is_due_within_a_year_after_last_furnishing(string asOf, Standing expected)
    {
        var last = Job("direct").On(asOf).Get("federal-bond.action-last-day");
        Assert.Equal(["2027-04-15"], last.DaysOf());
        Assert.Equal(expected, last.Standing);
        Assert.Equal(expected == Standing.Open
            ? Standing.Kept : Standing.Lost, Job("direct").ActionFiled(asOf).On("2027-06-01").Get("federal-bond.action-last-day").Standing);
    }

    [Fact]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    [Proves("40 U.S.C. § 3133(b)(4)")]
    public void A_last_day_in_doubt_is_planned_on_its_earliest_and_lost_only_after_its_latest()
    {
        var job = Job(last: "2026-04-10..2026-04-15");
        Assert.Equal(["2026-07-09", "2026-07-14"], job.On("2026-06-01").Get("federal-bond.notice-last-day").DaysOf());
        Assert.Equal("2026-07-09", job.On("2026-06-01").Get("federal-bond.notice-last-day").Plan());
        Assert.Equal(Standing.InDoubt, job.On("2026-07-14").Get("federal-bond.notice-last-day").Standing);
        Assert.Equal(Standing.Lost, job.On("2026-07-15").Get("federal-bond.notice-last-day").Standing);
        Assert.Equal(["2027-04-10", "2027-04-15"], job.On("2026-06-01").Get("federal-bond.action-last-day").DaysOf());
        Assert.Equal(Standing.InDoubt, Job("direct", "2026-04-10..2026-04-15").On("2027-04-15")
            .Get("federal-bond.action-last-day").Standing);
        // Without the notice there is no action (40 U.S.C. § 3133(b)(2)).
        Assert.Equal(Standing.Lost, job.On("2027-04-01").Get("federal-bond.action-last-day").Standing);
    }

    private static JobBuilder Two() => new JobBuilder().Work(w => w with { Kind = WorkKind.Federal })
        .Party("sub", PartyCapacity.Subcontractor, "Tamper & Screed Co.").Party("surety", PartyCapacity.Surety)
        .Role(ClaimantRole.Supplier, "sub").Furnished("2025-08-05", 6430m).Furnished("2025-09-30", 2150m);

    private static Finding Notice(JobBuilder job, string asOf) => job.On(asOf).Get("federal-bond.notice-last-day");

    // Last furnished Tuesday 30 September 2025: notice by Monday 29 December.
    [Theory]
    [InlineData(new[] { "surety" }, Standing.Open)]
    [InlineData(new[] { "sub" }, Standing.Open)]
    [InlineData(new[] { "direct" }, Standing.Kept)]
    [InlineData(new[] { "direct", "surety" }, Standing.Kept)]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void The_notice_goes_to_the_prime_contractor_and_to_nobody_else(string[] to, Standing expected)
    {
        var notice = Notice(Two().BondNoticeGiven("2025-11-03", to), "2025-12-01");
        Assert.Equal((expected, "2025-12-29"), (notice.Standing, notice.Plan()));
        Assert.Equal(expected == Standing.Open, notice.RuledOut("40 U.S.C. § 3133(b)(2)"));
        Assert.Equal(expected == Standing.Open
            ? Standing.Lost : Standing.Kept, Notice(Two().BondNoticeGiven("2025-11-03", to), "2025-12-30").Standing);
    }

    [Theory]
    [InlineData("2025-08-20", "2025-11-03", Standing.InDoubt, 6430)]
    [InlineData("2025-09-29", "2025-11-03", Standing.InDoubt, 6430)]
    [InlineData("2025-09-30", "2025-11-03", Standing.Kept, 8580)]
    [InlineData("2025-08-20", "2026-01-05", Standing.InDoubt, 6430)]
    [InlineData("2025-08-04", "2025-11-03", Standing.InDoubt, 0)]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    public void A_notice_before_the_last_delivery_may_hold_for_what_had_been_furnished_by_then(string given, string asOf, Standing expected,
        int amount)
    {
        var answer = Two().BondNoticeGiven(given, "direct").On(asOf);
        Assert.Equal(expected, answer.Get("federal-bond.notice-last-day").Standing);
        Assert.Equal(expected == Standing.InDoubt, answer.Get("federal-bond.notice-last-day").Says("921 F.2d 911"));
        Assert.Equal(((decimal?)amount, expected == Standing.Kept ? Standing.Open : Standing.InDoubt),
            (answer.Get("federal-bond.amount").Amount, answer.Get("federal-bond.amount").Standing));
        Assert.Equal((Standing.Kept, (decimal?)8580m),
            (Notice(Two().BondNoticeGiven(given, "direct").BondNoticeGiven("2025-10-15", "direct"), asOf).Standing,
            Two().BondNoticeGiven(given, "direct").BondNoticeGiven("2025-10-15", "direct").On(asOf).Get("federal-bond.amount").Amount));
    }

    [Theory]
    [InlineData(Manner.CertifiedMail, Standing.Kept)]
    [InlineData(Manner.Personal, Standing.Kept)]
    [InlineData(Manner.OvernightCarrier, Standing.Kept)]
    [InlineData(Manner.FirstClassMail, Standing.InDoubt)]
    [InlineData(Manner.Email, Standing.InDoubt)]
    [InlineData(Manner.CertificateOfMailing, Standing.InDoubt)]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void A_manner_without_a_third_partys_proof_of_delivery_leaves_it_in_doubt(Manner manner, Standing expected)
    {
        var notice =
            Notice(Two().Add(i => new BondNoticeGiven { Index = i, On = JobBuilder.When("2025-11-03"), To = ["direct"], Manner = manner }),
                "2026-01-05");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(expected == Standing.InDoubt, notice.Asks("(bond-notice-given.manner)"));
    }

    [Fact]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void A_notice_given_too_late_is_lost_unless_another_may_hold()
    {
        Assert.Equal(Standing.Lost, Notice(Two().BondNoticeGiven("2025-12-30", "direct"), "2026-01-05").Standing);
        Assert.Equal(Standing.InDoubt,
            Notice(Two().BondNoticeGiven("2025-08-20", "direct").BondNoticeGiven("2025-12-30", "direct"), "2026-01-05").Standing);
    }

    [Fact]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void Who_supplies_a_subcontractor_is_asked_whose_subcontractor_it_is()
    {
        Assert.True(Notice(Two(), "2025-12-01").Asks("(parties.worksUnder)"));
        Assert.False(Notice(Two().PartyWith("sub", p => p with { WorksUnder = "direct" }), "2025-12-01").Asks("(parties.worksUnder)"));
    }

    // Brought inside the 90 days, that is before 30 December 2025, an action may be thrown out; one on another remedy is none on the bond.
    [Theory]
    [InlineData("2025-12-29", null, Standing.InDoubt)]
    [InlineData("2025-12-30", null, Standing.Kept)]
    [InlineData("2025-12-30", ActionOn.PaymentBond, Standing.Kept)]
    [InlineData("2025-12-30", ActionOn.Debt, Standing.Open)]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    [Proves("40 U.S.C. § 3133(b)(4)")]
    public void An_action_counts_from_the_day_on_which_it_may_be_brought(string filed, ActionOn? on, Standing expected)
    {
        var job = Two().BondNoticeGiven("2025-11-03", "direct")
            .Add(i => new ActionFiled { Index = i, On = JobBuilder.When(filed), Enforces = on is { } enforced ? [enforced] : [] });
        Assert.Equal(expected, job.On("2026-02-02").Get("federal-bond.action-last-day").Standing);
    }

    // Clifford F. MacEvoy Co. v. United States (1944) 322 U.S. 102.
    [Theory]
    [InlineData(false, null, Standing.Lost, null)]
    [InlineData(false, "direct", Standing.Lost, null)]
    [InlineData(null, null, Standing.InDoubt, "(parties.madeToPlans)")]
    [InlineData(true, null, Standing.InDoubt, "(parties.worksUnder)")]
    [InlineData(true, "sub", Standing.InDoubt, "(parties.worksUnder)")]
    [InlineData(true, "direct", Standing.Kept, null)]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void Who_sells_to_a_supplier_is_within_the_bond_only_if_that_one_took_a_part_of_the_work_from_the_prime(bool? madeToPlans,
        string? worksUnder, Standing expected, string? asks)
    {
        var job = Two().Party("yard", PartyCapacity.Supplier, "Teasel Lumber Yard", madeToPlans: madeToPlans)
            .PartyWith("yard", p => p with { WorksUnder = worksUnder }).Role(ClaimantRole.Supplier, "yard");
        var authorized = job.On("2025-11-03").Get("authorized-work");
        Assert.Equal(expected, authorized.Standing);
        Assert.Equal(["40 U.S.C. § 3133(b)(2)"], authorized.Sections);
        Assert.True(authorized.Says("322 U.S. 102"));
        Assert.False(authorized.Says("Theisen"));
        Assert.Equal(asks, authorized.Questions.SingleOrDefault()?.Text.Split(' ')[^1]);
        if (asks is not null)
            Assert.Equal(8580m, authorized.Questions[0].Dollars);
    }

    [Fact]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    public void The_amount_is_what_is_unpaid()
    {
        Assert.Equal((Standing.Open, (decimal?)8430m), Told(Two().Paid("2025-10-06", 150m)));
        Assert.Equal((Standing.NotYet, (decimal?)0m), Told(Two().Paid("2025-10-06", 8580m)));
        static (Standing, decimal?) Told(JobBuilder job) =>
            job.On("2025-11-03").Get("federal-bond.amount") is var f ? (f.Standing, f.Amount) : default;
    }

    [Fact]
    public void With_nothing_furnished_on_a_known_day_nothing_runs() =>
        Assert.Null(new JobBuilder().Work(w => w with { Kind = WorkKind.Federal }).On("2026-06-01").Find("federal-bond.notice-last-day"));

    [Fact]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    public void The_prime_contractor_has_no_claim_on_its_own_bond()
    {
        var answer = new JobBuilder().Work(w => w with { Kind = WorkKind.Federal }).Role(ClaimantRole.DirectContractor, "owner")
            .Furnished("2026-03-02", 1m).On("2026-06-01");
        Assert.Equal(Standing.Lost, answer.Get("federal-bond.action-last-day").Standing);
        Assert.Null(answer.Find("federal-bond.notice-last-day"));
    }
}
