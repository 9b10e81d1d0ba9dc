using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>
/// Demanded on Monday 1 June 2026, so due on Wednesday 1 July: more than 35 days unpaid on Thursday 6 August; the notice of intent is
/// posted by Saturday 1 August for a notice on that day.
/// </summary>
public sealed class StopWorkTests
{
    private static JobBuilder Job(bool? written = true, ClaimantRole role = ClaimantRole.DirectContractor) => new JobBuilder()
        .Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct")
        .Contract(c => c with { Written = written, PaymentDueDays = 30 }).Furnished("2026-03-02", 50000m)
        .PaymentDemanded("2026-06-01", 12000m);

    private static Finding? Stop(JobBuilder job, string asOf = "2026-08-06") => job.On(asOf).Find("stop-work.notice-first-day");

    [Theory]
    [InlineData("2026-08-05", Standing.NotYet)]
    [InlineData("2026-08-06", Standing.Open)]
    [Proves("Civ. Code § 8832")]
    public void Notice_may_be_given_once_payment_is_more_than_35_days_late(string asOf, Standing expected)
    {
        var stop = Stop(Job(), asOf)!;
        Assert.Equal(["2026-08-06"], stop.DaysOf());
        Assert.Equal(expected, stop.Standing);
    }

    // A notice on Thursday 6 August: posted by Saturday 1 August.
    [Fact]
    [Proves("Civ. Code § 8834(a)")]
    [Proves("Civ. Code § 8838(a)")]
    public void Intent_is_posted_five_days_before()
    {
        var posting = Job().On("2026-08-06").Get("stop-work.posting");
        Assert.Equal(["2026-08-01"], posting.DaysOf());
        Assert.Equal(Standing.Open, posting.Standing);
        Assert.True(posting.Says("posted today, the notice may be given from 2026-08-11 (Tue)"));
        Assert.Empty(posting.Questions);
        Assert.Equal(Standing.Lost, Job(false).On("2026-08-06").Get("stop-work.posting").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8834(b)")]
    public void The_copies_go_out_on_the_day_of_the_notice_and_not_of_the_posting()
    {
        Assert.True(Stop(Job())!.Says("On the very day on which the notice is given, give a copy"));
        Assert.False(Job().On("2026-08-06").Get("stop-work.posting").Says("copy"));
    }

    [Theory]
    [InlineData(true, Standing.Open)]
    [InlineData(null, Standing.InDoubt)]
    [InlineData(false, Standing.Lost)]
    [Proves("Civ. Code § 8830")]
    public void Only_under_a_written_contract(bool? written, Standing expected)
    {
        Assert.Equal(expected, Stop(Job(written))!.Standing);
        Assert.Equal(written is null, Stop(Job(written))!.Asks("in writing"));
    }

    [Fact]
    [Proves("Civ. Code § 8832")]
    public void Only_a_direct_contractor_and_only_after_a_demand()
    {
        Assert.Null(Stop(Job(role: ClaimantRole.Subcontractor)));
        Assert.Null(Stop(new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Furnished("2026-03-02", 50000m)));
    }

    [Fact]
    [Proves("Civ. Code § 8832")]
    public void A_payment_in_full_ends_it_and_a_part_does_not()
    {
        Assert.Null(Stop(Job().Paid("2026-07-15", 12000m)));
        Assert.NotNull(Stop(Job().Paid("2026-07-15", 11999m)));
    }

    [Fact]
    [Proves("Civ. Code § 8830")]
    public void A_dispute_leaves_it_in_doubt_for_it_may_be_about_the_performance()
    {
        var stop = Stop(Job().Disputed("2026-06-20", 100m))!;
        Assert.Equal(Standing.InDoubt, stop.Standing);
        Assert.True(stop.Asks("performance"));
    }

    private static JobBuilder Contract60(int? days, string? due = null) =>
        new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Price(60_000m)
        .Contract(c => c with { Written = true, PaymentDueDays = days }).Furnished("2025-08-05", 20_000m)
        .Add(i => new PaymentDemanded { Index = i, On = When("2025-10-06"), Amount = 20_000m, Due = due is null ? null : Day(due) });

    // Demanded on 6 October: in 60 days 5 December, in ten days 16 October; 35 days later 9 January and 20 November.
    [Theory]
    [InlineData(60, null, "2026-01-10", Standing.NotYet)]
    [InlineData(10, null, "2025-11-21", Standing.Open)]
    [InlineData(60, "2025-10-16", "2025-11-21", Standing.Open)]
    [InlineData(null, "2025-10-16", "2025-11-21", Standing.Open)]
    [InlineData(null, null, "2025-12-11", Standing.InDoubt)]
    [Proves("Civ. Code § 8832")]
    public void The_35_days_are_counted_from_the_day_that_the_contract_sets(int? days, string? due, string first, Standing expected)
    {
        var stop = Contract60(days, due).On("2025-12-15").Get("stop-work.notice-first-day");
        Assert.Equal([first], stop.DaysOf());
        Assert.Equal(expected, stop.Standing);
        Assert.Equal(days is null && due is null, stop.Asks("(contract.paymentDueDays)"));
    }

    // Of 20,000 demanded on 1 September 5,000 are unpaid; 8,000 demanded on 20 November fall due on 21 December, a Sunday.
    [Fact]
    [Proves("Civ. Code § 8830")]
    public void The_amount_is_what_is_overdue_and_nothing_else()
    {
        var job = new JobBuilder().Role(ClaimantRole.DirectContractor, "owner")
            .Contract(c => c with { Written = true, PaymentDueDays = 30 }).Furnished("2025-08-05", 28_000m)
            .PaymentDemanded("2025-09-01", 20_000m).Paid("2025-10-20", 15_000m).PaymentDemanded("2025-11-20", 8_000m);
        var stop = job.On("2025-12-15").Get("stop-work.notice-first-day");
        Assert.Equal(5_000m, stop.Amount);
        Assert.Equal(["2025-11-06"], stop.DaysOf());
        Assert.Equal([1], stop.Why[0].Facts.Select(f => f.Index));
        // 22 December and 35 days: from 27 January the 8,000 are overdue too.
        Assert.Equal(5_000m, job.On("2026-01-26").Get("stop-work.notice-first-day").Amount);
        Assert.Equal(13_000m, job.On("2026-01-27").Get("stop-work.notice-first-day").Amount);
    }

    private static JobBuilder Given(string on, params string[] to) => Job().Party("framer", PartyCapacity.Subcontractor, "Framer Co.")
        .Add(i => new StopWorkNoticeGiven { Index = i, On = When(on), To = to });

    [Theory]
    [InlineData("2026-08-16", Standing.NotYet)]
    [InlineData("2026-08-17", Standing.Open)]
    [Proves("Civ. Code § 8830")]
    [Proves("Civ. Code § 8844(a)")]
    public void Work_may_stop_on_the_eleventh_day_after_the_notice(string asOf, Standing expected)
    {
        var stop = Given("2026-08-06", "owner", "framer").On(asOf).Get("stop-work.first-day");
        Assert.Equal(["2026-08-17"], stop.DaysOf());
        Assert.Equal(expected, stop.Standing);
        Assert.Equal(12_000m, stop.Amount);
        Assert.True(stop.Says("expedited proceeding"));
        Assert.Empty(stop.Questions);
        Assert.Contains("2026-08-01", Given("2026-08-06", "owner", "framer").On(asOf).Get("stop-work.posting").Questions[0].Text,
            StringComparison.Ordinal);
    }

    // § 8834(a): at least five days before the notice of 6 August, so by the 1st.
    [Theory]
    [InlineData("2026-07-28", Standing.Done, Standing.Open)]
    [InlineData("2026-08-01", Standing.Done, Standing.Open)]
    [InlineData("2026-08-02", Standing.InDoubt, Standing.InDoubt)]
    [InlineData(null, Standing.InDoubt, Standing.Open)]
    [Proves("Civ. Code § 8834(a)")]
    [Proves("Civ. Code § 8838(a)")]
    public void Notice_of_intent_is_posted_five_days_before(string? posted, Standing posting, Standing stop)
    {
        var on = Job().Party("framer", PartyCapacity.Subcontractor, "Framer Co.")
            .Add(i => new StopWorkNoticeGiven { Index = i, On = When("2026-08-06"), To = ["owner", "framer"], Posted = posted is null
                ? null : Day(posted) }).On("2026-08-20");
        Assert.Equal((posting, stop), (on.Get("stop-work.posting").Standing, on.Get("stop-work.first-day").Standing));
        Assert.Equal(posted is null, on.Get("stop-work.posting").Asks("(stop-work-notice-given.posted)"));
        Assert.Equal(posted == "2026-08-02", on.Get("stop-work.posting").Says("give the notice again"));
        Assert.Equal(posted == "2026-08-02", on.Get("stop-work.first-day").Says("give the notice again"));
    }

    // A day in doubt: told by its ends, or by the last of them alone. In time is what ends by the 1st, too late what begins after it.
    [Theory]
    [InlineData("2026-07-20", "2026-08-01", Standing.Done, Standing.Open, "between 2026-07-20 (Mon) and 2026-08-01 (Sat), in time")]
    [InlineData(null, "2026-08-01", Standing.Done, Standing.Open, "by 2026-08-01 (Sat), in time")]
    [InlineData("2026-07-20", "2026-08-02", Standing.InDoubt, Standing.InDoubt, "which may be less than 5 days")]
    [InlineData(null, "2026-08-02", Standing.InDoubt, Standing.InDoubt, "which may be less than 5 days")]
    [InlineData("2026-08-02", "2026-08-04", Standing.InDoubt, Standing.InDoubt, ", less than 5 days")]
    [Proves("Civ. Code § 8834(a)")]
    [Proves("Civ. Code § 8838(a)")]
    public void A_posting_on_a_day_in_doubt_is_judged_by_both_ends(string? posted, string? by, Standing posting, Standing stop, string says)
    {
        var on = Job().Party("framer", PartyCapacity.Subcontractor, "Framer Co.")
            .Add(i => new StopWorkNoticeGiven { Index = i, On = When("2026-08-06"), To = ["owner", "framer"], Posted = posted is null
                ? null : Day(posted), PostedBy = by is null ? null : Day(by) }).On("2026-08-20");
        Assert.Equal((posting, stop), (on.Get("stop-work.posting").Standing, on.Get("stop-work.first-day").Standing));
        Assert.True(on.Get("stop-work.posting").Says(says));
        Assert.Equal(says.StartsWith("which may", StringComparison.Ordinal), on.Get("stop-work.posting")
            .Asks("(stop-work-notice-given.posted)"));
        Assert.Equal(says.StartsWith("which may", StringComparison.Ordinal), on.Get("stop-work.first-day")
            .Says("perhaps less than 5 days"));
    }

    // "Give the notice again": the one given last is the one before which it must have been posted.
    [Fact]
    [Proves("Civ. Code § 8834(a)")]
    public void A_notice_given_again_is_judged_by_its_own_day()
    {
        var on = Job().Add(i => new StopWorkNoticeGiven { Index = i, On = When("2026-08-06"), To = ["owner"], Posted = Day("2026-08-04") })
            .Add(i => new StopWorkNoticeGiven { Index = i, On = When("2026-08-10"), To = ["owner"], Posted = Day("2026-08-04") })
            .On("2026-08-21");
        Assert.Equal((Standing.Done, Standing.Open), (on.Get("stop-work.posting").Standing, on.Get("stop-work.first-day").Standing));
        Assert.Equal(["2026-08-05"], on.Get("stop-work.posting").DaysOf());
    }

    [Fact]
    [Proves("Civ. Code § 8832")]
    [Proves("Civ. Code § 8834(b)")]
    public void A_notice_too_early_or_to_the_wrong_ones_leaves_the_right_in_doubt()
    {
        Assert.Null(Job().On("2026-08-20").Find("stop-work.first-day"));
        var early = Given("2026-08-05", "owner", "framer").On("2026-08-20").Get("stop-work.first-day");
        Assert.Equal(Standing.InDoubt, early.Standing);
        Assert.True(early.Says("too early: give it again"));
        var unserved = Given("2026-08-06", "framer").On("2026-08-20").Get("stop-work.first-day");
        Assert.Equal(Standing.InDoubt, unserved.Standing);
        Assert.True(unserved.Says("given to the owner"));
        var untold = Given("2026-08-06", "owner").On("2026-08-20").Get("stop-work.first-day");
        Assert.Equal(Standing.InDoubt, untold.Standing);
        Assert.True(untold.Says("No copy to Framer Co."));
        var silent = Given("2026-08-06").On("2026-08-20").Get("stop-work.first-day");
        Assert.Equal(Standing.Open, silent.Standing);
        Assert.True(silent.Asks("(stop-work-notice-given.to)"));
    }

    // Done on Tuesday 2 June 2026: Friday 12 June.
    [Theory]
    [InlineData("2026-06-12", Standing.NotYet)]
    [InlineData("2026-06-13", Standing.Open)]
    [Proves("Civ. Code § 8816(a)")]
    [Proves("Civ. Code § 8816(b)")]
    public void The_payer_answers_within_ten_days_that_disputed_work_is_done(string asOf, Standing expected)
    {
        static JobBuilder Done(ClaimantRole role) => new JobBuilder().Role(role).Furnished("2026-03-02", 50000m)
            .Add(i => new DisputedWorkDone { Index = i, On = When("2026-06-02") });
        var found = Done(ClaimantRole.Subcontractor).On(asOf).Get("retention.disputed-work");
        Assert.Equal(["2026-06-12"], found.DaysOf());
        Assert.Equal(expected, found.Standing);
        Assert.Null(Done(ClaimantRole.Supplier).On(asOf).Find("retention.disputed-work"));
    }
}
