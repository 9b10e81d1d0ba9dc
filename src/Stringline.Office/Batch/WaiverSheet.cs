using System.Text;
using Stringline.Tables.Sheets.Reading;

namespace Stringline.Office.Batch;

/// <summary>
/// A table of waivers to make, one row each. It was looked through once: heads, encoding and number of rows are known to be good.
/// </summary>
internal sealed class WaiverSheet
{
    /// <summary>The heads that may stand in the first line, in any order; the two first must.</summary>
    public static readonly IReadOnlyList<string> Heads =
        ["job", "form", "through", "amount", "maker", "payee", "disputed", "payment-cleared", "releases", "through-again"];

    /// <summary>No cell is longer. A longer one is a quotation mark that nobody closed.</summary>
    public const int LongestCell = 16_384;

    private readonly string path;
    private readonly char delimiter;
    private readonly string[] heads;

    private WaiverSheet(string path, char delimiter, string[] heads, int rows)
    {
        (this.path, this.delimiter, this.heads) = (path, delimiter, heads);
        Rows = rows;
    }

    /// <summary>Number of rows below the heads.</summary>
    public int Rows { get; }

    /// <summary>The folder that paths in the table start from.</summary>
    public string Folder => Path.GetDirectoryName(Path.GetFullPath(path)) ?? ".";

    /// <summary>Looks the file through, or says what is wrong with it as a whole.</summary>
    public static Outcome<WaiverSheet> Open(string path)
    {
        var last = 0;
        try
        {
            using var text = new StreamReader(path, CsvRecords.StrictUtf8);
            var delimiter = Delimiter(path);
            string[]? heads = null;
            var rows = 0;
            foreach (var record in Records(text, delimiter))
            {
                last = record.Line;
                if (heads is not null)
                    rows++;
                else if (Fault(path, record, heads = [.. record.Cells.Select(Head)]) is { } fault)
                    return fault;
            }

            return heads is null
                ? Refuse($"{path}: nothing is in it.", $"the heads {string.Join(", ", Heads)} in line 1, and a row for each waiver below "
                    + $"them")
                : new Outcome<WaiverSheet>.Done(new WaiverSheet(path, delimiter, heads, rows));
        }
        catch (DecoderFallbackException)
        {
            return Refuse($"{path}: after line {last}: some characters are not UTF-8.", "a file saved as \"CSV UTF-8\"");
        }
        catch (CsvException)
        {
            return Refuse($"{path}: after line {last}: a cell of more than {LongestCell} characters.",
                "every quotation mark closed on its own line");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Refuse($"{path} cannot be read: {e.Message}", "a file that this user may read");
        }
    }

    /// <summary>The rows one after another. The file is read as they are taken.</summary>
    public IEnumerable<WaiverRow> Read()
    {
        using var text = new StreamReader(path, CsvRecords.StrictUtf8);
        foreach (var record in Records(text, delimiter).Skip(1))
            yield return WaiverRow.Of(record, heads);
    }

    // Empty lines are left out.
    private static IEnumerable<CsvRecord> Records(TextReader text, char delimiter) =>
        CsvRecords.Read(text, delimiter.ToString(), LongestCell, isTrimmed: true)
        .Where(record => record.Cells.Any(cell => cell.Length > 0));

    private static Outcome<WaiverSheet>? Fault(string path, CsvRecord record, string[] heads)
    {
        var right = $"heads out of {string.Join(", ", Heads)}, each once; job and form must be there";
        if (Array.Find(heads, h => !Heads.Contains(h)) is { } unknown)
            return Refuse($"{path}: line {record.Line}: '{unknown}' is no head.", right);
        if (heads.GroupBy(h => h).FirstOrDefault(g => g.Count() > 1) is { } twice)
            return Refuse($"{path}: line {record.Line}: '{twice.Key}' stands twice.", right);
        return Heads.Take(2).FirstOrDefault(h => !heads.Contains(h)) is { } missing
            ? Refuse($"{path}: line {record.Line}: '{missing}' is not there.", right)
            : null;
    }

    private static Outcome<WaiverSheet>.Refused Refuse(string found, string right) =>
        new([$"{found}\n  should be: {right}\n  Nothing was made."]);

    private static string Head(string cell) =>
        cell.ToLowerInvariant().Replace(' ', '-').Replace('_', '-') is var head && head == "exceptions" ? "disputed" : head;

    /// <summary>What parts the heads; spreadsheets of some countries write semicolons.</summary>
    private static char Delimiter(string path)
    {
        using var text = new StreamReader(path, CsvRecords.StrictUtf8);
        var heads = text.ReadLine() ?? "";
        return ((char[])[',', ';', '\t']).MaxBy(d => heads.Count(c => c == d));
    }
}
