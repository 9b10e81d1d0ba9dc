using System.Buffers.Binary;
using System.Text;

namespace Stringline.Tables.Tests.Hostile;

/// <summary>Old workbooks made record by record ([MS-XLS]) in a file system made by hand ([MS-CFB]): one table of sectors, one
/// directory.</summary>
internal static class RawXls
{
    private const uint End = 0xFFFF_FFFE;

    /// <summary>A record.</summary>
    public static byte[] Record(int kind, params IEnumerable<int> words)
    {
        var body = words.SelectMany(word => new[] { (byte)(word & 0xFF), (byte)((word >> 8) & 0xFF) }).ToArray();
        return [(byte)(kind & 0xFF), (byte)(kind >> 8), (byte)(body.Length & 0xFF), (byte)(body.Length >> 8), .. body];
    }

    /// <summary>A cell with a number.</summary>
    public static byte[] Number(int row, int column, double value) => Record(
        0x203, [row, column, 0, .. BitConverter.GetBytes(value).Chunk(2).Select(pair => pair[0] | (pair[1] << 8))]);

    /// <summary>A cell with a text of the version before the last: 8 bits a letter.</summary>
    public static byte[] Text(int row, int column, string text) =>
        [.. Record(0x204, row, column, 0, text.Length).Select((one, i) => i == 2 ? (byte)(8 + text.Length) : one),
            .. Encoding.ASCII.GetBytes(text)];

    /// <summary>A book with one sheet of these records.</summary>
    /// <param name="sheet">The sheet's records.</param>
    /// <param name="more">Records beside the list of sheets.</param>
    /// <param name="sheets">How many sheets the list names, all at one place.</param>
    public static byte[] Book(IEnumerable<byte> sheet, byte[]? more = null, int sheets = 1)
    {
        byte[] bof = Record(0x809, 0x500, 5, 0, 0);
        var at = bof.Length + (more?.Length ?? 0) + (sheets * (4 + 8)) + 4;
        byte[] list = [.. Enumerable.Repeat((byte[])[0x85, 0, 8, 0, .. BitConverter.GetBytes(at), 0, 0, 1, (byte)'S'],
            sheets).SelectMany(one => one)];
        byte[] book = [.. bof, .. more ?? [], .. list, .. Record(0x0A), .. Record(0x809, 0x500, 0x10, 0, 0), .. sheet, .. Record(0x0A)];
        return [.. book, .. new byte[Math.Max(0, 4096 - book.Length)]];
    }

    /// <summary>A book with so many sheets, each of these records at a place of its own.</summary>
    public static byte[] Sheets(byte[] sheet, int sheets)
    {
        byte[] bof = Record(0x809, 0x500, 5, 0, 0), one = [.. Record(0x809, 0x500, 0x10, 0, 0), .. sheet, .. Record(0x0A)];
        var first = bof.Length + (sheets * 12) + 4;
        var list = Enumerable.Range(0, sheets)
            .SelectMany(i => (byte[])[0x85, 0, 8, 0, .. BitConverter.GetBytes(first + (i * one.Length)), 0, 0, 1, (byte)'S']);
        byte[] book = [.. bof, .. list, .. Record(0x0A), .. Enumerable.Repeat(one, sheets).SelectMany(bytes => bytes)];
        return [.. book, .. new byte[Math.Max(0, 4096 - book.Length)]];
    }

    /// <summary>A file around a stream.</summary>
    public static byte[] File(byte[] book, string name = "Book", Action<byte[]>? change = null)
    {
        var sectors = (book.Length + 511) / 512;
        var file = new byte[512 + ((2 + sectors) * 512)];
        ((byte[])[0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1]).CopyTo(file, 0);
        foreach (var (at, word) in (ReadOnlySpan<(int, ushort)>)[(24, 0x3E), (26, 3), (28, 0xFFFE), (30, 9), (32, 6)])
            BinaryPrimitives.WriteUInt16LittleEndian(file.AsSpan(at), word);
        foreach (var (at, number) in (ReadOnlySpan<(int, uint)>)[(44, 1), (48, 1), (56, 4096), (60, End), (68, End)])
            BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(at), number);
        file.AsSpan(76, 436).Fill(0xFF);
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(76), 0);

        // Sector 0: the table itself; 1: the directory; then the book, one sector after the other.
        var table = file.AsSpan(512, 512);
        table.Fill(0xFF);
        BinaryPrimitives.WriteUInt32LittleEndian(table, 0xFFFF_FFFD);
        BinaryPrimitives.WriteUInt32LittleEndian(table[4..], End);
        for (var i = 0; i < sectors; i++)
            BinaryPrimitives.WriteUInt32LittleEndian(table[(8 + (4 * i))..], i + 1 < sectors ? (uint)(i + 3) : End);
        Entry(file.AsSpan(1024), "Root Entry", 5, End, 0);
        Entry(file.AsSpan(1024 + 128), name, 2, 2, (uint)book.Length);
        book.CopyTo(file, 1536);
        change?.Invoke(file);
        return file;
    }

    private static void Entry(Span<byte> entry, string name, byte kind, uint first, uint length)
    {
        Encoding.Unicode.GetBytes(name).CopyTo(entry);
        BinaryPrimitives.WriteUInt16LittleEndian(entry[64..], (ushort)((name.Length + 1) * 2));
        entry[66] = kind;
        BinaryPrimitives.WriteUInt32LittleEndian(entry[116..], first);
        BinaryPrimitives.WriteUInt32LittleEndian(entry[120..], length);
    }
}
