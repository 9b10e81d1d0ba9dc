using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Tests.StopPaymentNotice;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.PaymentBond;

/// <summary>The action on the payment bond: its first day, what it is on, and against whom.</summary>
public sealed class BondActionTests
{
    // Six months after 20 January 2026: 20 July; 182 days end on 21 July.
    private static JobBuilder Ceased() =>
        Public().Furnished("2025-08-05", 6000m).Furnished("2025-10-01", 430m).Ended("2025-10-01").NoticedPublic().Accepted();

    private static Finding Last(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("payment-bond.action-last-day");

    [Theory]
    [InlineData("2025-10-01", Standing.NotYet)]
    [InlineData("2025-10-02", Standing.Open)]
    [Proves("Civ. Code § 9558")]
    public void On_public_work_it_may_be_brought_after_the_claimant_ceased_to_provide_work(string asOf, Standing expected)
    {
        var first = Public().Furnished("2025-08-05", 6000m).Furnished("2025-10-01", 430m).Ended("2025-10-01").NoticedPublic().On(asOf)
            .Get("payment-bond.action-first-day");
        Assert.Equal(["2025-10-02"], first.DaysOf());
        Assert.Equal(expected, first.Standing);
        Assert.Null(first.ActBy);
        var going = Public().Furnished("2025-08-05", 6000m).NoticedPublic().On("2025-12-01").Get("payment-bond.action-first-day");
        Assert.Equal(Standing.NotYet, going.Standing);
        Assert.True(going.Asks("(furnishing-ended)"));
    }

    [Theory]
    [InlineData("2025-09-01", Standing.InDoubt)]
    [InlineData("2025-10-01", Standing.InDoubt)]
    [InlineData("2025-10-02", Standing.Kept)]
    [Proves("Civ. Code § 9558")]
    public void One_brought_before_that_may_be_too_early(string filed, Standing expected)
    {
        var last = Last(Ceased().ActionFiled(filed));
        Assert.Equal(expected, last.Standing);
        Assert.Equal("2026-07-20", last.Plan());
        Assert.Equal(expected == Standing.InDoubt, last.Says("brought too early"));
    }

    [Theory]
    [InlineData(new[] { ActionOn.StopPaymentNotice }, "city,direct", Standing.Open)]
    [InlineData(new[] { ActionOn.PaymentBond, ActionOn.StopPaymentNotice }, "city,direct,surety", Standing.Kept)]
    [InlineData(new[] { ActionOn.PaymentBond }, "city,direct", Standing.InDoubt)]
    [InlineData(new ActionOn[0], "city,direct", Standing.InDoubt)]
    [InlineData(new ActionOn[0], "", Standing.Kept)]
    [Proves("Civ. Code § 9558")]
    [Proves("Civ. Code § 9564")]
    public void It_must_be_on_the_bond_and_against_the_surety(ActionOn[] on, string against, Standing expected)
    {
        var last = Last(Ceased().ActionFiled("2025-11-10")
            .Action(a => a with { Enforces = on, Against = against.Length == 0 ? [] : against.Split(',') }));
        Assert.Equal(expected, last.Standing);
        Assert.Equal(on.Length == 0, last.Asks("Is the action on the payment bond too? (action-filed.enforces)"));
        Assert.Equal(against.Length == 0, last.Asks("(action-filed.against)"));
        Assert.Contains("Civ. Code § 9564", last.Sections);
    }

    [Theory]
    [InlineData(ActionEnd.Won, null, Standing.Done)]
    [InlineData(ActionEnd.Settled, null, Standing.Done)]
    [InlineData(ActionEnd.LostAtTrial, null, Standing.Lost)]
    [InlineData(ActionEnd.Dismissed, false, Standing.Lost)]
    [InlineData(ActionEnd.Dismissed, true, Standing.InDoubt)]
    [InlineData(ActionEnd.Dismissed, null, Standing.InDoubt)]
    [InlineData(ActionEnd.ReleaseOrdered, null, Standing.Kept)]
    [Proves("Civ. Code § 9558")]
    public void How_it_ended_decides(ActionEnd how, bool? withoutPrejudice, Standing expected) =>
        Assert.Equal(expected,
            Last(Ceased().ActionFiled("2025-11-10")
                .Add(i => new ActionEnded { Index =
                    i, On = JobBuilder.When("2026-03-02"), How = how, WithoutPrejudice = withoutPrejudice }), "2026-04-01").Standing);

    // A bond recorded on the day of completion may have been recorded before it: a day has hours.
    [Theory]
    [InlineData("2025-10-21", "2026-04-22")]
    [InlineData("2025-10-22", "2026-04-22", "2029-08-05")]
    [InlineData("2025-10-23", "2029-08-05")]
    [Proves("Civ. Code § 8610")]
    public void A_private_bond_recorded_on_the_day_of_completion_leaves_both_readings(string recorded, params string[] days)
    {
        var last = Last(UsualPrivate().PaymentBond(recorded));
        Assert.Equal(days, last.DaysOf());
        Assert.Equal(days[0] == "2026-04-22" ? "2026-04-22" : "2029-08-03", last.Plan());
    }

    // "at any time after the claimant ceases to provide work": an accepted work is done, and so is a contract that has ended.
    [Fact]
    [Proves("Civ. Code § 9558")]
    public void Work_that_was_accepted_and_a_contract_that_ended_let_the_action_on_a_public_bond_begin()
    {
        Assert.Equal(Standing.NotYet, First(AtWork()).Standing);
        Assert.Equal(["2025-08-06"], First(AtWork().Completed("2025-10-22", CompletionTheory.Acceptance)).DaysOf());
        Assert.Equal(Standing.NotYet, First(AtWork().Completed("2025-10-22", CompletionTheory.Acceptance, contested: true)).Standing);
        Assert.Equal(["2025-09-02"],
            First(AtWork().Add(i => new ContractEnded { Index = i, On = JobBuilder.When("2025-09-01"), How = ContractEnd.Terminated }))
                .DaysOf());

        static JobBuilder AtWork() => new JobBuilder().PublicWork().PaymentBond(null).Furnished("2025-08-05", 6430m)
            .Notice("2025-08-14", Manner.CertifiedMail, "city", "direct");
        static Finding First(JobBuilder facts) => facts.On("2025-12-01").Get("payment-bond.action-first-day");
    }
}
