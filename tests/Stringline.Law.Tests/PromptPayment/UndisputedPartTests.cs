using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>
/// What the owner leaves undisputed of a claim on private work: 60 days, then 2 percent a month (Civ. Code § 8850(d)(3), (h)(1)). Counted
/// apart with Python.
/// </summary>
public sealed class UndisputedPartTests
{
    private static JobBuilder Job(ClaimantRole role = ClaimantRole.DirectContractor, string hiredBy = "owner", string? made = "2026-02-24",
        Manner? manner = Manner.CertifiedMail) => new JobBuilder()
        .Role(role, hiredBy).Contract(c => c with { On = made is null ? null : Day(made) }).Work(w => w with { LowRiseResidential = false })
        .Add(i => new DisputeClaimSent { Index = i, On = When("2026-04-13"), Received = Day("2026-04-14"), Amount = 5_200m,
            Manner = manner });

    private static JobBuilder Answered(JobBuilder job, decimal? undisputed = 1_000m, string on = "2026-05-11") =>
        job.Add(i => new DisputeClaimAnswered { Index = i, On = When(on), Undisputed = undisputed });

    private static Finding? Find(JobBuilder job, string asOf) => job.On(asOf).Find("dispute-claim.undisputed-part");

    // Stated on Monday 11 May 2026: the sixtieth day is Friday 10 July. One whole month is over on 10 August; 31 days at 24 percent a year
    // are 20.38.
    [Theory]
    [InlineData("2026-07-10", Standing.NotYet, 0)]
    [InlineData("2026-07-11", Standing.Open, 0)]
    [InlineData("2026-08-10", Standing.Open, 20)]
    [InlineData("2026-09-09", Standing.Open, 20)]
    [InlineData("2026-09-10", Standing.Open, 40)]
    [Proves("Civ. Code § 8850(d)")]
    [Proves("Civ. Code § 8850(h)")]
    public void It_is_paid_within_sixty_days_and_bears_two_percent_a_month_after(string asOf, Standing expected, decimal interest)
    {
        var part = Find(Answered(Job()), asOf)!;
        Assert.Equal(["2026-07-10"], part.DaysOf());
        Assert.Equal((expected, (decimal?)interest), (part.Standing, part.Amount));
        Assert.Equal(asOf == "2026-08-10", part.Says("$20.38 day by day"));
        Assert.Equal(expected == Standing.NotYet ? ["Civ. Code § 8850(d)"] : ["Civ. Code § 8850(d)", "Civ. Code § 8850(h)"], part.Sections);
        Assert.IsType<DisputeClaimAnswered>(Assert.Single(part.Why[0].Facts));
    }

    [Theory]
    [InlineData("2026-07-01", Standing.Done, 0)]
    [InlineData("2026-08-12", Standing.Open, 20)]
    [Proves("Civ. Code § 8850(h)")]
    public void What_came_in_answers_it(string paid, Standing expected, decimal interest)
    {
        var part = Find(Answered(Job()).Paid(paid, 1_000m), "2026-09-10")!;
        Assert.Equal((expected, (decimal?)interest), (part.Standing, part.Amount));
        // "until payment is received": nothing is left for which to suspend work.
        Assert.Equal(expected == Standing.Open, Answered(Job()).Paid(paid, 1_000m).On("2026-09-10")
            .Find("dispute-claim.suspension-first-day") is not null);
    }

    // A payment answers one sum only: the progress payment of 4 May, due on 3 June, before the part due on 10 July.
    [Fact]
    [Proves("Civ. Code § 1479")]
    public void A_payment_answers_the_sum_that_falls_due_first()
    {
        var on = Answered(Job().PaymentDemanded("2026-05-04", 1_000m)).Paid("2026-06-01", 1_000m).On("2026-09-10");
        Assert.Equal((Standing.Done, Standing.Open),
            (on.Get("prompt-payment.progress").Standing, on.Get("dispute-claim.undisputed-part").Standing));
    }

    // A dispute is about what is disputed, never about this part.
    [Fact]
    [Proves("Civ. Code § 8850(h)")]
    public void A_dispute_takes_nothing_from_it() =>
        Assert.Equal(20m, Find(Answered(Job()).Disputed("2026-05-01", 4_200m), "2026-08-10")!.Amount);

    [Theory]
    [InlineData(ClaimantRole.DirectContractor, "owner", "2026-02-24", Manner.CertifiedMail, Standing.Open)]
    [InlineData(ClaimantRole.Subcontractor, "owner", "2026-02-24", Manner.CertifiedMail, Standing.Open)]
    [InlineData(ClaimantRole.Subcontractor, "direct", "2026-02-24", Manner.CertifiedMail, null)]
    [InlineData(ClaimantRole.Supplier, "owner", "2026-02-24", Manner.CertifiedMail, null)]
    [InlineData(ClaimantRole.DirectContractor, "owner", "2025-12-31", Manner.CertifiedMail, null)]
    [InlineData(ClaimantRole.DirectContractor, "owner", null, Manner.CertifiedMail, Standing.InDoubt)]
    [InlineData(ClaimantRole.DirectContractor, "owner", "2026-02-24", Manner.Email, Standing.InDoubt)]
    [Proves("Civ. Code § 8850(d)")]
    public void It_is_owed_to_one_whose_claim_the_procedure_governs(ClaimantRole role, string hiredBy, string? made, Manner manner,
        Standing? expected) =>
        Assert.Equal(expected, Find(Answered(Job(role, hiredBy, made, manner)), "2026-08-10")?.Standing);

    // Without a license no action lies for any compensation.
    [Fact]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void It_is_lost_without_a_license()
    {
        var on = Answered(Job().Furnished("2026-03-02", 5_200m)
            .Claimant(c => c with { License = new License { Required = true, Never = true } })
            .Add(i => new DisputedWorkDone { Index = i, On = When("2026-06-01"), Accepted = Day("2026-06-04") })).On("2026-08-10");
        Assert.Equal((Standing.Lost, Standing.Lost),
            (on.Get("dispute-claim.undisputed-part").Standing, on.Get("retention.disputed-work-payment").Standing));
    }

    [Fact]
    [Proves("Civ. Code § 8850(d)")]
    public void Nothing_is_owed_that_is_disputed_or_was_stated_on_a_day_unknown()
    {
        Assert.Null(Find(Job(), "2026-08-10"));
        Assert.Null(Find(Answered(Job(), null), "2026-08-10"));
        Assert.Null(Find(Answered(Job(), 0m), "2026-08-10"));
        Assert.Null(Find(Answered(Job(), on: "?"), "2026-08-10"));
        Assert.Null(Find(Answered(new JobBuilder().Role(ClaimantRole.DirectContractor, "owner")), "2026-08-10"));
        // § 8851: the article is repealed on 1 January 2030.
        Assert.Equal(Standing.Open, Find(Answered(Job()), "2029-12-31")!.Standing);
        Assert.Equal(Standing.InDoubt, Find(Answered(Job()), "2030-01-01")!.Standing);
    }
}
