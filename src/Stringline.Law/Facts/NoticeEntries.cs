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

    /// <summary>Plain first-class mail, without a postal record: good for no notice and no claim.</summary>
    FirstClassMail,

    /// <summary>E-mail: no manner of Civ. Code § 8106.</summary>
    Email,

    /// <summary>Fax: no manner of Civ. Code § 8106.</summary>
    Fax,

    /// <summary>Any other way: no manner of Civ. Code § 8106.</summary>
    Other,
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
    internal override EntryKind Kind => NoticeKinds.NoticeGiven;

    /// <summary>Which notice.</summary>
    public required NoticeKind Notice { get; init; }

    /// <summary>Party ids to whom it was given.</summary>
    public required IReadOnlyList<string> To { get; init; }

    /// <summary>How.</summary>
    public required Manner Manner { get; init; }

    /// <summary>Article number of the mailing.</summary>
    public string? Article { get; init; }

    /// <summary>
    /// The estimate of the total price that a preliminary notice states, dollars and cents; null where the file does not say.
    /// </summary>
    public decimal? Estimate { get; init; }

    /// <summary>How the estimate was reached; null where the file does not say.</summary>
    public EstimateBasis? EstimateBasis { get; init; }

    /// <summary>
    /// What the notice lacks of what the Code asks of it, in words, such as the statement of Civ. Code § 8202(a); null where nothing is
    /// known to be lacking.
    /// </summary>
    public string? Lacks { get; init; }

    /// <summary>
    /// Of a notice left and mailed: the day it was mailed, from which it is complete after five days (Civ. Code § 8116(c)); null where the
    /// file does not say.
    /// </summary>
    public LocalDate? Mailed { get; init; }

    /// <summary>
    /// Of a notice left and mailed: the tries to deliver by hand before, each on another day and at another time
    /// (Code Civ. Proc. § 415.20(b)); null where the file does not say.
    /// </summary>
    public int? Tries { get; init; }
}

/// <summary>A stop payment notice was given (Civ. Code §§ 8502, 9352).</summary>
public sealed record StopPaymentGiven : Entry
{
    internal override EntryKind Kind => NoticeKinds.StopPaymentGiven;

    /// <summary>Party ids to whom it was given.</summary>
    public required IReadOnlyList<string> To { get; init; }

    /// <summary>Amount claimed, dollars and cents.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Whether a bond came with it (Civ. Code § 8532).</summary>
    public bool Bonded { get; init; }

    /// <summary>The bond's amount, dollars and cents; null where the file does not say.</summary>
    public decimal? BondAmount { get; init; }

    /// <summary>How; null where the file does not say.</summary>
    public Manner? Manner { get; init; }

    /// <summary>Article number of the mailing.</summary>
    public string? Article { get; init; }

    /// <summary>Of a notice left and mailed: the day it was mailed; null where the file does not say.</summary>
    public LocalDate? Mailed { get; init; }

    /// <summary>
    /// Of a notice left and mailed: the tries to deliver by hand before, each on another day and at another time
    /// (Code Civ. Proc. § 415.20(b)); null where the file does not say.
    /// </summary>
    public int? Tries { get; init; }

    /// <summary>
    /// What it lacks of what the Code asks of it, in words, such as its verification; null where nothing is known to be lacking.
    /// </summary>
    public string? Lacks { get; init; }

    /// <summary>
    /// Whether ten dollars were paid with it, so that the public entity must tell of the time to sue (Civ. Code § 9362); null where the
    /// file does not say.
    /// </summary>
    public bool? TenDollars { get; init; }
}

/// <summary>Notice of a bond claim was given to surety and principal (Civ. Code § 8612).</summary>
public sealed record BondNoticeGiven : Entry
{
    internal override EntryKind Kind => NoticeKinds.BondNoticeGiven;

    /// <summary>Party ids to whom it was given.</summary>
    public required IReadOnlyList<string> To { get; init; }

    /// <summary>How; null where the file does not say.</summary>
    public Manner? Manner { get; init; }

    /// <summary>Article number of the mailing.</summary>
    public string? Article { get; init; }

    /// <summary>Of a notice left and mailed: the day it was mailed; null where the file does not say.</summary>
    public LocalDate? Mailed { get; init; }

    /// <summary>
    /// Of a notice left and mailed: the tries to deliver by hand before, each on another day and at another time
    /// (Code Civ. Proc. § 415.20(b)); null where the file does not say.
    /// </summary>
    public int? Tries { get; init; }

    /// <summary>The amount it states, dollars and cents; null where the file does not say.</summary>
    public decimal? Amount { get; init; }
}

/// <summary>A stop payment notice was released or reduced in writing (Civ. Code § 8128).</summary>
public sealed record StopPaymentReleased : Entry
{
    internal override EntryKind Kind => NoticeKinds.StopPaymentReleased;

    /// <summary>By how much it was reduced, dollars and cents, positive; null where the whole was released.</summary>
    public decimal? Amount { get; init; }

    /// <summary>The <see cref="Entry.Id"/> of the notice; null where the file does not say, or there is only one.</summary>
    public string? Of { get; init; }
}

/// <summary>The owner demanded a stop payment notice in writing (Civ. Code § 8520(b)).</summary>
public sealed record StopPaymentDemanded : Entry
{
    internal override EntryKind Kind => OwnerKinds.StopPaymentDemanded;

    /// <summary>The party id of the owner who demanded it; null where the file does not say.</summary>
    public string? From { get; init; }
}

/// <summary>A bond that releases money held on a stop payment notice was given (Civ. Code §§ 8510, 9364).</summary>
public sealed record StopPaymentBondGiven : Entry
{
    internal override EntryKind Kind => OwnerKinds.StopPaymentBondGiven;

    /// <summary>Amount of the bond, dollars and cents.</summary>
    public decimal? Amount { get; init; }

    /// <summary>The party id of the surety, if it is among the parties.</summary>
    public string? Surety { get; init; }
}

/// <summary>
/// The construction lender objected to the bond that came with a stop payment notice (Civ. Code § 8534); <see cref="Entry.On"/> is the day
/// of the objection.
/// </summary>
public sealed record BondObjected : Entry
{
    internal override EntryKind Kind => OwnerKinds.BondObjected;

    /// <summary>The party id of the lender; null where the file does not say.</summary>
    public string? By { get; init; }

    /// <summary>The day another bond was brought; null while none was.</summary>
    public LocalDate? NewBond { get; init; }
}

/// <summary>Those to whom a stop payment notice was given were told of the action on it (Civ. Code §§ 8550(e), 9504).</summary>
public sealed record ActionTold : Entry
{
    internal override EntryKind Kind => NoticeKinds.ActionTold;

    /// <summary>Party ids told.</summary>
    public required IReadOnlyList<string> To { get; init; }

    /// <summary>How; null where the file does not say.</summary>
    public Manner? Manner { get; init; }
}

/// <summary>A construction lender was looked for in the public record and none was found (Civ. Code §§ 8170, 8172, 8174).</summary>
public sealed record LenderSought : Entry
{
    internal override EntryKind Kind => NoticeKinds.LenderSought;

    /// <summary>Where, such as the permit or the deeds of trust.</summary>
    public string? Where { get; init; }
}

/// <summary>
/// The preliminary notice was filed with the county recorder, who then mails word of a notice of completion or cessation
/// (Civ. Code § 8214).
/// </summary>
public sealed record NoticeFiled : Entry
{
    internal override EntryKind Kind => NoticeKinds.NoticeFiled;

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}

/// <summary>
/// A claim of lien or a stop payment notice of someone working under the claimant's own contract (Civ. Code §§ 8434, 8542).
/// </summary>
public sealed record LowerTierClaim : Entry
{
    internal override EntryKind Kind => ClaimKinds.LowerTierClaim;

    /// <summary>Whether it is a stop payment notice; else it is a claim of lien.</summary>
    public bool StopPaymentNotice { get; init; }

    /// <summary>Dollars and cents claimed, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>By whom.</summary>
    public string? By { get; init; }
}
