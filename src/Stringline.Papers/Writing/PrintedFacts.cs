using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Recording;
using Stringline.Papers.Indexing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>What papers say of a job, taken from its file; null where the file does not hold it.</summary>
internal sealed record PrintedFacts
{
    /// <summary>The claimant's name.</summary>
    public required string? Claimant { get; init; }

    /// <summary>The claimant's address.</summary>
    public required string? Address { get; init; }

    /// <summary>The signer's name.</summary>
    public required string? Signer { get; init; }

    /// <summary>The signer's title.</summary>
    public required string? SignerTitle { get; init; }

    /// <summary>Contractor's license in words, or null.</summary>
    public required string? License { get; init; }

    /// <summary>Owners and reputed owners.</summary>
    public required IReadOnlyList<Party> Owners { get; init; }

    /// <summary>The kind of work.</summary>
    public required string? Work { get; init; }

    /// <summary>By whom employed, or to whom furnished.</summary>
    public required Party? HiredBy { get; init; }

    /// <summary>The contract in words, where the claim is to name it as the lien does from which it is converted; else null.</summary>
    public string? Contract { get; init; }

    /// <summary>Street, city and ZIP on one or two lines.</summary>
    public required string? Street { get; init; }

    /// <summary>County, as we write it.</summary>
    public required string? County { get; init; }

    /// <summary>Assessor's parcel number as written.</summary>
    public required string? Apn { get; init; }

    /// <summary>Legal description as written.</summary>
    public required string? Legal { get; init; }

    /// <summary>The demand, dollars and cents.</summary>
    public required decimal Demand { get; init; }

    /// <summary>
    /// The works of improvement where there are several, each with what is due for it (Civ. Code § 8446(b)); empty where there is one.
    /// </summary>
    public required IReadOnlyList<ClaimedWork> Works { get; init; }

    /// <summary>The one of several structures that the claim is on, in words; null for the whole work.</summary>
    public string? OnStructure { get; init; }

    /// <summary>Whether what is due for each work is designated, and comes to the demand.</summary>
    public bool IsDesignated => Works.Count > 1 && Works.All(w => w.Share is not null) && Works.Sum(w => w.Share!.Value) == Demand;

    /// <summary>Whether a share is there for each work, and together they are not the demand.</summary>
    public bool IsSplitWrong =>
        Works.Count > 1 && Works.All(w => w.Share is not null) && Demand > 0 && Works.Sum(w => w.Share!.Value) != Demand;

    /// <summary>Whether the claimant is a natural person who signs for himself or herself.</summary>
    public bool SignsForSelf => SignerTitle is null && Signer == Claimant;

    /// <summary>Whether more than one owns.</summary>
    public bool SeveralOwners => IndexNames.AreSeveral(Owners);

    /// <summary>The names under which the recorder is expected to index the claim.</summary>
    public IReadOnlyList<IndexName> Names => IndexNames.Of(Claimant, Owners, SignsForSelf);

    /// <summary>The parcels named.</summary>
    public ParcelCount Parcels => ParcelCount.Of(Apn);

    /// <summary>Takes the facts.</summary>
    public static PrintedFacts Of(JobFile job, Assessment assessment)
    {
        var claimant = job.Claimant;
        var site = job.Work.Site;
        return new PrintedFacts
        {
            Claimant = Line(claimant.Name),
            Address = Clean(claimant.Address),
            Signer = Line(claimant.Signer?.Name),
            SignerTitle = Line(claimant.Signer?.Title),
            License = LicenseWords(claimant.License, claimant.Role),
            Owners = [.. job.In(PartyCapacity.Owner).Where(o => Clean(o.Name) is not null)],
            Work = Clean(job.Contract.Work),
            HiredBy = claimant.HiredBy is null ? null : job.Party(claimant.HiredBy),
            Street = StreetWords(site),
            County = Counties.Find(site.County),
            Apn = Clean(site.Apn),
            Legal = Clean(site.Legal),
            Demand = assessment.Amount.Demand,
            Works = WorksOf(job.Work),
        };
    }

    private static IReadOnlyList<ClaimedWork> WorksOf(Law.Facts.Work work) => work.Structures.Count > 1
        ? [.. work.Structures.Select(s => new ClaimedWork(Clean(s.Text) ?? s.Id, s.Share))]
        : [.. Enumerable.Repeat(new ClaimedWork("", null), work.ResidentialStructures > 1 ? work.ResidentialStructures.Value : 0)];

    private static string? Line(string? text) => Clean(text) is { } clean ? OneLine(clean) : null;

    /// <summary>A contractor's license with its class; a design professional's own license or certificate with its profession.</summary>
    private static string? LicenseWords(License? license, ClaimantRole role)
    {
        if (Clean(license?.Number) is not { } number)
            return null;
        var kind = Clean(license?.Class);
        if (role == ClaimantRole.DesignProfessional)
            return kind is null ? $"License no. {number}" : $"License no. {number}, {kind}";
        return kind is null ? $"Contractor’s license no. {number}" : $"Contractor’s license no. {number}, class {kind}";
    }

    private static string? StreetWords(Site site)
    {
        if (Clean(site.Street) is not { } street)
            return null;
        var place = string.Join(", ", new[] { Clean(site.City), "California" }.OfType<string>());
        return $"{street}, {place}{(Clean(site.Zip) is { } zip ? " " + zip : "")}";
    }
}
