using Deque.AxeCore.Commons;

namespace Stringline.Browser.Tests;

/// <summary>Every page by the rules of axe-core, which come from outside: WCAG 2.0 to 2.2, levels A and AA.</summary>
public sealed class AccessibilityTests(Chromium chromium)
{
    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    // A paper in a frame is the browser's own viewer, not a page of ours.
    private const string Broken = """
        async () => (await axe.run(document, {
            runOnly: { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] }, resultTypes: ["violations"], iframes: false,
          })).violations.map(rule => `${rule.impact} ${rule.id}: ${rule.nodes.length} times, such as ${rule.nodes.slice(0, 3).map(node => node.html).join(" | ")}`)
        """;

    [Fact]
    public async Task No_page_breaks_a_rule_of_WCAG_A_or_AA_that_axe_knows()
    {
        var walk = await chromium.Walked();
        Assert.Equal(EveryPage.All.Count, walk.Pages);
        Found.Nothing("rules broken", walk.Broken);
    }

    [Fact]
    public async Task Axe_finds_what_is_wrong_on_a_page_that_was_spoilt()
    {
        // So that the test above cannot pass by looking at nothing.
        await using var visit = await chromium.Visit();
        await visit.Go("/jobs/new");
        await visit.Page.EvaluateAsync("document.querySelector('label').replaceWith(...document.querySelectorAll('label input'))");
        Assert.Contains(await BrokenOn(visit), rule => rule.StartsWith("critical label:", StringComparison.Ordinal));
    }

    /// <summary>The rules that a page breaks, as axe says it.</summary>
    internal static async Task<string[]> BrokenOn(Visit visit)
    {
        await visit.Page.EvaluateAsync(Axe);
        return await visit.Lines(Broken);
    }
}
