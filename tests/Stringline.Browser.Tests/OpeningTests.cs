using Stringline.Web;

namespace Stringline.Browser.Tests;

/// <summary>
/// How a browser comes into the desk, in a real one: what it makes of strict cookies and of pages from the disk is its own.
/// </summary>
public sealed class OpeningTests(Chromium chromium)
{
    [Fact]
    public async Task The_page_on_the_disk_leads_to_the_desk_and_the_secret_stays_in_no_address()
    {
        await using var desk = await ServedDesk.Start(Chromium.Today);
        await using var context = await chromium.Stranger(desk);
        var page = await context.NewPageAsync();
        using (var opening = OpeningPage.To(desk.Entry.ToString())!)
        {
            await page.GotoAsync(new Uri(opening.Path).AbsoluteUri);
            await page.WaitForURLAsync(desk.Address.ToString());
        }

        Assert.Contains("An empty desk", await page.ContentAsync(), StringComparison.Ordinal);
        Assert.Equal("", await page.EvaluateAsync<string>("document.referrer"));
        Assert.Equal("", await page.EvaluateAsync<string>("document.cookie.match(/stringline-desk/)?.[0] ?? ''"));

        // Back leads to no address with the secret in it.
        for (var back = 0; back < 3 && await page.GoBackAsync() is not null; back++)
            Assert.DoesNotContain("/open/", page.Url, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_address_of_the_terminal_leads_to_the_desk_and_the_bare_address_does_after_it()
    {
        await using var desk = await ServedDesk.Start(Chromium.Today);
        await using var context = await chromium.Stranger(desk);
        var page = await context.NewPageAsync();
        Assert.Equal(403, (await page.GotoAsync("/"))!.Status);
        Assert.Contains("Open the whole address that the terminal shows", await page.ContentAsync(), StringComparison.Ordinal);
        Assert.Equal(200, (await page.GotoAsync(desk.Entry.ToString()))!.Status);
        Assert.Equal(desk.Address.ToString(), page.Url);
        Assert.Equal(200, (await page.GotoAsync("/calendar"))!.Status);
    }

    [Fact]
    public async Task A_link_from_elsewhere_asks_once_and_leads_on()
    {
        await using var desk = await ServedDesk.Start(Chromium.Today);
        await using var elsewhere = await ServedDesk.Start(Chromium.Today);
        await using var context = await chromium.Stranger(desk);
        var page = await context.NewPageAsync();
        await page.GotoAsync(desk.Entry.ToString());

        // "localhost" is another site than 127.0.0.1.
        await page.GotoAsync($"http://localhost:{elsewhere.Address.Port}/");
        await page.EvaluateAsync($"location.href = '{desk.Address}calendar'");
        await page.GetByRole(Microsoft.Playwright.AriaRole.Link, new() { Name = "go on to the page" }).ClickAsync();
        await page.GetByRole(Microsoft.Playwright.AriaRole.Heading, new() { Name = "Calendar" }).WaitForAsync();
    }
}
