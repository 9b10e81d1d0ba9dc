using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Stringline.Store.Chain;

/// <summary>
/// The hash that ties a change to the one before. It is SHA-256 over the parts in a fixed order, each led by its length as eight bytes,
/// most significant first, so that no two different changes give the same bytes; a part that is absent has the length -1.
/// </summary>
internal static class ChainHash
{
    /// <summary>What stands before the first change of a job.</summary>
    public static readonly ContentHash Beginning = ContentHash.Of("stringline-journal/1"u8);

    /// <summary>The hash of a change.</summary>
    public static ContentHash Of(ContentHash before, long job, string key, RawRow row)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Span<byte> bytes = stackalloc byte[ContentHash.Length];
        before.CopyTo(bytes);
        hash.AppendData(bytes);
        Number(hash, job);
        Text(hash, key);
        Number(hash, row.Sequence);
        Number(hash, row.At);
        Text(hash, row.Who);
        Text(hash, row.Kind);
        Text(hash, row.Learned);
        Text(hash, row.Supersedes);
        Text(hash, row.Proofs);
        Number(hash, row.Payload.Length);
        hash.AppendData(row.Payload);
        hash.GetHashAndReset(bytes);
        return ContentHash.From(bytes);
    }

    private static void Number(IncrementalHash hash, long number)
    {
        Span<byte> bytes = stackalloc byte[8];
        BinaryPrimitives.WriteInt64BigEndian(bytes, number);
        hash.AppendData(bytes);
    }

    private static void Text(IncrementalHash hash, string? text)
    {
        if (text is null)
        {
            Number(hash, -1);
            return;
        }

        var length = Encoding.UTF8.GetByteCount(text);
        Number(hash, length);
        Span<byte> bytes = length <= 512 ? stackalloc byte[512] : new byte[length];
        hash.AppendData(bytes[..Encoding.UTF8.GetBytes(text, bytes)]);
    }
}
