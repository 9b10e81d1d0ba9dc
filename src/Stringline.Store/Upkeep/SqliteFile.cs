using Microsoft.Data.Sqlite;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>Whole SQLite files: made beside their place, then put into it.</summary>
internal static class SqliteFile
{
    /// <summary>Makes a file under another name, and moves it to its place when it is done; when it fails, nothing is left.</summary>
    public static T Finish<T>(string path, Func<string, T> make)
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
            File.Move(part, path);
            return made;
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
    public static void Copy(Database from, string path) => from.Run(source =>
    {
        using var target = new SqliteConnection(Unpooled(path));
        target.Open();
        ((SqliteConnection)source).BackupDatabase(target);
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

    /// <summary>Moves a store's files away, its log included.</summary>
    public static void SetAside(string path, string to)
    {
        foreach (var end in (string[])["", "-wal", "-shm"])
        {
            if (File.Exists(path + end))
                File.Move(path + end, to + end);
        }
    }

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
