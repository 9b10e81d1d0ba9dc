using Microsoft.Data.Sqlite;

namespace Stringline.Store.Sql;

/// <summary>
/// Connections to SQLite files that are closed when they are disposed of, and not kept for the next one who opens the file.
/// </summary>
internal static class Unpooled
{
    /// <summary>Opens one.</summary>
    /// <param name="path">The file.</param>
    /// <param name="mode">How; by default the file is made where it is not there.</param>
    /// <param name="wait">For how many seconds it waits for a file that another holds.</param>
    public static SqliteConnection Open(string path, SqliteOpenMode mode = SqliteOpenMode.ReadWriteCreate, int wait = 30)
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder { DataSource = path, Mode = mode, Pooling = false, DefaultTimeout = wait }.ToString());
        try
        {
            connection.Open();
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }
}
