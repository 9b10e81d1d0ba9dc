using Stringline.Law.Enforcement;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>The bond that frees the land. Six months from Monday 1 June 2026: 1 December, or 182 days, Monday 30 November.</summary>
public sealed class ReleaseBondTests
{
    private static JobBuilder Job(decimal? claim = 79831.18m) => new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1000m).Ended("2026-03-02").Completed("2026-03-30").ClaimRecorded("2026-04-06", claim);

    // The first two: RGC Gaslamp v. Ehmcke Sheet Metal (2020) 56 Cal.App.5th 413; T.O. IX v. Superior Court (2008) 165 Cal.App.4th 140
    // (99,788.975 up to the next cent). 150 percent, which would be 119,746.77, is the law before 2012.
    [Theory]
    [InlineData(257978.00, 322472.50)]
    [InlineData(79831.18, 99788.98)]
    [InlineData(0.01, 0.02)]
    [InlineData(0.04, 0.05)]
    [Proves("Civ. Code § 8424(b)")]
    public void It_is_125_percent_of_the_claim_up_to_the_next_cent(decimal claim, decimal bond) => Assert.Equal(bond, ReleaseBond.AmountFor(claim));

    [Fact]
    [Proves("Civ. Code § 8424(b)")]
    public void It_is_counted_on_what_the_claim_states_or_else_on_the_demand()
    {
        Assert.Equal(99788.98m, Job().On("2026-06-01").Get("release-bond.amount").Amount);
        Assert.Equal(1250m, Job(null).On("2026-06-01").Get("release-bond.amount").Amount);
        Assert.Null(new JobBuilder().Furnished("2026-03-02", 1000m).On("2026-06-01").Find("release-bond.amount"));
    }

    [Theory]
    [InlineData(99788.98, false)]
    [InlineData(99788.97, true)]
    [Proves("Civ. Code § 8424(b)")]
    public void A_bond_that_is_a_cent_short_is_said_to_be(decimal amount, bool shorter)
    {
        var bond = Job().ReleaseBond("2026-06-01", amount).On("2026-06-08").Get("release-bond.amount");
        Assert.Equal(Standing.Done, bond.Standing);
        Assert.Equal(shorter, bond.Says("is less than 125 percent"));
    }

    [Theory]
    [InlineData("2026-11-30", Standing.Open)]
    [InlineData("2026-12-01", Standing.InDoubt)]
    [InlineData("2027-12-01", Standing.InDoubt)]
    [Proves("Civ. Code § 8424(d)")]
    public void The_action_on_it_is_planned_from_the_recording_and_never_lost_while_the_day_of_notice_is_unknown(string asOf, Standing expected)
    {
        var last = Job().ReleaseBond("2026-06-01").On(asOf).Get("release-bond.action-last-day");
        Assert.Equal(["2026-11-30", "2026-12-01"], last.DaysOf());
        Assert.Equal("2026-11-30", last.Plan());
        Assert.Equal(expected, last.Standing);
        Assert.Null(last.Band!.Latest);
        Assert.True(last.Asks("notice of the release bond"));
    }

    [Theory]
    [InlineData("2026-11-30", Standing.Kept)]
    [InlineData("2026-12-01", Standing.InDoubt)]
    [Proves("Civ. Code § 8424(d)")]
    public void An_action_on_the_182nd_day_is_in_time_on_every_reading(string filed, Standing expected) =>
        Assert.Equal(expected, Job().ReleaseBond("2026-06-01").ActionFiled(filed).On("2027-01-04").Get("release-bond.action-last-day").Standing);

    // Notice on Monday 15 June: six calendar months end on Tuesday 15 December, 182 days on Monday 14 December.
    [Theory]
    [InlineData("2026-12-14", Standing.Open)]
    [InlineData("2026-12-15", Standing.InDoubt)]
    [InlineData("2026-12-16", Standing.Lost)]
    [Proves("Civ. Code § 8424(d)")]
    public void Once_the_day_of_notice_is_known_the_time_runs_from_it_and_can_be_lost(string asOf, Standing expected)
    {
        var last = Job().ReleaseBond("2026-06-01", noticeGiven: "2026-06-15").On(asOf).Get("release-bond.action-last-day");
        Assert.Equal(["2026-12-14", "2026-12-15"], last.DaysOf());
        Assert.Equal(expected, last.Standing);
        Assert.Empty(last.Questions);
    }

    // Civ. Code § 8424(a): the bond releases the property from the claim of lien; a claim that is released already holds nothing.
    [Theory]
    [InlineData(true, Standing.Done)]
    [InlineData(null, Standing.Done)]
    [Proves("Civ. Code § 8424(b)")]
    public void None_is_called_for_once_the_claim_is_released(bool? satisfied, Standing expected)
    {
        var bond = Job().ReleaseRecorded("2026-05-04", satisfied).On("2026-06-01").Get("release-bond.amount");
        Assert.Equal(expected, bond.Standing);
        Assert.True(bond.Says("has been released"));
        Assert.False(Job().On("2026-06-01").Get("release-bond.amount").Says("has been released"));
    }
}
