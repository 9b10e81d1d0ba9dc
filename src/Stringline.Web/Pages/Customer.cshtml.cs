using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Stringline.Office.Customers;
using Stringline.Store;

namespace Stringline.Web.Pages;

/// <summary>One customer over all its jobs: what is owed, which right holds it, what lapses next.</summary>
internal sealed class CustomerModel(Desk office) : PageModel
{
    /// <summary>The customer's name, as the job files say it.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Name { get; set; }

    /// <summary>Today.</summary>
    public LocalDate Today => office.Today;

    /// <summary>The customer.</summary>
    public CustomerBook Book { get; private set; } = null!;

    /// <summary>Its weeks.</summary>
    public CustomerWeeks Weeks { get; private set; } = null!;

    /// <summary>How it stands today.</summary>
    public WeekTotals Now => Weeks.Ahead[0];

    /// <summary>The weeks at which something changes, for the table beside the drawing.</summary>
    public IEnumerable<WeekTotals> Changes => Weeks.Past.Concat(Weeks.Ahead)
        .Aggregate(new List<WeekTotals>(), (kept, next) =>
        {
            if (kept.Count == 0 || next.Day == Today || (kept[^1] with { Day = next.Day }) != next)
                kept.Add(next);
            return kept;
        });

    private const int MostOverdue = 5000;

    private Dictionary<(long Job, string Finding), string> left = [];

    /// <summary>
    /// Whether a right whose planned day is past is alive, arguable or late, and until when; null where its day is not past.
    /// </summary>
    public string? LeftOf(Lapse lapse) => left.GetValueOrDefault((lapse.Job.Job.Id, lapse.Right.Finding));

    /// <summary>Shows it.</summary>
    public IActionResult OnGet()
    {
        if (string.IsNullOrWhiteSpace(Name) || CustomerBook.Of(office.Journal, Name) is not { } book)
            return NotFound();
        Book = book;
        Weeks = CustomerWeeks.Of(book, office);
        var overdue = new StepQuery(new StepFilter { Customer = Name }, new LocalDate(1, 1, 1), Today.PlusDays(-1), MostOverdue);
        left = office.Journal.Steps(overdue).Where(line => line.Step.Outlook is not null)
            .DistinctBy(line => (line.Job, line.Step.What)).ToDictionary(line => (line.Job, line.Step.What), line => line.Step.Outlook!);
        return Page();
    }
}
