using System.Text;

namespace Stringline.Cli.Terminal;

/// <summary>Characters beyond ASCII, and what stands for them where they cannot be shown.</summary>
internal static class Glyphs
{
    /// <summary>Whether standard output takes Unicode: it is UTF-8, and the user has not asked for the C locale.</summary>
    public static bool TerminalShowsUnicode() =>
        Console.OutputEncoding.CodePage == Encoding.UTF8.CodePage && Locale() is not ("C" or "POSIX");

    /// <summary>The text in ASCII. Letters without a stand-in become a question mark.</summary>
    public static string ToAscii(string text)
    {
        var ascii = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            ascii.Append(rune.Value switch
            {
                < 0x80 => rune.ToString(),
                '§' => "sec.",
                '├' => "|",
                '└' => "`",
                '│' => "|",
                '─' => "-",
                '–' or '—' => "-",
                '‘' or '’' => "'",
                '“' or '”' or '«' or '»' => "\"",
                '…' => "...",
                '×' => "x",
                _ => "?",
            });
        }

        return ascii.ToString();
    }

    /// <summary>The locale of characters by the rules of POSIX: the first of these that is set and not empty.</summary>
    private static string? Locale() => ((string[])["LC_ALL", "LC_CTYPE", "LANG"])
        .Select(Environment.GetEnvironmentVariable)
        .FirstOrDefault(value => !string.IsNullOrEmpty(value));
}
