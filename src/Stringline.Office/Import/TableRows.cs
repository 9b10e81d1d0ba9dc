using Stringline.Tables.Sheets;
using Stringline.Tables.Sheets.Cells;
using Stringline.Tables.Sheets.Columns;
using Stringline.Tables.Sheets.Reading;
using Stringline.Law.Reasoning;

namespace Stringline.Office.Import;

/// <summary>A table being imported: its rows of data, and what became of every row.</summary>
internal sealed class TableRows
{
    private const int MostIgnoredRows = 1_000_000;

    private readonly SheetFile source;
    private readonly ColumnMapping mapping;
    private readonly SortedDictionary<int, List<Sentence>> refused = [];
    private readonly List<IgnoredRow> ignored = [];
    private readonly Dictionary<Column, DayOrderSeen> seen = [];
    private long blank;

    /// <summary>Opens a table as far as its headers.</summary>
    /// <exception cref="SheetException">It is no table, or it is not clear of what.</exception>
    public TableRows(string file, ColumnMapping mapping, CancellationToken stop)
    {
        (File, this.mapping) = (file, mapping);
        source = new SheetFile(file, mapping.Sheet, stop);
        Header = HeaderRow.Find(file, [.. source.Rows().Where(row => !row.IsBlank).Take(HeaderRow.MostRowsAbove)], mapping);
    }

    /// <summary>The file.</summary>
    public string File { get; }

    /// <summary>Its headers.</summary>
    public HeaderRow Header { get; }

    /// <summary>All rows met so far.</summary>
    public long Rows { get; private set; }

    /// <summary>Rows of invoices without a day of furnishing.</summary>
    public long DayOfInvoice { get; set; }

    /// <summary>Whether a row was refused.</summary>
    public bool IsRefused(int line) => refused.ContainsKey(line);

    /// <summary>Refuses a row; where it is refused for several reasons all of them are told.</summary>
    public void Refuse(int line, string why) => RefuseAt(line, Sentence.Of(why));

    /// <summary>The same for a reason that names what each door calls otherwise.</summary>
    public void RefuseAt(int line, Sentence why)
    {
        if (!refused.TryGetValue(line, out var reasons))
        {
            if (refused.Count >= TableLimits.MostRefusedRows)
            {
                throw new SheetException(
                    File, "", $"more than {TableLimits.MostRefusedRows:N0} rows that would be refused, the first for "
                        + $"this: {Refused(refused.Keys.First())}",
                    $"a table most of whose rows can be taken");
            }

            refused[line] = reasons = new List<Sentence>(1);
        }

        // Of a reason without a word for a door the text alone is kept, and no more of it than is told.
        var told = why.ToString();
        if (told.Length > TableLimits.LongestReason)
            told = told[..TableLimits.LongestReason] + " ...";
        else if (why.Names.OfType<ImportAsk>().Any())
            told = null;
        if (!reasons.Exists(reason => reason.ToString() == (told ?? why.ToString())))
            reasons.Add(told is null ? why : Sentence.Of(told));
    }

    /// <summary>The file's name, without the folder in which it lies.</summary>
    public string Called => Path.GetFileName(File);

    /// <summary>Leaves a row of data out, as what its type says.</summary>
    public void LeaveOut(int line, string type) =>
        ignored.Add(new IgnoredRow(line, $"of the type \"{(type.Length <= 60 ? type : type[..60] + " ...")}\""));

    /// <summary>
    /// What a row of invoices is by its type: an invoice where no column says otherwise. Null where nobody has said what the type means.
    /// </summary>
    public RowKind? TypeOf(SheetRow row) => Text(row, Column.RowType) is { } type ? mapping.KindOf(type) : RowKind.Invoice;

    /// <summary>The rows of data, once; all others are counted as what they are.</summary>
    public IEnumerable<SheetRow> Data()
    {
        foreach (var row in source.Rows())
        {
            Rows++;
            if (row.IsBlank)
                blank++;
            else if (row.Line < Header.Row.Line)
                Ignore(row, "above the headers");
            else if (row.Line == Header.Row.Line)
                Ignore(row, "the headers");
            else if (row.Broken is { } broken)
                Refuse(row.Line, $"{broken}; it should be every quote doubled inside a quoted cell, or none");
            else if (Header.IsRepeatedIn(row))
                Ignore(row, "the headers again");
            else if (IsTotals(row))
                Ignore(row, "a totals row");
            else
                yield return row;
        }

        foreach (var days in seen.Values.Where(days => days.IsInDoubt))
        {
            foreach (var line in days.BothWays)
                RefuseAt(line, $"a day that can be read month first or day first, in a column that writes the day first on "
                    + $"line {days.FirstDayFirst}; "
                    + $"it should be {ImportAsk.DayOrder}");
        }
    }

    /// <summary>The day in a column; null where the cell is empty or the row is refused for it.</summary>
    public LocalDate? Day(SheetRow row, Column column)
    {
        var cell = Header.Of(row, column);
        if (cell.IsEmpty)
            return null;
        var reading = DayCell.Read(cell, mapping.Days);
        if (mapping.Days == DayOrder.MonthFirstUnlessShown)
        {
            if (!seen.TryGetValue(column, out var order))
                seen[column] = order = new DayOrderSeen();
            order.See(row.Line, reading);
        }

        if (reading.Expected is { } expected)
            Refuse(row.Line, $"\"{cell}\" under \"{Name(column)}\"; it should be {expected}");
        return reading.Day;
    }

    /// <summary>The amount in a column; null where the cell is empty or the row is refused for it.</summary>
    public decimal? Money(SheetRow row, Column column)
    {
        var cell = Header.Of(row, column);
        if (cell.IsEmpty)
            return null;
        if (MoneyCell.Read(cell, out var dollars) is not { } expected)
            return dollars;
        Refuse(row.Line, $"\"{cell}\" under \"{Name(column)}\"; it should be {expected}");
        return null;
    }

    /// <summary>The text in a column; null where the cell is empty.</summary>
    public string? Text(SheetRow row, Column column) => Header.Of(row, column) is { IsEmpty: false } cell ? cell.ToString() : null;

    /// <summary>The header of a column as the file writes it, or as it would be known where the file has none.</summary>
    public string Name(Column column) =>
        Header.Places.TryGetValue(column, out var place) ? Header.Row.At(place).ToString() : ColumnWords.Example(column, Header.Kind);

    /// <summary>What became of its rows.</summary>
    public FileReport Report(long @new, long changed, long unchanged) => new()
    {
        File = File,
        Kind = Header.Kind,
        Rows = Rows,
        New = @new,
        Changed = changed,
        Unchanged = unchanged,
        Refused = [.. refused.Keys.Select(Refused)],
        Blank = blank,
        Ignored = ignored,
        ColumnsNotUsed = Header.NotUsed,
        Columns = [.. Header.Places.OrderBy(pair => pair.Value).Select(pair => (pair.Key, Name(pair.Key)))],
        DayOfInvoice = DayOfInvoice,
    };

    /// <summary>The refused rows as the file has them: a second reading, so that nothing is kept of the others.</summary>
    public IEnumerable<(SheetRow Row, string Why)> RefusedRows() =>
        refused.Count == 0 ? [] : source.Rows().Where(row => refused.ContainsKey(row.Line)).Select(row => (row, Refused(row.Line).Name));

    private RefusedRow Refused(int line) => new(line, refused[line]);

    private void Ignore(SheetRow row, string words)
    {
        if (ignored.Count >= MostIgnoredRows)
            throw new SheetException(new Tables.Fault(File, "", "more than a million rows of totals or headers", "a table of data"));
        ignored.Add(new IgnoredRow(row.Line, words));
    }

    // A customer may be called "Total Concrete": only a row without a day, and without a number of its own, adds up others.
    private bool IsTotals(SheetRow row)
    {
        var key = Header.Of(row, Header.Kind switch { TableKind.Jobs =>
            Column.Job, TableKind.Invoices => Column.Invoice, _ => Column.Payment });
        Column[] days =
            Header.Kind switch { TableKind.Jobs => [], TableKind.Invoices => [Column.InvoiceDay, Column.Furnished], _ => [Column.PaidDay] };
        foreach (var column in days)
        {
            if (Header.Of(row, column) is { IsEmpty: false } day && !IsTotal(day))
                return false;
        }

        if (!key.IsEmpty && !IsTotal(key))
            return false;
        return row.Cells.Any(IsTotal);
    }

    private static bool IsTotal(Cell cell)
    {
        if (cell.Kind != CellKind.Text)
            return false;
        var words = ColumnWords.Fold(cell.ToString()).Split(' ');
        return Array.FindIndex(words, word => word is "total" or "totals" or "subtotal" or "subtotals") is >= 0 and < 3;
    }

    private sealed class DayOrderSeen
    {
        private bool monthFirst;

        public int FirstDayFirst { get; private set; }

        public List<int> BothWays { get; } = [];

        // Once the column has shown that its month comes first, a day that fits only the other way is a slip of its own row.
        public bool IsInDoubt => FirstDayFirst > 0 && !monthFirst;

        public void See(int line, DayReading reading)
        {
            monthFirst |= reading.OnlyMonthFirst;
            if (reading.OnlyDayFirst && FirstDayFirst == 0)
                FirstDayFirst = line;
            if (reading.BothWays && !monthFirst)
                BothWays.Add(line);
        }
    }
}
