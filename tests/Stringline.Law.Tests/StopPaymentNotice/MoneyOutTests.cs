using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// No notice reaches money that was paid out before it is received (Civ. Code § 9360(a)), and the retention is due out 60 days after
/// completion (Pub. Contract Code § 7107(c)).
/// </summary>
public sealed class MoneyOutTests
{
    private static JobBuilder Job() =>
        new JobBuilder().PublicWork().Role(ClaimantRole.Subcontractor, "direct").Price(60000m).Furnished("2025-08-05", 20000m);

    // Accepted 22 October 2025: the sixtieth day is Sunday 21 December; the payer has the Monday, so the notice is to be there by the
    // Friday.
    [Theory]
    [InlineData("2025-12-01", Standing.Open)]
    [InlineData("2025-12-19", Standing.Open)]
    [InlineData("2025-12-20", Standing.InDoubt)]
    [InlineData("2025-12-22", Standing.InDoubt)]
    [Proves("Civ. Code § 9360(a)")]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void The_day_on_which_the_retention_is_due_out_stands_beside_the_last_day(string asOf, Standing expected)
    {
        var job = Job().Completed("2025-10-22", CompletionTheory.Acceptance).IndexSearched("2025-11-10");
        var money = job.On(asOf).Get("stop-payment-notice.money-out");
        Assert.Equal(["2025-12-22"], money.DaysOf());
        Assert.Equal(("2025-12-19", expected), (money.Plan(), money.Standing));
        Assert.True(money.Says("Received counts here, and not mailed"));
        Assert.Equal("2026-01-20", job.On(asOf).Get("stop-payment-notice.last-day").Plan());
    }

    [Fact]
    [Proves("Civ. Code § 9360(a)")]
    public void Where_a_notice_was_recorded_the_money_may_go_out_when_the_time_to_give_ends()
    {
        var money = Job().Completed("2025-10-22", CompletionTheory.Acceptance).OwnerRecorded("2025-10-29", states: "2025-10-22")
            .On("2025-11-10").Get("stop-payment-notice.money-out");
        Assert.Equal(["2025-11-28", "2025-12-22"], money.DaysOf());
        Assert.Equal("2025-11-26", money.Plan()); // Thanksgiving between
    }

    [Fact]
    [Proves("Civ. Code § 9360(a)")]
    public void It_is_told_while_a_notice_may_still_be_given()
    {
        var job = Job().Completed("2025-10-22", CompletionTheory.Acceptance).IndexSearched("2025-11-10");
        Assert.Null(job.StopPaymentGiven("2025-11-12", 20000m, false, "city").On("2025-12-01").Find("stop-payment-notice.money-out"));
        Assert.Null(new JobBuilder().PublicWork().On("2025-12-01").Find("stop-payment-notice.money-out"));
        // Acceptance unknown: counted from the last work, 5 August.
        Assert.Equal(["2025-10-06"], Job().On("2025-09-01").Get("stop-payment-notice.money-out").DaysOf()); // 4 October is a Saturday
        Assert.Null(Job().On("2025-09-01").Get("stop-payment-notice.money-out").Band!.Latest);
    }
}
