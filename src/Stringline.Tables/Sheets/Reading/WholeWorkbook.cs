using System.Globalization;
using System.IO.Compression;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>
/// Goes through a workbook (XLSX) before its reader does: every part is unpacked once, counted, and its checksum compared, and the parts
/// that the reader will go by are held to the limits. The reader has no limits of its own and compares no checksum.
/// </summary>
internal sealed class WholeWorkbook
{
    // The reader knows these parts by their names and no others (its version is pinned; it looks them up without regard to case).
    private const string Book = "xl/workbook.xml";
    private const string Relations = "xl/_rels/workbook.xml.rels";
    private const string SharedTexts = "xl/sharedStrings.xml";
    private const string Formats = "xl/styles.xml";

    private readonly Dictionary<string, ZipArchiveEntry> parts = new(StringComparer.OrdinalIgnoreCase);
    private readonly CancellationToken stop;
    private long unpacked;

    private WholeWorkbook(ZipArchive archive, CancellationToken stop)
    {
        this.stop = stop;
        foreach (var entry in archive.Entries)
        {
            if (!parts.TryAdd(NameOf(entry), entry))
                throw new InvalidDataException($"it holds \"{entry.FullName}\" twice");
        }
    }

    /// <summary>Goes through it; the stream stands at its start again.</summary>
    /// <param name="file">The workbook.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="TooLargeException">It exceeds a limit.</exception>
    /// <exception cref="InvalidDataException">It is not whole.</exception>
    public static void Check(Stream file, CancellationToken stop)
    {
        using (var archive = new ZipArchive(file, ZipArchiveMode.Read, leaveOpen: true))
        {
            if (archive.Entries.Count > TableLimits.MostParts)
                throw new TooLargeException($"a workbook of {N(archive.Entries.Count)} files",
                    $"at most {N(TableLimits.MostParts)}; or save the sheet as CSV");
            ZipDirectory.Compare(file, archive);
            new WholeWorkbook(archive, stop).Check();
        }

        file.Position = 0;
    }

    private void Check()
    {
        var book = new BookParts();
        if (!parts.ContainsKey(Book))
            throw new InvalidDataException("it holds no \"" + Book + "\"");
        Read(Book, book.Sheets);
        Read(Relations, book.Relations);
        var shared = new SharedTextsCheck(stop);
        Read(SharedTexts, shared.Read);
        Read(Formats, ListCheck.Read);
        var sheets = new SheetCheck(shared.Count, stop);
        foreach (var (sheet, part) in book.Parts())
        {
            if (!parts.ContainsKey(part))
                throw new InvalidDataException($"the sheet \"{sheet}\" is missing");
            Read(part, sheets.Read);
        }

        foreach (var left in parts.Values)
            Sum(left, null);
    }

    // A part that was read is taken off the list of those that are left.
    private void Read(string part, Action<Stream> read)
    {
        if (parts.Remove(part, out var entry))
            Sum(entry, read);
    }

    private void Sum(ZipArchiveEntry entry, Action<Stream>? read)
    {
        stop.ThrowIfCancellationRequested();
        using var bytes = entry.Open();
        var bound = new MarkupBound(bytes, Count, isMarkup: read is not null);
        read?.Invoke(bound);
        bound.ReadToEnd();
        if (bound.Count != entry.Length || bound.Sum != entry.Crc32)
            throw new InvalidDataException($"the checksum of \"{entry.FullName}\" is not that of its content");
    }

    private bool Count(int bytes)
    {
        stop.ThrowIfCancellationRequested();
        return (unpacked += bytes) <= TableLimits.MostUnpacked;
    }

    private static string NameOf(ZipArchiveEntry entry) => entry.FullName.Replace('\\', '/');

    private static string N(long number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
