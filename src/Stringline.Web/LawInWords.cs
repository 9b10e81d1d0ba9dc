using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Stringline.Web;

/// <summary>
/// The rules in plain words, from the law library's own documentation; and their tests, from the table of the sources of law.
/// </summary>
internal static partial class LawInWords
{
    private const string Library = "Stringline.Law.";

    private static readonly Lazy<Dictionary<string, string>> Words = new(ReadWords);
    private static readonly Lazy<Dictionary<string, string>> Tests = new(ReadTests);

    /// <summary>What a member of the law library says of itself, in plain words; null where it says nothing.</summary>
    /// <param name="where">The member, such as <c>ClaimOfLien.LastDay.Of</c>.</param>
    public static string? Of(string where) => Words.Value.GetValueOrDefault(Library + where.Replace('+', '.'));

    /// <summary>The tests of a section, in the words of their names; empty where the table has none.</summary>
    public static string TestsOf(string section) => Tests.Value.GetValueOrDefault(section, "");

    private static Dictionary<string, string> ReadWords()
    {
        using var stream = Open("law.xml");
        var words = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var member in XDocument.Load(stream).Descendants("member"))
        {
            // "M:Stringline.Law.Counting.TimeLimit.LastDay(NodaTime.LocalDate,System.Int32)": the kind and the parameters do not matter
            // here.
            if (member.Attribute("name")?.Value is not { Length: > 2 } name || member.Element("summary") is not { } summary)
                continue;
            var bare = name[2..];
            var open = bare.IndexOf('(', StringComparison.Ordinal);
            words.TryAdd(open < 0 ? bare : bare[..open], Plain(summary));
        }

        return words;
    }

    private static string Plain(XElement summary)
    {
        var text = string.Concat(summary.DescendantNodes().Select(node => node switch
        {
            XText piece => piece.Value,
            XElement { Name.LocalName: "see" or "paramref" } link =>
                LastPart(link.Attribute("cref")?.Value ?? link.Attribute("name")?.Value ?? ""),
            _ => "",
        }));
        return Spaces().Replace(text, " ").Trim();
    }

    private static string LastPart(string reference)
    {
        var open = reference.IndexOf('(', StringComparison.Ordinal);
        var bare = open < 0 ? reference : reference[..open];
        return bare[(bare.LastIndexOf('.') + 1)..];
    }

    private static Dictionary<string, string> ReadTests()
    {
        using var reader = new StreamReader(Open("sources-of-law.md"));
        var tests = new Dictionary<string, string>(StringComparer.Ordinal);
        while (reader.ReadLine() is { } line)
        {
            var cells = line.Split('|', StringSplitOptions.TrimEntries);
            if (cells.Length == 7 && cells[1].Contains('§', StringComparison.Ordinal))
                tests.TryAdd(cells[1], cells[5].Replace("`", "", StringComparison.Ordinal));
        }

        return tests;
    }

    private static Stream Open(string name) => Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
        ?? throw new InvalidOperationException($"{name} is missing from the program.");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
