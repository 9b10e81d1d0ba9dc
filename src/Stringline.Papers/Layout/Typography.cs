using System.Text.RegularExpressions;
using NodaTime.Text;
using Stringline.Law.Facts;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Layout;

/// <summary>
/// How a text is set: curly quotation marks and apostrophes, primes for feet and minutes, days as papers write them, and a dash between the
/// ends of a range of sections. No letter of a text is changed. Prescribed wording, which is set so already, comes out as it went in.
/// </summary>
internal static partial class Typography
{
    /// <summary>The text as it is set.</summary>
    /// <param name="text">The text.</param>
    /// <param name="onSheet">Whether it stands on a sheet, whose words are ours: there every day is put in words. On a paper only one with
    /// its weekday is, which the law wrote: "2026-05-12" may be the number of a proposal.</param>
    public static string Of(string text, bool onSheet = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        text = LatinLetters.Joined(text);
        if (text.AsSpan().IndexOfAny('\'', '"') < 0 && text.AsSpan().IndexOfAny('-', '§') < 0)
            return text;
        if (text.Contains('-', StringComparison.Ordinal))
            text = Range().Replace((onSheet ? IsoDay() : NamedDay()).Replace(text, Worded), "–");
        return text.AsSpan().IndexOfAny('\'', '"') < 0 ? text : Curly(text);
    }

    private static string Worded(Match found) =>
        LocalDatePattern.Iso.Parse(found.Groups[1].Value).TryGetValue(default, out var day)
            ? found.Groups[2].Success ? DayOfWeek(day) : Day(day) : found.Value;

    private static string Curly(string text)
    {
        var set = text.ToCharArray();
        var open = false;
        for (var i = 0; i < set.Length; i++)
        {
            var before = i == 0 ? ' ' : set[i - 1];
            var after = i + 1 < set.Length ? set[i + 1] : ' ';
            if (set[i] == '"')
            {
                var begins = !open && (char.IsWhiteSpace(before) || before is '(' or '[' or '—' or '–' or '/');
                set[i] = begins ? '“' : !open && char.IsAsciiDigit(before) ? '″' : '”';
                open = begins;
            }
            else if (set[i] == '\'')
            {
                var begins = (char.IsWhiteSpace(before) || before is '(' or '[' or '“') && !char.IsAsciiDigit(after)
                    && !char.IsWhiteSpace(after);
                set[i] = begins ? '‘' : char.IsAsciiDigit(before) && !char.IsLetter(after) ? '′' : '’';
            }
        }

        return new string(set);
    }

    // A day in a file's order, with its weekday or without; an instrument number, "2026-0012345", is none.
    [GeneratedRegex(@"(?<![\d-])(\d{4}-\d\d-\d\d)(?![\d-])( \((?:Mon|Tue|Wed|Thu|Fri|Sat|Sun)\))?")]
    private static partial Regex IsoDay();

    [GeneratedRegex(@"(?<![\d-])(\d{4}-\d\d-\d\d)( \((?:Mon|Tue|Wed|Thu|Fri|Sat|Sun)\))")]
    private static partial Regex NamedDay();

    [GeneratedRegex(@"(?<=§§ [^§]{0,60}\d)-(?=\d)")]
    private static partial Regex Range();
}
