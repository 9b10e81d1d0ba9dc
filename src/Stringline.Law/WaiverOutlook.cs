using Stringline.Law.Facts;

namespace Stringline.Law;

/// <summary>What a waiver and release would do to the demand, before anybody signs it.</summary>
/// <param name="Now">Dollars and cents that may be claimed now, before the payment is entered.</param>
/// <param name="Then">Dollars and cents that are left once it binds.</param>
/// <param name="Payment">Dollars and cents of the payment; null where none is told.</param>
public sealed record WaiverOutlook(decimal Now, decimal Then, decimal? Payment)
{
    /// <summary>Dollars and cents that it releases.</summary>
    public decimal Released => Now - Then;

    /// <summary>Dollars and cents that it releases beyond the payment; null where it releases no more than is paid.</summary>
    public decimal? BeyondPayment => Released > Payment ? Released - Payment : null;

    /// <summary>The outlook of a paper that would bind.</summary>
    /// <param name="assessment">What the law makes of the job without it.</param>
    /// <param name="paper">The paper as signed and bound.</param>
    public static WaiverOutlook Of(Assessment assessment, Waived paper)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        ArgumentNullException.ThrowIfNull(paper);
        return new WaiverOutlook(assessment.Amount.Demand, assessment.Supposing(paper).Amount.Demand, paper.Amount);
    }
}
