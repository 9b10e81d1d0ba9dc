using Microsoft.Data.Sqlite;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>Whole SQLite files: made beside their place, then put into it.</summary>
internal static class SqliteFile
{
    /// <summary>
    /// Makes a file in a <see cref="PartFolder"/>, and moves it to its place when it is done; when it fails, nothing is left.
    /// </summary>
    /// <param name="path">Its place.</param>
    /// <param name="make">Makes it under the name that it is given.</param>
    /// <param name="put">Moves it to its place; where it is null nothing may be there.</param>
    /// <param name="cleared">Gets what was removed that killed programs left in the folder; may be null.</param>
    public static T Finish<T>(string path, Func<string, T> make, Action<string>? put = null, List<string>? cleared = null)
    {
        try
        {
            using var parts = PartFolder.In(Path.GetDirectoryName(Path.GetFullPath(path))!);
            cleared?.AddRange(parts.Swept);
            var part = parts.Of(Path.GetFileName(path));
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
    }

    /// <summary>
    /// Leaves a file in one piece. A backup has no write-ahead log, so that it can be read from a disk that may only be read; a store has
    /// one.
    /// </summary>
    public static void Settle(string path, bool writeAheadLog)
    {
        try
        {
            using var connection = Unpooled.Open(path);
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
}
