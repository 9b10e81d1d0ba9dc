using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>
/// Civ. Code § 8186(a): when a notice of completion of one direct contract is recorded, "a direct contractor is deemed to have completed
/// the contract ... and a claimant other than a direct contractor is deemed to have ceased providing work", for §§ 8412 and 8414. Recorded
/// Monday 20 October 2025, states
/// 15 October: a claim may be recorded from the 21st, and 30 days end on Wednesday 19 November.
/// </summary>
public sealed class FirstDayOfOneContractTests
{
    private static JobBuilder Sub(bool? several = true, string? states = "2025-10-15", string? lacks = null, bool held = false,
        string contractOf = "direct") =>
        new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..").Price(9430m)
        .Work(w => w with { SeveralDirectContracts = several })
            .Party("second", PartyCapacity.DirectContractor, "Sorrel Grading Inc.").Furnished("2025-08-05", 5430m, until: "2025-10-10")
            .Notice("2025-08-14")
            .OwnerRecorded("2025-10-20", states: states, contractOf: contractOf, lacks: lacks, heldIneffective: held)
            .OwnerToldUs("2025-10-22");

    private static Finding First(JobBuilder job, string asOf = "2025-11-10") => job.On(asOf).Get("claim-of-lien.first-day");

    [Fact]
    [Proves("Civ. Code § 8186(a)")]
    public void A_claimant_under_that_contract_may_record_from_the_day_after_the_recording_whatever_it_furnishes_afterwards()
    {
        // Last furnished on 10 October, and nothing says that no more will be: it could be the 11th too.
        Assert.Equal(["2025-10-11"], First(Sub()).DaysOf());
        Assert.Equal(Standing.Open, First(Sub()).Standing);
        Assert.Contains("Civ. Code § 8186(a)", First(Sub()).Sections);
        Assert.Empty(First(Sub()).Questions);
        Assert.DoesNotContain(Sub().On("2025-11-10").ClaimObstacles, o => o.Section == "Civ. Code § 8414(a)");
        // A call-back of 24 November does not make the claim of 17 November void; 90 days from it end on Sunday 15 February 2026.
        var later = Sub().ClaimRecorded("2025-11-17", 5430m).Furnished("2025-11-24", 1000m);
        var answer = later.On("2025-12-10");
        Assert.Equal(["2025-10-21"], answer.Get("claim-of-lien.first-day").DaysOf());
        Assert.Equal(Standing.Kept, answer.Get("claim-of-lien.last-day").Standing);
        Assert.Equal("2026-02-13", answer.Get("enforcement.last-day").Plan());
    }

    [Fact]
    [Proves("Civ. Code § 8186(a)")]
    public void So_may_the_direct_contractor_whose_contract_it_is()
    {
        var job = new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Licensed("2012-06-01..").Price(20000m)
            .Claimant(c => c with { Name = "Marlpit Concrete Co." })
            .Work(w => w with { SeveralDirectContracts = true }).Party("own", PartyCapacity.DirectContractor, "Marlpit Concrete Company")
            .Furnished("2025-08-05", 19000m, until: "2025-10-10").OwnerRecorded("2025-10-20", states: "2025-10-15", contractOf: "own")
            .OwnerToldUs("2025-10-22")
            .ClaimRecorded("2025-11-12", 19000m).Furnished("2025-12-01", 1000m);
        var answer = job.On("2025-12-10");
        Assert.Equal(["2025-10-21"], answer.Get("claim-of-lien.first-day").DaysOf());
        Assert.Equal(Standing.Kept, answer.Get("claim-of-lien.last-day").Standing);
        Assert.Equal("2026-02-10", answer.Get("enforcement.last-day").Plan());
    }

    // § 8412 asks that the direct contract is completed, and § 8186(a) takes it as completed when the notice is recorded: of a contract
    // left unfinished on
    // 10 October nothing else shows it before, so that a claim between the two is in doubt.
    [Theory]
    [InlineData("2025-10-09", Standing.Lost)]
    [InlineData("2025-10-10", Standing.InDoubt)]
    [InlineData("2025-10-20", Standing.InDoubt)]
    [InlineData("2025-10-21", Standing.Kept)]
    [Proves("Civ. Code § 8186(a)")]
    [Proves("Civ. Code § 8412")]
    public void A_direct_contract_left_unfinished_is_surely_completed_only_by_the_notice(string recorded, Standing claimed)
    {
        var job = Own("2025-10-10");
        Assert.Equal(
            ["2025-10-11 if the direct contract is as complete as it will be",
                "2025-10-21 if the direct contract was completed only by the recording of its notice"],
            First(job).Lines());
        Assert.Equal((Standing.NotYet, Standing.InDoubt, Standing.Open),
            (First(job, "2025-10-10").Standing, First(job, "2025-10-20").Standing, First(job, "2025-10-21").Standing));
        Assert.False(First(job).Asks("(contract-ended)"));
        var last = job.ClaimRecorded(recorded, 19000m).On("2025-11-10").Get("claim-of-lien.last-day");
        Assert.Equal(claimed == Standing.Lost, last.RuledOut("Civ. Code § 8412"));
        Assert.Equal(claimed == Standing.Lost ? Standing.Open : claimed, last.Standing);
        // Left only after the recording, it had been completed by it before.
        Assert.Equal(["2025-10-21 the day after work ceased"], First(Own("2025-10-24")).Lines());
    }

    private static JobBuilder Own(string left) => new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Licensed("2012-06-01..")
        .Price(20000m).Claimant(c => c with { Name = "Marlpit Concrete Co." })
        .Work(w => w with { SeveralDirectContracts = true }).Party("own", PartyCapacity.DirectContractor, "Marlpit Concrete Company")
        .Furnished("2025-08-05", 19000m, until: "2025-10-10").Ended(left)
        .OwnerRecorded("2025-10-20", states: "2025-10-15", contractOf: "own").OwnerToldUs("2025-10-22");

    // A notice adds nothing where the claimant had ceased by then; recorded before that, it opens the time. Both ends where a day is in
    // doubt.
    [Theory]
    [InlineData("2025-10-10", "2025-10-20", null, false, "2025-10-11 the day after work ceased")]
    [InlineData("2025-10-20", "2025-10-20", null, false, "2025-10-21 the day after work ceased")]
    [InlineData("2025-10-21", "2025-10-20", null, true, "2025-10-21 the day after work ceased")]
    [InlineData("2025-10-18..2025-10-20", "2025-10-20", null, false,
        "2025-10-19 the day after work ceased|2025-10-21 work ceased on its latest day")]
    [InlineData("2025-10-18..2025-10-22", "2025-10-20", null, true,
        "2025-10-19 the day after work ceased|2025-10-21 work ceased on its latest day")]
    [InlineData("2025-10-20..2025-10-22", "2025-10-20", null, true, "2025-10-21 the day after work ceased")]
    [InlineData("2025-10-24", "2025-10-20..2025-10-22", null, true,
        "2025-10-21 the day after work ceased|2025-10-23 work ceased on its latest day")]
    [InlineData("2025-10-21", "2025-10-20..2025-10-22", null, true,
        "2025-10-21 the day after work ceased|2025-10-22 work ceased on its latest day")]
    [InlineData("2025-10-10", "2025-10-20", "verification", false, "2025-10-11 the day after work ceased")]
    [InlineData("2025-10-24", "2025-10-20", "verification", true,
        "2025-10-21 if the notice of completion of one contract is good|2025-10-25 if it is not")]
    [InlineData("2025-10-24..2025-10-26", "2025-10-20..2025-10-22", "verification", true,
        "2025-10-21 if the notice of completion of one contract is good|2025-10-27 if it is not")]
    [Proves("Civ. Code § 8186(a)")]
    public void A_notice_opens_the_time_only_where_the_claimant_had_not_ceased_before(string ended, string recorded, string? lacks,
        bool said, string lines)
    {
        var first = First(new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..")
            .Work(w => w with { SeveralDirectContracts = true }).Furnished("2025-08-05", 5430m, until: "2025-10-10").Notice("2025-08-14")
            .Ended(ended).OwnerRecorded(recorded, states: "2025-10-15", contractOf: "direct", lacks: lacks));
        Assert.Equal(lines.Split('|'), first.Lines());
        Assert.Equal(said, first.Sections.Contains("Civ. Code § 8186(a)"));
        Assert.Contains("Civ. Code § 8414(a)", first.Sections);
    }

    // Both readings where the notice may be bad or it is not shown that there are two contracts; none of it where it is bad or another's.
    [Theory]
    [InlineData(true, "2025-10-15", null, false, "direct", "2025-10-21", Standing.Kept)]
    [InlineData(null, "2025-10-15", null, false, "direct", "2025-10-21 2025-11-25", Standing.InDoubt)]
    [InlineData(true, null, null, false, "direct", "2025-10-21 2025-11-25", Standing.InDoubt)]
    [InlineData(true, "2025-10-15", "verification", false, "direct", "2025-10-21 2025-11-25", Standing.InDoubt)]
    [InlineData(true, "2025-10-15", "verification", true, "direct", "2025-11-25", Standing.Open)]
    [InlineData(true, "2025-10-01", null, false, "direct", "2025-11-25", Standing.Open)]
    [InlineData(true, "2025-10-21", null, false, "direct", "2025-11-25", Standing.Open)]
    [InlineData(false, "2025-10-15", null, false, "direct", "2025-11-25", Standing.Open)]
    [InlineData(true, "2025-10-15", null, false, "second", "2025-11-25", Standing.Open)]
    [Proves("Civ. Code § 8186(a)")]
    public void A_notice_that_may_be_bad_leaves_both_first_days(bool? several, string? states, string? lacks, bool held, string contractOf,
        string days, Standing claimed)
    {
        var job = Sub(several, states, lacks, held, contractOf).ClaimRecorded("2025-11-17", 5430m).Furnished("2025-11-24", 1000m);
        Assert.Equal(days.Split(' '), First(job, "2025-12-10").DaysOf());
        var last = job.On("2025-12-10").Get("claim-of-lien.last-day");
        Assert.Equal(claimed is Standing.Open, last.RuledOut("Civ. Code § 8414(a)"));
        if (claimed != Standing.Open)
            Assert.Equal(claimed, last.Standing);
    }
}
