using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>A record of comma-separated text.</summary>
/// <param name="Line">The line on which it begins, from 1.</param>
/// <param name="LastLine">The line on which it ends; a cell in quotes may hold line ends.</param>
/// <param name="Cells">Its cells; one without anything in it for an empty line.</param>
/// <param name="IsBroken">Whether its quotes do not pair.</param>
public sealed record CsvRecord(int Line, int LastLine, IReadOnlyList<string> Cells, bool IsBroken);

/// <summary>
/// The one way in which this program reads comma-separated text from outside (RFC 4180, any mark between the cells). The apostrophe that
/// <see cref="CsvLine"/> puts before a formula is taken off again.
/// </summary>
public static class CsvRecords
{
    /// <summary>Bytes that are no UTF-8 are an error, never replaced.</summary>
    public static readonly Encoding StrictUtf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The records one after another; the text is read as they are taken.</summary>
    /// <param name="text">The text.</param>
    /// <param name="mark">What stands between the cells.</param>
    /// <param name="longestCell">Characters of a cell at most; a longer one is usually a quote that nobody closed.</param>
    /// <param name="isTrimmed">Whether blanks around a cell are left out.</param>
    /// <exception cref="CsvException">It cannot be read further.</exception>
    public static IEnumerable<CsvRecord> Read(TextReader text, string mark, int longestCell, bool isTrimmed = false)
    {
        var isBroken = false;
        using var parser = new CsvParser(text, new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            HasHeaderRecord = false,
            IgnoreBlankLines = false,
            Delimiter = mark,
            BadDataFound = _ => isBroken = true,
            BufferSize = 1 << 16,
            ProcessFieldBufferSize = 1 << 12,
            MaxFieldSize = longestCell,
            TrimOptions = isTrimmed ? TrimOptions.Trim : TrimOptions.None,
        });
        var last = 0;
        while (Next(parser, last))
        {
            var line = last + 1;
            last = parser.RawRow;
            var cells = new string[parser.Count];
            for (var i = 0; i < cells.Length; i++)
                cells[i] = CsvLine.Unguarded(parser[i]);
            yield return new CsvRecord(line, last, cells, isBroken);
            isBroken = false;
        }
    }

    private static bool Next(CsvParser parser, int last)
    {
        try
        {
            return parser.Read();
        }
        catch (CsvHelperException e)
        {
            throw new CsvException(last + 1, parser.RawRow, e);
        }
    }
}
