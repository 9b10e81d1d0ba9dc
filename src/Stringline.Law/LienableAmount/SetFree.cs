using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>
/// Money that a court ordered the public entity to release in a summary proceeding: the order settles how much may be withheld further
/// (Civ. Code § 9412(c)). It takes nothing from the claim on the payment bond nor from the debt (§ 9414).
/// </summary>
internal static class SetFree
{
    private const string Section = "Civ. Code § 9412(c)";

    /// <summary>
    /// Takes off what no stop payment notice can hold any more: of each order what goes beyond the excess of the notices over what was due
    /// then.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="reach">What the preliminary notice leaves within reach.</param>
    /// <param name="amount">The amount of the stop payment notice without it.</param>
    [Rule("Civ. Code § 9412(c)")]
    [Rule("Civ. Code § 9414")]
    public static Waterfall TakeOff(FactsAsOf facts, Reach reach, Waterfall amount)
    {
        if (Orders(facts) is not { Count: > 0 } orders)
            return amount;
        var off = 0m;
        foreach (var order in orders)
        {
            if (order.Amount is { } freed)
                off += BeyondExcess(facts, reach, order, freed);
        }

        off = Math.Min(off, amount.Demand);
        if (off <= 0)
            return amount;
        var step = new WaterfallStep("set-free", "Set free by the court", -off,
            Reason.Of(Section, $"The court's order settles what the public entity may withhold further: {off} of what is claimed can be "
                + $"held no more. The claim on the payment bond and the debt are as before (Civ. Code § 9414).", [.. orders]));
        return amount with
        {
            Demand = amount.Demand - off,
            AtLeast = Math.Max(0m, amount.AtLeast - off),
            AtMost = Math.Max(0m, amount.AtMost - off),
            Steps = [.. amount.Steps, step],
        };
    }

    /// <summary>How much of what notices state an order took from them: that of one given after it is not touched.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="firstGiven">The first day on which one of the notices was given; null where it is unknown.</param>
    public static decimal OfNoticesSince(FactsAsOf facts, LocalDate? firstGiven)
    {
        var off = 0m;
        foreach (var order in Orders(facts))
        {
            if (order.Amount is { } freed && !(order.On.Latest < firstGiven))
                off += freed;
        }

        return off;
    }

    // The court sets free what was claimed too much first; where the file does not say how much was claimed, the whole is taken off.
    private static decimal BeyondExcess(FactsAsOf facts, Reach reach, ReleaseOrdered order, decimal freed)
    {
        decimal? claimed = null;
        foreach (var paper in facts.All<StopPaymentGiven>())
        {
            if (paper.On.Earliest > order.On.Latest)
                continue;
            if (paper.Amount is not { } stated)
                return freed;
            claimed = (claimed ?? 0m) + stated;
        }

        if (claimed is not { } most)
            return freed;
        // The bond on public work has the same limits, and no order takes from it.
        var due = Demand.Of(facts.Through(order.On.Latest ?? facts.AsOf), reach, Remedy.PaymentBond).Demand;
        return Math.Max(0m, freed - Math.Max(0m, most - due));
    }

    private static IReadOnlyList<ReleaseOrdered> Orders(FactsAsOf facts) =>
        facts.Job.Work.Kind == WorkKind.Public ? facts.All<ReleaseOrdered>() : [];
}
