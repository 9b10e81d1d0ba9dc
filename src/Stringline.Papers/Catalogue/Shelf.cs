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
using Stringline.Papers.Writing;

namespace Stringline.Papers.Catalogue;

/// <summary>A paper, and how it is made.</summary>
/// <param name="Paper">What it is.</param>
/// <param name="Make">Makes it with its sheet, or refuses.</param>
internal sealed record Shelved(Paper Paper, Func<Matter, PacketOutcome> Make)
{
    /// <summary>A paper that is written as a bundle and bound like every other.</summary>
    public static Shelved Of(Paper paper, Func<Matter, Bundle> write) => new(paper, matter =>
    {
        matter.OnlyOn(paper);
        return Binding.Print(paper, matter, write(matter));
    });
}

/// <summary>The papers with what makes them: the one list that the catalogue and the scrivener share.</summary>
internal static class Shelf
{
    /// <summary>The papers, in the order in which a job comes to need them.</summary>
    public static IReadOnlyList<Shelved> Papers { get; } =
    [
        .. PreliminaryNoticePaper.Papers,
        ProofOfNotice.Shelved,
        CertifiedMailSheet.Shelved,
        .. WaiverPaper.Papers,
        PaymentDemandPaper.Shelved,
        StopWorkPaper.Shelved,
        SecurityDemandPaper.Shelved,
        DisputeClaimPaper.Shelved,
        ConferenceDemandPaper.Shelved,
        DisputedPortionPaper.Shelved,
        ClaimRequestPaper.Shelved,
        CompletionPaper.Shelved,
        .. StopPaymentPaper.Papers,
        StopPaymentReleasePaper.Shelved,
        ActionNoticePaper.Shelved,
        ReleaseAffidavitPaper.Shelved,
        CounteraffidavitPaper.Shelved,
        .. BondNoticePaper.Papers,
        .. ClaimShelf.Papers,
        DesignDemandPaper.Shelved,
        DesignLienPaper.Shelved,
        DesignReleasePaper.Shelved,
        CreditPaper.Shelved,
        LisPendensPaper.Shelved,
        .. ReleasePaper.Papers,
        ReleaseDemandPaper.Shelved,
    ];
}
