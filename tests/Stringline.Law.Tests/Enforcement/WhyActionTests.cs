using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>
/// Why the time to sue stands where it stands, and what is asked. Claim recorded on Thursday 20 November 2025: day 90 is Wednesday 18
/// February 2026, an open day. Entries 0 to 4 are the furnishing, its end, the notice, completion and the claim.
/// </summary>
public sealed class WhyActionTests
{
    private static JobBuilder Job(string recorded = "2025-11-20") =>
        new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..")
        .Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22").ClaimRecorded(recorded, 6_430m);

    private static Finding Action(JobBuilder job, string asOf = "2026-03-10") => job.On(asOf).Get("enforcement.last-day");

    [Theory]
    [InlineData(ActionEnd.Won, null, "Civ. Code § 8466", "is a deficiency")]
    [InlineData(ActionEnd.Settled, null, "Civ. Code § 8460(a)", "The action was settled")]
    [InlineData(ActionEnd.LostAtTrial, null, "Civ. Code § 8490(b)", "A judgment that no lien exists")]
    [InlineData(ActionEnd.ReleaseOrdered, null, "Civ. Code § 8490(b)", "ordered the property released")]
    [InlineData(ActionEnd.Dismissed, true, "Civ. Code § 8490(d)", "expressly without prejudice, so the order does not cancel")]
    [InlineData(ActionEnd.Dismissed, false, "Civ. Code § 8490(b)", "does not say that it is without prejudice")]
    [InlineData(ActionEnd.Dismissed, null, "Civ. Code § 8490", "cancels the claim unless it says expressly")]
    [Proves("Civ. Code § 8490")]
    public void How_the_action_ended_is_told_with_its_entry(ActionEnd how, bool? withoutPrejudice, string section, string words)
    {
        var action = Action(Job().ActionFiled("2025-12-15").ActionEnded("2026-02-02", how, withoutPrejudice));
        Assert.Contains(6, action.HangsOn(section));
        Assert.Equal([6], action.EntriesOf(words));
        Assert.Equal([5], action.EntriesOf("Action filed 2025-12-15"));
        Assert.Equal([4], action.EntriesOf("Claim recorded 2025-11-20"));
        Assert.Equal(how == ActionEnd.Dismissed && withoutPrejudice is null
            ? [6] : [], action.Corrected("(action-ended.withoutPrejudice)"));
        Assert.False(action.Asks("(action-filed.enforces)"));
        // A lost claim may have been saved by a bankruptcy of the owner, but not one that a court ended.
        Assert.False(action.Asks("(parties.bankruptSince)"));
    }

    // Filed by the ninetieth day nothing more is said. The claim of a day in doubt has its first day on Monday 16 February 2026,
    // Washington's Birthday.
    [Theory]
    [InlineData("2025-11-20", "2026-02-18", false, false, false)]
    [InlineData("2025-11-20", "2026-02-19", false, false, false)] // late, and no list carries a day that was open
    [InlineData("2025-11-20", "2026-02-18..2026-02-20", false, false, true)]
    [InlineData("2025-11-20", "2026-02-17..2026-02-18", false, false, false)]
    [InlineData("2025-11-18..2025-11-20", "2026-02-17", true, false, false)]
    [InlineData("2025-11-18..2025-11-20", "2026-02-16..2026-02-17", true, false, false)]
    [InlineData("2025-11-18..2025-11-20", "2026-02-17..2026-02-18", false, false, true)]
    [InlineData("2025-11-18..2025-11-20", "2026-02-18", false, false, true)]
    [InlineData("2025-11-18..2025-11-20", "2026-02-18..2026-02-19", false, false, true)]
    [InlineData("2025-11-18..2025-11-20", "2026-02-19", false, false, false)]
    [InlineData("2025-11-30", "2026-03-02", false, true, false)] // day 90 is a Saturday, which one list alone passes over
    [InlineData("2025-11-30", "2026-02-28", false, false, false)]
    [InlineData("2025-11-30", "2026-02-28..2026-03-02", false, false, true)]
    [Proves("Civ. Code § 10")]
    public void What_was_filed_after_the_first_day_is_told_by_what_may_carry_it(string recorded, string filed, bool both, bool one,
        bool doubt)
    {
        var action = Action(Job(recorded).ActionFiled(filed));
        Assert.Equal(both, action.Says("in time under Mox, Inc. v. Leventhal"));
        Assert.Equal(one, action.Says("the day to which one list carries it"));
        Assert.Equal(doubt, action.Says("turns on a day that is in doubt"));
    }

    // Recorded on 30 November: day 90 is Saturday 28 February, carried to Monday 2 March by one list.
    [Theory]
    [InlineData("2026-02-27", false, false)]
    [InlineData("2026-02-28", false, false)]
    [InlineData("2026-03-01", true, false)]
    [InlineData("2026-03-02", true, false)]
    [InlineData("2026-03-03", false, true)]
    [Proves("Civ. Code § 10")]
    public void After_the_last_day_it_is_filed_today_while_a_list_carries_it(string asOf, bool today, bool over)
    {
        var action = Action(Job("2025-11-30"), asOf);
        Assert.Equal((today, over), (action.Says("file today, so that"), action.Says("The time without credit is over")));
        Assert.Equal(over, action.Asks("(parties.bankruptSince)"));
    }

    // An open day is carried nowhere: on the day after it the time is over, and nothing is said of filing today.
    [Theory]
    [InlineData("2026-02-18", false)]
    [InlineData("2026-02-19", true)]
    [Proves("Civ. Code § 8460(a)")]
    public void After_a_last_day_that_was_open_the_time_is_over(string asOf, bool over)
    {
        var action = Action(Job(), asOf);
        Assert.Equal((over, false), (action.Says("The time without credit is over"), action.Says("file today, so that")));
        Assert.False(Action(Job().ActionFiled("2025-12-15"), asOf).Says("The time without credit is over"));
    }

    // What to do in the owner's bankruptcy is told while there is something to do.
    [Fact]
    [Proves("11 U.S.C. § 546(b)")]
    public void In_a_bankruptcy_a_claim_that_is_kept_or_released_needs_no_notice()
    {
        Assert.True(Action(Job().Bankrupt("owner", "2026-01-12"), "2026-02-02").Says("Do not sue"));
        Assert.False(Action(Job().ActionFiled("2025-12-15").Bankrupt("owner", "2026-01-12"), "2026-02-02").Says("Do not sue"));
        Assert.False(Action(Job().Bankrupt("owner", "2026-01-12").ReleaseRecorded("2026-01-26", true), "2026-02-02").Says("Do not sue"));
        // A stay that is over, and thirty days more: lost, and the bankruptcy is known already.
        var lost = Action(Job().Bankrupt("owner", "2026-01-12", "2026-01-13"), "2026-02-25");
        Assert.Equal((Standing.Lost, false), (lost.Standing, lost.Asks("(parties.bankruptSince)")));
        Assert.True(Action(Job(), "2026-02-25").Asks("(parties.bankruptSince)"));
    }

    // A contractor's stay to 19 November lies in the time to sue if the claim was recorded by then.
    [Theory]
    [InlineData("2025-11-18..2025-11-20", true)]
    [InlineData("2025-11-20", false)]
    [Proves("11 U.S.C. § 362(a)")]
    public void A_contractors_stay_is_told_where_it_may_lie_in_the_time_to_sue(string recorded, bool told) =>
        Assert.Equal(told, Action(Job(recorded).Bankrupt("direct", "2025-11-01", "2025-11-19"), "2026-02-02")
            .Says("leave it out of the suit while the stay lasts"));

    [Fact]
    [Proves("Civ. Code § 8424(c)")]
    public void A_bond_is_spoken_of_while_the_claim_is_not_released()
    {
        Assert.Equal([5], Action(Job().ReleaseBond("2025-12-10", 8_037.50m), "2026-02-02").EntriesOf("it stands in the land's place"));
        Assert.False(Action(Job().ReleaseBond("2025-12-10", 8_037.50m).ReleaseRecorded("2026-01-26", true), "2026-02-02")
            .Says("it stands in the land's place"));
        Assert.False(Action(Job().ReleaseBond("2025-11-19", 8_037.50m), "2026-02-02").Says("it stands in the land's place"));
    }

    // What the action asks for matters while it may keep the claim.
    [Theory]
    [InlineData("2025-12-15", false, new[] { 5 })]
    [InlineData("2025-12-15", true, new[] { 5 })]
    [InlineData("2026-02-23", false, new int[0])]
    [Proves("Civ. Code § 8460(a)")]
    public void What_the_action_asks_for_is_asked_while_it_may_keep_the_claim(string filed, bool small, int[] corrects) =>
        Assert.Equal(corrects, Action(Job().ActionFiled(filed).Which(e => (ActionFiled)e with { SmallClaims = small }))
            .Corrected("(action-filed.enforces)"));

    // Saturday 22 November 2025: no recorder is open. Which lien a design professional's claim is for is asked where nothing tells of
    // commencement.
    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void The_day_and_the_kind_of_the_claim_are_asked_where_they_are_not_sure()
    {
        Assert.Equal([4], Action(Job("2025-11-22"), "2026-01-05").Corrected("(claim-recorded.on)"));
        Assert.Empty(Action(Job("2025-11-20"), "2026-01-05").Corrected("(claim-recorded.on)"));
        Assert.Empty(Action(Job(), "2026-01-05").Corrected("(claim-recorded.lien)"));
        Assert.Empty(Action(Job().Role(ClaimantRole.DesignProfessional, "owner"), "2026-01-05").Corrected("(claim-recorded.lien)"));
        Assert.Equal([2],
            Action(new JobBuilder().Role(ClaimantRole.DesignProfessional, "owner").Furnished("2025-10-06", 100m).Ended("2025-10-06")
            .ClaimRecorded("2025-11-20", 100m), "2026-01-05").Corrected("(claim-recorded.lien)"));
    }
}
