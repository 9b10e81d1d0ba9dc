using System.Data.Common;
using Dapper;

namespace Stringline.Store.Sql;

/// <summary>
/// The triggers that keep the journal append-only on PostgreSQL, and whatever else would stand between a statement and its table.
/// </summary>
internal static class PostgresGuards
{
    private static readonly string[] Tables = ["changes", "proofs"];

    /// <summary>What is missing, changed or added.</summary>
    public static IEnumerable<string> Check(DbConnection connection, DbTransaction snapshot, string schema)
    {
        var triggers = connection.Query<(string Table, string Name, string State, string Made, string Runs)>(
            """
            select c.relname, t.tgname, t.tgenabled::text, pg_get_triggerdef(t.oid), p.prosrc
            from pg_trigger t join pg_class c on c.oid = t.tgrelid join pg_namespace n on n.oid = c.relnamespace
              join pg_proc p on p.oid = t.tgfoid
            where n.nspname = @schema and not t.tgisinternal order by 1, 2
            """,
            new { schema },
            snapshot).ToDictionary(one => (one.Table, one.Name));
        foreach (var table in Tables)
        {
            var name = table + "_stay";
            if (!triggers.Remove((table, name), out var trigger))
                yield return $"the trigger \"{name}\" is missing: it keeps the journal from being edited";
            else if (trigger.State != "O" || trigger.Made.Replace(schema + ".", "", StringComparison.Ordinal) != Made(table, name)
                || !trigger.Runs.Contains("raise exception 'The journal is append-only", StringComparison.Ordinal))
                yield return $"the trigger \"{name}\" is not as this program makes it, or is switched off: "
                    + "it keeps the journal from being edited";
        }

        foreach (var (table, name) in triggers.Keys)
            yield return $"there is a trigger \"{name}\" on {table} that this program does not make";
        foreach (var (table, name) in connection.Query<(string, string)>(
            "select tablename, rulename from pg_rules where schemaname = @schema", new { schema }, snapshot))
            yield return $"there is a rule \"{name}\" on {table} that this program does not make";
    }

    // The server names the schema or leaves it out, by the search path.
    private static string Made(string table, string name) =>
        $"CREATE TRIGGER {name} BEFORE DELETE OR UPDATE OR TRUNCATE ON {table} FOR EACH STATEMENT "
            + "EXECUTE FUNCTION journal_is_append_only()";
}
