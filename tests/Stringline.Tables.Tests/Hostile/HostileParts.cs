using System.Text;

namespace Stringline.Tables.Tests.Hostile;

/// <summary>Parts of a workbook that unpack to far more than they are, or are not what they should be.</summary>
internal static class HostileParts
{
    private static readonly string[] Around = Books.Worksheet(Books.HeaderRow + Books.Invoice("\n")).Split('\n');
    private static readonly string[] AroundShared = Books.SharedOf("\n").Split('\n');

    public static IReadOnlyList<HostileFile> All { get; } =
    [
        Bomb("shared-text", "a shared text of 900 MB of one letter, in a file of 1 MB", Books.Shared, AroundShared[0] + "<si><t>",
            "</t></si>" + AroundShared[1], 900),
        Bomb("cell", "a cell of 300 MB", Books.Sheet, Around[0] + "<c r=\"J2\" t=\"inlineStr\"><is><t>", "</t></is></c>" + Around[1]),
        Bomb("cdata", "a CDATA section of 300 MB", Books.Sheet, Around[0] + "<c r=\"J2\" t=\"inlineStr\"><is><t><![CDATA[",
            "]]></t></is></c>" + Around[1]),
        Bomb("cdata-of-tags", "a CDATA section of 300 MB of `<`", Books.Sheet, Around[0] + "<c r=\"J2\" t=\"inlineStr\"><is><t><![CDATA[",
            "]]></t></is></c>" + Around[1], letter: (byte)'<'),
        Bomb("comment", "a comment of 300 MB", Books.Sheet, Around[0] + "<!-- ", " -->" + Around[1]),
        Bomb("comment-of-tags", "a comment of 300 MB of `>`", Books.Sheet, Around[0] + "<!-- ", " -->" + Around[1], letter: (byte)'>'),
        Bomb("instruction", "a processing instruction of 300 MB", Books.Sheet, Around[0] + "<?x ", "?>" + Around[1]),
        Bomb("attribute", "an attribute of 300 MB", Books.Sheet, Around[0] + "<c r=\"J2\" t=\"", "\"/>" + Around[1]),
        Bomb("attribute-of-tags", "an attribute of 300 MB of `>`", Books.Sheet, Around[0] + "<c r=\"J2\" t=\"", "\"/>" + Around[1],
            letter: (byte)'>'),
        Bomb("name", "the name of an element, of 300 MB", Books.Sheet, Around[0] + "<", "/>" + Around[1]),
        Bomb("blanks", "300 MB of blanks between two cells", Books.Sheet, Around[0], Around[1], letter: (byte)' '),
        Bomb("list-of-sheets", "300 MB of blanks in the list of sheets", Books.Book, $"<workbook {Books.Main}>", "</workbook>",
            letter: (byte)' '),
        Bomb("picture", "a picture that unpacks to 900 MB of zeros", "xl/media/image1.png", "", "", 900, 0),
        new("shared-texts.xlsx", "2,010,000 blank shared texts", () => Books.Ending(
            Books.Shared, zip => zip.Repeat(Books.Shared, AroundShared[0], "<si><t/></si>", 2_010_000, AroundShared[1]))),
        new("shared-letters.xlsx", "1,400 shared texts of 30,000 letters", () => Books.Ending(
            Books.Shared, zip =>
                zip.Repeat(Books.Shared, AroundShared[0], $"<si><t>{new string('x', 30_000)}</t></si>", 1_400, AroundShared[1]))),
        new("shared-text-of-pieces.xlsx", "a shared text in 401 pieces", () => Books.With(
            Books.Shared, Books.SharedOf($"<si>{Books.Times("<r><t>x</t></r>", 401)}</si>"))),
        new("no-shared-texts.xlsx", "a cell that names a shared text, and no list of them", () =>
            Encoding.Latin1.GetBytes(Encoding.Latin1.GetString(Books.With(Books.Sheet,
                Books.Worksheet("<row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c></row>")))
                .Replace("sharedStrings", "sharedStrinks", StringComparison.Ordinal))),
        Part("formats", "200,001 formats", Books.Styles, () =>
            $"<styleSheet {Books.Main}><cellXfs>{Books.Times("<xf numFmtId=\"0\"/>", 200_001)}</cellXfs></styleSheet>"),
        Part("relations", "200,001 relations", Books.Relations, () =>
            $"<Relationships>{Books.Times("<Relationship/>", 200_001)}</Relationships>"),
        Part("sheets", "256 sheets", Books.Book, () => Books.BookOf(Enumerable.Range(0, 256).Select(i => $"r{i}"))),
        Part("one-sheet-twice", "two sheets in one part", Books.Book, () => Books.BookOf("a", "a")),
        Part("sheet-without-a-relation", "a sheet of which nothing says where it lies", Books.Book, () => Books.BookOf("b")),
        Part("relation-twice", "two relations of one name", Books.Relations, () =>
            Books.RelationsOf(("a", "worksheets/sheet1.xml"), ("a", "worksheets/sheet2.xml"))),
        Part("sheet-missing", "a sheet whose part is not there", Books.Relations, () => Books.RelationsOf(("a", "worksheets/sheet9.xml"))),
        Part("sheet-outside", "a sheet whose part is `../../etc/passwd`", Books.Relations, () =>
            Books.RelationsOf(("a", "../../etc/passwd"))),
        Part("strict", "Strict Open XML, whose names are others", Books.Book, () =>
            Books.BookOf("a").Replace("schemas.openxmlformats.org/spreadsheetml/2006", "purl.oclc.org/ooxml/spreadsheetml",
            StringComparison.Ordinal)),
        new("rows-of-all-sheets.xlsx", "eleven sheets of 1,048,576 rows", () => Books.Ending(null, zip =>
        {
            for (var i = 1; i <= 11; i++)
                zip.Add($"xl/worksheets/s{i}.xml", Books.Worksheet("<row r=\"1048576\"/>"));
            return zip;
        }, books: (Books.BookOf(Enumerable.Range(1, 11).Select(i => $"s{i}")),
            Books.RelationsOf(Enumerable.Range(1, 11).Select(i => ($"s{i}", $"worksheets/s{i}.xml")))))),
        Part("entities", "entities that unfold to a billion letters", Books.Sheet, () =>
            $"<!DOCTYPE x [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b "
                + $"\"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">]>{Books.Worksheet(
                    Books.Row(1, ["&b;"]))["<?xml version=\"1.0\" encoding=\"UTF-8\"?>".Length..]}"),
        Part("entity-of-a-file", "an entity that reads a file of the machine", Books.Sheet, () =>
            "<!DOCTYPE x [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><worksheet/>"),
        Part("nested", "100,000 elements inside each other", Books.Sheet, () => Around[0] + Books.Times("<a>", 100_000)),
        Part("names", "20,000 different names", Books.Sheet, () =>
            Around[0] + string.Concat(Enumerable.Range(0, 20_000).Select(i => $"<a{i}/>")) + Around[1]),
        Part("names-of-attributes", "20,000 different names of attributes", Books.Sheet, () =>
            Around[0] + string.Concat(Enumerable.Range(0, 20_000).Select(i => $"<c a{i}=\"1\"/>")) + Around[1]),
        Part("another-encoding", "a sheet that declares UTF-16", Books.Sheet, () =>
            Around[0].Replace("UTF-8", "UTF-16", StringComparison.Ordinal) + Around[1]),
        new("utf-16.xlsx", "a sheet written in UTF-16", () =>
            Books.Ending(Books.Sheet, zip => zip.Add(Books.Sheet, [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Around[0] + Around[1])]))),
        new("bad-utf-8.xlsx", "a sheet with bytes that are no UTF-8", () => Books.Ending(
            Books.Sheet, zip => zip.Add(Books.Sheet,
                Encoding.Latin1.GetBytes(Around[0] + "<c r=\"J2\"><v>\u00FF\u00FE</v></c>" + Around[1])))),
        Part("broken-xml", "a sheet that breaks off inside a tag", Books.Sheet, () => Around[0] + "<c r=\"J2\""),
        Part("no-xml", "a sheet of words", Books.Sheet, () => "job number,amount"),
        Part("no-sheet", "a part that is an empty file", Books.Sheet, () => ""),
    ];

    private static HostileFile Bomb(string name, string how, string part, string before, string after, int megabytes = 300,
        byte letter = (byte)'A') =>
        new($"bomb-{name}.xlsx", how, () => Books.Ending(part, zip => zip.Bomb(part, before, letter, megabytes, after)));

    private static HostileFile Part(string name, string how, string part, Func<string> text) =>
        new(name + ".xlsx", how, () => Books.With(part, text()));
}
