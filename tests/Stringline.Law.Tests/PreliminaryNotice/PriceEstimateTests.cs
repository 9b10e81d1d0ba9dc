using Stringline.Law.PreliminaryNotice;

namespace Stringline.Law.Tests.PreliminaryNotice;

public sealed class PriceEstimateTests
{
    // Civ. Code §§ 8202(a)(2), 9303: an estimate of the total price of the work provided and to be provided.
    [Fact]
    [Proves("Civ. Code § 8202(a)(2)")]
    [Proves("Civ. Code § 9303")]
    public void It_is_the_agreed_price_with_the_agreed_changes_whatever_was_furnished()
    {
        var job = new JobBuilder().Price(10_000m).Furnished("2026-03-02", 500m).Changed("2026-03-03", 750.50m)
            .Changed("2026-03-04", 300m, agreed: false).Changed("2026-09-01", 900m);
        Assert.Equal(10_750.50m, PriceEstimate.Of(job.FactsOn("2026-04-01")));
        Assert.Null(PriceEstimate.Of(new JobBuilder().Furnished("2026-03-02", 500m).FactsOn("2026-04-01")));
    }
}
