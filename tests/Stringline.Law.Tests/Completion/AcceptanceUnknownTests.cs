using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>
/// Nobody sends the claimant the resolution by which a public entity accepts the work (Civ. Code § 9200(a)), so it may have been taken on
/// any day since the last one on which work was surely going on: that day is planned on. Counted apart with Python's calendar arithmetic.
/// </summary>
public sealed class AcceptanceUnknownTests
{
    private static JobBuilder Job() => new JobBuilder().PublicWork().Furnished("2025-08-05", 6430m).Ended("2025-08-05")
        .Notice("2025-08-14", Manner.CertifiedMail, "city", "direct");

    [Theory]
    [InlineData("2025-11-03", Standing.Open)]
    [InlineData("2025-11-04", Standing.InDoubt)]
    [InlineData("2026-06-20", Standing.InDoubt)]
    [Proves("Civ. Code § 9356(b)")]
    [Proves("Civ. Code § 9200(a)")]
    public void The_stop_payment_notice_is_planned_on_ninety_days_after_the_last_work_and_never_lost_by_it(string asOf, Standing expected)
    {
        var last = Job().On(asOf).Get("stop-payment-notice.last-day");
        Assert.Equal(["2025-11-03"], last.DaysOf());
        Assert.Equal(("2025-11-03", expected), (last.Plan(), last.Standing));
        Assert.Null(last.Band!.Latest);
    }

    // The notice's time ends on Monday 3 November 2025 at the earliest: six months later is Sunday 3 May 2026, the 182nd day the Monday.
    [Fact]
    [Proves("Civ. Code § 9558")]
    public void The_action_on_the_bond_is_planned_on_six_months_after_that()
    {
        var action = Job().On("2025-12-01").Get("payment-bond.action-last-day");
        Assert.Equal(["2026-05-03", "2026-05-04"], action.DaysOf());
        Assert.Equal("2026-05-01", action.Plan());
        Assert.Null(action.Band!.Latest);
    }

    [Fact]
    [Proves("Civ. Code § 9200(a)")]
    public void That_it_was_not_accepted_is_not_told_as_a_fact()
    {
        var completion = Job().On("2025-12-01").Get("completion.day");
        Assert.Equal((Standing.NotYet, "2025-08-05"), (completion.Standing, completion.DaysOf().Single()));
        Assert.True(completion.Says("The file does not say that the public entity accepted the work"));
        Assert.False(completion.Says("has not accepted"));
        Assert.True(completion.Asks("accepted the work, and on which day"));
        Assert.True(completion.Asks("(completed)"));
    }

    // What the entity's recorded notice states is its own word; where labor had stopped before it, the work may have been accepted before.
    [Theory]
    [InlineData(true, new[] { "2025-08-12", "2025-10-11", "2025-10-22" })]
    [InlineData(false, new[] { "2025-10-22" })]
    [Proves("Civ. Code § 9200(a)")]
    [Proves("Civ. Code § 9204(c)")]
    public void A_notice_of_completion_settles_the_day_unless_labor_stopped_before_it(bool stopped, string[] expected)
    {
        var job = Job().OwnerRecorded("2025-10-29", states: "2025-10-22");
        Assert.Equal(expected, (stopped ? job.LaborCeased("2025-08-12") : job).On("2025-12-01").Get("completion.day").DaysOf());
    }

    // Of the whole work: its commencement, the claimant's last delivery, the day the claimant was done, and the last known day of labor.
    [Theory]
    [InlineData(null, null, null, null, "2025-08-05")]
    [InlineData("2025-09-15", null, null, null, "2025-09-15")]
    [InlineData(null, "2025-11-18", null, null, "2025-11-18")]
    [InlineData("2025-09-15", "2025-09-12", "2025-09-30", null, "2025-09-30")]
    [InlineData(null, null, "2025-09-02", "2025-10-06", "2025-10-06")]
    [InlineData("2025-12-08", "2025-11-18", "2025-09-02", "2025-10-06", "2025-12-08")]
    [Proves("Civ. Code § 9200(a)")]
    public void Completion_is_no_earlier_than_the_last_day_on_which_the_work_was_surely_going_on(string? commenced, string? ended,
        string? ceased, string? resumed, string expected)
    {
        var job = new JobBuilder().PublicWork().Furnished("2025-08-05", 6430m);
        if (commenced is not null)
            job.Work(w => w with { Commenced = JobBuilder.Day(commenced), StateContractAct = true });
        if (ended is not null)
            job.Ended(ended);
        if (ceased is not null)
            job.LaborCeased(ceased, resumed);
        job.Work(w => w with { StateContractAct = true });
        Assert.Equal([expected], job.On("2026-02-02").Get("completion.day").DaysOf());
    }

    [Fact]
    [Proves("Civ. Code § 9200(a)")]
    public void An_acceptance_that_is_disputed_leaves_the_earlier_day_to_plan_on_and_an_undisputed_one_does_not()
    {
        Assert.Equal(["2025-08-05", "2025-10-22"], Job().Completed("2025-10-22", CompletionTheory.Acceptance, contested: true)
            .On("2025-12-01").Get("completion.day").DaysOf());
        Assert.Equal(["2025-10-22"], Job().Completed("2025-10-22", CompletionTheory.Acceptance).On("2025-12-01").Get("completion.day")
            .DaysOf());
    }

    // A notice that the entity recorded says that the work was accepted, though nobody entered the acceptance.
    [Theory]
    [InlineData(OwnerNotice.Completion, "2025-10-22", new[] { "2025-10-22" })]
    [InlineData(OwnerNotice.Acceptance, "2025-10-22", new[] { "2025-10-22" })]
    [InlineData(OwnerNotice.Completion, null, new[] { "2025-10-14", "2025-10-29" })]
    [InlineData(OwnerNotice.Acceptance, null, new[] { "2025-10-14", "2025-10-29" })]
    [InlineData(OwnerNotice.Cessation, "2025-10-22", new[] { "2025-08-05" })]
    [Proves("Civ. Code § 9204(c)")]
    public void The_completion_that_a_recorded_notice_states_is_taken_for_it(OwnerNotice kind, string? states, string[] expected) =>
        Assert.Equal(expected, Job().OwnerRecorded("2025-10-29", kind, states).On("2025-12-01").Get("completion.day").DaysOf());

    [Fact]
    [Proves("Civ. Code § 9204(c)")]
    public void A_notice_held_to_have_no_effect_or_for_one_contract_alone_says_nothing_of_the_whole_work()
    {
        Assert.Equal(["2025-08-05"], Job().OwnerRecorded("2025-10-29", states: "2025-10-22", heldIneffective: true).On("2025-12-01")
            .Get("completion.day").DaysOf());
        Assert.Equal(["2025-08-05"], Job().OwnerRecorded("2025-10-29", states: "2025-10-22", contractOf: "direct").On("2025-12-01")
            .Get("completion.day").DaysOf());
    }

    [Theory]
    [InlineData("2025-11-26", Standing.Open)]
    [InlineData("2025-11-27", Standing.Lost)]
    [Proves("Civ. Code § 9356(a)")]
    public void A_recorded_notice_of_acceptance_ends_the_time_thirty_days_later_as_one_of_completion_does(string asOf, Standing expected)
    {
        var last = Job().Completed("2025-10-22", CompletionTheory.Acceptance)
            .OwnerRecorded("2025-10-27", OwnerNotice.Acceptance, "2025-10-22").On(asOf).Get("stop-payment-notice.last-day");
        Assert.Equal(["2025-11-26"], last.DaysOf());
        Assert.Equal(expected, last.Standing);
        Assert.True(last.Says("notice of acceptance"));
    }

    [Fact]
    [Proves("Civ. Code § 9356(b)")]
    public void Idle_labor_under_the_State_Contract_Act_gives_no_day_but_a_caution()
    {
        var under = Job().IndexSearched("2025-12-01").LaborCeased("2025-08-29").Work(w => w with { StateContractAct = true })
            .On("2025-12-01").Get("stop-payment-notice.last-day");
        Assert.Equal(["2025-11-27"], under.DaysOf()); // 90 days after 29 August, the last day on which the work was surely going on
        Assert.True(under.Says("somebody may count the 90 days from the idleness"));
        Assert.False(Job().LaborCeased("2025-08-29").Work(w => w with { StateContractAct = false }).On("2025-12-01")
            .Get("stop-payment-notice.last-day").Says("from the idleness"));
        Assert.False(Job().Work(w => w with { StateContractAct = true }).On("2025-12-01").Get("stop-payment-notice.last-day")
            .Says("from the idleness"));
    }
}
