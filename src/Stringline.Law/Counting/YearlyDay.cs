namespace Stringline.Law.Counting;

/// <summary>How a holiday's day is found in a year of the Gregorian calendar.</summary>
/// <remarks>The cases below are the only ones.</remarks>
public abstract record YearlyDay
{
    private YearlyDay()
    {
    }

    /// <summary>The day in that year, before any move off a weekend; null where the rule knows none.</summary>
    public abstract LocalDate? DayIn(int year);

    /// <summary>The same month and day every year, such as 4 July.</summary>
    /// <param name="Month">Month, 1 to 12.</param>
    /// <param name="Day">Day of the month; never 29 February.</param>
    public sealed record Fixed(int Month, int Day) : YearlyDay
    {
        /// <inheritdoc/>
        public override LocalDate? DayIn(int year) => new LocalDate(year, Month, Day);
    }

    /// <summary>A weekday counted from the month's beginning, such as the third Monday in January.</summary>
    /// <param name="Count">Which one, 1 to 4.</param>
    /// <param name="Weekday">The weekday.</param>
    /// <param name="Month">Month, 1 to 12.</param>
    public sealed record Nth(int Count, IsoDayOfWeek Weekday, int Month) : YearlyDay
    {
        /// <inheritdoc/>
        public override LocalDate? DayIn(int year) => LocalDate.FromYearMonthWeekAndDay(year, Month, Count, Weekday);
    }

    /// <summary>The last such weekday of the month, such as the last Monday in May.</summary>
    /// <param name="Weekday">The weekday.</param>
    /// <param name="Month">Month, 1 to 12.</param>
    public sealed record Last(IsoDayOfWeek Weekday, int Month) : YearlyDay
    {
        /// <inheritdoc/>
        public override LocalDate? DayIn(int year) =>
            LocalDate.FromYearMonthWeekAndDay(year, Month, 5, Weekday); // Noda Time gives the last where there is no fifth.
    }

    /// <summary>The day after another rule's day, such as the day after Thanksgiving.</summary>
    /// <param name="Of">The other rule.</param>
    public sealed record DayAfter(YearlyDay Of) : YearlyDay
    {
        /// <inheritdoc/>
        public override LocalDate? DayIn(int year) => Of.DayIn(year)?.PlusDays(1);
    }

    /// <summary>Days of the moon, read off a dated table (<see cref="MoonDays"/>).</summary>
    /// <param name="HolidayId">The holiday's id in the table.</param>
    public sealed record Moon(string HolidayId) : YearlyDay
    {
        /// <inheritdoc/>
        public override LocalDate? DayIn(int year)
        {
            foreach (var row in MoonDays.Rows)
            {
                if (row.Day.Year == year && row.HolidayId == HolidayId)
                    return row.Day;
            }

            return null;
        }
    }
}
