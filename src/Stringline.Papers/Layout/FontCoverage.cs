using System.Buffers.Binary;

namespace Stringline.Papers.Layout;

/// <summary>
/// Which characters a TrueType face has letters for, read from its <c>cmap</c> table (OpenType 1.9, "cmap", format 4).
/// A character without one would print as an empty box.
/// </summary>
internal sealed class FontCoverage
{
    private readonly List<(int First, int Last)> spans;

    private FontCoverage(List<(int First, int Last)> spans) => this.spans = spans;

    /// <summary>Whether the face has a letter for the code point.</summary>
    public bool Has(int codePoint) => spans.Exists(s => codePoint >= s.First && codePoint <= s.Last);

    /// <summary>Reads the Unicode table of the basic plane.</summary>
    /// <exception cref="InvalidDataException">The face has no such table.</exception>
    public static FontCoverage Read(ReadOnlySpan<byte> font)
    {
        var tables = UInt16(font, 4);
        for (var i = 0; i < tables; i++)
        {
            var record = font.Slice(12 + (16 * i), 16);
            if (record[..4].SequenceEqual("cmap"u8))
                return new FontCoverage(Spans(font[(int)UInt32(record, 8)..]));
        }

        throw new InvalidDataException("The typeface has no cmap table.");
    }

    private static List<(int, int)> Spans(ReadOnlySpan<byte> cmap)
    {
        var count = UInt16(cmap, 2);
        for (var i = 0; i < count; i++)
        {
            var table = cmap[(int)UInt32(cmap, 4 + (8 * i) + 4)..];
            if (UInt16(table, 0) == 4)
                return Format4(table);
        }

        throw new InvalidDataException("The typeface has no Unicode character table of format 4.");
    }

    private static List<(int, int)> Format4(ReadOnlySpan<byte> table)
    {
        var segments = UInt16(table, 6) / 2;
        const int ends = 14;
        var starts = ends + (2 * segments) + 2;
        var spans = new List<(int, int)>(segments);
        for (var i = 0; i < segments; i++)
        {
            var first = UInt16(table, starts + (2 * i));
            var last = UInt16(table, ends + (2 * i));
            if (first != 0xFFFF)
                spans.Add((first, last));
        }

        return spans;
    }

    private static int UInt16(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);

    private static uint UInt32(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt32BigEndian(bytes[at..]);
}
