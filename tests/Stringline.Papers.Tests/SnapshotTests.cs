using System.Runtime.CompilerServices;
using Stringline.Papers.Preflight;

namespace Stringline.Papers.Tests;

/// <summary>
/// The words of whole papers as a second library reads them, line by line: a change of wording shows as a change of these files.
/// To take a new wording on purpose, run with STRINGLINE_ACCEPT=1 and read the difference.
/// </summary>
public sealed class SnapshotTests
{
    [Fact]
    public void Claim_not_yet_served() => Same("claim-not-served", Kept.Packet("snapshot", Jobs.Demo()).Claim());

    [Fact]
    public void Claim_served() => Same("claim-served", Kept.Packet("snapshot-served", Jobs.Served()).Claim());

    [Fact]
    public void Counter_sheet_not_yet_served() => Same("counter-sheet-not-served", Kept.Packet("snapshot-sheet", Jobs.Demo()).Sheet());

    [Fact]
    public void Preflight_report() => Same("preflight", string.Join("\n", Kept.Packet("snapshot-preflight", Jobs.Demo()).Preflight) + "\n");

    public static TheoryData<string> Papers() => [.. Catalogue.PaperCatalogue.All.Select(p => p.Id).Where(id => id != "claim")];

    /// <summary>Counter sheets are left out: most of their words are the recorder's prices, which have tests of their own.</summary>
    [Theory]
    [MemberData(nameof(Papers))]
    public void Paper_of_the_catalogue(string id) =>
        Same(id, string.Concat(PaperJobs.Make(id).Files.Where(f => f.Name != "counter-sheet.pdf")
            .Select(f => $"=== {f.Name}\n{Pages(ReadBack.Of(f.Bytes))}")));

    private static void Same(string name, ReadBack read) => Same(name, Pages(read));

    private static string Pages(ReadBack read) => string.Concat(read.Pages.Select(p =>
        $"--- page {p.Number}\n{string.Concat(p.Lines.Select(l => string.Join(' ', l.Select(w => w.Text)) + "\n"))}"));

    private static void Same(string name, string text, [CallerFilePath] string here = "")
    {
        var file = Path.Combine(Path.GetDirectoryName(here)!, "Snapshots", name + ".txt");
        if (Environment.GetEnvironmentVariable("STRINGLINE_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, text);
        }

        Assert.Equal(File.ReadAllText(file), text);
    }
}
