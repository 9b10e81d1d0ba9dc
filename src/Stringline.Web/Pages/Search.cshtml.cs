using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Stringline.Store;

namespace Stringline.Web.Pages;

/// <summary>Jobs found by the words in them.</summary>
internal sealed class SearchModel(Desk office) : PageModel
{
    private const int Most = 50;

    /// <summary>What is sought.</summary>
    [BindProperty(SupportsGet = true, Name = "for")]
    public string? Sought { get; set; }

    /// <summary>What was found.</summary>
    public IReadOnlyList<SearchHit> Hits { get; private set; } = [];

    /// <summary>Whether there may be more than are shown.</summary>
    public bool MayBeMore => Hits.Count == Most;

    /// <summary>Searches.</summary>
    public void OnGet()
    {
        if (!string.IsNullOrWhiteSpace(Sought))
            Hits = office.Journal.Search(Sought, Most);
    }
}
