using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>
/// Civ. Code § 8412: "after the contractor completes the direct contract"; only § 8414 speaks of ceasing. Price 50,000.00; 20,000.00
/// furnished through
/// 10 October 2025, when the claimant left.
/// </summary>
public sealed class ContractCompletedTests
{
    private static JobBuilder Left(decimal furnished = 20000m, ClaimantRole role = ClaimantRole.DirectContractor) => new JobBuilder()
        .Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct").Licensed("2012-06-01..").Price(50000m).Notice("2025-08-14")
        .Furnished("2025-08-05", furnished, until: "2025-10-10").Ended("2025-10-10");

    private static JobBuilder Ended(ContractEnd how, bool? byPayer = true) =>
        Left().Add(i => new ContractEnded { Index = i, On = JobBuilder.When("2025-10-14"), How = how, ByPayer = byPayer });

    private static Finding First(JobBuilder job, string asOf = "2025-11-03") => job.On(asOf).Get("claim-of-lien.first-day");

    [Fact]
    [Proves("Civ. Code § 8412")]
    public void A_direct_contractor_that_left_with_the_contract_unfinished_may_be_too_early_and_is_asked()
    {
        var first = First(Left());
        Assert.Equal(["2025-10-11"], first.DaysOf());
        Assert.Equal(Standing.InDoubt, first.Standing);
        Assert.Null(first.Band!.Latest);
        Assert.True(first.Asks("(contract-ended)"));
        Assert.True(first.Says("record again"));
        Assert.Equal(Standing.NotYet, First(Left(), "2025-10-10").Standing);
        // The paper is not refused: to record twice is the safe course.
        Assert.DoesNotContain(Left().On("2025-11-03").ClaimObstacles, o => o.Section is "Civ. Code § 8412" or "Civ. Code § 8414(a)");
    }

    [Theory]
    [InlineData(49999.99, false)]
    [InlineData(50000.00, true)]
    [Proves("Civ. Code § 8412")]
    public void One_that_furnished_the_whole_price_is_not(double furnished, bool open)
    {
        Assert.Equal(open ? Standing.Open : Standing.InDoubt, First(Left((decimal)furnished)).Standing);
        Assert.Equal(open, First(Left((decimal)furnished)).Band!.Latest is not null);
        // An agreed change of 1.00 is part of the contract.
        Assert.Equal(Standing.InDoubt, First(Left((decimal)furnished).Changed("2025-09-01", 1m)).Standing);
    }

    private static JobBuilder Unsure() =>
        new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Licensed("2012-06-01..").Price(50000m)
        .Furnished("2025-08-05", 20000m, until: "2025-10-10").Ended("2025-10-10..2025-10-12");

    // What nobody agreed to in writing is no part of the price.
    [Theory]
    [InlineData(50000.00, 1.00, Standing.Open)]
    [InlineData(49999.50, -1.00, Standing.InDoubt)]
    [Proves("Civ. Code § 8412")]
    public void A_change_that_is_not_agreed_leaves_the_price_as_it_is(double furnished, double change, Standing expected) =>
        Assert.Equal(expected, First(Left((decimal)furnished).Changed("2025-09-01", (decimal)change, agreed: false)).Standing);

    // While it may furnish more, nobody asks yet how the contract ended.
    [Fact]
    [Proves("Civ. Code § 8412")]
    public void A_direct_contractor_that_may_still_work_on_has_not_left_its_contract()
    {
        var first = First(new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Price(50000m)
            .Furnished("2025-08-05", 20000m, until: "2025-10-10"));
        Assert.Equal(["2025-10-11 if nothing more is furnished"], first.Lines());
        Assert.False(first.Asks("(contract-ended)"));
        Assert.False(first.Says("record again"));
    }

    // Left on some day from 10 to 12 October; the whole was complete on some day from 10 to 12 February, or before the claimant left.
    [Theory]
    [InlineData("2026-02-10..2026-02-12", "2025-10-11", "2026-02-13")]
    [InlineData("2026-02-10", "2025-10-11", "2026-02-11")]
    [InlineData("2025-10-10..2025-10-12", "2025-10-11", "2025-10-13")]
    [Proves("Civ. Code § 8412")]
    public void Completed_with_the_whole_the_contract_leaves_both_first_days(string completed, string early, string late)
    {
        var first = First(Unsure().Completed(completed), "2026-03-01");
        Assert.Equal([$"{early} if the direct contract is as complete as it will be",
            $"{late} if the direct contract was completed only with the whole work"], first.Lines());
        Assert.True(first.Asks("(contract-ended)"));
        Assert.True(first.Says("record again"));
        Assert.Equal(first.Readings[1], first.Band!.Latest);
    }

    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void Anyone_else_need_only_have_ceased() => Assert.Equal(Standing.Open, First(Left(role: ClaimantRole.Subcontractor)).Standing);

    [Theory]
    [InlineData(ContractEnd.Performed, Standing.Open, "2025-10-15")]
    [InlineData(ContractEnd.Breached, Standing.InDoubt, "2025-10-11")]
    [InlineData(ContractEnd.Abandoned, Standing.InDoubt, "2025-10-11")]
    [InlineData(ContractEnd.Rescinded, Standing.InDoubt, "2025-10-11")]
    [InlineData(ContractEnd.Terminated, Standing.InDoubt, "2025-10-11")]
    [Proves("Civ. Code § 8412")]
    public void A_contract_that_was_performed_is_completed_and_one_that_ended_otherwise_may_be(ContractEnd how, Standing expected,
        string day)
    {
        Assert.Equal([day], First(Ended(how)).DaysOf());
        Assert.Equal(expected, First(Ended(how)).Standing);
        Assert.False(First(Ended(how)).Asks("(contract-ended)"));
    }

    // Performed, though no end of furnishing is entered: the claimant has ceased.
    [Theory]
    [InlineData(ClaimantRole.DirectContractor, ContractEnd.Performed, Standing.Open)]
    [InlineData(ClaimantRole.Subcontractor, ContractEnd.Performed, Standing.Open)]
    [InlineData(ClaimantRole.Subcontractor, ContractEnd.Terminated, Standing.Open)]
    [InlineData(ClaimantRole.DirectContractor, ContractEnd.Terminated, Standing.InDoubt)]
    [Proves("Civ. Code § 8412")]
    [Proves("Civ. Code § 8414(a)")]
    public void With_its_contract_ended_the_claimant_has_ceased(ClaimantRole role, ContractEnd how, Standing expected)
    {
        var first = First(new JobBuilder().Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct").Notice("2025-08-14")
            .Furnished("2025-08-05", 20000m, until: "2025-10-10")
            .Add(i => new ContractEnded { Index = i, On = JobBuilder.When("2025-10-14"), How = how }));
        Assert.Equal(["2025-10-15"], first.DaysOf());
        Assert.Equal(expected, first.Standing);
    }

    // A claim of 3 November; others finished the whole on 10 February 2026. A claim of 11 February is good in any case.
    [Fact]
    [Proves("Civ. Code § 8412")]
    public void A_claim_recorded_before_the_contract_was_surely_complete_is_in_doubt_and_a_new_one_after_it_is_kept()
    {
        Assert.Equal(Standing.InDoubt, Left().ClaimRecorded("2025-11-03").On("2025-11-20").Get("claim-of-lien.last-day").Standing);
        var finished = Left().Completed("2026-02-10");
        Assert.Equal(["2025-10-11", "2026-02-11"], First(finished, "2026-03-01").DaysOf());
        Assert.Equal(Standing.Open, First(finished, "2026-03-01").Standing);
        Assert.Equal(Standing.InDoubt, Left().Completed("2026-02-10").ClaimRecorded("2026-02-10").On("2026-03-01")
            .Get("claim-of-lien.last-day").Standing);
        Assert.Equal(Standing.Kept, finished.ClaimRecorded("2026-02-11").On("2026-03-01").Get("claim-of-lien.last-day").Standing);
    }

    // Completion of Monday 11 May 2026 contested; the claimant's own later work of 10 June then only cured a defect, or was still owed.
    [Theory]
    [InlineData("2026-05-10", Standing.Lost)]
    [InlineData("2026-05-11", Standing.InDoubt)]
    [InlineData("2026-06-11", Standing.Kept)]
    [Proves("Civ. Code § 8414(a)")]
    public void A_contested_completion_leaves_both_first_days_too(string recorded, Standing expected)
    {
        var job = new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Furnished("2026-05-11", 10m)
            .Furnished("2026-06-10", 10m).Ended("2026-06-10")
            .Completed("2026-05-11", contested: true);
        Assert.Equal(["2026-05-12", "2026-06-11"], First(job, "2026-06-20").DaysOf());
        var last = job.ClaimRecorded(recorded).On("2026-06-20").Get("claim-of-lien.last-day");
        Assert.Equal(expected == Standing.Lost, last.RuledOut("Civ. Code § 8414(a)"));
        if (expected != Standing.Lost)
            Assert.Equal(expected, last.Standing);
    }

    // Complete on 10 February by the file, on the 13th by the owner's notice: recorded between them, it may have come before the contract
    // was complete.
    [Theory]
    [InlineData("2026-02-11", Standing.InDoubt)]
    [InlineData("2026-02-13", Standing.InDoubt)]
    [InlineData("2026-02-14", Standing.Kept)]
    [Proves("Civ. Code § 8412")]
    public void The_later_day_that_the_owner_states_may_be_that_of_the_contract(string recorded, Standing expected)
    {
        var job = Left().Completed("2026-02-10").OwnerRecorded("2026-02-09", states: "2026-02-13");
        Assert.Equal(["2025-10-11", "2026-02-14"], First(job, "2026-03-01").DaysOf());
        Assert.Equal(expected, job.ClaimRecorded(recorded).On("2026-03-01").Get("claim-of-lien.last-day").Standing);
    }
}
