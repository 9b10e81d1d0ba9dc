using System.Globalization;
using System.Data.Common;
using System.Reflection;
using Dapper;

namespace Stringline.Store.Sql;

/// <summary>Brings a store to this program's version: runs the numbered scripts that it has not had yet, all or none.</summary>
internal static class Migrator
{
    /// <summary>The statement that makes the table in which the scripts that were run are noted.</summary>
    public const string MakesItsTable =
        "create table if not exists migrations (number bigint primary key, name text not null, at bigint not null)";

    private const int SearchSince = 2;
    private const int SettingsProvedSince = 8;

    /// <summary>The scripts of a database, by number.</summary>
    public static IReadOnlyList<Script> Scripts(Database database)
    {
        var assembly = Assembly.GetExecutingAssembly();
        var scripts = assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(database.Scripts + "/", StringComparison.Ordinal)
                && name.EndsWith(".sql", StringComparison.Ordinal))
            .Select(name => (File: name, Name: name[(database.Scripts.Length + 1)..^".sql".Length]))
            .Select(script => new Script(
                int.Parse(script.Name.AsSpan(0, 4), System.Globalization.CultureInfo.InvariantCulture), script.Name[5..], script.File))
            .OrderBy(script => script.Number)
            .ToList();
        return scripts.Select(script => script.Number).SequenceEqual(Enumerable.Range(1, scripts.Count))
            ? scripts
            : throw new InvalidOperationException("The migration scripts are not numbered from 1 without a gap.");
    }

    /// <summary>Brings the store there.</summary>
    public static void Bring(Database database, DbConnection connection, OpenStore open, IClock clock)
    {
        var scripts = Scripts(database);
        var version = database.Prepare(connection, open) ? Version(connection, null) : 0;
        Refuse(database, open, version, scripts.Count);
        if (version < scripts.Count)
            Bring(database, connection, scripts, scripts.Count, clock);
    }

    /// <summary>Runs the scripts up to a number. Another program may have run them in the meantime.</summary>
    internal static void Bring(Database database, DbConnection connection, IReadOnlyList<Script> scripts, int upTo, IClock clock)
    {
        using var transaction = database.BeginWrite(connection);
        database.LockForMigration(connection, transaction);
        connection.Execute(MakesItsTable, transaction: transaction);
        var version = Version(connection, transaction);
        foreach (var script in scripts.Where(script => script.Number > version && script.Number <= upTo))
        {
            connection.Execute(script.Text(), transaction: transaction);
            if (script.Number == SearchSince)
                SearchFilling.Fill(database, connection, transaction);
            if (script.Number == SettingsProvedSince)
                SettingsTable.Prove(connection, transaction);
            connection.Execute(
                "insert into migrations (number, name, at) values (@Number, @Name, @at)",
                new { Number = (long)script.Number, script.Name, at = Chain.RawRow.Microseconds(clock.GetCurrentInstant()) },
                transaction);
        }

        transaction.Commit();
    }

    private static int Version(DbConnection connection, DbTransaction? transaction) =>
        (int)connection.ExecuteScalar<long>("select coalesce(max(number), 0) from migrations", transaction: transaction);

    private static void Refuse(Database database, OpenStore open, int version, int current)
    {
        if (version > current)
        {
            throw new StoreException(
                StoreFault.TooNew, database.Name, string.Create(CultureInfo.InvariantCulture, $"a store of version {version}"),
                string.Create(CultureInfo.InvariantCulture, $"one of at most version {current}, or a later version of this program"));
        }

        if (version == 0 && open is not (OpenStore.OrMake or OpenStore.OrMakeOnWriting))
            throw new StoreException(StoreFault.Missing, database.Name, "no store there", "a store; a new one is made with --new");
        if (version < current && open == OpenStore.ReadOnly)
        {
            throw new StoreException(
                StoreFault.EarlierVersion, database.Name,
                string.Create(CultureInfo.InvariantCulture, $"a store of version {version}, opened only to be read"),
                string.Create(CultureInfo.InvariantCulture,
                    $"one of version {current}; open it once to be written, which brings it there"));
        }
    }

    /// <summary>One migration script.</summary>
    internal sealed record Script(int Number, string Name, string File)
    {
        /// <summary>Its text.</summary>
        public string Text()
        {
            using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(File)
                ?? throw new InvalidOperationException($"The migration script {File} is missing from the program.");
            using var reader = new StreamReader(stream);
            return reader.ReadToEnd();
        }
    }
}
