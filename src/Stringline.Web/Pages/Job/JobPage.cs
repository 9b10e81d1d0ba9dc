using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Stringline.Web.Pages.Job;

/// <summary>A page about one job. The layout shows the job's head and its pages above it.</summary>
internal abstract class JobPage(Desk desk) : PageModel
{
    /// <summary>The job's id.</summary>
    [BindProperty(SupportsGet = true)]
    public long Id { get; set; }

    /// <summary>The job; null until it was found.</summary>
    public OpenJob Job { get; private set; } = null!;

    /// <summary>The desk.</summary>
    protected Desk Desk { get; } = desk;

    /// <summary>Opens the job; false where the store has none of that id.</summary>
    /// <param name="known">The day as known on which it is shown; null for today.</param>
    protected bool Find(LocalDate? known = null)
    {
        if (Desk.Open(Id, known) is not { } job)
            return false;
        Job = job;
        return true;
    }
}
