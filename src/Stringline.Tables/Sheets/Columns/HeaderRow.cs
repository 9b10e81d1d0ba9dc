using System.Globalization;
using Stringline.Tables.Sheets.Cells;
using Stringline.Tables.Sheets.Reading;
using Stringline.Law.Reasoning;

namespace Stringline.Tables.Sheets.Columns;

/// <summary>The row of headers of a table, and which column means what.</summary>
public sealed class HeaderRow
{
    /// <summary>A header stands among the first so many rows that hold anything.</summary>
    public const int MostRowsAbove = 25;

    private readonly Dictionary<Column, int> places;
    private readonly string[] folded;

    private HeaderRow(SheetRow row, TableKind kind, Dictionary<Column, int> places)
    {
        (Row, Kind, this.places) = (row, kind, places);
        folded = [.. row.Cells.Select(cell => ColumnWords.Fold(cell.ToString()))];
    }

    /// <summary>The row.</summary>
    public SheetRow Row { get; }

    /// <summary>What the rows under it are.</summary>
    public TableKind Kind { get; }

    /// <summary>The columns found.</summary>
    public IReadOnlyDictionary<Column, int> Places => places;

    /// <summary>Whether the table has a column.</summary>
    public bool Has(Column column) => places.ContainsKey(column);

    /// <summary>The cell of a column in a row.</summary>
    public Cell Of(SheetRow row, Column column) => row.At(places.GetValueOrDefault(column, -1));

    /// <summary>The headers that mean nothing to the import.</summary>
    public IReadOnlyList<string> NotUsed =>
        [.. Row.Cells.Where((cell, i) => !cell.IsEmpty && !places.ContainsValue(i)).Select(cell => cell.ToString())];

    /// <summary>Whether a later row is the same headers again, as reports print them on each page.</summary>
    public bool IsRepeatedIn(SheetRow row)
    {
        for (var i = 0; i < Math.Max(folded.Length, row.Cells.Count); i++)
        {
            var expected = i < folded.Length ? folded[i] : "";
            var cell = row.At(i);
            if (cell.Kind is CellKind.Number or CellKind.Day || (expected.Length == 0) != cell.IsEmpty
                || (expected.Length > 0 && expected != ColumnWords.Fold(cell.ToString())))
                return false;
        }

        return true;
    }

    /// <summary>The mapping that reads this table without guessing.</summary>
    public ColumnMapping ToMapping(ColumnMapping given)
    {
        ArgumentNullException.ThrowIfNull(given);
        return given with { Kind = Kind, Headers = places.ToDictionary(pair => pair.Key, pair => NameOf(Row, pair.Value)) };
    }

    /// <summary>By what a mapping names a column: its header where no other has the same, else its letters.</summary>
    internal static string NameOf(SheetRow row, int place)
    {
        var header = row.At(place).ToString();
        var fold = ColumnWords.Fold(header);
        return fold.Length > 0 && row.At(place).Kind == CellKind.Text && row.Cells.Count(cell => ColumnWords.Fold(cell.ToString()) == fold)
            == 1 ? header : "column " + Letters(place);
    }

    /// <summary>Finds the headers among a table's first rows.</summary>
    /// <param name="file">How faults name the file.</param>
    /// <param name="first">The first rows that hold anything.</param>
    /// <param name="mapping">What was said of the columns.</param>
    /// <exception cref="SheetException">There is none, or it is not clear.</exception>
    public static HeaderRow Find(string file, IReadOnlyList<SheetRow> first, ColumnMapping mapping)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(mapping);
        foreach (var row in first)
        {
            if (row.Cells.Count(cell => cell.Kind == CellKind.Text) < 2)
                continue;
            TableKind[] kinds = mapping.Kind is { } said ? [said] : Enum.GetValues<TableKind>();
            var fit = kinds.Select(kind => TryAt(file, row, kind, mapping)).OfType<HeaderRow>().ToList();
            // A table of jobs lacks what makes the others; where others fit, it is one of them.
            if (fit.Count > 1)
                fit.RemoveAll(header => header.Kind == TableKind.Jobs);
            // A column that only payments have shows payments, though an invoice's number stands there too.
            if (fit.Count > 1 && fit.Exists(header => header.Kind == TableKind.Payments && ShowsPayments(header)))
                fit.RemoveAll(header => header.Kind != TableKind.Payments);
            else if (fit.Count > 1 && fit.Exists(header => header.Kind == TableKind.Invoices && ShowsInvoices(header)))
                fit.RemoveAll(header => header.Kind != TableKind.Invoices);
            if (fit.Count > 1)
                throw Refuse(file, row, $"headers that could be those of invoices or of payments", $"which of them, {ImportAsk.Kind}");
            if (fit.Count == 1)
                return WithTypes(fit[0], first, mapping);
        }

        var wanted = mapping.Kind is { } kind1
            ? string.Join(", ", ColumnWords.Needed(kind1).Select(column => ColumnWords.Example(column, kind1)))
            : "Job number, Invoice number and Amount (invoices), or Payment date and Amount paid (payments), or Job number (jobs)";
        throw new SheetException(file, "", $"no row of headers among the first {MostRowsAbove} rows",
            $"a row with {wanted}; {ImportAsk.Columns}");
    }

    // A column called "Type" may tell of lumber and steel: found by its header alone it counts only where it holds a type of row that is
    // known.
    private static HeaderRow WithTypes(HeaderRow header, IReadOnlyList<SheetRow> first, ColumnMapping mapping)
    {
        if (!header.Has(Column.RowType) || mapping.Headers.ContainsKey(Column.RowType)
            || first.Any(row => row.Line > header.Row.Line && header.Of(row, Column.RowType) is { IsEmpty: false } cell
                && mapping.KindOf(cell.ToString()) is not null))
        {
            return header;
        }

        header.places.Remove(Column.RowType);
        return header;
    }

    private static bool ShowsPayments(HeaderRow header) =>
        Rank(header, Column.PaidDay) is { } day && ColumnWords.Fold(header.Row.At(header.places[Column.PaidDay]).ToString()) != "date"
        && day >= 0;

    private static bool ShowsInvoices(HeaderRow header) => header.Has(Column.Furnished)
        || (header.Has(Column.InvoiceDay) && ColumnWords.Fold(header.Row.At(header.places[Column.InvoiceDay]).ToString()) != "date");

    private static int? Rank(HeaderRow header, Column column) =>
        header.places.TryGetValue(column, out var place)
        ? ColumnWords.Rank(column, header.Kind, header.Row.At(place).ToString()) ?? 0 : null;

    private static HeaderRow? TryAt(string file, SheetRow row, TableKind kind, ColumnMapping mapping)
    {
        var places = new Dictionary<Column, int>();
        foreach (var column in ColumnWords.Of(kind))
        {
            if (mapping.Headers.TryGetValue(column, out var said) && said.Length == 0)
                continue;
            var fit = said is not null ? Said(row, said) : ByWords(row, column, kind);
            if (said is not null && fit.Count == 0)
                return null;
            if (fit.Count > 1)
            {
                // Only a fault where this is the row of headers: all that is needed must be there, once or more.
                if (ColumnWords.Needed(kind).All(needed => mapping.Headers.ContainsKey(needed) || ByWords(row, needed, kind).Count > 0))
                {
                    throw Refuse(file, row, $"two columns \"{row.At(fit[0])}\": {string.Join(" and ", fit.Select(Letters))}",
                        $"one; {ImportAsk.Column}: \"columns\": {{ \"{MappingJson.Word(column)}\": \"column {Letters(fit[0])}\" }}");
                }

                return null;
            }

            if (fit.Count == 1)
                places[column] = fit[0];
        }

        // One column means one thing: "Date" is the day of payment or of nothing else of the same table.
        foreach (var shared in places.GroupBy(pair => pair.Value).Where(group => group.Count() > 1))
        {
            foreach (var (column, _) in shared.OrderBy(pair => ColumnWords.Rank(pair.Key, kind, row.At(pair.Value).ToString()) ?? -1)
                .Skip(1).ToList())
                places.Remove(column);
        }

        return ColumnWords.Needed(kind).All(places.ContainsKey) ? new HeaderRow(row, kind, places) : null;
    }

    internal static List<int> ByWords(SheetRow row, Column column, TableKind kind)
    {
        var ranked = new List<(int Place, int Rank)>();
        for (var i = 0; i < row.Cells.Count; i++)
        {
            if (row.At(i).Kind == CellKind.Text && ColumnWords.Rank(column, kind, row.At(i).ToString()) is { } rank)
                ranked.Add((i, rank));
        }

        return ranked.Count == 0 ? [] : [.. ranked.Where(r => r.Rank == ranked.Min(other => other.Rank)).Select(r => r.Place)];
    }

    internal static List<int> Said(SheetRow row, string header)
    {
        if (header.StartsWith("column ", StringComparison.Ordinal) && Place(header[7..]) is { } place)
            return place < row.Cells.Count ? [place] : [];
        var folded = ColumnWords.Fold(header);
        return [.. Enumerable.Range(0, row.Cells.Count)
            .Where(i => row.At(i).Kind == CellKind.Text && ColumnWords.Fold(row.At(i).ToString()) == folded)];
    }

    private static int? Place(string letters)
    {
        if (letters.Length is < 1 or > 2 || letters.Any(c => c is < 'A' or > 'Z'))
            return null;
        return letters.Aggregate(0, (sum, c) => (sum * 26) + c - 'A' + 1) - 1;
    }

    internal static string Letters(int place) =>
        (place >= 26 ? ((char)('A' + (place / 26) - 1)).ToString() : "") + (char)('A' + (place % 26));

    private static SheetException Refuse(string file, SheetRow row, Sentence found, Sentence expected) =>
        new(file, string.Create(CultureInfo.InvariantCulture, $"line {row.Line}"), found, expected);
}
