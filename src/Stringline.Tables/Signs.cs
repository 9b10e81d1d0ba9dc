using System.Globalization;
using System.Text;

namespace Stringline.Tables;

/// <summary>Which characters a text of this program may hold, and which another format takes.</summary>
public static class Signs
{
    /// <summary>
    /// Whether a character may not come into a job: it cannot be seen, or no text holds it. Control characters, line and paragraph
    /// separators, marks that turn the direction of writing and other format characters, and the code points that are no characters. A
    /// combining accent may come; so may the joiner and the non-joiner, without which names in Persian, Hindi and other scripts are
    /// misspelled, and the format characters that are seen (the number signs of Arabic and the like).
    /// </summary>
    /// <param name="rune">The character.</param>
    public static bool IsRefused(Rune rune) => IsInvisible(rune) || IsNoncharacter(rune)
        || (Rune.GetUnicodeCategory(rune) == UnicodeCategory.Format && !IsNeeded(rune.Value));

    /// <summary>Whether a character breaks the line or can make a paper read differently from what it holds.</summary>
    /// <param name="rune">The character.</param>
    internal static bool IsInvisible(Rune rune) => Rune.GetUnicodeCategory(rune)
        is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        || rune.Value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069) or 0x200E or 0x200F or 0xFEFF;

    /// <summary>Whether a code point is no character and never will be one (The Unicode Standard, section 23.7).</summary>
    /// <param name="rune">The code point.</param>
    public static bool IsNoncharacter(Rune rune) => (rune.Value & 0xFFFE) == 0xFFFE || rune.Value is >= 0xFDD0 and <= 0xFDEF;

    /// <summary>A text on one line with every sign spelled out that cannot be seen or that a terminal would obey, as <c>\u202E</c>; half
    /// characters too.</summary>
    /// <param name="text">The text.</param>
    public static string Spelled(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var shown = new StringBuilder(text.Length);
        for (var rest = text.AsSpan(); rest.Length > 0;)
        {
            var whole = Rune.DecodeFromUtf16(rest, out var rune, out var length) == System.Buffers.OperationStatus.Done;
            if (rune.Value is '\r' or '\n' or '\t')
                shown.Append(' ');
            else if (whole && !IsRefused(rune))
                shown.Append(rest[..length]);
            else
                shown.Append(System.Globalization.CultureInfo.InvariantCulture, $"\\u{(whole ? rune.Value : rest[0]):X4}");
            rest = rest[length..];
        }

        return shown.ToString();
    }

    /// <summary>
    /// A text without what XML 1.0 § 2.2 forbids and what is no character: a workbook that holds one cannot be opened at all. Half
    /// characters go too.
    /// </summary>
    /// <param name="text">The text.</param>
    public static string ForXml(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var fits = true;
        foreach (var c in text)
            fits &= c is >= ' ' and < '\uD800' or '\t' or '\n' or '\r';
        if (fits)
            return text;
        var kept = new StringBuilder(text.Length);
        for (var rest = text.AsSpan(); rest.Length > 0;)
        {
            var whole = Rune.DecodeFromUtf16(rest, out var rune, out var length) == System.Buffers.OperationStatus.Done;
            if (whole && !IsNoncharacter(rune) && (rune.Value >= ' ' || rune.Value is '\t' or '\n' or '\r'))
                kept.Append(rest[..length]);
            rest = rest[length..];
        }

        return kept.ToString();
    }

    private static bool IsNeeded(int sign) =>
        sign is 0x200C or 0x200D or (>= 0x0600 and <= 0x0605) or 0x06DD or 0x070F or 0x0890 or 0x0891 or 0x08E2 or 0x110BD or 0x110CD;
}
