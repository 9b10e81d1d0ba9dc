using Microsoft.Playwright;

namespace Stringline.Browser.Tests;

/// <summary>A page of the desk as the demo office shows it.</summary>
/// <param name="Name">Its name, and that of its picture in the user guide.</param>
/// <param name="Address">Its address.</param>
internal sealed record EveryPage(string Name, string Address)
{
    /// <summary>The status with which its address answers.</summary>
    public int Status { get; init; } = 200;

    /// <summary>What is done on it to come to what is looked at; null where nothing is.</summary>
    public Func<IPage, Task>? Then { get; init; }

    /// <summary>The office that it is of.</summary>
    public Office Office { get; init; }

    /// <summary>Whether the user guide shows it on a phone too.</summary>
    public bool OnPhoneToo { get; init; }

    /// <summary>
    /// The pages. In the demo office the completion of job 11 is in doubt, the claim of job 13 is recorded, and job 9 signed waivers.
    /// </summary>
    public static IReadOnlyList<EveryPage> All { get; } =
    [
        new("first-run", "/") { Office = Office.Empty },
        new("new-job", "/jobs/new"),
        new("new-job-faults", "/jobs/new") { Then = page => Press(page, "Open the job") },
        new("desk", "/") { OnPhoneToo = true },
        new("desk-of-one-county", "/?county=Yolo"),
        new("job", "/job/11") { OnPhoneToo = true },
        new("job-as-known", "/job/11?known=2026-05-20"),
        new("amount", "/job/9/amount"),
        new("enter", "/job/11/enter"),
        new("enter-delivery", "/job/11/enter?what=furnished"),
        new("enter-notice", "/job/11/enter?what=notice-given"),
        new("enter-completion", "/job/11/enter?what=completed"),
        new("enter-recorded", "/job/11/enter?what=claim-recorded"),
        new("enter-fault", "/job/11/enter?what=paid") { Then = page => Press(page, "See what it changes") },
        new("confirm", "/job/11/enter?what=paid") { Then = page => Look(page, ("Amount", "1,500.00")) },
        new("confirm-waiver", "/job/9/enter?what=waived") { Then = Waiver },
        new("correct", "/job/11/enter?supersedes=e1"),
        new("take-back", "/job/11/enter?what=withdrawn&supersedes=e1"),
        new("file", "/job/11/file"),
        new("file-parties", "/job/11/file?part=parties"),
        new("confirm-file", "/job/11/file?part=contract") { Then = page => Look(page, ("Agreed price", "99,000.00")) },
        new("prove", "/job/11/prove?entry=0"),
        new("papers", "/job/11/papers"),
        new("papers-for-a-step", "/job/11/papers?for=payment-bond.action-last-day"),
        new("paper", "/job/11/papers/claim"),
        new("paper-refused", "/job/7/papers/claim"),
        new("paper-waiver", "/job/9/papers/waiver-8138"),
        new("after-recording", "/job/13/after-recording"),
        new("after-recording-before-it", "/job/11/after-recording"),
        new("customers", "/customers"),
        new("customer", "/customer?name=Fennimore%20Framing%2C%20Inc."),
        new("calendar", "/calendar"),
        new("searches", "/searches?county=Yolo"),
        new("search", "/search?for=quince"),
        new("search-without-a-hit", "/search?for=zzzz"),
        new("import", "/import") { Office = Office.Importing },
        new("import-unclear", ImportOffice.Unclear) { Office = Office.Importing },
        new("import-columns", ImportOffice.Columns) { Office = Office.Importing, OnPhoneToo = true },
        new("import-fault", ImportOffice.Columns) { Office = Office.Importing, Then = SameColumnTwice },
        new("import-look", ImportOffice.Looked) { Office = Office.Importing, OnPhoneToo = true },
        new("import-running", ImportOffice.Running) { Office = Office.Importing },
        new("import-written", ImportOffice.Written) { Office = Office.Importing },
        new("import-broken", ImportOffice.Broken) { Office = Office.Importing },
        new("settings", "/settings"),
        new("law", "/law"),
        new("paper-to-mend", "/job/7/papers/waiver-8132"),
        new("not-found", "/job/4711") { Status = 404 },
        new("refused", "/jobs/new") { Then = WithoutItsSeal },
    ];

    /// <summary>Shows it in a window of its office.</summary>
    public async Task Show(Visit visit)
    {
        if (this == All[^1])
            visit.ExpectRefusalOf(Address);
        await visit.Go(Address, Status);
        if (Then is not null)
            await Then(visit.Page);
    }

    private static Task Press(IPage page, string button) =>
        page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).ClickAsync();

    private static async Task Look(IPage page, params (string Label, string Text)[] fields)
    {
        foreach (var (label, text) in fields)
            await page.GetByLabel(label).First.FillAsync(text);
        await Press(page, "See what it changes");
    }

    private static async Task SameColumnTwice(IPage page)
    {
        await page.GetByLabel("Sales rep").SelectOptionAsync("customer");
        await Press(page, "See what would happen");
        await page.Locator(".columns .fault").ScrollIntoViewIfNeededAsync();
    }

    private static async Task Waiver(IPage page)
    {
        await page.GetByLabel("Which form").SelectOptionAsync("8138");
        await page.GetByLabel("The check cleared on").FillAsync("2026-07-14");
        await Press(page, "See what it changes");
    }

    // A form that comes without the seal of the page that showed it is refused with 400.
    private static async Task WithoutItsSeal(IPage page)
    {
        await page.EvaluateAsync("document.querySelector('[name=__RequestVerificationToken]').remove()");
        await Press(page, "Open the job");
    }
}
