using Stringline.Tables.Sheets.Cells;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>A row as the file has it.</summary>
/// <param name="Line">The number of the line (CSV) or row (workbook) on which it begins, from 1.</param>
/// <param name="Cells">Its cells, as many as this row has.</param>
/// <param name="Broken">What is wrong with the row as such, such as a stray quote; null where nothing is.</param>
public readonly record struct SheetRow(int Line, IReadOnlyList<Cell> Cells, string? Broken = null)
{
    /// <summary>The cell of a column; empty where the row is shorter.</summary>
    /// <param name="column">From 0; less than 0 for a column that the file has not.</param>
    public Cell At(int column) => column >= 0 && column < Cells.Count ? Cells[column] : default;

    /// <summary>Whether there is nothing in it.</summary>
    public bool IsBlank
    {
        get
        {
            for (var i = 0; i < Cells.Count; i++)
            {
                if (!Cells[i].IsEmpty)
                    return false;
            }

            return Broken is null;
        }
    }
}
