using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.ClaimOfLien;

public sealed class LienRightTests
{
    private static JobBuilder Supplier() =>
        new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-04-06").Completed("2026-05-04");

    private static Finding Right(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Get("lien-right");

    [Theory]
    [InlineData(ClaimantRole.Subcontractor, "subcontractor")]
    [InlineData(ClaimantRole.Supplier, "material supplier")]
    [InlineData(ClaimantRole.EquipmentLessor, "equipment lessor")]
    [InlineData(ClaimantRole.Laborer, "laborer")]
    [InlineData(ClaimantRole.DesignProfessional, "design professional")]
    [Proves("Civ. Code § 8400")]
    public void Everyone_who_provides_authorized_work_has_the_right(ClaimantRole role, string words)
    {
        var right = Right(Supplier().Role(role).Licensed("2020-01-01.."));
        Assert.Equal(Standing.Open, right.Standing);
        Assert.Contains(words, right.Why[0].Text, StringComparison.Ordinal);
        Assert.Equal("Civ. Code § 8400", right.Sections[0]);
    }

    [Theory]
    [InlineData(WorkKind.Public, "Civ. Code § 9000")]
    [InlineData(WorkKind.Federal, "40 U.S.C. § 3131")]
    [Proves("Civ. Code § 8160")]
    [Proves("Civ. Code § 9000")]
    public void Work_contracted_for_by_a_public_entity_bears_no_lien(WorkKind kind, string section)
    {
        var assessment = Supplier().Work(w => w with { Kind = kind }).On("2026-06-01");
        Assert.Equal(Standing.Lost, assessment.Get("lien-right").Standing);
        Assert.Equal([section], assessment.Get("lien-right").Sections);
        Assert.Null(assessment.Find("claim-of-lien.last-day"));
        Assert.NotEmpty(assessment.ClaimObstacles);
    }

    [Fact]
    [Proves("Civ. Code § 8160")]
    public void Private_work_does()
    {
        Assert.Null(Law.MechanicsLien.LienRight.NotOnThisWork(Supplier().FactsOn("2026-06-01")));
        Assert.Empty(Supplier().On("2026-06-01").ClaimObstacles);
    }

    [Fact]
    [Proves("Civ. Code § 8410")]
    public void The_right_is_as_weak_as_its_weakest_leg()
    {
        Assert.Equal(Standing.InDoubt, Right(Supplier().Role(ClaimantRole.Subcontractor)).Standing);
        Assert.Equal(Standing.Lost, Right(Supplier().Role(ClaimantRole.Subcontractor).Licensed("2026-03-03..")).Standing);
        Assert.Equal(Standing.Lost, Right(Supplier(), "2026-12-01").Standing);
        Assert.Equal(Standing.Lost,
            Right(new JobBuilder().Furnished("2026-03-02", 10m).Ended("2026-04-06").Completed("2026-05-04")).Standing);
        Assert.Equal(Standing.Narrowed,
            Right(new JobBuilder().Notice("2026-04-01").Furnished("2026-03-02", 10m).Furnished("2026-04-06", 10m).Ended("2026-04-06")
                .Completed("2026-05-04")).Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8410")]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void Each_obstacle_is_named()
    {
        static string[] Sections(JobBuilder job, string asOf = "2026-06-01") => [.. job.On(asOf).ClaimObstacles.Select(o => o.Section)];
        Assert.Contains("Civ. Code § 8200(c)", Sections(new JobBuilder().Furnished("2026-05-20", 10m).Ended("2026-05-20")));
        Assert.Contains("Civ. Code § 8414(a)", Sections(new JobBuilder().Notice("2026-05-20").Furnished("2026-05-20", 10m)));
        Assert.Equal(["Civ. Code § 8416(a)(1)"], Sections(Supplier().Paid("2026-05-10", 10m)));
        Assert.Equal(["Civ. Code § 8490"], Sections(Supplier().ClaimRecorded("2026-05-10").ReleaseRecorded("2026-05-20")));
    }

    // Coast Central Credit Union v. Superior Court (1989) 209 Cal.App.3d 703: the first claim lapsed without an action, a second
    // one inside the time to record was good.
    [Theory]
    [InlineData("2026-07-31", Standing.Open)]
    [InlineData("2026-08-02", Standing.Open)]
    [InlineData("2026-08-03", Standing.InDoubt)] // the Monday after, by Code Civ. Proc. § 12a
    [InlineData("2026-08-04", Standing.Lost)]
    [Proves("Civ. Code § 8460(a)")]
    public void An_expired_claim_leaves_the_right_while_the_time_to_record_still_runs(string asOf, Standing expected)
    {
        // Recorded 10 April: the ninety days to sue end on Thursday 9 July; the time to record on 2 August.
        var assessment = Supplier().ClaimRecorded("2026-04-10").On(asOf);
        Assert.Equal(Standing.Lost, assessment.Get("enforcement.last-day").Standing);
        Assert.Equal(expected, assessment.Get("lien-right").Standing);
    }

    // Complete on 27 April, as somebody contends, or on 4 May: the time to record ends on Sunday 26 July or 2 August. The claim of 10 April
    // expired on 9 July.
    [Theory]
    [InlineData("2026-07-26", Standing.Open)]
    [InlineData("2026-07-27", Standing.InDoubt)]
    [InlineData("2026-08-02", Standing.InDoubt)]
    [InlineData("2026-08-04", Standing.Lost)]
    [Proves("Civ. Code § 8460(a)")]
    public void After_an_expired_claim_the_right_is_open_only_through_the_earliest_last_day(string asOf, Standing expected) =>
        Assert.Equal(expected, Right(Supplier().Completed("2026-04-27", CompletionTheory.Occupation, contested: true)
            .ClaimRecorded("2026-04-10"), asOf).Standing);

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void An_expired_claim_leaves_the_right_where_nothing_is_known_of_completion_but_in_doubt()
    {
        var job = new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-03-02").ClaimRecorded("2026-03-05");
        Assert.Equal(Standing.InDoubt, Right(job, "2026-09-01").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8410")]
    [Proves("Bus. & Prof. Code § 7031(c)")]
    public void A_new_claim_does_not_cure_what_else_was_lost()
    {
        Assert.Equal(Standing.Lost, Right(Supplier().Role(ClaimantRole.Subcontractor).Licensed("2026-03-03..").ClaimRecorded("2026-04-10"),
            "2026-07-31").Standing);
        Assert.Equal(Standing.InDoubt,
            Right(Supplier().Role(ClaimantRole.Subcontractor).ClaimRecorded("2026-04-10"), "2026-07-31").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void A_recorded_claim_is_open_until_the_action_and_kept_with_it()
    {
        Assert.Equal(Standing.Open, Right(Supplier().ClaimRecorded("2026-05-10")).Standing);
        Assert.Equal(Standing.Kept, Right(Supplier().ClaimRecorded("2026-05-10").ActionFiled("2026-05-20")).Standing);
    }

    // Solit v. Tokai Bank (1999) 68 Cal.App.4th 1435; Santa Clara Land Title v. Nowack & Associates (1991) 226 Cal.App.3d 1558.
    [Theory]
    [InlineData(false, Standing.Open, false)]
    [InlineData(null, Standing.InDoubt, true)]
    [InlineData(true, Standing.Done, false)]
    [Proves("Civ. Code § 8490")]
    public void After_a_release_the_right_stands_on_whether_the_release_says_that_the_debt_is_satisfied(bool? satisfied, Standing expected,
        bool asks)
    {
        var right = Right(Supplier().ClaimRecorded("2026-05-10").ReleaseRecorded("2026-05-18", satisfied).ClaimRecorded("2026-05-20"));
        Assert.Equal(expected, right.Standing);
        Assert.Equal(asks, right.Asks("satisfied"));
    }

    // A. J. Raisch Paving v. Mountain View Savings & Loan (1972) 28 Cal.App.3d 832: before the acceptance no time runs.
    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void An_expired_claim_on_work_that_waits_for_acceptance_leaves_the_right_whole()
    {
        var right = Right(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-03-02")
            .Work(w => w with { SubjectToAcceptanceBy = "City of Davis", PublicTakesOver = true }).ClaimRecorded("2026-03-05"),
            "2026-09-01");
        Assert.Equal(Standing.Open, right.Standing);
        Assert.Contains("Civ. Code § 8460(a)", right.Sections);
        Assert.True(right.Says("has expired"));
    }

    [Fact]
    [Proves("Civ. Code § 8410")]
    public void A_leg_that_is_weak_is_named_and_a_sound_one_is_not()
    {
        Assert.Single(Right(Supplier()).Why);
        var unlicensed = Supplier().Role(ClaimantRole.Subcontractor).On("2026-06-01");
        Assert.Contains(unlicensed.Get("lien-right").Why, w => w.Text.EndsWith("in doubt.", StringComparison.Ordinal)
            && w.Section == unlicensed.Get("license").Why[0].Section);
        Assert.True(Right(Supplier().Role(ClaimantRole.Subcontractor).Licensed("2026-03-03..")).Says("lost."));
        Assert.True(Right(new JobBuilder().Notice("2026-04-01").Furnished("2026-03-02", 10m).Furnished("2026-04-06", 10m)
            .Ended("2026-04-06").Completed("2026-05-04")).Says("narrowed."));
    }

    [Fact]
    [Proves("Civ. Code § 8410")]
    [Proves("Civ. Code § 8460(a)")]
    public void A_late_notice_narrows_a_recorded_claim_too_and_a_doubt_outweighs_it()
    {
        static JobBuilder Late() => new JobBuilder().Notice("2026-04-01").Furnished("2026-03-02", 10m).Furnished("2026-04-06", 10m)
            .Ended("2026-04-06").Completed("2026-05-04").ClaimRecorded("2026-05-10");
        Assert.Equal(Standing.Narrowed, Right(Late()).Standing);
        Assert.Equal(Standing.Narrowed, Right(Late().ActionFiled("2026-05-20")).Standing);
        Assert.Equal(Standing.InDoubt, Right(Late().Role(ClaimantRole.Subcontractor)).Standing);
        Assert.Equal(Standing.Lost, Right(Late().Role(ClaimantRole.Subcontractor).Licensed("2026-03-03..")).Standing);
    }

    [Theory]
    [InlineData(false, true)]
    [InlineData(null, true)]
    [InlineData(true, false)]
    [Proves("Civ. Code § 8490")]
    public void An_earlier_release_is_named_where_it_does_not_end_the_right(bool? satisfied, bool named) =>
        Assert.Equal(named,
            Right(Supplier().ClaimRecorded("2026-05-10").ReleaseRecorded("2026-05-18", satisfied).ClaimRecorded("2026-05-20"))
                .Says("An earlier claim was released"));

    [Fact]
    [Proves("Civ. Code § 8490")]
    public void One_release_that_does_not_say_leaves_the_right_in_doubt_beside_one_that_does() =>
        Assert.Equal(Standing.InDoubt, Right(Supplier().ClaimRecorded("2026-05-08").ReleaseRecorded("2026-05-10", satisfied: false)
            .ClaimRecorded("2026-05-12").ReleaseRecorded("2026-05-18").ClaimRecorded("2026-05-20")).Standing);

    [Fact]
    [Proves("Civ. Code § 8410")]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void Where_nothing_was_furnished_that_is_an_obstacle_of_its_own() =>
        Assert.Equal(["Civ. Code § 8414(a)", "Civ. Code § 8416(a)(1)"], new JobBuilder().Role(ClaimantRole.Laborer)
            .On("2026-06-01").ClaimObstacles.Select(o => o.Section));

    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void A_demand_of_one_cent_is_no_obstacle() => Assert.Empty(Supplier().Paid("2026-05-10", 9.99m).On("2026-06-01").ClaimObstacles);
}
