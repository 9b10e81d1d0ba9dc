using Microsoft.Data.Sqlite;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>Copies of whole files.</summary>
internal static class WholeCopy
{
    /// <summary>Copies a database as it is at this moment, while others use it.</summary>
    /// <param name="from">The database.</param>
    /// <param name="to">The file.</param>
    /// <param name="named">How the copy is named to the user.</param>
    public static void OfDatabase(SqliteConnection from, string to, string named)
    {
        OwnerOnly.Claim(to);
        try
        {
            using var target = Unpooled.Open(to);
            from.BackupDatabase(target);
        }
        catch (SqliteException e) when (
            e.SqliteErrorCode is SQLitePCL.raw.SQLITE_FULL or SQLitePCL.raw.SQLITE_READONLY or SQLitePCL.raw.SQLITE_CANTOPEN)
        {
            // Only who is written to can be full: not the source.
            throw SqliteErrors.Translate(named, e);
        }
    }

    /// <summary>Copies a file byte by byte, down to the disk; the copy has its name when it is whole.</summary>
    /// <param name="from">The file.</param>
    /// <param name="to">Where nothing is yet.</param>
    public static void OfFile(string from, string to)
    {
        using var parts = PartFolder.In(Path.GetDirectoryName(Path.GetFullPath(to))!);
        var part = parts.Of("copy");
        using (var source = new FileStream(from, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete))
        using (var target = OwnerOnly.File(part, FileMode.CreateNew))
        {
            source.CopyTo(target);
            target.Flush(flushToDisk: true);
        }

        File.Move(part, to);
    }
}
