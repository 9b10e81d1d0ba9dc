namespace Stringline.Browser.Tests;

/// <summary>The desk's rows: each leads in one step to the page that does what the row says.</summary>
public sealed class LeadingTests(Chromium chromium)
{
    [Fact]
    public async Task Every_row_of_the_desk_leads_to_a_paper_or_to_a_form()
    {
        await using var visit = await chromium.Visit();
        await visit.Go("/");
        var rows = await visit.Lines("() => [...document.querySelectorAll('.steps tbody tr')].map(row => `${row.querySelector('.act a').getAttribute('href')} ${row.querySelector('.do').textContent}`)");
        Assert.True(rows.Length >= 30, $"Only {rows.Length} rows.");
        Found.Nothing("rows that lead elsewhere", rows.Where(row => !row.Contains("/papers/", StringComparison.Ordinal) && !row.Contains("/enter?what=", StringComparison.Ordinal)).Distinct());
    }
}
