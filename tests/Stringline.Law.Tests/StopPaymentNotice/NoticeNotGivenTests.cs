using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// The action while no stop payment notice was given, and a notice that counts for one holder and not for another (Civ. Code §§ 8508, 8520,
/// 8550, 9502). The time to give ends on Tuesday 20 January 2026, that to sue on Monday 20 April.
/// </summary>
public sealed class NoticeNotGivenTests
{
    private static Finding Last(JobBuilder job, string asOf) => job.On(asOf).Get("stop-payment-notice.action-last-day");

    // There is no notice to sue on: not yet, and once the time to give one is over, never. Given, the action has its own ninety days.
    [Theory]
    [InlineData(false, "2026-01-20", Standing.NotYet, false)]
    [InlineData(false, "2026-02-02", Standing.Lost, true)]
    [InlineData(false, "2026-04-21", Standing.Lost, true)]
    [InlineData(true, "2026-02-02", Standing.Open, false)]
    [InlineData(true, "2026-04-21", Standing.Lost, false)]
    [Proves("Civ. Code § 8550(b)")]
    [Proves("Civ. Code § 9502(b)")]
    public void Without_a_notice_there_is_none_to_sue_on(bool given, string asOf, Standing expected, bool told)
    {
        foreach (var (job, to) in ((JobBuilder, string)[])[(UsualPrivate(), "owner"), (UsualPublic(), "city")])
        {
            var last = Last(given ? job.StopPaymentGiven("2025-11-03", 6430m, false, to) : job, asOf);
            Assert.Equal(expected, last.Standing);
            Assert.Equal(told, last.Says("there is none to sue on"));
            Assert.True(last.Says("the time to give a stop payment notice ends 2026-01-20"));
        }
    }

    // A completion that is disputed may fail: neither the time to give nor the time to sue is surely over.
    [Fact]
    [Proves("Civ. Code § 8550(b)")]
    public void Where_completion_is_disputed_it_is_not_surely_too_late_to_give_one_and_sue() =>
        Assert.Equal(Standing.InDoubt,
            Last(Private().Furnished("2025-08-05", 6430m).Notice("2025-08-14").Completed("2025-10-22", contested: true),
                "2026-05-04").Standing);

    // An action on something is asked about only where there is a notice on which it might be.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    [Proves("Civ. Code § 8550(b)")]
    public void What_an_action_is_on_is_asked_only_where_a_notice_was_given(bool given)
    {
        var job = UsualPrivate();
        if (given)
            job.StopPaymentGiven("2025-11-03", 6430m);
        Assert.Equal(given, Last(job.ActionFiled("2026-01-05"), "2026-01-06").Asks("(action-filed.enforces)"));
    }

    // A lender that came to be known after the first day of work and was never told leaves its own row in doubt, and the owner's open:
    // there is one to give.
    [Fact]
    [Proves("Civ. Code § 8520(a)")]
    public void The_holder_that_may_surely_be_served_decides_what_is_left_to_do()
    {
        var assessment = UsualPrivate().Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", knownSince: "2025-08-20")
            .On("2025-12-01");
        Assert.Equal((Standing.Open, Standing.InDoubt),
            (assessment.Get("stop-payment-notice.owner").Standing, assessment.Get("stop-payment-notice.lender").Standing));
        Assert.Equal(Standing.Open, assessment.Get("stop-payment-notice.last-day").Standing);
    }

    // A design professional has no such notice before the work commences; everybody else has, whenever it did.
    [Theory]
    [InlineData(ClaimantRole.DesignProfessional, "2025-11-03", "2025-11-04", Standing.InDoubt)]
    [InlineData(ClaimantRole.DesignProfessional, "2025-11-03", "2025-11-03", Standing.Kept)]
    [InlineData(ClaimantRole.DesignProfessional, "2025-11-03..2025-11-06", "2025-11-04", Standing.InDoubt)]
    [InlineData(ClaimantRole.Supplier, "2025-11-03", "2025-11-04", Standing.Kept)]
    [Proves("Civ. Code § 8520(a)")]
    public void Given_before_the_work_commenced_a_designers_is_in_doubt(ClaimantRole role, string given, string commenced,
        Standing expected) =>
        Assert.Equal(expected, UsualPrivate().Role(role).Work(w => w with { Commenced = JobBuilder.Day(commenced) })
            .StopPaymentGiven(given, 6430m).On("2025-12-01").Get("stop-payment-notice.owner").Standing);

    // Left and mailed at the office of the owner's architect, a company: that the owner is a natural person is no matter of it.
    [Theory]
    [InlineData("architect", Standing.Kept)]
    [InlineData("owner", Standing.InDoubt)]
    [Proves("Civ. Code § 8506(a)")]
    public void Whether_one_left_and_mailed_counts_hangs_on_who_was_told(string to, Standing expected) =>
        Assert.Equal(expected, UsualPrivate().PartyWith("owner", p => p with { NaturalPerson = true })
            .Party("architect", PartyCapacity.Architect, "Plumb Line Studio").PartyWith("architect", p => p with { NaturalPerson = false })
            .StopPaymentGiven("2025-11-03", 6430m, false, to).Paper(p => p with { Manner = Manner.Substituted }).On("2025-12-01")
            .Get("stop-payment-notice.owner").Standing);
}
