namespace Stringline.Browser.Tests;

/// <summary>The desk's rows: each leads in one step to the page that does what the row says.</summary>
public sealed class LeadingTests(Chromium chromium)
{
    // What only a court does: the program makes no paper for it and keeps no entry of it. Its reasons are shown instead.
    private static readonly string[] InCourtAlone =
        ["Bring the action to trial", "Sue on the stop payment notice", "Sue on the payment bond", "Sue on the federal payment bond"];

    [Fact]
    public async Task Every_row_of_the_desk_leads_in_one_step_to_the_page_that_does_it()
    {
        await using var visit = await chromium.Visit();
        await visit.Go("/");
        var rows = await visit.Lines("() => [...document.querySelectorAll('.steps tbody tr')].map(row => "
            + "`${row.querySelector('.do').textContent}\\n${row.querySelector('.act a').getAttribute('href')}`)");
        Assert.True(rows.Length >= 30, $"Only {rows.Length} rows.");
        var wrong = new List<string>();
        foreach (var row in rows.Select(row => row.Split('\n')).DistinctBy(row => row[0] + Where(row[1])))
        {
            await visit.Go(row[1]);
            if (!Leads(row[0], new Uri(visit.Page.Url)))
                wrong.Add($"{row[0]}: {visit.Page.Url}");
        }

        Found.Nothing("rows that lead elsewhere", wrong);
    }

    private static string Where(string address) => address[(address.IndexOf('/', 5) + 1)..];

    // The paper itself and not the list of papers; the form of a fact; or the two choices that the law leaves after recording.
    private static bool Leads(string does, Uri page) => InCourtAlone.Contains(does)
        ? page.Fragment.StartsWith("#why-", StringComparison.Ordinal)
        : page.AbsolutePath.Contains("/papers/", StringComparison.Ordinal)
            || (page.AbsolutePath.EndsWith("/enter", StringComparison.Ordinal) && page.Query.StartsWith("?what=", StringComparison.Ordinal))
            || (page.AbsolutePath.EndsWith("/after-recording", StringComparison.Ordinal)
                && page.Fragment.StartsWith("#after-", StringComparison.Ordinal));
}
