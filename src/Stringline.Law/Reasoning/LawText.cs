using System.Globalization;
using NodaTime.Text;

namespace Stringline.Law.Reasoning;

/// <summary>How days and dollars are written in reasons: the same on every machine.</summary>
public sealed class LawText : IFormatProvider, ICustomFormatter
{
    private static readonly LocalDatePattern DayPattern =
        LocalDatePattern.CreateWithInvariantCulture("uuuu-MM-dd' ('ddd')'");

    /// <summary>The one instance.</summary>
    public static LawText Instance { get; } = new();

    /// <summary>A day with its weekday: <c>2026-06-27 (Sat)</c>.</summary>
    public static string Day(LocalDate day) => DayPattern.Format(day);

    /// <summary>A day alone: <c>2026-06-27</c>.</summary>
    public static string IsoDay(LocalDate day) => LocalDatePattern.Iso.Format(day);

    /// <summary>Dollars and cents: <c>$1,234.56</c>, <c>-$20.00</c>.</summary>
    public static string Money(decimal dollars) => dollars < 0
        ? "-$" + (-dollars).ToString("N2", CultureInfo.InvariantCulture)
        : "$" + dollars.ToString("N2", CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public object? GetFormat(Type? formatType) => formatType == typeof(ICustomFormatter) ? this : null;

    /// <inheritdoc/>
    public string Format(string? format, object? arg, IFormatProvider? formatProvider) => arg switch
    {
        LocalDate day => Day(day),
        decimal dollars => Money(dollars),
        IFormattable other => other.ToString(format, CultureInfo.InvariantCulture),
        null => "",
        _ => arg.ToString() ?? "",
    };
}
