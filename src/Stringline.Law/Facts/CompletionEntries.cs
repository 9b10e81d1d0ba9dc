namespace Stringline.Law.Facts;

/// <summary>The theory on which the work is said to be complete (Civ. Code § 8180).</summary>
public enum CompletionTheory
{
    /// <summary>Actual completion.</summary>
    Actual,

    /// <summary>Occupation or use by the owner, with cessation of labor.</summary>
    Occupation,

    /// <summary>Cessation of labor.</summary>
    Cessation,

    /// <summary>Acceptance by a public entity.</summary>
    Acceptance,
}

/// <summary>A contention that the work of improvement was completed that day.</summary>
public sealed record Completed : Entry
{
    internal override EntryKind Kind => CompletionKinds.Completed;

    /// <summary>On which theory.</summary>
    public required CompletionTheory By { get; init; }

    /// <summary>Whether somebody disputes it.</summary>
    public bool Contested { get; init; }

    /// <summary>
    /// The <see cref="ResidentialStructure.Id"/> of the residential structure that was completed; null for the whole work.
    /// </summary>
    public string? Structure { get; init; }
}

/// <summary>Labor on the whole work stopped: <see cref="Entry.On"/> is the last day of labor.</summary>
public sealed record LaborCeased : Entry
{
    internal override EntryKind Kind => CompletionKinds.LaborCeased;

    /// <summary>The day labor resumed; null while it is still stopped.</summary>
    public LocalDate? Until { get; init; }

    /// <summary>
    /// Whether the work was left unfinished: then it was not complete that day, and only the days without labor can complete it. Null or
    /// false where nobody has said so.
    /// </summary>
    public bool? Unfinished { get; init; }
}

/// <summary>A notice the owner records.</summary>
public enum OwnerNotice
{
    /// <summary>Notice of completion (Civ. Code § 8182).</summary>
    Completion,

    /// <summary>Notice of cessation (Civ. Code § 8188).</summary>
    Cessation,

    /// <summary>Notice of acceptance by a public entity (Civ. Code § 9356(a)).</summary>
    Acceptance,
}

/// <summary>The owner recorded a notice of completion or cessation.</summary>
public sealed record OwnerRecorded : Entry
{
    internal override EntryKind Kind => OwnerKinds.OwnerRecorded;

    /// <summary>Which.</summary>
    public required OwnerNotice Notice { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }

    /// <summary>The day of completion (or on which labor ceased) that it states.</summary>
    public LocalDate? States { get; init; }

    /// <summary>
    /// The party id of the direct contractor for whose contract alone it was recorded (Civ. Code § 8186); null for the whole work.
    /// </summary>
    public string? ContractOf { get; init; }

    /// <summary>
    /// What it lacks of what the Code asks of it, in words, such as the owner's signature, its verification, or the name of the true owner
    /// or of the direct contractor; null where nothing is known to be lacking.
    /// </summary>
    public string? Lacks { get; init; }

    /// <summary>Whether a court has held, or the owner has granted in writing, that it has no effect.</summary>
    public bool HeldIneffective { get; init; }
}

/// <summary>We received the owner's copy of the recorded notice (Civ. Code § 8190).</summary>
public sealed record OwnerToldUs : Entry
{
    internal override EntryKind Kind => OwnerKinds.OwnerToldUs;

    /// <summary>Which.</summary>
    public required OwnerNotice Notice { get; init; }

    /// <summary>The postmark or the day it was handed to the carrier, if known; mail is given on deposit (Civ. Code § 8116(b)).</summary>
    public LocalDate? Mailed { get; init; }

    /// <summary>How it came (Civ. Code § 8190(b)); null where the file does not say.</summary>
    public Manner? Manner { get; init; }
}

/// <summary>
/// An owner who did not contract for the work gave notice of nonresponsibility (Civ. Code § 8444); <see cref="Entry.On"/> is the day it was
/// recorded.
/// </summary>
public sealed record NonresponsibilityRecorded : Entry
{
    internal override EntryKind Kind => OwnerKinds.NonresponsibilityRecorded;

    /// <summary>The day it was posted at the site, if known.</summary>
    public LocalDate? Posted { get; init; }

    /// <summary>The day on which that owner learned of the work, if known.</summary>
    public LocalDate? Knew { get; init; }

    /// <summary>Whether the lease in effect makes the tenant do the work; null where the file does not say.</summary>
    public bool? LeaseRequiresWork { get; init; }

    /// <summary>
    /// What it lacks of what the Code asks of it (Civ. Code § 8444(b)), in words, such as its verification; null where nothing is known to
    /// be lacking.
    /// </summary>
    public string? Lacks { get; init; }
}
