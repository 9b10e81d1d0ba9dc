using Stringline.Law.Completion;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>Theories of completion against each other, and days in doubt (Civ. Code § 8180).</summary>
public sealed class CompletionEdgeTests
{
    private static CompletionReadings Read(JobBuilder job, string asOf = "2026-09-01")
    {
        var facts = job.FactsOn(asOf);
        return CompletionDay.Of(facts, OwnersNotice.Of(facts, Law.Counting.OpenDays.Statutory));
    }

    private static string Line(CompletionReading r) =>
        $"{r.Name} {(r.On.IsExact
            ? LawText.IsoDay(r.On.Earliest) : $"{LawText.IsoDay(r.On.Earliest)}..{LawText.IsoDay(r.On.Latest)}")} {r.Firmness}";

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
    public void Occupation_is_carried_by_a_stop_that_outlasts_it(string ceased, string? resumed, string occupied, string expected,
        bool carried)
    {
        var occupation = Read(new JobBuilder().Completed(occupied, CompletionTheory.Occupation).LaborCeased(ceased, resumed),
            "2026-06-01").Open.Single(r => r.Name == "completion by occupation");
        Assert.Equal($"completion by occupation {expected}", Line(occupation));
        Assert.Equal(carried ? 2 : 1, occupation.Why.Facts.Count);
    }

    [Fact]
    [Proves("Civ. Code § 8180(a)(2)")]
    public void Occupation_is_less_than_certain_where_somebody_contests_it_or_our_own_labor_went_on()
    {
        Assert.Contains("completion by occupation 2026-05-04 Contested",
            Lines(Read(new JobBuilder().Completed("2026-05-04", CompletionTheory.Occupation, contested: true))));
        Assert.Contains("completion by occupation 2026-05-04 Contested",
            Lines(Read(new JobBuilder().Completed("2026-05-04", CompletionTheory.Occupation, contested: true).LaborCeased("2026-04-20"),
                "2026-06-01")));
        var own = new JobBuilder().Role(ClaimantRole.Subcontractor).Completed("2026-05-04", CompletionTheory.Occupation)
            .LaborCeased("2026-04-06").Furnished("2026-04-20", 10m);
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
    public void Sixty_idle_days_from_a_day_in_doubt_are_certain_once_they_have_run_from_its_latest(string? resumed, string asOf,
        Firmness expected) =>
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
    public void A_notice_of_cessation_completes_as_surely_as_the_stop_is_known_and_one_that_names_a_contract_may(string? ceased,
        string? contractOf, string? expected)
    {
        var job = new JobBuilder().OwnerRecorded("2026-04-06", OwnerNotice.Cessation, contractOf: contractOf);
        if (ceased is not null)
            job.LaborCeased(ceased);
        Assert.Equal(expected is null
            ? [] : [expected], Lines(Read(job, "2026-04-20")).Where(l => l.StartsWith("recorded", StringComparison.Ordinal)));
    }

    [Fact]
    [Proves("Civ. Code § 8182(a)")]
    [Proves("Civ. Code § 8182(c)")]
    public void What_the_owners_notice_states_rests_on_what_is_in_the_file()
    {
        // Recorded 13 to 15 May 2026: fifteen days before the 13th is Tuesday 28 April.
        Assert.Equal(["completion as the owner's notice states 2026-04-28..2026-05-15 Asserted"],
            Lines(Read(new JobBuilder().OwnerRecorded("2026-05-13..2026-05-15"))));
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
    public void Of_two_certain_completions_in_doubt_neither_can_be_later_than_the_first_to_be_certain(string one, string other,
        string first, string? second) =>
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
        Assert.Equal(floor, Read(new JobBuilder().Furnished(furnished, 10m).Completed(contended, contested: true)).Open
            .Any(r => r.Firmness == Firmness.Floor));

    [Fact]
    public void Readings_stand_by_their_earliest_day_and_then_by_name()
    {
        Assert.Equal(
            ["actual completion 2026-05-01..2026-05-20 Contested", "completion by occupation 2026-05-04..2026-05-06 Contested"],
            Lines(Read(new JobBuilder().Completed("2026-05-04..2026-05-06", CompletionTheory.Occupation, contested: true)
                .Completed("2026-05-01..2026-05-20", contested: true))));
        Assert.Equal(
            ["actual completion 2026-05-04 Contested", "completion by occupation 2026-05-04 Contested"],
            Lines(Read(new JobBuilder().Completed("2026-05-04", CompletionTheory.Occupation, contested: true)
                .Completed("2026-05-04", contested: true))));
    }

    [Fact]
    [Proves("Civ. Code § 8180(a)(2)")]
    public void An_occupation_asks_when_labor_ceased_until_the_file_says()
    {
        var job = new JobBuilder().Completed("2026-05-04", CompletionTheory.Occupation).OwnerRecorded("2026-05-13", states: "2026-05-05");
        Assert.True(Day(job).Asks("When did labor on the whole work cease"));
        Assert.False(Day(job.LaborCeased("2026-04-06", "2026-04-20")).Asks("When did labor on the whole work cease"));
        // Under whatever name it stands: beside an approval that may be no acceptance, or of one structure of several.
        Assert.True(Day(new JobBuilder().Work(w => w with { SubjectToAcceptanceBy = "City of Davis" })
            .Completed("2026-05-04", CompletionTheory.Occupation)).Asks("When did labor on the whole work cease"));
        Assert.True(Day(new JobBuilder().Work(w => w with { ResidentialStructures = 2 })
            .Completed("2026-05-04", CompletionTheory.Occupation)).Asks("When did labor on the whole work cease"));
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

    private static string[] Told(CompletionReadings readings) =>
        [.. readings.Open.Select(r => $"{Line(r)}{(r.IsIdleness ? " idle" : "")}{(r.LaborResumed ? " resumed" : "")}")];

    // Labor ceased on 2 March, or between the 2nd and the 6th; our own work of 1 April; a second stop of 1 April. Only days without labor
    // are idleness: the work may have been finished on the day on which labor stopped.
    [Theory]
    [InlineData("2026-03-02", null, "", "2026-06-10", "60 days without labor 2026-05-01 Certain idle")]
    [InlineData("2026-03-02", null, "", "2026-04-30", "60 days without labor, if it stays stopped 2026-05-01 Projected idle")]
    [InlineData("2026-03-02", "2026-05-04", "", "2026-06-10", "60 days without labor 2026-05-01 Certain idle resumed")]
    // on no day does it stay stopped
    [InlineData("2026-03-02..2026-03-06", "2026-05-04", "", "2026-05-04",
        "60 days without labor 2026-05-01..2026-05-05 Contested idle resumed")]
    [InlineData("2026-03-02", null, "own", "2026-06-10", "60 days without labor, if our own later work does not count 2026-05-01 Contested "
        + "idle|60 days without labor after our own last work 2026-05-31 Asserted idle")]
    [InlineData("2026-03-02", null, "own", "2026-05-10", "60 days without labor, if our own later work does not count 2026-05-01 Contested "
        + "idle|60 days without labor after our own last work 2026-05-31 Projected idle")]
    [InlineData("2026-03-02", null, "other", "2026-06-10",
        "60 days without labor 2026-05-01 Contested idle|60 days without labor 2026-05-31 Certain idle")]
    [InlineData("2026-03-02", null, "notice", "2026-06-10", "recorded notice of cessation 2026-04-06 Certain idle")]
    [InlineData(null, null, "notice", "2026-06-10", "recorded notice of cessation 2026-04-06 Asserted")]
    [InlineData(null, null, "notice of one", "2026-06-10", "recorded notice of cessation 2026-04-06 Contested")]
    [InlineData("2026-03-02", null, "finished", "2026-06-10", "actual completion 2026-03-02 Certain")]
    [Proves("Civ. Code § 8180(a)(3)")]
    [Proves("Civ. Code § 8180(a)(4)")]
    public void Days_without_labor_are_idleness_and_nothing_else_is(string? ceased, string? resumed, string beside, string asOf,
        string expected)
    {
        var job = new JobBuilder().Role(beside == "own" ? ClaimantRole.Subcontractor : ClaimantRole.Supplier);
        if (ceased is not null)
            job.LaborCeased(ceased, resumed, unfinished: true);
        if (beside == "own")
            job.Furnished("2026-04-01", 10m);
        if (beside == "other")
            job.LaborCeased("2026-04-01", unfinished: true);
        if (beside.StartsWith("notice", StringComparison.Ordinal))
            job.OwnerRecorded("2026-04-06", OwnerNotice.Cessation, contractOf: beside == "notice of one" ? "direct" : null);
        if (beside == "finished")
            job.Completed("2026-03-02");
        Assert.Equal(expected.Split('|'), Told(Read(job, asOf)));
    }

    // Both stops are named by the reading that one of them contests.
    [Fact]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void The_reason_of_contested_days_names_both_stops()
    {
        var contested = Read(new JobBuilder().LaborCeased("2026-03-02").LaborCeased("2026-04-01")).Open
            .Single(r => r.On.Earliest == JobBuilder.Day("2026-05-01"));
        Assert.Equal([0, 1], contested.Why.Facts.Select(f => f.Index));
        Assert.Contains("another entry tells of labor", contested.Why.Text, StringComparison.Ordinal);
    }

    // Our last work was on 6 April. Nothing uncontested is known where all that is said is contested, or is an acceptance that completes
    // nothing of itself, or only tells when the work was complete at the latest: labor had stopped, and it may have been finished then. The
    // owner's word alone is not contested.
    [Theory]
    [InlineData("contested", true)]
    [InlineData("certain", false)]
    [InlineData("accepted", true)]
    [InlineData("idle", true)]
    [InlineData("stated", false)]
    [InlineData("stated, idle", true)]
    [InlineData("contested, stated", false)]
    [InlineData("contested, accepted", true)]
    [InlineData("contested, certain", false)]
    [InlineData("idle unfinished", false)]
    [InlineData("short unfinished", true)]
    [InlineData("short unfinished, stated", false)]
    [InlineData("short unfinished, contested", true)]
    [InlineData("short, stated", true)]
    [Proves("Civ. Code § 8180(a)")]
    public void Our_last_work_is_a_reading_where_nothing_uncontested_is_known(string known, bool floor)
    {
        var job = new JobBuilder().Furnished("2026-04-06", 10m);
        foreach (var each in known.Split(", "))
        {
            var left = each.EndsWith("unfinished", StringComparison.Ordinal) ? true : (bool?)null;
            _ = each switch
            {
                "contested" => job.Completed("2026-05-20", contested: true),
                "certain" => job.Completed("2026-05-25"),
                "accepted" => job.Completed("2026-05-18", CompletionTheory.Acceptance),
                "stated" => job.OwnerRecorded("2026-05-27", states: "2026-05-19"),
                "idle" or "idle unfinished" => job.LaborCeased("2026-04-08", unfinished: left),
                _ => job.LaborCeased("2026-03-02", "2026-03-20", left),
            };
        }

        Assert.Equal(floor, Read(job, "2026-07-01").Open.Any(r => r.Firmness == Firmness.Floor));
    }

    // Earliest day first, then by name, in whatever order the readings were found.
    [Theory]
    [InlineData("Occupation 2026-05-01..2026-05-04, Actual 2026-05-04..2026-05-10", "completion by occupation, actual completion")]
    [InlineData("Acceptance 2026-05-04, Actual 2026-05-04", "actual completion, completion by acceptance")]
    [InlineData("Acceptance 2026-05-04..2026-05-20, Actual 2026-05-04..2026-05-30", "actual completion, completion by acceptance")]
    [InlineData("Actual 2026-05-04, notice 2026-05-13", "completion as the owner's notice states, actual completion")]
    [InlineData("Occupation 2026-05-04..2026-05-06, Actual 2026-05-02..2026-05-20", "actual completion, completion by occupation")]
    public void Readings_stand_by_their_earliest_day_however_they_were_found(string said, string names)
    {
        var job = new JobBuilder();
        foreach (var each in said.Split(", ").Select(e => e.Split(' ')))
            _ = each[0] == "notice"
                ? job.OwnerRecorded(each[1]) : job.Completed(each[1], Enum.Parse<CompletionTheory>(each[0]), contested: true);
        Assert.Equal(names.Split(", "), Read(job).Open.Select(r => r.Name));
    }

    // Used between 27 and 30 March. Labor of 1 to 3 April contests the stop of the 6th of March: complete on the later of use and the stop
    // that nothing contests at the latest, and by the earlier stop with the use.
    [Fact]
    [Proves("Civ. Code § 8180(a)(2)")]
    public void Use_in_doubt_is_carried_from_the_earlier_stop_to_the_later() =>
        Assert.Equal("completion by occupation 2026-03-27..2026-04-03 Certain",
            Lines(Read(new JobBuilder().Completed("2026-03-27..2026-03-30", CompletionTheory.Occupation).LaborCeased("2026-03-06")
                .LaborCeased("2026-04-01..2026-04-03"), "2026-05-01"))[0]);

    // Certainly complete between 10 and 12 May. What ends sooner keeps its end; what ends later is cut.
    [Theory]
    [InlineData("2026-05-04..2026-05-09", "2026-05-04..2026-05-09")]
    [InlineData("2026-05-04..2026-05-11", "2026-05-04..2026-05-11")]
    [InlineData("2026-05-04..2026-05-12", "2026-05-04..2026-05-12")]
    [InlineData("2026-05-04..2026-05-13", "2026-05-04..2026-05-12")]
    [InlineData("2026-05-12..2026-05-13", "2026-05-12")]
    [InlineData("2026-05-13..2026-05-14", null)]
    [Proves("Civ. Code § 8180(a)")]
    public void A_contested_completion_keeps_its_days_up_to_the_latest_of_a_certain_one(string contested, string? expected) =>
        Assert.Equal(
            expected is null ? [] : [$"actual completion {expected} Contested"],
            Lines(Read(new JobBuilder().Completed("2026-05-10..2026-05-12").Completed(contested, contested: true)))
                .Where(l => l.EndsWith("Contested", StringComparison.Ordinal)));

    // A notice of completion of Thursday 12 November that states no day was in time for a completion from 27 October on (Veterans Day
    // carries the fifteenth to the 12th). Where the work may have been complete before that, the notice may state another day than the
    // file's; else the file's day binds it.
    [Theory]
    [InlineData("2026-10-26..2026-10-30", "2026-11-12", null, "2026-10-27..2026-11-12")]
    [InlineData("2026-10-27..2026-10-30", "2026-11-12", null, "2026-10-27..2026-10-30")]
    [InlineData("2026-11-02", "2026-11-12", null, "2026-10-27..2026-11-02")]
    [InlineData("2026-10-26", "2026-11-12", null, "2026-10-27..2026-11-12")]
    [InlineData("2026-10-20..2026-10-30", "2026-11-12", "2026-11-04", "2026-11-04")]
    // Recorded by Friday 20 November it was in time from 5 November on: for a completion of the 4th it may have been too late, for one of
    // the 5th not.
    [InlineData("2026-11-04", "2026-11-12..2026-11-20", null, "2026-10-27..2026-11-20")]
    [InlineData("2026-11-05", "2026-11-12..2026-11-20", null, "2026-10-27..2026-11-05")]
    [Proves("Civ. Code § 8182(c)")]
    [Proves("Civ. Code § 8180(a)")]
    public void What_the_owners_notice_may_state_is_bound_by_a_completion_for_which_it_was_in_time(string completed, string recorded,
        string? states, string expected) =>
        Assert.Contains($"completion as the owner's notice states {expected} Asserted",
            Lines(Read(new JobBuilder().Completed(completed).OwnerRecorded(recorded, states: states), "2026-12-01")));

    // Held to have no effect, it binds no one: it is cut to the certain completion as what anybody else says is, or falls away.
    [Theory]
    [InlineData("2026-10-26..2026-10-30", "2026-10-27..2026-10-30")]
    [InlineData("2026-10-26", null)]
    [Proves("Civ. Code § 8182(d)")]
    public void A_notice_held_to_have_no_effect_is_bound_by_any_certain_completion(string completed, string? expected) =>
        Assert.Equal(
            expected is null ? [] : [$"completion as the owner's notice states {expected} Contested"],
            Lines(Read(new JobBuilder().Completed(completed).OwnerRecorded("2026-11-12", heldIneffective: true), "2026-12-01"))
                .Where(l => l.StartsWith("completion as", StringComparison.Ordinal)));

    // Complete in law on 1 May by sixty days without labor; labor was resumed on the 4th. It went on until the first of the later
    // completions that are certain.
    [Theory]
    [InlineData("", null)]
    [InlineData("2026-06-15", "2026-06-15")]
    [InlineData("2026-06-15 2026-07-01", "2026-06-15")]
    [InlineData("2026-06-15..2026-06-20 2026-06-18..2026-06-25", "2026-06-20")]
    [InlineData("2026-06-15..2026-06-25 2026-06-18..2026-06-20", "2026-06-20")]
    [InlineData("2026-06-15 contested", null)]
    [Proves("Civ. Code § 8180(a)")]
    public void Work_that_went_on_was_over_by_the_first_later_completion_that_is_certain(string later, string? until)
    {
        var job = new JobBuilder().LaborCeased("2026-03-02", "2026-05-04", unfinished: true).Completed("2026-04-20", contested: true);
        foreach (var on in later.Replace(" contested", "", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries))
            job.Completed(on, contested: later.EndsWith("contested", StringComparison.Ordinal));
        var read = Read(job);
        Assert.Equal(until, read.Open.Single(r => r.IsIdleness).WentOnUntil is { } day ? LawText.IsoDay(day) : null);
        // What somebody disputes was not certainly complete in law, and so did not go on.
        Assert.Null(read.Open.Single(r => !r.IsIdleness).WentOnUntil);
    }

    // Stopped again on 10 May, and a notice of cessation recorded on Monday 15 June: the same.
    [Fact]
    [Proves("Civ. Code § 8180(a)(4)")]
    public void Work_that_went_on_was_over_by_a_later_notice_of_cessation_too()
    {
        var job = new JobBuilder().LaborCeased("2026-03-02", "2026-05-04", unfinished: true).LaborCeased("2026-05-10", unfinished: true)
            .OwnerRecorded("2026-06-15", OwnerNotice.Cessation);
        var reading = Assert.Single(Read(job, "2026-06-20").Open);
        Assert.Equal((JobBuilder.Day("2026-05-01"), JobBuilder.Day("2026-06-15")), (reading.On.Earliest, reading.WentOnUntil));
        // Of two structures the one that was finished in April did not go on, and one finished later does not end the other.
        job.Work(w => w with { ResidentialStructures = 2 })
            .Add(i => new Completed { Index = i, On = JobBuilder.When("2026-04-20"), By = CompletionTheory.Actual, Structure = "h1" });
        Assert.Equal(["h1 ", " 2026-06-15"],
            Read(job, "2026-06-20").Open.Select(r => $"{r.Structure} {(r.WentOnUntil is { } day ? LawText.IsoDay(day) : "")}"));
        var one = new JobBuilder().Work(w => w with { ResidentialStructures = 2 }).LaborCeased("2026-03-02", "2026-05-04", unfinished: true)
            .Add(i => new Completed { Index = i, On = JobBuilder.When("2026-06-15"), By = CompletionTheory.Actual, Structure = "h1" });
        Assert.Null(Assert.Single(Read(one).Open).WentOnUntil);
    }

    // What would correct the answer to whether the work was finished is the last stop.
    [Fact]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void Whether_the_work_was_finished_is_asked_of_the_last_stop() =>
        Assert.Equal([1], Day(new JobBuilder().LaborCeased("2026-03-02", "2026-03-20").LaborCeased("2026-05-04"))
            .Corrected("finished when labor ceased"));
}
