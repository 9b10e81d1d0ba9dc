using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PaymentBond;
using Stringline.Law.Reasoning;
using Stringline.Law.Tests.StopPaymentNotice;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.PaymentBond;

/// <summary>
/// What is told of the sum that may be claimed on the bond: the preliminary notice of 10 October 2025 reaches the 1,000.00 of 25 September
/// and not the 6,430.00 of 5 August; the notice to surety and principal has no look-back (American Buildings v. Bay Commercial Construction
/// (2002) 99 Cal.App.4th 1193).
/// </summary>
public sealed class BondSumsTests
{
    private static JobBuilder Late() =>
        Public().Furnished("2025-08-05", 6430m).Furnished("2025-09-25", 1000m).Ended("2025-09-25").NoticedPublic("2025-10-10").Accepted();

    private static Finding Amount(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("payment-bond.amount");

    // By the notice to surety and principal nothing is out of reach; by the preliminary notice alone what was furnished more than 20 days
    // before it is.
    [Theory]
    [InlineData("2025-12-01", false)]
    [InlineData("2026-01-06", true)]
    [Proves("Civ. Code § 9560(a)")]
    [Proves("Civ. Code § 9304")]
    public void What_the_preliminary_notice_leaves_out_is_told_where_it_is_the_only_road(string asOf, bool told)
    {
        var amount = Amount(Late(), asOf);
        Assert.Equal(told,
            amount.Why.Any(r => r.Text.Contains("more than 20 days before the preliminary notice", StringComparison.Ordinal)));
        Assert.Equal(told ? Standing.Narrowed : Standing.Open, amount.Standing);
    }

    // Lost for want of a notice, or for want of an action in time: each by its own reasons.
    [Fact]
    [Proves("Civ. Code § 9558")]
    public void Why_nothing_may_be_claimed_any_more_is_told()
    {
        var unnoticed = Amount(Public().Furnished("2025-08-05", 6430m).Ended("2025-08-05").Accepted(), "2026-03-02");
        Assert.Equal((Standing.Lost, 0m), (unnoticed.Standing, unnoticed.Amount));
        Assert.True(unnoticed.Says("no notice of completion that surely counts is recorded"));
        Assert.False(unnoticed.Says("the time to give a stop payment notice ends"));
        var unsued = Amount(UsualPublic(), "2026-08-03");
        Assert.Equal((Standing.Lost, 0m), (unsued.Standing, unsued.Amount));
        Assert.True(unsued.Says("the time to give a stop payment notice ends 2026-01-20"));
    }

    [Fact]
    [Proves("Civ. Code § 9550(a)")]
    public void What_is_not_known_of_the_bond_is_asked_beside_the_sum()
    {
        var job = new JobBuilder().PublicWork().IndexSearched("2025-11-10").Furnished("2025-08-05", 6430m).Accepted();
        Assert.True(Amount(job).Asks("(work.paymentBond)"));
        Assert.True(job.On("2025-12-01").Get("payment-bond.action-last-day").Asks("(work.paymentBond)"));
        Assert.True(Amount(job).Says("The file names no payment bond"));
        Assert.True(job.On("2025-12-01").Get("payment-bond.action-last-day").Says("The file names no payment bond"));
        Assert.True(job.On("2025-12-01").Get("payment-bond.action-first-day").Says("The file names no payment bond"));
        Assert.Empty(Amount(UsualPublic()).Questions);
    }

    // The figure is that of the bond where there is one to claim on, and else of what is owed.
    [Theory]
    [InlineData(ClaimantRole.Supplier, Remedy.PaymentBond)]
    [InlineData(ClaimantRole.DirectContractor, Remedy.Debt)]
    [Proves("Civ. Code § 9560(b)")]
    public void The_claim_is_the_whole_by_the_remedy_there_is(ClaimantRole role, Remedy expected)
    {
        var claim = BondClaim.Of(Late().Role(role, role == ClaimantRole.Supplier ? "sub" : "city").FactsOn("2025-12-01"));
        Assert.Equal((expected, 7430m), (claim.Remedy, claim.Demand));
    }

    // A private bond: the day of recording is asked where it is not known, and told where the six months hang on it.
    [Fact]
    [Proves("Civ. Code § 8610")]
    public void Of_a_private_bond_the_day_of_recording_is_asked()
    {
        Finding Action(string? recorded, string asOf = "2025-12-01") =>
            UsualPrivate().PaymentBond(recorded).On(asOf).Get("payment-bond.action-last-day");
        Assert.True(Action(null).Says("The file does not show that the bond was recorded before completion"));
        Assert.False(Action("2025-07-01").Says("The file does not show that the bond was recorded"));
        Assert.True(Action("2025-07-01").Says("the action is brought within six months after 2025-10-22"));
        Assert.False(Action("2025-07-01").Says("the general four years apply"));
        Assert.True(Action("2025-10-23").Says("from the last on 2029-08-05"));
        Assert.Equal((Standing.Lost, Standing.InDoubt), (Action("2025-07-01", "2026-05-01").Standing, Action(null, "2026-05-01").Standing));
        var lost = Private().PaymentBond("2025-07-01").Furnished("2025-08-05", 6430m).Ended("2025-08-05").Completed("2025-10-22")
            .IndexSearched("2025-11-10").On("2026-02-02").Get("payment-bond.action-last-day");
        Assert.True(lost.Says("neither was given in time"));
        Assert.False(Action("2025-07-01").Says("neither was given in time"));
    }

    private static Finding Action(JobBuilder job, string asOf = "2025-12-01") =>
        job.Notice("2025-08-14").On(asOf).Get("payment-bond.action-last-day");

    private static JobBuilder Bonded(string recorded, string furnished = "2025-08-05") =>
        Private().PaymentBond(recorded).Furnished(furnished, 6430m);

    // Disputed: the work may have been completed only after the bond of 10 November was recorded, or that day.
    // Six months from the 10th are Sunday 10 May, 182 days Monday 11 May.
    [Theory]
    [InlineData(true, true)]
    [InlineData(false, false)]
    [Proves("Civ. Code § 8610")]
    public void Where_completion_is_disputed_the_work_may_have_been_completed_after_the_bond(bool contested, bool told)
    {
        var action = Action(Bonded("2025-11-10").Completed("2025-10-22", contested: contested));
        Assert.Equal(told, action.Says("It may be that the work was completed only when the bond had been recorded"));
        Assert.Equal(told, action.DaysOf().Contains("2026-05-10"));
        Assert.Equal(told, action.DaysOf().Contains("2026-05-11"));
    }

    // The occupation of 22 October is disputed; the work was certainly complete on a day beside it. Recorded after that day, or before
    // either, the bond was recorded before completion on no view, or on every one.
    [Theory]
    [InlineData("2025-11-10", "2025-11-05", false)]
    [InlineData("2025-11-10", "2025-11-10", true)]
    [InlineData("2025-11-10", "2025-11-05..2025-11-15", true)]
    [InlineData("2025-11-10", "2025-11-15", true)]
    [InlineData("2025-10-21", "2025-11-15", false)]
    [InlineData("2025-11-10", null, true)]
    [Proves("Civ. Code § 8610")]
    public void After_a_day_by_which_the_work_was_certainly_complete_it_was_not_completed(string recorded, string? certain, bool told)
    {
        var job = Bonded(recorded).Completed("2025-10-22", contested: true);
        Assert.Equal(told, Action(certain is null ? job : job.Completed(certain))
            .Says("It may be that the work was completed only when the bond had been recorded"));
    }

    // Certain, its day in doubt: the days of the doubt say it all.
    [Fact]
    [Proves("Civ. Code § 8610")]
    public void A_completion_that_is_certain_is_not_doubted_because_its_day_is() =>
        Assert.False(Action(Bonded("2025-11-10").Completed("2025-10-22..2025-11-20"))
            .Says("It may be that the work was completed only when the bond had been recorded"));

    // Whether the public takes the work over is not told: it may wait for the city's acceptance, and the bond of 10 November have been
    // recorded before that.
    [Theory]
    [InlineData(null, true)]
    [InlineData(false, false)]
    [Proves("Civ. Code § 8610")]
    [Proves("Civ. Code § 8180(b)")]
    public void Where_the_work_may_wait_for_acceptance_it_may_be_completed_after_the_bond(bool? takesOver, bool told) =>
        Assert.Equal(told,
            Action(Bonded("2025-11-10").Work(w => w with { SubjectToAcceptanceBy = "City of Davis", PublicTakesOver = takesOver })
                .Completed("2025-10-22"))
            .Says("It may be that the work was completed only when the bond had been recorded"));

    // Last furnished on 1 December, or up to the 5th: not complete before. Six months are 1 June.
    [Theory]
    [InlineData("2025-12-01")]
    [InlineData("2025-12-01..2025-12-05")]
    [Proves("Civ. Code § 8610")]
    public void It_was_not_completed_before_the_claimants_own_last_work(string furnished)
    {
        var action = Action(Bonded("2025-11-10", furnished).Completed("2025-10-22", contested: true), "2025-12-10");
        Assert.Contains("2026-06-01 six months, if the work was completed only after the bond was recorded", action.Lines());
    }

    // A completion that is disputed may fail, and then nothing has run.
    [Theory]
    [InlineData(true, Standing.InDoubt)]
    [InlineData(false, Standing.Lost)]
    [Proves("Civ. Code § 8610")]
    public void A_disputed_completion_takes_the_action_for_no_sure_day(bool contested, Standing expected)
    {
        Assert.Equal(expected, Action(Bonded("2025-07-01").Completed("2025-10-22", contested: contested), "2026-06-01").Standing);
        Assert.Equal([2], Action(Bonded("2025-07-01").Completed("2025-10-22").ActionOn("2025-12-01", ActionOn.PaymentBond), "2026-06-01")
            .EntriesOf("it counts here if it is on the bond too"));
    }
}
