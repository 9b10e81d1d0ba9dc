using Stringline.Tables.Sheets.Cells;
using Stringline.Tables.Sheets.Reading;

namespace Stringline.Tables.Sheets.Columns;

/// <summary>How a table would be read, before anything is read of it but its first rows.</summary>
public sealed record TableLook
{
    private const int MostShown = 5;
    private const int MostTypes = 20;

    // Types that come only after so many rows are known by their words, or their rows are refused with the reason.
    private const int MostRowsForTypes = 20_000;

    private TableLook()
    {
    }

    /// <summary>The row of headers, or what looks most like one; null where the file has no row with anything in it.</summary>
    public SheetRow? Header { get; private init; }

    /// <summary>The first rows under it.</summary>
    public IReadOnlyList<SheetRow> Rows { get; private init; } = [];

    /// <summary>What the rows are; null where neither the mapping nor the headers show it.</summary>
    public TableKind? Kind { get; private init; }

    /// <summary>What each column is understood as, by its place from 0; a column that is not used is not here.</summary>
    public IReadOnlyDictionary<int, Column> Meanings { get; private init; } = new Dictionary<int, Column>();

    /// <summary>
    /// The types that the column of types holds, as written, each once, with what a row of it is; null where nobody has said.
    /// </summary>
    public IReadOnlyList<(string Type, RowKind? Kind)> Types { get; private init; } = [];

    /// <summary>Why the table cannot be read so; null where it can.</summary>
    public SheetException? Unclear { get; private init; }

    /// <summary>How many columns there are.</summary>
    public int Width => Rows.Select(row => row.Cells.Count).Append(Header?.Cells.Count ?? 0).Max();

    /// <summary>Looks at a table.</summary>
    /// <param name="file">The file.</param>
    /// <param name="mapping">What was said of its columns.</param>
    /// <exception cref="SheetException">The file is no table at all.</exception>
    public static TableLook At(SheetFile file, ColumnMapping mapping)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(mapping);
        List<SheetRow> rows = [.. file.Rows().Where(row => !row.IsBlank).Take(HeaderRow.MostRowsAbove + MostShown)];
        List<SheetRow> first = [.. rows.Take(HeaderRow.MostRowsAbove)];
        try
        {
            var found = HeaderRow.Find(file.Path, first, mapping);
            return new TableLook
            {
                Header = found.Row,
                Rows = Under(rows, found.Row),
                Kind = found.Kind,
                Meanings = found.Places.ToDictionary(pair => pair.Value, pair => pair.Key),
                Types = TypesOf(file, found, mapping),
            };
        }
        catch (SheetException unclear)
        {
            if (first.Count == 0)
                return new TableLook { Unclear = unclear };

            // What looks most like headers: the first of the rows with the most texts.
            var guess = first.MaxBy(row => row.Cells.Count(cell => cell.Kind == CellKind.Text));
            return new TableLook { Header = guess, Rows = Under(rows, guess), Kind = mapping.Kind, Meanings = Guess(guess, mapping),
                Unclear = unclear };
        }
    }

    /// <summary>
    /// The mapping that reads this table by a person's choice. A column that its words would show and that was not chosen is said to be in
    /// no column.
    /// </summary>
    /// <param name="kind">What the rows are.</param>
    /// <param name="chosen">What each column means, by its place from 0; each meaning once.</param>
    /// <param name="given">What was said of days and of the sheet.</param>
    public ColumnMapping Chosen(TableKind kind, IReadOnlyDictionary<int, Column> chosen, ColumnMapping given)
    {
        ArgumentNullException.ThrowIfNull(chosen);
        ArgumentNullException.ThrowIfNull(given);
        if (Header is not { } header)
            return given with { Kind = kind };
        var headers = chosen.ToDictionary(pair => pair.Value, pair => HeaderRow.NameOf(header, pair.Key));
        foreach (var column in ColumnWords.Of(kind))
        {
            if (!headers.ContainsKey(column) && HeaderRow.ByWords(header, column, kind).Count > 0)
                headers[column] = "";
        }

        return given with { Kind = kind, Headers = headers };
    }

    /// <summary>Whether every header that a mapping names stands in this table's row of headers.</summary>
    public bool Has(ColumnMapping mapping)
    {
        ArgumentNullException.ThrowIfNull(mapping);
        var folded = Header?.Cells.Select(cell => ColumnWords.Fold(cell.ToString())).ToHashSet(StringComparer.Ordinal) ?? [];
        return mapping.Headers.Values.Where(IsName).All(name => folded.Contains(ColumnWords.Fold(name)))
            && mapping.Headers.Values.Any(IsName);
    }

    /// <summary>The columns that a table of some kind can have.</summary>
    public static IReadOnlyList<Column> ColumnsOf(TableKind kind) => [.. ColumnWords.Of(kind)];

    /// <summary>The columns without which a table of some kind cannot be read.</summary>
    public static IReadOnlyList<Column> Needed(TableKind kind) => ColumnWords.Needed(kind);

    /// <summary>The header by which a column would be known at once.</summary>
    public static string Title(Column column, TableKind kind) => ColumnWords.Example(column, kind);

    /// <summary>The letters of a column, as a spreadsheet names it.</summary>
    /// <param name="place">From 0.</param>
    public static string Letters(int place) => HeaderRow.Letters(place);

    private static List<(string Type, RowKind? Kind)> TypesOf(SheetFile file, HeaderRow header, ColumnMapping mapping) =>
        !header.Has(Column.RowType) ? [] :
    [
        .. file.Rows().Where(row => row.Line > header.Row.Line && !header.IsRepeatedIn(row)).Take(MostRowsForTypes)
            .Select(row => header.Of(row, Column.RowType)).Where(cell => !cell.IsEmpty).Select(cell => cell.ToString())
            .DistinctBy(ColumnWords.Fold).Take(MostTypes).Select(type => (type, mapping.KindOf(type))),
    ];

    private static bool IsName(string header) => header.Length > 0 && !header.StartsWith("column ", StringComparison.Ordinal);

    private static List<SheetRow> Under(List<SheetRow> rows, SheetRow header) =>
        [.. rows.Where(row => row.Line > header.Line).Take(MostShown)];

    private static Dictionary<int, Column> Guess(SheetRow header, ColumnMapping mapping)
    {
        var guess = new Dictionary<int, Column>();
        if (mapping.Kind is not { } kind)
            return guess;
        foreach (var column in ColumnWords.Of(kind))
        {
            var places = mapping.Headers.TryGetValue(column, out var said)
                ? (said.Length == 0 ? [] : HeaderRow.Said(header, said)) : HeaderRow.ByWords(header, column, kind);
            if (places is [var place])
                guess.TryAdd(place, column);
        }

        return guess;
    }
}
