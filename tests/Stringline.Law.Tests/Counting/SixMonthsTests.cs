using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Counting;

/// <summary>
/// Six months are calendar months on one reading and 182 days on the other (Gov. Code §§ 6803, 6804). Expected days: counted apart with
/// Python's calendar arithmetic.
/// </summary>
public sealed class SixMonthsTests
{
    private static NumberRow SixMonths { get; } = NumberTable.Shipped.On(Number.SueOnReleaseBond, new LocalDate(2026, 1, 1));

    [Theory]
    [InlineData("2025-08-31", "2026-02-28", "2026-03-01")] // no 31 February; here the calendar months end first
    [InlineData("2026-03-31", "2026-09-29", "2026-09-30")] // 182 days end first
    [InlineData("2026-05-11", "2026-11-09", "2026-11-11")] // the second ends on Veterans Day
    [InlineData("2026-07-01", "2026-12-30", "2027-01-01")] // the second ends on New Year's Day
    [InlineData("2027-08-31", "2028-02-29", null)] // both end on 29 February
    [Proves("Gov. Code § 6803")]
    [Proves("Gov. Code § 6804")]
    public void Both_readings_of_six_months_are_given_each_once(string trigger, string first, string? second)
    {
        var readings = Deadline.Sorted(Deadline.Months($"six months", Day(trigger), SixMonths, OpenDays.Statutory));
        Assert.Equal(second is null ? [first] : [first, second], readings.Select(r => LawText.IsoDay(r.Day)));
        Assert.Equal(Day(first), TimeLimit.SixMonthsAtTheEarliest(Day(trigger)));
    }

    [Fact]
    [Proves("Gov. Code § 6804")]
    public void The_reading_of_182_days_says_so_and_each_last_day_shows_its_own_roll()
    {
        var readings = Deadline.Sorted(Deadline.Months($"six months", Day("2026-07-01"), SixMonths, OpenDays.Statutory));
        Assert.Equal([new Reading($"six months, counted as 182 days", Day("2026-12-30")),
            new Reading($"six months", Day("2027-01-01"), Day("2027-01-04"))], readings);
        Assert.Equal(Day("2026-12-30"), Deadline.ActByOf(readings, OpenDays.Statutory));
    }
}
