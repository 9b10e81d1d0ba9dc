using System.Globalization;
using System.Text;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Short quotations from a refused file that are safe to show in a terminal.</summary>
internal static class Excerpt
{
    private const int Longest = 60;

    /// <summary>A piece as it stands in the file, shortened and with every invisible character spelled out.</summary>
    public static string Of(ReadOnlySpan<byte> utf8, JsonPiece piece) => Of(utf8[piece.Start..piece.End]);

    /// <summary>A text, shortened and with every invisible character spelled out.</summary>
    public static string Of(string text) => Of(Encoding.UTF8.GetBytes(text.Length > Longest * 2 ? text[..(Longest * 2)] : text));

    /// <summary>Bytes that are UTF-8, shortened and with every invisible character spelled out.</summary>
    public static string Of(ReadOnlySpan<byte> utf8)
    {
        var shown = new StringBuilder();
        var count = 0;
        var blank = false;
        foreach (var rune in Encoding.UTF8.GetString(utf8[..Math.Min(utf8.Length, 4 * Longest * 2)]).EnumerateRunes())
        {
            var isBlank = rune.Value is ' ' or '\t' or '\r' or '\n';
            if (isBlank && blank)
                continue;
            blank = isBlank;
            if (++count > Longest)
                return shown.Append(" ...").ToString();
            if (isBlank)
                shown.Append(' ');
            else if (Signs.IsRefused(rune))
                shown.Append(CultureInfo.InvariantCulture, $"\\u{rune.Value:X4}");
            else
                shown.Append(rune.ToString());
        }

        return shown.ToString();
    }
}
