using System.Collections.Frozen;

namespace Stringline.Law.Time;

/// <summary>
/// Which days are open and closed, by four lists: weekends, the State's holidays (Gov. Code §§ 6700-6701),
/// the courts' holidays (Code Civ. Proc. § 135, rule 1.11) and the county's own closing days.
/// </summary>
/// <remarks>
/// Immutable; any number of threads may ask one instance. The years <see cref="FirstYear"/> to <see cref="LastYear"/> are
/// answered from a table, other years are worked out each time; the answers are the same. The days of the moon are known
/// through <see cref="MoonDays.KnownThrough"/> and the rows are meant for <see cref="CaliforniaHolidays.SureFrom"/> and after.
/// </remarks>
public sealed class OpenDays
{
    /// <summary>First year of the table.</summary>
    public const int FirstYear = 1980;

    /// <summary>Last year of the table, included.</summary>
    public const int LastYear = 2060;

    private readonly byte[] table;
    private readonly FrozenDictionary<LocalDate, CountyClosing> closings;

    private OpenDays(byte[] table, string? county, FrozenDictionary<LocalDate, CountyClosing> closings)
    {
        this.table = table;
        this.closings = closings;
        County = county;
    }

    /// <summary>The statutory lists alone, for a county whose own closing days are not known.</summary>
    public static OpenDays Statutory { get; } =
        new(StatutoryTable(), null, FrozenDictionary<LocalDate, CountyClosing>.Empty);

    /// <summary>The county whose own closing days are counted; null where none are.</summary>
    public string? County { get; }

    /// <summary>The statutory lists and a county's own closing days (Code Civ. Proc. § 12b).</summary>
    /// <param name="county">The county's name without the word County. Upper and lower case do not matter.</param>
    /// <param name="rows">Closing days of any counties; those of others are passed over.</param>
    /// <exception cref="ArgumentException">The name is blank, or one day has two rows for the county.</exception>
    public static OpenDays ForCounty(string county, IEnumerable<CountyClosing> rows)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(county);
        ArgumentNullException.ThrowIfNull(rows);
        var table = (byte[])Statutory.table.Clone();
        var closings = new Dictionary<LocalDate, CountyClosing>();
        foreach (var row in rows)
        {
            if (!string.Equals(row.County, county, StringComparison.OrdinalIgnoreCase))
                continue;
            var day = Iso(row.Day);
            if (!closings.TryAdd(day, row))
                throw new ArgumentException($"{county} County has two closing rows for {Reasoning.LawText.Day(day)}: \"{closings[day].Why}\" and \"{row.Why}\". Keep one.", nameof(rows));
            if (InTable(day))
                table[Slot(day)] |= (byte)HolidayLists.County;
        }

        return new OpenDays(table, county, closings.ToFrozenDictionary());
    }

    /// <summary>The lists on which the day is closed; <see cref="HolidayLists.None"/> where it is open on every list.</summary>
    public HolidayLists ListsOn(LocalDate day)
    {
        day = Iso(day);
        return InTable(day) ? (HolidayLists)table[Slot(day)] : ComputedLists(day);
    }

    /// <summary>Whether the day is open on every list: not a Saturday or Sunday and no holiday of State, courts or county.</summary>
    public bool IsOpen(LocalDate day) => ListsOn(day) == HolidayLists.None;

    /// <summary>Whether the courts' list closes the day: Saturdays, Sundays, judicial holidays and the days on which they are observed (Code Civ. Proc. §§ 12a(a), 135; rule 1.11).</summary>
    public bool IsCourtHoliday(LocalDate day) => (ListsOn(day) & HolidayLists.Courts) != 0;

    /// <summary>Whether the State's list closes the day: Sundays and full-day State holidays, as moved off Sundays (Gov. Code §§ 6700, 6701). A Saturday as such is not on it (Civ. Code §§ 7, 9).</summary>
    public bool IsStateHoliday(LocalDate day) => (ListsOn(day) & HolidayLists.State) != 0;

    /// <summary>Why the day is closed on some list, in words; null when it is open on every list.</summary>
    public string? WhyClosed(LocalDate day)
    {
        if (IsOpen(day))
            return null;
        day = Iso(day);
        var why = new List<string>();
        if (CaliforniaHolidays.Weekend(day) != HolidayLists.None)
            why.Add(day.DayOfWeek == IsoDayOfWeek.Saturday ? "Saturday" : "Sunday");
        foreach (var holiday in CaliforniaHolidays.On(day).GroupBy(kept => kept.Rule))
            why.Add(InWords(holiday.Key, holiday.Aggregate(HolidayLists.None, (lists, kept) => lists | kept.Lists), holiday.All(kept => kept.Observance is not null)));
        if (closings.TryGetValue(day, out var closing))
            why.Add($"{County} County closed: {closing.Why}");
        return string.Join("; ", why);
    }

    /// <summary>The last day on or before the given one that is open on every list: a day to plan on.</summary>
    public LocalDate LastOpenDayOnOrBefore(LocalDate day)
    {
        while (!IsOpen(day))
            day = day.PlusDays(-1);
        return day;
    }

    /// <summary>The day to which a last day rolls under Code Civ. Proc. §§ 12a and 12b: past Saturdays, Sundays, court holidays and the county's closing days. An argument only.</summary>
    /// <remarks>It never goes past a day that is a holiday on the State's list alone. Example: Saturday 4 July 2026 rolls to Monday 6 July; Columbus Day, Monday 12 October 2026, does not roll.</remarks>
    public LocalDate RollForward(LocalDate day)
    {
        while ((ListsOn(day) & (HolidayLists.Courts | HolidayLists.County)) != 0)
            day = day.PlusDays(1);
        return day;
    }

    /// <summary>The latest day to which any list would let the other side's last day roll.</summary>
    /// <remarks>
    /// Civ. Code §§ 7 and 10 may carry it past a State holiday on which the courts sit, such as Columbus Day, Admission Day,
    /// Lunar New Year, 24 April or Diwali, and Code Civ. Proc. § 12a past a Saturday; taking both is never too early.
    /// Example: Columbus Day, Monday 12 October 2026, rolls to Tuesday 13 October.
    /// </remarks>
    public LocalDate RollForwardOnAnyList(LocalDate day)
    {
        while (!IsOpen(day))
            day = day.PlusDays(1);
        return day;
    }

    private HolidayLists ComputedLists(LocalDate day) =>
        CaliforniaHolidays.ListsOn(day) | (closings.ContainsKey(day) ? HolidayLists.County : HolidayLists.None);

    private static string InWords(HolidayRule rule, HolidayLists lists, bool observed) => (lists, observed) switch
    {
        (HolidayLists.State, false) => $"{rule.Name} (State holiday, not kept by the courts)",
        (HolidayLists.State, true) => $"{rule.Name}, observed (State holiday, not kept by the courts)",
        (HolidayLists.Courts, false) => $"{rule.Name} (court holiday)",
        (HolidayLists.Courts, true) => $"{rule.Name}, observed by the courts",
        (_, false) => rule.Name,
        (_, true) => $"{rule.Name}, observed",
    };

    private static byte[] StatutoryTable()
    {
        // One byte a day; the slot is packed from year, month and day, which a LocalDate holds as such.
        var table = new byte[(LastYear - FirstYear + 1) << 9];
        var firstSaturday = LocalDate.FromYearMonthWeekAndDay(FirstYear, 1, 1, IsoDayOfWeek.Saturday);
        foreach (var first in (ReadOnlySpan<LocalDate>)[firstSaturday.PlusDays(-6), firstSaturday])
        {
            for (var day = first; day.Year <= LastYear; day = day.PlusDays(7))
            {
                if (InTable(day))
                    table[Slot(day)] = (byte)CaliforniaHolidays.Weekend(day);
            }
        }

        for (var year = FirstYear; year <= LastYear + 1; year++)
        {
            foreach (var holiday in CaliforniaHolidays.FallingIn(year))
            {
                if (InTable(holiday.Day))
                    table[Slot(holiday.Day)] |= (byte)holiday.Lists;
            }
        }

        return table;
    }

    private static bool InTable(LocalDate day) => day.Year is >= FirstYear and <= LastYear;

    private static int Slot(LocalDate day) => ((day.Year - FirstYear) << 9) | (day.Month << 5) | day.Day;

    private static LocalDate Iso(LocalDate day) =>
        day.Calendar == CalendarSystem.Iso ? day : day.WithCalendar(CalendarSystem.Iso);
}
