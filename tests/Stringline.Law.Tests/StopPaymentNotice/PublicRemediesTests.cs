using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// The two worked chains of public work, counted apart with Python's calendar arithmetic, and what stands around them. Friday 24 April
/// 2026 is a State holiday (Gov. Code § 6700), so the last open day before Sunday 26 April is Thursday the 23rd.
/// </summary>
public sealed class PublicRemediesTests
{
    private static JobBuilder Accepted(string completed, ClaimantRole role = ClaimantRole.Supplier) =>
        new JobBuilder().Role(role).PublicWork().PaymentBond(null)
        .Furnished("2025-12-01", 1000m).Ended("2025-12-22").Completed(completed, CompletionTheory.Acceptance)
        .IndexSearched(LawText.IsoDay(Day(completed).PlusDays(18)));

    private static JobBuilder Noticed(JobBuilder job) => job.Notice("2025-12-01", Manner.CertifiedMail, "city", "direct");

    private static JobBuilder Recorded() => Accepted("2026-05-28").OwnerRecorded("2026-06-01", states: "2026-05-28");

    private static void Chain(JobBuilder job, string id, string[] days, string actBy, string? lastRolled)
    {
        var finding = job.On("2026-03-02").Get(id);
        Assert.Equal(days, finding.DaysOf());
        Assert.Equal(actBy, finding.Plan());
        Assert.Equal(lastRolled is null ? null : Day(lastRolled), finding.Readings[^1].Rolled);
    }

    [Fact]
    [Proves("Civ. Code § 9356(b)")]
    [Proves("Civ. Code § 9502(b)")]
    [Proves("Civ. Code § 9558")]
    [Proves("Civ. Code § 9560(b)")]
    public void Accepted_10_February_2026_and_nothing_recorded()
    {
        Chain(Accepted("2026-02-10"), "stop-payment-notice.last-day", ["2026-05-11"], "2026-05-11", null);
        Chain(Accepted("2026-02-10"), "stop-payment-notice.action-last-day", ["2026-08-09"], "2026-08-07", "2026-08-10");
        Chain(Accepted("2026-02-10"), "payment-bond.notice-last-day", ["2026-04-26"], "2026-04-23", "2026-04-27");
        Chain(Accepted("2026-02-10"), "payment-bond.action-last-day", ["2026-11-09", "2026-11-11"], "2026-11-09", "2026-11-12");
    }

    [Fact]
    [Proves("Civ. Code § 9356(a)")]
    [Proves("Civ. Code § 9502(b)")]
    [Proves("Civ. Code § 9558")]
    [Proves("Civ. Code § 9560(b)")]
    public void Notice_of_completion_recorded_1_June_2026()
    {
        // Asked in June, when both have happened.
        static void Then(string id, string[] days, string actBy, string? lastRolled)
        {
            var finding = Recorded().On("2026-06-08").Get(id);
            Assert.Equal(days, finding.DaysOf());
            Assert.Equal(actBy, finding.Plan());
            Assert.Equal(lastRolled is null ? null : Day(lastRolled), finding.Readings[^1].Rolled);
        }

        Then("stop-payment-notice.last-day", ["2026-07-01"], "2026-07-01", null);
        Then("stop-payment-notice.action-last-day", ["2026-09-29"], "2026-09-29", null);
        Then("payment-bond.notice-last-day", ["2026-06-16"], "2026-06-16", null);
        Then("payment-bond.action-last-day", ["2026-12-30", "2027-01-01"], "2026-12-30", "2027-01-04");
    }

    [Theory]
    [InlineData("2026-05-11", Standing.Open)]
    [InlineData("2026-05-12", Standing.Lost)]
    [Proves("Civ. Code § 9356(b)")]
    public void The_ninetieth_day_after_acceptance_is_the_last(string asOf, Standing expected) =>
        Assert.Equal(expected, Noticed(Accepted("2026-02-10")).On(asOf).Get("stop-payment-notice.last-day").Standing);

    [Theory]
    [InlineData("2026-07-01", Standing.Kept)]
    [InlineData("2026-07-02", Standing.Lost)]
    [Proves("Civ. Code § 9356(a)")]
    public void The_thirtieth_day_after_a_recorded_notice_is_the_last(string given, Standing expected) =>
        Assert.Equal(expected, Noticed(Recorded()).StopPaymentGiven(given, 1000m, false, "city").On("2026-08-03")
            .Get("stop-payment-notice.last-day").Standing);

    // Nobody need send the claimant a copy on public work, unlike Civ. Code § 8190.
    [Theory]
    [InlineData(OwnerNotice.Completion)]
    [InlineData(OwnerNotice.Cessation)]
    [Proves("Civ. Code § 9356(a)")]
    public void A_recorded_notice_of_either_kind_shortens_the_time_unseen(OwnerNotice kind) =>
        Assert.Equal("2026-07-01", Noticed(Accepted("2026-05-28")).LaborCeased("2026-04-01").OwnerRecorded("2026-06-01", kind)
            .On("2026-06-15").Get("stop-payment-notice.last-day").Plan());

    [Fact]
    [Proves("Civ. Code § 9356(a)")]
    public void A_notice_of_completion_recorded_more_than_fifteen_days_after_acceptance_leaves_both_readings()
    {
        var last = Noticed(Accepted("2026-05-01").OwnerRecorded("2026-06-01")).On("2026-06-08").Get("stop-payment-notice.last-day");
        Assert.Equal(["2026-07-01", "2026-07-30"], last.DaysOf());
    }

    [Fact]
    [Proves("Civ. Code § 9356(a)")]
    [Proves("Civ. Code § 9560(b)")]
    public void A_recorded_notice_is_planned_on_even_where_no_acceptance_is_entered()
    {
        var assessment = new JobBuilder().PublicWork().Furnished("2025-12-01", 1000m).OwnerRecorded("2026-06-01").On("2026-06-08");
        Assert.Equal("2026-07-01", assessment.Get("stop-payment-notice.last-day").Plan());
        Assert.Equal("2026-06-16", assessment.Get("payment-bond.notice-last-day").Plan());
    }

    [Fact]
    [Proves("Civ. Code § 9560(b)")]
    public void Fifteen_days_from_a_notice_of_cessation_are_safe_but_75_from_completion_are_not_yet_lost()
    {
        var job = Accepted("2026-05-28").LaborCeased("2026-04-01").OwnerRecorded("2026-06-01", OwnerNotice.Cessation);
        var notice = job.On("2026-06-08").Get("payment-bond.notice-last-day");
        Assert.Equal("2026-06-12", notice.Plan()); // a notice of completion may have been recorded unseen on the day of acceptance
        Assert.Contains("2026-06-16", notice.DaysOf());
        Assert.Equal("2026-08-11", notice.DaysOf()[^1]);
        Assert.Equal(Standing.InDoubt, job.On("2026-06-17").Get("payment-bond.notice-last-day").Standing);
    }

    [Theory]
    [InlineData("2026-06-25", Standing.NotYet)]
    [InlineData("2026-06-26", Standing.Open)]
    [Proves("Civ. Code § 9502(a)")]
    public void The_action_waits_for_the_eleventh_day_after_giving(string asOf, Standing expected)
    {
        var first = Noticed(Accepted("2026-05-28")).StopPaymentGiven("2026-06-15", 1000m, false, "city").On(asOf)
            .Get("stop-payment-notice.action-first-day");
        Assert.Equal(["2026-06-26"], first.DaysOf());
        Assert.Equal(expected, first.Standing);
        Assert.Equal(["Civ. Code § 9502(a)"], first.Sections);
    }

    [Theory]
    [InlineData("2026-07-06", Standing.Open)]
    [InlineData("2026-07-07", Standing.InDoubt)]
    [Proves("Civ. Code § 9504")]
    public void The_entity_is_told_of_the_action_within_five_days(string asOf, Standing expected)
    {
        var tell = Noticed(Accepted("2026-05-28")).StopPaymentGiven("2026-06-15", 1000m, false, "city").ActionFiled("2026-07-01").On(asOf)
            .Get("stop-payment-notice.tell-of-action");
        Assert.Equal(["2026-07-06"], tell.DaysOf());
        Assert.Equal(expected, tell.Standing);
        Assert.Equal(["Civ. Code § 9504"], tell.Sections);
    }

    [Theory]
    [InlineData("2026-11-09", Standing.Kept)]
    [InlineData("2026-11-11", Standing.InDoubt)]
    [InlineData("2026-11-12", Standing.InDoubt)]
    [InlineData("2026-11-13", Standing.Lost)]
    [Proves("Civ. Code § 9558")]
    public void The_action_on_the_bond_is_in_time_on_the_182nd_day_and_argued_to_the_roll(string filed, Standing expected) =>
        Assert.Equal(expected, Noticed(Accepted("2026-02-10")).ActionFiled(filed).On("2026-12-31")
            .Get("payment-bond.action-last-day").Standing);

    [Fact]
    [Proves("Civ. Code § 9558")]
    public void Before_anything_was_furnished_the_time_on_the_bond_does_not_run() =>
        Assert.Equal(Standing.NotYet, new JobBuilder().PublicWork().PaymentBond(null).On("2026-03-02")
            .Get("payment-bond.action-last-day").Standing);

    [Fact]
    [Proves("Civ. Code § 9100(b)")]
    public void A_direct_contractor_has_neither_remedy()
    {
        var assessment = Accepted("2026-02-10").Role(ClaimantRole.DirectContractor, "city").On("2026-03-02");
        Assert.Equal(Standing.Lost, assessment.Get("stop-payment-notice.last-day").Standing);
        Assert.Contains("Civ. Code § 9100(b)", assessment.Get("stop-payment-notice.last-day").Sections);
        Assert.Null(assessment.Find("payment-bond.action-last-day"));
        Assert.Equal(Standing.Open, Noticed(Accepted("2026-02-10", ClaimantRole.Subcontractor)).On("2026-03-02")
            .Get("stop-payment-notice.last-day").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 9352(c)")]
    [Proves("Civ. Code § 9364")]
    public void The_amount_is_what_is_due_for_work_through_the_day_and_a_bond_of_125_percent_frees_it()
    {
        var job = new JobBuilder().PublicWork().Notice("2026-03-02", Manner.CertifiedMail, "city", "direct")
            .Furnished("2026-03-02", 79831.18m).Furnished("2026-04-06", 500m);
        var amount = job.On("2026-04-05").Get("stop-payment-notice.amount");
        Assert.Equal(79831.18m, amount.Amount);
        Assert.True(amount.Says("$99,788.98"));
        Assert.Equal(80331.18m, job.On("2026-04-06").Get("stop-payment-notice.amount").Amount);
    }

    [Theory]
    [InlineData("sub", true, Standing.Kept)]
    [InlineData("sub", false, Standing.Open)]
    [InlineData("direct", false, Standing.Kept)]
    [Proves("Civ. Code § 9560(a)")]
    [Proves("Civ. Code § 9560(d)")]
    public void A_preliminary_notice_that_was_given_or_not_due_stands_in_for_the_bond_notice(string hiredBy, bool given, Standing expected)
    {
        var job = Accepted("2026-02-10").Role(ClaimantRole.Supplier, hiredBy);
        var notice = (given ? Noticed(job) : job).On("2026-03-02").Get("payment-bond.notice-last-day");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(expected == Standing.Kept, notice.Sections.Contains("Civ. Code § 9560(a)"));
        Assert.Equal(expected == Standing.Open, notice.Sections.Contains("Civ. Code § 9560(d)"));
    }

    // American Buildings v. Bay Commercial Construction (2002) 99 Cal.App.4th 1193: the bond notice has no look-back.
    [Fact]
    [Proves("Civ. Code § 9560(b)")]
    public void A_preliminary_notice_too_late_for_any_work_leaves_the_bond_notice_open()
    {
        var assessment = Accepted("2026-02-10").Notice("2026-02-20", Manner.CertifiedMail, "city", "direct").On("2026-03-02");
        Assert.Equal(Standing.Lost, assessment.Get("stop-payment-notice.last-day").Standing);
        Assert.Equal(Standing.Open, assessment.Get("payment-bond.notice-last-day").Standing);
    }
}
