using System.Runtime.InteropServices;
using Microsoft.Data.Sqlite;

namespace Stringline.Store.Sql;

/// <summary>
/// Holds on to the file that was opened, to see whether it is still the one at its path: whoever writes into a file that was moved,
/// deleted or replaced writes where nobody looks. SQLite compares the file's inode with that at the path (SQLITE_FCNTL_HAS_MOVED,
/// https://www.sqlite.org/c3ref/c_fcntl_begin_atomic_write.html), but with all links followed when it opened it; so they are followed
/// again here. Windows lets nobody move a file that is open.
/// </summary>
internal sealed partial class FileInPlace : IDisposable
{
    private const int HasMoved = 20;

    private readonly string path;
    private readonly string followed;
    private readonly SqliteConnection held;
    private readonly Lock gate = new();

    /// <param name="path">The file, as it was named.</param>
    public FileInPlace(string path)
    {
        this.path = path;
        followed = Links.Follow(path);
        held = Unpooled.Open(path, SqliteOpenMode.ReadWrite);
        try
        {
            Read();
        }
        catch
        {
            held.Dispose();
            throw;
        }
    }

    /// <summary>The file without links.</summary>
    public string File => FileOf(held);

    /// <summary>
    /// Reads once, and so stays known to the file's other users for as long as this lives: nobody can take the file for one that was let
    /// go. Only a file with a write-ahead log keeps its readers known (https://www.sqlite.org/wal.html), so one that has got its log is
    /// read again.
    /// </summary>
    public void Read()
    {
        lock (gate)
        {
            using var command = held.CreateCommand();
            command.CommandText = "select count(*) from sqlite_schema";
            command.ExecuteScalar();
        }
    }

    /// <summary>Whether the path still leads to the file, and a connection as well.</summary>
    public bool Holds(SqliteConnection? connection = null)
    {
        lock (gate)
            return Links.Follow(path) == followed && IsThere(held)
                && (connection is null || (FileOf(connection) == FileOf(held) && IsThere(connection)));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (gate)
            held.Dispose();
    }

    private static string FileOf(SqliteConnection connection) =>
        SQLitePCL.raw.sqlite3_db_filename(connection.Handle!, "main").utf8_to_string();

    private static bool IsThere(SqliteConnection connection)
    {
        var moved = 0;
        return FileControl(connection.Handle!.DangerousGetHandle(), 0, HasMoved, ref moved) != SQLitePCL.raw.SQLITE_OK || moved == 0;
    }

    [LibraryImport("e_sqlite3", EntryPoint = "sqlite3_file_control")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.AssemblyDirectory | DllImportSearchPath.SafeDirectories)]
    private static partial int FileControl(nint database, nint name, int operation, ref int argument);
}
