using System.Buffers.Binary;
using System.IO.Compression;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>
/// Says a ZIP archive's two descriptions of each part against each other: the list at its end and the header before the part (APPNOTE
/// § 4.3.7, 4.3.12). The reader goes by the list alone, so a part whose name is damaged there would be missing without a word.
/// </summary>
internal static class ZipDirectory
{
    private const int LocalHeader = 30;
    private const int CentralHeader = 46;
    private const int EndRecord = 22;
    private const int LongestComment = 65_535;
    private const uint In64 = 0xFFFF_FFFF;

    /// <summary>Compares.</summary>
    /// <param name="file">The archive.</param>
    /// <param name="archive">The same as the reader sees it.</param>
    /// <exception cref="InvalidDataException">They differ.</exception>
    public static void Compare(Stream file, ZipArchive archive)
    {
        var list = List(file);
        foreach (var entry in archive.Entries)
        {
            if (list.Length < CentralHeader || !list.StartsWith("PK\u0001\u0002"u8))
                throw Damaged();
            var (nameLength, extraLength, commentLength) = (U16(list[28..]), U16(list[30..]), U16(list[32..]));
            if (list.Length < CentralHeader + nameLength + extraLength + commentLength)
                throw Damaged();
            Entry(file, entry, list[..CentralHeader], list.Slice(CentralHeader, nameLength),
                list.Slice(CentralHeader + nameLength, extraLength));
            list = list[(CentralHeader + nameLength + extraLength + commentLength)..];
        }

        if (list.StartsWith("PK\u0001\u0002"u8))
            throw Damaged();
    }

    private static void Entry(Stream file, ZipArchiveEntry entry, ReadOnlySpan<byte> central, ReadOnlySpan<byte> name,
        ReadOnlySpan<byte> extra)
    {
        var (packed, unpacked, at) = Numbers(central, extra);
        if (unpacked != entry.Length || packed != entry.CompressedLength || U32(central[16..]) != entry.Crc32)
            throw Damaged();
        var local = Bytes(file, at, LocalHeader + name.Length);
        var flags = U16(central[8..]);
        if ((flags & 1) != 0)
            throw new InvalidDataException("it is locked with a password");
        if (!local.StartsWith("PK\u0003\u0004"u8) || U16(local[6..]) != flags || U16(local[8..]) != U16(central[10..])
            || U16(local[26..]) != name.Length
            || !local[LocalHeader..].SequenceEqual(name))
        {
            throw Damaged();
        }

        // Bit 3: sum and lengths follow the part, and stand here as zeros or not at all.
        if ((flags & 8) == 0
            && (U32(local[14..]) != U32(central[16..]) || Differ(U32(local[18..]), packed) || Differ(U32(local[22..]), unpacked)))
            throw Damaged();
    }

    private static bool Differ(uint local, long central) => local != In64 && local != central;

    // APPNOTE § 4.5.3: where a number does not fit, it stands in the extra field 1, in this order.
    private static (long Packed, long Unpacked, long At) Numbers(ReadOnlySpan<byte> central, ReadOnlySpan<byte> extra)
    {
        (uint packed, uint unpacked, uint at) = (U32(central[20..]), U32(central[24..]), U32(central[42..]));
        var wide = ReadOnlySpan<byte>.Empty;
        while (extra.Length >= 4)
        {
            var length = Math.Min((int)U16(extra[2..]), extra.Length - 4);
            if (U16(extra) == 1)
                wide = extra.Slice(4, length);
            extra = extra[(4 + length)..];
        }

        var whole = Next(unpacked, ref wide);
        return (Next(packed, ref wide), whole, Next(at, ref wide));
    }

    private static long Next(uint narrow, ref ReadOnlySpan<byte> wide)
    {
        if (narrow != In64)
            return narrow;
        if (wide.Length < 8)
            throw Damaged();
        var number = BinaryPrimitives.ReadInt64LittleEndian(wide);
        wide = wide[8..];
        return number;
    }

    private static ReadOnlySpan<byte> List(Stream file)
    {
        var tail = Bytes(file, Math.Max(0, file.Length - EndRecord - LongestComment),
            (int)Math.Min(file.Length, EndRecord + LongestComment));
        for (var at = tail.Length - EndRecord; at >= 0; at--)
        {
            if (!tail[at..].StartsWith("PK\u0005\u0006"u8))
                continue;
            long length = U32(tail[(at + 12)..]), start = U32(tail[(at + 16)..]);
            var end = file.Length - tail.Length + at;
            if (length == In64 || start == In64)
                (length, start) = In64Record(file, end);
            if (start < 0 || length < 0 || start > end || length > end - start || length > TableLimits.MostUnpackedOfAList)
                throw Damaged();
            return Bytes(file, start, (int)length);
        }

        throw Damaged();
    }

    // APPNOTE § 4.3.14 and 4.3.15: the locator stands before the record of the end and says where the wide record is.
    private static (long Length, long Start) In64Record(Stream file, long end)
    {
        var locator = Bytes(file, end - 20, 20);
        if (!locator.StartsWith("PK\u0006\u0007"u8))
            throw Damaged();
        var record = Bytes(file, BinaryPrimitives.ReadInt64LittleEndian(locator[8..]), 56);
        if (!record.StartsWith("PK\u0006\u0006"u8))
            throw Damaged();
        return (BinaryPrimitives.ReadInt64LittleEndian(record[40..]), BinaryPrimitives.ReadInt64LittleEndian(record[48..]));
    }

    private static ReadOnlySpan<byte> Bytes(Stream file, long at, int length)
    {
        if (at < 0 || at > file.Length - length)
            throw Damaged();
        var bytes = new byte[length];
        file.Position = at;
        file.ReadExactly(bytes);
        return bytes;
    }

    private static ushort U16(ReadOnlySpan<byte> bytes) => BinaryPrimitives.ReadUInt16LittleEndian(bytes);

    private static uint U32(ReadOnlySpan<byte> bytes) => BinaryPrimitives.ReadUInt32LittleEndian(bytes);

    private static InvalidDataException Damaged() => new("its parts are not what its list of them says");
}
