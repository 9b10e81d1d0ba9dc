using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.ClaimOfLien;

public sealed class FirstDayTests
{
    private static Finding First(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Get("claim-of-lien.first-day");

    private static JobBuilder Supplier() => new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Furnished("2026-04-06", 10m);

    [Theory]
    [InlineData("2026-04-06", Standing.NotYet)]
    [InlineData("2026-04-07", Standing.Open)]
    [Proves("Civ. Code § 8414(a)")]
    public void A_claim_may_be_recorded_from_the_day_after_work_ceased(string asOf, Standing expected)
    {
        var first = First(Supplier().Ended("2026-04-06"), asOf);
        Assert.Equal(["2026-04-07 the day after work ceased"], first.Lines());
        Assert.Equal(expected, first.Standing);
        Assert.Equal(["Civ. Code § 8414(a)"], first.Sections);
        Assert.Empty(first.Questions);
        Assert.Equal(first.Readings[0], first.Band!.Latest);
    }

    [Fact]
    [Proves("Civ. Code § 8412")]
    public void A_direct_contractor_rests_on_its_own_section()
    {
        var first = First(Supplier().Role(ClaimantRole.DirectContractor, "owner").Ended("2026-04-10"));
        Assert.Equal(["2026-04-11 the day after work ceased"], first.Lines());
        Assert.Equal(["Civ. Code § 8412"], first.Sections);
    }

    // Precision Framing Systems v. Luzuriaga (2019) 39 Cal.App.5th 457: found complete on 23 December 2013, lien recorded
    // 2 January 2014, a lower tier repaired trusses on 13 February 2014. Recorded too early.
    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void A_lower_tiers_correction_after_the_end_moves_the_first_day_and_voids_an_earlier_claim()
    {
        var assessment = new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2010-01-01..").Notice("2013-07-01")
            .Furnished("2013-07-01", 1000m).Ended("2013-12-23").ClaimRecorded("2014-01-02").Furnished("2014-02-13")
            .On("2014-02-20");
        Assert.Equal(["2014-02-14 the day after work ceased"], assessment.Get("claim-of-lien.first-day").Lines());
        Assert.Contains(assessment.Get("claim-of-lien.last-day").Why, w => !w.Applied && w.Text.Contains("void", StringComparison.Ordinal));
        Assert.Equal(Standing.NotYet, assessment.Get("enforcement.last-day").Standing);
    }

    // Hundley v. Marinkovich (1942) 53 Cal.App.2d 288: a lock replaced after completion; against Precision Framing above.
    [Theory]
    [InlineData("2026-05-07", Standing.Lost)]
    [InlineData("2026-05-08", Standing.InDoubt)]
    [InlineData("2026-05-09", Standing.InDoubt)]
    [InlineData("2026-05-20", Standing.InDoubt)]
    [InlineData("2026-06-11", Standing.Kept)]
    [Proves("Civ. Code § 8414(a)")]
    public void A_repair_after_a_certain_completion_leaves_both_first_days(string recorded, Standing expected)
    {
        var job = Supplier().Furnished("2026-05-08", 10m).Ended("2026-05-08").Completed("2026-05-11").Furnished("2026-06-10", 4.12m)
            .ClaimRecorded(recorded);
        Assert.Equal(
            ["2026-05-09 if the work after completion only cured a defect", "2026-06-11 if the work after completion was still owed"],
            First(job, "2026-06-20").Lines());
        // 90 days from 11 May are 9 August.
        Assert.Equal(expected, job.On("2026-08-20").Get("claim-of-lien.last-day").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void Without_an_end_the_first_day_is_in_doubt_and_the_papers_are_refused()
    {
        var assessment = Supplier().On("2026-06-01");
        var first = assessment.Get("claim-of-lien.first-day");
        Assert.Equal(["2026-04-07 if nothing more is furnished"], first.Lines());
        Assert.Equal(Standing.InDoubt, first.Standing);
        Assert.Null(first.Band!.Latest);
        Assert.Single(first.Questions);
        Assert.Contains(assessment.ClaimObstacles, o => o.Section == "Civ. Code § 8414(a)");
    }

    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void Completion_of_the_whole_work_shows_that_the_claimant_has_ceased_but_only_a_certain_one()
    {
        Assert.Equal(Standing.Open, First(Supplier().Completed("2026-05-04")).Standing);
        Assert.Equal(Standing.InDoubt, First(Supplier().Completed("2026-05-04", contested: true)).Standing);
    }

    // Completed on a day from 4 May to 10 June: on 9 June it may still lie ahead, on 10 June it is past.
    [Theory]
    [InlineData("2026-06-09", Standing.InDoubt, "2026-04-07 if nothing more is furnished")]
    [InlineData("2026-06-10", Standing.Open, "2026-04-07 the day after work ceased")]
    [Proves("Civ. Code § 8414(a)")]
    public void A_completion_in_doubt_shows_it_only_once_its_latest_day_has_come(string asOf, Standing expected, string line)
    {
        var first = First(Supplier().Completed("2026-05-04..2026-06-10"), asOf);
        Assert.Equal(expected, first.Standing);
        Assert.Equal([line], first.Lines());
    }

    // Complete 11 May, last delivery 6 April. What was begun by that day is work of the contract, cut to completion; what was begun
    // after it may only cure a defect (Hundley v. Marinkovich) or still be owed (Precision Framing).
    [Theory]
    [InlineData("2026-05-11", "2026-05-11", "2026-05-12 the day after work ceased", null)]
    [InlineData("2026-05-11", "2026-05-13", "2026-05-12 if the work after completion only cured a defect",
        "2026-05-14 if the work after completion was still owed")]
    [InlineData("2026-05-12", "2026-05-12", "2026-04-07 if the work after completion only cured a defect",
        "2026-05-13 if the work after completion was still owed")]
    [Proves("Civ. Code § 8414(a)")]
    public void Work_counts_as_done_before_completion_if_it_was_begun_by_that_day(string from, string until, string early, string? late) =>
        Assert.Equal(late is null
            ? [early] : [early, late], First(Supplier().Furnished(from, 10m, until: until).Completed("2026-05-11"), "2026-06-01").Lines());

    // Begun on some day from 10 to 14 May, complete on the 11th: if it was the 10th, the claimant had ceased by then.
    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void Work_on_a_day_in_doubt_about_completion_may_have_come_before_it() =>
        Assert.Equal(
            ["2026-05-11 if the work after completion only cured a defect", "2026-05-15 if the work after completion was still owed"],
            First(Supplier().Furnished("2026-05-10..2026-05-14", 10m).Completed("2026-05-11"), "2026-06-01").Lines());

    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void A_span_begun_early_that_ends_last_is_the_last_work() =>
        Assert.Equal(
            ["2026-05-02 the day after work ceased"],
            First(new JobBuilder().Furnished("2026-03-02", 10m, until: "2026-05-01").Furnished("2026-04-06", 10m).Completed("2026-05-11"),
                "2026-06-01").Lines());

    // Last furnished on 6 April, or on some day from 6 to 10 April; no end is entered.
    [Theory]
    [InlineData("2026-04-06", "2026-04-06", Standing.NotYet)]
    [InlineData("2026-04-06", "2026-04-07", Standing.InDoubt)]
    [InlineData("2026-04-06..2026-04-10", "2026-04-06", Standing.NotYet)]
    [InlineData("2026-04-06..2026-04-10", "2026-04-07", Standing.InDoubt)]
    [InlineData("2026-04-06..2026-04-10", "2026-06-01", Standing.InDoubt)]
    [Proves("Civ. Code § 8414(a)")]
    public void Without_an_end_the_claimant_may_have_ceased_from_the_day_after_its_last_work(string last, string asOf, Standing expected) =>
        Assert.Equal(expected, First(new JobBuilder().Furnished("2026-03-02", 10m).Furnished(last, 10m), asOf).Standing);

    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void Where_all_work_came_after_completion_the_claimant_had_ceased_by_it_or_with_its_work() =>
        Assert.Equal(
            ["2026-05-12 if the work after completion only cured a defect", "2026-05-13 if the work after completion was still owed"],
            First(new JobBuilder().Furnished("2026-05-12", 10m).Completed("2026-05-11"), "2026-06-01").Lines());

    // Complete on some day from 4 to 20 May: the delivery of 10 May came before it or after it.
    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void Work_inside_the_doubt_of_completion_leaves_both_first_days() =>
        Assert.Equal(
            ["2026-04-07 if the work after completion only cured a defect", "2026-05-11 if the work after completion was still owed"],
            First(Supplier().Furnished("2026-05-10", 10m).Completed("2026-05-04..2026-05-20"), "2026-06-01").Lines());

    // Precision Framing: work after the end that the file gives moves the first day, and the file is told so.
    [Theory]
    [InlineData("2026-04-05", true)]
    [InlineData("2026-04-06", false)]
    [InlineData("2026-04-04..2026-04-06", false)]
    [InlineData("2026-04-07", false)]
    [Proves("Civ. Code § 8414(a)")]
    public void Work_after_the_end_that_the_file_gives_is_named(string ended, bool named)
    {
        Assert.Equal(named, First(Supplier().Ended(ended)).Says("after the end that the file gives"));
        // Furnished on some day from 2 to 6 April, it may have been after that end all the same.
        Assert.Equal(named,
            First(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Furnished("2026-04-02..2026-04-06", 10m).Ended(ended))
                .Says("after the end that the file gives"));
    }

    // The completion of 11 May shows when the claimant had ceased if the later work only cured a defect; both ends of a doubt are said.
    [Theory]
    [InlineData("2026-05-10", "2026-05-04..2026-05-20", "had ceased between 2026-04-06 (Mon) and 2026-05-10 (Sun)")]
    [InlineData("2026-05-08..2026-05-10", "2026-05-04..2026-05-20", "had ceased between 2026-04-06 (Mon) and 2026-05-10 (Sun)")]
    [InlineData("2026-05-12", "2026-05-11", "had ceased 2026-04-06 (Mon)")]
    [InlineData("2026-05-10..2026-05-14", "2026-05-11", "had ceased between 2026-05-10 (Sun) and 2026-05-11 (Mon)")]
    [Proves("Civ. Code § 8414(a)")]
    public void The_reasons_say_when_the_claimant_had_ceased_if_later_work_only_cured_a_defect(string furnished, string completed,
        string says) =>
        Assert.Contains(says,
            string.Join(' ', First(Supplier().Furnished(furnished, 10m).Completed(completed), "2026-06-01").Why.Select(w => w.Text)),
                StringComparison.Ordinal);

    // Somebody says that the whole was complete on 4 May; it was on 11 May. If work of 12 May, or of 8 and 12 May, cured defects, the
    // claimant had ceased before: the reading that puts it earliest counts, and of two that agree the first.
    [Theory]
    [InlineData(null, "2026-04-07", "«completion by occupation»")]
    [InlineData("2026-05-08", "2026-04-07", "«completion by occupation»")]
    [InlineData("2026-05-04", "2026-05-05", "«completion by occupation»")]
    [Proves("Civ. Code § 8414(a)")]
    public void Of_several_completions_the_one_that_lets_the_claimant_cease_earliest_counts(string? between, string early, string reading)
    {
        var job = Supplier().Completed("2026-05-04", CompletionTheory.Occupation, contested: true).Completed("2026-05-11")
            .Furnished("2026-05-12", 10m);
        if (between is not null)
            job.Furnished(between, 10m);
        var first = First(job);
        Assert.Equal([$"{early} if the work after completion only cured a defect",
            "2026-05-13 if the work after completion was still owed"], first.Lines());
        Assert.True(first.Says(reading));
    }

    // Begun on some day from 1 to 3 June, and the whole complete on 1 June: on that day already it may have been a repair.
    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void A_completion_counts_from_its_own_day() =>
        Assert.Equal(
            ["2026-06-02 if the work after completion only cured a defect", "2026-06-04 if the work after completion was still owed"],
            First(Supplier().Furnished("2026-06-01..2026-06-03", 10m).Completed("2026-06-01"), "2026-06-01").Lines());

    // Complete on some day through 10 June: on 1 June it may still lie ahead, so that nothing says that the work of 10 May came after it.
    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void A_completion_that_may_lie_ahead_makes_no_earlier_first_day() =>
        Assert.Equal(["2026-05-11 if nothing more is furnished"],
            First(Supplier().Furnished("2026-05-10", 10m).Completed("2026-05-04..2026-06-10"), "2026-06-01").Lines());

    [Theory]
    [InlineData("2026-04-12", Standing.NotYet)]
    [InlineData("2026-04-13", Standing.InDoubt)]
    [InlineData("2026-04-14", Standing.InDoubt)]
    [InlineData("2026-04-15", Standing.Open)]
    [Proves("Civ. Code § 8414(a)")]
    public void An_end_on_a_day_in_doubt_opens_for_certain_only_after_its_latest_day(string asOf, Standing expected)
    {
        var first = First(Supplier().Ended("2026-04-12..2026-04-14"), asOf);
        Assert.Equal(["2026-04-13 the day after work ceased", "2026-04-15 work ceased on its latest day"], first.Lines());
        Assert.Equal(expected, first.Standing);
    }

    [Theory]
    [InlineData("?")]
    [InlineData(null)]
    [Proves("Civ. Code § 8414(a)")]
    public void With_nothing_furnished_or_an_unknown_day_there_is_no_first_day(string? day)
    {
        var job = new JobBuilder();
        if (day is not null)
            job.Furnished(day, 10m);
        var first = First(job);
        Assert.Equal(Standing.NotYet, first.Standing);
        Assert.Empty(first.Readings);
        Assert.Empty(first.Questions);
        Assert.NotEmpty(job.On("2026-06-01").ClaimObstacles);
    }
}
