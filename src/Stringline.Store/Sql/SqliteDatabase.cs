using System.Globalization;
using System.Data.Common;
using System.Text.RegularExpressions;
using Dapper;
using Microsoft.Data.Sqlite;
using Stringline.Store.Upkeep;

namespace Stringline.Store.Sql;

/// <summary>A store in one SQLite file: write-ahead log, every commit forced to the disk.</summary>
internal sealed partial class SqliteDatabase : Database
{
    /// <summary>"STRL": marks the file as ours for tools that look.</summary>
    public const int ApplicationId = 0x5354524C;

    private const int SecondsToWait = 30;

    private readonly OpenStore open;
    private readonly string connectionString;
    private readonly UnmadeStore? unmade;
    private readonly Lock opening = new();
    private FileInPlace? place;

    public SqliteDatabase(string path, OpenStore open)
    {
        Path = path;
        this.open = open;
        connectionString = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = open switch
            {
                OpenStore.ReadOnly => SqliteOpenMode.ReadOnly,
                OpenStore.OrMake => SqliteOpenMode.ReadWriteCreate,
                _ => SqliteOpenMode.ReadWrite,
            },
            DefaultTimeout = SecondsToWait,
            ForeignKeys = true,
        }.ToString();
        if (open == OpenStore.OrMakeOnWriting && !System.IO.Path.Exists(path))
            unmade = new UnmadeStore(path);
    }

    /// <summary>Where the file is.</summary>
    public string Path { get; }

    /// <summary>Told of each connection that is opened, for tests in which a statement fails.</summary>
    internal Action<SqliteConnection>? Opened { get; set; }

    /// <inheritdoc/>
    public override string Name => Path;

    /// <inheritdoc/>
    public override string Scripts => "Sqlite";

    /// <inheritdoc/>
    public override string ForUpdate => "";

    /// <inheritdoc/>
    public override string BeforeChanges => "";

    /// <inheritdoc/>
    public override string BeforeSealing => "";

    /// <inheritdoc/>
    public override DbConnection Open()
    {
        if (place is null && unmade is { IsMade: false })
            return unmade.Open();
        if (place is { } known && !known.Holds())
            throw Replaced();
        if (Directory.Exists(Path))
            throw new StoreException(StoreFault.NotAStore, Path, "a folder", "the file of a store");
        if (open != OpenStore.OrMake && !File.Exists(Path))
            throw new StoreException(StoreFault.Missing, Path, "no such file", NearNames.Hint(Path));
        if (open == OpenStore.OrMake && !File.Exists(Path))
            Claim();
        var connection = new SqliteConnection(connectionString);
        try
        {
            connection.Open();
            Opened?.Invoke(connection);
            Execute(connection, null, "pragma synchronous = full; pragma trusted_schema = off; pragma cache_size = -32768");
            if (open == OpenStore.ReadOnly)
                return connection;
            Hold();

            // It may have been left by another journal of this program, which had opened what was at the path before.
            return place!.Holds(connection) ? connection : throw Replaced();
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <inheritdoc/>
    public override T Change<T>(Func<DbConnection, DbTransaction, (T Result, bool Commit)> work)
    {
        if (place is not null || unmade is null)
            return base.Change(work);
        var result = unmade.Change(work, () => base.Change(work));
        if (!unmade.IsMade)
            return result;
        try
        {
            // From here on it is held as one that was found.
            Run(_ => { });
        }
        catch (StoreException e)
        {
            throw e.WhileKeeping(Name);
        }

        return result;
    }

    /// <inheritdoc/>
    public override void NotePlace(DbConnection connection)
    {
        if (place is null)
            return;
        place.Read();

        // Known as a reader it keeps every restore from its work, so a second name is none that a restore is just making.
        if (connection.ExecuteScalar<string>("pragma journal_mode") == "wal" && place.Holds())
            RemoveSecondNames(place.File);
    }

    /// <inheritdoc/>
    public override IEnumerable<string> CheckLogs() => DamagedLogs.Told(Path);

    /// <inheritdoc/>
    public override IEnumerable<Leftover> Leftovers()
    {
        var path = Links.Follow(Path);
        return KeptStores.Beside(path)
            .Select(kept => new Leftover(kept, HardLink.IsSame(path, kept) ? LeftoverKind.SecondName : LeftoverKind.Older))
            .Concat(PartFolder.Left(System.IO.Path.GetDirectoryName(path)!).Select(part => new Leftover(part, LeftoverKind.Unfinished)));
    }

    /// <inheritdoc/>
    protected override bool IsInPlace(DbConnection connection, DbTransaction transaction) =>
        place?.Holds((SqliteConnection)connection) != false;

    // Not deferred: the lock is taken at once, so a reader never turns out too late to be allowed to write.
    /// <inheritdoc/>
    public override DbTransaction BeginWrite(DbConnection connection) => ((SqliteConnection)connection).BeginTransaction(deferred: false);

    /// <inheritdoc/>
    public override DbTransaction BeginSnapshot(DbConnection connection) => ((SqliteConnection)connection).BeginTransaction(deferred: true);

    /// <inheritdoc/>
    public override bool Prepare(DbConnection connection, OpenStore open)
    {
        var mark = connection.ExecuteScalar<long>("pragma application_id");
        var hasTables = connection.ExecuteScalar<long>("select count(*) from sqlite_schema") > 0;

        // Mark and tables come in one transaction: where another program made the store between both looks, the mark is there by now.
        if (mark == 0 && hasTables)
            mark = connection.ExecuteScalar<long>("pragma application_id");
        if (mark == ApplicationId)
        {
            // A restore that was broken off may have left it without its log.
            if (open != OpenStore.ReadOnly && connection.ExecuteScalar<string>("pragma journal_mode") != "wal")
                Execute(connection, null, "pragma journal_mode = wal");
            return true;
        }

        if (mark != 0 || hasTables)
            throw new StoreException(StoreFault.NotAStore, Path, "a database of another program", "the file of a store");
        if (open is OpenStore.MustExist or OpenStore.ReadOnly)
            return false;
        Execute(connection, null, "pragma journal_mode = wal");
        return false;
    }

    /// <inheritdoc/>
    public override void LockForMigration(DbConnection connection, DbTransaction transaction) =>
        Execute(connection, transaction, string.Create(CultureInfo.InvariantCulture, $"pragma application_id = {ApplicationId}"));

    /// <inheritdoc/>
    public override void Write(DbConnection connection, DbTransaction transaction, IReadOnlyList<JobWrite> jobs)
    {
        using var sql = new SqliteWriting((SqliteConnection)connection, (SqliteTransaction)transaction);
        foreach (var job in jobs)
            sql.Write(job);
    }

    /// <inheritdoc/>
    public override void WriteAssessed(DbConnection connection, DbTransaction transaction, IEnumerable<AssessedJob> jobs) =>
        AssessedTable.Write(connection, transaction, jobs);

    /// <inheritdoc/>
    public override string IsOneOf(string column) => $"{column} in (select value from json_each(@values))";

    /// <inheritdoc/>
    public override object Many<T>(IReadOnlyCollection<T> values) => System.Text.Json.JsonSerializer.Serialize(values);

    /// <inheritdoc/>
    public override IReadOnlyList<(string Condition, string Words)> Seek(IReadOnlyList<string> words)
    {
        // The index gives its rows in this order and stops after the first ones, for whole words without having looked at the others.
        // For the beginnings of words it must put all of them together first: 30 ms for a word of each of 100,000 jobs.
        const string condition = "s.job in (select rowid from search where search match @words order by rowid limit @limit)";
        return [(condition, string.Join(' ', words.Select(word => $"\"{word}\""))),
            (condition, string.Join(' ', words.Select(word => $"\"{word}\"*")))];
    }

    /// <inheritdoc/>
    public override void RenewIndexes(DbConnection connection, DbTransaction transaction) => Execute(connection, transaction, "reindex");

    // Indexes first: rows can be taken out of a table only where its indexes name them. The index of words cannot be emptied where it
    // cannot be read, so it is made anew.
    /// <inheritdoc/>
    public override void Renew(DbConnection connection, DbTransaction transaction)
    {
        RenewIndexes(connection, transaction);
        Execute(connection, transaction, "delete from steps; delete from assessed; delete from search_texts; drop table if exists search");
        Execute(connection, transaction, SqliteGuards.WordIndex);
    }

    /// <inheritdoc/>
    public override IEnumerable<(long Job, string Word)> Words(DbConnection connection, DbTransaction snapshot) =>
        WordIndex.Words(connection, snapshot);

    /// <inheritdoc/>
    public override IEnumerable<string> CheckWords(DbConnection connection, DbTransaction snapshot) =>
        WordIndex.Check(connection, snapshot);

    /// <inheritdoc/>
    public override IEnumerable<string> CheckGuards(DbConnection connection, DbTransaction snapshot) =>
        SqliteGuards.Check(connection, snapshot);

    /// <inheritdoc/>
    public override IEnumerable<(string Fault, bool IsDerived)> CheckFiles(DbConnection connection) => connection
        .Query<string>("pragma integrity_check").Where(line => line != "ok")
        .Select(line => ("the database file: " + line, OfDerived().IsMatch(line)));

    /// <inheritdoc/>
    public override void Dispose()
    {
        unmade?.Dispose();
        place?.Dispose();
        using var connection = new SqliteConnection(connectionString);
        SqliteConnection.ClearPool(connection);
    }

    private void Hold()
    {
        lock (opening)
            place ??= new FileInPlace(Path);
    }

    private static void RemoveSecondNames(string file)
    {
        try
        {
            KeptStores.RemoveSecondNames(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The store can be used all the same, and `store check` tells of it.
        }
    }

    // Before SQLite makes it by the umask. What stands in the way SQLite then says in its own words.
    private void Claim()
    {
        try
        {
            OwnerOnly.Claim(Path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
        }
    }

    private static void Execute(DbConnection connection, DbTransaction? transaction, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.Transaction = transaction;
        command.ExecuteNonQuery();
    }

    // SQLite names the table or index of which it speaks: "row 3 missing from index steps_by_day", "NULL value in assessed.what".
    [GeneratedRegex(@"\b(steps|assessed|watches|search)(_\w+)?\b")]
    private static partial Regex OfDerived();
}
