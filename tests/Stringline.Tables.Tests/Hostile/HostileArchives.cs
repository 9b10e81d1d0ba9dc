using System.Text;

namespace Stringline.Tables.Tests.Hostile;

/// <summary>Archives that lie about their parts, or are damaged.</summary>
internal static class HostileArchives
{
    private static readonly string Good = Books.Worksheet(Books.TwoRows);

    public static IReadOnlyList<HostileFile> All { get; } =
    [
        new("checksum.xlsx", "an amount changed from 100.00 to 900.00 in a part that is not compressed, its CRC-32 left as it was",
            Changed),
        Lie("checksum-said", "a CRC-32 that is not that of the part", new() { Sum = 1 }),
        Lie("shorter-than-said", "a part that says it is 1 GB", new() { Length = 1_000_000_000 }),
        Lie("longer-than-said", "a part that says it is 10 bytes", new() { Length = 10 }),
        Lie("two-names", "a part with one name in the list and another before it", new() { LocalName = "xl/worksheets/sheet9.xml" }),
        Lie("elsewhere", "a part that is said to lie in another place", new() { At = 4 }),
        Lie("outside", "a part that is said to lie behind the end of the file", new() { At = 0x7FFF_FFFF }),
        Lie("locked", "a part that is locked with a password", new() { Flags = 1 }),
        Lie("unknown-method", "a part packed in a way that nobody knows", new() { Method = 99 }),
        Lie("not-packed", "a packed part that says it is not packed", new() { Method = 0 }),
        new("part-twice.xlsx", "two parts of one name", () => Books.Ending(null, zip => zip.Add(Books.Sheet, Good))),
        new("part-twice-in-capitals.xlsx", "two parts whose names differ in capitals", () =>
            Books.Ending(null, zip => zip.Add(Books.Sheet.ToUpperInvariant(), Good))),
        new("parts.xlsx", "2,001 parts", () =>
            Books.Ending(null, zip => Enumerable.Range(0, 1_994).Aggregate(zip, (all, i) => all.Add($"x/{i}", "")))),
        new("fewer-parts.xlsx", "a list that says it has fewer parts", () => Books.Ending(null, zip => zip, countSaid: 3)),
        new("more-parts.xlsx", "a list that says it has more parts", () => Books.Ending(null, zip => zip, countSaid: 300)),
        new("no-book.xlsx", "no list of sheets", () => Books.With(Books.Book, null)),
        new("no-relations.xlsx", "no list of relations", () => Books.With(Books.Relations, null)),
        new("cut-off.xlsx", "half of a workbook", () => Books.Of(Books.TwoRows)[..800]),
        new("without-its-list.xlsx", "a workbook without its last 22 bytes", () => Books.Of(Books.TwoRows)[..^22]),
        new("only-a-beginning.xlsx", "`PK` and nothing: `printf 'PK\\003\\004' > only-a-beginning.xlsx`", () => [.. "PK\u0003\u0004"u8]),
        new("noise.xlsx", "the beginning of a workbook and 100,000 bytes of noise", () => [.. "PK\u0003\u0004"u8, .. Noise(100_000)]),
        new("damaged-packing.xlsx", "a part whose packing is noise", () =>
        {
            var good = Books.Of(Books.TwoRows);
            Noise(40).CopyTo(good, good.Length / 2);
            return good;
        }),
        new("document.xlsx", "a document of text by the name of a workbook", () =>
            new RawZip().Add("[Content_Types].xml", "<Types/>").Add("word/document.xml", "<a/>").ToArray()),
        new("backslashes.xlsx", "parts named with backslashes", () => Encoding.Latin1.GetBytes(
            Encoding.Latin1.GetString(Books.Of(Books.TwoRows)).Replace("xl/worksheets/sheet1.xml", "xl\\worksheets\\sheet1.xml",
                StringComparison.Ordinal))) { Rows = 2 },
    ];

    // The bytes of a workbook whose parts are stored as they are, which only a changed letter makes another.
    private static byte[] Changed()
    {
        using var file = new MemoryStream();
        using (var archive = new System.IO.Compression.ZipArchive(file, System.IO.Compression.ZipArchiveMode.Create, leaveOpen: true))
        {
            using var good = new System.IO.Compression.ZipArchive(new MemoryStream(Books.Of(Books.TwoRows)));
            foreach (var entry in good.Entries)
            {
                using var from = entry.Open();
                using var to = archive.CreateEntry(entry.FullName, System.IO.Compression.CompressionLevel.NoCompression).Open();
                from.CopyTo(to);
            }
        }

        return Encoding.Latin1.GetBytes(Encoding.Latin1.GetString(file.ToArray()).Replace(">100.00<", ">900.00<",
            StringComparison.Ordinal));
    }

    private static byte[] Noise(int length)
    {
        var bytes = new byte[length];
        new Random(20_261_201).NextBytes(bytes);
        return bytes;
    }

    private static HostileFile Lie(string name, string how, RawZip.Lie lie) =>
        new(name + ".xlsx", how, () => Books.With(Books.Sheet, Good, lie));
}
