using System.Globalization;
using System.Data.Common;
using Dapper;
using Microsoft.Data.Sqlite;
using Npgsql;
using SQLitePCL;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>A place for one store: an address at which nothing is yet, cleaned up at the end.</summary>
public abstract class Place : IDisposable
{
    private readonly List<IJournal> opened = [];
    private DbConnection? tampering;

    /// <summary>The address.</summary>
    public abstract string Address { get; }

    /// <summary>The clock of what is opened here; stands still unless moved.</summary>
    public Ticking Clock { get; } = new();

    public IJournal Open(OpenStore open = OpenStore.OrMake)
    {
        var journal = Journals.Open(Address, Clock, open);
        opened.Add(journal);
        return journal;
    }

    /// <summary>
    /// Runs statements on the tables behind the store's back, past the guards against editing; gives the number of rows changed.
    /// </summary>
    public int Tamper(string sql, object? parameters = null)
    {
        tampering ??= Unguarded();
        return tampering.Execute(sql, parameters);
    }

    /// <summary>Lets go of the tables, for what is refused while anybody has the store open.</summary>
    public void EndTampering()
    {
        tampering?.Dispose();
        tampering = null;
    }

    /// <summary>Rows of the tables as they stand.</summary>
    public List<object[]> Rows(string sql)
    {
        tampering ??= Unguarded();
        using var reader = tampering.ExecuteReader(sql);
        var rows = new List<object[]>();
        while (reader.Read())
        {
            rows.Add(new object[reader.FieldCount]);
            reader.GetValues(rows[^1]);
        }

        return rows;
    }

    /// <summary>A connection to the tables that passes over the guards against editing.</summary>
    protected abstract DbConnection Unguarded();

    /// <summary>One value out of the tables.</summary>
    public abstract T Scalar<T>(string sql, object? parameters = null);

    public virtual void Dispose()
    {
        EndTampering();
        foreach (var journal in opened)
            journal.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>A clock that goes on by a second each time it is looked at.</summary>
    public sealed class Ticking : IClock
    {
        private Instant now = Instant.FromUtc(2026, 5, 4, 17, 0);

        public Instant GetCurrentInstant() => now += Duration.FromSeconds(1);

        public void Set(Instant instant) => now = instant;
    }
}

/// <summary>A SQLite file in a folder of its own.</summary>
public sealed class SqlitePlace : Place
{
    private readonly string folder = Scratch.Folder();

    public override string Address => Path.Combine(folder, "office.stringline");

    protected override DbConnection Unguarded()
    {
        var connection = Connect();
        connection.Execute("pragma synchronous = off");

        // The triggers stay where they are, and are not run: https://www.sqlite.org/c3ref/c_dbconfig_defensive.html,
        // SQLITE_DBCONFIG_ENABLE_TRIGGER.
        const int EnableTrigger = 1003;
        Assert.Equal(0, raw.sqlite3_db_config(connection.Handle, EnableTrigger, 0, out _));
        return connection;
    }

    public override T Scalar<T>(string sql, object? parameters = null)
    {
        using var connection = Connect();
        return connection.ExecuteScalar<T>(sql, parameters)!;
    }

    public SqliteConnection Connect()
    {
        var connection = new SqliteConnection($"Data Source={Address};Pooling=False;Foreign Keys=False");
        connection.Open();
        return connection;
    }

    public override void Dispose()
    {
        base.Dispose();
        Directory.Delete(folder, recursive: true);
    }
}

/// <summary>A schema of its own on the server that <c>eng/postgres.sh</c> starts.</summary>
public sealed class PostgresPlace : Place
{
    private static int count;

    private readonly string schema =
        string.Create(CultureInfo.InvariantCulture, $"t{Environment.ProcessId}_{Interlocked.Increment(ref count)}");

    /// <summary>The server; without it the tests of PostgreSQL fail, since passing over them would look like success.</summary>
    public static string Server
    {
        get
        {
            SlowAttribute.Must(Slow.PostgreSql);
            return Environment.GetEnvironmentVariable("STRINGLINE_TEST_POSTGRES") is { Length: > 0 } server
                ? server
                : throw new InvalidOperationException("STRINGLINE_TEST_POSTGRES names no PostgreSQL server. Run ./test, or the tests "
                + "through eng/postgres.sh, which starts one.");
        }
    }

    public override string Address => $"postgres:{Server};Search Path={schema};Maximum Pool Size=8;Include Error Detail=true";

    protected override DbConnection Unguarded()
    {
        var connection = Connect();
        connection.Execute("set session_replication_role = replica");     // Triggers and foreign keys are there, and are not run.
        return connection;
    }

    public override T Scalar<T>(string sql, object? parameters = null)
    {
        using var connection = Connect();
        return connection.ExecuteScalar<T>(sql, parameters)!;
    }

    public NpgsqlConnection Connect()
    {
        var connection = new NpgsqlConnection($"{Server};Search Path={schema};Pooling=False");
        connection.Open();
        return connection;
    }

    public override void Dispose()
    {
        base.Dispose();
        using var connection = Connect();
        connection.Execute($"set client_min_messages = warning; drop schema if exists {schema} cascade");
    }
}
