using System.Globalization;
using NodaTime.Text;
using Stringline.Law.Facts;

namespace Stringline.Law.Reasoning;

/// <summary>
/// How what stands in the holes of a sentence is said, the same on every machine. A door that has its own words for a field, an entry or a
/// day derives from this.
/// </summary>
/// <remarks>
/// A hole may say how: a day <c>:iso</c>, without its weekday; a text or a sentence <c>:capital</c>, as the beginning of a sentence; a pointer
/// <c>:aside</c>, <c>:see</c>, <c>:add</c> or <c>:enter</c>, in parentheses that a door may leave out. A pointer without any is a word of the
/// sentence.
/// </remarks>
public class LawText
{
    /// <summary>Makes a door's own.</summary>
    protected LawText()
    {
    }

    /// <summary>The words of the job file and of the command line.</summary>
    public static LawText Instance { get; } = new();

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

    /// <summary>A sentence, alone or within another.</summary>
    public string Of(Sentence sentence) => sentence.Say(Of, OfText);

    /// <summary>What stands in a hole that says how; null where it does not.</summary>
    public string Of(object value, string? format) => (value, format) switch
    {
        (LocalDate day, null) => OfDay(day, true),
        (LocalDate day, "iso") => OfDay(day, false),
        (DaySpan { IsExact: true } span, null) => OfDay(span.Earliest, true),
        (DaySpan span, null) => $"between {OfDay(span.Earliest, true)} and {OfDay(span.Latest, true)}",
        (IPointer pointer, null) => OfPointer(pointer),
        (IPointer pointer, { } how) => OfAside([pointer], how),
        (IReadOnlyList<IPointer> pointers, { } how) => OfAside(pointers, how),
        (decimal dollars, null) => OfText(Money(dollars)),
        (string text, "capital") => OfText(Capital(text)),
        (IFormattable other, _) => OfText(other.ToString(format, CultureInfo.InvariantCulture)),
        (_, null) => OfText(value.ToString() ?? ""),
        _ => throw new FormatException($"\"{format}\" says nothing of {value}."),
    };

    /// <summary>A day.</summary>
    /// <param name="day">The day.</param>
    /// <param name="named">Whether the sentence has it with its weekday.</param>
    protected virtual string OfDay(LocalDate day, bool named) => named ? Day(day) : IsoDay(day);

    /// <summary>Words without a meaning of their own: what somebody entered, a name, an amount.</summary>
    protected virtual string OfText(string text) => text;

    /// <summary>A pointer that is a word of the sentence.</summary>
    protected virtual string OfPointer(IPointer aim) => aim.Name;

    /// <summary>Pointers beside the sentence, with the space before them; empty where this door leaves them out.</summary>
    /// <param name="pointers">What is pointed to; not empty.</param>
    /// <param name="how">What is to be done there: <c>aside</c> for nothing, else the word.</param>
    protected virtual string OfAside(IReadOnlyList<IPointer> pointers, string how) =>
        $" ({(how == "aside" ? "" : how + " ")}{string.Join(", ", pointers.Select(pointer => pointer.Name))})";

    // Made when the first such day is written, and not at every start.
    private static class LongDays
    {
        public static LocalDatePattern Pattern { get; } = LocalDatePattern.CreateWithInvariantCulture("MMMM d, uuuu");
    }
}
