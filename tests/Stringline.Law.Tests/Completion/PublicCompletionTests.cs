using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>Completion of a public work: the earliest of acceptance and 60 idle days; never finishing or use alone.</summary>
public sealed class PublicCompletionTests
{
    private static Finding Completion(JobBuilder job, string asOf = "2026-09-01") => job.On(asOf).Get("completion.day");

    private static JobBuilder Job() => new JobBuilder().PublicWork().Furnished("2026-03-02", 1m);

    [Theory]
    [InlineData(CompletionTheory.Acceptance, true)]
    [InlineData(CompletionTheory.Actual, false)]
    [InlineData(CompletionTheory.Occupation, false)]
    [Proves("Civ. Code § 9200(a)")]
    public void Acceptance_completes_it_and_neither_finishing_nor_use_does(CompletionTheory by, bool completes)
    {
        var completion = Completion(Job().Completed("2026-05-04", by));
        Assert.Equal([completes ? "2026-05-04" : "2026-03-02"], completion.DaysOf()); // else not before the last work, 2 March
        Assert.Equal(completes ? Standing.Done : Standing.NotYet, completion.Standing);
        Assert.Equal(!completes, completion.RuledOut("Civ. Code § 9200"));
        Assert.Equal(!completes, completion.Asks("accepted the work"));
    }

    // Last labor Monday 2 March: the sixtieth day is Friday 1 May. It was left unfinished, so nothing was accepted on 2 March. Whether the
    // contract is under the State Contract Act is not told: on that reading only an acceptance ends anything, and none is known.
    [Theory]
    [InlineData(null, "2026-04-30", Standing.NotYet)]
    [InlineData(null, "2026-05-01", Standing.InDoubt)]
    [InlineData("2026-05-02", "2026-09-01", Standing.InDoubt)]
    [Proves("Civ. Code § 9200(b)")]
    public void Sixty_idle_days_complete_it_unless_it_is_under_the_State_Contract_Act(string? resumed, string asOf, Standing expected)
    {
        var completion = Completion(Job().LaborCeased("2026-03-02", resumed, unfinished: true), asOf);
        Assert.Equal(["2026-05-01"], completion.DaysOf());
        Assert.Equal(expected, completion.Standing);
        Assert.True(completion.Says("State Contract Act"));
        Assert.Null(completion.Band!.Latest);
    }

    // What was finished by 2 March may have been accepted that day, and the entity's acceptance is sent to nobody.
    [Theory]
    [InlineData(null)]
    [InlineData(false)]
    [Proves("Civ. Code § 9200(a)")]
    public void Idle_days_leave_open_that_it_was_accepted_when_labor_ceased(bool? unfinished)
    {
        var completion = Completion(Job().LaborCeased("2026-03-02", unfinished: unfinished).Work(w => w with { StateContractAct = false }));
        Assert.Equal(["2026-03-02", "2026-05-01"], completion.DaysOf());
        Assert.Equal(Standing.InDoubt, completion.Standing);
        Assert.NotNull(completion.Band!.Latest);
    }

    [Fact]
    [Proves("Civ. Code § 9200(b)")]
    public void Labor_that_resumes_on_the_sixtieth_day_leaves_it_open()
    {
        var completion = Completion(Job().LaborCeased("2026-03-02", "2026-05-01"));
        Assert.Equal(["2026-05-01 acceptance unknown: not before the last work we know of"], completion.Lines());
        Assert.True(completion.RuledOut("Civ. Code § 9200(b)"));
    }

    [Fact]
    [Proves("Civ. Code § 9200(a)")]
    [Proves("Civ. Code § 9200(b)")]
    public void The_earliest_event_completes_it_so_an_acceptance_rules_out_idle_days_that_end_later()
    {
        Assert.Equal(["2026-04-30"], Completion(Job().LaborCeased("2026-03-02").Completed("2026-04-30", CompletionTheory.Acceptance))
            .DaysOf());
        Assert.Equal(["2026-05-01", "2026-05-02"],
            Completion(Job().LaborCeased("2026-03-02").Completed("2026-05-02", CompletionTheory.Acceptance)).DaysOf());
    }

    [Fact]
    [Proves("Civ. Code § 9200(a)")]
    public void An_acceptance_on_a_day_in_doubt_shows_both_ends() =>
        Assert.Equal(["2026-05-04", "2026-05-08"], Completion(Job().Completed("2026-05-04..2026-05-08", CompletionTheory.Acceptance))
            .DaysOf());

    [Fact]
    [Proves("Civ. Code § 9200(b)")]
    public void Under_the_State_Contract_Act_idle_days_never_complete_it_and_outside_it_they_surely_do()
    {
        var under = Completion(Job().LaborCeased("2026-03-02").Work(w => w with { StateContractAct = true }));
        Assert.Equal((Standing.NotYet, "2026-03-02"), (under.Standing, under.DaysOf().Single()));
        Assert.True(under.RuledOut("Civ. Code § 9200(b)"));
        Assert.False(under.Asks("State Contract Act"));
        var outside = Completion(Job().LaborCeased("2026-03-02", unfinished: true).Work(w => w with { StateContractAct = false }));
        Assert.Equal(Standing.Done, outside.Standing);
        Assert.Equal(["2026-05-01"], outside.DaysOf());
        Assert.True(Completion(Job().LaborCeased("2026-03-02")).Asks("State Contract Act"));
    }
}
