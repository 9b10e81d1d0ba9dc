using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// A direct contractor is no claimant on public work (Civ. Code § 9100(b)): it owes no notice, and what is due to it is a debt.
/// </summary>
public sealed class DirectContractorOnPublicWorkTests
{
    private static JobBuilder Job() =>
        new JobBuilder().PublicWork().NoParty("direct").NoParty("sub").Role(ClaimantRole.DirectContractor, "city")
        .Price(88000m).Furnished("2025-08-05", 88000m).Completed("2025-10-22", CompletionTheory.Acceptance);

    [Fact]
    [Proves("Civ. Code § 9100(b)")]
    [Proves("Civ. Code § 9300(a)")]
    public void It_need_not_notify_itself_and_its_whole_demand_is_a_debt()
    {
        var assessment = Job().On("2025-12-01");
        Assert.Null(assessment.Find("preliminary-notice.last-day"));
        Assert.Null(assessment.Find("preliminary-notice.reaches-back-to"));
        Assert.Equal(88000m, assessment.Amount.Demand);
        Assert.Equal(0m, assessment.Amount.Step("outside-reach"));
        var none = assessment.Get("stop-payment-notice.last-day");
        Assert.Equal(Standing.Lost, none.Standing);
        Assert.True(none.Says("a debt of the public entity: $88,000.00"));
        Assert.DoesNotContain(assessment.Next, s => s.Finding == "preliminary-notice.last-day");
    }
}
