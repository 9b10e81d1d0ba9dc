using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>Theories of completion against each other, and days in doubt (Civ. Code § 8180).</summary>
public sealed class CompletionEdgeTests
{
    private static CompletionReadings Read(JobBuilder job, string asOf = "2026-09-01")
    {
        var facts = job.FactsOn(asOf);
        return CompletionDay.Of(facts, OwnersNotice.Of(facts, Law.Time.OpenDays.Statutory));
    }

    private static string Line(CompletionReading r) => $"{r.Name} {(r.On.IsExact ? LawText.IsoDay(r.On.Earliest) : $"{LawText.IsoDay(r.On.Earliest)}..{LawText.IsoDay(r.On.Latest)}")} {r.Firmness}";

    private static string[] Lines(CompletionReadings readings) => [.. readings.Open.Select(Line)];

    private static Finding Day(JobBuilder job, string asOf = "2026-09-01") => job.On(asOf).Get("completion.day");

    // Occupied from 4 May. A stop that was over by then carries nothing; one that ended later shows that labor had ceased for a while.
    [Theory]
    [InlineData("2026-04-06", "2026-05-04", "2026-05-04", "2026-05-04 Asserted", false)]
    [InlineData("2026-04-06", "2026-05-05", "2026-05-04", "2026-05-04 Asserted", true)]
    [InlineData("2026-05-06", "2026-05-20", "2026-05-04", "2026-05-06 Asserted", true)]
    [InlineData("2026-04-06", "2026-05-08", "2026-05-04..2026-05-11", "2026-05-04..2026-05-11 Asserted", false)]
    [InlineData("2026-04-06", "2026-05-12", "2026-05-04..2026-05-11", "2026-05-04..2026-05-11 Asserted", true)]
    [InlineData("2026-04-06", null, "2026-05-04", "2026-05-04 Certain", true)]
    [Proves("Civ. Code § 8180(a)(2)")]
    public void Occupation_is_carried_by_a_stop_that_outlasts_it(string ceased, string? resumed, string occupied, string expected, bool carried)
    {
        var occupation = Read(new JobBuilder().Completed(occupied, CompletionTheory.Occupation).LaborCeased(ceased, resumed), "2026-06-01").Open.Single(r => r.Name == "completion by occupation");
        Assert.Equal($"completion by occupation {expected}", Line(occupation));
        Assert.Equal(carried ? 2 : 1, occupation.Why.Facts.Count);
    }

    [Fact]
    [Proves("Civ. Code § 8180(a)(2)")]
    public void Occupation_is_less_than_certain_where_somebody_contests_it_or_our_own_labor_went_on()
    {
        Assert.Contains("completion by occupation 2026-05-04 Contested", Lines(Read(new JobBuilder().Completed("2026-05-04", CompletionTheory.Occupation, contested: true))));
        Assert.Contains("completion by occupation 2026-05-04 Contested", Lines(Read(new JobBuilder().Completed("2026-05-04", CompletionTheory.Occupation, contested: true).LaborCeased("2026-04-20"), "2026-06-01")));
        var own = new JobBuilder().Role(ClaimantRole.Subcontractor).Completed("2026-05-04", CompletionTheory.Occupation).LaborCeased("2026-04-06").Furnished("2026-04-20", 10m);
        Assert.Contains("completion by occupation 2026-05-04 Asserted", Lines(Read(own, "2026-05-20")));
    }

    [Fact]
    [Proves("Civ. Code § 8180(b)")]
    public void The_reasons_say_whether_an_acceptance_is_that_of_a_public_authority()
    {
        var job = new JobBuilder().Completed("2026-05-04", CompletionTheory.Acceptance);
        Assert.True(Day(job).Says("which the file does not say"));
        job.Work(w => w with { SubjectToAcceptanceBy = "City of Davis" });
        Assert.True(Day(job).Says("The public authority accepted the work"));
        Assert.False(Day(job).Says("waits for acceptance"));
        Assert.False(Day(job).Says("Nothing in the file completes the work"));
        Assert.False(Day(job).Asks("subject to acceptance"));
        var waiting = Day(new JobBuilder().Work(w => w with { SubjectToAcceptanceBy = "City of Davis" }));
        Assert.True(waiting.Says("waits for acceptance by City of Davis"));
        Assert.False(waiting.Asks("Is the whole work complete"));
    }

    // Labor ceased on some day from 2 to 6 March: the sixtieth day lies between 1 and 5 May.
    [Theory]
    [InlineData(null, "2026-05-04", Firmness.Projected)]
    [InlineData(null, "2026-05-05", Firmness.Certain)]
    [InlineData("2026-05-05", "2026-06-01", Firmness.Contested)]
    [InlineData("2026-05-06", "2026-06-01", Firmness.Certain)]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void Sixty_idle_days_from_a_day_in_doubt_are_certain_once_they_have_run_from_its_latest(string? resumed, string asOf, Firmness expected) =>
        Assert.Equal(expected, Assert.Single(Read(new JobBuilder().LaborCeased("2026-03-02..2026-03-06", resumed), asOf).Open).Firmness);

    [Theory]
    [InlineData("2026-04-30", Standing.NotYet)]
    [InlineData("2026-05-01", Standing.Done)]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void A_stop_known_to_last_past_the_sixtieth_day_completes_the_work_on_that_day_and_not_before(string asOf, Standing expected) =>
        Assert.Equal(expected, Day(new JobBuilder().LaborCeased("2026-03-02", "2026-06-01"), asOf).Standing);

    // Thirty days without labor from 2 March run through 1 April.
    [Theory]
    [InlineData("2026-03-02", null, "recorded notice of cessation 2026-04-06 Certain")]
    [InlineData("2026-03-02..2026-03-10", null, "recorded notice of cessation 2026-04-06 Contested")]
    [InlineData(null, null, "recorded notice of cessation 2026-04-06 Asserted")]
    [InlineData("2026-03-02", "direct", "recorded notice of cessation 2026-04-06 Contested")]
    [Proves("Civ. Code § 8180(a)(4)")]
    [Proves("Civ. Code § 8186")]
    public void A_notice_of_cessation_completes_as_surely_as_the_stop_is_known_and_one_that_names_a_contract_may(string? ceased, string? contractOf, string? expected)
    {
        var job = new JobBuilder().OwnerRecorded("2026-04-06", OwnerNotice.Cessation, contractOf: contractOf);
        if (ceased is not null)
            job.LaborCeased(ceased);
        Assert.Equal(expected is null ? [] : [expected], Lines(Read(job, "2026-04-20")).Where(l => l.StartsWith("recorded", StringComparison.Ordinal)));
    }

    [Fact]
    [Proves("Civ. Code § 8182(a)")]
    [Proves("Civ. Code § 8182(c)")]
    public void What_the_owners_notice_states_rests_on_what_is_in_the_file()
    {
        // Recorded 13 to 15 May 2026: fifteen days before the 13th is Tuesday 28 April.
        Assert.Equal(["completion as the owner's notice states 2026-04-28..2026-05-15 Asserted"], Lines(Read(new JobBuilder().OwnerRecorded("2026-05-13..2026-05-15"))));
        Assert.Equal(["Civ. Code § 8182(a)"], Day(new JobBuilder().OwnerRecorded("2026-05-13")).Sections);
        Assert.Equal(["Civ. Code § 8182(b)"], Day(new JobBuilder().OwnerRecorded("2026-05-13", states: "2026-05-04")).Sections);
        // It takes effect only if the work was complete (§ 8182(d)), which nothing but the notice says: no right is surely lost by it.
        Assert.False(Read(new JobBuilder().OwnerRecorded("2026-05-13", states: "2026-05-04")).EndFirm);
        Assert.True(Read(new JobBuilder().OwnerRecorded("2026-05-13", states: "2026-05-04").Completed("2026-05-04")).EndFirm);
    }

    // Both are certain, so the work was complete by the earlier of their latest days.
    [Theory]
    [InlineData("2026-05-01..2026-05-20", "2026-05-10..2026-05-12", "2026-05-01..2026-05-12", "2026-05-10..2026-05-12")]
    [InlineData("2026-05-01..2026-05-12", "2026-05-10..2026-05-20", "2026-05-01..2026-05-12", "2026-05-10..2026-05-12")]
    [InlineData("2026-05-01..2026-05-12", "2026-05-12..2026-05-20", "2026-05-01..2026-05-12", "2026-05-12")]
    [InlineData("2026-05-01..2026-05-12", "2026-05-13..2026-05-20", "2026-05-01..2026-05-12", null)]
    [Proves("Civ. Code § 8180(a)")]
    public void Of_two_certain_completions_in_doubt_neither_can_be_later_than_the_first_to_be_certain(string one, string other, string first, string? second) =>
        Assert.Equal(
            ((string?[])[first, second]).Where(d => d is not null).Select(d => $"actual completion {d} Certain"),
            Lines(Read(new JobBuilder().Completed(one).Completed(other))));

    // Last furnished 6 April, or some day from 6 to 10 April. A contention of completion by then is itself the day to plan on.
    [Theory]
    [InlineData("2026-04-06", "2026-04-06", false)]
    [InlineData("2026-04-06", "2026-04-07", true)]
    [InlineData("2026-04-06", "2026-04-06..2026-04-10", false)]
    [InlineData("2026-04-06..2026-04-10", "2026-04-08", true)]
    [Proves("Civ. Code § 8180(a)")]
    public void The_claimants_last_work_is_a_reading_only_where_no_contention_is_as_early(string furnished, string contended, bool floor) =>
        Assert.Equal(floor, Read(new JobBuilder().Furnished(furnished, 10m).Completed(contended, contested: true)).Open.Any(r => r.Firmness == Firmness.Floor));

    [Fact]
    public void Readings_stand_by_their_earliest_day_and_then_by_name()
    {
        Assert.Equal(
            ["actual completion 2026-05-01..2026-05-20 Contested", "completion by occupation 2026-05-04..2026-05-06 Contested"],
            Lines(Read(new JobBuilder().Completed("2026-05-04..2026-05-06", CompletionTheory.Occupation, contested: true).Completed("2026-05-01..2026-05-20", contested: true))));
        Assert.Equal(
            ["actual completion 2026-05-04 Contested", "completion by occupation 2026-05-04 Contested"],
            Lines(Read(new JobBuilder().Completed("2026-05-04", CompletionTheory.Occupation, contested: true).Completed("2026-05-04", contested: true))));
    }

    [Fact]
    [Proves("Civ. Code § 8180(a)(2)")]
    public void An_occupation_asks_when_labor_ceased_until_the_file_says()
    {
        var job = new JobBuilder().Completed("2026-05-04", CompletionTheory.Occupation).OwnerRecorded("2026-05-13", states: "2026-05-05");
        Assert.True(Day(job).Asks("When did labor on the whole work cease"));
        Assert.False(Day(job.LaborCeased("2026-04-06", "2026-04-20")).Asks("When did labor on the whole work cease"));
    }

    // Finished when labor ceased, the 90 days run sixty days earlier (Civ. Code § 8180(a)(1) against (3)).
    [Theory]
    [InlineData(null, true)]
    [InlineData(CompletionTheory.Occupation, true)]
    [InlineData(CompletionTheory.Actual, false)]
    [Proves("Civ. Code § 8180(a)(1)")]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void A_stop_asks_whether_the_work_was_finished_by_then(CompletionTheory? by, bool asks)
    {
        var job = new JobBuilder().LaborCeased("2026-03-02");
        if (by is { } theory)
            job.Completed("2026-03-10", theory).Completed("2026-03-12", CompletionTheory.Occupation);
        var question = Day(job).Questions.SingleOrDefault(q => q.Text.Contains("finished when labor ceased", StringComparison.Ordinal));
        Assert.Equal(asks ? 60 : null, question?.Days);
        Assert.False(Day(new JobBuilder().Completed("2026-03-10", CompletionTheory.Occupation)).Asks("finished when labor ceased"));
    }

    [Fact]
    public void A_contest_asks_what_would_prove_it()
    {
        Assert.True(Day(new JobBuilder().Completed("2026-05-04").Completed("2026-04-20", contested: true)).Asks("contested day"));
        Assert.False(Day(new JobBuilder().Completed("2026-05-04")).Asks("contested day"));
    }
}
