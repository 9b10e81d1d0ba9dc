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

    /// <summary>
    /// Whether two or more direct contracts, each for a portion, make up the work (Civ. Code § 8186); null where the file does not say.
    /// </summary>
    public bool? SeveralDirectContracts { get; init; }

    /// <summary>
    /// The number of separate residential structures, each a work of its own (Civ. Code § 8448); null where the file does not say.
    /// </summary>
    public int? ResidentialStructures { get; init; }

    /// <summary>Whether the work is on a condominium or other common interest development; null where the file does not say.</summary>
    public bool? CommonInterest { get; init; }

    /// <summary>
    /// Whether the claimant's work is site improvement under a direct contract of its own (Civ. Code § 8454); null where the file does not
    /// say.
    /// </summary>
    public bool? SiteImprovement { get; init; }

    /// <summary>
    /// Whether the one who contracted for the work is a tenant or other holder of less than the fee (Civ. Code § 8442); null where the file
    /// does not say.
    /// </summary>
    public bool? OrderedByTenant { get; init; }

    /// <summary>
    /// Whether the building is residential, not mixed-use and not over four stories (Civ. Code §§ 8811, 8850); null where the file does not
    /// say.
    /// </summary>
    public bool? LowRiseResidential { get; init; }

    /// <summary>
    /// Whether a public work is under the State Contract Act (Pub. Contract Code § 10100 ff.), so that idleness never completes it (Civ.
    /// Code § 9200(b)); null where the file does not say.
    /// </summary>
    public bool? StateContractAct { get; init; }

    /// <summary>
    /// Whether the public takes over an interest in what is built, so that <see cref="SubjectToAcceptanceBy"/> accepts and does not only
    /// approve it (Civ. Code § 8180(b)); null where the file does not say.
    /// </summary>
    public bool? PublicTakesOver { get; init; }

    /// <summary>Which public body contracted for a public work; null where the file does not say.</summary>
    public PublicBody? Body { get; init; }

    /// <summary>
    /// Whether the public entity found before bids that a public work is substantially complex (Pub. Contract Code § 7201(b)(4)); null
    /// where the file does not say.
    /// </summary>
    public bool? SubstantiallyComplex { get; init; }

    /// <summary>Whether the owner is a public utility (Civ. Code § 8802); null where the file does not say.</summary>
    public bool? PublicUtility { get; init; }

    /// <summary>The number of dwelling units on the site; null where the file does not say.</summary>
    public int? Units { get; init; }

    /// <summary>What the whole work was expected to cost, dollars and cents (Civ. Code § 8318); null where the file does not say.</summary>
    public decimal? ExpectedCost { get; init; }

    /// <summary>
    /// Whether one of Civ. Code §§ 8702, 8704, 8710(a) frees the owner of a large project from giving security; null where the file does
    /// not say.
    /// </summary>
    public bool? SecurityExempt { get; init; }

    /// <summary>What is known of the contract between the owner and the direct contractor; null where nothing is.</summary>
    public DirectContract? DirectContract { get; init; }

    /// <summary>
    /// The separate residential structures, each a work of its own (Civ. Code §§ 8446-8448); empty where the file names none.
    /// </summary>
    public IReadOnlyList<ResidentialStructure> Structures { get; init; } = [];
}

/// <summary>Which public body contracted for a public work, as far as it changes a rule.</summary>
public enum PublicBody
{
    /// <summary>A city, county, district or other local agency.</summary>
    Local,

    /// <summary>A State agency other than those below.</summary>
    State,

    /// <summary>The Department of General Services.</summary>
    GeneralServices,

    /// <summary>The Department of Transportation.</summary>
    Transportation,

    /// <summary>The Trustees of the California State University.</summary>
    StateUniversity,

    /// <summary>The University of California, a court or the Legislature: no state entity (Pub. Contract Code § 7103(d)).</summary>
    UniversityOrCourt,
}

/// <summary>The contract between the owner and the direct contractor, as the claimant knows it.</summary>
public sealed record DirectContract
{
    /// <summary>Its day, if known.</summary>
    public LocalDate? On { get; init; }

    /// <summary>Its price, dollars and cents; null where the file does not say.</summary>
    public decimal? Price { get; init; }

    /// <summary>The retention it allows, in percent (Civ. Code § 8811(b)(1)(C)); null where the file does not say.</summary>
    public decimal? RetentionPercent { get; init; }

    /// <summary>
    /// The day on which it was filed with the county recorder (Civ. Code §§ 8432(b), 8600); null where it was not, as far as the file says.
    /// </summary>
    public LocalDate? Filed { get; init; }
}

/// <summary>One of several residential structures of a work (Civ. Code § 8448).</summary>
public sealed record ResidentialStructure
{
    /// <summary>Short id, unique in the job file.</summary>
    public required string Id { get; init; }

    /// <summary>What it is, such as its street number.</summary>
    public string? Text { get; init; }

    /// <summary>Its share of what is due, dollars and cents (Civ. Code § 8446(b)); null where the file does not say.</summary>
    public decimal? Share { get; init; }
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

    /// <summary>Other counties in which part of the work lies (Civ. Code § 8060(b)).</summary>
    public IReadOnlyList<string> AlsoIn { get; init; } = [];

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

    /// <summary>Amount of the bond, dollars and cents; null where the file does not say.</summary>
    public decimal? Amount { get; init; }

    /// <summary>
    /// The party id of the principal: an owner, a direct contractor or a subcontractor (Civ. Code § 8606(b)); null where the file does not
    /// say.
    /// </summary>
    public string? Principal { get; init; }
}
