using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using Stringline.Exchange;

namespace Stringline.Desk.Batch;

/// <summary>Comma-separated text (RFC 4180), read with line numbers.</summary>
internal static class CsvText
{
    /// <summary>No cell is longer. A longer one is a quotation mark that nobody closed.</summary>
    public const int LongestCell = 16_384;

    /// <summary>Bytes that are no UTF-8 are an error, never replaced.</summary>
    public static readonly Encoding Utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The records with the line on which each begins, from 1; empty lines are left out.</summary>
    /// <exception cref="DecoderFallbackException">Some bytes are no UTF-8.</exception>
    /// <exception cref="MaxFieldSizeException">A cell is longer than <see cref="LongestCell"/>.</exception>
    public static IEnumerable<CsvRecord> Read(TextReader text, char delimiter)
    {
        var bad = false;
        using var parser = new CsvParser(text, new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = delimiter.ToString(),
            MaxFieldSize = LongestCell,
            BadDataFound = _ => bad = true,
            TrimOptions = TrimOptions.Trim,
        });
        while (parser.Read())
        {
            string[] cells = [.. (parser.Record ?? []).Select(CsvLine.Unguarded)];
            var wrapped = cells.Sum(c => c.ReplaceLineEndings("\n").Count(l => l == '\n'));
            if (cells.Any(c => c.Length > 0))
                yield return new CsvRecord(parser.RawRow - wrapped, cells, bad, wrapped > 0);
            bad = false;
        }
    }
}

/// <summary>One record.</summary>
/// <param name="Line">The line on which it begins, from 1.</param>
/// <param name="Cells">Its cells without white space around them.</param>
/// <param name="BadQuotes">Whether its quotation marks do not pair.</param>
/// <param name="Wrapped">Whether a cell holds a line end.</param>
internal sealed record CsvRecord(int Line, string[] Cells, bool BadQuotes, bool Wrapped);
