namespace Stringline.Tables.Sheets.Reading;

/// <summary>A file with one table: CSV in any of the usual encodings, or the first sheet with anything on it of a workbook (XLSX,
/// XLS).</summary>
/// <param name="path">Where it is; faults name it so.</param>
/// <param name="sheet">The sheet of a workbook; null for the first that is not empty.</param>
/// <param name="stop">Stops whatever reads it.</param>
public sealed class SheetFile(string path, string? sheet = null, CancellationToken stop = default)
{
    private (long Length, DateTime Written) whole;

    /// <summary>Where it is.</summary>
    public string Path => path;

    /// <summary>The sheet of a workbook; null for the first that is not empty.</summary>
    public string? Sheet => sheet;

    /// <summary>Reads it row by row; memory does not grow with a CSV file, and not with the rows of a workbook.</summary>
    /// <exception cref="SheetException">The file cannot be read as a table.</exception>
    public IEnumerable<SheetRow> Rows()
    {
        using var stream = Open();
        var rows = IsCheckedWorkbook(stream) ? Workbook.Rows(stream, Path, Sheet, stop) : CsvTable.Rows(stream, Path, stop);
        foreach (var row in rows)
            yield return row;
    }

    /// <summary>Holds a workbook to the limits and to its checksums; a file of text is held to them while it is read.</summary>
    /// <exception cref="SheetException">It is not whole, or too large.</exception>
    public void Check()
    {
        using var stream = Open();
        IsCheckedWorkbook(stream);
    }

    /// <summary>The names of the sheets of a workbook, in its order; none of a file of text.</summary>
    /// <exception cref="SheetException">The file cannot be read.</exception>
    public IReadOnlyList<string> Sheets()
    {
        using var stream = Open();
        return IsCheckedWorkbook(stream) ? Workbook.Names(stream, Path) : [];
    }

    // Checked once: a large workbook is read several times over. A file that has changed since is checked again.
    private bool IsCheckedWorkbook(FileStream stream)
    {
        if (!Workbook.IsOne(stream))
            return false;
        var now = (stream.Length, File.GetLastWriteTimeUtc(Path));
        if (whole != now)
            Workbook.Check(stream, Path, stop);
        whole = now;
        return true;
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
