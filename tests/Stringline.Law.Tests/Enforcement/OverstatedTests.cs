using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>A direct contractor is owed 12,000.00 of 51,000.00 when it records.</summary>
public sealed class OverstatedTests
{
    private static JobBuilder Job(decimal? claimed) =>
        new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").NoParty("direct").Price(51_000m).Licensed("2012-06-01..")
        .Furnished("2025-08-05", 51_000m, until: "2025-10-10").Ended("2025-10-10").Paid("2025-10-20", 39_000m).Completed("2025-10-22")
        .ClaimRecorded("2025-11-20", claimed);

    [Theory]
    [InlineData(47_500, 35_500)]
    [InlineData(12_001, 1)]
    [InlineData(12_000, null)]
    [InlineData(11_000, null)]
    [InlineData(null, null)]
    [Proves("Civ. Code § 8422(a)")]
    [Proves("Civ. Code § 8422(b)")]
    [Proves("Civ. Code § 8422(c)")]
    public void A_claim_above_what_is_due_is_an_alarm_and_no_loss(int? claimed, int? excess)
    {
        var on = Job(claimed).On("2026-01-15");
        var found = on.Find("claim-of-lien.overstated");
        Assert.Equal((decimal?)excess, found?.Amount);
        Assert.Equal(Standing.Open, on.Get("lien-right").Standing);
        Assert.Null(on.Find("release.partial"));
        if (found is not null)
        {
            Assert.True(found.Says("B. J. Construction v. Spacious Homes"));
            Assert.True(found.Says("forfeits the lien"));
            Assert.True(found.Says("intent to defraud"));
            Assert.True(found.Says("do not release it"));
        }
    }

    // What was received since the recording makes the claim one to reduce, not one that was too high.
    [Theory]
    [InlineData("2025-11-19", 1_000, null)]
    [InlineData("2025-11-21", null, 1_000)]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void What_is_paid_after_the_recording_does_not_make_it_an_overstated_one(string paid, int? excess, int? partial)
    {
        var on = Job(12_000m).Paid(paid, 1_000m).On("2026-01-15");
        Assert.Equal((decimal?)excess, on.Find("claim-of-lien.overstated")?.Amount);
        Assert.Equal((decimal?)partial, on.Find("release.partial")?.Amount);
    }

    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void Credits_and_waivers_after_the_recording_do_the_same()
    {
        Assert.Null(Job(12_000m).Credited("2025-11-21", 500m).On("2026-01-15").Find("claim-of-lien.overstated"));
        Assert.Null(Job(12_000m).Waived("2025-12-01", WaiverForm.UnconditionalFinal).On("2026-01-15").Find("claim-of-lien.overstated"));
        Assert.Equal(35_500m, Job(47_500m).Paid("2025-12-01", 500m).On("2026-01-15").Get("claim-of-lien.overstated").Amount);
        Assert.Equal(500m, Job(47_500m).Paid("2025-12-01", 500m).On("2026-01-15").Get("release.partial").Amount);
    }

    [Fact]
    [Proves("Civ. Code § 8422(a)")]
    public void Where_nothing_is_priced_or_the_claim_is_released_nothing_is_compared()
    {
        Assert.Null(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02").Completed("2026-05-04").ClaimRecorded("2026-06-01", 1000m)
            .On("2026-06-22").Find("claim-of-lien.overstated"));
        Assert.Null(Job(47_500m).ReleaseRecorded("2025-12-01", true).On("2026-01-15").Find("claim-of-lien.overstated"));
    }
}
