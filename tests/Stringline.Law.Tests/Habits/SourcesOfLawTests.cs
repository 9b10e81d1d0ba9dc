using System.Text;
using System.Text.RegularExpressions;
using Stringline.Law.Numbers;
using Stringline.Law.Sources;

namespace Stringline.Law.Tests.Habits;

/// <summary>
/// Keeps the table of rules in <c>docs/sources-of-law.md</c> as the code has it: section, rule, test, and how sure. With
/// STRINGLINE_ACCEPT=1 in the environment the table is written anew; without it a stale table fails.
/// </summary>
public sealed partial class SourcesOfLawTests
{
    private const string Begin = "<!-- rules: made from the code, see docs/how-to-add-a-rule.md -->";
    private const string End = "<!-- end of rules -->";

    [Fact]
    public void The_table_of_rules_in_the_documents_is_the_one_the_code_makes()
    {
        var path = Repository.Path("docs/sources-of-law.md");
        var page = File.ReadAllText(path).ReplaceLineEndings("\n");
        var begin = page.IndexOf(Begin, StringComparison.Ordinal);
        var end = page.IndexOf(End, StringComparison.Ordinal);
        Assert.True(begin >= 0 && end > begin, "docs/sources-of-law.md has lost the marks around its table of rules.");
        var made = page[..begin] + Begin + "\n\n" + Table() + "\n" + page[end..];
        if (Environment.GetEnvironmentVariable("STRINGLINE_ACCEPT") == "1")
            File.WriteAllText(path, made);
        else
            Assert.True(made == page, "docs/sources-of-law.md is stale. Run the tests once with STRINGLINE_ACCEPT=1 and look at what "
                + "changed.");
    }

    private static string Table()
    {
        var tests = Tests();
        var text = new StringBuilder("| Section | Numbers | How sure | Rule | Tests |\n| --- | --- | --- | --- | --- |\n");
        foreach (var section in RuleMarks.All.GroupBy(r => r.Rule.Section).OrderBy(g => g.Key, BySection.Instance))
        {
            var marks = section.Select(r => r.Rule).ToList();
            var rules = section.Select(r => $"`{r.Where.Replace("Stringline.Law.", "", StringComparison.Ordinal)}`").Distinct()
                .Order(StringComparer.Ordinal);
            var proofs = tests[section.Key].Select(t => $"`{t}`").Distinct().Order(StringComparer.Ordinal).ToList();
            text.Append('|').Append(' ').Append(section.Key)
                .Append(" | ").AppendJoin("; ", NumberTable.Shipped.OfSection(section.Key).Select(row => row.Governing))
                .Append(" | ").AppendJoin("; ", marks.Select(m => Words(m.Sure)).Distinct().Order(StringComparer.Ordinal))
                .Append(" | ").AppendJoin(", ", rules)
                .Append(" | ").AppendJoin(", ", proofs.Take(3)).Append(proofs.Count > 3 ? $" and {proofs.Count - 3} more" : "")
                .Append(" |\n");
        }

        return text.ToString();
    }

    private static string Words(Sure sure) => sure switch
    {
        Sure.Read => "read",
        Sure.Opinion => "an opinion's, read in part",
        Sure.FromMemory => "from memory",
        Sure.OurReading => "our reading, on the safer side",
        _ => throw new ArgumentOutOfRangeException(nameof(sure), sure, "No words."),
    };

    // Both test projects that prove rules; read as text, since one test program does not hold the other.
    private static ILookup<string, string> Tests()
    {
        var found = new List<(string Section, string Test)>();
        foreach (var folder in (string[])["tests/Stringline.Law.Tests", "tests/Published"])
        {
            var files = Directory.EnumerateFiles(Repository.Path(folder), "*.cs", SearchOption.AllDirectories)
                .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal));
            foreach (var file in files)
            {
                var sections = new List<string>();
                foreach (var line in File.ReadLines(file))
                {
                    if (ProvesMark().Match(line) is { Success: true } proves)
                    {
                        sections.Add(proves.Groups[1].Value);
                    }
                    else if (TestMethod().Match(line) is { Success: true } method)
                    {
                        found.AddRange(sections.Select(s => (s, $"{Path.GetFileNameWithoutExtension(file)}.{method.Groups[1].Value}")));
                        sections.Clear();
                    }
                }
            }
        }

        return found.ToLookup(f => f.Section, f => f.Test);
    }

    [GeneratedRegex(@"^\s*\[Proves\(""([^""]+)""\)\]")]
    private static partial Regex ProvesMark();

    [GeneratedRegex(@"^\s*public (?:static )?(?:async )?(?:void|Task) (\w+)\(")]
    private static partial Regex TestMethod();

    /// <summary>By code, then by the number of the section, then by its subdivision.</summary>
    private sealed partial class BySection : IComparer<string>
    {
        public static readonly BySection Instance = new();

        public int Compare(string? x, string? y)
        {
            var (a, b) = (Key(x!), Key(y!));
            var code = string.CompareOrdinal(a.Code, b.Code);
            if (code != 0)
                return code;
            return a.Number != b.Number ? a.Number.CompareTo(b.Number) : string.CompareOrdinal(a.Subdivision, b.Subdivision);
        }

        private static (string Code, decimal Number, string Subdivision) Key(string section)
        {
            var match = Parts().Match(section);
            return match.Success
                ? (match.Groups[1].Value, decimal.Parse(match.Groups[2].Value, System.Globalization.CultureInfo.InvariantCulture),
                    match.Groups[3].Value)
                : (section, 0m, "");
        }

        [GeneratedRegex(@"^(.+?) § (\d+(?:\.\d+)?)(.*)$")]
        private static partial Regex Parts();
    }
}
