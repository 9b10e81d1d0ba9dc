using System.Text;
using Stringline.Answers;
using Stringline.Tables.Sheets.Cells;
using Stringline.Tables.Sheets.Columns;
using Stringline.Tables.Tests.Hostile;
using Stringline.Tables.Sheets.Writing;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.FuzzInput;

/// <summary>Tables: CSV, workbooks, parts of workbooks whose checksums are then made right, and old workbooks.</summary>
internal static class TableTargets
{
    // Only gone through as if it were written, so the store stays empty and no answer depends on the ones before.
    private static readonly Lazy<(string Folder, IJournal Journal)> Office = new(() =>
    {
        var folder = Scratch.Folder();
        return (folder, Journals.Open(Path.Combine(folder, "office.stringline"), SystemClock.Instance, OpenStore.OrMake));
    });

    /// <summary>The targets.</summary>
    public static IReadOnlyList<Target> All { get; } =
    [
        new("csv", () => Csv().Select(Encoding.UTF8.GetBytes).Append(Encoding.Unicode.GetBytes(Csv().First())), CsvWords,
            bytes => Answer(bytes, "csv")),
        new("xlsx", () => [Books.Of(Books.TwoRows), AsWritten()], () => ["PK\u0003\u0004", "PK\u0001\u0002", "PK\u0005\u0006"],
            bytes => Answer(bytes, "xlsx")),
        new("xlsx-part", () => BookPart.Good.Concat(BadFiles.Kept("parts").Select(kept => kept.Content)), XmlWords, Part),
        new("xls", Old, () => ["\u0004\u0002", "\u0003\u0002", "\u0009\u0008", "\n\0"], bytes => Answer(bytes, "xls")),
    ];

    private static void Answer(byte[] bytes, string ending)
    {
        var (folder, journal) = Office.Value;
        var path = Path.Combine(folder, "table." + ending);
        File.WriteAllBytes(path, bytes);
        TableAnswer.Of(path, journal, isWritten: false);
    }

    private static void Part(byte[] bytes)
    {
        if (BookPart.Packed(bytes) is { } book)
            Answer(book, "xlsx");
    }

    private static IEnumerable<string> Csv() =>
    [
        "Job #,Invoice Number,Delivery Date,Amount,Description\nJ1,R-1,3/2/2026,\"1,200.00\",\"Studs, 2x4\"\n"
            + "J2,R-2,3/9/2026,(45.10),\"says \"\"ten\"\"\"\n",
        "Report\n\nJob number;Job name;County\n26-1;Brick Kiln Lane;Yolo\n26-2;Ferry Landing;Solano\nTotal;;2\n",
        "Payment date\tAmount paid\tCustomer\tCheck\n2026-03-02\t100\tTamarack Framing\t1001\n02-Mar-26\t$7.5\tTamarack Framing\t1002\n",
        "Job|Type|Num|Date|Amount\nJ1|INV|1|3/2/2026|10\nJ1|CM|2|3/3/2026|-1\nJ1|PMT|3|3/4/2026|-2\n",
    ];

    private static IEnumerable<string> CsvWords() =>
        Enum.GetValues<TableKind>().SelectMany(kind => TableLook.ColumnsOf(kind).Select(column => TableLook.Title(column, kind)))
            .Concat(["\"", "\"\"", ",", ";", "\t", "|", "\r\n", "\uFEFF", "=1+1", "Total", "1/1/0001", "12/31/9999", "2958466", "-1e308",
                "99999999999999999999", "INV", "CM", "PMT", "Yolo", "private", "subcontractor"]);

    private static IEnumerable<string> XmlWords() =>
    [
        "<c r=\"ZZZZZZ2\">", "<row r=\"1048576\"/>", "</row>", "</c>", "<c/>", " r=\"XFD1\"", " t=\"s\"", " t=\"b\"", " t=\"d\"",
        " t=\"e\"", " t=\"str\"", " t=\"inlineStr\"", " s=\"1\"", " s=\"99999\"", "<v>1e309</v>", "<v>NaN</v>", "<v>2958466</v>",
        "<v>-1</v>", "<is><t>x</t></is>", "<r><t>x</t></r>", "<f>1+1</f>", "<![CDATA[", "]]>", "<!--", "-->", "&#0;", "&#x10FFFF;", "&x;",
        "<?x ?>", "<!DOCTYPE x []>", "numFmtId=\"14\"", "formatCode=\"[h]:mm;@\"", "<mergeCells><mergeCell ref=\"A1:B2\"/></mergeCells>",
        "<cols><col min=\"1\" max=\"16384\" width=\"9\"/></cols>", "date1904=\"1\"", "_x0000_", "<sheetData>", "</sheetData>",
        "<dimension ref=\"A1:XFD1048576\"/>", "state=\"hidden\"", "<headerFooter><oddHeader>x</oddHeader></headerFooter>",
    ];

    private static IEnumerable<byte[]> Old()
    {
        byte[] rows =
        [
            .. RawXls.Text(0, 0, "Job number"), .. RawXls.Text(0, 1, "Invoice number"), .. RawXls.Text(0, 2, "Invoice date"),
            .. RawXls.Text(0, 3, "Amount"), .. RawXls.Text(1, 0, "J1"), .. RawXls.Text(1, 1, "I1"), .. RawXls.Text(1, 2, "3/2/2026"),
            .. RawXls.Number(1, 3, 10),
        ];
        return [RawXls.File(RawXls.Book(rows)), RawXls.File(RawXls.Book([.. rows, .. RawXls.Record(0xBD, 2, 0, 0, 0, 0, 0, 0, 0, 1)]))];
    }

    private static byte[] AsWritten()
    {
        using var stream = new MemoryStream();
        var sheet = new Sheet("Invoices", [new("Job #"), new("Invoice Number"), new("Delivery Date", Look.Day), new("Amount", Look.Money)],
            [[Cell.Of("J1"), Cell.Of("R-1"), Cell.Of(new LocalDate(2026, 3, 2)), Cell.Of(100.25m)]]);
        SheetWriter.WriteXlsxAsync(stream, sheet, ["About these rows: invented."]).GetAwaiter().GetResult();
        return stream.ToArray();
    }
}
