using System.Globalization;
using System.Reflection;
using System.Text;

namespace Stringline.Store.Search;

/// <summary>
/// Cuts texts into words of lower-case ASCII letters and digits: accents fall away, and a letter of another script stands as its code
/// point. The databases' own ways of cutting and folding differ from each other; with these words both can only give the same answers.
/// </summary>
internal static class Folding
{
    /// <summary>Words are cut here; no word of a job is so long, and PostgreSQL takes no longer ones than 2 KB.</summary>
    private const int LongestWord = 200;

    private static readonly Lazy<Dictionary<char, string>> Bases = new(Read);

    /// <summary>The words of a text, in order.</summary>
    public static List<string> Words(string text)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.IsAscii && char.IsAsciiLetterOrDigit((char)rune.Value))
                word.Append((char)(char.IsAsciiLetterUpper((char)rune.Value) ? rune.Value | 0x20 : rune.Value));
            else if (Rune.IsLetterOrDigit(rune))
                Fold(rune, word);
            else if (Rune.GetUnicodeCategory(rune) != UnicodeCategory.NonSpacingMark)
                End(word, words);
        }

        End(word, words);
        return words;
    }

    /// <summary>The words of a number such as <c>2026-0012345</c> in one; null where it is one word anyway.</summary>
    public static string? Joined(List<string> words) => words.Count > 1 ? Cut(string.Concat(words)) : null;

    private static void End(StringBuilder word, List<string> words)
    {
        if (word.Length > 0)
            words.Add(Cut(word.ToString()));
        word.Clear();
    }

    private static string Cut(string word) => word.Length <= LongestWord ? word : word[..LongestWord];

    private static void Fold(Rune rune, StringBuilder word)
    {
        if (rune.IsBmp && Bases.Value.TryGetValue((char)rune.Value, out var letters))
            word.Append(letters);
        else
            word.Append(Code(rune));
    }

    private static string Code(Rune rune) => string.Create(CultureInfo.InvariantCulture, $"u{Rune.ToLowerInvariant(rune).Value:x6}");

    private static Dictionary<char, string> Read()
    {
        // Letters that Unicode does not take apart into a letter and a mark, as they are commonly written without the mark.
        var bases = new Dictionary<char, string>
        {
            ['ß'] = "ss", ['ẞ'] = "ss", ['æ'] = "ae", ['Æ'] = "ae", ['œ'] = "oe", ['Œ'] = "oe", ['ø'] = "o", ['Ø'] = "o",
            ['đ'] = "d", ['Đ'] = "d", ['ð'] = "d", ['Ð'] = "d", ['ł'] = "l", ['Ł'] = "l", ['ħ'] = "h", ['Ħ'] = "h", ['ı'] = "i",
            ['þ'] = "th", ['Þ'] = "th", ['ſ'] = "s",
        };
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("latin-composition.txt")
            ?? throw new InvalidOperationException("The table of Latin letters is missing from the program.");
        using var lines = new StreamReader(stream);
        var parts = new Dictionary<char, char>();
        while (lines.ReadLine() is { } line)
        {
            if (line.Length > 0 && line[0] != '#')
                parts[Letter(line, 0)] = Letter(line, 5);
        }

        foreach (var (letter, first) in parts)
        {
            var bare = first;
            while (parts.TryGetValue(bare, out var barer))
                bare = barer;
            bases[letter] = bases.TryGetValue(bare, out var spelled) ? spelled : char.IsAscii(bare) ? char.ToLowerInvariant(bare).ToString()
                : Code(new Rune(bare));
        }

        return bases;
    }

    private static char Letter(string line, int at) =>
        (char)ushort.Parse(line.AsSpan(at, 4), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
}
