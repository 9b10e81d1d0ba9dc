using System.Data.Common;
using System.Globalization;
using System.Text;
using Stringline.Exchange;
using Stringline.Law.Reasoning;

namespace Stringline.Store.Sql;

/// <summary>What is to be done on each job, step by step.</summary>
internal static class StepsTable
{
    public static List<StepLine> Lines(DbConnection connection, StepQuery query)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(query.Limit);
        ArgumentOutOfRangeException.ThrowIfNegative(query.Skip);

        using var command = RowReading.Command(connection, null, "");
        command.CommandText =
            $"""
            select s.job, j.name, j.key, s.customer, s.county, s.person, s.what, s.act, s.remedy, s.act_by, s.standing, s.watch, s.weight, s.priced, s.reading, s.section, a.as_of, s.left_of_it, s.outlook, s.stakes, s.owed
            from (
              select * from steps s where {(query.Watch is null ? "" : "s.watch = @watch and ")}s.act_by >= @from and s.act_by <= @through{Where(command, query.Filter)}
              order by s.act_by, s.weight desc, s.job, s.ordinal limit @limit offset @skip) s join jobs j on j.id = s.job join assessed a on a.job = s.job
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
            var step = new AssessedStep(reader.GetString(6), reader.GetString(7), reader.GetString(8), AssessedTable.Day(reader.GetString(9)), AssessedTable.Of(reader.GetString(10)))
            {
                Watch = reader.GetInt64(11) == 1,
                AtStake = reader.GetInt64(13) == 1 ? reader.GetInt64(12) / 100m : null,
                Reading = reader.IsDBNull(14) ? null : reader.GetString(14),
                Section = reader.IsDBNull(15) ? null : reader.GetString(15),
                Left = reader.IsDBNull(17) ? null : reader.GetString(17),
                Outlook = reader.IsDBNull(18) ? null : reader.GetString(18),
                Stakes = reader.IsDBNull(19) ? null : reader.GetString(19),
                Owed = reader.IsDBNull(20) ? null : reader.GetInt64(20) / 100m,
            };
            lines.Add(new StepLine(reader.GetInt64(0), reader.GetString(1), reader.GetString(2), reader.GetString(3), reader.GetString(4), reader.GetString(5), step, AssessedTable.Day(reader.GetString(16))));
        }

        return lines;
    }

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
            select {span} as span, count(*), cast(sum(s.lead) as bigint), cast(sum(s.lead * s.weight) as bigint), cast(sum(s.lead * coalesce(s.owed, 0)) as bigint)
            from steps s where s.watch = 0{Where(command, filter)} group by 1
            """;
        var totals = Enumerable.Repeat(new StepTotal(0, 0, 0m, 0m), ends.Count + 1).ToArray();
        using var reader = command.ExecuteReader();
        while (reader.Read())
            totals[reader.GetInt32(0)] = new StepTotal(reader.GetInt64(1), reader.GetInt64(2), reader.GetInt64(3) / 100m, reader.GetInt64(4) / 100m);
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

    public static long Written(DbConnection connection)
    {
        using var command = RowReading.Command(connection, null, "select times from steps_written");
        return (long)command.ExecuteScalar()!;
    }

    public static StepChoices Choices(DbConnection connection, int limit) => new(
        Distinct(connection, "customer", limit), Distinct(connection, "county", limit), Distinct(connection, "person", limit), Distinct(connection, "remedy", limit));

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
        foreach (var (column, value) in ((string, string?)[])[("customer", filter.Customer), ("county", filter.County), ("person", filter.Person), ("remedy", filter.Remedy)])
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
        "job", "ordinal", "watch", "lead", "act_by", "weight", "priced", "what", "act", "remedy", "standing", "reading", "section", "customer", "county", "person",
        "left_of_it", "outlook", "stakes", "owed",
    ];

    /// <summary>What is written of the steps of a job, a row for each: numbers as long, texts, or null.</summary>
    public static IEnumerable<object?[]> Values(AssessedJob job)
    {
        var lead = 1L;
        for (var i = 0; i < job.Steps.Count; i++)
        {
            var step = job.Steps[i];
            yield return
            [
                job.Job, (long)i, step.Watch ? 1L : 0L, step.Watch ? 0L : lead, DayText.Write(step.ActBy), AssessedTable.Cents(step.AtStake) ?? 0L,
                step.AtStake is null ? 0L : 1L, step.What, step.Do, step.Remedy, step.Standing.Word(), step.Reading, step.Section,
                job.Customer ?? "", job.County ?? "", job.Person ?? "",
                step.Left, step.Outlook, step.Stakes, AssessedTable.Cents(step.Owed),
            ];
            if (!step.Watch)
                lead = 0;
        }
    }

    /// <summary>Marks that steps were written. Last in its transaction: other writers wait for it.</summary>
    public static void Mark(DbConnection connection, DbTransaction transaction)
    {
        using var command = RowReading.Command(connection, transaction, "update steps_written set times = times + 1");
        command.ExecuteNonQuery();
    }
}
