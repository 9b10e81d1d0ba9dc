using Stringline.Law.Bankruptcy;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>Claim recorded on 2 December 2025: day 90 is Monday 2 March 2026. The owner is in bankruptcy on some of those days.</summary>
public sealed class StayTests
{
    private static JobBuilder Job() => new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..")
        .Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22")
        .ClaimRecorded("2025-12-02", 6_430m);

    private static Finding Action(JobBuilder job, string asOf) => job.On(asOf).Get("enforcement.last-day");

    [Theory]
    [InlineData("2026-02-02", Standing.Open)]
    [InlineData("2026-03-02", Standing.Open)]
    [InlineData("2026-03-03", Standing.InDoubt)]
    [InlineData("2027-03-10", Standing.InDoubt)]
    [Proves("11 U.S.C. § 362(a)")]
    [Proves("11 U.S.C. § 546(b)")]
    public void In_the_owners_bankruptcy_a_notice_is_given_instead_of_a_suit_and_nothing_is_lost(string asOf, Standing expected)
    {
        var on = Job().Bankrupt("owner", "2026-01-12").On(asOf);
        var action = on.Get("enforcement.last-day");
        Assert.Equal(expected, action.Standing);
        Assert.Equal("2026-03-02", action.Plan());
        Assert.Null(action.Band!.Latest);
        Assert.True(action.Says("Do not sue: Alder Court LLC is in bankruptcy since 2026-01-12 (Mon)"));
        var notice = on.Get("enforcement.stay-notice-last-day");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal("2026-03-02", notice.Plan());
        Assert.True(notice.Says("Give notice under 11 U.S.C. § 546(b) by 2026-03-02 (Mon)"));
        Assert.DoesNotContain(on.Next, n => n.Finding == "enforcement.last-day");
        Assert.Contains(on.Next, n => n.Finding == "enforcement.stay-notice-last-day");
    }

    [Theory]
    [InlineData("2025-11-01", "2025-12-02", Standing.Lost)]
    [InlineData("2025-11-01", "2025-12-03", Standing.InDoubt)]
    [InlineData("2026-03-02", null, Standing.InDoubt)]
    [InlineData("2026-03-03", null, Standing.Lost)]
    [Proves("11 U.S.C. § 362(a)")]
    public void Only_a_stay_in_the_time_to_sue_counts(string since, string? until, Standing expected) =>
        Assert.Equal(expected, Action(Job().Bankrupt("owner", since, until), "2026-03-03").Standing);

    [Fact]
    [Proves("11 U.S.C. § 362(a)")]
    public void Whether_there_is_a_bankruptcy_is_asked_where_the_claim_would_be_lost()
    {
        Assert.True(Action(Job(), "2026-03-10").Asks("(parties.bankruptSince)"));
        Assert.False(Action(Job(), "2026-02-10").Asks("(parties.bankruptSince)"));
    }

    // A stay of 12 January to 10 February stood still for 30 days: 2 March + 30 = 1 April. Of 23 February to 27 February: 5 days, 7 March,
    // but not before 30 days after the stay, 29 March.
    [Theory]
    [InlineData("2026-01-12", "2026-02-10", "2026-04-01", Standing.InDoubt)]
    [InlineData("2026-01-12", "2026-02-10", "2026-04-02", Standing.Lost)]
    [InlineData("2026-02-23", "2026-02-27", "2026-03-29", Standing.InDoubt)]
    [InlineData("2026-02-23", "2026-02-27", "2026-03-30", Standing.Lost)]
    [InlineData("2025-11-01", "2025-12-31", "2026-03-31", Standing.InDoubt)]
    [InlineData("2025-11-01", "2025-12-31", "2026-04-01", Standing.Lost)]
    [Proves("Code Civ. Proc. § 356")]
    [Proves("11 U.S.C. § 108(c)")]
    public void A_stay_that_is_over_leaves_it_in_doubt_as_long_as_the_time_may_have_stood_still(string since, string until, string asOf,
        Standing expected)
    {
        var action = Action(Job().Bankrupt("owner", since, until), asOf);
        Assert.Equal(expected, action.Standing);
        Assert.Equal("2026-03-02", action.Plan());
        Assert.True(action.Says("the time may have stood still in it"));
        Assert.Null(Job().Bankrupt("owner", since, until).On(asOf).Find("enforcement.stay-notice-last-day"));
    }

    [Theory]
    [InlineData("2026-01-11", Standing.Kept)]
    [InlineData("2026-01-12", Standing.InDoubt)]
    [InlineData("2026-02-10", Standing.InDoubt)]
    [InlineData("2026-02-11", Standing.Kept)]
    [Proves("11 U.S.C. § 362(a)")]
    public void A_suit_filed_in_the_stay_is_in_doubt(string filed, Standing expected) =>
        Assert.Equal(expected, Action(Job().Bankrupt("owner", "2026-01-12", "2026-02-10").ActionFiled(filed), "2026-02-16").Standing);

    [Fact]
    [Proves("11 U.S.C. § 362(a)")]
    public void A_contractors_bankruptcy_leaves_the_suit_against_the_owner()
    {
        var action = Action(Job().Bankrupt("direct", "2026-01-12"), "2026-02-02");
        Assert.Equal(Standing.Open, action.Standing);
        Assert.True(action.Says("leave it out of the suit while the stay lasts"));
        Assert.Equal(Standing.Lost, Action(Job().Bankrupt("direct", "2026-01-12"), "2026-03-10").Standing);
    }

    [Fact]
    [Proves("11 U.S.C. § 362(a)")]
    public void A_stay_that_begins_after_the_day_of_asking_is_not_known() =>
        Assert.Null(Stay.Of(Job().Bankrupt("owner", "2026-01-12").FactsOn("2026-01-11"), PartyCapacity.Owner, JobBuilder.Day("2025-12-02"),
            JobBuilder.Day("2026-03-02")));
}
