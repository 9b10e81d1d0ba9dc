using System.Data.Common;
using Npgsql;

namespace Stringline.Store.Sql;

/// <summary>PostgreSQL's error codes (its manual, appendix A) in the words of this program.</summary>
internal static class PostgresErrors
{
    public static StoreException Translate(string store, DbException error)
    {
        var (fault, found, expected) = error is PostgresException refused
            ? Answered(refused)
            : (StoreFault.Unreachable, $"a server that does not answer ({(error.InnerException ?? error).Message})",
                "a PostgreSQL server that can be reached; what was being written is not in the store unless a reading shows it");
        return new StoreException(fault, store, found, expected, error);
    }

    private static (StoreFault Fault, string Found, string Expected) Answered(PostgresException error) => error.SqlState switch
    {
        PostgresErrorCodes.DiskFull or PostgresErrorCodes.OutOfMemory =>
            (StoreFault.Full, $"a server without room ({error.MessageText})", "a server with room; nothing of the change was written"),
        PostgresErrorCodes.ReadOnlySqlTransaction =>
            (StoreFault.ReadOnly, "a database that may only be read", "one that this user may write to; nothing was changed"),
        PostgresErrorCodes.InvalidPassword or PostgresErrorCodes.InvalidAuthorizationSpecification
            or PostgresErrorCodes.InsufficientPrivilege =>
            (StoreFault.NotAllowed, $"a server that refuses ({error.MessageText})",
                "a user with rights to the store, and the right password"),
        PostgresErrorCodes.InvalidCatalogName =>
            (StoreFault.Missing, $"no such database ({error.MessageText})", "a database that the server has"),
        PostgresErrorCodes.LockNotAvailable or PostgresErrorCodes.DeadlockDetected or PostgresErrorCodes.SerializationFailure
            or PostgresErrorCodes.TooManyConnections =>
            (StoreFault.Busy, $"a server that is busy ({error.MessageText})", "a store that is let go; try again"),
        PostgresErrorCodes.DataCorrupted or PostgresErrorCodes.IndexCorrupted =>
            (StoreFault.Damaged, $"a damaged database ({error.MessageText})",
                "a whole one; restore the last backup that `stringline store check` finds whole"),
        PostgresErrorCodes.AdminShutdown or PostgresErrorCodes.CrashShutdown or PostgresErrorCodes.CannotConnectNow =>
            (StoreFault.Unreachable, $"a server that is going down or coming up ({error.MessageText})", "a server that answers; try again"),
        _ => (StoreFault.Failed, $"a failure of the database ({error.SqlState}: {error.MessageText})",
            "a store that can be read and written"),
    };
}
