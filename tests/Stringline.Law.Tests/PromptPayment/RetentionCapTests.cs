using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>Five percent of each payment and of the price, in contracts made on or after 1 January 2026 (Stats. 2025 ch. 49).</summary>
public sealed class RetentionCapTests
{
    private static Finding? Cap(string? made = "2026-01-01", decimal? price = 200000m, decimal retained = 10000m, bool? lowRise = null, WorkUse? use = WorkUse.Commercial, decimal change = 0m)
    {
        var job = new JobBuilder().Contract(c => c with { On = made is null ? null : Day(made), Price = price }).Work(w => w with { LowRiseResidential = lowRise, Use = use });
        if (change != 0)
            job.Changed("2026-02-02", change);
        return (retained > 0 ? job.Retained("2026-03-02", retained) : job).On("2026-06-01").Find("retention.cap");
    }

    [Theory]
    [InlineData("2025-12-31", Standing.Done, null)]
    [InlineData("2026-01-01", Standing.Open, 10000)]
    [InlineData(null, Standing.InDoubt, null)]
    [Proves("Civ. Code § 8811")]
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
    [Proves("Civ. Code § 8811")]
    public void Five_percent_of_the_price_is_the_most(decimal retained, decimal beyond, Standing expected)
    {
        var cap = Cap(retained: retained);
        Assert.Equal(expected, cap!.Standing);
        Assert.Equal(beyond, cap.Amount);
    }

    [Fact]
    [Proves("Civ. Code § 8811")]
    public void The_price_is_that_with_its_agreed_changes() => Assert.Equal(Standing.Kept, Cap(retained: 11000m, change: 20000m)!.Standing);

    [Fact]
    [Proves("Civ. Code § 8811")]
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
    [Proves("Civ. Code § 8811")]
    public void Housing_of_four_stories_or_fewer_has_no_cap_and_other_housing_is_asked(bool? lowRise, WorkUse use, Standing expected)
    {
        var cap = Cap(retained: 20000m, lowRise: lowRise, use: use);
        Assert.Equal(expected, cap!.Standing);
        Assert.Equal(expected == Standing.InDoubt, cap.Asks("not over four stories"));
    }
}
