namespace Stringline.Law.Facts;

/// <summary>Money received.</summary>
public sealed record Paid : Entry
{
    internal override EntryKind Kind => MoneyKinds.Paid;

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
    internal override EntryKind Kind => MoneyKinds.Credited;

    /// <summary>The <c>ref</c> of the work it belongs to, as for goods returned; null where the file does not say.</summary>
    public string? Toward { get; init; }

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
    internal override EntryKind Kind => MoneyKinds.Charged;

    /// <summary>Dollars and cents, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>For what.</summary>
    public required ChargeKind Of { get; init; }

    /// <summary>Reference by which payments may name it.</summary>
    public string? Ref { get; init; }
}

/// <summary>Retention withheld from the claimant.</summary>
public sealed record Retained : Entry
{
    internal override EntryKind Kind => MoneyKinds.Retained;

    /// <summary>Dollars and cents, positive.</summary>
    public required decimal Amount { get; init; }
}

/// <summary>The claimant gave a notice demanding payment due under its contract (Civ. Code § 8800).</summary>
public sealed record PaymentDemanded : Entry
{
    internal override EntryKind Kind => MoneyKinds.PaymentDemanded;

    /// <summary>Dollars and cents demanded, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>Party ids to whom it was given; empty where the file does not say.</summary>
    public IReadOnlyList<string> To { get; init; } = [];

    /// <summary>How; null where the file does not say.</summary>
    public Manner? Manner { get; init; }

    /// <summary>Article number of the mailing.</summary>
    public string? Article { get; init; }

    /// <summary>Of a demand left and mailed: the day it was mailed; null where the file does not say.</summary>
    public LocalDate? Mailed { get; init; }

    /// <summary>The day it was received, if known.</summary>
    public LocalDate? Received { get; init; }

    /// <summary>The day on which the sum falls due under the contract (Civ. Code § 8832); null where the file does not say.</summary>
    public LocalDate? Due { get; init; }

    /// <summary>
    /// Whether it says that a default has occurred under the contract, and its amount (Civ. Code § 8304(c)); null where the file does not
    /// say.
    /// </summary>
    public bool? OfDefault { get; init; }

    /// <summary>
    /// The day on which the public entity returned it as no proper request (Pub. Contract Code §§ 10261.5(b), 10853(b), 20104.50(c)); null
    /// where it did not.
    /// </summary>
    public LocalDate? Returned { get; init; }

    /// <summary>The day on which the entity received the corrected request; null where it did not, or the file does not say.</summary>
    public LocalDate? Resubmitted { get; init; }
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
    internal override EntryKind Kind => MoneyKinds.HirerPaid;

    /// <summary>The claimant's share of it, dollars and cents, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>Progress payment or retention.</summary>
    public required PaymentOf Of { get; init; }
}

/// <summary>Which money a dispute is about.</summary>
public enum DisputeAbout
{
    /// <summary>A progress payment.</summary>
    Progress,

    /// <summary>Retention.</summary>
    Retention,

    /// <summary>
    /// Other sums, such as extras or damages, so that what is due is not itself in dispute (United Riggers v. Coast Iron (2018) 4 Cal.5th
    /// 1082).
    /// </summary>
    OtherSums,
}

/// <summary>An amount that the payer disputes in good faith.</summary>
public sealed record Disputed : Entry
{
    internal override EntryKind Kind => MoneyKinds.Disputed;

    /// <summary>Dollars and cents in dispute, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>Which money it is about; null where the file does not say.</summary>
    public DisputeAbout? About { get; init; }

    /// <summary>
    /// The <see cref="Entry.Id"/> of the demand for payment it is about; null where the file does not say, or there is only one.
    /// </summary>
    public string? Demand { get; init; }

    /// <summary>What about.</summary>
    public string? Text { get; init; }
}

/// <summary>The claimant sent a claim under Civ. Code § 8850 by registered or certified mail.</summary>
public sealed record DisputeClaimSent : Entry
{
    internal override EntryKind Kind => DisputeKinds.DisputeClaimSent;

    /// <summary>Dollars and cents claimed, if money.</summary>
    public decimal? Amount { get; init; }

    /// <summary>The day the owner received it, if known.</summary>
    public LocalDate? Received { get; init; }

    /// <summary>
    /// How it was sent: registered or certified mail, return receipt requested, is asked; null where the file does not say.
    /// </summary>
    public Manner? Manner { get; init; }

    /// <summary>
    /// The day to which the parties extended the payer's time to answer (Civ. Code § 8850(d)(2); Pub. Contract Code § 9204(d)(1)(A)); null
    /// where they did not.
    /// </summary>
    public LocalDate? ExtendedTo { get; init; }

    /// <summary>
    /// The day on which the public entity's governing body meets next, where it must approve the answer
    /// (Pub. Contract Code § 9204(d)(1)(C)); null where the file does not say.
    /// </summary>
    public LocalDate? NextMeeting { get; init; }

    /// <summary>
    /// The day on which a local agency asked in writing for further documents (Pub. Contract Code § 20104.2(b), (c)); null where it did
    /// not.
    /// </summary>
    public LocalDate? DocumentsAsked { get; init; }

    /// <summary>The day on which it received them; null where it did not, or the file does not say.</summary>
    public LocalDate? DocumentsGiven { get; init; }
}

/// <summary>The owner or public entity answered the claim in writing (Civ. Code § 8850(d); Pub. Contract Code § 9204(d)(1)).</summary>
public sealed record DisputeClaimAnswered : Entry
{
    internal override EntryKind Kind => DisputeKinds.DisputeClaimAnswered;

    /// <summary>Dollars and cents it leaves undisputed; null where the file does not say.</summary>
    public decimal? Undisputed { get; init; }
}

/// <summary>A conference to settle the claim was demanded (Civ. Code § 8850(e); Pub. Contract Code § 9204(d)(2)).</summary>
public sealed record ConferenceDemanded : Entry
{
    internal override EntryKind Kind => DisputeKinds.ConferenceDemanded;

    /// <summary>How: registered or certified mail, return receipt requested, is asked; null where the file does not say.</summary>
    public Manner? Manner { get; init; }
}

/// <summary>The conference was held.</summary>
public sealed record ConferenceHeld : Entry
{
    internal override EntryKind Kind => DisputeKinds.ConferenceHeld;
}

/// <summary>A subcontractor asked the contractor to present its claim (Civ. Code § 8850(j); Pub. Contract Code § 9204(d)(5)).</summary>
public sealed record ClaimRequestMade : Entry
{
    internal override EntryKind Kind => DisputeKinds.ClaimRequestMade;

    /// <summary>Dollars and cents claimed; null where the file does not say.</summary>
    public decimal? Amount { get; init; }
}

/// <summary>The contractor told the subcontractor whether it presented the claim.</summary>
public sealed record ClaimRequestAnswered : Entry
{
    internal override EntryKind Kind => DisputeKinds.ClaimRequestAnswered;

    /// <summary>Whether it was presented; null where the file does not say.</summary>
    public bool? Presented { get; init; }
}

/// <summary>The direct contractor received final payment from the public entity (Pub. Contract Code § 20104.2(a)).</summary>
public sealed record FinalPayment : Entry
{
    internal override EntryKind Kind => PublicKinds.FinalPayment;
}

/// <summary>The State agency's final written decision on the claim was served (Pub. Contract Code § 10240.1).</summary>
public sealed record FinalDecisionServed : Entry
{
    internal override EntryKind Kind => PublicKinds.FinalDecisionServed;
}

/// <summary>The claimant told the payer that the disputed work is done (Civ. Code § 8816(a)).</summary>
public sealed record DisputedWorkDone : Entry
{
    internal override EntryKind Kind => DisputeKinds.DisputedWorkDone;

    /// <summary>
    /// The day on which the payer accepted that work (Civ. Code § 8816(b)); null where it did not, or the file does not say.
    /// </summary>
    public LocalDate? Accepted { get; init; }

    /// <summary>The day on which the payer rejected it; null where it did not, or the file does not say.</summary>
    public LocalDate? Rejected { get; init; }
}

/// <summary>The contractor gave the stop work notice (Civ. Code § 8834).</summary>
public sealed record StopWorkNoticeGiven : Entry
{
    internal override EntryKind Kind => DisputeKinds.StopWorkNoticeGiven;

    /// <summary>Party ids to whom it, or a copy, was given; empty where the file does not say.</summary>
    public IReadOnlyList<string> To { get; init; } = [];

    /// <summary>
    /// The day on which notice of intent was posted at the site and at its main office (Civ. Code § 8834(a)), the first it can be where
    /// that is in doubt; null where the file does not say.
    /// </summary>
    public LocalDate? Posted { get; init; }

    /// <summary>The last day on which it can have been posted; null where the day is known, or the file says nothing of it.</summary>
    public LocalDate? PostedBy { get; init; }
}

/// <summary>
/// Which of the two notices goes before work is suspended under the claims procedure of private work (Civ. Code § 8850(k)).
/// </summary>
public enum SuspensionNotice
{
    /// <summary>That payment is due, or that the claim is deemed denied (paragraph (1)).</summary>
    PaymentDue,

    /// <summary>The 10-day notice of intent to stop work (paragraph (2)).</summary>
    StopWork,
}

/// <summary>One of the two notices before work is suspended was sent to the owner (Civ. Code § 8850(k)).</summary>
public sealed record SuspensionNoticeSent : Entry
{
    internal override EntryKind Kind => DisputeKinds.SuspensionNoticeSent;

    /// <summary>Which.</summary>
    public required SuspensionNotice Notice { get; init; }

    /// <summary>How: registered or certified mail, return receipt requested, is asked; null where the file does not say.</summary>
    public Manner? Manner { get; init; }
}

/// <summary>The direct contractor demanded security from the owner of a large project (Civ. Code § 8712).</summary>
public sealed record SecurityDemanded : Entry
{
    internal override EntryKind Kind => DisputeKinds.SecurityDemanded;

    /// <summary>How; null where the file does not say.</summary>
    public Manner? Manner { get; init; }
}

/// <summary>The owner of a large project provided the security (Civ. Code §§ 8712, 8720).</summary>
public sealed record SecurityProvided : Entry
{
    internal override EntryKind Kind => DisputeKinds.SecurityProvided;

    /// <summary>Dollars and cents of it, positive; null where the file does not say.</summary>
    public decimal? Amount { get; init; }

    /// <summary>The day on which it ended, where the owner did not maintain it; null while it stands.</summary>
    public LocalDate? Until { get; init; }
}

/// <summary>How the claimant's contract ended.</summary>
public enum ContractEnd
{
    /// <summary>It was performed.</summary>
    Performed,

    /// <summary>It was breached.</summary>
    Breached,

    /// <summary>The work was abandoned.</summary>
    Abandoned,

    /// <summary>It was rescinded.</summary>
    Rescinded,

    /// <summary>It was ended under its own terms.</summary>
    Terminated,
}

/// <summary>The claimant's contract ended (Civ. Code §§ 8412, 8430(c)).</summary>
public sealed record ContractEnded : Entry
{
    internal override EntryKind Kind => WorkKinds.ContractEnded;

    /// <summary>How.</summary>
    public required ContractEnd How { get; init; }

    /// <summary>
    /// Whether the payer did it: true, the one who hired the claimant; false, the claimant; null where the file does not say.
    /// </summary>
    public bool? ByPayer { get; init; }
}
