using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>
/// Which notices of credit count, and by which the time to sue ends (Civ. Code § 8460(b)). Claim recorded on Tuesday 2 June 2026; its
/// ninetieth day is Monday 31 August. Entries 0 to 4 are the notice, the furnishing, its end, completion and the claim; the credits follow.
/// </summary>
public sealed class CreditReadingsTests
{
    private static JobBuilder Job(string recorded = "2026-06-02", string completed = "2026-05-04") =>
        new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m)
        .Ended("2026-04-06").Completed(completed).ClaimRecorded(recorded);

    private static Finding ToRecord(JobBuilder job, string asOf) => job.On(asOf).Get("credit.last-day");

    private static Finding ToSue(JobBuilder job, string asOf = "2026-11-09") => job.On(asOf).Get("credit.enforcement-last-day");

    [Theory]
    [InlineData("2026-08-31", Standing.Open)]
    [InlineData("2026-09-01", Standing.Lost)]
    [Proves("Civ. Code § 8460(b)(2)")]
    public void On_the_ninetieth_day_it_can_still_be_recorded_and_later_only_the_owner_can_revive_the_claim(string asOf, Standing expected)
    {
        var last = ToRecord(Job(), asOf);
        Assert.Equal((expected, "2026-08-31"), (last.Standing, last.DaysOf().Single()));
        Assert.Null(last.Band!.Latest);
        Assert.Equal(expected == Standing.Open, last.Says("Later it still counts"));
        Assert.Equal(expected == Standing.Lost, last.Says("lost unless the owner agrees to credit"));
    }

    // Recorded between 2 and 5 June the claim has until 31 August on the safe reading.
    [Fact]
    [Proves("Civ. Code § 8460(b)(1)")]
    public void A_claim_recorded_on_a_day_in_doubt_is_counted_from_its_earliest_day() =>
        Assert.Equal(["2026-08-31"], ToRecord(Job("2026-06-02..2026-06-05"), "2026-07-01").DaysOf());

    // A credit of before the claim was an earlier claim's; one of its day, or on a day in doubt that may be later, is this one's.
    [Theory]
    [InlineData("2026-06-02", "2026-06-01", false)]
    [InlineData("2026-06-02", "2026-05-28..2026-06-01", false)]
    [InlineData("2026-06-02", "2026-06-02", true)]
    [InlineData("2026-06-02", "2026-06-01..2026-06-04", true)]
    [InlineData("2026-06-02..2026-06-04", "2026-06-01", false)]
    [InlineData("2026-06-02..2026-06-04", "2026-06-03", true)]
    [Proves("Civ. Code § 8460(b)(1)")]
    public void A_credit_counts_if_it_was_recorded_after_the_claim(string recorded, string credit, bool counts)
    {
        var on = Job(recorded).CreditRecorded(credit, "2026-12-15").On("2026-08-03");
        Assert.Equal(counts, on.Find("credit.enforcement-last-day") is not null);
        // Kept only by one that surely came after it.
        var surely =
            !credit.Contains("..", StringComparison.Ordinal) && (credit == recorded || !recorded.Contains("..", StringComparison.Ordinal));
        Assert.Equal(!counts ? Standing.Open : surely ? Standing.Kept : Standing.InDoubt, on.Get("credit.last-day").Standing);
        Assert.Equal(counts && !surely, on.Find("credit.enforcement-last-day")?.DaysOf().Contains("2026-08-31") == true);
        Assert.Equal(counts ? [5] : [], on.Get("credit.last-day").EntriesOf("Notice of credit recorded"));
        Assert.Equal(counts ? [] : [5], on.Get("enforcement.last-day").EntriesOf("so that credit was an earlier claim's"));
    }

    // Notice of 2 June came after the claim of 1 June, which may be void, and before that of the 9th: its 90 days, to 7 September, count
    // beside the credit.
    [Theory]
    [InlineData("2026-05-29", "2027-03-15", Standing.Open, Standing.Kept)]
    [InlineData("2026-06-02", "2026-09-04", Standing.InDoubt, Standing.InDoubt)]
    [Proves("Civ. Code § 8460(b)")]
    public void A_credit_of_a_claim_that_may_be_void_gives_the_next_claim_no_time(string notice, string actBy, Standing toSue,
        Standing credit)
    {
        var on = new JobBuilder().Notice(notice).Furnished("2026-05-18", 10m).Ended("2026-05-25").Completed("2026-05-26")
            .ClaimRecorded("2026-06-01").CreditRecorded("2026-06-03", "2026-12-15")
            .ClaimRecorded("2026-06-09").On("2026-07-01");
        Assert.Equal((actBy, toSue), (on.Get("enforcement.last-day").Plan(), on.Get("enforcement.last-day").Standing));
        Assert.Equal(credit, on.Get("credit.last-day").Standing);
    }

    // The second claim was sued on too late; the first has credit to 15 December, and with it until 15 March 2027.
    [Fact]
    [Proves("Civ. Code § 8460(b)")]
    public void An_action_that_is_too_late_on_one_claim_takes_nothing_from_the_credit_of_another() =>
        Assert.Equal(Standing.Open, new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m).Ended("2026-04-06")
            .Completed("2026-05-04").ClaimRecorded("2026-06-02", id: "first")
            .CreditRecorded("2026-06-03", "2026-12-15").ClaimRecorded("2026-06-09", id: "second")
            .ActionOn("2026-10-05", ActionOn.Lien, "second").On("2026-11-09").Get("enforcement.last-day").Standing);

    // A credit recorded before the claim is none by the words; while it would give time a court may be asked to hold that it does, of an
    // action too.
    [Theory]
    [InlineData("2026-11-09", null, Standing.InDoubt)]
    [InlineData("2026-12-01", "2026-10-15", Standing.InDoubt)]
    [InlineData("2026-11-10", null, Standing.Lost)]
    [InlineData("2026-11-12", "2026-11-10", Standing.Lost)]
    [Proves("Civ. Code § 8460(b)")]
    public void A_credit_of_before_the_claim_leaves_it_in_doubt_while_it_would_give_time(string asOf, string? filed, Standing expected)
    {
        var job = Job().CreditRecorded("2026-06-01", "2026-08-11");
        Assert.Equal(expected, (filed is null ? job : job.ActionFiled(filed)).On(asOf).Get("enforcement.last-day").Standing);
    }

    // Recorded by the 31st of August on every reading it is in time; else it holds only against those who have not bought since.
    [Theory]
    [InlineData("2026-08-31", true)]
    [InlineData("2026-08-28..2026-09-02", false)]
    [InlineData("2026-09-01", false)]
    [Proves("Civ. Code § 8460(b)(2)")]
    public void A_credit_is_in_time_by_its_latest_day(string credit, bool inTime)
    {
        var job = Job().CreditRecorded(credit, "2026-12-15");
        Assert.Equal((inTime, !inTime),
            (ToRecord(job, "2026-11-09").Says("within the 90 days"), ToRecord(job, "2026-11-09").Says("after the 90 days")));
        Assert.Equal(inTime ? Standing.Kept : Standing.InDoubt, ToRecord(job, "2026-11-09").Standing);
        Assert.Equal(inTime ? ["2027-03-15"] : ["2026-08-31", "2027-03-15"], ToSue(job).DaysOf());
        Assert.Equal(inTime, !ToSue(job).Says("the time ended 90 days after the claim was recorded"));
    }

    [Fact]
    [Proves("Civ. Code § 8460(b)(1)")]
    public void The_ninety_days_of_a_claim_on_a_day_in_doubt_end_with_the_earlier() =>
        Assert.Equal(["2026-08-31", "2027-03-15"], ToSue(Job("2026-06-02..2026-06-05").CreditRecorded("2026-09-01", "2026-12-15"))
            .DaysOf());

    // Ninety days after the credit: 1 November 2026, 30 January 2027; 15 December, 15 March; 31 January 2027, 1 May.
    [Theory]
    [InlineData("2026-06-10", "2026-12-15", "2026-06-24", "2026-11-01", new[] { "2027-03-15 90 days after the credit ends" })]
    [InlineData("2026-06-10", "2026-11-01", "2026-06-24", "2026-12-15", new[] { "2027-03-15 90 days after the credit ends" })]
    [InlineData("2026-06-10", "2026-12-15", "2026-11-02", "2027-01-31",
        new[] { "2027-03-15 90 days after the credit recorded in time, if the late one does not hold",
            "2027-05-01 90 days after the credit ends" })]
    [InlineData("2026-06-10", "2026-12-15", "2026-11-02", "2026-12-15", new[] { "2027-03-15 90 days after the credit ends" })]
    [InlineData("2026-06-10", "2026-12-15", "2026-11-02", "2026-11-15", new[] { "2027-03-15 90 days after the credit ends" })]
    [Proves("Civ. Code § 8460(b)(2)")]
    public void Of_two_credits_the_one_that_ends_last_counts_and_a_late_one_leaves_the_other_beside_it(string first, string until,
        string second, string untilSecond, string[] expected) =>
        Assert.Equal(expected, ToSue(Job().CreditRecorded(first, until).CreditRecorded(second, untilSecond)).Lines());

    // Of three, two in time and one late: the later of those in time stands beside the late one.
    [Theory]
    [InlineData("2026-12-15", "2026-11-01")]
    [InlineData("2026-11-01", "2026-12-15")]
    [Proves("Civ. Code § 8460(b)(2)")]
    public void Of_the_credits_recorded_in_time_the_one_that_ends_last_is_left(string until, string untilSecond)
    {
        var last = ToSue(Job().CreditRecorded("2026-06-10", until).CreditRecorded("2026-06-24", untilSecond)
            .CreditRecorded("2026-11-02", "2027-01-31"));
        Assert.Equal(["2027-03-15", "2027-05-01"], last.DaysOf());
        Assert.Equal(until == "2026-12-15"
            ? [3, 5, 7] : [3, 6, 7], last.HangsOn("Civ. Code § 8460(b)").Concat(last.HangsOn("Civ. Code § 8460(b)(2)")).Concat([3])
            .Distinct().Order());
    }

    // One year after completion on 4 May 2026 is 4 May 2027; 90 days after 3 February 2027 as well: then it is the credit that ends it.
    [Theory]
    [InlineData("2027-02-03", "2027-05-04 90 days after the credit ends")]
    [InlineData("2027-02-04", "2027-05-04 one year after actual completion")]
    [Proves("Civ. Code § 8460(b)")]
    public void The_year_ends_it_only_where_it_is_over_before_the_credits_time(string until, string expected)
    {
        var last = ToSue(Job().CreditRecorded("2026-08-03", until));
        Assert.Equal([expected], last.Lines());
        Assert.True(last.Says("Never later than one year after completion"));
        Assert.Contains(5, last.HangsOn("Civ. Code § 8460(b)"));
        Assert.Equal([4], last.EntriesOf("do not apply where a notice of credit holds"));
    }

    [Fact]
    [Proves("Civ. Code § 8460(b)")]
    public void An_action_under_the_credit_is_told_with_its_entry()
    {
        var sued = Job().CreditRecorded("2026-08-03", "2026-12-15").ActionFiled("2026-10-05");
        Assert.Equal([6], ToSue(sued).EntriesOf("Action filed 2026-10-05"));
        // Once credit was given its row stays beside the suit; without credit none is asked for.
        Assert.Equal(Standing.Kept, ToRecord(sued, "2026-11-09").Standing);
        Assert.Equal("Action to enforce the lien", sued.On("2026-11-09").Get("enforcement.last-day").Title);
        Assert.Null(Job().ActionFiled("2026-08-03").On("2026-11-09").Find("credit.last-day"));
    }

    // Two claims and a release on a day between them: whether the second is released is open, and so is all that hangs on it.
    [Fact]
    [Proves("Civ. Code § 8490")]
    public void A_release_that_may_be_of_this_claim_leaves_credit_and_suit_in_doubt()
    {
        var job = Job().ClaimRecorded("2026-06-10..2026-06-20").ReleaseRecorded("2026-06-12..2026-06-15").On("2026-06-22");
        Assert.Equal((Standing.InDoubt, Standing.InDoubt), (job.Get("enforcement.last-day").Standing, job.Get("credit.last-day").Standing));
        var credit = Job().ClaimRecorded("2026-06-10..2026-06-20").ReleaseRecorded("2026-06-12..2026-06-15")
            .CreditRecorded("2026-06-22", "2026-12-15").On("2026-06-24");
        Assert.Equal((Standing.InDoubt, Standing.InDoubt),
            (credit.Get("credit.enforcement-last-day").Standing, credit.Get("credit.last-day").Standing));
    }

    // An earlier claim's credit, to 1 May 2026, is argued until 30 July, while nothing else has ended the claim of 12 January: its own day
    // is 12 April.
    [Theory]
    [InlineData(null, null, "2026-02-02", Standing.Open)]
    [InlineData(null, null, "2026-05-15", Standing.InDoubt)]
    [InlineData("2026-05-11", null, "2026-08-03", Standing.InDoubt)] // an action in that time would be in time
    [InlineData("2026-07-31", null, "2026-08-03", Standing.Lost)]
    [InlineData(null, "2026-05-11", "2026-05-15", Standing.Lost)] // so does an order
    [Proves("Civ. Code § 8460(b)")]
    public void An_earlier_claims_credit_is_argued_only_where_nothing_else_ended_the_claim(string? filed, string? ordered, string asOf,
        Standing expected)
    {
        var job = new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..").Furnished("2025-08-05", 6_430m)
            .Ended("2025-10-10").Notice("2025-08-14")
            .Completed("2025-10-22").CreditRecorded("2025-11-03", "2026-05-01").ClaimRecorded("2026-01-12", 6_430m);
        if (filed is not null)
            job.ActionFiled(filed);
        if (ordered is not null)
            job.ActionEnded(ordered, ActionEnd.ReleaseOrdered);
        Assert.Equal(expected, job.On(asOf).Get("enforcement.last-day").Standing);
    }

    // Credit noted on 1 October 2026, in the 90 days of the second claim and one day after those of the first, which the second amends. If
    // both are one claim and somebody bought before, the time ended on 30 September.
    [Theory]
    [InlineData("2026-09-30", Standing.Kept)]
    [InlineData("2026-10-01", Standing.InDoubt)]
    [Proves("Civ. Code § 8460(b)(2)")]
    public void A_credit_late_for_the_first_of_two_claims_may_not_hold(string noted, Standing expected)
    {
        var job = new JobBuilder().Furnished("2026-04-30", 6430m).Ended("2026-04-30").Notice("2026-05-04")
            .ClaimRecorded("2026-07-02", 6430m, id: "first").ClaimRecorded("2026-07-28", 6430m, id: "second", amends: "first")
            .CreditRecorded(noted, "2027-05-30").ActionOn("2026-10-02", ActionOn.Lien, "second");
        var toSue = job.On("2027-02-21").Get("credit.enforcement-last-day");
        Assert.Equal(expected, toSue.Standing);
        Assert.Equal(expected == Standing.InDoubt ? "2026-09-30" : null, toSue.DaysOf().FirstOrDefault(d => d == "2026-09-30"));
        Assert.Equal(expected, job.On("2027-02-21").Get("credit.last-day").Standing);
    }
}
