using System.Text;
using System.Text.RegularExpressions;

namespace Stringline.Tables;

/// <summary>
/// The one way in which this program writes comma-separated text (RFC 4180), so that nothing in it is a formula to a spreadsheet: names
/// and reasons come from other people. What would be one is led by an apostrophe, which is taken off again where such a file is read.
/// </summary>
public static partial class CsvLine
{
    /// <summary>One line, ended.</summary>
    /// <param name="cells">Its cells.</param>
    public static string Of(params IReadOnlyList<string> cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        var line = new StringBuilder();
        for (var i = 0; i < cells.Count; i++)
            line.Append(i == 0 ? "" : ",").Append(Quoted(Guarded(cells[i])));
        return line.Append("\r\n").ToString();
    }

    /// <summary>
    /// A text as it stands in a cell: a formula is led by an apostrophe. A plain number is none, with its sign or without.
    /// </summary>
    /// <param name="text">The text.</param>
    public static string Guarded(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length == 0 || char.IsAsciiLetterOrDigit(text[0]) || !Formula().IsMatch(text) || Number().IsMatch(text)
            ? text : "'" + text;
    }

    /// <summary>The text that <see cref="Guarded"/> gave this.</summary>
    /// <param name="cell">What stands in the cell.</param>
    public static string Unguarded(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return cell.Length > 1 && cell[0] == '\'' && Formula().IsMatch(cell) ? cell[1..] : cell;
    }

    private static string Quoted(string cell) =>
        cell.Length > 0 && (cell.AsSpan().ContainsAny(",\"\r\n") || char.IsWhiteSpace(cell[0]) || char.IsWhiteSpace(cell[^1]))
            ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : cell;

    // Spreadsheets pass over blanks and signs that cannot be seen, and some take the wide forms of East Asian keyboards for the narrow
    // ones. Apostrophes are passed over too, so that each that is put on is taken off again and no other.
    [GeneratedRegex(@"^[\s'\p{Cf}\p{Cc}]*[=+\-@＝＋－＠]|^'*[\t\r\n]")]
    private static partial Regex Formula();

    [GeneratedRegex(@"^[+-]\$?[0-9][0-9,]*(\.[0-9]+)?\z")]
    private static partial Regex Number();
}
