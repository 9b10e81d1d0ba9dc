using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Stringline.Law.Facts;
using Stringline.Store;

namespace Stringline.Web.Pages;

/// <summary>The searches of one county's index that are due, on one sheet for whoever does them.</summary>
internal sealed class SearchesModel(Desk office, NavLinks ways) : PageModel
{
    private const int Most = 500;

    /// <summary>The county.</summary>
    [BindProperty(SupportsGet = true)]
    public string? County { get; set; }

    /// <summary>The searches, the nearest day first.</summary>
    public IReadOnlyList<StepLine> Lines { get; private set; } = [];

    /// <summary>Today.</summary>
    public LocalDate Today => office.Today;

    /// <summary>Where a search is entered.</summary>
    public Link To(StepLine line) => ways.To(line);

    /// <summary>Shows them.</summary>
    public IActionResult OnGet()
    {
        if (Counties.Find(County) is not { } county)
            return NotFound();
        County = county;
        Lines = [.. office.Journal.Steps(new StepQuery(new StepFilter { County = county }, new LocalDate(1, 1, 1), Today.PlusDays(6),
            Most) { Watch = true }).OrderBy(line => line.Step.ActBy)];
        return Page();
    }
}
