using Stringline.Store.Sql;
using Stringline.Store.Upkeep;

namespace Stringline.Store;

/// <summary>Opens stores.</summary>
public static class Journals
{
    /// <summary>The longest name of a job, a person or an attached file, in characters.</summary>
    public const int LongestName = 200;

    /// <summary>What begins the address of a store on a PostgreSQL server; the rest is a connection string.</summary>
    public const string PostgresPrefix = "postgres:";

    /// <summary>Opens a store and brings it to this program's version.</summary>
    /// <param name="address">
    /// The path of a SQLite file, or <c>postgres:</c> and a connection string such as <c>Host=db;Database=office;Username=me</c>. On
    /// PostgreSQL the tables stand in the schema <c>stringline</c> unless the connection string says <c>Search Path</c>.
    /// </param>
    /// <param name="clock">Says when a change is recorded.</param>
    /// <param name="open">What to do where there is no store.</param>
    /// <exception cref="StoreException">It cannot be opened.</exception>
    public static IJournal Open(string address, IClock clock, OpenStore open = OpenStore.MustExist) => Connect(address, clock, open);

    internal static SqlJournal Connect(string address, IClock clock, OpenStore open) => Connect(StoreAddress.Read(address), clock, open);

    internal static SqlJournal Connect(StoreAddress address, IClock clock, OpenStore open)
    {
        ArgumentNullException.ThrowIfNull(clock);
        Database database = address switch
        {
            StoreAddress.OnServer server => new PostgresDatabase(server),
            StoreAddress.InFile file => new SqliteDatabase(file.Path, open),
            _ => throw new InvalidOperationException("Neither a file nor a server."),
        };
        try
        {
            // SQLite goes over what it does not take as soon as somebody writes.
            if (address is StoreAddress.InFile there && open != OpenStore.ReadOnly)
                DamagedLogs.Keep(there.Path);
            database.Run(connection =>
            {
                Migrator.Bring(database, connection, open, clock);
                database.NotePlace(connection);
            });
            return new SqlJournal(database, clock);
        }
        catch
        {
            database.Dispose();
            throw;
        }
    }
}

/// <summary>What to do where there is no store, or one of an earlier version.</summary>
public enum OpenStore
{
    /// <summary>It must exist; one of an earlier version is brought to this one.</summary>
    MustExist,

    /// <summary>It is made where it does not exist.</summary>
    OrMake,

    /// <summary>
    /// It is made where it does not exist, but a file only together with the first change that is written to it: whoever only looks, or
    /// whose entries are refused, leaves nothing behind. On a server it is made at once.
    /// </summary>
    OrMakeOnWriting,

    /// <summary>It must exist and be of this version; nothing is ever written, not even beside it.</summary>
    ReadOnly,
}
