using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Waiver;

/// <summary>Waivers and releases (Civ. Code §§ 8120-8138) hold on public work as on any other.</summary>
public sealed class WaiversOnPublicWorkTests
{
    [Fact]
    [Proves("Civ. Code § 8134")]
    public void A_waiver_is_told_with_its_alarms_on_public_work_too()
    {
        var job = new JobBuilder().PublicWork().Furnished("2025-08-05", 6430m).Notice("2025-08-14", Manner.CertifiedMail, "city", "direct")
            .Waived("2025-09-02", WaiverForm.UnconditionalProgress, through: "2025-08-31");
        var waiver = job.On("2025-10-01").Get("waiver.1");
        Assert.Equal((Standing.Done, (decimal?)6430m), (waiver.Standing, waiver.Amount));
        Assert.True(waiver.Says("Alarm"));
    }

    [Fact]
    public void An_estimate_far_below_the_claim_is_asked_about_on_public_work_too()
    {
        var job = new JobBuilder().PublicWork().Furnished("2025-08-05", 26430m)
            .Add(i => new NoticeGiven { Index = i, On = JobBuilder.When("2025-08-14"), Notice = NoticeKind.Preliminary,
                To = ["city", "direct"], Manner = Manner.CertifiedMail, Estimate = 1000m });
        Assert.True(job.On("2025-10-01").Get("preliminary-notice.estimate").Asks("(notice-given.estimateBasis)"));
    }
}
