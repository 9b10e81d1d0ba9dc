using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>
/// A private work that an authority must accept, or only approve. Finished Wednesday 22 October 2025: 90 days end on Tuesday 20 January
/// 2026. In re El Dorado Improvement Corp. (9th Cir. 2003) 335 F.3d 835 against A. J. Raisch Paving v. Mountain View Savings &amp; Loan
/// (1972) 28 Cal.App.3d 832.
/// </summary>
public sealed class AcceptanceByThePublicTests
{
    private static JobBuilder Job(bool? takesOver) =>
        new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..").Price(64000m)
        .Furnished("2025-08-05", 64000m, until: "2025-10-22").Ended("2025-10-22").Notice("2025-08-14").Completed("2025-10-22")
        .Work(w => w with { SubjectToAcceptanceBy = "Butte County Housing Authority", PublicTakesOver = takesOver });

    private static Finding Last(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("claim-of-lien.last-day");

    [Fact]
    [Proves("Civ. Code § 8180(b)")]
    public void Where_the_file_does_not_say_whether_the_public_takes_it_over_the_safe_day_stands_and_no_end_is_known()
    {
        var last = Last(Job(null));
        Assert.Equal(["2026-01-20 actual completion, should the approval be no acceptance"], last.Lines());
        Assert.Equal("2026-01-20", last.Plan());
        Assert.Null(last.Band!.Latest);
        Assert.Equal(Standing.Open, last.Standing);
        var day = Job(null).On("2025-12-01").Get("completion.day");
        Assert.Equal(Standing.InDoubt, day.Standing);
        Assert.Null(day.Band!.Latest);
        Assert.True(day.Asks("(work.publicTakesOver)"));
        Assert.True(day.Says("El Dorado"));
        Assert.True(day.Says("Raisch"));
    }

    [Theory]
    [InlineData("2026-01-20", Standing.Kept)]
    [InlineData("2026-01-21", Standing.InDoubt)]
    [InlineData("2026-09-01", Standing.InDoubt)]
    [Proves("Civ. Code § 8180(b)")]
    public void A_claim_after_that_day_is_in_doubt_and_never_lost(string recorded, Standing expected) =>
        Assert.Equal(expected, Last(Job(null).ClaimRecorded(recorded), recorded).Standing);

    [Fact]
    [Proves("Civ. Code § 8180(b)")]
    public void Where_the_public_takes_it_over_the_time_waits_for_the_acceptance()
    {
        var last = Last(Job(true), "2026-06-01");
        Assert.Empty(last.Readings);
        Assert.Equal(Standing.Open, last.Standing);
        Assert.Equal(Standing.NotYet, Job(true).On("2026-06-01").Get("completion.day").Standing);
        Assert.True(Job(true).On("2026-06-01").Get("completion.day").RuledOut("Civ. Code § 8180(b)"));
        Assert.False(Job(true).On("2026-06-01").Get("completion.day").Asks("(work.publicTakesOver)"));
    }

    [Fact]
    [Proves("Civ. Code § 8180(b)")]
    public void Where_it_only_approves_the_work_is_complete_when_it_is_finished()
    {
        var answer = Job(false).On("2026-06-01");
        Assert.Equal(["2025-10-22 actual completion"], answer.Get("completion.day").Lines());
        Assert.Equal(Standing.Done, answer.Get("completion.day").Standing);
        Assert.Equal(Standing.Lost, answer.Get("claim-of-lien.last-day").Standing);
        Assert.False(answer.Get("completion.day").Asks("(work.publicTakesOver)"));
    }

    // Accepted on 3 March 2026: 90 days end on Monday 1 June. A claim of that day.
    [Theory]
    [InlineData(null, "2026-01-20 2026-06-01", Standing.InDoubt)]
    [InlineData(true, "2026-06-01", Standing.Kept)]
    [InlineData(false, "2026-01-20", Standing.Lost)]
    [Proves("Civ. Code § 8180(b)")]
    public void An_acceptance_ends_the_doubt_about_the_end_only(bool? takesOver, string days, Standing claimed)
    {
        var accepted = Job(takesOver).Completed("2026-03-03", CompletionTheory.Acceptance);
        var last = Last(accepted, "2026-06-02");
        Assert.Equal(days.Split(' '), last.DaysOf());
        Assert.Equal(Standing.Lost, last.Standing);
        Assert.NotNull(last.Band!.Latest);
        Assert.Equal(claimed, Last(accepted.ClaimRecorded("2026-06-01"), "2026-06-02").Standing);
    }

    // Neither finished nor accepted: nothing is known of completion but that it was not before the claimant's own last work, 22 October.
    [Fact]
    [Proves("Civ. Code § 8180(a)")]
    public void With_nothing_finished_the_claimants_last_work_is_planned_on_unless_the_public_takes_it_over()
    {
        static JobBuilder Unfinished(bool? takesOver) =>
            new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 64000m, until: "2025-10-22").Ended("2025-10-22")
            .Work(w => w with { SubjectToAcceptanceBy = "City of Oroville", PublicTakesOver = takesOver });
        Assert.Equal("2026-01-20", Last(Unfinished(null)).Plan());
        Assert.Null(Last(Unfinished(true)).Plan());
    }

    // Labor stopped on 1 August 2025: the sixtieth day is 30 September, 90 days from it 29 December.
    [Fact]
    [Proves("Civ. Code § 8180(a)(3)")]
    public void Sixty_idle_days_are_kept_beside_the_acceptance_too()
    {
        var job = new JobBuilder().Notice("2025-07-14").Furnished("2025-07-07", 64000m).Ended("2025-07-07")
            .LaborCeased("2025-08-01", unfinished: true)
            .Work(w => w with { SubjectToAcceptanceBy = "City of Oroville" });
        Assert.Equal(["2025-12-29 60 days without labor, should the approval be no acceptance"], Last(job).Lines());
        Assert.Null(Last(job).Band!.Latest);
        Assert.Equal([Firmness.Asserted], CompletionDay.Of(job.FactsOn("2025-12-01"), []).Open.Select(r => r.Firmness));
    }

    // Labor stopped on Monday 6 October 2025; thirty days later, on 10 November, the owner recorded a notice of cessation. The sections
    // count 30 days from it, to 10 December, whatever completes the work; that it does nothing while the work waits for acceptance can be
    // said.
    [Theory]
    [InlineData("2025-12-10", null, Standing.Open)]
    [InlineData("2025-12-11", null, Standing.InDoubt)]
    [InlineData("2026-06-01", null, Standing.InDoubt)]
    [InlineData("2026-01-05", "2025-12-10", Standing.Kept)]
    [InlineData("2026-01-05", "2025-12-11", Standing.InDoubt)]
    [Proves("Civ. Code § 8414(b)(2)")]
    [Proves("Civ. Code § 8412(b)")]
    public void A_notice_of_cessation_may_end_the_time_before_the_acceptance(string asOf, string? claimed, Standing expected)
    {
        JobBuilder Stopped() => new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..")
            .Furnished("2025-08-05", 64000m, until: "2025-10-06").Ended("2025-10-06").Notice("2025-08-14")
            .Work(w => w with { SubjectToAcceptanceBy = "Butte County Housing Authority", PublicTakesOver = true })
            .LaborCeased("2025-10-06")
            .OwnerRecorded("2025-11-10", OwnerNotice.Cessation).OwnerToldUs("2025-11-12", OwnerNotice.Cessation);
        var last = Last(claimed is null ? Stopped() : Stopped().ClaimRecorded(claimed), asOf);
        Assert.Equal(["2025-12-10 if the notice of cessation of 2025-11-10 ends the time before the acceptance"], last.Lines());
        Assert.Equal(("2025-12-10", expected), (last.Plan(), last.Standing));
        Assert.Null(last.Band!.Latest);
        Assert.True(last.Says("whatever completes it"));
        // Accepted on 1 March 2026: ninety days are 30 May, and the notice takes them away on one reading only.
        var accepted = Last(Stopped().Completed("2026-03-01", CompletionTheory.Acceptance), "2026-03-16");
        Assert.Equal(["2025-12-10", "2026-05-30"], accepted.DaysOf());
        Assert.Equal(Standing.InDoubt, accepted.Standing);
    }

    // One without the thirty days, or on a work that is finished when it is finished, adds nothing here.
    [Fact]
    [Proves("Civ. Code § 8188(a)")]
    public void One_that_takes_no_effect_ends_nothing_before_the_acceptance()
    {
        var job = Job(true).LaborCeased("2025-10-22").OwnerRecorded("2025-11-10", OwnerNotice.Cessation, states: "2025-11-01")
            .OwnerToldUs("2025-11-12", OwnerNotice.Cessation);
        Assert.Empty(Last(job, "2026-06-01").Readings);
    }

    private static CompletionReadings Read(string? by, bool? takesOver, string completed)
    {
        var job = new JobBuilder().Work(w => w with { SubjectToAcceptanceBy = by, PublicTakesOver = takesOver });
        foreach (var entry in completed.Split(", ", StringSplitOptions.RemoveEmptyEntries))
        {
            var words = entry.Split(' ');
            job.Completed(words[1], Enum.Parse<CompletionTheory>(words[0]), contested: words is [_, _, "contested"]);
        }

        return CompletionDay.Of(job.FactsOn("2026-09-01"), []);
    }

    // While the authority's acceptance has not come, or somebody disputes it, or nobody knows its day, the work may still wait for it; but
    // not where the authority only approves (El Dorado), nor where nobody is to accept.
    [Theory]
    [InlineData(null, null, "", false)]
    [InlineData(null, true, "", false)]
    [InlineData("City", false, "", false)]
    [InlineData("City", null, "", true)]
    [InlineData("City", true, "", true)]
    [InlineData("City", null, "Actual 2026-05-04", true)]
    [InlineData("City", true, "Actual 2026-05-04", true)]
    [InlineData("City", null, "Acceptance 2026-05-04", false)]
    [InlineData("City", true, "Acceptance 2026-05-04", false)]
    [InlineData("City", null, "Acceptance 2026-05-04..2026-05-06", false)]
    [InlineData("City", null, "Acceptance 2026-05-04 contested", true)]
    [InlineData("City", true, "Acceptance 2026-05-04 contested", true)]
    [InlineData("City", null, "Acceptance ?", true)]
    [InlineData("City", null, "Actual 2026-04-01, Acceptance 2026-05-04", false)]
    [InlineData("City", true, "Acceptance 2026-05-04 contested, Acceptance 2026-06-01", false)]
    [Proves("Civ. Code § 8180(b)")]
    public void The_work_may_wait_until_an_acceptance_has_come_that_nobody_disputes(string? by, bool? takesOver, string completed,
        bool waits)
    {
        var read = Read(by, takesOver, completed);
        Assert.Equal(waits, read.MayStillWait);
        if (waits)
            Assert.False(read.EndFirm);
    }

    // Accepted and finished: one of the two completed it, though the file does not say which counts. Each must hold by itself.
    [Theory]
    [InlineData("City", null, "Actual 2026-05-04, Acceptance 2026-08-03", true)]
    [InlineData("City", null, "Acceptance 2026-08-03", false)]
    [InlineData("City", null, "Actual 2026-05-04", false)]
    [InlineData("City", null, "Actual 2026-05-04 contested, Acceptance 2026-08-03", false)]
    [InlineData("City", null, "Actual 2026-05-04, Acceptance 2026-08-03 contested", false)]
    [InlineData("City", null, "Occupation 2026-05-04, Acceptance 2026-08-03", false)]
    [InlineData("City", null, "Actual 2026-05-04, Occupation 2026-05-04", false)]
    [InlineData("City", true, "Actual 2026-05-04, Acceptance 2026-08-03", false)]
    [InlineData("City", false, "Actual 2026-05-04, Acceptance 2026-08-03", false)]
    [InlineData(null, null, "Actual 2026-05-04, Acceptance 2026-08-03", false)]
    [Proves("Civ. Code § 8180(b)")]
    public void Where_it_was_both_finished_and_accepted_it_is_complete_on_either_reading(string? by, bool? takesOver, string completed,
        bool either)
    {
        var read = Read(by, takesOver, completed);
        Assert.Equal(either, read.IsCertainEitherWay);
        Assert.Equal(either || (takesOver == true && by is not null)
            || (completed.StartsWith("Actual 2026-05-04,", StringComparison.Ordinal) && (by is null || takesOver == false)), read.EndFirm);
    }

    // Where the public may take the work over whatever else completes it is no more than asserted, and no less doubtful than it was; the
    // acceptance is the other reading. A file that names no authority waits for none, whatever it says of a taking over.
    [Theory]
    [InlineData("City", null, "Actual 2026-05-04", "actual completion, should the approval be no acceptance Asserted")]
    [InlineData("City", null, "Actual 2026-05-04 contested", "actual completion, should the approval be no acceptance Contested")]
    [InlineData("City", null, "Acceptance 2026-05-04", "completion by acceptance Asserted")]
    [InlineData("City", null, "Acceptance 2026-05-04 contested", "completion by acceptance Contested")]
    [InlineData("City", true, "Acceptance 2026-05-04", "completion by acceptance Certain")]
    [InlineData("City", true, "Acceptance 2026-05-04 contested", "completion by acceptance Contested")]
    [InlineData("City", true, "Actual 2026-05-04", "")]
    [InlineData("City", false, "Actual 2026-05-04", "actual completion Certain")]
    [InlineData("City", false, "Acceptance 2026-05-04", "")]
    [InlineData(null, true, "Actual 2026-05-04", "actual completion Certain")]
    [InlineData(null, true, "Acceptance 2026-05-04", "completion by acceptance Asserted")]
    [InlineData(null, null, "Acceptance 2026-05-04 contested", "completion by acceptance Contested")]
    [Proves("Civ. Code § 8180(b)")]
    public void Each_reading_is_as_firm_as_the_acceptance_lets_it_be(string? by, bool? takesOver, string completed, string expected) =>
        Assert.Equal(expected, string.Join(", ", Read(by, takesOver, completed).Open.Select(r => $"{r.Name} {r.Firmness}")));
}
