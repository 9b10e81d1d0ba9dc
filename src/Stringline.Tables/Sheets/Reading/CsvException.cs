using CsvHelper;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>Comma-separated text that cannot be read further: a cell is too long, or a quote was never closed.</summary>
/// <param name="line">The line on which the record begins.</param>
/// <param name="lastLine">How far it was read.</param>
/// <param name="cause">What the library that reads it said.</param>
public sealed class CsvException(int line, int lastLine, CsvHelperException cause) : Exception(cause?.Message, cause)
{
    /// <summary>The line on which the record begins, from 1.</summary>
    public int Line => line;

    /// <summary>The line as far as it was read.</summary>
    public int LastLine => lastLine;

    /// <summary>Whether a cell is too long.</summary>
    public bool IsTooLong => InnerException is MaxFieldSizeException;
}
