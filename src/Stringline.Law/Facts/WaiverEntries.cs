namespace Stringline.Law.Facts;

/// <summary>Which statutory waiver and release.</summary>
public enum WaiverForm
{
    /// <summary>Conditional, progress payment (Civ. Code § 8132).</summary>
    ConditionalProgress,

    /// <summary>Unconditional, progress payment (Civ. Code § 8134).</summary>
    UnconditionalProgress,

    /// <summary>Conditional, final payment (Civ. Code § 8136).</summary>
    ConditionalFinal,

    /// <summary>Unconditional, final payment (Civ. Code § 8138).</summary>
    UnconditionalFinal,
}

/// <summary>A waiver and release the claimant signed.</summary>
public sealed record Waived : Entry
{
    internal override EntryKind Kind => MoneyKinds.Waived;

    /// <summary>Which form.</summary>
    public required WaiverForm Form { get; init; }

    /// <summary>Through date of a progress form.</summary>
    public LocalDate? Through { get; init; }

    /// <summary>The payment the form describes, dollars and cents.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Dollars and cents listed as excepted.</summary>
    public decimal? Excepted { get; init; }

    /// <summary>The day the described payment cleared; null while it has not.</summary>
    public LocalDate? PaymentCleared { get; init; }

    /// <summary>False where the paper does not follow the statutory form; null where the file does not say.</summary>
    public bool? InStatutoryForm { get; init; }

    /// <summary>
    /// Of a conditional progress form: the days of the earlier waivers that it lists as not paid (Civ. Code § 8132, exception (3)); empty
    /// where it lists none, null where the file does not say.
    /// </summary>
    public IReadOnlyList<LocalDate>? UnpaidWaivers { get; init; }

    /// <summary>
    /// Whether it settles a dispute or an action and names the lien or claim (Civ. Code § 8130); null where the file does not say.
    /// </summary>
    public bool? Settlement { get; init; }
}
