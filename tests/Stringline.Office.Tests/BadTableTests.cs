using System.Globalization;
using System.Text;
using CsCheck;
using Stringline.Answers;
using Stringline.Tables.Tests.Hostile;
using Stringline.Testing;

namespace Stringline.Office.Tests;

/// <summary>
/// Tables made bad, the same ones in each run: each is refused in words, or its rows are each accounted for. Those of workbooks are
/// changed as files, and inside with their checksums made anew, so that the reader itself meets them.
/// </summary>
[Slow(Slow.Fuzz)]
public sealed class BadTableTests(ITestOutputHelper output) : IDisposable
{
    private static readonly string[] Csv =
    [
        "Job #,Invoice Number,Delivery Date,Amount,Description\nJ1,R-1,3/2/2026,\"1,200.00\",\"Studs, 2x4\"\n"
            + "J2,R-2,3/9/2026,(45.10),\"says \"\"ten\"\"\"\n",
        "Report\n\nJob number;Job name;County\n26-1;Brick Kiln Lane;Yolo\n26-2;Ferry Landing;Solano\nTotal;;2\n",
        "Payment date\tAmount paid\tCustomer\tCheck\n2026-03-02\t100\tTamarack Framing\t1001\n02-Mar-26\t$7.5\tTamarack Framing\t1002\n",
    ];

    private static readonly string[] CsvWords =
    [
        "\"", "\"\"", ",", ";", "\t", "|", "\r", "\n", "\0", "\uFEFF", "=1+1", "Total", "1/1/0001", "12/31/9999", "2958466", "-1e308",
        "99999999999999999999", "Amount", "Job #",
    ];

    private static readonly string[] XmlWords =
    [
        "<c r=\"ZZZZZZ2\">", "<row r=\"2147483647\"/>", "</row>", "</c>", "<c/>", " r=\"A0\"", " r=\"1048576\"", " t=\"s\"", " t=\"b\"",
        " t=\"d\"", " t=\"e\"", " s=\"-1\"", " s=\"99999\"", "<v>1e309</v>", "<v>NaN</v>", "<v>2958466</v>", "<v>-1</v>",
        "<is><t>x</t></is>", "<![CDATA[", "]]>", "<!--", "-->", "&#0;", "&#x10FFFF;", "&amp;", "&x;", "<?x", "<!DOCTYPE x []>",
        "numFmtId=\"14\"", "numFmtId=\"164\"", "formatCode=\"[h]:mm;@\"", "<mergeCell ref=\"A1\"/>",
        "<col min=\"0\" max=\"-1\" width=\"x\"/>", "date1904=\"1\"", "_x0000_",
    ];

    private readonly string folder = Scratch.Folder();
    private readonly Lock gate = new();
    private int made;
    private int refused;
    private int read;

    [Fact]
    [Attack("tables made bad: CSV, workbooks, their parts with right checksums, old workbooks")]
    public void A_bad_csv_file_is_refused_in_words_or_read() => Try(
        BadFiles.Of([.. Csv.Select(Encoding.UTF8.GetBytes), Encoding.Unicode.GetBytes(Csv[0])], CsvWords), "csv", LongRun.Of(30, all: 150));

    [Fact]
    [Attack("tables made bad: CSV, workbooks, their parts with right checksums, old workbooks")]
    public void A_damaged_workbook_is_refused_in_words_or_read() =>
        Try(BadFiles.Of([Books.Of(Books.TwoRows)], ["PK\u0003\u0004", "PK\u0001\u0002"]), "xlsx", LongRun.Of(20, all: 100));

    [Fact]
    [Attack("tables made bad: CSV, workbooks, their parts with right checksums, old workbooks")]
    public void A_bad_workbook_with_right_checksums_is_refused_in_words_or_read()
    {
        var books = BookPart.Good.Select(part =>
            BadFiles.Of([part[2..]], XmlWords).Select(bad => BookPart.Packed([.. part[..2], .. bad])!));
        Try(Gen.OneOf([.. books]), "xlsx", LongRun.Of(40, all: 150));
    }

    [Fact]
    [Attack("tables made bad: CSV, workbooks, their parts with right checksums, old workbooks")]
    public void A_bad_old_workbook_is_refused_in_words_or_read()
    {
        byte[] rows =
        [
            .. RawXls.Text(0, 0, "Job number"), .. RawXls.Text(0, 1, "Invoice number"), .. RawXls.Text(0, 2, "Amount"),
            .. RawXls.Text(1, 0, "J1"), .. RawXls.Number(1, 2, 10),
        ];
        var files = Gen.OneOf(
            BadFiles.Of([RawXls.File(RawXls.Book(rows))], ["Workbook"]),
            BadFiles.Of([rows], ["\u00BD\0", "\u0085\0", "\0\u0002", "\uFFFF"]).Select(bad => RawXls.File(RawXls.Book(bad))));
        Try(files, "xls", LongRun.Of(20, all: 100));
    }

    [Fact]
    public void What_cannot_be_seen_is_spelled_out_where_a_row_is_told()
    {
        using var desk = new Desk();
        var path = desk.File("signs.csv", "Job #,Invoice Number,Delivery\u202E Date,Type,Amount,Note\u202E\n"
            + "J1,R-1,3/2\u200E/2026,INV,1\u202E2,x\nJ1,R-2,3/2/2026,LAB\u202EOR,12,x\nJ1,R-3,3/2/2026,INV,12,x\n");
        Assert.True(TableAnswer.Of(path, desk.Journal, isWritten: true));
    }

    [Fact]
    [Attack("what broke the program once")]
    public void Whatever_broke_once_is_answered() =>
        Assert.All(BadFiles.Kept("tables"), kept => Answer(kept.Content, kept.Name.Split('.')[^1]));

    [Fact]
    [Attack("what broke the program once")]
    public void Whatever_part_of_a_workbook_broke_once_is_answered() =>
        Assert.All(BadFiles.Kept("parts"), kept => Answer(BookPart.Packed(kept.Content)!, "xlsx"));

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(folder, recursive: true);

    private void Try(Gen<byte[]> files, string ending, int times)
    {
        // One after the other, so that the memory of several does not add up under the limit of these tests.
        files.Sample(
            bytes =>
            {
                lock (gate)
                    _ = Answer(bytes, ending) ? read++ : refused++;
            },
            print: Convert.ToBase64String,
            iter: times);
        output.WriteLine(LongRun.Told($"tables, {ending}", refused, read));
        AttackAttribute.Tried(times);
        Assert.Equal(times, refused + read);
        Assert.True(refused > 0, "none refused");
    }

    // Each into a store of its own: what a table is answered does not depend on the ones before.
    private bool Answer(byte[] bytes, string ending)
    {
        using var desk = new Desk();
        var path = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{++made}.{ending}"));
        File.WriteAllBytes(path, bytes);
        return Hang.Never(() => TableAnswer.Of(path, desk.Journal, isWritten: true));
    }
}
