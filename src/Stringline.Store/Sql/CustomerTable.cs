using System.Data.Common;
using Stringline.Tables;

namespace Stringline.Store.Sql;

/// <summary>What is owed by each customer over all its jobs, summed from the index by customer alone.</summary>
internal static class CustomerTable
{
    private const string Sums =
        """
        select a.customer, count(*), cast(sum(a.owed) as bigint), cast(sum(a.held) as bigint), cast(sum(a.may) as bigint),
          sum(case when a.act_by < @from then 1 else 0 end), min(case when a.act_by >= @from then a.act_by end)
        from assessed a
        """;

    public static List<CustomerTotal> Page(DbConnection connection, LocalDate from, string after, int limit)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(limit);
        using var command = RowReading.Command(
            connection,
            null,
            $"{Sums} where a.customer > @after group by a.customer order by a.customer limit @limit",
            ("@from", DayText.Write(from)),
            ("@after", after),
            ("@limit", (long)limit));
        using var reader = command.ExecuteReader();
        var totals = new List<CustomerTotal>();
        while (reader.Read())
        {
            totals.Add(new CustomerTotal(
                reader.GetString(0), reader.GetInt64(1), reader.GetInt64(2) / 100m, reader.GetInt64(3) / 100m, reader.GetInt64(4) / 100m)
            {
                Overdue = reader.GetInt64(5),
                Next = reader.IsDBNull(6) ? null : AssessedTable.Day(reader.GetString(6)),
            });
        }

        return totals;
    }
}
