using System.Data.Common;
using Microsoft.Data.Sqlite;
using Stringline.Store.Upkeep;

namespace Stringline.Store.Sql;

/// <summary>
/// A file that is made together with the first change that is written to it. Until then an empty store in memory stands in for it, so
/// that whoever only looks leaves nothing behind; and the file appears with its first change in it, or not at all.
/// </summary>
/// <param name="path">Where it will be.</param>
internal sealed class UnmadeStore(string path) : IDisposable
{
    private readonly Lock making = new();
    private readonly string memory = new SqliteConnectionStringBuilder
    {
        DataSource = "stringline-" + Guid.NewGuid().ToString("N"), Mode = SqliteOpenMode.Memory, Cache = SqliteCacheMode.Shared,
        Pooling = false,
    }.ToString();

    private SqliteConnection? kept;

    /// <summary>Whether the file is there by now, made here or by another program.</summary>
    public bool IsMade => Path.Exists(path);

    /// <summary>A connection to the empty store.</summary>
    public SqliteConnection Open()
    {
        lock (making)
            kept ??= Empty();
        return Opened();
    }

    /// <summary>Makes the file with a change in it; where it was made meanwhile, the change goes there.</summary>
    /// <param name="work">The change.</param>
    /// <param name="there">Makes the change in the file that is there.</param>
    /// <exception cref="StoreException">It cannot be made. Nothing is then there.</exception>
    public T Change<T>(Func<DbConnection, DbTransaction, (T Result, bool Commit)> work, Func<T> there)
    {
        lock (making)
        {
            if (IsMade)
                return there();
            using var turn = MakingTurn.Of(path);
            if (IsMade)
                return there();
            var result = default(T);
            try
            {
                return SqliteFile.Finish(path, part =>
                {
                    using (var file = new SqliteDatabase(part, OpenStore.OrMake))
                    {
                        file.Run(connection => Migrator.Bring(file, connection, OpenStore.OrMake, SystemClock.Instance));
                        var commit = false;
                        result = file.Change((connection, transaction) =>
                        {
                            var done = work(connection, transaction);
                            commit = done.Commit;
                            return done;
                        });
                        if (!commit)
                            throw new NothingWrittenException();
                    }

                    SqliteFile.Settle(part, writeAheadLog: true);
                    return result;
                });
            }
            catch (NothingWrittenException)
            {
                return result!;
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose() => kept?.Dispose();

    private SqliteConnection Empty()
    {
        var connection = Opened();
        using var file = new SqliteDatabase(path, OpenStore.MustExist);
        Migrator.Bring(file, connection, OpenStore.OrMake, SystemClock.Instance);
        return connection;
    }

    private SqliteConnection Opened()
    {
        var connection = new SqliteConnection(memory);
        connection.Open();
        return connection;
    }

    // Leaves the making of the file, which then takes it away again.
    private sealed class NothingWrittenException : Exception;
}
