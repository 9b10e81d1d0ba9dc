using System.Globalization;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>Closed weekdays of 2025 to 2029, written out day by day, and the plain counting of months.</summary>
internal static class PlainCalendar
{
    /// <summary>The years that are written out.</summary>
    public const int FirstYear = 2025;

    /// <summary>The years that are written out.</summary>
    public const int LastYear = 2029;

    // Gov. Code §§ 6700, 6701; Code Civ. Proc. § 135 with rule 1.11 of the Rules of Court; the days of the moon from memory.
    private static readonly string[] BothLists =
    [
        "2025 01-01 01-20 02-12 02-17 03-31 05-26 06-19 07-04 09-01 09-26 11-11 11-27 12-25",
        "2026 01-01 01-19 02-12 02-16 03-31 05-25 06-19 09-07 09-25 11-11 11-26 12-25",
        "2027 01-01 01-18 02-12 02-15 03-31 05-31 07-05 09-06 09-24 11-11 11-25",
        "2028 01-17 02-21 03-31 05-29 06-19 07-04 09-04 09-22 11-10 11-23 12-25",
        "2029 01-01 01-15 02-12 02-19 05-28 06-19 07-04 09-03 09-28 11-12 11-22 12-25",
    ];

    private static readonly string[] StateOnly =
    [
        "2025 01-29 04-24 09-09 10-13",
        "2026 02-17 04-24 09-09 10-12",
        "2027 09-09 10-11 10-29",
        "2028 01-26 04-24 10-09 10-17",
        "2029 02-13 04-24 09-10 10-08 11-05",
    ];

    private static readonly string[] CourtsOnly =
    [
        "2025 11-28",
        "2026 07-03 11-27",
        "2027 06-18 11-26 12-24 12-31",
        "2028 02-11 11-24",
        "2029 03-30 11-23",
    ];

    private static readonly HashSet<LocalDate> Courts = [.. Days(BothLists), .. Days(CourtsOnly)];

    private static readonly HashSet<LocalDate> State = [.. Days(BothLists), .. Days(StateOnly)];

    private static IEnumerable<LocalDate> Days(string[] rows)
    {
        foreach (var row in rows)
        {
            var words = row.Split(' ');
            var year = Number(words[0]);
            foreach (var day in words[1..])
                yield return new LocalDate(year, Number(day[..2]), Number(day[3..]));
        }
    }

    private static int Number(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    private static bool IsSaturday(LocalDate day) => day.DayOfWeek == IsoDayOfWeek.Saturday;

    private static bool IsSunday(LocalDate day) => day.DayOfWeek == IsoDayOfWeek.Sunday;

    /// <summary>A holiday for the last day of a period under Code Civ. Proc. § 12a.</summary>
    public static bool IsCourtHoliday(LocalDate day) => IsSaturday(day) || IsSunday(day) || Courts.Contains(day);

    /// <summary>A holiday under Civ. Code § 7.</summary>
    public static bool IsStateHoliday(LocalDate day) => IsSunday(day) || State.Contains(day);

    public static bool IsClosed(LocalDate day) => IsCourtHoliday(day) || IsStateHoliday(day);

    /// <summary>The open day on or before: the one to plan on.</summary>
    public static LocalDate OpenOnOrBefore(LocalDate day)
    {
        while (IsClosed(day))
            day = day.PlusDays(-1);
        return day;
    }

    public static LocalDate RolledForCourts(LocalDate day)
    {
        while (IsCourtHoliday(day))
            day = day.PlusDays(1);
        return day;
    }

    public static LocalDate RolledOnAnyList(LocalDate day)
    {
        while (IsClosed(day))
            day = day.PlusDays(1);
        return day;
    }

    /// <summary>Six months by the calendar; a day that the month lacks is its last.</summary>
    public static LocalDate SixMonths(LocalDate day)
    {
        var (year, month) = day.Month > 6 ? (day.Year + 1, day.Month - 6) : (day.Year, day.Month + 6);
        return new LocalDate(year, month, Math.Min(day.Day, CalendarSystem.Iso.GetDaysInMonth(year, month)));
    }

    /// <summary>The earlier of six calendar months and 182 days (Gov. Code § 6803), as one who has to sue must take it.</summary>
    public static LocalDate SixMonthsAtLeast(LocalDate day)
    {
        var half = day.PlusDays(182);
        var months = SixMonths(day);
        return half < months ? half : months;
    }

    /// <summary>The later of the two: after it nobody can say that the time still runs.</summary>
    public static LocalDate SixMonthsAtMost(LocalDate day) => World.Later(day.PlusDays(182), SixMonths(day));

    public static LocalDate Years(LocalDate day, int years) =>
        new(day.Year + years, day.Month, day is { Month: 2, Day: 29 } && (day.Year + years) % 4 != 0 ? 28 : day.Day);
}
