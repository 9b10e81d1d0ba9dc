using Stringline.Law.Completion;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>Labor last worked on Monday 2 March 2026: the sixtieth day without labor is Friday 1 May.</summary>
public sealed class LaborStopTests
{
    private static CompletionReadings Read(JobBuilder job, string asOf = "2026-09-01")
    {
        var facts = job.FactsOn(asOf);
        return CompletionDay.Of(facts, OwnersNotice.Of(facts, Law.Counting.OpenDays.Statutory));
    }

    private static string[] Lines(CompletionReadings readings) =>
        [.. readings.Open.Select(r => $"{r.Name} {r.On.Earliest:uuuu-MM-dd}..{r.On.Latest:uuuu-MM-dd} {r.Firmness}")];

    [Fact]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void Sixty_days_without_labor_complete_the_work_on_the_sixtieth()
    {
        Assert.Equal(["60 days without labor 2026-05-01..2026-05-01 Certain"], Lines(Read(new JobBuilder().LaborCeased("2026-03-02"))));
        Assert.Equal(60, NumberTable.Shipped.On(Number.IdleDays, new LocalDate(2026, 7, 1)).Count);
    }

    [Theory]
    [InlineData("2026-04-30", "60 days without labor, if it stays stopped 2026-05-01..2026-05-01 Projected")]
    [InlineData("2026-05-01", "60 days without labor 2026-05-01..2026-05-01 Certain")]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void Before_the_sixtieth_day_it_is_a_projection(string asOf, string expected) =>
        Assert.Equal([expected], Lines(Read(new JobBuilder().LaborCeased("2026-03-02"), asOf))
            .Where(l => l.StartsWith("60", StringComparison.Ordinal)));

    // Idle on 59 days (3 March to 30 April) when labor resumes on 1 May; on 60 when it resumes on 2 May; on 61 on 3 May.
    [Theory]
    [InlineData("2026-05-01", 0)]
    [InlineData("2026-05-02", 1)]
    [InlineData("2026-05-03", 1)]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void Labor_resumed_after_59_idle_days_completes_nothing_and_after_60_does(string resumed, int readings)
    {
        var read = Read(new JobBuilder().LaborCeased("2026-03-02", resumed));
        Assert.Equal(readings, read.Open.Count);
        Assert.Equal(1 - readings, read.RuledOut.Count(r => r.Section == "Civ. Code § 8180(a)(3)" && !r.Applied));
        if (readings == 1)
            Assert.Equal(["60 days without labor 2026-05-01..2026-05-01 Certain"], Lines(read));
    }

    [Fact]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void A_stop_on_a_day_in_doubt_gives_a_span_and_a_resumption_inside_it_a_contest()
    {
        Assert.Equal(["60 days without labor 2026-05-01..2026-05-05 Certain"],
            Lines(Read(new JobBuilder().LaborCeased("2026-03-02..2026-03-06"))));
        var contested = Read(new JobBuilder().LaborCeased("2026-03-02..2026-03-06", "2026-05-04"));
        Assert.Equal(Firmness.Contested, Assert.Single(contested.Open).Firmness);
        Assert.Equal(JobBuilder.Day("2026-05-01"), contested.Open[0].On.Earliest);
    }

    [Theory]
    [InlineData(ClaimantRole.Subcontractor, Firmness.Contested)]
    [InlineData(ClaimantRole.Laborer, Firmness.Contested)]
    [InlineData(ClaimantRole.Supplier, Firmness.Certain)]
    [InlineData(ClaimantRole.EquipmentLessor, Firmness.Certain)]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void The_claimants_own_labor_during_the_stop_speaks_against_it_and_a_delivery_does_not(ClaimantRole role, Firmness expected) =>
        Assert.Equal(expected, Read(new JobBuilder().Role(role).LaborCeased("2026-03-02").Furnished("2026-04-01", 10m)).Open
            .Single(r => r.Name.StartsWith("60", StringComparison.Ordinal)
                && !r.Name.EndsWith("our own last work", StringComparison.Ordinal)).Firmness);

    [Theory]
    [InlineData("2026-03-02", Firmness.Certain)]
    [InlineData("2026-03-03", Firmness.Contested)]
    [InlineData("2026-05-01", Firmness.Contested)]
    [InlineData("2026-05-02", Firmness.Certain)]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void Own_labor_counts_only_after_the_last_day_and_within_the_sixty(string worked, Firmness expected) =>
        Assert.Equal(expected, Read(new JobBuilder().Role(ClaimantRole.Subcontractor).LaborCeased("2026-03-02").Furnished(worked, 10m)).Open
            .Single(r => r.Name.StartsWith("60", StringComparison.Ordinal)
                && !r.Name.EndsWith("our own last work", StringComparison.Ordinal)).Firmness);

    // Own work from 1 April through some day of May after a stop of 2 March: if it counts as labor, the sixtieth day is counted from its
    // end, and further work within those sixty days moves it on.
    [Theory]
    [InlineData("2026-04-01", null, null, "2026-05-31")]
    [InlineData("2026-04-01", "2026-05-31", null, "2026-07-30")]
    [InlineData("2026-04-01", "2026-06-01", null, "2026-05-31")]
    [InlineData("2026-04-01", null, "2026-05-31", null)]
    [InlineData("2026-04-01", null, "2026-06-01", "2026-05-31")]
    [InlineData("2026-03-02", null, null, null)]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void If_our_own_later_work_counts_the_sixty_days_run_from_its_end(string worked, string? again, string? resumed, string? day)
    {
        var job = new JobBuilder().Role(ClaimantRole.Subcontractor).LaborCeased("2026-03-02", resumed).Furnished(worked, 10m);
        if (again is not null)
            job.Furnished(again, 10m);
        static string? Found(JobBuilder job, string asOf) =>
            Read(job, asOf).Open.SingleOrDefault(r => r.Name == "60 days without labor after our own last work") is { } r
            ? $"{LawText.IsoDay(r.On.Earliest)} {r.Firmness}" : null;
        Assert.Equal(day is null ? null : day + " Asserted", Found(job, "2026-09-01"));
        if (day == "2026-05-31" && again is null && resumed is null)
        {
            Assert.Equal(day + " Projected", Found(job, "2026-05-30"));
            Assert.Equal(day + " Asserted", Found(job, "2026-05-31"));
        }
    }

    // Stopped on some day from 2 to 6 March: our own work speaks against the stop if it may have come after it and
    // within the sixty days, which end on 5 May at the latest, and before labor resumed.
    [Theory]
    [InlineData("2026-03-02", null, "2026-03-02..2026-03-04", true)]
    [InlineData("2026-03-02", null, "2026-02-27..2026-03-02", false)]
    [InlineData("2026-03-02", null, "2026-05-01..2026-05-04", true)]
    [InlineData("2026-03-02..2026-03-06", null, "2026-03-02", false)]
    [InlineData("2026-03-02..2026-03-06", null, "2026-03-03", true)]
    [InlineData("2026-03-02..2026-03-06", null, "2026-03-04", true)]
    [InlineData("2026-03-02..2026-03-06", null, "2026-03-07", true)]
    [InlineData("2026-03-02..2026-03-06", null, "2026-05-05", true)]
    [InlineData("2026-03-02..2026-03-06", null, "2026-05-06", false)]
    [InlineData("2026-03-02..2026-03-06", "2026-05-03", "2026-05-02", true)]
    [InlineData("2026-03-02..2026-03-06", "2026-05-03", "2026-05-02..2026-05-04", true)]
    [InlineData("2026-03-02..2026-03-06", "2026-05-03", "2026-05-03", false)]
    [InlineData("2026-03-02..2026-03-06", "2026-05-03", "2026-05-04", false)]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void Own_labor_on_a_day_in_doubt_speaks_against_the_stop_where_it_may_have_come_within_it(string ceased, string? resumed,
        string worked, bool speaks) =>
        Assert.Equal(speaks,
            Read(new JobBuilder().Role(ClaimantRole.Subcontractor).LaborCeased(ceased, resumed).Furnished(worked, 10m)).Open
                .Any(r => r.Name.Contains("our own later work", StringComparison.Ordinal)));

    // Pence v. Martin (1919) 43 Cal.App. 626 under today's sixty days: stopped 30 January 1915, complete 31 March, however long
    // after the owner finishes the house with others.
    [Fact]
    [Proves("Civ. Code § 8180(a)(3)")]
    [Proves("Civ. Code § 8180(a)")]
    public void Work_finished_much_later_by_others_does_not_reopen_a_completion_by_idleness()
    {
        var read = Read(new JobBuilder().LaborCeased("1915-01-30").Completed("1915-12-01"), "1916-01-01");
        Assert.Equal(["60 days without labor 1915-03-31..1915-03-31 Certain"], Lines(read));
        Assert.Contains(read.RuledOut, r => r.Text.StartsWith("Actual completion", StringComparison.Ordinal));
    }

    // Stopped on 2 March, without an end; another stop tells of labor on its own last day, or on the day on which labor was resumed after
    // it. Within the sixty days, which end on 1 May, that speaks against the first.
    [Theory]
    [InlineData("2026-03-03", null, Firmness.Contested)]
    [InlineData("2026-05-01", null, Firmness.Contested)]
    [InlineData("2026-05-02", null, Firmness.Certain)]
    [InlineData("2026-02-02", "2026-03-02", Firmness.Certain)]
    [InlineData("2026-02-02", "2026-03-03", Firmness.Contested)]
    [InlineData("2026-02-02", "2026-05-01", Firmness.Contested)]
    [InlineData("2026-02-02", "2026-05-02", Firmness.Certain)]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void Another_stop_that_tells_of_labor_in_the_sixty_days_contests_them(string ceased, string? resumed, Firmness expected)
    {
        var job = new JobBuilder().LaborCeased("2026-03-02").LaborCeased(ceased, resumed);
        Assert.Equal(expected, Read(job).Open.Single(r => r.On.Earliest == JobBuilder.Day("2026-05-01")).Firmness);
        // On public work, and with use by the owner, they are no more than asserted.
        var onPublic = job.PublicWork().Work(w => w with { StateContractAct = false }).FactsOn("2026-09-01");
        Assert.Equal(expected == Firmness.Certain ? Firmness.Certain : Firmness.Asserted,
            Law.Completion.PublicCompletion.Of(onPublic, []).Open.Single(r => r.On.Earliest == JobBuilder.Day("2026-05-01")).Firmness);
    }

    // One stop that ended is one stop: the next is another.
    [Fact]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void A_stop_that_ended_is_not_belied_by_the_next() =>
        Assert.Equal(["60 days without labor 2026-05-01..2026-05-01 Certain"],
            Lines(Read(new JobBuilder().LaborCeased("2026-03-02", "2026-05-04").LaborCeased("2026-06-01"))));

    // Recorded on 10 April a notice of cessation is good by a stop of 2 March. Another stop of 9 March contests that one, and is good
    // itself.
    [Theory]
    [InlineData("2026-04-10", Verdict.Yes)]
    [InlineData("2026-04-07", Verdict.Open)]
    [Proves("Civ. Code § 8188(a)")]
    public void A_notice_of_cessation_goes_by_the_stop_that_nothing_contests(string recorded, Verdict expected)
    {
        var facts = new JobBuilder().LaborCeased("2026-03-02").LaborCeased("2026-03-09").OwnerRecorded(recorded, OwnerNotice.Cessation)
            .FactsOn("2026-09-01");
        Assert.Equal(expected, Assert.Single(OwnersNotice.Of(facts, Law.Counting.OpenDays.Statutory))
            .CessationIsEffective(LaborStop.Of(facts), out _));
    }

    // Complete in law on 1 May, and labor was resumed on the 4th: the claimant may have furnished more since, so that it has not surely
    // ceased, and a preliminary notice may still reach some of it.
    [Theory]
    [InlineData(null, Standing.Open, Standing.Lost)]
    [InlineData("2026-05-04", Standing.InDoubt, Standing.Narrowed)]
    [Proves("Civ. Code § 8414(a)")]
    [Proves("Civ. Code § 8204(a)")]
    public void Work_that_went_on_after_the_sixty_days_may_have_been_the_claimants(string? resumed, Standing first, Standing notice)
    {
        var answer = new JobBuilder().Furnished("2026-02-16", 10m).LaborCeased("2026-03-02", resumed, unfinished: true).On("2026-07-01");
        Assert.Equal(notice, answer.Get("preliminary-notice.last-day").Standing);
        Assert.Equal(first, new JobBuilder().Notice("2026-02-16").Furnished("2026-02-16", 10m)
            .LaborCeased("2026-03-02", resumed, unfinished: true).On("2026-07-01").Get("claim-of-lien.first-day").Standing);
    }

    // In use from 27 March. Labor ceased on the 6th, but there was labor on 1 April, when it ceased for good: complete by then, or on the
    // 27th.
    [Fact]
    [Proves("Civ. Code § 8180(a)(2)")]
    public void Use_is_carried_by_the_stop_that_nothing_contests_and_may_have_been_by_an_earlier_one() =>
        Assert.Equal("completion by occupation 2026-03-27..2026-04-01 Certain",
            Lines(Read(new JobBuilder().Completed("2026-03-27", CompletionTheory.Occupation).LaborCeased("2026-03-06")
                .LaborCeased("2026-04-01")))[0]);

    // It went on after the sixty days, which ended on 1 May, and was finished between 15 and 20 June: from then on no more is furnished.
    [Theory]
    [InlineData("2026-07-10", Standing.Narrowed)] // reaches back to 20 June
    [InlineData("2026-07-11", Standing.Lost)]
    [Proves("Civ. Code § 8204(a)")]
    public void Work_that_went_on_is_over_when_it_is_finished(string asOf, Standing expected)
    {
        var job = new JobBuilder().Furnished("2026-02-16", 10m).LaborCeased("2026-03-02", "2026-05-04", unfinished: true);
        Assert.Equal(expected, job.Completed("2026-06-15..2026-06-20").On(asOf).Get("preliminary-notice.last-day").Standing);
        Assert.Equal(["2026-05-01"], job.On(asOf).Get("completion.day").DaysOf());
    }

    // Stopped on 2 March, or between the 2nd and the 6th, when the sixty days end on 1 or on 5 May. On some day of a doubt the labor that
    // another stop tells of may have come after this one and within its sixty days: then it speaks against it.
    [Theory]
    [InlineData("2026-03-02", "2026-02-27..2026-03-02", null, Firmness.Certain)]
    [InlineData("2026-03-02", "2026-02-27..2026-03-04", null, Firmness.Contested)]
    [InlineData("2026-03-02", "2026-03-02", null, Firmness.Certain)]
    [InlineData("2026-03-02", "2026-05-01..2026-05-04", null, Firmness.Contested)]
    [InlineData("2026-03-02", "2026-05-02..2026-05-04", null, Firmness.Certain)]
    [InlineData("2026-03-02..2026-03-06", "2026-03-04", null, Firmness.Contested)]
    [InlineData("2026-03-02..2026-03-06", "2026-05-04", null, Firmness.Contested)]
    [InlineData("2026-03-02..2026-03-06", "2026-05-06", null, Firmness.Certain)]
    [InlineData("2026-03-02..2026-03-06", "2026-02-02", "2026-03-02", Firmness.Certain)]
    [InlineData("2026-03-02..2026-03-06", "2026-02-02", "2026-03-04", Firmness.Contested)]
    [InlineData("2026-03-02..2026-03-06", "2026-02-02", "2026-05-05", Firmness.Contested)]
    [InlineData("2026-03-02..2026-03-06", "2026-02-02", "2026-05-06", Firmness.Certain)]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void Another_stop_on_a_day_in_doubt_contests_the_sixty_days_where_its_labor_may_have_come_within_them(string ceased,
        string other, string? until, Firmness expected)
    {
        var read = Read(new JobBuilder().LaborCeased(ceased, unfinished: true).LaborCeased(other, until));
        Assert.All(read.Open.Where(r => r.Why.Facts[0].Index == 0), r => Assert.Equal(expected, r.Firmness));
        var reading = Assert.Single(read.Open, r => r.Why.Facts[0].Index == 0);
        // Both entries are named where the one speaks against the other.
        Assert.Equal(expected == Firmness.Contested ? [0, 1] : [0], reading.Why.Facts.Select(f => f.Index));
    }

    // Stopped on 2 March and resumed on 20 April: recorded on 10 April a notice of cessation is good by that stop. What another stop tells
    // of labor from the day of the resumption on is no labor within it; what it tells of labor before is.
    [Theory]
    [InlineData("2026-04-25", null, Verdict.Yes)]
    [InlineData("2026-04-20", null, Verdict.Yes)]
    [InlineData("2026-04-18..2026-04-22", null, Verdict.Open)]
    [InlineData("2026-04-19", null, Verdict.Open)]
    [InlineData("2026-02-02", "2026-04-25", Verdict.Yes)]
    [InlineData("2026-02-02", "2026-04-20", Verdict.Yes)]
    [InlineData("2026-02-02", "2026-04-15", Verdict.Open)]
    [Proves("Civ. Code § 8188(a)")]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void What_another_stop_tells_of_labor_after_the_resumption_does_not_contest_this_one(string other, string? until,
        Verdict expected)
    {
        var facts = new JobBuilder().LaborCeased("2026-03-02", "2026-04-20").LaborCeased(other, until)
            .OwnerRecorded("2026-04-10", OwnerNotice.Cessation).FactsOn("2026-09-01");
        Assert.Equal(expected, Assert.Single(OwnersNotice.Of(facts, Law.Counting.OpenDays.Statutory))
            .CessationIsEffective(LaborStop.Of(facts), out _));
    }

    [Theory]
    [InlineData("", false)]
    [InlineData("yes", true)]
    [InlineData("no", false)]
    [InlineData("?", false)]
    [InlineData("yes yes", true)]
    [InlineData("yes no", false)]
    [InlineData("? yes", false)]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void The_work_was_left_unfinished_where_there_was_a_stop_and_each_says_so(string unfinished, bool expected)
    {
        var job = new JobBuilder();
        foreach (var (told, i) in unfinished.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select((told, i) => (told, i)))
            job.LaborCeased($"2026-0{i + 2}-02", $"2026-0{i + 2}-20", told switch { "yes" => true, "no" => false, _ => null });
        Assert.Equal(expected, LaborStop.AllLeftItUnfinished(LaborStop.Of(job.FactsOn("2026-09-01"))));
    }

    // Own work in doubt after the stop of 2 to 6 March. Worked between 1 and 5 April: the sixtieth day lies between 31 May and 4 June, and
    // labor that resumed on 2 June may have found it over; resumed on 31 May it did not.
    [Theory]
    [InlineData("2026-03-02", "2026-04-01..2026-04-05", null, null, "2026-05-31..2026-06-04")]
    [InlineData("2026-03-02", "2026-04-01..2026-04-05", null, "2026-06-01", "2026-05-31..2026-06-04")]
    [InlineData("2026-03-02", "2026-04-01..2026-04-05", null, "2026-06-02", "2026-05-31..2026-06-04")]
    [InlineData("2026-03-02", "2026-04-01..2026-04-05", null, "2026-05-31", null)]
    // What we furnish on the day of the resumption or after it is no labor within the stop.
    [InlineData("2026-03-02", "2026-04-01..2026-04-05", "2026-06-02", "2026-06-02", "2026-05-31..2026-06-04")]
    [InlineData("2026-03-02", "2026-04-01..2026-04-05", "2026-06-03", "2026-06-02", "2026-05-31..2026-06-04")]
    // 4 May is within the sixty days from 6 March, and so after some day of the stop.
    [InlineData("2026-03-02..2026-03-06", "2026-05-04", null, null, "2026-07-03..2026-07-03")]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void If_our_own_later_work_in_doubt_counts_the_sixty_days_run_from_each_end_of_it(string ceased, string worked, string? again,
        string? resumed, string? days)
    {
        var job = new JobBuilder().Role(ClaimantRole.Subcontractor).LaborCeased(ceased, resumed).Furnished(worked, 10m);
        if (again is not null)
            job.Furnished(again, 10m);
        Assert.Equal(days is null
            ? [] : [$"60 days without labor after our own last work {days} Asserted"], Lines(Read(job))
            .Where(l => l.StartsWith("60 days without labor after", StringComparison.Ordinal)));
    }

    // The sixtieth day after our own last work, 31 May to 4 June, is over once its latest is.
    [Theory]
    [InlineData("2026-06-03", Firmness.Projected)]
    [InlineData("2026-06-04", Firmness.Asserted)]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void The_sixty_days_from_our_own_work_in_doubt_are_over_when_they_have_run_from_its_latest(string asOf, Firmness expected) =>
        Assert.Equal(expected,
            Read(new JobBuilder().Role(ClaimantRole.Subcontractor).LaborCeased("2026-03-02").Furnished("2026-04-01..2026-04-05", 10m), asOf)
            .Open.Single(r => r.Name == "60 days without labor after our own last work").Firmness);
}
