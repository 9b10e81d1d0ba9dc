using System.Globalization;

namespace Stringline.Law.Numbers;

/// <summary>A row of a table that ships with the program.</summary>
/// <param name="Line">Its line in the file, from 1.</param>
/// <param name="Cells">Its cells, as many as the table has columns.</param>
public sealed record ShippedRow(int Line, IReadOnlyList<string> Cells);

/// <summary>
/// Reads the tables in <c>data/</c>, which the user can edit: comma-separated, one row a line. A cell with a comma stands in quotes and
/// holds none; a line that begins with <c>#</c> is a remark. Tables from outside, of any make, are read elsewhere and by a library.
/// </summary>
public static class ShippedRows
{
    /// <summary>The rows below the line that names the columns.</summary>
    /// <param name="csv">The table's text.</param>
    /// <param name="columns">The names of its columns as they stand in that line, with commas between.</param>
    /// <exception cref="FormatException">A line is not of that form; the message names it, what is there and what would be
    /// right.</exception>
    public static IReadOnlyList<ShippedRow> Read(string csv, string columns)
    {
        ArgumentNullException.ThrowIfNull(csv);
        ArgumentNullException.ThrowIfNull(columns);
        var count = columns.Split(',').Length;
        var rows = new List<ShippedRow>();
        var isHeaded = false;
        var line = 0;
        for (var at = 0; at < csv.Length;)
        {
            // By the one character: the search for any kind of line end would be compiled at every start.
            var end = csv.IndexOf('\n', at);
            end = end < 0 ? csv.Length : end;
            line++;
            var text = csv[at..end].TrimEnd('\r');
            at = end + 1;
            if (text.Length == 0 || text[0] == '#')
                continue;
            if (isHeaded)
                rows.Add(new ShippedRow(line, Cells(text, line, count)));
            else if (text == columns)
                isHeaded = true;
            else
                throw new FormatException($"Line {line}: '{text}' is there; the columns {columns} would be right.");
        }

        return isHeaded ? rows : throw new FormatException($"No line names the columns; {columns} would be right.");
    }

    /// <summary>The day that a cell says as <c>2012-07-01</c>; null where it says none.</summary>
    /// <remarks>By hand, since the tables are read at every start, and a pattern would be made and compiled then.</remarks>
    public static LocalDate? Day(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return cell is [_, _, _, _, '-', _, _, '-', _, _]
            && Figures(cell.AsSpan(0, 4)) is { } year and > 0 && Figures(cell.AsSpan(5, 2)) is { } month and >= 1 and <= 12
            && Figures(cell.AsSpan(8, 2)) is { } day and >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month)
                ? new LocalDate(year, month, day) : null;
    }

    private static int? Figures(ReadOnlySpan<char> text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static List<string> Cells(string line, int number, int count)
    {
        var cells = new List<string>(count);
        for (var at = 0; at <= line.Length;)
        {
            var isQuoted = at < line.Length && line[at] == '"';
            var end = isQuoted ? line.IndexOf('"', at + 1) : line.IndexOf(',', at);
            if (isQuoted && (end < 0 || (end + 1 < line.Length && line[end + 1] != ',')))
                throw new FormatException($"Line {number}: a quoted cell must end with a quote before the next comma, and hold no quote.");
            end = end < 0 ? line.Length : end;
            cells.Add(isQuoted ? line[(at + 1)..end] : line[at..end]);
            at = isQuoted ? end + 2 : end + 1;
        }

        return cells.Count == count ? cells : throw new FormatException(
            $"Line {number}: {cells.Count} cells are there; {count} would be right. A cell that holds a comma stands in quotes.");
    }
}
