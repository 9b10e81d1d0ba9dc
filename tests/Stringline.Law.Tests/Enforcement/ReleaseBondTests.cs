using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>The bond that frees the land. Six months from Monday 1 June 2026: 1 December, or 182 days, Monday 30 November.</summary>
public sealed class ReleaseBondTests
{
    private static JobBuilder Job(decimal? claim = 79831.18m) => new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1000m)
        .Ended("2026-03-02").Completed("2026-03-30").ClaimRecorded("2026-04-06", claim);

    // The first two: RGC Gaslamp v. Ehmcke Sheet Metal (2020) 56 Cal.App.5th 413; T.O. IX v. Superior Court (2008) 165 Cal.App.4th 140
    // (99,788.975 up to the next cent). 150 percent, which would be 119,746.77, is the law before 2012.
    [Theory]
    [InlineData(257978.00, 322472.50)]
    [InlineData(79831.18, 99788.98)]
    [InlineData(0.01, 0.02)]
    [InlineData(0.04, 0.05)]
    [Proves("Civ. Code § 8424(b)")]
    public void It_is_125_percent_of_the_claim_up_to_the_next_cent(decimal claim, decimal bond) =>
        Assert.Equal(bond, ReleaseBond.AmountFor(claim, NumberTable.Shipped.On(Number.ReleaseBond, new LocalDate(2026, 7, 1))));

    [Fact]
    [Proves("Civ. Code § 8424(b)")]
    public void It_is_counted_on_what_the_claim_states_or_else_on_the_demand()
    {
        Assert.Equal(99788.98m, Job().On("2026-06-01").Get("release-bond.amount").Amount);
        Assert.Equal(1250m, Job(null).On("2026-06-01").Get("release-bond.amount").Amount);
        Assert.Null(new JobBuilder().Furnished("2026-03-02", 1000m).On("2026-06-01").Find("release-bond.amount"));
    }

    // It answers for a judgment on the lien: a claim recorded before its preliminary notice, or served by hand, may get none, and one that
    // came too late gets none (completed on 30 March: the last day is 28 June).
    [Theory]
    [InlineData("2026-04-06", null, Standing.Open)]
    [InlineData("2026-03-16", null, Standing.InDoubt)]
    [InlineData("2026-04-06", Manner.Personal, Standing.InDoubt)]
    [InlineData("2026-06-30", null, Standing.Lost)]
    [Proves("Civ. Code § 8424(b)")]
    public void The_action_on_it_is_worth_no_more_than_the_claim(string recorded, Manner? served, Standing expected)
    {
        var job = new JobBuilder().Notice("2026-03-20").Furnished("2026-03-02", 1000m).Ended("2026-03-02").Completed("2026-03-30")
            .ClaimRecorded(recorded, 1000m).ReleaseBond("2026-07-01", 1250m);
        Assert.Equal(expected, (served is { } manner ? job.ClaimServed("2026-04-03", manner) : job).On("2026-07-02")
            .Get("release-bond.action-last-day").Standing);
    }

    [Theory]
    [InlineData(99788.98, false)]
    [InlineData(99788.97, true)]
    [Proves("Civ. Code § 8424(b)")]
    public void A_bond_that_is_a_cent_short_leaves_it_in_doubt_whether_the_land_is_free(decimal amount, bool shorter)
    {
        var bond = Job().ReleaseBond("2026-06-01", amount).On("2026-06-08").Get("release-bond.amount");
        Assert.Equal(shorter ? Standing.InDoubt : Standing.Done, bond.Standing);
        Assert.Equal(shorter, bond.Says("is less than 125 percent"));
        Assert.Empty(bond.Questions);
    }

    [Fact]
    [Proves("Civ. Code § 8424(b)")]
    public void A_bond_of_an_amount_nobody_knows_is_asked_for_and_of_several_the_largest_counts()
    {
        var bond = Job().ReleaseBond("2026-06-01").On("2026-06-08").Get("release-bond.amount");
        Assert.Equal(Standing.InDoubt, bond.Standing);
        Assert.True(bond.Asks("(release-bond-recorded.amount)"));
        Assert.Equal(Standing.Done, Job().ReleaseBond("2026-06-01", 99788.98m).ReleaseBond("2026-06-02", 10m).ReleaseBond("2026-06-03")
            .On("2026-06-08").Get("release-bond.amount").Standing);
        Assert.Equal(Standing.Done, Job().ReleaseBond("2026-06-01").ReleaseBond("2026-06-02", 99788.98m).On("2026-06-08")
            .Get("release-bond.amount").Standing);
    }

    // 125 percent of the share of 20,000.00 is 25,000.00.
    [Theory]
    [InlineData(25000.00, Standing.Done)]
    [InlineData(24999.99, Standing.InDoubt)]
    [Proves("Civ. Code § 8424(b)")]
    public void A_bond_for_one_of_several_allocated_parts_frees_that_part(decimal amount, Standing expected)
    {
        var bond = Job()
            .Work(w => w with { Structures = [new ResidentialStructure { Id = "h1", Text = "4 Quay St", Share = 20000m },
                new ResidentialStructure { Id = "h2", Share = 59831.18m }] })
            .ReleaseBond("2026-06-01", amount).On("2026-06-08").Get("release-bond.amount");
        Assert.Equal(expected, bond.Standing);
        Assert.Equal(expected == Standing.Done, bond.Says("the part allocated to 4 Quay St"));
    }

    private static JobBuilder Subcontractor() => new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..")
        .Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22");

    // Notice of the bond on 12 December 2025: six months and 182 days both end on Friday 12 June 2026.
    [Theory]
    [InlineData("2026-06-12", Standing.Open)]
    [InlineData("2026-06-13", Standing.Lost)]
    [Proves("Civ. Code § 8424(d)")]
    public void An_action_from_before_the_claim_is_none_on_its_bond(string asOf, Standing expected)
    {
        var job = Subcontractor().ActionFiled("2025-11-10").ClaimRecorded("2025-11-20", 6_430m)
            .ReleaseBond("2025-12-10", 8_037.50m, "2025-12-12");
        Assert.Equal(["2026-06-12"], job.On(asOf).Get("release-bond.action-last-day").DaysOf());
        Assert.Equal(expected, job.On(asOf).Get("release-bond.action-last-day").Standing);
    }

    [Theory]
    [InlineData(ActionOn.Lien, Standing.Kept)]
    [InlineData(ActionOn.ReleaseBond, Standing.Kept)]
    [InlineData(ActionOn.Debt, Standing.Open)]
    [InlineData(ActionOn.StopPaymentNotice, Standing.Open)]
    [Proves("Civ. Code § 8424(d)")]
    public void Only_an_action_on_the_claim_or_on_the_bond_is_one_on_the_bond(ActionOn enforces, Standing expected) =>
        Assert.Equal(expected, Subcontractor().ClaimRecorded("2025-11-20", 6_430m).ReleaseBond("2025-12-10", 8_037.50m, "2025-12-12")
            .ActionOn("2026-01-15", enforces).On("2026-06-01").Get("release-bond.action-last-day").Standing);

    // Bonded before suit: past the ninetieth day, 18 February 2026, the claim is in doubt while the bond can be sued on, and there is
    // nothing for the owner to petition for.
    [Theory]
    [InlineData("2026-02-18", Standing.Open)]
    [InlineData("2026-02-19", Standing.InDoubt)]
    [InlineData("2026-06-12", Standing.InDoubt)]
    [InlineData("2026-06-13", Standing.Lost)]
    [Proves("Civ. Code § 8424(d)")]
    [Proves("Civ. Code § 8424(c)")]
    public void A_lien_bonded_before_suit_is_not_lost_while_the_bond_can_be_sued_on(string asOf, Standing expected)
    {
        var on = Subcontractor().ClaimRecorded("2025-11-20", 6_430m).ReleaseBond("2025-12-10", 8_037.50m, "2025-12-12").On(asOf);
        Assert.Equal(expected, on.Get("enforcement.last-day").Standing);
        Assert.True(on.Get("enforcement.last-day").Says("it stands in the land's place"));
        Assert.Null(on.Find("release.petition-first-day"));
        Assert.Null(on.Find("credit.last-day"));
    }

    [Fact]
    [Proves("Civ. Code § 8424(c)")]
    public void A_bond_from_before_the_claim_freed_the_land_of_an_earlier_one() =>
        Assert.Equal(Standing.Lost, Subcontractor().ReleaseBond("2025-11-19", 8_037.50m).ClaimRecorded("2025-11-20", 6_430m)
            .On("2026-03-02").Get("enforcement.last-day").Standing);

    [Theory]
    [InlineData("2026-11-30", Standing.Open)]
    [InlineData("2026-12-01", Standing.InDoubt)]
    [InlineData("2027-12-01", Standing.InDoubt)]
    [Proves("Civ. Code § 8424(d)")]
    public void The_action_on_it_is_planned_from_the_recording_and_never_lost_while_the_day_of_notice_is_unknown(string asOf,
        Standing expected)
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
        Assert.Equal(expected, Job().ReleaseBond("2026-06-01").ActionFiled(filed).On("2027-01-04")
            .Get("release-bond.action-last-day").Standing);

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
