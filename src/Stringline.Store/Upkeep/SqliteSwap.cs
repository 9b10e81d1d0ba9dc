using Microsoft.Data.Sqlite;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>
/// Puts a finished file at a store's path so that at every moment the whole old or the whole new store is there, whatever is cut off:
/// the old one is let go and copied aside, and the new one is renamed over it, which is one step.
/// </summary>
internal static class SqliteSwap
{
    private static readonly string[] Logs = ["-wal", "-shm", "-journal"];

    /// <summary>The file that a path means: a link is followed to its target, so that other links to it go on to mean the same.</summary>
    public static string Followed(string path) => Target(path) ?? path;

    /// <summary>To what a link leads in the end; null where the path is no link.</summary>
    public static string? Target(string path) =>
        new FileInfo(path).LinkTarget is null ? null : File.ResolveLinkTarget(path, returnFinalTarget: true)!.FullName;

    /// <summary>Puts the file where none is.</summary>
    /// <param name="part">The finished file.</param>
    /// <param name="path">Its place.</param>
    /// <param name="aside">What is added to the names of logs that a lost store left at the place: they would spoil the new one.</param>
    /// <returns>Where such logs are now; none where there were none.</returns>
    public static IReadOnlyList<string> Put(string part, string path, string aside)
    {
        List<string> kept = [];
        foreach (var log in Logs.Where(log => File.Exists(path + log)))
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
    /// <returns>Where it is kept.</returns>
    /// <exception cref="StoreException">Another program has it open. It stays as it was.</exception>
    public static string Replace(string part, string path, string aside)
    {
        if (IsDatabase(path))
            LetGo(path);
        var kept = path + aside;

        // The logs first: where the file stands under its new name it is whole.
        foreach (var end in Logs.Append("").Where(end => File.Exists(path + end)))
            CopyWhole(path + end, kept + end);

        // After it was let go there are none, but beside a file that SQLite could not read, which is none of theirs to finish.
        foreach (var log in Logs)
            File.Delete(path + log);
        File.Move(part, path, overwrite: true);
        return kept;
    }

    // Of a file that is none SQLite would throw the log away: https://www.sqlite.org/fileformat2.html, "The Database Header".
    private static bool IsDatabase(string path)
    {
        Span<byte> head = stackalloc byte[16];
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) == head.Length && head.SequenceEqual("SQLite format 3\0"u8);
    }

    // SQLite gives up the log of a file only to one who has it alone, and then all of it is in the file.
    private static void LetGo(string path)
    {
        try
        {
            using var connection = new SqliteConnection(new SqliteConnectionStringBuilder
            {
                DataSource = path, Mode = SqliteOpenMode.ReadWrite, Pooling = false, DefaultTimeout = 1,
            }.ToString());
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "pragma journal_mode = delete";
            if (command.ExecuteScalar() is string mode && !mode.Equals("delete", StringComparison.OrdinalIgnoreCase))
                throw InUse(path);
        }
        catch (SqliteException e) when (e.SqliteErrorCode is SQLitePCL.raw.SQLITE_BUSY or SQLitePCL.raw.SQLITE_LOCKED)
        {
            throw InUse(path);
        }
        catch (SqliteException e) when (e.SqliteErrorCode is SQLitePCL.raw.SQLITE_CORRUPT or SQLitePCL.raw.SQLITE_NOTADB)
        {
            // Damaged: that is why it is replaced. It is kept byte for byte with its logs.
        }
        catch (SqliteException e)
        {
            throw SqliteErrors.Translate(path, e);
        }
    }

    private static StoreException InUse(string path) => new(
        StoreFault.Busy, path, "a store that another program has open", "one that nobody uses: close the desk, and whatever else has it open, then try again");

    private static void CopyWhole(string from, string to)
    {
        var part = to + ".part";
        using (var source = new FileStream(from, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete))
        using (var target = OwnerOnly.File(part, FileMode.Create))
        {
            source.CopyTo(target);
            target.Flush(flushToDisk: true);
        }

        File.Move(part, to);
    }
}
