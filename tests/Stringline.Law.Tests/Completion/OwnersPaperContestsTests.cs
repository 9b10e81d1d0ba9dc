using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>
/// A signed and verified notice of the owner's is its side of a question of fact. The work was completed on Wednesday 22 October 2025, so
/// the file says: 90 days end on Tuesday 20 January 2026. The owner recorded a notice of completion on Wednesday 12 November, day 21, that
/// states 5 November: by that day it came in time, and 30 days from it end on Friday 12 December, 60 on Sunday 11 January.
/// </summary>
public sealed class OwnersPaperContestsTests
{
    private static JobBuilder Job(ClaimantRole role = ClaimantRole.Subcontractor, bool notice = true)
    {
        var job = new JobBuilder().Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct").Licensed("2012-06-01..")
            .Price(6430m)
            .Furnished("2025-08-05", 6430m, until: "2025-10-10").Ended("2025-10-10");
        return notice ? job.Notice("2025-08-14") : job;
    }

    private static JobBuilder Contested(string? states = "2025-11-05", ClaimantRole role = ClaimantRole.Subcontractor, bool held = false) =>
        Job(role).Completed("2025-10-22").OwnerRecorded("2025-11-12", states: states, heldIneffective: held).OwnerToldUs("2025-11-14");

    private static Finding Last(JobBuilder job, string asOf = "2025-11-20") => job.On(asOf).Get("claim-of-lien.last-day");

    // States 5 November: both readings. States none: any day for which it would be in time, so the same day to plan on. States our own day:
    // by its own words recorded on day 21, so without effect. States 26 October: by its own words day 17, without effect, and by the day
    // the file gives too; 27 October: its fifteenth day is Veterans Day, which rolls to the 12th for the owner.
    [Theory]
    [InlineData("2025-11-05", "2025-12-12")]
    [InlineData(null, "2025-12-12")]
    [InlineData("2025-10-22", "2026-01-20")]
    [InlineData("2025-10-26", "2026-01-20")]
    [InlineData("2025-10-27", "2025-12-12")]
    [InlineData("2025-11-12", "2025-12-12")]
    [Proves("Civ. Code § 8182(a)")]
    [Proves("Civ. Code § 8182(c)")]
    [Proves("Civ. Code § 8180(a)")]
    public void A_notice_that_states_another_day_than_the_file_or_none_keeps_its_own_reading_and_the_earliest_day_is_planned_on(
        string? states, string plan) =>
        Assert.Equal(plan, Last(Contested(states)).Plan());

    [Fact]
    [Proves("Civ. Code § 8182(c)")]
    public void The_day_of_the_file_stands_beside_it_and_completion_is_in_doubt()
    {
        var answer = Contested().On("2025-11-20");
        Assert.Equal(["2025-10-22 actual completion", "2025-11-05 completion as the owner's notice states"], answer.Get("completion.day")
            .Lines());
        Assert.Equal(Standing.InDoubt, answer.Get("completion.day").Standing);
        Assert.Equal(["2025-12-12", "2026-01-20"], answer.Get("claim-of-lien.last-day").DaysOf());
        Assert.Equal(Standing.Open, answer.Get("claim-of-lien.last-day").Standing);
        Assert.True(answer.Get("claim-of-lien.last-day").Asks("(owner-recorded.heldIneffective)"));
        // 39 days: from 12 December to 20 January.
        var question =
            answer.Get("claim-of-lien.last-day").Questions.Single(q => q.Text.Contains("heldIneffective", StringComparison.Ordinal));
        Assert.Equal(39, question.Days);
        Assert.IsType<OwnerRecorded>(question.Corrects);
    }

    [Theory]
    [InlineData("2025-12-12", Standing.Kept)]
    [InlineData("2025-12-13", Standing.InDoubt)]
    [InlineData("2026-01-20", Standing.InDoubt)]
    [Proves("Civ. Code § 8414(b)(2)")]
    public void A_claim_after_the_shorter_day_is_in_doubt(string recorded, Standing expected) =>
        Assert.Equal(expected, Last(Contested().ClaimRecorded(recorded), "2026-01-21").Standing);

    [Fact]
    [Proves("Civ. Code § 8182(d)")]
    public void Once_it_is_settled_that_it_has_no_effect_the_day_of_the_file_stands_alone()
    {
        var answer = Contested(held: true).On("2025-11-20");
        Assert.Equal(["2025-10-22 actual completion"], answer.Get("completion.day").Lines());
        Assert.Equal(["2026-01-20"], answer.Get("claim-of-lien.last-day").DaysOf());
    }

    // 60 days from 12 November are Sunday 11 January.
    [Fact]
    [Proves("Civ. Code § 8412(b)")]
    public void A_direct_contractor_plans_on_sixty_days_from_it() =>
        Assert.Equal("2026-01-09", Last(Contested(role: ClaimantRole.DirectContractor)).Plan());

    // Nobody need tell the claimant where the owner lives there.
    [Fact]
    [Proves("Civ. Code § 8190(d)(1)")]
    public void It_does_so_unseen_where_the_owner_lives_there() =>
        Assert.Equal("2025-12-12", Last(Job().Completed("2025-10-22").OwnerRecorded("2025-11-12", states: "2025-11-05")
            .Work(w => w with { Use = WorkUse.OwnerOccupiedOneToFour })).Plan());

    // The stop payment notice is given before the time to record is over; its suit within 90 days after that: Thursday 12 March 2026. The
    // bond notice of one who gave no preliminary notice: 15 days from 12 November are 27 November, Thanksgiving; Wednesday the 26th.
    [Fact]
    [Proves("Civ. Code § 8612(b)")]
    public void The_shorter_time_runs_through_the_stop_payment_notice_and_the_bond_notice()
    {
        var answer = Contested().On("2025-11-20");
        Assert.Equal("2025-12-12", answer.Get("stop-payment-notice.last-day").Plan());
        Assert.Equal("2026-03-12", answer.Get("stop-payment-notice.action-last-day").Plan());
        Assert.Equal("2025-11-26", Job(notice: false).PaymentBond("2025-07-01").Completed("2025-10-22")
            .OwnerRecorded("2025-11-12", states: "2025-11-05")
            .On("2025-11-20").Get("payment-bond.notice-last-day").Plan());
    }

    // Labor stopped on Friday 10 October by the file: 27 days before the notice of cessation of 6 November. By the owner's day, 30
    // September,
    // 37: 30 days from the recording end on Saturday 6 December. By the file the sixtieth day is 9 December: 90 days end on 9 March 2026.
    [Theory]
    [InlineData("2025-09-30", "2025-12-05")]
    [InlineData(null, "2025-12-05")]
    [InlineData("2025-10-07", "2025-12-05")]
    [InlineData("2025-10-08", "2026-03-09")]
    [InlineData("2025-10-10", "2026-03-09")]
    [Proves("Civ. Code § 8188(a)")]
    [Proves("Civ. Code § 8180(a)(4)")]
    public void A_notice_of_cessation_is_tried_by_the_day_it_states_as_well_as_by_ours(string? states, string plan)
    {
        var last = Last(Job().LaborCeased("2025-10-10", unfinished: true).OwnerRecorded("2025-11-06", OwnerNotice.Cessation, states)
            .OwnerToldUs("2025-11-10", OwnerNotice.Cessation), "2025-12-01");
        Assert.Equal(plan, last.Plan());
        Assert.Equal("2026-03-09", LawText.IsoDay(last.Readings[^1].Day));
    }

    [Fact]
    [Proves("Civ. Code § 8188(a)")]
    public void A_notice_of_cessation_that_the_files_stop_contradicts_never_loses_the_right() =>
        Assert.Equal(Standing.InDoubt, Last(Job().LaborCeased("2025-10-10").OwnerRecorded("2025-11-06", OwnerNotice.Cessation, "2025-09-30")
            .OwnerToldUs("2025-11-10", OwnerNotice.Cessation), "2026-02-20").Standing);

    // Day 30 itself: labor was last done on 1 October; the days 2 to 31 October are not all "prior to" the recording of 31 October, so
    // the first sure day is 1 November. If it is bad, the sixtieth day is 30 November and 90 days end on 28 February 2026.
    [Theory]
    [InlineData("2025-10-30", Standing.Kept, "2026-02-27")]
    [InlineData("2025-10-31", Standing.InDoubt, "2025-11-26")]
    [InlineData("2025-11-01", Standing.Lost, "2025-12-01")]
    [Proves("Civ. Code § 8188(a)")]
    public void On_the_thirtieth_day_a_notice_of_cessation_is_planned_on_and_never_lost_on(string recorded, Standing expected, string plan)
    {
        var last = Last(new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 6430m).Ended("2025-08-05")
            .LaborCeased("2025-10-01", unfinished: true).OwnerRecorded(recorded, OwnerNotice.Cessation, "2025-10-01")
            .OwnerToldUs(recorded, OwnerNotice.Cessation).ClaimRecorded("2025-12-09"), "2025-12-10");
        Assert.Equal(expected, last.Standing);
        Assert.Equal(plan, last.Plan());
    }

    // Labor stopped on 2 September, so the file says, but the claimant itself worked on 19 September: 17 days before the notice of 6
    // October. The sixtieth day after its own work is 18 November: 90 days end on Monday 16 February 2026, a holiday.
    [Fact]
    [Proves("Civ. Code § 8188(a)")]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void The_claimants_own_labor_speaks_against_a_notice_of_cessation()
    {
        var job = new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..").Notice("2025-08-14")
            .Furnished("2025-08-05", 6430m, until: "2025-09-19").Ended("2025-09-19")
            .LaborCeased("2025-09-02").OwnerRecorded("2025-10-06", OwnerNotice.Cessation, "2025-09-02")
            .OwnerToldUs("2025-10-09", OwnerNotice.Cessation);
        var last = Last(job, "2025-11-20");
        Assert.Equal(Standing.InDoubt, last.Standing);
        Assert.Equal("2025-11-05", LawText.IsoDay(last.Readings[0].Day));
        Assert.Equal("2026-02-16", LawText.IsoDay(last.Readings[^1].Day));
        Assert.Equal(Standing.InDoubt, job.On("2025-11-20").Get("completion.day").Standing);
    }

    // § 8186 knows a notice of completion of one contract only. Labor on the whole stopped 33 days before the recording of 14 November: the
    // owner will say that the paper is good for the whole, and 30 days end on Sunday 14 December.
    [Theory]
    [InlineData("direct")]
    [InlineData("second")]
    [Proves("Civ. Code § 8186")]
    [Proves("Civ. Code § 8188")]
    public void A_notice_of_cessation_that_names_one_contract_is_planned_on_as_for_the_whole(string contractOf)
    {
        var last = Last(Job().Party("second", PartyCapacity.DirectContractor, "Sorrel Grading Inc.")
            .Work(w => w with { SeveralDirectContracts = true })
            .LaborCeased("2025-10-12").OwnerRecorded("2025-11-14", OwnerNotice.Cessation, "2025-10-12", contractOf)
            .OwnerToldUs("2025-11-18", OwnerNotice.Cessation), "2025-12-01");
        Assert.Equal("2025-12-12", last.Plan());
        Assert.Equal("2026-03-11", LawText.IsoDay(last.Readings[^1].Day));
        Assert.True(last.Says("knows no notice of cessation for one contract"));
        Assert.True(last.Asks("(owner-recorded.contractOf)"));
    }

    // A notice of acceptance is a paper of public work (Civ. Code § 9356(a)).
    [Fact]
    [Proves("Civ. Code § 8182(a)")]
    public void A_notice_of_acceptance_is_no_notice_of_completion_of_private_work() =>
        Assert.Equal(["2026-01-20"], Last(Job().Completed("2025-10-22").OwnerRecorded("2025-10-27", OwnerNotice.Acceptance, "2025-10-22")
            .OwnerToldUs("2025-10-28", OwnerNotice.Acceptance)).DaysOf());
}
