using System.Buffers.Binary;
using System.Globalization;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>
/// Goes through an old workbook (XLS, [MS-XLS]) before its reader does, record by record as the reader will, so that no record sends the
/// reader into rows or columns that there are not. What it cannot do is tell a changed byte: the format has no checksum.
/// </summary>
internal static class OldWorkbook
{
    private const int Bof = 0x809;
    private const int EndOfPart = 0x0A;
    private const int Locked = 0x2F;
    private const int SheetAt = 0x85;
    private const int Dimensions = 0x200;
    private const int Row = 0x208;
    private const int RowOfOldest = 0x08;
    private const int ManyNumbers = 0xBD;
    private const int ManyBlanks = 0xBE;

    // Records of one cell: row, column, format, content. Those under 16 are of the first versions.
    private static readonly HashSet<int> Cells =
        [0x01, 0x02, 0x03, 0x04, 0x05, 0x06, 0x201, 0x202, 0x203, 0x204, 0x205, 0x206, 0x406, 0x7E, 0x27E, 0xFD, 0xD6, ManyNumbers,
            ManyBlanks];

    /// <summary>Goes through it; the stream stands at its start again.</summary>
    /// <param name="file">The workbook.</param>
    /// <param name="stop">Stops it.</param>
    public static void Check(Stream file, CancellationToken stop)
    {
        if (file.Length > TableLimits.LargestOldWorkbook)
            throw new TooLargeException($"an old workbook (XLS) of {N(file.Length)} bytes",
                $"at most {N(TableLimits.LargestOldWorkbook)}; or save it as XLSX or CSV");
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        file.Position = 0;
        var parts = new CompoundFile(bytes);
        if (parts.Entries.Any(entry => entry.Name is "EncryptedPackage"))
            throw new InvalidDataException("it is locked with a password");
        var book = parts.Entries.FirstOrDefault(entry => entry.Name.Equals("Workbook", StringComparison.OrdinalIgnoreCase));
        if (book.Name is null)
            book = parts.Entries.FirstOrDefault(entry => entry.Name.Equals("Book", StringComparison.OrdinalIgnoreCase));
        if (book.Name is null || !book.IsStream || book.Length < 4096)
            throw new InvalidDataException("it holds no sheets");
        Book(parts.Content(book.First, book.Length), stop);
    }

    private static void Book(ReadOnlySpan<byte> book, CancellationToken stop)
    {
        var sheets = new HashSet<uint>();
        for (var at = 0; Next(book, ref at, out var kind, out var body) && kind != EndOfPart;)
        {
            if (kind == Locked)
                throw new InvalidDataException("it is locked with a password");
            if (kind != SheetAt)
                continue;
            if (body.Length < 4 || !sheets.Add(BinaryPrimitives.ReadUInt32LittleEndian(body)))
                throw new InvalidDataException("two of its sheets are one");
            if (sheets.Count > TableLimits.MostSheets)
                throw new TooLargeException("a workbook with hundreds of sheets",
                    $"at most {TableLimits.MostSheets}; or save the sheet as CSV");
        }

        var (rows, area) = (0L, 0L);
        foreach (var sheet in sheets)
        {
            stop.ThrowIfCancellationRequested();
            if (sheet >= book.Length)
                throw new InvalidDataException("a sheet lies outside of it");
            var extent = Sheet(book[(int)sheet..]);
            rows += extent.Rows;
            area += (long)extent.Rows * extent.Columns;
            if (rows > TableLimits.MostRowsOfAllSheets || area > TableLimits.LargestArea)
                throw new TooLargeException("an old workbook (XLS) of many sheets whose rows are nearly all blank",
                    "fewer sheets, without cells far outside the table; or save the sheet as CSV");
        }
    }

    private static (int Rows, int Columns) Sheet(ReadOnlySpan<byte> sheet)
    {
        var at = 0;
        var extent = (Rows: 0, Columns: 0);
        if (!Next(sheet, ref at, out _, out _))
            return extent;
        while (Next(sheet, ref at, out var kind, out var body) && kind is not (EndOfPart or Bof))
        {
            var (rows, columns) = kind switch
            {
                Dimensions or 0 => Extent(kind, body),
                Row or RowOfOldest => body.Length < 2 ? default : (BinaryPrimitives.ReadUInt16LittleEndian(body) + 1, 0),
                _ => Cells.Contains(kind) ? Cell(kind, body) : default,
            };
            extent = (Math.Max(extent.Rows, rows), Math.Max(extent.Columns, columns));
        }

        return extent;
    }

    private static (int Rows, int Columns) Extent(int kind, ReadOnlySpan<byte> body)
    {
        // [MS-XLS] 2.4.90: first row, row after the last, first column, column after the last. Versions before the last have rows of 16
        // bits.
        if (kind == 0 || body.Length < 14)
        {
            return body.Length < 8 ? default
                : Bound(BinaryPrimitives.ReadUInt16LittleEndian(body[2..]), BinaryPrimitives.ReadUInt16LittleEndian(body[6..]));
        }

        return Bound(BinaryPrimitives.ReadUInt32LittleEndian(body[4..]), BinaryPrimitives.ReadUInt16LittleEndian(body[10..]));
    }

    private static (int Rows, int Columns) Cell(int kind, ReadOnlySpan<byte> body)
    {
        if (body.Length < 6)
            throw new InvalidDataException("a cell is cut off");
        var column = BinaryPrimitives.ReadUInt16LittleEndian(body[2..]);
        var last = kind is ManyNumbers or ManyBlanks ? BinaryPrimitives.ReadUInt16LittleEndian(body[^2..]) : column;
        if (last < column)
            throw new InvalidDataException("a run of cells ends before it begins");
        return Bound(BinaryPrimitives.ReadUInt16LittleEndian(body) + 1U, last + 1);
    }

    private static (int Rows, int Columns) Bound(uint rows, int columns)
    {
        if (rows > TableLimits.LastRowOfAnOldSheet || columns > TableLimits.LastColumnOfAnOldSheet)
            throw new TooLargeException($"an old workbook (XLS) with a cell in row {N(rows)}, column {N(columns)}",
                $"cells from A1 to IV{TableLimits.LastRowOfAnOldSheet}");
        return ((int)rows, columns);
    }

    private static bool Next(ReadOnlySpan<byte> part, ref int at, out int kind, out ReadOnlySpan<byte> body)
    {
        kind = 0;
        body = default;
        if (at + 4 >= part.Length)
            return false;
        kind = BinaryPrimitives.ReadUInt16LittleEndian(part[at..]);
        var length = BinaryPrimitives.ReadUInt16LittleEndian(part[(at + 2)..]);

        // The reader takes a record that is longer than what is left for one that ends with zeros: its cell lies where no limit was.
        if (at + 4 + length > part.Length)
            throw new InvalidDataException("a record of it is cut off");
        body = part.Slice(at + 4, length);
        at += 4 + length;
        return true;
    }

    private static string N(long number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
