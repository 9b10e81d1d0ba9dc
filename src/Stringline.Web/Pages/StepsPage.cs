using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Stringline.Store;

namespace Stringline.Web.Pages;

/// <summary>A page that shows steps of the office's jobs, of which the address can ask for a part.</summary>
internal abstract class StepsPage(NavLinks ways) : PageModel
{
    /// <summary>Only steps on jobs of this customer.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Customer { get; set; }

    /// <summary>Only steps on jobs in this county.</summary>
    [BindProperty(SupportsGet = true)]
    public string? County { get; set; }

    /// <summary>Only steps of this signer.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Person { get; set; }

    /// <summary>Only steps of this remedy.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Remedy { get; set; }

    /// <summary>What can be filtered by.</summary>
    public StepChoices Choices { get; protected set; } = new([], [], [], []);

    /// <summary>Whether any filter is set.</summary>
    public bool IsFiltered => Filter != StepFilter.None;

    /// <summary>The part that is asked for.</summary>
    protected StepFilter Filter => Exports.Filter(Customer, County, Person, Remedy);

    /// <summary>The page on which a step is done.</summary>
    public Link To(StepLine line) => ways.To(line);

    /// <summary>The filter as part of an address, with further parts.</summary>
    public string Query(params (string Name, string Value)[] more)
    {
        var query = new QueryString();
        foreach (var (name, value) in ((string, string?)[])[("customer", Customer), ("county", County), ("person", Person),
            ("remedy", Remedy), .. more])
        {
            if (!string.IsNullOrWhiteSpace(value))
                query = query.Add(name, value);
        }

        return query.ToString();
    }
}
