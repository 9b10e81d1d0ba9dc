using CsCheck;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Plan;

/// <summary>What is left to do at each turn of a job. The days are those of the findings, which have tests of their own.</summary>
public sealed class NextStepsTests
{
    private static JobBuilder Job() =>
        new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 9000m).Ended("2026-03-30").Completed("2026-04-07");

    private static string[] Acts(Assessment assessment) => [.. assessment.Next.Where(s => !s.Watch).Select(s => s.Finding)];

    [Fact]
    public void Before_the_claim_is_recorded_claim_and_stop_payment_notice_stand_with_what_is_owed()
    {
        var answer = Job().Paid("2026-04-01", 2000m).On("2026-05-04");
        Assert.Equal(["claim-of-lien.last-day", "stop-payment-notice.last-day"], Acts(answer));
        Assert.All(answer.Next.Where(s => !s.Watch), step =>
            Assert.Equal((7000m, JobBuilder.Day("2026-07-06")), (step.AtStake, step.ActBy)));
        Assert.Equal("Record the claim of lien", answer.Next.First(s => !s.Watch).Do);
    }

    [Fact]
    public void The_index_is_watched_until_claim_and_stop_payment_notice_are_out()
    {
        Assert.Single(Job().On("2026-05-04").Next, s => s is { Watch: true, Finding: "index-watch.next-day", AtStake: null });
        Assert.DoesNotContain(Job().ClaimRecorded("2026-05-11").StopPaymentGiven("2026-05-11", to: "owner").On("2026-05-12").Next,
            s => s.Watch);
    }

    [Fact]
    public void Once_it_is_recorded_the_action_is_next_and_after_a_credit_the_action_before_its_end()
    {
        Assert.Contains("enforcement.last-day", Acts(Job().ClaimRecorded("2026-05-11").On("2026-05-12")));
        var credit = Acts(Job().ClaimRecorded("2026-05-11").CreditRecorded("2026-06-01", until: "2026-09-01").On("2026-06-02"));
        Assert.Contains("credit.enforcement-last-day", credit);
        Assert.DoesNotContain("enforcement.last-day", credit);
        Assert.DoesNotContain("claim-of-lien.last-day", credit);
    }

    [Fact]
    public void Where_all_is_paid_there_is_nothing_to_claim_or_sue_for() =>
        Assert.Empty(Acts(Job().Paid("2026-04-01", 9000m).On("2026-05-04")));

    [Fact]
    public void Where_nothing_is_priced_the_steps_stand_without_an_amount() =>
        Assert.All(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", null).On("2026-05-04").Next, step =>
            Assert.Null(step.AtStake));

    // Civ. Code § 8204(a): a late notice still reaches back 20 days, so it is worth giving every day that it is not.
    [Theory]
    [InlineData("2026-03-10")]
    [InlineData("2026-04-30")]
    public void A_notice_not_given_is_the_first_step_whether_or_not_it_is_late(string asOf) =>
        Assert.Equal("preliminary-notice.last-day",
            Acts(new JobBuilder().Furnished("2026-03-02", 9000m).Furnished("2026-04-20", 500m).On(asOf))[0]);

    [Fact]
    public void A_notice_given_late_is_no_step_any_more() =>
        Assert.DoesNotContain("preliminary-notice.last-day",
            Acts(new JobBuilder().Furnished("2026-03-02", 9000m).Notice("2026-04-20").On("2026-05-04")));

    [Fact]
    public void After_the_last_day_of_every_reading_the_claim_is_no_step_any_more() =>
        Assert.DoesNotContain("claim-of-lien.last-day", Acts(Job().On("2026-08-03")));

    [Fact]
    public void Every_step_has_a_finding_and_they_stand_by_their_day() =>
        Gen.Select(LienJobGen.HalfAYear.Journal, LienJobGen.HalfAYear.AsOf).Sample(
            (job, asOf) =>
            {
                var answer = Assessment.Of(job, asOf, OpenDays.Statutory);
                Assert.All(answer.Next, step => Assert.Equal(answer.Get(step.Finding).ActBy, step.ActBy));
                Assert.Equal(answer.Next.Select(s => s.ActBy).Order(), answer.Next.Select(s => s.ActBy));
            },
            iter: 500);
}
