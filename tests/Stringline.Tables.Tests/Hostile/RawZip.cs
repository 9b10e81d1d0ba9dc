using System.Buffers.Binary;
using System.IO.Compression;
using System.IO.Hashing;
using System.Text;

namespace Stringline.Tables.Tests.Hostile;

/// <summary>Writes ZIP archives as no writer would: with lies in their headers, and parts that unpack to far more than was ever
/// made.</summary>
internal sealed class RawZip
{
    private readonly List<byte> file = [];
    private readonly List<byte> list = [];
    private int count;

    /// <summary>A part with a text, deflated.</summary>
    public RawZip Add(string name, string text, Lie? lie = null) => Add(name, Encoding.UTF8.GetBytes(text), lie);

    /// <summary>A part, deflated.</summary>
    public RawZip Add(string name, byte[] bytes, Lie? lie = null) =>
        Raw(name, Deflated(bytes, last: true), Crc32.HashToUInt32(bytes), bytes.Length, lie);

    /// <summary>A part that begins and ends with texts and holds so many megabytes of one letter between them; little work to
    /// make.</summary>
    public RawZip Bomb(string name, string before, byte letter, int megabytes, string after, Lie? lie = null)
    {
        var million = new byte[1_000_000];
        Array.Fill(million, letter);
        using var packed = new MemoryStream();
        var sum = new Crc32();
        foreach (var (bytes, times) in (ReadOnlySpan<(byte[], int)>)[(Encoding.UTF8.GetBytes(before), 1), (million, megabytes)])
        {
            // A flushed block ends on a byte and can be said again; what it looks back to is the same letter each time.
            var block = Deflated(bytes, last: false);
            for (var i = 0; i < times; i++)
            {
                packed.Write(block);
                sum.Append(bytes);
            }
        }

        var end = Encoding.UTF8.GetBytes(after);
        packed.Write(Deflated(end, last: true));
        sum.Append(end);
        return Raw(name, packed.ToArray(), sum.GetCurrentHashAsUInt32(),
            Encoding.UTF8.GetByteCount(before) + (megabytes * 1_000_000L) + end.Length, lie);
    }

    /// <summary>A part that says one text so many times; little work to make.</summary>
    public RawZip Repeat(string name, string before, string text, int times, string after)
    {
        using var packed = new MemoryStream();
        var sum = new Crc32();
        long length = 0;
        Say(Encoding.UTF8.GetBytes(before), 1, last: false);
        var chunk = Math.Clamp(1_000_000 / text.Length, 1, Math.Min(times, 10_000));
        Say(Encoding.UTF8.GetBytes(Books.Times(text, chunk)), times / chunk, last: false);
        Say(Encoding.UTF8.GetBytes(after), 1, last: true);
        return Raw(name, packed.ToArray(), sum.GetCurrentHashAsUInt32(), length, null);

        void Say(byte[] bytes, int often, bool last)
        {
            var block = Deflated(bytes, last);
            for (var i = 0; i < often; i++)
            {
                packed.Write(block);
                sum.Append(bytes);
                length += bytes.Length;
            }
        }
    }

    /// <summary>The archive.</summary>
    public byte[] ToArray(int? countSaid = null)
    {
        var end = new byte[22];
        "PK\u0005\u0006"u8.CopyTo(end);
        BinaryPrimitives.WriteUInt16LittleEndian(end.AsSpan(8), (ushort)(countSaid ?? count));
        BinaryPrimitives.WriteUInt16LittleEndian(end.AsSpan(10), (ushort)(countSaid ?? count));
        BinaryPrimitives.WriteUInt32LittleEndian(end.AsSpan(12), (uint)list.Count);
        BinaryPrimitives.WriteUInt32LittleEndian(end.AsSpan(16), (uint)file.Count);
        return [.. file, .. list, .. end];
    }

    private RawZip Raw(string name, byte[] packed, uint sum, long length, Lie? lie)
    {
        var at = (uint)file.Count;
        var told = lie ?? new Lie();
        var local = Header(30, told.LocalName ?? name, 4);
        "PK\u0003\u0004"u8.CopyTo(local);
        Common(local.AsSpan(6), told, told.Sum ?? sum, packed.Length, told.Length ?? length);
        file.AddRange(local);
        file.AddRange(packed);
        var central = Header(46, name, 6);
        "PK\u0001\u0002"u8.CopyTo(central);
        Common(central.AsSpan(8), told, told.Sum ?? sum, packed.Length, told.Length ?? length);
        BinaryPrimitives.WriteUInt32LittleEndian(central.AsSpan(42), told.At ?? at);
        list.AddRange(central);
        count++;
        return this;
    }

    // APPNOTE § 4.3.7: flags, method, time, date, CRC-32, packed and unpacked length, length of the name.
    private static void Common(Span<byte> header, Lie told, uint sum, int packed, long length)
    {
        BinaryPrimitives.WriteUInt16LittleEndian(header, told.Flags);
        BinaryPrimitives.WriteUInt16LittleEndian(header[2..], told.Method);
        BinaryPrimitives.WriteUInt32LittleEndian(header[8..], sum);
        BinaryPrimitives.WriteUInt32LittleEndian(header[12..], (uint)packed);
        BinaryPrimitives.WriteUInt32LittleEndian(header[16..], (uint)length);
    }

    private static byte[] Header(int length, string name, int versionAt)
    {
        var bytes = Encoding.UTF8.GetBytes(name);
        var header = new byte[length + bytes.Length];
        header[versionAt] = 20;
        BinaryPrimitives.WriteUInt16LittleEndian(header.AsSpan(length == 30 ? 26 : 28), (ushort)bytes.Length);
        bytes.CopyTo(header, length);
        return header;
    }

    private static byte[] Deflated(byte[] bytes, bool last)
    {
        using var packed = new MemoryStream();
        using var deflate = new DeflateStream(packed, CompressionLevel.Optimal, leaveOpen: true);
        deflate.Write(bytes);
        if (!last)
        {
            deflate.Flush();
            return packed.ToArray();
        }

        deflate.Dispose();
        return packed.ToArray();
    }

    /// <summary>What a header says otherwise than it is.</summary>
    internal sealed record Lie
    {
        public string? LocalName { get; init; }

        public uint? Sum { get; init; }

        public long? Length { get; init; }

        public uint? At { get; init; }

        public ushort Flags { get; init; }

        public ushort Method { get; init; } = 8;
    }
}
