using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Stringline.Store.Sql;

/// <summary>The statements that write jobs, prepared once for many.</summary>
internal sealed class SqliteWriting : IDisposable
{
    private readonly SqliteCommand newJob;
    private readonly SqliteCommand moveJob;
    private readonly SqliteCommand change;
    private readonly SqliteCommand texts;
    private readonly SqliteCommand words;

    public SqliteWriting(SqliteConnection connection, SqliteTransaction transaction)
    {
        newJob = Prepare("insert into jobs (id, key, name, sequence, hash) values (@1, @2, @3, @4, @5)", 5);
        moveJob = Prepare("update jobs set name = @3, sequence = @4, hash = @5 where id = @1 and key = @2", 5);
        change = Prepare(
            "insert into changes (job, sequence, at, who, kind, learned, supersedes, proofs, payload, hash) values (@1, @2, "
                + "@3, @4, @5, @6, @7, @8, @9, @10)", 10);
        texts = Prepare("insert or replace into search_texts (job, texts) values (@1, @2)", 2);
        words = Prepare("insert or replace into search (rowid, words) values (@1, @2)", 2);

        SqliteCommand Prepare(string sql, int parameters)
        {
            var command = connection.CreateCommand();
            command.Transaction = transaction;
            command.CommandText = sql;
            for (var i = 1; i <= parameters; i++)
                command.Parameters.Add(new SqliteParameter { ParameterName = string.Create(CultureInfo.InvariantCulture, $"@{i}") });
            return command;
        }
    }

    public void Write(JobWrite job)
    {
        var tip = job.Tip;
        Run(job.IsNew ? newJob : moveJob, tip.Id, tip.Key, tip.Name, tip.Sequence, tip.Hash.ToBytes());
        foreach (var row in job.Rows)
            Run(change, tip.Id, row.Sequence, row.At, row.Who, row.Kind, row.Learned, row.Supersedes, row.Proofs, row.Payload, row.Hash);
        Run(texts, tip.Id, job.Texts.Lines);
        Run(words, tip.Id, job.Texts.Words);
    }

    public void Dispose()
    {
        foreach (var command in (SqliteCommand[])[newJob, moveJob, change, texts, words])
            command.Dispose();
    }

    private static void Run(SqliteCommand command, params ReadOnlySpan<object?> values)
    {
        for (var i = 0; i < values.Length; i++)
            command.Parameters[i].Value = values[i] ?? DBNull.Value;
        if (command.ExecuteNonQuery() != 1)
            throw new InvalidOperationException("A statement that writes one row wrote another number of rows.");
    }
}
