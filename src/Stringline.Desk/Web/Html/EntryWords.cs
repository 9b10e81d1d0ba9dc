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
        _ => throw new ArgumentException($"No words for {entry.GetType().Name}.", nameof(entry)),
    };

    /// <summary>What it says beside its kind and day; empty where there is nothing more.</summary>
    public static string Particulars(Entry entry, JobFile job)
    {
        string? To(IReadOnlyList<string> ids) => ids.Count == 0 ? null : "to " + string.Join(", ", ids.Select(id => job.Party(id)?.Name ?? id));
        return Join(entry switch
        {
            Furnished e => [e.Text, e.Ref],
            Change e => [e.Text, e.Agreed ? "agreed in writing" : "not agreed in writing"],
            Paid e => [e.From is null ? null : "by " + e.From, e.Toward is null ? null : "toward " + e.Toward],
            Credited e => [e.Text],
            Charged e => [Of(e.Of), e.Ref],
            NoticeGiven e => [To(e.To), By(e.Manner), e.Article],
            Completed e => [On(e.By), e.Contested ? "disputed" : null],
            LaborCeased e => [e.Until is { } until ? "resumed " + LawText.Day(until) : "still stopped"],
            OwnerRecorded e => [e.Instrument, e.States is { } day ? "states " + LawText.Day(day) : null],
            OwnerToldUs e => [e.Mailed is { } day ? "mailed " + LawText.Day(day) : null],
            Waived e => [Form(e.Form), e.Through is { } day ? "through " + LawText.Day(day) : null, e.Excepted is > 0 ? LawText.Money(e.Excepted.Value) + " excepted" : null, e.PaymentCleared is { } cleared ? "payment cleared " + LawText.Day(cleared) : null],
            ClaimServed e => [To(e.To), By(e.Manner), e.Article],
            ClaimRecorded e => [e.Instrument],
            CreditRecorded e => ["credit until " + LawText.Day(e.Until), e.Instrument],
            ActionFiled e => [e.Court, e.Case],
            LisPendensRecorded e => [e.Instrument],
            ReleaseRecorded e => [e.Satisfied == true ? "satisfied" : null, e.Instrument],
            ReleaseBondRecorded e => [e.Instrument],
            ReleaseDemanded e => [e.Instrument],
            StopPaymentGiven e => [To(e.To), e.Bonded ? "bonded" : null],
            BondNoticeGiven e => [To(e.To)],
            Withdrawn e => ["entry " + e.Supersedes],
            HirerPaid e => [e.Of == PaymentOf.Retention ? "retention" : "progress payment"],
            Disputed e => [e.Text],
            LowerTierClaim e => [e.By],
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

    private static string By(Manner manner) => manner switch
    {
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

    private static string Form(WaiverForm form) => form switch
    {
        WaiverForm.ConditionalProgress => "conditional, progress payment",
        WaiverForm.UnconditionalProgress => "unconditional, progress payment",
        WaiverForm.ConditionalFinal => "conditional, final payment",
        WaiverForm.UnconditionalFinal => "unconditional, final payment",
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "Not a form of waiver."),
    };
}
