using Microsoft.Playwright;

namespace Stringline.Browser.Tests;

/// <summary>A table from the page into the store, with the page's script on. The counts are counted by hand in the table.</summary>
public sealed class ImportTests(Chromium chromium)
{
    // 1,200.00 + 800.50 + 415.25 + 77.10, worked out by hand.
    private const string FurnishedOnTheFirstJob = "$2,492.85";

    [Fact]
    public async Task A_table_is_given_understood_by_hand_looked_at_written_and_a_second_time_changes_nothing()
    {
        await using var desk = await ServedDesk.Start(Chromium.Today);
        await using var visit = await chromium.Visit(desk);
        var page = visit.Page;
        await visit.Go("/");
        await page.GetByRole(AriaRole.Link, new() { Name = "Import", Exact = true }).First.ClickAsync();
        await Give(page);

        // No word of the program's lists is "Left our yard": it is said by hand, and kept under a name.
        Assert.Equal("", await page.GetByLabel("Left our yard").InputValueAsync());
        Assert.Equal("invoice", await page.GetByLabel("Invoice number").InputValueAsync());
        await page.GetByLabel("Left our yard").SelectOptionAsync("furnished");
        await page.GetByLabel("Your firm").FillAsync("Quillback Lumber & Truss, Inc.");
        await page.GetByLabel("On these jobs it is").SelectOptionAsync("supplier");
        await page.GetByLabel("The customer is, where").SelectOptionAsync("subcontractor");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Name" }).FillAsync("Yard ledger");
        await Press(page, "Keep it");
        Assert.Equal("Read by “Yard ledger”, which the office keeps.", await page.InnerTextAsync("[role=status]"));
        Assert.Equal("furnished", await page.GetByLabel("Left our yard").InputValueAsync());

        // Ten lines: the headers, eight rows of which one is refused (line 6), and a total.
        var before = desk.Fingerprint();
        await Press(page, "See what would happen");
        await page.Locator("table.counts").WaitForAsync();
        Assert.Contains("2 jobs would be added, 0 jobs extended. Nothing is written yet.", await page.InnerTextAsync("main"),
            StringComparison.Ordinal);
        await Counted(page, ("New", "7"), ("Refused", "1"), ("All rows of the file", "10"));
        Assert.Equal(["6"], await page.Locator("table.refused th[scope=row]").AllInnerTextsAsync());
        Assert.Contains("forty", await page.InnerTextAsync("table.refused"), StringComparison.Ordinal);
        Assert.Equal(before, desk.Fingerprint());

        await IsWritten(desk, page);
        Assert.Contains("Written: 2 jobs added, 0 jobs extended", await page.Locator("p[role=status]").First.InnerTextAsync(),
            StringComparison.Ordinal);
        await page.GetByRole(AriaRole.Link, new() { Name = "Brick Kiln Lane, lot 4" }).ClickAsync();
        Assert.Equal("Brick Kiln Lane, lot 4: the line", await page.InnerTextAsync("h1"));
        await page.GotoAsync(page.Url + "/amount");
        Assert.Contains(FurnishedOnTheFirstJob, await page.InnerTextAsync("main"), StringComparison.Ordinal);
        desk.Assess();
        await visit.Go("/");
        Assert.True(await page.GetByRole(AriaRole.Link, new() { Name = "Ferry Landing" }).First.IsVisibleAsync());

        // The same table again: it is read as it was kept, all seven rows are there, and nothing can be written.
        var after = desk.Fingerprint();
        await visit.Go("/import");
        await Give(page);
        Assert.Equal("Read by “Yard ledger”, which the office keeps.", await page.InnerTextAsync("[role=status]"));
        await page.GetByLabel("Your firm").FillAsync("Quillback Lumber & Truss, Inc.");
        await page.GetByLabel("On these jobs it is").SelectOptionAsync("supplier");
        await Press(page, "See what would happen");
        await page.Locator("table.counts").WaitForAsync();
        Assert.Contains("There is nothing to write.", await page.InnerTextAsync("main"), StringComparison.Ordinal);
        await Counted(page, ("In the store just so: nothing to do", "7"), ("Refused", "1"), ("All rows of the file", "10"));
        Assert.Equal(0, await page.GetByRole(AriaRole.Button, new() { Name = "Write it" }).CountAsync());
        Assert.Equal(after, desk.Fingerprint());
    }

    [Fact]
    public async Task A_table_that_another_desk_is_writing_is_shown_without_the_page_asking_again_and_again()
    {
        await using var visit = await chromium.Visit(Office.Importing);
        var loads = 0;
        visit.Page.Load += (_, _) => loads++;
        await visit.Go(ImportOffice.Running);
        await Task.Delay(1500, TestContext.Current.CancellationToken);
        Assert.Equal(1, loads);
        Assert.Contains("Another desk on this store", await visit.Page.InnerTextAsync("[data-words]"), StringComparison.Ordinal);
    }

    private static async Task Give(IPage page)
    {
        await page.GetByLabel("Choose a file, or drop it here")
            .SetInputFilesAsync(new FilePayload { Name =
                "march-ledger.csv", MimeType = "text/csv", Buffer = ImportOffice.Invoices("26-9") });
        await Press(page, "Look at it");
        Assert.Equal("march-ledger.csv", await page.InnerTextAsync("h1"));
    }

    // The store is held until the page has shown, from the events, how far it is; then the page comes to the end by itself.
    private static async Task IsWritten(ServedDesk desk, IPage page)
    {
        using (desk.HoldStore())
        {
            var told = await page.RunAndWaitForResponseAsync(() =>
                Press(page, "Write it"), answer => answer.Url.EndsWith("/progress", StringComparison.Ordinal));
            Assert.StartsWith("text/event-stream", told.Headers["content-type"], StringComparison.Ordinal);
            await Assertions.Expect(page.Locator("[data-words]")).ToContainTextAsync("Step");
        }

        await page.GetByText("Written: 2 jobs added").WaitForAsync();
    }

    private static async Task Counted(IPage page, params (string What, string Rows)[] rows)
    {
        foreach (var (what, count) in rows)
            Assert.Equal(count, await page.Locator("table.counts tr")
                .Filter(new() { Has = page.GetByRole(AriaRole.Rowheader, new() { Name = what, Exact = true }) }).Locator("td")
                .InnerTextAsync());
    }

    private static Task Press(IPage page, string button) =>
        page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).ClickAsync();
}
