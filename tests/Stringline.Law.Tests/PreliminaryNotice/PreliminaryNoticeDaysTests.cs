using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>First furnished on Monday 2 March 2026: the twentieth day after is Sunday 22 March.</summary>
public sealed class PreliminaryNoticeDaysTests
{
    private static JobBuilder Supplier() => new JobBuilder().Furnished("2026-03-02", 100m).Furnished("2026-04-06", 50m);

    private static JobBuilder Entities() =>
        Supplier().PartyWith("owner", p => p with { NaturalPerson = false }).PartyWith("direct", p => p with { NaturalPerson = false });

    private static Finding Notice(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Get("preliminary-notice.last-day");

    [Theory]
    [InlineData("2026-02-16", Standing.Kept)]
    [InlineData("2026-03-02", Standing.Kept)]
    [InlineData("2026-03-21", Standing.Kept)]
    [InlineData("2026-03-22", Standing.Kept)]
    [InlineData("2026-03-23", Standing.InDoubt)] // the twentieth day is a Sunday
    [InlineData("2026-03-24", Standing.Narrowed)]
    [Proves("Civ. Code § 8204(a)")]
    public void Notice_is_in_time_through_the_twentieth_day_after_first_furnishing(string given, Standing expected) =>
        Assert.Equal(expected, Notice(Supplier().Notice(given)).Standing);

    [Theory]
    [InlineData(Manner.CertifiedMail, "2026-03-22", Standing.Kept)]
    [InlineData(Manner.Substituted, "2026-03-17", Standing.Kept)]
    [InlineData(Manner.Substituted, "2026-03-18", Standing.InDoubt)]
    [InlineData(Manner.Substituted, "2026-03-19", Standing.Narrowed)]
    [Proves("Civ. Code § 8116")]
    [Proves("Civ. Code § 8204(a)")]
    public void Mail_counts_from_deposit_and_substituted_service_five_days_later(Manner manner, string done, Standing expected) =>
        Assert.Equal(expected, Notice(Entities().Notice(done, manner)).Standing);

    // Act by: 22 March 2026 is a Sunday, so Friday 20 March; no holiday lies near.
    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Civ. Code § 10")]
    [Proves("Code Civ. Proc. § 12a")]
    public void The_last_day_is_shown_unrolled_with_the_roll_beside_it_and_the_act_by_day_before_it()
    {
        var notice = Notice(Supplier(), "2026-03-10");
        Assert.Equal(Standing.Open, notice.Standing);
        Assert.True(notice.IsDeadline);
        Assert.Equal([new Reading($"20 days after first furnishing", JobBuilder.Day("2026-03-22"), JobBuilder.Day("2026-03-23"))],
            notice.Readings);
        Assert.Equal(JobBuilder.Day("2026-03-20"), notice.ActBy);
    }

    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void First_furnishing_in_doubt_gives_two_last_days_and_plans_on_the_earlier()
    {
        var notice = Notice(new JobBuilder().Furnished("2026-03-03..2026-03-10", 100m), "2026-03-12");
        Assert.Equal(["2026-03-23 first furnishing on its earliest day", "2026-03-30 first furnishing on its latest day"], notice.Lines());
        Assert.Equal(OpenDays.Statutory.LastOpenDayOnOrBefore(JobBuilder.Day("2026-03-23")), notice.ActBy);
    }

    [Theory]
    [InlineData("2026-03-22", Standing.InDoubt)]
    [InlineData("2026-03-23", Standing.InDoubt)]
    [InlineData("2026-03-24", Standing.Narrowed)]
    [Proves("Civ. Code § 8204(a)")]
    public void Not_given_it_is_open_through_the_twentieth_day_and_narrows_afterwards(string asOf, Standing expected) =>
        Assert.Equal(expected, Notice(Supplier(), asOf).Standing);

    [Theory]
    [InlineData("2026-04-26", Standing.Narrowed)]
    [InlineData("2026-04-27", Standing.Lost)]
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Civ. Code § 8200(c)")]
    public void Not_given_after_the_work_ended_it_is_lost_once_no_work_lies_within_twenty_days_back(string asOf, Standing expected) =>
        Assert.Equal(expected, Notice(Supplier().Ended("2026-04-06"), asOf).Standing);

    // Groundtech v. Puryear (Los Angeles Super. Ct., 23SMCV01991, tentative ruling of 28 November 2023): last furnished October
    // 2022, notice 31 January 2023. The day in October is not in the ruling; its last is taken.
    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Civ. Code § 8200(c)")]
    public void So_late_a_notice_saves_nothing()
    {
        var assessment = new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2020-01-01..")
            .Furnished("2022-09-01", 1000m).Furnished("2022-10-31", 1000m).Ended("2022-10-31").Notice("2023-01-31").On("2023-02-01");
        Assert.Equal(["2023-01-11 20 days before the notice was given"], assessment.Get("preliminary-notice.reaches-back-to").Lines());
        Assert.Equal(Standing.Lost, assessment.Get("preliminary-notice.last-day").Standing);
        Assert.Equal(Standing.Lost, assessment.Get("lien-right").Standing);
        Assert.Equal(0m, assessment.Amount.Demand);
        Assert.Equal(-2000m, assessment.Amount.Step("outside-reach"));
    }

    // A look-back is never rolled: 20 days before Friday 31 July 2026 is Saturday 11 July.
    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void A_late_notice_reaches_back_twenty_days_and_never_rolls_over_a_weekend()
    {
        var assessment = new JobBuilder()
            .Furnished("2026-05-04", 1m).Furnished("2026-07-10", 10m).Furnished("2026-07-11", 100m).Furnished("2026-08-03", 1000m)
            .Notice("2026-07-31").On("2026-08-10");
        var reaches = assessment.Get("preliminary-notice.reaches-back-to");
        Assert.Equal(["2026-07-11 20 days before the notice was given"], reaches.Lines());
        Assert.Null(reaches.ActBy);
        Assert.False(reaches.IsDeadline);
        Assert.Null(reaches.Readings[0].Rolled);
        Assert.Equal(1100m, assessment.Amount.Demand);
        Assert.Equal(-11m, assessment.Amount.Step("outside-reach"));
        Assert.Equal(0m, assessment.Amount.InDoubt);
        Assert.Equal(Standing.Narrowed, assessment.Get("lien-right").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void A_notice_on_a_day_in_doubt_reaches_back_by_its_latest_day_and_shows_both()
    {
        var assessment = new JobBuilder()
            .Furnished("2026-05-04", 1m).Furnished("2026-07-08", 10m).Furnished("2026-07-13", 100m)
            .Notice("2026-07-28..2026-07-31").On("2026-08-10");
        Assert.Equal(
            ["2026-07-08 20 days before the earliest day of notice", "2026-07-11 20 days before the latest day of notice"],
            assessment.Get("preliminary-notice.reaches-back-to").Lines());
        Assert.Equal(100m, assessment.Amount.Demand);
        Assert.Equal(10m, assessment.Amount.InDoubt);
    }

    // Monday 23 March 2026 is the day to which Sunday 22 March rolls.
    [Theory]
    [InlineData("2026-03-22", ReachKind.Whole, false)]
    [InlineData("2026-03-23", ReachKind.Whole, true)]
    [InlineData("2026-03-24", ReachKind.Late, false)]
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Code Civ. Proc. § 12a")]
    public void A_notice_in_time_only_by_a_roll_is_whole_and_the_argument_is_named(string given, ReachKind kind, bool byRoll)
    {
        var facts = Supplier().Notice(given).FactsOn("2026-06-01");
        var reach = PreliminaryNoticeDays.ReachOf(facts, OpenDays.Statutory);
        Assert.Equal(kind, reach.Kind);
        Assert.Equal(byRoll, reach.InTimeByRollOnly);
        Assert.Equal(byRoll, reach.IsInDoubt);
        Assert.Equal(!byRoll, reach.GivenToAll);
        Assert.Equal(byRoll, Notice(Supplier().Notice(given)).Sections.Contains("Code Civ. Proc. § 12a"));
    }

    // Of two notices the one that was surely given by the earlier day counts, whichever is entered first.
    [Theory]
    [InlineData("2026-03-10..2026-03-30", "2026-03-21")]
    [InlineData("2026-03-21", "2026-03-10..2026-03-30")]
    [InlineData("2026-03-21", "2026-04-10")]
    [InlineData("2026-04-10", "2026-03-21")]
    [Proves("Civ. Code § 8204(a)")]
    public void Of_two_notices_the_one_surely_given_first_counts(string first, string second)
    {
        var job = Supplier().Notice(first).Notice(second);
        Assert.Equal(Standing.Kept, Notice(job).Standing);
        Assert.True(job.On("2026-06-01").Get("preliminary-notice.reaches-back-to")
            .Says("The notice was in time, so everything furnished is within reach"));
        var late = Supplier().Notice("2026-04-10").On("2026-06-01").Get("preliminary-notice.reaches-back-to");
        Assert.True(late.Says("A late notice covers work furnished within 20 days before it, from 2026-03-21"));
        Assert.False(late.Says("The notice was in time"));
    }

    [Fact]
    [Proves("Civ. Code § 8200(c)")]
    public void Of_two_recipients_on_two_days_the_owner_told_later_counts()
    {
        var facts = Supplier().Notice("2026-03-10", Manner.CertifiedMail, "direct").Notice("2026-04-01", Manner.CertifiedMail, "owner")
            .FactsOn("2026-06-01");
        var reach = PreliminaryNoticeDays.ReachOf(facts, OpenDays.Statutory);
        Assert.Equal(ReachKind.Late, reach.Kind);
        Assert.Equal(JobBuilder.Day("2026-04-01"), reach.Given!.Value.Latest);
        Assert.Equal(JobBuilder.Day("2026-03-12"), reach.From!.Value.Latest);
    }

    // Industrial Asphalt v. Garrett (1986) 180 Cal.App.3d 1001: the owner was noticed, the direct contractor was not; the lien stood.
    [Fact]
    [Proves("Civ. Code § 8200(c)")]
    public void The_contractor_left_out_is_a_doubt_and_the_owner_left_out_is_a_loss()
    {
        Assert.Equal(Standing.InDoubt, Notice(Supplier().Ended("2026-04-06").Notice("2026-03-10", Manner.CertifiedMail, "owner")).Standing);
        Assert.Equal(Standing.Lost, Notice(Supplier().Ended("2026-04-06").Notice("2026-03-10", Manner.CertifiedMail, "direct")).Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8200(a)(3)")]
    [Proves("Civ. Code § 8200(c)")]
    public void A_lender_left_out_is_a_doubt_for_a_subcontractors_supplier_and_a_loss_for_one_hired_by_the_owner()
    {
        Assert.Equal(Standing.InDoubt,
            Notice(Supplier().Party("bank", PartyCapacity.ConstructionLender).Ended("2026-04-06").Notice("2026-03-10")).Standing);
        Assert.Equal(Standing.Kept,
            Notice(Supplier().Party("bank", PartyCapacity.ConstructionLender).Ended("2026-04-06")
                .Notice("2026-03-10", Manner.CertifiedMail, "owner", "direct", "bank")).Standing);
        Assert.Equal(Standing.Lost, Notice(Supplier().Role(ClaimantRole.Supplier, "owner").Party("bank", PartyCapacity.ConstructionLender)
            .Ended("2026-04-06").Notice("2026-03-10", Manner.CertifiedMail, "owner")).Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8200(c)")]
    public void Of_two_lenders_of_one_hired_by_the_owner_one_left_out_is_a_doubt()
    {
        var job = Supplier().Role(ClaimantRole.Supplier, "owner").Party("bank", PartyCapacity.ConstructionLender)
            .Party("fund", PartyCapacity.ConstructionLender).Ended("2026-04-06");
        Assert.Equal(Standing.InDoubt, Notice(job.Notice("2026-03-10", Manner.CertifiedMail, "bank")).Standing);
        Assert.Equal(Standing.Kept, Notice(job.Notice("2026-03-11", Manner.CertifiedMail, "fund")).Standing);
    }

    // Force Framing v. Chinatrust Bank (2010) 187 Cal.App.4th 1368: the owner's own sheet named another bank.
    [Fact]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void A_reputed_lender_that_was_told_leaves_the_true_one_left_out_in_doubt_and_asks_who_named_it()
    {
        var job = Supplier().Role(ClaimantRole.Supplier, "owner").Party("true", PartyCapacity.ConstructionLender)
            .Party("named", PartyCapacity.ConstructionLender)
            .Ended("2026-04-06").Notice("2026-03-10", Manner.CertifiedMail, "named").Build();
        var reputed = job with { Parties = [.. job.Parties.Select(p => p with { Reputed = p.Id == "named" })] };
        static Finding Of(JobFile job) =>
            Assessment.Of(job, JobBuilder.Day("2026-06-01"), OpenDays.Statutory).Get("preliminary-notice.last-day");
        Assert.Equal(Standing.InDoubt, Of(job).Standing);
        Assert.False(Of(job).Asks("in which paper"));
        Assert.Equal(Standing.InDoubt, Of(reputed).Standing);
        Assert.True(Of(reputed).Asks("in which paper"));
    }

    [Fact]
    public void Where_the_file_names_no_direct_contractor_it_is_asked_who_that_is()
    {
        var notice = Notice(Supplier().NoParty("direct").Party("sub", PartyCapacity.Subcontractor).Role(ClaimantRole.Supplier, "sub")
            .Notice("2026-03-10", Manner.CertifiedMail, "owner"));
        Assert.Equal(Standing.InDoubt, notice.Standing);
        Assert.Contains(notice.Questions, q => q.Text.StartsWith("Who is the direct contractor?", StringComparison.Ordinal));
    }

    // The work commenced on Monday 2 March 2026; the designer furnished from 2025 on.
    [Theory]
    [InlineData(ClaimantRole.DesignProfessional, "2026-03-22", ReachKind.Whole)]
    [InlineData(ClaimantRole.DesignProfessional, "2026-03-23", ReachKind.Whole)] // by the roll of a Sunday
    [InlineData(ClaimantRole.DesignProfessional, "2026-03-24", ReachKind.Late)]
    [InlineData(ClaimantRole.Subcontractor, "2026-03-22", ReachKind.Late)]
    [Proves("Civ. Code § 8204(b)")]
    public void A_designers_notice_within_twenty_days_after_the_work_commenced_covers_all_its_services(ClaimantRole role, string given,
        ReachKind expected)
    {
        var facts = new JobBuilder().Role(role).Work(w => w with { Commenced = JobBuilder.Day("2026-03-02") })
            .Furnished("2025-06-02", 900m).Notice(given).FactsOn("2026-06-01");
        Assert.Equal(expected, PreliminaryNoticeDays.ReachOf(facts, OpenDays.Statutory).Kind);
    }

    [Fact]
    public void Before_anything_is_furnished_the_notice_is_not_yet_due()
    {
        var notice = Notice(new JobBuilder());
        Assert.Equal(Standing.NotYet, notice.Standing);
        Assert.Empty(notice.Readings);
        Assert.Null(notice.ActBy);
    }

    // Brown Co. v. Appellate Department (1983) 148 Cal.App.3d 891: a notice before the first delivery is not too early.
    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void A_notice_before_the_first_delivery_covers_everything() =>
        Assert.Equal(150m, Supplier().Notice("2026-01-05").On("2026-06-01").Amount.Demand);

    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void With_an_unknown_day_of_first_furnishing_the_notice_is_in_doubt_and_asks()
    {
        var notice = Notice(new JobBuilder().Furnished("?", 100m));
        Assert.Equal(Standing.InDoubt, notice.Standing);
        Assert.Null(notice.ActBy);
        Assert.Contains(notice.Questions, q => q.Text == "On which day did the claimant first furnish work?");
    }
}
