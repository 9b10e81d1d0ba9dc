using System.Buffers;
using System.Buffers.Binary;
using System.IO.Compression;

namespace Stringline.Papers.Layout;

/// <summary>The data of a compressed stream (RFC 1950): a head of two bytes, deflate, and a checksum of what was packed.</summary>
internal static class Deflate
{
    /// <summary>How long the checksum is.</summary>
    public const int ChecksumLength = 4;

    private const int HeadLength = 2;
    private const int MostKept = 8;

    private static readonly Lock Keeping = new();
    private static readonly Queue<Kept> Faces = new();

    /// <summary>The bytes packed and ended.</summary>
    public static byte[] Pack(byte[] file, int from, int length)
    {
        using var packed = new MemoryStream((length / 3) + 64);
        using (var packer = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
            packer.Write(file, from, length);
        return packed.ToArray();
    }

    /// <summary>
    /// The same for a part of a face, which is the larger part of a paper: papers of one form need the same letters of it, so the last few
    /// are kept. The same bytes come out, whether kept or not.
    /// </summary>
    public static byte[] PackFace(byte[] file, int from, int length)
    {
        var plain = file.AsSpan(from, length);
        lock (Keeping)
        {
            foreach (var kept in Faces)
            {
                if (plain.SequenceEqual(kept.Plain))
                    return kept.Packed;
            }
        }

        var face = new Kept(plain.ToArray(), Pack(file, from, length));
        lock (Keeping)
        {
            if (Faces.Count == MostKept)
                Faces.Dequeue();
            Faces.Enqueue(face);
        }

        return face.Packed;
    }

    /// <summary>Whether packed data end with the checksum of what they hold.</summary>
    public static bool IsEnded(byte[] file, int from, int length) => length > HeadLength + ChecksumLength
        && BinaryPrimitives.ReadUInt32BigEndian(file.AsSpan(from + length - ChecksumLength)) == Checksum(file, from, length);

    /// <summary>The checksum of what packed data hold: Adler-32 (RFC 1950, 8.2).</summary>
    public static uint Checksum(byte[] file, int from, int length)
    {
        // Behind the head lies plain deflate, which says itself where it ends.
        using var packed = new MemoryStream(file, from + HeadLength, length - HeadLength, writable: false);
        using var inflater = new DeflateStream(packed, CompressionMode.Decompress);
        var room = ArrayPool<byte>.Shared.Rent(1 << 16);
        try
        {
            uint a = 1, b = 0;
            for (int read; (read = inflater.Read(room, 0, room.Length)) > 0;)
                Add(room.AsSpan(0, read), ref a, ref b);
            return (b << 16) | a;
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(room);
        }
    }

    // Two sums modulo the largest prime under 65536; 3,800 bytes at a time stay within 32 bits.
    private static void Add(ReadOnlySpan<byte> bytes, ref uint a, ref uint b)
    {
        const uint prime = 65521;
        const int atATime = 3800;
        var (first, second) = (a, b);
        while (!bytes.IsEmpty)
        {
            var part = bytes[..Math.Min(atATime, bytes.Length)];
            unchecked
            {
                foreach (var value in part)
                {
                    first += value;
                    second += first;
                }
            }

            (first, second) = (first % prime, second % prime);
            bytes = bytes[part.Length..];
        }

        (a, b) = (first, second);
    }

    private sealed record Kept(byte[] Plain, byte[] Packed);
}
