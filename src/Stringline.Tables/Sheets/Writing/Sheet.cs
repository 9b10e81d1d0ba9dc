using Stringline.Tables.Sheets.Cells;

namespace Stringline.Tables.Sheets.Writing;

/// <summary>How a column of a written sheet looks.</summary>
public enum Look
{
    /// <summary>Texts and whole numbers.</summary>
    Plain,

    /// <summary>Dollars and cents.</summary>
    Money,

    /// <summary>Days.</summary>
    Day,
}

/// <summary>A column of a written sheet.</summary>
/// <param name="Header">Its header.</param>
/// <param name="Look">How it looks.</param>
/// <param name="Width">Its width in a workbook, in characters.</param>
public sealed record SheetColumn(string Header, Look Look = Look.Plain, int Width = 18);

/// <summary>A table to be written.</summary>
/// <param name="Name">The sheet's name, at most 31 characters.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Its rows, drawn as they are written; a cell for each column.</param>
public sealed record Sheet(string Name, IReadOnlyList<SheetColumn> Columns, IEnumerable<IReadOnlyList<Cell>> Rows);
