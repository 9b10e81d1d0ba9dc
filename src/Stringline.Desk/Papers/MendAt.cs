using System.Text.RegularExpressions;
using Stringline.Desk.Web;
using Stringline.Desk.Web.Html;
using Stringline.Papers;

namespace Stringline.Desk.Papers;

/// <summary>Where what a refusal misses can be put right, and the refusal in the words of a page.</summary>
internal static partial class MendAt
{
    /// <summary>The link to the place; null where no page can mend it.</summary>
    /// <param name="refusal">The refusal.</param>
    /// <param name="job">The job.</param>
    /// <param name="ways">The desk's pages.</param>
    public static Way? Of(Refusal refusal, OpenJob job, Ways ways)
    {
        var where = refusal.Where;
        if (where.StartsWith("--", StringComparison.Ordinal))
            return new Way("Say it in the form", "#field-" + Option().Match(where).Groups[1].Value, "");
        if (EntryPlace().Match(where) is { Success: true } entry)
            return new Way("See the entry", $"/job/{job.Id}#entry-{entry.Groups[1].Value}", "/Job/Index");
        if (job.Assessment.Find(where) is { } finding)
            return new Way("See the reasons", $"/job/{job.Id}#why-{WhyTree.Anchor(finding.Id)}", "/Job/Index");
        if (where == "entries")
            return Known(ways, new Way("Enter it", $"/job/{job.Id}/enter{(Entry(refusal.Id) is { } what ? "?what=" + what : "")}", "/Job/Enter"));
        return where.StartsWith("amount", StringComparison.Ordinal)
            ? new Way("See the amount", $"/job/{job.Id}/amount", "/Job/Amount")
            : FilePlace().IsMatch(where) ? Known(ways, new Way("Mend the file", $"/job/{job.Id}/file#{FileAnchor(where)}", "/Job/File")) : null;
    }

    /// <summary>A refusal's sentence without the options of the command line.</summary>
    public static string InWords(string text) => Option().Replace(Example().Replace(text, ""), "“$1”");

    /// <summary>The anchor of a place in the job file: <c>parties[0].address</c> becomes <c>parties-0-address</c>.</summary>
    public static string FileAnchor(string where) => NoWord().Replace(where, "-").Trim('-');

    private static Way? Known(Ways ways, Way way) => ways.Has(way.Page) ? way : null;

    private static string? Entry(string refusal) => refusal switch
    {
        "no-claim-recorded" or "claim-amount-missing" => "claim-recorded",
        "no-action-filed" => "action-filed",
        "no-demand" => "payment-demanded",
        "no-stop-payment-notice" => "stop-payment-given",
        "nobody" => "notice-given",
        _ => null,
    };

    // "--through 2026-05-31": before a value the option's name says nothing to one who fills in a form.
    [GeneratedRegex("--[a-z][a-z-]* (?=[0-9\"])")]
    private static partial Regex Example();

    [GeneratedRegex("--([a-z][a-z-]*)")]
    private static partial Regex Option();

    [GeneratedRegex(@"^entries\[(\d+)\]")]
    private static partial Regex EntryPlace();

    [GeneratedRegex(@"^(work|claimant|parties|contract)\b")]
    private static partial Regex FilePlace();

    [GeneratedRegex("[^A-Za-z0-9]+")]
    private static partial Regex NoWord();
}
