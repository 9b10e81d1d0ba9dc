using Stringline.Law.Counting;
using static Stringline.Law.Tests.Counting.Days;

namespace Stringline.Law.Tests.Counting;

/// <summary>
/// The judicial holidays on weekdays of a year, against published court calendars.
/// Source for 2024-2026: the holiday lists at sutter.courts.ca.gov, sanbernardino.courts.ca.gov, calaveras.courts.ca.gov and
/// appellate.courts.ca.gov, which were compared with Code Civ. Proc. § 135 and rule 1.11 and agreed; Monday 1 April 2024 and
/// Friday 3 July 2026 are quoted from them, the other days are written here from memory of those lists.
/// For 2027 and 2028 no list was published yet: the days of observance were worked out by hand from rule 1.11.
/// </summary>
public sealed class CourtCalendarsTests
{
    private static readonly string[] Y2024 =
    [
        "2024-01-01", "2024-01-15", "2024-02-12", "2024-02-19", "2024-04-01", "2024-05-27", "2024-06-19", "2024-07-04",
        "2024-09-02", "2024-09-27", "2024-11-11", "2024-11-28", "2024-11-29", "2024-12-25",
    ];

    private static readonly string[] Y2025 =
    [
        "2025-01-01", "2025-01-20", "2025-02-12", "2025-02-17", "2025-03-31", "2025-05-26", "2025-06-19", "2025-07-04",
        "2025-09-01", "2025-09-26", "2025-11-11", "2025-11-27", "2025-11-28", "2025-12-25",
    ];

    private static readonly string[] Y2026 =
    [
        "2026-01-01", "2026-01-19", "2026-02-12", "2026-02-16", "2026-03-31", "2026-05-25", "2026-06-19", "2026-07-03",
        "2026-09-07", "2026-09-25", "2026-11-11", "2026-11-26", "2026-11-27", "2026-12-25",
    ];

    public static TheoryData<int, string[]> Calendars => new() { { 2024, Y2024 }, { 2025, Y2025 }, { 2026, Y2026 } };

    [Theory]
    [MemberData(nameof(Calendars))]
    public void The_courts_close_on_the_weekdays_their_calendar_lists_and_on_no_other(int year, string[] listed)
    {
        var closed = OfYears(year, year)
            .Where(day => day.DayOfWeek is not (IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday) && OpenDays.Statutory.IsCourtHoliday(day));

        Assert.Equal(listed.Select(Day), closed);
    }

    [Theory]
    [InlineData("2027-06-18", "Juneteenth, observed by the courts")]
    [InlineData("2027-07-05", "Independence Day, observed")]
    [InlineData("2027-12-24", "Christmas Day, observed by the courts")]
    [InlineData("2027-12-31", "New Year's Day, observed by the courts")]
    [InlineData("2028-02-11", "Lincoln Day, observed by the courts")]
    [InlineData("2028-11-10", "Veterans Day, observed")]
    public void A_judicial_holiday_on_a_weekend_is_observed_beside_it_in_2027_and_2028(string day, string why)
    {
        Assert.True(OpenDays.Statutory.IsCourtHoliday(Day(day)));
        Assert.Equal(why, OpenDays.Statutory.WhyClosed(Day(day)));
    }

    [Fact]
    public void No_other_day_of_observance_closes_the_courts_in_2027_and_2028()
    {
        var observed = CaliforniaHolidays.FallingIn(2027).Concat(CaliforniaHolidays.FallingIn(2028))
            .Where(holiday => holiday.Observance?.List == HolidayLists.Courts).Select(holiday => holiday.Day).Order();

        Assert.Equal(
            ((string[])["2027-06-18", "2027-07-05", "2027-12-24", "2027-12-31", "2028-02-11", "2028-11-10"]).Select(Day),
            observed);
    }
}
