using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>
/// What stands against a paper, for the sheet of a draft, which is read by someone who has neither the job file nor the command line
/// before the eye: places, entries and options by what a person calls them.
/// </summary>
internal sealed class RefusalInWords : Door
{
    private static readonly RefusalInWords Sheet = new();

    private RefusalInWords()
    {
    }

    /// <summary>The place and what is there.</summary>
    public static string There(JobFile job, Assessment assessment, Refusal refusal)
    {
        var place = Place(job, assessment, refusal.Where);
        return $"{place}{(place.Length == 0 ? "" : ": ")}{Said(refusal.There)}";
    }

    /// <summary>The same with what would be right.</summary>
    public static string Whole(JobFile job, Assessment assessment, Refusal refusal) =>
        $"{There(job, assessment, refusal)} {Said(refusal.Right)}".TrimEnd();

    private static string Place(JobFile job, Assessment assessment, Place where) => where switch
    {
        Papers.Place.OfInput or Papers.Place.OfAssessment => "",
        Papers.Place.OfEntry place => job.Entries.FirstOrDefault(e => e.Index == place.Index)?.On.Earliest is { } day
            ? $"What was entered for {LawText.LongDay(day)}" : "What was entered",
        Papers.Place.OfParty { Index: var index } => index < job.Parties.Count ? OneLine(job.Parties[index].Name) : "The parties",
        Papers.Place.OfFinding finding => assessment.Find(finding.Id)?.Title ?? "",
        Papers.Place.OfJournal => "What was entered",
        Papers.Place.OfParties => "The parties",
        Papers.Place.OfDemand => "The amount",
        Papers.Place.OfHead { Path: var path } => path switch
        {
            "claimant.hiredBy" => "Who hired the claimant",
            "claimant.address" => "The claimant’s address",
            "claimant.signer.name" => "Who signs for the claimant",
            "claimant.role" => "What the claimant is",
            "contract.work" => "The kind of work",
            "contract.price" => "The price",
            _ when path.StartsWith("claimant", StringComparison.Ordinal) => "The claimant",
            _ when path.StartsWith("contract", StringComparison.Ordinal) => "The contract",
            _ when path.StartsWith("work.site", StringComparison.Ordinal) => "The site",
            _ when path.StartsWith("work", StringComparison.Ordinal) => "The work",
            _ => "",
        },
        Papers.Place.InWords { Words: var words } => char.ToUpperInvariant(words[0]) + words[1..],
        _ => throw new ArgumentOutOfRangeException(nameof(where), where, "No such place."),
    };

    /// <summary>A sentence of the law.</summary>
    public static string Said(Sentence sentence) => LawForReaders.Of(Sheet.Of(sentence));

    /// <inheritdoc/>
    protected override string OfPointer(IPointer aim) => aim switch
    {
        ForTheAsker => "",
        InputName or DraftName => "the request",
        InputTold { Value: string words } => $"“{words}”",
        InputTold told => told.Said,
        KindName { Kind: var kind } => $"“{kind.Title}”",
        FileWord { Word: var word } => $"“{Spaced(word)}”",
        FieldSaid said => said.Field switch
        {
            "reputed" => "that it is only reputed",
            "written" => "so",
            "ofDefault" => "that it says a default has occurred",
            "lien" => "that it is for a design professional’s lien",
            "enforces" => "that it is on the stop payment notice",
            var other => $"“{Spaced(other)}”",
        },
        PaperName { Paper: var paper } => $"the paper “{paper.Title}”",
        PaperWord { Paper: var paper } => $"“{paper.Title}”",
        ForReaders law => law.Said(this),
        HeadField { Path: var path } => Spaced(path[(path.LastIndexOf('.') + 1)..]),
        EntryKind kind => $"“{kind.Title}”",
        _ => aim.Name,
    };

    /// <inheritdoc/>
    protected override string OfAside(IReadOnlyList<IPointer> pointers, string how) => "";

    // "public-entity", "paymentCleared": as words.
    private static string Spaced(string word) =>
        string.Concat(word.Select(c => c == '-' ? " " : char.IsAsciiLetterUpper(c) ? " " + char.ToLowerInvariant(c) : c.ToString()));
}
