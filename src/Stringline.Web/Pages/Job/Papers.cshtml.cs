using Microsoft.AspNetCore.Mvc;
using Stringline.Web.Papers;
using Stringline.Law.Reasoning;
using Stringline.Places;

namespace Stringline.Web.Pages.Job;

/// <summary>The papers that can be made for a job: those that fit its moment first, then the rest of the catalogue.</summary>
internal sealed class PapersModel(Desk desk) : JobPage(desk)
{
    /// <summary>Id of the finding whose papers are asked for.</summary>
    [BindProperty(SupportsGet = true)]
    public string? For { get; set; }

    /// <summary>The papers.</summary>
    public PaperFit Fit { get; private set; } = null!;

    /// <summary>The finding whose papers are asked for; null where none is, or the job has no such finding.</summary>
    public Finding? Asked { get; private set; }

    /// <summary>Whether the county of the site is a question; null where it is none.</summary>
    public Finding? County => Job.Assessment.Find(SiteCounty.FindingId);

    /// <summary>Shows them.</summary>
    public IActionResult OnGet()
    {
        if (!Find())
            return NotFound();
        if (!string.IsNullOrWhiteSpace(For) && PaperFit.ThatDoes(For, Job.Facts.Work.Kind) is { } only)
            return Redirect($"/job/{Id}/papers/{only.Id}");
        Asked = string.IsNullOrWhiteSpace(For) ? null : Job.Assessment.Find(For);
        Fit = PaperFit.Of(Job, Asked?.Id);
        return Page();
    }
}
