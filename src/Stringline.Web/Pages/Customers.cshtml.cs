using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Stringline.Store;

namespace Stringline.Web.Pages;

/// <summary>Who owes how much, over all jobs, and how it is held.</summary>
internal sealed class CustomersModel(Desk office) : PageModel
{
    /// <summary>At most so many on a page.</summary>
    public const int OfOnePage = 200;

    /// <summary>The last name of the page before; blank for the first page.</summary>
    [BindProperty(SupportsGet = true)]
    public string? After { get; set; }

    /// <summary>Today.</summary>
    public LocalDate Today => office.Today;

    /// <summary>The customers, in the order of their names.</summary>
    public IReadOnlyList<CustomerTotal> Totals { get; private set; } = [];

    /// <summary>Reads them from the store's index.</summary>
    public void OnGet() => Totals = office.Journal.Customers(office.Today, After ?? "", OfOnePage);
}
