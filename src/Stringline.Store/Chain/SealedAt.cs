using System.Data.Common;
using System.Globalization;
using System.Text;
using Stringline.Store.Sql;

namespace Stringline.Store.Chain;

/// <summary>
/// The moment up to which the journal was sealed last: whatever is recorded later gets a later moment. It carries a word that proves it,
/// since a digit that went wrong would else date every later entry.
/// </summary>
internal static class SealedAt
{
    private const int ProofLength = 8;

    /// <summary>As the table keeps it.</summary>
    public static string Write(Instant at)
    {
        var number = RawRow.Microseconds(at).ToString(CultureInfo.InvariantCulture);
        return number + " " + Proof(number);
    }

    /// <summary>The moment; null where there is none, or it is not as it was written.</summary>
    public static Instant? Read(string? kept)
    {
        if (kept is null || kept.Split(' ') is not [var number, var proof] || Proof(number) != proof
            || !long.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var microseconds)
            || microseconds > RawRow.LastMoment)
        {
            return null;
        }

        return RawRow.Moment(microseconds);
    }

    /// <summary>What is wrong with what the table keeps; null where nothing is.</summary>
    public static string? Fault(string? kept) => kept is "" || Read(kept) is not null
        ? null
        : $"the moment up to which the journal was sealed last is \"{kept}\"";

    /// <summary>Reads it from the table.</summary>
    public static string? Kept(DbConnection connection, DbTransaction transaction, string before = "")
    {
        using var command = RowReading.Command(connection, transaction, before + "select sealed from store");
        return command.ExecuteScalar() as string;
    }

    private static string Proof(string number) =>
        ContentHash.Of(Encoding.UTF8.GetBytes("stringline-sealed-at/1 " + number)).ToString()[..ProofLength];
}
