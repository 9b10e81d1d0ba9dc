using System.Net;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>
/// An unlikely entry is asked about in the preview and can be written all the same. The questions have tests of their own, over the whole
/// table.
/// </summary>
public sealed class UnlikelyEntryTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    private long Put(string key) =>
        Assert.IsType<PutOutcome.Added>(desk.Office.Add(new KeyedJob(key,
        new JobBuilder().Furnished("2026-06-01", 1_000m, "T-1").Build()))).Job;

    [Theory]
    // Independence Day 2026 is a Saturday; the offices keep it on Friday the 3rd.
    [InlineData("claim-recorded", "2026-07-03", "county recorder is closed")]
    [InlineData("release-recorded", "2026-07-12", "county recorder is closed")]
    [InlineData("completed", "2026-07-01", "before it happened")]
    [InlineData("paid", "2026-07-06", "more than the $1,000.00 ever owed")]
    public async Task What_is_unlikely_is_asked_and_can_be_written(string what, string on, string question)
    {
        var id = Put($"unlikely-{what}");
        var form = new FilledForm(desk, $"/job/{id}/enter?what={what}").With("f-when", "on").With("f-when-on", on);
        form = what switch
        {
            "paid" => form.With("f-amount", "999,999,999.99"),
            "completed" => form.With("f-by", "actual").With("f-learned", "2025-01-01"),
            _ => form,
        };
        var preview = WebUtility.HtmlDecode(await form.Look());
        Assert.Contains("Is that right?", preview, StringComparison.Ordinal);
        Assert.Contains(question, preview, StringComparison.Ordinal);
        Assert.StartsWith($"/job/{id}/enter?written=", await form.Confirm(await form.Look()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_likely_is_not_asked_about()
    {
        var id = Put("likely");
        var form = new FilledForm(desk, $"/job/{id}/enter?what=paid").With("f-when", "on").With("f-when-on", "2026-07-06").With("f-amount",
            "1,000.00");
        Assert.DoesNotContain("Is that right?", await form.Look(), StringComparison.Ordinal);
    }
}
