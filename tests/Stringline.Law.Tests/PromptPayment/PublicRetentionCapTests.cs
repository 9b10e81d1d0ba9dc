using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>
/// Five percent of each payment and of the price, in contracts made on or after 1 January 2012 (Pub. Contract Code § 7201).
/// </summary>
public sealed class PublicRetentionCapTests
{
    private static JobBuilder Prime(string? made = "2025-07-14", decimal? price = 44000m, decimal furnished = 44000m) =>
        new JobBuilder().PublicWork()
        .Role(ClaimantRole.DirectContractor, "city").Licensed("2012-06-01..")
        .Contract(c => c with { On = made is null ? null : Day(made), Price = price }).Furnished("2025-08-05", furnished);

    private static JobBuilder Sub(string hiredBy = "direct") => Prime().Role(ClaimantRole.Subcontractor, hiredBy);

    private static Finding Cap(JobBuilder job, decimal retained = 4400m) =>
        job.Retained("2025-09-10", retained).On("2026-01-15").Get("retention.cap");

    [Theory]
    [InlineData("2011-12-31", Standing.Done, null)]
    [InlineData("2012-01-01", Standing.Open, 2200)]
    [InlineData("2025-07-14", Standing.Open, 2200)]
    [InlineData(null, Standing.InDoubt, null)]
    [Proves("Pub. Contract Code § 7201(b)(1)")]
    public void Contracts_since_2012_bear_at_most_five_percent(string? made, Standing expected, int? beyond)
    {
        var cap = Cap(Prime(made));
        Assert.Equal((expected, (decimal?)beyond), (cap.Standing, cap.Amount));
        Assert.Equal(made is null, cap.Asks("(contract.on)"));
        Assert.Contains("Pub. Contract Code § 7201(b)(1)", cap.Sections);
    }

    [Theory]
    [InlineData(2200, Standing.Kept, 0)]
    [InlineData(2200.01, Standing.Open, 0.01)]
    [Proves("Pub. Contract Code § 7201(b)(1)")]
    public void Five_percent_of_the_price_is_the_most(decimal retained, Standing expected, decimal beyond)
    {
        var cap = Cap(Prime(), retained);
        Assert.Equal((expected, (decimal?)beyond), (cap.Standing, cap.Amount));
    }

    // On work for 22,000.00 at most 1,100.00 can have been held of the payments, whatever the price.
    [Fact]
    [Proves("Pub. Contract Code § 7201(b)(1)")]
    public void Each_payment_is_capped_so_no_more_than_five_percent_of_the_work_so_far()
    {
        var cap = Cap(Prime(price: 80000m, furnished: 22000m), 4000m);
        Assert.Equal((Standing.Open, 2900m), (cap.Standing, cap.Amount));
        Assert.True(cap.Asks("ahead of the work"));
        Assert.Equal(Standing.Kept, Cap(Prime(price: 80000m, furnished: 22000m), 1100m).Standing);
        Assert.False(Cap(Prime(price: 80000m, furnished: 22000m), 1100m).Asks("ahead of the work"));
    }

    [Fact]
    [Proves("Pub. Contract Code § 7201(b)(1)")]
    public void Without_a_price_what_was_furnished_is_the_measure_and_the_price_is_asked()
    {
        var cap = Cap(Prime(price: null, furnished: 22000m), 4000m);
        Assert.Equal((Standing.InDoubt, 2900m), (cap.Standing, cap.Amount));
        Assert.True(cap.Asks("(contract.price)"));
    }

    [Fact]
    [Proves("Pub. Contract Code § 7201(b)(1)")]
    [Proves("Pub. Contract Code § 7200(b)")]
    public void A_subcontractor_bears_no_more_than_the_rate_of_the_direct_contract()
    {
        var cap = Cap(Sub().Work(w => w with { DirectContract = new DirectContract { RetentionPercent = 3m } }), 2200m);
        Assert.Equal((Standing.Open, 880m), (cap.Standing, cap.Amount));
        Assert.Equal(Standing.Kept,
            Cap(Sub().Work(w => w with { DirectContract = new DirectContract { RetentionPercent = 10m } }), 2200m).Standing);
        // The rate of its own contract with the entity is no other contract's.
        Assert.Equal(Standing.Kept,
            Cap(Prime().Work(w => w with { DirectContract = new DirectContract { RetentionPercent = 3m } }), 2200m).Standing);
    }

    [Fact]
    [Proves("Pub. Contract Code § 7201(b)(2)")]
    public void A_subcontractor_that_brings_no_bond_it_was_told_of_has_no_cap()
    {
        Assert.Equal(Standing.Done, Cap(Sub().Contract(c => c with { BondNotBrought = true })).Standing);
        Assert.Equal(Standing.Open, Cap(Sub().Contract(c => c with { BondNotBrought = false })).Standing);
        Assert.True(Cap(Sub()).Asks("(contract.bondNotBrought)"));
        Assert.False(Cap(Prime()).Asks("(contract.bondNotBrought)"));
        Assert.Equal(Standing.Open, Cap(Prime().Contract(c => c with { BondNotBrought = true })).Standing);
    }

    [Theory]
    [InlineData(true, Standing.InDoubt, false)]
    [InlineData(false, Standing.Open, false)]
    [InlineData(null, Standing.Open, true)]
    [Proves("Pub. Contract Code § 7201(b)(3)")]
    [Proves("Pub. Contract Code § 7201(b)(4)")]
    public void A_project_found_substantially_complex_may_bear_more(bool? complex, Standing expected, bool asks)
    {
        var cap = Cap(Prime().Work(w => w with { SubstantiallyComplex = complex }));
        Assert.Equal(expected, cap.Standing);
        Assert.Equal(asks, cap.Asks("(work.substantiallyComplex)"));
    }

    [Fact]
    [Proves("Pub. Contract Code § 7202(a)")]
    public void The_Department_of_Transportation_may_retain_nothing_of_its_direct_contractors_progress_payments()
    {
        var cap = Cap(Prime().Work(w => w with { Body = PublicBody.Transportation }));
        Assert.Equal((Standing.Open, 4400m), (cap.Standing, cap.Amount));
        Assert.Contains("Pub. Contract Code § 7202(a)", cap.Sections);
        Assert.Equal(2200m, Cap(Sub().Work(w => w with { Body = PublicBody.Transportation })).Amount);
    }

    [Fact]
    public void Without_retention_nothing_is_said() => Assert.Null(Prime().On("2026-01-15").Find("retention.cap"));

    [Theory]
    [InlineData(ClaimantRole.Supplier, Standing.InDoubt)]
    [InlineData(ClaimantRole.Subcontractor, Standing.Open)]
    [Proves("Pub. Contract Code § 7201(b)(1)")]
    public void Whether_it_helps_anyone_but_a_contractor_is_in_doubt(ClaimantRole role, Standing expected) =>
        Assert.Equal(expected, Cap(Prime().Role(role, "direct")).Standing);
}
