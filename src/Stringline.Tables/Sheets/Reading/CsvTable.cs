using System.Globalization;
using Stringline.Tables.Sheets.Cells;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>Reads CSV: commas, semicolons, tabs or bars, quotes as in RFC 4180. A row with a stray quote comes marked as broken.</summary>
internal static class CsvTable
{
    public static IEnumerable<SheetRow> Rows(Stream stream, string path, CancellationToken stop)
    {
        if (!TextOf.IsText(stream))
            throw new SheetException(new Fault(path, "", "a file that is neither text nor a workbook", "a CSV or XLSX file"));
        var encoding = TextOf.Encoding(stream);
        using var reader = new BoundedLines(new StreamReader(stream, encoding, detectEncodingFromByteOrderMarks: true, 1 << 16,
            leaveOpen: true), stop);
        using var records = CsvRecords.Read(reader, Delimiter(stream, encoding), TableLimits.LongestCell).GetEnumerator();
        var row = 0;
        long all = 0;
        while (Next(records, path))
        {
            var (line, last, texts, isBroken) = records.Current;
            if (last - line >= TableLimits.MostLinesOfARow)
                throw Unclosed(path, line);
            if (texts.Count > TableLimits.MostColumns)
                throw Refuse(path, line, $"a row of {N(texts.Count)} columns", $"at most {N(TableLimits.MostColumns)}");
            if (++row > TableLimits.MostRows)
                throw Refuse(path, line, $"more than {N(TableLimits.MostRows)} rows",
                    "as many as a spreadsheet has, or fewer: the rest in a second table");
            if ((all += texts.Count) > TableLimits.MostCells)
                throw Refuse(path, line, $"more than {N(TableLimits.MostCells)} cells", "a smaller table: the rest in a second one");
            var cells = new Cell[texts.Count];
            for (var i = 0; i < cells.Length; i++)
                cells[i] = Cell.Of(texts[i]);
            yield return new SheetRow(line, cells, isBroken ? "a stray quote in the row" : null);
        }
    }

    private static bool Next(IEnumerator<CsvRecord> records, string path)
    {
        try
        {
            return records.MoveNext();
        }
        catch (CsvException e) when (e.IsTooLong && e.LastLine - e.Line + 1 < TableLimits.MostLinesOfARow)
        {
            throw Refuse(path, e.Line, $"a cell of more than {N(TableLimits.LongestCell)} characters",
                "cells as long as a spreadsheet lets them be, and quotes in pairs");
        }
        catch (CsvException e)
        {
            throw Unclosed(path, e.Line);
        }
        catch (TooLargeException e)
        {
            throw new SheetException(new Fault(path, "", e.Found, e.Expected));
        }
    }

    private static SheetException Refuse(string path, int line, string found, string expected) =>
        new(new Fault(path, string.Create(CultureInfo.InvariantCulture, $"line {line}"), found, expected));

    private static string N(long number) => number.ToString("N0", CultureInfo.InvariantCulture);

    private static SheetException Unclosed(string path, int line) =>
        Refuse(path, line, "a quote that is opened and not closed", "quotes in pairs: without that nobody can tell where the rows end");

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
