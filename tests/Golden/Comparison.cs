namespace Stringline.Golden;

/// <summary>Holds two runs against each other.</summary>
internal static class Comparison
{
    /// <summary>Says which texts differ, how many of each kind, and the first line that differs of the first so many.</summary>
    /// <returns>0 where both runs are equal, else 1.</returns>
    public static int Of(string before, string after, int shown)
    {
        var differs = new SortedDictionary<string, int>(StringComparer.Ordinal);
        string[] jobs = [.. Names(before).Union(Names(after)).Order(StringComparer.Ordinal)];
        var (texts, left) = (0L, shown);
        foreach (var job in jobs)
        {
            var (old, now) = (Texts(before, job), Texts(after, job));
            foreach (var what in old.Keys.Union(now.Keys).Order(StringComparer.Ordinal))
            {
                texts++;
                var (a, b) = (old.GetValueOrDefault(what), now.GetValueOrDefault(what));
                if (a == b)
                    continue;
                var kind = what[(what.IndexOf(' ', StringComparison.Ordinal) + 1)..];
                differs[kind] = differs.GetValueOrDefault(kind) + 1;
                if (left-- > 0)
                    Console.WriteLine($"{job} {what}\n{FirstDifference(a, b)}");
            }
        }

        foreach (var (kind, count) in differs)
            Console.WriteLine($"{count,8}  {kind}");
        Console.WriteLine($"{jobs.Length} jobs, {texts} texts, {differs.Values.Sum()} differ.");
        return differs.Count == 0 && texts > 0 ? 0 : 1;
    }

    /// <summary>Prints a text.</summary>
    public static int Show(string kept, string job, string what)
    {
        var texts = Texts(kept, job);
        Console.WriteLine(texts.TryGetValue(what, out var text) ? text : string.Join('\n', texts.Keys));
        return texts.ContainsKey(what) ? 0 : 1;
    }

    private static IEnumerable<string> Names(string folder) =>
        Directory.GetFiles(folder, "*.br").Select(path => Path.GetFileNameWithoutExtension(path));

    private static IReadOnlyDictionary<string, string> Texts(string folder, string job) =>
        Path.Combine(folder, job + ".br") is var path && File.Exists(path) ? KeptTexts.Read(path) : new Dictionary<string, string>();

    private static string FirstDifference(string? before, string? after)
    {
        if (before is null || after is null)
            return before is null ? "  is new" : "  is gone";
        var (old, now) = (before.Split('\n'), after.Split('\n'));
        var line = 0;
        while (line < old.Length && line < now.Length && old[line] == now[line])
            line++;
        return $"  line {line + 1}\n  - {Line(old, line)}\n  + {Line(now, line)}";
    }

    private static string Line(string[] lines, int at) =>
        at >= lines.Length ? "(ended)" : lines[at].Length > 400 ? lines[at][..400] : lines[at];
}
