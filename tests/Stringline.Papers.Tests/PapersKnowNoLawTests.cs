using System.Text.RegularExpressions;
using Stringline.Papers.Catalogue;
using Stringline.Testing;

namespace Stringline.Papers.Tests;

/// <summary>
/// Papers count no day and ask the law for nothing but what they were handed; and a paper is known by its id only where it is described.
/// Read from the source, since a number of days or an id leaves no trace in a type.
/// </summary>
public sealed partial class PapersKnowNoLawTests
{
    // The same word for another thing: a noun of a sentence, a file's name, the word of a kind of notice, a field, a finding's first part.
    private static readonly (string File, string Word)[] OtherThings =
    [
        ("src/Stringline.Papers/Catalogue/ProvedNotice.cs", "stop-payment-release"),
        ("src/Stringline.Papers/Catalogue/ProvedNotice.cs", "payment-demand"),
        ("src/Stringline.Papers/Catalogue/ProvedNotice.cs", "dispute-claim"),
        ("src/Stringline.Papers/Catalogue/ProvedNotice.cs", "release-affidavit"),
        ("src/Stringline.Papers/Catalogue/ProvedNotice.cs", "counteraffidavit"),
        ("src/Stringline.Papers/Catalogue/ProvedNotice.cs", "release-demand"),
        ("src/Stringline.Papers/ClaimOfLien/ClaimWarnings.cs", "claim"),
        ("src/Stringline.Papers/DesignLien/DesignLienPaper.cs", "claim"),
        ("src/Stringline.Papers/Enforcement/ReleasePaper.cs", "design-lien"),
        ("src/Stringline.Papers/StopPaymentNotice/CounteraffidavitPaper.cs", "counteraffidavit"),
        ("src/Stringline.Papers/StopPaymentNotice/StopPaymentPaper.cs", "stop-payment-notice"),
        ("src/Stringline.Office/Portfolio/Remedies.cs", "release"),
        ("src/Stringline.Office/Portfolio/Remedies.cs", "preliminary-notice"),
        ("src/Stringline.Office/Portfolio/Remedies.cs", "stop-payment-notice"),
        ("src/Stringline.Office/Portfolio/Remedies.cs", "design-lien"),
        ("src/Stringline.Office/Portfolio/Remedies.cs", "dispute-claim"),
    ];

    [Fact]
    public void No_paper_counts_a_day_or_assesses_a_job()
    {
        var found = Lines("src/Stringline.Papers").Where(line => Counting().IsMatch(line.Text))
            .Select(line => $"{line.File}: {line.Text.Trim()}");
        Assert.Empty(found);
    }

    // What a paper is and does, said in the list of papers before there is a job or a day; and an example of what a person may type.
    private static readonly (string File, string Figure)[] BeforeAnyDay =
    [
        ("ClaimOfLien/ClaimPapers.cs", "30 days"), ("ClaimOfLien/ClaimPapers.cs", "90 days"), ("ClaimOfLien/EarlierClaim.cs", "90 days"),
        ("Completion/CompletionPaper.cs", "15 days"), ("DesignLien/DesignDemandPaper.cs", "10 days"),
        ("DesignLien/DesignLienPaper.cs", "90 days"), ("Enforcement/CreditPaper.cs", "90 days"), ("Enforcement/CreditPaper.cs", "one year"),
        ("Enforcement/CreditPaper.cs", "$5,000"), ("Enforcement/LisPendensPaper.cs", "20 days"),
        ("PreliminaryNotice/PreliminaryNoticePaper.cs", "20 days"), ("PromptPayment/SecurityDemandPaper.cs", "15 percent"),
        ("PromptPayment/StopWorkPaper.cs", "35 days"), ("StopPaymentNotice/ActionNoticePaper.cs", "five days"),
        ("StopPaymentNotice/ReleaseAffidavitPaper.cs", "20 days"),
    ];

    /// <summary>A sheet or a paper takes a number of the law from the table, by the day on which it is made.</summary>
    [Fact]
    public void No_sentence_of_a_paper_holds_a_figure_of_the_law()
    {
        // LawForReaders finds sentences of the law to say them plainer; the dollar sign of a pattern is none.
        var found = Lines("src/Stringline.Papers")
            .Where(line => !line.File.EndsWith("LawForReaders.cs", StringComparison.Ordinal)
                && !line.Text.TrimStart().StartsWith("//", StringComparison.Ordinal))
            .SelectMany(line => Figure().Matches(line.Text).Select(match => (line.File["src/Stringline.Papers/".Length..], match.Value)))
            .Where(figure => figure.Value != "$1").ToHashSet();
        Assert.Empty(found.Except(BeforeAnyDay));
        Assert.Empty(BeforeAnyDay.Except(found));
    }

    [Theory]
    [InlineData("var last = day.PlusDays(15);")]
    [InlineData("var next = OpenDays.Statutory;")]
    [InlineData("Assessment.Of(job, day, calendar)")]
    [InlineData("Period.DaysBetween(from, to)")]
    public void What_counts_a_day_would_be_found(string line) => Assert.Matches(Counting(), line);

    [Fact]
    public void A_paper_is_known_by_its_id_only_where_it_is_described()
    {
        var found = KnownById().Where(known => !known.Describes).Select(known => (known.File, known.Id)).Distinct().ToHashSet();
        Assert.Empty(found.Except(OtherThings));
        Assert.Empty(OtherThings.Except(found));
    }

    [Fact]
    public void Every_paper_is_described_once()
    {
        var described = KnownById().Where(known => known.Describes).Select(known => known.Id).Order(StringComparer.Ordinal);
        Assert.Equal(PaperCatalogue.All.Select(paper => paper.Id).Order(StringComparer.Ordinal), described);
    }

    private static IEnumerable<(string File, string Id, bool Describes)> KnownById()
    {
        var ids = PaperCatalogue.All.Select(paper => paper.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var (file, text) in Lines("src/Stringline.Papers")
            .Concat(new[] { "Office", "Cli", "Web" }.SelectMany(part => Lines("src/Stringline." + part))))
        {
            foreach (var word in Word().Matches(text).Select(match => match.Groups[1].Value).Where(ids.Contains))
                yield return (file, word, Describing().Match(text).Groups[1].Value == word);
        }
    }

    private static IEnumerable<(string File, string Text)> Lines(string folder) =>
        from pattern in (string[])["*.cs", "*.cshtml"]
        from path in Directory.EnumerateFiles(Repository.Path(folder), pattern, SearchOption.AllDirectories)
        let file = Path.GetRelativePath(Repository.Path(""), path).Replace(Path.DirectorySeparatorChar, '/')
        where !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal)
        from text in File.ReadLines(path)
        select (file, text);

    [GeneratedRegex(@"(?:\b\d+|\b(?:two|three|four|five|six|seven|ten|fifteen|twenty|thirty|sixty|ninety))[ -](?:business |continuous )?"
        + @"(?:days|months|years|percent)\b|\bone (?:month|year)\b|\$[1-9][\d,]*", RegexOptions.IgnoreCase)]
    private static partial Regex Figure();

    [GeneratedRegex(@"\.Plus(?:Days|Weeks|Months|Years)\(|\bPeriod\.|\bOpenDays\b|\bAssessment\.Of\(")]
    private static partial Regex Counting();

    // The description of a paper, whole or with its first words on a line of their own.
    [GeneratedRegex(@"(?:} = |^\s*)new\(""([a-z0-9-]+)""")]
    private static partial Regex Describing();

    // "waiver-8132", or in an address: /papers/waiver-8132.
    [GeneratedRegex(@"(?:""|/papers/)([a-z]+(?:-[a-z0-9]+)*)(?=[""?/])")]
    private static partial Regex Word();
}
