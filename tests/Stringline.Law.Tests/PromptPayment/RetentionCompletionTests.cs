using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>
/// Completion for the retention of a public work (Pub. Contract Code § 7107(c)): use with cessation of labor (1), acceptance (2), a hundred
/// idle days for causes beyond the contractor's control (3), thirty with a recorded notice (4). The first that is sure counts.
/// </summary>
public sealed class RetentionCompletionTests
{
    private const string UseAsked = "beyond testing and startup";
    private const string LaborAsked = "(labor-ceased)";
    private const string AcceptanceAsked = "Did the public entity accept";
    private const string CauseAsked = "beyond the contractor's control";

    private static JobBuilder Prime() => new JobBuilder().PublicWork().Work(w => w with { Body = PublicBody.Local })
        .Role(ClaimantRole.DirectContractor, "city").Licensed("2012-06-01..").Price(44000m)
        .Furnished("2025-08-05", 44000m, until: "2025-10-09").Retained("2025-09-10", 2200m);

    private static Finding? Due(JobBuilder job, string asOf = "2026-06-15") => job.On(asOf).Find("retention.due");

    private static JobBuilder Accepted(JobBuilder job, string on, bool contested = false) =>
        job.Completed(on, CompletionTheory.Acceptance, contested);

    private static JobBuilder Used(JobBuilder job, string on, bool contested = false) =>
        job.Completed(on, CompletionTheory.Occupation, contested);

    private static void IsDue(JobBuilder job, string day, string? asks, string asOf = "2026-06-15")
    {
        var due = Due(job, asOf)!;
        Assert.Equal([day], due.DaysOf());
        Assert.Equal(asks is null ? Standing.Open : Standing.InDoubt, due.Standing);
        Assert.True(asks is null ? due.Questions.Count == 0 : due.Asks(asks));
    }

    // Paragraph (1). Sixty days after 22 October are Sunday 21 December, after 24 October Tuesday the 23rd, after 21 October Saturday the
    // 20th.
    [Theory]
    [InlineData("2025-10-22", "2025-10-10", null, "2025-12-22", null)]
    [InlineData("2025-10-22", "2025-10-24", null, "2025-12-23", null)]
    [InlineData("2025-10-20..2025-10-24", "2025-10-21..2025-10-22", null, "2025-12-23", null)]
    [InlineData("2025-10-20..2025-10-22", "2025-10-21..2025-10-24", null, "2025-12-23", null)]
    [InlineData("2025-10-22", "2025-10-10", "2025-10-22", "2025-12-22", LaborAsked)]
    [InlineData("2025-10-22", "2025-10-10", "2025-10-23", "2025-12-22", UseAsked)]
    [InlineData("2025-10-20..2025-10-24", "2025-10-10", "2025-10-24", "2025-12-23", LaborAsked)]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void Use_completes_with_the_cessation_of_labor_that_lasts_through_it(string used, string ceased, string? resumed, string due,
        string? asks) =>
        IsDue(Used(Prime().LaborCeased(ceased, resumed), used), due, asks);

    [Fact]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void What_is_contested_is_asked_as_what_it_is()
    {
        // A hundred idle days, in doubt as well, end on 18 January.
        IsDue(Used(Prime().LaborCeased("2025-10-10"), "2025-10-22", contested: true), "2025-12-22", UseAsked, "2026-01-17");
        IsDue(Used(Prime().LaborCeased("2025-10-10"), "2025-10-22", contested: true), "2026-03-19", CauseAsked);
        IsDue(Accepted(Prime(), "2025-10-22", contested: true), "2025-12-22", AcceptanceAsked);
        // A stop that ended before the use says nothing; the next one does.
        IsDue(Used(Prime().LaborCeased("2025-10-10", "2025-10-15").LaborCeased("2025-10-17"), "2025-10-22"), "2025-12-22", null);
        // A day that nobody knows completes nothing.
        Assert.Null(Due(Accepted(Prime(), "?")));
    }

    // Sixty days after 12 November: Sunday 11 January.
    [Fact]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void The_first_that_is_sure_counts_and_where_none_is_the_last()
    {
        IsDue(Used(Accepted(Prime(), "2025-10-22").LaborCeased("2025-10-10"), "2025-11-12"), "2025-12-22", null);
        IsDue(Used(Accepted(Prime(), "2025-11-12").LaborCeased("2025-10-10"), "2025-10-22"), "2025-12-22", null);
        IsDue(Used(Accepted(Prime(), "2025-11-12"), "2025-10-22"), "2026-01-12", null);
        IsDue(Used(Accepted(Prime(), "2025-10-22"), "2025-11-12"), "2025-12-22", null);
        IsDue(Used(Accepted(Prime(), "2025-11-12", contested: true), "2025-10-22"), "2026-01-12", AcceptanceAsked);
        IsDue(Used(Accepted(Prime(), "2025-10-22", contested: true), "2025-11-12"), "2026-01-12", LaborAsked);
        // Days in doubt are compared by their latest.
        IsDue(Accepted(Accepted(Prime(), "2025-10-20..2025-10-22"), "2025-10-21..2025-11-12"), "2025-12-22", null);
        IsDue(Used(Accepted(Prime(), "2025-10-20..2025-11-12", contested: true), "2025-10-22"), "2026-01-12", AcceptanceAsked);
        IsDue(Used(Accepted(Prime(), "2025-10-22..2025-10-24", contested: true), "2025-10-23..2025-11-12"), "2026-01-12", LaborAsked);
        IsDue(Accepted(Accepted(Prime(), "2025-10-20..2025-11-12"), "2025-10-22"), "2025-12-22", null);
    }

    // Paragraph (4). Ceased on 20 October: the thirtieth day is 19 November, 60 days later Sunday 18 January, the Monday a holiday.
    [Theory]
    [InlineData("2025-10-20", null, OwnerNotice.Cessation, "2025-11-10", "2026-01-20")]
    [InlineData("2025-10-20", "2025-11-20", OwnerNotice.Cessation, "2025-11-10", "2026-01-20")]
    [InlineData("2025-10-20", "2025-11-19", OwnerNotice.Cessation, "2025-11-10", null)]
    [InlineData("2025-10-20", null, OwnerNotice.Cessation, "2025-10-20", "2026-01-20")]
    [InlineData("2025-10-20", null, OwnerNotice.Cessation, "2025-11-24", "2026-01-23")]
    [InlineData("2025-10-20", null, OwnerNotice.Cessation, "?", null)]
    [InlineData("2025-10-20..2025-10-25", null, OwnerNotice.Cessation, "2025-11-10", "2026-01-23")]
    [InlineData("2025-10-20..2025-10-25", "2025-11-24", OwnerNotice.Cessation, "2025-11-10", null)]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void Thirty_idle_days_complete_with_a_recorded_notice(string ceased, string? resumed, OwnerNotice notice, string recorded,
        string? due)
    {
        // Before a hundred idle days have passed nothing else completes it.
        var found = Due(Prime().LaborCeased(ceased, resumed).OwnerRecorded(recorded, notice), "2026-01-27");
        Assert.Equal(due, found?.DaysOf().Single());
        Assert.True(found is null || found.Says("(paragraph (4))"));
        Assert.True(found is null or { Standing: Standing.Open, Questions.Count: 0 });
    }

    [Fact]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void A_notice_counts_only_after_the_stop_and_if_it_is_effective_and_the_days_are_over()
    {
        var job = Prime().LaborCeased("2025-10-20").OwnerRecorded("2025-11-10", OwnerNotice.Cessation);
        Assert.Null(Due(job, "2025-11-18"));
        Assert.NotNull(Due(job, "2025-11-19"));
        Assert.Null(Due(Prime().LaborCeased("2025-10-20").OwnerRecorded("2025-10-19", OwnerNotice.Cessation), "2026-01-27"));
        Assert.NotNull(Due(Prime().LaborCeased("2025-10-20").OwnerRecorded("2025-10-18..2025-10-20", OwnerNotice.Cessation), "2026-01-27"));
        Assert.NotNull(Due(Prime().LaborCeased("2025-10-20..2025-10-25").OwnerRecorded("2025-10-22", OwnerNotice.Cessation), "2026-01-27"));
        // The thirtieth day may be as late as 24 November.
        Assert.Null(Due(Prime().LaborCeased("2025-10-20..2025-10-25").OwnerRecorded("2025-11-10", OwnerNotice.Cessation), "2025-11-23"));
        Assert.NotNull(Due(Prime().LaborCeased("2025-10-20..2025-10-25").OwnerRecorded("2025-11-10", OwnerNotice.Cessation), "2025-11-24"));
        Assert.Null(Due(Prime().LaborCeased("2025-10-20").OwnerRecorded("2025-11-10", OwnerNotice.Cessation, heldIneffective: true),
            "2026-01-27"));
    }

    // Paragraph (3). A hundred idle days after 20 October end on 28 January, after 25 October on 2 February.
    [Theory]
    [InlineData("2025-10-20", null, "2026-01-27", false)]
    [InlineData("2025-10-20", null, "2026-01-28", true)]
    [InlineData("2025-10-20", "2026-01-28", "2026-02-10", false)]
    [InlineData("2025-10-20", "2026-01-29", "2026-02-10", true)]
    [InlineData("2025-10-20..2025-10-25", null, "2026-02-01", false)]
    [InlineData("2025-10-20..2025-10-25", null, "2026-02-02", true)]
    [InlineData("2025-10-20..2025-10-25", "2026-02-02", "2026-02-10", false)]
    [InlineData("2025-10-20..2025-10-25", "2026-02-03", "2026-02-10", true)]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void A_hundred_idle_days_may_complete_if_labor_did_not_resume_in_them(string ceased, string? resumed, string asOf, bool found)
    {
        var due = Due(Prime().LaborCeased(ceased, resumed), asOf);
        Assert.Equal(found, due is not null);
        Assert.True(due is null || due.Asks(CauseAsked));
    }

    // A notice of completion that the entity recorded says itself when the work was complete.
    [Fact]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void The_entitys_own_notice_of_completion_completes_it() =>
        IsDue(Prime().OwnerRecorded("2025-10-24", OwnerNotice.Completion, states: "2025-10-22"), "2025-12-22", null);
}
