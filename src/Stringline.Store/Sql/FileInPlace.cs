using System.Runtime.InteropServices;
using Microsoft.Data.Sqlite;

namespace Stringline.Store.Sql;

/// <summary>
/// Holds on to the file that was opened, to see whether it is still the one at its path: whoever writes into a file that was moved,
/// deleted or replaced writes where nobody looks. SQLite compares the file's inode with that at the path (SQLITE_FCNTL_HAS_MOVED,
/// https://www.sqlite.org/c3ref/c_fcntl_begin_atomic_write.html). Windows lets nobody move a file that is open.
/// </summary>
internal sealed partial class FileInPlace : IDisposable
{
    private const int HasMoved = 20;

    private readonly string path;
    private readonly string? target;
    private readonly SqliteConnection held;
    private readonly Lock gate = new();

    /// <param name="path">The file, as it was named.</param>
    public FileInPlace(string path)
    {
        this.path = path;
        target = Upkeep.SqliteSwap.Target(path);
        held = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadWrite, Pooling = false }.ToString());
        try
        {
            held.Open();

            // Having read once, it stays known to the file's other users: nobody takes the file for one that is let go.
            using var command = held.CreateCommand();
            command.CommandText = "select count(*) from sqlite_schema";
            command.ExecuteScalar();
        }
        catch
        {
            held.Dispose();
            throw;
        }
    }

    /// <summary>Whether the path still leads to the file, and a connection as well.</summary>
    public bool Holds(SqliteConnection? connection = null)
    {
        lock (gate)
            return Upkeep.SqliteSwap.Target(path) == target && IsThere(held) && (connection is null || IsThere(connection));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (gate)
            held.Dispose();
    }

    private static bool IsThere(SqliteConnection connection)
    {
        var moved = 0;
        return FileControl(connection.Handle!.DangerousGetHandle(), 0, HasMoved, ref moved) != SQLitePCL.raw.SQLITE_OK || moved == 0;
    }

    [LibraryImport("e_sqlite3", EntryPoint = "sqlite3_file_control")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.AssemblyDirectory | DllImportSearchPath.SafeDirectories)]
    private static partial int FileControl(nint database, nint name, int operation, ref int argument);
}
