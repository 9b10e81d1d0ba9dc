using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Desk.Web.Html;

/// <summary>Entries of the journal in words for a person.</summary>
internal static class EntryWords
{
    /// <summary>What it is, in two to four words: <c>Notice given</c>.</summary>
    public static string Kind(Entry entry) => entry switch
    {
        Furnished => "Furnished",
        FurnishingEnded => "Furnished for the last time",
        Change => "Change",
        Paid => "Paid",
        Credited => "Credit allowed",
        Charged => "Charged",
        NoticeGiven { Notice: NoticeKind.Preliminary } => "Preliminary notice given",
        NoticeGiven => "Notice given",
        Completed => "Said to be complete",
        LaborCeased => "Labor stopped",
        OwnerRecorded { Notice: OwnerNotice.Completion } => "Owner recorded notice of completion",
        OwnerRecorded { Notice: OwnerNotice.Acceptance } => "Notice of acceptance recorded",
        OwnerRecorded => "Owner recorded notice of cessation",
        OwnerToldUs => "Owner's copy came",
        Waived => "Waiver signed",
        ClaimServed => "Claim served",
        ClaimRecorded => "Claim of lien recorded",
        CreditRecorded => "Notice of credit recorded",
        ActionFiled => "Action filed",
        LisPendensRecorded => "Notice of pendency recorded",
        ReleaseRecorded => "Release recorded",
        ReleaseBondRecorded => "Release bond recorded",
        ReleaseDemanded => "Release demanded",
        StopPaymentGiven => "Stop payment notice given",
        BondNoticeGiven => "Bond notice given",
        Withdrawn => "Taken back",
        IndexSearched => "Index searched",
        Retained => "Retention withheld",
        PaymentDemanded => "Payment demanded",
        HirerPaid => "Customer was paid",
        Disputed => "Amount disputed",
        LowerTierClaim => "Claim from below",
        NonresponsibilityRecorded => "Notice of nonresponsibility",
        DisputeClaimSent => "Claim sent to the owner",
        WorkWillNotCommence => "Work will not begin",
        LenderSought => "No construction lender found",
        NoticeFiled => "Preliminary notice filed with the recorder",
        StopPaymentReleased { Amount: null } => "Stop payment notice released",
        StopPaymentReleased => "Stop payment notice reduced",
        StopPaymentDemanded => "Stop payment notice demanded",
        StopPaymentBondGiven => "Bond freed the money held",
        BondObjected => "Lender objected to the bond",
        ActionTold => "Notice of the suit given",
        ActionServed => "Summons served",
        TrialBegun => "Trial begun",
        ActionEnded => "Suit ended",
        ReleasePetitionServed => "Petition to release served",
        ContractEnded => "Contract ended",
        DisputeClaimAnswered => "Owner answered the claim",
        ConferenceDemanded => "Conference demanded",
        ConferenceHeld => "Conference held",
        FinalPayment => "Final payment received by the contractor",
        FinalDecisionServed => "Final decision served",
        ClaimRequestMade => "Subcontractor asked to present its claim",
        ClaimRequestAnswered => "Contractor answered that request",
        StopWorkNoticeGiven => "Stop work notice given",
        SuspensionNoticeSent { Notice: SuspensionNotice.PaymentDue } => "Notice that payment is due",
        SuspensionNoticeSent => "Ten-day notice sent",
        SecurityDemanded => "Security demanded",
        SecurityProvided => "Security provided",
        DisputedWorkDone => "Disputed work done",
        ReleaseAffidavitServed => "Affidavit to free money served",
        CounteraffidavitServed => "Counteraffidavit served",
        RightsActionFiled => "Action to declare rights filed",
        HearingNoticed => "Notice of hearing given",
        ReleaseOrdered { Amount: null } => "Court denied the release",
        ReleaseOrdered => "Court set money free",
        _ => throw new ArgumentException($"No words for {entry.GetType().Name}.", nameof(entry)),
    };

    /// <summary>What it says beside its kind and day; empty where there is nothing more.</summary>
    public static string Particulars(Entry entry, JobFile job)
    {
        string Named(string id) => job.Party(id)?.Name ?? id;
        string Names(IReadOnlyList<string> ids) => string.Join(", ", ids.Select(Named));
        string? To(IReadOnlyList<string> ids) => ids.Count == 0 ? null : "to " + Names(ids);
        string? In(string? id) => id is null ? null : job.Work.Structures.FirstOrDefault(structure => structure.Id == id)?.Text ?? id;
        string? Lacks(string? lacks) => lacks is null ? null : "lacks " + lacks;
        string Earlier(string id) => job.Entries.FirstOrDefault(earlier => earlier.Id == id) is { } found ? Short(found) : id;
        return Join(entry switch
        {
            Furnished e => [e.Text, e.Ref, In(e.Structure)],
            Change e => [e.Text, e.Agreed ? "agreed in writing" : "not agreed in writing", e.InDirectContract is { } inside ? inside ? "in the direct contract" : "not in the direct contract" : null],
            Paid e => [e.From is null ? null : "by " + e.From, e.Toward is null ? null : "toward " + e.Toward],
            Credited e => [e.Text, e.Toward is null ? null : "toward " + e.Toward],
            Charged e => [Of(e.Of), e.Ref],
            NoticeGiven e => [To(e.To), By(e.Manner), e.Article, Lacks(e.Lacks)],
            Completed e => [On(e.By), e.Contested ? "disputed" : null, In(e.Structure)],
            LaborCeased e => [e.Until is { } until ? "resumed " + LawText.Day(until) : "still stopped", e.Unfinished is { } left ? left ? "work left unfinished" : "work finished" : null],
            OwnerRecorded e => [e.Instrument, e.States is { } day ? "states " + LawText.Day(day) : null, Lacks(e.Lacks)],
            OwnerToldUs e => [By(e.Manner), e.Mailed is { } day ? "mailed " + LawText.Day(day) : null],
            Waived e => [Form(e.Form), e.Through is { } day ? "through " + LawText.Day(day) : null, e.Excepted is > 0 ? LawText.Money(e.Excepted.Value) + " excepted" : null, e.PaymentCleared is { } cleared ? "payment cleared " + LawText.Day(cleared) : null],
            ClaimServed e => [To(e.To), By(e.Manner), e.Article],
            ClaimRecorded e => [Lien(e.Lien), In(e.Structure), e.Amends is { } amended ? "amends " + Earlier(amended) : null, e.Instrument, Lacks(e.Lacks)],
            CreditRecorded e => ["credit until " + LawText.Day(e.Until), e.Instrument],
            ActionFiled e => [e.Enforces.Count == 0 ? null : "on " + string.Join(", ", e.Enforces.Select(Enforced)), e.Against.Count == 0 ? null : "against " + Names(e.Against), e.SmallClaims ? "small claims" : null, e.Court, e.Case],
            LisPendensRecorded e => [e.Instrument],
            ReleaseRecorded e => [e.Satisfied == true ? "satisfied" : null, e.Instrument],
            ReleaseBondRecorded e => [e.Instrument],
            ReleaseDemanded e => [e.Instrument],
            StopPaymentGiven e => [To(e.To), By(e.Manner), e.Article, e.Bonded ? "bonded" : null, Lacks(e.Lacks)],
            BondNoticeGiven e => [To(e.To), By(e.Manner), e.Article],
            Withdrawn e => ["entry " + e.Supersedes],
            HirerPaid e => [e.Of == PaymentOf.Retention ? "retention" : "progress payment"],
            Disputed e => [About(e.About), e.Text],
            LowerTierClaim e => [e.StopPaymentNotice ? "stop payment notice" : null, e.By],
            PaymentDemanded e => [To(e.To), By(e.Manner), e.Article, e.Due is { } due ? "due " + LawText.Day(due) : null, e.Returned is { } back ? "returned " + LawText.Day(back) : null, e.Resubmitted is { } again ? "corrected one received " + LawText.Day(again) : null],
            NonresponsibilityRecorded e => [Lacks(e.Lacks)],
            DisputeClaimSent e => [By(e.Manner), e.Received is { } got ? "received " + LawText.Day(got) : null, e.ExtendedTo is { } extended ? "time to answer extended to " + LawText.Day(extended) : null, e.DocumentsAsked is { } asked ? "more documents asked for " + LawText.Day(asked) : null, e.DocumentsGiven is { } given ? "given " + LawText.Day(given) : null],
            LenderSought e => [e.Where],
            NoticeFiled e => [e.Instrument],
            StopPaymentReleased e => [e.Of is { } released ? Earlier(released) : null],
            StopPaymentDemanded e => [e.From is { } owner ? "by " + Named(owner) : null],
            StopPaymentBondGiven e => [e.Surety is { } surety ? Named(surety) : null],
            BondObjected e => [e.By is { } lender ? Named(lender) : null, e.NewBond is { } brought ? "another bond brought " + LawText.Day(brought) : null],
            ActionTold e => [To(e.To), By(e.Manner)],
            ActionServed e => [e.To.Count == 0 ? null : "on " + Names(e.To)],
            ActionEnded e => [End(e.How), e.WithoutPrejudice == true ? "without prejudice" : null],
            ReleasePetitionServed e => [By(e.Manner), e.Hearing is { } heard ? "hearing " + LawText.Day(heard) : null],
            ContractEnded e => [End(e.How), e.ByPayer is { } payer ? payer ? "by the one who hired" : "by the claimant" : null],
            ConferenceDemanded e => [By(e.Manner)],
            ClaimRequestAnswered e => [e.Presented is { } presented ? presented ? "presented" : "not presented" : null],
            StopWorkNoticeGiven e => [To(e.To), e.Posted is { } posted ? "posted " + LawText.Day(posted) : null, e.PostedBy is { } latest ? "posted by " + LawText.Day(latest) + " at the latest" : null],
            SuspensionNoticeSent e => [By(e.Manner)],
            SecurityDemanded e => [By(e.Manner)],
            DisputedWorkDone e => [e.Accepted is { } yes ? "accepted " + LawText.Day(yes) : null, e.Rejected is { } no ? "rejected " + LawText.Day(no) : null],
            SecurityProvided e => [e.Until is { } ended ? "ended " + LawText.Day(ended) : null],
            ReleaseAffidavitServed e => [By(e.Manner), e.AnswerBy is { } by ? "answer by " + LawText.Day(by) : null],
            CounteraffidavitServed e => [To(e.To), By(e.Manner)],
            RightsActionFiled e => [e.Case],
            HearingNoticed e => ["hearing " + LawText.Day(e.Hearing), To(e.To), By(e.Manner), e.By is { } mover ? "given by " + Named(mover) : null],
            _ => [],
        });
    }

    /// <summary>Dollars and cents that it names; null where it names none. Money taken from what is owed is not marked negative.</summary>
    public static decimal? Dollars(Entry entry) => entry switch
    {
        Furnished e => e.Amount,
        Change e => e.Amount,
        Paid e => e.Amount,
        Credited e => e.Amount,
        Charged e => e.Amount,
        Waived e => e.Amount,
        ClaimRecorded e => e.Amount,
        ReleaseBondRecorded e => e.Amount,
        StopPaymentGiven e => e.Amount,
        Retained e => e.Amount,
        PaymentDemanded e => e.Amount,
        HirerPaid e => e.Amount,
        Disputed e => e.Amount,
        LowerTierClaim e => e.Amount,
        DisputeClaimSent e => e.Amount,
        StopPaymentReleased e => e.Amount,
        StopPaymentBondGiven e => e.Amount,
        DisputeClaimAnswered e => e.Undisputed,
        ClaimRequestMade e => e.Amount,
        ReleaseAffidavitServed e => e.Amount,
        ReleaseOrdered e => e.Amount,
        SecurityProvided e => e.Amount,
        _ => null,
    };

    /// <summary>When it happened: a day, a span of work, a span of doubt, or that nobody knows.</summary>
    public static string When(Entry entry) => entry switch
    {
        Furnished { On.Earliest: { } first, Until.Latest: { } last } when first != last => $"{LawText.Day(first)} to {LawText.Day(last)}",
        _ => Days.Of(entry.On) is { } days ? days.ToString() : "day not known",
    };

    /// <summary>In one line for a link: kind and day.</summary>
    public static string Short(Entry entry) => $"{Kind(entry)}, {When(entry)}";

    private static string Join(IEnumerable<string?> parts) => string.Join("; ", parts.Where(part => !string.IsNullOrWhiteSpace(part)));

    private static string Of(ChargeKind kind) => kind switch
    {
        ChargeKind.Interest => "interest",
        ChargeKind.Finance => "finance charge",
        ChargeKind.Delay => "delay",
        ChargeKind.LostProfit => "lost profit",
        ChargeKind.AttorneyFees => "attorney's fees",
        ChargeKind.Other => "other than work",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of charge."),
    };

    private static string? By(Manner? manner) => manner switch
    {
        null => null,
        Manner.Personal => "personal delivery",
        Manner.CertifiedMail => "certified mail",
        Manner.RegisteredMail => "registered mail",
        Manner.ExpressMail => "express mail",
        Manner.OvernightCarrier => "overnight carrier",
        Manner.CertificateOfMailing => "mail with a certificate of mailing",
        Manner.Substituted => "left and mailed",
        Manner.FirstClassMail => "plain first-class mail",
        Manner.Email => "e-mail",
        Manner.Fax => "fax",
        Manner.Other => "another way",
        _ => throw new ArgumentOutOfRangeException(nameof(manner), manner, "Not a manner of giving."),
    };

    private static string On(CompletionTheory theory) => theory switch
    {
        CompletionTheory.Actual => "actual completion",
        CompletionTheory.Occupation => "by occupation",
        CompletionTheory.Cessation => "by cessation of labor",
        CompletionTheory.Acceptance => "by acceptance",
        _ => throw new ArgumentOutOfRangeException(nameof(theory), theory, "Not a theory of completion."),
    };

    private static string? Lien(LienKind? kind) => kind switch
    {
        null => null,
        LienKind.Mechanics => "mechanics lien",
        LienKind.Design => "design professional's lien",
        LienKind.Converted => "converted from a design professional's lien",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of lien."),
    };

    private static string Enforced(ActionOn on) => on switch
    {
        ActionOn.Lien => "the lien",
        ActionOn.StopPaymentNotice => "a stop payment notice",
        ActionOn.PaymentBond => "a payment bond",
        ActionOn.ReleaseBond => "a lien release bond",
        ActionOn.Debt => "the debt",
        _ => throw new ArgumentOutOfRangeException(nameof(on), on, "Nothing an action enforces."),
    };

    private static string End(ActionEnd end) => end switch
    {
        ActionEnd.Won => "judgment for the claimant",
        ActionEnd.LostAtTrial => "judgment against the claimant",
        ActionEnd.Dismissed => "dismissed",
        ActionEnd.Settled => "settled",
        ActionEnd.ReleaseOrdered => "claim ordered released",
        _ => throw new ArgumentOutOfRangeException(nameof(end), end, "Not an end of an action."),
    };

    private static string End(ContractEnd end) => end switch
    {
        ContractEnd.Performed => "performed",
        ContractEnd.Breached => "breached",
        ContractEnd.Abandoned => "abandoned",
        ContractEnd.Rescinded => "rescinded",
        ContractEnd.Terminated => "ended under its own terms",
        _ => throw new ArgumentOutOfRangeException(nameof(end), end, "Not an end of a contract."),
    };

    private static string? About(DisputeAbout? about) => about switch
    {
        null => null,
        DisputeAbout.Progress => "progress payment",
        DisputeAbout.Retention => "retention",
        DisputeAbout.OtherSums => "other sums",
        _ => throw new ArgumentOutOfRangeException(nameof(about), about, "Nothing a dispute is about."),
    };

    private static string Form(WaiverForm form) => form switch
    {
        WaiverForm.ConditionalProgress => "conditional, progress payment",
        WaiverForm.UnconditionalProgress => "unconditional, progress payment",
        WaiverForm.ConditionalFinal => "conditional, final payment",
        WaiverForm.UnconditionalFinal => "unconditional, final payment",
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "Not a form of waiver."),
    };
}
