namespace Stringline.Law.Counting;

/// <summary>
/// The State's holidays (Gov. Code §§ 6700-6701) and the judicial holidays (Code Civ. Proc. § 135; rule 1.11 of the
/// Cal. Rules of Court), each version a row with its years.
/// </summary>
/// <remarks>
/// <para>A judicial holiday is every full-day holiday of Gov. Code § 6700, less the exceptions Code Civ. Proc. § 135
/// names, and the day after Thanksgiving. Gov. Code § 6700(a) was read as of 2016 and after Stats. 2022 ch. 792;
/// Code Civ. Proc. § 135 as amended by Stats. 2021 ch. 283; Gov. Code § 6701 as of 2017. Their text after
/// Stats. 2025 ch. 358 was not read, only that bill's summary.</para>
/// <para>Not modeled: Good Friday from noon to 3 p.m. (Gov. Code § 6700(a)), which is no full day; days appointed by the
/// President or the Governor (enter them as <see cref="CountyClosing"/>); other days the Judicial Council may name under
/// Code Civ. Proc. § 135; the Legislature's own observance of 31 March (Gov. Code § 6701).</para>
/// <para>Gov. Code § 6700(a), last paragraph: the third Monday in January and 31 March bind a city, county or district
/// only where it adopts them, so an office may be open then. They count as closed here, which is the safer side.</para>
/// </remarks>
public static class CaliforniaHolidays
{
    private const HolidayLists Both = HolidayLists.State | HolidayLists.Courts;
    private const string BothSections = "Gov. Code § 6700(a); Code Civ. Proc. § 135";
    private const string OlderThanTable = "That it is older than this table is from memory.";

    private static readonly YearlyDay Thanksgiving = new YearlyDay.Nth(4, IsoDayOfWeek.Thursday, 11);

    /// <summary>
    /// The first year for which the rows are meant to be complete. Earlier years are computed as though the lists of this
    /// year had stood before it, which for some holidays they did not.
    /// </summary>
    public const int SureFrom = 2000;

    /// <summary>Every version of every holiday, in the order of the year.</summary>
    public static IReadOnlyList<HolidayRule> Rules { get; } =
    [
        new("new-year", "New Year's Day", new YearlyDay.Fixed(1, 1), null, null, Both, BothSections, Sure.Read, OlderThanTable),
        new("king", "Dr. Martin Luther King, Jr. Day", new YearlyDay.Nth(3, IsoDayOfWeek.Monday, 1), 1986, null, Both, BothSections,
            Sure.Read, "The first year is from memory."),
        new(MoonDays.LunarNewYear, "Lunar New Year", new YearlyDay.Moon(MoonDays.LunarNewYear), 2023, null, HolidayLists.State,
            "Gov. Code § 6700(a); excepted by Code Civ. Proc. § 135 (Stats. 2022 ch. 792)", Sure.Read, "The days are from memory."),
        new("lincoln", "Lincoln Day", new YearlyDay.Fixed(2, 12), null, null, Both, BothSections, Sure.Read, OlderThanTable),
        new("presidents", "Presidents' Day", new YearlyDay.Nth(3, IsoDayOfWeek.Monday, 2), null, null, Both, BothSections,
            Sure.Read, OlderThanTable),
        new("march-31", "Cesar Chavez Day", new YearlyDay.Fixed(3, 31), 2001, 2025, Both, BothSections,
            Sure.Read, "The first year is from memory."),
        new("march-31", "Farmworkers Day (31 March, formerly Cesar Chavez Day)", new YearlyDay.Fixed(3, 31), 2026, null, Both, BothSections,
            Sure.OurReading, "The bill of March 2026 that renames it was not read; the day is taken to stand, and to stand on both lists."),
        new("genocide-remembrance", "Genocide Remembrance Day", new YearlyDay.Fixed(4, 24), 2023, null, HolidayLists.State,
            "Gov. Code § 6700(a); excepted by Code Civ. Proc. § 135", Sure.Read, "The number of the bill of 2022 is from memory."),
        new("memorial", "Memorial Day", new YearlyDay.Last(IsoDayOfWeek.Monday, 5), null, null, Both, BothSections, Sure.Read,
            OlderThanTable),
        new("juneteenth", "Juneteenth", new YearlyDay.Fixed(6, 19), 2023, null, Both,
            BothSections + " (Stats. 2022 ch. 753)", Sure.Read),
        new("independence", "Independence Day", new YearlyDay.Fixed(7, 4), null, null, Both, BothSections, Sure.Read, OlderThanTable),
        new("labor", "Labor Day", new YearlyDay.Nth(1, IsoDayOfWeek.Monday, 9), null, null, Both, BothSections, Sure.Read, OlderThanTable),
        new("admission", "Admission Day", new YearlyDay.Fixed(9, 9), null, null, HolidayLists.State,
            "Gov. Code § 6700(a); excepted by Code Civ. Proc. § 135", Sure.Read, OlderThanTable),
        new("native-american", "Native American Day", new YearlyDay.Nth(4, IsoDayOfWeek.Friday, 9), 2015, 2021, HolidayLists.State,
            "Gov. Code § 6700(a) (Stats. 2014 ch. 537)", Sure.OurReading,
            "The bill of 2014 did not except it from Code Civ. Proc. § 135, a later one did and Stats. 2021 ch. 283 took it back in; " +
            "the later bill's year was not read. No court roll is claimed for it before 2022."),
        new("native-american", "Native American Day", new YearlyDay.Nth(4, IsoDayOfWeek.Friday, 9), 2022, null, Both,
            BothSections + " (Stats. 2021 ch. 283)", Sure.Read),
        new("columbus", "Columbus Day", new YearlyDay.Nth(2, IsoDayOfWeek.Monday, 10), null, 2021, Both, BothSections,
            Sure.Read, OlderThanTable),
        new("columbus", "Columbus Day", new YearlyDay.Nth(2, IsoDayOfWeek.Monday, 10), 2022, null, HolidayLists.State,
            "Gov. Code § 6700(a); excepted by Code Civ. Proc. § 135 (Stats. 2021 ch. 283)", Sure.Read),
        new(MoonDays.Diwali, "Diwali", new YearlyDay.Moon(MoonDays.Diwali), 2026, null, HolidayLists.State,
            "Gov. Code § 6700(a); excepted by Code Civ. Proc. § 135 (Stats. 2025 ch. 358)", Sure.Read, "The days are from memory."),
        new("veterans", "Veterans Day", new YearlyDay.Fixed(11, 11), null, null, Both, BothSections, Sure.Read, OlderThanTable),
        new("thanksgiving", "Thanksgiving Day", Thanksgiving, null, null, Both, BothSections, Sure.Read,
            "The section speaks of the Thursday in November appointed; that it is the fourth is from memory."),
        new("day-after-thanksgiving", "Day after Thanksgiving", new YearlyDay.DayAfter(Thanksgiving), null, null, HolidayLists.Courts,
            "Code Civ. Proc. § 135", Sure.Read, OlderThanTable),
        new("christmas", "Christmas Day", new YearlyDay.Fixed(12, 25), null, null, Both, BothSections, Sure.Read, OlderThanTable),
    ];

    /// <summary>The rules that close a weekday for a holiday on a weekend.</summary>
    public static IReadOnlyList<ObservanceRule> Observances { get; } =
    [
        new(IsoDayOfWeek.Saturday, -1, HolidayLists.Courts, null, "Cal. Rules of Court, rule 1.11", Sure.Read,
            "Read as it stands now; taken to have stood in every year."),
        new(IsoDayOfWeek.Sunday, 1, HolidayLists.Courts, null, "Cal. Rules of Court, rule 1.11", Sure.Read,
            "Read as it stands now; taken to have stood in every year."),
        new(IsoDayOfWeek.Sunday, 1, HolidayLists.State,
            ["new-year", "lincoln", "march-31", "independence", "admission", "veterans", "christmas"],
            "Gov. Code § 6701", Sure.Read, "Read as of 2017."),
        new(IsoDayOfWeek.Saturday, -1, HolidayLists.State, ["veterans"], "Gov. Code § 6701", Sure.Read, "Read as of 2017."),
        new(IsoDayOfWeek.Sunday, 1, HolidayLists.State, ["juneteenth", "genocide-remembrance"], "Gov. Code § 6701", Sure.OurReading,
            "Whether the section was amended to move these two was not read. They are taken to move: no one then plans on that Monday."),
    ];

    /// <summary>
    /// The holidays that fall in a year, and the days on which they are observed, which for 1 January can be in the year before.
    /// </summary>
    /// <param name="year">The year in which the holiday itself falls.</param>
    public static IEnumerable<Holiday> FallingIn(int year)
    {
        foreach (var rule in Rules)
        {
            if (!rule.Governs(year) || rule.Day.DayIn(year) is not { } day)
                continue;
            yield return new Holiday(day, rule, rule.Lists, null);
            foreach (var observance in Observances)
            {
                if (observance.Moves(rule, day))
                    yield return new Holiday(day.PlusDays(observance.MovesBy), rule, observance.List, observance);
            }
        }
    }

    /// <summary>The holidays kept on a day, worked out from the rows. Weekends as such are not among them.</summary>
    public static IEnumerable<Holiday> On(LocalDate day) =>
        FallingIn(day.Year).Concat(FallingIn(day.Year + 1)).Where(holiday => holiday.Day == day);

    /// <summary>The lists, the county's apart, on which a day is closed, worked out from the rows and the weekday.</summary>
    public static HolidayLists ListsOn(LocalDate day)
    {
        var lists = Weekend(day);
        foreach (var holiday in On(day))
            lists |= holiday.Lists;
        return lists;
    }

    /// <summary>Saturday is closed for the courts only (Code Civ. Proc. § 135); Sunday for both (Gov. Code § 6700(a)).</summary>
    internal static HolidayLists Weekend(LocalDate day) => day.DayOfWeek switch
    {
        IsoDayOfWeek.Saturday => HolidayLists.Courts,
        IsoDayOfWeek.Sunday => Both,
        _ => HolidayLists.None,
    };
}
