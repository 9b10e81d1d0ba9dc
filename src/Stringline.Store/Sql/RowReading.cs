using System.Data.Common;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Store.Chain;

namespace Stringline.Store.Sql;

/// <summary>Reads jobs and their changes out of the tables.</summary>
internal static class RowReading
{
    private const string Columns = "c.sequence, c.at, c.who, c.kind, c.learned, c.supersedes, c.proofs, c.payload, c.hash";

    /// <summary>Where a job is, or null.</summary>
    public static JobTip? Tip(DbConnection connection, DbTransaction? transaction, long job, string suffix = "") =>
        One(connection, transaction, "select id, key, name, sequence, hash from jobs where id = @job" + suffix, "@job", job);

    /// <summary>Where a job is, or null.</summary>
    public static JobTip? Tip(DbConnection connection, DbTransaction? transaction, string key) =>
        One(connection, transaction, "select id, key, name, sequence, hash from jobs where key = @key", "@key", key);

    /// <summary>Where those of the jobs with these keys are that are in the store, by key; kept for this transaction to change.</summary>
    public static Dictionary<string, JobTip> TipsForUpdate(
        Database database, DbConnection connection, DbTransaction transaction, IReadOnlyCollection<string> keys)
    {
        using var command = Command(
            connection,
            transaction,
            $"select id, key, name, sequence, hash from jobs where {database.IsOneOf("key")} order by id{database.ForUpdate}",
            ("@values", database.Many(keys)));
        using var reader = command.ExecuteReader();
        var tips = new Dictionary<string, JobTip>(StringComparer.Ordinal);
        while (reader.Read())
        {
            var tip = TipAt(reader, 0);
            tips.Add(tip.Key, tip);
        }

        return tips;
    }

    /// <summary>How many of these keys a job has.</summary>
    public static long CountOf(Database database, DbConnection connection, DbTransaction transaction, IReadOnlyCollection<string> keys)
    {
        using var command = Command(
            connection, transaction, $"select count(*) from jobs where {database.IsOneOf("key")}", ("@values", database.Many(keys)));
        return Convert.ToInt64(command.ExecuteScalar(), System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>The changes of many jobs, in order, by the job's id.</summary>
    public static ILookup<long, RawRow> RowsOf(
        Database database, DbConnection connection, DbTransaction transaction, IReadOnlyCollection<long> jobs)
    {
        using var command = Command(
            connection, transaction, $"select c.job, {Columns} from changes c where {database.IsOneOf("c.job")} order by c.job, c.sequence",
            ("@values", database.Many(jobs)));
        using var reader = command.ExecuteReader();
        var rows = new List<(long Job, RawRow Row)>();
        while (reader.Read())
            rows.Add((reader.GetInt64(0), RowAt(reader, 1)));
        return rows.ToLookup(row => row.Job, row => row.Row);
    }

    /// <summary>Where every job is, by id.</summary>
    public static IEnumerable<JobTip> Tips(DbConnection connection, DbTransaction transaction)
    {
        using var command = Command(connection, transaction, "select id, key, name, sequence, hash from jobs order by id");
        using var reader = command.ExecuteReader();
        while (reader.Read())
            yield return TipAt(reader, 0);
    }

    /// <summary>The changes of a job after one, in order.</summary>
    public static List<RawRow> Rows(DbConnection connection, DbTransaction? transaction, long job, long after = 0)
    {
        using var command = Command(
            connection, transaction, $"select {Columns} from changes c where c.job = @job and c.sequence > @after order by c.sequence",
            ("@job", job), ("@after", after));
        using var reader = command.ExecuteReader();
        var rows = new List<RawRow>();
        while (reader.Read())
            rows.Add(RowAt(reader, 0));
        return rows;
    }

    /// <summary>Jobs with all their changes, by id; a job without any change comes with an empty list.</summary>
    public static IEnumerable<(JobTip Tip, List<RawRow> Rows)> Jobs(DbConnection connection, DbTransaction transaction, JobsToRead which)
    {
        using var command = Seek(connection, transaction, which, Columns);
        using var reader = command.ExecuteReader();
        JobTip? tip = null;
        List<RawRow> rows = [];
        while (reader.Read())
        {
            var id = reader.GetInt64(0);
            if (tip?.Id != id)
            {
                if (tip is not null)
                    yield return (tip, rows);
                tip = TipAt(reader, 0);
                rows = [];
            }

            if (!reader.IsDBNull(5))
                rows.Add(RowAt(reader, 5));
        }

        if (tip is not null)
            yield return (tip, rows);
    }

    /// <summary>Jobs with the payloads alone that make up what is now known: the last head and the entries.</summary>
    public static IEnumerable<(JobTip Tip, byte[] Head, List<ReadOnlyMemory<byte>> Entries)> Payloads(
        DbConnection connection, DbTransaction transaction, JobsToRead which)
    {
        using var command = Seek(connection, transaction, which, "c.kind, c.payload");
        using var reader = command.ExecuteReader();
        var (head, entry) = (ChangeKind.Head.Word(), ChangeKind.Entry.Word());
        JobTip? tip = null;
        byte[] last = [];
        List<ReadOnlyMemory<byte>> entries = [];
        while (reader.Read())
        {
            if (tip?.Id != reader.GetInt64(0))
            {
                if (tip is not null)
                    yield return (tip, last, entries);
                (tip, last, entries) = (TipAt(reader, 0), [], []);
            }

            if (reader.IsDBNull(5))
                continue;
            var kind = reader.GetString(5);
            if (kind == head)
                last = reader.GetFieldValue<byte[]>(6);
            else if (kind == entry)
                entries.Add(reader.GetFieldValue<byte[]>(6));
        }

        if (tip is not null)
            yield return (tip, last, entries);
    }

    /// <summary>The job file that a head and entries make up.</summary>
    /// <exception cref="StoreException">They make up none.</exception>
    public static JobFile Job(Database database, JobTip tip, byte[] head, List<ReadOnlyMemory<byte>> entries) =>
        JournalText.Read(tip.Key, head, entries) switch
    {
        JobFileResult.Read read => read.Job,
        JobFileResult.Refused refused => throw Damaged(database, tip, refused.Faults[0].ToString()),
        _ => throw new InvalidOperationException("Neither read nor refused."),
    };

    private static DbCommand Seek(DbConnection connection, DbTransaction transaction, JobsToRead which, string columns)
    {
        const string NotYet = " and not exists (select 1 from assessed a where a.job = j.id and a.sequence = j.sequence and "
            + "a.rules = @rules and a.as_of = @asOf)";
        var command = Command(
            connection,
            transaction,
            $"select j.id, j.key, j.name, j.sequence, j.hash, {columns} from jobs j left join changes c on c.job = j.id where j.id > @after"
                + (which.NotYetAssessed is null ? "" : NotYet) + " order by j.id, c.sequence",
            ("@after", which.After));
        if (which.NotYetAssessed is var (rules, asOf))
        {
            Add(command, "@rules", rules);
            Add(command, "@asOf", DayText.Write(asOf));
        }

        return command;
    }

    /// <summary>The job that the changes make up.</summary>
    /// <exception cref="StoreException">They make up none.</exception>
    public static StoredJob Job(Database database, JobTip tip, List<RawRow> rows)
    {
        var read = new List<JournalRow>(rows.Count);
        foreach (var raw in rows)
            read.Add(raw.Read(out var fault) ?? throw Damaged(database, tip, $"change {raw.Sequence}: {fault}"));
        return Assemble(tip.Key, read, []) switch
        {
            JobFileResult.Read job => new StoredJob(tip, read, job.Job),
            JobFileResult.Refused refused => throw Damaged(database, tip, refused.Faults[0].ToString()),
            _ => throw new InvalidOperationException("Neither read nor refused."),
        };
    }

    /// <summary>The job file as the last head and all entries say it.</summary>
    /// <param name="key">How faults name the job.</param>
    /// <param name="stored">The changes that the journal holds.</param>
    /// <param name="added">Those that are about to come to them.</param>
    public static JobFileResult Assemble(string key, IReadOnlyList<JournalRow> stored, IReadOnlyList<JournalRow> added)
    {
        var newHead = added.LastOrDefault(row => row.Kind == ChangeKind.Head);
        var head = newHead ?? stored.LastOrDefault(row => row.Kind == ChangeKind.Head);
        List<ReadOnlyMemory<byte>> entries = [.. Entries(stored)];
        var known = entries.Count;
        entries.AddRange(Entries(added));
        return JournalText.ReadAdded(key, head?.Payload ?? default, entries, newHead is not null, known);

        static IEnumerable<ReadOnlyMemory<byte>> Entries(IReadOnlyList<JournalRow> rows) =>
            rows.Where(row => row.Kind == ChangeKind.Entry).Select(row => row.Payload);
    }

    /// <summary>Runs a statement.</summary>
    public static void Run(
        DbConnection connection, DbTransaction transaction, string sql, params ReadOnlySpan<(string Name, object Value)> parameters)
    {
        if (sql.Length == 0)
            return;
        using var command = Command(connection, transaction, sql, parameters);
        command.ExecuteNonQuery();
    }

    /// <summary>A command with its parameters.</summary>
    public static DbCommand Command(
        DbConnection connection, DbTransaction? transaction, string sql, params ReadOnlySpan<(string Name, object Value)> parameters)
    {
        var command = connection.CreateCommand();
        command.CommandText = sql;
        command.Transaction = transaction;
        foreach (var (name, value) in parameters)
            Add(command, name, value);
        return command;
    }

    /// <summary>Columns id, key, name, sequence, hash.</summary>
    /// <exception cref="DamagedRow">They hold something else.</exception>
    public static JobTip TipAt(DbDataReader reader, int at)
    {
        try
        {
            return new(reader.GetInt64(at), reader.GetString(at + 1), reader.GetString(at + 2), reader.GetInt64(at + 3),
                ContentHash.From(reader.GetFieldValue<byte[]>(at + 4)));
        }
        catch (Exception e) when (DamagedRow.Is(e))
        {
            throw new DamagedRow($"a row of the table of jobs that cannot be read ({e.Message})", e);
        }
    }

    private static RawRow RowAt(DbDataReader reader, int at)
    {
        try
        {
            return new(
                reader.GetInt64(at),
                reader.GetInt64(at + 1),
                reader.GetString(at + 2),
                reader.GetString(at + 3),
                Text(reader, at + 4),
                Text(reader, at + 5),
                Text(reader, at + 6),
                reader.GetFieldValue<byte[]>(at + 7),
                reader.GetFieldValue<byte[]>(at + 8));
        }
        catch (Exception e) when (DamagedRow.Is(e))
        {
            throw new DamagedRow($"a change that cannot be read ({e.Message})", e);
        }
    }

    private static string? Text(DbDataReader reader, int at) => reader.IsDBNull(at) ? null : reader.GetString(at);

    private static JobTip? One(DbConnection connection, DbTransaction? transaction, string sql, string name, object value)
    {
        using var command = Command(connection, transaction, sql, (name, value));
        using var reader = command.ExecuteReader();
        return reader.Read() ? TipAt(reader, 0) : null;
    }

    private static void Add(DbCommand command, string name, object value)
    {
        var parameter = command.CreateParameter();
        parameter.ParameterName = name;
        parameter.Value = value;
        command.Parameters.Add(parameter);
    }

    private static StoreException Damaged(Database database, JobTip tip, string fault) => new(
        StoreFault.Damaged, database.Name, $"job \"{tip.Key}\" cannot be read: {fault}",
        "a store that `stringline store check` finds whole; restore the last backup that is");
}
