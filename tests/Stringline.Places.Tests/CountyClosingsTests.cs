using Stringline.Law.Facts;
using Stringline.Law.Plan;
using Stringline.Law.Counting;
using Stringline.Law.Sources;

namespace Stringline.Places.Tests;

public sealed class CountyClosingsTests
{
    private const string Head = "county,day,why,source,date_read,how_sure";
    private const string Good = "Kern,2026-03-30,a closing,a calendar of the county,2026-11-25,read";

    /// <summary>
    /// lacounty.gov/closures, read 2026-11-25: the day of mourning of January 9, 2025, on which State and courts were open.
    /// </summary>
    [Fact]
    public void Los_Angeles_was_closed_on_the_day_of_mourning_of_2025()
    {
        var day = new LocalDate(2025, 1, 9);
        Assert.True(OpenDays.Statutory.IsOpen(day));
        Assert.False(CountyClosings.Calendar("Los Angeles").IsOpen(day));
        Assert.True(CountyClosings.Calendar("Yolo").IsOpen(day));
    }

    /// <summary>A day carried forward from other years closes the office, and it is said that it is not certain.</summary>
    [Fact]
    public void A_day_carried_forward_says_so() =>
        Assert.Contains("not certain", CountyClosings.Calendar("Los Angeles").WhyClosed(new LocalDate(2026, 3, 30)),
            StringComparison.Ordinal);

    /// <summary>
    /// Worked by hand: Tuesday March 31, 2026 is a State holiday. The open day before April 1 is then Monday the 30th; where the county
    /// keeps that Monday too (Code Civ. Proc. § 12b), Friday the 27th.
    /// </summary>
    [Theory]
    [InlineData("Yolo", "2026-03-30")]
    [InlineData("Los Angeles", "2026-03-27")]
    public void A_back_plan_goes_over_the_county_s_office_days(string county, string day) =>
        Assert.Equal(
            NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value,
            BackPlan.OpenDaysBefore(new LocalDate(2026, 4, 1), 1, CountyClosings.Calendar(county)));

    [Fact]
    public void Every_shipped_row_adds_a_day_to_the_statutory_lists() =>
        Assert.All(CountyClosings.All, row => Assert.True(OpenDays.Statutory.IsOpen(row.Day), $"{row.County} {row.Day}"));

    [Theory]
    [InlineData("Kern", "Clark", "Line 2, county: 'Clark' is there; one of the 58 counties")]
    [InlineData("2026-03-30", "30 March", "Line 2, day: '30 March' is there; a day such as 2026-03-30 would be right.")]
    [InlineData("a calendar of the county", " ", "Line 2, source: ' ' is there; words would be right.")]
    [InlineData("2026-11-25", "", "Line 2, date_read: '' is there; a day such as")]
    [InlineData(",read", ",surely", "Line 2, how_sure: 'surely' is there; read, from memory or open would be right.")]
    [InlineData("a closing", "a closing, all day", "Line 2: 7 cells are there; 6 would be right")]
    public void A_broken_row_is_refused(string there, string instead, string message)
    {
        var broken = Good.Replace(there, instead, StringComparison.Ordinal);
        Assert.StartsWith(message, Assert.Throws<FormatException>(() => CountyClosings.Parse($"{Head}\n{broken}\n")).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_has_one_row_for_a_county() =>
        Assert.StartsWith("Line 4, day:",
            Assert.Throws<FormatException>(() => CountyClosings.Parse($"# remark\n{Head}\n{Good}\n{Good}\n")).Message,
                StringComparison.Ordinal);

    [Theory]
    [InlineData("")]
    [InlineData("county,day\n")]
    public void A_table_without_its_columns_is_refused(string csv) =>
        Assert.Contains(Head, Assert.Throws<FormatException>(() => CountyClosings.Parse(csv)).Message, StringComparison.Ordinal);

    [Fact]
    public void Each_row_is_known_as_its_source_allows()
    {
        var row = Assert.Single(CountyClosings.Parse($"{Head}\n{Good}\n"));
        Assert.Equal(("Kern", Sure.Read), (row.County, row.Sure));
        Assert.All(CountyClosings.All, r => Assert.Contains(r.County, Counties.All));
    }
}
