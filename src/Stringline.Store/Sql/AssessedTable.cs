using System.Data.Common;
using Stringline.Tables;
using Stringline.Law.Reasoning;

namespace Stringline.Store.Sql;

/// <summary>What the last assessment of each job found.</summary>
internal static class AssessedTable
{
    private static readonly Standing[] Standings = Enum.GetValues<Standing>();

    /// <summary>The columns that are written, in the order of <see cref="Values"/>.</summary>
    public static IReadOnlyList<string> RowColumns { get; } =
    [
        "job", "sequence", "rules", "as_of", "act_by", "at_stake", "standing", "what", "findings", "customer", "county", "person", "owed",
        "held", "may",
        "steps", "hash",
    ];

    private static readonly string Columns = string.Join(", ", RowColumns.Select(column => "a." + column));

    /// <summary>What is written of a job: numbers as long, texts, bytes, or null.</summary>
    public static object?[] Values(AssessedJob job)
    {
        object?[] values =
        [
            job.Job, job.Sequence, job.Rules, DayText.Write(job.AsOf), job.ActBy is { } day ? DayText.Write(day) : null,
            Cents(job.AtStake), job.Standing.Word(), job.What, job.Findings.ToArray(),
            job.Customer, job.County, job.Person, Cents(job.Owed), Cents(job.Held), Cents(job.MaySecure),
            (long)job.Steps.Count, null,
        ];
        values[^1] = DerivedRow.Hash("assessed", values.AsSpan(0, values.Length - 1));
        return values;
    }

    /// <summary>Writes jobs and their steps one by one, with statements that are prepared once.</summary>
    public static void Write(DbConnection connection, DbTransaction transaction, IEnumerable<AssessedJob> jobs)
    {
        using var write = new RowStatement(
            connection,
            transaction,
            "assessed",
            RowColumns,
            numbers: ["at_stake"],
            $"on conflict (job) do update set {string.Join(", ", RowColumns.Skip(1).Select(column => $"{column} = excluded.{column}"))}");
        using var erase = RowReading.Command(connection, transaction, "delete from steps where job = @job", ("@job", 0L));
        using var insert = new RowStatement(connection, transaction, "steps", StepsTable.RowColumns, numbers: ["owed"]);
        foreach (var job in jobs)
        {
            write.Run(Values(job));
            erase.Parameters[0].Value = job.Job;
            erase.ExecuteNonQuery();
            foreach (var step in StepsTable.Values(job))
                insert.Run(step);
        }
    }

    /// <summary>Forgets what was found of some jobs.</summary>
    public static void Erase(Database database, DbConnection connection, DbTransaction transaction, IReadOnlyCollection<long> jobs)
    {
        foreach (var table in (string[])["steps", "assessed"])
        {
            using var command = RowReading.Command(
                connection, transaction, $"delete from {table} where {database.IsOneOf("job")}", ("@values", database.Many(jobs)));
            command.ExecuteNonQuery();
        }
    }

    public static List<JobTip> JobsOf(DbConnection connection, string customer, int limit)
    {
        using var command = RowReading.Command(
            connection,
            null,
            "select j.id, j.key, j.name, j.sequence, j.hash from assessed a join jobs j on j.id = a.job where a.customer = "
                + "@customer order by a.job limit @limit",
            ("@customer", customer),
            ("@limit", (long)limit));
        using var reader = command.ExecuteReader();
        var tips = new List<JobTip>();
        while (reader.Read())
            tips.Add(RowReading.TipAt(reader, 0));
        return tips;
    }

    public static (long Jobs, long Assessed) Count(DbConnection connection, string rules, LocalDate asOf)
    {
        using var command = RowReading.Command(
            connection,
            null,
            """
            select (select jobs from store),
              (select count(*) from assessed a join jobs j on j.id = a.job
               where a.sequence = j.sequence and a.rules = @rules and a.as_of = @asOf)
            """,
            ("@rules", rules),
            ("@asOf", DayText.Write(asOf)));
        using var reader = command.ExecuteReader();
        reader.Read();
        return (reader.GetInt64(0), reader.GetInt64(1));
    }

    public static AssessedJob? Read(DbConnection connection, DamagedJobs damaged, long job)
    {
        using var command = RowReading.Command(connection, null, $"select {Columns} from assessed a where a.job = @job", ("@job", job));
        using var reader = command.ExecuteReader();
        return reader.Read() ? At(reader, 0, job, damaged) : null;
    }

    public static List<DeskLine> Desk(DbConnection connection, DamagedJobs damaged, DeskPage page)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(page.Limit);
        using var command = RowReading.Command(
            connection,
            null,
            $"""
            select j.id, j.key, j.name, j.sequence, j.hash, {Columns} from assessed a join jobs j on j.id = a.job
            where a.act_by is not null and a.act_by <= @through and (a.act_by, a.job) > (@actBy, @after)
            order by a.act_by, a.job limit @limit
            """,
            ("@through", page.Through is { } through ? DayText.Write(through) : "9999-12-31"),
            ("@actBy", page.After?.Assessed.ActBy is { } day ? DayText.Write(day) : ""),
            ("@after", page.After?.Assessed.Job ?? 0L),
            ("@limit", (long)page.Limit));
        return Lines(command, damaged);
    }

    /// <summary>The jobs of a customer with what their assessments found, in the order of their ids.</summary>
    public static List<DeskLine> Of(DbConnection connection, DamagedJobs damaged, string customer, int limit)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(limit);
        using var command = RowReading.Command(
            connection,
            null,
            $"select j.id, j.key, j.name, j.sequence, j.hash, {Columns} from assessed a join jobs j on j.id = a.job where a.customer = "
                + "@customer order by a.job limit @limit",
            ("@customer", customer),
            ("@limit", (long)limit));
        return Lines(command, damaged);
    }

    private static List<DeskLine> Lines(DbCommand command, DamagedJobs damaged)
    {
        using var reader = command.ExecuteReader();
        var lines = new List<DeskLine>();
        while (reader.Read())
        {
            var tip = RowReading.TipAt(reader, 0);
            if (At(reader, 5, tip.Id, damaged) is { } assessed)
                lines.Add(new DeskLine(tip, assessed));
        }

        return lines;
    }

    // A row that is not as it was written shows nothing: its job is noted, and assessed anew.
    private static AssessedJob? At(DbDataReader reader, int at, long job, DamagedJobs damaged)
    {
        try
        {
            var row = DerivedRow.Read(reader, at, RowColumns.Count);
            if (DerivedRow.IsSound("assessed", row))
                return Of(row);
        }
        catch (Exception e) when (DamagedRow.Is(e))
        {
        }

        damaged.Add(job);
        return null;
    }

    private static AssessedJob Of(object?[] row) => new()
    {
        Job = (long)row[0]!,
        Sequence = (long)row[1]!,
        Rules = (string)row[2]!,
        AsOf = Day((string)row[3]!),
        ActBy = row[4] is string day ? Day(day) : null,
        AtStake = row[5] is long cents ? cents / 100m : null,
        Standing = Of((string)row[6]!),
        What = (string)row[7]!,
        Findings = (byte[])row[8]!,
        Customer = (string?)row[9],
        County = (string?)row[10],
        Person = (string?)row[11],
        Owed = (long)row[12]! / 100m,
        Held = (long)row[13]! / 100m,
        MaySecure = (long)row[14]! / 100m,
    };

    internal static object? Cents(decimal? dollars) => dollars is not { } known ? null
        : decimal.IsInteger(known * 100m) ? (long)(known * 100m)
        : throw new ArgumentException("An amount at stake is in dollars and whole cents.", nameof(dollars));

    internal static LocalDate Day(string text) =>
        DayText.Read(text, out var day) is null ? day : throw new FormatException($"The table of assessed jobs holds the day \"{text}\".");

    internal static Standing Of(string word)
    {
        foreach (var standing in Standings)
        {
            if (standing.Word() == word)
                return standing;
        }

        throw new FormatException($"The table of assessed jobs holds the standing \"{word}\".");
    }
}
