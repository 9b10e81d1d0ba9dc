using System.Data.Common;
using Microsoft.Data.Sqlite;
using Stringline.Store.Chain;
using Stringline.Store.Upkeep;

namespace Stringline.Store.Sql;

/// <summary>What differs from one database to the other. Statements that both understand stand with their use.</summary>
internal abstract class Database : IDisposable
{
    /// <summary>The store as the user named it, without a password.</summary>
    public abstract string Name { get; }

    /// <summary>The folder of its migration scripts.</summary>
    public abstract string Scripts { get; }

    /// <summary>Ends a query of rows that this transaction is about to change.</summary>
    public abstract string ForUpdate { get; }

    /// <summary>
    /// A statement with which a transaction begins that adds to the journal, so that none is under way while the journal is sealed; empty
    /// where writers wait for each other.
    /// </summary>
    public abstract string BeforeChanges { get; }

    /// <summary>
    /// A statement that waits until nobody adds to the journal, and keeps it so to the end of the transaction; empty where it is so anyway.
    /// </summary>
    public abstract string BeforeSealing { get; }

    /// <summary>Ready to be used.</summary>
    public abstract DbConnection Open();

    /// <summary>A transaction that writes, and that no other writer can make fail.</summary>
    public abstract DbTransaction BeginWrite(DbConnection connection);

    /// <summary>A transaction that reads everything as it is at this moment.</summary>
    public abstract DbTransaction BeginSnapshot(DbConnection connection);

    /// <summary>Makes sure that a store may be looked for, or made, where the address says; false where there is none.</summary>
    public abstract bool Prepare(DbConnection connection, OpenStore open);

    /// <summary>Waits until no other program migrates; what it takes is given back at the end of the transaction.</summary>
    public abstract void LockForMigration(DbConnection connection, DbTransaction transaction);

    /// <summary>Writes changed jobs with their new changes, their place and their search texts.</summary>
    public abstract void Write(DbConnection connection, DbTransaction transaction, IReadOnlyList<JobWrite> jobs);

    /// <summary>Keeps what assessments found and their steps, in place of those before for the same jobs.</summary>
    public abstract void WriteAssessed(DbConnection connection, DbTransaction transaction, IEnumerable<AssessedJob> jobs);

    /// <summary>The condition that a column is one of many values, which stand in the parameter @values.</summary>
    public abstract string IsOneOf(string column);

    /// <summary>Many values as the one parameter of <see cref="IsOneOf"/>.</summary>
    public abstract object Many<T>(IReadOnlyCollection<T> values);

    /// <summary>
    /// Two conditions on search_texts, each with its one parameter @words: every word is some word of the job; every word begins some
    /// word of it. They may use @limit, the most rows that are asked for.
    /// </summary>
    public abstract IReadOnlyList<(string Condition, string Words)> Seek(IReadOnlyList<string> words);

    /// <summary>Empties every table that is derived from the journal, and makes indexes anew.</summary>
    public abstract void Renew(DbConnection connection, DbTransaction transaction);

    /// <summary>Makes the indexes anew; nothing where the database has no need of it.</summary>
    public virtual void RenewIndexes(DbConnection connection, DbTransaction transaction)
    {
    }

    /// <summary>The words by which jobs are found, as they stand in the index.</summary>
    public abstract IEnumerable<(long Job, string Word)> Words(DbConnection connection, DbTransaction snapshot);

    /// <summary>What is missing of, or added to, the tables, indexes and triggers that this program makes.</summary>
    public abstract IEnumerable<string> CheckGuards(DbConnection connection, DbTransaction snapshot);

    /// <summary>What else is wrong with the index of words.</summary>
    public virtual IEnumerable<string> CheckWords(DbConnection connection, DbTransaction snapshot) => [];

    /// <summary>What the database itself finds wrong with its files, and whether it is only of what is derived.</summary>
    public virtual IEnumerable<(string Fault, bool IsDerived)> CheckFiles(DbConnection connection) => [];

    /// <summary>What logs of the store were not taken whole.</summary>
    public virtual IEnumerable<string> CheckLogs() => [];

    /// <summary>What was left beside the store.</summary>
    public abstract IEnumerable<Leftover> Leftovers();

    /// <summary>Notes which store it is that was opened, for <see cref="IsInPlace"/>.</summary>
    public virtual void NotePlace(DbConnection connection)
    {
    }

    /// <summary>Whether the address still leads to the store that was opened.</summary>
    protected abstract bool IsInPlace(DbConnection connection, DbTransaction transaction);

    /// <summary>What is said where it does not.</summary>
    protected StoreException Replaced() => new(
        StoreFault.Replaced, Name, "a store that was moved, deleted or replaced while it was open; nothing was written",
        "the store that was opened: close this program, look which store is the right one, and open that");

    /// <summary>An error of the database in the words of this program.</summary>
    public StoreException Translate(DbException error) => error is DamagedRow
        ? new StoreException(StoreFault.Damaged, Name, error.Message, StoreException.WholeOne, error)
        : error is SqliteException sqlite ? SqliteErrors.Translate(Name, sqlite) : PostgresErrors.Translate(Name, error);

    /// <inheritdoc/>
    public abstract void Dispose();

    /// <summary>Works with a connection of its own; errors come translated.</summary>
    public T Run<T>(Func<DbConnection, T> work)
    {
        try
        {
            using var connection = Open();
            return work(connection);
        }
        catch (DbException e)
        {
            throw Translate(e);
        }
    }

    /// <summary>Works with a connection of its own; errors come translated.</summary>
    public void Run(Action<DbConnection> work) => Run<object?>(connection =>
    {
        work(connection);
        return null;
    });

    /// <summary>Works in a transaction that writes, and commits it when the work gives true.</summary>
    public virtual T Change<T>(Func<DbConnection, DbTransaction, (T Result, bool Commit)> work) => Run(connection =>
    {
        using var transaction = BeginWrite(connection);
        var (result, commit) = work(connection, transaction);
        if (!commit)
            return result;

        // Last, so that as little time as possible passes until it is kept.
        if (!IsInPlace(connection, transaction))
            throw Replaced();
        Keep(transaction);
        return result;
    });

    /// <summary>Draws items from a connection of their own, in a snapshot; errors come translated.</summary>
    public IEnumerable<T> Stream<T>(Func<DbConnection, DbTransaction, IEnumerable<T>> items)
    {
        using var connection = Step(Open);
        using var transaction = Step(() => BeginSnapshot(connection));
        using var stream = items(connection, transaction).GetEnumerator();
        while (Step(stream.MoveNext))
            yield return stream.Current;
    }

    // The answer can get lost after the store has kept it: whatever fails here leaves that open.
    private void Keep(DbTransaction transaction)
    {
        try
        {
            transaction.Commit();
        }
        catch (DbException e)
        {
            throw Translate(e).WhileKeeping(Name);
        }
        catch (Exception e) when (e is IOException or TimeoutException or InvalidOperationException)
        {
            throw new StoreException(StoreFault.Failed, Name, e.Message, "a store that answers", e).WhileKeeping(Name);
        }
    }

    private T Step<T>(Func<T> step)
    {
        try
        {
            return step();
        }
        catch (DbException e)
        {
            throw Translate(e);
        }
    }
}

/// <summary>A job about to be written.</summary>
/// <param name="Tip">Where it will be.</param>
/// <param name="IsNew">Whether it is not in the store yet.</param>
/// <param name="Rows">Its new changes.</param>
/// <param name="Texts">By what it will be found.</param>
internal sealed record JobWrite(JobTip Tip, bool IsNew, IReadOnlyList<RawRow> Rows, Search.SearchTexts Texts);
