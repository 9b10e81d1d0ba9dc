using System.Collections.Frozen;
using System.Globalization;
using System.Reflection;
using System.Text;

namespace Stringline.Law.Facts;

/// <summary>
/// The Latin letters with marks in which names are written (<c>data/latin-composition.txt</c>): how a loose mark joins its letter, and how
/// a letter is written without marks. Done here because <see cref="string.Normalize(NormalizationForm)"/> does nothing when globalization
/// is invariant. The words of the search are made with it: another plain letter needs every store's index made anew.
/// </summary>
public static class LatinLetters
{
    private const string Table = "latin-composition.txt";

    private static readonly Lazy<FrozenDictionary<char, (char Base, char Mark)>> Parts = new(Read);

    private static readonly Lazy<FrozenDictionary<(char Base, char Mark), char>> Whole =
        new(() => Parts.Value.ToFrozenDictionary(pair => pair.Value, pair => pair.Key));

    /// <summary>The text with loose marks joined as far as a letter for them exists; anything else is left as it is.</summary>
    public static string Joined(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!HasMark(text))
            return text;
        var joined = new StringBuilder(text.Length);
        foreach (var letter in text)
        {
            if (IsMark(letter) && joined.Length > 0 && Whole.Value.TryGetValue((joined[^1], letter), out var whole))
                joined[^1] = whole;
            else
                joined.Append(letter);
        }

        return joined.ToString();
    }

    /// <summary>The letter without its marks, in its case; a letter without marks itself.</summary>
    public static char Bare(char letter)
    {
        while (!char.IsAscii(letter) && Parts.Value.TryGetValue(letter, out var parts))
            letter = parts.Base;
        return letter;
    }

    /// <summary>The lower-case ASCII letters as which a letter is commonly written; null where it is none of these or no letter.</summary>
    public static string? Plain(char letter) => Bare(letter) switch
    {
        // Letters that Unicode does not take apart into a letter and a mark.
        'ß' or 'ẞ' => "ss",
        'æ' or 'Æ' => "ae",
        'œ' or 'Œ' => "oe",
        'ø' or 'Ø' => "o",
        'đ' or 'Đ' or 'ð' or 'Ð' => "d",
        'ł' or 'Ł' => "l",
        'ħ' or 'Ħ' => "h",
        'ı' => "i",
        'þ' or 'Þ' => "th",
        'ſ' => "s",
        var bare when char.IsAsciiLetter(bare) => char.ToLowerInvariant(bare).ToString(),
        _ => null,
    };

    private static bool HasMark(string text)
    {
        foreach (var letter in text)
        {
            if (IsMark(letter))
                return true;
        }

        return false;
    }

    private static bool IsMark(char letter) => letter is >= '\u0300' and <= '\u036F';

    private static FrozenDictionary<char, (char, char)> Read()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Table)
            ?? throw new InvalidOperationException($"{Table} is not embedded in Stringline.Law.");
        using var lines = new StreamReader(stream, Encoding.UTF8);
        var parts = new Dictionary<char, (char, char)>();
        while (lines.ReadLine() is { } line)
        {
            if (line.Length > 0 && line[0] != '#')
                parts[Letter(line, 0)] = (Letter(line, 5), Letter(line, 10));
        }

        return parts.ToFrozenDictionary();
    }

    private static char Letter(string line, int at) =>
        (char)ushort.Parse(line.AsSpan(at, 4), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
}
