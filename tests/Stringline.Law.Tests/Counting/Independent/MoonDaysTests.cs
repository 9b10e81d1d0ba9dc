using System.Globalization;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Counting.Independent;

/// <summary>The table of moon days, itself from memory, against calendars made by others.</summary>
public sealed class MoonDaysTests
{
    private static readonly ChineseLunisolarCalendar Chinese = new();

    private static Dictionary<int, LocalDate> Table(string holidayId) =>
        MoonDays.Rows.Where(row => row.HolidayId == holidayId).ToDictionary(row => row.Day.Year, row => row.Day);

    [Fact]
    public void Lunar_New_Year_is_the_first_day_of_the_Chinese_year_in_every_year_of_the_table()
    {
        // Source: the ChineseLunisolarCalendar of .NET. There is no year in which the two differ.
        var table = Table(MoonDays.LunarNewYear);

        Assert.Equal(Enumerable.Range(2023, MoonDays.KnownThrough - 2022), table.Keys);
        foreach (var (year, day) in table)
            Assert.Equal(LocalDate.FromDateTime(Chinese.ToDateTime(year, 1, 1, 0, 0, 0, 0)), day);
    }

    [Fact]
    public void Lunar_New_Year_is_the_day_Singapore_keeps()
    {
        // Source: date-holidays 3.37.0, moon-days.csv.
        var singapore = OutsideCalendar.Rows("moon-days.csv").Where(row => row[0] == "lunar-new-year").Select(row => Days.Day(row[2]));

        Assert.Equal(singapore, Table(MoonDays.LunarNewYear).Values);
    }

    [Fact]
    public void Diwali_is_the_day_Mauritius_keeps_and_elsewhere_differs_in_2027_and_2030_only()
    {
        // Source: date-holidays 3.37.0, moon-days.csv. Suriname and Trinidad keep the evening before in those two years:
        // the date of the new moon turns on where one stands.
        var outside = OutsideCalendar.Rows("moon-days.csv").Where(row => row[0] == "diwali").ToList();
        var table = Table(MoonDays.Diwali);

        Assert.Equal(Enumerable.Range(2026, MoonDays.KnownThrough - 2025), table.Keys);
        Assert.Equal(outside.Where(row => row[1] == "MU").Select(row => Days.Day(row[2])), table.Values);
        Assert.Equal(
            ["SR 2027-10-28", "SR 2030-10-25", "TT 2027-10-28", "TT 2030-10-25"],
            outside.Where(row => table[Days.Day(row[2]).Year] != Days.Day(row[2])).Select(row => $"{row[1]} {row[2]}"));
    }

    [Fact]
    public void Diwali_is_at_the_new_moon()
    {
        // Source: the ChineseLunisolarCalendar of .NET, whose months begin on the day of the new moon in China. There the
        // day begins before India's: the new moon of Diwali's night is that day or the one after.
        foreach (var day in Table(MoonDays.Diwali).Values)
        {
            var sameDay = Chinese.GetDayOfMonth(day.ToDateTimeUnspecified());
            var nextDay = Chinese.GetDayOfMonth(day.PlusDays(1).ToDateTimeUnspecified());
            Assert.True(sameDay == 1 || nextDay == 1, $"{day}: days {sameDay} and {nextDay} of the Chinese month");
        }
    }
}
