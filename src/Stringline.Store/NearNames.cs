namespace Stringline.Store;

/// <summary>What a store may be called that was not found under the name that was given.</summary>
public static class NearNames
{
    private const int MostNamed = 3;
    private const string Ending = ".stringline";

    /// <summary>What would be right in place of a file that is not there.</summary>
    /// <param name="path">Its path.</param>
    public static string Hint(string path)
    {
        var near = Of(path);
        return (near.Count == 0 ? "the file of a store" : "the file of a store; did you mean " + string.Join(" or ", near) + "?")
            + (near.Count == 0 ? "; a new one is made with --new" : " A new one is made with --new");
    }

    /// <summary>Files of the same folder that are called nearly so, or that are called as stores are; the nearest first.</summary>
    /// <param name="path">The path that was given.</param>
    public static IReadOnlyList<string> Of(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var name = Path.GetFileName(path);
        var folder = Path.GetDirectoryName(path) is { Length: > 0 } named ? named : ".";
        try
        {
            return [.. Directory.EnumerateFiles(folder)
                .Select(file => Path.GetFileName(file))
                .Select(there => (Name: there, Steps: Steps(Bare(name), Bare(there))))
                .Where(there => there.Steps <= Math.Max(1, Bare(name).Length / 3) || there.Name.EndsWith(Ending, StringComparison.OrdinalIgnoreCase))
                .Where(there => !there.Name.EndsWith("-wal", StringComparison.Ordinal) && !there.Name.EndsWith("-shm", StringComparison.Ordinal))
                .OrderBy(there => there.Steps).ThenBy(there => there.Name, StringComparer.Ordinal)
                .Take(MostNamed)
                .Select(there => folder == "." ? there.Name : Path.Combine(folder, there.Name))];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Without such a folder, or without leave to look into it, nothing is near.
            return [];
        }
    }

    private static string Bare(string name) =>
        (name.EndsWith(Ending, StringComparison.OrdinalIgnoreCase) ? name[..^Ending.Length] : name).ToUpperInvariant();

    // Letters put in, taken out, changed, or two that changed places (Damerau's distance with neighbors only).
    private static int Steps(string from, string to)
    {
        var (before, last, now) = (new int[to.Length + 1], Enumerable.Range(0, to.Length + 1).ToArray(), new int[to.Length + 1]);
        for (var i = 1; i <= from.Length; i++)
        {
            now[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                now[j] = Math.Min(Math.Min(last[j] + 1, now[j - 1] + 1), last[j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1])
                    now[j] = Math.Min(now[j], before[j - 2] + 1);
            }

            (before, last, now) = (last, now, before);
        }

        return last[to.Length];
    }
}
