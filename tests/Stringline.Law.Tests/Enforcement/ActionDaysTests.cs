using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>Claim recorded on Monday 1 June 2026. 90 days: 29 left in June, 31 in July, 30 in August: Sunday 30 August.</summary>
public sealed class ActionDaysTests
{
    private static JobBuilder Supplier() =>
        new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-04-06").Completed("2026-05-04");

    private static Finding Action(JobBuilder job, string asOf) => job.On(asOf).Get("enforcement.last-day");

    [Theory]
    [InlineData("2026-08-30", Standing.InDoubt)]
    [InlineData("2026-08-31", Standing.InDoubt)]
    [InlineData("2026-09-01", Standing.Lost)]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Code Civ. Proc. § 12a")]
    public void The_action_is_due_within_ninety_days_after_recording(string asOf, Standing expected)
    {
        var action = Action(Supplier().ClaimRecorded("2026-06-01"), asOf);
        Assert.Equal([new Reading($"90 days after recording", JobBuilder.Day("2026-08-30"), JobBuilder.Day("2026-08-31"))],
            action.Readings);
        Assert.Equal(JobBuilder.Day("2026-08-28"), action.ActBy);
        Assert.Equal(expected, action.Standing);
        Assert.Equal(90, NumberTable.Shipped.On(Number.SueOnClaim, new LocalDate(2026, 7, 1)).Count);
    }

    // Mox, Inc. v. Leventhal (1928) 89 Cal.App. 253: past a Sunday, which both the courts' holidays and the Civil Code's pass over, in
    // time.
    [Theory]
    [InlineData("2026-08-30", Standing.Kept)]
    [InlineData("2026-08-31", Standing.Kept)]
    [InlineData("2026-09-01", Standing.Lost)]
    [InlineData("2026-08-28..2026-08-30", Standing.Kept)]
    [InlineData("2026-08-28..2026-09-02", Standing.InDoubt)]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Civ. Code § 10")]
    public void An_action_filed_on_the_ninetieth_day_or_the_Monday_after_its_Sunday_is_in_time(string filed, Standing expected) =>
        Assert.Equal(expected, Action(Supplier().ClaimRecorded("2026-06-01").ActionFiled(filed), "2026-10-01").Standing);

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void Without_a_claim_that_counts_it_is_not_yet()
    {
        var action = Action(Supplier(), "2026-06-01");
        Assert.Equal(Standing.NotYet, action.Standing);
        Assert.Null(action.ActBy);
        Assert.Equal(["Civ. Code § 8460(a)"], action.Sections);
    }

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void An_action_filed_before_the_claim_does_not_enforce_it() =>
        Assert.Equal(Standing.Open, Action(Supplier().ActionFiled("2026-05-29").ClaimRecorded("2026-06-01"), "2026-06-10").Standing);

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void A_recording_on_a_day_in_doubt_is_counted_from_its_earliest_day_and_lost_only_after_its_latest()
    {
        var job = Supplier().ClaimRecorded("2026-06-02..2026-06-05");
        Assert.Equal(["2026-08-31 recorded on 2026-06-02", "2026-09-03 recorded on 2026-06-05"], Action(job, "2026-07-01").Lines());
        Assert.Equal(OpenDays.Statutory.LastOpenDayOnOrBefore(JobBuilder.Day("2026-08-31")), Action(job, "2026-07-01").ActBy);
        Assert.Equal(Standing.InDoubt, Action(job, "2026-09-03").Standing);
        Assert.Equal(Standing.Lost, Action(job, "2026-09-10").Standing);
    }

    // Coast Central Credit Union v. Superior Court (1989) 209 Cal.App.3d 703: second claim recorded 21 April 1987, suit 17 July.
    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void A_second_claim_starts_its_own_ninety_days()
    {
        var action = new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Licensed("1980-01-01..")
            .Furnished("1986-11-03", 10m).Ended("1986-11-03").Completed("1987-02-02")
            .ClaimRecorded("1986-12-01").ClaimRecorded("1987-04-21").ActionFiled("1987-07-17").On("1987-08-01").Get("enforcement.last-day");
        Assert.Equal(["1987-07-20"], action.DaysOf());
        Assert.Equal(Standing.Kept, action.Standing);
    }

    [Fact]
    public void A_recorded_release_ends_it_and_a_recorded_credit_leaves_it_to_the_credit()
    {
        Assert.Equal(Standing.Done, Action(Supplier().ClaimRecorded("2026-06-01").ReleaseRecorded("2026-07-01"), "2026-10-01").Standing);
        var onCredit = Action(Supplier().ClaimRecorded("2026-06-01").CreditRecorded("2026-07-01", "2026-12-01"), "2026-10-01");
        Assert.Equal(Standing.Open, onCredit.Standing);
        Assert.Equal(["2027-03-01"], onCredit.DaysOf());
    }

    // Recorded 24 January 2025: day 90 is Thursday 24 April, a holiday of Gov. Code § 6700 on which the courts sit.
    [Theory]
    [InlineData("2025-04-23", null, Standing.Open)]
    [InlineData("2025-04-24", null, Standing.InDoubt)]
    [InlineData("2025-04-25", null, Standing.InDoubt)]
    [InlineData("2025-04-26", null, Standing.Lost)]
    [InlineData("2025-04-25", "2025-04-24", Standing.Kept)]
    [InlineData("2025-04-28", "2025-04-25", Standing.InDoubt)]
    [InlineData("2025-04-28", "2025-04-28", Standing.Lost)]
    [Proves("Civ. Code § 10")]
    public void A_ninetieth_day_that_is_a_holiday_of_one_list_alone_is_in_doubt_through_the_next_day_and_never_planned_on(string asOf,
        string? filed, Standing expected)
    {
        var job = new JobBuilder().Furnished("2024-10-07", 6_430m).Ended("2024-10-07").Notice("2024-10-09").Completed("2024-12-16")
            .ClaimRecorded("2025-01-24");
        var action = Action(filed is null ? job : job.ActionFiled(filed), asOf);
        Assert.Equal(expected, action.Standing);
        Assert.Equal("2025-04-23", action.Plan());
        Assert.Equal(asOf == "2025-04-25" && filed is null, action.Says("file today"));
        Assert.Equal(filed == "2025-04-25", action.Says("the day to which one list carries it"));
    }

    // Recorded Monday 1 December 2025: day 90 is Sunday 1 March 2026. From Saturday to Monday only Code Civ. Proc. § 12a carries it.
    [Theory]
    [InlineData("2025-12-01", "2026-03-02", Standing.Kept, true)]
    [InlineData("2025-12-01", "2026-03-03", Standing.Lost, false)]
    [InlineData("2025-11-30", "2026-03-02", Standing.InDoubt, false)]
    [Proves("Civ. Code § 10")]
    public void A_Sunday_carries_by_both_codes_and_a_Saturday_by_one(string recorded, string filed, Standing expected, bool sure)
    {
        var action = Action(new JobBuilder().Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14")
            .Completed("2025-10-22").ClaimRecorded(recorded).ActionFiled(filed), "2026-03-10");
        Assert.Equal(expected, action.Standing);
        Assert.Equal("2026-02-27", action.Plan());
        Assert.Equal(sure, action.Says("under Civ. Code §§ 7, 10 and Code Civ. Proc. § 12a alike"));
    }

    [Fact]
    [Proves("Civ. Code § 8464")]
    public void What_was_paid_to_verify_and_record_is_kept_as_costs_of_suit() =>
        Assert.True(Action(Supplier().ClaimRecorded("2026-06-01"), "2026-06-10").Says("Keep the recorder's and the postal receipts"));

    [Theory]
    [InlineData("2026-05-29", false)]
    [InlineData("2026-05-30", true)]
    [InlineData("2026-05-31", true)]
    [InlineData("2026-05-25", true)]
    [InlineData("2026-05-30..2026-05-31", false)]
    [Proves("Civ. Code § 8460(a)")]
    public void A_recording_on_a_day_on_which_the_recorder_is_closed_is_asked_about(string recorded, bool asks) =>
        Assert.Equal(asks, Action(Supplier().ClaimRecorded(recorded), "2026-06-10").Asks("(claim-recorded.on)"));

    /// <summary>
    /// An action on a claim is worth no more than the claim. Each claim here is in doubt for another want: served by hand (§ 8416(c)(1),
    /// (e)), before the preliminary notice (§ 8200(a)), perhaps too early (§ 8414(a)), perhaps too late (§ 8414(b)).
    /// </summary>
    [Theory]
    [InlineData("good", Standing.Open)]
    [InlineData("served by hand", Standing.InDoubt)]
    [InlineData("before the notice", Standing.InDoubt)]
    [InlineData("perhaps too early", Standing.InDoubt)]
    [InlineData("perhaps too late", Standing.InDoubt)]
    [Proves("Civ. Code § 8416(e)")]
    [Proves("Civ. Code § 8410")]
    public void An_action_on_a_claim_that_may_be_void_is_in_doubt(string claim, Standing expected)
    {
        var (noticed, recorded, asOf) = claim switch
        {
            "before the notice" => ("2025-11-04", "2025-10-28", "2025-11-05"),
            "perhaps too late" => ("2025-10-24", "2026-02-20", "2026-03-02"),
            _ => ("2025-10-24", "2025-11-21", "2025-12-05"),
        };
        var job = new JobBuilder().Furnished("2025-10-20", 6430m).Completed("2025-10-22", contested: claim == "perhaps too late")
            .Notice(noticed)
            .ClaimServed("2025-10-27", claim == "served by hand" ? Manner.Personal : Manner.CertifiedMail)
            .ClaimRecorded(recorded, 6430m, id: "claim");
        job = claim == "perhaps too early" ? job.Furnished("2025-11-20..2025-11-24", 1m) : job.Ended("2025-10-20");
        Assert.Equal(expected == Standing.Open ? Standing.Kept : Standing.InDoubt, job.On(asOf).Get("claim-of-lien.last-day").Standing);
        Assert.Equal(expected, job.On(asOf).Get("enforcement.last-day").Standing);
        var sued = job.ActionOn(asOf, ActionOn.Lien, "claim", null, "owner").On(asOf).Get("enforcement.last-day");
        Assert.Equal(expected == Standing.Open ? Standing.Kept : Standing.InDoubt, sued.Standing);
    }
}
