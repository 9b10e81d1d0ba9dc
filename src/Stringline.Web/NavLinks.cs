using Microsoft.AspNetCore.Mvc.Infrastructure;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Stringline.Store;

namespace Stringline.Web;

/// <summary>A link to a page of the desk.</summary>
/// <param name="Words">What it says.</param>
/// <param name="Address">Where it leads.</param>
/// <param name="Page">The page, such as <c>/Job/Papers</c>.</param>
internal sealed record Link(string Words, string Address, string Page);

/// <summary>Where the desk's pages are. A page that the program does not have is not linked to; once it has it, it is.</summary>
internal sealed class NavLinks(IActionDescriptorCollectionProvider actions)
{
    private readonly HashSet<string> pages =
        [.. actions.ActionDescriptors.Items.OfType<PageActionDescriptor>().Select(page => page.ViewEnginePath)];

    /// <summary>Whether there is such a page.</summary>
    public bool Has(string page) => pages.Contains(page);

    /// <summary>The pages about the office as a whole.</summary>
    public IEnumerable<Link> Office() => Those(
        new("The desk", "/", "/Index"),
        new("Customers", "/customers", "/Customers"),
        new("New job", "/jobs/new", "/NewJob"),
        new("Import", "/import", "/Import"),
        new("Calendar", "/calendar", "/Calendar"),
        new("Settings", "/settings", "/Settings"),
        new("The law", "/law", "/Law"));

    /// <summary>The pages about a job.</summary>
    public IEnumerable<Link> Job(long job, string? customer) => Those(
        new("The line", $"/job/{job}", "/Job/Index"),
        new("Enter a fact", $"/job/{job}/enter", "/Job/Enter"),
        new("The file", $"/job/{job}/file", "/Job/File"),
        new("Amount", $"/job/{job}/amount", "/Job/Amount"),
        new("Papers", $"/job/{job}/papers", "/Job/Papers"),
        new("After recording", $"/job/{job}/after-recording", "/Job/AfterRecording"),
        new("Customer", $"/customer?name={Uri.EscapeDataString(customer ?? "")}", customer is null ? "" : "/Customer"));

    /// <summary>The one page on which a step is done; its reasons on the job's page where there is no such page yet.</summary>
    public Link To(StepLine line) => To(line.Job, line.Step);

    /// <inheritdoc cref="To(StepLine)"/>
    public Link To(long job, AssessedStep step)
    {
        // Where there is a choice, to the page on which both stand. What only a court does has no page here: its reasons are shown.
        Link? way = step.What switch
        {
            "index-watch.next-day" => new("Enter the search", $"/job/{job}/enter?what=index-searched", "/Job/Enter"),
            "enforcement.last-day" => new("Suit or credit", After(job, step), "/Job/AfterRecording"),
            "release.answer-by" => new("Answer it", After(job, step), "/Job/AfterRecording"),
            "credit.enforcement-last-day" => new("Enter the suit", $"/job/{job}/enter?what=action-filed", "/Job/Enter"),
            "federal-bond.notice-last-day" => new("Enter the notice", $"/job/{job}/enter?what=bond-notice-given", "/Job/Enter"),
            var what when Papers.PaperFit.ServesAny(what) =>
                new("Make the paper", $"/job/{job}/papers?for={Uri.EscapeDataString(what)}", "/Job/Papers"),
            _ => null,
        };
        return way is not null && Has(way.Page)
            ? way : new("See the reasons", $"/job/{job}#why-{Html.WhyTree.Anchor(step.What)}", "/Job/Index");
    }

    /// <summary>Where a fact is entered; null where the program has no such page.</summary>
    /// <param name="job">The job.</param>
    /// <param name="what">The kind of entry, such as <c>claim-recorded</c>; empty for the page on which one is chosen.</param>
    /// <param name="words">What the link says.</param>
    public Link? Enter(long job, string what, string words) =>
        Has("/Job/Enter")
        ? new Link(words, $"/job/{job}/enter{(what.Length == 0 ? "" : "?what=" + Uri.EscapeDataString(what))}", "/Job/Enter") : null;

    private static string After(long job, AssessedStep step) => $"/job/{job}/after-recording#after-{Html.WhyTree.Anchor(step.What)}";

    private IEnumerable<Link> Those(params Link[] ways) => ways.Where(way => Has(way.Page));
}
