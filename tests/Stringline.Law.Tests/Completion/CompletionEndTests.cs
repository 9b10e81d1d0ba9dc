using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>
/// A doubt about completion has an end only where no open reading leaves the time without one, and begins where the work did.
/// </summary>
public sealed class CompletionEndTests
{
    private static Finding Last(JobBuilder job, string asOf) => job.On(asOf).Get("claim-of-lien.last-day");

    // Hammond Lumber v. Barth Investment (1927) 202 Cal. 606: work still needed after the day said to be completion.
    [Fact]
    [Proves("Civ. Code § 8180(a)(1)")]
    public void Where_the_only_completion_is_contested_no_end_is_known()
    {
        var job = new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 6430m).Ended("2025-08-05")
            .Completed("2025-10-22", contested: true);
        var answer = job.On("2026-02-10");
        Assert.Null(answer.Get("claim-of-lien.last-day").Band!.Latest);
        Assert.Equal(Standing.InDoubt, answer.Get("claim-of-lien.last-day").Standing);
        Assert.Null(answer.Get("completion.day").Band!.Latest);
        Assert.Equal(Standing.InDoubt, answer.Get("completion.day").Standing);
        // A second completion that nobody disputes ends it: Friday 21 November 2025 and 90 days are 19 February 2026.
        var settled = job.Completed("2025-11-21").On("2026-02-10");
        Assert.Equal("2026-02-19", LawText.IsoDay(settled.Get("claim-of-lien.last-day").Band!.Latest!.Day));
        Assert.NotNull(settled.Get("completion.day").Band!.Latest);
    }

    [Theory]
    [InlineData("stop-payment-notice.last-day")]
    [InlineData("payment-bond.notice-last-day")]
    [InlineData("payment-bond.action-last-day")]
    [Proves("Civ. Code § 8180(a)(1)")]
    public void Nor_is_one_for_the_remedies_that_count_from_completion(string id) =>
        Assert.Null(new JobBuilder().PaymentBond("2025-07-01").Furnished("2025-08-05", 6430m).Ended("2025-08-05")
            .Completed("2025-10-22", contested: true)
            .On("2025-11-10").Get(id).Band!.Latest);

    // Plans of 12 December 2025 for a work that began on Monday 6 April 2026: 90 days end on Sunday 5 July; Friday the 3rd keeps the
    // Fourth.
    [Theory]
    [InlineData("2026-05-01")]
    [InlineData("2026-02-02")]
    [Proves("Civ. Code § 8180(a)")]
    public void The_floor_is_not_before_the_work_began(string asOf)
    {
        var last = Last(new JobBuilder().Role(ClaimantRole.DesignProfessional, "owner").Furnished("2025-09-08", 24000m, until: "2025-12-12")
            .Ended("2025-12-12")
            .Work(w => w with { Commenced = JobBuilder.Day("2026-04-06") }), asOf);
        Assert.Equal("2026-07-02", last.Plan());
        Assert.Equal(Standing.Open, last.Standing);
        Assert.Null(last.Band!.Latest);
    }

    // Last delivery 5 August, end of furnishing 18 November: 90 days end on Monday 16 February 2026, a holiday.
    [Fact]
    [Proves("Civ. Code § 8180(a)")]
    public void The_floor_is_not_before_the_claimant_ceased() =>
        Assert.Equal("2026-02-13",
            Last(new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 6430m).Ended("2025-11-18"), "2025-12-01").Plan());

    // Labor stopped on 1 September and resumed on 20 October: 90 days from the 20th end on Sunday 18 January 2026, and Monday is a holiday.
    [Theory]
    [InlineData("2025-09-01", "2025-10-20", "2026-01-16")]
    [InlineData("2025-08-01", "2025-08-10", "2025-11-07")]
    [Proves("Civ. Code § 8180(a)")]
    public void The_floor_is_not_before_labor_that_resumed(string ceased, string resumed, string plan) =>
        Assert.Equal(plan, Last(new JobBuilder().Notice("2025-08-01").Furnished("2025-07-28", 6430m).Ended("2025-07-28")
            .LaborCeased(ceased, resumed), "2025-10-30").Plan());

    // A completion said to have been before the work began cannot be; one on a day in doubt is cut to what can be.
    [Theory]
    [InlineData("2026-03-02", "2026-07-05")]
    [InlineData("2026-03-02..2026-04-10", "2026-07-05 2026-07-09")]
    [InlineData("2026-03-02..2026-04-06", "2026-07-05")]
    [InlineData("2026-03-02..2026-04-05", "2026-07-05")]
    [InlineData("2026-04-06", "2026-07-05")]
    [InlineData("2026-04-10", "2026-07-09")]
    [Proves("Civ. Code § 8180(a)")]
    public void No_completion_is_before_the_work_began(string completed, string days)
    {
        var answer = new JobBuilder().Notice("2026-02-05").Furnished("2026-02-03", 6430m).Ended("2026-02-03").Completed(completed)
            .Work(w => w with { Commenced = JobBuilder.Day("2026-04-06") }).On("2026-06-01");
        Assert.Equal(days.Split(' '), answer.Get("claim-of-lien.last-day").DaysOf());
        Assert.Equal(completed is "2026-03-02" or "2026-03-02..2026-04-05", answer.Get("completion.day").RuledOut("Civ. Code § 8180(a)"));
        Assert.Equal(completed.StartsWith("2026-03-02", StringComparison.Ordinal), answer.Get("completion.day").Asks("(work.commenced)"));
    }

    // Furnished on 6 April. The floor is the last day on which labor is known; where that is in doubt, the earliest that it can have been,
    // and what lies ahead of the day of asking is not known yet.
    [Theory]
    [InlineData(null, null, null, "2026-05-10", "2026-04-06")]
    [InlineData("2026-04-20", null, null, "2026-05-10", "2026-04-20")]
    [InlineData("2026-04-20..2026-04-28", null, null, "2026-05-10", "2026-04-20")]
    [InlineData("2026-04-02..2026-04-28", null, null, "2026-05-10", "2026-04-06")]
    [InlineData("2026-04-08", "2026-04-20", null, "2026-05-10", "2026-04-20")]
    [InlineData("2026-04-08", "2026-04-20", null, "2026-04-20", "2026-04-20")]
    [InlineData("2026-04-08", "2026-04-20", null, "2026-04-19", "2026-04-08")]
    [InlineData("2026-04-08..2026-04-15", "2026-04-20", null, "2026-04-19", "2026-04-08")]
    [InlineData(null, null, "?", "2026-05-10", "2026-04-06")]
    [InlineData(null, null, "2026-04-14..2026-04-28", "2026-05-10", "2026-04-14")]
    [Proves("Civ. Code § 8180(a)")]
    public void The_floor_is_the_last_day_on_which_work_is_known(string? ceased, string? resumed, string? ended, string asOf, string floor)
    {
        var job = new JobBuilder().Furnished("2026-04-06", 10m);
        if (ceased is not null)
            job.LaborCeased(ceased, resumed);
        if (ended is not null)
            job.Ended(ended);
        Assert.Contains($"{floor} completion unknown: not before our own last work", job.On(asOf).Get("completion.day").Lines());
    }

    // The same on public work, where it needs no work of ours: labor on the work, or its commencement, is enough.
    [Theory]
    [InlineData(null, null, "2026-04-08", "2026-04-08")]
    [InlineData(null, "2026-04-06", null, "2026-04-06")]
    [InlineData("2026-02-02", null, null, "2026-02-02")]
    [InlineData("2026-02-02", "2026-04-06", null, "2026-04-06")]
    [InlineData("2026-04-15", "2026-04-06", null, "2026-04-15")]
    [InlineData("2026-04-15", "2026-04-20", null, "2026-04-20")] // commenced on the day of asking
    [InlineData("2026-04-15", null, "2026-04-08", "2026-04-15")]
    [InlineData(null, null, null, null)]
    [Proves("Civ. Code § 9200(a)")]
    public void So_is_that_of_public_work(string? furnished, string? commenced, string? ceased, string? floor)
    {
        var job = new JobBuilder().PublicWork().Work(w => w with { Commenced = commenced is null ? null : JobBuilder.Day(commenced) });
        if (furnished is not null)
            job.Furnished(furnished, 10m);
        if (ceased is not null)
            job.LaborCeased(ceased);
        Assert.Equal(floor is null
            ? [] : [floor], job.On("2026-04-20")
            .Get("completion.day").Readings.Where(r => r.Name.StartsWith("acceptance unknown", StringComparison.Ordinal))
            .Select(r => LawText.IsoDay(r.Day)));
    }
}
