namespace Stringline.Tables.Tests.Hostile;

/// <summary>Worksheets whose cells lie, or are, beyond all bounds.</summary>
internal static class HostileSheets
{
    public static IReadOnlyList<HostileFile> All { get; } =
    [
        Row("column-zzzzzz", "the cell `ZZZZZZ2`", "<c r=\"ZZZZZZ2\"><v>1</v></c>"),
        Row("column-aaaa", "the cell `AAAA2`", "<c r=\"AAAA2\"><v>1</v></c>"),
        Row("column-xfe", "the cell `XFE2`, one past the last", "<c r=\"XFE2\"><v>1</v></c>"),
        Row("column-501", "a number in the cell `SG2`, column 501", "<c r=\"SG2\"><v>1</v></c>"),
        Row("column-501-text", "a text in the cell `SG2`", Books.Cell("SG2", "far")),
        Row("column-lower-case", "the cell `z2`", "<c r=\"z2\"><v>1</v></c>"),
        Row("column-without-row", "the cell `Z`", "<c r=\"Z\"><v>1</v></c>"),
        Row("column-with-a-sign", "the cell `Z-2`", "<c r=\"Z-2\"><v>1</v></c>"),
        Row("cell-twice", "the cell `F2`, the amount, a second time", "<c r=\"F2\"><v>900</v></c>"),
        Row("cell-backward", "the cell `A2` after `I2`", "<c r=\"A2\"><v>9</v></c>"),
        new("blank-xfd.xlsx", "a formatted and blank cell `XFD2`", () =>
            Books.Of(Books.HeaderRow + Books.Invoice("<c r=\"XFD2\" s=\"0\"/>"))) { Rows = 2 },
        Sheet("row-2147483647", "row 2,147,483,647", Books.HeaderRow + Books.Row(2147483647, ["J1"])),
        Sheet("row-1048577", "row 1,048,577", Books.HeaderRow + Books.Row(1048577, ["J1"])),
        Sheet("row-zero", "row 0", Books.HeaderRow + "<row r=\"0\"/>"),
        Sheet("row-minus", "row -2147483648", Books.HeaderRow + "<row r=\"-2147483648\"/>"),
        Sheet("row-in-words", "row \"two\"", Books.HeaderRow + "<row r=\"two\"/>"),
        Sheet("row-beyond-numbers", "row 99999999999999999999", Books.HeaderRow + "<row r=\"99999999999999999999\"/>"),
        Sheet("row-twice", "row 2 a second time", Books.TwoRows + Books.Row(2, ["J2"])),
        Sheet("row-backward", "row 1 after row 2", Books.TwoRows + Books.Row(1, ["J2"])),
        new("last-row.xlsx", "one invoice in the last row there is, 1,048,576", () =>
            Books.Of(Books.HeaderRow + Books.Row(1048576, ["J1"]))) { Rows = 1_048_576 },
        new("unnumbered.xlsx", "rows and cells without their places", () => Books.Of(
            "<row><c t=\"inlineStr\"><is><t>a</t></is></c><c "
                + "t=\"inlineStr\"><is><t>b</t></is></c></row><row><c><v>1</v></c></row>")) { Rows = 2 },
        new("blank-area.xlsx", "a formatted and blank cell `XFD3`, and row 60,000", () =>
            Books.Of(Books.TwoRows + "<row r=\"3\"><c r=\"XFD3\"/></row><row r=\"60000\"/>")) { Rows = 60_000 },
        Sheet("large-blank-area", "a formatted and blank cell `XFD3`, and row 120,000",
            Books.TwoRows + "<row r=\"3\"><c r=\"XFD3\"/></row><row r=\"120000\"/>"),
        Sheet("wide-area", "a number in column 500, and row 1,048,576",
            Books.TwoRows + "<row r=\"3\"><c r=\"SF3\"><v>1</v></c></row><row r=\"1048576\"/>"),
        Sheet("area", "a blank cell `XFD1`, and row 1,048,576", "<row r=\"1\"><c r=\"XFD1\"/></row><row r=\"1048576\"/>"),
        Sheet("long-cell", "a cell of 32,768 letters", Books.HeaderRow + Books.Invoice(Books.Cell("J2", new string('x', 32_768)))),
        Sheet("long-number", "a number of 32,768 digits",
            Books.HeaderRow + Books.Invoice($"<c r=\"J2\"><v>{new string('1', 32_768)}</v></c>")),
        Sheet("long-row", "a row of 31 cells of 32,767 letters", Books.HeaderRow
            + Books.Row(2, [.. Enumerable.Repeat(new string('x', 32_767), 26)])
            .Replace("</row>", string.Concat("ABCDE".Select(c => Books.Cell($"A{c}2", new string('x', 32_767)))) + "</row>",
                StringComparison.Ordinal)),
        Sheet("pieces", "a cell whose text is in 401 pieces", Books.HeaderRow + Books.Invoice(
            $"<c r=\"J2\" t=\"inlineStr\"><is>{Books.Times("<r><t>x</t></r>", 401)}</is></c>")),
        Sheet("long-cell-in-pieces", "a cell of 100 pieces of 400 letters", Books.HeaderRow + Books.Invoice(
            $"<c r=\"J2\" t=\"inlineStr\"><is>{Books.Times($"<r><t>{new string('x', 400)}</t></r>", 100)}</is></c>")),
        Sheet("shared-text-missing", "a cell that names shared text 7 of one",
            Books.HeaderRow + Books.Invoice("<c r=\"J2\" t=\"s\"><v>7</v></c>")),
        Sheet("shared-text-minus", "a cell that names shared text -1",
            Books.HeaderRow + Books.Invoice("<c r=\"J2\" t=\"s\"><v>-1</v></c>")),
        Sheet("shared-text-in-words", "a cell that names shared text \"amount\"",
            Books.HeaderRow + Books.Invoice("<c r=\"J2\" t=\"s\"><v>amount</v></c>")),
        new("lying-dimension.xlsx", "`dimension ref=\"A1:XFD1048576\"` over two rows", () =>
            Books.Of(Books.TwoRows, "<dimension ref=\"A1:XFD1048576\"/>")) { Rows = 2 },
        new("merged.xlsx", "200,001 merged ranges", () => Books.Of(
            Books.TwoRows, after: $"<mergeCells>{Books.Times("<mergeCell ref=\"A1:B1\"/>", 200_001)}</mergeCells>")),
        new("widths.xlsx", "200,001 widths of columns", () => Books.Of(
            Books.TwoRows, $"<cols>{Books.Times("<col min=\"1\" max=\"1\" width=\"9\"/>", 200_001)}</cols>")),
        Repeated("cells", "25,000 rows of 500 blank cells", $"<row>{Books.Times("<c/>", 500)}</row>", 25_000),
        Repeated("rows", "1,050,000 rows without anything", "<row/>", 1_050_000),
        Repeated("cells-of-a-row", "1,000,000 cells in one row", "<c/>", 1_000_000, "<row>", "</row>"),
        new("formula.xlsx", "a formula with its last result", () => Books.Of(
            Books.HeaderRow + Books.Invoice("<c r=\"J2\"><f>WEBSERVICE(\"x\")</f><v>1</v></c>"))) { Rows = 2 },
        new("comment-and-cdata.xlsx", "a comment that holds tags, and a text in CDATA", () => Books.Of(
            Books.HeaderRow + Books.Invoice(
                "<!-- <row r=\"99999999\"> --><c r=\"J2\" t=\"inlineStr\"><is><t><![CDATA[<a> & b]]></t></is></c>"))) { Rows = 2 },
    ];

    private static HostileFile Row(string name, string how, string more) => Sheet(name, how, Books.HeaderRow + Books.Invoice(more));

    private static HostileFile Sheet(string name, string how, string rows) => new(name + ".xlsx", how, () => Books.Of(rows));

    private static HostileFile Repeated(string name, string how, string text, int times, string before = "", string after = "") =>
        new(name + ".xlsx", how, () =>
    {
        var around = Books.Worksheet("\n").Split('\n');
        return Books.Ending(Books.Sheet, zip => zip.Repeat(Books.Sheet, around[0] + before, text, times, after + around[1]));
    });
}
