using System.Text;

namespace Stringline.Tables.Tests.Hostile;

/// <summary>
/// A part of a workbook, packed into a good one with its checksum right: so the readers of the parts meet it. In front of its bytes stand
/// a digit that says which part it is, and a line end.
/// </summary>
internal static class BookPart
{
    private static readonly (string Name, Func<string> Good)[] Parts =
    [
        (Books.Sheet, () => Books.Worksheet(Books.TwoRows
            + "<row r=\"3\"><c r=\"A3\" t=\"s\"><v>0</v></c><c r=\"E3\" s=\"1\"><v>46083</v></c><c r=\"F3\"><v>10.5</v></c></row>")),
        (Books.Shared, () => Books.SharedOf("<si><t>a</t></si><si><r><t>b</t></r></si>")),
        (Books.Styles, () => $"<styleSheet {Books.Main}><numFmts><numFmt numFmtId=\"164\" formatCode=\"m/d/yyyy\"/></numFmts>"
            + "<cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"164\"/></cellXfs></styleSheet>"),
        (Books.Book, () => Books.BookOf("a")),
        (Books.Relations, () => Books.RelationsOf(("a", "worksheets/sheet1.xml"))),
    ];

    /// <summary>A good one of each.</summary>
    public static IReadOnlyList<byte[]> Good => [.. Parts.Select((part, i) => Encoding.UTF8.GetBytes($"{(char)('0' + i)}\n{part.Good()}"))];

    /// <summary>The workbook; null where no digit says which part it is.</summary>
    public static byte[]? Packed(byte[] part)
    {
        if (part.Length < 2 || part[0] - '0' is not (>= 0 and var which) || which >= Parts.Length || part[1] != '\n')
            return null;
        var zip = new RawZip();
        foreach (var (name, good) in Books.GoodParts)
        {
            if (name == Parts[which].Name)
                zip.Add(name, part[2..]);
            else
                zip.Add(name, good);
        }

        return zip.ToArray();
    }
}
