using Stringline.Exchange;

namespace Stringline.Spreadsheets.Reading;

/// <summary>A file with one table: CSV in any of the usual encodings, or the first sheet with anything on it of a workbook (XLSX, XLS).</summary>
/// <param name="Path">Where it is; faults name it so.</param>
/// <param name="Sheet">The sheet of a workbook; null for the first that is not empty.</param>
public sealed record SheetFile(string Path, string? Sheet = null)
{
    /// <summary>Reads it row by row; memory does not grow with a CSV file, and not with the rows of a workbook.</summary>
    /// <exception cref="SheetException">The file cannot be read as a table.</exception>
    public IEnumerable<SheetRow> Rows()
    {
        using var stream = Open();
        var rows = Workbook.IsOne(stream) ? Workbook.Rows(stream, Path, Sheet) : CsvTable.Rows(stream, Path);
        foreach (var row in rows)
            yield return row;
    }

    /// <summary>The names of the sheets of a workbook, in its order; none of a file of text.</summary>
    /// <exception cref="SheetException">The file cannot be read.</exception>
    public IReadOnlyList<string> Sheets()
    {
        using var stream = Open();
        return Workbook.IsOne(stream) ? Workbook.Names(stream, Path) : [];
    }

    private FileStream Open()
    {
        try
        {
            if (Directory.Exists(Path))
                throw Refuse("a folder");
            return new FileStream(Path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            throw Refuse("no such file");
        }
        catch (UnauthorizedAccessException)
        {
            throw Refuse("a file that may not be read");
        }
        catch (IOException e)
        {
            throw Refuse($"a file that cannot be read ({e.Message})");
        }
    }

    private SheetException Refuse(string found) => new(new Fault(Path, "", found, "a CSV or XLSX file"));
}
