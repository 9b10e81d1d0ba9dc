namespace Stringline.Law.Facts;

/// <summary>Who contracted for the work (Civ. Code §§ 8160, 9000).</summary>
public enum WorkKind
{
    /// <summary>Not contracted for by a public entity.</summary>
    Private,

    /// <summary>Contracted for by a California public entity.</summary>
    Public,

    /// <summary>Contracted for by the United States.</summary>
    Federal,
}

/// <summary>What the site is used for, as far as it changes a rule.</summary>
public enum WorkUse
{
    /// <summary>Commercial or mixed use.</summary>
    Commercial,

    /// <summary>Residential, but not the owner's own dwelling of one to four units.</summary>
    Residential,

    /// <summary>A personal residence of the owner with four or fewer units (Civ. Code § 8190(d)(1)).</summary>
    OwnerOccupiedOneToFour,
}

/// <summary>The work of improvement: the whole structure or scheme (Civ. Code § 8050).</summary>
public sealed record Work
{
    /// <summary>Private, public or federal.</summary>
    public required WorkKind Kind { get; init; }

    /// <summary>The use, or null when the file does not say.</summary>
    public WorkUse? Use { get; init; }

    /// <summary>Where the work is.</summary>
    public required Site Site { get; init; }

    /// <summary>The building permit, if known.</summary>
    public Permit? Permit { get; init; }

    /// <summary>The recorded payment bond, where there is one.</summary>
    public PaymentBond? PaymentBond { get; init; }

    /// <summary>
    /// The public authority whose acceptance a private work waits for, such as streets of a tract
    /// (Civ. Code § 8180(b)); null when the file names none.
    /// </summary>
    public string? SubjectToAcceptanceBy { get; init; }

    /// <summary>The day the whole work commenced at the site, if known.</summary>
    public LocalDate? Commenced { get; init; }

    /// <summary>Whether two or more direct contracts, each for a portion, make up the work (Civ. Code § 8186); null where the file does not say.</summary>
    public bool? SeveralDirectContracts { get; init; }

    /// <summary>The number of separate residential structures, each a work of its own (Civ. Code § 8448); null where the file does not say.</summary>
    public int? ResidentialStructures { get; init; }

    /// <summary>Whether the work is on a condominium or other common interest development; null where the file does not say.</summary>
    public bool? CommonInterest { get; init; }

    /// <summary>Whether the claimant's work is site improvement under a direct contract of its own (Civ. Code § 8454); null where the file does not say.</summary>
    public bool? SiteImprovement { get; init; }

    /// <summary>Whether the one who contracted for the work is a tenant or other holder of less than the fee (Civ. Code § 8442); null where the file does not say.</summary>
    public bool? OrderedByTenant { get; init; }

    /// <summary>Whether the building is residential, not mixed-use and not over four stories (Civ. Code §§ 8811, 8850); null where the file does not say.</summary>
    public bool? LowRiseResidential { get; init; }

    /// <summary>Whether a public work is under the State Contract Act (Pub. Contract Code § 10100 ff.), so that idleness never completes it (Civ. Code § 9200(b)); null where the file does not say.</summary>
    public bool? StateContractAct { get; init; }
}

/// <summary>The site (Civ. Code § 8040): the real property on which the work is.</summary>
public sealed record Site
{
    /// <summary>Street and number.</summary>
    public string? Street { get; init; }

    /// <summary>City or place.</summary>
    public string? City { get; init; }

    /// <summary>ZIP code.</summary>
    public string? Zip { get; init; }

    /// <summary>The county whose recorder keeps the land's records (Civ. Code § 8060).</summary>
    public required string County { get; init; }

    /// <summary>Assessor's parcel number, as written.</summary>
    public string? Apn { get; init; }

    /// <summary>Legal description, as written.</summary>
    public string? Legal { get; init; }
}

/// <summary>The building permit; its owner address is a place to serve the claim (Civ. Code § 8416(c)(1)).</summary>
public sealed record Permit
{
    /// <summary>Permit number.</summary>
    public string? Number { get; init; }

    /// <summary>Who issued it.</summary>
    public string? Authority { get; init; }

    /// <summary>The owner's address as the permit shows it.</summary>
    public string? OwnerAddress { get; init; }
}

/// <summary>A recorded payment bond (Civ. Code § 8600 and following; public works § 9550).</summary>
public sealed record PaymentBond
{
    /// <summary>The day it was recorded, or null where it was not.</summary>
    public LocalDate? Recorded { get; init; }

    /// <summary>The party id of the surety, if it is among the parties.</summary>
    public string? Surety { get; init; }
}
