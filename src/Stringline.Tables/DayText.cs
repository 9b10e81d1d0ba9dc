using System.Globalization;
using Stringline.Law.Counting;

namespace Stringline.Tables;

/// <summary>Days in a file and on the command line: four digits of year, two of month, two of day.</summary>
public static class DayText
{
    private const int FirstYear = 1900;
    private const int LastYear = 2199;

    /// <summary>The day as <c>2026-03-02</c>.</summary>
    public static string Write(LocalDate day) => LawText.IsoDay(day);

    /// <summary>Reads a day strictly. Says what would be right where the text is no day.</summary>
    /// <returns>Null where the day was read; else what would be right.</returns>
    public static string? Read(string text, out LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(text);
        day = default;
        if (text.Length != 10 || text[4] != '-' || text[7] != '-'
            || !Digits(text, 0, 4, out var year) || !Digits(text, 5, 2, out var month) || !Digits(text, 8, 2, out var number))
        {
            return "a day as year-month-day, such as 2026-03-02";
        }

        if (year is < FirstYear or > LastYear)
            return $"a day from {FirstYear}-01-01 to {LastYear}-12-31";
        if (month is < 1 or > 12)
            return "a day of the calendar: months run from 01 to 12";
        var days = CalendarSystem.Iso.GetDaysInMonth(year, month);
        if (number < 1 || number > days)
        {
            var name = CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);
            return $"a day of the calendar: {name} {year} has {days} days";
        }

        day = new LocalDate(year, month, number);
        return null;
    }

    private static bool Digits(string text, int start, int length, out int number) =>
        int.TryParse(text.AsSpan(start, length), NumberStyles.None, CultureInfo.InvariantCulture, out number);
}
