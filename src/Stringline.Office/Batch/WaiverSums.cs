using Stringline.Law;

namespace Stringline.Office.Batch;

/// <summary>What several waivers give away together, each reckoned by itself: two on one job may release the same dollars.</summary>
/// <param name="Papers">How many.</param>
/// <param name="Released">Dollars and cents that they release.</param>
/// <param name="Paid">Dollars and cents paid for that.</param>
/// <param name="Difference">Dollars and cents released less those paid.</param>
/// <param name="Beyond">How many may release more than is paid.</param>
internal sealed record WaiverSums(int Papers, decimal Released, decimal Paid, decimal Difference, int Beyond)
{
    /// <summary>None.</summary>
    public static WaiverSums None { get; } = new(0, 0m, 0m, 0m, 0);

    /// <summary>These and one more.</summary>
    public WaiverSums With(WaiverOutlook outlook) => new(
        Papers + 1,
        Released + outlook.Released,
        Paid + (outlook.Payment ?? 0m),
        Difference + (outlook.Difference ?? outlook.Released),
        Beyond + (outlook.MayGoBeyond ? 1 : 0));
}
