using System.Net;
using System.Text;
using System.Text.RegularExpressions;

namespace Stringline.House.Tests;

/// <summary>
/// <c>docs/open-questions.md</c> gathers what the comments of the law say is not modeled or open, so that each is said once, in its place.
/// </summary>
public sealed partial class OpenQuestionsTests
{
    private const string Page = "docs/open-questions.md";

    private const string Head = """
        # What the law library leaves open

        Made from the comments of `src/Stringline.Law` that begin with "Not modeled:" or "Open:"; a test fails when this page is stale
        (`STRINGLINE_ACCEPT=1` regenerates it). What was not read is in [sources-of-law.md](sources-of-law.md); what decided cases hold and
        no rule answers yet is in [Awaiting.md](../tests/Published/Awaiting.md).

        """;

    [Fact]
    public void The_page_is_what_the_comments_say()
    {
        var page = new StringBuilder(Head);
        foreach (var file in Directory.EnumerateFiles(Repository.Path("src/Stringline.Law"), "*.cs", SearchOption.AllDirectories)
            .Select(path => (Name: Path.GetRelativePath(Repository.Path("src/Stringline.Law"), path).Replace('\\', '/'), Path: path))
            .OrderBy(file => file.Name, StringComparer.Ordinal))
        {
            foreach (Match said in Said().Matches(File.ReadAllText(file.Path)))
                page.Append("\n- `").Append(file.Name).Append("` ").Append(Plain(said.Value));
        }

        Assert.True(page.Length > Head.Length, "No comment says what is open.");
        page.Append('\n');
        if (Environment.GetEnvironmentVariable("STRINGLINE_ACCEPT") == "1")
            File.WriteAllText(Repository.Path(Page), page.ToString());
        Assert.Equal(page.ToString(), File.ReadAllText(Repository.Path(Page)));
    }

    // The comment without its marks, on one line.
    private static string Plain(string comment) =>
        WebUtility.HtmlDecode(Seen().Replace(Marks().Replace(comment, " ").Trim(), "`$1`"));

    // From the words to the end of the paragraph.
    [GeneratedRegex(@"(?:Not modeled|Open): (?:(?!</|\n *[^ /]|\n */// (?:Open|Not modeled):)[\s\S])+(?=</|\n)")]
    private static partial Regex Said();

    [GeneratedRegex(@"\s*\n *///? ?\s*")]
    private static partial Regex Marks();

    [GeneratedRegex("""<see cref="(\w+)"/>""")]
    private static partial Regex Seen();
}
