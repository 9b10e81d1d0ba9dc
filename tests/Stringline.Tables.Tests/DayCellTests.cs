using Stringline.Tables.Sheets.Cells;

namespace Stringline.Tables.Tests;

/// <summary>Days as accounting systems write them. The expected days are read off the calendar by hand.</summary>
public sealed class DayCellTests
{
    [Theory]
    [InlineData("3/2/2026")]
    [InlineData("03/02/2026")]
    [InlineData("03-02-26")]
    [InlineData("3.2.26")]
    [InlineData("2026-03-02")]
    [InlineData("2026/3/2")]
    [InlineData("20260302")]
    [InlineData("Mar 2, 2026")]
    [InlineData("March 2 2026")]
    [InlineData("2-Mar-2026")]
    [InlineData("02-MAR-26")]
    [InlineData("3/2/2026 12:00:00 AM")]
    [InlineData("2026-03-02T00:00:00")]
    [InlineData("2026-03-02 17:45")]
    [InlineData("46083")] // Serial of 2 March 2026 in a spreadsheet whose day 1 is 1 January 1900.
    public void Reads_the_second_of_March(string text)
    {
        Assert.Equal(new LocalDate(2026, 3, 2), DayCell.Read(Cell.Of(text), DayOrder.MonthFirstUnlessShown).Day);
    }

    [Theory]
    [InlineData("13/4/2026", "there is no month 13")]
    [InlineData("2/30/2026", "February 2026 has 28 days")]
    [InlineData("2/29/2027", "February 2027 has 28 days")]
    [InlineData("3/2", "a day such as")]
    [InlineData("3/2/26/1", "a day such as")]
    [InlineData("26-03-04", "there is no month 26")]
    [InlineData("3/2/85", "either century")]
    [InlineData("3/2/1926", "a day from 1980")]
    [InlineData("soon", "a day such as")]
    [InlineData("Smarch 3, 2026", "a day such as")]
    [InlineData("17", "a day such as")]
    [InlineData("12345", "number of a day")]
    [InlineData("2026-13-01", "there is no month 13")]
    public void Refuses_what_is_no_day(string text, string expected)
    {
        var reading = DayCell.Read(Cell.Of(text), DayOrder.MonthFirstUnlessShown);
        Assert.Null(reading.Day);
        Assert.Contains(expected, reading.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Reads_a_spreadsheets_number_and_its_day()
    {
        Assert.Equal(new LocalDate(2026, 3, 2), DayCell.Read(Cell.OfBinary(46083.75), DayOrder.MonthFirst).Day);
        Assert.Equal(new LocalDate(2026, 3, 2), DayCell.Read(Cell.Of(new LocalDate(2026, 3, 2)), DayOrder.MonthFirst).Day);
    }

    [Fact]
    public void Reads_the_day_first_where_that_was_said()
    {
        Assert.Equal(new LocalDate(2026, 2, 3), DayCell.Read(Cell.Of("3/2/2026"), DayOrder.DayFirst).Day);
        Assert.Null(DayCell.Read(Cell.Of("3/13/2026"), DayOrder.DayFirst).Day);
    }

    [Fact]
    public void Every_day_of_sixty_years_is_its_own_serial()
    {
        // Independent: the framework's OLE automation dates count the same days (DateTime.ToOADate).
        for (var day = new LocalDate(2000, 1, 1); day.Year < 2060; day = day.PlusDays(1))
            Assert.Equal(day, DayCell.Read(Cell.OfBinary(day.ToDateTimeUnspecified().ToOADate()), DayOrder.MonthFirst).Day);
    }
}
