using Stringline.Law.Counting;
using Stringline.Law.Facts;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>
/// The estimate of the total price of the work provided and to be provided that a preliminary or stop payment notice states.
/// </summary>
public static class PriceEstimate
{
    /// <summary>
    /// The agreed price with the changes agreed so far, dollars and cents; null where no total price is agreed, so that somebody must say
    /// it.
    /// </summary>
    [Rule("Civ. Code § 8202(a)(2)")]
    [Rule("Civ. Code § 9303")]
    public static decimal? Of(FactsAsOf facts) => facts.Job.Contract.Price is { } price
        ? price + Total.Of(facts.All<Change>().Where(c => c.Agreed), c => c.Amount)
        : null;
}
