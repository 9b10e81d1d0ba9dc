using System.Text;
using System.Text.RegularExpressions;

namespace Stringline.LawWatch;

/// <summary>
/// Reads the Legislature's plain text of a code: the number of a section and a period alone on a line, a blank line, its text, a blank
/// line, its history in parentheses, a line of dashes. Headings of chapters stand between sections.
/// </summary>
internal static partial class CodeFile
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The sections of a file in their order; two of one number are two versions.</summary>
    /// <param name="path">The file.</param>
    /// <param name="code">How its code is cited.</param>
    /// <exception cref="UnreadableException">It is no such text.</exception>
    public static List<CodeSection> Read(string path, string code)
    {
        var lines = Lines(path);
        var sections = new List<CodeSection>();
        for (var at = 0; at < lines.Length; at++)
        {
            if (NumberAt(lines, at) is not { } number)
                continue;
            var end = at + 1;
            while (end < lines.Length && !Dashes().IsMatch(lines[end]) && NumberAt(lines, end) is null)
                end++;
            sections.Add(Section($"{code} § {number}", lines[(at + 1)..end], $"{path}: line {at + 1}"));
            at = end - 1;
        }

        return sections.Count > 0 ? sections : throw new UnreadableException(
            $"{path}: line 1: no section begins on any line. Right: its number and a period alone on a line, with a blank line before and "
            + "after.");
    }

    // A line such as "8306." can also end a sentence that was broken across lines; then the line before it is not blank.
    private static string? NumberAt(string[] lines, int at) => Number().Match(lines[at]) is { Success: true } match
        && (at == 0 || lines[at - 1].Length == 0 || Dashes().IsMatch(lines[at - 1]))
        && (at + 1 == lines.Length || lines[at + 1].Length == 0) ? match.Groups[1].Value : null;

    private static CodeSection Section(string section, string[] lines, string where)
    {
        var text = string.Join('\n', lines).Trim();
        if (text.Length == 0)
        {
            throw new UnreadableException(
                $"{where}: nothing stands under {section}. Right: its text, or at least its history in parentheses.");
        }

        var last = text.LastIndexOf("\n\n", StringComparison.Ordinal);
        var history = last < 0 ? text : text[(last + 2)..];
        return History().IsMatch(history)
            ? new CodeSection(section, last < 0 ? "" : text[..last], Blanks().Replace(history, " "))
            : throw new UnreadableException(
                $"{where}: {section} ends without its history. Right: a last paragraph such as (Amended by Stats. 2027, Ch. 12, Sec. 3.)");
    }

    private static string[] Lines(string path)
    {
        var line = 1;
        try
        {
            // The bytes one line at a time, so that a byte that is no UTF-8 is told by its line.
            var lines = new List<string>();
            var bytes = File.ReadAllBytes(path).AsSpan();
            bytes = bytes.StartsWith(Encoding.UTF8.Preamble) ? bytes[Encoding.UTF8.Preamble.Length..] : bytes;
            for (; ; line++)
            {
                var end = bytes.IndexOf((byte)'\n');
                lines.Add(Utf8.GetString(end < 0 ? bytes : bytes[..end]).Trim());
                if (end < 0)
                    return [.. lines];
                bytes = bytes[(end + 1)..];
            }
        }
        catch (DecoderFallbackException)
        {
            throw new UnreadableException($"{path}: line {line}: a byte that is no UTF-8. Right: the Legislature's plain text, in UTF-8.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UnreadableException($"{path}: line {line}: {e.Message} Right: a file that can be read.");
        }
    }

    // Some copies put the number in square brackets.
    [GeneratedRegex(@"^\[?(\d+(\.\d+)?[a-z]?)\.\]?$")]
    private static partial Regex Number();

    [GeneratedRegex(@"^-{5,}$")]
    private static partial Regex Dashes();

    [GeneratedRegex(@"^\((History|Added|Amended|Enacted|Repealed|Renumbered|Formerly|Heading)\b.*\)$", RegexOptions.Singleline)]
    private static partial Regex History();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
