using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Stringline.Browser.Tests;

/// <summary>Every page by the rules of axe-core, which come from outside: WCAG 2.0 to 2.2, levels A and AA.</summary>
public sealed class AccessibilityTests(Chromium chromium)
{
    private static readonly AxeRunOptions Wcag = new() { RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] } };

    [Theory]
    [MemberData(nameof(EveryPage.Rows), MemberType = typeof(EveryPage))]
    public async Task Each_page_breaks_no_rule_of_WCAG_A_or_AA_that_axe_knows(EveryPage page)
    {
        await using var visit = await chromium.Visit();
        await visit.Go(page.Address, page.Status);
        await Check(visit.Page);
    }

    /// <summary>Fails where axe finds anything, and says what and where.</summary>
    internal static async Task Check(IPage page)
    {
        var found = await page.RunAxe(Wcag);
        Assert.NotEmpty(found.Passes);
        Found.Nothing("violations", found.Violations.Select(rule => $"{rule.Impact} {rule.Id}: {string.Join(" | ", rule.Nodes.Select(node => node.Html).Take(6))}"));
    }
}
