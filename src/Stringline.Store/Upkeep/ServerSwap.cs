using System.Globalization;
using System.Data.Common;
using Dapper;
using Npgsql;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>
/// Puts a backup in the place of a store on a PostgreSQL server: it is copied into a schema of another name and walked there; then both
/// schemas change their names in one transaction. Broken off, it leaves the old store at the address.
/// </summary>
internal static class ServerSwap
{
    private const string Unfinished = "_restoring";
    private const string Mark = "being restored by stringline";

    // PostgreSQL cuts longer names off (its manual, 4.1.1).
    private const int LongestName = 63;

    /// <inheritdoc cref="Upkeep.Restore.From"/>
    public static Restored Restore(
        SqlJournal source, CheckReport expected, StoreAddress.OnServer address, bool replace, string aside, IClock clock,
        IProgress<StoreProgress>? progress)
    {
        using var server = new PostgresDatabase(address);
        var schema = server.Schema;
        if (schema.Length + aside.Length > LongestName)
        {
            throw new StoreException(
                StoreFault.NotAllowed, server.Name,
                    string.Create(CultureInfo.InvariantCulture, $"a schema whose name has {schema.Length} letters"),
                string.Create(CultureInfo.InvariantCulture, $"at most {LongestName - aside.Length}: the old store is kept under a longer "
                    + $"one"));
        }

        return server.Run(connection =>
        {
            if (!TakeTurn(connection, schema))
                throw new StoreException(
                    StoreFault.Busy, server.Name, "a store into which another restore is under way",
                    "one restore at a time; try again when it is done");
            try
            {
                // Refuses the tables of another program, which would be set aside as if they were a store.
                server.Prepare(connection, OpenStore.OrMake);
                if (!replace && Jobs(connection, null, schema) > 0)
                    throw Upkeep.Restore.Exists(server.Name);
                var cleared = Drop(connection, server.Name, schema + Unfinished);
                connection.Execute($"create schema {schema}{Unfinished}; comment on schema {schema}{Unfinished} is '{Mark}'");
                CheckReport report;
                using (var copy = Journals.Connect(Beside(address, schema + Unfinished), clock, OpenStore.OrMake))
                    report = StoreCopy.Copy(source, copy, progress);
                StoreCopy.MustBeEqual(expected, report, server.Name);
                var kept = Swap(connection, server.Name, schema, schema + aside, replace);
                return new Restored(
                    report, kept is null ? null : "schema " + kept) { Cleared = cleared ? ["schema " + schema + Unfinished] : [] };
            }
            finally
            {
                // Where the swap went well it has the store's name by now, and nothing is dropped.
                if (connection.State == System.Data.ConnectionState.Open)
                {
                    if (IsMarked(connection, schema + Unfinished))
                        Drop(connection, server.Name, schema + Unfinished);
                    GiveTurn(connection, schema);
                }
            }
        });
    }

    /// <summary>What restores left beside a schema; not what one is at work on.</summary>
    public static IReadOnlyList<Leftover> Leftovers(DbConnection connection, string schema)
    {
        var kept = connection.Query<string>("select nspname::text from pg_namespace order by nspname")
            .Where(name => KeptStores.IsOne(name, schema))
            .Select(name => new Leftover("schema " + name, LeftoverKind.Older));
        return [.. kept, .. IsLeft(connection, schema) ? [new Leftover($"schema {schema}{Unfinished}", LeftoverKind.Unfinished)]
            : Array.Empty<Leftover>()];
    }

    private static bool IsLeft(DbConnection connection, string schema)
    {
        if (!IsMarked(connection, schema + Unfinished) || !TakeTurn(connection, schema))
            return false;
        GiveTurn(connection, schema);
        return true;
    }

    // Held by this connection to its end: of two restores at once the second is told so.
    private static bool TakeTurn(DbConnection connection, string schema) =>
        connection.ExecuteScalar<bool>("select pg_try_advisory_lock(hashtext('stringline restore'), hashtext(@schema))", new { schema });

    private static void GiveTurn(DbConnection connection, string schema) =>
        connection.Execute("select pg_advisory_unlock(hashtext('stringline restore'), hashtext(@schema))", new { schema });

    private static StoreAddress.OnServer Beside(StoreAddress.OnServer address, string schema) =>
        new(new NpgsqlConnectionStringBuilder(address.Settings.ConnectionString) { SearchPath = schema });

    private static string? Swap(DbConnection connection, string name, string schema, string aside, bool replace)
    {
        using var transaction = connection.BeginTransaction();
        string? kept = null;
        if (Exists(connection, transaction, schema))
        {
            // Waits for whoever is writing; from now on nobody can.
            if (IsStore(connection, transaction, schema))
                connection.Execute($"lock table {schema}.changes in access exclusive mode", transaction: transaction);
            if (!replace && Jobs(connection, transaction, schema) > 0)
                throw Upkeep.Restore.Exists(name);
            kept = aside;
            connection.Execute($"alter schema {schema} rename to {kept}", transaction: transaction);
        }

        connection.Execute($"alter schema {schema}{Unfinished} rename to {schema}; comment on schema {schema} is null",
            transaction: transaction);
        transaction.Commit();
        return kept;
    }

    // Only what a restore made and marked: any other schema of that name is somebody's.
    private static bool Drop(DbConnection connection, string name, string schema)
    {
        if (!Exists(connection, null, schema))
            return false;
        if (!IsMarked(connection, schema))
        {
            throw new StoreException(
                StoreFault.Exists, name, $"a schema {schema} beside it, which no restore has made",
                "no such schema, or one of another name: a restore needs that place");
        }

        connection.Execute($"set client_min_messages = warning; drop schema {schema} cascade; reset client_min_messages");
        return true;
    }

    private static bool IsMarked(DbConnection connection, string schema) => connection.ExecuteScalar<bool>(
        "select coalesce(obj_description(cast(to_regnamespace(@schema) as oid), 'pg_namespace') = @Mark, false)", new { schema, Mark });

    private static bool Exists(DbConnection connection, DbTransaction? transaction, string schema) =>
        connection.ExecuteScalar<bool>("select to_regnamespace(@schema) is not null", new { schema }, transaction);

    private static bool IsStore(DbConnection connection, DbTransaction? transaction, string schema) =>
        connection.ExecuteScalar<bool>("select to_regclass(@changes) is not null", new { changes = schema + ".changes" }, transaction);

    private static long Jobs(DbConnection connection, DbTransaction? transaction, string schema) =>
        connection.ExecuteScalar<bool>("select to_regclass(@store) is not null", new { store = schema + ".store" }, transaction)
            ? connection.ExecuteScalar<long>($"select coalesce(sum(jobs), 0)::bigint from {schema}.store", transaction: transaction)
            : 0;
}
