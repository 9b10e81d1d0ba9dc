using NodaTime.Text;
using Stringline.Tables;
using Stringline.Law.Numbers;

namespace Stringline.LawWatch;

/// <summary>The fingerprint of a version of a section that the rules were written from.</summary>
/// <param name="Section">The section.</param>
/// <param name="Fingerprint">Its fingerprint.</param>
/// <param name="TextOf">The day of the text: the Legislature's date of last update.</param>
/// <param name="Source">Where the text was.</param>
internal sealed record KeptSection(string Section, string Fingerprint, LocalDate TextOf, string Source)
{
    private const string Columns = "section,fingerprint,text_of,source";

    /// <summary>Reads <c>data/law-fingerprints.csv</c>.</summary>
    /// <exception cref="UnreadableException">It is not of that form.</exception>
    public static IReadOnlyList<KeptSection> Read(string path)
    {
        try
        {
            return [.. ShippedRows.Read(File.ReadAllText(path), Columns).Select(row => Of(row, path))];
        }
        catch (FormatException e)
        {
            throw new UnreadableException($"{path}: {e.Message}");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new UnreadableException($"{path}: {e.Message}");
        }
    }

    /// <summary>The text of the file for these rows.</summary>
    public static string Text(IEnumerable<KeptSection> rows) => string.Concat(
        rows.Select(row => CsvLine.Of(row.Section, row.Fingerprint, LocalDatePattern.Iso.Format(row.TextOf), row.Source))
            .Prepend(Columns + "\n")).ReplaceLineEndings("\n");

    private static KeptSection Of(ShippedRow row, string path) =>
        LocalDatePattern.Iso.Parse(row.Cells[2]) is { Success: true, Value: var day } && row.Cells[1].Length == 64
        && Codes.SectionsIn(row.Cells[0]).SequenceEqual([row.Cells[0]])
            ? new KeptSection(row.Cells[0], row.Cells[1], day, row.Cells[3])
            : throw new UnreadableException($"{path}: line {row.Line}: '{string.Join(',', row.Cells)}'. Right: a section such as "
                + "Civ. Code § 8414, 64 letters and digits, a day such as 2026-07-10, and a source.");
}
