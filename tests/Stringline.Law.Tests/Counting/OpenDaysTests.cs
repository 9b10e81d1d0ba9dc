using Stringline.Law.Counting;
using static Stringline.Law.Tests.Counting.Days;

namespace Stringline.Law.Tests.Counting;

/// <summary>What a day is called when it is closed, county closings, and the two rolls.</summary>
public sealed class OpenDaysTests
{
    // Los Angeles County offices were closed on 9 January 2025: lacounty.gov/closures. The last Monday of March 2022: a
    // published county calendar. The days on which they are said to have been read are made up for the test.
    private static readonly CountyClosing[] Rows =
    [
        new("Los Angeles", Day("2025-01-09"), "day of mourning", "lacounty.gov/closures", Day("2025-01-10")),
        new("Los Angeles", Day("2022-03-28"), "Cesar Chavez Day", "county calendar", Day("2022-01-03")),
        new("Yolo", Day("2025-01-10"), "made up for this test", "none", Day("2025-01-10")),
    ];

    [Theory]
    [InlineData("2026-06-27", "Saturday")]
    [InlineData("2026-06-28", "Sunday")]
    [InlineData("2026-07-04", "Saturday; Independence Day")]
    [InlineData("2026-07-03", "Independence Day, observed by the courts")]
    [InlineData("2026-11-26", "Thanksgiving Day")]
    [InlineData("2026-11-27", "Day after Thanksgiving (court holiday)")]
    [InlineData("2026-10-12", "Columbus Day (State holiday, not kept by the courts)")]
    [InlineData("2021-10-11", "Columbus Day")]
    [InlineData("2029-09-10", "Admission Day, observed (State holiday, not kept by the courts)")]
    [InlineData("2026-11-08", "Sunday; Diwali (State holiday, not kept by the courts)")]
    [InlineData("2034-11-10", "Diwali (State holiday, not kept by the courts); Veterans Day, observed")]
    [InlineData("2025-03-31", "Cesar Chavez Day")]
    [InlineData("2099-12-25", "Christmas Day")] // past the table
    [InlineData("2060-12-31", "New Year's Day, observed by the courts")] // 1 January 2061 is past the table
    [InlineData("2026-07-02", null)]
    public void A_closed_day_says_why(string day, string? why) =>
        Assert.Equal(why, OpenDays.Statutory.WhyClosed(Day(day)));

    [Fact]
    public void A_countys_own_closing_day_closes_that_county_only()
    {
        var losAngeles = OpenDays.ForCounty("Los Angeles", Rows);
        var yolo = OpenDays.ForCounty("yolo", Rows);

        Assert.Equal("Los Angeles", losAngeles.County);
        Assert.Equal("Los Angeles County closed: day of mourning", losAngeles.WhyClosed(Day("2025-01-09")));
        Assert.Equal(HolidayLists.County, losAngeles.ListsOn(Day("2025-01-09")));
        Assert.False(losAngeles.IsCourtHoliday(Day("2025-01-09")));
        Assert.False(losAngeles.IsStateHoliday(Day("2025-01-09")));
        Assert.True(yolo.IsOpen(Day("2025-01-09")));
        Assert.True(losAngeles.IsOpen(Day("2025-01-10")));
        Assert.True(OpenDays.Statutory.IsOpen(Day("2025-01-09")));
        Assert.Null(OpenDays.Statutory.County);
    }

    [Fact]
    public void A_county_without_a_name_or_without_rows_is_refused()
    {
        Assert.Throws<ArgumentException>(() => OpenDays.ForCounty(" ", Rows));
        Assert.Equal("rows", Assert.Throws<ArgumentNullException>(() => OpenDays.ForCounty("Yolo", null!)).ParamName);
    }

    [Fact]
    public void A_last_day_on_a_county_closing_day_rolls_and_is_not_planned_on()
    {
        // Code Civ. Proc. § 12b: the closed office's day counts as a holiday for its own business.
        var losAngeles = OpenDays.ForCounty("Los Angeles", Rows);

        Assert.Equal(Day("2025-01-10"), losAngeles.RollForward(Day("2025-01-09")));
        Assert.Equal(Day("2025-01-08"), losAngeles.LastOpenDayOnOrBefore(Day("2025-01-09")));
        Assert.Equal(Day("2022-03-29"), losAngeles.RollForward(Day("2022-03-26"))); // Saturday, Sunday, closed Monday
    }

    [Fact]
    public void A_county_closing_day_past_the_table_counts_too()
    {
        var county = OpenDays.ForCounty("Yolo", [new("Yolo", Day("2070-03-04"), "made up", "none", Day("2026-01-01"))]);

        Assert.Equal("Yolo County closed: made up", county.WhyClosed(Day("2070-03-04")));
    }

    [Fact]
    public void Two_rows_for_one_county_and_day_are_refused()
    {
        var rows = Rows.Append(Rows[0] with { Why = "storm" });

        var refusal = Assert.Throws<ArgumentException>(() => OpenDays.ForCounty("Los Angeles", rows));
        Assert.StartsWith("Los Angeles County has two closing rows for 2025-01-09 (Thu): \"day of mourning\" and \"storm\". Keep one.",
            refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_county_without_a_name_is_refused() =>
        Assert.Throws<ArgumentException>(() => OpenDays.ForCounty(" ", Rows));

    [Theory]
    [InlineData("2026-10-12", "2026-10-12", "2026-10-13")] // Columbus Day
    [InlineData("2026-09-09", "2026-09-09", "2026-09-10")] // Admission Day
    [InlineData("2026-02-17", "2026-02-17", "2026-02-18")] // Lunar New Year
    [InlineData("2026-04-24", "2026-04-24", "2026-04-27")] // 24 April, a Friday: past the weekend too
    [InlineData("2027-10-29", "2027-10-29", "2027-11-01")] // Diwali, a Friday
    [InlineData("2026-07-03", "2026-07-06", "2026-07-06")] // a court holiday
    public void The_other_sides_last_day_may_roll_past_State_holidays_ours_never(string last, string courtRoll, string anyRoll)
    {
        // Civ. Code §§ 7 and 10 against Code Civ. Proc. §§ 12a and 135.
        Assert.Equal(Day(courtRoll), OpenDays.Statutory.RollForward(Day(last)));
        Assert.Equal(Day(anyRoll), OpenDays.Statutory.RollForwardOnAnyList(Day(last)));
    }

    [Fact]
    public void A_Saturday_is_no_State_holiday_and_a_Sunday_is()
    {
        // Civ. Code §§ 7 and 9.
        Assert.False(OpenDays.Statutory.IsStateHoliday(Day("2026-06-27")));
        Assert.True(OpenDays.Statutory.IsCourtHoliday(Day("2026-06-27")));
        Assert.True(OpenDays.Statutory.IsStateHoliday(Day("2026-06-28")));
    }

    [Fact]
    public void A_day_written_in_another_calendar_gets_the_same_answer()
    {
        var fourthOfJuly = Day("2028-07-04");

        Assert.Equal("Independence Day", OpenDays.Statutory.WhyClosed(fourthOfJuly.WithCalendar(CalendarSystem.Julian)));
        Assert.True(OpenDays.Statutory.IsOpen(fourthOfJuly.PlusDays(1).WithCalendar(CalendarSystem.Julian)));
    }

    [Fact]
    public void Asking_allocates_nothing()
    {
        var calendar = OpenDays.ForCounty("Los Angeles", Rows);
        var first = Day("2026-01-01");
        var sum = Ask(calendar, first);
        var before = GC.GetAllocatedBytesForCurrentThread();
        sum += Ask(calendar, first);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.Equal(0, allocated);
        Assert.NotEqual(0, sum);

        static int Ask(OpenDays calendar, LocalDate first)
        {
            var sum = 0;
            for (var i = 0; i < 365; i++)
            {
                var day = first.PlusDays(i);
                sum += calendar.IsOpen(day) ? 1 : 0;
                sum += calendar.LastOpenDayOnOrBefore(day).Day + calendar.RollForward(day).Day + calendar.RollForwardOnAnyList(day).Day;
            }

            return sum;
        }
    }
}
