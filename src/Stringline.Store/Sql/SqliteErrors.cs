using Microsoft.Data.Sqlite;

namespace Stringline.Store.Sql;

/// <summary>SQLite's result codes (https://www.sqlite.org/rescode.html) in the words of this program.</summary>
internal static class SqliteErrors
{
    private const int NotPermitted = 3;
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int InputOutput = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int NotADatabase = 26;

    public static StoreException Translate(string path, SqliteException error)
    {
        var (fault, found, expected) = error.SqliteErrorCode switch
        {
            Full => (StoreFault.Full, "a disk without room for the change",
                "a disk with room; nothing of the change was written, everything before it is kept"),
            ReadOnly => (StoreFault.ReadOnly, "a file, or a disk, that may only be read",
                "a file and a folder that this user may write to; nothing was changed"),
            CannotOpen or NotPermitted =>
                (StoreFault.NotAllowed, "a file that cannot be opened",
                "a file that this user may open, in a folder that this user may write to (SQLite keeps its log beside the file)"),
            Busy or Locked => (StoreFault.Busy, "a store that another program has held for half a minute",
                "a store that is let go; try again"),
            NotADatabase => (StoreFault.NotAStore, "a file of another kind", "the file of a store"),
            Corrupt => (StoreFault.Damaged, $"a damaged database ({error.Message})", StoreException.WholeOne),
            InputOutput => (StoreFault.Failed, $"a disk that failed ({error.Message})",
                "a disk that works; nothing of the change was written"),
            _ => (StoreFault.Failed, $"a failure of the database ({error.Message})", "a store that can be read and written"),
        };
        return new StoreException(fault, path, found, expected, error);
    }
}
