using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Stringline.Office.Entering;
using Stringline.Office.Settings;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Store;

namespace Stringline.Web.Pages;

/// <summary>A new job: the least that gives a first answer. Everything else can be entered later.</summary>
internal sealed class NewJobModel(Desk office) : PageModel
{
    /// <summary>The fields of the form.</summary>
    [BindProperty]
    public NewJobForm Form { get; set; } = new();

    /// <summary>What is wrong, by field.</summary>
    public IReadOnlyDictionary<string, string> Faults { get; private set; } = new Dictionary<string, string>();

    /// <summary>The job that has the number already; null where none has.</summary>
    public long? Taken { get; private set; }

    /// <summary>What the store refuses, where it is no single field.</summary>
    public IReadOnlyList<string> Refused { get; private set; } = [];

    /// <summary>What is asked about the county; null where nothing is.</summary>
    public CountyDoubt? Doubt { get; private set; }

    /// <summary>Who signs for the office, to be offered while typing.</summary>
    public IReadOnlyList<OfficeSigner> Signers => office.Settings.Signers;

    /// <summary>Writes the job, or shows the form again with what is wrong beside each field.</summary>
    public IActionResult OnPost()
    {
        var (job, faults) = Form.Read(office.Today);
        Faults = faults;
        if (job is null)
            return Page();
        if (CountyDoubt.Of(job.Work.Site) is { } doubt && !doubt.IsConfirmedBy(Request.Form[Typed.Lead + CountyDoubt.Field]))
        {
            Doubt = doubt;
            return Page();
        }

        if (job.Claimant.Signer is { Title: null } signer && Signers.FirstOrDefault(known => known.Name == signer.Name) is { } offered)
            job = job with { Claimant = job.Claimant with { Signer = signer with { Title = offered.Title } } };
        var number = string.IsNullOrWhiteSpace(Form.Number) ? NumberOfOurOwn() : Form.Number.Trim();
        switch (office.Add(new KeyedJob(number, job)))
        {
            case PutOutcome.Added added:
                return Redirect($"/job/{added.Job}");
            case PutOutcome.Refused when office.Journal.Find(number) is { } taken:
                Faults = new Dictionary<string, string>(StringComparer.Ordinal) { [nameof(NewJobForm.Number)] =
                    $"The job \"{taken.Job.Name}\" has this number. Give another, or none." };
                Taken = taken.Tip.Id;
                return Page();
            case PutOutcome.Refused refused:
                Refused = [.. refused.Faults.Select(fault => $"{fault.Path}: {fault.Found}; it should be {fault.Expected}")];
                return Page();
            default:
                throw new InvalidOperationException("A new job was neither added nor refused.");
        }
    }

    private static string NumberOfOurOwn() => Guid.NewGuid().ToString("N")[..12];
}

/// <summary>What the form of a new job holds, as typed.</summary>
public sealed class NewJobForm
{
    /// <summary>The job's name.</summary>
    public string? Name { get; set; }

    /// <summary>The office's own number of the job; one is made where it is blank.</summary>
    public string? Number { get; set; }

    /// <summary>Private, public or federal work.</summary>
    public string? Kind { get; set; }

    /// <summary>Street of the site.</summary>
    public string? Street { get; set; }

    /// <summary>City of the site.</summary>
    public string? City { get; set; }

    /// <summary>ZIP of the site.</summary>
    public string? Zip { get; set; }

    /// <summary>County of the site.</summary>
    public string? County { get; set; }

    /// <summary>The claimant.</summary>
    public string? Claimant { get; set; }

    /// <summary>The claimant's role.</summary>
    public string? Role { get; set; }

    /// <summary>Who signs.</summary>
    public string? Signer { get; set; }

    /// <summary>Who hired the claimant.</summary>
    public string? Customer { get; set; }

    /// <summary>In what capacity.</summary>
    public string? CustomerIs { get; set; }

    /// <summary>The owner, where it is another.</summary>
    public string? Owner { get; set; }

    /// <summary>The agreed price.</summary>
    public string? Price { get; set; }

    /// <summary>The first day furnished.</summary>
    public string? First { get; set; }

    /// <summary>The job file, or what is wrong by field.</summary>
    internal (JobFile? Job, IReadOnlyDictionary<string, string> Faults) Read(LocalDate today)
    {
        var faults = new Dictionary<string, string>(StringComparer.Ordinal);
        string Need(string field, string? text, string what)
        {
            if (string.IsNullOrWhiteSpace(text))
                faults[field] = what;
            return text?.Trim() ?? "";
        }

        var name = Need(nameof(Name), Name, "Enter a name by which you will find the job again.");
        if (!string.IsNullOrWhiteSpace(Number) && Names.Fault(Number.Trim()) is { } right)
            faults[nameof(Number)] = $"It should be {right}.";
        var claimant = Need(nameof(Claimant), Claimant, "Enter the full name, as it signs.");
        var customer = Need(nameof(Customer), Customer, "Enter the full name, as on the order or contract.");
        var county = Counties.Find(County);
        if (county is null)
            faults[nameof(County)] = "Choose one of California's 58 counties.";
        var kind = JobFileWords.Kind.IndexOf(Kind);
        if (kind is null)
            faults[nameof(Kind)] = "Choose private, public or federal.";
        var role = JobFileWords.Role.IndexOf(Role);
        if (role is null)
            faults[nameof(Role)] = "Choose one, such as subcontractor or supplier.";
        var capacity = JobFileWords.Capacity.IndexOf(CustomerIs);
        if (capacity is null)
            faults[nameof(CustomerIs)] = "Choose one, such as owner or direct contractor.";
        decimal? price = null;
        if (!string.IsNullOrWhiteSpace(Price))
        {
            if (TypedMoney.Read(Price) is { } dollars and >= 0m)
                price = dollars;
            else
                faults[nameof(Price)] = $"\"{Price}\" is no amount: dollars and cents, such as 12,500.00, or nothing.";
        }

        var first = new LocalDate();
        if (!string.IsNullOrWhiteSpace(First))
        {
            if (DayText.Read(First.Trim(), out first) is { } expected)
                faults[nameof(First)] = $"\"{First}\" cannot be read: it should be {expected}.";
            else if (first > today.PlusYears(1))
                faults[nameof(First)] = "This day lies more than a year ahead.";
        }

        if (faults.Count > 0)
            return (null, faults);
        var parties = new List<Party> { new() { Id = "p1", Capacity = (PartyCapacity)capacity!.Value, Name = customer } };
        if (!string.IsNullOrWhiteSpace(Owner) && parties[0].Capacity is not (PartyCapacity.Owner or PartyCapacity.PublicEntity))
            parties.Add(new Party { Id = "p2", Capacity = kind == (int)WorkKind.Private
                ? PartyCapacity.Owner : PartyCapacity.PublicEntity, Name = Owner.Trim(), Reputed = true });
        return (
            new JobFile
            {
                Name = name,
                Work = new Work { Kind = (WorkKind)kind!.Value, Site =
                    new Site { Street = Blank(Street), City = Blank(City), Zip = Blank(Zip), County = county! } },
                Claimant = new Claimant { Name = claimant, Role =
                    (ClaimantRole)role!.Value, HiredBy = "p1", Signer = Blank(Signer) is { } signer ? new Signer(signer, null) : null },
                Parties = parties,
                Contract = new Contract { Price = price },
                Entries = string.IsNullOrWhiteSpace(First)
                    ? [] : [new Furnished { Index = 0, Id = "e1", On = DayFact.On(first), Until = DayFact.On(first) }],
            },
            faults);
    }

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
