using System.Text;
using System.Text.Json;

namespace Stringline.Exchange.Reading;

/// <summary>Says where a text stops being JSON and what is likely meant.</summary>
internal static class BrokenJson
{
    /// <summary>The fault of a text that is not JSON.</summary>
    public static Fault Fault(ReadOnlySpan<byte> utf8, string file, JsonException error)
    {
        var line = (int)(error.LineNumber ?? 0);
        var start = LineStart(utf8, line);
        var at = Math.Min(start + (int)(error.BytePositionInLine ?? 0), utf8.Length);
        var column = Encoding.UTF8.GetCharCount(utf8[Math.Min(start, at)..at]) + 1;
        var rest = utf8[at..].TrimStart(" \t\r\n"u8);
        var found = rest.IsEmpty ? "the end of the file" : Excerpt.Of(FirstLine(utf8[at..]));
        return new Fault(file, $"line {line + 1}, column {column}", found, Expected(utf8, at, rest));
    }

    private static string Expected(ReadOnlySpan<byte> utf8, int at, ReadOnlySpan<byte> rest)
    {
        var before = utf8[..at].TrimEnd(" \t\r\n"u8);
        if (rest.IsEmpty)
            return "the rest of the JSON text: the file stops in the middle";
        if (DeepestBefore(utf8[..at]) >= JsonTree.DeepestLevel)
            return $"braces and brackets at most {JsonTree.DeepestLevel} levels deep";
        return rest[0] switch
        {
            (byte)'/' or (byte)'#' => "no comment: JSON has none",
            (byte)'}' or (byte)']' when before.EndsWith(","u8) => "no comma before a closing brace or bracket",
            (byte)'\'' => "quotation marks \" around texts and names",
            (byte)'"' or (byte)'{' or (byte)'[' => "a comma, colon or closing brace before it: JSON text",
            < 0x20 => "no control character inside a text: write a line break as \\n, a tab as \\t",
            _ => "JSON text",
        };
    }

    private static int DeepestBefore(ReadOnlySpan<byte> utf8)
    {
        var depth = 0;
        var inText = false;
        for (var i = 0; i < utf8.Length; i++)
        {
            if (inText && utf8[i] == '\\')
                i++;
            else if (utf8[i] == '"')
                inText = !inText;
            else if (!inText && utf8[i] is (byte)'{' or (byte)'[')
                depth++;
            else if (!inText && utf8[i] is (byte)'}' or (byte)']')
                depth--;
        }

        return depth;
    }

    private static int LineStart(ReadOnlySpan<byte> utf8, int line)
    {
        var start = 0;
        for (; line > 0; line--)
        {
            var end = utf8[start..].IndexOf((byte)'\n');
            if (end < 0)
                break;
            start += end + 1;
        }

        return start;
    }

    private static ReadOnlySpan<byte> FirstLine(ReadOnlySpan<byte> utf8)
    {
        var end = utf8.IndexOfAny((byte)'\r', (byte)'\n');
        return end <= 0 ? utf8[..Math.Min(utf8.Length, 60)] : utf8[..end];
    }
}
