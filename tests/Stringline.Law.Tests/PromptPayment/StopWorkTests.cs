using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>
/// Demanded on Monday 1 June 2026, so due on Wednesday 1 July: more than 35 days unpaid on Thursday 6 August; the notice of intent is
/// posted by Saturday 1 August for a notice on that day.
/// </summary>
public sealed class StopWorkTests
{
    private static JobBuilder Job(bool? written = true, ClaimantRole role = ClaimantRole.DirectContractor) => new JobBuilder()
        .Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct").Contract(c => c with { Written = written }).Furnished("2026-03-02", 50000m).PaymentDemanded("2026-06-01", 12000m);

    private static Finding? Stop(JobBuilder job, string asOf = "2026-08-06") => job.On(asOf).Find("stop-work.notice-first-day");

    [Theory]
    [InlineData("2026-08-05", Standing.NotYet)]
    [InlineData("2026-08-06", Standing.Open)]
    [Proves("Civ. Code § 8832")]
    public void Notice_may_be_given_once_payment_is_more_than_35_days_late(string asOf, Standing expected)
    {
        var stop = Stop(Job(), asOf)!;
        Assert.Equal(["2026-08-06"], stop.DaysOf());
        Assert.Equal(expected, stop.Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8834")]
    public void Intent_is_posted_five_days_before() => Assert.True(Stop(Job())!.Says("by 2026-08-01 (Sat) for a notice on that day"));

    [Theory]
    [InlineData(true, Standing.Open)]
    [InlineData(null, Standing.InDoubt)]
    [InlineData(false, Standing.Lost)]
    [Proves("Civ. Code § 8830")]
    public void Only_under_a_written_contract(bool? written, Standing expected)
    {
        Assert.Equal(expected, Stop(Job(written))!.Standing);
        Assert.Equal(written is null, Stop(Job(written))!.Asks("in writing"));
    }

    [Fact]
    [Proves("Civ. Code § 8832")]
    public void Only_a_direct_contractor_and_only_after_a_demand()
    {
        Assert.Null(Stop(Job(role: ClaimantRole.Subcontractor)));
        Assert.Null(Stop(new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Furnished("2026-03-02", 50000m)));
    }

    [Fact]
    [Proves("Civ. Code § 8832")]
    public void A_payment_in_full_ends_it_and_a_part_does_not()
    {
        Assert.Null(Stop(Job().Paid("2026-07-15", 12000m)));
        Assert.NotNull(Stop(Job().Paid("2026-07-15", 11999m)));
    }

    [Fact]
    [Proves("Civ. Code § 8830")]
    public void A_dispute_leaves_it_in_doubt_for_it_may_be_about_the_performance()
    {
        var stop = Stop(Job().Disputed("2026-06-20", 100m))!;
        Assert.Equal(Standing.InDoubt, stop.Standing);
        Assert.True(stop.Asks("performance"));
    }

    private static Finding? Claim(string? made, bool? lowRise = false, string asOf = "2026-06-15", string? received = "2026-06-01", string sent = "2026-05-29") => new JobBuilder()
        .Contract(c => c with { On = made is null ? null : Day(made) }).Work(w => w with { LowRiseResidential = lowRise }).DisputeClaim(sent, received, 5000m).On(asOf).Find("dispute-claim.owners-statement");

    [Theory]
    [InlineData("2025-12-31", Standing.Lost)]
    [InlineData("2026-01-01", Standing.NotYet)]
    [InlineData(null, Standing.InDoubt)]
    [Proves("Civ. Code § 8850")]
    public void The_claims_procedure_governs_contracts_from_2026(string? made, Standing expected)
    {
        Assert.Equal(expected, Claim(made)!.Standing);
        Assert.Equal(made is null, Claim(made)!.Asks("On which day was the contract made"));
    }

    [Theory]
    [InlineData("2029-12-31", Standing.NotYet)]
    [InlineData("2030-01-01", Standing.Lost)]
    [Proves("Civ. Code § 8850")]
    public void It_is_repealed_on_1_January_2030(string made, Standing expected) =>
        Assert.Equal(expected, Claim(made, asOf: "2030-02-04", received: "2030-02-01", sent: "2030-01-31")!.Standing);

    // Received Monday 1 June: Wednesday 1 July.
    [Theory]
    [InlineData("2026-07-01", Standing.NotYet)]
    [InlineData("2026-07-02", Standing.Open)]
    [Proves("Civ. Code § 8850")]
    public void The_owner_states_within_thirty_days_of_receipt_what_it_disputes(string asOf, Standing expected)
    {
        Assert.Equal(["2026-07-01"], Claim("2026-01-01")!.DaysOf());
        Assert.Equal(expected, Claim("2026-01-01", asOf: asOf)!.Standing);
        // Without the day of receipt, from the sending: the mail may have been a day under way or ten.
        Assert.Equal(["2026-06-29"], Claim("2026-01-01", received: null)!.DaysOf());
    }

    [Theory]
    [InlineData(true, Standing.Lost, false)]
    [InlineData(null, Standing.NotYet, true)]
    [Proves("Civ. Code § 8850")]
    public void Not_on_housing_of_four_stories_or_fewer(bool? lowRise, Standing expected, bool asks)
    {
        Assert.Equal(expected, Claim("2026-01-01", lowRise)!.Standing);
        Assert.Equal(asks, Claim("2026-01-01", lowRise)!.Asks("not over four stories"));
    }
}
