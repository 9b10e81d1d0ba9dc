using Stringline.Law.Reasoning;
using Stringline.Law.Tests.StopPaymentNotice;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.PaymentBond;

/// <summary>
/// What may be claimed on the bond. 17,320.00 through 9 September 2025 and 1,290.00 on the 16th; the preliminary notice of 30 September
/// reaches back to 10 September.
/// </summary>
public sealed class BondAmountTests
{
    private static JobBuilder Late(bool isPublic = true)
    {
        var job = (isPublic
            ? Public() : Private().PaymentBond("2025-07-01", "direct")).Furnished("2025-08-05", 17_320m, until: "2025-09-09")
            .Furnished("2025-09-16", 1290m).Ended("2025-09-16");
        return isPublic
            ? job.NoticedPublic("2025-09-30").Accepted() : job.Notice("2025-09-30").Completed("2025-10-22").IndexSearched("2025-11-10");
    }

    private static Finding Amount(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("payment-bond.amount");

    // American Buildings v. Bay Commercial Construction (2002) 99 Cal.App.4th 1193.
    [Theory]
    [InlineData(true, "Civ. Code § 9560(b)")]
    [InlineData(false, "Civ. Code § 8612(b)")]
    [Proves("Civ. Code § 9560(b)")]
    [Proves("Civ. Code § 8612(b)")]
    public void By_the_notice_to_surety_and_principal_all_unpaid_work_may_be_claimed(bool isPublic, string section)
    {
        var given = Amount(Late(isPublic).BondNoticeGiven("2025-11-03"));
        Assert.Equal(18_610m, given.Amount);
        Assert.Equal(Standing.Kept, given.Standing);
        Assert.Contains(section, given.Sections);
        Assert.True(given.Says("by preliminary notice alone it would be $1,290.00"));
        Assert.Equal(1290m, Late(isPublic).BondNoticeGiven("2025-11-03").On("2025-12-01").Get("stop-payment-notice.amount").Amount);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    [Proves("Civ. Code § 9560(b)")]
    [Proves("Civ. Code § 8612(b)")]
    public void Before_it_is_given_both_sums_and_the_day_are_said(bool isPublic)
    {
        var open = Amount(Late(isPublic));
        Assert.Equal(18_610m, open.Amount);
        Assert.Equal(Standing.Open, open.Standing);
        Assert.True(open.Says("$1,290.00 by preliminary notice; $18,610.00 if the notice is given to surety and principal by 2026-01-05 "
            + "(Mon)"));
        Assert.True(Late(isPublic).On("2025-12-01").Get("payment-bond.notice-last-day")
            .Says("This notice still saves the bond claim for all of it"));
    }

    // Day 75 is over: what the late preliminary notice reaches lives on.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    [Proves("Civ. Code § 9560(a)")]
    [Proves("Civ. Code § 8612(a)")]
    public void Without_it_a_late_preliminary_notice_leaves_what_it_reaches(bool isPublic)
    {
        var assessment = Late(isPublic).On("2026-02-15");
        Assert.Equal(Standing.Narrowed, assessment.Get("payment-bond.notice-last-day").Standing);
        Assert.Equal(Standing.Narrowed, assessment.Get("payment-bond.amount").Standing);
        Assert.Equal(1290m, assessment.Get("payment-bond.amount").Amount);
        Assert.True(assessment.Get("payment-bond.amount").Says("$17,320.00 with it"));
        Assert.Equal(Standing.Open, assessment.Get("payment-bond.action-last-day").Standing);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    [Proves("Civ. Code § 9560(a)")]
    [Proves("Civ. Code § 8612(a)")]
    public void With_neither_notice_in_time_amount_and_action_are_lost(bool isPublic)
    {
        var job = isPublic
            ? Public().Furnished("2025-08-05", 6430m).Ended("2025-08-05").Accepted() : Private().PaymentBond("2025-07-01")
            .Furnished("2025-08-05", 6430m).Ended("2025-08-05").Completed("2025-10-22").IndexSearched("2025-11-10");
        Assert.Equal(Standing.Open, job.On("2026-01-05").Get("payment-bond.notice-last-day").Standing);
        var assessment = job.On("2026-03-01");
        Assert.Equal(Standing.Lost, assessment.Get("payment-bond.notice-last-day").Standing);
        Assert.Equal(Standing.Lost, assessment.Get("payment-bond.action-last-day").Standing);
        Assert.Equal(Standing.Lost, assessment.Get("payment-bond.amount").Standing);
        Assert.Equal(0m, assessment.Get("payment-bond.amount").Amount);
        Assert.True(assessment.Get("payment-bond.amount").Says("the claim would have been $6,430.00"));
    }

    [Fact]
    [Proves("Civ. Code § 9560(a)")]
    public void By_a_timely_preliminary_notice_it_is_the_whole()
    {
        var amount = Amount(UsualPublic());
        Assert.Equal(6430m, amount.Amount);
        Assert.Equal(Standing.Kept, amount.Standing);
        Assert.Contains("Civ. Code § 9560(a)", amount.Sections);
        Assert.Equal(4430m, Amount(UsualPublic().Paid("2025-11-10", 2000m)).Amount);
        Assert.Equal(Standing.NotYet, Amount(UsualPublic().Paid("2025-11-10", 6430m)).Standing);
        Assert.Equal(Standing.Lost, Amount(UsualPublic(), "2026-08-03").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 9562")]
    public void A_sum_other_than_the_files_and_the_sum_of_the_bond_are_said()
    {
        var amount = Amount(Late().Work(w => w with { PaymentBond = w.PaymentBond! with { Amount = 15_000m } })
            .BondNoticeGiven("2025-11-03").BondPaper(p => p with { Amount = 1290m }));
        Assert.True(amount.Says("The notice states $1,290.00; the file supports $18,610.00"));
        Assert.True(amount.Says("The bond is for $15,000.00 in all"));
        Assert.False(Amount(Late().BondNoticeGiven("2025-11-03").BondPaper(p => p with { Amount = 18_610m })).Says("The notice states"));
    }
}
