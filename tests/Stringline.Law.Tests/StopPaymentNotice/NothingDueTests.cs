using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// The amount claimed in a stop payment notice may include only the amount due for work provided through its date (Civ. Code §§ 8502(c),
/// 9352(c)): where all of it was paid, there is none to give.
/// </summary>
public sealed class NothingDueTests
{
    private static readonly string[] ToGive = ["stop-payment-notice.last-day", "stop-payment-notice.owner", "stop-payment-notice.lender"];

    private static JobBuilder Job() =>
        new JobBuilder().Lender().Notice("2026-03-02", to: ["owner", "direct", "bank"]).Furnished("2026-03-02", 1000m);

    [Fact]
    [Proves("Civ. Code § 8502(c)")]
    public void Paid_in_full_there_is_none_to_give()
    {
        foreach (var id in ToGive)
        {
            Assert.Equal(Standing.Open, Job().Paid("2026-03-20", 999.99m).On("2026-04-01").Get(id).Standing);
            var done = Job().Paid("2026-03-20", 1000m).On("2026-04-01").Get(id);
            Assert.Equal((Standing.Done, "Civ. Code § 8502(c)"), (done.Standing, done.Why[0].Section));
        }
    }

    [Fact]
    [Proves("Civ. Code § 8502(c)")]
    public void The_next_delivery_opens_it_again() =>
        Assert.Equal(Standing.Open, Job().Paid("2026-03-20", 1000m).Furnished("2026-03-27", 1m).On("2026-04-01").Get(ToGive[0]).Standing);

    [Fact]
    public void What_was_given_stays_kept_and_what_is_lost_stays_lost()
    {
        Assert.Equal(Standing.Kept,
            Job().StopPaymentGiven("2026-03-10", 1000m).Paid("2026-03-20", 1000m).On("2026-04-01").Get(ToGive[0]).Standing);
        Assert.Equal(Standing.Lost,
            new JobBuilder().Furnished("2026-03-02", 1000m).Ended("2026-03-02").Completed("2026-03-09").Paid("2026-03-20",
            1000m).On("2027-01-04").Get(ToGive[0]).Standing);
    }

    [Fact]
    [Proves("Civ. Code § 9352(c)")]
    public void On_public_work_the_same()
    {
        var job = new JobBuilder().PublicWork().Notice("2026-03-02", to: ["city", "direct"]).Furnished("2026-03-02", 1000m);
        Assert.Equal(Standing.Open, job.On("2026-04-01").Get(ToGive[0]).Standing);
        var done = job.Paid("2026-03-20", 1000m).On("2026-04-01").Get(ToGive[0]);
        Assert.Equal((Standing.Done, "Civ. Code § 9352(c)"), (done.Standing, done.Why[0].Section));
    }
}
