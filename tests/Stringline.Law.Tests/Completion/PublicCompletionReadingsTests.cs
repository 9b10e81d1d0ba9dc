using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>What the file says of completion of a public work (Civ. Code § 9200), entry by entry, and how firmly.</summary>
public sealed class PublicCompletionReadingsTests
{
    private static Finding Completion(JobBuilder job, string asOf = "2026-09-01") => job.On(asOf).Get("completion.day");

    private static JobBuilder Job() => new JobBuilder().PublicWork().Furnished("2026-03-02", 1m);

    // Civ. Code § 9200(b): who says that it was complete by cessation should show the stop itself; until then it is no more than said.
    [Theory]
    [InlineData(CompletionTheory.Cessation, false, new[] { "2026-05-04" }, Standing.InDoubt, false)]
    [InlineData(CompletionTheory.Cessation, true, new[] { "2026-03-02", "2026-05-04" }, Standing.InDoubt, false)]
    [InlineData(CompletionTheory.Acceptance, false, new[] { "2026-05-04" }, Standing.Done, true)]
    [InlineData(CompletionTheory.Acceptance, true, new[] { "2026-03-02", "2026-05-04" }, Standing.InDoubt, false)]
    [InlineData(CompletionTheory.Actual, false, new[] { "2026-03-02" }, Standing.NotYet, false)]
    [Proves("Civ. Code § 9200(a)")]
    [Proves("Civ. Code § 9200(b)")]
    public void A_completion_that_is_entered_is_taken_as_firmly_as_it_is_said(CompletionTheory by, bool contested, string[] days,
        Standing expected, bool endKnown)
    {
        var completion = Completion(Job().Completed("2026-05-04", by, contested));
        Assert.Equal(days, completion.DaysOf());
        Assert.Equal((expected, endKnown), (completion.Standing, completion.Band!.Latest is not null));
        Assert.Equal(by == CompletionTheory.Acceptance ? [1] : [], completion.EntriesOf("accepted the work 2026-05-04"));
        Assert.Equal(by == CompletionTheory.Cessation ? [1] : [], completion.EntriesOf("by cessation of labor 2026-05-04"));
        Assert.Equal(by == CompletionTheory.Actual ? [1] : [], completion.EntriesOf("is passed over"));
    }

    [Theory]
    [InlineData("2026-05-04..2026-05-08", Standing.InDoubt)]
    [InlineData("2026-05-04", Standing.Done)]
    [Proves("Civ. Code § 9200(a)")]
    public void An_acceptance_on_a_day_in_doubt_is_not_done_yet(string on, Standing expected) =>
        Assert.Equal(expected, Completion(Job().Completed(on, CompletionTheory.Acceptance)).Standing);

    // Where a disputed acceptance is no later than the last work, nothing earlier is left to plan on.
    [Theory]
    [InlineData("2026-03-01", new[] { "2026-03-01 acceptance by the public entity" })]
    [InlineData("2026-03-02", new[] { "2026-03-02 acceptance by the public entity" })]
    [InlineData("2026-03-03",
        new[] { "2026-03-02 acceptance unknown: not before the last work we know of", "2026-03-03 acceptance by the public entity" })]
    [InlineData("2026-03-01..2026-03-20",
        new[] { "2026-03-01 acceptance by the public entity", "2026-03-20 acceptance by the public entity, at the latest" })]
    [Proves("Civ. Code § 9200(a)")]
    public void The_last_work_is_planned_on_where_it_is_earlier_than_every_acceptance_in_dispute(string accepted, string[] lines) =>
        Assert.Equal(lines, Completion(Job().Completed(accepted, CompletionTheory.Acceptance, contested: true)).Lines());

    [Fact]
    [Proves("Civ. Code § 9200(a)")]
    public void Where_nothing_is_known_of_acceptance_the_reason_hangs_on_the_last_work()
    {
        var completion = Completion(Job().Furnished("2026-04-06", 1m).Furnished("2026-03-16", 1m));
        Assert.Equal(["2026-04-06"], completion.DaysOf());
        Assert.Equal([1], completion.HangsOn("Civ. Code § 9200(a)"));
    }

    // Labor ceased between 2 February and 9 March: the sixtieth day is between 3 April and 8 May, and surely past on 8 May only.
    [Theory]
    [InlineData("2026-05-07", Standing.NotYet, false)]
    [InlineData("2026-05-08", Standing.InDoubt, true)]
    [Proves("Civ. Code § 9200(b)")]
    public void Sixty_days_in_doubt_are_over_when_they_surely_are(string asOf, Standing expected, bool endKnown)
    {
        var completion =
            Completion(new JobBuilder().PublicWork().Furnished("2025-12-01", 1m).LaborCeased("2026-02-02..2026-03-09", unfinished: true)
                .Work(w => w with { StateContractAct = false }), asOf);
        Assert.Equal(["2026-04-03", "2026-05-08"], completion.DaysOf());
        Assert.Equal((expected, endKnown), (completion.Standing, completion.Band!.Latest is not null));
    }

    // Sixty continuous days complete the work, also where labor resumed after them: W. F. Hayward Co. v. Transamerica Insurance (1993) 16
    // Cal.App.4th
    // 1101. That the claimant worked within them leaves it said and no more.
    [Theory]
    [InlineData(null, null, ClaimantRole.Subcontractor, Standing.Done)]
    [InlineData("2026-05-02", null, ClaimantRole.Subcontractor, Standing.Done)]
    [InlineData(null, "2026-04-06", ClaimantRole.Subcontractor, Standing.InDoubt)]
    [InlineData(null, "2026-04-06", ClaimantRole.Supplier, Standing.Done)] // a delivery is no labor
    [Proves("Civ. Code § 9200(b)")]
    public void Sixty_idle_days_surely_complete_only_what_stayed_idle_through_them(string? resumed, string? worked, ClaimantRole role,
        Standing expected)
    {
        var job = Job().Role(role, "sub").LaborCeased("2026-03-02", resumed, unfinished: true)
            .Work(w => w with { StateContractAct = false });
        if (worked is not null)
            job.Furnished(worked, 1m);
        Assert.Equal((expected, "2026-05-01"), (Completion(job).Standing, Completion(job).DaysOf().Single()));
    }

    // The question matters by sixty days, and only where labor ceased on a contract of which the file does not say.
    [Theory]
    [InlineData(true, null, 60)]
    [InlineData(true, false, null)]
    [InlineData(true, true, null)]
    [InlineData(false, null, null)]
    [Proves("Civ. Code § 9200(b)")]
    public void The_State_Contract_Act_is_asked_about_where_labor_ceased(bool ceased, bool? act, int? days)
    {
        var job = Job().Work(w => w with { StateContractAct = act });
        var asked = Completion(ceased
            ? job.LaborCeased("2026-03-02")
            : job).Questions.SingleOrDefault(q => q.Text.Contains("(work.stateContractAct)", StringComparison.Ordinal));
        Assert.Equal(days, asked?.Days);
        Assert.Equal(days is null, asked is null);
    }

    // Recorded between Monday 27 and Wednesday 29 October 2025. Fifteen days before the 27th is Sunday the 12th; completed on Friday the
    // 10th or Saturday the 11th, the fifteenth day is a weekend, and the entity may have until Monday the 27th (Civ. Code § 9204(a)).
    [Fact]
    [Proves("Civ. Code § 9204(a)")]
    public void A_notice_that_states_no_day_may_mean_any_for_which_it_is_in_time()
    {
        var any = Completion(Accepted().OwnerRecorded("2025-10-27..2025-10-29"), "2025-12-01");
        Assert.Equal(["2025-10-10", "2025-10-29"], any.DaysOf());
        Assert.Equal([1], any.HangsOn("Civ. Code § 9204(a)"));
        Assert.Empty(any.HangsOn("Civ. Code § 9204(c)"));
        var stated = Completion(Accepted().OwnerRecorded("2025-10-29", states: "2025-10-22"), "2025-12-01");
        Assert.Equal([1], stated.HangsOn("Civ. Code § 9204(c)"));
        Assert.Empty(stated.HangsOn("Civ. Code § 9204(a)"));

        static JobBuilder Accepted() => new JobBuilder().PublicWork().Furnished("2025-08-05", 1m);
    }

    [Fact]
    [Proves("Civ. Code § 9200(b)")]
    public void A_stop_that_completes_nothing_is_told_with_its_entry()
    {
        var resumed = Completion(Job().LaborCeased("2026-03-02", "2026-05-01"));
        Assert.Equal([1], resumed.EntriesOf("resumed before 60 continuous days had run"));
        var under = Completion(Job().LaborCeased("2026-03-02").Work(w => w with { StateContractAct = true }));
        Assert.Equal([1], under.EntriesOf("only acceptance does"));
        Assert.False(under.PassesOver("resumed before"));
        Assert.Equal([1], Completion(Job().LaborCeased("2026-03-02")).EntriesOf("the sixtieth continuous day is 2026-05-01"));
    }
}
