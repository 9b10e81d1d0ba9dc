namespace Stringline.Law.Facts;

/// <summary>One dated fact of the job file. Its cases are the sealed records that derive from it.</summary>
public abstract record Entry
{
    private protected Entry()
    {
    }

    /// <summary>Place in the file's list of entries, from 0.</summary>
    public required int Index { get; init; }

    /// <summary>When it happened; for a span of work, its first day.</summary>
    public required DayFact On { get; init; }

    /// <summary>Name by which a later entry may replace this one; unique in the file.</summary>
    public string? Id { get; init; }

    /// <summary>The <see cref="Id"/> of the entry that this one replaces; nothing is erased, the older one just counts no more.</summary>
    public string? Supersedes { get; init; }

    /// <summary>The day on which the claimant learned it; null: on the day it happened.</summary>
    public LocalDate? Learned { get; init; }

    /// <summary>The entry's JSON path in the file, such as <c>entries[3]</c>.</summary>
    public string Path => $"entries[{Index}]";
}

/// <summary>Labor, service, equipment or material furnished on a day or over a span.</summary>
public sealed record Furnished : Entry
{
    /// <summary>Last day of the span; the same as <see cref="Entry.On"/> for a single day.</summary>
    public required DayFact Until { get; init; }

    /// <summary>Price of what was furnished, in dollars and cents; null where it is not priced.</summary>
    public decimal? Amount { get; init; }

    /// <summary>What it was.</summary>
    public string? Text { get; init; }

    /// <summary>Reference by which payments may name it.</summary>
    public string? Ref { get; init; }
}

/// <summary>The claimant will furnish no more.</summary>
public sealed record FurnishingEnded : Entry;

/// <summary>A change order or extra.</summary>
public sealed record Change : Entry
{
    /// <summary>Dollars and cents added to the price; negative for a deduction.</summary>
    public required decimal Amount { get; init; }

    /// <summary>Whether it was agreed in writing (Civ. Code § 8430(c)).</summary>
    public required bool Agreed { get; init; }

    /// <summary>What it was for.</summary>
    public string? Text { get; init; }
}

/// <summary>Money received.</summary>
public sealed record Paid : Entry
{
    /// <summary>Dollars and cents, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>Who paid.</summary>
    public string? From { get; init; }

    /// <summary>The <c>ref</c> to which it was directed; null where nobody directed it (Civ. Code § 1479).</summary>
    public string? Toward { get; init; }
}

/// <summary>A credit, return or back charge allowed.</summary>
public sealed record Credited : Entry
{
    /// <summary>Dollars and cents, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>What it was for.</summary>
    public string? Text { get; init; }
}

/// <summary>What a charge that is not for work was billed for.</summary>
public enum ChargeKind
{
    /// <summary>Interest.</summary>
    Interest,

    /// <summary>Finance or service charge.</summary>
    Finance,

    /// <summary>Delay, disruption or extended overhead.</summary>
    Delay,

    /// <summary>Lost profit.</summary>
    LostProfit,

    /// <summary>Attorney's fees.</summary>
    AttorneyFees,

    /// <summary>Anything else that is not work.</summary>
    Other,
}

/// <summary>Billed, but not for work: never part of a claim of lien.</summary>
public sealed record Charged : Entry
{
    /// <summary>Dollars and cents, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>For what.</summary>
    public required ChargeKind Of { get; init; }

    /// <summary>Reference by which payments may name it.</summary>
    public string? Ref { get; init; }
}

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
}

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
    /// <summary>On which theory.</summary>
    public required CompletionTheory By { get; init; }

    /// <summary>Whether somebody disputes it.</summary>
    public bool Contested { get; init; }
}

/// <summary>Labor on the whole work stopped: <see cref="Entry.On"/> is the last day of labor.</summary>
public sealed record LaborCeased : Entry
{
    /// <summary>The day labor resumed; null while it is still stopped.</summary>
    public LocalDate? Until { get; init; }
}

/// <summary>A notice the owner records.</summary>
public enum OwnerNotice
{
    /// <summary>Notice of completion (Civ. Code § 8182).</summary>
    Completion,

    /// <summary>Notice of cessation (Civ. Code § 8188).</summary>
    Cessation,
}

/// <summary>The owner recorded a notice of completion or cessation.</summary>
public sealed record OwnerRecorded : Entry
{
    /// <summary>Which.</summary>
    public required OwnerNotice Notice { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }

    /// <summary>The day of completion (or on which labor ceased) that it states.</summary>
    public LocalDate? States { get; init; }

    /// <summary>The party id of the direct contractor for whose contract alone it was recorded (Civ. Code § 8186); null for the whole work.</summary>
    public string? ContractOf { get; init; }
}

/// <summary>We received the owner's copy of the recorded notice (Civ. Code § 8190).</summary>
public sealed record OwnerToldUs : Entry
{
    /// <summary>Which.</summary>
    public required OwnerNotice Notice { get; init; }

    /// <summary>The postmark or the day it was handed to the carrier, if known; mail is given on deposit (Civ. Code § 8116(b)).</summary>
    public LocalDate? Mailed { get; init; }
}

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
}

/// <summary>A copy of the claim of lien was served (Civ. Code § 8416(c)).</summary>
public sealed record ClaimServed : Entry
{
    /// <summary>Party ids served.</summary>
    public required IReadOnlyList<string> To { get; init; }

    /// <summary>How.</summary>
    public required Manner Manner { get; init; }

    /// <summary>Article number of the mailing.</summary>
    public string? Article { get; init; }
}

/// <summary>A claim of mechanics lien was recorded.</summary>
public sealed record ClaimRecorded : Entry
{
    /// <summary>The county in which it was recorded; null for the county of the site (Civ. Code § 8060).</summary>
    public string? County { get; init; }

    /// <summary>The demand it states, dollars and cents.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}

/// <summary>A notice of credit was recorded (Civ. Code § 8460(b)).</summary>
public sealed record CreditRecorded : Entry
{
    /// <summary>The day the credit ends.</summary>
    public required LocalDate Until { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}

/// <summary>An action to enforce was filed.</summary>
public sealed record ActionFiled : Entry
{
    /// <summary>Court.</summary>
    public string? Court { get; init; }

    /// <summary>Case number.</summary>
    public string? Case { get; init; }
}

/// <summary>A notice of pendency of action was recorded (Civ. Code § 8461).</summary>
public sealed record LisPendensRecorded : Entry
{
    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}

/// <summary>A release of the claim of lien was recorded.</summary>
public sealed record ReleaseRecorded : Entry
{
    /// <summary>Whether it says that the debt is satisfied; false where it only gives up the claim; null where the file does not say.</summary>
    public bool? Satisfied { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}

/// <summary>A lien release bond was recorded (Civ. Code § 8424).</summary>
public sealed record ReleaseBondRecorded : Entry
{
    /// <summary>The day notice of it, with a copy, was given to the claimant (Civ. Code § 8424(c)); null where the file does not say.</summary>
    public LocalDate? NoticeGiven { get; init; }

    /// <summary>Amount of the bond, dollars and cents.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}

/// <summary>The owner demanded a release (Civ. Code § 8482).</summary>
public sealed record ReleaseDemanded : Entry
{
    /// <summary>Recorder's instrument number of the claim it names.</summary>
    public string? Instrument { get; init; }
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

/// <summary>An entry made by mistake is taken back: it names it in <see cref="Entry.Supersedes"/> and says nothing else.</summary>
public sealed record Withdrawn : Entry;

/// <summary>The county index was searched for the owner's notices and nothing unknown was found.</summary>
public sealed record IndexSearched : Entry;

/// <summary>Retention withheld from the claimant.</summary>
public sealed record Retained : Entry
{
    /// <summary>Dollars and cents, positive.</summary>
    public required decimal Amount { get; init; }
}

/// <summary>The claimant gave a notice demanding payment due under its contract (Civ. Code § 8800).</summary>
public sealed record PaymentDemanded : Entry
{
    /// <summary>Dollars and cents demanded, positive.</summary>
    public required decimal Amount { get; init; }
}

/// <summary>Which money the hirer received.</summary>
public enum PaymentOf
{
    /// <summary>A progress payment.</summary>
    Progress,

    /// <summary>Retention.</summary>
    Retention,
}

/// <summary>The one who hired the claimant was paid for the claimant's work.</summary>
public sealed record HirerPaid : Entry
{
    /// <summary>The claimant's share of it, dollars and cents, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>Progress payment or retention.</summary>
    public required PaymentOf Of { get; init; }
}

/// <summary>An amount that the payer disputes in good faith.</summary>
public sealed record Disputed : Entry
{
    /// <summary>Dollars and cents in dispute, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>What about.</summary>
    public string? Text { get; init; }
}

/// <summary>A claim of lien of someone working under the claimant's own contract (Civ. Code § 8434).</summary>
public sealed record LowerTierClaim : Entry
{
    /// <summary>Dollars and cents claimed, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>By whom.</summary>
    public string? By { get; init; }
}

/// <summary>An owner who did not contract for the work gave notice of nonresponsibility (Civ. Code § 8444); <see cref="Entry.On"/> is the day it was recorded.</summary>
public sealed record NonresponsibilityRecorded : Entry
{
    /// <summary>The day it was posted at the site, if known.</summary>
    public LocalDate? Posted { get; init; }

    /// <summary>The day on which that owner learned of the work, if known.</summary>
    public LocalDate? Knew { get; init; }

    /// <summary>Whether the lease in effect makes the tenant do the work; null where the file does not say.</summary>
    public bool? LeaseRequiresWork { get; init; }
}

/// <summary>The claimant sent a claim under Civ. Code § 8850 by registered or certified mail.</summary>
public sealed record DisputeClaimSent : Entry
{
    /// <summary>Dollars and cents claimed, if money.</summary>
    public decimal? Amount { get; init; }

    /// <summary>The day the owner received it, if known.</summary>
    public LocalDate? Received { get; init; }
}

/// <summary>The claimant knew, or had reason to know, that the work will not be commenced (Civ. Code § 8312).</summary>
public sealed record WorkWillNotCommence : Entry;
