using System.Text;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Testing;
using UglyToad.PdfPig;

namespace Stringline.Cli.Tests;

/// <summary><c>stringline packet claim</c> over the real papers, read back with PdfPig.</summary>
public sealed class PacketCommandTests : IDisposable
{
    private readonly string root = Scratch.Folder();
    private readonly MemoryStream output = new();
    private readonly StringWriter errors = new();

    private static string Demo => Repository.Path("data/demo/alder-court.json");

    public void Dispose()
    {
        Directory.Delete(root, recursive: true);
        output.Dispose();
        errors.Dispose();
    }

    private const string Claim = "alder-court-building-2_claim-of-mechanics-lien_2026-06-22.pdf";

    [Fact]
    public void The_demo_packet_lies_in_its_folder_and_its_days_fee_and_preflight_are_shown_with_the_caution()
    {
        var folder = Path.Combine(root, "packet");
        Assert.Equal(CommandLine.Done, Run("packet", "claim", Demo, "--out", folder, "--as-of", "2026-06-22"));
        Assert.Equal(
            ["alder-court-building-2_claim-counter-sheet_2026-06-22.pdf", Claim],
            Directory.GetFileSystemEntries(folder).Select(Path.GetFileName).Order());
        var shown = Shown;
        Assert.StartsWith("Not legal advice.", shown, StringComparison.Ordinal);
        Assert.Contains("Act by ", shown, StringComparison.Ordinal);
        Assert.Contains("Check for the recorder, estimated: $", shown, StringComparison.Ordinal);
        Assert.Matches(@"Be ready to pay up to \$\d+\.\d\d: prices marked “ask” may be higher", shown);
        Assert.Contains("Recorder’s notice of involuntary lien (ask)", shown, StringComparison.Ordinal);
        Assert.Contains("good      claim-of-mechanics-lien.pdf: ", shown, StringComparison.Ordinal);
        Assert.DoesNotContain("NOT GOOD", shown, StringComparison.Ordinal);
        Assert.DoesNotContain("DRAFT", Words(Path.Combine(folder, Claim)), StringComparison.Ordinal);
    }

    /// <summary>Another job, or the same one changed, never takes the place of a paper in silence; the same again is no conflict.</summary>
    [Fact]
    public void A_paper_with_other_content_is_not_written_over_unless_asked()
    {
        var folder = Path.Combine(root, "packet");
        string[] asked = ["packet", "claim", Demo, "--out", folder, "--as-of", "2026-06-22"];
        Assert.Equal(CommandLine.Done, Run(asked));
        Assert.Equal(CommandLine.Done, Run(asked));
        var claim = Path.Combine(folder, Claim);
        var made = File.ReadAllBytes(claim);
        File.WriteAllText(claim, "signed and scanned");
        Assert.Equal(CommandLine.Refused, Run(asked));
        Assert.Contains($"{claim} is there already with other content.", errors.ToString(), StringComparison.Ordinal);
        Assert.Contains("--replace", errors.ToString(), StringComparison.Ordinal);
        Assert.Equal("signed and scanned", File.ReadAllText(claim));
        Assert.Equal(CommandLine.Done, Run([.. asked, "--replace"]));
        Assert.Equal(made, File.ReadAllBytes(claim));
    }

    [Fact]
    public void Two_jobs_two_days_and_a_draft_lie_side_by_side_in_one_folder()
    {
        var folder = Path.Combine(root, "packet");
        Assert.Equal(CommandLine.Done, Run("packet", "claim", Demo, "--out", folder, "--as-of", "2026-06-22"));
        Assert.Equal(CommandLine.Done, Run("packet", "claim", Demo, "--out", folder, "--as-of", "2026-06-23"));
        Assert.Equal(CommandLine.Done, Run("packet", "claim", Demo, "--out", folder, "--as-of", "2026-06-22", "--draft"));
        Assert.Equal(CommandLine.Done,
            Run("packet", "claim", Repository.Path("data/demo/juniper-lane.json"), "--out", folder, "--as-of", "2026-06-22", "--draft"));
        Assert.Equal(8, Directory.GetFiles(folder).Length);
    }

    [Fact]
    public void The_demand_on_the_paper_is_the_demand_of_the_assessment()
    {
        var folder = Path.Combine(root, "packet");
        Run("packet", "claim", Demo, "--out", folder, "--as-of", "2026-06-22");
        output.SetLength(0);
        Run("assess", Demo, "--as-of", "2026-06-22", "--json");
        var demand = System.Text.Json.JsonDocument.Parse(Shown).RootElement.GetProperty("amount").GetProperty("demand").GetDecimal();
        Assert.Contains(
            "$" + demand.ToString("N2", System.Globalization.CultureInfo.InvariantCulture),
            Words(Path.Combine(folder, Claim)),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Without_preliminary_notice_there_is_no_packet_but_a_draft_marked_on_every_page()
    {
        var job = ((JobFileResult.Read)JobFileReader.ReadFile(Demo)).Job;
        var without = Path.Combine(root, "without.json");
        File.WriteAllBytes(without,
            JobFileWriter.Write(
                job with { Entries = [.. job.Entries.Where(e => e is not NoticeGiven).Select((e, i) => e with { Index = i })] }));
        var folder = Path.Combine(root, "packet");
        Assert.Equal(CommandLine.Refused, Run("packet", "claim", without, "--out", folder, "--as-of", "2026-06-22"));
        Assert.Contains("reliminary notice", errors.ToString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder));
        Assert.Empty(Shown);

        Assert.Equal(CommandLine.Done, Run("packet", "claim", without, "--out", folder, "--as-of", "2026-06-22", "--draft"));
        foreach (var paper in Directory.GetFiles(folder))
        {
            using var pdf = PdfDocument.Open(paper);
            Assert.All(pdf.GetPages(), page =>
                Assert.Contains("DRAFT", string.Concat(page.Letters.Select(l => l.Value)), StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_refused_job_file_makes_no_packet_and_no_folder()
    {
        var folder = Path.Combine(root, "packet");
        var bad = Repository.Path("tests/Stringline.Tables.Tests/Refusals/several-at-once.json");
        Assert.Equal(CommandLine.Refused, Run("packet", "claim", bad, "--out", folder, "--as-of", "2026-06-22"));
        Assert.False(Directory.Exists(folder));
    }

    [Fact]
    public void Without_a_folder_it_is_wrong_usage() => Assert.Equal(CommandLine.WrongUsage, Run("packet", "claim", Demo));

    [Fact]
    public void A_fault_of_the_program_says_so_and_has_a_status_of_its_own()
    {
        var broken = new MemoryStream();
        broken.Dispose();
        Assert.Equal(CommandLine.OwnFault, new CommandLine(broken, errors, SystemClock.Instance).Run(["schema"]));
        Assert.StartsWith("Stringline itself failed; the job file is not to blame.", errors.ToString(), StringComparison.Ordinal);
    }

    private string Shown => Encoding.UTF8.GetString(output.ToArray());

    private int Run(params string[] args) => new CommandLine(output, errors, SystemClock.Instance).Run(args);

    private static string Words(string paper)
    {
        using var pdf = PdfDocument.Open(paper);
        return string.Join(' ', pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
    }
}
