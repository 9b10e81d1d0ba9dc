namespace Stringline.Browser.Tests;

/// <summary>Whether a page fits its window.</summary>
internal static class Fit
{
    // What a person would have to scroll the whole page sideways for. What scrolls in a region of its own is asked for with the keyboard
    // too.
    private const string Beyond = """
        width => [...document.querySelectorAll("body *")]
          .filter(part => part.checkVisibility() && !part.closest(".line-scroll, .unseen, .skip, svg") && part.getBoundingClientRect().right > width + 1)
          .slice(0, 4).map(part => part.outerHTML.slice(0, 120))
        """;

    // Text in a box that hides a part of it.
    private const string Clipped = """
        () => [...document.querySelectorAll("body *")]
          .filter(part => part.checkVisibility() && !part.closest(".unseen, .line-scroll, thead, iframe") && [...part.childNodes].some(node => node.nodeType === 3 && node.data.trim()))
          .filter(part => (getComputedStyle(part).overflowX !== "visible" && part.scrollWidth > part.clientWidth + 1)
            || (getComputedStyle(part).overflowY !== "visible" && part.scrollHeight > part.clientHeight + 1))
          .map(part => part.outerHTML.slice(0, 120))
        """;

    /// <summary>What of a page lies outside of a window of that width.</summary>
    public static async Task<IEnumerable<string>> Outside(string name, Visit visit, int width)
    {
        var wide = await visit.Number("document.scrollingElement.scrollWidth");
        return wide <= width
            ? [] : [$"{name} is {wide} wide: {string.Join(" | ", await visit.Page.EvaluateAsync<string[]>(Beyond, width))}"];
    }

    /// <summary>What of a page's text is cut off.</summary>
    public static async Task<IEnumerable<string>> CutOff(string name, Visit visit) =>
        (await visit.Lines(Clipped)).Select(told => $"{name}: {told}");
}
