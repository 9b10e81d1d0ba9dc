using System.Globalization;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>Progress payments and retention on public work, by their days and sums: what is told, charged and asked.</summary>
public sealed class PublicPaymentStepsTests
{
    private static JobBuilder Prime(PublicBody? body = PublicBody.Local) =>
        new JobBuilder().PublicWork().Role(ClaimantRole.DirectContractor, "city").Licensed("2012-06-01..")
        .Work(w => w with { Body = body }).Price(44_000m).Furnished("2025-08-05", 44_000m);

    private static JobBuilder Sub(PublicBody? body = PublicBody.Local, ClaimantRole role = ClaimantRole.Subcontractor,
        string hiredBy = "direct") => new JobBuilder().PublicWork()
        .Role(role, hiredBy).Licensed("2012-06-01..").Work(w => w with { Body = body }).Furnished("2025-08-05", 44_000m);

    private static JobBuilder Requested(JobBuilder job, string sent = "2025-10-06", string? received = null, decimal amount = 18_250m) =>
        job.Add(i => new PaymentDemanded
    {
        Index = i,
        On = When(sent),
        Amount = amount,
        Received = received is null ? null : Day(received),
    });

    private static JobBuilder Disputed(JobBuilder job, DisputeAbout? about) =>
        job.Add(i => new Disputed { Index = i, On = When("2025-10-20"), Amount = 4_000m, About = about });

    private static (Standing, decimal?) Answer(Finding found) => (found.Standing, found.Amount);

    private static Finding Progress(JobBuilder job, string asOf = "2026-01-15") => job.On(asOf).Get("prompt-payment.progress");

    private static Finding Due(JobBuilder job, string asOf) => job.On(asOf).Get("retention.due");

    // Pub. Contract Code § 20104.50(b): 30 days from receipt, or from the latest day of the sending where the receipt is not told; what
    // came from the earliest on may be for it. Sent between 3 and 6 October 2025, so due 5 November; 10 percent of 18,250.00 is 5.00 a day.
    [Theory]
    [InlineData(null, null, "2025-11-05", Standing.Open, 355)]
    [InlineData("2025-10-09", null, "2025-11-10", Standing.Open, 330)]
    [InlineData(null, "2025-10-02", "2025-11-05", Standing.Open, 355)]
    [InlineData(null, "2025-10-03", "2025-11-05", Standing.Done, 0)]
    [InlineData(null, "2025-11-05", "2025-11-05", Standing.Done, 0)]
    [InlineData(null, "2025-11-06", "2025-11-05", Standing.Open, 5)]
    [InlineData(null, "?", "2025-11-05", Standing.Open, 355)]
    [Proves("Pub. Contract Code § 20104.50(b)")]
    public void A_request_of_a_day_in_doubt_is_due_by_its_latest(string? received, string? paid, string due, Standing expected,
        int interest)
    {
        var job = Requested(Prime(), "2025-10-03..2025-10-06", received);
        var progress = Progress(paid is null ? job : job.Paid(paid, 18_250m));
        Assert.Equal([due], progress.DaysOf());
        Assert.Equal((expected, (decimal?)interest), Answer(progress));
        Assert.Equal(received is null, progress.Says("The days run from receipt of the request, which the file does not give"));
        Assert.Equal(received is null && paid is null or "2025-10-02" or "?", progress.Asks("(payment-demanded.received)"));
        Assert.Null(Requested(Prime(), "?").On("2026-01-15").Find("prompt-payment.progress"));
    }

    // Half a dollar bears a cent in two months.
    [Fact]
    [Proves("Pub. Contract Code § 20104.50(b)")]
    public void The_smallest_sum_is_owed_like_any_other()
    {
        Assert.Equal((Standing.Open, (decimal?)0.01m), Answer(Progress(Requested(Prime(), amount: 0.50m))));
        Assert.True(Progress(Requested(Prime(), amount: 0.50m)).Asks("(payment-demanded.received)"));
        Assert.True(Progress(Requested(Prime()), "2025-11-05").Says("$18,250.00 falls due by 2025-11-05 (Wed)"));
        Assert.True(Progress(Requested(Prime()), "2025-11-06").Says("Simple interest at 10 percent a year"));
    }

    // Only an undisputed request bears interest; a dispute about other money, or about retention, is none of it.
    [Theory]
    [InlineData(null, Standing.InDoubt)]
    [InlineData(DisputeAbout.Progress, Standing.InDoubt)]
    [InlineData(DisputeAbout.Retention, Standing.Open)]
    [InlineData(DisputeAbout.OtherSums, Standing.Open)]
    [Proves("Pub. Contract Code § 20104.50(b)")]
    public void A_dispute_that_may_be_about_the_request_is_asked_about_with_the_interest(DisputeAbout? about, Standing expected)
    {
        var progress = Progress(Disputed(Requested(Prime(), received: "2025-10-06"), about));
        Assert.Equal((expected, (decimal?)355m), Answer(progress));
        Assert.Equal(expected == Standing.InDoubt ? [355m] : [], progress.Questions.Select(q => q.Dollars!.Value));
        Assert.All(progress.Questions, q => Assert.IsType<Disputed>(q.Corrects));
        Assert.Equal(Standing.NotYet, Progress(Disputed(Requested(Prime()), about), "2025-11-05").Standing);
    }

    // The Trustees have nine days more: where the body is not told that much hangs on it.
    [Theory]
    [InlineData(null, 9, "likewise")]
    [InlineData(PublicBody.Local, null, "likewise")]
    [InlineData(PublicBody.State, null, "A State agency pays within 30 days")]
    [InlineData(PublicBody.StateUniversity, null, "The Trustees of the State University pay within 39 days")]
    [InlineData(PublicBody.UniversityOrCourt, null, "whether the section reaches the University")]
    [Proves("Pub. Contract Code § 10853(a)")]
    [Proves("Pub. Contract Code § 10261.5(a)")]
    public void The_body_that_pays_is_asked_with_the_days_that_hang_on_it(PublicBody? body, int? days, string says)
    {
        var progress = Progress(Requested(Prime(body), received: "2025-10-06"));
        Assert.Equal(days is null ? [] : [days], progress.Questions.Select(q => q.Days));
        Assert.True(progress.Says(says));
    }

    // Pub. Contract Code § 10262: the report is of what surely was not passed on, by any of several payments.
    [Fact]
    [Proves("Pub. Contract Code § 10262")]
    public void A_report_is_due_for_any_payment_not_passed_on()
    {
        var two = Sub(PublicBody.State).HirerPaid("2026-05-11", 12_000m).HirerPaid("2026-06-08", 12_000m).Paid("2026-05-15", 12_000m);
        Assert.Null(two.On("2026-06-15").Find("prompt-payment.report"));
        Assert.NotNull(two.On("2026-06-16").Find("prompt-payment.report"));
        // Retention that was not passed on is no payment below the approved sum.
        Assert.Null(Sub(PublicBody.State).HirerPaid("2026-05-11", 12_000m, PaymentOf.Retention).On("2026-06-16")
            .Find("prompt-payment.report"));
        Assert.Null(Sub(null).HirerPaid("2026-05-11", 12_000m).On("2026-06-16").Find("prompt-payment.report"));
    }

    // § 7107(c), (g): accepted 22 October 2025, 2,200.00 held: 60 days end on Monday 22 December, 90 on Tuesday 20 January. Two percent is
    // 44.00.
    [Theory]
    [InlineData(PublicBody.Local, null, "2026-03-23", Standing.Open, 132, null)]
    [InlineData(PublicBody.State, null, "2025-12-22", Standing.NotYet, 0, 0)]
    [InlineData(PublicBody.State, null, "2026-01-20", Standing.InDoubt, 0, 0)]
    [InlineData(PublicBody.State, null, "2026-01-22", Standing.InDoubt, 0, 44)]
    [InlineData(PublicBody.State, null, "2026-03-23", Standing.InDoubt, 88, 44)]
    [InlineData(PublicBody.State, "2025-12-20", "2026-03-23", Standing.Done, 0, 0)]
    [InlineData(PublicBody.State, "2026-02-20", "2026-03-23", Standing.InDoubt, 44, 0)]
    [InlineData(PublicBody.StateUniversity, null, "2026-03-23", Standing.Open, 132, null)]
    [Proves("Pub. Contract Code § 7107(c)")]
    [Proves("Pub. Contract Code § 7107(g)")]
    public void The_lower_charge_of_a_State_agency_is_the_amount_and_the_rest_is_asked(PublicBody body, string? paid, string asOf,
        Standing expected, int charge, int? asked)
    {
        var job = Prime(body).Retained("2025-09-10", 2_200m).Completed("2025-10-22", CompletionTheory.Acceptance);
        var due = Due(paid is null ? job : job.Paid(paid, 2_200m), asOf);
        Assert.Equal((expected, (decimal?)charge), Answer(due));
        Assert.Equal(asked is null ? [] : [(decimal)asked.Value], due.Questions.Select(q => q.Dollars!.Value));
        Assert.Equal(asked is null ? ["2025-12-22"] : ["2025-12-22", "2026-01-20"], due.DaysOf());
        Assert.Equal(asked is null ? "2025-12-22" : "2026-01-20", LawText.IsoDay(due.Band!.Latest!.Day));
        Assert.Equal(asked is not null, due.Sections.Contains("Pub. Contract Code § 7107(g)"));
    }

    // § 7107(c), (f): at most 150 percent of what is disputed may be held: of 2,200.00 with 1,000.00 disputed 700.00 is withheld. The
    // charge ends with a judgment (S&S Cummins v. West Bay Builders (2008) 159 Cal.App.4th 765), here on 25 February, two months after 22
    // December.
    [Theory]
    [InlineData(PublicBody.Local, 0, false, "132")]
    [InlineData(PublicBody.Local, 1_000, false, "42")]
    [InlineData(PublicBody.Local, 0, true, "88")]
    [InlineData(PublicBody.State, 1_000, false, "28")]
    [InlineData(PublicBody.State, 0, true, "44")]
    [Proves("Pub. Contract Code § 7107(c)")]
    [Proves("Pub. Contract Code § 7107(f)")]
    public void A_dispute_lowers_the_charge_and_a_judgment_ends_it(PublicBody body, int disputed, bool won, string charge)
    {
        var job = Prime(body).Retained("2025-09-10", 2_200m).Completed("2025-10-22", CompletionTheory.Acceptance);
        if (disputed > 0)
            job.Disputed("2025-11-05", disputed);
        if (won)
            job.ActionFiled("2026-01-30").Add(i => new ActionEnded { Index = i, On = When("2026-02-25"), How = ActionEnd.Won });
        Assert.Equal(decimal.Parse(charge, CultureInfo.InvariantCulture), Due(job, "2026-03-23").Amount);
    }

    // § 7107(d): the original contractor toward its own subcontractor. Received 12 January 2026, due Tuesday the 20th after the holiday.
    [Theory]
    [InlineData(ClaimantRole.Subcontractor, "direct", "2026-01-20", null, Standing.NotYet, "")]
    [InlineData(ClaimantRole.Subcontractor, "direct", "2026-01-21", null, Standing.Open, "")]
    [InlineData(ClaimantRole.Subcontractor, "sub", "2026-01-20", null, Standing.NotYet, "")]
    [InlineData(ClaimantRole.Subcontractor, "sub", "2026-01-21", null, Standing.InDoubt, "(claimant.hiredBy)")]
    [InlineData(ClaimantRole.Subcontractor, "sub", "2026-01-21", "2026-01-15", Standing.Done, "")]
    [InlineData(ClaimantRole.Supplier, "sub", "2026-01-21", null, Standing.InDoubt, "whether a claimant in this role may use it is open.")]
    [Proves("Pub. Contract Code § 7107(d)")]
    public void Retention_is_passed_on_to_the_contractors_own_subcontractor(ClaimantRole role, string hiredBy, string asOf, string? paid,
        Standing expected, string asked)
    {
        var job = Sub(role: role, hiredBy: hiredBy).HirerPaid("2026-01-12", 4_500m, PaymentOf.Retention);
        var due = Due(paid is null ? job : job.Paid(paid, 4_500m), asOf);
        Assert.Equal(expected, due.Standing);
        Assert.Equal(["2026-01-20"], due.DaysOf());
        Assert.Equal(asked.Length == 0 ? 0 : 1, due.Questions.Count);
        Assert.All(due.Questions, q => Assert.EndsWith(asked, q.Text, StringComparison.Ordinal));
    }

    // A judgment is one that the claimant won, the first of them, on a day that is known.
    [Theory]
    [InlineData("2026-03-25", ActionEnd.Won, 180)]
    [InlineData("2026-03-19..2026-03-25", ActionEnd.Won, 90)]
    [InlineData("2026-03-20..2026-03-25", ActionEnd.Won, 180)]
    [InlineData("?", ActionEnd.Won, 360)]
    [InlineData("2026-03-25", ActionEnd.Dismissed, 360)]
    [Proves("Pub. Contract Code § 7107(f)")]
    public void The_charge_runs_to_the_first_judgment(string ended, ActionEnd how, int charge)
    {
        var job = Sub().HirerPaid("2026-01-12", 4_500m, PaymentOf.Retention).ActionFiled("2026-02-10")
            .Add(i => new ActionEnded { Index = i, On = When(ended), How = how });
        Assert.Equal(charge, Due(job, "2026-06-15").Amount);
    }

    // § 7107(c), (g): accepted between 20 and 23 October, so by 22 December, and by Wednesday 21 January for a State agency that holds
    // little; what came from the 20th on may be the retention.
    [Theory]
    [InlineData(null, Standing.InDoubt)]
    [InlineData("2025-10-19", Standing.InDoubt)]
    [InlineData("2025-10-20", Standing.Done)]
    [Proves("Pub. Contract Code § 7107(g)")]
    public void An_acceptance_of_a_day_in_doubt_is_counted_from_its_latest(string? paid, Standing expected)
    {
        var job = Prime(PublicBody.State).Retained("2025-09-10", 2_200m).Completed("2025-10-20..2025-10-23", CompletionTheory.Acceptance);
        var due = Due(paid is null ? job : job.Paid(paid, 2_200m), "2026-03-23");
        Assert.Equal(["2025-12-22", "2026-01-21"], due.DaysOf());
        Assert.Equal(expected, due.Standing);
    }

    // Paid in time, it does not matter whether the work was complete; and one whose hirer is not entered is not taken for another's.
    [Fact]
    [Proves("Pub. Contract Code § 7107(c)")]
    [Proves("Pub. Contract Code § 7107(d)")]
    public void What_does_not_matter_is_not_asked()
    {
        var contested = Prime().Retained("2025-09-10", 2_200m).Completed("2025-10-22", CompletionTheory.Acceptance, contested: true);
        Assert.Single(Due(contested, "2026-03-23").Questions);
        var paid = Due(contested.Paid("2025-12-01", 2_200m), "2026-03-23");
        Assert.Equal((Standing.Done, 0), (paid.Standing, paid.Questions.Count));
        var alone = Due(Sub().Role(ClaimantRole.Subcontractor, null).HirerPaid("2026-01-12", 4_500m, PaymentOf.Retention), "2026-01-21");
        Assert.Equal((Standing.Open, 0), (alone.Standing, alone.Questions.Count));
    }
}
