using System.Globalization;
using System.Text;
using SpreadCheetah;
using SpreadCheetah.Styling;
using SpreadCheetah.Worksheets;
using Stringline.Tables.Sheets.Cells;
using Cell = Stringline.Tables.Sheets.Cells.Cell;

namespace Stringline.Tables.Sheets.Writing;

/// <summary>
/// Writes tables as CSV (UTF-8 with a mark, so that spreadsheets show accents) and as XLSX. Memory does not grow with the rows.
/// </summary>
public static class SheetWriter
{
    private const string MoneyFormat = "#,##0.00;[Red]-#,##0.00";
    private const string DayFormat = "yyyy-mm-dd";

    /// <summary>
    /// Writes CSV. A text that a spreadsheet would take for a formula is led by an apostrophe: names come from other people.
    /// </summary>
    public static void WriteCsv(Stream stream, Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true), leaveOpen: true);
        writer.Write(CsvLine.Of([.. sheet.Columns.Select(column => column.Header)]));
        foreach (var row in sheet.Rows)
            writer.Write(CsvLine.Of([.. row.Select((cell, i) => Text(cell, sheet.Columns[i].Look))]));
    }

    /// <summary>Writes a workbook: the table, and a second sheet with what must be said with it.</summary>
    public static async Task WriteXlsxAsync(Stream stream, Sheet sheet, IReadOnlyList<string> about)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(about);
        var book = await Spreadsheet.CreateNewAsync(stream).ConfigureAwait(false);
        await using (book.ConfigureAwait(false))
        {
            var bold = book.AddStyle(new Style { Font = { Bold = true } });
            var money = book.AddStyle(new Style { Format = NumberFormat.Custom(MoneyFormat) });
            var day = book.AddStyle(new Style { Format = NumberFormat.Custom(DayFormat) });
            var options = new WorksheetOptions { FrozenRows = 1 };
            for (var i = 0; i < sheet.Columns.Count; i++)
                options.Column(i + 1).Width = sheet.Columns[i].Width;
            await book.StartWorksheetAsync(sheet.Name, options).ConfigureAwait(false);
            await book.AddHeaderRowAsync([.. sheet.Columns.Select(column => column.Header)], bold).ConfigureAwait(false);
            var cells = new StyledCell[sheet.Columns.Count];
            foreach (var row in sheet.Rows)
            {
                for (var i = 0; i < cells.Length; i++)
                    cells[i] = Styled(row[i], sheet.Columns[i].Look, money, day);
                await book.AddRowAsync(cells).ConfigureAwait(false);
            }

            await book.StartWorksheetAsync("About").ConfigureAwait(false);
            foreach (var line in about)
                await book.AddRowAsync([new StyledCell(Signs.ForXml(line), null)]).ConfigureAwait(false);
            await book.FinishAsync().ConfigureAwait(false);
        }
    }

    private static StyledCell Styled(Cell cell, Look look, StyleId money, StyleId day) => cell.Kind switch
    {
        CellKind.Empty => default,
        CellKind.Text => new StyledCell(Signs.ForXml(cell.ToString()), null),
        CellKind.Number => new StyledCell(cell.Number, look == Look.Money ? money : null),
        CellKind.Day => new StyledCell(cell.Day.ToDateTimeUnspecified(), day),
        _ => throw new InvalidOperationException($"No such kind of cell: {cell.Kind}."),
    };

    private static string Text(Cell cell, Look look) => cell.Kind switch
    {
        CellKind.Number when look == Look.Money => cell.Number.ToString("0.00", CultureInfo.InvariantCulture),
        _ => cell.ToString(),
    };
}
