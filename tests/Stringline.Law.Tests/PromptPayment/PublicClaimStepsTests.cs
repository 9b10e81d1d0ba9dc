using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>A claim against a public entity, paper by paper: which paper counts for which step, and days that are in doubt.</summary>
public sealed class PublicClaimStepsTests
{
    private static JobBuilder Job(string? made = "2025-07-14", PublicBody? body =
        PublicBody.Local, ClaimantRole role = ClaimantRole.DirectContractor) => new JobBuilder().PublicWork()
        .Role(role, role == ClaimantRole.DirectContractor ? "city" : "direct").Licensed("2012-06-01..").Work(w => w with { Body = body })
        .Contract(c => c with { On = made is null ? null : Day(made), Price = 88_000m })
        .Furnished("2025-08-05", 88_000m);

    private static JobBuilder Claim(JobBuilder job, string sent =
        "2026-06-01", string? received = "2026-06-03", decimal? amount = 18_400m) =>
        job.Add(i => new DisputeClaimSent { Index = i, On = When(sent), Received = received is null
            ? null : Day(received), Amount = amount, Manner = Manner.CertifiedMail });

    private static JobBuilder Answered(JobBuilder job, string on, decimal? undisputed = null) =>
        job.Add(i => new DisputeClaimAnswered { Index = i, On = When(on), Undisputed = undisputed });

    private static JobBuilder Demanded(JobBuilder job, string on) =>
        job.Add(i => new ConferenceDemanded { Index = i, On = When(on), Manner = Manner.CertifiedMail });

    private static JobBuilder Held(JobBuilder job, string on) => job.Add(i => new ConferenceHeld { Index = i, On = When(on) });

    private static Finding? Find(JobBuilder job, string id, string asOf = "2026-11-25") => job.On(asOf).Find($"dispute-claim.{id}");

    // Pub. Contract Code § 9204(d)(1): the statement answers a claim, and so cannot come before it.
    [Theory]
    [InlineData("2026-06-01", "2026-05-31", Standing.Open)]
    [InlineData("2026-06-01", "2026-06-01", Standing.Done)]
    [InlineData("2026-06-01", "2026-05-31..2026-06-01", Standing.Done)]
    [InlineData("2026-06-01..2026-06-02", "2026-06-01", Standing.Done)]
    [InlineData("2026-06-01", "?", Standing.Open)]
    [Proves("Pub. Contract Code § 9204(d)(1)")]
    public void Only_an_answer_that_may_be_later_than_the_claim_answers_it(string sent, string answered, Standing expected)
    {
        var statement = Find(Answered(Claim(Job(), sent), answered), "entitys-statement")!;
        Assert.Equal(expected, statement.Standing);
        Assert.Equal(expected == Standing.Done, statement.Says("Answered"));
    }

    // Sent between 10 and 13 April, the receipt not told: 45 days after the 13th are 28 May. The claimant's own 15 days are planned from
    // the
    // 45th day after the 10th, 25 May: 9 June (§ 20104.2(d)).
    [Fact]
    [Proves("Pub. Contract Code § 9204(d)(1)")]
    [Proves("Pub. Contract Code § 20104.2(d)")]
    public void A_sending_in_doubt_is_taken_late_for_the_entity_and_early_for_the_claimant()
    {
        var job = Claim(Job(), "2026-04-10..2026-04-13", received: null);
        Assert.Equal(["2026-05-28"], Find(job, "entitys-statement", "2026-05-20")!.DaysOf());
        Assert.Equal(["2026-06-09 15 days after the statement was due"], Find(job, "conference-last-day", "2026-05-20")!.Lines());
        Assert.Equal(Standing.NotYet, Find(job, "conference-last-day", "2026-05-25")!.Standing);
        Assert.Equal(Standing.Open, Find(job, "conference-last-day", "2026-05-26")!.Standing);
    }

    // Received 3 June: due 18 July for the 15 days, which are never rolled; 2 August is a Sunday. An answer moves them to its earliest day.
    [Theory]
    [InlineData(null, "2026-08-02 15 days after the statement was due", Standing.NotYet)]
    [InlineData("2026-06-20", "2026-07-05 15 days after the statement", Standing.Open)]
    [InlineData("2026-06-20..2026-06-25", "2026-07-05 15 days after the statement", Standing.Open)]
    [InlineData("2026-05-20", "2026-08-02 15 days after the statement was due", Standing.NotYet)]
    [Proves("Pub. Contract Code § 20104.2(d)")]
    public void The_fifteen_days_run_from_the_earliest_day_of_the_answer(string? answered, string reading, Standing expected)
    {
        var job = Claim(Job());
        var conference = Find(answered is null ? job : Answered(job, answered), "conference-last-day", "2026-07-01")!;
        Assert.Equal([reading], conference.Lines());
        Assert.Equal(expected, conference.Standing);
    }

    [Theory]
    [InlineData("2026-05-31", Standing.NotYet)]
    [InlineData("2026-06-01", Standing.Kept)]
    [InlineData("2026-06-20", Standing.Kept)]
    [Proves("Pub. Contract Code § 9204(d)(2)")]
    public void A_demand_for_a_conference_follows_the_claim(string demanded, Standing expected)
    {
        var conference = Find(Demanded(Claim(Job()), demanded), "conference-last-day", "2026-07-01")!;
        Assert.Equal(expected, conference.Standing);
        Assert.Equal(expected == Standing.Kept, conference.Says("Demanded"));
        Assert.Equal(expected == Standing.Kept, Find(Demanded(Claim(Job()), demanded), "conference", "2026-07-01") is not null);
    }

    [Fact]
    [Proves("Pub. Contract Code § 20104.2(d)")]
    public void A_sum_that_is_not_told_is_asked_since_the_days_are_those_of_claims_up_to_375_000_dollars()
    {
        var question = Assert.Single(Find(Claim(Job(), amount: null), "conference-last-day")!.Questions);
        Assert.EndsWith("(dispute-claim-sent.amount)", question.Text, StringComparison.Ordinal);
        Assert.IsType<DisputeClaimSent>(question.Corrects);
        Assert.Empty(Find(Claim(Job()), "conference-last-day")!.Questions);
    }

    // § 9204(d)(2): demanded Monday 5 October, the conference is scheduled by Wednesday 4 November. Held Friday 6 November, ten business
    // days without Veterans Day end on Monday 23 November. The section as read ends with 2026.
    [Theory]
    [InlineData("2026-11-04", null, "conference", "2026-11-04", Standing.NotYet)]
    [InlineData("2026-11-05", null, "conference", "2026-11-04", Standing.Open)]
    [InlineData("2026-12-31", null, "conference", "2026-11-04", Standing.Open)]
    [InlineData("2027-01-01", null, "conference", "2026-11-04", Standing.InDoubt)]
    [InlineData("2026-11-05", "2026-10-04", "conference", "2026-11-04", Standing.Open)]
    [InlineData("2026-11-23", "2026-11-06", "second-statement", "2026-11-23", Standing.NotYet)]
    [InlineData("2026-11-24", "2026-11-06", "second-statement", "2026-11-23", Standing.Open)]
    [InlineData("2027-01-01", "2026-11-06", "second-statement", "2026-11-23", Standing.InDoubt)]
    [InlineData("2026-11-24", "2026-10-05", "second-statement", "2026-10-20", Standing.Open)]
    [Proves("Pub. Contract Code § 9204(d)(2)")]
    [Proves("Pub. Contract Code § 9204(i)")]
    public void The_conference_and_the_second_statement_have_days_of_their_own(string asOf, string? held, string id, string day,
        Standing expected)
    {
        var job = Demanded(Claim(Job()), "2026-10-05");
        var step = Find(held is null ? job : Held(job, held), id, asOf)!;
        Assert.Equal([day], step.DaysOf());
        Assert.Equal(expected, step.Standing);
    }

    // § 9204(d)(1) and (4): answered between 8 and 10 July, the part not disputed is due 60 days after the 10th, on 8 September, and what
    // came from the 8th on may be for it. 7 percent of 7,300.00 is 1.40 a day.
    [Theory]
    [InlineData("0", null, null, null)]
    [InlineData("0.50", null, Standing.Open, "0.00")]
    [InlineData("7300", null, Standing.Open, "2.80")]
    [InlineData("7300", "2026-07-07", Standing.Open, "2.80")]
    [InlineData("7300", "2026-07-08", Standing.Done, "0")]
    [InlineData("7300", "2026-09-09", Standing.Open, "1.40")]
    [Proves("Pub. Contract Code § 9204(d)(1)")]
    [Proves("Pub. Contract Code § 9204(d)(4)")]
    public void What_is_not_disputed_is_paid_or_bears_interest(string undisputed, string? paid, Standing? expected, string? interest)
    {
        var job = Answered(Claim(Job()), "2026-07-08..2026-07-10",
            decimal.Parse(undisputed, System.Globalization.CultureInfo.InvariantCulture));
        var part = Find(paid is null ? job : job.Paid(paid, 7_300m), "undisputed-part", "2026-09-10");
        Assert.Equal(expected, part?.Standing);
        Assert.Equal(interest is null ? null : decimal.Parse(interest, System.Globalization.CultureInfo.InvariantCulture), part?.Amount);
        Assert.Equal(expected is null ? [] : ["2026-09-08"], part?.DaysOf() ?? []);
        Assert.Equal(expected is not null, part?.Sections.Contains("Pub. Contract Code § 9204(d)(4)") ?? false);
        if (expected is not null)
            Assert.DoesNotContain("Pub. Contract Code § 9204(d)(4)",
                Find(Answered(Claim(Job()), "2026-07-10", 7_300m), "undisputed-part", "2026-09-08")!.Sections);
    }

    // § 20104.2(a): on or before the date of final payment. While § 9204 governs, a later claim is in doubt and not lost.
    [Theory]
    [InlineData("2025-07-14", "2026-06-01..2026-06-05", "2026-06-01", "2026-11-25", Standing.Kept)]
    [InlineData("2025-07-14", "2026-05-28..2026-06-05", "2026-06-01", "2026-11-25", Standing.InDoubt)]
    [InlineData("2016-12-31", "2026-05-28..2026-06-05", "2026-06-01", "2026-11-25", Standing.InDoubt)]
    [InlineData("2016-12-31", "2026-05-27..2026-05-29", "2026-06-01", "2026-11-25", Standing.Lost)]
    [InlineData("2025-07-14", "2026-05-27..2026-05-29", "2026-06-01", "2026-11-25", Standing.InDoubt)]
    [InlineData("2016-12-31", "2026-11-24", null, "2026-11-24", Standing.Open)]
    [InlineData("2016-12-31", "2026-11-24", null, "2026-11-25", Standing.Lost)]
    [InlineData("2025-07-14", "2026-11-24", null, "2026-11-25", Standing.InDoubt)]
    [Proves("Pub. Contract Code § 20104.2(a)")]
    public void A_claim_is_filed_by_the_day_of_final_payment(string made, string paid, string? claimed, string asOf, Standing expected)
    {
        var job = Job(made).Disputed("2026-05-20", 500m).Add(i => new FinalPayment { Index = i, On = When(paid) });
        var filing = Find(claimed is null ? job : Claim(job, claimed), "filing-last-day", asOf)!;
        Assert.Equal(expected, filing.Standing);
        Assert.Equal(paid.Split("..").Order(), filing.DaysOf());
        Assert.Empty(filing.Questions);
        Assert.Equal(claimed is not null, filing.Says("Sent"));
    }

    // § 10240.1: served between 5 and 7 October 2026, so 3 to 5 January; a late one is not lost, since some claims are free of the limit.
    [Fact]
    [Proves("Pub. Contract Code § 10240.1")]
    public void A_final_decision_of_a_day_in_doubt_is_planned_on_its_earliest()
    {
        var job = Claim(Job(body: PublicBody.State)).Add(i => new FinalDecisionServed { Index = i, On = When("2026-10-05..2026-10-07") });
        var last = Find(job, "arbitration-last-day")!;
        Assert.Equal(["2027-01-03 final decision served on its earliest day", "2027-01-05 final decision served on its latest day"],
            last.Lines());
        Assert.Equal((Standing.Open, "2026-12-31"), (last.Standing, last.Plan()));
        Assert.Equal(Standing.InDoubt, Find(job, "arbitration-last-day", "2027-06-01")!.Standing);
        Assert.Single(last.Questions);
        Assert.Null(Find(job, "arbitration-first-day"));
    }

    // § 10240.2: only on the State's work, after an acceptance that is sure, and with a claim.
    [Theory]
    [InlineData(PublicBody.State, true, "2025-10-22", "2026-06-20")]
    [InlineData(PublicBody.State, true, "2025-10-20..2025-10-22", "2026-06-20")]
    [InlineData(PublicBody.State, false, "2025-10-22", null)]
    [InlineData(PublicBody.State, true, null, null)]
    [InlineData(PublicBody.Local, true, "2025-10-22", null)]
    [InlineData(null, true, "2025-10-22", null)]
    [Proves("Pub. Contract Code § 10240.2")]
    public void Arbitration_without_a_decision_waits_for_240_days_after_acceptance(PublicBody? body, bool claimed, string? accepted,
        string? first)
    {
        var job = Job(body: body);
        if (claimed)
            Claim(job);
        if (accepted is not null)
            job.Completed(accepted, CompletionTheory.Acceptance);
        Assert.Equal(first, Find(job, "arbitration-first-day")?.DaysOf().Single());
    }

    // § 9204(d)(1), by the papers of the claim: sent in doubt or not received, in the wrong manner, under the older procedure (which asks
    // for no manner), or after the end of the section.
    [Theory]
    [InlineData("2025-07-14", "2026-06-01", null, Manner.CertifiedMail, "2026-06-10", Standing.NotYet, false)]
    [InlineData("2025-07-14", "2026-06-01", "2026-06-03", null, "2026-08-10", Standing.Open, false)]
    [InlineData("2025-07-14", "2026-06-01", "2026-06-03", Manner.Email, "2026-08-10", Standing.InDoubt, true)]
    [InlineData(null, "2026-06-01", "2026-06-03", Manner.Email, "2026-08-10", Standing.InDoubt, true)]
    [InlineData("2016-12-31", "2026-06-01", "2026-06-03", Manner.Email, "2026-08-10", Standing.Open, false)]
    [InlineData("2016-12-31", "2026-06-01", "2026-06-03", Manner.Email, "2027-01-05", Standing.Open, false)]
    [Proves("Pub. Contract Code § 9204(d)(1)")]
    [Proves("Pub. Contract Code § 20104.2")]
    public void How_a_claim_was_sent_counts_under_the_newer_section(string? made, string sent, string? received, Manner? manner,
        string asOf, Standing expected, bool again)
    {
        var statement =
            Find(Claim(Job(made), sent, received).Which(e => (DisputeClaimSent)e with { Manner = manner }), "entitys-statement", asOf)!;
        Assert.Equal(expected, statement.Standing);
        Assert.Equal(again, statement.Says("send it again that way"));
        Assert.Equal(received is null
            ? $"entity's statement, 45 days after receipt, which was not before {sent}" : "entity's statement, 45 days after receipt",
            statement.Band!.Earliest.Name);
        Assert.True(statement.Says(received is null
            ? "within 45 days of receipt, which was not before the sending on 2026-06-01 (Mon), what"
            : "within 45 days of receipt, 2026-06-03 (Wed), what"));
        Assert.All(statement.Questions.Where(q => q.Text.Contains("dispute-claim-sent", StringComparison.Ordinal)),
            q => Assert.IsType<DisputeClaimSent>(q.Corrects));
    }

    // Days in doubt: a conference demanded between 24 and 27 July, after a claim of 1 to 5 June, is held by 26 August; one held between 21
    // and
    // 28 August, ten business days after the 28th, Labor Day and Admission Day left out.
    [Fact]
    [Proves("Pub. Contract Code § 9204(d)(2)")]
    public void What_the_entity_owes_is_counted_from_the_latest_day_of_a_doubt()
    {
        var job = Demanded(Claim(Job(), "2026-06-01..2026-06-05"), "2026-07-24..2026-07-27");
        Assert.Equal(["2026-08-26"], Find(job, "conference", "2026-08-01")!.DaysOf());
        Assert.Equal(["2026-09-15"], Find(Held(job, "2026-08-21..2026-08-28"), "second-statement", "2026-09-01")!.DaysOf());
        // Demanded on a day on which the claim may have been sent before.
        Assert.Equal(Standing.Kept,
            Find(Demanded(Claim(Job(), "2026-06-01..2026-06-05"), "2026-06-02"), "conference-last-day", "2026-07-01")!.Standing);
        Assert.NotNull(Find(Demanded(Claim(Job(), "2026-06-01..2026-06-05"), "2026-06-02"), "conference", "2026-07-01"));
        // Where either procedure may govern, the shorter time of the statement begins the claimant's fifteen days.
        Assert.Equal(["2026-08-02"], Find(Claim(Job(made: null), amount: 62_000m), "conference-last-day", "2026-07-01")!.DaysOf());
        // Answered between 6 and 13 July: 60 days end on Friday 11 September.
        Assert.Equal(["2026-09-11"], Find(Answered(Claim(Job()), "2026-07-06..2026-07-13", 7_300m), "undisputed-part", "2026-09-10")!
            .DaysOf());
    }

    // § 9204(i): a claim sent between 30 December and 2 January, its receipt not told, may be of 2027.
    [Fact]
    [Proves("Pub. Contract Code § 9204(i)")]
    public void A_claim_that_may_be_of_2027_has_no_sure_law()
    {
        Assert.True(Find(Claim(Job(), "2026-12-30..2027-01-02", received: null), "entitys-statement", "2027-01-05")!
            .Says("was not known when this was written"));
        Assert.True(Find(Claim(Job(), "2026-12-30..2026-12-31", received: null), "entitys-statement", "2027-01-05")!
            .Says("keeps its argument"));
        // Outside both procedures the body is still asked about.
        Assert.True(Find(Claim(Job("2016-12-31", body: null), amount: 375_000.01m), "entitys-statement")!.Asks("(work.body)"));
    }

    [Fact]
    [Proves("Pub. Contract Code § 10240.1")]
    [Proves("Pub. Contract Code § 10240.2")]
    [Proves("Pub. Contract Code § 20104.2(a)")]
    public void What_is_settled_is_neither_told_nor_asked()
    {
        var decided = Claim(Job(body: PublicBody.State)).Completed("2025-10-22", CompletionTheory.Acceptance)
            .Add(i => new FinalDecisionServed { Index = i, On = When("2026-10-05") });
        Assert.Equal(["2027-01-03 90 days after the final decision was served"], Find(decided, "arbitration-last-day")!.Lines());
        // With a decision nothing waits for the 240 days.
        Assert.Null(Find(decided, "arbitration-first-day"));
        // A claim that was filed needs no day of final payment.
        Assert.Empty(Find(Claim(Job()), "filing-last-day")!.Questions);
    }
}
