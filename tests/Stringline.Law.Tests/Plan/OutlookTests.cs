using CsCheck;
using Stringline.Law.Plan;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Plan;

/// <summary>
/// What is left of a right whose planned day is past. The ninetieth day after completion on 2026-09-27 is Saturday 2026-12-26
/// (Civ. Code § 8412); the open day before it is Thursday 2026-12-24, the next one Monday 2026-12-28, a roll to which is no more than an
/// argument (Civ. Code § 10).
/// </summary>
public sealed class OutlookTests
{
    private static JobBuilder Job() =>
        new JobBuilder().Furnished("2026-09-21", 6_430m).Ended("2026-09-21").Notice("2026-09-25").Completed("2026-09-27");

    private static NextStep Claim(JobBuilder job, string asOf) =>
        job.On(asOf).Next.Single(step => step.Finding == "claim-of-lien.last-day");

    [Fact]
    [Proves("Civ. Code § 10")]
    public void Until_the_planned_day_is_past_nothing_is_said() => Assert.Null(Claim(Job(), "2026-12-24").Outlook);

    [Theory]
    [InlineData("2026-12-25",
        "Alive. Planned day past. The law’s last day is 2026-12-26 (Sat); that it rolls to 2026-12-28 (Mon) is an argument only.")]
    [InlineData("2026-12-26",
        "Alive. Planned day past. The law’s last day is today, 2026-12-26 (Sat); that it rolls to 2026-12-28 (Mon) is an argument only.")]
    [Proves("Civ. Code § 10")]
    [Proves("Civ. Code § 8412")]
    public void Between_the_planned_day_and_the_last_it_is_alive(string asOf, string text) =>
        Assert.Equal(new Outlook(Chance.Alive, text), Claim(Job(), asOf).Outlook);

    [Theory]
    [InlineData("2026-12-27")]
    [InlineData("2026-12-28")]
    [Proves("Civ. Code § 10")]
    public void While_only_a_roll_can_carry_it_it_is_arguable(string asOf) => Assert.Equal(
        new Outlook(Chance.Arguable,
            "Arguable. Planned day past. The law’s last day, 2026-12-26 (Sat), is past too; that it rolls to 2026-12-28 (Mon) is an "
                + "argument only."),
        Claim(Job(), asOf).Outlook);

    [Fact]
    public void After_the_roll_it_is_lost_and_its_finding_says_so()
    {
        var job = Job().On("2026-12-29");
        Assert.DoesNotContain(job.Next, step => step.Finding == "claim-of-lien.last-day");
        Assert.Equal(
            new Outlook(Chance.Lost, "Lost: the last day on every reading, 2026-12-26 (Sat), is past."),
                Outlook.Of(job.Get("claim-of-lien.last-day"), job.AsOf));
    }

    // Civ. Code § 8414(b): a notice of completion recorded within 15 days of it leaves 30 days; here whether it was in time is in doubt.
    [Fact]
    [Proves("Civ. Code § 8414(b)(2)")]
    public void Another_reading_that_is_open_is_named_with_its_day()
    {
        var job = new JobBuilder().Furnished("2026-09-21",
            6_430m).Ended("2026-09-21").Notice("2026-09-25").Completed("2026-09-22..2026-09-30").On("2026-12-23");
        var finding = job.Get("claim-of-lien.last-day");
        var step = job.Next.Single(next => next.Finding == "claim-of-lien.last-day");
        Assert.Equal(Chance.Arguable, step.Outlook!.Chance);
        Assert.EndsWith($"On another reading still open until {LawText.Day(finding.Band!.Latest!.Day)}.", step.Outlook.Text,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_of_the_plan_is_no_right_that_its_day_could_cost()
    {
        var job = Job().On("2026-12-23");
        Assert.All(job.Findings.Where(finding => finding.Id.StartsWith("back-plan.", StringComparison.Ordinal)), finding =>
            Assert.Null(Outlook.Of(finding, job.AsOf)));
        Assert.Contains(job.Findings, finding => finding.Id.StartsWith("back-plan.", StringComparison.Ordinal) && finding.ActBy < job.AsOf);
    }

    // Made by hand: a last day that is today, a later one on another reading, and a third reading on which the time has not begun.
    [Fact]
    public void Where_no_end_is_known_that_is_said_after_the_days_that_are()
    {
        Reading[] readings = [new($"by the notice", new LocalDate(2026, 11, 29), new LocalDate(2026, 11, 30)),
            new($"by occupation", new LocalDate(2027, 1, 20))];
        var finding = new Finding
        {
            Id = "claim-of-lien.last-day", Title = "Claim of lien", Standing = Standing.InDoubt, IsDeadline = true,
                ActBy = new LocalDate(2026, 11, 25), Readings = readings,
            IsOnlyPastSafeDay = true, Band = new Band(readings[0], null),
        };
        Assert.Equal(
            "Alive. Planned day past. The law’s last day is today, 2026-11-29 (Sun); that it rolls to 2026-11-30 (Mon) is an argument "
                + "only. "
                + "On another reading still open until 2027-01-20 (Wed). On one more no end is known yet.",
            Outlook.Of(finding, new LocalDate(2026, 11, 29))!.Text);
        Assert.EndsWith("The right itself is in doubt for another reason.",
            Outlook.Of(finding with { IsOnlyPastSafeDay = false }, new LocalDate(2026, 11, 29))!.Text, StringComparison.Ordinal);
    }

    // Civ. Code § 8204(a): a late notice covers the twenty days before it and all later work.
    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void A_late_notice_says_what_it_still_covers() => Assert.Equal(
        new Outlook(Chance.Late,
            "Late. Planned day past. The 20 days ended on 2026-03-22 (Sun). A notice given today covers what was furnished from 2026-04-11 "
                + "(Sat) on, and all that comes later."),
        new JobBuilder().Furnished("2026-03-02", 9_000m).Furnished("2026-04-20", 500m).On("2026-05-01").Next[0].Outlook);

    [Fact]
    public void Every_overdue_step_says_what_is_left_and_no_other_does() => Gen.Select(JobFileGen.Job, JobFileGen.Day).Sample(
        (job, day) => Assert.All(Assessment.Of(job, day, OpenDays.Statutory).Next, step =>
        {
            Assert.Equal(step.ActBy < day, step.Outlook is not null);
            Assert.NotEqual(Chance.Lost, step.Outlook?.Chance);
        }),
        iter: 1000);

    [Fact]
    public void No_right_is_called_lost_that_may_still_live_nor_alive_whose_earliest_day_is_past() =>
        Gen.Select(JobFileGen.Job, JobFileGen.Day).Sample(
        (job, day) => Assert.All(Assessment.Of(job, day, OpenDays.Statutory).Findings, finding =>
        {
            if (Outlook.Of(finding, day) is not { } outlook)
                return;
            Assert.Equal(finding.Standing == Standing.Lost, outlook.Chance == Chance.Lost);
            Assert.StartsWith(outlook.Word, outlook.Text, StringComparison.OrdinalIgnoreCase);
            Assert.False(outlook.Chance == Chance.Alive && finding.Band!.Earliest.Day < day, $"{finding.Id}: {outlook.Text}");
            Assert.False(outlook.Text.Contains("still open until", StringComparison.Ordinal)
                && finding.Readings[^1].Day < day, $"{finding.Id}: {outlook.Text}");
        }),
        iter: 1000);
}
