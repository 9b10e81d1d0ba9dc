using Microsoft.Playwright;
using Stringline.Testing;

namespace Stringline.Browser.Tests;

/// <summary>
/// The user guide and its pictures. The pictures are made anew where STRINGLINE_ACCEPT is 1, so that an ordinary run leaves the files alone.
/// </summary>
public sealed class GuideTests(Chromium chromium)
{
    private const int MostBytes = 150_000;

    private static readonly string Folder = Repository.Path("docs/user-guide");

    private static bool Accepts => Environment.GetEnvironmentVariable("STRINGLINE_ACCEPT") == "1";

    [Fact]
    public async Task Each_page_can_be_pictured_small_enough_for_the_guide()
    {
        var heavy = new List<string>();
        await chromium.OnEveryPage(async (page, visit) => heavy.AddRange(await Picture(page.Name, visit)));
        await using var phone = await chromium.Visit(360, 740);
        foreach (var (name, address) in new (string, string)[] { ("phone-desk", "/"), ("phone-job", "/job/11") })
        {
            await phone.Go(address);
            heavy.AddRange(await Picture(name, phone));
        }

        Found.Nothing("pictures over the size", heavy);
    }

    private static async Task<IEnumerable<string>> Picture(string name, Visit visit)
    {
        // A paper in a frame is drawn by the browser's own viewer when it comes to it.
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        var picture = SmallPng.Of(await visit.Page.ScreenshotAsync(new() { Animations = ScreenshotAnimations.Disabled, Caret = ScreenshotCaret.Hide }));
        if (Accepts)
            await File.WriteAllBytesAsync(Path.Combine(Directory.CreateDirectory(Path.Combine(Folder, "pictures")).FullName, name + ".png"), picture);
        return picture.Length <= MostBytes ? [] : [$"{name}: {picture.Length} bytes"];
    }
}
