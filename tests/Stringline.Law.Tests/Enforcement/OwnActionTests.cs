using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>
/// A trial, a service or an end belongs to the action that it is of: what is of another action keeps and ends nothing here.
/// </summary>
public sealed class OwnActionTests
{
    private const string Trial = "stop-payment-notice.prosecution-last-day";

    // An action on the notice of 3 February 2026 and one on the debt of 2 March: two years end on 3 February 2028.
    private static JobBuilder TwoActions() => UsualPrivate("owner", "direct").StopPaymentGiven("2026-01-05", 6430m)
        .ActionOn("2026-02-03", ActionOn.StopPaymentNotice, null, "notice", "owner")
        .ActionOn("2026-03-02", ActionOn.Debt, null, "debt", "direct");

    private static JobBuilder Tried(JobBuilder job, string on, string? of) =>
        job.Add(i => new TrialBegun { Index = i, On = JobBuilder.When(on), Of = of });

    [Theory]
    [InlineData("2027-06-01", "notice", Standing.Kept)]
    [InlineData("2027-06-01", "debt", Standing.InDoubt)] // the other action's: none of this one is entered, and the court may dismiss
    [InlineData("2027-06-01", null, Standing.InDoubt)]
    [InlineData("2026-02-20", null, Standing.Kept)] // before the other was filed
    [InlineData("2026-02-02", "notice", Standing.InDoubt)] // before this one was filed
    [Proves("Civ. Code § 8554")]
    public void A_trial_keeps_the_action_that_it_is_of(string on, string? of, Standing expected)
    {
        var trial = Tried(TwoActions(), on, of).On("2028-03-01").Get(Trial);
        Assert.Equal(expected, trial.Standing);
        Assert.Equal(of is null && expected == Standing.InDoubt, trial.Asks("(trial-begun.of)"));
        // While the two years run, one that may be of it leaves no doubt that it can still be brought to trial.
        if (of == "debt")
            Assert.Equal(Standing.Open, Tried(TwoActions(), on, of).On("2027-07-01").Get(Trial).Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8462")]
    public void So_it_is_of_the_action_on_the_lien()
    {
        JobBuilder Job() => new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1000m).Ended("2026-03-02").Completed("2026-05-04")
            .ClaimRecorded("2026-06-01", 1000m)
            .ActionOn("2026-06-15", ActionOn.Lien, null, "lien", "owner").ActionOn("2026-07-01", ActionOn.Debt, null, "debt", "direct");
        Assert.Equal(Standing.Kept, Tried(Job(), "2027-06-01", "lien").On("2028-07-03").Get("prosecution.last-day").Standing);
        Assert.Equal(Standing.InDoubt, Tried(Job(), "2027-06-01", "debt").On("2028-07-03").Get("prosecution.last-day").Standing);
        Assert.True(Tried(Job(), "2027-06-01", null).On("2028-07-03").Get("prosecution.last-day").Asks("(trial-begun.of)"));
        JobBuilder Served(string? of) => Job().Add(i => new ActionServed { Index = i, On = JobBuilder.When("2026-07-06"), Of = of });
        Assert.Equal(Standing.Kept, Served("lien").On("2026-08-03").Get("prosecution.service-last-day").Standing);
        Assert.Equal(Standing.Open, Served("debt").On("2026-08-03").Get("prosecution.service-last-day").Standing);
        Assert.Equal(Standing.InDoubt, Served(null).On("2026-08-03").Get("prosecution.service-last-day").Standing);
        Assert.True(Served(null).On("2026-08-03").Get("prosecution.service-last-day").Asks("(action-served.of)"));
    }

    // Civ. Code § 8556: a dismissal ends the notice that the dismissed action was on; of which action it was the file must say.
    [Theory]
    [InlineData("notice", Standing.Lost)]
    [InlineData("debt", Standing.Kept)]
    [InlineData(null, Standing.InDoubt)]
    [Proves("Civ. Code § 8556")]
    public void An_end_that_names_none_of_several_actions_does_not_vanish(string? of, Standing expected)
    {
        var action = TwoActions().ActionEnded("2026-06-01", ActionEnd.Dismissed, withoutPrejudice: false, of: of).On("2026-07-01")
            .Get("stop-payment-notice.action-last-day");
        Assert.Equal(expected, action.Standing);
        Assert.Equal(of is null, action.Asks("(action-ended.of)"));
        var onBond = UsualPrivate("owner", "direct").PaymentBond("2025-08-01")
            .ActionOn("2026-02-03", ActionOn.PaymentBond, null, "notice", "surety")
            .ActionOn("2026-03-02", ActionOn.Debt, null, "debt", "direct")
            .ActionEnded("2026-06-01", ActionEnd.Dismissed, withoutPrejudice: false, of: of).On("2026-07-01")
            .Get("payment-bond.action-last-day");
        Assert.Equal(expected, onBond.Standing);
        Assert.Equal(of is null, onBond.Asks("(action-ended.of)"));
    }
}
