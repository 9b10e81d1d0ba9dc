using System.Text.RegularExpressions;
using Stringline.Law.Numbers;

namespace Stringline.Law.Tests.Numbers;

/// <summary>That the rules take every number of days, percent and dollars from the table, read as text.</summary>
public sealed partial class NumberUseTests
{
    private static readonly string Law = Repository.Path("src/Stringline.Law");

    private static IReadOnlyList<(string Path, string Text)> Rules { get; } =
    [
        .. Directory.EnumerateFiles(Law, "*.cs", SearchOption.AllDirectories)
            .Select(file => (Path: Path.GetRelativePath(Law, file).Replace('\\', '/'), Text: File.ReadAllText(file)))
            .Where(file =>
                !file.Path.StartsWith("obj/", StringComparison.Ordinal) && !file.Path.StartsWith("bin/", StringComparison.Ordinal)
                && !file.Path.StartsWith("Numbers/", StringComparison.Ordinal)
                && !file.Path.StartsWith("Counting/", StringComparison.Ordinal)),
    ];

    [Fact]
    public void Every_number_is_asked_for_by_some_rule()
    {
        var asked = Rules.SelectMany(file => AskedFor().Matches(file.Text).Select(match => match.Groups[1].Value)).ToHashSet();
        Assert.Equal([], Enum.GetNames<Number>().Where(name => !asked.Contains(name)));
    }

    [Fact]
    public void Every_row_names_a_section_that_the_rules_cite()
    {
        var rows = Enum.GetValues<Number>().SelectMany(id => NumberTable.Shipped.Of(id));
        Assert.Equal([], rows.Where(row => !Rules.Any(file => file.Text.Contains(row.Section, StringComparison.Ordinal)))
            .Select(row => $"{row.Id}: {row.Section}"));
    }

    // What may be counted without the table: neither is fixed by a statute.
    private static readonly (string Name, string Why)[] Practice =
    [
        ("TargetDays", "our own target for notice to a lender that came later"),
        ("TargetForDemand", "our own target for the answer to an owner's demand"),
        ("MailDays", "our yardstick for a copy that is under way"),
        ("OpenDaysToRecord", "how long it takes to act on a search"),
        ("FarAheadDays", "from where on a day is taken for a slip"),
        ("FarBackYears", "from where back a day is taken for a slip"),
        ("YearsToTrust", "how old a page of prices may be before one asks"),
    ];

    /// <summary>
    /// No rule counts a period by a figure of its own. A day before or after, a sum in hundredths, and a count of things are no numbers of
    /// the law.
    /// </summary>
    [Fact]
    public void No_rule_counts_days_or_percent_by_a_figure()
    {
        var found = new List<string>();
        foreach (var (path, text) in Rules)
        {
            foreach (var (line, number) in text.Split('\n').Select((line, i) => (line.Trim(), i + 1)))
            {
                if (line.StartsWith("//", StringComparison.Ordinal))
                    continue;
                foreach (Match match in Counted().Matches(line))
                {
                    var by = match.Groups["by"].Value.TrimStart('-');
                    if (by is "0" or "1" || (char.IsLetter(by[0]) && !Constants(text).Contains(by)) || Practice.Any(p => p.Name == by))
                        continue;
                    found.Add($"{path}:{number}: {match.Value}");
                }

                if (Share().IsMatch(line) && !line.Contains("100m", StringComparison.Ordinal)
                    && !line.Contains("0.01m", StringComparison.Ordinal))
                    found.Add($"{path}:{number}: {line}");
            }
        }

        Assert.Equal([], found);
    }

    /// <summary>No sentence of a rule holds a number of days, months, years, percent or dollars: it is printed from the row.</summary>
    [Fact]
    public void No_sentence_of_a_rule_holds_a_figure()
    {
        var found = new List<string>();
        foreach (var (path, text) in Rules.Where(file => !IsOfAForm(file.Path)))
        {
            foreach (var (line, number) in text.Split('\n').Select((line, i) => (line.Trim(), i + 1)))
            {
                if (line.StartsWith("//", StringComparison.Ordinal) || line.Contains("[Rule(", StringComparison.Ordinal))
                    continue;
                found.AddRange(Said().Matches(line).Select(match => $"{path}:{number}: {match.Value}"));
            }
        }

        Assert.Equal([], found);
    }

    // The help of an entry's form tells a period to somebody who has not said yet of which day it runs; the words of an exemption are those
    // that counties print.
    private static bool IsOfAForm(string path) =>
        path is "Facts/Usual.cs" or "Recording/HomesFeeExemption.cs"
        || (path.StartsWith("Facts/", StringComparison.Ordinal) && path.EndsWith("Kinds.cs", StringComparison.Ordinal));

    private static HashSet<string> Constants(string text) => [.. Constant().Matches(text).Select(match => match.Groups[1].Value)];

    [GeneratedRegex(@"\bNumber\.(\w+)")]
    private static partial Regex AskedFor();

    [GeneratedRegex(@"\b(?:PlusDays|PlusMonths|PlusYears|LastDay|LookBack|AddMonths|AddYears|FirstDayAfter|Plus)\((?:[^()]*, "
        + @")?(?<by>-?(?:\d+|[A-Z]\w*))\)")]
    private static partial Regex Counted();

    [GeneratedRegex(@"(?:\*|/) \d+(?:\.\d+)?m\b|\b\d+(?:\.\d+)?m \*")]
    private static partial Regex Share();

    [GeneratedRegex(@"const (?:int|decimal) (\w+)")]
    private static partial Regex Constant();

    [GeneratedRegex(@"(?:\b\d+|(?<!\.)\b(?:two|three|four|five|six|seven|ten|fifteen|twenty|thirty|sixty|ninety))[ -](?:business "
        + @"|continuous )?(?:days|months|years|percent)\b|\bone (?:month|year)\b|\$[1-9][\d,]*", RegexOptions.IgnoreCase)]
    private static partial Regex Said();
}
