using System.Text.RegularExpressions;
using Stringline.Law.Numbers;

namespace Stringline.LawWatch;

/// <summary>
/// What stands on a section: rules and tests of <c>docs/sources-of-law.md</c>, which is made from the marks in the code; prescribed
/// wording of the same page; papers of <c>docs/papers.md</c>; numbers of <c>data/numbers.csv</c>. A subdivision belongs to its section.
/// </summary>
internal sealed partial class Standing
{
    private readonly ILookup<string, (string Kind, string Name)> bySection;

    private Standing(IEnumerable<(string Section, string Kind, string Name)> all) =>
        bySection = all.Distinct().ToLookup(one => one.Section, one => (one.Kind, one.Name));

    /// <summary>The kinds in the order in which they are told.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["rule", "number", "wording", "paper", "test"];

    /// <summary>Every section on which something stands.</summary>
    public IEnumerable<string> Sections => bySection.Select(group => group.Key);

    /// <summary>What of a kind stands on a section, each once.</summary>
    public IEnumerable<string> On(string section, string kind) =>
        bySection[section].Where(one => one.Kind == kind).Select(one => one.Name);

    /// <summary>Reads the pages and tables of the repository.</summary>
    /// <param name="root">Its folder.</param>
    /// <exception cref="UnreadableException">One of them is not there.</exception>
    public static Standing Of(string root) => new([
        .. Rows(root, "docs/sources-of-law.md", 5)
            .SelectMany(row => On(row[0], "rule", Ticked(row[3])).Concat(On(row[0], "test", Tests(row[4])))),
        .. Rows(root, "docs/sources-of-law.md", 5)
            .SelectMany(row => On(row[1], "wording", Ticked(row[0]).Where(name => name.EndsWith(".txt", StringComparison.Ordinal)))),
        .. Rows(root, "docs/papers.md", 4).SelectMany(row => On(row[2], "paper", Ticked(row[0]))),
        .. Numbers(root),
    ]);

    private static IEnumerable<(string, string, string)> On(string citation, string kind, IEnumerable<string> names) =>
        from section in Codes.SectionsIn(citation) from name in names select (section, kind, name);

    private static IEnumerable<string> Ticked(string cell) => Ticks().Matches(cell).Select(match => match.Groups[1].Value);

    // The page names the first tests and counts the others.
    private static IEnumerable<string> Tests(string cell) =>
        More().Match(cell) is { Success: true } more ? Ticked(cell).Append(more.Value) : Ticked(cell);

    private static IEnumerable<(string, string, string)> Numbers(string root)
    {
        var path = Path.Combine(root, "data", "numbers.csv");
        if (!File.Exists(path))
            return [];
        var text = File.ReadAllText(path);
        var heads = text.ReplaceLineEndings("\n").Split('\n').First(line => !line.StartsWith('#'));
        var columns = heads.Split(',');
        string Cell(ShippedRow row, string column) => row.Cells[Array.IndexOf(columns, column)];
        return ShippedRows.Read(text, heads)
            .SelectMany(row => On(Cell(row, "section"), "number", [$"{Cell(row, "id")} ({Cell(row, "value")} {Cell(row, "unit")})"]));
    }

    private static IEnumerable<string[]> Rows(string root, string page, int cells)
    {
        var path = Path.Combine(root, page);
        if (!File.Exists(path))
            throw new UnreadableException($"{path}: no such file. Right: the repository with its pages.");
        return File.ReadLines(path).Where(line => line.StartsWith("| ", StringComparison.Ordinal))
            .Select(line => line.Trim('|', ' ').Split(" | ")).Where(row => row.Length == cells);
    }

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Ticks();

    [GeneratedRegex(@"and \d+ more$")]
    private static partial Regex More();
}
