using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>What may be claimed by each remedy, and what is owed by any road; each worked out when first asked for.</summary>
public sealed class Amounts
{
    private static readonly int Remedies = Enum.GetValues<Remedy>().Length;

    private readonly FactsAsOf facts;
    private readonly Reach reach;
    private readonly Outcome license;

    // Those of a job are asked for on any thread: two that get here make the same.
    private readonly Waterfall?[] made = new Waterfall?[Remedies];

    /// <summary>Makes ready.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="reach">What the preliminary notice leaves within reach.</param>
    /// <param name="license">Whether the claimant was licensed.</param>
    internal Amounts(FactsAsOf facts, Reach reach, Outcome license)
    {
        this.facts = facts;
        this.reach = reach;
        this.license = license;
        Main = RemedyLaw.Main(facts.Job);
    }

    /// <summary>The remedy that is asked about first: the lien, or what takes its place.</summary>
    public Remedy Main { get; }

    /// <summary>
    /// The amount of a remedy with its steps; null where this claimant has no such remedy on this work. The payment bond's is by the road
    /// that no preliminary notice limits.
    /// </summary>
    public Waterfall? Of(Remedy remedy)
    {
        if (made[(int)remedy] is { } before)
            return before;
        if (RemedyLaw.Of(remedy, facts.Job) is null)
            return null;
        return made[(int)remedy] = Barred(Demand.Of(facts, remedy == Remedy.PaymentBond ? Reach.Everything : reach, remedy));
    }

    /// <summary>The demand by a remedy, dollars and cents; nothing where there is no such remedy.</summary>
    public decimal DemandOf(Remedy remedy) =>
        // The commonest question by far, answered without the steps where the two remedies have the same limits.
        remedy == Remedy.StopPaymentNotice && Main == Remedy.Lien && HasNoLimitOfTheLienAlone()
        ? Of(Remedy.Lien)!.Demand : Of(remedy)?.Demand ?? 0m;

    /// <summary>The demand by a remedy within the reach of the preliminary notice, whatever a court set free.</summary>
    internal decimal WithinReach(Remedy remedy) => Barred(Demand.Of(facts, reach, remedy)).Demand;

    /// <summary>
    /// Dollars and cents owed on the job, whether or not they may be claimed; null where the file does not give what the work was worth.
    /// </summary>
    public decimal? Owed => IsUnknown ? null : Of(Remedy.Debt)?.InAll ?? Of(Main)!.InAll;

    /// <summary>The price agreed in the contract; null where none is.</summary>
    public decimal? AgreedPrice => facts.Job.Contract.Price;

    /// <summary>Whether the file does not give what the work was worth.</summary>
    public bool IsUnknown => Of(Main)!.IsUnknown;

    private bool HasNoLimitOfTheLienAlone() => facts.Job.Contract.ReasonableValue is null && facts.All<Change>().Count == 0;

    /// <summary>
    /// One who was never licensed for the work recovers nothing for it, by any road; a federal bond is no remedy of the State's that it
    /// could bar.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7031(a)")]
    private Waterfall Barred(Waterfall amount)
    {
        if (license.Standing != Standing.Lost || facts.Job.Work.Kind == WorkKind.Federal || amount.AtMost == 0 && !amount.IsUnknown)
            return amount;
        var step = new WaterfallStep("barred", "Barred for want of a license", -amount.Demand,
            Reason.Of("Bus. & Prof. Code § 7031(a)", $"Without a license no compensation for the work can be recovered, by this or any "
                + $"other road.", [.. license.Why]));
        return amount with { Demand = 0m, AtLeast = 0m, AtMost = 0m, InDoubt = 0m, IsUnknown = false, Questions = [],
            Steps = [.. amount.Steps, step] };
    }
}
