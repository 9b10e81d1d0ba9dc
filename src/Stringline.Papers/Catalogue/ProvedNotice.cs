using Stringline.Law.Facts;

namespace Stringline.Papers.Catalogue;

/// <summary>A kind of notice of which a proof can be made (Civ. Code § 8118).</summary>
public enum ProvedNotice
{
    /// <summary>Preliminary notice (Civ. Code §§ 8200, 9300).</summary>
    Preliminary,

    /// <summary>A claim for payment after completion.</summary>
    CompletionClaim,

    /// <summary>Stop payment notice (Civ. Code §§ 8502, 9352).</summary>
    StopPayment,

    /// <summary>Release or reduction of a stop payment notice (Civ. Code § 8128).</summary>
    StopPaymentRelease,

    /// <summary>Notice to surety and bond principal (Civ. Code §§ 8612, 9560).</summary>
    Bond,

    /// <summary>Notice demanding payment (Civ. Code § 8800).</summary>
    PaymentDemand,

    /// <summary>A design professional's notice of demand and default (Civ. Code § 8304(c)).</summary>
    Default,

    /// <summary>Stop work notice (Civ. Code § 8834).</summary>
    StopWork,

    /// <summary>Notice demanding security (Civ. Code § 8712).</summary>
    Security,

    /// <summary>Notice that disputed work is done (Civ. Code § 8816).</summary>
    DisputedWork,

    /// <summary>A claim under the claims procedure of private work (Civ. Code § 8850).</summary>
    DisputeClaim,

    /// <summary>Demand for a conference on that claim (Civ. Code § 8850(e)).</summary>
    Conference,

    /// <summary>Notice that payment is due, before work is suspended (Civ. Code § 8850(k)(1)).</summary>
    SuspensionDue,

    /// <summary>Ten-day notice of intent to stop work (Civ. Code § 8850(k)(2)).</summary>
    SuspensionIntent,

    /// <summary>Notice of commencement of an action on a stop payment notice (Civ. Code §§ 8550(e), 9504).</summary>
    Action,

    /// <summary>The direct contractor's affidavit for release of funds (Civ. Code § 9402).</summary>
    ReleaseAffidavit,

    /// <summary>A copy of the counteraffidavit (Civ. Code § 9406(a)).</summary>
    Counteraffidavit,

    /// <summary>Notice of the hearing on release of funds (Civ. Code § 9408).</summary>
    Hearing,

    /// <summary>The owner's demand for release of a claim of lien (Civ. Code § 8482).</summary>
    ReleaseDemand,
}

/// <summary>The kinds of notice in words, and which entry of a job file tells of which.</summary>
public static class ProvedNotices
{
    /// <summary>Every kind, in the order in which a job comes to need it.</summary>
    public static IReadOnlyList<ProvedNotice> All { get; } = Enum.GetValues<ProvedNotice>();

    /// <summary>The word for it on the command line.</summary>
    public static string Word(this ProvedNotice kind) => Names(kind).Word;

    /// <summary>What it is called on paper and on screen, such as "stop payment notice".</summary>
    public static string Words(this ProvedNotice kind) => Names(kind).Words;

    /// <summary>The kind with that word; null where none has it.</summary>
    public static ProvedNotice? Of(string word) => All.Where(kind => kind.Word() == word)
        .Select(kind => (ProvedNotice?)kind).FirstOrDefault();

    /// <summary>The kind of notice that an entry tells of; null where it tells of none that this file's side gave.</summary>
    public static ProvedNotice? Of(Entry entry) => entry switch
    {
        NoticeGiven { Notice: NoticeKind.Preliminary } => ProvedNotice.Preliminary,
        NoticeGiven { Notice: NoticeKind.CompletionClaim } => ProvedNotice.CompletionClaim,
        StopPaymentGiven => ProvedNotice.StopPayment,
        StopPaymentReleased => ProvedNotice.StopPaymentRelease,
        BondNoticeGiven => ProvedNotice.Bond,
        PaymentDemanded { OfDefault: true } => ProvedNotice.Default,
        PaymentDemanded => ProvedNotice.PaymentDemand,
        StopWorkNoticeGiven => ProvedNotice.StopWork,
        SecurityDemanded => ProvedNotice.Security,
        DisputedWorkDone => ProvedNotice.DisputedWork,
        DisputeClaimSent => ProvedNotice.DisputeClaim,
        ConferenceDemanded => ProvedNotice.Conference,
        SuspensionNoticeSent { Notice: SuspensionNotice.PaymentDue } => ProvedNotice.SuspensionDue,
        SuspensionNoticeSent => ProvedNotice.SuspensionIntent,
        ActionTold => ProvedNotice.Action,
        CounteraffidavitServed => ProvedNotice.Counteraffidavit,
        HearingNoticed { By: null } => ProvedNotice.Hearing,
        _ => null,
    };

    private static (string Word, string Words) Names(ProvedNotice kind) => kind switch
    {
        ProvedNotice.Preliminary => ("preliminary", "preliminary notice"),
        ProvedNotice.CompletionClaim => ("claim-for-payment", "claim for payment after completion"),
        ProvedNotice.StopPayment => ("stop-payment", "stop payment notice"),
        ProvedNotice.StopPaymentRelease => ("stop-payment-release", "release or reduction of stop payment notice"),
        ProvedNotice.Bond => ("bond", "notice to surety and bond principal"),
        ProvedNotice.PaymentDemand => ("payment-demand", "notice demanding payment"),
        ProvedNotice.Default => ("default", "design professional’s demand and notice of default"),
        ProvedNotice.StopWork => ("stop-work", "stop work notice"),
        ProvedNotice.Security => ("security", "notice demanding security"),
        ProvedNotice.DisputedWork => ("disputed-work", "notice that disputed work is done"),
        ProvedNotice.DisputeClaim => ("dispute-claim", "claim under the claims procedure"),
        ProvedNotice.Conference => ("conference", "demand for a conference to settle the claim"),
        ProvedNotice.SuspensionDue => ("suspension-due", "notice that payment is due, before work is suspended"),
        ProvedNotice.SuspensionIntent => ("suspension-intent", "ten-day notice of intent to stop work"),
        ProvedNotice.Action => ("action", "notice of commencement of action"),
        ProvedNotice.ReleaseAffidavit => ("release-affidavit", "affidavit for release of funds, with a copy of it"),
        ProvedNotice.Counteraffidavit => ("counteraffidavit", "copy of the counteraffidavit"),
        ProvedNotice.Hearing => ("hearing", "notice of the hearing on release of funds"),
        ProvedNotice.ReleaseDemand => ("release-demand", "demand for release of claim of lien"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such notice."),
    };
}
