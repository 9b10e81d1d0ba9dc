namespace Stringline.Browser.Tests;

/// <summary>
/// Every page at 200 %, as WCAG 2.2, 1.4.4 asks: a window of 1280 by 800 has 640 by 400 CSS pixels then, of two device pixels each.
/// At 400 % it has 320, as 1.4.10 asks.
/// </summary>
public sealed class ZoomTests(Chromium chromium)
{
    [Theory]
    [InlineData(640, 400, 2)]
    [InlineData(320, 256, 4)]
    public async Task Zoomed_no_page_scrolls_sideways_and_no_text_is_cut_off(int width, int height, int scale)
    {
        var wrong = new List<string>();
        await chromium.OnEveryPage(
            async (page, visit) => wrong.AddRange([.. await Fit.Outside(page.Name, visit, width), .. await Fit.CutOff(page.Name, visit)]),
            width, height, scale);
        Found.Nothing("things outside or cut off", wrong);
    }
}
