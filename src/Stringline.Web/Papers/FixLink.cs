using System.Globalization;
using System.Text.RegularExpressions;
using Stringline.Office.Entering;
using Stringline.Web.Entering;
using Stringline.Web.Html;
using Stringline.Papers;

namespace Stringline.Web.Papers;

/// <summary>Where what a refusal misses can be put right, and the refusal in the words of a page.</summary>
internal static partial class FixLink
{
    /// <summary>The link to the place; null where no page can mend it.</summary>
    /// <param name="refusal">The refusal.</param>
    /// <param name="job">The job.</param>
    /// <param name="ways">The desk's pages.</param>
    public static Link? Of(Refusal refusal, OpenJob job, NavLinks ways)
    {
        var where = refusal.Where;
        if (where.StartsWith("--", StringComparison.Ordinal))
            return new Link("Say it in the form", "#field-" + Option().Match(where).Groups[1].Value, "");
        if (EntryPlace().Match(where) is { Success: true } place && int.Parse(place.Groups[1].Value, CultureInfo.InvariantCulture) is var index && index < job.Facts.Entries.Count)
            return new Link("Correct the entry", EntryLinks.Correct(job.Id, job.Facts.Entries[index]), "/Job/Enter");
        if (job.Assessment.Find(where) is { } finding)
            return new Link("See the reasons", $"/job/{job.Id}#why-{WhyTree.Anchor(finding.Id)}", "/Job/Index");
        if (where == "entries")
            return ways.Enter(job.Id, refusal.Enter ?? "", "Enter it");
        if (where.StartsWith("amount", StringComparison.Ordinal))
            return new Link("See the amount", $"/job/{job.Id}/amount", "/Job/Amount");
        if (where.StartsWith("parties", StringComparison.Ordinal))
            return new Link("Mend the parties", $"/job/{job.Id}/file?part=parties#parties", "/Job/File");
        return HeadForms.PartOf(where) is { } found ? new Link("Mend the file", $"/job/{job.Id}/file?part={found.Part.Word}#{found.Field}", "/Job/File") : null;
    }

    /// <summary>A refusal's sentence without the options of the command line.</summary>
    public static string InWords(string text) => PlainWords.Of(
        Field().Replace(Option().Replace(Example().Replace(text, ""), "“$1”"), field => $"“{Label(field.Groups[1].Value) ?? field.Groups[1].Value}”"));

    private static string? Label(string field) => EntryForms.All.SelectMany(form => form.Fields).FirstOrDefault(asked => asked.Name == field)?.Label;

    // "--through 2026-05-31": before a value the option's name says nothing to one who fills in a form.
    [GeneratedRegex("--[a-z][a-z-]* (?=[0-9\"])")]
    private static partial Regex Example();

    // "paymentCleared": the file's word for what a form asks.
    [GeneratedRegex("\"([a-z]+[A-Z][a-zA-Z]*)\"")]
    private static partial Regex Field();

    [GeneratedRegex("--([a-z][a-z-]*)")]
    private static partial Regex Option();

    [GeneratedRegex(@"^entries\[(\d+)\]")]
    private static partial Regex EntryPlace();
}
