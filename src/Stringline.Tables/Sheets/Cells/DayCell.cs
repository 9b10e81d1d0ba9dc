using System.Globalization;

namespace Stringline.Tables.Sheets.Cells;

/// <summary>In which order a file writes the parts of a day such as 3/4/2026.</summary>
public enum DayOrder
{
    /// <summary>
    /// As in the United States, month first, unless the file itself shows that it writes the day first; then it is refused.
    /// </summary>
    MonthFirstUnlessShown,

    /// <summary>Month first: somebody said so.</summary>
    MonthFirst,

    /// <summary>Day first: somebody said so.</summary>
    DayFirst,
}

/// <summary>What a cell says as a day.</summary>
/// <param name="Day">The day; null where it says none.</param>
/// <param name="Expected">What would be right; null where a day was read.</param>
/// <param name="BothWays">Whether it could be read with month or day first, to different days.</param>
/// <param name="OnlyDayFirst">Whether it is a day only if the day is written first.</param>
/// <param name="OnlyMonthFirst">Whether it is a day only if the month is written first.</param>
public readonly record struct DayReading(LocalDate? Day, string? Expected, bool BothWays = false, bool OnlyDayFirst = false,
    bool OnlyMonthFirst = false);

/// <summary>
/// Reads days as accounting systems write them: M/D/YYYY, MM-DD-YY, 2026-03-02, 20260302, Mar 2, 2026, 2-Mar-2026, spreadsheet serials;
/// a time of day after it is left off.
/// </summary>
public static class DayCell
{
    private const string Shapes = "a day such as 3/2/2026, 03-02-26 or 2026-03-02";
    private const int FirstYear = 1980;
    private const int LastYear = 2099;

    // Serial of a spreadsheet whose days begin in 1900: 1 January 2000 and 31 December 2099. Smaller numbers are no day of a job.
    private const int FirstSerial = 36526;
    private const int LastSerial = 73050;

    // Years of two digits from here on would be 2080 or 1980: nobody can tell.
    private const int FirstDoubtfulYear = 80;

    private static readonly LocalDate SerialZero = new(1899, 12, 30);
    private static readonly string[] Months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

    /// <summary>Reads a cell that is not empty.</summary>
    public static DayReading Read(Cell cell, DayOrder order)
    {
        switch (cell.Kind)
        {
            case CellKind.Day:
                return InRange(cell.Day);
            case CellKind.Number:
                return Serial(decimal.Floor(cell.Number));
            case CellKind.Text:
                return Text(cell.ToString(), order);
            default:
                return new(null, Shapes);
        }
    }

    private static DayReading Text(string text, DayOrder order)
    {
        text = WithoutTime(text);
        if (text.All(char.IsAsciiDigit))
        {
            return text.Length switch
            {
                5 => Serial(int.Parse(text, CultureInfo.InvariantCulture)),
                8 => Make(Number(text[..4]), Number(text[4..6]), Number(text[6..])),
                _ => new(null, Shapes),
            };
        }

        Span<Range> ranges = stackalloc Range[5];
        var count = text.AsSpan().SplitAny(ranges, "/-. ,", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (count != 3)
            return new(null, Shapes);
        var (a, b, c) = (text[ranges[0]], text[ranges[1]], text[ranges[2]]);
        if (Month(a) is { } named)
            return Year(c) is { } year && IsNumber(b) ? Make(year, named, Number(b)) : new(null, Shapes);
        if (Month(b) is { } middle)
        {
            return a.Length == 4 && IsNumber(a) && IsNumber(c) ? Make(Number(a), middle, Number(c))
                : Year(c) is { } year && IsNumber(a) ? Make(year, middle, Number(a))
                : new(null, Shapes);
        }

        if (!IsNumber(a) || !IsNumber(b) || !IsNumber(c))
            return new(null, Shapes);
        if (a.Length == 4)
            return b.Length <= 2 && c.Length <= 2 ? Make(Number(a), Number(b), Number(c)) : new(null, Shapes);
        if (a.Length > 2 || b.Length > 2)
            return new(null, Shapes);
        if (Year(c) is not { } y)
            return new(null, c.Length == 2 ? "a year of four digits: this one could be in either century" : Shapes);
        return Ordered(Number(a), Number(b), y, order);
    }

    private static DayReading Ordered(int a, int b, int year, DayOrder order)
    {
        var (monthFirst, dayFirst) = (Make(year, a, b), Make(year, b, a));
        var both = monthFirst.Day is not null && dayFirst.Day is not null && a != b;
        var onlyDay = monthFirst.Day is null && dayFirst.Day is not null;
        var onlyMonth = dayFirst.Day is null && monthFirst.Day is not null;
        var read = order == DayOrder.DayFirst ? dayFirst : monthFirst;
        var expected = read.Expected is null ? null
            : order == DayOrder.DayFirst ? read.Expected + " (days are read day first, as the mapping says)"
            : read.Expected + " (days are read month first; a file that writes the day first needs \"days\": \"day-first\" in its mapping)";
        return new(read.Day, expected, both, onlyDay, onlyMonth);
    }

    private static DayReading Serial(decimal serial) => serial is >= FirstSerial and <= LastSerial
        ? new(SerialZero.PlusDays((int)serial), null)
        : new(null, $"{Shapes}, or a spreadsheet's number of a day from {FirstSerial} (2000-01-01) to {LastSerial}");

    private static DayReading Make(int year, int month, int day)
    {
        if (year is < FirstYear or > LastYear)
            return new(null, $"a day from {FirstYear} to {LastYear}");
        if (month is < 1 or > 12)
            return new(null, "a day of the calendar: there is no month " + month.ToString(CultureInfo.InvariantCulture));
        return day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month)
            ? new(new LocalDate(year, month, day), null)
            : new(null, string.Create(CultureInfo.InvariantCulture,
                $"a day of the calendar: {Name(month)} {year} has {CalendarSystem.Iso.GetDaysInMonth(year, month)} days"));
    }

    private static DayReading InRange(LocalDate day) =>
        day.Year is >= FirstYear and <= LastYear ? new(day, null) : new(null, $"a day from {FirstYear} to {LastYear}");

    private static string Name(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);

    private static int? Year(string text) => text.Length switch
    {
        4 when IsNumber(text) => Number(text),
        2 when IsNumber(text) && Number(text) < FirstDoubtfulYear => 2000 + Number(text),
        _ => null,
    };

    private static int? Month(string text)
    {
        if (text.Length < 3 || !char.IsAsciiLetter(text[0]))
            return null;
        for (var i = 0; i < Months.Length; i++)
        {
            var full = Name(i + 1);
            if (full.StartsWith(text, StringComparison.OrdinalIgnoreCase)
                || text.Equals(Months[i] == "sep" ? "sept" : Months[i], StringComparison.OrdinalIgnoreCase))
                return i + 1;
        }

        return null;
    }

    // "3/2/2026 12:00:00 AM", "2026-03-02T00:00:00": the time begins after a blank or T, with digits and a colon.
    private static string WithoutTime(string text)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0)
            return text;
        var start = colon;
        while (start > 0 && char.IsAsciiDigit(text[start - 1]))
            start--;
        return start > 0 && text[start - 1] is ' ' or 'T' ? text[..(start - 1)].Trim() : text;
    }

    private static bool IsNumber(string text) => text.Length is >= 1 and <= 4 && text.All(char.IsAsciiDigit);

    private static int Number(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);
}
