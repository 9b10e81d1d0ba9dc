using System.Data.Common;
using System.Globalization;
using System.Text;
using Stringline.Tables;
using Stringline.Law.Reasoning;

namespace Stringline.Store.Sql;

/// <summary>What is to be done on each job, step by step.</summary>
internal static class StepsTable
{
    public static List<StepLine> Lines(DbConnection connection, DamagedJobs damaged, StepQuery query)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(query.Limit);
        ArgumentOutOfRangeException.ThrowIfNegative(query.Skip);

        using var command = RowReading.Command(connection, null, "");
        command.CommandText =
            $"""
            select {string.Join(", ", RowColumns.Select(column => "s." + column))}, j.id, j.name, j.key, a.sequence, a.rules, a.as_of
            from (
              select * from steps s
              where {(query.Watch is null ? "" : "s.watch = @watch and ")}s.act_by >= @from
                and s.act_by <= @through{Where(command, query.Filter)}
              order by s.act_by, s.weight desc, s.job, s.ordinal limit @limit offset @skip) s
            join jobs j on j.id = s.job join assessed a on a.job = s.job
            order by s.act_by, s.weight desc, s.job, s.ordinal
            """;
        if (query.Watch is { } watch)
            Add(command, "@watch", watch ? 1L : 0L);
        Add(command, "@from", DayText.Write(query.From));
        Add(command, "@through", DayText.Write(query.Through));
        Add(command, "@limit", (long)query.Limit);
        Add(command, "@skip", (long)query.Skip);
        using var reader = command.ExecuteReader();
        var lines = new List<StepLine>();
        while (reader.Read())
        {
            if (Line(reader, damaged) is { } line)
                lines.Add(line);
        }

        return lines;
    }

    // A row that is not as it was written shows nothing: its job is noted, and assessed anew.
    private static StepLine? Line(DbDataReader reader, DamagedJobs damaged)
    {
        var job = RowColumns.Count;
        try
        {
            var row = DerivedRow.Read(reader, 0, RowColumns.Count);
            var assessment = DerivedRow.Read(reader, job + 3, AssessmentColumns);
            if (DerivedRow.IsSound("steps", row, assessment))
                return new StepLine(
                    reader.GetInt64(job), reader.GetString(job + 1), reader.GetString(job + 2), (string)row[13]!, (string)row[14]!,
                    (string)row[15]!, Step(row), AssessedTable.Day((string)assessment[2]!));
        }
        catch (Exception e) when (DamagedRow.Is(e))
        {
        }

        damaged.Add(reader.GetInt64(job));
        return null;
    }

    private static AssessedStep Step(object?[] row) =>
        new((string)row[7]!, (string)row[8]!, (string)row[9]!, AssessedTable.Day((string)row[4]!), AssessedTable.Of((string)row[10]!))
        {
            Watch = (long)row[2]! == 1,
            AtStake = (long)row[6]! == 1 ? (long)row[5]! / 100m : null,
            Reading = (string?)row[11],
            Section = (string?)row[12],
            Left = (string?)row[16],
            Outlook = (string?)row[17],
            Stakes = (string?)row[18],
            Owed = row[19] is long cents ? cents / 100m : null,
        };

    public static StepTotal[] Totals(DbConnection connection, StepFilter filter, IReadOnlyList<LocalDate> ends)
    {
        ArgumentOutOfRangeException.ThrowIfZero(ends.Count);
        using var command = RowReading.Command(connection, null, "");
        var span = new StringBuilder("case");
        for (var i = 0; i < ends.Count; i++)
        {
            span.Append(CultureInfo.InvariantCulture, $" when s.act_by <= @end{i} then {i}");
            Add(command, string.Create(CultureInfo.InvariantCulture, $"@end{i}"), DayText.Write(ends[i]));
        }

        span.Append(CultureInfo.InvariantCulture, $" else {ends.Count} end");
        command.CommandText =
            $"""
            select {span} as span, count(*), cast(sum(s.lead) as bigint), cast(sum(s.lead * s.weight) as bigint),
              cast(sum(s.lead * coalesce(s.owed, 0)) as bigint)
            from steps s where s.watch = 0{Where(command, filter)} group by 1
            """;
        var totals = Enumerable.Repeat(new StepTotal(0, 0, 0m, 0m), ends.Count + 1).ToArray();
        using var reader = command.ExecuteReader();
        while (reader.Read())
            totals[reader.GetInt32(0)] =
                new StepTotal(reader.GetInt64(1), reader.GetInt64(2), reader.GetInt64(3) / 100m, reader.GetInt64(4) / 100m);
        return totals;
    }

    public static List<WatchTotal> Watches(DbConnection connection, StepFilter filter, LocalDate through)
    {
        using var command = RowReading.Command(connection, null, "");
        command.CommandText =
            $"""
            select s.county, count(*), min(s.act_by) from steps s
            where s.watch = 1 and s.act_by <= @through{Where(command, filter)} group by s.county order by s.county
            """;
        Add(command, "@through", DayText.Write(through));
        using var reader = command.ExecuteReader();
        var totals = new List<WatchTotal>();
        while (reader.Read())
            totals.Add(new WatchTotal(reader.GetString(0), reader.GetInt64(1), AssessedTable.Day(reader.GetString(2))));
        return totals;
    }

    public static long Written(DbConnection connection, DbTransaction? transaction = null)
    {
        using var command = RowReading.Command(connection, transaction, "select times from steps_written");
        return command.ExecuteScalar() as long? ?? -1L;
    }

    public static StepChoices Choices(DbConnection connection, int limit) => new(
        Distinct(connection, "customer", limit), Distinct(connection, "county", limit), Distinct(connection, "person", limit),
        Distinct(connection, "remedy", limit));

    // Goes from one value to the next through the index instead of through every row.
    private static List<string> Distinct(DbConnection connection, string column, int limit)
    {
        using var command = RowReading.Command(
            connection,
            null,
            $"""
            with recursive met(value) as (
              select min({column}) from steps where {column} > ''
              union all
              select (select min({column}) from steps where {column} > met.value) from met where met.value is not null)
            select value from met where value is not null limit @limit
            """,
            ("@limit", (long)limit));
        using var reader = command.ExecuteReader();
        var values = new List<string>();
        while (reader.Read())
            values.Add(reader.GetString(0));
        return values;
    }

    private static string Where(DbCommand command, StepFilter filter)
    {
        var where = new StringBuilder();
        (string, string?)[] filters =
            [("customer", filter.Customer), ("county", filter.County), ("person", filter.Person), ("remedy", filter.Remedy)];
        foreach (var (column, value) in filters)
        {
            if (value is null)
                continue;
            where.Append(CultureInfo.InvariantCulture, $" and s.{column} = @{column}");
            Add(command, "@" + column, value);
        }

        return where.ToString();
    }

    private static void Add(DbCommand command, string name, object value)
    {
        var parameter = command.CreateParameter();
        parameter.ParameterName = name;
        parameter.Value = value;
        command.Parameters.Add(parameter);
    }

    /// <summary>The columns that are written, in the order of <see cref="Values"/>.</summary>
    public static IReadOnlyList<string> RowColumns { get; } =
    [
        "job", "ordinal", "watch", "lead", "act_by", "weight", "priced", "what", "act", "remedy", "standing", "reading", "section",
        "customer", "county", "person",
        "left_of_it", "outlook", "stakes", "owed", "hash",
    ];

    /// <summary>Columns of the assessment on which a step's hash hangs too: its sequence, rules and day.</summary>
    public const int AssessmentColumns = 3;

    /// <summary>What is written of the steps of a job, a row for each: numbers as long, texts, or null.</summary>
    public static IEnumerable<object?[]> Values(AssessedJob job)
    {
        var lead = 1L;
        for (var i = 0; i < job.Steps.Count; i++)
        {
            var step = job.Steps[i];
            object?[] values =
            [
                job.Job, (long)i, step.Watch ? 1L : 0L, step.Watch ? 0L : lead, DayText.Write(step.ActBy),
                AssessedTable.Cents(step.AtStake) ?? 0L,
                step.AtStake is null ? 0L : 1L, step.What, step.Do, step.Remedy, step.Standing.Word(), step.Reading, step.Section,
                job.Customer ?? "", job.County ?? "", job.Person ?? "",
                step.Left, step.Outlook, step.Stakes, AssessedTable.Cents(step.Owed), null,
            ];
            values[^1] = DerivedRow.Hash("steps", values.AsSpan(0, values.Length - 1), job.Sequence, job.Rules, DayText.Write(job.AsOf));
            yield return values;
            if (!step.Watch)
                lead = 0;
        }
    }

    /// <summary>Marks that steps were written. Last in its transaction: other writers wait for it.</summary>
    public static void Mark(DbConnection connection, DbTransaction transaction)
    {
        using var command = RowReading.Command(connection, transaction, "insert into steps_written (only_row, times) values (1, 1) on "
            + "conflict (only_row) do update set times = steps_written.times + 1");
        command.ExecuteNonQuery();
    }
}
