using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>
/// Labor ceased on Wednesday 1 October 2025 and nothing is told of completion: the work may have been finished that day, so that 90 days
/// end on Tuesday 30 December; or it was left unfinished, complete in law on the sixtieth day, 30 November, and 90 days end on Saturday 28
/// February 2026.
/// </summary>
public sealed class FinishedWhenLaborCeasedTests
{
    private static JobBuilder Job(bool? unfinished = null) => new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 6430m)
        .Ended("2025-09-12").LaborCeased("2025-10-01", unfinished: unfinished);

    private static Finding Last(JobBuilder job, string asOf = "2025-12-15") => job.On(asOf).Get("claim-of-lien.last-day");

    [Theory]
    [InlineData(null)]
    [InlineData(false)]
    [Proves("Civ. Code § 8180(a)(3)")]
    [Proves("Civ. Code § 8180(a)(1)")]
    public void Both_days_stand_and_the_earlier_is_planned_on(bool? unfinished)
    {
        Assert.Equal(["2025-12-30", "2026-02-28"], Last(Job(unfinished)).DaysOf());
        Assert.Equal("2025-12-30", Last(Job(unfinished)).Plan());
        Assert.Equal(Standing.Open, Last(Job(unfinished)).Standing);
        Assert.Equal(Standing.InDoubt, Job(unfinished).On("2025-12-15").Get("completion.day").Standing);
        Assert.True(Job(unfinished).On("2025-12-15").Get("completion.day").Asks("(labor-ceased.unfinished)"));
        Assert.Equal(Standing.InDoubt, Last(Job(unfinished), "2025-12-31").Standing);
        Assert.Equal(Standing.Lost, Last(Job(unfinished), "2026-03-03").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void Left_unfinished_it_is_complete_on_the_sixtieth_day_alone()
    {
        Assert.Equal(["2026-02-28"], Last(Job(unfinished: true)).DaysOf());
        Assert.Equal(Standing.Done, Job(unfinished: true).On("2025-12-15").Get("completion.day").Standing);
        Assert.False(Job(unfinished: true).On("2025-12-15").Get("completion.day").Asks("(labor-ceased.unfinished)"));
        // One stop of two is not answered for.
        Assert.Equal(["2025-12-30", "2026-02-28"], Last(Job(unfinished: true).LaborCeased("2025-08-20", "2025-09-01")).DaysOf());
    }

    [Fact]
    [Proves("Civ. Code § 8180(a)(1)")]
    public void Said_to_be_complete_it_is_asked_no_more()
    {
        Assert.Equal(["2026-01-05"], Last(Job().Completed("2025-10-07")).DaysOf());
        Assert.False(Job().Completed("2025-10-07").On("2025-12-15").Get("completion.day").Asks("(labor-ceased.unfinished)"));
    }

    // Occupied by the owner, labor not told: use alone completes nothing (§ 8180(a)(2)). It is planned on, and nothing is surely lost by
    // it.
    [Theory]
    [InlineData(CompletionTheory.Occupation)]
    [InlineData(CompletionTheory.Acceptance)]
    [InlineData(CompletionTheory.Cessation)]
    [Proves("Civ. Code § 8180(a)(2)")]
    [Proves("Civ. Code § 8180(b)")]
    public void A_day_on_which_a_fact_is_wanting_is_planned_on_and_loses_nothing(CompletionTheory by)
    {
        var job = new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 6430m).Ended("2025-10-01").Completed("2025-10-01", by);
        Assert.Equal("2025-12-30", Last(job).Plan());
        Assert.Equal(Standing.InDoubt, Last(job, "2026-01-05").Standing);
        Assert.Null(Last(job).Band!.Latest);
        Assert.Equal(Standing.Lost, Last(job.Completed("2025-10-01"), "2026-01-05").Standing);
    }

    // The owner's notice alone says that the work was complete on 1 October: recorded on the 8th, 30 days end on 7 November.
    [Fact]
    [Proves("Civ. Code § 8182(d)")]
    public void The_owners_notice_alone_loses_nothing_before_it_is_known_that_the_work_was_complete()
    {
        var job = new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 6430m).Ended("2025-09-12")
            .OwnerRecorded("2025-10-08", states: "2025-10-01").OwnerToldUs("2025-10-10");
        Assert.Equal("2025-11-07", Last(job, "2025-11-03").Plan());
        Assert.Equal(Standing.InDoubt, Last(job, "2026-02-03").Standing);
        Assert.Equal(Standing.Lost, Last(job.Completed("2025-10-01"), "2026-02-03").Standing);
        // Held to have no effect, it is no better than what somebody disputes: our own last work is planned on, 12 September.
        Assert.Equal("2025-12-11", Last(new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 6430m).Ended("2025-09-12")
            .OwnerRecorded("2025-10-08", states: "2025-10-01", heldIneffective: true), "2025-11-03").Plan());
    }
}
