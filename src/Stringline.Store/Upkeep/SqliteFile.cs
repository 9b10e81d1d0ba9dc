using Microsoft.Data.Sqlite;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>Whole SQLite files: made beside their place, then put into it.</summary>
internal static class SqliteFile
{
    /// <summary>Makes a file under another name, and moves it to its place when it is done; when it fails, nothing is left.</summary>
    /// <param name="path">Its place.</param>
    /// <param name="make">Makes it under the name that it is given.</param>
    /// <param name="put">Moves it to its place; where it is null nothing may be there.</param>
    public static T Finish<T>(string path, Func<string, T> make, Action<string>? put = null)
    {
        var part = path + ".part";
        try
        {
            OwnerOnly.Folder(Path.GetDirectoryName(Path.GetFullPath(path))!);
            Remove(part);
            OwnerOnly.Claim(part);
            var made = make(part);
            using (var file = new FileStream(part, FileMode.Open, FileAccess.ReadWrite))
                file.Flush(flushToDisk: true);
            if (put is null)
                SqliteSwap.Put(part, path, "_stray");
            else
                put(part);
            return made;
        }
        catch (IOException e) when (IsFull(e))
        {
            throw new StoreException(StoreFault.Full, path, "a disk without room", "a disk with room; nothing was left there", e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(StoreFault.NotAllowed, path, e.Message, "a place that this user may write to", e);
        }
        finally
        {
            // Where its folder could not be made there is nothing to remove.
            if (Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(part))))
                Remove(part);
        }
    }

    /// <summary>Copies a database as it is at this moment, while others use it.</summary>
    /// <param name="from">The database.</param>
    /// <param name="part">The file.</param>
    /// <param name="path">How it is named to the user.</param>
    public static void Copy(Database from, string part, string path) => from.Run(source =>
    {
        using var target = new SqliteConnection(Unpooled(part));
        try
        {
            target.Open();
            ((SqliteConnection)source).BackupDatabase(target);
        }
        catch (SqliteException e) when (e.SqliteErrorCode is SQLitePCL.raw.SQLITE_FULL or SQLitePCL.raw.SQLITE_READONLY or SQLitePCL.raw.SQLITE_CANTOPEN)
        {
            // Only who is written to can be full: not the source.
            throw SqliteErrors.Translate(path, e);
        }
    });

    /// <summary>
    /// Leaves a file in one piece. A backup has no write-ahead log, so that it can be read from a disk that may only be read; a store has one.
    /// </summary>
    public static void Settle(string path, bool writeAheadLog)
    {
        try
        {
            using var connection = new SqliteConnection(Unpooled(path));
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = writeAheadLog ? "pragma journal_mode = wal" : "pragma journal_mode = delete";
            command.ExecuteNonQuery();
        }
        catch (SqliteException e)
        {
            throw SqliteErrors.Translate(path, e);
        }
    }

    // ENOSPC of Unix, ERROR_DISK_FULL and ERROR_HANDLE_DISK_FULL of Windows.
    private static bool IsFull(IOException error) => (error.HResult & 0xFFFF) is 28 or 112 or 39;

    private static void Remove(string path)
    {
        foreach (var end in (string[])["", "-wal", "-shm", "-journal"])
        {
            // Where its folder is no folder either, there is nothing to take away.
            if (File.Exists(path + end))
                File.Delete(path + end);
        }
    }

    private static string Unpooled(string path) => new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString();
}
