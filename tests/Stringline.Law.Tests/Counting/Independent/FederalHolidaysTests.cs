using PublicHoliday;
using static Stringline.Law.Tests.Counting.Independent.OutsideCalendar;

namespace Stringline.Law.Tests.Counting.Independent;

/// <summary>
/// Source: PublicHoliday 3.17.0 (MIT), a general-purpose calendar library, its United States federal holidays with their
/// days of observance. Ten of the courts' holidays are federal ones; the federal Saturday-to-Friday and Sunday-to-Monday
/// moves are those of rule 1.11.
/// </summary>
public sealed class FederalHolidaysTests
{
    [Fact]
    public void The_courts_keep_the_federal_holidays_but_Columbus_Day_and_four_more() =>
        AssertDiffersOnlyOn(
            day => new USAPublicHoliday().IsPublicHoliday(day.ToDateTimeUnspecified()),
            onlyOutside: ColumbusDay,
            onlyHere: [.. LincolnDay, .. March31, .. NativeAmericanDay, .. DayAfterThanksgiving]);
}
