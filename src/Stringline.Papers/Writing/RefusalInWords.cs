using System.Text.RegularExpressions;
using Stringline.Law;
using Stringline.Law.Facts;
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
        return $"{place}{(place.Length == 0 ? "" : ": ")}{Said(refusal.There)}";
    }

    /// <summary>The same with what would be right.</summary>
    public static string Whole(JobFile job, Assessment assessment, Refusal refusal) =>
        $"{There(job, assessment, refusal)} {Said(refusal.Right)}".TrimEnd();

    private static string Place(JobFile job, Assessment assessment, string where)
    {
        if (where.StartsWith("--", StringComparison.Ordinal) || where == "assessment")
            return "";
        if (Entry().Match(where) is { Success: true } entry)
        {
            var on = job.Entries.FirstOrDefault(e => where.StartsWith(e.Path, StringComparison.Ordinal))?.On.Earliest;
            return on is { } day ? $"What was entered for {Day(day)}" : "What was entered";
        }

        if (Party().Match(where) is { Success: true } party
            && int.Parse(party.Groups[1].Value, CultureInfo.InvariantCulture) is var at && at < job.Parties.Count)
            return OneLine(job.Parties[at].Name);
        return assessment.Find(where)?.Title ?? where.Split('.', '[')[0] switch
        {
            "entries" => "What was entered",
            "parties" => "The parties",
            "claimant" => where switch
            {
                "claimant.hiredBy" => "Who hired the claimant",
                "claimant.address" => "The claimant’s address",
                "claimant.signer.name" => "Who signs for the claimant",
                "claimant.role" => "What the claimant is",
                _ => "The claimant",
            },
            "contract" => where switch
            {
                "contract.work" => "The kind of work",
                "contract.price" => "The price",
                _ => "The contract",
            },
            "work" => where.StartsWith("work.site", StringComparison.Ordinal) ? "The site" : "The work",
            "amount" => "The amount",
            var other => other == where && !where.Contains('.', StringComparison.Ordinal) && where.Contains(' ', StringComparison.Ordinal)
                ? char.ToUpperInvariant(where[0]) + where[1..] : "",
        };
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

    [GeneratedRegex(@"^entries\[")]
    private static partial Regex Entry();

    [GeneratedRegex(@"^parties\[(\d+)\]")]
    private static partial Regex Party();
}
