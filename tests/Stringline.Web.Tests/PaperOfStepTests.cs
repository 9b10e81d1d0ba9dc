using Stringline.Web.Papers;
using Stringline.Law.Facts;

namespace Stringline.Web.Tests;

/// <summary>A step leads to the paper that does it, and to none where no paper would.</summary>
public sealed class PaperOfStepTests
{
    [Theory]
    [InlineData("preliminary-notice.last-day", WorkKind.Private, "preliminary-notice")]
    [InlineData("preliminary-notice.last-day", WorkKind.Public, "public-preliminary-notice")]
    [InlineData("preliminary-notice.later-lender", WorkKind.Private, "preliminary-notice")]
    [InlineData("claim-of-lien.last-day", WorkKind.Private, "claim")]
    [InlineData("enforcement.last-day", WorkKind.Private, "notice-of-credit")]
    [InlineData("lis-pendens.last-day", WorkKind.Private, "notice-of-pendency")]
    [InlineData("release.answer-by", WorkKind.Private, "release")]
    [InlineData("release.partial", WorkKind.Private, "partial-release")]
    [InlineData("stop-payment-notice.last-day", WorkKind.Public, "public-stop-payment-notice")]
    [InlineData("stop-payment-notice.money-out", WorkKind.Public, "public-stop-payment-notice")]
    [InlineData("stop-payment-notice.owner", WorkKind.Private, "stop-payment-notice")]
    [InlineData("stop-payment-notice.lender", WorkKind.Private, "stop-payment-notice")]
    [InlineData("stop-payment-notice.lender.2", WorkKind.Private, "stop-payment-notice")]
    [InlineData("stop-payment-notice.owner-demand", WorkKind.Private, "stop-payment-notice")]
    [InlineData("stop-payment-notice.tell-of-action", WorkKind.Private, "action-notice")]
    [InlineData("stop-payment-notice.tell-of-action", WorkKind.Public, "action-notice")]
    [InlineData("summary-release.answer-last-day", WorkKind.Public, "counteraffidavit")]
    [InlineData("summary-release.answer-last-day.2", WorkKind.Public, "counteraffidavit")]
    [InlineData("dispute-claim.filing-last-day", WorkKind.Public, "dispute-claim")]
    [InlineData("dispute-claim.conference-last-day", WorkKind.Public, "conference-demand")]
    [InlineData("payment-bond.notice-last-day", WorkKind.Public, "public-bond-notice")]
    [InlineData("stop-work.posting", WorkKind.Private, "stop-work-notice")]
    [InlineData("owners-security.due", WorkKind.Private, "security-demand")]
    [InlineData("design-lien.demand-last-day", WorkKind.Private, "design-lien-demand")]
    [InlineData("design-lien.last-day", WorkKind.Private, "design-lien")]
    [InlineData("design-lien.conversion-last-day", WorkKind.Private, "converted-claim")]
    [InlineData("design-lien.release", WorkKind.Private, "design-lien-release")]
    // A suit, an answer in court and another bond are no papers of this catalogue.
    [InlineData("enforcement.later-claim-last-day", WorkKind.Private, null)]
    [InlineData("enforcement.stay-notice-last-day", WorkKind.Private, null)]
    [InlineData("release.hearing", WorkKind.Private, null)]
    [InlineData("stop-payment-notice.new-bond", WorkKind.Private, null)]
    [InlineData("debt.last-day", WorkKind.Private, null)]
    public void A_step_leads_to_its_paper(string finding, WorkKind work, string? paper) =>
        Assert.Equal(paper, PaperFit.ThatDoes(finding, work)?.Id);
}
