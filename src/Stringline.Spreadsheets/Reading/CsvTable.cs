using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;
using Stringline.Exchange;
using Stringline.Spreadsheets.Cells;

namespace Stringline.Spreadsheets.Reading;

/// <summary>Reads CSV: commas, semicolons, tabs or bars, quotes as in RFC 4180. A row with a stray quote comes marked as broken.</summary>
internal static class CsvTable
{
    // A cell of so many lines is a quote that was never closed, which would swallow the rows after it.
    private const int MostLinesInARow = 50;

    public static IEnumerable<SheetRow> Rows(Stream stream, string path)
    {
        var encoding = TextOf.Encoding(stream);
        using var reader = new StreamReader(stream, encoding, detectEncodingFromByteOrderMarks: true, 1 << 16, leaveOpen: true);
        string? broken = null;
        var configuration = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            HasHeaderRecord = false,
            IgnoreBlankLines = false,
            Delimiter = Delimiter(stream, encoding),
            BadDataFound = _ => broken = "a stray quote in the row",
            BufferSize = 1 << 16,
            ProcessFieldBufferSize = 1 << 12,
            CacheFields = true,
        };
        using var parser = new CsvParser(reader, configuration);
        var last = 0;
        while (Read(parser, path, last))
        {
            var line = last + 1;
            last = parser.RawRow;
            var cells = new Cell[parser.Count];
            for (var i = 0; i < cells.Length; i++)
                cells[i] = Cell.Of(CsvLine.Unguarded(parser[i]));
            if (last - line >= MostLinesInARow)
                throw Unclosed(path, line);
            yield return new SheetRow(line, cells, broken);
            broken = null;
        }
    }

    private static bool Read(CsvParser parser, string path, int last)
    {
        try
        {
            return parser.Read();
        }
        catch (CsvHelperException)
        {
            throw Unclosed(path, last + 1);
        }
    }

    private static SheetException Unclosed(string path, int line) => new(new Fault(
        path, FormattableString.Invariant($"line {line}"), "a quote that is opened and not closed", "quotes in pairs: without that nobody can tell where the rows end"));

    // The mark that the first lines hold most of, outside quotes.
    private static string Delimiter(Stream stream, System.Text.Encoding encoding)
    {
        using var reader = new StreamReader(stream, encoding, detectEncodingFromByteOrderMarks: true, 1 << 14, leaveOpen: true);
        var head = new char[1 << 14];
        var length = reader.ReadBlock(head);
        stream.Position = 0;
        const string Marks = ",;\t|";
        var counts = new int[Marks.Length];
        var quoted = false;
        foreach (var c in head.AsSpan(0, length))
        {
            if (c == '"')
                quoted = !quoted;
            else if (!quoted && Marks.IndexOf(c, StringComparison.Ordinal) is >= 0 and var at)
                counts[at]++;
        }

        return Marks[Array.IndexOf(counts, counts.Max())].ToString();
    }
}
