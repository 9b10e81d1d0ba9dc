using System.Text;
using ExcelDataReader;
using Stringline.Tables.Sheets.Cells;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>Reads a sheet of a workbook, XLSX or the older XLS.</summary>
internal static class Workbook
{
    /// <summary>Whether a file begins as a workbook does (a ZIP archive, or a compound file); the stream stands at its start
    /// again.</summary>
    public static bool IsOne(Stream stream)
    {
        Span<byte> head = stackalloc byte[8];
        var length = stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        stream.Position = 0;
        return head[..length].StartsWith("PK\u0003\u0004"u8) || head[..length].StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0]);
    }

    /// <summary>Holds it to the limits, and to its checksums where it has any; the stream stands at its start again.</summary>
    /// <exception cref="SheetException">It is not whole, or too large.</exception>
    public static void Check(Stream stream, string path, CancellationToken stop) => Careful(
        () =>
        {
            var isPacked = stream.ReadByte() == 'P';
            stream.Position = 0;
            if (isPacked)
                WholeWorkbook.Check(stream, stop);
            else
                OldWorkbook.Check(stream, stop);
            return true;
        },
        path);

    /// <summary>The names of the sheets of one that was checked.</summary>
    public static IReadOnlyList<string> Names(Stream stream, string path)
    {
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        using var reader = Careful(() => ExcelReaderFactory.CreateReader(stream, new ExcelReaderConfiguration { LeaveOpen = true }), path);
        var names = new List<string>();
        do
            names.Add(reader.Name);
        while (Careful(reader.NextResult, path));
        return names;
    }

    /// <summary>The rows of one that was checked.</summary>
    public static IEnumerable<SheetRow> Rows(Stream stream, string path, string? sheet, CancellationToken stop)
    {
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        using var reader = Careful(() => ExcelReaderFactory.CreateReader(stream, new ExcelReaderConfiguration { LeaveOpen = true }), path);
        var names = new List<string>();
        var found = false;
        do
        {
            names.Add(reader.Name);
            if (sheet is not null && !string.Equals(reader.Name, sheet, StringComparison.OrdinalIgnoreCase))
                continue;
            var line = 0;
            while (Careful(reader.Read, path))
            {
                if (++line % 1024 == 0)
                    stop.ThrowIfCancellationRequested();
                var row = new SheetRow(line, Cells(reader));
                found |= !row.IsBlank;
                if (found)
                    yield return row;
            }

            if (found || sheet is not null)
                yield break;
        }
        while (Careful(reader.NextResult, path));

        if (sheet is not null)
            throw new SheetException(new Fault(path, "", $"no sheet \"{sheet}\"", $"one of its sheets: {string.Join(", ", names)}"));
    }

    private static Cell[] Cells(IExcelDataReader reader)
    {
        // Beyond this column no cell has a value: such a workbook was refused. What is only formatted may reach far further, in each row.
        var count = Math.Min(reader.FieldCount, TableLimits.MostColumns);
        while (count > 0 && reader.IsDBNull(count - 1))
            count--;
        var cells = new Cell[count];
        for (var i = 0; i < count; i++)
        {
            cells[i] = reader.GetValue(i) switch
            {
                // Also a cell with an error such as #REF!: where a value is needed, its row is refused for want of one.
                null => default,
                string text => Cell.Of(CsvLine.Unguarded(text)),
                double number => Cell.OfBinary(number),
                int number => Cell.Of(number),
                bool truth => Cell.Of(truth ? "TRUE" : "FALSE"),
                DateTime moment => Cell.Of(LocalDate.FromDateTime(moment)),
                TimeSpan time => Cell.Of(time.ToString("c", System.Globalization.CultureInfo.InvariantCulture)),
                var other => Cell.Of(other.ToString()),
            };
        }

        return cells;
    }

    // Whatever the reader of another make ends with, the file is what it stumbled over: the limits stand before it, so it is not the
    // memory.
    private static T Careful<T>(Func<T> step, string path)
    {
        try
        {
            return step();
        }
        catch (TooLargeException e)
        {
            throw new SheetException(new Fault(path, "", e.Found, e.Expected));
        }
        catch (Exception e) when (e is not (OutOfMemoryException or OperationCanceledException or SheetException))
        {
            throw new SheetException(new Fault(path, "", $"a workbook that cannot be read ({e.Message})",
                "a whole XLSX file without a password; or save the sheet as CSV"));
        }
    }
}
