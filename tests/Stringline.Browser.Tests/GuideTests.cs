using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Stringline.Testing;

namespace Stringline.Browser.Tests;

/// <summary>
/// The user guide and its pictures. The pictures are made anew where STRINGLINE_ACCEPT is 1, so that an ordinary run leaves the files
/// alone.
/// </summary>
public sealed partial class GuideTests(Chromium chromium)
{
    private const int MostBytes = 150_000;

    private static readonly string Folder = Repository.Path("docs/user-guide");

    private static bool Accepts => Environment.GetEnvironmentVariable("STRINGLINE_ACCEPT") == "1";

    [Fact]
    public async Task Each_page_can_be_pictured_small_enough_for_the_guide()
    {
        Found.Nothing("pictures over the size", (await chromium.Walked()).Heavy);
        Found.Nothing("pictures in the guide over the size", new DirectoryInfo(Path.Combine(Folder, "pictures")).GetFiles("*.png")
            .Where(file => file.Length > MostBytes).Select(file => file.Name));
    }

    [Fact]
    public async Task Every_page_of_the_desk_is_looked_at()
    {
        await using var desk = await ServedDesk.Start(Chromium.Today);
        var shown = EveryPage.All.Select(page => page.Address.Split('?')[0]).ToList();

        // The page of an error is shown in the place of the page that was asked for.
        var routes = desk.Routes.Where(route => route is not ("/Index" or "/status/{code:int}")).ToList();
        Assert.True(routes.Count >= 15);
        Found.Nothing("pages that no test looks at",
            routes.Where(route => !shown.Any(address => Regex.IsMatch(address, $"^{RouteValue().Replace(route, "[^/]+")}$"))));
    }

    [Fact]
    public void The_guide_shows_every_page_and_names_no_picture_that_is_not_there()
    {
        var guide = File.ReadAllText(Path.Combine(Folder, "README.md"));
        var named = NamedPicture().Matches(guide).Select(picture => picture.Groups[1].Value).ToList();
        var kept = new DirectoryInfo(Path.Combine(Folder, "pictures")).GetFiles("*.png").Select(file => file.Name).ToList();
        Found.Nothing("pages that the guide does not show", EveryPage.All.SelectMany(page => page.OnPhoneToo
            ? [page.Name, "phone-" + page.Name] : (string[])[page.Name]).Select(name => name + ".png").Except(named));
        Found.Nothing("pictures that are named and not there", named.Except(kept));
        Found.Nothing("pictures that are there and not named", kept.Except(named));
        Assert.Contains(Law.Assessment.Caution, guide, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"\{[^}]+\}")]
    private static partial Regex RouteValue();

    [GeneratedRegex(@"\(pictures/([a-z-]+\.png)\)")]
    private static partial Regex NamedPicture();

    /// <summary>Pictures a page, and says where the picture is too large.</summary>
    internal static async Task<IEnumerable<string>> Picture(string name, bool onPhoneToo, Visit visit)
    {
        // Those that are shown on a phone too stand for all; to make every one takes as long as all the rest.
        if (!Accepts && !onPhoneToo)
            return [];

        // A paper in a frame is drawn by the browser's own viewer when it comes to it.
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        var picture =
            SmallPng.Of(await visit.Page
                .ScreenshotAsync(new() { Animations = ScreenshotAnimations.Disabled, Caret = ScreenshotCaret.Hide }));
        if (Accepts)
            await File.WriteAllBytesAsync(Path.Combine(Directory.CreateDirectory(Path.Combine(Folder, "pictures")).FullName, name + ".png"),
                picture);
        return picture.Length <= MostBytes ? [] : [$"{name}: {picture.Length} bytes"];
    }
}
