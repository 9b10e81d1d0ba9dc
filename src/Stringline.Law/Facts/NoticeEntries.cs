namespace Stringline.Law.Facts;

/// <summary>How a paper was given.</summary>
public enum Manner
{
    /// <summary>Personal delivery (Civ. Code § 8106(a)).</summary>
    Personal,

    /// <summary>Certified mail.</summary>
    CertifiedMail,

    /// <summary>Registered mail.</summary>
    RegisteredMail,

    /// <summary>Express mail of the post office.</summary>
    ExpressMail,

    /// <summary>Overnight delivery by an express service carrier.</summary>
    OvernightCarrier,

    /// <summary>First-class mail with a certificate of mailing: good for the claim of lien only (Civ. Code § 8416(c)).</summary>
    CertificateOfMailing,

    /// <summary>Left and mailed as Code Civ. Proc. § 415.20 provides (Civ. Code § 8106(c)).</summary>
    Substituted,
}

/// <summary>A kind of notice the claimant gives.</summary>
public enum NoticeKind
{
    /// <summary>Preliminary notice (Civ. Code § 8200 or § 9300).</summary>
    Preliminary,

    /// <summary>A claim for payment after completion.</summary>
    CompletionClaim,
}

/// <summary>How the estimate of the total price in a preliminary notice was reached (Civ. Code § 8202(a)(2)).</summary>
public enum EstimateBasis
{
    /// <summary>Worked out from what was known of the work.</summary>
    WorkedOut,

    /// <summary>A stock figure, worked out from nothing.</summary>
    StockFigure,
}

/// <summary>A notice given, and how.</summary>
public sealed record NoticeGiven : Entry
{
    /// <summary>Which notice.</summary>
    public required NoticeKind Notice { get; init; }

    /// <summary>Party ids to whom it was given.</summary>
    public required IReadOnlyList<string> To { get; init; }

    /// <summary>How.</summary>
    public required Manner Manner { get; init; }

    /// <summary>Article number of the mailing.</summary>
    public string? Article { get; init; }

    /// <summary>The estimate of the total price that a preliminary notice states, dollars and cents; null where the file does not say.</summary>
    public decimal? Estimate { get; init; }

    /// <summary>How the estimate was reached; null where the file does not say.</summary>
    public EstimateBasis? EstimateBasis { get; init; }
}

/// <summary>A stop payment notice was given (Civ. Code §§ 8502, 9352).</summary>
public sealed record StopPaymentGiven : Entry
{
    /// <summary>Party ids to whom it was given.</summary>
    public required IReadOnlyList<string> To { get; init; }

    /// <summary>Amount claimed, dollars and cents.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Whether a bond came with it (Civ. Code § 8532).</summary>
    public bool Bonded { get; init; }
}

/// <summary>Notice of a bond claim was given to surety and principal (Civ. Code § 8612).</summary>
public sealed record BondNoticeGiven : Entry
{
    /// <summary>Party ids to whom it was given.</summary>
    public required IReadOnlyList<string> To { get; init; }
}

/// <summary>A claim of lien of someone working under the claimant's own contract (Civ. Code § 8434).</summary>
public sealed record LowerTierClaim : Entry
{
    /// <summary>Dollars and cents claimed, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>By whom.</summary>
    public string? By { get; init; }
}
