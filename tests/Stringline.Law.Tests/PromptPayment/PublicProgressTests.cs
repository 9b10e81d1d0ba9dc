using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>Progress payments on public work. Days and cents counted apart with Python; the payer's last day is rolled.</summary>
public sealed class PublicProgressTests
{
    private static JobBuilder Prime(PublicBody? body = PublicBody.Local) =>
        new JobBuilder().PublicWork().Role(ClaimantRole.DirectContractor, "city").Licensed("2012-06-01..")
        .Work(w => w with { Body = body }).Price(44000m).Furnished("2025-08-05", 44000m);

    private static JobBuilder Sub(PublicBody? body =
        PublicBody.Local, bool? stateContractAct = null, ClaimantRole role = ClaimantRole.Subcontractor) => new JobBuilder().PublicWork()
        .Role(role, "direct").Licensed("2012-06-01..").Work(w => w with { Body = body, StateContractAct = stateContractAct })
        .Furnished("2025-08-05", 44000m);

    private static JobBuilder Requested(JobBuilder job, string sent = "2025-10-06", string? received = null) =>
        job.Add(i => new PaymentDemanded
    {
        Index = i,
        On = JobBuilder.When(sent),
        Amount = 18250m,
        Received = received is null ? null : JobBuilder.Day(received),
    });

    private static Finding Due(JobBuilder job, string asOf) => job.On(asOf).Get("prompt-payment.progress");

    // Requested Monday 6 October 2025: due Wednesday 5 November. 10 percent of 18,250.00 is 5.00 a day.
    [Theory]
    [InlineData("2025-11-05", Standing.NotYet, 0)]
    [InlineData("2025-11-06", Standing.Open, 5)]
    [InlineData("2026-01-15", Standing.Open, 355)]
    [Proves("Pub. Contract Code § 20104.50(b)")]
    [Proves("Code Civ. Proc. § 685.010(a)")]
    public void Late_money_bears_ten_percent_a_year_from_the_thirtieth_day_after_the_request(string asOf, Standing expected, int interest)
    {
        var due = Due(Requested(Prime()), asOf);
        Assert.Equal(["2025-11-05"], due.DaysOf());
        Assert.Equal((expected, (decimal)interest), (due.Standing, due.Amount));
        Assert.Contains("Pub. Contract Code § 20104.50(b)", due.Sections);
    }

    // The section counts from receipt; where the file does not tell it, from the day it was sent, and that is said and asked.
    [Fact]
    [Proves("Pub. Contract Code § 20104.50(b)")]
    public void The_days_run_from_receipt_where_it_is_known()
    {
        var job = Requested(Prime(), received: "2025-10-09");
        var known = Due(job, "2026-01-15");
        Assert.Equal(["2025-11-10"], known.DaysOf()); // the thirtieth day is Saturday 8 November
        Assert.Equal(330m, known.Amount);
        Assert.False(known.Asks("(payment-demanded.received)"));
        var sent = Due(Requested(Prime()), "2026-01-15");
        Assert.True(sent.Asks("(payment-demanded.received)"));
        Assert.NotNull(sent.Questions.Single(q => q.Text.EndsWith("(payment-demanded.received)", StringComparison.Ordinal)).Corrects);
    }

    // Received Monday 6 October 2025, so a request that is not proper goes back by the 13th; corrected on Monday 20 October, thirty days
    // end on 19 November, thirty-nine on the 28th. Returned on the 16th, three days late, they end three days sooner.
    [Theory]
    [InlineData(PublicBody.Local, "2025-10-13", "2025-10-20", "2025-11-19", "Pub. Contract Code § 20104.50(d)", 0)]
    [InlineData(PublicBody.Local, "2025-10-14", "2025-10-20", "2025-11-18", "Pub. Contract Code § 20104.50(d)", 1)]
    [InlineData(PublicBody.Local, "2025-10-16", "2025-10-20", "2025-11-17", "Pub. Contract Code § 20104.50(d)", 3)] // the 16th is a Sunday
    [InlineData(PublicBody.State, "2025-10-16", "2025-10-21", "2025-11-17", "Pub. Contract Code § 10261.5(b)", 3)]
    [InlineData(PublicBody.StateUniversity, "2025-10-16", "2025-10-20", "2025-11-25", "Pub. Contract Code § 10853(c)", 3)]
    [InlineData(PublicBody.Local, "2025-11-17", "2025-11-19", "2025-11-19", "Pub. Contract Code § 20104.50(d)", 35)]
    [Proves("Pub. Contract Code § 20104.50(d)")]
    [Proves("Pub. Contract Code § 10261.5(b)")]
    [Proves("Pub. Contract Code § 10853(c)")]
    public void A_request_returned_late_leaves_fewer_days_from_the_corrected_one(PublicBody body, string returned, string again, string due,
        string section, int late)
    {
        var found = Due(Returned(Prime(body), returned, again), "2025-12-15");
        Assert.Equal([due], found.DaysOf());
        Assert.Equal(Standing.Open, found.Standing);
        Assert.Contains(section, found.Sections);
        Assert.Equal(late > 0, found.Says($"{late} days later than the seventh day"));
    }

    // No days run from a request that is not proper; whether it was is open, and nothing is charged on it.
    [Fact]
    [Proves("Pub. Contract Code § 20104.50(d)")]
    public void A_request_that_was_returned_and_not_corrected_is_in_doubt_and_bears_nothing_yet()
    {
        var job = Returned(Prime(), "2025-10-10", null);
        var found = Due(job, "2026-01-15");
        Assert.Equal((Standing.InDoubt, 0m), (found.Standing, found.Amount));
        Assert.True(found.Says("If it was proper after all, it bears $355.00"));
        Assert.False(found.Says("is unpaid"));
        Assert.True(found.Asks("(payment-demanded.resubmitted)"));
        // Not yet known on the day before.
        Assert.False(Due(job, "2025-10-09").Says("Returned"));
        Assert.False(Due(Returned(Prime(), "2025-10-10", "2025-10-20"), "2025-10-20").Asks("(payment-demanded.resubmitted)"));
        Assert.True(Due(Returned(Prime(), "2025-10-10", "2025-10-20"), "2025-10-19").Asks("(payment-demanded.resubmitted)"));
    }

    // Without the day of receipt the return may have been in time.
    [Fact]
    [Proves("Pub. Contract Code § 20104.50(d)")]
    public void Without_the_receipt_no_return_is_late() =>
        // 30 November is a Sunday
        Assert.Equal(["2025-12-01"], Due(Returned(Prime(), "2025-10-30", "2025-10-31", received: null), "2025-12-15").DaysOf());

    private static JobBuilder Returned(JobBuilder job, string returned, string? again, string? received = "2025-10-06") =>
        Requested(job, received: received).Which(e => (PaymentDemanded)e with
    {
        Returned = JobBuilder.Day(returned),
        Resubmitted = again is null ? null : JobBuilder.Day(again),
    });

    [Fact]
    [Proves("Pub. Contract Code § 20104.50(b)")]
    public void A_part_that_came_late_costs_until_it_came_and_the_rest_goes_on()
    {
        // 8,250.00 on 15 December, 40 days late: 90.41; 10,000.00 for 71 days: 194.52.
        var due = Due(Requested(Prime()).Paid("2025-12-15", 8250m), "2026-01-15");
        Assert.Equal((Standing.Open, 284.93m), (due.Standing, due.Amount));
        Assert.Equal((Standing.Done, 0m), Answer(Due(Requested(Prime()).Paid("2025-11-05", 18250m), "2026-01-15")));
        // All paid, but late: the interest is still owed.
        Assert.Equal((Standing.Open, 200m), Answer(Due(Requested(Prime()).Paid("2025-12-15", 18250m), "2026-01-15")));
        static (Standing, decimal?) Answer(Finding f) => (f.Standing, f.Amount);
    }

    [Fact]
    [Proves("Pub. Contract Code § 20104.50(b)")]
    public void A_request_in_dispute_leaves_the_interest_in_doubt_and_one_about_other_money_does_not()
    {
        var disputed = Due(Requested(Prime()).Disputed("2025-10-20", 4000m), "2026-01-15");
        Assert.Equal(Standing.InDoubt, disputed.Standing);
        Assert.True(disputed.Asks("(disputed.about)"));
        var other = Requested(Prime())
            .Add(i => new Disputed { Index = i, On = JobBuilder.When("2025-10-20"), Amount = 4000m, About = DisputeAbout.OtherSums });
        Assert.Equal(Standing.Open, Due(other, "2026-01-15").Standing);
    }

    // The Trustees of the State University have 39 days: Friday 14 November 2025.
    [Theory]
    [InlineData(PublicBody.Local, "2025-11-05", "Pub. Contract Code § 20104.50(b)")]
    [InlineData(PublicBody.State, "2025-11-05", "Pub. Contract Code § 10261.5(a)")]
    [InlineData(PublicBody.GeneralServices, "2025-11-05", "Pub. Contract Code § 10261.5(a)")]
    [InlineData(PublicBody.Transportation, "2025-11-05", "Pub. Contract Code § 10261.5(a)")]
    [InlineData(PublicBody.StateUniversity, "2025-11-14", "Pub. Contract Code § 10853(a)")]
    [InlineData(PublicBody.UniversityOrCourt, "2025-11-05", "Pub. Contract Code § 20104.50(b)")]
    [InlineData(null, "2025-11-05", "Pub. Contract Code § 20104.50(b)")]
    [Proves("Pub. Contract Code § 10261.5(a)")]
    [Proves("Pub. Contract Code § 10853(a)")]
    public void Which_body_pays_says_how_long_it_has(PublicBody? body, string expected, string section)
    {
        var due = Due(Requested(Prime(body)), "2026-01-15");
        Assert.Equal([expected], due.DaysOf());
        Assert.Equal(section, due.Sections[0]);
        Assert.Equal(body is null, due.Asks("(work.body)"));
        Assert.Equal(body == PublicBody.UniversityOrCourt ? Standing.InDoubt : Standing.Open, due.Standing);
    }

    // § 10262.5 stands in the part on the State's contracts; § 7108.5 reaches all other public work.
    [Theory]
    [InlineData(PublicBody.Local, null, "Bus. & Prof. Code § 7108.5")]
    [InlineData(null, null, "Bus. & Prof. Code § 7108.5")]
    [InlineData(null, true, "Pub. Contract Code § 10262.5")]
    [InlineData(PublicBody.State, null, "Pub. Contract Code § 10262.5")]
    [InlineData(PublicBody.Transportation, null, "Pub. Contract Code § 10262.5")]
    [Proves("Bus. & Prof. Code § 7108.5")]
    [Proves("Pub. Contract Code § 10262.5")]
    public void The_contractors_seven_days_stand_in_the_section_of_the_kind_of_work(PublicBody? body, bool? act, string section)
    {
        var due = Due(Sub(body, act).HirerPaid("2026-05-11", 12000m), "2026-08-18");
        Assert.Equal([section], due.Sections);
        Assert.Equal((Standing.Open, 720m), (due.Standing, due.Amount));
        Assert.Equal(section.StartsWith("Bus.", StringComparison.Ordinal), due.Says("unless agreed otherwise in writing"));
    }

    [Theory]
    [InlineData(PublicBody.State, "2026-05-19", true)]
    [InlineData(PublicBody.State, "2026-05-18", false)]
    [InlineData(PublicBody.Local, "2026-08-18", false)]
    [Proves("Pub. Contract Code § 10262")]
    public void On_State_work_a_subcontractor_must_report_what_was_not_passed_on(PublicBody body, string asOf, bool expected)
    {
        var report = Sub(body).HirerPaid("2026-05-11", 12000m).On(asOf).Find("prompt-payment.report");
        Assert.Equal(expected, report is not null);
        if (report is not null)
            Assert.True(report.Says("in writing") && report.Standing == Standing.Open);
        Assert.Null(Sub(body).HirerPaid("2026-05-11", 12000m).Paid("2026-05-15", 12000m).On(asOf).Find("prompt-payment.report"));
        Assert.Null(Sub(body, role: ClaimantRole.Supplier).HirerPaid("2026-05-11", 12000m).On(asOf).Find("prompt-payment.report"));
    }

    // Until the last day only that day is told, and nothing is called wrongly withheld.
    [Theory]
    [InlineData("2026-05-18", false)]
    [InlineData("2026-05-19", true)]
    [Proves("Bus. & Prof. Code § 7108.5")]
    public void Nothing_is_wrongly_withheld_before_the_day_is_past(string asOf, bool expected)
    {
        var due = Due(Sub().HirerPaid("2026-05-11", 12000m), asOf);
        Assert.Equal(expected, due.Says("wrongly withheld"));
        Assert.Equal(expected, due.Says("Penalty"));
        Assert.Equal(!expected, due.Says("$12,000.00 falls due by 2026-05-18"));
    }
}
