namespace Stringline.Tables.Sheets.Reading;

/// <summary>
/// How large a table from outside may be. Every limit stands here and nowhere else; <c>docs/refusals.md</c> tells each with a file that
/// meets it. They lie far above what an accounting system writes, and low enough that no file fills the memory or keeps the program busy.
/// </summary>
public static class TableLimits
{
    /// <summary>The last row. A spreadsheet has no more (ECMA-376 part 1, § 18.3.1.73), and a CSV file is held to the same.</summary>
    public const int MostRows = 1_048_576;

    /// <summary>The last column in which something may stand.</summary>
    public const int MostColumns = 500;

    /// <summary>The last column that a workbook may name, XFD, for a cell that is formatted and blank.</summary>
    public const int LastColumnOfASheet = 16_384;

    /// <summary>Cells of a table; of a workbook, over all its sheets and with its blank cells.</summary>
    public const int MostCells = 12_000_000;

    /// <summary>
    /// Rows times the widest row of each sheet, as far as something may stand in it, over all sheets: what is gone through cell by cell
    /// where nearly all of it is blank. A second of work.
    /// </summary>
    public const long LargestArea = 200_000_000;

    /// <summary>The same with columns that are only formatted: what is held and emptied anew for each row.</summary>
    public const long LargestBlankArea = 1_000_000_000;

    /// <summary>Rows over all sheets of a workbook, blank ones among them.</summary>
    public const int MostRowsOfAllSheets = 5 * MostRows;

    /// <summary>Characters of a cell, as many as a spreadsheet's cell can hold.</summary>
    public const int LongestCell = 32_767;

    /// <summary>Pieces in which the text of one cell is formatted.</summary>
    public const int MostPiecesOfACell = 200;

    /// <summary>Characters of a line of a CSV file, and of the row of a workbook, its shared texts aside.</summary>
    public const int LongestLine = 1_000_000;

    /// <summary>Lines over which one row of a CSV file may go. A cell of so many lines is a quote that was never closed.</summary>
    public const int MostLinesOfARow = 50;

    /// <summary>Rows that are refused one by one with their reasons; a table with more of them is refused as a whole.</summary>
    public const int MostRefusedRows = 100_000;

    /// <summary>Characters of the reason for which a row is refused: it says the cell as it stands, and a cell may be long.</summary>
    public const int LongestReason = 400;

    /// <summary>Sheets of a workbook.</summary>
    public const int MostSheets = 255;

    /// <summary>Texts in a workbook's list of shared texts.</summary>
    public const int MostSharedTexts = 2_000_000;

    /// <summary>Characters of all shared texts together: they are held in memory.</summary>
    public const int MostSharedCharacters = 40_000_000;

    /// <summary>Files packed in a workbook.</summary>
    public const int MostParts = 2_000;

    /// <summary>Bytes to which a workbook unpacks, counted while it is unpacked, whatever it says of itself.</summary>
    public const long MostUnpacked = 768L * 1024 * 1024;

    /// <summary>Bytes to which each of a workbook's lists of sheets, of relations and of formats unpacks.</summary>
    public const long MostUnpackedOfAList = 16L * 1024 * 1024;

    /// <summary>Elements in each of those lists, and merged ranges and widths of columns in a sheet.</summary>
    public const int MostListed = 200_000;

    /// <summary>Bytes from one angle bracket of a workbook's XML to the next inside a tag.</summary>
    public const int LongestTag = 64 * 1024;

    /// <summary>Bytes of one text or comment in a workbook's XML: the longest cell with every character spelled out.</summary>
    public const int LongestText = 512 * 1024;

    /// <summary>Elements inside each other in a workbook's XML.</summary>
    public const int DeepestNesting = 64;

    /// <summary>Different names in one part of a workbook's XML.</summary>
    public const int MostNames = 10_000;

    /// <summary>Bytes of an old workbook (XLS), which is not packed.</summary>
    public const long LargestOldWorkbook = 32L * 1024 * 1024;

    /// <summary>The last row of an old workbook.</summary>
    public const int LastRowOfAnOldSheet = 65_536;

    /// <summary>The last column of an old workbook, IV.</summary>
    public const int LastColumnOfAnOldSheet = 256;
}
