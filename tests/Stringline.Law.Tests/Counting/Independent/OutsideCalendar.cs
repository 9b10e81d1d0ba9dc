using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Counting.Independent;

/// <summary>Compares the courts' closed weekdays with somebody else's calendar.</summary>
internal static class OutsideCalendar
{
    /// <summary>
    /// Every weekday of 2024 to 2035 on which the two differ must be among the expected ones, and every expected one must be
    /// a difference. Weekends are left out: the courts' list closes them all, whatever an outside calendar names.
    /// </summary>
    public static void AssertDiffersOnlyOn(Func<LocalDate, bool> closedOutside, IEnumerable<string> onlyOutside,
        IEnumerable<string> onlyHere)
    {
        var weekdays = Days.OfYears(2024, 2035).Where(day => day.DayOfWeek is not (IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday)).ToList();

        Assert.Equal(onlyOutside.Select(Days.Day).Order(),
            weekdays.Where(day => closedOutside(day) && !OpenDays.Statutory.IsCourtHoliday(day)));
        Assert.Equal(onlyHere.Select(Days.Day).Order(),
            weekdays.Where(day => !closedOutside(day) && OpenDays.Statutory.IsCourtHoliday(day)));
    }

    /// <summary>The rows of a committed data file: comment lines and the heading left out.</summary>
    public static IEnumerable<string[]> Rows(string file) =>
        File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Counting", "Independent", file))
            .Where(line => !line.StartsWith('#')).Skip(1).Select(line => line.Split(','));

    /// <summary>Lincoln Day, 12 February, and where a weekend moves it (Code Civ. Proc. § 135, rule 1.11). No federal holiday.</summary>
    public static readonly string[] LincolnDay =
    [
        "2024-02-12", "2025-02-12", "2026-02-12", "2027-02-12", "2028-02-11", "2029-02-12",
        "2030-02-12", "2031-02-12", "2032-02-12", "2033-02-11", "2034-02-13", "2035-02-12",
    ];

    /// <summary>Native American Day, fourth Friday in September (Stats. 2021 ch. 283). No federal holiday.</summary>
    public static readonly string[] NativeAmericanDay =
    [
        "2024-09-27", "2025-09-26", "2026-09-25", "2027-09-24", "2028-09-22", "2029-09-28",
        "2030-09-27", "2031-09-26", "2032-09-24", "2033-09-23", "2034-09-22", "2035-09-28",
    ];

    /// <summary>31 March, and where a weekend moves it. No federal holiday.</summary>
    public static readonly string[] March31 =
    [
        "2024-04-01", "2025-03-31", "2026-03-31", "2027-03-31", "2028-03-31", "2029-03-30",
        "2030-04-01", "2031-03-31", "2032-03-31", "2033-03-31", "2034-03-31", "2035-03-30",
    ];

    /// <summary>The day after Thanksgiving (Code Civ. Proc. § 135). No federal holiday.</summary>
    public static readonly string[] DayAfterThanksgiving =
    [
        "2024-11-29", "2025-11-28", "2026-11-27", "2027-11-26", "2028-11-24", "2029-11-23",
        "2030-11-29", "2031-11-28", "2032-11-26", "2033-11-25", "2034-11-24", "2035-11-23",
    ];

    /// <summary>
    /// Columbus Day, second Monday in October: a federal and a State holiday, no judicial one since 2022 (Stats. 2021 ch. 283).
    /// </summary>
    public static readonly string[] ColumbusDay =
    [
        "2024-10-14", "2025-10-13", "2026-10-12", "2027-10-11", "2028-10-09", "2029-10-08",
        "2030-10-14", "2031-10-13", "2032-10-11", "2033-10-10", "2034-10-09", "2035-10-08",
    ];
}
