using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>
/// Claim recorded on Monday 1 June 2026; its ninetieth day is Sunday 30 August. A credit to 15 December gives until Monday 15 March
/// 2027; the year from completion on 4 May 2026 ends on 4 May 2027.
/// </summary>
public sealed class CreditTests
{
    private static JobBuilder Job(string? completed = "2026-05-04")
    {
        var job = new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-04-06").ClaimRecorded("2026-06-01");
        return completed is null ? job : job.Completed(completed);
    }

    [Theory]
    [InlineData("2026-08-30", Standing.Kept)]
    [InlineData("2026-08-31", Standing.InDoubt)]
    [InlineData("2026-11-02", Standing.InDoubt)]
    [Proves("Civ. Code § 8460(b)(1)")]
    [Proves("Civ. Code § 8460(b)(2)")]
    public void Notice_of_credit_is_recorded_within_ninety_days_of_the_claim_and_later_holds_only_against_those_who_did_not_buy(
        string recorded, Standing expected)
    {
        var last = Job().CreditRecorded(recorded, "2026-12-15").On("2026-11-09").Get("credit.last-day");
        Assert.Equal(["2026-08-30"], last.DaysOf());
        Assert.Equal("2026-08-28", last.Plan());
        Assert.Equal(expected, last.Standing);
        Assert.Equal(expected == Standing.Kept, last.Says("within the 90 days"));
    }

    [Theory]
    [InlineData("2026-08-28", Standing.Open)]
    [InlineData("2026-08-31", Standing.InDoubt)]
    [InlineData("2026-09-01", Standing.Lost)]
    [Proves("Civ. Code § 8460(b)(2)")]
    public void After_the_time_to_sue_the_claim_is_lost_unless_the_owner_agrees_to_credit_before_anyone_buys(string asOf, Standing expected)
    {
        var on = Job().On(asOf);
        Assert.Equal(expected, on.Get("credit.last-day").Standing);
        Assert.Equal(expected, on.Get("enforcement.last-day").Standing);
        Assert.Equal(expected != Standing.Open, on.Get("credit.last-day").Says("lost unless the owner agrees to credit"));
        Assert.Equal(expected == Standing.Lost, on.Get("enforcement.last-day").Says("lost unless the owner agrees to credit"));
    }

    // Claim of 1 December 2025, credit until 31 March 2026: sue by 29 June; subdivision (a) does not apply.
    [Theory]
    [InlineData("2026-05-04", "2026-09-01", Standing.Kept)]
    [InlineData("2026-06-29", "2026-09-01", Standing.Kept)]
    [InlineData("2026-06-30", "2026-09-01", Standing.Lost)]
    [InlineData(null, "2026-06-29", Standing.Open)]
    [InlineData(null, "2026-06-30", Standing.Lost)]
    [Proves("Civ. Code § 8460(b)")]
    public void Under_a_credit_the_right_settles_by_its_time_alone(string? filed, string asOf, Standing expected)
    {
        var job = Subcontractor().ClaimRecorded("2025-12-01", 6_430m).CreditRecorded("2026-01-05", "2026-03-31");
        var on = (filed is null ? job : job.ActionFiled(filed)).On(asOf);
        Assert.Equal(expected, on.Get("credit.enforcement-last-day").Standing);
        Assert.Equal(expected, on.Get("enforcement.last-day").Standing);
        Assert.Equal(["2026-06-29"], on.Get("enforcement.last-day").DaysOf());
        Assert.Equal(expected, on.Get("lien-right").Standing);
    }

    private static JobBuilder Subcontractor() => new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..")
        .Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22");

    // The credit of 3 November was of the claim released on 1 December: it came before the claim of 12 January, whose time ends on Sunday
    // 12 April. Until the ninetieth day after the credit, 30 July, a court may still be asked to hold otherwise.
    [Theory]
    [InlineData("2026-04-12", Standing.InDoubt)]
    [InlineData("2026-05-15", Standing.InDoubt)]
    [InlineData("2026-07-30", Standing.InDoubt)]
    [InlineData("2026-07-31", Standing.Lost)]
    [Proves("Civ. Code § 8460(b)(1)")]
    [Proves("Civ. Code § 8460(b)")]
    public void A_credit_recorded_before_the_claim_is_an_earlier_claims(string asOf, Standing expected)
    {
        var on = Subcontractor().ClaimRecorded("2025-10-27", 6_430m).CreditRecorded("2025-11-03", "2026-05-01")
            .ReleaseRecorded("2025-12-01", false).ClaimRecorded("2026-01-12", 6_430m).On(asOf);
        var action = on.Get("enforcement.last-day");
        Assert.Equal(["2026-04-12"], action.DaysOf());
        Assert.Equal("2026-04-10", action.Plan());
        Assert.Equal(expected, action.Standing);
        Assert.True(action.RuledOut("Civ. Code § 8460(b)(1)"));
        Assert.Null(on.Find("credit.enforcement-last-day"));
    }

    [Fact]
    [Proves("Civ. Code § 8460(b)(1)")]
    public void Of_a_claim_in_suit_no_credit_is_asked_for() =>
        Assert.Null(Job().ActionFiled("2026-07-01").On("2026-09-14").Find("credit.last-day"));

    [Theory]
    [InlineData("2027-03-15", Standing.Open)]
    [InlineData("2027-03-16", Standing.Lost)]
    [Proves("Civ. Code § 8460(b)")]
    public void The_action_is_due_within_ninety_days_after_the_credit_ends(string asOf, Standing expected)
    {
        var job = Job().CreditRecorded("2026-08-03", "2026-12-15");
        Assert.Equal(["2027-03-15"], job.On(asOf).Get("credit.enforcement-last-day").DaysOf());
        Assert.Equal(expected, job.On(asOf).Get("credit.enforcement-last-day").Standing);
        Assert.Equal(expected == Standing.Open
            ? Standing.Kept : Standing.Lost, job.ActionFiled(asOf).On("2027-06-01").Get("credit.enforcement-last-day").Standing);
    }

    // Ninety days after 3 February 2027 are 4 May 2027, the very day on which the year ends.
    [Theory]
    [InlineData("2027-02-02", "2027-05-03")]
    [InlineData("2027-02-03", "2027-05-04")]
    [InlineData("2027-02-04", "2027-05-04")]
    [InlineData("2029-01-01", "2027-05-04")]
    [Proves("Civ. Code § 8460(b)")]
    public void Never_later_than_one_year_after_completion_however_long_the_credit(string until, string lastDay) =>
        Assert.Equal([lastDay], Job().CreditRecorded("2026-08-03", until).On("2026-09-01").Get("credit.enforcement-last-day").DaysOf());

    [Fact]
    [Proves("Civ. Code § 8460(b)")]
    public void While_completion_is_unknown_or_contested_the_year_is_planned_on_and_the_credit_alone_ends_the_time()
    {
        // Not before our own last work on 2 March 2026, so the year may end on 2 March 2027; it may also end much later.
        var unknown = new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-03-02").ClaimRecorded("2026-06-01")
            .CreditRecorded("2026-08-03", "2026-12-15");
        Assert.Equal(["2027-03-02", "2027-03-15"], unknown.On("2026-09-01").Get("credit.enforcement-last-day").DaysOf());
        Assert.Equal(Standing.InDoubt, unknown.On("2027-03-10").Get("credit.enforcement-last-day").Standing);
        Assert.Equal(Standing.Lost, unknown.On("2027-03-16").Get("credit.enforcement-last-day").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8460(b)")]
    public void A_completion_in_doubt_ends_the_year_on_both_its_ends()
    {
        var job = Job("2026-03-04..2026-03-10").CreditRecorded("2026-08-03", "2026-12-15");
        Assert.Equal(["2027-03-04", "2027-03-10"], job.On("2026-09-01").Get("credit.enforcement-last-day").DaysOf());
        Assert.Equal(Standing.InDoubt, job.On("2027-03-10").Get("credit.enforcement-last-day").Standing);
    }

    // Richards v. Hillside Development (1960) 177 Cal.App.2d 776: more than one credit may be given.
    [Fact]
    [Proves("Civ. Code § 8460(b)(2)")]
    public void A_second_credit_recorded_late_leaves_the_time_under_the_first_beside_it()
    {
        var last = Job().CreditRecorded("2026-08-03", "2026-10-15").CreditRecorded("2026-10-12", "2026-12-15").On("2026-11-02")
            .Get("credit.enforcement-last-day");
        Assert.Equal(["2027-01-13", "2027-03-15"], last.DaysOf());
        Assert.Equal("2027-01-13", last.Plan());
        Assert.True(last.Asks("mutual"));
    }

    [Fact]
    [Proves("Civ. Code § 8460(b)(2)")]
    public void A_first_credit_recorded_late_leaves_the_ninety_days_beside_it() =>
        Assert.Equal(["2026-08-30", "2027-03-15"], Job().CreditRecorded("2026-09-14", "2026-12-15").On("2026-11-02")
            .Get("credit.enforcement-last-day").DaysOf());

    [Fact]
    [Proves("Civ. Code § 8460(b)")]
    public void An_action_filed_before_the_claim_does_not_enforce_it() =>
        Assert.Equal(Standing.Open, Job().ActionFiled("2026-05-29").CreditRecorded("2026-08-03", "2026-12-15").On("2026-11-02")
            .Get("credit.enforcement-last-day").Standing);

    [Fact]
    [Proves("Civ. Code § 8460(b)(1)")]
    public void Without_a_claim_there_is_nothing_to_extend() =>
        Assert.Null(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-04-06").Completed("2026-05-04")
            .On("2026-06-01").Find("credit.last-day"));

    [Fact]
    [Proves("Civ. Code § 8460(b)")]
    public void A_released_claim_leaves_nothing_to_enforce_after_credit()
    {
        var job = Job().CreditRecorded("2026-08-03", "2026-12-15");
        Assert.Equal(Standing.Open, job.On("2026-09-01").Get("credit.enforcement-last-day").Standing);
        var released = job.ReleaseRecorded("2026-08-24", true).On("2026-09-01");
        Assert.Equal(Standing.Done, released.Get("credit.enforcement-last-day").Standing);
        Assert.Equal(Standing.Done, released.Get("credit.last-day").Standing);
    }
}
