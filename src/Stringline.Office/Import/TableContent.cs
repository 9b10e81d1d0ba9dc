using System.IO.Compression;
using Stringline.Tables.Sheets;
using Stringline.Tables.Sheets.Reading;

namespace Stringline.Office.Import;

/// <summary>Tells by its content, never by its name, whether a file can be a table: text, or a workbook.</summary>
internal static class TableContent
{
    private const int Head = 64 * 1024;

    private static readonly (byte[] Start, string Words)[] Others =
    [
        ("%PDF"u8.ToArray(), "a PDF"),
        ("MZ"u8.ToArray(), "a program"),
        ("\u007FELF"u8.ToArray(), "a program"),
        ([0x89, (byte)'P', (byte)'N', (byte)'G'], "a picture"),
        ([0xFF, 0xD8, 0xFF], "a picture"),
        ("GIF8"u8.ToArray(), "a picture"),
        ([0x1F, 0x8B], "a compressed file"),
        ("Rar!"u8.ToArray(), "a compressed file"),
        ([(byte)'7', (byte)'z', 0xBC, 0xAF], "a compressed file"),
        ("{\\rtf"u8.ToArray(), "a text document"),
    ];

    /// <summary>The ending that fits the content; null where it is no table.</summary>
    /// <param name="path">The file.</param>
    /// <param name="stop">Stops it.</param>
    /// <param name="found">What it is, in words, where it is no table.</param>
    public static string? EndingOf(string path, CancellationToken stop, out string found)
    {
        found = "";
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
        var head = new byte[Head];
        var length = stream.ReadAtLeast(head, Head, throwOnEndOfStream: false);
        var start = head.AsSpan(0, length);
        if (length == 0)
            found = "an empty file";
        else if (start.StartsWith("PK"u8))
            return IsWorkbook(stream, out found) && IsBounded(path, stop, ref found) ? ".xlsx" : null;
        else if (start.StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0]))
            return IsBounded(path, stop, ref found) ? ".xls" : null;
        else if (Array.Find(Others, other => head.AsSpan(0, length).StartsWith(other.Start)) is { Words: { } words })
            found = words;
        else if (IsPage(start))
            found = "a web page";
        else if (!TextOf.IsText(start))
            found = "a file that is neither text nor a workbook";
        else if (start.IndexOfAnyExcept(" \t\r\n\uFEFF"u8) < 0)
            found = "a file with nothing but blanks";
        else
            return ".csv";
        return null;
    }

    // ECMA-376 part 1, § 12.3.23: the workbook part. Also tells apart a document of text, which is a ZIP archive as well.
    private static bool IsWorkbook(Stream stream, out string found)
    {
        found = "a ZIP archive that is no workbook";
        stream.Position = 0;
        try
        {
            using var archive = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true);
            return archive.GetEntry("[Content_Types].xml") is not null
                && archive.Entries.Any(entry => entry.FullName is "xl/workbook.xml" or "xl/workbook.bin");
        }
        catch (InvalidDataException)
        {
            found = "a workbook that is cut off or damaged";
            return false;
        }
    }

    // Gone through once here, so that a workbook that is damaged or beyond the limits does not even wait.
    private static bool IsBounded(string path, CancellationToken stop, ref string found)
    {
        try
        {
            new SheetFile(path, null, stop).Check();
            return true;
        }
        catch (SheetException refusal)
        {
            found = refusal.Fault.Found;
            return false;
        }
    }

    private static bool IsPage(ReadOnlySpan<byte> start)
    {
        var text = System.Text.Encoding.Latin1.GetString(start[..Math.Min(start.Length, 512)])
            .TrimStart('\u00EF', '\u00BB', '\u00BF', ' ', '\r', '\n', '\t');
        return text.StartsWith("<!doctype", StringComparison.OrdinalIgnoreCase)
            || text.StartsWith("<html", StringComparison.OrdinalIgnoreCase) || text.StartsWith("<?xml", StringComparison.OrdinalIgnoreCase);
    }
}
