using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>
/// The notice of pendency and the trial, counted from an action of Monday 15 December 2025 (Civ. Code §§ 8461, 8462): twenty days after it
/// are Sunday 4 January 2026. Entries 0 to 4 are the furnishing, its end, the notice, completion and the claim, entry 5 the action.
/// </summary>
public sealed class AfterFilingDaysTests
{
    private static JobBuilder Job(string filed = "2025-12-15") =>
        new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..")
        .Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22")
        .ClaimRecorded("2025-11-20", 6_430m).ActionFiled(filed);

    private static Finding Pendency(JobBuilder job, string asOf = "2025-12-22") => job.On(asOf).Get("lis-pendens.last-day");

    // Recorded "after the action is commenced": one of before it gives notice of nothing; where a day is in doubt, whether it did is.
    [Theory]
    [InlineData("2025-12-15", "2025-12-14", Standing.Open)]
    [InlineData("2025-12-15", "2025-12-12..2025-12-14", Standing.Open)]
    [InlineData("2025-12-15", "2025-12-14..2025-12-15", Standing.InDoubt)]
    [InlineData("2025-12-15", "2025-12-14..2025-12-16", Standing.InDoubt)]
    [InlineData("2025-12-15", "2025-12-15", Standing.Kept)]
    [InlineData("2025-12-15", "2025-12-15..2025-12-17", Standing.Kept)]
    [InlineData("2025-12-12..2025-12-15", "2025-12-11", Standing.Open)]
    [InlineData("2025-12-12..2025-12-15", "2025-12-12", Standing.InDoubt)]
    [InlineData("2025-12-12..2025-12-15", "2025-12-14", Standing.InDoubt)]
    [InlineData("2025-12-12..2025-12-15", "2025-12-15", Standing.Kept)]
    [Proves("Civ. Code § 8461")]
    public void A_notice_of_pendency_is_recorded_after_the_action(string filed, string recorded, Standing expected)
    {
        var notice = Pendency(Job(filed).LisPendens(recorded));
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(expected == Standing.Open ? [6] : [], notice.EntriesOf("it gives notice of no action on this claim"));
        Assert.Equal(expected == Standing.Open ? [] : [6], notice.EntriesOf("Notice of pendency of action recorded"));
        Assert.NotNull(notice.Band!.Latest);
    }

    // Twenty days after the 11th are the 31st: an action on a day in doubt is counted from its earliest.
    [Fact]
    [Proves("Civ. Code § 8461")]
    [Proves("Civ. Code § 8462")]
    public void An_action_on_a_day_in_doubt_is_counted_from_its_earliest_day()
    {
        var on = Job("2025-12-11..2025-12-15").On("2025-12-22");
        Assert.Equal(["2025-12-31"], on.Get("lis-pendens.last-day").DaysOf());
        Assert.Equal(["2027-12-11"], on.Get("prosecution.service-last-day").DaysOf());
        Assert.Equal(["2027-12-11"], on.Get("prosecution.last-day").DaysOf());
        Assert.Equal(["2030-12-11"], on.Get("prosecution.five-years").DaysOf());
        foreach (var id in (string[])["lis-pendens.last-day", "prosecution.service-last-day", "prosecution.last-day",
            "prosecution.five-years"])
            Assert.NotNull(on.Get(id).Band!.Latest);
    }

    // A good notice is not undone by one after it that may be void; a doubtful one is cured by a good one in time.
    [Theory]
    [InlineData(true, null, Standing.Kept)]
    [InlineData(null, true, Standing.Kept)]
    [InlineData(null, null, Standing.InDoubt)]
    [InlineData(null, false, Standing.InDoubt)]
    [InlineData(false, null, Standing.InDoubt)]
    [InlineData(false, false, Standing.Open)]
    [Proves("Code Civ. Proc. § 405.23")]
    public void Of_two_notices_of_pendency_the_better_counts(bool? first, bool? second, Standing expected) =>
        Assert.Equal(expected, Pendency(Job().LisPendens("2025-12-16", first).LisPendens("2025-12-18", second)).Standing);

    // What was void for one reason is not asked about for the other; each question corrects its own entry.
    [Theory]
    [InlineData(null, null, true, true)]
    [InlineData(null, true, true, false)]
    [InlineData(true, null, false, true)]
    [InlineData(false, null, false, false)]
    [InlineData(null, false, false, false)]
    [Proves("Code Civ. Proc. § 405.22")]
    public void Mailing_and_proof_are_asked_where_they_decide(bool? mailed, bool? proof, bool asksMailed, bool asksProof)
    {
        var notice = Pendency(Job().LisPendens("2025-12-18", mailed, proof));
        Assert.Equal(asksMailed ? [6] : [], notice.Corrected("(lis-pendens-recorded.mailedFirst)"));
        Assert.Equal(asksProof ? [6] : [], notice.Corrected("(lis-pendens-recorded.proofRecorded)"));
        Assert.Equal(mailed == false ? [6] : [], notice.EntriesOf("was not mailed before: void"));
        Assert.Equal(proof == false ? [6] : [], notice.EntriesOf("has no proof of its mailing recorded with it: void"));
    }

    // Served, or tried: one who came to trial was served. What happened before the action was of another.
    [Theory]
    [InlineData("2025-12-14", null, Standing.Open, Standing.Open)]
    [InlineData("2025-12-12..2025-12-14", null, Standing.Open, Standing.Open)]
    [InlineData("2025-12-15", null, Standing.Kept, Standing.Open)]
    [InlineData("2025-12-14..2025-12-16", null, Standing.Kept, Standing.Open)]
    [InlineData(null, "2026-10-05", Standing.Kept, Standing.Kept)]
    [InlineData(null, "2025-12-14", Standing.Open, Standing.Open)]
    [Proves("Code Civ. Proc. § 583.420")]
    [Proves("Civ. Code § 8462")]
    public void Service_and_trial_count_from_the_action_on(string? served, string? tried, Standing service, Standing trial)
    {
        var job = Job();
        if (served is not null)
            job.Add(i => new ActionServed { Index = i, On = When(served) });
        if (tried is not null)
            job.Add(i => new TrialBegun { Index = i, On = When(tried) });
        var on = job.On("2026-11-02");
        Assert.Equal((service, trial), (on.Get("prosecution.service-last-day").Standing, on.Get("prosecution.last-day").Standing));
        Assert.Equal(service == Standing.Open, on.Get("prosecution.service-last-day").Asks("(action-served)"));
        Assert.Equal([5], on.Get("prosecution.last-day").HangsOn("Civ. Code § 8462"));
    }

    [Theory]
    [InlineData("2025-12-11..2025-12-15", "2025-12-13", Standing.Kept)]
    [InlineData("2025-12-11..2025-12-15", "2025-12-10", Standing.Open)]
    [Proves("Code Civ. Proc. § 583.420")]
    public void Of_an_action_on_a_day_in_doubt_a_service_of_those_days_counts(string filed, string served, Standing expected) =>
        Assert.Equal(expected, Job(filed).Add(i => new ActionServed { Index = i, On = When(served) }).On("2026-11-02")
            .Get("prosecution.service-last-day").Standing);

    // Five years end the action, unless the day it was filed is in doubt, or a stay may have lengthened them.
    [Theory]
    [InlineData("2025-12-15", false, "2030-12-17", Standing.Lost)]
    [InlineData("2025-12-15", true, "2030-12-17", Standing.InDoubt)]
    [InlineData("2025-12-11..2025-12-15", false, "2030-12-17", Standing.InDoubt)]
    [InlineData("2025-12-15", false, "2030-12-13", Standing.Open)]
    [Proves("Code Civ. Proc. § 583.310")]
    public void The_five_years_are_lost_only_where_nothing_may_have_lengthened_them(string filed, bool stayed, string asOf,
        Standing expected)
    {
        var job = stayed ? Job(filed).Bankrupt("owner", "2026-01-12", "2026-02-10") : Job(filed);
        var five = job.On(asOf).Get("prosecution.five-years");
        Assert.Equal(expected, five.Standing);
        Assert.Equal(expected != Standing.Open, five.Asks("(trial-begun)"));
        Assert.False(job.Add(i => new TrialBegun { Index = i, On = When("2030-10-07") }).On(asOf).Get("prosecution.five-years")
            .Asks("(trial-begun)"));
    }

    // A doubtful action is followed up as a good one is: nothing is left to a doubt.
    [Fact]
    [Proves("Civ. Code § 8461")]
    public void After_an_action_in_doubt_the_notice_of_pendency_is_recorded_too()
    {
        var on = Job().Which(e => (ActionFiled)e with { SmallClaims = true }).On("2025-12-22");
        Assert.Equal(Standing.InDoubt, on.Get("enforcement.last-day").Standing);
        Assert.Equal(["2026-01-04"], on.Get("lis-pendens.last-day").DaysOf());
    }
}
