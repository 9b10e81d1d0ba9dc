using System.Globalization;
using Microsoft.Data.Sqlite;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>
/// Puts a finished file at a store's path so that at every moment the whole old or the whole new store is there, whatever is cut off:
/// nobody else may have the old one open, it gets a second name beside its own, and the new one is renamed over the first, which is one
/// step.
/// </summary>
internal static class SqliteSwap
{
    /// <summary>Puts the file where none is.</summary>
    /// <param name="part">The finished file.</param>
    /// <param name="path">Its place.</param>
    /// <param name="aside">What is added to the names of logs that a lost store left at the place: they would spoil the new one.</param>
    /// <returns>Where such logs are now; none where there were none.</returns>
    /// <exception cref="StoreException">A file is there by now. It stays as it is.</exception>
    public static IReadOnlyList<string> Put(string part, string path, string aside)
    {
        // Made by another program meanwhile: its logs are in use.
        if (File.Exists(path))
            throw new StoreException(StoreFault.Exists, path, "something that is there already",
                "another name, or a place where nothing is");
        List<string> kept = [];
        foreach (var log in LogFiles.Beside(path).ToList())
        {
            File.Move(path + log, path + aside + log);
            kept.Add(path + aside + log);
        }

        File.Move(part, path);
        return kept;
    }

    /// <summary>Puts the file in the place of one that is there, which is kept beside it.</summary>
    /// <param name="part">The finished file.</param>
    /// <param name="path">Its place.</param>
    /// <param name="aside">What is added to the name of what was there.</param>
    /// <param name="meanwhile">Called when the old one is kept and still in its place, for tests; may be null.</param>
    /// <param name="cleared">Gets the second names that were removed, which killed restores left; may be null.</param>
    /// <returns>Where it is kept.</returns>
    /// <exception cref="StoreException">Another program has it open. It stays as it was.</exception>
    public static string Replace(string part, string path, string aside, Action? meanwhile = null, List<string>? cleared = null)
    {
        // Of two restores within a second the second takes another name.
        var kept = path + aside;
        for (var i = 2; File.Exists(kept); i++)
            kept = string.Create(CultureInfo.InvariantCulture, $"{path}{aside}_{i}");

        // Nobody else may open the old one until the new one has its name: what is written between would be in neither.
        using var alone = IsDatabase(path) ? SoleUse.Of(path) : null;
        if (alone is null)
        {
            CopyAside(path, kept);
        }
        else
        {
            var second = KeptStores.RemoveSecondNames(path);
            cleared?.AddRange(second);
            if (!HardLink.Make(path, kept))
                CopyAside(alone, kept);
        }

        meanwhile?.Invoke();
        File.Move(part, path, overwrite: true);
        return kept;
    }

    // What SQLite cannot read is nobody's to be written to. The logs first: where the file stands under its new name it is whole.
    private static void CopyAside(string path, string kept)
    {
        foreach (var end in LogFiles.Beside(path).Append("").ToList())
            WholeCopy.OfFile(path + end, kept + end);
        foreach (var log in LogFiles.Ends)
            File.Delete(path + log);
    }

    // Where the disk knows no second name for a file.
    private static void CopyAside(SqliteConnection alone, string kept)
    {
        using var parts = PartFolder.In(Path.GetDirectoryName(Path.GetFullPath(kept))!);
        var part = parts.Of("copy");
        WholeCopy.OfDatabase(alone, part, kept);
        File.Move(part, kept);
    }

    // Of a file that is none SQLite would throw the log away: https://www.sqlite.org/fileformat2.html, "The Database Header".
    private static bool IsDatabase(string path)
    {
        Span<byte> head = stackalloc byte[16];
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) == head.Length && head.SequenceEqual("SQLite format 3\0"u8);
    }
}
