using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Completion;

public sealed class CompletionDayTests
{
    private static CompletionReadings Read(JobBuilder job, string asOf = "2026-09-01")
    {
        var facts = job.FactsOn(asOf);
        return CompletionDay.Of(facts, OwnersNotice.Of(facts, Law.Counting.OpenDays.Statutory));
    }

    private static string[] Lines(CompletionReadings readings) => [.. readings.Open.Select(r =>
        $"{r.Name} {(r.On.IsExact
            ? LawText.IsoDay(r.On.Earliest) : $"{LawText.IsoDay(r.On.Earliest)}..{LawText.IsoDay(r.On.Latest)}")} {r.Firmness}")];

    private static Finding Day(JobBuilder job, string asOf = "2026-09-01") => job.On(asOf).Get("completion.day");

    [Theory]
    [InlineData(false, "actual completion 2026-05-04 Certain")]
    [InlineData(true, "actual completion 2026-05-04 Contested")]
    [Proves("Civ. Code § 8180(a)(1)")]
    public void Actual_completion_is_certain_unless_somebody_contests_it(bool contested, string expected) =>
        Assert.Equal([expected], Lines(Read(new JobBuilder().Completed("2026-05-04", contested: contested))));

    [Fact]
    [Proves("Civ. Code § 8180(a)(1)")]
    public void A_certain_completion_is_done_and_carries_its_section()
    {
        var day = Day(new JobBuilder().Completed("2026-05-04"));
        Assert.Equal(Standing.Done, day.Standing);
        Assert.Equal(["2026-05-04 actual completion"], day.Lines());
        Assert.False(day.IsDeadline);
        Assert.Null(day.ActBy);
        Assert.Equal(["Civ. Code § 8180(a)(1)"], day.Sections);
        Assert.Empty(day.Questions);
    }

    [Theory]
    [InlineData("2026-05-04", Standing.Done)]
    [InlineData("2026-05-01", Standing.InDoubt)]
    [Proves("Civ. Code § 8180(a)(1)")]
    public void Theories_that_agree_on_one_day_leave_nothing_in_doubt_if_one_is_certain(string states, Standing expected) =>
        Assert.Equal(expected, Day(new JobBuilder().Completed("2026-05-04").OwnerRecorded("2026-05-13", states: states)).Standing);

    [Fact]
    [Proves("Civ. Code § 8180(a)(1)")]
    public void A_completion_on_a_day_in_doubt_shows_both_ends_and_stays_in_doubt()
    {
        var day = Day(new JobBuilder().Completed("2026-05-04..2026-05-11"));
        Assert.Equal(Standing.InDoubt, day.Standing);
        Assert.Equal(["2026-05-04 actual completion", "2026-05-11 actual completion, at the latest"], day.Lines());
        Assert.Equal("2026-05-11", LawText.IsoDay(day.Band!.Latest!.Day));
    }

    // Occupied 4 May. Use alone completes nothing: the later of use and cessation of labor does.
    [Theory]
    [InlineData("2026-04-20", "completion by occupation 2026-05-04 Certain")]
    [InlineData("2026-05-04", "completion by occupation 2026-05-04 Certain")]
    [InlineData("2026-05-18", "completion by occupation 2026-05-18 Certain")]
    [Proves("Civ. Code § 8180(a)(2)")]
    public void Occupation_completes_the_work_on_the_later_of_use_and_cessation_of_labor(string ceased, string expected) =>
        Assert.Contains(expected,
            Lines(Read(new JobBuilder().Completed("2026-05-04", CompletionTheory.Occupation).LaborCeased(ceased), "2026-06-01")));

    // Mott v. Wright (1919) 43 Cal.App. 21: the owner lived there from March 1915 while work went on to 12 May; complete 12 May.
    [Fact]
    [Proves("Civ. Code § 8180(a)(2)")]
    public void An_owner_who_moves_in_while_work_goes_on_has_not_completed_it() =>
        Assert.Equal(
            ["completion by occupation 1915-05-12 Certain"],
            Lines(Read(new JobBuilder().Completed("1915-03-01", CompletionTheory.Occupation).LaborCeased("1915-05-12"), "1915-09-01")));

    [Fact]
    [Proves("Civ. Code § 8180(a)(2)")]
    public void Occupation_without_a_known_stop_of_labor_is_taken_on_its_day_and_asks()
    {
        var job = new JobBuilder().Completed("2026-05-04", CompletionTheory.Occupation);
        Assert.Equal(["completion by occupation 2026-05-04 Asserted"], Lines(Read(job)));
        Assert.Equal(Standing.InDoubt, Day(job).Standing);
        Assert.Contains(Day(job).Questions, q => q.Text.Contains("labor-ceased", StringComparison.Ordinal));
    }

    [Fact]
    [Proves("Civ. Code § 8180(a)(2)")]
    public void A_stop_that_ended_before_the_occupation_does_not_carry_it() =>
        Assert.Equal(
            ["completion by occupation 2026-05-04 Asserted"],
            Lines(Read(new JobBuilder().Completed("2026-05-04", CompletionTheory.Occupation).LaborCeased("2026-04-06", "2026-04-20"))));

    [Fact]
    [Proves("Civ. Code § 8180(a)(2)")]
    public void An_occupation_in_doubt_joins_a_stop_in_doubt_end_by_end() =>
        Assert.Contains(
            "completion by occupation 2026-05-06..2026-05-11 Certain",
            Lines(Read(new JobBuilder().Completed("2026-05-04..2026-05-11", CompletionTheory.Occupation)
                .LaborCeased("2026-05-06..2026-05-08"), "2026-06-01")));

    [Fact]
    [Proves("Civ. Code § 8180(b)")]
    public void Work_subject_to_acceptance_is_complete_on_acceptance_whatever_was_finished_before()
    {
        var job = new JobBuilder().Work(w => w with { SubjectToAcceptanceBy = "City of Newark", PublicTakesOver = true })
            .Completed("2026-03-02").LaborCeased("2026-03-02").Completed("2026-08-03", CompletionTheory.Acceptance);
        var read = Read(job);
        Assert.True(read.AwaitsAcceptance);
        Assert.Equal(["completion by acceptance 2026-08-03 Certain"], Lines(read));
        Assert.Contains(read.RuledOut, r => r.Section == "Civ. Code § 8180(b)");
    }

    // A. J. Raisch Paving v. Mountain View Savings & Loan (1972) 28 Cal.App.3d 832: finished 13 September 1965, never accepted;
    // a lien in February 1967 was in time.
    [Fact]
    [Proves("Civ. Code § 8180(b)")]
    public void Work_never_accepted_is_not_complete_and_its_time_does_not_run()
    {
        var assessment = new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Licensed("1960-01-01..")
            .Work(w => w with { SubjectToAcceptanceBy = "City of Newark", PublicTakesOver = true })
            .Furnished("1965-09-13", 16068.15m).Ended("1965-09-13").Completed("1965-09-13").On("1967-02-01");
        Assert.Equal(Standing.NotYet, assessment.Get("completion.day").Standing);
        Assert.Null(assessment.Get("completion.day").Band);
        Assert.Equal(Standing.Open, assessment.Get("claim-of-lien.last-day").Standing);
        Assert.Null(assessment.Get("claim-of-lien.last-day").ActBy);
    }

    [Fact]
    [Proves("Civ. Code § 8180(b)")]
    public void Acceptance_of_work_not_subject_to_it_is_kept_as_a_reading_only()
    {
        var job = new JobBuilder().Completed("2026-05-04", CompletionTheory.Acceptance);
        Assert.Equal(["completion by acceptance 2026-05-04 Asserted"], Lines(Read(job)));
        Assert.Contains(Day(job).Questions, q => q.Text.Contains("subjectToAcceptanceBy", StringComparison.Ordinal));
    }

    [Fact]
    [Proves("Civ. Code § 8180(a)")]
    public void The_first_certain_completion_rules_out_what_is_said_to_have_come_later_but_not_what_came_before()
    {
        var read = Read(new JobBuilder().Completed("2026-05-04").Completed("2026-05-18").Completed("2026-04-20", contested: true));
        Assert.Equal(["actual completion 2026-04-20 Contested", "actual completion 2026-05-04 Certain"], Lines(read));
        Assert.Contains(read.RuledOut, r => r.Text.Contains("2026-05-18", StringComparison.Ordinal) && !r.Applied);
    }

    [Fact]
    [Proves("Civ. Code § 8180(a)")]
    public void A_span_that_runs_past_a_certain_completion_is_cut_to_it() =>
        Assert.Equal(
            ["actual completion 2026-04-20..2026-05-04 Contested", "actual completion 2026-05-04 Certain"],
            Lines(Read(new JobBuilder().Completed("2026-05-04").Completed("2026-04-20..2026-06-01", contested: true))));

    [Fact]
    [Proves("Civ. Code § 8180(a)")]
    public void A_contested_completion_rules_nothing_out() =>
        Assert.Equal(
            ["actual completion 2026-05-04 Contested", "actual completion 2026-05-18 Certain"],
            Lines(Read(new JobBuilder().Completed("2026-05-04", contested: true).Completed("2026-05-18"))));

    [Fact]
    [Proves("Civ. Code § 8180(a)")]
    public void With_nothing_known_it_is_no_earlier_than_the_claimants_last_work_and_no_end_is_known()
    {
        var job = new JobBuilder().Furnished("2026-03-02", 10m).Furnished("2026-04-06..2026-04-10", 10m);
        Assert.Equal(["completion unknown: not before our own last work 2026-04-06 Floor"], Lines(Read(job)));
        var day = Day(job);
        Assert.Equal(Standing.NotYet, day.Standing);
        Assert.Null(day.Band!.Latest);
        Assert.Single(day.Questions);
        var last = job.On("2026-09-01").Get("claim-of-lien.last-day");
        Assert.Equal(["2026-07-05"], last.DaysOf());
        Assert.Null(last.Band!.Latest);
        Assert.Equal(Standing.InDoubt, last.Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8180(a)")]
    public void Nothing_furnished_and_nothing_said_is_not_yet_complete()
    {
        var day = Day(new JobBuilder());
        Assert.Equal(Standing.NotYet, day.Standing);
        Assert.Null(day.Band);
        Assert.Equal(["Civ. Code § 8180(a)"], day.Sections);
    }

    [Fact]
    public void A_completion_without_a_day_is_named_and_counts_for_nothing()
    {
        var read = Read(new JobBuilder().Completed("?").Furnished("2026-04-06", 10m));
        Assert.Equal(["completion unknown: not before our own last work 2026-04-06 Floor"], Lines(read));
        Assert.Contains(read.RuledOut, r => r.Facts.Count == 1);
    }

    [Fact]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void A_contention_of_cessation_without_the_stop_is_asserted_only() =>
        Assert.Equal(["completion by cessation of labor 2026-05-04 Asserted"],
            Lines(Read(new JobBuilder().Completed("2026-05-04", CompletionTheory.Cessation))));

    [Fact]
    [Proves("Civ. Code § 8180(a)")]
    public void A_contested_completion_stands_beside_the_possibility_that_nothing_is_known()
    {
        // If the contention fails, nothing is known of completion and the day to plan on is the claimant's own last work again.
        var read = Read(new JobBuilder().Furnished("2026-04-06", 10m).Completed("2026-05-04", contested: true));
        Assert.Equal(["completion unknown: not before our own last work 2026-04-06 Floor", "actual completion 2026-05-04 Contested"],
            Lines(read));
        Assert.True(read.SaidComplete);
        Assert.False(read.EndKnown);
        Assert.False(read.EndFirm);
    }

    [Fact]
    [Proves("Civ. Code § 8180(a)(4)")]
    public void A_recorded_notice_of_cessation_completes_the_work_on_the_day_it_is_recorded() =>
        Assert.Equal(
            ["recorded notice of cessation 2026-04-06 Certain"],
            Lines(Read(new JobBuilder().LaborCeased("2026-03-02").OwnerRecorded("2026-04-06", OwnerNotice.Cessation))));

    [Fact]
    [Proves("Civ. Code § 8182(c)")]
    [Proves("Civ. Code § 8182(a)")]
    public void What_the_owners_notice_states_is_a_reading_and_where_it_is_unknown_every_day_it_could_serve_is()
    {
        Assert.Equal(
            ["completion as the owner's notice states 2026-05-04 Asserted"],
            Lines(Read(new JobBuilder().OwnerRecorded("2026-05-13", states: "2026-05-04"))));
        // Recorded on Wednesday 13 May 2026: fifteen days back is Tuesday 28 April; no roll lengthens that.
        Assert.Equal(
            ["completion as the owner's notice states 2026-04-28..2026-05-13 Asserted"],
            Lines(Read(new JobBuilder().OwnerRecorded("2026-05-13"))));
    }

    // Fontana Paving v. Hedley Brothers (1995) 38 Cal.App.4th 146: the true completion was 23 January 1991; a notice of June that
    // states a day in June does not reopen it. Until that is settled the owner's verified word stands beside the file's.
    [Fact]
    [Proves("Civ. Code § 8182(c)")]
    public void A_later_day_stated_by_the_owner_yields_to_a_certain_completion_once_it_is_settled_that_it_has_no_effect()
    {
        static string[] Lines(bool held) =>
            CompletionDayTests.Lines(Read(new JobBuilder().Completed("1991-01-23")
                .OwnerRecorded("1991-06-25", states: "1991-06-18", heldIneffective: held), "1991-07-01"));
        Assert.Equal(["actual completion 1991-01-23 Certain"], Lines(held: true));
        Assert.Equal(["actual completion 1991-01-23 Certain", "completion as the owner's notice states 1991-06-18 Asserted"],
            Lines(held: false));
    }

    // Recorded Thursday 1 October 2026 without a day of its own, a notice is in time for 16 September at the earliest. Where the file's day
    // may be before that the two contradict each other, and the owner's may be any day up to the recording.
    [Theory]
    [InlineData("2026-09-14..2026-09-18", "2026-10-01")]
    [InlineData("2026-09-16..2026-09-18", "2026-09-18")]
    [Proves("Civ. Code § 8182(c)")]
    public void A_notice_that_states_no_day_contradicts_a_day_in_doubt_that_may_be_too_early_for_it(string completed, string latest)
    {
        var readings = CompletionDay.Of(new JobBuilder().Furnished("2026-08-31", 10m).Completed(completed).OwnerRecorded("2026-10-01")
            .FactsOn("2026-12-18"), OwnersNotice.Of(
            new JobBuilder().Furnished("2026-08-31", 10m).Completed(completed).OwnerRecorded("2026-10-01").FactsOn("2026-12-18"),
                OpenDays.Statutory)).Open;
        Assert.Equal(JobBuilder.Day(latest), readings.Max(r => r.On.Latest));
    }

    // Completed on 1 August 2026 and recorded between the 13th and the 16th: in time whenever it was recorded, for the day that it does not
    // state too.
    [Fact]
    [Proves("Civ. Code § 8182(a)")]
    [Proves("Civ. Code § 8612(b)")]
    public void A_notice_that_states_no_day_is_tried_only_with_recordings_for_which_it_is_in_time()
    {
        var answer = new JobBuilder().Work(w => w with { Use = WorkUse.OwnerOccupiedOneToFour }).PaymentBond("2026-06-01")
            .Furnished("2026-06-10", 3050m).Completed("2026-08-01").OwnerRecorded("2026-08-13..2026-08-16").On("2026-08-20");
        Assert.Equal(["2026-09-12", "2026-09-15"], answer.Get("claim-of-lien.last-day").DaysOf().Distinct());
        Assert.Equal(["2026-08-28", "2026-08-31"], answer.Get("payment-bond.notice-last-day").DaysOf().Distinct());
    }
}
