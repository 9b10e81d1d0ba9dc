using Stringline.Law.Facts;
using Stringline.Tables.Sheets.Columns;

namespace Stringline.Office.Import;

/// <summary>What the form asks of jobs that the store does not have yet, as typed.</summary>
public sealed class ImportChoices
{
    /// <summary>The claimant's name.</summary>
    public string? Claimant { get; set; }

    /// <summary>Its role, as a job file says it.</summary>
    public string? Role { get; set; }

    /// <summary>The county where the table names none.</summary>
    public string? County { get; set; }

    /// <summary>What the customer is where the table does not say.</summary>
    public string? CustomerIs { get; set; }

    /// <summary>The kind of work where the table does not say.</summary>
    public string? Work { get; set; }

    /// <summary>Which questions of the look were confirmed.</summary>
    public IReadOnlyList<string> Confirmed { get; set; } = [];

    /// <summary>What the customer of a claimant can be.</summary>
    public static IReadOnlyList<string> Customers { get; } = ["owner", "direct-contractor", "subcontractor", "supplier"];

    /// <summary>What is wrong, by field. A field that is left open is not.</summary>
    internal Dictionary<string, string> Faults()
    {
        var faults = new Dictionary<string, string>(StringComparer.Ordinal);
        if (Blank(Claimant) is { } name && (name.Length > 200 || name.Any(char.IsControl)))
            faults[nameof(Claimant)] = "Your firm's full name, as it signs: one line of at most 200 letters.";
        if (Blank(Claimant) is not null && Blank(Role) is null)
            faults[nameof(Role)] = "Choose one, such as subcontractor or supplier.";
        if (Blank(Role) is { } role && JobFileWords.Role.IndexOf(role) is null)
            faults[nameof(Role)] = "One of the roles in the list.";
        if (Blank(Claimant) is null && Blank(Role) is not null)
            faults[nameof(Claimant)] = "Enter the full name, as it signs.";
        if (Blank(County) is { } county && Counties.Find(county) is null)
            faults[nameof(County)] = "One of California's 58 counties, or nothing.";
        if (Blank(CustomerIs) is { } customer && !Customers.Contains(customer))
            faults[nameof(CustomerIs)] = "Owner, direct contractor, subcontractor, or nothing.";
        if (Blank(Work) is { } work && JobFileWords.Kind.IndexOf(work) is null)
            faults[nameof(Work)] = "Private, public, federal, or nothing.";
        return faults;
    }

    /// <summary>The request.</summary>
    /// <param name="path">The table.</param>
    /// <param name="who">Who records it.</param>
    /// <param name="mapping">How it is read.</param>
    /// <param name="dryRun">Whether to look only.</param>
    /// <param name="today">Today.</param>
    internal ImportRequest Request(string path, string who, ColumnMapping mapping, bool dryRun, LocalDate today) => new([path], who)
    {
        Today = today,
        Confirmed = [.. Confirmed],
        Mapping = mapping,
        DryRun = dryRun,
        RefusedFilesOfDryRun = true,
        Claimant = Blank(Claimant),
        Role = (ClaimantRole?)JobFileWords.Role.IndexOf(Blank(Role)),
        County = Blank(County),
        CustomerIs = (PartyCapacity?)JobFileWords.Capacity.IndexOf(Blank(CustomerIs)),
        Work = (WorkKind?)JobFileWords.Kind.IndexOf(Blank(Work)),
    };

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
