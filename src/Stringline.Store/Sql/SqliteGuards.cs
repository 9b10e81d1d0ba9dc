using System.Data.Common;
using System.Text.RegularExpressions;
using Dapper;
using Microsoft.Data.Sqlite;

namespace Stringline.Store.Sql;

/// <summary>
/// What the scripts make in a SQLite file, beside what stands in a store: its tables, indexes, and the triggers that keep the journal
/// append-only.
/// </summary>
internal static partial class SqliteGuards
{
    private const int Search = 2;

    /// <summary>The statement that makes the index of words.</summary>
    public static string WordIndex { get; } = WordIndexStatement().Match(Scripts()[Search - 1].Text()).Value;

    /// <summary>What is missing, changed or added.</summary>
    public static IEnumerable<string> Check(DbConnection connection, DbTransaction snapshot)
    {
        var made = new Dictionary<(string, string), string>();
        using (var fresh = new SqliteConnection("Data Source=:memory:"))
        {
            fresh.Open();
            fresh.Execute(Migrator.MakesItsTable);
            foreach (var script in Scripts())
                fresh.Execute(script.Text());
            foreach (var one in Objects(fresh, null))
                made.Add((one.Type, one.Name), one.Sql);
        }

        foreach (var one in Objects(connection, snapshot))
        {
            if (made.Remove((one.Type, one.Name), out var sql))
            {
                if (sql != one.Sql)
                    yield return $"the {one.Type} \"{one.Name}\" is not as this program makes it";
            }
            else if (one.Type == "trigger")
            {
                yield return $"there is a trigger \"{one.Name}\" that this program does not make";
            }
        }

        foreach (var ((type, name), sql) in made)
            yield return $"the {type} \"{name}\" is missing"
                + (sql.Contains("append-only", StringComparison.Ordinal) ? ": it keeps the journal from being edited" : "");
    }

    private static IReadOnlyList<Migrator.Script> Scripts()
    {
        using var database = new SqliteDatabase(":memory:", OpenStore.OrMake);
        return Migrator.Scripts(database);
    }

    // What begins with sqlite_ is SQLite's own.
    private static IEnumerable<(string Type, string Name, string Sql)> Objects(DbConnection connection, DbTransaction? snapshot) =>
        connection.Query<(string Type, string Name, string? Sql)>(
            "select type, name, sql from sqlite_schema where name not like 'sqlite!_%' escape '!'", transaction: snapshot)
        .Select(one => (one.Type, one.Name, Spaces().Replace(one.Sql ?? "", " ")));

    [GeneratedRegex("create virtual table search using[^;]*;")]
    private static partial Regex WordIndexStatement();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
