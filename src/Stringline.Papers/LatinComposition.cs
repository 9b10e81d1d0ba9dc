using System.Text;

namespace Stringline.Papers;

/// <summary>
/// Joins a Latin letter and a loose accent after it into the one letter they make: a name typed on some keyboards arrives in pieces.
/// Done here because <see cref="string.Normalize(NormalizationForm)"/> does nothing when globalization is invariant.
/// </summary>
internal static class LatinComposition
{
    private static readonly Lazy<Dictionary<(char Base, char Mark), char>> Pairs = new(Read);

    /// <summary>The text with loose accents joined as far as a letter for them exists; anything else is left as it is.</summary>
    public static string Of(string text)
    {
        if (!HasMark(text))
            return text;
        var joined = new StringBuilder(text.Length);
        foreach (var letter in text)
        {
            if (IsMark(letter) && joined.Length > 0 && Pairs.Value.TryGetValue((joined[^1], letter), out var whole))
                joined[^1] = whole;
            else
                joined.Append(letter);
        }

        return joined.ToString();
    }

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

    private static Dictionary<(char, char), char> Read()
    {
        var pairs = new Dictionary<(char, char), char>();
        foreach (var line in Resources.Text("data/latin-composition.txt").Split('\n').Where(l => l.Length > 0 && l[0] != '#'))
        {
            var points = line.Split(' ').Select(p => (char)ushort.Parse(p, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToArray();
            pairs[(points[1], points[2])] = points[0];
        }

        return pairs;
    }
}
