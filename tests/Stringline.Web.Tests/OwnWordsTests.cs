using System.Net;
using System.Text.RegularExpressions;
using Stringline.Cli.Terminal;
using Stringline.Web.Html;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>
/// What somebody typed is shown whole, also where it looks like a name of a field, a finding, a day or an option of the command line.
/// </summary>
public sealed partial class OwnWordsTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    public static TheoryData<string> Names =>
    [
        "Alder Quay, LLC (acme-homes.com)",
        "Alder Quay, LLC (see claim-of-lien.last-day)",
        "Alder Quay, LLC (work.use)",
        "Alder Quay, LLC (add labor-ceased)",
        "Alder Quay, LLC work.use --through 2026-05-31",
        "Alder Quay, LLC add furnishing-ended",
        "Alder Quay, LLC {0} <b>",
    ];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task A_name_is_whole_on_every_page_and_at_the_command_line(string name)
    {
        var job = new JobBuilder().PartyWith("owner", p => p with { Name = name }).PartyWith("direct", p => p with { Name = name })
            .Party("bank", PartyCapacity.ConstructionLender, name)
            .Notice("2026-03-02", Manner.CertifiedMail, "owner", "direct", "bank")
            .Furnished("2026-03-02", 1_000m).Ended("2026-03-02").Completed("2026-05-04").Build() with { Name = name };
        var id = Assert.IsType<PutOutcome.Added>(desk.Office.Add(new KeyedJob(name, job))).Job;
        foreach (var page in (string[])["", "/amount", "/file", "/after-recording", "/papers"])
            Whole(name, WebUtility.HtmlDecode(Markup().Replace(await desk.Page($"/job/{id}{page}"), " ")));
        Assert.Contains($"Given to the owner {name}:", WebUtility.HtmlDecode(Markup().Replace(await desk.Page($"/job/{id}"), "")),
            StringComparison.Ordinal);
        Whole(name, Spaces().Replace(AssessmentText.Of(UseCases.Assess(job, OpenDesk.Today)), " "));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_name_in_a_sentence_is_no_pointer(string name)
    {
        Sentence sentence = $"Was it given to {name} on {new LocalDate(2026, 5, 4):iso}?{EntryKinds.Of<NoticeGiven>().At("mailed"):aside}";
        Assert.Equal($"Was it given to {name} on 2026-05-04? (notice-given.mailed)", sentence.ToString());
        Assert.Equal($"Was it given to {name} on 2026-05-04 (Mon)?", PlainWords.Of(sentence));
    }

    // Lines of the command line are wrapped, and a name with them.
    private static void Whole(string name, string text) =>
        Assert.DoesNotContain("Alder Quay", text.Replace(name, "", StringComparison.Ordinal), StringComparison.Ordinal);

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Markup();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
