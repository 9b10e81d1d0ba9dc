using System.Data.Common;
using System.Text;

namespace Stringline.Store.Sql;

/// <summary>What an office sets for all its desks: one document, and after it a line that proves it.</summary>
internal static class SettingsTable
{
    private const string Mark = "\nsha256 ";

    /// <summary>What comes before a document that does not prove itself, so that nobody takes it for one.</summary>
    private const string Damaged = "damaged ";

    /// <summary>The document; where what stands there is not as it was written, a text that is none.</summary>
    public static string? Read(DbConnection connection, DbTransaction? transaction = null) => Told(Stands(connection, transaction));

    /// <summary>
    /// Keeps a document; false where something else than what the writer has seen stands there. Of two who write at once, one is told so.
    /// </summary>
    public static bool Write(DbConnection connection, DbTransaction transaction, string? seen, string document)
    {
        var stands = Stands(connection, transaction);
        if (Told(stands) != seen)
            return false;

        // A server lets two look at the same moment; the statement that writes looks again, and waits for the one that came first.
        if (stands is null)
            return Run(connection, transaction, "insert into settings (id, document) values (1, @document) on conflict (id) do nothing",
                document) == 1;
        if (Proved(stands) is not null)
            return Run(connection, transaction, "update settings set document = @document where id = 1 and document = @stands", document,
                ("@stands", stands)) == 1;
        Put(connection, transaction, document);
        return true;
    }

    /// <summary>What is wrong; null where nothing is.</summary>
    public static string? Fault(DbConnection connection, DbTransaction transaction) =>
        Stands(connection, transaction) is { } stands && Proved(stands) is null ? "the settings are not as they were written" : null;

    /// <summary>Adds the line to a document that an earlier version wrote without one.</summary>
    public static void Prove(DbConnection connection, DbTransaction transaction)
    {
        if (Stands(connection, transaction) is { } stands && Proved(stands) is null)
            Put(connection, transaction, stands);
    }

    private static void Put(DbConnection connection, DbTransaction transaction, string document) =>
        Run(connection, transaction, "insert into settings (id, document) values (1, @document) on conflict (id) do update set document = "
            + "excluded.document", document);

    private static int Run(DbConnection connection, DbTransaction transaction, string statement, string document,
        params (string Name, object Value)[] more)
    {
        using var command =
            RowReading.Command(connection, transaction, statement, [("@document", document + Mark + Hash(document)), .. more]);
        return command.ExecuteNonQuery();
    }

    private static string? Told(string? stands) => stands is null ? null : Proved(stands) ?? Damaged + Hash(stands);

    private static string? Stands(DbConnection connection, DbTransaction? transaction)
    {
        using var command = RowReading.Command(connection, transaction, "select document from settings");
        using var reader = command.ExecuteReader();
        return !reader.Read() ? null : reader.GetValue(0) as string ?? "";
    }

    private static string? Proved(string stands)
    {
        var at = stands.LastIndexOf(Mark, StringComparison.Ordinal);
        return at >= 0 && Hash(stands[..at]) == stands[(at + Mark.Length)..] ? stands[..at] : null;
    }

    private static string Hash(string document) => ContentHash.Of(Encoding.UTF8.GetBytes(document)).ToString();
}
