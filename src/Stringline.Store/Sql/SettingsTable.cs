using System.Data.Common;

namespace Stringline.Store.Sql;

/// <summary>What an office sets for all its desks: one document.</summary>
internal static class SettingsTable
{
    public static string? Read(DbConnection connection, DbTransaction? transaction = null)
    {
        using var command = RowReading.Command(connection, transaction, "select document from settings");
        return (string?)command.ExecuteScalar();
    }

    public static bool Write(DbConnection connection, DbTransaction transaction, string? seen, string document)
    {
        if (Read(connection, transaction) != seen)
            return false;
        using var command = RowReading.Command(
            connection,
            transaction,
            "insert into settings (id, document) values (1, @document) on conflict (id) do update set document = excluded.document",
            ("@document", document));
        command.ExecuteNonQuery();
        return true;
    }
}
