namespace Stringline.Law.Facts;

/// <summary>On which ground the direct contractor asks for summary release of money held (Civ. Code § 9400).</summary>
public enum ReleaseGround
{
    /// <summary>The claim is not of a kind for which a stop payment notice may be given (Civ. Code § 9400(a)).</summary>
    NotSuchAClaim,

    /// <summary>The claimant is not one who may give it (Civ. Code § 9400(b)).</summary>
    NotSuchAClaimant,

    /// <summary>The amount is excessive (Civ. Code § 9400(c)).</summary>
    Excessive,

    /// <summary>There is no basis for the claim (Civ. Code § 9400(d)).</summary>
    NoBasis,
}

/// <summary>
/// The public entity served the claimant with the direct contractor's affidavit and demand for summary release (Civ. Code §§ 9402, 9404).
/// </summary>
public sealed record ReleaseAffidavitServed : Entry
{
    internal override EntryKind Kind => PublicKinds.ReleaseAffidavitServed;

    /// <summary>How; null where the file does not say.</summary>
    public Manner? Manner { get; init; }

    /// <summary>The day by which it asks for a counteraffidavit (Civ. Code § 9404); null where the file does not say.</summary>
    public LocalDate? AnswerBy { get; init; }

    /// <summary>Dollars and cents of which release is demanded; null where the file does not say, or it is the whole.</summary>
    public decimal? Amount { get; init; }

    /// <summary>The ground; null where the file does not say.</summary>
    public ReleaseGround? Ground { get; init; }
}

/// <summary>The claimant's counteraffidavit was served (Civ. Code § 9406).</summary>
public sealed record CounteraffidavitServed : Entry
{
    internal override EntryKind Kind => PublicKinds.CounteraffidavitServed;

    /// <summary>Party ids on whom it, or a copy, was served.</summary>
    public required IReadOnlyList<string> To { get; init; }

    /// <summary>How; null where the file does not say.</summary>
    public Manner? Manner { get; init; }

    /// <summary>
    /// Whether a proof of service of the copy on the direct contractor went with it (Civ. Code § 9406(a)); null where the file does not
    /// say.
    /// </summary>
    public bool? Proof { get; init; }
}

/// <summary>An action for a declaration of rights was filed (Civ. Code § 9408(a)).</summary>
public sealed record RightsActionFiled : Entry
{
    internal override EntryKind Kind => PublicKinds.RightsActionFiled;

    /// <summary>Case number.</summary>
    public string? Case { get; init; }
}

/// <summary>Notice of the hearing was given (Civ. Code § 9408(b), (c)).</summary>
public sealed record HearingNoticed : Entry
{
    internal override EntryKind Kind => PublicKinds.HearingNoticed;

    /// <summary>Party ids to whom it was given; empty where the file does not say. The claimant is none of them.</summary>
    public IReadOnlyList<string> To { get; init; } = [];

    /// <summary>The id of the direct contractor who moved and gave it; null where the claimant did, or the file does not say.</summary>
    public string? By { get; init; }

    /// <summary>How; null where the file does not say.</summary>
    public Manner? Manner { get; init; }

    /// <summary>The day of the hearing.</summary>
    public required LocalDate Hearing { get; init; }
}

/// <summary>The court decided on summary release (Civ. Code § 9412).</summary>
public sealed record ReleaseOrdered : Entry
{
    internal override EntryKind Kind => PublicKinds.ReleaseOrdered;

    /// <summary>Dollars and cents set free; null where it was denied.</summary>
    public decimal? Amount { get; init; }
}
