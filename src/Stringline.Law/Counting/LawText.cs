using System.Globalization;
using NodaTime.Text;

namespace Stringline.Law.Counting;

/// <summary>How days and dollars are written: the same on every machine.</summary>
public static class LawText
{
    /// <summary>A day with its weekday: <c>2026-06-27 (Sat)</c>.</summary>
    public static string Day(LocalDate day) => $"{IsoDay(day)} ({Weekday(day.DayOfWeek)})";

    /// <summary>A day as a person reads it: <c>June 27, 2026</c>.</summary>
    public static string LongDay(LocalDate day) => LongDays.Pattern.Format(day);

    /// <summary>A day alone: <c>2026-06-27</c>.</summary>
    public static string IsoDay(LocalDate day)
    {
        // The first day of the calendar, which stands for no day at all, has a year before 1.
        if (day.Year < 0)
            return string.Create(CultureInfo.InvariantCulture, $"{day.Year:0000}-{day.Month:00}-{day.Day:00}");

        // Written digit by digit: a portfolio writes millions of days.
        return string.Create(10, day, static (text, day) =>
        {
            Digits(text[..4], day.Year);
            text[4] = '-';
            Digits(text[5..7], day.Month);
            text[7] = '-';
            Digits(text[8..], day.Day);
        });
    }

    /// <summary>A text that begins a sentence.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static void Digits(Span<char> text, int number)
    {
        for (var i = text.Length - 1; i >= 0; i--)
        {
            text[i] = (char)('0' + (number % 10));
            number /= 10;
        }
    }

    private static string Weekday(IsoDayOfWeek day) => day switch
    {
        IsoDayOfWeek.Monday => "Mon",
        IsoDayOfWeek.Tuesday => "Tue",
        IsoDayOfWeek.Wednesday => "Wed",
        IsoDayOfWeek.Thursday => "Thu",
        IsoDayOfWeek.Friday => "Fri",
        IsoDayOfWeek.Saturday => "Sat",
        IsoDayOfWeek.Sunday => "Sun",
        _ => throw new ArgumentOutOfRangeException(nameof(day), day, "Not a day of the week."),
    };

    /// <summary>Dollars and cents: <c>$1,234.56</c>, <c>-$20.00</c>.</summary>
    public static string Money(decimal dollars) => dollars < 0
        ? "-$" + (-dollars).ToString("N2", CultureInfo.InvariantCulture)
        : "$" + dollars.ToString("N2", CultureInfo.InvariantCulture);

    // Made when the first such day is written, and not at every start.
    private static class LongDays
    {
        public static LocalDatePattern Pattern { get; } = LocalDatePattern.CreateWithInvariantCulture("MMMM d, uuuu");
    }
}
