using System.Text.RegularExpressions;
using Stringline.Office.Settings;

namespace Stringline.Web.Tests;

/// <summary>What the pages offer of what the office has set, and what they say at the ends of a band.</summary>
public sealed class OfferedTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    [Fact]
    public async Task Who_signs_for_the_office_is_offered_for_a_new_job_and_in_the_file()
    {
        desk.Office.ChangeSettings(settings => settings with { Signers = [new OfficeSigner("Rosalind Achterberg", "Credit manager")] });
        Assert.Matches("<datalist id=\"signers\">\\s*<option value=\"Rosalind Achterberg\">Credit manager</option>",
            await desk.Page("/jobs/new"));
        var file = await desk.Page("/job/1/file?part=claimant");
        Assert.Contains("<option value=\"Rosalind Achterberg\">", file, StringComparison.Ordinal);
        Assert.Contains("<option value=\"Credit manager\">", file, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wide_band_names_the_readings_at_both_its_ends()
    {
        // Which ends a band has comes from the law library's readings, the earliest and the latest by day.
        var seen = 0;
        for (var id = 1; id <= 40; id++)
        {
            // The page says the weekday of a day within a reading's name too.
            var page = Regex.Replace(System.Net.WebUtility.HtmlDecode(await desk.Page($"/job/{id}")),
                @"(\d{4}-\d{2}-\d{2})[\s\u00a0]\((Mon|Tue|Wed|Thu|Fri|Sat|Sun)\)", "$1");
            foreach (var finding in desk.Office.Open(id)!.Assessment.Findings.Where(finding => finding.Band?.Latest is not null
                && finding.Readings.Select(reading => reading.Day).Distinct().Count() > 1))
            {
                var byDay = finding.Readings.OrderBy(reading => reading.Day).ToList();
                Assert.Contains(finding.Readings.Where(reading => reading.Day == byDay[0].Day), reading =>
                    page.Contains($"from the reading “{reading.Name}” to “", StringComparison.Ordinal));
                Assert.Contains(finding.Readings.Where(reading => reading.Day == byDay[^1].Day), reading =>
                    page.Contains($"” to “{reading.Name}”", StringComparison.Ordinal));
                seen++;
            }
        }

        Assert.True(seen > 10);
    }
}
