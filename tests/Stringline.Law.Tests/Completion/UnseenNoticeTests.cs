using Stringline.Law.Facts;
using Stringline.Law.Plan;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Completion;

/// <summary>
/// Accepted on Wednesday 22 October 2025: a notice of completion may be recorded through Thursday 6 November (Civ. Code § 9204(a)), and
/// ends the time 30 days later (§ 9356(a)), between 21 November and 6 December. Nobody tells the claimant (§ 9362), so until the county
/// index was searched after 6 November the earlier day is planned on.
/// </summary>
public sealed class UnseenNoticeTests
{
    private static JobBuilder Job() =>
        new JobBuilder().PublicWork().Furnished("2025-08-05", 6430m).Notice("2025-08-14", Manner.CertifiedMail, "city", "direct")
        .Completed("2025-10-22", CompletionTheory.Acceptance);

    private static Finding Last(JobBuilder job, string asOf) => job.On(asOf).Get("stop-payment-notice.last-day");

    [Theory]
    [InlineData("2025-11-10", Standing.Open)]
    [InlineData("2025-11-21", Standing.Open)]
    [InlineData("2025-11-22", Standing.InDoubt)]
    [InlineData("2025-12-01", Standing.InDoubt)]
    [InlineData("2026-01-20", Standing.InDoubt)]
    [InlineData("2026-01-21", Standing.Lost)]
    [Proves("Civ. Code § 9356(a)")]
    [Proves("Civ. Code § 9204(a)")]
    public void Without_a_search_the_day_to_plan_on_is_that_of_a_notice_recorded_unseen(string asOf, Standing expected)
    {
        var last = Last(Job(), asOf);
        Assert.Equal(["2025-11-21", "2025-12-06", "2026-01-20"], last.DaysOf());
        Assert.Equal(("2025-11-21", expected), (last.Plan(), last.Standing));
        Assert.Contains(last.Readings, r => r.Name.Contains("if a notice was recorded unseen", StringComparison.Ordinal));
        Assert.True(last.Asks("(index-searched)"));
        // 21 November to 20 January
        Assert.Equal(60, last.Questions.Single(q => q.Text.Contains("(index-searched)", StringComparison.Ordinal)).Days);
    }

    [Theory]
    [InlineData("2025-11-06", "2025-11-21")]
    [InlineData("2025-11-07", "2026-01-20")]
    [Proves("Civ. Code § 9356(a)")]
    public void A_search_after_the_last_day_for_recording_brings_the_ninety_days_back(string searched, string plan)
    {
        var last = Last(Job().IndexSearched(searched), "2025-12-01");
        Assert.Equal(plan, last.Plan());
        Assert.Equal(plan == "2025-11-21", last.Asks("(index-searched)"));
    }

    // The fifteenth day after Friday 26 December 2025 is Saturday 10 January 2026, and the entity may have until the Monday.
    [Theory]
    [InlineData("2026-01-12", "2026-01-23")]
    [InlineData("2026-01-13", "2026-03-26")]
    [Proves("Civ. Code § 9204(a)")]
    public void The_entitys_own_last_day_is_rolled_before_a_search_settles_anything(string searched, string plan) =>
        Assert.Equal(plan,
            Last(new JobBuilder().PublicWork().Furnished("2025-08-05", 6430m).Notice("2025-08-14", Manner.CertifiedMail, "city", "direct")
            .Completed("2025-12-26", CompletionTheory.Acceptance).IndexSearched(searched), "2026-01-20").Plan());

    [Fact]
    [Proves("Civ. Code § 9356(a)")]
    public void A_notice_in_the_file_is_no_unseen_one_nor_is_there_one_before_anything_was_completed()
    {
        Assert.Equal(["2025-11-28"], Last(Job().OwnerRecorded("2025-10-29", states: "2025-10-22"), "2025-11-10").DaysOf());
        Assert.Equal(["2025-11-28"], Last(Job().OwnerRecorded("2025-10-29", OwnerNotice.Acceptance, states: "2025-10-22"), "2025-11-10")
            .DaysOf());
        Assert.Equal(["2025-11-03"], Last(new JobBuilder().PublicWork().Furnished("2025-08-05", 6430m), "2025-10-01").DaysOf());
        // One that was held to have no effect was recorded all the same: there is no other to look for.
        Assert.Equal(["2026-01-20"], Last(Job().OwnerRecorded("2025-10-29", states: "2025-10-22", heldIneffective: true), "2025-11-10")
            .DaysOf());
        // A notice of cessation is no notice of completion, which may have followed it unseen.
        Assert.Contains("2025-11-21", Last(Job().OwnerRecorded("2025-08-29", OwnerNotice.Cessation), "2025-11-10").DaysOf());
    }

    // Labor ceased between 2 February and 9 March 2026: the sixtieth day, 3 April to 8 May, may be past on 13 April, and not on 2 April. A
    // notice of cessation may have been recorded before, from the thirtieth day, 4 March, on: 30 days end on Friday 3 April.
    [Theory]
    [InlineData("2026-04-02", "2026-04-03", false)]
    [InlineData("2026-04-03", "2026-04-03", true)]
    [InlineData("2026-04-13", "2026-04-03", true)]
    [Proves("Civ. Code § 9356(a)")]
    public void Idle_days_in_doubt_are_watched_as_soon_as_they_may_be_over(string asOf, string plan, bool completed)
    {
        var last = Last(new JobBuilder().PublicWork().Furnished("2025-12-01", 1m).LaborCeased("2026-02-02..2026-03-09", unfinished: true),
            asOf);
        Assert.Equal(plan, last.Plan());
        Assert.Equal(completed, last.Readings.Any(r => r.Name == "if a notice was recorded unseen on the day of 60 days without labor"));
    }

    // Civ. Code §§ 9202(a), 9356(a): after 30 days without labor a notice of cessation may be recorded, on any day while the stop lasts,
    // and ends the time
    // 30 days later. Labor ceased on Friday 6 February 2026: from 8 March on.
    [Theory]
    [InlineData(null, null, "2026-03-07", null)] // on the 29th day none can be recorded
    [InlineData(null, null, "2026-03-09", "2026-04-07")]
    [InlineData("2026-03-16", null, "2026-03-16", "2026-04-15")] // searched on that day: what was recorded before would have shown
    [InlineData(null, "2026-03-08", "2026-03-16", null)] // resumed on the thirtieth day
    [InlineData(null, "2026-03-10", "2026-03-16", "2026-04-07")]
    [InlineData("2026-03-11", "2026-03-10", "2026-03-16", null)]
    [Proves("Civ. Code § 9202(a)")]
    [Proves("Civ. Code § 9356(a)")]
    public void While_labor_has_stopped_a_notice_of_cessation_may_be_recorded_unseen(string? searched, string? resumed, string asOf,
        string? first)
    {
        foreach (var act in (bool?[])[null, true, false])
        {
            var job = new JobBuilder().PublicWork().Work(w => w with { StateContractAct = act }).Furnished("2026-02-02", 6430m)
                .Notice("2026-02-02", Manner.CertifiedMail, "city", "direct")
                .LaborCeased("2026-02-06", resumed, unfinished: true);
            var last = Last(searched is null ? job : job.IndexSearched(searched), asOf);
            var unseen = last.Readings.Where(r => r.Name.Contains("notice of cessation was recorded unseen", StringComparison.Ordinal))
                .Select(r => LawText.IsoDay(r.Day)).ToArray();
            Assert.Equal(first, unseen.FirstOrDefault());
            Assert.Equal(first is not null, last.Asks("cessation recorded?"));
            Assert.Equal(first is not null, last.Says("(Civ. Code § 9202(a))"));
            // One in the file is the one to look for.
            Assert.DoesNotContain(Last(job.OwnerRecorded("2026-03-09", OwnerNotice.Cessation), asOf).Readings, r =>
                r.Name.Contains("cessation was recorded unseen", StringComparison.Ordinal));
        }
    }

    [Fact]
    [Proves("Civ. Code § 9356(a)")]
    public void A_notice_given_by_the_earlier_day_is_kept_and_one_given_later_only_once_the_index_was_searched()
    {
        Assert.Equal(Standing.Kept, Last(Job().StopPaymentGiven("2025-11-21", 6430m, false, "city"), "2025-12-01").Standing);
        Assert.Equal(Standing.InDoubt, Last(Job().StopPaymentGiven("2025-11-24", 6430m, false, "city"), "2025-12-01").Standing);
        Assert.Equal(Standing.Kept,
            Last(Job().StopPaymentGiven("2025-11-24", 6430m, false, "city").IndexSearched("2025-11-24"), "2025-12-01").Standing);
    }

    // The suit is counted from the end of the time to give the notice, whichever it was (Civ. Code § 9502(b)).
    [Fact]
    [Proves("Civ. Code § 9502(b)")]
    [Proves("Civ. Code § 9558")]
    public void The_days_to_sue_follow_the_same_readings()
    {
        var given = Job().StopPaymentGiven("2025-11-03", 6430m, false, "city");
        Assert.Equal("2026-02-19", given.On("2025-12-01").Get("stop-payment-notice.action-last-day").Plan());
        Assert.Equal("2026-05-21", given.On("2025-12-01").Get("payment-bond.action-last-day").Plan());
        Assert.Equal("2026-04-20", given.IndexSearched("2025-11-10").On("2025-12-01").Get("stop-payment-notice.action-last-day").Plan());
        Assert.Equal("2026-07-20", given.On("2025-12-01").Get("payment-bond.action-last-day").Plan());
    }

    [Theory]
    [InlineData("2025-10-01", "2025-10-01")]
    [InlineData("2025-11-10", "2025-11-10")]
    [InlineData("2025-11-11", "2025-11-12")] // Veterans Day
    [Proves("Civ. Code § 9356(a)")]
    public void The_county_index_is_watched_from_the_first_furnishing_on(string asOf, string next)
    {
        var watch = Job().On(asOf).Get("index-watch.next-day");
        Assert.Equal((next, Standing.Open), (watch.Plan(), watch.Standing));
        Assert.Contains("Civ. Code § 9356(a)", watch.Sections);
        Assert.DoesNotContain("Civ. Code § 8414(b)(2)", watch.Sections);
        Assert.Null(new JobBuilder().PublicWork().On(asOf).Find("index-watch.next-day"));
    }

    // Searched Monday 3 November: what was recorded from Tuesday 28 October on may not show yet, and would end the time on 27 November.
    [Fact]
    [Proves("Civ. Code § 9356(a)")]
    public void After_a_search_the_next_one_leaves_time_for_what_it_could_not_show()
    {
        var watch = Job().IndexSearched("2025-11-03").On("2025-11-03").Get("index-watch.next-day");
        var settings = PlanSettings.Default;
        var actBy = OpenDays.Statutory.LastOpenDayOnOrBefore(Day("2025-10-28").PlusDays(30));
        Assert.Equal(BackPlan.OpenDaysBefore(actBy, settings.ReserveDays + 4, OpenDays.Statutory), watch.ActBy);
    }

    // Nothing is left of the stop payment notice without a preliminary notice; the bond notice has 15 days from a recorded notice.
    [Fact]
    [Proves("Civ. Code § 9560(b)")]
    public void Where_only_the_bond_notice_is_left_the_watch_is_kept_for_its_fifteen_days()
    {
        var job = new JobBuilder().PublicWork().Party("surety", PartyCapacity.Surety).Furnished("2025-08-05", 6430m).Ended("2025-08-05");
        var watch = job.On("2025-12-01").Get("index-watch.next-day");
        Assert.Contains("Civ. Code § 9560(b)", watch.Sections);
        Assert.True(watch.Says("leaves 15 days"));
        Assert.Null(job.BondNoticeGiven("2025-08-20").On("2025-12-01").Find("index-watch.next-day"));
    }

    [Fact]
    [Proves("Civ. Code § 9356(a)")]
    public void The_watch_ends_with_the_notice_and_a_direct_contractor_has_none()
    {
        Assert.Null(Job().StopPaymentGiven("2025-11-03", 6430m, false, "city").On("2025-12-01").Find("index-watch.next-day"));
        Assert.Null(Job().Role(ClaimantRole.DirectContractor, "city").On("2025-12-01").Find("index-watch.next-day"));
    }

    // It may have been recorded on any day from the thirtieth, Sunday 8 March, or the last search, through the day of asking or the last of
    // the stop: the first and the last of them are shown, and thirty days from each.
    [Theory]
    [InlineData(null, null, "2026-03-08", "2026-04-07")]
    [InlineData(null, null, "2026-03-09", "2026-04-07 2026-04-08")]
    [InlineData(null, null, "2026-03-16", "2026-04-07 2026-04-15")]
    [InlineData(null, "2026-03-09", "2026-03-16", "2026-04-07")]
    [InlineData(null, "2026-03-10", "2026-03-16", "2026-04-07 2026-04-08")]
    [InlineData(null, "2026-03-20", "2026-03-16", "2026-04-07 2026-04-15")]
    // it may have been searched on the first of these days
    [InlineData("2026-03-12..2026-03-14", null, "2026-03-16", "2026-04-11 2026-04-15")]
    [InlineData("?", null, "2026-03-16", "2026-04-07 2026-04-15")]
    [Proves("Civ. Code § 9202(a)")]
    public void The_first_and_the_last_day_of_an_unseen_notice_of_cessation_are_shown(string? searched, string? resumed, string asOf,
        string days)
    {
        var job = new JobBuilder().PublicWork().Furnished("2026-02-02", 6430m).Notice("2026-02-02", Manner.CertifiedMail, "city", "direct")
            .LaborCeased("2026-02-06", resumed, unfinished: true);
        if (searched is not null)
            job.IndexSearched(searched);
        Assert.Equal(days.Split(' '),
            Last(job, asOf).Readings.Where(r => r.Name.Contains("cessation was recorded unseen", StringComparison.Ordinal))
                .Select(r => LawText.IsoDay(r.Day)));
    }

    // What to look for, and after which day: the last on which any of the notices may have been recorded. A notice of completion may have
    // been through
    // 6 November; one of cessation, where labor ceased on 1 August, from the 31st through the day before it was resumed or the day of
    // asking.
    [Theory]
    [InlineData(true, null, null, "completion or acceptance", "2025-11-06 (Thu)")]
    [InlineData(true, "2025-08-01", null, "completion, acceptance or cessation", "2025-12-01 (Mon)")]
    [InlineData(true, "2025-08-01", "2025-09-15", "completion, acceptance or cessation", "2025-11-06 (Thu)")]
    [InlineData(false, "2025-10-20", null, "cessation", "2025-12-01 (Mon)")]
    [InlineData(false, "2025-10-20", "2025-11-25", "cessation", "2025-11-24 (Mon)")]
    [Proves("Civ. Code § 9204(a)")]
    [Proves("Civ. Code § 9202(a)")]
    public void The_search_that_is_asked_for_is_of_the_notices_that_may_have_been_recorded(bool accepted, string? ceased, string? resumed,
        string what, string after)
    {
        // Under the State Contract Act idleness completes nothing, and a notice of cessation may be recorded all the same.
        var job = new JobBuilder().PublicWork().Work(w => w with { StateContractAct = true }).Furnished("2025-07-05", 6430m)
            .Notice("2025-07-14", Manner.CertifiedMail, "city", "direct");
        if (accepted)
            job.Completed("2025-10-22", CompletionTheory.Acceptance);
        if (ceased is not null)
            job.LaborCeased(ceased, resumed);
        var question = Assert.Single(Last(job, "2025-12-01").Questions, q => q.Text.Contains("(index-searched)", StringComparison.Ordinal));
        Assert.StartsWith($"Was a notice of {what} recorded? Search the county index after {after} and enter", question.Text,
            StringComparison.Ordinal);
    }

    // Under the State Contract Act, labor ceased on 6 February: nothing is known of acceptance but that it was no earlier, and 90 days end
    // on 7 May, or 75 on
    // 22 April. A notice of cessation of 8 March would end the time on 7 April, thirty days sooner; fifteen days from one of 10 April or
    // later move nothing.
    [Fact]
    [Proves("Civ. Code § 9356(a)")]
    [Proves("Civ. Code § 9560(b)")]
    public void What_a_search_may_move_is_told_where_it_may_move_anything()
    {
        var job = new JobBuilder().PublicWork().Party("surety", PartyCapacity.Surety).Work(w => w with { StateContractAct = true })
            .Furnished("2026-02-02", 6430m).LaborCeased("2026-02-06");
        static Question Search(Finding finding) =>
            Assert.Single(finding.Questions, q => q.Text.Contains("(index-searched)", StringComparison.Ordinal));
        var given = new JobBuilder().PublicWork().Work(w => w with { StateContractAct = true }).Furnished("2026-02-02", 6430m)
            .Notice("2026-02-02", Manner.CertifiedMail, "city", "direct").LaborCeased("2026-02-06");
        Assert.Equal(["2026-04-07", "2026-05-07"], Last(given, "2026-03-08").DaysOf());
        Assert.Equal(30, Search(Last(given, "2026-03-08")).Days);
        var bond = job.IndexSearched("2026-04-10").On("2026-04-13").Get("payment-bond.notice-last-day");
        Assert.Equal(["2026-04-22"], bond.DaysOf());
        Assert.Null(Search(bond).Days);
    }
}
