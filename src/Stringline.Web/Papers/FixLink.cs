using Stringline.Office.Entering;
using Stringline.Web.Entering;
using Stringline.Web.Html;
using Stringline.Papers;
using Stringline.Papers.Catalogue;

namespace Stringline.Web.Papers;

/// <summary>Where what a refusal misses can be put right.</summary>
internal static class FixLink
{
    /// <summary>The link to the place; null where no page can mend it.</summary>
    /// <param name="refusal">The refusal.</param>
    /// <param name="job">The job.</param>
    /// <param name="ways">The desk's pages.</param>
    public static Link? Of(Refusal refusal, OpenJob job, NavLinks ways) => refusal.Where switch
    {
        Place.OfInput { Input: var input } => new Link("Say it in the form", "#field-" + input.Word(), ""),
        Place.OfEntry { Index: var index } when index < job.Facts.Entries.Count =>
            new Link("Correct the entry", EntryLinks.Correct(job.Id, job.Facts.Entries[index]), "/Job/Enter"),
        Place.OfEntry or Place.OfAssessment or Place.InWords => null,
        Place.OfFinding { Id: var id } => job.Assessment.Find(id) is { } finding
            ? new Link("See the reasons", $"/job/{job.Id}#why-{WhyTree.Anchor(finding.Id)}", "/Job/Index") : null,
        Place.OfJournal { Missing: var kind } => ways.Enter(job.Id, kind ?? "", "Enter it"),
        Place.OfDemand => new Link("See the amount", $"/job/{job.Id}/amount", "/Job/Amount"),
        Place.OfParties or Place.OfParty => new Link("Mend the parties", $"/job/{job.Id}/file?part=parties#parties", "/Job/File"),
        Place.OfHead { Path: var path } => HeadForms.PartOf(path) is { } found
            ? new Link("Mend the file", $"/job/{job.Id}/file?part={found.Part.Word}#{found.Field}", "/Job/File") : null,
        _ => throw new InvalidOperationException($"No such place: {refusal.Where}."),
    };
}
