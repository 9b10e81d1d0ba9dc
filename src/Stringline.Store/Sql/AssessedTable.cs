using System.Data.Common;
using Stringline.Exchange;
using Stringline.Law.Reasoning;

namespace Stringline.Store.Sql;

/// <summary>What the last assessment of each job found.</summary>
internal static class AssessedTable
{
    private const string Columns = "a.job, a.sequence, a.rules, a.as_of, a.act_by, a.at_stake, a.standing, a.what, a.findings, a.customer, a.county, a.person, a.owed, a.held, a.may";

    private static readonly Standing[] Standings = Enum.GetValues<Standing>();

    /// <summary>The columns that are written, in the order of <see cref="Values"/>.</summary>
    public static IReadOnlyList<string> RowColumns { get; } =
    [
        "job", "sequence", "rules", "as_of", "act_by", "at_stake", "standing", "what", "findings", "customer", "county", "person", "owed", "held", "may",
    ];

    /// <summary>What is written of a job: numbers as long, texts, bytes, or null.</summary>
    public static object?[] Values(AssessedJob job) =>
    [
        job.Job, job.Sequence, job.Rules, DayText.Write(job.AsOf), job.ActBy is { } day ? DayText.Write(day) : null,
        Cents(job.AtStake), job.Standing.Word(), job.What, job.Findings.ToArray(),
        job.Customer, job.County, job.Person, Cents(job.Owed), Cents(job.Held), Cents(job.MaySecure),
    ];

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

    public static List<JobTip> JobsOf(DbConnection connection, string customer, int limit)
    {
        using var command = RowReading.Command(
            connection,
            null,
            "select j.id, j.key, j.name, j.sequence, j.hash from assessed a join jobs j on j.id = a.job where a.customer = @customer order by a.job limit @limit",
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
              (select count(*) from assessed a join jobs j on j.id = a.job where a.sequence = j.sequence and a.rules = @rules and a.as_of = @asOf)
            """,
            ("@rules", rules),
            ("@asOf", DayText.Write(asOf)));
        using var reader = command.ExecuteReader();
        reader.Read();
        return (reader.GetInt64(0), reader.GetInt64(1));
    }

    public static AssessedJob? Read(DbConnection connection, long job)
    {
        using var command = RowReading.Command(connection, null, $"select {Columns} from assessed a where a.job = @job", ("@job", job));
        using var reader = command.ExecuteReader();
        return reader.Read() ? At(reader, 0) : null;
    }

    public static List<DeskLine> Desk(DbConnection connection, DeskPage page)
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
        using var reader = command.ExecuteReader();
        var lines = new List<DeskLine>();
        while (reader.Read())
            lines.Add(new DeskLine(RowReading.TipAt(reader, 0), At(reader, 5)));
        return lines;
    }

    /// <summary>The jobs of a customer with what their assessments found, in the order of their ids.</summary>
    public static List<DeskLine> Of(DbConnection connection, string customer, int limit)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(limit);
        using var command = RowReading.Command(
            connection,
            null,
            $"select j.id, j.key, j.name, j.sequence, j.hash, {Columns} from assessed a join jobs j on j.id = a.job where a.customer = @customer order by a.job limit @limit",
            ("@customer", customer),
            ("@limit", (long)limit));
        using var reader = command.ExecuteReader();
        var lines = new List<DeskLine>();
        while (reader.Read())
            lines.Add(new DeskLine(RowReading.TipAt(reader, 0), At(reader, 5)));
        return lines;
    }

    private static AssessedJob At(DbDataReader reader, int at) => new()
    {
        Job = reader.GetInt64(at),
        Sequence = reader.GetInt64(at + 1),
        Rules = reader.GetString(at + 2),
        AsOf = Day(reader.GetString(at + 3)),
        ActBy = reader.IsDBNull(at + 4) ? null : Day(reader.GetString(at + 4)),
        AtStake = reader.IsDBNull(at + 5) ? null : reader.GetInt64(at + 5) / 100m,
        Standing = Of(reader.GetString(at + 6)),
        What = reader.GetString(at + 7),
        Findings = reader.GetFieldValue<byte[]>(at + 8),
        Customer = reader.IsDBNull(at + 9) ? null : reader.GetString(at + 9),
        County = reader.IsDBNull(at + 10) ? null : reader.GetString(at + 10),
        Person = reader.IsDBNull(at + 11) ? null : reader.GetString(at + 11),
        Owed = reader.GetInt64(at + 12) / 100m,
        Held = reader.GetInt64(at + 13) / 100m,
        MaySecure = reader.GetInt64(at + 14) / 100m,
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
