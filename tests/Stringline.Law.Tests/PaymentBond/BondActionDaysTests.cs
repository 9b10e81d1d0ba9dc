using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Tests.StopPaymentNotice;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.PaymentBond;

/// <summary>
/// The action on the bond, day by day (Civ. Code §§ 8609, 8610, 9558). Entries 0 to 5 of the public job are the search, two furnishings,
/// their end on 1 October
/// 2025, the preliminary notice and the acceptance of 22 October; entry 6 is the action.
/// </summary>
public sealed class BondActionDaysTests
{
    private static JobBuilder Ceased(string ended = "2025-10-01") =>
        Public().Furnished("2025-08-05", 6000m).Furnished("2025-10-01", 430m).Ended(ended).NoticedPublic().Accepted();

    private static Finding Last(JobBuilder job, string asOf = "2026-04-01") => job.On(asOf).Get("payment-bond.action-last-day");

    private static JobBuilder OnBond(JobBuilder job, string on, string? id = null, params string[] against) =>
        job.ActionOn(on, ActionOn.PaymentBond, null, id, against);

    // "At any time after the claimant ceases to provide work": from 2 October; where that day is in doubt, surely only after its latest.
    [Theory]
    [InlineData("2025-10-01", "2025-10-01", Standing.InDoubt)]
    [InlineData("2025-10-01", "2025-10-01..2025-10-03", Standing.InDoubt)]
    [InlineData("2025-10-01", "2025-10-02", Standing.Kept)]
    [InlineData("2025-10-01", "2025-10-02..2025-10-03", Standing.Kept)]
    [InlineData("2025-10-01..2025-10-05", "2025-10-05", Standing.InDoubt)]
    [InlineData("2025-10-01..2025-10-05", "2025-10-06", Standing.Kept)]
    [InlineData("2025-09-15", "2025-10-01", Standing.InDoubt)] // work was furnished after that
    [InlineData("2025-10-01", "?", Standing.Open)]
    [Proves("Civ. Code § 9558")]
    public void It_is_brought_after_the_claimant_surely_ceased(string ended, string filed, Standing expected)
    {
        var last = Last(OnBond(Ceased(ended), filed));
        Assert.Equal(expected, last.Standing);
        Assert.Equal(expected == Standing.InDoubt ? [6] : [], last.EntriesOf("it may be thrown out as brought too early"));
        Assert.Equal(expected == Standing.Kept ? [6] : [], last.EntriesOf("it counts here if it is on the bond too"));
    }

    // Nobody says that the claimant ceased: what it furnished last, on 5 August, shows at least that it had not before.
    [Theory]
    [InlineData("2025-08-05", Standing.InDoubt)]
    [InlineData("2025-08-06", Standing.Kept)]
    [Proves("Civ. Code § 9558")]
    public void While_no_end_is_told_an_action_is_early_by_the_last_work(string filed, Standing expected) =>
        Assert.Equal(expected,
            Last(OnBond(Public().Furnished("2025-08-05", 6430m).NoticedPublic("2025-08-05").Accepted(), filed), "2025-12-01").Standing);

    [Theory]
    [InlineData("2025-10-01", Standing.NotYet)]
    [InlineData("2025-10-02", Standing.InDoubt)]
    [InlineData("2025-10-05", Standing.InDoubt)]
    [InlineData("2025-10-06", Standing.Open)]
    [Proves("Civ. Code § 9558")]
    public void The_first_day_is_sure_from_the_day_after_the_latest_end(string asOf, Standing expected)
    {
        var first = Ceased("2025-10-01..2025-10-05").On(asOf).Get("payment-bond.action-first-day");
        Assert.Equal(["2025-10-02 ceased on the earliest day", "2025-10-06 ceased on the latest day"], first.Lines());
        Assert.Equal((expected, JobBuilder.Day("2025-10-06")), (first.Standing, first.Band!.Latest!.Day));
        Assert.True(first.Says("after the claimant ceases to provide work: from 2025-10-06"));
        Assert.Empty(first.Questions);
        var one = Ceased().On("2025-12-01").Get("payment-bond.action-first-day");
        Assert.Equal(["2025-10-02 the day after the claimant ceased to provide work"], one.Lines());
        var going = Public().Furnished("2025-08-05", 6000m).NoticedPublic().On("2025-12-01").Get("payment-bond.action-first-day");
        Assert.True(going.Says("the file does not say that it has"));
        Assert.Null(going.Band);
        Assert.Null(Public().On("2025-12-01").Find("payment-bond.action-first-day"));
    }

    // Of two ends the later counts.
    [Fact]
    [Proves("Civ. Code § 9558")]
    public void The_last_end_that_is_told_counts() =>
        Assert.Equal(["2025-10-11"], Ceased().Ended("2025-10-10").On("2025-12-01").Get("payment-bond.action-first-day").DaysOf());

    [Theory]
    [InlineData("surety", "2026-04-01", Standing.Kept)]
    [InlineData("direct", "2026-04-01", Standing.InDoubt)]
    [InlineData("direct", "2026-08-03", Standing.Lost)]
    [Proves("Civ. Code § 9558")]
    public void Against_whom_it_is_matters_while_it_is_in_time(string against, string filed, Standing expected)
    {
        var last = Last(OnBond(Ceased(), filed, null, against), "2026-08-10");
        Assert.Equal(expected, last.Standing);
        Assert.Equal(against == "surety" ? [] : [6], last.EntriesOf("but not against the surety: join it in time"));
    }

    // Of two actions one that may be good is left where the other was lost, whichever was filed first.
    [Theory]
    [InlineData("doubt", "lost", Standing.InDoubt)]
    [InlineData("lost", "doubt", Standing.InDoubt)]
    [InlineData("lost", "kept", Standing.Kept)]
    [InlineData("kept", "lost", Standing.Kept)]
    [InlineData("lost", "lost", Standing.Lost)]
    [InlineData("won", "lost", Standing.Done)]
    [InlineData("doubt", "settled", Standing.Done)]
    [InlineData("lost", "late", Standing.Lost)]
    [Proves("Civ. Code § 9558")]
    public void An_action_that_was_lost_settles_nothing_while_another_may_be_good(string first, string second, Standing expected)
    {
        var job = OnBond(OnBond(Ceased(), "2025-11-10", "a", first == "doubt" ? ["direct"] : []), second == "late"
            ? "2026-08-03" : "2025-12-10", "b", second == "doubt" ? ["direct"] : []);
        Assert.Equal(expected, Last(End(End(job, first, "a"), second, "b"), second == "late" ? "2026-08-10" : "2026-04-01").Standing);

        static JobBuilder End(JobBuilder job, string how, string of) => how switch
        {
            "lost" => job.ActionEnded("2026-03-02", ActionEnd.LostAtTrial, of: of),
            "won" => job.ActionEnded("2026-03-02", ActionEnd.Won, of: of),
            "settled" => job.ActionEnded("2026-03-02", ActionEnd.Settled, of: of),
            _ => job,
        };
    }

    // The bond pays money, and a small claims court gives it: it forecloses nothing, and nothing is to be foreclosed.
    [Fact]
    [Proves("Civ. Code § 9558")]
    public void An_action_in_a_small_claims_court_is_one_on_the_bond() =>
        Assert.Equal(Standing.Kept,
            Last(OnBond(Ceased(), "2025-11-10", null, "surety").Action(a => a with { SmallClaims = true })).Standing);

    [Fact]
    [Proves("Civ. Code § 9558")]
    public void What_the_action_is_and_how_it_ended_is_told_and_asked()
    {
        var ended = Last(OnBond(Ceased(), "2025-11-10").ActionEnded("2026-03-02", ActionEnd.Won));
        Assert.Equal([7], ended.EntriesOf("The action ended 2026-03-02"));
        var debt = Last(Ceased().ActionOn("2025-11-10", ActionOn.Debt).ActionEnded("2026-03-02", ActionEnd.Won));
        Assert.Equal([6], debt.EntriesOf("is not on the payment bond"));
        Assert.False(debt.Says("The action ended"));
        Assert.Empty(debt.Questions);
        var open = Last(Ceased().ActionFiled("2025-11-10"));
        Assert.Equal([6], open.Corrected("Is the action on the payment bond too?"));
        Assert.Equal([6], open.Corrected("Was the surety on the payment bond sued?"));
        Assert.Empty(Last(OnBond(Ceased(), "2025-11-10", null, "surety")).Questions);
        // A release order is no end of an action on the bond; of two actions an end that names neither may be of either.
        var released = Last(OnBond(Ceased(), "2025-11-10").ActionEnded("2026-03-02", ActionEnd.ReleaseOrdered));
        Assert.Equal((Standing.Kept, false), (released.Standing, released.Says("The action ended")));
        Assert.Equal(Standing.InDoubt,
            Last(OnBond(OnBond(Ceased(), "2025-11-10", "a"), "2025-12-10", "b").ActionEnded("2026-03-02", ActionEnd.LostAtTrial)).Standing);
    }

    [Fact]
    [Proves("Civ. Code § 9560(a)")]
    public void Where_no_notice_was_given_in_time_there_is_none_to_bring()
    {
        var lost = Last(Public().Furnished("2025-08-05", 6430m).Ended("2025-08-05").Accepted());
        Assert.Equal((Standing.Lost, true), (lost.Standing, lost.Says("neither was given in time")));
        var good = Last(Ceased());
        Assert.False(good.Says("neither was given in time"));
        Assert.True(good.Says("the time to give a stop payment notice ends 2026-01-20"));
        Assert.NotNull(good.Band!.Latest);
        Assert.True(Last(Public()).Says("that time does not run yet"));
        Assert.False(good.Says("that time does not run yet"));
    }

    // Private: completed on 22 October and recorded before, six months; recorded after, four years from the last work on the earliest day
    // it may have been.
    [Theory]
    [InlineData("2025-10-21", "2025-08-05", new[] { "2026-04-22" })]
    [InlineData("2025-10-23", "2025-08-05", new[] { "2029-08-05" })]
    [InlineData("2025-10-23", "2025-08-05..2025-08-07", new[] { "2029-08-05" })]
    [Proves("Civ. Code § 8610")]
    public void A_private_bond_recorded_after_completion_leaves_four_years_from_the_last_work(string recorded, string furnished,
        string[] days)
    {
        var job = Private().PaymentBond(recorded).Furnished(furnished, 6430m).Notice("2025-08-14").Completed("2025-10-22");
        Assert.Equal(days, Last(job).DaysOf());
        Assert.Equal(recorded == "2025-10-23", Last(job).RuledOut("Civ. Code § 8610"));
        Assert.NotNull(Last(job).Band!.Latest);
    }
}
