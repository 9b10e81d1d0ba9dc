using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>
/// A claim is measured by what was due on its own day, 20 November 2025 (Civ. Code §§ 8416(a)(1), 8422): a direct contractor is owed
/// 12,000.00 of 51,000.00. With it what the debt and a lower tier's lien ask for beside.
/// </summary>
public sealed class OverstatedDaysTests
{
    private static JobBuilder Job(decimal claimed, string recorded = "2025-11-20") =>
        new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").NoParty("direct").Price(51_000m).Licensed("2012-06-01..")
        .Furnished("2025-08-05", 51_000m, until: "2025-10-10").Ended("2025-10-10").Paid("2025-10-20", 39_000m).Completed("2025-10-22")
        .ClaimRecorded(recorded, claimed);

    private static decimal? Excess(JobBuilder job) => job.On("2026-01-15").Find("claim-of-lien.overstated")?.Amount;

    // What came on the day of recording or before it lessens what was due then; what came later, or may have, does not.
    [Theory]
    [InlineData("2025-11-20", "2025-11-19", 500)]
    [InlineData("2025-11-20", "2025-11-20", 500)]
    [InlineData("2025-11-20", "2025-11-18..2025-11-20", 500)]
    [InlineData("2025-11-20", "2025-11-20..2025-11-21", null)]
    [InlineData("2025-11-20", "2025-11-21", null)]
    [InlineData("2025-11-20..2025-11-22", "2025-11-20", 500)]
    [InlineData("2025-11-20..2025-11-22", "2025-11-21", null)]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void Payments_and_credits_count_by_the_day_of_recording(string recorded, string on, int? excess)
    {
        Assert.Equal((decimal?)excess, Excess(Job(12_000m, recorded).Paid(on, 500m)));
        Assert.Equal((decimal?)excess, Excess(Job(12_000m, recorded).Credited(on, 500m)));
        Assert.Equal(35_500m + (excess ?? 0), Excess(Job(47_500m, recorded).Credited(on, 500m)));
    }

    // A release that binds of before the claim left nothing due; one of after it, or one that does not bind, leaves it as it was.
    [Theory]
    [InlineData("2025-11-17", WaiverForm.UnconditionalFinal, 47_500)]
    [InlineData("2025-12-01", WaiverForm.UnconditionalFinal, 35_500)]
    [InlineData("2025-12-01", WaiverForm.ConditionalFinal, 35_500)]
    [Proves("Civ. Code § 8422(a)")]
    public void A_waiver_counts_by_the_day_of_recording_and_if_it_binds(string on, WaiverForm form, int excess) =>
        Assert.Equal(excess, Excess(Job(47_500m).Waived(on, form)));

    // Work from 2 to 20 March and a notice of the 30th, which reaches back to the 10th: all of the 1,000.00 may be due, and none of it
    // surely is.
    [Theory]
    [InlineData(1_000, null)]
    [InlineData(1_001, 1)]
    [Proves("Civ. Code § 8422(a)")]
    public void What_may_be_due_on_some_reading_does_not_make_a_claim_too_high(int claimed, int? excess)
    {
        var on = new JobBuilder().Furnished("2026-03-02", 1000m, until: "2026-03-20").Notice("2026-03-30").Completed("2026-05-04")
            .ClaimRecorded("2026-06-01", claimed).On("2026-06-22");
        Assert.Equal((decimal?)excess, on.Find("claim-of-lien.overstated")?.Amount);
        if (excess is null)
            return;
        Assert.Equal(Standing.Open, on.Get("claim-of-lien.overstated").Standing);
        Assert.Equal([3], on.Get("claim-of-lien.overstated").HangsOn("Civ. Code § 8422(a)"));
    }

    // Work of a day between the 5th and the 7th of August: four years from the earliest and from the latest it may have been.
    [Theory]
    [InlineData("2025-08-05", new[] { "2029-08-05" })]
    [InlineData("2025-08-05..2025-08-07", new[] { "2029-08-05", "2029-08-07" })]
    [Proves("Code Civ. Proc. § 337")]
    public void The_debt_runs_from_the_first_and_from_the_last_day_of_work(string furnished, string[] expected)
    {
        var debt = new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..")
            .Contract(c => c with { Written = true }).Furnished(furnished, 6_430m).Ended("2025-10-10")
            .Notice("2025-08-14").Completed("2025-10-22").ClaimRecorded("2025-12-02", 6_430m).On("2026-03-10").Get("debt.last-day");
        Assert.Equal(expected, debt.DaysOf());
        Assert.Null(debt.Band!.Latest);
    }

    [Fact]
    [Proves("Civ. Code § 8470")]
    public void The_defense_of_a_lower_tiers_lien_is_open_and_each_lien_counts()
    {
        var defense = Job(12_000m).LowerTier("2025-11-10", 7_000m).LowerTier("2025-11-12", 500m).On("2026-01-15").Get("lower-tier.defense");
        Assert.Equal((Standing.Open, 7_500m), (defense.Standing, defense.Amount));
        Assert.Null(Job(12_000m).On("2026-01-15").Find("lower-tier.defense"));
    }
}
