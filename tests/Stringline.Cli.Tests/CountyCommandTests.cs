using System.Text;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Testing;
using UglyToad.PdfPig;

namespace Stringline.Cli.Tests;

/// <summary>The county is asked about on every screen and on the sheet; and a county's own closing days move its plan.</summary>
public sealed class CountyCommandTests : IDisposable
{
    private readonly string root = Scratch.Folder();
    private readonly MemoryStream output = new();
    private readonly StringWriter errors = new();

    public void Dispose()
    {
        Directory.Delete(root, recursive: true);
        output.Dispose();
        errors.Dispose();
    }

    /// <summary>94303: GeoNames says San Mateo, the Census Bureau's point lies in Santa Clara (data/zip-straddlers.csv).</summary>
    [Fact]
    public void A_straddling_ZIP_is_a_question_in_text_in_JSON_and_on_the_counter_sheet()
    {
        const string question = "Which county does the site lie in: San Mateo or Santa Clara?";
        var job = At("Santa Clara", "94303", "Palo Alto");
        Assert.Contains(question, Assess(job), StringComparison.Ordinal);
        Assert.Contains("\"site.county\"", Assess(job, "--json"), StringComparison.Ordinal);
        Assert.Contains("ZIP 94303 lies in San Mateo and Santa Clara County", Sheet(job), StringComparison.Ordinal);
    }

    [Fact]
    public void A_county_that_does_not_fit_is_a_question_and_the_file_s_county_stays()
    {
        var job = At("Solano", "95695", "Woodland");
        Assert.Contains("The file says Solano County, but ZIP 95695 lies in Yolo County", Sheet(job), StringComparison.Ordinal);
        Assert.Contains("County Recorder, Solano County", Sheet(job), StringComparison.Ordinal);
    }

    [Fact]
    public void A_county_that_fits_is_not_asked_about()
    {
        var job = At("Yolo", "95695", "Woodland");
        Assert.DoesNotContain("site.county", Assess(job, "--json"), StringComparison.Ordinal);
        Assert.DoesNotContain("Be sure of the county", Sheet(job), StringComparison.Ordinal);
    }

    [Fact]
    public void A_county_of_which_nothing_was_read_says_to_call()
    {
        var sheet = Sheet(At("Glenn", "95988", "Willows"));
        Assert.Contains("Nothing published by this office was found. Call it before you go.", sheet, StringComparison.Ordinal);
        Assert.Contains("not verified", sheet, StringComparison.Ordinal);
    }

    /// <summary>
    /// Worked by hand: completion on December 30, 2025 puts the 90th day on March 30, 2026, a Monday, on which Los Angeles County may keep
    /// 31 March (data/county-closings.csv): there the act-by day is Friday the 27th (Code Civ. Proc. § 12b; Civ. Code § 8414(b)(1)).
    /// </summary>
    [Theory]
    [InlineData("Yolo", "95695", "2026-03-30")]
    [InlineData("Los Angeles", "90012", "2026-03-27")]
    public void The_plan_goes_over_the_county_s_office_days(string county, string zip, string actBy)
    {
        // Nothing is complete before the work commences: the file's own day of that is left out.
        var at = At(county, zip, null);
        var job = at with
        {
            Work = at.Work with { Commenced = null },
            Entries =
            [
                new Furnished { Index = 0, On = DayFact.On(new(2025, 12, 1)), Until = DayFact.On(new(2025, 12, 1)), Amount = 100m },
                new FurnishingEnded { Index = 1, On = DayFact.On(new(2025, 12, 1)) },
                new Completed { Index = 2, On = DayFact.On(new(2025, 12, 30)), By = CompletionTheory.Actual },
            ],
        };
        var findings = System.Text.Json.JsonDocument.Parse(Assess(job, "--json", asOf: "2026-01-05")).RootElement.GetProperty("findings");
        Assert.Equal(actBy, findings.EnumerateArray().Single(f => f.GetProperty("id").GetString() == "claim-of-lien.last-day")
            .GetProperty("actBy").GetString());
    }

    private static JobFile At(string county, string zip, string? city)
    {
        var job = ((JobFileResult.Read)JobFileReader.ReadFile(Repository.Path("data/demo/alder-court.json"))).Job;
        return job with { Work = job.Work with { Site = job.Work.Site with { County = county, Zip = zip, City = city } } };
    }

    private string Assess(JobFile job, string? option = null, string asOf = "2026-06-22")
    {
        output.SetLength(0);
        Run(["assess", Written(job), "--as-of", asOf, .. option is null ? Array.Empty<string>() : [option]]);
        return Squeezed(Encoding.UTF8.GetString(output.ToArray()));
    }

    private string Sheet(JobFile job)
    {
        var folder = Path.Combine(root, Guid.NewGuid().ToString("N"));
        Run(["packet", "claim", Written(job), "--out", folder, "--as-of", "2026-06-22"]);
        using var pdf = PdfDocument.Open(Assert.Single(Directory.GetFiles(folder, "*counter-sheet*.pdf")));
        return string.Join(' ', pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
    }

    private string Written(JobFile job)
    {
        var file = Path.Combine(root, "job.json");
        File.WriteAllBytes(file, JobFileWriter.Write(job));
        return file;
    }

    private void Run(string[] args) =>
        Assert.True(new CommandLine(output, errors, SystemClock.Instance).Run(args) == CommandLine.Done, errors.ToString());

    private static string Squeezed(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
