namespace Stringline.Law.Counting;

/// <summary>
/// Counting periods fixed by law. The trigger day is left out and the last day is included (Civ. Code § 10;
/// Code Civ. Proc. § 12; Gov. Code § 6800). Nothing here is rolled: rolling moves only a last day and is asked of
/// <see cref="OpenDays"/>. A trigger day is never rolled either.
/// </summary>
/// <remarks>
/// Weekends and holidays inside a period count, and in a period of days so does 29 February: Gov. Code § 6803 joins it to
/// the 28th only for a year, a half year and a quarter. Code Civ. Proc. § 1013 adds no days for mail to a period that no
/// service starts.
/// </remarks>
public static class TimeLimit
{
    /// <summary>Days of half a year (Gov. Code § 6803).</summary>
    public const int HalfYearInDays = 182;

    /// <summary>The last day of a period of days (Civ. Code § 10).</summary>
    /// <param name="trigger">The day from which the law counts; not counted itself.</param>
    /// <param name="days">Days, at least 1.</param>
    /// <returns>The last day on which the act is in time, not rolled. Example: 90 days from 15 January 2024 end on 14 April 2024.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer days than 1.</exception>
    public static LocalDate LastDay(LocalDate trigger, int days)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(days, 1);
        return trigger.PlusDays(days);
    }

    /// <summary>
    /// The first day of a span that reaches back some days before a day (Civ. Code §§ 8204, 9304). Never rolled: nothing is to be done on
    /// it.
    /// </summary>
    /// <param name="day">The day from which it reaches back, such as the day a preliminary notice is given.</param>
    /// <param name="days">Days, at least 1.</param>
    /// <returns>The earliest day reached. Example: a notice of 31 July 2026 reaches back 20 days to 11 July 2026.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer days than 1.</exception>
    public static LocalDate LookBack(LocalDate day, int days)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(days, 1);
        return day.PlusDays(-days);
    }

    /// <summary>
    /// The first day on which something may be done that the law allows only after some days (Civ. Code § 9502(a)). Not rolled.
    /// </summary>
    /// <param name="trigger">The day from which the law counts; not counted itself.</param>
    /// <param name="days">Days that must have passed in full, at least 1.</param>
    /// <returns>The day after the period's last day. Example: after 10 days from 15 June 2026 is 26 June 2026 at the earliest.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer days than 1.</exception>
    public static LocalDate FirstDayAfter(LocalDate trigger, int days) => LastDay(trigger, days).PlusDays(1);

    /// <summary>The last day of a period of calendar months (Gov. Code § 6804; Civ. Code § 14).</summary>
    /// <remarks>That a missing day gives the month's last day is common practice, from memory.</remarks>
    /// <param name="trigger">The day from which the law counts.</param>
    /// <param name="months">Months, at least 1.</param>
    /// <returns>The same day of a later month, or that month's last day. Example: 6 months from 31 August 2025 end on 28 February
    /// 2026.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer months than 1.</exception>
    public static LocalDate AddMonths(LocalDate trigger, int months)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(months, 1);
        return trigger.PlusMonths(months);
    }

    /// <summary>The last day of a period of years (Gov. Code § 6803: 365 days, 29 February counted with the day before it).</summary>
    /// <param name="trigger">The day from which the law counts.</param>
    /// <param name="years">Years, at least 1.</param>
    /// <returns>The same day of a later year; 28 February where that year has no 29th. Example: 1 year from 29 February 2024 ends on 28
    /// February 2025.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer years than 1.</exception>
    public static LocalDate AddYears(LocalDate trigger, int years)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(years, 1);
        return trigger.PlusYears(years);
    }

    /// <summary>
    /// The last day of six months on the reading that ends first: calendar months (Gov. Code § 6804) or 182 days (Gov. Code § 6803; Davis
    /// v. Thayer (1980) 113 Cal.App.3d 892). For the claimant's own last day.
    /// </summary>
    /// <param name="trigger">The day from which the law counts.</param>
    /// <returns>The earlier day. Example: from 31 March 2026, 29 September 2026 (182 days) and not 30 September.</returns>
    public static LocalDate SixMonthsAtTheEarliest(LocalDate trigger) =>
        LocalDate.Min(AddMonths(trigger, 6), LastDay(trigger, HalfYearInDays));

    /// <summary>
    /// The last day of six months on the reading that ends last (Gonzales v. County of Los Angeles (1988) 199 Cal.App.3d 601: the longer of
    /// six calendar months and 182 days). For the other side's last day.
    /// </summary>
    /// <remarks>The half year of Gov. Code § 6803 counts 28 and 29 February as one, so across a leap day it is 183 days long; that reading
    /// is among those compared.</remarks>
    /// <param name="trigger">The day from which the law counts.</param>
    /// <returns>The later day. Examples: from 31 March 2026, 30 September 2026; from 31 August 2025, 1 March 2026 (182 days).</returns>
    public static LocalDate SixMonthsAtTheLatest(LocalDate trigger) =>
        LocalDate.Max(AddMonths(trigger, 6), HalfYear(trigger));

    /// <summary>The half year of Gov. Code § 6803: 182 days, 29 February and the day before it counted as one day.</summary>
    private static LocalDate HalfYear(LocalDate trigger)
    {
        var end = LastDay(trigger, HalfYearInDays);
        var dayAfter = end.PlusDays(1);
        return IsLeapDayIn(trigger.Year) || IsLeapDayIn(dayAfter.Year) ? dayAfter : end;

        bool IsLeapDayIn(int year) =>
            CalendarSystem.Iso.IsLeapYear(year) && new LocalDate(year, 2, 29) is var leapDay && trigger < leapDay && leapDay <= dayAfter;
    }
}
