using Microsoft.Data.Sqlite;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>A SQLite file that nobody else has open, and that nobody else can open until its connection is closed.</summary>
internal static class SoleUse
{
    /// <summary>
    /// Takes it. All of its log is then in the file: SQLite gives up the log of a file only to one who has it alone. On Unix whoever opens
    /// and closes a file gives up all locks that he has on it, so nothing may do that while it lasts.
    /// </summary>
    /// <returns>Null where SQLite cannot read the file: that is nobody's to be written to.</returns>
    /// <exception cref="StoreException">Another program has it open.</exception>
    public static SqliteConnection? Of(string path)
    {
        DamagedLogs.Keep(path);
        try
        {
            var connection = Unpooled.Open(path, SqliteOpenMode.ReadWrite, wait: 1);
            try
            {
                Take(connection, path);
                return connection;
            }
            catch
            {
                connection.Dispose();
                throw;
            }
        }
        catch (SqliteException e) when (e.SqliteErrorCode is SQLitePCL.raw.SQLITE_CORRUPT or SQLitePCL.raw.SQLITE_NOTADB)
        {
            return null;
        }
        catch (SqliteException e)
        {
            throw e.SqliteErrorCode is SQLitePCL.raw.SQLITE_BUSY or SQLitePCL.raw.SQLITE_LOCKED ? InUse(path)
                : SqliteErrors.Translate(path, e);
        }
    }

    private static void Take(SqliteConnection connection, string path)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "pragma locking_mode = exclusive";
        command.ExecuteScalar();
        command.CommandText = "pragma journal_mode = delete";
        if (command.ExecuteScalar() is string mode && !mode.Equals("delete", StringComparison.OrdinalIgnoreCase))
            throw InUse(path);
        command.CommandText = "begin exclusive";
        command.ExecuteNonQuery();
    }

    private static StoreException InUse(string path) => new(
        StoreFault.Busy, path, "a store that another program has open",
        "one that nobody uses: close the desk, and whatever else has it open, then try again");
}
