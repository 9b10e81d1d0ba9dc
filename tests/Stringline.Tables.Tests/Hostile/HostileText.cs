using System.Text;

namespace Stringline.Tables.Tests.Hostile;

/// <summary>CSV files without bounds.</summary>
internal static class HostileText
{
    private const string Headers = "job number,invoice number,invoice date,amount\n";

    public static IReadOnlyList<HostileFile> All { get; } =
    [
        new("columns.csv", "501 columns: `seq -s, 501 > columns.csv`", () => Text(string.Join(',', Enumerable.Range(1, 501)) + "\n")),
        new("columns-of-a-later-row.csv", "a row of 501 columns under a header of four", () => Text(Headers + new string(',', 500) + "\n")),
        new("thousands-of-columns.csv", "200,000 columns: `seq -s, 200000 > thousands-of-columns.csv`",
            () => Text(string.Join(',', Enumerable.Range(1, 200_000)) + "\n" + string.Join(',', Enumerable.Repeat("1", 200_000)))),
        new("long-line.csv", "a line of 20,000,000 characters: `yes 123456789 | head -2000000 | tr '\\n' , > long-line.csv`",
            () => Text("", "123456789,", 2_000_000)),
        new("long-cell.csv", "a cell of 32,768 letters", () => Text(Headers + "J1,I1,3/2/2026," + new string('1', 32_768) + "\n")),
        new("long-quoted-cell.csv", "the same in quotes, on one line", () =>
            Text(Headers + "J1,I1,3/2/2026,\"" + new string('1', 32_768) + "\"\n")),
        new("unclosed-quote.csv", "a quote that is opened before 1,000,000 lines and never closed",
            () => Text(Headers + "J1,\"I1,3/2/2026,10\n", "J1,I,3/2/2026,10\n", 1_000_000)),
        new("lines-in-a-cell.csv", "a cell of 60 lines", () => Text(Headers + "J1,I1,3/2/2026,\"" + new string('\n', 60) + "10\"\n")),
        new("rows.csv", "1,048,577 rows: `yes j | head -1048577 > rows.csv`", () => Text("", "j\n", 1_048_577)),
        new("cells.csv", "24,001 rows of 500 columns", () => Text("", new string(',', 499) + "\n", 24_001)),
        new("zeros.csv", "1,000 bytes of zero: `head -c 1000 /dev/zero > zeros.csv`", () => new byte[1000]),
        new("control.csv", "a control character among the headers", () => Text("job number\u0001,amount\n")),
        new("picture.csv", "a PNG picture by the name of a CSV file", () => [0x89, .. "PNG\r\n\u001A\n"u8, 0, 0, 0, 13, .. "IHDR"u8]),
        new("wide-utf-16.csv", "501 columns in UTF-16", () =>
            [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(string.Join(',', Enumerable.Range(1, 501)))]),
        new("half-of-utf-16.csv", "UTF-16 that is cut inside a letter", () =>
            [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("a,b\n1,2"), (byte)'x']) { Rows = 2 },
        new("carriage-returns.csv", "only old line ends", () => Text("a,b\r1,2\r")) { Rows = 2 },
        new("empty.csv", "nothing", () => []) { Rows = 0 },
        new("five-hundred.csv", "500 columns", () => Text(string.Join(',', Enumerable.Range(1, 500)) + "\n")) { Rows = 1 },
    ];

    private static byte[] Text(string text) => Encoding.UTF8.GetBytes(text);

    // Without a text of its own length, which would count against the memory of these tests.
    private static byte[] Text(string before, string repeated, int times)
    {
        var one = Encoding.UTF8.GetBytes(repeated);
        var bytes = new byte[before.Length + (one.Length * times)];
        Encoding.UTF8.GetBytes(before).CopyTo(bytes, 0);
        for (var i = 0; i < times; i++)
            one.CopyTo(bytes, before.Length + (i * one.Length));
        return bytes;
    }
}
