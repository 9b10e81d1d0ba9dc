using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using Stringline.Exchange;

namespace Stringline.Spreadsheets.Import;

/// <summary>The refused rows of a file as CSV: their line, the reason, and their cells as they stood, to be mended and imported again.</summary>
/// <remarks>A place for it is made before anything is imported, so that a folder that cannot be written to is told in time.</remarks>
internal sealed class RefusedFile : IDisposable
{
    private readonly TableRows table;
    private readonly string path;
    private readonly string part;
    private readonly FileStream stream;

    /// <summary>Makes the place.</summary>
    /// <exception cref="SheetException">The folder cannot be written to.</exception>
    public RefusedFile(TableRows table)
    {
        this.table = table;
        path = RefusedRowsFile.NameOf(table.File);
        part = path + ".part";
        try
        {
            stream = new FileStream(part, FileMode.Create, FileAccess.Write);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new SheetException(new Fault(path, "", $"a place that cannot be written to ({e.Message})", "a folder in which the refused rows can be written; nothing was imported"));
        }
    }

    /// <summary>Writes it, in place of that of an earlier import; without refused rows and without an earlier one there is none.</summary>
    /// <returns>Its path, or null.</returns>
    public string? Finish()
    {
        if (!table.RefusedRows().Any() && !File.Exists(path))
            return null;
        Write();
        stream.Flush(flushToDisk: true);
        stream.Dispose();
        File.Move(part, path, overwrite: true);
        return path;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        stream.Dispose();
        File.Delete(part);
    }

    private void Write()
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true), leaveOpen: true);
        using var csv = new CsvWriter(writer, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n" });
        csv.WriteField("refused line");
        csv.WriteField("refused because");
        foreach (var cell in table.Header.Row.Cells)
            csv.WriteField(cell.ToString());
        csv.NextRecord();
        foreach (var (row, why) in table.RefusedRows())
        {
            csv.WriteField(row.Line);
            csv.WriteField(why);
            foreach (var cell in row.Cells)
                csv.WriteField(cell.ToString());
            csv.NextRecord();
        }
    }
}
