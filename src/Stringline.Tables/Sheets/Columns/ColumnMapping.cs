using Stringline.Tables.Sheets.Cells;

namespace Stringline.Tables.Sheets.Columns;

/// <summary>
/// How the tables of one accounting system are to be read: saved once, used for every import. As JSON: <see cref="MappingJson"/>.
/// </summary>
public sealed record ColumnMapping
{
    /// <summary>Nothing said: everything by the words of the headers.</summary>
    public static ColumnMapping None { get; } = new();

    /// <summary>What the rows are; null where the headers show it.</summary>
    public TableKind? Kind { get; init; }

    /// <summary>
    /// The header of a column, as the file writes it, or <c>column F</c>; an empty text for a column that no header stands for. Columns not
    /// named here are known by their words.
    /// </summary>
    public IReadOnlyDictionary<Column, string> Headers { get; init; } = new Dictionary<Column, string>();

    /// <summary>What a row is by its type, as the column of types writes it. Types not named here are known by their words.</summary>
    public IReadOnlyDictionary<string, RowKind> Types { get; init; } = new Dictionary<string, RowKind>();

    /// <summary>What a row of that type is; null where nobody has said.</summary>
    public RowKind? KindOf(string type)
    {
        var folded = ColumnWords.Fold(type);
        foreach (var (known, kind) in Types)
        {
            if (ColumnWords.Fold(known) == folded)
                return kind;
        }

        return RowKinds.Of(type);
    }

    /// <summary>In which order the parts of a day stand.</summary>
    public DayOrder Days { get; init; }

    /// <summary>The sheet of a workbook; null for the first with anything on it.</summary>
    public string? Sheet { get; init; }
}
