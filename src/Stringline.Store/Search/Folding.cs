using System.Globalization;
using System.Text;
using Stringline.Law.Facts;

namespace Stringline.Store.Search;

/// <summary>
/// Cuts texts into words of lower-case ASCII letters and digits: accents fall away, and a letter of another script stands as its code
/// point. The databases' own ways of cutting and folding differ from each other; with these words both can only give the same answers.
/// </summary>
internal static class Folding
{
    /// <summary>Words are cut here; no word of a job is so long, and PostgreSQL takes no longer ones than 2 KB.</summary>
    private const int LongestWord = 200;

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
        if (!rune.IsBmp)
            word.Append(Code(rune));
        else
            word.Append(LatinLetters.Plain((char)rune.Value) ?? Code(new Rune(LatinLetters.Bare((char)rune.Value))));
    }

    private static string Code(Rune rune) => string.Create(CultureInfo.InvariantCulture, $"u{Rune.ToLowerInvariant(rune).Value:x6}");
}
