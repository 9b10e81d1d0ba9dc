namespace Stringline.Law.Counting;

/// <summary>
/// Which days are open and closed, by four lists: weekends, the State's holidays (Gov. Code §§ 6700-6701),
/// the courts' holidays (Code Civ. Proc. § 135, rule 1.11) and the county's own closing days.
/// </summary>
/// <remarks>
/// Immutable; any number of threads may ask one instance. The years <see cref="FirstYear"/> to <see cref="LastYear"/> are
/// answered from tables made when a year is first asked for, other years are worked out each time; the answers are the same. The days of
/// the moon are known through <see cref="MoonDays.KnownThrough"/> and the rows are meant for <see cref="CaliforniaHolidays.SureFrom"/> and
/// after.
/// </remarks>
public sealed class OpenDays
{
    /// <summary>First year of the table.</summary>
    public const int FirstYear = 1980;

    /// <summary>Last year of the table, included.</summary>
    public const int LastYear = 2060;

    // What the statutory lists make of a year never changes, so whoever asks first makes its table and everyone may keep it.
    private static readonly byte[]?[] Years = new byte[LastYear - FirstYear + 1][];

    // By the day packed into a number; null where no county's days are counted.
    private readonly Dictionary<int, CountyClosing>? closings;

    private OpenDays(string? county, Dictionary<int, CountyClosing>? closings)
    {
        this.closings = closings;
        County = county;
    }

    /// <summary>The statutory lists alone, for a county whose own closing days are not known.</summary>
    public static OpenDays Statutory { get; } = new(null, null);

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
        var closings = new Dictionary<int, CountyClosing>();
        foreach (var row in rows)
        {
            if (!string.Equals(row.County, county, StringComparison.OrdinalIgnoreCase))
                continue;
            var day = Iso(row.Day);
            if (!closings.TryAdd(Packed(day), row))
                throw new ArgumentException($"{county} County has two closing rows "
                    + $"for {LawText.Day(day)}: \"{closings[Packed(day)].Why}\" and \"{row.Why}\". Keep one.", nameof(rows));
        }

        return new OpenDays(county, closings);
    }

    /// <summary>The lists on which the day is closed; <see cref="HolidayLists.None"/> where it is open on every list.</summary>
    public HolidayLists ListsOn(LocalDate day)
    {
        day = Iso(day);
        var statutory = InTable(day) ? (HolidayLists)YearOf(day)[SlotInYear(day)] : CaliforniaHolidays.ListsOn(day);
        return closings is not null && closings.ContainsKey(Packed(day)) ? statutory | HolidayLists.County : statutory;
    }

    /// <summary>Whether the day is open on every list: not a Saturday or Sunday and no holiday of State, courts or county.</summary>
    public bool IsOpen(LocalDate day) => ListsOn(day) == HolidayLists.None;

    /// <summary>
    /// Whether the courts' list closes the day: Saturdays, Sundays, judicial holidays and the days on which they are observed (Code Civ.
    /// Proc. §§ 12a(a), 135; rule 1.11).
    /// </summary>
    public bool IsCourtHoliday(LocalDate day) => (ListsOn(day) & HolidayLists.Courts) != 0;

    /// <summary>
    /// Whether the State's list closes the day: Sundays and full-day State holidays, as moved off Sundays (Gov. Code §§ 6700, 6701). A
    /// Saturday as such is not on it (Civ. Code §§ 7, 9).
    /// </summary>
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
            why.Add(InWords(holiday.Key, holiday.Aggregate(HolidayLists.None, (lists, kept) => lists | kept.Lists),
                holiday.All(kept => kept.Observance is not null)));
        if (closings is not null && closings.TryGetValue(Packed(day), out var closing))
            why.Add($"{County} County closed: {closing.Why}{Doubt(closing.Sure)}");
        return string.Join("; ", why);
    }

    /// <summary>The last day on or before the given one that is open on every list: a day to plan on.</summary>
    public LocalDate LastOpenDayOnOrBefore(LocalDate day)
    {
        while (!IsOpen(day))
            day = day.PlusDays(-1);
        return day;
    }

    /// <summary>
    /// The day to which a last day rolls under Code Civ. Proc. §§ 12a and 12b: past Saturdays, Sundays, court holidays and the county's
    /// closing days. An argument only.
    /// </summary>
    /// <remarks>It never goes past a day that is a holiday on the State's list alone. Example: Saturday 4 July 2026 rolls to Monday 6 July;
    /// Columbus Day, Monday 12 October 2026, does not roll.</remarks>
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

    /// <summary>
    /// The day to which a last day rolls if only days that both the courts' list and the State's list close are passed over.
    /// </summary>
    /// <remarks>
    /// Code Civ. Proc. §§ 12a, 135 and Civ. Code §§ 7, 10 then agree, as on a Sunday or on Labor Day; a Saturday and Columbus Day are
    /// each on one list alone and end the roll. Example: Sunday 1 March 2026 rolls to Monday 2 March.
    /// </remarks>
    public LocalDate RollForwardOnBothLists(LocalDate day)
    {
        const HolidayLists both = HolidayLists.Courts | HolidayLists.State;
        while ((ListsOn(day) & both) == both)
            day = day.PlusDays(1);
        return day;
    }

    private static string Doubt(Sure sure) => sure switch
    {
        Sure.Read or Sure.Opinion => "",
        Sure.FromMemory => " (from memory)",
        Sure.OurReading => " (not certain: ask the office)",
        _ => throw new ArgumentOutOfRangeException(nameof(sure), sure, "Not a degree of certainty."),
    };

    private static string InWords(HolidayRule rule, HolidayLists lists, bool observed) => (lists, observed) switch
    {
        (HolidayLists.State, false) => $"{rule.Name} (State holiday, not kept by the courts)",
        (HolidayLists.State, true) => $"{rule.Name}, observed (State holiday, not kept by the courts)",
        (HolidayLists.Courts, false) => $"{rule.Name} (court holiday)",
        (HolidayLists.Courts, true) => $"{rule.Name}, observed by the courts",
        (_, false) => rule.Name,
        (_, true) => $"{rule.Name}, observed",
    };

    private static byte[] YearOf(LocalDate day) => Years[day.Year - FirstYear] ??= StatutoryYear(day.Year);

    private static byte[] StatutoryYear(int year)
    {
        // One byte a day; the slot is packed from month and day, which a LocalDate holds as such.
        var table = new byte[13 << 5];
        for (var day = new LocalDate(year, 1, 1); day.Year == year; day = day.PlusDays(1))
            table[SlotInYear(day)] = (byte)CaliforniaHolidays.Weekend(day);
        // New Year's Day of the next year may be observed on the last day of this one.
        foreach (var falling in (int[])[year, year + 1])
        {
            foreach (var holiday in CaliforniaHolidays.FallingIn(falling))
            {
                if (holiday.Day.Year == year)
                    table[SlotInYear(holiday.Day)] |= (byte)holiday.Lists;
            }
        }

        return table;
    }

    private static bool InTable(LocalDate day) => day.Year is >= FirstYear and <= LastYear;

    private static int SlotInYear(LocalDate day) => (day.Month << 5) | day.Day;

    private static int Packed(LocalDate day) => (day.Year << 9) | SlotInYear(day);

    private static LocalDate Iso(LocalDate day) =>
        day.Calendar == CalendarSystem.Iso ? day : day.WithCalendar(CalendarSystem.Iso);
}
