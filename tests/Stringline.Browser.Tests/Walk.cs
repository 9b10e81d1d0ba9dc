namespace Stringline.Browser.Tests;

/// <summary>
/// One walk over every page, which the tests that judge all pages share: each page is loaded once, judged on a desk's screen, and then in
/// the windows of a zoomed screen and of a phone, as a person zooms a page that is open.
/// </summary>
internal sealed class Walk
{
    /// <summary>Width and height of a desk's screen.</summary>
    public static readonly (int Width, int Height) Screen = (1280, 800);

    // Of WCAG 2.2: a screen of 1280 by 800 at 200 % (1.4.4) and at 400 % (1.4.10), in CSS pixels, with the device pixels to each.
    private static readonly (int Width, int Height, int Scale)[] Zoomed = [(640, 400, 2), (320, 256, 4)];

    private readonly List<string> days = [];

    private Walk()
    {
    }

    /// <summary>The rules of WCAG that axe found broken.</summary>
    public List<string> Broken { get; } = [];

    /// <summary>What a page says and should say otherwise.</summary>
    public List<string> Words { get; } = [];

    /// <summary>How many days the pages name.</summary>
    public int Days => days.Count;

    /// <summary>What lies outside of a zoomed window, or is cut off in it.</summary>
    public List<string> CutOff { get; } = [];

    /// <summary>What is too wide for a phone, or too small for a finger.</summary>
    public List<string> TooWide { get; } = [];

    /// <summary>Pictures that are larger than the guide takes.</summary>
    public List<string> Heavy { get; } = [];

    /// <summary>How many pages were looked at.</summary>
    public int Pages { get; private set; }

    /// <summary>Walks over every page.</summary>
    public static async Task<Walk> Over(Chromium chromium)
    {
        var walk = new Walk();
        var visits = new Dictionary<Office, Visit>();
        try
        {
            foreach (var page in EveryPage.All)
            {
                if (!visits.TryGetValue(page.Office, out var visit))
                    visits[page.Office] = visit = await chromium.Visit(page.Office);
                await page.Show(visit);
                await walk.Look(page, visit);
                walk.Pages++;
            }
        }
        finally
        {
            foreach (var visit in visits.Values)
                await visit.DisposeAsync();
        }

        return walk;
    }

    private async Task Look(EveryPage page, Visit visit)
    {
        Words.AddRange(await WordsTests.WrongOn(page, visit, days));
        Broken.AddRange((await AccessibilityTests.BrokenOn(visit)).Select(rule => $"{page.Name}: {rule}"));
        Heavy.AddRange(await GuideTests.Picture(page.Name, page.OnPhoneToo, visit));
        foreach (var (width, height, scale) in Zoomed)
        {
            await Resize(visit, width, height, scale);
            CutOff.AddRange([.. await Fit.Outside(page.Name, visit, width), .. await Fit.CutOff(page.Name, visit)]);
        }

        await Resize(visit, PhoneTests.Width, PhoneTests.Height, 1);
        TooWide.AddRange([.. await Fit.Outside(page.Name, visit, PhoneTests.Width),
            .. (await visit.Lines(PhoneTests.TooSmall)).Select(told => $"{page.Name}: {told}")]);
        if (page.OnPhoneToo)
            Heavy.AddRange(await GuideTests.Picture("phone-" + page.Name, true, visit));
        await Resize(visit, Screen.Width, Screen.Height, 1);
    }

    private static async Task Resize(Visit visit, int width, int height, int scale)
    {
        // The browser is told of the scale beside Playwright, which sets the size only.
        await visit.Page.SetViewportSizeAsync(width, height);
        await visit.Scale(width, height, scale);
        Assert.Equal(scale, await visit.Number("devicePixelRatio"));
        Assert.Equal(width, await visit.Number("innerWidth"));
    }
}
