using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// The time to give a stop payment notice on public work (Civ. Code § 9356): 30 days after a notice is recorded, else 90 after completion,
/// on every reading that the file allows. Entry 0 is the furnishing, entry 1 the preliminary notice.
/// </summary>
public sealed class TimeToGiveTests
{
    private static JobBuilder Job() =>
        new JobBuilder().PublicWork().Furnished("2025-08-05", 6430m).Notice("2025-08-14", Manner.CertifiedMail, "city", "direct");

    private static JobBuilder Accepted(string on = "2025-10-22", bool contested = false) =>
        Job().Completed(on, CompletionTheory.Acceptance, contested).IndexSearched("2026-01-05");

    private static Finding Last(JobBuilder job, string asOf = "2026-01-12") => job.On(asOf).Get("stop-payment-notice.last-day");

    // 90 days after 22 October 2025 are 20 January 2026, after 26 October 24 January.
    [Fact]
    [Proves("Civ. Code § 9356(b)")]
    public void Accepted_on_a_day_in_doubt_each_end_has_its_ninety_days()
    {
        var last = Last(Accepted("2025-10-22..2025-10-26"));
        Assert.Equal(["2026-01-20 acceptance by the public entity", "2026-01-24 acceptance by the public entity, at the latest"],
            last.Lines());
        Assert.Equal([2], last.HangsOn("Civ. Code § 9200(a)"));
        Assert.Equal(["2026-01-20 acceptance by the public entity"], Last(Accepted()).Lines());
    }

    // Recorded between 27 and 30 October: 30 days later are 26 to 29 November. It surely counts, so the ninety days are gone.
    [Fact]
    [Proves("Civ. Code § 9356(a)")]
    public void Recorded_on_a_day_in_doubt_each_end_has_its_thirty_days()
    {
        var last = Last(Accepted().OwnerRecorded("2025-10-27..2025-10-30", states: "2025-10-22"), "2025-11-10");
        Assert.Equal(["2025-11-26 30 days after the notice of completion of 2025-10-27",
            "2025-11-29 30 days after the notice of completion of 2025-10-30"], last.Lines());
        Assert.Contains(4, last.HangsOn("Civ. Code § 9356(a)"));
        Assert.True(last.Says("A notice of completion was recorded between 2025-10-27"));
    }

    // Whether a recorded notice counts hangs on its form, and on whether it came within 15 days after completion (Civ. Code § 9204(a)): on
    // every day on which the work may have been completed, and every day on which it may have been recorded. Else the ninety days stand
    // beside.
    [Theory]
    [InlineData("2025-10-22", "2025-10-29", null, new[] { "2025-11-28" })]
    [InlineData("2025-10-22", "2025-10-29", "its verification", new[] { "2025-11-28", "2026-01-20" })]
    [InlineData("2025-10-22", "2025-11-06", null, new[] { "2025-12-06" })] // the fifteenth day
    [InlineData("2025-10-22", "2025-11-07", null, new[] { "2025-12-07", "2026-01-20" })]
    [InlineData("2025-10-22", "2025-11-05..2025-11-07", null, new[] { "2025-12-05", "2025-12-07", "2026-01-20" })]
    // before completion it is none
    [InlineData("2025-10-22", "2025-10-21..2025-10-24", null, new[] { "2025-11-20", "2025-11-23", "2026-01-20" })]
    // late for the 10th to the 13th
    [InlineData("2025-10-10..2025-10-22", "2025-10-29", null, new[] { "2025-11-28", "2026-01-08", "2026-01-11" })]
    [InlineData("2025-10-22..2025-10-30", "2025-10-29", null, new[] { "2025-11-28", "2026-01-28" })] // early for the 30th
    [Proves("Civ. Code § 9356(a)")]
    [Proves("Civ. Code § 9204(a)")]
    public void A_recorded_notice_replaces_the_ninety_days_only_where_it_surely_counts(string accepted, string recorded, string? lacks,
        string[] expected) =>
        Assert.Equal(expected, Last(Accepted(accepted).OwnerRecorded(recorded, states: "2025-10-22", lacks: lacks), "2025-11-10").DaysOf());

    // Title 3 of the public works knows no notice for one contract: it may end the time, and it may be none.
    [Theory]
    [InlineData(OwnerNotice.Completion)]
    [InlineData(OwnerNotice.Acceptance)]
    [InlineData(OwnerNotice.Cessation)]
    [Proves("Civ. Code § 9356(a)")]
    public void One_that_names_one_contract_leaves_the_ninety_days_beside(OwnerNotice notice)
    {
        var last = Last(Accepted().Add(i => new LaborCeased { Index = i, On = When("2025-09-15") })
            .OwnerRecorded("2025-10-29", notice, "2025-10-22", "direct"));
        Assert.Equal("2025-11-28", last.DaysOf()[0]);
        Assert.Equal("2026-01-20", last.DaysOf()[^1]);
        Assert.Equal(Standing.InDoubt, last.Standing);
        Assert.True(last.Asks("(owner-recorded.contractOf)"));
    }

    [Fact]
    [Proves("Civ. Code § 9356(a)")]
    public void One_settled_to_have_no_effect_is_passed_over()
    {
        var last = Last(Accepted().OwnerRecorded("2025-10-29", states: "2025-10-22", heldIneffective: true));
        Assert.Equal(["2026-01-20"], last.DaysOf());
        Assert.Equal([4], last.EntriesOf("It is settled that the notice of completion"));
        Assert.Empty(last.HangsOn("Civ. Code § 9356(a)"));
    }

    // Two completions, the first in dispute: the notice is within 15 days of the second alone. If that is the one, the notice counts and
    // its ninety days are gone; if the first is, the notice does nothing.
    [Fact]
    [Proves("Civ. Code § 9356(a)")]
    public void A_recorded_notice_replaces_the_ninety_days_of_each_completion_for_which_it_surely_counts() =>
        Assert.Equal(["2025-11-28", "2025-12-30"],
            Last(Accepted("2025-10-01", contested: true).Completed("2025-10-22", CompletionTheory.Acceptance)
            .OwnerRecorded("2025-10-29", states: "2025-10-22"), "2025-11-10").DaysOf());

    // Labor ceased on 5 August 2025. Recorded on 7 October the notice of cessation has its thirty idle days (Civ. Code § 9202(a)) and ends
    // the time on 6 November; recorded on 2 September it has not. Sixty idle days are 4 October, ninety more 2 January.
    [Theory]
    [InlineData("2025-08-05", "2025-10-07", new[] { "2025-11-06 30 days after the notice of cessation of 2025-10-07" })]
    [InlineData("2025-08-05", "2025-09-04",
        new[] { "2025-10-04 30 days after the notice of cessation of 2025-09-04", "2026-01-02 60 days without labor" })]
    [InlineData(null, "2025-10-07",
        new[] { "2025-11-03 acceptance unknown: not before the last work we know of",
            "2025-11-06 30 days after the notice of cessation of 2025-10-07" })]
    [Proves("Civ. Code § 9356(a)")]
    public void A_notice_of_cessation_counts_surely_where_labor_surely_had_stopped(string? ceased, string recorded, string[] lines)
    {
        var job = Job().IndexSearched("2025-11-03");
        if (ceased is not null)
            job.LaborCeased(ceased, unfinished: true);
        Assert.Equal(lines, Last(job.OwnerRecorded(recorded, OwnerNotice.Cessation), "2025-11-03").Lines());
    }

    // One that surely counts ends the time whatever is known of completion; one recorded before the thirty idle days had run, or of which
    // no stop is known, is a day to plan on, and no right is lost by it.
    [Theory]
    [InlineData("2025-08-05", "2025-10-07", "2025-11-06", Standing.Open)]
    [InlineData("2025-08-05", "2025-10-07", "2025-11-11", Standing.Lost)]
    [InlineData("2025-08-05", "2025-09-04", "2026-01-12", Standing.InDoubt)]
    [InlineData(null, "2025-10-07", "2026-01-12", Standing.InDoubt)]
    [Proves("Civ. Code § 9356(a)")]
    public void Only_a_notice_of_cessation_that_surely_counts_takes_the_right(string? ceased, string recorded, string asOf,
        Standing expected)
    {
        var job = Job().IndexSearched("2025-11-03");
        if (ceased is not null)
            job.LaborCeased(ceased, unfinished: true);
        Assert.Equal(expected, Last(job.OwnerRecorded(recorded, OwnerNotice.Cessation), asOf).Standing);
    }

    // An acceptance in dispute of 8 August: its ninety days end on 6 November as well, and both are named.
    [Fact]
    [Proves("Civ. Code § 9356(b)")]
    public void Ninety_days_that_end_with_the_thirty_are_named_beside_them() =>
        Assert.Equal(["2025-11-06 30 days after the notice of cessation of 2025-10-07", "2025-11-06 acceptance by the public entity"],
            Last(Job().LaborCeased("2025-08-05", unfinished: true).Completed("2025-08-08", CompletionTheory.Acceptance, contested: true)
                .IndexSearched("2025-11-03")
                .OwnerRecorded("2025-10-07", OwnerNotice.Cessation), "2025-11-03").Lines());

    [Fact]
    [Proves("Civ. Code § 9356(b)")]
    public void The_caution_of_idle_labor_hangs_on_the_last_stop()
    {
        var last = Last(Job().LaborCeased("2025-08-12", "2025-08-20").LaborCeased("2025-08-29")
            .Work(w => w with { StateContractAct = true }), "2025-12-01");
        Assert.Equal([3], last.EntriesOf("labor ceased 2025-08-29"));
        Assert.False(Last(Job().LaborCeased("2025-08-29"), "2025-12-01").Says("from the idleness"));
    }

    // A notice of completion recorded for one contract alone is no notice of the whole work: one of that may have been recorded unseen.
    [Theory]
    [InlineData("direct", true)]
    [InlineData(null, false)]
    [Proves("Civ. Code § 9204(a)")]
    public void A_notice_of_one_contract_leaves_another_to_be_looked_for(string? contractOf, bool asks)
    {
        var last = Last(Job().Completed("2025-10-22", CompletionTheory.Acceptance)
            .OwnerRecorded("2025-10-29", states: "2025-10-22", contractOf: contractOf), "2025-11-10");
        Assert.Equal(asks, last.Asks("(index-searched)"));
        Assert.Equal(asks, last.Says("from 2025-10-22 (Wed) to 2025-11-06 (Thu)"));
    }

    // Accepted between the 20th and the 22nd: recorded from the 20th, 19 November, to 6 November, 6 December. A search that may have been
    // made on the 6th shows nothing of that day.
    [Theory]
    [InlineData("2025-11-06..2025-11-10", new[] { "2025-11-19", "2025-12-06", "2026-01-18", "2026-01-20" })]
    [InlineData("2025-11-07..2025-11-10", new[] { "2026-01-18", "2026-01-20" })]
    [InlineData("?", new[] { "2025-11-19", "2025-12-06", "2026-01-18", "2026-01-20" })]
    [Proves("Civ. Code § 9356(a)")]
    public void A_search_settles_it_only_when_it_was_surely_after_the_last_day_for_recording(string searched, string[] expected) =>
        Assert.Equal(expected, Last(Job().Completed("2025-10-20..2025-10-22", CompletionTheory.Acceptance).IndexSearched(searched),
            "2025-11-10").DaysOf());
}
