using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>Money on public work. Days counted apart with Python's calendar arithmetic; the payer's last day is rolled.</summary>
public sealed class PublicMoneyDueTests
{
    private static JobBuilder Sub(ClaimantRole role = ClaimantRole.Subcontractor) =>
        new JobBuilder().PublicWork().Role(role, "direct").Licensed("2020-01-01..").Furnished("2026-03-02", 50000m);

    private static JobBuilder Prime() =>
        new JobBuilder().PublicWork().Role(ClaimantRole.DirectContractor, "city").Licensed("2020-01-01..").Furnished("2026-03-02", 50000m);

    // Received Monday 11 May: Monday 18 May, for a progress payment and for retention alike.
    [Theory]
    [InlineData(PaymentOf.Progress, "prompt-payment.progress")]
    [InlineData(PaymentOf.Retention, "retention.due")]
    [Proves("Bus. & Prof. Code § 7108.5")]
    [Proves("Pub. Contract Code § 7107(d)")]
    public void A_contractor_passes_on_what_it_received_within_seven_days(PaymentOf of, string id)
    {
        var due = Sub().HirerPaid("2026-05-11", 12000m, of).On("2026-08-18").Get(id);
        Assert.Equal(["2026-05-18"], due.DaysOf());
        Assert.Equal(Standing.Open, due.Standing);
        Assert.Equal(720m, due.Amount); // 2% x 3 months
        Assert.Equal(Standing.NotYet, Sub().HirerPaid("2026-05-11", 12000m, of).On("2026-05-18").Get(id).Standing);
        Assert.Equal(Standing.InDoubt, Sub(ClaimantRole.Supplier).HirerPaid("2026-05-11", 12000m, of).On("2026-08-18").Get(id).Standing);
    }

    // Accepted Monday 11 May: the sixtieth day is Friday 10 July.
    [Theory]
    [InlineData("2026-07-10", Standing.NotYet, 0)]
    [InlineData("2026-10-12", Standing.Open, 720)]
    [Proves("Pub. Contract Code § 7107(c)")]
    public void The_entity_pays_retention_within_sixty_days_after_completion(string asOf, Standing expected, int penalty)
    {
        var due = Prime().Retained("2026-05-01", 12000m).Completed("2026-05-11", CompletionTheory.Acceptance).On(asOf).Get("retention.due");
        Assert.Equal(["2026-07-10"], due.DaysOf());
        Assert.Equal((expected, penalty), (due.Standing, due.Amount));
        Assert.Null(Prime().Retained("2026-05-01", 12000m).On(asOf).Find("retention.due"));
    }
}
