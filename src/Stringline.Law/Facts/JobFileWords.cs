namespace Stringline.Law.Facts;

/// <summary>The words of the job file's closed sets. Reader, writer and screens take them from here only.</summary>
public static class JobFileWords
{
    /// <summary><c>work.kind</c>.</summary>
    public static WordTable Kind { get; } = new(
        "private", "public", "federal");

    /// <summary><c>work.use</c>.</summary>
    public static WordTable Use { get; } = new(
        "commercial",
        "residential",
        "owner-occupied-1-to-4");

    /// <summary><c>claimant.role</c>.</summary>
    public static WordTable Role { get; } = new(
        "direct-contractor",
        "subcontractor",
        "supplier",
        "equipment-lessor",
        "laborer",
        "design-professional");

    /// <summary><c>parties[].capacity</c>.</summary>
    public static WordTable Capacity { get; } = new(
        "owner",
        "direct-contractor",
        "subcontractor",
        "construction-lender",
        "surety",
        "public-entity",
        "supplier",
        "architect",
        "owners-agent",
        "association");

    /// <summary><c>parties[].holdsTitleAs.form</c>.</summary>
    public static WordTable TitleForm { get; } = new(
        "individual",
        "joint-tenants",
        "trust",
        "company",
        "estate",
        "public-entity");

    /// <summary><c>charged.of</c>.</summary>
    public static WordTable Charge { get; } = new(
        "interest",
        "finance",
        "delay",
        "lost-profit",
        "attorney-fees",
        "other");

    /// <summary><c>manner</c> of a paper given.</summary>
    public static WordTable Manner { get; } = new(
        "personal",
        "certified-mail",
        "registered-mail",
        "express-mail",
        "overnight-carrier",
        "certificate-of-mailing",
        "substituted",
        "first-class-mail",
        "email",
        "fax",
        "other");

    /// <summary><c>notice-given.notice</c>.</summary>
    public static WordTable Notice { get; } = new(
        "preliminary", "completion-claim");

    /// <summary><c>notice-given.estimateBasis</c>.</summary>
    public static WordTable Basis { get; } = new(
        "worked-out", "stock-figure");

    /// <summary><c>completed.by</c>.</summary>
    public static WordTable Completion { get; } = new(
        "actual",
        "occupation",
        "cessation",
        "acceptance");

    /// <summary><c>owner-recorded.notice</c> and <c>owner-told-us.notice</c>.</summary>
    public static WordTable OwnerNotice { get; } = new(
        "completion", "cessation", "acceptance");

    /// <summary><c>waived.form</c>: the section that prescribes the form.</summary>
    public static WordTable Form { get; } = new(
        "8132",
        "8134",
        "8136",
        "8138");

    /// <summary><c>hirer-paid.of</c>.</summary>
    public static WordTable PaymentOf { get; } = new("progress", "retention");

    /// <summary><c>claim-recorded.lien</c>.</summary>
    public static WordTable LienKind { get; } = new(
        "mechanics",
        "design",
        "converted");

    /// <summary><c>action-filed.enforces[]</c>.</summary>
    public static WordTable ActionOn { get; } = new(
        "lien",
        "stop-payment-notice",
        "payment-bond",
        "release-bond",
        "debt");

    /// <summary><c>action-ended.how</c>.</summary>
    public static WordTable ActionEnd { get; } = new(
        "won",
        "lost-at-trial",
        "dismissed",
        "settled",
        "release-ordered");

    /// <summary><c>disputed.about</c>.</summary>
    public static WordTable DisputeAbout { get; } = new(
        "progress",
        "retention",
        "other-sums");

    /// <summary><c>suspension-notice-sent.notice</c>.</summary>
    public static WordTable SuspensionNotice { get; } = new("payment-due", "stop-work");

    /// <summary><c>contract-ended.how</c>.</summary>
    public static WordTable ContractEnd { get; } = new(
        "performed",
        "breached",
        "abandoned",
        "rescinded",
        "terminated");

    /// <summary><c>release-affidavit-served.ground</c>.</summary>
    public static WordTable ReleaseGround { get; } = new(
        "not-such-a-claim",
        "not-such-a-claimant",
        "excessive",
        "no-basis");

    /// <summary><c>parties[].addressKind</c>.</summary>
    public static WordTable AddressKind { get; } = new(
        "residence",
        "business",
        "permit",
        "trust-deed",
        "post-office-box");

    /// <summary><c>parties[].tookTitleBy</c>.</summary>
    public static WordTable TitleSource { get; } = new(
        "sale",
        "foreclosure",
        "court",
        "fiduciary");

    /// <summary><c>license.active[].cause</c>.</summary>
    public static WordTable LapseCause { get; } = new(
        "renewal",
        "insurance",
        "other");

    /// <summary><c>work.body</c>.</summary>
    public static WordTable PublicBody { get; } = new(
        "local",
        "state",
        "general-services",
        "transportation",
        "state-university",
        "university-or-court");

    /// <summary>The word of <c>hirer-paid.of</c>.</summary>
    public static string Word(PaymentOf value) => PaymentOf.Words[(int)value];

    /// <summary>The word of <c>work.kind</c>.</summary>
    public static string Word(WorkKind value) => Kind.Words[(int)value];

    /// <summary>The word of <c>work.use</c>.</summary>
    public static string Word(WorkUse value) => Use.Words[(int)value];

    /// <summary>The word of <c>claimant.role</c>.</summary>
    public static string Word(ClaimantRole value) => Role.Words[(int)value];

    /// <summary>The word of <c>parties[].capacity</c>.</summary>
    public static string Word(PartyCapacity value) => Capacity.Words[(int)value];

    /// <summary>The word of <c>parties[].holdsTitleAs.form</c>.</summary>
    public static string Word(TitleForm value) => TitleForm.Words[(int)value];

    /// <summary>The word of <c>charged.of</c>.</summary>
    public static string Word(ChargeKind value) => Charge.Words[(int)value];

    /// <summary>The word of <c>manner</c>.</summary>
    public static string Word(Manner value) => Manner.Words[(int)value];

    /// <summary>The word of <c>notice-given.notice</c>.</summary>
    public static string Word(NoticeKind value) => Notice.Words[(int)value];

    /// <summary>The word of <c>notice-given.estimateBasis</c>.</summary>
    public static string Word(EstimateBasis value) => Basis.Words[(int)value];

    /// <summary>The word of <c>completed.by</c>.</summary>
    public static string Word(CompletionTheory value) => Completion.Words[(int)value];

    /// <summary>The word of an owner's notice.</summary>
    public static string Word(OwnerNotice value) => OwnerNotice.Words[(int)value];

    /// <summary>The section that prescribes a waiver form.</summary>
    public static string Word(WaiverForm value) => Form.Words[(int)value];

    /// <summary>The word of <c>claim-recorded.lien</c>.</summary>
    public static string Word(LienKind value) => LienKind.Words[(int)value];

    /// <summary>The word of <c>action-filed.enforces[]</c>.</summary>
    public static string Word(ActionOn value) => ActionOn.Words[(int)value];

    /// <summary>The word of <c>action-ended.how</c>.</summary>
    public static string Word(ActionEnd value) => ActionEnd.Words[(int)value];

    /// <summary>The word of <c>disputed.about</c>.</summary>
    public static string Word(DisputeAbout value) => DisputeAbout.Words[(int)value];

    /// <summary>The word of <c>suspension-notice-sent.notice</c>.</summary>
    public static string Word(SuspensionNotice value) => SuspensionNotice.Words[(int)value];

    /// <summary>The word of <c>contract-ended.how</c>.</summary>
    public static string Word(ContractEnd value) => ContractEnd.Words[(int)value];

    /// <summary>The word of <c>release-affidavit-served.ground</c>.</summary>
    public static string Word(ReleaseGround value) => ReleaseGround.Words[(int)value];

    /// <summary>The word of <c>parties[].addressKind</c>.</summary>
    public static string Word(AddressKind value) => AddressKind.Words[(int)value];

    /// <summary>The word of <c>parties[].tookTitleBy</c>.</summary>
    public static string Word(TitleSource value) => TitleSource.Words[(int)value];

    /// <summary>The word of <c>license.active[].cause</c>.</summary>
    public static string Word(LapseCause value) => LapseCause.Words[(int)value];

    /// <summary>The word of <c>work.body</c>.</summary>
    public static string Word(PublicBody value) => PublicBody.Words[(int)value];
}
