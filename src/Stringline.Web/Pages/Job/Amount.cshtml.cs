using Microsoft.AspNetCore.Mvc;

namespace Stringline.Web.Pages.Job;

/// <summary>The amount of a job, from the agreed price down to the demand.</summary>
internal sealed class AmountModel(Desk desk) : JobPage(desk)
{
    /// <summary>Shows it.</summary>
    public IActionResult OnGet() => Find() ? Page() : NotFound();
}
