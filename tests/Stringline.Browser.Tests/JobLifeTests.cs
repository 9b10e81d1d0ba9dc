using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Stringline.Browser.Tests;

/// <summary>
/// The whole life of a job through the pages alone, from an empty office to the release. Each expected day is worked out here from the
/// statute that is named beside it, with NodaTime's calendar; no answer of the program goes into it.
/// </summary>
public sealed class JobLifeTests(Chromium chromium)
{
    private static readonly LocalDate FirstDelivery = new(2026, 3, 2);
    private static readonly LocalDate LastDelivery = new(2026, 5, 8);
    private static readonly LocalDate Recorded = new(2026, 7, 1);
    private static readonly LocalDate CreditEnds = new(2026, 12, 31);

    // 8,000.00 and 9,250.50 furnished, nothing paid.
    private const string Demand = "$17,250.50";

    // The least of a PNG that a reader takes for one: its signature, a head and an end (ISO/IEC 15948).
    private static readonly FilePayload Receipt = new()
    {
        Name = "receipt.png",
        MimeType = "image/png",
        Buffer = Convert.FromBase64String(
            "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=="),
    };

    [Fact]
    public async Task A_job_lives_from_an_empty_office_to_its_release_in_the_browser_alone()
    {
        await using var desk = await ServedDesk.Start(FirstDelivery);
        await using var visit = await chromium.Visit(desk);
        await OpensTheFirstJob(visit);
        await NamesTheDirectContractor(visit);

        // Civ. Code § 8204(a): not later than 20 days after first furnishing, 22 March, a Sunday. To plan on: the Friday before.
        await Stands(visit, "Preliminary notice", "open", Before(FirstDelivery.PlusDays(20)));

        desk.Clock.Day = new(2026, 3, 6);
        await GivesThePreliminaryNotice(visit);
        await Stands(visit, "Preliminary notice", "kept", Before(FirstDelivery.PlusDays(20)));

        desk.Clock.Day = LastDelivery;
        await TheSecondDeliveryIsImported(visit);
        await Enters(visit, "furnishing-ended", page => On(page, LastDelivery));

        desk.Clock.Day = new(2026, 6, 3);
        await CompletionComesInDoubt(visit);
        await TheDoubtIsNarrowed(visit);

        desk.Clock.Day = new(2026, 6, 29);
        await TheClaimIsMade(visit);
        desk.Clock.Day = Recorded;
        await TheClaimIsRecorded(visit);
        desk.Clock.Day = new(2026, 8, 3);
        await CreditIsGiven(visit);
        desk.Clock.Day = new(2027, 1, 20);
        await ItIsPaidAndReleased(visit);
    }

    private static async Task OpensTheFirstJob(Visit visit)
    {
        await visit.Go("/");
        var page = visit.Page;
        Assert.Equal("An empty desk", await page.InnerTextAsync("h1"));
        await Follow(page, "Start the first job");
        await Fill(
            page,
            ("Name of the job", "Alder Court, building 2"), ("Street of the site", "12 Plumbline Lane"), ("City", "Woodland"),
                ("ZIP", "95695"),
            ("Your firm", "Quillback Lumber & Truss, Inc."), ("The owner, if it is another", "Alder Court Partners, LP"),
                ("Agreed price", "24,000.00"));
        await page.GetByLabel("Who signs for you").FillAsync("Marisol Quint");
        await page.Locator("[name='Form.Customer']").FillAsync("Fennimore Framing, Inc.");
        await Choose(page, ("County in which the site lies", "Yolo"), ("On this job you are", "supplier"),
            ("On this job it is", "subcontractor"));
        await page.GetByLabel("The day you first furnished anything").FillAsync("2026-03-02");
        await Press(page, "Open the job");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("/job/1$"));

        // The delivery has no price yet: it is corrected from the journal.
        await page.GetByRole(AriaRole.Link, new() { Name = "correct", Exact = true }).ClickAsync();
        await Fill(page, ("Price", "8,000.00"));
        await Write(page);
    }

    private static async Task NamesTheDirectContractor(Visit visit)
    {
        await visit.Go("/job/1");
        var page = visit.Page;
        Assert.Contains("Due to the direct contractor; the file shows none given.", await page.InnerTextAsync("main"),
            StringComparison.Ordinal);
        await Follow(page, "The file");
        await Follow(page, "Change parties");
        await Party(page, 2, "Alder Court Partners, LP", "owner", "12 Plumbline Lane\nWoodland, CA 95695");
        await Party(page, 3, "Marrow & Pike Builders, Inc.", "direct-contractor", "318 Plumb Street\nSacramento, CA 95818");
        await Write(page);
    }

    private static async Task GivesThePreliminaryNotice(Visit visit)
    {
        await visit.Go("/job/1/enter?what=notice-given");
        var page = visit.Page;
        await Choose(page, ("Which notice", "preliminary"), ("How", "certified-mail"));
        foreach (var name in (string[])["Alder Court Partners, LP", "Marrow & Pike Builders, Inc."])
            await page.GetByRole(AriaRole.Checkbox, new() { Name = name }).CheckAsync();
        await page.Locator("[name='f-article.p2']").FillAsync("9407 1118 9876 5430 0001 06");

        // Publication 97 of the Postal Service: the last digit is a check digit, modulo 10. One mistyped digit is said beside its field.
        await page.Locator("[name='f-article.p3']").FillAsync("9407 1118 9876 5430 0001 07");
        await Press(page, "See what it changes");
        await Assertions.Expect(page.Locator("[id='fault-article.p3']")).ToContainTextAsync("A digit is mistyped");
        await page.Locator("[name='f-article.p3']").FillAsync("9407 1118 9876 5430 0002 05");
        await page.Locator("#f-proof").SetInputFilesAsync(Receipt);
        await Write(page);

        // Each mailing is an entry with its own number.
        Assert.Equal(2, await page.Locator("[role=status] a[href*='#entry-']").CountAsync());
        await visit.Go("/job/1");
        Assert.Equal(2, await page.Locator(".journal").GetByRole(AriaRole.Link, new() { Name = Receipt.Name }).CountAsync());
    }

    // As the accounting system gives it: the number of the job, which the search shows, and one row an invoice.
    private static async Task TheSecondDeliveryIsImported(Visit visit)
    {
        var page = visit.Page;
        await visit.Go("/search?for=alder");
        var number = await page.Locator(".hits .quiet").First.InnerTextAsync();
        await visit.Go("/import");
        await page.GetByLabel("Choose a file, or drop it here").SetInputFilesAsync(new FilePayload
        {
            Name = "may-ledger.csv",
            MimeType = "text/csv",
            Buffer = System.Text.Encoding.UTF8
                .GetBytes($"Job number,Invoice number,Date furnished,Invoice amount\r\n{number},INV-2,05/08/2026,\"$9,250.50\"\r\n"),
        });
        await Press(page, "Look at it");
        await page.GetByLabel("Your firm").FillAsync("Quillback Lumber & Truss, Inc.");
        await page.GetByLabel("On these jobs it is").SelectOptionAsync("supplier");
        await Press(page, "See what would happen");
        await page.Locator("table.counts").WaitForAsync();
        Assert.Contains("0 jobs would be added, 1 job extended", await page.InnerTextAsync("main"), StringComparison.Ordinal);
        await Press(page, "Write it");
        await page.GetByText("Written: 0 jobs added, 1 job extended").First.WaitForAsync();
    }

    private static async Task CompletionComesInDoubt(Visit visit)
    {
        await Enters(visit, "completed", async page =>
        {
            await On(page, new(2026, 5, 15));
            await Choose(page, ("How it was completed", "occupation"));
            await page.GetByRole(AriaRole.Checkbox, new() { Name = "Somebody disputes it" }).CheckAsync();
        });
        await Enters(visit, "completed", async page =>
        {
            await page.GetByLabel("The first day it can have been").FillAsync("2026-05-25");
            await page.GetByLabel("The last day it can have been").FillAsync("2026-06-01");
            await Choose(page, ("How it was completed", "actual"));
        });

        // Civ. Code § 8414(b)(1): 90 days after completion, for the earliest and for the latest day that completion can have been.
        var (earliest, latest) = (new LocalDate(2026, 5, 15).PlusDays(90), new LocalDate(2026, 6, 1).PlusDays(90));
        await Stands(visit, "Completion of the work", "in doubt", null);
        await Stands(visit, "Claim of lien: last day to record", "open", Before(earliest), $"{Said(earliest)} to {Said(latest)}");
        Assert.True(await visit.Page.Locator(".line .band").CountAsync() > 0, "No band is drawn.");
        Assert.Contains(Demand, await visit.Page.InnerTextAsync(".next"), StringComparison.Ordinal);
    }

    private static async Task TheDoubtIsNarrowed(Visit visit)
    {
        // Civ. Code § 8180(a)(2): occupation completes only together with cessation of labor. Labor ceased on 28 May: not on 15 May.
        var page = visit.Page;
        await visit.Go("/job/1");
        await page.Locator(".questions").GetByRole(AriaRole.Link, new() { Name = "Labor on the whole work stopped" }).ClickAsync();
        await On(page, new(2026, 5, 28));
        await Press(page, "See what it changes");
        var (earliest, latest) = (new LocalDate(2026, 5, 25).PlusDays(90), new LocalDate(2026, 6, 1).PlusDays(90));
        Assert.Contains($"{Said(earliest)} to {Said(latest)}", await page.InnerTextAsync(".changes"), StringComparison.Ordinal);
        await Press(page, "Write it to the journal");

        // 23 August is a Sunday: the Friday before.
        await Stands(visit, "Claim of lien: last day to record", "open", Before(earliest), $"{Said(earliest)} to {Said(latest)}");
    }

    private static async Task TheClaimIsMade(Visit visit)
    {
        var page = visit.Page;
        await visit.Go("/");
        await visit.Go("/job/1");
        await page.GetByRole(AriaRole.Link, new() { Name = "Make the paper: Record the claim of lien" }).ClickAsync();
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("/job/1/papers/claim$"));

        // Civ. Code § 8416(a)(3), (6): the kind of work and the claimant's address are not in the file yet; the paper is refused and says
        // where.
        Assert.Contains("Civ. Code § 8416(a)(6)", await page.InnerTextAsync(".missing"), StringComparison.Ordinal);
        await Follow(page, "Mend the file");
        await Fill(page, ("Address", "875 Millrace Road\nWest Sacramento, CA 95691"));
        await Write(page);
        await visit.Go("/job/1/papers/claim");
        await Follow(page, "Mend the file");
        await Fill(page, ("General description of the work", "Framing lumber and roof trusses"));
        await Write(page);

        await visit.Go("/job/1/papers/claim");
        Assert.Contains("What it does: Recorded, it burdens the owner's property", await page.InnerTextAsync("#effect"),
            StringComparison.Ordinal);
        var made = await page.InnerTextAsync(".files");
        Assert.Matches(@"All \d+ checks passed", made);
        Assert.DoesNotContain("did not pass", made, StringComparison.Ordinal);
        Assert.Contains("Yolo County", await page.InnerTextAsync("main"), StringComparison.Ordinal);
        var saved = await page.RunAndWaitForDownloadAsync(() =>
            page.GetByRole(AriaRole.Link, new() { Name = "Save Claim of Mechanics Lien" }).ClickAsync());
        using var claim = PdfDocument.Open(await saved.PathAsync());
        var words = string.Join(' ', claim.GetPages().SelectMany(sheet => sheet.GetWords()).Select(word => word.Text));
        Assert.Contains("17,250.50", words, StringComparison.Ordinal);
        Assert.Contains("Alder Court Partners, LP", words, StringComparison.Ordinal);

        // The form knows from the paper to whom the copy goes and how.
        await page.GetByRole(AriaRole.Link, new() { Name = "The copy was mailed to the owner" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Checkbox, new() { Name = "Alder Court Partners, LP" })).ToBeCheckedAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Combobox, new() { Name = "How" }).First).ToHaveValueAsync("certified-mail");
        await page.Locator("[name='f-article.p2']").FillAsync("9407 1118 9876 5430 0003 04");
        await Write(page);
    }

    private static async Task TheClaimIsRecorded(Visit visit)
    {
        await Enters(visit, "claim-recorded", async page =>
        {
            await Fill(page, ("The demand it states", "17,250.50"), ("Instrument number", "2026-0031415"));
            await page.Locator("#f-proof").SetInputFilesAsync(Receipt);
        });

        // Civ. Code § 8460(a): 90 days after recording, 29 September, a Tuesday and no holiday.
        await Stands(visit, "Claim of lien: last day to record", "kept", null);
        await Stands(visit, "Action to enforce the lien", "open", Recorded.PlusDays(90));
        await Follow(visit.Page, "After recording");
        var page = await visit.Page.InnerTextAsync("main");
        Assert.Contains($"Recorded {Said(Recorded)}, instrument 2026-0031415, for {Demand}", page, StringComparison.Ordinal);

        // Civ. Code § 8424(b): the bond is 125 percent of the claim: 21,563.125, up to the next cent.
        await Stands(visit, "Bond that would free the land", "open", null, "$21,563.13");
    }

    private static async Task CreditIsGiven(Visit visit)
    {
        await Enters(visit, "credit-recorded", async page =>
        {
            await page.GetByLabel("The credit ends on").FillAsync("2026-12-31");
            await Fill(page, ("Instrument number", "2026-0036201"));
        });

        // Civ. Code § 8460(b): 90 days after the credit expires, 31 March 2027, and not past a year after completion. 31 March is a holiday
        // of the state and of the courts (Gov. Code § 6700; Code Civ. Proc. § 135): to plan on, the Tuesday before.
        var last = CreditEnds.PlusDays(90);
        Assert.Equal(new LocalDate(2027, 3, 31), last);
        await Stands(visit, "Action after credit", "open", last.PlusDays(-1), Said(last));
    }

    private static async Task ItIsPaidAndReleased(Visit visit)
    {
        var page = visit.Page;
        await Enters(visit, "paid", form => Fill(form, ("Amount", "17,250.50")));
        await visit.Go("/job/1/amount");
        Assert.Contains("$0.00", await page.InnerTextAsync(".demand"), StringComparison.Ordinal);

        // Civ. Code § 8482: the owner must give ten days' notice before it petitions. The release is a step until it is recorded.
        await visit.Go("/");
        Assert.Contains("Record the release of the claim", await page.InnerTextAsync("main"), StringComparison.Ordinal);
        await visit.Go("/job/1");
        Assert.Contains(Said(new LocalDate(2027, 1, 29)), await page.InnerTextAsync("section[aria-labelledby=s-next]"),
            StringComparison.Ordinal);
        await visit.Go("/job/1/papers/release");
        Assert.Contains("it gives up the claim of lien", await page.InnerTextAsync("#effect"), StringComparison.Ordinal);
        await Enters(visit, "release-recorded", async form =>
        {
            await form.GetByRole(AriaRole.Group, new() { Name = "Does it say that the debt is satisfied?" }).GetByLabel("yes").CheckAsync();
            await Fill(form, ("Instrument number", "2027-0001021"));
        });
        await Stands(visit, "Mechanics lien", "done", null);
        Assert.Contains("Nothing now.", await page.InnerTextAsync("section[aria-labelledby=s-next]"), StringComparison.Ordinal);
    }

    // The row of a right on the job's page: its standing, the day to act by with its weekday, and what else it says.
    private static async Task Stands(Visit visit, string right, string standing, LocalDate? actBy, string more = "")
    {
        await visit.Go("/job/1");
        var row = visit.Page.Locator(".rights tr")
            .Filter(new() { Has = visit.Page.GetByRole(AriaRole.Link, new() { Name = right, Exact = true }) });
        var cells = await row.Locator("td").AllInnerTextsAsync();
        Assert.Equal(standing, cells[1]);
        if (actBy is { } day)
            Assert.Equal(Said(day), cells[2]);
        Assert.Contains(more, cells[3], StringComparison.Ordinal);
    }

    // A day is planned on a weekday: no roll is relied on (Code Civ. Proc. §§ 12-12c would roll forward).
    private static LocalDate Before(LocalDate day) => day.DayOfWeek switch
    {
        IsoDayOfWeek.Saturday => day.PlusDays(-1),
        IsoDayOfWeek.Sunday => day.PlusDays(-2),
        _ => day,
    };

    private static string Said(LocalDate day) => day.ToString("yyyy-MM-dd (ddd)", CultureInfo.InvariantCulture);

    private static async Task Enters(Visit visit, string what, Func<IPage, Task> fill)
    {
        await visit.Go($"/job/1/enter?what={what}");
        await fill(visit.Page);
        await Write(visit.Page);
        Assert.StartsWith("Written to the journal", await visit.Page.InnerTextAsync("[role=status]"), StringComparison.Ordinal);
    }

    private static async Task Write(IPage page)
    {
        await Press(page, "See what it changes");
        Assert.Equal("Before it is written", await page.InnerTextAsync("h1"));
        await Press(page, "Write it to the journal");
    }

    private static Task On(IPage page, LocalDate day) =>
        page.Locator("[name=f-when-on]").FillAsync(day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    private static async Task Fill(IPage page, params (string Label, string Text)[] fields)
    {
        foreach (var (label, text) in fields)
            await page.GetByRole(AriaRole.Textbox, new() { Name = label }).First.FillAsync(text);
    }

    private static async Task Choose(IPage page, params (string Label, string Word)[] fields)
    {
        foreach (var (label, word) in fields)
            await page.GetByRole(AriaRole.Combobox, new() { Name = label }).First.SelectOptionAsync(word);
    }

    private static async Task Party(IPage page, int number, string name, string capacity, string address)
    {
        var party = page.GetByRole(AriaRole.Group, new() { Name = $"Party {number}" });
        await party.GetByRole(AriaRole.Textbox, new() { Name = "Full name" }).FillAsync(name);
        await party.GetByRole(AriaRole.Combobox, new() { Name = "Is the" }).SelectOptionAsync(capacity);
        await party.GetByRole(AriaRole.Textbox, new() { Name = "Address" }).FillAsync(address);
    }

    private static Task Follow(IPage page, string link) =>
        page.GetByRole(AriaRole.Link, new() { Name = link, Exact = true }).First.ClickAsync();

    private static Task Press(IPage page, string button) =>
        page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).ClickAsync();
}
