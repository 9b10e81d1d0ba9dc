using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>
/// Claim recorded on 20 November 2025: day 90 is Wednesday 18 February 2026. A second, such as an amended one, on 12 January 2026: day 90
/// is Sunday 12 April, act by Friday the 10th.
/// </summary>
public sealed class SeveralClaimsTests
{
    private static JobBuilder First() => new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..")
        .Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22")
        .ClaimRecorded("2025-11-20", 7_430m, id: "first");

    private static JobBuilder Second(JobBuilder job, string? amends = null) =>
        job.ClaimRecorded("2026-01-12", 6_430m, id: "second", amends: amends);

    // The action on the first claim keeps the right whatever is recorded beside it; the owner's demand changes nothing.
    [Theory]
    [InlineData(null)]
    [InlineData("first")]
    [Proves("Civ. Code § 8460(a)")]
    public void An_amended_claim_recorded_after_suit_leaves_the_action_on_the_first_as_it_is(string? amends)
    {
        var on = Second(First().ActionFiled("2025-12-15").LisPendens("2025-12-22"), amends).ReleaseDemanded("2026-04-20").On("2026-04-27");
        Assert.Equal(Standing.Kept, on.Get("enforcement.last-day").Standing);
        Assert.Equal(["2026-02-18"], on.Get("enforcement.last-day").DaysOf());
        Assert.Equal(Standing.Kept, on.Get("lien-right").Standing);
        Assert.Null(on.Find("release.petition-first-day"));
        Assert.Null(on.Get("release.answer-by").ActBy);
        Assert.Equal(Standing.Kept, on.Get("lis-pendens.last-day").Standing);
    }

    [Theory]
    [InlineData("2026-02-19", null, Standing.Open)]
    [InlineData("2026-04-10", null, Standing.Open)]
    [InlineData("2026-04-12", null, Standing.InDoubt)]
    [InlineData("2026-04-13", null, Standing.InDoubt)]
    [InlineData("2026-04-27", "2026-04-10", Standing.Kept)]
    [Proves("Civ. Code § 8460(a)")]
    public void The_amended_claim_is_brought_into_the_action_in_its_own_ninety_days(string asOf, string? joined, Standing expected)
    {
        var job = Second(First().ActionFiled("2025-12-15"));
        var later = (joined is null ? job : job.ActionOn(joined, ActionOn.Lien, "second")).On(asOf).Get("enforcement.later-claim-last-day");
        Assert.Equal("2026-04-10", later.Plan());
        Assert.Equal(expected, later.Standing);
        Assert.True(later.Says("supplemental complaint by 2026-04-12 (Sun)"));
    }

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void Once_its_time_is_over_the_later_claim_asks_for_nothing_and_the_first_stays_kept()
    {
        var on = Second(First().ActionFiled("2025-12-15")).On("2026-04-14");
        Assert.Null(on.Find("enforcement.later-claim-last-day"));
        Assert.Equal(Standing.Kept, on.Get("enforcement.last-day").Standing);
    }

    // Without suit: the first claim's day is the one to act on; past it the second has its own, which the owner will deny.
    [Theory]
    [InlineData("2026-02-10", Standing.Open)]
    [InlineData("2026-02-18", Standing.Open)]
    [InlineData("2026-02-19", Standing.InDoubt)]
    [InlineData("2026-02-25", Standing.InDoubt)]
    [InlineData("2026-04-13", Standing.InDoubt)]
    [InlineData("2026-04-14", Standing.Lost)]
    [Proves("Civ. Code § 8460(a)")]
    public void An_amended_claim_never_moves_the_day_to_sue_later_while_the_first_stands(string asOf, Standing expected)
    {
        var action = Second(First(), "first").On(asOf).Get("enforcement.last-day");
        Assert.Equal(["2026-02-18", "2026-04-12"], action.DaysOf());
        Assert.Equal("2026-02-18", action.Plan());
        Assert.Equal(expected, action.Standing);
        Assert.True(action.Says("release no claim that is in suit"));
    }

    [Theory]
    [InlineData("2026-02-18", null, Standing.Kept)]
    [InlineData("2026-02-18", "second", Standing.Kept)]
    [InlineData("2026-02-19", "second", Standing.InDoubt)]
    [InlineData("2026-04-10", "second", Standing.InDoubt)]
    [InlineData("2026-02-19", "first", Standing.InDoubt)]
    [Proves("Civ. Code § 8460(a)")]
    public void An_action_in_the_first_claims_time_is_kept_on_either_reading(string filed, string? claim, Standing expected) =>
        Assert.Equal(expected, Second(First()).ActionOn(filed, ActionOn.Lien, claim).On("2026-04-12").Get("enforcement.last-day").Standing);

    // Completed on 22 October 2025: the time to record ended on Tuesday 20 January 2026, and a claim of the 26th came too late, or one of
    // another county counts for nothing. An action that names neither claim may be on that one; one brought before it was recorded is not.
    [Theory]
    [InlineData("2026-01-12", null, "2026-02-02", null, Standing.Kept)]
    [InlineData("2026-01-26", null, "2026-02-02", "first", Standing.Kept)]
    [InlineData("2026-01-26", null, "2026-02-02", null, Standing.InDoubt)]
    [InlineData("2026-01-26", null, "2026-01-25", null, Standing.Kept)]
    [InlineData("2026-01-12", "Solano", "2026-02-02", "first", Standing.Kept)]
    [InlineData("2026-01-12", "Solano", "2026-02-02", null, Standing.InDoubt)]
    [Proves("Civ. Code § 8460(a)")]
    public void An_action_that_names_none_of_several_claims_may_be_on_one_that_does_not_count(string second, string? county, string filed,
        string? claim, Standing expected)
    {
        var on = First().ClaimRecorded(second, 6_430m, id: "second", county: county).ActionOn(filed, ActionOn.Lien, claim).On("2026-02-10");
        var action = on.Get("enforcement.last-day");
        Assert.Equal(expected, action.Standing);
        Assert.Equal(expected, on.Get("lien-right").Standing);
        Assert.Equal(expected == Standing.InDoubt, action.Asks("(action-filed.claim)"));
        Assert.Equal(expected == Standing.InDoubt, action.Says("which of the claims the action enforces"));
    }

    // The pendency is that of an action to enforce the lien (§ 8461): whether this one does is in doubt, and the day to record stays.
    [Theory]
    [InlineData("first", Standing.Open)]
    [InlineData(null, Standing.InDoubt)]
    [Proves("Civ. Code § 8461")]
    public void The_pendency_of_an_action_that_may_enforce_nothing_is_in_doubt(string? claim, Standing expected)
    {
        var pendency = First().ClaimRecorded("2026-01-26", 6_430m, id: "second").ActionOn("2026-02-02", ActionOn.Lien, claim)
            .On("2026-02-10").Get("lis-pendens.last-day");
        Assert.Equal((expected, "2026-02-20"), (pendency.Standing, pendency.Plan()));
    }

    // The copy of the first was served late; the second is good, and the action is on the first.
    [Theory]
    [InlineData("2025-11-19", Standing.Kept)]
    [InlineData("2025-11-21", Standing.InDoubt)]
    [Proves("Civ. Code § 8460(a)")]
    public void An_action_on_a_claim_that_may_not_count_keeps_not_the_one_beside_it(string served, Standing expected) =>
        Assert.Equal(expected, Second(First().ClaimServed(served)).ActionOn("2026-02-02", ActionOn.Lien, "first").On("2026-04-20")
            .Get("lien-right").Standing);

    // Whichever claim it was on, what became of an action that names none is sure only of that claim.
    [Fact]
    [Proves("Civ. Code § 8490")]
    public void An_order_in_an_action_that_names_none_of_two_claims_leaves_both_in_doubt() =>
        Assert.Equal(Standing.InDoubt, First().ClaimRecorded("2026-01-26", 6_430m).ActionFiled("2026-02-02")
            .ActionEnded("2026-02-03", ActionEnd.Dismissed, false)
            .On("2026-02-10").Get("enforcement.last-day").Standing);

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void A_first_claim_that_is_released_leaves_the_second_alone() =>
        Assert.Equal(["2026-04-12"], Second(First().ReleaseRecorded("2026-01-09", false)).On("2026-02-10").Get("enforcement.last-day")
            .DaysOf());

    // The first expired on 18 February; the work was completed on the 1st, so a second could be recorded on the 20th. Only if it says that
    // it amends the first is the first's day still spoken of.
    [Theory]
    [InlineData(null, "2026-05-21")]
    [InlineData("first", "2026-02-18")]
    [Proves("Civ. Code § 8460(a)")]
    public void A_first_claim_that_had_expired_concerns_a_second_only_if_the_second_amends_it(string? amends, string earliest)
    {
        var action = new JobBuilder().Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14").Completed("2026-02-01")
            .ClaimRecorded("2025-11-20", 7_430m, id: "first")
            .ClaimRecorded("2026-02-20", 6_430m, amends: amends).On("2026-03-02").Get("enforcement.last-day");
        Assert.Equal(earliest, action.DaysOf()[0]);
    }

    [Theory]
    [InlineData(ActionOn.Lien, null, Standing.Kept)]
    [InlineData(ActionOn.Lien, "first", Standing.Kept)]
    [InlineData(ActionOn.Lien, "another", Standing.Open)]
    [InlineData(ActionOn.Debt, null, Standing.Open)]
    [InlineData(ActionOn.PaymentBond, null, Standing.Open)]
    [Proves("Civ. Code § 8460(a)")]
    public void Only_an_action_to_enforce_the_claim_keeps_it(ActionOn enforces, string? claim, Standing expected)
    {
        var action = First().ActionOn("2025-12-15", enforces, claim).On("2026-01-05").Get("enforcement.last-day");
        Assert.Equal(expected, action.Standing);
        Assert.False(action.Asks("(action-filed.enforces)"));
    }

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void What_the_action_asks_for_is_asked_where_the_file_does_not_say() =>
        Assert.True(First().ActionFiled("2025-12-15").On("2026-01-05").Get("enforcement.last-day").Asks("(action-filed.enforces)"));

    // A correction of the claim keeps the name under which the action knows it.
    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void An_action_that_names_a_claim_names_its_correction_too() =>
        Assert.Equal(Standing.Kept, First().ClaimRecorded("2025-11-21", 7_430m, id: "right").Which(e => e with { Supersedes = "first" })
            .ClaimRecorded("2025-11-22", 7_430m).Which(e => e with { Supersedes = "right" }).ActionOn("2025-12-15", ActionOn.Lien, "first")
            .On("2026-01-05").Get("enforcement.last-day").Standing);

    // A small claims court gives money and forecloses nothing (Code Civ. Proc. § 116.220).
    [Fact]
    [Proves("Code Civ. Proc. § 116.220")]
    public void An_action_in_a_small_claims_court_leaves_it_in_doubt()
    {
        var action = First().ActionFiled("2025-12-15").Which(e => (ActionFiled)e with { SmallClaims = true }).On("2026-01-05")
            .Get("enforcement.last-day");
        Assert.Equal(Standing.InDoubt, action.Standing);
        Assert.True(action.Says("does not foreclose a lien"));
        Assert.Equal("2026-02-18", action.Plan());
    }

    [Theory]
    [InlineData("owner,direct", null, Standing.Kept)]
    [InlineData("direct", null, Standing.InDoubt)]
    [InlineData("direct", "2025-12-15", Standing.Kept)]
    [InlineData("direct", "2025-12-16", Standing.InDoubt)]
    [Proves("Civ. Code § 8461")]
    public void An_owner_who_was_not_sued_is_not_bound(string against, string? sold, Standing expected)
    {
        var job = First().ActionOn("2025-12-15", ActionOn.Lien, null, null, against.Split(','));
        var action = (sold is null ? job : job.PartyWith("owner", p => p with { SoldOn = JobBuilder.Day(sold) })).On("2026-01-05")
            .Get("enforcement.last-day");
        Assert.Equal(expected, action.Standing);
        Assert.Equal(expected == Standing.InDoubt, action.Says("Alder Court LLC was not sued"));
    }

    [Theory]
    [InlineData(ActionEnd.Won, null, Standing.Kept)]
    [InlineData(ActionEnd.Settled, null, Standing.Done)]
    [InlineData(ActionEnd.LostAtTrial, null, Standing.Lost)]
    [InlineData(ActionEnd.ReleaseOrdered, null, Standing.Lost)]
    [InlineData(ActionEnd.Dismissed, false, Standing.Lost)]
    [InlineData(ActionEnd.Dismissed, true, Standing.InDoubt)]
    [InlineData(ActionEnd.Dismissed, null, Standing.InDoubt)]
    [Proves("Civ. Code § 8490")]
    public void How_the_action_ended_decides_what_is_left(ActionEnd how, bool? withoutPrejudice, Standing expected)
    {
        var on = First().ActionFiled("2025-12-15").ActionEnded("2026-05-01", how, withoutPrejudice).On("2026-05-04");
        Assert.Equal(expected, on.Get("enforcement.last-day").Standing);
        Assert.Null(on.Find("prosecution.last-day"));
        Assert.Null(on.Find("lis-pendens.last-day"));
        Assert.Equal(how == ActionEnd.Dismissed && withoutPrejudice is null, on.Get("enforcement.last-day")
            .Asks("(action-ended.withoutPrejudice)"));
    }

    // Dismissed without prejudice while the 90 days run: file again by their end.
    [Theory]
    [InlineData("2026-02-18", Standing.Open)]
    [InlineData("2026-02-19", Standing.InDoubt)]
    [Proves("Civ. Code § 8490")]
    public void Dismissed_without_prejudice_in_time_it_can_be_brought_again(string asOf, Standing expected) =>
        Assert.Equal(expected, First().ActionFiled("2025-12-15").ActionEnded("2026-01-05", ActionEnd.Dismissed, true).On(asOf)
            .Get("enforcement.last-day").Standing);

    [Fact]
    [Proves("Civ. Code § 8490")]
    public void Which_of_two_actions_was_dismissed_decides_or_leaves_it_in_doubt()
    {
        JobBuilder Two(string? of) => First().ActionOn("2025-12-15", ActionOn.Lien, null, "a")
            .ActionOn("2025-12-16", ActionOn.Debt, null, "b").ActionEnded("2026-05-01", ActionEnd.Dismissed, false, of);
        Assert.Equal(Standing.Lost, Two("a").On("2026-05-04").Get("enforcement.last-day").Standing);
        Assert.Equal(Standing.Kept, Two("b").On("2026-05-04").Get("enforcement.last-day").Standing);
        Assert.Equal(Standing.InDoubt, Two(null).On("2026-05-04").Get("enforcement.last-day").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8490")]
    public void An_order_on_the_owners_petition_ends_a_claim_that_was_never_sued_on() =>
        Assert.Equal(Standing.Lost, First().ActionEnded("2026-02-02", ActionEnd.ReleaseOrdered).On("2026-02-03")
            .Get("enforcement.last-day").Standing);
}
