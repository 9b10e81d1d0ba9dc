using System.Globalization;
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
        // Made by another program meanwhile: its logs are in use.
        if (File.Exists(path))
            throw new IOException("A file is there already.");
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
    /// <param name="meanwhile">Called when the old one is kept and still in its place, for tests; may be null.</param>
    /// <returns>Where it is kept.</returns>
    /// <exception cref="StoreException">Another program has it open. It stays as it was.</exception>
    public static string Replace(string part, string path, string aside, Action? meanwhile = null)
    {
        // Of two restores within a second the second takes another name.
        var kept = path + aside;
        for (var i = 2; File.Exists(kept); i++)
            kept = string.Create(CultureInfo.InvariantCulture, $"{path}{aside}_{i}");

        // Nobody else may open the old one until the new one has its name: what is written between would be in neither. On Unix whoever
        // opens and closes a file gives up the locks that he has on it, so from here on nothing does.
        using var alone = IsDatabase(path) ? Alone(path) : null;
        if (alone is null)
            CopyAside(path, kept);
        else if (!HardLink.Make(path, kept))
            CopyAside(alone, kept);
        meanwhile?.Invoke();
        File.Move(part, path, overwrite: true);
        return kept;
    }

    // What SQLite cannot read is nobody's to be written to. The logs first: where the file stands under its new name it is whole.
    private static void CopyAside(string path, string kept)
    {
        foreach (var end in Logs.Append("").Where(end => File.Exists(path + end)))
            CopyWhole(path + end, kept + end);
        foreach (var log in Logs)
            File.Delete(path + log);
    }

    // Where the disk knows no second name for a file.
    private static void CopyAside(SqliteConnection alone, string kept)
    {
        var part = kept + ".part";
        OwnerOnly.Claim(part);
        using (var target = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = part, Pooling = false }.ToString()))
        {
            target.Open();
            alone.BackupDatabase(target);
        }

        File.Move(part, kept);
    }

    // Of a file that is none SQLite would throw the log away: https://www.sqlite.org/fileformat2.html, "The Database Header".
    private static bool IsDatabase(string path)
    {
        Span<byte> head = stackalloc byte[16];
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) == head.Length && head.SequenceEqual("SQLite format 3\0"u8);
    }

    // SQLite gives up the log of a file only to one who has it alone, and then all of it is in the file; the lock is kept to the end.
    private static SqliteConnection? Alone(string path)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder
        {
            DataSource = path, Mode = SqliteOpenMode.ReadWrite, Pooling = false, DefaultTimeout = 1,
        }.ToString());
        try
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "pragma locking_mode = exclusive";
            command.ExecuteScalar();
            command.CommandText = "pragma journal_mode = delete";
            if (command.ExecuteScalar() is string mode && !mode.Equals("delete", StringComparison.OrdinalIgnoreCase))
                throw InUse(path);
            command.CommandText = "begin exclusive";
            command.ExecuteNonQuery();
            return connection;
        }
        catch (SqliteException e) when (e.SqliteErrorCode is SQLitePCL.raw.SQLITE_CORRUPT or SQLitePCL.raw.SQLITE_NOTADB)
        {
            // Damaged: that is why it is replaced. It is kept byte for byte with its logs.
            connection.Dispose();
            return null;
        }
        catch (SqliteException e)
        {
            connection.Dispose();
            throw e.SqliteErrorCode is SQLitePCL.raw.SQLITE_BUSY or SQLitePCL.raw.SQLITE_LOCKED ? InUse(path) : SqliteErrors.Translate(path, e);
        }
        catch
        {
            connection.Dispose();
            throw;
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
