using System.Text.RegularExpressions;

namespace Stringline.House.Tests;

/// <summary><c>docs/regressions.md</c> names tests that are there, for every fault one at least.</summary>
public sealed partial class RegressionsTests
{
    private static readonly string[] Rows =
        [.. File.ReadLines(Repository.Path("docs/regressions.md")).Where(line => line.StartsWith("| ", StringComparison.Ordinal))];

    [Fact]
    public void Every_fault_names_a_test_that_is_there()
    {
        var there = Tests();
        Assert.All(Rows.Where(row => !row.StartsWith("| what was wrong", StringComparison.Ordinal) && row != "| --- | --- |"), row =>
        {
            var named = Named().Matches(row).Select(match => match.Groups[1].Value).ToList();
            Assert.True(named.Count > 0, row);
            Assert.Empty(named.Except(there));
        });
        Assert.True(Rows.Length > 50);
    }

    // Of a file's tests each is named with each class of the file: a base class may hold them.
    private static HashSet<string> Tests() =>
    [
        .. from file in Directory.EnumerateFiles(Repository.Path("tests"), "*.cs", SearchOption.AllDirectories)
           let text = File.ReadAllText(file)
           from Match type in Type().Matches(text)
           from Match method in Method().Matches(text)
           select $"{type.Groups[1].Value}.{method.Groups[1].Value}",
    ];

    [GeneratedRegex(@"`(\w+\.\w+)`")]
    private static partial Regex Named();

    [GeneratedRegex(@"^(?:public|internal) [\w ]*class (\w+)", RegexOptions.Multiline)]
    private static partial Regex Type();

    [GeneratedRegex(@"^    public (?:async Task|Task|void) (\w+)\(", RegexOptions.Multiline)]
    private static partial Regex Method();
}
