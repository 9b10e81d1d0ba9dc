using System.Data;
using System.Data.Common;
using Dapper;
using Npgsql;
using NpgsqlTypes;
using Stringline.Store.Upkeep;

namespace Stringline.Store.Sql;

/// <summary>A store in a schema of a PostgreSQL database.</summary>
internal sealed class PostgresDatabase : Database
{
    /// <summary>The schema where the connection string names none.</summary>
    public const string DefaultSchema = "stringline";

    // Any number that no other program of the office takes for a lock of its own; "STRL".
    private const long MigrationLock = 0x5354524C;

    private const int StatementsKept = 50;

    // From so many jobs on they are written in bulk.
    private const int Bulk = 20;
    private const int BulkAtOnce = 1000;

    private readonly NpgsqlDataSource source;
    private long? schemaId;

    /// <exception cref="StoreException">Settings that do not go together; the message holds nothing of them.</exception>
    public PostgresDatabase(StoreAddress.OnServer address)
    {
        Name = address.ToString();
        Schema = address.Settings.SearchPath!;
        var settings = new NpgsqlConnectionStringBuilder(address.Settings.ConnectionString);
        settings.ApplicationName ??= "stringline";

        // The few statements of the store are worked out by the server once for each connection, unless the office says otherwise.
        if (!settings.ShouldSerialize("Max Auto Prepare"))
            settings.MaxAutoPrepare = StatementsKept;
        try
        {
            source = NpgsqlDataSource.Create(settings);
        }
        catch (Exception e) when (e is ArgumentException or InvalidOperationException or NotSupportedException or FormatException)
        {
            // Neither its message nor itself: it may repeat what stands in the connection string.
            throw new StoreException(
                StoreFault.NotAllowed, Name, "settings that the driver does not take together",
                "a connection string such as postgres:Host=db;Database=office;Username=me");
        }
    }

    /// <summary>The schema in which the tables stand.</summary>
    public string Schema { get; }

    /// <inheritdoc/>
    public override string Name { get; }

    /// <inheritdoc/>
    public override string Scripts => "Postgres";

    /// <inheritdoc/>
    public override string ForUpdate => " for update";

    /// <inheritdoc/>
    public override string BeforeChanges => "lock table changes in row exclusive mode; ";

    /// <inheritdoc/>
    public override string BeforeSealing => "lock table changes in share mode";

    /// <inheritdoc/>
    public override DbConnection Open()
    {
        try
        {
            return source.OpenConnection();
        }
        catch (Exception e) when (e is not DbException and not OutOfMemoryException)
        {
            // Neither its message nor itself: it may repeat what stands in the connection string, such as the path of a key.
            throw new StoreException(
                StoreFault.NotAllowed, Name, "settings with which no connection can be made",
                "settings that the server takes, and files of keys that are there");
        }
    }

    /// <inheritdoc/>
    public override void NotePlace(DbConnection connection) => schemaId = IdOfSchema(connection, null);

    /// <inheritdoc/>
    protected override bool IsInPlace(DbConnection connection, DbTransaction transaction) =>
        schemaId is null || schemaId == IdOfSchema(connection, transaction);

    private long? IdOfSchema(DbConnection connection, DbTransaction? transaction) =>
        connection.ExecuteScalar<long?>("select cast(to_regnamespace(@Schema) as oid)::bigint", new { Schema }, transaction);

    // Read committed: a writer waits for the row of its job, then sees what the other wrote.
    /// <inheritdoc/>
    public override DbTransaction BeginWrite(DbConnection connection) => connection.BeginTransaction(IsolationLevel.ReadCommitted);

    /// <inheritdoc/>
    public override DbTransaction BeginSnapshot(DbConnection connection)
    {
        var transaction = connection.BeginTransaction(IsolationLevel.RepeatableRead);
        connection.Execute("set transaction read only", transaction: transaction);
        return transaction;
    }

    /// <inheritdoc/>
    public override bool Prepare(DbConnection connection, OpenStore open)
    {
        // In one look: between two another program may have made the store.
        var (isStore, tables) = connection.QuerySingle<(bool, long)>(
            "select to_regclass(@migrations) is not null, (select count(*) from pg_class where relnamespace = "
                + "to_regnamespace(@Schema) and relkind = 'r')",
            new { migrations = Schema + ".migrations", Schema });
        if (isStore)
            return true;
        if (tables > 0)
            throw new StoreException(
                StoreFault.NotAStore, Name, "a schema with tables of another program", "a schema of its own; name it with Search Path");
        return false;
    }

    /// <inheritdoc/>
    public override void LockForMigration(DbConnection connection, DbTransaction transaction)
    {
        connection.Execute("select pg_advisory_xact_lock(@MigrationLock)", new { MigrationLock }, transaction);
        connection.Execute($"create schema if not exists {Schema}", transaction: transaction);
    }

    /// <inheritdoc/>
    public override void Write(DbConnection connection, DbTransaction transaction, IReadOnlyList<JobWrite> jobs)
    {
        var added = jobs.Where(job => job.IsNew).ToList();
        if (added.Count > 0)
        {
            connection.Execute(
                "insert into jobs (id, key, name, sequence, hash) select * from unnest(@ids, @keys, @names, @sequences, @hashes)",
                Places(added), transaction);
        }

        var moved = jobs.Where(job => !job.IsNew).ToList();
        if (moved.Count > 0)
        {
            connection.Execute(
                """
                update jobs set name = m.name, sequence = m.sequence, hash = m.hash
                from unnest(@ids, @keys, @names, @sequences, @hashes) as m (id, key, name, sequence, hash) where jobs.id = m.id
                """,
                Places(moved),
                transaction);
        }

        Copy((NpgsqlConnection)connection, jobs);
        connection.Execute(
            """
            insert into search_texts (job, texts, words)
            select s.job, s.texts, array_to_tsvector(string_to_array(s.words, ' '))
            from unnest(@ids, @texts, @words) as s (job, texts, words)
            on conflict (job) do update set texts = excluded.texts, words = excluded.words
            """,
            new
            {
                ids = jobs.Select(job => job.Tip.Id).ToArray(),
                texts = jobs.Select(job => job.Texts.Lines).ToArray(),
                words = jobs.Select(job => job.Texts.Words).ToArray(),
            },
            transaction);
    }

    /// <inheritdoc/>
    public override void WriteAssessed(DbConnection connection, DbTransaction transaction, IEnumerable<AssessedJob> jobs)
    {
        foreach (var some in jobs.Chunk(BulkAtOnce))
        {
            if (some.Length < Bulk)
                AssessedTable.Write(connection, transaction, some);
            else
                Replace((NpgsqlConnection)connection, transaction, [.. some.GroupBy(job => job.Job).Select(same => same.Last())]);
        }
    }

    // One who writes a job between the deletion and the copy would be met by the copy, so whoever writes waits.
    private static void Replace(NpgsqlConnection connection, DbTransaction transaction, List<AssessedJob> jobs)
    {
        var ids = jobs.ConvertAll(job => job.Job).ToArray();
        connection.Execute("lock table assessed, steps in share row exclusive mode", transaction: transaction);
        connection.Execute("delete from steps where job = any(@ids)", new { ids }, transaction);
        connection.Execute("delete from assessed where job = any(@ids)", new { ids }, transaction);
        Copy(connection, "assessed", AssessedTable.RowColumns, jobs.Select(AssessedTable.Values));
        Copy(connection, "steps", StepsTable.RowColumns, jobs.SelectMany(StepsTable.Values));
    }

    private static void Copy(NpgsqlConnection connection, string table, IReadOnlyList<string> columns, IEnumerable<object?[]> rows)
    {
        using var copy = connection.BeginBinaryImport($"copy {table} ({string.Join(", ", columns)}) from stdin (format binary)");
        foreach (var row in rows)
        {
            copy.StartRow();
            foreach (var value in row)
            {
                switch (value)
                {
                    case null:
                        copy.WriteNull();
                        break;
                    case long number:
                        copy.Write(number, NpgsqlDbType.Bigint);
                        break;
                    case byte[] bytes:
                        copy.Write(bytes, NpgsqlDbType.Bytea);
                        break;
                    default:
                        copy.Write((string)value, NpgsqlDbType.Text);
                        break;
                }
            }
        }

        copy.Complete();
    }

    /// <inheritdoc/>
    public override string IsOneOf(string column) => $"{column} = any(@values)";

    /// <inheritdoc/>
    public override object Many<T>(IReadOnlyCollection<T> values) => values.ToArray();

    /// <inheritdoc/>
    public override IReadOnlyList<(string Condition, string Words)> Seek(IReadOnlyList<string> words)
    {
        const string condition = "s.words @@ cast(@words as tsquery)";
        return [(condition, string.Join(" & ", words.Select(word => $"'{word}'"))),
            (condition, string.Join(" & ", words.Select(word => $"'{word}':*")))];
    }

    /// <inheritdoc/>
    public override void Renew(DbConnection connection, DbTransaction transaction) => connection.Execute(
        """
        lock table assessed, steps in share row exclusive mode;
        delete from steps;
        delete from assessed;
        delete from search_texts;
        """,
        transaction: transaction);

    /// <inheritdoc/>
    public override IEnumerable<(long Job, string Word)> Words(DbConnection connection, DbTransaction snapshot)
    {
        using var command = RowReading.Command(connection, snapshot, "select job, unnest(tsvector_to_array(words)) from search_texts");
        using var reader = command.ExecuteReader();
        while (reader.Read())
            yield return (reader.GetInt64(0), reader.GetString(1));
    }

    /// <inheritdoc/>
    public override IEnumerable<string> CheckGuards(DbConnection connection, DbTransaction snapshot) =>
        PostgresGuards.Check(connection, snapshot, Schema);

    /// <inheritdoc/>
    public override IEnumerable<Leftover> Leftovers() => Run(connection => ServerSwap.Leftovers(connection, Schema));

    /// <inheritdoc/>
    public override void Dispose() => source.Dispose();

    private static object Places(List<JobWrite> jobs) => new
    {
        ids = jobs.Select(job => job.Tip.Id).ToArray(),
        keys = jobs.Select(job => job.Tip.Key).ToArray(),
        names = jobs.Select(job => job.Tip.Name).ToArray(),
        sequences = jobs.Select(job => job.Tip.Sequence).ToArray(),
        hashes = jobs.Select(job => job.Tip.Hash.ToBytes()).ToArray(),
    };

    private static void Copy(NpgsqlConnection connection, IReadOnlyList<JobWrite> jobs)
    {
        using var copy = connection.BeginBinaryImport(
            "copy changes (job, sequence, at, who, kind, learned, supersedes, proofs, payload, hash) from stdin (format binary)");
        foreach (var job in jobs)
        {
            foreach (var row in job.Rows)
            {
                copy.StartRow();
                copy.Write(job.Tip.Id, NpgsqlDbType.Bigint);
                copy.Write(row.Sequence, NpgsqlDbType.Bigint);
                copy.Write(row.At, NpgsqlDbType.Bigint);
                copy.Write(row.Who, NpgsqlDbType.Text);
                copy.Write(row.Kind, NpgsqlDbType.Text);
                Write(copy, row.Learned);
                Write(copy, row.Supersedes);
                Write(copy, row.Proofs);
                copy.Write(row.Payload, NpgsqlDbType.Bytea);
                copy.Write(row.Hash, NpgsqlDbType.Bytea);
            }
        }

        copy.Complete();
    }

    private static void Write(NpgsqlBinaryImporter copy, string? text)
    {
        if (text is null)
            copy.WriteNull();
        else
            copy.Write(text, NpgsqlDbType.Text);
    }
}
