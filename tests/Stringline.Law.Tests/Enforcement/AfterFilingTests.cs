using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>
/// Action filed on Monday 1 June 2026: the twentieth day is Sunday 21 June, act by Thursday 18 June (Friday the 19th is Juneteenth).
/// </summary>
public sealed class AfterFilingTests
{
    private static JobBuilder Job() => new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-03-02")
        .Completed("2026-03-30").ClaimRecorded("2026-04-06").ActionFiled("2026-06-01");

    [Theory]
    [InlineData("2026-06-21", Standing.InDoubt)]
    [InlineData("2026-06-22", Standing.InDoubt)]
    [InlineData("2027-06-22", Standing.InDoubt)]
    [Proves("Civ. Code § 8461")]
    public void The_notice_of_pendency_is_recorded_within_twenty_days_and_late_still_binds_whoever_comes_after(string asOf,
        Standing expected)
    {
        var last = Job().On(asOf).Get("lis-pendens.last-day");
        Assert.Equal(["2026-06-21"], last.DaysOf());
        Assert.Equal("2026-06-18", last.Plan());
        Assert.Equal(expected, last.Standing);
    }

    [Theory]
    [InlineData("2026-06-21", Standing.Kept)]
    [InlineData("2026-06-22", Standing.InDoubt)]
    [Proves("Civ. Code § 8461")]
    public void Recorded_on_the_twentieth_day_it_is_in_time(string recorded, Standing expected) =>
        Assert.Equal(expected, Job().LisPendens(recorded).On("2026-08-03").Get("lis-pendens.last-day").Standing);

    [Theory]
    [InlineData("2028-06-01", Standing.Open)]
    [InlineData("2028-06-02", Standing.InDoubt)]
    [Proves("Civ. Code § 8462")]
    public void After_two_years_without_a_trial_the_court_may_dismiss(string asOf, Standing expected)
    {
        var last = Job().On(asOf).Get("prosecution.last-day");
        Assert.Equal(["2028-06-01"], last.DaysOf());
        Assert.Equal(expected, last.Standing);
    }

    // An action before the claim, such as one on the contract, is no action to enforce it, and a notice before the action tells of none.
    [Fact]
    [Proves("Civ. Code § 8461")]
    [Proves("Civ. Code § 8462")]
    public void Only_the_action_that_enforces_the_claim_starts_the_days()
    {
        var on = Subcontractor().ActionFiled("2025-11-03").LisPendens("2025-12-01").ClaimRecorded("2025-11-20", 6_430m)
            .ActionFiled("2026-01-15").On("2026-01-20");
        var notice = on.Get("lis-pendens.last-day");
        Assert.Equal(Standing.Open, notice.Standing);
        Assert.Equal("2026-02-04", notice.Plan());
        Assert.True(notice.RuledOut("Civ. Code § 8461"));
        Assert.Equal(["2028-01-15"], on.Get("prosecution.last-day").DaysOf());
        Assert.Null(Subcontractor().ActionFiled("2025-11-03").ClaimRecorded("2025-11-20", 6_430m).On("2026-01-20")
            .Find("lis-pendens.last-day"));
    }

    private static JobBuilder Subcontractor() => new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..")
        .Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22");

    [Theory]
    [InlineData(true, true, Standing.Kept, 0)]
    [InlineData(null, true, Standing.InDoubt, 1)]
    [InlineData(true, null, Standing.InDoubt, 1)]
    [InlineData(null, null, Standing.InDoubt, 2)]
    [InlineData(false, true, Standing.Open, 0)]
    [InlineData(true, false, Standing.Open, 0)]
    [Proves("Code Civ. Proc. § 405.22")]
    [Proves("Code Civ. Proc. § 405.23")]
    public void It_is_void_without_the_mailing_before_and_the_proof_beside_it(bool? mailedFirst, bool? proof, Standing expected,
        int questions)
    {
        var notice = Subcontractor().ClaimRecorded("2025-11-20", 6_430m).ActionFiled("2026-01-15")
            .LisPendens("2026-01-20", mailedFirst, proof).On("2026-01-26").Get("lis-pendens.last-day");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(questions, notice.Questions.Count);
        Assert.Equal(expected == Standing.Open, notice.RuledOut("Code Civ. Proc. § 405.23"));
        Assert.Equal(mailedFirst is null, notice.Asks("(lis-pendens-recorded.mailedFirst)"));
        Assert.Equal(proof is null, notice.Asks("(lis-pendens-recorded.proofRecorded)"));
    }

    [Fact]
    [Proves("Code Civ. Proc. § 405.23")]
    public void A_void_notice_is_cured_by_a_good_one_in_time() =>
        Assert.Equal(Standing.Kept, Subcontractor().ClaimRecorded("2025-11-20", 6_430m).ActionFiled("2026-01-15")
            .LisPendens("2026-01-16", null, null).LisPendens("2026-01-20", false).LisPendens("2026-02-04").On("2026-02-09")
            .Get("lis-pendens.last-day").Standing);

    [Theory]
    [InlineData(8_037.50, false)]
    [InlineData(8_037.49, true)]
    [Proves("Civ. Code § 8424(c)")]
    public void After_a_full_bond_nothing_is_recorded_against_the_land(decimal bond, bool notice)
    {
        var on = Subcontractor().ClaimRecorded("2025-11-20", 6_430m).ReleaseBond("2025-12-10", bond).ActionFiled("2026-01-15")
            .On("2026-01-20");
        Assert.Equal(notice, on.Find("lis-pendens.last-day") is not null);
        Assert.NotNull(on.Find("prosecution.last-day"));
        Assert.True(on.Get("release-bond.action-last-day").Says("principal and surety are named in the action"));
    }

    [Fact]
    [Proves("Civ. Code § 8461")]
    public void After_a_release_that_says_satisfied_nothing_follows()
    {
        var on = Subcontractor().ClaimRecorded("2025-11-20", 6_430m).ActionFiled("2025-12-15").ReleaseRecorded("2025-12-29", true)
            .On("2025-12-30");
        Assert.DoesNotContain(on.Findings, f => f.Id.StartsWith("lis-pendens", StringComparison.Ordinal)
            || f.Id.StartsWith("prosecution", StringComparison.Ordinal));
    }

    // Filed 10 December 2025: two years end on Friday 10 December 2027, five on Tuesday 10 December 2030.
    [Theory]
    [InlineData("2027-12-10", Standing.Open, Standing.Open)]
    [InlineData("2027-12-11", Standing.InDoubt, Standing.Open)]
    [InlineData("2030-12-10", Standing.InDoubt, Standing.Open)]
    [InlineData("2030-12-11", Standing.InDoubt, Standing.Lost)]
    [Proves("Code Civ. Proc. § 583.310")]
    [Proves("Code Civ. Proc. § 583.420")]
    public void Two_years_may_and_five_years_do_end_an_action_that_is_not_tried(string asOf, Standing two, Standing five)
    {
        var job = Subcontractor().ClaimRecorded("2025-11-20", 6_430m).ActionFiled("2025-12-10");
        var on = job.On(asOf);
        Assert.Equal(two, on.Get("prosecution.last-day").Standing);
        Assert.Equal(two, on.Get("prosecution.service-last-day").Standing);
        Assert.True(on.Get("prosecution.service-last-day").Asks("(action-served)"));
        Assert.Equal(["2030-12-10"], on.Get("prosecution.five-years").DaysOf());
        Assert.Equal(five, on.Get("prosecution.five-years").Standing);
        Assert.Equal(five == Standing.Lost, on.Get("prosecution.five-years").Asks("(trial-begun)"));
        var served = job.Add(i => new ActionServed { Index = i, On = When("2025-12-22") }).On(asOf);
        Assert.Equal(Standing.Kept, served.Get("prosecution.service-last-day").Standing);
        Assert.Empty(served.Get("prosecution.service-last-day").Questions);
        var tried = job.Add(i => new TrialBegun { Index = i, On = When("2027-12-10") }).On("2031-01-06");
        Assert.Equal(Standing.Kept, tried.Get("prosecution.last-day").Standing);
        Assert.Equal(Standing.Kept, tried.Get("prosecution.five-years").Standing);
    }

    // The court shall dismiss what was not tried in five years: until it has, or where they were lengthened, the lien may live, and no
    // more.
    [Theory]
    [InlineData("2030-12-10", false, Standing.Kept)]
    [InlineData("2030-12-11", false, Standing.InDoubt)]
    [InlineData("2030-12-11", true, Standing.Kept)]
    [Proves("Code Civ. Proc. § 583.310")]
    public void A_lien_is_not_kept_by_an_action_that_was_not_tried_in_five_years(string asOf, bool tried, Standing expected)
    {
        var job = Subcontractor().ClaimRecorded("2025-11-20", 6_430m).ActionFiled("2025-12-10");
        if (tried)
            job.Add(i => new TrialBegun { Index = i, On = When("2030-10-07") });
        var right = job.On(asOf).Get("lien-right");
        Assert.Equal(expected, right.Standing);
        Assert.Equal(expected == Standing.InDoubt, right.Says("and this needs it."));
    }

    [Fact]
    [Proves("Civ. Code § 8461")]
    [Proves("Civ. Code § 8462")]
    public void Without_an_action_neither_is_due()
    {
        var assessment = new JobBuilder().Furnished("2026-03-02", 10m).On("2026-06-01");
        Assert.Null(assessment.Find("lis-pendens.last-day"));
        Assert.Null(assessment.Find("prosecution.last-day"));
    }
}
