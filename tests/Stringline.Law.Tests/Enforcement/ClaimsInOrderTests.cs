using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>
/// Several claims and the days they lend (Civ. Code § 8460(a)). The first, of 20 November 2025, has until Wednesday 18 February 2026; the
/// second, of
/// 12 January 2026, until Sunday 12 April.
/// </summary>
public sealed class ClaimsInOrderTests
{
    private static JobBuilder First(string completed = "2025-10-22") =>
        new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..")
        .Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14").Completed(completed)
        .ClaimRecorded("2025-11-20", 6_430m, id: "first");

    private static JobBuilder Second(JobBuilder job, string on = "2026-01-12", string? amends = null) =>
        job.ClaimRecorded(on, 6_430m, id: "second", amends: amends);

    private static JobBuilder SmallClaims(JobBuilder job) => job.Which(e => (ActionFiled)e with { SmallClaims = true });

    private static Finding Action(JobBuilder job, string asOf) => job.On(asOf).Get("enforcement.last-day");

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void Of_several_claims_each_day_is_named_after_its_claim()
    {
        var two = Action(Second(First()), "2026-02-10");
        Assert.Equal(["2026-02-18 90 days after recording of the claim of 2025-11-20 (Thu)",
            "2026-04-12 90 days after recording of the claim of 2026-01-12 (Mon)"], two.Lines());
        Assert.True(two.Says("2 claims are recorded and not released"));
        var one = Action(First(), "2026-02-10");
        Assert.Equal(["2026-02-18 90 days after recording"], one.Lines());
        Assert.False(one.Says("claims are recorded and not released"));
        // Sued on, or settled, only the days of the claim that was sued on are left.
        Assert.Equal(["2026-02-18 90 days after recording"], Action(Second(First().ActionFiled("2025-12-15")), "2026-02-10").Lines());
        Assert.Equal(["2026-02-18 90 days after recording"],
            Action(Second(First().ActionOn("2025-12-15", ActionOn.Lien, null, "a")).ActionEnded("2026-01-20", ActionEnd.Settled, of: "a"),
                "2026-02-10").Lines());
    }

    // A stay of 12 January to 10 February stood still for thirty days: 18 February and 30 days are 20 March. While the stay lasts there is
    // no such day.
    [Fact]
    [Proves("11 U.S.C. § 362(a)")]
    public void In_the_owners_bankruptcy_the_day_to_which_the_time_stood_still_is_shown()
    {
        Assert.Equal(["2026-02-18 90 days after recording", "2026-03-20 if the time stood still in the bankruptcy"],
            Action(First().Bankrupt("owner", "2026-01-12", "2026-02-10"), "2026-02-16").Lines());
        Assert.Equal(["2026-02-18 90 days after recording"], Action(First().Bankrupt("owner", "2026-01-12"), "2026-02-16").Lines());
        Assert.Equal(["2026-02-18 90 days after recording"],
            Action(First().ActionFiled("2025-12-15").Bankrupt("owner", "2026-01-12", "2026-02-10"), "2026-02-16").Lines());
        // A stay that ended on the day of recording moved nothing.
        Assert.Equal(["2026-02-18 90 days after recording"], Action(First().Bankrupt("owner", "2025-11-01", "2025-11-20"), "2026-02-16")
            .Lines());
        Assert.Equal(["2026-02-18 90 days after recording", "2026-02-19 if the time stood still in the bankruptcy"],
            Action(First().Bankrupt("owner", "2025-11-01", "2025-11-21"), "2026-02-16").Lines());
        Assert.Equal(["2026-02-18 90 days after recording of the claim of 2025-11-20 (Thu)",
            "2026-03-20 if the time stood still in the bankruptcy", "2026-04-12 90 days after recording of the claim of 2026-01-12 (Mon)"],
            Action(Second(First()).Bankrupt("owner", "2026-01-12", "2026-02-10"), "2026-02-16").Lines());
        Assert.Equal(["2026-02-18 90 days after recording"],
            Action(First().Bankrupt("owner", "2026-01-12", "2026-02-10").ReleaseRecorded("2026-02-11", true), "2026-02-16").Lines());
    }

    // The first expired on 18 February: a claim recorded that very day still has it beside it; of the day after it stands alone.
    [Theory]
    [InlineData("2026-02-18", null, new[] { "2026-02-18", "2026-05-19" })]
    [InlineData("2026-02-19", null, new[] { "2026-05-20" })]
    [InlineData("2026-02-19", "first", new[] { "2026-02-18", "2026-05-20" })]
    [InlineData("2026-02-19", "another", new[] { "2026-05-20" })]
    [Proves("Civ. Code § 8460(a)")]
    public void A_claim_that_had_expired_before_the_next_concerns_it_no_more(string second, string? amends, string[] expected) =>
        Assert.Equal(expected, Action(Second(First("2026-02-01"), second, amends), "2026-03-02").DaysOf());

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void A_claim_that_was_sued_on_in_time_is_not_expired()
    {
        var action = Action(Second(First("2026-02-01").ActionOn("2025-12-15", ActionOn.Lien, "first"), "2026-02-19"), "2026-06-01");
        Assert.Equal((Standing.Kept, "2026-02-18"), (action.Standing, action.DaysOf().Single()));
    }

    // Past the first claim's day the second has its own, which the owner will deny: in doubt, and not because an office is closed.
    [Theory]
    [InlineData("2026-02-18", Standing.Open)]
    [InlineData("2026-02-19", Standing.InDoubt)]
    [Proves("Civ. Code § 8460(a)")]
    public void Past_the_first_day_it_is_in_doubt_which_claim_counts(string asOf, Standing expected)
    {
        var action = Action(Second(First()), asOf);
        Assert.Equal(expected, action.Standing);
        Assert.False(action.Says("The day to plan on"));
    }

    // A doubtful action on the first, while its time runs: not open, for something was filed, and not kept.
    [Theory]
    [InlineData("first", false, Standing.Kept)]
    [InlineData("first", true, Standing.InDoubt)]
    [InlineData("second", true, Standing.InDoubt)]
    [Proves("Civ. Code § 8460(a)")]
    public void A_doubtful_action_on_one_of_two_claims_leaves_it_in_doubt(string claim, bool small, Standing expected)
    {
        var job = Second(First()).ActionOn("2026-01-20", ActionOn.Lien, claim);
        Assert.Equal(expected, Action(small ? SmallClaims(job) : job, "2026-02-02").Standing);
    }

    // The second's action keeps both where it was surely filed by the first's day.
    [Theory]
    [InlineData("2026-02-17..2026-02-18", Standing.Kept)]
    [InlineData("2026-02-17..2026-02-19", Standing.InDoubt)]
    [Proves("Civ. Code § 8460(a)")]
    public void An_action_on_the_second_is_in_the_time_of_the_first_by_its_latest_day(string filed, Standing expected) =>
        Assert.Equal(expected, Action(Second(First()).ActionOn(filed, ActionOn.Lien, "second"), "2026-03-02").Standing);

    // Claim of 1 December 2025: day 90 is Sunday 1 March 2026. Filed on the Monday it is kept by both codes, whatever was recorded beside
    // it.
    [Fact]
    [Proves("Civ. Code § 10")]
    public void An_action_on_the_first_that_both_codes_carry_keeps_it_beside_a_second()
    {
        var job = new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..").Furnished("2025-08-05", 6_430m)
            .Ended("2025-10-10").Notice("2025-08-14")
            .Completed("2025-10-22").ClaimRecorded("2025-12-01", 6_430m, id: "first").ClaimRecorded("2026-01-12", 6_430m, id: "second")
            .ActionOn("2026-03-02", ActionOn.Lien, "first");
        Assert.Equal((Standing.Kept, "2026-03-01"), (Action(job, "2026-03-10").Standing, Action(job, "2026-03-10").DaysOf().Single()));
        Assert.Equal(Standing.Done, Action(job.ActionEnded("2026-03-12", ActionEnd.Settled), "2026-03-16").Standing);
    }

    // On which claim the right rests: the one sued on, and of two the one kept; unsued, the first. A notice of credit is recorded within
    // its 90 days.
    [Theory]
    [InlineData(null, "2026-02-18")]
    [InlineData("second", "2026-02-18", "2026-04-12")] // a doubtful action on the second alone; the owner will say that both are one claim
    [InlineData("first", "2026-02-18")]
    [Proves("Civ. Code § 8460(b)(1)")]
    public void The_right_rests_on_the_claim_that_is_sued_on_else_on_the_first(string? doubtful, params string[] expected)
    {
        var job = Second(First());
        if (doubtful is not null)
            job = SmallClaims(job.ActionOn("2026-01-20", ActionOn.Lien, doubtful));
        Assert.Equal(expected, job.On("2026-02-02").Get("credit.last-day").DaysOf());
    }

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void A_good_action_on_the_second_counts_before_a_doubtful_one_on_the_first()
    {
        var on = SmallClaims(Second(First()).ActionOn("2026-01-15", ActionOn.Lien, "first")).ActionOn("2026-02-23", ActionOn.Lien, "second")
            .On("2026-03-02");
        Assert.Equal(["2028-02-23"], on.Get("prosecution.last-day").DaysOf());
        // Settled is as good as kept.
        var settled = SmallClaims(Second(First()).ActionOn("2026-01-15", ActionOn.Lien, "first"))
            .ActionOn("2026-02-23", ActionOn.Lien, "second", "b").ActionEnded("2026-02-25", ActionEnd.Settled, of: "b").On("2026-03-02");
        Assert.Null(settled.Find("prosecution.last-day"));
        Assert.NotNull(SmallClaims(Second(First()).ActionOn("2026-01-15", ActionOn.Lien, "first")).On("2026-03-02")
            .Find("lis-pendens.last-day"));
        // Both sued on in time: the first.
        Assert.Equal(["2028-01-15"], Second(First()).ActionOn("2026-01-15", ActionOn.Lien, "first")
            .ActionOn("2026-02-23", ActionOn.Lien, "second").On("2026-03-02").Get("prosecution.last-day").DaysOf());
    }

    // Only a claim recorded no earlier than the one sued on is brought into the action, while it is not lost, and none once all is
    // released.
    [Theory]
    [InlineData("first", "2026-01-12", true)]
    [InlineData("second", "2026-01-12", false)]
    [InlineData("first", "2025-11-20", true)]
    [Proves("Civ. Code § 8460(a)")]
    public void A_claim_that_is_not_earlier_is_brought_into_the_action(string sued, string second, bool brought)
    {
        var job = Second(First(), second).ActionOn("2026-01-20", ActionOn.Lien, sued);
        var later = job.On("2026-02-02").Find("enforcement.later-claim-last-day");
        Assert.Equal(brought, later is not null);
        Assert.NotEqual(brought, later?.Band!.Latest is null);
        Assert.Null(job.ReleaseRecorded("2026-01-26", true).On("2026-02-02").Find("enforcement.later-claim-last-day"));
    }

    // In the stay a notice is given instead of a suit, unless the suit was brought before, or the claim is released.
    [Fact]
    [Proves("11 U.S.C. § 546(b)")]
    public void A_notice_in_place_of_a_suit_is_asked_only_while_the_suit_is_still_to_bring()
    {
        var notice = First().Bankrupt("owner", "2026-01-12").On("2026-02-02").Get("enforcement.stay-notice-last-day");
        Assert.NotNull(notice.Band!.Latest);
        Assert.Null(First().ActionFiled("2025-12-15").Bankrupt("owner", "2026-01-12").On("2026-02-02")
            .Find("enforcement.stay-notice-last-day"));
        Assert.Null(First().Bankrupt("owner", "2026-01-12").ReleaseRecorded("2026-01-26", true).On("2026-02-02")
            .Find("enforcement.stay-notice-last-day"));
    }
}
