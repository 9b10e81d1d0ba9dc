using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>
/// Completed on Monday 4 May 2026. 90 days: 27 left in May, 30 in June, 31 in July, 2 in August: Sunday 2 August.
/// </summary>
public sealed class LastDayTests
{
    private static Finding Last(JobBuilder job, string asOf = "2026-05-20") => job.On(asOf).Get("claim-of-lien.last-day");

    private static JobBuilder Supplier() =>
        new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Furnished("2026-04-06", 10m).Ended("2026-04-06");

    private static JobBuilder Contractor(string ended = "2026-05-04") =>
        new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Licensed("2020-01-01..")
        .Furnished("2026-03-02", 10m).Ended(ended);

    [Fact]
    [Proves("Civ. Code § 8414(b)")]
    [Proves("Civ. Code § 8414(b)(1)")]
    [Proves("Civ. Code § 8412")]
    [Proves("Civ. Code § 8412(a)")]
    [Proves("Civ. Code § 10")]
    [Proves("Code Civ. Proc. § 12a")]
    public void Ninety_days_from_completion_for_everyone_never_rolled()
    {
        foreach (var job in (JobBuilder[])[Supplier(), Contractor()])
        {
            var last = Last(job.Completed("2026-05-04"));
            Assert.Equal([new Reading($"actual completion", JobBuilder.Day("2026-08-02"), JobBuilder.Day("2026-08-03"))], last.Readings);
            Assert.Equal(JobBuilder.Day("2026-07-31"), last.ActBy);
            Assert.Equal(Standing.Open, last.Standing);
        }
    }

    // Worked by hand in a calendar: leap February inside the first span.
    [Theory]
    [InlineData("2024-01-15", "2024-04-14")]
    [InlineData("2024-02-01", "2024-05-01")]
    [InlineData("2025-02-01", "2025-05-02")]
    [InlineData("2025-12-31", "2026-03-31")]
    [InlineData("2006-09-08", "2006-12-07")]
    [Proves("Civ. Code § 8414(b)")]
    public void Ninety_days_count_every_calendar_day(string completed, string lastDay) =>
        Assert.Equal([lastDay], Last(new JobBuilder().Completed(completed), lastDay).DaysOf());

    // Recorded Wednesday 13 May 2026: thirty days end on Friday 12 June, sixty on Sunday 12 July.
    [Theory]
    [InlineData(ClaimantRole.DirectContractor, "owner", "2026-07-12")]
    [InlineData(ClaimantRole.Subcontractor, "direct", "2026-06-12")]
    [InlineData(ClaimantRole.Supplier, "direct", "2026-06-12")]
    [InlineData(ClaimantRole.Supplier, "owner", "2026-06-12")]
    [InlineData(ClaimantRole.EquipmentLessor, "owner", "2026-06-12")]
    [InlineData(ClaimantRole.DesignProfessional, "owner", "2026-06-12")]
    [InlineData(ClaimantRole.Laborer, "direct", "2026-06-12")]
    [Proves("Civ. Code § 8412(b)")]
    [Proves("Civ. Code § 8414(b)(2)")]
    public void Sixty_days_from_the_recording_belong_to_a_direct_contractor_alone(ClaimantRole role, string hiredBy, string lastDay)
    {
        // Vaughn Materials v. Security Pacific (1985) 170 Cal.App.3d 908: hired by the owner is not enough.
        var last = Last(Supplier().Role(role, hiredBy).Completed("2026-05-04").OwnerRecorded("2026-05-13").OwnerToldUs("2026-05-13"));
        Assert.Equal([lastDay], last.DaysOf());
        Assert.Equal([$"{lastDay} actual completion"], last.Lines()
            .Where(line => line.Contains(" actual completion", StringComparison.Ordinal)));
    }

    // Hughes Manufacturing & Lumber v. Hathaway (1916) 174 Cal. 44: completed 7 August 1913, notice recorded 16 August; the
    // opinion calls 15 September thirty days thereafter.
    [Theory]
    [InlineData("1913-09-15", Standing.Kept)]
    [InlineData("1913-09-16", Standing.Lost)]
    [Proves("Civ. Code § 8414(b)(2)")]
    public void The_thirty_days_run_from_the_recording_and_include_the_thirtieth(string recorded, Standing expected)
    {
        var last = Last(new JobBuilder().Notice("1913-07-01").Furnished("1913-07-01", 10m).Ended("1913-08-01").Completed("1913-08-07")
            .OwnerRecorded("1913-08-16", states: "1913-08-07").OwnerToldUs("1913-08-16").ClaimRecorded(recorded), "1913-10-01");
        Assert.Equal("1913-09-15", last.DaysOf()[0]);
        Assert.Equal(expected, last.Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8414(b)(2)")]
    public void A_notice_never_lengthens_the_time()
    {
        // Sixty days from 19 May are 18 July; ninety from 4 May 2 August. A notice recorded on day 15 cannot pass the ninetieth day;
        // one of cessation can, and then does nothing: 10 July and 30 days are 9 August.
        var last = Last(Supplier().Completed("2026-05-04").LaborCeased("2026-05-04").OwnerRecorded("2026-07-10", OwnerNotice.Cessation)
            .OwnerToldUs("2026-07-10", OwnerNotice.Cessation), "2026-07-20");
        Assert.Equal(["2026-08-02 actual completion"], last.Lines());
        Assert.False(last.Says("30 days after the notice of cessation"));
        // Recorded on Friday 3 July the thirty days end on the ninetieth day: nothing is shorter.
        var same = Last(Supplier().Completed("2026-05-04").LaborCeased("2026-05-04").OwnerRecorded("2026-07-03", OwnerNotice.Cessation),
            "2026-07-20");
        Assert.Equal(["2026-08-02 actual completion"], same.Lines());
        Assert.False(same.Says("30 days after the notice of cessation"));
        Assert.True(Last(Supplier().Completed("2026-05-04").LaborCeased("2026-05-04").OwnerRecorded("2026-07-02", OwnerNotice.Cessation),
            "2026-07-20").Says("30 days after the notice of cessation"));
    }

    // The fifteenth day is Tuesday 19 May.
    [Theory]
    [InlineData("2026-05-03", "2026-08-02")]
    [InlineData("2026-05-19", "2026-06-18")]
    [InlineData("2026-05-20", "2026-08-02")]
    [Proves("Civ. Code § 8182(a)")]
    [Proves("Civ. Code § 8182(d)")]
    [Proves("Civ. Code § 8414(b)")]
    public void Only_a_notice_recorded_from_completion_through_the_fifteenth_day_shortens_the_time(string recorded, string lastDay)
    {
        var last = Last(Supplier().Completed("2026-05-04").OwnerRecorded(recorded, states: "2026-05-04").OwnerToldUs(recorded));
        Assert.Equal([lastDay], last.DaysOf());
    }

    // Fontana Paving v. Hedley Brothers (1995) 38 Cal.App.4th 146: complete 23 January 1991, lien recorded 4 June, notice of
    // completion 25 June. A notice can only shorten; the lien was too late. While nothing is settled the owner's own word, a day in June,
    // leaves it in doubt; it is planned on 23 April all the same.
    [Fact]
    [Proves("Civ. Code § 8182(d)")]
    public void A_late_notice_with_a_later_day_does_not_save_a_late_claim()
    {
        static Finding Last(bool held) =>
            LastDayTests.Last(new JobBuilder().Notice("1990-12-01").Furnished("1990-12-01", 72709.33m).Ended("1990-12-31")
                .Completed("1991-01-23")
            .OwnerRecorded("1991-06-25", states: "1991-06-18", heldIneffective: held).ClaimRecorded("1991-06-04"), "1991-07-01");
        Assert.Equal(["1991-04-23"], Last(held: true).DaysOf());
        Assert.Equal(Standing.Lost, Last(held: true).Standing);
        Assert.Equal("1991-04-23", Last(held: false).Plan());
        Assert.Equal(Standing.InDoubt, Last(held: false).Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8190(c)")]
    [Proves("Civ. Code § 8414(b)(2)")]
    public void A_copy_in_doubt_shows_both_days_and_plans_on_the_shorter()
    {
        var job = Supplier().Completed("2026-05-04").OwnerRecorded("2026-05-13", states: "2026-05-04");
        var last = Last(job);
        Assert.Equal(["2026-06-12", "2026-08-02"], last.DaysOf());
        Assert.Equal(OpenDays.Statutory.LastOpenDayOnOrBefore(JobBuilder.Day("2026-06-12")), last.ActBy);
        Assert.Equal(Standing.Open, Last(job, "2026-06-12").Standing);
        Assert.Equal(Standing.InDoubt, Last(job, "2026-06-13").Standing);
        Assert.Equal(Standing.InDoubt, Last(job, "2026-08-03").Standing);
        Assert.Equal(Standing.Lost, Last(job, "2026-08-04").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8190(c)")]
    public void A_copy_that_came_too_late_leaves_the_ninety_days() =>
        Assert.Equal(["2026-08-02"], Last(Supplier().Completed("2026-05-04").OwnerRecorded("2026-05-13").OwnerToldUs("2026-06-15"))
            .DaysOf()[^1..]);

    [Fact]
    [Proves("Civ. Code § 8190(d)(1)")]
    public void An_owner_who_lives_there_shortens_the_time_unseen() =>
        Assert.Equal(["2026-06-12"], Last(Supplier().Work(w => w with { Use = WorkUse.OwnerOccupiedOneToFour }).Completed("2026-05-04")
            .OwnerRecorded("2026-05-13", states: "2026-05-04")).DaysOf());

    // Completed between 4 and 29 May, notice recorded on Wednesday 20 May. It takes effect for 5 to 20 May only: for those days the
    // last day is 19 June; for 4 May 2 August, for 21 May 19 August, for 29 May 27 August. Not monotonic in the day.
    [Fact]
    [Proves("Civ. Code § 8182(a)")]
    [Proves("Civ. Code § 8414(b)")]
    public void A_completion_in_doubt_shows_the_shorter_time_in_the_middle_of_the_span()
    {
        var last = Last(Supplier().Completed("2026-05-04..2026-05-29").OwnerRecorded("2026-05-20", states: "2026-05-20")
            .OwnerToldUs("2026-05-20"), "2026-06-01");
        Assert.Equal(["2026-06-19", "2026-08-02", "2026-08-19", "2026-08-27"], last.DaysOf());
        Assert.Contains("2026-08-02 actual completion on 2026-05-04", last.Lines());
        Assert.Contains("2026-06-19 actual completion on 2026-05-05", last.Lines());
        Assert.Contains("2026-06-19 actual completion on 2026-05-20", last.Lines());
        Assert.Contains("2026-08-19 actual completion on 2026-05-21", last.Lines());
        Assert.Equal(OpenDays.Statutory.LastOpenDayOnOrBefore(JobBuilder.Day("2026-06-19")), last.ActBy);
    }

    // Every completion day of the span, one by one, against the band over the span.
    [Theory]
    [InlineData("2026-05-04..2026-05-29", "2026-05-20")]
    [InlineData("2026-05-01..2026-05-16", "2026-05-16")]
    [InlineData("2026-05-01..2026-06-30", "2026-05-18..2026-05-22")]
    [InlineData("2026-05-12", "2026-05-08..2026-05-20")]
    [InlineData("2026-05-04", "2026-05-14..2026-05-25")]
    [InlineData("2026-05-10..2026-05-14", "2026-05-01..2026-06-30")]
    [InlineData("2026-05-04", "2026-05-06..2026-05-11")]
    [InlineData("2026-05-04..2026-05-05", "2026-05-06..2026-05-11")]
    [Proves("Civ. Code § 8414(b)")]
    public void The_band_over_days_in_doubt_holds_every_exact_pair_of_days_and_no_more(string completed, string recorded)
    {
        JobBuilder With(DayFact c, DayFact r) => Supplier()
            .Add(i => new Completed { Index = i, On = c, By = CompletionTheory.Actual })
            .Add(i => new OwnerRecorded { Index = i, On = r, Notice = OwnerNotice.Completion, States = JobBuilder.Day("2026-05-01")
                .PlusDays(-300) })
            .Work(w => w with { Use = WorkUse.OwnerOccupiedOneToFour });
        static IEnumerable<LocalDate> Each(DayFact fact)
        {
            for (var day = fact.Earliest!.Value; day <= fact.Latest!.Value; day = day.PlusDays(1))
                yield return day;
        }

        // The day the notice states is far off, so that only the file's own completion gives readings of interest.
        Reading[] Ours(JobBuilder job) =>
            [.. Last(job, "2026-12-01").Readings.Where(r => r.Name.StartsWith("actual", StringComparison.Ordinal))];
        var exact = (from c in Each(JobBuilder.When(completed)) from r in Each(JobBuilder.When(recorded))
            select Ours(With(DayFact.On(c), DayFact.On(r)))).SelectMany(r => r).ToList();
        var band = Ours(With(JobBuilder.When(completed), JobBuilder.When(recorded)));
        Assert.Equal(exact.Min(r => r.Day), band.Min(r => r.Day));
        Assert.Equal(exact.Max(r => r.Day), band.Max(r => r.Day));
    }

    // 60 idle days from 2 March: complete on 1 May, so the ninety end on 30 July; 150 days in all.
    [Fact]
    [Proves("Civ. Code § 8180(a)(3)")]
    [Proves("Civ. Code § 8414(b)")]
    public void Idleness_makes_it_a_hundred_and_fifty_days_from_the_last_labor() =>
        Assert.Equal(["2026-07-30"], Last(new JobBuilder().LaborCeased("2026-03-02"), "2026-05-20").DaysOf());

    [Fact]
    [Proves("Civ. Code § 8180(a)(4)")]
    [Proves("Civ. Code § 8188(a)")]
    [Proves("Civ. Code § 8412(b)")]
    public void A_notice_of_cessation_completes_and_shortens_at_once()
    {
        // Recorded Monday 6 April: 30 days end on 6 May, 60 on 5 June, 90 on 5 July.
        var told = Supplier().LaborCeased("2026-03-02", unfinished: true).OwnerRecorded("2026-04-06", OwnerNotice.Cessation)
            .OwnerToldUs("2026-04-06", OwnerNotice.Cessation);
        Assert.Equal(["2026-05-06"], Last(told, "2026-04-20").DaysOf());
        // A direct contractor's own work of 6 April would speak against the stop; a delivery does not.
        Assert.Equal(["2026-06-05"],
            Last(Contractor("2026-03-02").LaborCeased("2026-03-02", unfinished: true).OwnerRecorded("2026-04-06", OwnerNotice.Cessation)
                .OwnerToldUs("2026-04-06", OwnerNotice.Cessation), "2026-04-20").DaysOf());
        var untold = Supplier().LaborCeased("2026-03-02", unfinished: true).OwnerRecorded("2026-04-06", OwnerNotice.Cessation)
            .OwnerToldUs("2026-05-20", OwnerNotice.Cessation);
        Assert.Equal(["2026-07-05"], Last(untold, "2026-05-25").DaysOf());
    }

    [Fact]
    [Proves("Civ. Code § 8414(b)")]
    public void Several_theories_of_completion_give_several_last_days_and_the_earliest_is_planned_on()
    {
        var last = Last(Supplier().Completed("2026-04-27", CompletionTheory.Occupation, contested: true).Completed("2026-05-04"));
        Assert.Equal(["2026-07-26 completion by occupation", "2026-08-02 actual completion"], last.Lines());
        Assert.Equal(last.Readings[0], last.Band!.Earliest);
        Assert.Equal(last.Readings[1], last.Band!.Latest);
    }

    [Fact]
    [Proves("Civ. Code § 8414(b)")]
    public void A_contested_completion_alone_never_loses_the_right()
    {
        var job = Supplier().Completed("2026-05-04", contested: true);
        Assert.Equal(Standing.InDoubt, Last(job, "2026-12-01").Standing);
        Assert.Equal(Standing.Lost, Last(Supplier().Completed("2026-05-04"), "2026-12-01").Standing);
    }

    [Theory]
    [InlineData("2026-08-02", Standing.InDoubt)]
    [InlineData("2026-08-03", Standing.InDoubt)]
    [InlineData("2026-08-04", Standing.Lost)]
    [Proves("Code Civ. Proc. § 12a")]
    public void After_a_sunday_the_monday_is_an_argument_and_then_it_is_lost(string asOf, Standing expected) =>
        Assert.Equal(expected, Last(Supplier().Completed("2026-05-04"), asOf).Standing);

    [Fact]
    [Proves("Civ. Code § 8412")]
    [Proves("Civ. Code § 8414(b)")]
    public void A_direct_contractors_time_rests_on_its_own_section()
    {
        var (contractor, supplier) =
            (Last(Contractor().Completed("2026-05-04")).Sections, Last(Supplier().Completed("2026-05-04")).Sections);
        Assert.Contains("Civ. Code § 8412", contractor);
        Assert.DoesNotContain("Civ. Code § 8414(b)", contractor);
        Assert.Contains("Civ. Code § 8414(b)", supplier);
        Assert.DoesNotContain("Civ. Code § 8412", supplier);
    }

    // Completed 4 May: Sunday 3 May is before it, Wednesday 20 May after the fifteenth day.
    [Theory]
    [InlineData("2026-05-03", false, true, false)]
    [InlineData("2026-05-04", true, false, false)]
    [InlineData("2026-05-19", true, false, false)]
    [InlineData("2026-05-20", false, false, true)]
    [Proves("Civ. Code § 8182(a)")]
    [Proves("Civ. Code § 8182(d)")]
    public void The_reasons_say_whether_a_notice_of_completion_took_effect_or_came_too_early_or_too_late(string recorded, bool effect,
        bool early, bool late)
    {
        var last = Last(Supplier().Completed("2026-05-04").OwnerRecorded(recorded, states: "2026-05-04").OwnerToldUs(recorded));
        var not = last.Why.Tree().Where(r => !r.Applied && r.Section == "Civ. Code § 8182(d)").Select(r => r.Text).ToArray();
        Assert.Equal(effect, last.Sections.Contains("Civ. Code § 8182(a)"));
        Assert.Equal(effect, last.Sections.Contains("Civ. Code § 8190(a)"));
        Assert.Equal(effect, last.Says("30 days after the notice of completion was recorded"));
        Assert.Equal(early, not.Any(t => t.Contains("before completion on", StringComparison.Ordinal)));
        Assert.Equal(late, not.Any(t => t.Contains("more than 15 days after", StringComparison.Ordinal)));
    }

    [Fact]
    [Proves("Civ. Code § 8188(a)")]
    public void The_reasons_say_what_became_of_a_notice_of_cessation_after_completion() =>
        Assert.Contains("Civ. Code § 8188(a)",
            Last(Supplier().Completed("2026-05-04").LaborCeased("2026-05-04").OwnerRecorded("2026-06-10", OwnerNotice.Cessation),
                "2026-06-20").Sections);

    [Fact]
    [Proves("Civ. Code § 8180(a)")]
    public void The_reasons_name_a_completion_that_was_ruled_out() =>
        Assert.True(Last(Supplier().Completed("2026-05-04").Completed("2026-05-18")).RuledOut("Civ. Code § 8180(a)"));

    [Fact]
    public void Days_after_notice_are_sixty_and_thirty()
    {
        Assert.Equal(Number.RecordAfterNoticeDirect,
            TimeToClaim.AfterNotice(new Claimant { Name = "x", Role = ClaimantRole.DirectContractor }));
        Assert.Equal(Number.RecordAfterNotice,
            TimeToClaim.AfterNotice(new Claimant { Name = "x", Role = ClaimantRole.Supplier, HiredBy = "owner" }));
    }

    // Day 15 after Saturday 18 October 2025 is Sunday 2 November.
    [Theory]
    [InlineData("2025-11-02", "on or within 15 days", "2025-12-02")]
    [InlineData("2025-11-03", "That it came too late is the argument on the other side", "2025-12-03")]
    [InlineData("2025-11-04", "more than 15 days after completion", "2026-01-16")]
    [Proves("Civ. Code § 8182(a)")]
    public void A_notice_of_completion_recorded_on_the_day_to_which_the_fifteenth_rolls_is_planned_on_and_arguable(string recorded,
        string words, string planned)
    {
        var last = new JobBuilder().Furnished("2025-08-05", 6430m).Ended("2025-08-05").Notice("2025-08-14").Completed("2025-10-18")
            .OwnerRecorded(recorded, states: "2025-10-18").OwnerToldUs(recorded).On("2025-11-05").Get("claim-of-lien.last-day");
        Assert.Contains(last.Why.Tree(), r => r.Text.Contains(words, StringComparison.Ordinal));
        Assert.Equal(planned, LawText.IsoDay(last.Readings[0].Day));
    }

    // The whole work awaits its acceptance; the owner recorded that one contract is complete on 12 June 2026, whose thirty days end on
    // Sunday 12 July.
    [Theory]
    [InlineData(null, new[] { "2026-07-12" })]
    [InlineData("2026-06-01", new[] { "2026-07-12" })]
    [InlineData("2026-05-01", new string[0])] // by its own word it came too late
    [Proves("Civ. Code § 8412(b)")]
    [Proves("Civ. Code § 8414(b)(2)")]
    public void A_notice_for_one_contract_is_planned_on_while_the_whole_work_awaits_acceptance(string? states, string[] expected)
    {
        var job = new JobBuilder().Role(ClaimantRole.Laborer)
            .Work(w => w with { SubjectToAcceptanceBy = "City of Davis", PublicTakesOver = true }).Furnished("2026-06-04", 10m)
            .OwnerRecorded("2026-06-12", contractOf: "direct", states: states);
        var last = job.On("2026-07-20").Get("claim-of-lien.last-day");
        Assert.Equal(expected, last.DaysOf());
        Assert.Equal(expected.Length == 0 ? Standing.Open : Standing.InDoubt, last.Standing);
    }
}
