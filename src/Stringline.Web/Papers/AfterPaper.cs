using Stringline.Papers.Catalogue;

namespace Stringline.Web.Papers;

/// <summary>What is entered once a paper has gone its way.</summary>
internal static class AfterPaper
{
    /// <summary>The links to the forms, in the order in which things happen; none where the program has no such page.</summary>
    public static IEnumerable<Link> Of(Paper paper, PaperOptions options, OpenJob job, NavLinks ways)
    {
        var occasion = new Occasion(job.Facts, job.Assessment, options);
        return paper.Entries.Select(entry => Filled(ways.Enter(job.Id, entry.Kind, entry.Words), entry, occasion))
            .Append(Proved(paper, job.Id, ways)).Append(Refused(paper, job.Id, ways)).OfType<Link>();
    }

    private static Link? Filled(Link? way, EntryAfter entry, Occasion occasion)
    {
        if (way is null)
            return null;
        var query = new QueryString();
        foreach (var filled in entry.FilledFrom(occasion))
        {
            var (field, value) = Prefilled.Of(filled);
            query = query.Add(Prefilled.Lead + field, value);
        }

        return query.HasValue ? way with { Address = $"{way.Address}&{query.Value![1..]}" } : way;
    }

    private static Link? Proved(Paper paper, long job, NavLinks ways) => paper.ProvedAs is { } kind && ways.Has("/Job/Paper")
        ? new Link(
            "Then prove it: the proof of notice, filled in from what was entered",
            $"/job/{job}/papers/{PaperCatalogue.ProofThatNoticeWasGiven.Id}?kind={kind.Word()}",
            "/Job/Paper")
        : null;

    private static Link? Refused(Paper paper, long job, NavLinks ways) => paper.Use == PaperUse.Recorded && ways.Has("/Job/AfterRecording")
        ? new Link("It was refused at the counter: why, and what mends it", $"/job/{job}/after-recording?refused=yes",
            "/Job/AfterRecording")
        : null;
}
