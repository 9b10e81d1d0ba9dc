namespace Stringline.Papers.Preflight;

/// <summary>Checks of prescribed wording: its letters, its type, its last sentence.</summary>
internal static class WordingChecks
{
    /// <summary>The checks that are called for.</summary>
    public static IEnumerable<PreflightCheck> Of(ReadBack read, PaperExpectations expected)
    {
        var wording = expected.Wording ?? throw new ArgumentException("No wording is expected.", nameof(expected));
        var sought = Layout.Typography.Of(wording.Body).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        var words = read.Body;
        var exact = Find(words, sought, StringComparison.Ordinal);
        var found = exact ?? Find(words, sought, StringComparison.OrdinalIgnoreCase);
        yield return new PreflightCheck("notice wording", exact is not null,
            exact is not null ? $"equal to {wording.Section}, letter for letter"
            : $"not the words of {wording.Section}{Difference(words, sought)}", wording.Section);
        if (expected.WordingPoints is { } points)
            yield return Type(found, points, wording.Section);
        if (expected.LastSentenceInCapitals)
            yield return Capitals(found, wording.Paragraphs[^1].Split(' ', StringSplitOptions.RemoveEmptyEntries).Length, wording.Section);
    }

    private static PreflightCheck Type(IReadOnlyList<ReadWord>? found, double points, string section)
    {
        if (found is null)
            return new PreflightCheck("notice type", false, "the notice was not found", section);
        var least = found.SelectMany(w => w.Letters).Min(l => l.Points);
        var light = found.FirstOrDefault(w => w.Letters.Any(l => !l.Bold));
        return new PreflightCheck("notice type", least >= points - 0.005 && light is null,
            $"{least:0.##} points at the smallest, {(light is null ? "all boldface" : $"'{light.Text}' is not boldface")}; "
            + $"{points:0.##}-point boldface is the least", section);
    }

    private static PreflightCheck Capitals(IReadOnlyList<ReadWord>? found, int words, string section)
    {
        if (found is null)
            return new PreflightCheck("last sentence in capitals", false, "the notice was not found", section);
        var wrong = found.TakeLast(words).FirstOrDefault(w => w.Text.StartsWith("www.", StringComparison.OrdinalIgnoreCase)
            ? w.Text.Any(char.IsUpper)
            : w.Text.Any(char.IsLower));
        return new PreflightCheck("last sentence in capitals", wrong is null,
            wrong is null ? "capitals, the web address in lower case"
            : $"'{wrong.Text}' is not; capitals, but the web address in lower case, would be right", section);
    }

    /// <summary>Whether a text stands in type at least as large as the largest otherwise on the paper.</summary>
    public static PreflightCheck Largest(ReadBack read, string text, string section)
    {
        var all = read.Body;
        if (Find(all, text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries), StringComparison.Ordinal) is not { } found)
            return new PreflightCheck("largest type", false, "the text that must be largest was not found", section);
        var least = found.SelectMany(w => w.Letters).Min(l => l.Points);
        var other = read.Pages.SelectMany(p => p.Words).Except(found).SelectMany(w => w.Letters).Select(l => l.Points).DefaultIfEmpty(0)
            .Max();
        return new PreflightCheck("largest type", least >= other - 0.005,
            $"{least:0.##} points at the smallest; the largest otherwise is {other:0.##}", section);
    }

    private static List<ReadWord>? Find(IReadOnlyList<ReadWord> words, string[] sought, StringComparison comparison)
    {
        for (var at = 0; at < words.Count; at++)
        {
            var end = at;
            if (sought.All(s => (end = After(words, end, s, comparison)) > 0))
                return [.. words.Skip(at).Take(end - at)];
        }

        return null;
    }

    /// <summary>
    /// The place after a word that begins at a place, or -1 where another stands there. A word wider than its line goes on below;
    /// the prescribed words are all narrower, so only what is filled into them ever does.
    /// </summary>
    private static int After(IReadOnlyList<ReadWord> words, int at, string sought, StringComparison comparison)
    {
        for (var read = 0; at >= 0 && at < words.Count; at++)
        {
            var text = words[at].Text;
            if (string.Compare(sought, read, text, 0, text.Length, comparison) != 0
                || (read > 0 && words[at].Baseline == words[at - 1].Baseline))
                return -1;
            if ((read += text.Length) == sought.Length)
                return at + 1;
        }

        return -1;
    }

    private static string Difference(IReadOnlyList<ReadWord> words, string[] sought)
    {
        var (best, at) = (0, -1);
        for (var start = 0; start < words.Count; start++)
        {
            var same = 0;
            while (same < sought.Length && start + same < words.Count && words[start + same].Text == sought[same])
                same++;
            if (same > best)
                (best, at) = (same, start);
        }

        if (at < 0)
            return ": none of them was found";
        var there = at + best < words.Count ? words[at + best].Text : "the end of the paper";
        return $": after '{sought[best - 1]}' stands '{there}'; '{sought[Math.Min(best, sought.Length - 1)]}' would be right";
    }
}
