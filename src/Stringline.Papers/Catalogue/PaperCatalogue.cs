using Stringline.Law.Facts;
using Stringline.Papers.ClaimOfLien;
using Stringline.Papers.Completion;
using Stringline.Papers.DesignLien;
using Stringline.Papers.DisputedClaim;
using Stringline.Papers.Enforcement;
using Stringline.Papers.Mailing;
using Stringline.Papers.PaymentBond;
using Stringline.Papers.PreliminaryNotice;
using Stringline.Papers.PromptPayment;
using Stringline.Papers.StopPaymentNotice;
using Stringline.Papers.Waiver;

namespace Stringline.Papers.Catalogue;

/// <summary>Every paper that can be made from a job file: the one list of them.</summary>
public static class PaperCatalogue
{
    /// <summary>The papers, in the order in which a job comes to need them.</summary>
    public static IReadOnlyList<Paper> All { get; } =
    [
        .. PreliminaryNoticePaper.Papers,
        ProofOfNotice.Paper,
        CertifiedMailSheet.Paper,
        .. WaiverPaper.Papers,
        PaymentDemandPaper.Paper,
        StopWorkPaper.Paper,
        SecurityDemandPaper.Paper,
        DisputeClaimPaper.Paper,
        ConferenceDemandPaper.Paper,
        DisputedPortionPaper.Paper,
        ClaimRequestPaper.Paper,
        CompletionPaper.Paper,
        .. StopPaymentPaper.Papers,
        StopPaymentReleasePaper.Paper,
        ActionNoticePaper.Paper,
        ReleaseAffidavitPaper.Paper,
        CounteraffidavitPaper.Paper,
        .. BondNoticePaper.Papers,
        .. ClaimPapers.All,
        DesignDemandPaper.Paper,
        DesignLienPaper.Paper,
        DesignReleasePaper.Paper,
        CreditPaper.Paper,
        LisPendensPaper.Paper,
        .. ReleasePaper.Papers,
        ReleaseDemandPaper.Paper,
    ];

    /// <summary>The claim of mechanics lien.</summary>
    public static Paper ClaimOfLien => ClaimPapers.Claim;

    /// <summary>The waiver and release of that form.</summary>
    public static Paper Waiver(WaiverForm form) => WaiverPaper.Of(form);

    /// <summary>The proof that a notice was given, of whatever kind.</summary>
    public static Paper ProofThatNoticeWasGiven => ProofOfNotice.Paper;

    /// <summary>The paper with that id, or null.</summary>
    public static Paper? Find(string id) => All.FirstOrDefault(p => p.Id == id);
}
