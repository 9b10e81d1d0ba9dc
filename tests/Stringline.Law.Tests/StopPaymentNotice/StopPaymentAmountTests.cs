using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>What a stop payment notice holds, measured by the demand of its own day.</summary>
public sealed class StopPaymentAmountTests
{
    private static Finding Amount(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("stop-payment-notice.amount");

    [Theory]
    [InlineData(6430, false)]
    [InlineData(6431, true)]
    [InlineData(9100, true)]
    [Proves("Civ. Code § 9454")]
    [Proves("Civ. Code § 9352(c)")]
    public void On_public_work_claiming_more_than_is_due_is_an_alarm(int claimed, bool alarm)
    {
        var amount = Amount(UsualPublic().StopPaymentGiven("2025-11-03", claimed, false, "city"));
        Assert.Equal(alarm, amount.Says("the share of the money withheld is forfeited"));
        Assert.Equal(alarm, amount.Sections.Contains("Civ. Code § 9454"));
        Assert.Equal(6430m, amount.Amount);
        Assert.Equal(claimed == 9100, amount.Says("$2,670.00 more than the $6,430.00"));
    }

    // 6,430.00 when the notice was given on 2 September; 1,870.00 came after it.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    [Proves("Civ. Code § 8502(c)")]
    [Proves("Civ. Code § 9352(c)")]
    public void Work_after_the_notice_is_not_held_until_a_further_notice(bool isPublic)
    {
        JobBuilder Job() => isPublic
            ? Public().Furnished("2025-08-05", 6430m).NoticedPublic().StopPaymentGiven("2025-09-02", 6430m, false, "city")
            .Furnished("2025-10-01", 1870m).Accepted()
            : Private().Furnished("2025-08-05", 6430m).Notice("2025-08-14").StopPaymentGiven("2025-09-02", 6430m)
            .Furnished("2025-10-01", 1870m).Completed("2025-10-22");
        var to = isPublic ? "city" : "owner";
        var amount = Amount(Job());
        Assert.Equal(6430m, amount.Amount);
        Assert.Equal(Standing.Kept, amount.Standing);
        Assert.True(amount.Says("$1,870.00 is not held by it"));
        Assert.True(amount.Says("Give a further notice by 2026-01-20 (Tue)"));
        var further = Amount(Job().StopPaymentGiven("2025-11-03", 1870m, false, to));
        Assert.Equal(8300m, further.Amount);
        Assert.False(further.Says("is not held by it"));
        Assert.False(further.Says("forfeited"));
        Assert.Equal(6930m, Amount(Job().StopPaymentGiven("2025-11-03", 500m, false, to)).Amount);
        // After the time to give it there is no day to name.
        Assert.True(Amount(Job(), "2026-02-02").Says("at once, if the time still runs"));
    }

    [Theory]
    [InlineData(6430, false)]
    [InlineData(9300, true)]
    [Proves("Civ. Code § 8504")]
    [Proves("Civ. Code § 8502(c)")]
    public void More_than_was_due_on_its_own_day_is_an_alarm_though_later_work_would_cover_it(int claimed, bool alarm)
    {
        var amount = Amount(Private().Furnished("2025-08-05", 6430m).Notice("2025-08-14").StopPaymentGiven("2025-09-02", claimed)
            .Furnished("2025-10-01", 2870m).Completed("2025-10-22"));
        Assert.Equal(alarm, amount.Says("the fund and the lien are forfeited"));
        Assert.Equal(6430m, amount.Amount);
    }

    [Fact]
    [Proves("Civ. Code § 8502(c)")]
    public void What_was_paid_before_the_notice_was_not_due_on_its_day_and_what_is_paid_after_it_is_held_no_more()
    {
        JobBuilder Job() => UsualPrivate().Paid("2025-09-10", 2000m);
        Assert.True(Amount(Job().StopPaymentGiven("2025-11-03", 6430m)).Says("$2,000.00 more than the $4,430.00"));
        Assert.Equal(4430m, Amount(Job().StopPaymentGiven("2025-11-03", 4430m)).Amount);
        var later = Amount(UsualPrivate().StopPaymentGiven("2025-11-03", 6430m).Paid("2025-11-20", 2000m));
        Assert.Equal(4430m, later.Amount);
        Assert.False(later.Says("forfeited"));
    }

    [Fact]
    [Proves("Civ. Code § 8502(c)")]
    public void A_payment_for_later_work_takes_nothing_from_what_is_held()
    {
        JobBuilder Job(string? toward) => Private().Furnished("2025-08-05", 6430m, "A").Notice("2025-08-14")
            .StopPaymentGiven("2025-09-02", 6430m).Furnished("2025-10-01", 1870m, "B").Completed("2025-10-22")
            .Paid("2025-11-05", 1870m, toward);
        Assert.Equal(6430m, Amount(Job("B")).Amount);
        Assert.Equal(4560m, Amount(Job(null)).Amount);
    }

    [Fact]
    [Proves("Civ. Code § 8502(c)")]
    public void Work_that_was_learned_later_was_due_on_the_day_all_the_same()
    {
        var job = Private().Furnished("2025-08-05", 6430m).Which(e => e with { Learned = JobBuilder.Day("2025-10-15") })
            .Notice("2025-08-14").StopPaymentGiven("2025-09-02", 6430m).Completed("2025-10-22");
        Assert.False(Amount(job).Says("forfeited"));
        Assert.Equal(6430m, Amount(job).Amount);
    }

    [Fact]
    [Proves("Civ. Code § 8502(c)")]
    public void A_span_that_was_going_on_is_not_held_and_is_asked_to_be_split()
    {
        var amount = Amount(Private().Furnished("2025-08-05", 6000m).Furnished("2025-08-25", 3000m, until: "2025-09-20")
            .Notice("2025-08-14").StopPaymentGiven("2025-09-02", 8000m).Completed("2025-10-22"));
        Assert.Equal(6000m, amount.Amount);
        Assert.True(amount.Asks("Split the entry at that day"));
        Assert.False(amount.Says("forfeited"));
    }

    [Fact]
    [Proves("Civ. Code § 8502(c)")]
    public void A_notice_whose_sum_is_not_entered_is_asked_for()
    {
        var amount = Amount(UsualPrivate().StopPaymentGiven("2025-11-03"));
        Assert.Equal(6430m, amount.Amount);
        Assert.True(amount.Asks("(stop-payment-given.amount)"));
        Assert.True(amount.Says("$6,430.00 at most"));
    }

    [Fact]
    [Proves("Civ. Code § 8128")]
    public void A_reduction_lowers_what_is_held_and_the_rest_is_named()
    {
        JobBuilder Job(string? of) => UsualPrivate().StopPaymentGiven("2025-11-03", 6430m).Which(e => e with { Id = "first" })
            .Add(i => new StopPaymentReleased { Index = i, On = JobBuilder.When("2025-11-10"), Amount = 4000m, Of = of });
        Assert.Equal(2430m, Amount(Job(null)).Amount);
        Assert.Equal(2430m, Amount(Job("first")).Amount);
        Assert.True(Amount(Job("first")).Says("reduced by $4,000.00"));
        Assert.True(Amount(Job("first")).Says("$4,000.00 is not held by it"));
        Assert.Equal(6430m, Amount(Job("other")).Amount);
    }

    [Fact]
    [Proves("Civ. Code § 8542")]
    public void From_a_lender_a_contractor_has_what_is_left_after_those_under_it()
    {
        JobBuilder Job(bool notice) => DirectContractor().Lender().Price(51_000m).Furnished("2025-08-05", 51_000m)
            .Notice("2025-08-14", Manner.CertifiedMail, "bank").Completed("2025-10-22")
            .Add(i => new LowerTierClaim { Index = i, On = JobBuilder.When("2025-10-01"), Amount = 12_000m, StopPaymentNotice = notice });
        var net = Amount(Job(true));
        Assert.Equal(39_000m, net.Amount);
        Assert.Contains("Civ. Code § 8542", net.Sections);
        Assert.Equal(39_000m, Amount(Job(true).StopPaymentGiven("2025-11-03", 51_000m, true, "bank")).Amount);
        var asked = Amount(Job(false));
        Assert.Equal(51_000m, asked.Amount);
        Assert.True(asked.Asks("(lower-tier-claim.stopPaymentNotice)"));
        // What the owner holds is not cut by it.
        Assert.Equal(6430m,
            Amount(UsualPrivate().Role(ClaimantRole.Subcontractor, "direct")
                .Add(i => new LowerTierClaim { Index =
                    i, On = JobBuilder.When("2025-10-01"), Amount = 1000m, StopPaymentNotice = true })).Amount);
    }

    // Owner and contractor were told in time, the lender on 8 October: toward it the reach starts on 18 September.
    [Fact]
    [Proves("Civ. Code § 8502(c)")]
    [Proves("Civ. Code § 8508(a)")]
    public void Toward_a_lender_told_late_only_what_the_notice_to_it_reaches_can_be_held()
    {
        JobBuilder Job() => Private().Lender().Furnished("2025-08-05", 4300m).Notice("2025-08-14").Furnished("2025-09-22", 2130m)
            .Notice("2025-10-08", Manner.CertifiedMail, "bank").Completed("2025-10-22");
        var lender = Job().On("2025-12-01").Get("stop-payment-notice.lender");
        Assert.Equal(2130m, lender.Amount);
        Assert.True(lender.Says("reaches back to 2025-09-18 (Thu) only: $2,130.00 of the claim lies within it"));
        Assert.Equal(6430m, Amount(Job()).Amount);
        Assert.Equal(2130m, Amount(Job().StopPaymentGiven("2025-11-03", 6430m, true, "bank")).Amount);
        Assert.Equal(6430m, Amount(Job().StopPaymentGiven("2025-11-03", 6430m, true, "bank").StopPaymentGiven("2025-11-03", 6430m)).Amount);
        // Work through 9 September alone lies outside it altogether.
        var none = Private().Lender().Furnished("2025-08-05", 4300m).Ended("2025-09-09").Notice("2025-08-14")
            .Notice("2025-10-08", Manner.CertifiedMail, "bank").Completed("2025-10-22").On("2025-12-01").Get("stop-payment-notice.lender");
        Assert.Equal(Standing.Lost, none.Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8508(a)")]
    public void A_doubtful_preliminary_notice_to_a_lender_leaves_the_stop_payment_notice_to_it_in_doubt() =>
        Assert.Equal(Standing.InDoubt, Private().Lender().Furnished("2025-08-05", 6430m).Notice("2025-08-14")
            .Notice("2025-08-14", Manner.CertifiedMail, "bank")
            .Which(e => (NoticeGiven)e with { Lacks = "the statement of section 8202(a)" }).Completed("2025-10-22").On("2025-12-01")
            .Get("stop-payment-notice.lender").Standing);

    [Fact]
    [Proves("Civ. Code § 8510")]
    [Proves("Civ. Code § 9364")]
    public void A_bond_that_frees_the_money_takes_its_place_if_it_is_large_enough()
    {
        JobBuilder Freed(JobBuilder job, decimal? bond) =>
            job.Add(i => new StopPaymentBondGiven { Index = i, On = JobBuilder.When("2025-11-20"), Amount = bond });
        Assert.True(Amount(Freed(UsualPrivate().StopPaymentGiven("2025-11-03", 6430m), 8037.50m))
            .Says("the claim lives on against the bond"));
        Assert.True(Amount(Freed(UsualPrivate().StopPaymentGiven("2025-11-03", 6430m), 8037.49m)).Says("the money should still be held"));
        var city = Amount(Freed(UsualPublic().StopPaymentGiven("2025-11-03", 6430m, false, "city"), null));
        Assert.True(city.Says("the claim lives on against the bond"));
        Assert.True(city.Asks("(stop-payment-bond-given.amount)"));
        Assert.True(Amount(UsualPublic())
            .Says("The entity may let the direct contractor free the money by a bond of 125 percent of the claim: $8,037.50"));
    }

    [Fact]
    [Proves("Civ. Code § 9450")]
    [Proves("Civ. Code § 9452")]
    public void On_public_work_it_is_shared_and_the_rest_is_on_the_bond() =>
        Assert.Contains("Civ. Code § 9450", Amount(UsualPublic()).Sections);

    // Nothing was given by 20 January: amount and action go with the right.
    [Theory]
    [InlineData("2026-01-20", Standing.Open, 6430)]
    [InlineData("2026-01-21", Standing.Lost, 0)]
    [InlineData("2026-03-16", Standing.Lost, 0)]
    [Proves("Civ. Code § 9502(d)")]
    [Proves("Civ. Code § 8550(d)")]
    public void Where_none_was_given_in_time_nothing_is_held_and_nothing_to_sue_on(string asOf, Standing expected, int sum)
    {
        foreach (var job in (JobBuilder[])[UsualPublic(), UsualPrivate()])
        {
            var assessment = job.On(asOf);
            Assert.Equal(expected, assessment.Get("stop-payment-notice.last-day").Standing);
            Assert.Equal(expected, assessment.Get("stop-payment-notice.amount").Standing);
            Assert.Equal(sum, assessment.Get("stop-payment-notice.amount").Amount);
            Assert.Equal(expected == Standing.Lost
                ? Standing.Lost : Standing.NotYet, assessment.Get("stop-payment-notice.action-last-day").Standing);
            Assert.Equal(expected == Standing.Lost, assessment.Get("stop-payment-notice.amount").Says("it holds nothing"));
        }
    }

    [Fact]
    [Proves("Civ. Code § 8520(a)")]
    public void A_direct_contractor_without_a_lender_has_neither_amount_nor_action()
    {
        var assessment = DirectContractor().Price(6430m).Furnished("2025-08-05", 6430m).Completed("2025-10-22").On("2025-12-01");
        foreach (var id in (string[])["last-day", "owner", "amount", "action-last-day"])
            Assert.Equal(Standing.Lost, assessment.Get("stop-payment-notice." + id).Standing);
        Assert.Equal(0m, assessment.Get("stop-payment-notice.amount").Amount);
    }
}
