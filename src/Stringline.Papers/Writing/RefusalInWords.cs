using System.Text.RegularExpressions;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>
/// What stands against a paper, for the sheet of a draft, which is read by someone who has neither the job file nor the command line
/// before the eye: places, entries and options by what a person calls them.
/// </summary>
internal static partial class RefusalInWords
{
    /// <summary>The place and what is there.</summary>
    public static string There(JobFile job, Assessment assessment, Refusal refusal)
    {
        var place = Place(job, assessment, refusal.Where);
        return $"{place}{(place.Length == 0 ? "" : ": ")}{refusal.There.Say(Words)}";
    }

    /// <summary>The same with what would be right.</summary>
    public static string Whole(JobFile job, Assessment assessment, Refusal refusal) =>
        $"{There(job, assessment, refusal)} {refusal.Right.Say(Words)}".TrimEnd();

    private static string Place(JobFile job, Assessment assessment, Place where) => where switch
    {
        Papers.Place.OfInput or Papers.Place.OfAssessment => "",
        Papers.Place.OfEntry place => job.Entries.FirstOrDefault(e => e.Index == place.Index)?.On.Earliest is { } day
            ? $"What was entered for {Day(day)}" : "What was entered",
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

    private static string Words(object named, string? format) => named switch
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
        HeadField { Path: var path } => Spaced(path[(path.LastIndexOf('.') + 1)..]),
        PaperName { Paper: var paper } => $"the paper “{paper.Title}”",
        PaperWord { Paper: var paper } => $"“{paper.Title}”",
        SaidByLaw law => LawForReaders.Of(law.In(LawOnPaper.Door)),
        _ => Sentence.Plain(named, format),
    };

    /// <summary>A sentence of the law.</summary>
    public static string Of(Sentence sentence) => LawForReaders.Of(LawOnPaper.Door.Of(sentence));

    // Where a question is answered in the file helps nobody who has only the sheet.
    private sealed class LawOnPaper : Door
    {
        public static LawOnPaper Door { get; } = new();

        protected override string OfPointer(IPointer aim) => aim switch
        {
            EntryKind kind => $"“{kind.Title}”",
            Law.Facts.HeadField { Path: var path } => Spaced(path[(path.LastIndexOf('.') + 1)..]),
            _ => aim.Name,
        };

        protected override string OfAside(IReadOnlyList<IPointer> pointers, string how) => "";
    }

    /// <summary>A sentence of a refusal or of the law without the words of the job file and of the command line.</summary>
    public static string Said(string text)
    {
        text = Asked().Replace(text, found => EntryName.Find(found.Groups[1].Value) is not null
            || found.Groups[1].Value.Contains('.', StringComparison.Ordinal) ? "" : found.Value);
        text = Example().Replace(text, "");
        text = Telling().Replace(text, "“$1”");
        text = Valued().Replace(text, found => found.Groups[1].Value switch
        {
            "reputed" => "that it is only reputed",
            "written" => "so",
            "ofDefault" => "that it says a default has occurred",
            "lien" => "that it is for a design professional’s lien",
            "enforces" => "that it is on the stop payment notice",
            var other => $"“{Spaced(other)}”",
        });
        text = Option().Replace(text, found => found.Groups[1].Success ? "with the request" : "the request");
        text = Kind().Replace(text, found => EntryName.Find(found.Value) is { } title ? $"“{title}”" : found.Value);
        text = Quoted().Replace(text, found => $"“{Named(found.Groups[1].Value)}”");
        text = Paper().Replace(text, found => PaperCatalogue.Find(found.Groups[1].Value) is { } paper ? $"the paper “{paper.Title}”"
            : found.Value);
        return LawForReaders.Of(Path().Replace(text, found => Spaced(found.Groups[1].Value)));
    }

    private static string Named(string word) => EntryName.Find(word) ?? PaperCatalogue.Find(word)?.Title ?? Spaced(word);

    // "public-entity", "paymentCleared": as words.
    private static string Spaced(string word) =>
        Capital().Replace(word.Replace('-', ' '), found => " " + char.ToLowerInvariant(found.Value[0]));

    // "When did it end? (furnishing-ended)": where a question of the law is answered.
    [GeneratedRegex(@" \((?:see |add |enter )?([a-z]+(?:[.-][a-zA-Z]+)+|[a-z]+(?=\)$))\)")]
    private static partial Regex Asked();

    // ", such as --through 2026-05-31"; "(--draft prints it)".
    [GeneratedRegex(@",? such as --[a-z-]+ [0-9.-]*[0-9]|: --to ""[^""]*""(?=\.)| \(--[a-z-]+[^)]*\)|(?<=: )--[a-z-]+ (?=[0-9])")]
    private static partial Regex Example();

    [GeneratedRegex(@"--[a-z-]+ ""([^""]*)""")]
    private static partial Regex Telling();

    [GeneratedRegex(@"""([a-zA-Z]+)"": (?:true|false|""[^""]*""|\[[^\]]*\])")]
    private static partial Regex Valued();

    [GeneratedRegex(@"(with )?--[a-z][a-z-]*(?: and --[a-z][a-z-]*)*")]
    private static partial Regex Option();

    [GeneratedRegex(@"""([a-z]+(?:[-A-Z][a-zA-Z]*)*)""")]
    private static partial Regex Quoted();

    // "Enter furnishing-ended.", "add completed, by actual": the law's own words for what is missing.
    [GeneratedRegex(@"(?<=\b(?:[Aa]dd|[Ee]nter) )[a-z]+(?:-[a-z]+)+\b")]
    private static partial Regex Kind();

    [GeneratedRegex(@"(?:the )?paper ([a-z]+(?:-[a-z]+)+)")]
    private static partial Regex Paper();

    // "work.permit.ownerAddress": its last part.
    [GeneratedRegex(@"\b(?:work|claimant|contract|parties)\.(?:[a-z]+\.)*([a-zA-Z]+)\b")]
    private static partial Regex Path();

    [GeneratedRegex("[A-Z]")]
    private static partial Regex Capital();
}
