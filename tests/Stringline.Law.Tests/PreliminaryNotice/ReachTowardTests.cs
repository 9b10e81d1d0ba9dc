using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>One reach for each to whom notice is due (Civ. Code §§ 8200, 8204): toward a lender told late it is narrower.</summary>
public sealed class ReachTowardTests
{
    private static JobBuilder Job(string? lenderTold) 
    {
        var job = new JobBuilder().Lender().Furnished("2025-08-05", 4300m).Furnished("2025-09-22", 2130m).Notice("2025-08-14");
        return lenderTold is null ? job : job.Notice(lenderTold, Manner.CertifiedMail, "bank");
    }

    private static Reach Of(FactsAsOf facts) => PreliminaryNoticeDays.ReachOf(facts, OpenDays.Statutory);

    [Theory]
    [InlineData("2025-08-25", ReachKind.Whole, true, "2025-08-05")]
    [InlineData("2025-10-08", ReachKind.Late, false, "2025-09-18")]
    [InlineData(null, ReachKind.NotGiven, false, "2025-11-11")] // twenty days before the day of asking
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void Toward_the_lender_it_goes_by_the_day_on_which_the_lender_was_told(string? told, ReachKind kind, bool all, string from)
    {
        var facts = Job(told).FactsOn("2025-12-01");
        var reach = Of(facts);
        var toward = reach.Toward(facts.Job.Party("bank")!);
        Assert.Equal(ReachKind.Whole, reach.Kind);
        Assert.Equal(all, reach.GivenToAll);
        Assert.Equal(kind, toward.Kind);
        Assert.Equal(Day(from), toward.From!.Value.Latest);
        Assert.Equal(told is null ? null : Day(told), toward.Given?.Latest);
        Assert.Equal(kind == ReachKind.NotGiven, toward.Missing.Count == 1);
        Assert.Equal(kind == ReachKind.NotGiven, !toward.GivenToAll);
        Assert.Equal(kind == ReachKind.Whole, toward.CertainlyCovers(Day("2025-08-05")));
        Assert.Equal(kind != ReachKind.NotGiven, toward.CertainlyCovers(Day("2025-09-22")));
        Assert.Equal(ReachKind.Whole, reach.Toward(facts.Job.Party("owner")!).Kind);
        Assert.Equal(ReachKind.Whole, reach.Toward(facts.Job.Party("direct")!).Kind);
    }

    // The owner told on 14 August, in time, or on 8 October; the contractor then, later, or never. By Industrial Asphalt v. Garrett (1986)
    // 180 Cal.App.3d 1001 a lien stood whose claimant had told the owner alone, so that one told late takes no more than one never told.
    [Theory]
    [InlineData("2025-08-14", "2025-08-25", Standing.Kept, 6430)]
    [InlineData("2025-08-14", "2025-10-08", Standing.InDoubt, 6430)]
    [InlineData("2025-08-14", "2025-11-20", Standing.InDoubt, 6430)]
    [InlineData("2025-08-14", null, Standing.InDoubt, 6430)]
    [InlineData("2025-10-08", "2025-08-14", Standing.Narrowed, 2130)]
    [InlineData("2025-10-08", "2025-10-08", Standing.Narrowed, 2130)]
    [InlineData("2025-10-08", "2025-11-20", Standing.InDoubt, 2130)]
    [InlineData("2025-11-20", "2025-08-14", Standing.Lost, 0)]
    [InlineData(null, "2025-08-14", Standing.Lost, 0)]
    [Proves("Civ. Code § 8200(c)")]
    public void A_contractor_told_later_than_the_owner_stands_no_worse_than_one_never_told(string? owner, string? contractor,
        Standing expected, int demand)
    {
        var job = new JobBuilder().Furnished("2025-08-05", 4300m).Furnished("2025-09-22", 2130m).Ended("2025-09-22");
        if (owner is not null)
            job.Notice(owner, Manner.CertifiedMail, "owner");
        if (contractor is not null)
            job.Notice(contractor, Manner.CertifiedMail, "direct");
        var assessment = job.On("2025-12-01");
        var notice = assessment.Get("preliminary-notice.last-day");
        Assert.Equal((expected, (decimal)demand), (notice.Standing, assessment.Amount.Demand));
        Assert.Equal(expected == Standing.InDoubt && contractor is not null,
            notice.Says("The direct contractor was told later than the owner"));
    }

    [Fact]
    [Proves("Civ. Code § 8210")]
    public void Toward_a_lender_that_came_later_it_is_told_beside_the_others()
    {
        var facts = Job("2025-10-08").PartyWith("bank", p => p with { KnownSince = Day("2025-09-10") }).FactsOn("2025-12-01");
        var reach = Of(facts);
        Assert.True(reach.GivenToAll);
        Assert.Equal(2, reach.Each.Count);
        Assert.Equal(Day("2025-09-18"), reach.Toward(facts.Job.Party("bank")!).From!.Value.Latest);
        Assert.Equal(ReachKind.Late, Assert.Single(reach.Later).Kind);
    }

    [Fact]
    public void Where_no_notice_is_due_everything_is_within_reach_of_everybody()
    {
        var facts = new JobBuilder().Role(ClaimantRole.Laborer).Lender().Furnished("2025-08-05", 1m).FactsOn("2025-12-01");
        Assert.Equal(ReachKind.NoneDue, Of(facts).Toward(facts.Job.Party("bank")!).Kind);
        Assert.True(Of(facts).GivenToAll);
    }

    // Told by notices of their own, two contractors of whom one is meant were both told when the later one was.
    [Theory]
    [InlineData("2025-08-25", true)]
    [InlineData("2025-08-26", false)]
    [Proves("Civ. Code § 8200(a)")]
    public void Of_several_who_may_be_meant_the_one_told_last_counts(string second, bool sure)
    {
        var job = new JobBuilder().Party("other", PartyCapacity.DirectContractor).Party("sub", PartyCapacity.Subcontractor)
            .Role(ClaimantRole.Supplier, "sub").Furnished("2025-08-05", 100m)
            .Notice("2025-08-14").Notice(second, Manner.CertifiedMail, "other")
            .Notice("2025-11-03", Manner.CertifiedMail, "owner", "direct", "other");
        var reach = Of(job.FactsOn("2025-12-01"));
        Assert.Equal(ReachKind.Whole, reach.Kind);
        Assert.Equal(sure, reach.GivenToAll);
        Assert.Equal(Day(sure ? second : "2025-08-14"), reach.Each[1].Given!.Value.Latest);
        Assert.Equal(sure ? NoticeDoubt.None : NoticeDoubt.OneOfSeveral, reach.Each[1].Doubt);
        Assert.Equal(sure ? null : Day("2025-08-06"), reach.Each[1].SurelyFrom?.Latest);
    }

    [Theory]
    [InlineData("2025-08-14", "2025-10-08", "2025-08-14", ReachKind.Whole)]
    [InlineData("2025-10-08", "2025-08-14", "2025-08-14", ReachKind.Whole)]
    [InlineData("2025-10-08", "2025-10-06", "2025-10-06", ReachKind.Late)]
    [InlineData("2025-10-06", "2025-10-08", "2025-10-06", ReachKind.Late)]
    [Proves("Civ. Code § 8200(e)(2)")]
    public void Of_several_lenders_of_one_hired_by_the_owner_the_one_told_first_counts_for_the_lien(string bank, string fund, string given,
        ReachKind kind)
    {
        var reach = Of(new JobBuilder().Role(ClaimantRole.Supplier, "owner").Lender().Party("fund", PartyCapacity.ConstructionLender)
            .Furnished("2025-08-05", 100m)
            .Notice(bank, Manner.CertifiedMail, "bank").Notice(fund, Manner.CertifiedMail, "fund").FactsOn("2025-12-01"));
        Assert.Equal(kind, reach.Kind);
        Assert.Equal(Day(given), reach.Given!.Value.Latest);
        Assert.False(reach.GivenToAll);
    }
}
