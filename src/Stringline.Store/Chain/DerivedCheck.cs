using System.Globalization;
using System.Data.Common;
using Stringline.Store.Sql;

namespace Stringline.Store.Chain;

/// <summary>
/// Reads every derived row of what assessments found, and says of which jobs it is not as it was written: a row that does not prove itself,
/// a step too many or too few, a row of a job that is not there.
/// </summary>
internal static class DerivedCheck
{
    /// <summary>The jobs, and what is wrong; a job may come more than once, and with an id that no job has.</summary>
    public static IEnumerable<(long Job, string Found)> Walk(DbConnection connection, DbTransaction? snapshot)
    {
        var steps = new Dictionary<long, long>();
        foreach (var (job, row, there) in Rows(
            connection, snapshot, AssessedTable.RowColumns, ["j.id"], "assessed d left join jobs j on j.id = d.job order by d.job"))
        {
            if (there is [null])
                yield return (job, "the assessment is of a job that is not there");
            else if (!DerivedRow.IsSound("assessed", row))
                yield return (job, "its assessment is not as it was written");
            else
                steps.Add(job, (long)row[^2]!);
        }

        foreach (var (job, row, assessment) in Rows(
            connection, snapshot, StepsTable.RowColumns, ["a.sequence", "a.rules", "a.as_of"],
            "steps d left join assessed a on a.job = d.job order by d.job, d.ordinal"))
        {
            if (!DerivedRow.IsSound("steps", row, assessment))
                yield return (job, "a step of it is not as it was written, or not of its assessment");
            else if (steps.TryGetValue(job, out var left))
                steps[job] = left - 1;
        }

        foreach (var (job, left) in steps)
        {
            if (left != 0)
                yield return (job, string.Create(CultureInfo.InvariantCulture,
                    $"its steps are not those of its assessment: {Math.Abs(left)} too {(left > 0 ? "few" : "many")}"));
        }
    }

    // The rows of a table, each with what is joined to it.
    private static IEnumerable<(long Job, object?[] Row, object?[] Joined)> Rows(
        DbConnection connection, DbTransaction? snapshot, IReadOnlyList<string> columns, IReadOnlyList<string> joined, string from)
    {
        using var command = RowReading.Command(
            connection, snapshot, $"select {string.Join(", ", columns.Select(column => "d." + column).Concat(joined))} from {from}");
        using var reader = command.ExecuteReader();
        while (reader.Read())
        {
            var row = DerivedRow.Read(reader, 0, columns.Count);
            yield return (Job(row), row, DerivedRow.Read(reader, columns.Count, joined.Count));
        }
    }

    private static long Job(object?[] row) => row[0] as long? ?? throw new DamagedRow("a derived row without the number of its job");
}
