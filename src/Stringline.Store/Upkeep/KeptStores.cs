using System.Text.RegularExpressions;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>The files under which restores keep the stores that were at a path before.</summary>
internal static partial class KeptStores
{
    /// <summary>What is added to the name of the store, and followed by the moment.</summary>
    public const string Aside = "_replaced_";

    /// <summary>They, oldest first.</summary>
    public static IReadOnlyList<string> Beside(string path)
    {
        var (folder, name) = (Path.GetDirectoryName(Path.GetFullPath(path))!, Path.GetFileName(path));
        return Directory.Exists(folder)
            ? [.. Directory.GetFiles(folder).Where(file => IsOne(Path.GetFileName(file), name)).Order(StringComparer.Ordinal)]
            : [];
    }

    /// <summary>
    /// Removes second names of the very file that is at the path: a restore that was killed before the new store had its name leaves one,
    /// and whoever opened the store by it would keep another log for the same file. Nothing of the store is lost with the name.
    /// </summary>
    /// <param name="path">The file without links. The caller has it open with a lock, so that no restore is at work on it.</param>
    /// <returns>Those that were removed.</returns>
    public static IReadOnlyList<string> RemoveSecondNames(string path)
    {
        // A log beside it: somebody has opened the store by that name, and the log holds what he wrote.
        List<string> second = [.. Beside(path).Where(kept => HardLink.IsSame(path, kept) && !LogFiles.Beside(kept).Any())];
        second.ForEach(File.Delete);
        return second;
    }

    /// <summary>Whether a name is one of a store that is kept.</summary>
    /// <param name="name">The name.</param>
    /// <param name="store">The name of the store.</param>
    public static bool IsOne(string name, string store) =>
        name.StartsWith(store + Aside, StringComparison.Ordinal) && Moment().IsMatch(name[(store.Length + Aside.Length)..]);

    // A second restore within the same second adds a number.
    [GeneratedRegex(@"^\d{8}_\d{6}(_\d+)?$")]
    private static partial Regex Moment();
}
