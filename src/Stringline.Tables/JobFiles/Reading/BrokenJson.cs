using System.Buffers;
using System.Text;
using System.Text.Json;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Says where a text stops being JSON and what is likely meant.</summary>
internal static class BrokenJson
{
    private static readonly SearchValues<byte> Delimiters = SearchValues.Create(" \t\r\n,:{}[]\""u8);

    /// <summary>The fault of a text that is not JSON.</summary>
    public static Fault Fault(ReadOnlySpan<byte> utf8, string file, JsonException error)
    {
        var line = (int)(error.LineNumber ?? 0);
        var start = LineStart(utf8, line);
        var at = Math.Min(start + (int)(error.BytePositionInLine ?? 0), utf8.Length);
        var column = Encoding.UTF8.GetCharCount(utf8[Math.Min(start, at)..at]) + 1;
        var rest = utf8[at..].TrimStart(" \t\r\n"u8);
        var (found, expected) = Tell(utf8, at, rest);
        return new Fault(file, $"line {line + 1}, column {column}", found, expected);
    }

    private static (string Found, string Expected) Tell(ReadOnlySpan<byte> utf8, int at, ReadOnlySpan<byte> rest)
    {
        const string Stops = "the rest of the JSON text: the file stops in the middle";
        if (rest.IsEmpty)
            return ("the end of the file", Stops);
        if (utf8[at] < 0x20)
            return ("a line break, tab or other control character inside a text", "\\n for a line break and \\t for a tab");

        var found = Excerpt.Of(FirstLine(rest));
        var before = utf8[..at].TrimEnd(" \t\r\n"u8);
        var depth = DepthAfter(before);
        if (depth >= JsonTree.DeepestLevel)
            return (found, $"braces and brackets at most {JsonTree.DeepestLevel} levels deep");
        if (depth == 0 && !before.IsEmpty)
            return (found, "nothing more: the job file has ended before it");
        if (rest.IndexOfAny(Delimiters) < 0)
            return (found, Stops);
        return (found, rest[0] switch
        {
            (byte)'/' or (byte)'#' => "no comment: JSON has none",
            (byte)'}' or (byte)']' when before.EndsWith(","u8) => "no comma before a closing brace or bracket",
            (byte)'\'' => "quotation marks \" around texts and names",
            (byte)'"' or (byte)'{' or (byte)'[' => "a comma or colon before it",
            _ => "JSON text",
        });
    }

    private static int DepthAfter(ReadOnlySpan<byte> utf8)
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
        return end < 0 ? utf8 : utf8[..end];
    }
}
