using System.Buffers;
using System.Buffers.Binary;
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
        // Room for the worst: three bytes for each character of a text.
        var texts = key.Length + row.Who.Length + row.Kind.Length + (row.Learned?.Length ?? 0) + (row.Supersedes?.Length ?? 0)
            + (row.Proofs?.Length ?? 0);
        var rented = ArrayPool<byte>.Shared.Rent(ContentHash.Length + (10 * sizeof(long)) + (3 * texts) + row.Payload.Length);
        Span<byte> rest = rented;
        before.CopyTo(rest);
        rest = rest[ContentHash.Length..];
        Number(ref rest, job);
        Text(ref rest, key);
        Number(ref rest, row.Sequence);
        Number(ref rest, row.At);
        Text(ref rest, row.Who);
        Text(ref rest, row.Kind);
        Text(ref rest, row.Learned);
        Text(ref rest, row.Supersedes);
        Text(ref rest, row.Proofs);
        Number(ref rest, row.Payload.Length);
        row.Payload.CopyTo(rest);
        rest = rest[row.Payload.Length..];
        var hash = ContentHash.Of(rented.AsSpan(0, rented.Length - rest.Length));
        ArrayPool<byte>.Shared.Return(rented);
        return hash;
    }

    private static void Number(ref Span<byte> rest, long number)
    {
        BinaryPrimitives.WriteInt64BigEndian(rest, number);
        rest = rest[sizeof(long)..];
    }

    private static void Text(ref Span<byte> rest, string? text)
    {
        var length = text is null ? -1 : Encoding.UTF8.GetBytes(text, rest[sizeof(long)..]);
        Number(ref rest, length);
        rest = rest[Math.Max(length, 0)..];
    }
}
