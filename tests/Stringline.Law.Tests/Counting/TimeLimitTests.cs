using Stringline.Law.Counting;
using static Stringline.Law.Tests.Counting.Days;

namespace Stringline.Law.Tests.Counting;

/// <summary>Six months, years, and refusals. The worked examples of whole periods are in <see cref="WorkedExamplesTests"/>.</summary>
public sealed class PeriodTests
{
    [Fact]
    public void A_claim_on_day_184_was_within_six_months_in_Jimenez_v_Chavez() =>
        // Jimenez v. Chavez (Cal. Ct. App., 4th Dist., November 2023): 9 March to 9 September 2021, held timely.
        Assert.Equal(Day("2021-09-09"), TimeLimit.SixMonthsAtTheLatest(Day("2021-03-09")));

    [Fact]
    public void The_claim_of_Jimenez_v_Chavez_would_have_been_late_on_the_reading_we_plan_on() =>
        // Davis v. Thayer (1980) 113 Cal.App.3d 892: 182 days.
        Assert.Equal(Day("2021-09-07"), TimeLimit.SixMonthsAtTheEarliest(Day("2021-03-09")));

    [Theory]
    [InlineData("2025-08-31", "2026-02-28", "2026-03-01")] // calendar months end first
    [InlineData("2026-03-31", "2026-09-29", "2026-09-30")] // 182 days end first
    [InlineData("2027-09-15", "2028-03-15", "2028-03-16")] // 28 and 29 February 2028 as one: 183 days (Gov. Code § 6803)
    [InlineData("2027-08-30", "2028-02-28", "2028-02-29")] // day 182 is 28 February, and 29 February with it
    [InlineData("2028-02-29", "2028-08-29", "2028-08-29")] // the leap day is the trigger and not counted: 182 days both ways
    public void Six_months_have_an_earliest_and_a_latest_end(string trigger, string earliest, string latest)
    {
        // Counted by hand from Gov. Code §§ 6803 and 6804.
        Assert.Equal(Day(earliest), TimeLimit.SixMonthsAtTheEarliest(Day(trigger)));
        Assert.Equal(Day(latest), TimeLimit.SixMonthsAtTheLatest(Day(trigger)));
    }

    [Fact]
    public void A_year_over_a_leap_day_ends_on_the_same_day_of_the_month() =>
        // Gov. Code § 6803: 28 and 29 February 2024 count as one day, so 365 days are not 366.
        Assert.Equal(Day("2024-12-01"), TimeLimit.AddYears(Day("2023-12-01"), 1));

    [Fact]
    public void A_period_in_days_counts_the_leap_day()
    {
        // Gov. Code § 6803 joins it to 28 February for years, half years and quarters only.
        Assert.Equal(Day("2024-03-01"), TimeLimit.LastDay(Day("2024-02-28"), 2));
        Assert.Equal(Day("2025-03-02"), TimeLimit.LastDay(Day("2025-02-28"), 2));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void A_period_of_less_than_one_is_refused(int count)
    {
        var trigger = Day("2026-01-15");

        Assert.Throws<ArgumentOutOfRangeException>(() => TimeLimit.LastDay(trigger, count));
        Assert.Throws<ArgumentOutOfRangeException>(() => TimeLimit.LookBack(trigger, count));
        Assert.Throws<ArgumentOutOfRangeException>(() => TimeLimit.FirstDayAfter(trigger, count));
        Assert.Throws<ArgumentOutOfRangeException>(() => TimeLimit.AddMonths(trigger, count));
        Assert.Throws<ArgumentOutOfRangeException>(() => TimeLimit.AddYears(trigger, count));
    }
}
