using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Stringline.Browser.Tests;

/// <summary>Every page by the rules of axe-core, which come from outside: WCAG 2.0 to 2.2, levels A and AA.</summary>
public sealed class AccessibilityTests(Chromium chromium)
{
    private static readonly AxeRunOptions Wcag = new()
    {
        RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] },
        ResultTypes = [ResultType.Violations],
    };

    [Fact]
    public async Task No_page_breaks_a_rule_of_WCAG_A_or_AA_that_axe_knows()
    {
        var broken = new List<string>();
        await chromium.OnEveryPage(async (page, visit) => broken.AddRange(Broken(page.Name, await Axe(visit.Page))));
        Found.Nothing("rules broken", broken);
    }

    [Fact]
    public async Task Axe_finds_what_is_wrong_on_a_page_that_was_spoilt()
    {
        // So that the test above cannot pass by looking at nothing.
        await using var visit = await chromium.Visit();
        await visit.Go("/jobs/new");
        await visit.Page.EvaluateAsync("document.querySelector('label').replaceWith(...document.querySelectorAll('label input'))");
        Assert.Contains(Broken("spoilt", await Axe(visit.Page)), line => line.Contains(" label:", StringComparison.Ordinal));
    }

    // The way that asks no further window of the browser for its result: no page of ours frames another page, only papers.
    private static Task<AxeResult> Axe(IPage page) => page.Locator("html").RunAxeLegacy(Wcag);

    private static IEnumerable<string> Broken(string page, AxeResult found) => found.Violations.Select(rule =>
        $"{page}: {rule.Impact} {rule.Id}: {rule.Nodes.Length} times, such as {string.Join(" | ", rule.Nodes.Select(node => node.Html).Take(3))}");
}
