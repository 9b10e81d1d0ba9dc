using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>Ceased 6 April 2026; completed 4 May 2026; last day Sunday 2 August, which rolls to Monday 3 August.</summary>
public sealed class RecordedClaimTests
{
    private static JobBuilder Supplier() => new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Furnished("2026-04-06", 10m)
        .Ended("2026-04-06").Completed("2026-05-04");

    private static Finding Last(JobBuilder job, string asOf = "2026-09-01") => job.On(asOf).Get("claim-of-lien.last-day");

    [Theory]
    [InlineData("2026-04-05", Standing.Lost)]
    [InlineData("2026-04-06", Standing.InDoubt)] // on the day of the last work, before it or after
    [InlineData("2026-04-07", Standing.Kept)]
    [InlineData("2026-08-02", Standing.Kept)]
    [InlineData("2026-08-03", Standing.InDoubt)]
    [InlineData("2026-08-04", Standing.Lost)]
    [InlineData("2026-07-30..2026-08-02", Standing.Kept)]
    [InlineData("2026-07-30..2026-08-10", Standing.InDoubt)]
    [Proves("Civ. Code § 8410")]
    [Proves("Civ. Code § 8414(a)")]
    public void A_claim_recorded_between_first_and_last_day_is_kept(string recorded, Standing expected) =>
        Assert.Equal(expected, Last(Supplier().ClaimRecorded(recorded)).Standing);

    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void A_claim_recorded_too_early_is_void_and_a_new_one_in_time_counts()
    {
        var job = Supplier().ClaimRecorded("2026-04-01");
        Assert.Equal(Standing.Open, Last(job, "2026-06-01").Standing);
        Assert.Equal(Standing.Kept, Last(job.ClaimRecorded("2026-06-05"), "2026-06-06").Standing);
        Assert.Equal(["2026-09-03"], job.On("2026-06-06").Get("enforcement.last-day").DaysOf());
    }

    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void Two_claims_recorded_too_early_leave_nothing_to_sue_on()
    {
        var answer = Supplier().ClaimRecorded("2026-04-01").ClaimRecorded("2026-04-02").On("2026-06-01");
        Assert.Equal(Standing.Open, answer.Get("claim-of-lien.last-day").Standing);
        Assert.Equal(Standing.NotYet, answer.Get("enforcement.last-day").Standing);
        Assert.Empty(answer.Get("enforcement.last-day").Readings);
    }

    // What the reasons say of a claim: the section that it was too early under is the claimant's own.
    [Theory]
    [InlineData("2026-04-05", ClaimantRole.Supplier, false, "Civ. Code § 8414(a)", "before the claimant had ceased")]
    [InlineData("2026-04-05", ClaimantRole.DirectContractor, false, "Civ. Code § 8412", "before the claimant had ceased")]
    [InlineData("2026-04-07", ClaimantRole.Supplier, true, "Civ. Code § 8410", "Claim of lien recorded 2026-04-07 (Tue).")]
    [InlineData("2026-04-07", ClaimantRole.DirectContractor, true, "Civ. Code § 8410", "Claim of lien recorded 2026-04-07 (Tue).")]
    [InlineData("2026-04-06..2026-04-07", ClaimantRole.Supplier, true, "Civ. Code § 8414(a)", "is open; if it had not, the claim is void")]
    [InlineData("2026-04-06..2026-04-07", ClaimantRole.DirectContractor, true, "Civ. Code § 8412",
        "is open; if it had not, the claim is void")]
    [Proves("Civ. Code § 8410")]
    [Proves("Civ. Code § 8412")]
    [Proves("Civ. Code § 8414(a)")]
    public void The_reasons_say_whether_a_claim_came_too_early(string recorded, ClaimantRole role, bool applied, string section,
        string says)
    {
        var job = new JobBuilder().Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct").Licensed("2020-01-01..")
            .Notice("2026-03-02").Furnished("2026-03-02", 10m).Furnished("2026-04-06", 10m)
            .Ended("2026-04-06").Completed("2026-05-04").ClaimRecorded(recorded);
        var why = Assert.Single(Last(job, "2026-06-01").Why, w => w.Text.Contains(says, StringComparison.Ordinal));
        Assert.Equal((applied, section), (why.Applied, why.Section));
        Assert.IsType<ClaimRecorded>(Assert.Single(why.Facts));
        Assert.Equal(says.StartsWith("is open", StringComparison.Ordinal), why.Children.Count > 0);
    }

    // Before the completion no time runs, and that is said; afterwards it is not.
    [Theory]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [Proves("Civ. Code § 8414(b)")]
    public void While_the_work_waits_for_acceptance_the_reasons_say_that_no_time_runs(bool completed, bool says) =>
        Assert.Equal(says, Last(completed
            ? Supplier() : new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-04-06")
            .Work(w => w with { SubjectToAcceptanceBy = "City of Davis", PublicTakesOver = true }), "2026-06-01").Says("does not run yet"));

    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void Work_furnished_after_the_recording_shows_that_it_was_too_early_even_if_no_end_is_entered()
    {
        var job = new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).ClaimRecorded("2026-03-20")
            .Furnished("2026-04-06", 10m);
        var assessment = job.On("2026-04-10");
        Assert.Equal(Standing.Open, assessment.Get("claim-of-lien.last-day").Standing);
        Assert.Equal(Standing.NotYet, assessment.Get("enforcement.last-day").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8410")]
    [Proves("Civ. Code § 8460(a)")]
    public void A_second_claim_recorded_too_late_does_not_undo_one_recorded_in_time()
    {
        var assessment = Supplier().ClaimRecorded("2026-06-05").ClaimRecorded("2026-08-20").On("2026-09-01");
        Assert.Equal(Standing.Kept, assessment.Get("claim-of-lien.last-day").Standing);
        Assert.Equal(["2026-09-03"], assessment.Get("enforcement.last-day").DaysOf());
    }

    // Solit v. Tokai Bank (1999) 68 Cal.App.4th 1435: the release of an expired claim does not bar a later one. Santa Clara Land
    // Title v. Nowack & Associates (1991) 226 Cal.App.3d 1558: one that says the debt is satisfied does.
    [Theory]
    [InlineData(false, Standing.Kept)]
    [InlineData(null, Standing.Kept)]
    [InlineData(true, Standing.Done)]
    [Proves("Civ. Code § 8490")]
    public void A_release_before_the_claim_that_counts_ends_it_only_if_it_says_that_the_debt_is_satisfied(bool? satisfied,
        Standing expected) =>
        Assert.Equal(expected,
            Last(Supplier().ClaimRecorded("2026-05-05").ReleaseRecorded("2026-05-20", satisfied).ClaimRecorded("2026-06-05")).Standing);

    [Theory]
    [InlineData("2026-07-15", Standing.Open)]
    [InlineData("2026-09-01", Standing.Lost)]
    [Proves("Civ. Code § 8490")]
    public void A_claim_released_without_satisfaction_is_gone_and_the_time_to_record_another_is_not(string asOf, Standing expected) =>
        Assert.Equal(expected, Last(Supplier().ClaimRecorded("2026-06-05").ReleaseRecorded("2026-07-01", satisfied: false), asOf).Standing);

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void Of_two_claims_in_time_the_action_is_counted_from_each_until_the_first_is_released() =>
        Assert.Equal(["2026-09-03", "2026-09-18"], Supplier().ClaimRecorded("2026-06-05").ClaimRecorded("2026-06-20").On("2026-07-01")
            .Get("enforcement.last-day").DaysOf());

    // Released on 10 June, the claim of the 5th is no longer to be sued on; that of the 20th is.
    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Civ. Code § 8490")]
    public void After_the_release_of_the_first_claim_the_action_is_counted_from_the_second() =>
        Assert.Equal(["2026-09-18"], Supplier().ClaimRecorded("2026-06-05").ReleaseRecorded("2026-06-10").ClaimRecorded("2026-06-20")
            .On("2026-07-01").Get("enforcement.last-day").DaysOf());

    [Fact]
    [Proves("Civ. Code § 8410")]
    public void A_claim_that_may_be_in_time_counts_before_one_that_is_too_late() =>
        Assert.Equal(Standing.InDoubt, Last(Supplier().ClaimRecorded("2026-07-30..2026-08-10").ClaimRecorded("2026-08-20")).Standing);

    // Two claims, of 5 May and 5 June; the release says nothing of the debt. Before 5 June it can concern the first claim only.
    [Theory]
    [InlineData("2026-06-04", Standing.Kept)]
    [InlineData("2026-06-05", Standing.Done)]
    [InlineData("2026-06-01..2026-06-04", Standing.Kept)]
    [InlineData("2026-06-01..2026-06-05", Standing.InDoubt)]
    [InlineData("2026-06-05..2026-06-10", Standing.Done)]
    [InlineData("?", Standing.InDoubt)]
    [Proves("Civ. Code § 8490")]
    public void A_release_ends_the_claim_that_counts_if_it_came_after_it(string released, Standing expected)
    {
        var last = Last(Supplier().ClaimRecorded("2026-05-05").ClaimRecorded("2026-06-05").ReleaseRecorded(released));
        Assert.Equal(expected, last.Standing);
        Assert.True(last.Asks("debt is satisfied"));
    }

    [Theory]
    [InlineData("2026-06-05..2026-06-10", "2026-06-07", Standing.InDoubt)]
    [InlineData("2026-06-05..2026-06-10", "2026-06-04", Standing.Kept)]
    [InlineData("2026-06-05..2026-06-10", "2026-06-10", Standing.Done)]
    [Proves("Civ. Code § 8490")]
    public void A_release_inside_the_doubt_of_the_second_claim_leaves_it_open(string second, string released, Standing expected) =>
        Assert.Equal(expected, Last(Supplier().ClaimRecorded("2026-05-05").ClaimRecorded(second).ReleaseRecorded(released)).Standing);

    // Solit v. Tokai Bank: what gave up a claim without satisfaction ended that claim, and one recorded later stands.
    [Theory]
    [InlineData("2026-06-05", "2026-06-04", Standing.Kept)]
    [InlineData("2026-06-05", "2026-06-05", Standing.Open)]
    [InlineData("2026-06-05", "2026-06-01..2026-06-05", Standing.Open)]
    [InlineData("2026-06-05..2026-06-10", "2026-06-07", Standing.Open)]
    [InlineData("2026-06-05..2026-06-10", "2026-06-04", Standing.Kept)]
    [InlineData("2026-06-05", "?", Standing.Open)]
    [Proves("Civ. Code § 8490")]
    public void A_claim_is_given_up_by_a_release_that_may_have_come_after_it(string recorded, string released, Standing expected) =>
        Assert.Equal(expected, Last(Supplier().ClaimRecorded(recorded).ReleaseRecorded(released, satisfied: false), "2026-07-15").Standing);

    // Worked last on 8 April, and ceased on some day from 12 to 14 April: too early for certain before the 8th, in time for certain from
    // the 15th. On the
    // 8th it may have been recorded after the work; from then to the end nothing is told of what was still done.
    [Theory]
    [InlineData("2026-04-07", Standing.Lost)]
    [InlineData("2026-04-08", Standing.InDoubt)]
    [InlineData("2026-04-12", Standing.InDoubt)]
    [InlineData("2026-04-13", Standing.InDoubt)]
    [InlineData("2026-04-14", Standing.InDoubt)]
    [InlineData("2026-04-15", Standing.Kept)]
    [InlineData("2026-04-06..2026-04-07", Standing.Lost)]
    [InlineData("2026-04-06..2026-04-08", Standing.InDoubt)]
    [InlineData("2026-04-10..2026-04-13", Standing.InDoubt)]
    [InlineData("2026-04-14..2026-04-15", Standing.InDoubt)]
    [InlineData("2026-04-15..2026-04-16", Standing.Kept)]
    [Proves("Civ. Code § 8414(a)")]
    public void A_claim_about_the_doubtful_end_of_work_may_be_void(string recorded, Standing expected) =>
        Assert.Equal(expected, Last(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m, until: "2026-04-08")
            .Ended("2026-04-12..2026-04-14").Completed("2026-05-04").ClaimRecorded(recorded)).Standing);

    // Only the completion on 4 May, or as the owner swears on the 8th, shows that the direct contractor had completed its contract
    // (§ 8412).
    [Theory]
    [InlineData("2026-05-03", null, Standing.InDoubt)]
    [InlineData("2026-05-04", null, Standing.Kept)]
    [InlineData("2026-05-07", "2026-05-08", Standing.InDoubt)]
    [InlineData("2026-05-08", "2026-05-08", Standing.Kept)]
    [Proves("Civ. Code § 8412")]
    public void A_direct_contractors_claim_before_the_completion_that_alone_shows_its_own_is_in_doubt(string recorded, string? owners,
        Standing expected)
    {
        var job = new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Furnished("2026-03-02", 10m, until: "2026-04-08")
            .Completed("2026-05-04").ClaimRecorded(recorded);
        Assert.Equal(expected, Last(owners is null
            ? job : job.OwnerRecorded("2026-05-06", OwnerNotice.Completion, states: owners)).Standing);
    }

    // A. J. Raisch Paving v. Mountain View Savings & Loan (1972) 28 Cal.App.3d 832: the time does not run before the acceptance.
    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void A_claim_recorded_while_the_work_waits_for_acceptance_is_kept() =>
        Assert.Equal(Standing.Kept, Last(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-04-06")
            .Work(w => w with { SubjectToAcceptanceBy = "City of Davis", PublicTakesOver = true }).ClaimRecorded("2026-05-10"),
            "2026-08-08").Standing);

    [Fact]
    [Proves("Civ. Code § 8414(a)")]
    public void From_the_first_day_on_and_while_nothing_says_that_work_goes_on_it_is_open()
    {
        Assert.Equal(Standing.Open, Last(new JobBuilder().Furnished("2026-03-02", 10m).Ended("2026-03-05"), "2026-03-06").Standing);
        Assert.Equal(Standing.Open, Last(new JobBuilder().Furnished("2026-03-02", 10m), "2026-03-02").Standing);
        // Ceased on some day from 12 to 14 April: from the 13th on a claim may be recorded.
        Assert.Equal(Standing.NotYet,
            Last(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-04-12..2026-04-14"),
                "2026-04-12").Standing);
        Assert.Equal(Standing.Open, Last(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-04-12..2026-04-14"),
            "2026-04-13").Standing);
    }

    // A release recorded before the only claim of the file is of an earlier one: Solit v. Tokai Bank (1999) 68 Cal.App.4th 1435.
    [Theory]
    [InlineData("2026-06-04", Standing.Kept)]
    [InlineData("2026-06-05", Standing.Done)]
    [InlineData("2026-06-01..2026-06-10", Standing.InDoubt)]
    [InlineData("?", Standing.InDoubt)]
    [Proves("Civ. Code § 8490")]
    public void A_release_from_before_the_only_claim_is_none_of_it(string released, Standing expected)
    {
        var last = Last(Supplier().ClaimRecorded("2026-06-05").ReleaseRecorded(released));
        Assert.Equal(expected, last.Standing);
        Assert.True(last.Asks("debt is satisfied"));
    }

    // Civ. Code § 8414(a): claims recorded before the claimant ceased are void, and a release of them that does not say that the debt is
    // satisfied leaves the time to record a good one. Ceased on 10 April.
    [Theory]
    [InlineData(null, Standing.InDoubt)]
    [InlineData(false, Standing.Open)]
    [InlineData(true, Standing.Done)]
    [Proves("Civ. Code § 8414(a)")]
    [Proves("Civ. Code § 8490")]
    public void The_release_of_claims_recorded_too_early_ends_the_right_only_with_the_debt(bool? satisfied, Standing expected)
    {
        JobBuilder Job() => new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Furnished("2026-04-10", 10m)
            .Ended("2026-04-10").ClaimRecorded("2026-03-09");
        Assert.Equal(expected, Last(Job().ReleaseRecorded("2026-03-20", satisfied), "2026-05-04").Standing);
        Assert.Equal(expected, Last(Job().ClaimRecorded("2026-03-16").ReleaseRecorded("2026-03-20", satisfied), "2026-05-04").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8490")]
    public void A_released_claim_is_done()
    {
        Assert.Equal(Standing.Done, Last(Supplier().ClaimRecorded("2026-06-05").ReleaseRecorded("2026-07-01")).Standing);
        Assert.Equal(Standing.Done, Supplier().ClaimRecorded("2026-06-05").ReleaseRecorded("2026-07-01").On("2026-09-01")
            .Get("lien-right").Standing);
    }

    [Fact]
    public void Before_the_first_day_and_before_anything_is_furnished_it_is_not_yet()
    {
        Assert.Equal(Standing.NotYet, Last(new JobBuilder().Furnished("2026-03-02", 10m).Ended("2026-03-05"), "2026-03-05").Standing);
        Assert.Equal(Standing.NotYet, Last(new JobBuilder(), "2026-03-04").Standing);
    }

    // Civ. Code § 8060; Fontana Paving v. Hedley Brothers (1995) 38 Cal.App.4th 146.
    [Theory]
    [InlineData("Solano", Standing.Open)] // and no part of the work lies there
    [InlineData("Yolo", Standing.Kept)]
    [InlineData("Napa", Standing.Kept)]
    [InlineData(null, Standing.Kept)]
    [Proves("Civ. Code § 8060(b)")]
    public void A_claim_recorded_in_another_county_counts_for_nothing(string? county, Standing expected)
    {
        var answer = new JobBuilder().Work(w => w with { Site = w.Site with { County = "Yolo", AlsoIn = ["Napa"] } }).Notice("2026-03-02")
            .Furnished("2026-03-02", 9000m).Ended("2026-03-30")
            .Completed("2026-04-07").ClaimRecorded("2026-05-04", county: county).On("2026-05-05");
        Assert.Equal(expected, answer.Get("claim-of-lien.last-day").Standing);
        Assert.Equal(county == "Solano", answer.Get("claim-of-lien.last-day").RuledOut("Civ. Code § 8060(b)"));
        Assert.Equal(county == "Solano", answer.Get("enforcement.last-day").Readings.Count == 0);
    }
}
