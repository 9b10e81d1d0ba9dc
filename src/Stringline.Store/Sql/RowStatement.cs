using System.Data;
using System.Data.Common;

namespace Stringline.Store.Sql;

/// <summary>Puts one row after another into a table, with a statement that is prepared once.</summary>
internal sealed class RowStatement : IDisposable
{
    private readonly DbCommand command;
    private readonly DbType[] absent;

    /// <summary>Makes it.</summary>
    /// <param name="connection">Where it runs.</param>
    /// <param name="transaction">In which transaction.</param>
    /// <param name="table">The table.</param>
    /// <param name="columns">The columns, in the order of the values.</param>
    /// <param name="numbers">
    /// Those that are numbers and may be absent: PostgreSQL cannot tell the type of a value that is absent, and takes it for a text.
    /// </param>
    /// <param name="onConflict">What happens where the row is there already; empty where that is an error.</param>
    public RowStatement(
        DbConnection connection, DbTransaction transaction, string table, IReadOnlyList<string> columns, IReadOnlyList<string> numbers,
        string onConflict = "")
    {
        command = RowReading.Command(
            connection, transaction,
            $"insert into {table} ({string.Join(", ", columns)}) "
            + $"values ({string.Join(", ", columns.Select(column => "@" + column))}) {onConflict}");
        foreach (var column in columns)
        {
            var parameter = command.CreateParameter();
            parameter.ParameterName = "@" + column;
            command.Parameters.Add(parameter);
        }

        absent = [.. columns.Select(column => numbers.Contains(column) ? DbType.Int64 : DbType.String)];
    }

    /// <summary>Runs it for a row.</summary>
    public void Run(object?[] values)
    {
        for (var i = 0; i < values.Length; i++)
        {
            var parameter = command.Parameters[i];
            if (values[i] is null)
                parameter.DbType = absent[i];
            parameter.Value = values[i] ?? DBNull.Value;
        }

        command.ExecuteNonQuery();
    }

    public void Dispose() => command.Dispose();
}
