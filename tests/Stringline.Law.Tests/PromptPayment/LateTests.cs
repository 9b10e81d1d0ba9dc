using Stringline.Law.Numbers;
using Stringline.Law.PromptPayment;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>The penalty of 2 percent a month.</summary>
public sealed class LateTests
{
    private static LateTerms Terms { get; } = new(
        NumberTable.Shipped.On(Number.RetentionPenalty, Day("2026-03-16")),
            NumberTable.Shipped.On(Number.OwnersRetentionHeld, Day("2026-03-16")));

    // 12,000 x 2% x 3 = 720.00, counted by hand. Day by day: 12,000 x 24% x 92 / 365 = 725.917..., from 16 March to 16 June.
    [Theory]
    [InlineData("2026-03-16", 0, 0, 0)]
    [InlineData("2026-04-15", 0, 0, 236.71)]
    [InlineData("2026-04-16", 1, 240, 244.60)]
    [InlineData("2026-06-15", 2, 480, 718.03)]
    [InlineData("2026-06-16", 3, 720, 725.92)]
    [Proves("Civ. Code § 8818")]
    public void Twelve_thousand_held_for_three_months_costs_720_dollars(string asOf, int months, decimal forMonths, decimal byDays) =>
        Assert.Equal((months, forMonths, byDays), Late.Penalty(12000m, Day("2026-03-16"), Day(asOf), Terms));

    // Due 31 January: the first month is whole on 28 February, the second on 31 March.
    [Theory]
    [InlineData("2026-02-27", 0)]
    [InlineData("2026-02-28", 1)]
    [InlineData("2026-03-30", 1)]
    [InlineData("2026-03-31", 2)]
    [Proves("Civ. Code § 8818")]
    public void A_month_is_a_calendar_month(string asOf, int months) =>
        Assert.Equal(months, Late.Penalty(100m, Day("2026-01-31"), Day(asOf), Terms).WholeMonths);

    [Theory]
    [InlineData(12000, 0, 12000)]
    [InlineData(12000, 4000, 6000)]
    [InlineData(12000, 8000, 0)]
    [InlineData(12000, 9000, 0)]
    [Proves("Civ. Code § 8800(b)")]
    [Proves("Civ. Code § 8812(c)")]
    [Proves("Civ. Code § 8814(c)")]
    public void At_most_150_percent_of_what_is_disputed_may_be_held(int due, int disputed, int withheld) =>
        Assert.Equal(withheld, Late.WronglyWithheld(due, disputed, Terms));

    [Fact]
    [Proves("Civ. Code § 8818")]
    public void Nothing_withheld_costs_nothing() =>
        Assert.Equal((0, 0m, 0m), Late.Penalty(0m, Day("2026-01-31"), Day("2027-01-31"), Terms));

    // Nothing is late by the last day; a day after it a day counts: 12,000 x 24% / 365 = 7.89, and 10 percent interest 3.29.
    [Theory]
    [InlineData("2026-03-10", 0, 0)]
    [InlineData("2026-03-16", 0, 0)]
    [InlineData("2026-03-17", 7.89, 3.29)]
    [Proves("Civ. Code § 8818")]
    [Proves("Code Civ. Proc. § 685.010(a)")]
    public void Nothing_costs_anything_by_its_last_day(string asOf, decimal byDays, decimal interest)
    {
        Assert.Equal((0, 0m, byDays), Late.Penalty(12000m, Day("2026-03-16"), Day(asOf), Terms));
        Assert.Equal(interest, Late.Interest(12000m, NumberTable.Shipped.On(Number.LegalRate, Day("2026-03-16")), Day("2026-03-16"),
            Day(asOf)));
    }
}
