using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>
/// The claimant's demand after deducting all just credits and offsets (Civ. Code §§ 8416(a)(1), 8430), for each remedy by its own limits.
/// </summary>
public static class Demand
{
    /// <summary>Works out the waterfall of the remedy that is asked about first on this work.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="reach">What the preliminary notice leaves within reach.</param>
    public static Waterfall Of(FactsAsOf facts, Reach reach) => Of(facts, reach, RemedyLaw.Main(facts.Job));

    /// <summary>Works out the waterfall of a remedy.</summary>
    /// <param name="facts">The facts; through the day of a paper, see <see cref="FactsAsOf.Through"/>.</param>
    /// <param name="reach">What the preliminary notice leaves within reach; of no account for a remedy that it does not limit.</param>
    /// <param name="remedy">The remedy; one that this work has.</param>
    /// <exception cref="ArgumentException">This claimant has no such remedy on this work.</exception>
    [Rule("Civ. Code § 8416(a)(1)")]
    public static Waterfall Of(FactsAsOf facts, Reach reach, Remedy remedy)
    {
        var law = RemedyLaw.Of(remedy, facts.Job) ?? throw new ArgumentException($"No {remedy} on work of this kind.", nameof(remedy));
        var steps = new List<WaterfallStep>();
        var work = new WorkValue(facts, law, steps);
        var straddling = law.Reach is null ? work.AllWithinReach() : work.TakeOffOutsideReach(reach, law.Reach, steps);
        var charges = ChargesLeftOut.Of(facts);
        var doubts = new AmountDoubts(work, charges);
        List<Obligation> owed = [.. work.Items, .. charges];
        var undirected = AmountDoubts.Undirected(facts, work.Items);
        List<Obligation> otherwise = undirected is null ? [] : owed.ConvertAll(static o => o.Copy());
        var application = Receipts.Apply(facts, owed);
        if (undirected is not null)
            Receipts.Apply(facts, otherwise, creditsToSecured: true);
        Receipts.Write(facts, law, application, steps);
        var waivers = law.WaiversBind ? Released.TakeOff(facts, work.Items, steps) : [];
        var released = 0m;
        foreach (var waiver in waivers)
            released = waiver.Binds ? Math.Max(released, waiver.Released) : released;
        ChargesLeftOut.Write(facts, law, charges, steps);
        var unknown = doubts.IsUnknown(facts);
        AddExcess(law, work, application.Excess - work.NotYetValued, unknown, steps);
        var demand = SecuredUnpaid(work.Items) - released;
        var waterfall = new Waterfall(demand, steps, Total.Of(charges, static c => c.Value), straddling) { Remedy = remedy,
            Section = law.Due, IsUnknown = unknown, Waivers = waivers };
        var measured = Released.WithDoubt(doubts.Measure(facts, waterfall, undirected, otherwise, released));
        return remedy == Remedy.StopPaymentNotice ? SetFree.TakeOff(facts, reach, measured) : measured;
    }

    /// <summary>
    /// Everything owed on a job by that day, with what is still unpaid of each after all that was received; earliest first.
    /// </summary>
    internal static IReadOnlyList<Obligation> Owed(FactsAsOf facts, Reach reach)
    {
        var law = RemedyLaw.Of(RemedyLaw.Main(facts.Job), facts.Job)!;
        var steps = new List<WaterfallStep>();
        var work = new WorkValue(facts, law, steps);
        if (law.Reach is null)
            work.AllWithinReach();
        else
            work.TakeOffOutsideReach(reach, law.Reach, steps);
        List<Obligation> owed = [.. work.Items, .. ChargesLeftOut.Of(facts)];
        Receipts.Apply(facts, owed);
        return owed;
    }

    /// <summary>What is unpaid of the work within reach.</summary>
    internal static decimal SecuredUnpaid(List<Obligation> items)
    {
        var sum = 0m;
        foreach (var item in items)
            sum += item.Secured ? item.Unpaid : 0m;
        return sum;
    }

    // Where the file does not say what the work was worth, nothing was received beyond what is owed; a price received in full is owed in
    // full.
    private static void AddExcess(RemedyLaw law, WorkValue work, decimal excess, bool unknown, List<WaterfallStep> steps)
    {
        if (excess == 0)
            return;
        if (unknown)
        {
            steps.Insert(work.NotYetValued > 0
                ? work.PriceSteps : steps.Count, new WaterfallStep("value-unknown", "Value of the work not known", excess,
                Reason.Of(law.Value, $"The file does not say what the work done so far was worth, so nobody can say yet what is owed for "
                    + $"it.")));
            return;
        }

        steps.Add(new WaterfallStep("overpaid", "Received beyond what is owed", excess,
            Reason.Of(law.Order, $"Payments and credits exceed all that is owed by {excess}.")));
    }
}
