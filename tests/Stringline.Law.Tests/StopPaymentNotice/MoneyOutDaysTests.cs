using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// The earliest day on which the money may be gone: the retention is due out 60 days after completion (Pub. Contract Code § 7107(c)), and
/// after the time to give nothing need be held (Civ. Code § 9360(a)). The notice is to be there on an open day before.
/// </summary>
public sealed class MoneyOutDaysTests
{
    private static JobBuilder Job() =>
        new JobBuilder().PublicWork().Role(ClaimantRole.Subcontractor, "direct").Price(60000m).Furnished("2025-08-05", 20000m);

    private static Finding Money(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("stop-payment-notice.money-out");

    // 60 days after Friday 24 October 2025 is Tuesday 23 December; the day before is open.
    [Theory]
    [InlineData("2025-12-22", Standing.Open, false)]
    [InlineData("2025-12-23", Standing.InDoubt, false)]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void The_notice_is_to_be_there_the_day_before(string asOf, Standing expected, bool pastPlan)
    {
        var money = Money(Job().Completed("2025-10-24", CompletionTheory.Acceptance).IndexSearched("2025-11-17"), asOf);
        Assert.Equal(("2025-12-22", "2025-12-23", expected), (money.Plan(), money.DaysOf().Single(), money.Standing));
        // On the day itself the money may be gone, which is another doubt than that the last open day is past.
        Assert.Equal(pastPlan, money.Says("The day to plan on, 2025-12-22"));
    }

    [Theory]
    [InlineData("2025-12-21", true)] // Sunday: the last open day is past, the money is not due out yet
    [InlineData("2025-12-22", false)]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void Between_the_last_open_day_and_the_day_itself_it_is_in_doubt_for_another_reason(string asOf, bool pastPlan)
    {
        var money = Money(Job().Completed("2025-10-23", CompletionTheory.Acceptance).IndexSearched("2025-11-17"), asOf);
        Assert.Equal((Standing.InDoubt, "2025-12-22"), (money.Standing, money.DaysOf().Single()));
        Assert.Equal(pastPlan, money.Says("The day to plan on, 2025-12-19 (Fri), is past"));
    }

    // Accepted between 20 and 24 October: counted from the 20th, 19 December.
    [Fact]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void It_is_counted_from_the_earliest_day_of_the_earliest_completion()
    {
        Assert.Equal(["2025-12-19"],
            Money(Job().Completed("2025-10-20..2025-10-24", CompletionTheory.Acceptance).IndexSearched("2025-11-17")).DaysOf());
        // Labor ceased on Monday 2 March 2026, so the sixtieth day is 1 May; an acceptance of the day after, or of the day before that is
        // disputed.
        Assert.Equal(["2026-06-30"], Money(Idle("2026-05-02", contested: false), "2026-05-18").DaysOf()); // 1 May and 60 days
        Assert.Equal(["2026-06-29"], Money(Idle("2026-04-30", contested: true), "2026-05-18").DaysOf());
        Assert.Equal(["2026-06-29"], Money(Idle("2026-04-29..2026-05-20", contested: true), "2026-05-28").DaysOf()); // 28 June is a Sunday

        static JobBuilder Idle(string accepted, bool contested) =>
            new JobBuilder().PublicWork().Role(ClaimantRole.Subcontractor, "direct").Price(60000m)
            .Furnished("2026-03-02", 20000m).LaborCeased("2026-03-02", unfinished: true)
            .Completed(accepted, CompletionTheory.Acceptance, contested);
    }

    // 30 days after 27 October 2025 is 26 November. A notice that lacks something may be good all the same; one held to have no effect is
    // none.
    [Theory]
    [InlineData("2025-10-27", null, false, new[] { "2025-11-26", "2025-12-22" })]
    [InlineData("2025-10-27..2025-10-30", null, false, new[] { "2025-11-26", "2025-12-22" })]
    [InlineData("2025-10-27", "its verification", false, new[] { "2025-11-26", "2025-12-22" })]
    [InlineData("2025-10-27", null, true, new[] { "2025-12-22" })]
    [Proves("Civ. Code § 9360(a)")]
    public void A_recorded_notice_that_may_be_good_ends_the_time_to_give(string recorded, string? lacks, bool ineffective,
        string[] expected) =>
        Assert.Equal(expected, Money(Job().Completed("2025-10-22", CompletionTheory.Acceptance)
            .OwnerRecorded(recorded, states: "2025-10-22", lacks: lacks, heldIneffective: ineffective), "2025-11-10").DaysOf());

    // The time to give is in doubt from 22 November on, for a notice may have been recorded unseen; the money is watched all the same.
    [Theory]
    [InlineData("2025-11-21", Standing.Open)]
    [InlineData("2025-11-24", Standing.InDoubt)]
    [InlineData("2026-01-20", Standing.InDoubt)]
    [InlineData("2026-01-21", Standing.Lost)]
    [Proves("Civ. Code § 9360(a)")]
    public void The_money_is_watched_while_a_notice_may_still_be_given(string asOf, Standing lastDay)
    {
        var assessment = Job().Completed("2025-10-22", CompletionTheory.Acceptance).On(asOf);
        Assert.Equal(lastDay, assessment.Get("stop-payment-notice.last-day").Standing);
        Assert.Equal(lastDay != Standing.Lost, assessment.Find("stop-payment-notice.money-out") is not null);
        Assert.Null(new JobBuilder().PublicWork().Completed("2025-10-22", CompletionTheory.Acceptance).On(asOf)
            .Find("stop-payment-notice.money-out"));
    }

    // Paid in full nothing can be claimed and none is to be given (Civ. Code § 9352(c)), yet the time to give runs, and the index is
    // watched for it.
    [Fact]
    [Proves("Civ. Code § 9356(a)")]
    public void What_follows_the_time_to_give_follows_its_standing_and_not_that_of_the_amount()
    {
        var paid = Job().Paid("2025-11-03", 20000m).Completed("2025-10-22", CompletionTheory.Acceptance).On("2025-11-10");
        Assert.Equal((Standing.Done, Standing.NotYet),
            (paid.Get("stop-payment-notice.last-day").Standing, paid.Get("stop-payment-notice.amount").Standing));
        Assert.NotNull(paid.Find("stop-payment-notice.money-out"));
        Assert.Contains("Civ. Code § 9356(a)", paid.Get("index-watch.next-day").Sections);
    }
}
