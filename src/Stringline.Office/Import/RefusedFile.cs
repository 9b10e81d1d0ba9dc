using System.Globalization;
using System.Text;
using Stringline.Tables;
using Stringline.Tables.Sheets;
using Stringline.Store;

namespace Stringline.Office.Import;

/// <summary>
/// The refused rows of a file as CSV: their line, the reason, and their cells as they stood, to be mended and imported again.
/// </summary>
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
            stream = OwnerOnly.File(part, FileMode.Create);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new SheetException(new Fault(path, "", $"a place that cannot be written to ({e.Message})",
                "a folder in which the refused rows can be written; nothing was imported"));
        }
    }

    /// <summary>
    /// Writes it; without refused rows and without an earlier one there is none. One with other content, in which rows may have been
    /// mended meanwhile, is kept under another name.
    /// </summary>
    /// <returns>Its path, or null.</returns>
    public string? Finish()
    {
        if (!table.RefusedRows().Any() && !File.Exists(path))
            return null;
        Write();
        stream.Flush(flushToDisk: true);
        stream.Dispose();
        if (File.Exists(path) && !File.ReadAllBytes(path).AsSpan().SequenceEqual(File.ReadAllBytes(part)))
            File.Move(path, Free());
        File.Move(part, path, overwrite: true);
        return path;
    }

    private string Free()
    {
        for (var number = 1; ; number++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"{path[..^".csv".Length]}.{number}.csv");
            if (!Path.Exists(name))
                return name;
        }
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
        writer.Write(CsvLine.Of(["refused line", "refused because", .. table.Header.Row.Cells.Select(cell => cell.ToString())]));
        foreach (var (row, why) in table.RefusedRows())
            writer.Write(CsvLine.Of([row.Line.ToString(CultureInfo.InvariantCulture), why, .. row.Cells.Select(cell => cell.ToString())]));
    }
}
