using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>Five percent of each payment and of the price, in contracts made on or after 1 January 2026 (Stats. 2025 ch. 49).</summary>
public sealed class RetentionCapTests
{
    private static Finding? Cap(string? made = "2026-01-01", decimal? price = 200000m, decimal retained = 10000m, bool? lowRise = null,
        WorkUse? use = WorkUse.Commercial, decimal change = 0m)
    {
        var job = new JobBuilder().Role(ClaimantRole.DirectContractor, "owner")
            .Contract(c => c with { On = made is null ? null : Day(made), Price = price })
            .Work(w => w with { LowRiseResidential = lowRise, Use = use });
        if (change != 0)
            job.Changed("2026-02-02", change);
        return (retained > 0 ? job.Retained("2026-03-02", retained) : job).On("2026-06-01").Find("retention.cap");
    }

    [Theory]
    [InlineData("2025-12-31", Standing.Done, null)]
    [InlineData("2026-01-01", Standing.Open, 10000)]
    [InlineData(null, Standing.InDoubt, null)]
    [Proves("Civ. Code § 8811(a)")]
    public void Each_contract_is_tested_by_its_own_day(string? made, Standing expected, int? beyond)
    {
        var cap = Cap(made, retained: 20000m);
        Assert.Equal(expected, cap!.Standing);
        Assert.Equal((decimal?)beyond, cap.Amount);
        Assert.Equal(made is null, cap.Asks("On which day was the contract made"));
    }

    [Theory]
    [InlineData(10000, 0, Standing.Kept)]
    [InlineData(10000.01, 0.01, Standing.Open)]
    [Proves("Civ. Code § 8811(b)(1)(B)")]
    public void Five_percent_of_the_price_is_the_most(decimal retained, decimal beyond, Standing expected)
    {
        var cap = Cap(retained: retained);
        Assert.Equal(expected, cap!.Standing);
        Assert.Equal(beyond, cap.Amount);
    }

    [Fact]
    [Proves("Civ. Code § 8811(b)(1)(B)")]
    public void The_price_is_that_with_its_agreed_changes() => Assert.Equal(Standing.Kept, Cap(retained: 11000m, change: 20000m)!.Standing);

    [Fact]
    [Proves("Civ. Code § 8811(b)(1)(B)")]
    public void Without_a_price_it_is_in_doubt_and_without_retention_nothing_is_said()
    {
        Assert.Equal(Standing.InDoubt, Cap(price: null)!.Standing);
        Assert.Null(Cap(retained: 0m));
    }

    [Theory]
    [InlineData(true, WorkUse.Residential, Standing.Done)]
    [InlineData(false, WorkUse.Residential, Standing.Open)]
    [InlineData(null, WorkUse.Residential, Standing.InDoubt)]
    [InlineData(null, WorkUse.OwnerOccupiedOneToFour, Standing.InDoubt)]
    [InlineData(null, WorkUse.Commercial, Standing.Open)]
    [Proves("Civ. Code § 8811(b)(3)")]
    public void Housing_of_four_stories_or_fewer_has_no_cap_and_other_housing_is_asked(bool? lowRise, WorkUse use, Standing expected)
    {
        var cap = Cap(retained: 20000m, lowRise: lowRise, use: use);
        Assert.Equal(expected, cap!.Standing);
        Assert.Equal(expected == Standing.InDoubt, cap.Asks("not over four stories"));
    }

    private static JobBuilder Sub(decimal price, decimal work, decimal retained, ClaimantRole role = ClaimantRole.Subcontractor,
        decimal? percent = 10m, bool? noBond = null) => new JobBuilder().Role(role)
        .Contract(c => c with { On = Day("2026-02-24"), Price = price, BondNotBrought = noBond })
        .Work(w => w with { DirectContract = percent is null ? null : new DirectContract { RetentionPercent = percent } })
        .Furnished("2026-03-16", work).Retained("2026-04-20", retained);

    private static Finding Of(JobBuilder job) => job.On("2026-06-15").Get("retention.cap");

    // On work for 22,000 at most 1,100 may have been held, whatever the price is.
    [Fact]
    [Proves("Civ. Code § 8811(b)(1)(A)")]
    public void Each_payment_is_capped_and_not_the_total_alone()
    {
        var cap = Of(Sub(80_000m, 22_000m, 4_000m));
        Assert.Equal((Standing.Open, 2_900m), (cap.Standing, cap.Amount));
        Assert.Equal(2_900m, cap.Questions.Single(q => q.Text.EndsWith("(retained)", StringComparison.Ordinal)).Dollars);
        Assert.Equal(Standing.Kept, Of(Sub(80_000m, 22_000m, 1_100m)).Standing);
        Assert.Equal(0.01m, Of(Sub(80_000m, 22_000m, 1_100.01m)).Amount);
    }

    [Theory]
    [InlineData(10, Standing.Kept, 0)]
    [InlineData(3, Standing.Open, 1600)]
    [InlineData(0, Standing.Open, 4000)]
    [InlineData(null, Standing.InDoubt, 0)]
    [Proves("Civ. Code § 8811(b)(1)(C)")]
    public void Below_the_direct_contract_its_own_percentage_is_the_most(int? percent, Standing expected, int beyond)
    {
        var cap = Of(Sub(80_000m, 80_000m, 4_000m, percent: percent));
        Assert.Equal((expected, (decimal)beyond), (cap.Standing, cap.Amount));
        Assert.Equal(percent is null,
            cap.Questions.Any(q =>
                q.Dollars == 4_000m && q.Text.EndsWith("(work.directContract.retentionPercent)", StringComparison.Ordinal)));
    }

    [Fact]
    [Proves("Civ. Code § 8811(b)(2)")]
    public void Toward_one_that_brought_no_bond_there_is_no_cap()
    {
        var asked = Of(Sub(80_000m, 80_000m, 8_000m));
        Assert.Equal((Standing.Open, 4_000m), (asked.Standing, asked.Amount));
        Assert.True(asked.Asks("(contract.bondNotBrought)"));
        Assert.Equal(Standing.Done, Of(Sub(80_000m, 80_000m, 8_000m, noBond: true)).Standing);
        Assert.False(Of(Sub(80_000m, 80_000m, 8_000m, noBond: false)).Asks("(contract.bondNotBrought)"));
    }

    [Fact]
    [Proves("Civ. Code § 8811(b)(3)")]
    public void Where_the_use_is_not_said_low_rise_housing_is_asked_about() =>
        Assert.True(Of(Sub(80_000m, 80_000m, 8_000m).Work(w => w with { Use = null })).Asks("not over four stories"));

    [Fact]
    [Proves("Civ. Code § 8811(b)(1)(A)")]
    public void A_supplier_is_not_named() =>
        Assert.Equal(Standing.InDoubt, Of(Sub(22_000m, 22_000m, 2_200m, ClaimantRole.Supplier)).Standing);

    [Fact]
    [Proves("Civ. Code § 8811(b)(1)(A)")]
    public void Without_a_price_the_work_is_measured_and_the_price_asked()
    {
        var job = Sub(0m, 22_000m, 1_100m).Contract(c => c with { Price = null });
        Assert.Equal(Standing.InDoubt, Of(job).Standing);
        Assert.True(Of(job).Asks("(contract.price)"));
    }
}
