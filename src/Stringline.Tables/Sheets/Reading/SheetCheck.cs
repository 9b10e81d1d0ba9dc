using System.Globalization;
using System.Xml;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>Bounds the sheets of a workbook: where cells lie, how many there are, how long, and that a shared text that one names is
/// there.</summary>
/// <param name="sharedTexts">How many shared texts the workbook has.</param>
/// <param name="stop">Stops it.</param>
internal sealed class SheetCheck(int sharedTexts, CancellationToken stop)
{
    // Depths of sheetData/row/c: ECMA-376 part 1, § 18.3.1.80, 18.3.1.73 and 18.3.1.4. The reader goes by them too.
    private const int RowDepth = 2;
    private const int CellDepth = 3;

    private readonly CellText text = new();
    private long cells;
    private long allRows;
    private long area;
    private long blankArea;
    private int row;
    private int column;
    private int widest;
    private int rowLength;
    private int listed;
    private bool inRow;
    private bool inCell;
    private bool isShared;
    private bool inValue;

    /// <summary>Goes through one sheet.</summary>
    public void Read(Stream part)
    {
        (row, column, widest, listed, inRow, inCell, inValue) = (0, 0, 0, 0, false, false, false);
        CheckedXml.Read(part, Node);
        if ((allRows += row) > TableLimits.MostRowsOfAllSheets)
            throw new TooLargeException($"a workbook with more than {N(TableLimits.MostRowsOfAllSheets)} rows",
                "fewer sheets; or save the sheet as CSV");
        area += (long)row * Math.Min(widest, TableLimits.MostColumns);
        blankArea += (long)row * widest;
        if (area > TableLimits.LargestArea || blankArea > TableLimits.LargestBlankArea)
            throw new TooLargeException($"a sheet of {N(row)} rows and {N(widest)} columns, nearly all of them blank",
                "a sheet without formatted cells far outside the table");
    }

    private string Place => $"the cell {Letters(column)}{row.ToString(CultureInfo.InvariantCulture)}";

    private void Node(XmlReader reader)
    {
        switch (reader.NodeType)
        {
            case XmlNodeType.Element when reader.Depth <= CellDepth:
                Element(reader);
                break;
            case XmlNodeType.Element when inCell:
                inValue = reader.Depth == CellDepth + 1 && reader.LocalName == "v";
                if (reader.LocalName is "v" or "is" && column > TableLimits.MostColumns)
                    throw new TooLargeException($"{Place}, in column {N(column)}", $"at most {N(TableLimits.MostColumns)} columns");
                text.Piece(reader, Place);
                break;
            case XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace when inCell
                && reader.Depth > CellDepth:
                if ((rowLength += text.Add(reader, Place)) > TableLimits.LongestLine)
                {
                    throw new TooLargeException(
                        $"row {N(row)} of a sheet, of more than {N(TableLimits.LongestLine)} characters", "shorter rows");
                }

                if (isShared && inValue)
                    Shared();
                break;
        }
    }

    private void Element(XmlReader reader)
    {
        inCell = false;
        if (reader.Depth == RowDepth)
        {
            inRow = reader.LocalName == "row";
            if (inRow)
                Row(reader.GetAttribute("r"));
            else if (reader.LocalName is "mergeCell" or "col" && ++listed > TableLimits.MostListed)
                throw new TooLargeException("a sheet with hundreds of thousands of merged ranges or widths of columns",
                    "a sheet as a spreadsheet writes it; or save it as CSV");
        }
        else if (reader.Depth == CellDepth && inRow && reader.LocalName == "c")
        {
            Cell(reader.HasAttributes ? reader.GetAttribute("r") : null);
            inCell = !reader.IsEmptyElement;
            isShared = inCell && reader.HasAttributes && reader.GetAttribute("t") == "s";
            text.Begin();
        }
    }

    private void Row(string? number)
    {
        var last = row;
        row = number is null ? last + 1 : int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var said) ? said
            : int.MaxValue;
        if (row > TableLimits.MostRows)
            throw new TooLargeException($"row {Shown(number) ?? N(row)} of a sheet", $"rows from 1 to {N(TableLimits.MostRows)}");
        if (row <= last)
            throw new InvalidDataException($"row {row} of a sheet stands after row {last}");
        (column, rowLength) = (0, 0);
        if (row % 1024 == 0)
            stop.ThrowIfCancellationRequested();
    }

    private void Cell(string? reference)
    {
        var last = column;
        column = reference is null ? last + 1 : Column(reference);
        if (column > TableLimits.LastColumnOfASheet)
            throw new TooLargeException($"the cell {Shown(reference) ?? Letters(column)}", $"cells from A1 to XFD{TableLimits.MostRows}");
        if (column <= last)
            throw new InvalidDataException($"{Place} stands after {Letters(last)}{row}");
        widest = Math.Max(widest, column);
        if (++cells > TableLimits.MostCells)
            throw new TooLargeException($"a workbook with more than {N(TableLimits.MostCells)} cells",
                "a smaller table; or save the sheet as CSV");
    }

    // The letters of a place such as AB12; beyond all columns where it is none.
    private static int Column(string reference)
    {
        var at = 0;
        var place = 0;
        while (at < reference.Length && at < 4 && reference[at] is >= 'A' and <= 'Z' and var letter)
        {
            place = (place * 26) + letter - 'A' + 1;
            at++;
        }

        return at is 0 or 4 || !int.TryParse(reference.AsSpan(at), NumberStyles.None, CultureInfo.InvariantCulture, out _) ? int.MaxValue
            : place;
    }

    // A list of shared texts that is not there would leave the number of the text in place of the text.
    private void Shared()
    {
        if (!int.TryParse(text.Head, NumberStyles.Integer, CultureInfo.InvariantCulture, out var number) || number < 0
            || number >= sharedTexts)
            throw new InvalidDataException($"{Place} names a shared text that is not there");
    }

    private static string? Shown(string? text) => text is null || text.Length <= 20 ? text : text[..20] + "...";

    private static string Letters(int place)
    {
        var letters = "";
        for (; place > 0; place = (place - 1) / 26)
            letters = (char)('A' + ((place - 1) % 26)) + letters;
        return letters;
    }

    private static string N(long number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
