using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Stringline.Web.Pages.Job;

/// <summary>The amount of a job, from the agreed price down to the demand.</summary>
internal sealed class AmountModel(Desk office) : PageModel
{
    /// <summary>The job's id.</summary>
    [BindProperty(SupportsGet = true)]
    public long Id { get; set; }

    /// <summary>The job.</summary>
    public OpenJob Job { get; private set; } = null!;

    /// <summary>Shows it.</summary>
    public IActionResult OnGet()
    {
        if (office.Open(Id) is not { } job)
            return NotFound();
        Job = job;
        ViewData["Job"] = job;
        return Page();
    }
}
