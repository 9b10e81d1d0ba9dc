using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>
/// The bond that frees the land, on days that are not plain (Civ. Code § 8424). Claim of 20 November 2025 for 6,430.00, whose 125 percent
/// are 8,037.50; day
/// 90 is 18 February 2026. Entries 0 to 4 are the furnishing, its end, the notice, completion and the claim.
/// </summary>
public sealed class ReleaseBondDaysTests
{
    private static JobBuilder Job(string recorded = "2025-11-20") =>
        new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..")
        .Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22")
        .ClaimRecorded(recorded, 6_430m, id: "first");

    private static Finding LastDay(JobBuilder job, string asOf) => job.On(asOf).Get("release-bond.action-last-day");

    [Fact]
    [Proves("Civ. Code § 8424(b)")]
    public void The_amount_is_told_while_no_bond_is_recorded_and_asked_while_it_is_not_known()
    {
        Assert.Equal((Standing.Open, 8_037.50m),
            (Job().On("2026-01-05").Get("release-bond.amount").Standing, Job().On("2026-01-05").Get("release-bond.amount").Amount));
        var unknown = Job().ReleaseBond("2025-12-10").On("2026-01-05").Get("release-bond.amount");
        Assert.Equal([5], unknown.Corrected("(release-bond-recorded.amount)"));
        Assert.Equal(8_037.50m, unknown.Questions.Single().Dollars);
        Assert.Empty(Job().ReleaseBond("2025-12-10").ReleaseRecorded("2025-12-15", true).On("2026-01-05")
            .Get("release-bond.amount").Questions);
        Assert.Equal(Standing.Done, Job().ReleaseBond("2025-12-10", 10m).ReleaseBond("2025-12-12", 8_037.50m).On("2026-01-05")
            .Get("release-bond.amount").Standing);
        Assert.Null(new JobBuilder().Furnished("2025-08-05", 6_430m).ReleaseBond("2025-12-10", 8_037.50m).On("2026-01-05")
            .Find("release-bond.action-last-day"));
    }

    // A bond of before the claim freed the land of another; one that may be of its day or later is on it. Past the ninetieth day the claim
    // is then in doubt, and there is nothing to plan a credit for.
    [Theory]
    [InlineData("2025-11-20", "2025-11-19", false)]
    [InlineData("2025-11-20", "2025-11-18..2025-11-19", false)]
    [InlineData("2025-11-20", "2025-11-20", true)]
    [InlineData("2025-11-20", "2025-11-19..2025-11-20", true)]
    [InlineData("2025-11-18..2025-11-20", "2025-11-17", false)]
    [InlineData("2025-11-18..2025-11-20", "2025-11-18", true)]
    [Proves("Civ. Code § 8424(c)")]
    public void A_bond_that_may_be_of_after_the_claim_is_on_it(string recorded, string bond, bool on)
    {
        var past = Job(recorded).ReleaseBond(bond, 8_037.50m).On("2026-03-02");
        Assert.Equal(on ? Standing.InDoubt : Standing.Lost, past.Get("enforcement.last-day").Standing);
        Assert.Equal(on, past.Find("credit.last-day") is null);
        Assert.Equal(on, past.Find("release.petition-first-day") is null);
    }

    // Bonded before suit the claim is in doubt past its ninetieth day; brought late, or ordered released, it is lost whatever the bond.
    [Theory]
    [InlineData(null, false, Standing.InDoubt)]
    [InlineData("2026-02-23", false, Standing.Lost)]
    [InlineData(null, true, Standing.Lost)]
    [Proves("Civ. Code § 8424(d)")]
    public void A_bond_saves_no_claim_that_was_sued_on_late_or_ordered_released(string? filed, bool ordered, Standing expected)
    {
        var job = Job().ReleaseBond("2025-12-10", 8_037.50m);
        if (filed is not null)
            job.ActionFiled(filed);
        if (ordered)
            job.ActionEnded("2026-02-24", ActionEnd.ReleaseOrdered);
        Assert.Equal(expected, job.On("2026-03-02").Get("enforcement.last-day").Standing);
    }

    // Recorded between 10 and 15 December: six months and 182 days after the 10th both end on Wednesday 10 June 2026.
    [Fact]
    [Proves("Civ. Code § 8424(d)")]
    public void While_the_day_of_notice_is_unknown_the_time_is_counted_from_the_earliest_day_of_recording()
    {
        var last = LastDay(Job().ReleaseBond("2025-12-10..2025-12-15", 8_037.50m), "2026-01-05");
        Assert.Equal((Standing.Open, "2026-06-10"), (last.Standing, last.DaysOf().Single()));
        Assert.Equal([5], last.Corrected("(release-bond-recorded.noticeGiven)"));
        Assert.True(last.Says("counted here from the recording"));
        var unknown = LastDay(Job().ReleaseBond("?", 8_037.50m), "2026-01-05");
        Assert.Equal((Standing.InDoubt, 0), (unknown.Standing, unknown.Readings.Count));
        Assert.True(unknown.Asks("(release-bond-recorded.noticeGiven)"));
        var told = LastDay(Job().ReleaseBond("2025-12-10", 8_037.50m, "2025-12-12"), "2026-01-05");
        Assert.Equal([5], told.EntriesOf("was given to the claimant on 2025-12-12"));
        Assert.False(told.Says("counted here from the recording"));
    }

    // Notice on 12 December 2025: the last day is Friday 12 June 2026. Without it, counted from the recording, 10 June, and never surely
    // over.
    [Theory]
    [InlineData("2025-12-12", "2026-06-12", false, "2026-07-01", Standing.Kept)]
    [InlineData("2025-12-12", "2026-06-15", false, "2026-07-01", Standing.Lost)]
    [InlineData("2025-12-12", "2026-06-11..2026-06-15", false, "2026-07-01", Standing.InDoubt)]
    [InlineData(null, "2026-06-15", false, "2026-07-01", Standing.InDoubt)]
    [InlineData("2025-12-12", "2026-01-15", true, "2026-02-02", Standing.InDoubt)]
    [InlineData("2025-12-12", null, false, "2026-02-02", Standing.Open)]
    [Proves("Civ. Code § 8424(d)")]
    public void An_action_on_the_bond_keeps_it_in_time_and_in_a_court_that_can_give_it(string? told, string? filed, bool small, string asOf,
        Standing expected)
    {
        var job = Job().ReleaseBond("2025-12-10", 8_037.50m, told);
        if (filed is not null)
            job.ActionOn(filed, ActionOn.ReleaseBond).Which(e => (ActionFiled)e with { SmallClaims = small });
        Assert.Equal(expected, LastDay(job, asOf).Standing);
    }

    // A doubtful action on one of two claims is a doubtful one on the bond, whichever claim it was.
    [Theory]
    [InlineData("first", true, Standing.InDoubt)]
    [InlineData("second", true, Standing.InDoubt)]
    [InlineData("first", false, Standing.Kept)]
    [InlineData("another", false, Standing.Open)]
    [Proves("Civ. Code § 8424(d)")]
    public void An_action_on_one_of_several_claims_counts_for_the_bond(string claim, bool small, Standing expected) =>
        Assert.Equal(expected,
            LastDay(Job().ClaimRecorded("2025-12-01", 6_430m, id: "second").ReleaseBond("2025-12-10", 8_037.50m, "2025-12-12")
            .ActionOn("2026-01-15", ActionOn.Lien, claim).Which(e => (ActionFiled)e with { SmallClaims = small }), "2026-02-02").Standing);
}
