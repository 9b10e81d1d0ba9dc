using SQLitePCL;
using Stringline.Store.Sql;

namespace Stringline.Web.Tests;

/// <summary>
/// Makes the desk's store fail at its n-th statement, or from it on, by SQLite's own authorizer: it is asked before each statement is
/// compiled. A rollback never fails.
/// </summary>
internal sealed class FailingStore
{
    private readonly Lock gate = new();
    private int count;
    private int? first;
    private bool andAfter;

    public FailingStore(OpenDesk desk)
    {
        var database = (SqliteDatabase)((SqlJournal)desk.Journal).Database;
        strdelegate_authorizer asked = (_, action, what, _, _, _) => Asked(action, what);
        database.Opened = connection => raw.sqlite3_set_authorizer(connection.Handle, asked, null);
    }

    /// <summary>Whether a statement has failed since it was told to fail.</summary>
    public bool HasFailed { get; private set; }

    /// <summary>Fails at the n-th statement from now, and at those after it too or not.</summary>
    public void FailAt(int statement, bool andAfter)
    {
        lock (gate)
            (count, first, this.andAfter, HasFailed) = (0, statement, andAfter, false);
    }

    /// <summary>Fails no more.</summary>
    public void Mend()
    {
        lock (gate)
            first = null;
    }

    private int Asked(int action, string? what)
    {
        lock (gate)
        {
            if (first is not { } n || what == "ROLLBACK" || !IsStatement(action))
                return raw.SQLITE_OK;
            count++;
            if (count != n && !(andAfter && count > n))
                return raw.SQLITE_OK;
            HasFailed = true;
            return raw.SQLITE_DENY;
        }
    }

    private static bool IsStatement(int action) => action is raw.SQLITE_SELECT or raw.SQLITE_INSERT or raw.SQLITE_UPDATE
        or raw.SQLITE_DELETE or raw.SQLITE_TRANSACTION or raw.SQLITE_PRAGMA;
}
