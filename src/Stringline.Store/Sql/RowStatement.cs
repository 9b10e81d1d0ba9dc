using System.Data;
using System.Data.Common;

namespace Stringline.Store.Sql;

/// <summary>A statement with a parameter for each column, run for one row after another.</summary>
internal sealed class RowStatement : IDisposable
{
    private readonly DbCommand command;

    /// <summary>Makes it.</summary>
    /// <param name="connection">Where it runs.</param>
    /// <param name="transaction">In which transaction.</param>
    /// <param name="sql">The statement, with {0} where the parameters stand.</param>
    /// <param name="columns">The columns, in the order of the values.</param>
    /// <param name="numbers">Those that are numbers and may be absent: PostgreSQL cannot tell the type of a value that is absent, and takes it for a text.</param>
    public RowStatement(DbConnection connection, DbTransaction transaction, string sql, IReadOnlyList<string> columns, IReadOnlyList<string> numbers)
    {
        command = RowReading.Command(connection, transaction, sql.Replace("{0}", string.Join(", ", columns.Select(column => "@" + column)), StringComparison.Ordinal));
        foreach (var column in columns)
        {
            var parameter = command.CreateParameter();
            parameter.ParameterName = "@" + column;
            command.Parameters.Add(parameter);
        }

        absent = [.. columns.Select(column => numbers.Contains(column) ? DbType.Int64 : DbType.String)];
    }

    private readonly DbType[] absent;

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
