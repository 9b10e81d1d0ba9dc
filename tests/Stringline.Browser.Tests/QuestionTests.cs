using System.Text;
using Microsoft.Playwright;

namespace Stringline.Browser.Tests;

/// <summary>
/// What is asked before it is saved: a county that its ZIP speaks against, an unlikely entry, and rows of a table that are seldom right.
/// </summary>
public sealed class QuestionTests(Chromium chromium)
{
    private static readonly LocalDate Today = new(2026, 11, 30);

    [Fact]
    public async Task A_county_is_confirmed_beside_its_field_and_an_unlikely_entry_is_asked_about_and_written()
    {
        await using var desk = await ServedDesk.Start(Today);
        await using var visit = await chromium.Visit(desk);
        var page = visit.Page;
        await visit.Go("/jobs/new");
        foreach (var (name, text) in ((string, string)[])[("Name", "Plover Yard"), ("Zip", "92101"), ("Claimant", "Marlpit Lumber Co."),
            ("Customer", "Brushline Builders Inc.")])
            await page.Locator($"[name='Form.{name}']").FillAsync(text);
        foreach (var (name, word) in ((string, string)[])[("County", "Yolo"), ("Role", "supplier"), ("CustomerIs", "direct-contractor")])
            await page.Locator($"[name='Form.{name}']").SelectOptionAsync(word);
        await Press(page, "Open the job");
        await Assertions.Expect(page.Locator("#county-doubt")).ToContainTextAsync("San Diego County by our tables, not in Yolo");
        await page.GetByRole(AriaRole.Checkbox, new() { Name = "Yes, the site is in Yolo County" }).CheckAsync();
        await Press(page, "Open the job");
        await Assertions.Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/job/1$"));

        // The Friday after Thanksgiving is a holiday of the courts and of the State (Code Civ. Proc. § 135; Gov. Code § 6700).
        await visit.Go("/job/1/enter?what=claim-recorded");
        await page.Locator("[name='f-when-on']").FillAsync("2026-11-27");
        await Press(page, "See what it changes");
        await Assertions.Expect(page.Locator(".asks")).ToContainTextAsync("Is that right?");
        await Assertions.Expect(page.Locator(".asks")).ToContainTextAsync("county recorder is closed");
        await Press(page, "Write it to the journal");
        await Assertions.Expect(page.Locator("[role=status]")).ToContainTextAsync("Written to the journal");
    }

    [Fact]
    public async Task A_ledger_is_imported_by_its_types_and_its_credits_are_confirmed()
    {
        await using var desk = await ServedDesk.Start(Today);
        await using var visit = await chromium.Visit(desk);
        var page = visit.Page;
        await visit.Go("/import");
        await page.GetByLabel("Choose a file, or drop it here").SetInputFilesAsync(new FilePayload
        {
            Name = "ledger.csv",
            MimeType = "text/csv",
            Buffer = Encoding.UTF8.GetBytes("""
                Job#;Project Name;Cnty;Sold To;Ord Typ;Inv #;Inv Dt;Ship Dt;Ext Amt
                J-1;Oak Ridge Apts;Fresno;Tule Fog Carpentry, Inc.;INV;88001;10/05/26;10/02/26;$4,310.55
                J-1;Oak Ridge Apts;Fresno;Tule Fog Carpentry, Inc.;INV;88003;10/25/2026;10/25/2026;($310.55)
                J-1;Oak Ridge Apts;Fresno;Tule Fog Carpentry, Inc.;PMT;CK 1187;11/15/2026;;-600.00
                """),
        });
        await Press(page, "Look at it");
        await page.GetByLabel("Your firm").FillAsync("Marlpit Lumber Co.");
        await page.GetByLabel("On these jobs it is").SelectOptionAsync("supplier");
        await page.GetByLabel("The customer is, where the table does not say").SelectOptionAsync("subcontractor");
        await Assertions.Expect(page.GetByLabel("PMT")).ToHaveValueAsync("payment");
        await Press(page, "See what would happen");
        await Assertions.Expect(page.Locator(".questions-of-import"))
            .ToContainTextAsync("1 row with negative amounts would be entered as credits.");
        await Press(page, "Write it");
        await Assertions.Expect(page.Locator("[role=alert]")).ToContainTextAsync("must be confirmed first");
        await page.GetByRole(AriaRole.Checkbox, new() { Name = "Yes, that is right" }).CheckAsync();
        await Press(page, "Write it");
        await page.GetByText("Written: 1 job added").First.WaitForAsync();

        // 4,310.55 less a credit of 310.55 and a payment of 600.00. No notice was given, and a late one reaches back 20 days
        // (Civ. Code § 8204(a)).
        await visit.Go("/job/1");
        Assert.Contains("owed $3,400.00; a notice mailed today reaches $0.00 of it, and all later deliveries",
            await page.InnerTextAsync("main"), StringComparison.Ordinal);
    }

    private static Task Press(IPage page, string button) =>
        page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).ClickAsync();
}
