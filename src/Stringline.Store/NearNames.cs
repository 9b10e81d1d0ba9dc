using Stringline.Tables.JobFiles.Reading;
using Stringline.Store.Sql;

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
                .Select(there => (Name: there, Steps: Nearest.Edits(Bare(name), Bare(there))))
                .Where(there => there.Steps <= Math.Max(1, Bare(name).Length / 3)
                    || there.Name.EndsWith(Ending, StringComparison.OrdinalIgnoreCase))
                .Where(there => !LogFiles.Ends.Any(end => there.Name.EndsWith(end, StringComparison.Ordinal)))
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
}
