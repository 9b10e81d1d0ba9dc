namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Finds the known word that a misspelled one most likely means.</summary>
public static class Nearest
{
    /// <summary>
    /// The candidate that needs the fewest single-letter edits, or null where none is near: at most one edit for every three letters. A
    /// number is not misspelled, it is another number.
    /// </summary>
    public static string? To(string word, IEnumerable<string> candidates)
    {
        if (word.Length > 60 || word.All(char.IsAsciiDigit))
            return null;
        string? best = null;
        var least = int.MaxValue;
        foreach (var candidate in candidates)
        {
            // As many edits as letters are too many or too few: such a one is not near, and may be long.
            if (Math.Abs(candidate.Length - word.Length) > Math.Max(1, word.Length / 3))
                continue;
            var edits = Edits(word.ToUpperInvariant(), candidate.ToUpperInvariant());
            if (edits < least)
                (best, least) = (candidate, edits);
        }

        return best is not null && least <= Math.Max(1, Math.Min(word.Length, best.Length) / 3) ? best : null;
    }

    /// <summary>The clause <c> (did you mean "x"?)</c>, or nothing.</summary>
    public static string Clause(string word, IEnumerable<string> candidates) =>
        To(word, candidates) is { } near ? $" (did you mean \"{near}\"?)" : "";

    /// <summary>Insertions, deletions, replacements and swaps of neighbors that turn one word into the other.</summary>
    public static int Edits(string from, string to)
    {
        var table = new int[from.Length + 1, to.Length + 1];
        for (var i = 0; i <= from.Length; i++)
            table[i, 0] = i;
        for (var j = 0; j <= to.Length; j++)
            table[0, j] = j;
        for (var i = 1; i <= from.Length; i++)
        {
            for (var j = 1; j <= to.Length; j++)
            {
                var replaced = table[i - 1, j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1);
                table[i, j] = Math.Min(replaced, Math.Min(table[i - 1, j], table[i, j - 1]) + 1);
                if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1])
                    table[i, j] = Math.Min(table[i, j], table[i - 2, j - 2] + 1);
            }
        }

        return table[from.Length, to.Length];
    }
}
