namespace Stringline.Law.Facts;

/// <summary>A copy of the claim of lien was served (Civ. Code § 8416(c)).</summary>
public sealed record ClaimServed : Entry
{
    internal override EntryKind Kind => ClaimKinds.ClaimServed;

    /// <summary>Party ids served.</summary>
    public required IReadOnlyList<string> To { get; init; }

    /// <summary>How.</summary>
    public required Manner Manner { get; init; }

    /// <summary>Article number of the mailing.</summary>
    public string? Article { get; init; }
}

/// <summary>Which lien a recorded claim is for.</summary>
public enum LienKind
{
    /// <summary>A mechanics lien (Civ. Code § 8400).</summary>
    Mechanics,

    /// <summary>A design professional's lien (Civ. Code § 8302).</summary>
    Design,

    /// <summary>A mechanics lien converted from a design professional's lien (Civ. Code § 8319).</summary>
    Converted,
}

/// <summary>A claim of lien was recorded.</summary>
public sealed record ClaimRecorded : Entry
{
    internal override EntryKind Kind => ClaimKinds.ClaimRecorded;

    /// <summary>
    /// Which lien it is for; null where the file does not say: a mechanics lien, but for a design professional before the work commenced.
    /// </summary>
    public LienKind? Lien { get; init; }

    /// <summary>
    /// The <see cref="Entry.Id"/> of the earlier claim that it says it amends; null where it stands alone or the file does not say.
    /// </summary>
    public string? Amends { get; init; }

    /// <summary>The <see cref="ResidentialStructure.Id"/> of the residential structure it is on; null for the whole work.</summary>
    public string? Structure { get; init; }

    /// <summary>The county in which it was recorded; null for the county of the site (Civ. Code § 8060).</summary>
    public string? County { get; init; }

    /// <summary>The demand it states, dollars and cents.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }

    /// <summary>
    /// What it lacks of what Civ. Code § 8416(a) asks, such as the signature, its verification, or the notice in boldface type; null where
    /// it lacks nothing or the file does not say.
    /// </summary>
    public string? Lacks { get; init; }
}

/// <summary>The county index was searched for the owner's notices and nothing unknown was found.</summary>
public sealed record IndexSearched : Entry
{
    internal override EntryKind Kind => CompletionKinds.IndexSearched;

    /// <summary>
    /// The county whose index was searched; null where the file does not say: that of the site, where it lies in one county alone.
    /// </summary>
    public string? County { get; init; }
}

/// <summary>A notice of credit was recorded (Civ. Code § 8460(b)).</summary>
public sealed record CreditRecorded : Entry
{
    internal override EntryKind Kind => ClaimKinds.CreditRecorded;

    /// <summary>The day the credit ends.</summary>
    public required LocalDate Until { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}

/// <summary>What an action enforces.</summary>
public enum ActionOn
{
    /// <summary>A recorded claim of lien.</summary>
    Lien,

    /// <summary>A stop payment notice.</summary>
    StopPaymentNotice,

    /// <summary>A payment bond, private, public or federal.</summary>
    PaymentBond,

    /// <summary>A lien release bond.</summary>
    ReleaseBond,

    /// <summary>The debt alone, as on the contract.</summary>
    Debt,
}

/// <summary>An action was filed.</summary>
public sealed record ActionFiled : Entry
{
    internal override EntryKind Kind => ClaimKinds.ActionFiled;

    /// <summary>What it enforces; empty where the file does not say.</summary>
    public IReadOnlyList<ActionOn> Enforces { get; init; } = [];

    /// <summary>
    /// The <see cref="Entry.Id"/> of the claim of lien it enforces; null where the file does not say, or there is only one.
    /// </summary>
    public string? Claim { get; init; }

    /// <summary>Party ids of those sued; empty where the file does not say.</summary>
    public IReadOnlyList<string> Against { get; init; } = [];

    /// <summary>
    /// Whether it was filed in a small claims court, which gives money and forecloses nothing (Code Civ. Proc. § 116.220).
    /// </summary>
    public bool SmallClaims { get; init; }

    /// <summary>Court.</summary>
    public string? Court { get; init; }

    /// <summary>Case number.</summary>
    public string? Case { get; init; }
}

/// <summary>The summons of the action was served on the owner (Code Civ. Proc. § 583.420).</summary>
public sealed record ActionServed : Entry
{
    internal override EntryKind Kind => ClaimKinds.ActionServed;

    /// <summary>Party ids served; empty where the file does not say.</summary>
    public IReadOnlyList<string> To { get; init; } = [];

    /// <summary>The <see cref="Entry.Id"/> of the action; null where the file does not say, or there is only one.</summary>
    public string? Of { get; init; }
}

/// <summary>The action was brought to trial (Civ. Code § 8462; Code Civ. Proc. § 583.310).</summary>
public sealed record TrialBegun : Entry
{
    internal override EntryKind Kind => ClaimKinds.TrialBegun;

    /// <summary>The <see cref="Entry.Id"/> of the action; null where the file does not say, or there is only one.</summary>
    public string? Of { get; init; }
}

/// <summary>How an action ended.</summary>
public enum ActionEnd
{
    /// <summary>Judgment for the claimant.</summary>
    Won,

    /// <summary>Judgment against the claimant.</summary>
    LostAtTrial,

    /// <summary>Dismissed.</summary>
    Dismissed,

    /// <summary>Settled.</summary>
    Settled,

    /// <summary>The court ordered the claim released (Civ. Code § 8490).</summary>
    ReleaseOrdered,
}

/// <summary>An action, or a petition to release the claim, ended (Civ. Code § 8490).</summary>
public sealed record ActionEnded : Entry
{
    internal override EntryKind Kind => ClaimKinds.ActionEnded;

    /// <summary>How.</summary>
    public required ActionEnd How { get; init; }

    /// <summary>Whether the order says that it is without prejudice (Civ. Code § 8490); null where the file does not say.</summary>
    public bool? WithoutPrejudice { get; init; }

    /// <summary>The <see cref="Entry.Id"/> of the action; null where the file does not say, or there is only one.</summary>
    public string? Of { get; init; }
}

/// <summary>A petition to release the property from the claim was served on the claimant (Civ. Code § 8486).</summary>
public sealed record ReleasePetitionServed : Entry
{
    internal override EntryKind Kind => OwnerKinds.ReleasePetitionServed;

    /// <summary>How; null where the file does not say.</summary>
    public Manner? Manner { get; init; }

    /// <summary>The day of the hearing; null where the file does not say.</summary>
    public LocalDate? Hearing { get; init; }
}

/// <summary>A notice of pendency of action was recorded (Civ. Code § 8461).</summary>
public sealed record LisPendensRecorded : Entry
{
    internal override EntryKind Kind => ClaimKinds.LisPendensRecorded;

    /// <summary>
    /// Whether it was mailed, registered or certified with return receipt, to the adverse parties and owners before it was recorded (Code
    /// Civ. Proc. § 405.22); null where the file does not say.
    /// </summary>
    public bool? MailedFirst { get; init; }

    /// <summary>
    /// Whether a proof of that service was recorded with it (Code Civ. Proc. § 405.23); null where the file does not say.
    /// </summary>
    public bool? ProofRecorded { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}

/// <summary>The owner demanded a release (Civ. Code § 8482).</summary>
public sealed record ReleaseDemanded : Entry
{
    internal override EntryKind Kind => OwnerKinds.ReleaseDemanded;

    /// <summary>Recorder's instrument number of the claim it names.</summary>
    public string? Instrument { get; init; }
}

/// <summary>A release of the claim of lien was recorded.</summary>
public sealed record ReleaseRecorded : Entry
{
    internal override EntryKind Kind => ClaimKinds.ReleaseRecorded;

    /// <summary>
    /// Whether it says that the debt is satisfied; false where it only gives up the claim; null where the file does not say.
    /// </summary>
    public bool? Satisfied { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}

/// <summary>A lien release bond was recorded (Civ. Code § 8424).</summary>
public sealed record ReleaseBondRecorded : Entry
{
    internal override EntryKind Kind => OwnerKinds.ReleaseBondRecorded;

    /// <summary>
    /// The day notice of it, with a copy, was given to the claimant (Civ. Code § 8424(c)); null where the file does not say.
    /// </summary>
    public LocalDate? NoticeGiven { get; init; }

    /// <summary>Amount of the bond, dollars and cents.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}
