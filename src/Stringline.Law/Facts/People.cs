namespace Stringline.Law.Facts;

/// <summary>What the claimant is on this work (Civ. Code §§ 8014, 8018, 8024, 8028, 8046, 8400).</summary>
public enum ClaimantRole
{
    /// <summary>A contractor with a direct contract with the owner.</summary>
    DirectContractor,

    /// <summary>A contractor with no direct contract with the owner.</summary>
    Subcontractor,

    /// <summary>A material supplier.</summary>
    Supplier,

    /// <summary>A lessor of equipment.</summary>
    EquipmentLessor,

    /// <summary>A laborer, or the fund or person to whom part of the pay goes.</summary>
    Laborer,

    /// <summary>A licensed architect, landscape architect, engineer or land surveyor.</summary>
    DesignProfessional,
}

/// <summary>The person for whom the job file is kept.</summary>
public sealed record Claimant
{
    /// <summary>The claimant's full name.</summary>
    public required string Name { get; init; }

    /// <summary>Its role on this work.</summary>
    public required ClaimantRole Role { get; init; }

    /// <summary>Its address, one line or several.</summary>
    public string? Address { get; init; }

    /// <summary>The party id of the one who contracted with the claimant.</summary>
    public string? HiredBy { get; init; }

    /// <summary>Who signs and verifies for the claimant.</summary>
    public Signer? Signer { get; init; }

    /// <summary>The contractor's licence, or that none is needed; null when the file does not say.</summary>
    public License? License { get; init; }
}

/// <summary>The person who signs for the claimant.</summary>
/// <param name="Name">Name as typed under the signature.</param>
/// <param name="Title">Title or capacity; null for a claimant who signs for himself or herself.</param>
public sealed record Signer(string Name, string? Title);

/// <summary>A contractor's licence (Bus. &amp; Prof. Code § 7031).</summary>
public sealed record License
{
    /// <summary>Whether the claimant's part of the work needs a licence.</summary>
    public required bool Required { get; init; }

    /// <summary>Licence number.</summary>
    public string? Number { get; init; }

    /// <summary>Classification.</summary>
    public string? Class { get; init; }

    /// <summary>The spans in which it was active, ends included.</summary>
    public IReadOnlyList<LicenseSpan> Active { get; init; } = [];
}

/// <summary>A span of an active licence.</summary>
/// <param name="From">First day active.</param>
/// <param name="To">Last day active, included; null while it goes on.</param>
/// <param name="PutBack">The day on which the board took what put the licence back for this span, where it had been suspended or had lapsed; null where it was active all the while.</param>
public sealed record LicenseSpan(LocalDate From, LocalDate? To, LocalDate? PutBack = null);

/// <summary>In what capacity someone takes part in the work.</summary>
public enum PartyCapacity
{
    /// <summary>Owner.</summary>
    Owner,

    /// <summary>Direct contractor.</summary>
    DirectContractor,

    /// <summary>Subcontractor.</summary>
    Subcontractor,

    /// <summary>Construction lender (Civ. Code § 8006), fund holders included.</summary>
    ConstructionLender,

    /// <summary>Surety on a bond.</summary>
    Surety,

    /// <summary>Public entity.</summary>
    PublicEntity,

    /// <summary>A material supplier, who sells and does not build.</summary>
    Supplier,
}

/// <summary>Someone on the work other than the claimant.</summary>
public sealed record Party
{
    /// <summary>Short id, unique in the job file.</summary>
    public required string Id { get; init; }

    /// <summary>Capacity.</summary>
    public required PartyCapacity Capacity { get; init; }

    /// <summary>Reputed: reasonably and in good faith believed to be the owner, contractor or lender.</summary>
    public bool Reputed { get; init; }

    /// <summary>Full name.</summary>
    public required string Name { get; init; }

    /// <summary>Address, one line or several.</summary>
    public string? Address { get; init; }

    /// <summary>How it holds title to the site; null where the file does not say.</summary>
    public TitleHolding? HoldsTitleAs { get; init; }

    /// <summary>For a construction lender: the first day on which the public record or the claimant's own knowledge named it; null where the file does not say.</summary>
    public LocalDate? KnownSince { get; init; }

    /// <summary>For a supplier: whether it agreed to make a definite, substantial part of the work to the plans; null where the file does not say.</summary>
    public bool? MadeToPlans { get; init; }
}

/// <summary>The claimant's own contract.</summary>
public sealed record Contract
{
    /// <summary>Day of the contract, if known.</summary>
    public LocalDate? On { get; init; }

    /// <summary>Whether it is in writing; null when the file does not say.</summary>
    public bool? Written { get; init; }

    /// <summary>Agreed price in dollars and cents, never negative; null where only unit prices were agreed.</summary>
    public decimal? Price { get; init; }

    /// <summary>Reasonable value of the work in dollars and cents, where the claimant puts it below the price (Civ. Code § 8430(a)(1)).</summary>
    public decimal? ReasonableValue { get; init; }

    /// <summary>General description of the work provided or to be provided.</summary>
    public string? Work { get; init; }
}
