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

    /// <summary>The contractor's license, or that none is needed; null when the file does not say.</summary>
    public License? License { get; init; }

    /// <summary>Its telephone number, as written.</summary>
    public string? Telephone { get; init; }

    /// <summary>Its e-mail address.</summary>
    public string? Email { get; init; }

    /// <summary>
    /// For a supplier or lessor: whether it installs, or contracts for the installation of, what it furnishes, or furnishes an operator
    /// with equipment (Bus. &amp; Prof. Code §§ 7026.1, 7045); null where the file does not say.
    /// </summary>
    public bool? Installs { get; init; }

    /// <summary>
    /// Whether it is a duly authorized motor carrier of property in dump truck equipment (Bus. &amp; Prof. Code § 7108.6); null where the
    /// file does not say.
    /// </summary>
    public bool? DumpTrucks { get; init; }
}

/// <summary>The person who signs for the claimant.</summary>
/// <param name="Name">Name as typed under the signature.</param>
/// <param name="Title">Title or capacity; null for a claimant who signs for himself or herself.</param>
public sealed record Signer(string Name, string? Title);

/// <summary>A contractor's license (Bus. &amp; Prof. Code § 7031).</summary>
public sealed record License
{
    /// <summary>Whether the claimant's part of the work needs a license.</summary>
    public required bool Required { get; init; }

    /// <summary>License number.</summary>
    public string? Number { get; init; }

    /// <summary>Classification.</summary>
    public string? Class { get; init; }

    /// <summary>The spans in which it was active, ends included.</summary>
    public IReadOnlyList<LicenseSpan> Active { get; init; } = [];

    /// <summary>Whether the claimant was never licensed, as against no span being entered.</summary>
    public bool Never { get; init; }

    /// <summary>
    /// Whether the license is held by the one who made the contract and sues (Bus. &amp; Prof. Code § 7031(d)); null where the file does
    /// not say.
    /// </summary>
    public bool? SameEntity { get; init; }

    /// <summary>
    /// Whether its classification is proper for the work (Bus. &amp; Prof. Code § 7031(d)); null where the file does not say.
    /// </summary>
    public bool? FitsWork { get; init; }

    /// <summary>
    /// Whether a certificate of workers' compensation insurance, or a true exemption, was on file on every day of the work (Bus. &amp;
    /// Prof. Code § 7125.2); null where the file does not say.
    /// </summary>
    public bool? InsuranceOnFile { get; init; }

    /// <summary>
    /// Whether the claimant acted reasonably and in good faith to keep the license and cured the lapse promptly on learning of it (Bus.
    /// &amp; Prof. Code § 7031(e)); null where the file does not say.
    /// </summary>
    public bool? GoodFaith { get; init; }
}

/// <summary>Why a license had lapsed or was suspended before it was put back.</summary>
public enum LapseCause
{
    /// <summary>It was not renewed in time (Bus. &amp; Prof. Code § 7141.5).</summary>
    Renewal,

    /// <summary>No certificate of workers' compensation insurance was on file (Bus. &amp; Prof. Code § 7125.1).</summary>
    Insurance,

    /// <summary>Any other cause.</summary>
    Other,
}

/// <summary>A span of an active license.</summary>
/// <param name="From">First day active.</param>
/// <param name="To">Last day active, included; null while it goes on.</param>
/// <param name="Reinstated">The day on which the board took what put the license back for this span, where it had been suspended or had
/// lapsed; null where it was active all the while.</param>
public sealed record LicenseSpan(LocalDate From, LocalDate? To, LocalDate? Reinstated = null)
{
    /// <summary>Why it had lapsed or was suspended; null where the file does not say, or it was active all the while.</summary>
    public LapseCause? Cause { get; init; }

    /// <summary>
    /// The day on which the renewal or certificate was delivered or postmarked (Bus. &amp; Prof. Code § 7141.5); null where the file does
    /// not say.
    /// </summary>
    public LocalDate? Sent { get; init; }

    /// <summary>
    /// Whether it was shown to the registrar that no certificate was on file in time for circumstances beyond the licensee's control (Bus.
    /// &amp; Prof. Code § 7125.1(b)); false where there were none; null where the file does not say. A renewal has no such excuse
    /// (§ 7141.5).
    /// </summary>
    public bool? BeyondControl { get; init; }
}

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

    /// <summary>The owner's architect (Civ. Code § 8506(a)).</summary>
    Architect,

    /// <summary>An agent of the owner (Civ. Code § 8066).</summary>
    OwnersAgent,

    /// <summary>The association of a common interest development, agent of the owners as to the common area (Civ. Code § 8119).</summary>
    Association,
}

/// <summary>What kind of address a party's address is.</summary>
public enum AddressKind
{
    /// <summary>Its residence.</summary>
    Residence,

    /// <summary>Its place of business.</summary>
    Business,

    /// <summary>The owner's address on the building permit (Civ. Code § 8108(a)).</summary>
    Permit,

    /// <summary>The address in a recorded construction trust deed (Civ. Code § 8174).</summary>
    TrustDeed,

    /// <summary>A post-office box or a private mailbox.</summary>
    PostOfficeBox,
}

/// <summary>How an owner came by its interest in the land (Civ. Code §§ 8190(d)(3), 1102.2).</summary>
public enum TitleSource
{
    /// <summary>By sale or in any other ordinary way.</summary>
    Sale,

    /// <summary>By foreclosure, or by a deed in its place.</summary>
    Foreclosure,

    /// <summary>By an order of a court.</summary>
    Court,

    /// <summary>From a fiduciary, in the administration of an estate or trust.</summary>
    Fiduciary,
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

    /// <summary>
    /// For a construction lender: the first day on which the public record or the claimant's own knowledge named it; null where the file
    /// does not say.
    /// </summary>
    public LocalDate? KnownSince { get; init; }

    /// <summary>
    /// For a supplier: whether it agreed to make a definite, substantial part of the work to the plans; null where the file does not say.
    /// </summary>
    public bool? MadeToPlans { get; init; }

    /// <summary>What kind of address <see cref="Address"/> is; null where the file does not say.</summary>
    public AddressKind? AddressKind { get; init; }

    /// <summary>Its telephone number, as written.</summary>
    public string? Telephone { get; init; }

    /// <summary>Its e-mail address.</summary>
    public string? Email { get; init; }

    /// <summary>Whether it is a natural person and no entity (Code Civ. Proc. § 415.20(b)); null where the file does not say.</summary>
    public bool? NaturalPerson { get; init; }

    /// <summary>The first day of a stay in its bankruptcy (11 U.S.C. § 362); null where none is known.</summary>
    public LocalDate? BankruptSince { get; init; }

    /// <summary>The last day of the stay; null while it lasts.</summary>
    public LocalDate? BankruptUntil { get; init; }

    /// <summary>
    /// For a subcontractor or supplier: the party id of the direct contractor under whom it works; null where the file does not say.
    /// </summary>
    public string? WorksUnder { get; init; }

    /// <summary>For an owner: how it came by its interest; null where the file does not say.</summary>
    public TitleSource? TookTitleBy { get; init; }

    /// <summary>For an owner: the day on which it sold the land; null where it did not, as far as the file says.</summary>
    public LocalDate? SoldOn { get; init; }

    /// <summary>
    /// For an owner who did not order the work: whether it knew of it (Civ. Code § 8442(b)); null where the file does not say.
    /// </summary>
    public bool? KnewOfWork { get; init; }

    /// <summary>
    /// For a construction lender: the day on which its deed of trust was recorded (Civ. Code § 8450); null where the file does not say.
    /// </summary>
    public LocalDate? DeedRecorded { get; init; }
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

    /// <summary>
    /// Reasonable value of the work in dollars and cents, where the claimant puts it below the price (Civ. Code § 8430(a)(1)).
    /// </summary>
    public decimal? ReasonableValue { get; init; }

    /// <summary>General description of the work provided or to be provided.</summary>
    public string? Work { get; init; }

    /// <summary>
    /// Days after the claimant's bill on which payment falls due under the contract (Civ. Code § 8832); null where the file does not say.
    /// </summary>
    public int? PaymentDueDays { get; init; }

    /// <summary>
    /// Whether the claimant was told before or at the request for bids that payment and performance bonds are required, and brought none
    /// (Civ. Code § 8811(b)(2); Pub. Contract Code § 7201(b)(2)); null where the file does not say.
    /// </summary>
    public bool? BondNotBrought { get; init; }
}
