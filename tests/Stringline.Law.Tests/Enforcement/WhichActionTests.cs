using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>
/// Which action enforces a claim, and which of several serves it best (Civ. Code §§ 8460(a), 8490). Claim recorded on Thursday 20 November
/// 2025: day 90 is Wednesday 18 February 2026. Entries 0 to 4 are the furnishing, its end, the notice, completion and the claim.
/// </summary>
public sealed class WhichActionTests
{
    private static JobBuilder Job(string recorded = "2025-11-20") =>
        new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..")
        .Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22")
        .ClaimRecorded(recorded, 6_430m, id: "first");

    private static Finding Action(JobBuilder job, string asOf = "2026-03-10") => job.On(asOf).Get("enforcement.last-day");

    // An action brought before the claim was recorded enforces it not; one of that day, or on a day in doubt that may be later, may.
    [Theory]
    [InlineData("2025-11-20", "2025-11-19", Standing.Lost)]
    [InlineData("2025-11-20", "2025-11-20", Standing.Kept)]
    [InlineData("2025-11-20", "2025-11-18..2025-11-19", Standing.Lost)]
    [InlineData("2025-11-20", "2025-11-19..2025-11-20", Standing.InDoubt)]
    [InlineData("2025-11-20", "2025-11-19..2025-11-24", Standing.InDoubt)]
    [InlineData("2025-11-20", "2025-11-20..2025-11-24", Standing.Kept)]
    [InlineData("2025-11-18..2025-11-20", "2025-11-17", Standing.Lost)]
    [InlineData("2025-11-18..2025-11-20", "2025-11-18", Standing.InDoubt)]
    [InlineData("2025-11-18..2025-11-20", "2025-11-19", Standing.InDoubt)]
    [InlineData("2025-11-18..2025-11-20", "2025-11-20", Standing.Kept)]
    [Proves("Civ. Code § 8460(a)")]
    public void An_action_enforces_a_claim_that_was_recorded_when_it_was_brought(string recorded, string filed, Standing expected) =>
        Assert.Equal(expected, Action(Job(recorded).ActionFiled(filed)).Standing);

    // An owner who had sold before the action need not be sued; where the day of the action is in doubt it must surely have sold before it.
    [Theory]
    [InlineData("2025-12-10..2025-12-15", "2025-12-10", Standing.Kept)]
    [InlineData("2025-12-10..2025-12-15", "2025-12-12", Standing.InDoubt)]
    [InlineData("2025-12-15", null, Standing.InDoubt)]
    [Proves("Civ. Code § 8461")]
    public void Only_an_owner_who_surely_had_sold_may_be_left_out(string filed, string? sold, Standing expected) =>
        Assert.Equal(expected, Action(Job().PartyWith("owner", p => p with { SoldOn = sold is null ? null : Day(sold) })
            .ActionOn(filed, ActionOn.Lien, null, null, "direct")).Standing);

    [Fact]
    [Proves("Civ. Code § 8461")]
    public void A_contractor_who_is_not_sued_leaves_the_owner_bound() =>
        Assert.Equal(Standing.Kept, Action(Job().ActionOn("2025-12-15", ActionOn.Lien, null, null, "owner")).Standing);

    // What ended before an action was brought was another.
    [Theory]
    [InlineData("2025-12-14", Standing.Kept)]
    [InlineData("2025-12-12..2025-12-14", Standing.Kept)]
    [InlineData("2025-12-15", Standing.Lost)]
    [InlineData("2025-12-14..2025-12-15", Standing.Lost)]
    [InlineData("2025-12-14..2025-12-20", Standing.Lost)]
    [Proves("Civ. Code § 8490")]
    public void An_order_from_before_the_action_did_not_end_it(string ended, Standing expected) =>
        Assert.Equal(expected, Action(Job().ActionFiled("2025-12-15").ActionEnded(ended, ActionEnd.Dismissed, false)).Standing);

    [Theory]
    [InlineData("2025-12-15..2025-12-20", "2025-12-16", Standing.Lost)]
    [InlineData("2025-12-15..2025-12-20", "2025-12-14", Standing.Kept)]
    [Proves("Civ. Code § 8490")]
    public void Of_an_action_brought_on_a_day_in_doubt_an_order_of_those_days_may_be_the_end(string filed, string ended,
        Standing expected) =>
        Assert.Equal(expected, Action(Job().ActionFiled(filed).ActionEnded(ended, ActionEnd.Dismissed, false)).Standing);

    // An order that releases the land, of before the claim, released another claim.
    [Theory]
    [InlineData("2025-11-20", "2025-11-19", Standing.Open)]
    [InlineData("2025-11-20", "2025-11-20", Standing.Lost)]
    [InlineData("2025-11-20", "2025-11-19..2025-11-21", Standing.Lost)]
    [InlineData("2025-11-18..2025-11-20", "2025-11-17", Standing.Open)]
    [InlineData("2025-11-18..2025-11-20", "2025-11-18", Standing.Lost)]
    [Proves("Civ. Code § 8490")]
    public void An_order_that_releases_the_land_ends_a_claim_that_was_recorded_then(string recorded, string ordered, Standing expected)
    {
        var action = Action(Job(recorded).ActionEnded(ordered, ActionEnd.ReleaseOrdered), "2026-02-02");
        Assert.Equal(expected, action.Standing);
        Assert.Equal(expected == Standing.Lost ? [5] : [], action.EntriesOf("The court ordered the property released"));
    }

    // An order in an action on another claim is no order on this one.
    [Fact]
    [Proves("Civ. Code § 8490")]
    public void An_order_in_the_action_on_an_earlier_claim_leaves_the_later_one()
    {
        var two = Job().ActionOn("2025-12-15", ActionOn.Lien, "first", "a").ClaimRecorded("2026-01-12", 6_430m, id: "second")
            .ActionEnded("2026-02-02", ActionEnd.ReleaseOrdered, of: "a");
        Assert.Equal(Standing.InDoubt, Action(two, "2026-02-03").Standing);
        Assert.Equal(Standing.Lost,
            Action(Job().ActionOn("2025-12-15", ActionOn.Lien, "first", "a").ActionEnded("2026-02-02", ActionEnd.ReleaseOrdered, of: "a"),
                "2026-02-03").Standing);
    }

    // What a second action adds or takes away. Each row: how the two ended (kept, settled, open, doubt, lost), in the order in which they
    // were filed.
    [Theory]
    [InlineData("kept", "doubt", Standing.Kept, 5)]
    [InlineData("doubt", "kept", Standing.Kept, 6)]
    [InlineData("kept", "kept", Standing.Kept, 5)]
    [InlineData("kept", "lost", Standing.Kept, 5)]
    [InlineData("lost", "kept", Standing.Kept, 6)]
    [InlineData("kept", "settled", Standing.Kept, 5)]
    [InlineData("settled", "kept", Standing.Kept, 6)]
    [InlineData("settled", "open", Standing.Done, 5)]
    [InlineData("open", "settled", Standing.Done, 6)]
    [InlineData("settled", "doubt", Standing.Done, 5)]
    [InlineData("open", "doubt", Standing.Open, 5)]
    [InlineData("doubt", "open", Standing.Open, 6)]
    [InlineData("doubt", "lost", Standing.InDoubt, 5)]
    [InlineData("lost", "doubt", Standing.InDoubt, 6)]
    [InlineData("lost", "open", Standing.Open, 6)]
    [InlineData("lost", "lost", Standing.Lost, 5)]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Civ. Code § 8490")]
    public void Of_several_actions_the_one_that_serves_the_claim_best_counts(string first, string second, Standing expected, int entry)
    {
        var job = Filed(Filed(Job(), "2025-12-15", "a", first), "2025-12-16", "b", second);
        var action = Action(End(End(job, first, "a"), second, "b"), "2026-02-02");
        Assert.Equal(expected, action.Standing);
        Assert.Equal([entry], action.EntriesOf("Action filed 2025-12-1"));

        // In doubt is what was brought in a small claims court.
        static JobBuilder Filed(JobBuilder job, string on, string id, string how) =>
            job.ActionOn(on, ActionOn.Lien, null, id).Which(e => (ActionFiled)e with { SmallClaims = how == "doubt" });
        static JobBuilder End(JobBuilder job, string how, string of) => how switch
        {
            "settled" => job.ActionEnded("2026-01-12", ActionEnd.Settled, of: of),
            "open" => job.ActionEnded("2026-01-12", ActionEnd.Dismissed, true, of),
            "lost" => job.ActionEnded("2026-01-12", ActionEnd.Dismissed, false, of),
            _ => job,
        };
    }

    // Of two actions it is not said which was won: won or pending, the claim is kept.
    [Theory]
    [InlineData(ActionEnd.Won, Standing.Kept)]
    [InlineData(ActionEnd.Settled, Standing.InDoubt)]
    [InlineData(ActionEnd.LostAtTrial, Standing.InDoubt)]
    [Proves("Civ. Code § 8490")]
    public void An_end_of_one_of_two_actions_matters_only_where_it_would_change_something(ActionEnd how, Standing expected) =>
        Assert.Equal(expected, Action(Job().ActionFiled("2025-12-15").ActionFiled("2025-12-16").ActionEnded("2026-02-02", how)).Standing);

    // A small claims action that came too late is no better for being doubtful otherwise too.
    [Theory]
    [InlineData("2026-02-18", Standing.InDoubt)]
    [InlineData("2026-02-19", Standing.Lost)]
    [Proves("Code Civ. Proc. § 116.220")]
    public void A_doubtful_action_that_came_too_late_is_lost(string filed, Standing expected) =>
        Assert.Equal(expected, Action(Job().ActionFiled(filed).Which(e => (ActionFiled)e with { SmallClaims = true })).Standing);

    // The owner in bankruptcy from 12 January to 10 February 2026: a suit filed in the stay is void, on either end of a day in doubt.
    [Theory]
    [InlineData("2026-01-10..2026-01-11", Standing.Kept)]
    [InlineData("2026-01-11..2026-01-12", Standing.InDoubt)]
    [InlineData("2026-02-10..2026-02-12", Standing.InDoubt)]
    [InlineData("2026-02-11..2026-02-12", Standing.Kept)]
    [Proves("11 U.S.C. § 362(a)")]
    public void A_suit_that_may_have_been_filed_in_the_stay_is_in_doubt(string filed, Standing expected) =>
        Assert.Equal(expected, Action(Job().Bankrupt("owner", "2026-01-12", "2026-02-10").ActionFiled(filed), "2026-02-16").Standing);

    // A stay to 19 November lies in the time to sue only if the claim was recorded by then; an order on the owner's petition ends it all
    // the same.
    [Theory]
    [InlineData("2025-11-18..2025-11-20", false, Standing.InDoubt)]
    [InlineData("2025-11-20", false, Standing.Lost)]
    [InlineData("2025-11-18..2025-11-20", true, Standing.Lost)]
    [Proves("11 U.S.C. § 362(a)")]
    public void A_stay_counts_from_the_earliest_day_of_recording_and_saves_no_claim_that_was_ordered_released(string recorded, bool ordered,
        Standing expected)
    {
        var job = Job(recorded).Bankrupt("owner", "2025-11-01", "2025-11-19");
        // Recorded on the 20th at the latest, the time stood still on no day: the last is 18 February.
        Assert.Equal(expected, Action(ordered ? job.ActionEnded("2026-01-12", ActionEnd.ReleaseOrdered) : job, ordered
            ? "2026-02-02" : recorded.Length > 10 ? "2026-02-18" : "2026-02-19").Standing);
    }
}
