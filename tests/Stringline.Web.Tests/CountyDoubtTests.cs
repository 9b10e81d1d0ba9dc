using System.Net;
using Stringline.Office.Entering;
using Stringline.Store;

namespace Stringline.Web.Tests;

/// <summary>
/// Where county and ZIP disagree it is asked at the field and confirmed there. ZIP 92101 is San Diego's by the post office's own tables.
/// </summary>
public sealed class CountyDoubtTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    private static readonly (string Name, string Value)[] Job =
    [
        ("Form.Name", "Doubtful Court"), ("Form.Kind", "private"), ("Form.Zip", "92101"), ("Form.County", "Yolo"),
            ("Form.Claimant", "Marlpit Lumber Co."),
        ("Form.Role", "supplier"), ("Form.Customer", "Brushline Builders Inc."), ("Form.CustomerIs", "direct-contractor"),
    ];

    private async Task<(HttpStatusCode Status, string Page)> Post(params IEnumerable<(string Name, string Value)> more)
    {
        var hidden = FilledForm.Hidden(await desk.Page("/jobs/new"));
        using var content = new FormUrlEncodedContent([.. hidden,
            .. Job.Concat(more).Select(field => new KeyValuePair<string, string>(field.Name, field.Value))]);
        using var answer = await desk.Browser.PostAsync(new Uri("/jobs/new", UriKind.Relative), content,
            TestContext.Current.CancellationToken);
        return (answer.StatusCode, WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)));
    }

    [Fact]
    public async Task A_new_job_asks_about_its_county_and_takes_the_answer()
    {
        var jobs = desk.Journal.CountJobs();
        var (status, page) = await Post();
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Contains("ZIP 92101 is in San Diego County by our tables, not in Yolo. The county decides the recorder. Is that right?",
            page, StringComparison.Ordinal);
        Assert.DoesNotContain("checked", page[page.IndexOf("county-doubt", StringComparison.Ordinal)..], StringComparison.Ordinal);
        Assert.Equal(jobs, desk.Journal.CountJobs());
        var (other, _) = await Post(("f-county-confirmed", "Yolo|92102|"));
        Assert.Equal(HttpStatusCode.OK, other);
        var (written, _) = await Post(("f-county-confirmed", "Yolo|92101|"));
        Assert.Equal(HttpStatusCode.Redirect, written);
        Assert.Equal(jobs + 1, desk.Journal.CountJobs());
    }

    [Fact]
    public async Task The_file_asks_at_the_field_and_keeps_the_answer_through_the_preview()
    {
        var job = DraftTests.Owed();
        var id = Assert.IsType<PutOutcome.Added>(desk.Office.Add(new KeyedJob("county-in-file", job))).Job;
        FilledForm Form() => new FilledForm(desk, $"/job/{id}/file?part=site").With("f-name", job.Name).With("f-work.kind", "private")
            .With("f-work.site.county", "Yolo").With("f-work.site.zip", "92101");
        var asked = await Form().Look();
        Assert.Contains("ZIP 92101 is in San Diego County by our tables", asked, StringComparison.Ordinal);
        Assert.True(asked.IndexOf("county-doubt", StringComparison.Ordinal) < asked.IndexOf("work.site.alsoIn", StringComparison.Ordinal));
        var confirmed = Form().With("f-county-confirmed", "Yolo|92101|");
        await confirmed.Confirm(await confirmed.Look());
        Assert.Equal("92101", desk.Office.Open(id)!.Facts.Work.Site.Zip);
    }

    [Theory]
    [InlineData("Yolo", "95616", null)]
    [InlineData("Yolo", null, null)]
    [InlineData("San Diego", "92101", null)]
    public void What_goes_together_is_not_asked_about(string county, string? zip, string? question) =>
        Assert.Equal(question, CountyDoubt.Of(new() { County = county, Zip = zip })?.Question);
}
