using System.Buffers.Binary;
using System.Text;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>
/// The file system in which an old workbook (XLS) lies ([MS-CFB]), read strictly and into bounds: chains of sectors that end, and streams
/// that lie in the file. The format has no checksum.
/// </summary>
internal sealed class CompoundFile
{
    private const int Sector = 512;
    private const int Header = 512;
    private const int NumbersOfASector = Sector / 4;
    private const int SectorsInTheHeader = 109;
    private const int Entry = 128;
    private const uint EndOfChain = 0xFFFF_FFFE;
    private const uint Free = 0xFFFF_FFFF;

    private readonly byte[] bytes;
    private readonly uint[] next;

    /// <summary>Reads it.</summary>
    /// <exception cref="InvalidDataException">It is damaged, or of another make.</exception>
    public CompoundFile(byte[] bytes)
    {
        this.bytes = bytes;
        var file = (ReadOnlySpan<byte>)bytes;
        if (bytes.Length < Header || U16(file[28..]) is not (0xFFFE or 0xFFFF) || U16(file[30..]) != 9 || U16(file[32..]) != 6
            || U32(file[56..]) != 4096)
            throw Damaged();
        var sectors = (bytes.Length - Header + Sector - 1) / Sector;
        var more = U32(file[72..]);
        if (more > (sectors / (NumbersOfASector * NumbersOfASector)) + 1)
            throw Damaged();
        next = new uint[sectors];
        Array.Fill(next, EndOfChain);
        FillNext(file, sectors, more);
        Walk(U32(file[60..]));
        Entries = [.. Directory(U32(file[48..]))];
    }

    /// <summary>Its streams: name, first sector, length.</summary>
    public IReadOnlyList<(string Name, uint First, uint Length, bool IsStream)> Entries { get; }

    /// <summary>The content of a stream.</summary>
    public byte[] Content(uint first, uint length)
    {
        var chain = Walk(first);
        if (length > chain.Count * (long)Sector)
            throw Damaged();
        var content = new byte[length];
        for (var i = 0; i * (long)Sector < length; i++)
            At(chain[i], Math.Min(Sector, content.Length - (i * Sector))).CopyTo(content.AsSpan(i * Sector));
        return content;
    }

    private void FillNext(ReadOnlySpan<byte> file, int sectors, uint more)
    {
        var tables = new List<uint>();
        for (var i = 0; i < SectorsInTheHeader; i++)
            tables.Add(U32(file[(76 + (4 * i))..]));
        var list = U32(file[68..]);
        for (var i = 0; i < more; i++)
        {
            var numbers = At(list, Sector);
            for (var n = 0; n < NumbersOfASector - 1; n++)
                tables.Add(U32(numbers[(4 * n)..]));
            list = U32(numbers[(Sector - 4)..]);
        }

        while (tables.Count > 0 && tables[^1] is Free or EndOfChain)
            tables.RemoveAt(tables.Count - 1);
        if (tables.Count > (sectors / NumbersOfASector) + 1)
            throw Damaged();
        for (var t = 0; t < tables.Count; t++)
        {
            var numbers = At(tables[t], Sector);
            for (var n = 0; n < NumbersOfASector && (t * NumbersOfASector) + n < sectors; n++)
                next[(t * NumbersOfASector) + n] = U32(numbers[(4 * n)..]);
        }
    }

    private IEnumerable<(string Name, uint First, uint Length, bool IsStream)> Directory(uint first)
    {
        foreach (var sector in Walk(first))
        {
            for (var i = 0; i < Sector / Entry; i++)
            {
                var entry = At(sector, Sector).Slice(i * Entry, Entry);
                var name = Encoding.Unicode.GetString(entry[..Math.Min((ushort)64, U16(entry[64..]))]).TrimEnd('\0');
                var length = U32(entry[120..]);
                if (entry[66] == 2 && length > bytes.Length)
                    throw Damaged();
                yield return (name, U32(entry[116..]), length, entry[66] == 2);
            }
        }
    }

    private List<uint> Walk(uint sector)
    {
        var chain = new List<uint>();
        for (; sector != EndOfChain; sector = next[sector])
        {
            if (sector >= next.Length || chain.Count > next.Length)
            {
                // A list that is not there begins with "free" in files of some writers.
                if (chain.Count == 0 && sector == Free)
                    break;
                throw Damaged();
            }

            chain.Add(sector);
        }

        return chain;
    }

    private ReadOnlySpan<byte> At(uint sector, int length)
    {
        var at = Header + (sector * (long)Sector);
        return at + length <= bytes.Length ? bytes.AsSpan((int)at, length) : throw Damaged();
    }

    private static ushort U16(ReadOnlySpan<byte> bytes) => BinaryPrimitives.ReadUInt16LittleEndian(bytes);

    private static uint U32(ReadOnlySpan<byte> bytes) => BinaryPrimitives.ReadUInt32LittleEndian(bytes);

    private static InvalidDataException Damaged() => new("it is cut off or damaged");
}
