namespace Stringline.Browser.Tests;

/// <summary>
/// Every page at 200 %, as WCAG 2.2, 1.4.4 asks: a window of 1280 by 800 has 640 by 400 CSS pixels then, of two device pixels each.
/// At 400 % it has 320, as 1.4.10 asks.
/// </summary>
public sealed class ZoomTests(Chromium chromium)
{
    [Fact]
    public async Task Zoomed_no_page_scrolls_sideways_and_no_text_is_cut_off() =>
        Found.Nothing("things outside or cut off", (await chromium.Walked()).CutOff);
}
