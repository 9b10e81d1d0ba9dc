using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>The claimant's demand after deducting all just credits and offsets (Civ. Code §§ 8416(a)(1), 8430).</summary>
public static class Demand
{
    /// <summary>Works out the waterfall.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="reach">What the preliminary notice leaves within reach.</param>
    [Rule("Civ. Code § 8416(a)(1)")]
    [Rule("Civ. Code § 8430(a)")]
    public static Waterfall Of(FactsAsOf facts, Reach reach)
    {
        var steps = new List<WaterfallStep>();
        var work = new WorkValue(facts, steps);
        var straddling = work.TakeOffOutsideReach(reach, steps);
        var charges = Charges(facts);
        var application = Receive(facts, [.. work.Items, .. charges], steps);
        var waivers = Released.TakeOff(facts, work.Items, steps);
        var released = 0m;
        foreach (var waiver in waivers)
            released = waiver.Binds ? Math.Max(released, waiver.Released) : released;
        LeaveOutCharges(facts, charges, steps);
        if (application.Excess > 0)
        {
            steps.Add(new WaterfallStep("overpaid", "Received beyond what is owed", application.Excess,
                Reason.Of("Civ. Code § 1479", $"Payments and credits exceed all that is owed by {application.Excess}.")));
        }

        var demand = Total.Of(work.Items, static i => i.Secured ? i.Unpaid : 0m) - released;
        return new Waterfall(demand, steps, Total.Of(charges, c => c.Value), straddling) { Waivers = waivers };
    }

    /// <summary>Everything owed on a job by that day, with what is still unpaid of each after all that was received; earliest first.</summary>
    internal static IReadOnlyList<Obligation> Owed(FactsAsOf facts, Reach reach)
    {
        var steps = new List<WaterfallStep>();
        var work = new WorkValue(facts, steps);
        work.TakeOffOutsideReach(reach, steps);
        List<Obligation> owed = [.. work.Items, .. Charges(facts)];
        Receive(facts, owed, steps);
        return owed;
    }

    private static List<Obligation> Charges(FactsAsOf facts)
    {
        var charges = new List<Obligation>();
        foreach (var charged in facts.All<Charged>())
        {
            charges.Add(new Obligation
            {
                Order = facts.Furnished.Count + charges.Count,
                Entry = charged,
                Due = charged.On.Latest ?? facts.AsOf,
                Ref = charged.Ref,
                IsWork = false,
                IsInterest = charged.Of == ChargeKind.Interest,
                Value = charged.Amount,
                Unpaid = charged.Amount,
            });
        }

        return charges;
    }

    // Each sum is applied when it comes; of two on one day, the directed one first, then as the entries stand.
    private static Entry[] InTheOrderReceived(FactsAsOf facts)
    {
        var (payments, credits) = (facts.All<Paid>(), facts.All<Credited>());
        var receipts = new Entry[payments.Count + credits.Count];
        for (var i = 0; i < receipts.Length; i++)
            receipts[i] = i < payments.Count ? payments[i] : credits[i - payments.Count];
        if (receipts.Length < 2)
            return receipts;
        var place = new Dictionary<Entry, int>(receipts.Length, ReferenceEqualityComparer.Instance);
        for (var i = 0; i < receipts.Length; i++)
            place[receipts[i]] = i;
        Array.Sort(receipts, (a, b) =>
        {
            var byDay = (a.On.Latest ?? facts.AsOf).CompareTo(b.On.Latest ?? facts.AsOf);
            if (byDay != 0)
                return byDay;
            var (undirectedA, undirectedB) = (a is not Paid { Toward: not null }, b is not Paid { Toward: not null });
            return undirectedA != undirectedB ? (undirectedA ? 1 : -1) : place[a].CompareTo(place[b]);
        });
        return receipts;
    }

    private static readonly Reason OrderOfPayment = Reason.Of("Civ. Code § 1479", $"Applied as the debtor directed; else interest first, then what fell due earliest, the unsecured before the secured. An invoice is taken to fall due in the order of its day.");

    private static Application Receive(FactsAsOf facts, List<Obligation> owed, List<WaterfallStep> steps)
    {
        var application = new Application(owed);
        var payments = facts.All<Paid>();
        var credits = facts.All<Credited>();
        foreach (var receipt in InTheOrderReceived(facts))
        {
            switch (receipt)
            {
                case Paid payment:
                    application.Pay(payment);
                    break;
                case Credited credit:
                    application.Credit(credit);
                    break;
                default:
                    throw new InvalidOperationException($"No receipt: {receipt.GetType().Name}.");
            }
        }

        if (payments.Count > 0)
        {
            var paid = Total.Of(payments, p => p.Amount);
            steps.Add(new WaterfallStep("paid", "Paid", -paid,
                Reason.Of("Civ. Code § 8416(a)(1)", $"Payments received: {paid}.", payments,
                    OrderOfPayment)));
        }

        if (credits.Count > 0)
        {
            var credited = Total.Of(credits, c => c.Amount);
            steps.Add(new WaterfallStep("credited", "Credits", -credited,
                Reason.Of("Civ. Code § 8416(a)(1)", $"Credits, returns and back charges allowed: {credited}.", credits)));
        }

        if (application.Elsewhere > 0)
        {
            steps.Add(new WaterfallStep("paid-elsewhere", "Of that, counted toward what is not in the claim", application.Elsewhere,
                Reason.Of("Civ. Code § 1479", $"{application.Elsewhere} of the payments and credits went to work outside the reach of the notice, to interest or to charges, so it does not lower the claim.")));
        }

        return application;
    }

    /// <summary>Charges that are not for work are named and left out.</summary>
    [Rule("Civ. Code § 8430(a)", Sure = Sure.Opinion)]
    private static void LeaveOutCharges(FactsAsOf facts, List<Obligation> charges, List<WaterfallStep> steps)
    {
        if (charges.Count == 0)
            return;
        var each = facts.All<Charged>().Select(WhyLeftOut).ToArray();
        steps.Add(new WaterfallStep("charges-left-out", "Charges left out", 0m,
            Reason.Of("Civ. Code § 8430(a)", $"{Total.Of(charges, c => c.Value)} was billed for what is not work; none of it is part of the claim.", each)));
    }

    private static Reason WhyLeftOut(Charged charged)
    {
        var (section, words) = WhyLeftOut(charged.Of);
        return Reason.NotApplied(section, $"{charged.Amount}: {words}", charged);
    }

    private static (string Section, string Words) WhyLeftOut(ChargeKind kind) => kind switch
    {
        ChargeKind.Interest => ("Civ. Code § 8430(a)", "interest is not the value or price of work (Carmel Development v. Anderson (2020) 48 Cal.App.5th 492)."),
        ChargeKind.Finance => ("Civ. Code § 8430(a)", "finance and service charges are not the value or price of work (from memory)."),
        ChargeKind.Delay => ("Civ. Code § 8430(a)", "delay and disruption are not the value or price of work (Lambert v. Superior Court (1991) 228 Cal.App.3d 383)."),
        ChargeKind.LostProfit => ("Civ. Code § 8430(a)", "lost profit is not the value or price of work (from memory)."),
        ChargeKind.AttorneyFees => ("Civ. Code § 8430(a)", "attorney's fees are no part of the lien (Abbett Electric v. California Federal Savings (1991) 230 Cal.App.3d 355)."),
        ChargeKind.Other => ("Civ. Code § 8430(a)", "the file says that it is not for work."),
        _ => throw new InvalidOperationException($"No such charge: {kind}."),
    };
}
