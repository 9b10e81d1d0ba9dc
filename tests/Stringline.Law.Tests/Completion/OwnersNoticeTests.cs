using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Completion;

public sealed class OwnersNoticeTests
{
    private static OwnersNotice Notice(JobBuilder job, string asOf = "2026-12-01") =>
        Assert.Single(OwnersNotice.Of(job.FactsOn(asOf), OpenDays.Statutory));

    private static JobBuilder Noticed() => new JobBuilder().Furnished("2026-03-02", 10m).Notice("2026-03-03");

    // Completed Monday 4 May 2026: the fifteenth day is Tuesday 19 May. Completed Friday 1 May: Saturday 16 May, which rolls to
    // Monday 18 May for the owner, since the claimant's time is then the shorter.
    [Theory]
    [InlineData("2026-05-04", "2026-05-03", false)]
    [InlineData("2026-05-04", "2026-05-04", true)]
    [InlineData("2026-05-04", "2026-05-19", true)]
    [InlineData("2026-05-04", "2026-05-20", false)]
    [InlineData("2026-05-01", "2026-05-18", true)]
    [InlineData("2026-05-01", "2026-05-19", false)]
    [Proves("Civ. Code § 8182(a)")]
    [Proves("Civ. Code § 8182(d)")]
    [Proves("Code Civ. Proc. § 12b")]
    public void A_notice_of_completion_counts_from_completion_through_the_fifteenth_day_rolled_for_the_owner(string completed,
        string recorded, bool effective) =>
        Assert.Equal(effective, Notice(Noticed().OwnerRecorded(recorded)).IsEffectiveIfCompletedOn(Day(completed), Day(recorded)));

    [Fact]
    [Proves("Civ. Code § 8182(a)")]
    public void The_owners_last_day_rolls_as_far_as_any_list_lets_it()
    {
        // Fifteenth day on every day of a year, against the calendar itself.
        for (var completed = Day("2026-01-01"); completed < Day("2027-01-01"); completed = completed.PlusDays(1))
        {
            var last = OpenDays.Statutory.RollForwardOnAnyList(completed.PlusDays(15));
            var notice = Notice(Noticed().OwnerRecorded(LawText.IsoDay(last)), "2027-12-01");
            Assert.True(notice.IsEffectiveIfCompletedOn(completed, last));
            Assert.False(notice.IsEffectiveIfCompletedOn(completed, last.PlusDays(1)));
            Assert.True(notice.EarliestCompletionCovered(last) <= completed);
            Assert.False(notice.IsEffectiveIfCompletedOn(notice.EarliestCompletionCovered(last).PlusDays(-1), last));
        }
    }

    // Labor last worked Monday 2 March 2026: the thirtieth day is Wednesday 1 April; thirty days "prior to" the recording have surely run
    // on the 2nd. The notice itself states 2 March.
    [Theory]
    [InlineData("2026-03-31", Verdict.No)]
    [InlineData("2026-04-01", Verdict.Open)]
    [InlineData("2026-04-02", Verdict.Yes)]
    [Proves("Civ. Code § 8188(a)")]
    public void A_notice_of_cessation_needs_thirty_days_without_labor(string recorded, Verdict expected)
    {
        var job = Noticed().LaborCeased("2026-03-02").OwnerRecorded(recorded, OwnerNotice.Cessation, "2026-03-02");
        Assert.Equal(expected, Notice(job).CessationIsEffective(LaborStop.Of(job.FactsOn("2026-12-01")), out var why));
        Assert.Equal(expected != Verdict.No, why.Applied);
        Assert.Equal(expected == Verdict.No, why.Text.Contains("before 30 days without labor", StringComparison.Ordinal));
    }

    // The owner's paper says that labor was still stopped: where the file says otherwise that is the dispute.
    [Theory]
    [InlineData("2026-04-15", Verdict.Open)]
    [InlineData("2026-04-16", Verdict.Yes)]
    [Proves("Civ. Code § 8188(a)")]
    public void A_notice_of_cessation_needs_labor_still_stopped_on_its_day(string resumed, Verdict expected)
    {
        var job = Noticed().LaborCeased("2026-03-02", resumed).OwnerRecorded("2026-04-15", OwnerNotice.Cessation);
        Assert.Equal(expected, Notice(job).CessationIsEffective(LaborStop.Of(job.FactsOn("2026-12-01")), out _));
    }

    [Theory]
    [InlineData("2026-03-02..2026-03-10", "2026-04-05", Verdict.Open)]
    [InlineData("2026-03-02..2026-03-10", "2026-04-09", Verdict.Open)]
    [InlineData("2026-03-02..2026-03-10", "2026-04-10", Verdict.Yes)]
    [InlineData("2026-03-02..2026-03-10", "2026-04-01", Verdict.Open)]
    [InlineData("2026-03-02..2026-03-10", "2026-03-31", Verdict.No)]
    [InlineData("2026-03-02", "2026-03-30..2026-04-02", Verdict.Open)]
    [InlineData("2026-03-02", "2026-03-30..2026-03-31", Verdict.No)]
    [Proves("Civ. Code § 8188(a)")]
    public void Days_in_doubt_leave_a_notice_of_cessation_open_unless_every_day_agrees(string ceased, string recorded, Verdict expected)
    {
        var job = Noticed().LaborCeased(ceased).OwnerRecorded(recorded, OwnerNotice.Cessation, "2026-03-02");
        Assert.Equal(expected, Notice(job).CessationIsEffective(LaborStop.Of(job.FactsOn("2026-12-01")), out _));
    }

    // Stopped 2 March: thirty days have run on 1 April. Labor that resumed that day or before leaves nothing to record; but the paper,
    // which states
    // 4 March, says that it was still stopped, and by its own word refutes itself only where it was recorded before 3 April.
    [Theory]
    [InlineData("2026-03-02", "2026-04-01", "2026-03-30..2026-04-02", Verdict.No)]
    [InlineData("2026-03-02", "2026-04-01", "2026-03-30..2026-04-03", Verdict.Open)]
    [InlineData("2026-03-02", "2026-04-02", "2026-03-30..2026-04-05", Verdict.Open)]
    [InlineData("2026-03-02..2026-03-06", "2026-04-03", "2026-03-30..2026-04-10", Verdict.Open)]
    [InlineData("2026-03-02..2026-03-06", "2026-04-01", "2026-03-30..2026-04-02", Verdict.No)]
    [InlineData("2026-03-02", "2026-04-10", "2026-04-05..2026-04-09", Verdict.Yes)]
    [InlineData("2026-03-02", "2026-04-10", "2026-04-05..2026-04-10", Verdict.Open)]
    [InlineData("2026-03-02", "2026-04-10", "2026-04-10..2026-04-12", Verdict.Open)]
    [Proves("Civ. Code § 8188(a)")]
    public void A_resumption_about_the_recording_leaves_a_notice_of_cessation_open_or_without_effect(string ceased, string resumed,
        string recorded, Verdict expected)
    {
        var job = Noticed().LaborCeased(ceased, resumed).OwnerRecorded(recorded, OwnerNotice.Cessation, "2026-03-04");
        Assert.Equal(expected, Notice(job).CessationIsEffective(LaborStop.Of(job.FactsOn("2026-12-01")), out _));
    }

    // Recorded Thursday 12 November 2026: the fifteenth day after 27 October is Veterans Day, which rolls to the Thursday; the fifteenth
    // after 26 October is the Tuesday before.
    [Fact]
    [Proves("Civ. Code § 8182(a)")]
    public void The_first_completion_served_is_the_first_whose_fifteenth_day_rolls_to_the_recording() =>
        Assert.Equal(Day("2026-10-27"), Notice(Noticed().OwnerRecorded("2026-11-12")).EarliestCompletionCovered(Day("2026-11-12")));

    [Theory]
    [InlineData(null, Verdict.Open)]
    [InlineData("2026-03-16", Verdict.Open)]
    [InlineData("2026-03-17", Verdict.No)]
    [Proves("Civ. Code § 8188(a)")]
    public void Without_a_known_stop_it_is_open_unless_the_notice_itself_shows_fewer_than_thirty_days(string? states, Verdict expected)
    {
        var job = Noticed().OwnerRecorded("2026-04-15", OwnerNotice.Cessation, states);
        Assert.Equal(expected, Notice(job).CessationIsEffective([], out _));
    }

    // It says that labor ceased on 16 March: thirty days run through 15 April.
    [Theory]
    [InlineData("2026-04-12..2026-04-14", Verdict.No)]
    [InlineData("2026-04-12..2026-04-15", Verdict.Open)]
    [Proves("Civ. Code § 8188(a)")]
    public void A_notice_of_cessation_on_a_day_in_doubt_refutes_itself_only_if_every_day_does(string recorded, Verdict expected) =>
        Assert.Equal(expected, Notice(Noticed().OwnerRecorded(recorded, OwnerNotice.Cessation, "2026-03-16"))
            .CessationIsEffective([], out _));

    // Recorded Monday 4 May 2026: the tenth day is Thursday 14 May; five days for the mail end on Tuesday 19 May.
    [Theory]
    [InlineData("2026-05-14", null, Verdict.Yes)]
    [InlineData("2026-05-15", null, Verdict.Open)]
    [InlineData("2026-05-19", null, Verdict.Open)]
    [InlineData("2026-05-20", null, Verdict.No)]
    [InlineData("2026-05-18", "2026-05-14", Verdict.Yes)]
    [InlineData("2026-05-18", "2026-05-15", Verdict.No)]
    [InlineData("2026-06-18", "2026-05-14", Verdict.Yes)]
    [Proves("Civ. Code § 8190(a)")]
    [Proves("Civ. Code § 8190(c)")]
    public void The_copy_counts_within_ten_days_of_recording_and_mail_under_way_is_open(string received, string? mailed,
        Verdict expected) =>
        Assert.Equal(expected, Notice(Noticed().OwnerRecorded("2026-05-04").OwnerToldUs(received, mailed: mailed)).ReachesClaimant);

    // Recorded Thursday 7 May 2026: the tenth day is Sunday 17 May, which rolls to Monday 18 May for the owner.
    [Theory]
    [InlineData("2026-05-18", Verdict.Yes)]
    [InlineData("2026-05-19", Verdict.Open)]
    [InlineData("2026-05-23", Verdict.Open)]
    [InlineData("2026-05-24", Verdict.No)]
    [Proves("Civ. Code § 8190(a)")]
    public void The_tenth_day_rolls_for_the_owner(string received, Verdict expected) =>
        Assert.Equal(expected, Notice(Noticed().OwnerRecorded("2026-05-07").OwnerToldUs(received)).ReachesClaimant);

    [Theory]
    [InlineData("2026-05-10..2026-05-14", Verdict.Yes)]
    [InlineData("2026-05-10..2026-05-30", Verdict.Open)]
    [InlineData("2026-05-20..2026-05-30", Verdict.No)]
    [InlineData("?", Verdict.Open)]
    [Proves("Civ. Code § 8190(c)")]
    public void A_copy_on_a_day_in_doubt_is_open_unless_every_day_agrees(string received, Verdict expected) =>
        Assert.Equal(expected, Notice(Noticed().OwnerRecorded("2026-05-04").OwnerToldUs(received)).ReachesClaimant);

    [Fact]
    [Proves("Civ. Code § 8190(a)")]
    public void A_recording_on_a_day_in_doubt_gives_the_owner_the_latest_tenth_day() =>
        Assert.Equal(Verdict.Yes, Notice(Noticed().OwnerRecorded("2026-05-04..2026-05-06").OwnerToldUs("2026-05-15")).ReachesClaimant);

    [Fact]
    [Proves("Civ. Code § 8190(c)")]
    public void Nothing_said_of_a_copy_leaves_both_readings_open() =>
        Assert.Equal(Verdict.Open, Notice(Noticed().OwnerRecorded("2026-05-04")).ReachesClaimant);

    [Fact]
    public void A_copy_of_the_other_notice_or_from_before_the_recording_does_not_count()
    {
        Assert.Equal(Verdict.Open,
            Notice(Noticed().OwnerRecorded("2026-05-04").OwnerToldUs("2026-05-10", OwnerNotice.Cessation)).ReachesClaimant);
        Assert.Equal(Verdict.Open, Notice(Noticed().OwnerRecorded("2026-05-04").OwnerToldUs("2026-05-03")).ReachesClaimant);
    }

    [Fact]
    [Proves("Civ. Code § 8190(d)(1)")]
    public void An_owner_who_lives_there_need_not_tell_anyone()
    {
        var notice = Notice(Noticed().Work(w => w with { Use = WorkUse.OwnerOccupiedOneToFour }).OwnerRecorded("2026-05-04")
            .OwnerToldUs("2026-06-30"));
        Assert.Equal(Verdict.Yes, notice.ReachesClaimant);
        Assert.Equal("Civ. Code § 8190(d)(1)", notice.ReachWhy.Section);
    }

    [Theory]
    [InlineData(WorkUse.Residential, Verdict.No)]
    [InlineData(WorkUse.Commercial, Verdict.No)]
    [InlineData(null, Verdict.Open)]
    [Proves("Civ. Code § 8190(d)(1)")]
    public void Any_other_owner_must_and_where_the_use_is_unknown_it_is_open(WorkUse? use, Verdict expected) =>
        Assert.Equal(expected,
            Notice(Noticed().Work(w => w with { Use = use }).OwnerRecorded("2026-05-04").OwnerToldUs("2026-06-30")).ReachesClaimant);

    [Theory]
    [InlineData(ClaimantRole.DirectContractor, false, Verdict.No)]
    [InlineData(ClaimantRole.Supplier, true, Verdict.No)]
    [InlineData(ClaimantRole.Supplier, false, Verdict.Yes)]
    [InlineData(ClaimantRole.Laborer, false, Verdict.Yes)]
    [Proves("Civ. Code § 8190(a)(1)")]
    [Proves("Civ. Code § 8190(a)(2)")]
    public void A_copy_is_due_to_the_direct_contractor_and_to_whoever_gave_the_owner_notice(ClaimantRole role, bool gaveNotice,
        Verdict expected)
    {
        var job = new JobBuilder().Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct").Furnished("2026-03-02", 10m);
        if (gaveNotice)
            job.Notice("2026-03-03");
        Assert.Equal(expected, Notice(job.OwnerRecorded("2026-05-04").OwnerToldUs("2026-06-30")).ReachesClaimant);
    }

    // Recorded 4 May, copies due by 14 May. Nobody can owe a copy to one whose notice comes only afterwards.
    [Theory]
    [InlineData("2026-05-04", Verdict.No)]
    [InlineData("2026-05-05", Verdict.Open)]
    [InlineData("2026-05-14", Verdict.Open)]
    [InlineData("2026-05-15", Verdict.Yes)]
    [Proves("Civ. Code § 8190(a)(2)")]
    public void A_claimant_who_gave_notice_only_after_the_recording_cannot_count_on_a_copy(string given, Verdict expected) =>
        Assert.Equal(expected, Notice(new JobBuilder().Furnished("2026-04-27", 10m).Notice(given).OwnerRecorded("2026-05-04")
            .OwnerToldUs("2026-06-30")).ReachesClaimant);

    // A copy is one of what is recorded already (§ 8190(a)): on a day in doubt that may have been before the recording it is planned on,
    // and nothing is lost by it.
    [Theory]
    [InlineData("2026-05-04", "2026-05-01..2026-05-03", Verdict.Open)]
    [InlineData("2026-05-04", "2026-05-01..2026-05-04", Verdict.Open)]
    [InlineData("2026-05-04..2026-05-06", "2026-05-05", Verdict.Open)]
    [InlineData("2026-05-04..2026-05-06", "2026-05-06", Verdict.Yes)]
    [InlineData("2026-05-04", "2026-05-04", Verdict.Yes)]
    [Proves("Civ. Code § 8190(a)")]
    public void A_copy_that_may_have_come_before_the_recording_is_planned_on_and_not_sure(string recorded, string received,
        Verdict expected) =>
        Assert.Equal(expected, Notice(Noticed().OwnerRecorded(recorded).OwnerToldUs(received)).ReachesClaimant);

    [Theory]
    [InlineData("owner", Verdict.No)]
    [InlineData("direct", Verdict.Yes)]
    [Proves("Civ. Code § 8190(a)(2)")]
    public void Only_notice_to_the_owner_earns_a_copy(string to, Verdict expected) =>
        Assert.Equal(expected, Notice(new JobBuilder().Furnished("2026-03-02", 10m).Notice("2026-03-03", Manner.CertifiedMail, to)
            .OwnerRecorded("2026-05-04").OwnerToldUs("2026-06-30")).ReachesClaimant);

    // Recorded 4 May, copies due by 14 May; recorded on some day from 4 to 6 May, by Saturday 16 May, which rolls to Monday 18 May.
    [Theory]
    [InlineData("2026-05-04", "2026-05-01..2026-05-04", Verdict.No)]
    [InlineData("2026-05-04", "2026-05-01..2026-05-05", Verdict.Open)]
    [InlineData("2026-05-04..2026-05-06", "2026-05-05", Verdict.Open)]
    [InlineData("2026-05-04", "2026-05-14..2026-05-20", Verdict.Open)]
    [InlineData("2026-05-04", "2026-05-15..2026-05-20", Verdict.Yes)]
    [InlineData("2026-05-04..2026-05-06", "2026-05-18", Verdict.Open)]
    [InlineData("2026-05-04..2026-05-06", "2026-05-19", Verdict.Yes)]
    [Proves("Civ. Code § 8190(a)(2)")]
    public void Notice_on_a_day_in_doubt_about_the_recording_leaves_the_copy_open_unless_every_day_agrees(string recorded, string given,
        Verdict expected) =>
        Assert.Equal(expected, Notice(new JobBuilder().Furnished("2026-04-27", 10m).Notice(given).OwnerRecorded(recorded)
            .OwnerToldUs("2026-06-30")).ReachesClaimant);

    [Theory]
    [InlineData(null, false, Verdict.Yes)]
    [InlineData("the owner's signature", false, Verdict.Open)]
    [InlineData("the owner's signature", true, Verdict.No)]
    [InlineData(null, true, Verdict.No)]
    [Proves("Civ. Code § 8182(b)")]
    [Proves("Civ. Code § 8182(d)")]
    [Proves("Civ. Code § 8102")]
    public void A_notice_that_lacks_something_is_planned_on_until_it_is_settled_that_it_has_no_effect(string? lacks, bool held,
        Verdict expected)
    {
        var job = Noticed().Furnished("2026-04-01").Ended("2026-05-01").Completed("2026-05-01")
            .OwnerRecorded("2026-05-04", states: "2026-05-01", lacks: lacks, heldIneffective: held).OwnerToldUs("2026-05-06");
        Assert.Equal(expected, Notice(job).ReachesClaimant);
        var last = job.On("2026-05-10").Get("claim-of-lien.last-day");
        Assert.Equal(
            expected switch { Verdict.Yes => ["2026-06-03"], Verdict.No =>
                ["2026-07-30"], Verdict.Open => (string[])["2026-06-03", "2026-07-30"], _ => throw new InvalidOperationException() },
            last.DaysOf());
        Assert.Equal(expected == Verdict.Open, last.Asks("It lacks: the owner's signature"));
        var why = Notice(job).ReachWhy;
        Assert.Equal(expected == Verdict.Yes ? "Civ. Code § 8190(a)" : "Civ. Code § 8182(d)", why.Section);
        Assert.Equal(lacks is not null, why.Text.Contains("It lacks, as entered: the owner's signature.", StringComparison.Ordinal));
    }

    // One that comes too late to count is not made better by what it lacks.
    [Fact]
    [Proves("Civ. Code § 8190(c)")]
    public void A_notice_whose_copy_came_too_late_does_not_count_whatever_it_lacks() =>
        Assert.Equal(Verdict.No,
            Notice(Noticed().OwnerRecorded("2026-05-04", lacks: "verification").OwnerToldUs("2026-06-30")).ReachesClaimant);

    [Theory]
    [InlineData(null, false, Verdict.Yes)]
    [InlineData("verification", false, Verdict.Open)]
    [InlineData("verification", true, Verdict.No)]
    [Proves("Civ. Code § 8188")]
    public void A_notice_of_cessation_must_be_as_the_Code_asks_too(string? lacks, bool held, Verdict expected)
    {
        var job = Noticed().LaborCeased("2026-04-01")
            .OwnerRecorded("2026-05-04", OwnerNotice.Cessation, lacks: lacks, heldIneffective: held);
        Assert.Equal(expected, Notice(job).CessationIsEffective(LaborStop.Of(new FactsAsOf(job.Build(), Day("2026-05-10"))), out var why));
        Assert.Equal(expected == Verdict.Yes ? "Civ. Code § 8188(a)" : "Civ. Code § 8188", why.Section);
        Assert.Contains("notice of cessation", why.Text, StringComparison.Ordinal);
    }

    // Completed 26 September 2026: the fifteenth day is Sunday 11 October. The courts sit on Columbus Day, the 12th, and the State's list
    // carries it on.
    [Theory]
    [InlineData("2026-10-12", Verdict.Yes)]
    [InlineData("2026-10-13", Verdict.Open)]
    [InlineData("2026-10-14", Verdict.No)]
    [Proves("Civ. Code § 8182(a)")]
    [Proves("Civ. Code § 10")]
    public void A_roll_that_only_the_States_list_gives_leaves_open_whether_it_takes_effect(string recorded, Verdict expected)
    {
        var job = new JobBuilder().Furnished("2026-09-01", 10m).Completed("2026-09-26").OwnerRecorded(recorded, states: "2026-09-26");
        Assert.Equal(expected, Notice(job).EffectIfCompletedOn(Day("2026-09-26"), Day(recorded)));
        // No copy was due to one that gave no notice: thirty days where it takes effect, ninety where it does not.
        string[] days = [.. job.On("2026-10-20").Get("claim-of-lien.last-day").DaysOf().Distinct()];
        var shorter = LawText.IsoDay(Day(recorded).PlusDays(30));
        Assert.Equal(expected switch { Verdict.Yes => [shorter], Verdict.Open => [shorter, "2026-12-25"], _ => ["2026-12-25"] }, days);
    }

    // Recorded on 1 October 2026: the tenth day is Sunday the 11th.
    [Theory]
    [InlineData("2026-10-12", Verdict.Yes)]
    [InlineData("2026-10-13", Verdict.Open)]
    [InlineData("2026-10-14", Verdict.No)]
    [Proves("Civ. Code § 8190(a)")]
    [Proves("Civ. Code § 10")]
    public void So_does_one_of_the_tenth_day_for_the_owners_copy(string came, Verdict expected) =>
        Assert.Equal(expected, Notice(new JobBuilder().Notice("2026-09-01").Furnished("2026-09-01", 10m).Completed("2026-09-30")
            .OwnerRecorded("2026-10-01", states: "2026-09-30")
            .OwnerToldUs(came, manner: Manner.Personal)).ReachesClaimant);

    // Labor stopped on 12 April 2026 and was resumed on the very day of the recording, 16 May: whether the cessation was still "continuing"
    // then is open.
    [Theory]
    [InlineData("2026-05-15", Verdict.No)]
    [InlineData("2026-05-16", Verdict.Open)]
    [InlineData("2026-05-17", Verdict.Yes)]
    [Proves("Civ. Code § 8188(a)")]
    public void Labor_resumed_on_the_day_of_the_recording_leaves_a_notice_of_cessation_in_doubt(string resumed, Verdict expected)
    {
        var facts = Noticed().LaborCeased("2026-04-12", resumed).OwnerRecorded("2026-05-16", OwnerNotice.Cessation, "2026-04-26")
            .FactsOn("2026-06-30");
        Assert.Equal(expected, OwnersNotice.Of(facts, OpenDays.Statutory)[0].CessationIsEffective(LaborStop.Of(facts), out _));
    }

    // Stopped on 2 March, or between the 2nd and the 6th: the thirtieth day is 1 April, or lies between the 1st and the 5th. The notice
    // itself states a stop of less than thirty days and so says nothing for itself: the stop of the file decides. § 8188(a) asks for thirty
    // continuous days that go on through the recording; on a day in doubt it may be good on one of the days.
    [Theory]
    [InlineData("2026-03-02", null, "2026-03-31", Verdict.No, "before 30 days without labor")]
    [InlineData("2026-03-02", null, "2026-04-01", Verdict.Open, "whether 30 days had run")]
    [InlineData("2026-03-02", null, "2026-04-02", Verdict.Yes, "at least 30 days")]
    [InlineData("2026-03-02", null, "2026-03-30..2026-04-03", Verdict.Open, "whether 30 days had run")]
    [InlineData("2026-03-02..2026-03-06", null, "2026-03-31", Verdict.No, "before 30 days without labor")]
    [InlineData("2026-03-02..2026-03-06", null, "2026-04-03", Verdict.Open, "whether 30 days had run")]
    [InlineData("2026-03-02", "2026-04-01", "2026-03-30..2026-04-03", Verdict.No, "Labor had resumed")]
    [InlineData("2026-03-02", "2026-04-10", "2026-04-15", Verdict.No, "Labor had resumed")]
    [InlineData("2026-03-02", "2026-04-10", "2026-04-10", Verdict.Open, "labor was still stopped, is open")]
    [InlineData("2026-03-02", "2026-04-10", "2026-04-09", Verdict.Yes, "was still stopped")]
    [InlineData("2026-03-02", "2026-04-10", "2026-04-05..2026-04-15", Verdict.Open, "labor was still stopped, is open")]
    [InlineData("2026-03-02..2026-03-06", "2026-04-03", "2026-03-30..2026-04-02", Verdict.Open, "whether 30 days had run")]
    [Proves("Civ. Code § 8188(a)")]
    public void A_notice_of_cessation_that_says_nothing_for_itself_goes_by_the_stop_of_the_file(string ceased, string? resumed,
        string recorded, Verdict expected, string says)
    {
        var job = Noticed().LaborCeased(ceased, resumed).OwnerRecorded(recorded, OwnerNotice.Cessation, "2026-03-20");
        Assert.Equal(expected, Notice(job).CessationIsEffective(LaborStop.Of(job.FactsOn("2026-12-01")), out var why));
        Assert.Contains(says, why.Text, StringComparison.Ordinal);
        Assert.Equal(expected != Verdict.No, why.Applied);
    }

    // What another stop tells of labor contests the first, which then neither carries the notice nor takes its effect away.
    [Theory]
    [InlineData("2026-03-09", null, "2026-04-07", Verdict.Open, "another entry tells of labor")]
    [InlineData("2026-03-09", null, "2026-04-10", Verdict.Yes, "at least 30 days")]
    [InlineData("2026-03-09", "2026-03-20", "2026-04-07", Verdict.Open, "another entry tells of labor")]
    [Proves("Civ. Code § 8188(a)")]
    public void A_stop_that_another_entry_contests_leaves_the_notice_open(string other, string? until, string recorded, Verdict expected,
        string says)
    {
        var job = Noticed().LaborCeased("2026-03-02").LaborCeased(other, until)
            .OwnerRecorded(recorded, OwnerNotice.Cessation, "2026-03-20");
        Assert.Equal(expected, Notice(job).CessationIsEffective(LaborStop.Of(job.FactsOn("2026-12-01")), out var why));
        Assert.Contains(says, why.Text, StringComparison.Ordinal);
        // The notice, the stop, and what contests it.
        Assert.Equal(expected == Verdict.Open ? 3 : 2, why.Facts.Count);
    }

    // Our own labor speaks against the stop if it came after it and by the recording, which may have been on the last day of a doubt.
    [Theory]
    [InlineData("2026-03-02", Verdict.Yes)]
    [InlineData("2026-04-06", Verdict.Open)]
    [InlineData("2026-04-08", Verdict.Open)]
    [InlineData("2026-04-10", Verdict.Open)]
    [InlineData("2026-04-11", Verdict.Yes)]
    [Proves("Civ. Code § 8188(a)")]
    public void Our_own_labor_by_the_recording_leaves_a_notice_of_cessation_open(string worked, Verdict expected)
    {
        var job = new JobBuilder().Role(ClaimantRole.Subcontractor).Notice("2026-02-10").Furnished("2026-02-10", 10m)
            .LaborCeased("2026-03-02").Furnished(worked, 10m)
            .OwnerRecorded("2026-04-06..2026-04-10", OwnerNotice.Cessation, "2026-03-20");
        Assert.Equal(expected, Notice(job).CessationIsEffective(LaborStop.Of(job.FactsOn("2026-12-01")), out var why));
        Assert.Equal(expected == Verdict.Open, why.Text.Contains("the claimant's own work afterwards", StringComparison.Ordinal));
    }

    // What the file knows of the stop, and what the notice says for itself, recorded on 15 April: stated 16 March, thirty days run through
    // the 15th.
    [Theory]
    [InlineData(null, null, null, Verdict.Open, "does not show when labor stopped")]
    [InlineData(null, null, "2026-03-16", Verdict.Open, "does not show when labor stopped")]
    [InlineData(null, null, "2026-03-17", Verdict.No, "itself says that labor ceased on 2026-03-17")]
    [InlineData("2026-03-02", "2026-03-20", null, Verdict.Open, "does not say on which day, by the notice of cessation")]
    [InlineData("2026-03-02", "2026-03-20", "2026-03-16", Verdict.Open, "says that labor ceased on 2026-03-16")]
    [InlineData("2026-03-02", "2026-03-20", "2026-03-17", Verdict.No, "Labor had resumed")]
    [InlineData("2026-04-01", null, null, Verdict.Open, "does not say on which day, by the notice of cessation")]
    [InlineData("2026-04-01", null, "2026-03-16", Verdict.Open, "says that labor ceased on 2026-03-16")]
    [InlineData("2026-04-01", null, "2026-03-17", Verdict.No, "before 30 days without labor")]
    [Proves("Civ. Code § 8188(a)")]
    public void A_notice_of_cessation_that_is_good_by_its_own_word_is_the_owners_side_against_the_file(string? ceased, string? resumed,
        string? states, Verdict expected, string says)
    {
        var job = Noticed().OwnerRecorded("2026-04-15", OwnerNotice.Cessation, states);
        if (ceased is not null)
            job.LaborCeased(ceased, resumed);
        Assert.Equal(expected, Notice(job).CessationIsEffective(LaborStop.Of(job.FactsOn("2026-12-01")), out var why));
        Assert.Contains(says, why.Text, StringComparison.Ordinal);
    }

    // Civ. Code § 8186 knows no notice of cessation for one contract, and one that has no effect for the whole has none for a part either.
    [Theory]
    [InlineData("2026-03-02", "2026-04-10", Verdict.Open, "Civ. Code § 8186")]
    [InlineData(null, "2026-04-10", Verdict.Open, "Civ. Code § 8186")]
    [InlineData("2026-03-02", "2026-03-10", Verdict.No, "Civ. Code § 8188(a)")]
    [Proves("Civ. Code § 8188(a)")]
    public void A_notice_of_cessation_for_one_contract_is_at_most_open(string? ceased, string recorded, Verdict expected, string section)
    {
        var job = Noticed().OwnerRecorded(recorded, OwnerNotice.Cessation, recorded == "2026-03-10"
            ? "2026-03-02" : null, contractOf: "direct");
        if (ceased is not null)
            job.LaborCeased(ceased);
        Assert.Equal(expected, Notice(job).CessationIsEffective(LaborStop.Of(job.FactsOn("2026-12-01")), out var why));
        Assert.Equal(section, why.Section);
    }

    [Fact]
    public void The_time_to_record_is_that_of_an_assessment_made_from_a_job_file()
    {
        var of = new JobBuilder().On("2026-05-06");
        var without = new Assessment { AsOf = of.AsOf, Name = of.Name, Findings = of.Findings, Amount = of.Amount };

        Assert.Throws<InvalidOperationException>(() => without.TimeToRecordCompletion(Day("2026-05-04")));
    }
}
