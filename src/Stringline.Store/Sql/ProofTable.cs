using System.Data.Common;

namespace Stringline.Store.Sql;

/// <summary>Attached papers by the hash of their content: the same paper attached twice is kept once.</summary>
internal static class ProofTable
{
    public static void Write(DbConnection connection, DbTransaction transaction, IEnumerable<Proof> proofs)
    {
        foreach (var proof in proofs)
            Write(connection, transaction, proof.Hash.ToBytes(), proof.Kind.Word(), proof.Content.ToArray());
    }

    public static void Write(DbConnection connection, DbTransaction transaction, byte[] hash, string kind, byte[] content)
    {
        using var command = RowReading.Command(
            connection,
            transaction,
            "insert into proofs (hash, kind, content) values (@hash, @kind, @content) on conflict (hash) do nothing",
            ("@hash", hash),
            ("@kind", kind),
            ("@content", content));
        command.ExecuteNonQuery();
    }

    public static byte[]? Content(DbConnection connection, DbTransaction? transaction, ContentHash hash)
    {
        using var command = RowReading.Command(
            connection, transaction, "select content from proofs where hash = @hash", ("@hash", hash.ToBytes()));
        using var reader = command.ExecuteReader();
        return reader.Read() ? reader.GetFieldValue<byte[]>(0) : null;
    }

    /// <summary>Every paper, by hash.</summary>
    public static IEnumerable<(byte[] Hash, string Kind, byte[] Content)> All(DbConnection connection, DbTransaction transaction)
    {
        using var command = RowReading.Command(connection, transaction, "select hash, kind, content from proofs order by hash");
        using var reader = command.ExecuteReader();
        while (reader.Read())
            yield return (reader.GetFieldValue<byte[]>(0), reader.GetString(1), reader.GetFieldValue<byte[]>(2));
    }
}
