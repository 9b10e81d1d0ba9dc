using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>What was received, applied to what is owed in the order in which it came.</summary>
internal static class Receipts
{
    /// <summary>Applies every payment and credit.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="owed">Everything owed.</param>
    /// <param name="creditsToSecured">Whether a credit of which nobody says what it is for lowers what is within reach first.</param>
    public static Application Apply(FactsAsOf facts, List<Obligation> owed, bool creditsToSecured = false)
    {
        var application = new Application(owed);
        foreach (var receipt in InOrder(facts))
        {
            switch (receipt)
            {
                case Paid payment:
                    application.Pay(payment);
                    break;
                case Credited credit:
                    application.Credit(credit, creditsToSecured);
                    break;
                default:
                    throw new InvalidOperationException($"No receipt: {receipt.GetType().Name}.");
            }
        }

        return application;
    }

    /// <summary>Writes the steps.</summary>
    public static void Write(FactsAsOf facts, RemedyLaw law, Application application, List<WaterfallStep> steps)
    {
        var payments = facts.All<Paid>();
        var credits = facts.All<Credited>();
        if (payments.Count > 0)
        {
            var paid = Total.Of(payments, p => p.Amount);
            steps.Add(new WaterfallStep("paid", "Paid", -paid,
                Reason.Of(law.Due, $"Payments received: {paid}.", payments, OrderOfPayment(law))));
        }

        if (credits.Count > 0)
        {
            var credited = Total.Of(credits, c => c.Amount);
            steps.Add(new WaterfallStep("credited", "Credits", -credited,
                Reason.Of(law.Due, $"Credits, returns and back charges allowed: {credited}.", credits)));
        }

        if (application.Elsewhere > 0)
        {
            steps.Add(new WaterfallStep("paid-elsewhere", "Of that, counted toward what is not in the claim", application.Elsewhere,
                Reason.Of(law.Order, $"{application.Elsewhere} of the payments and credits went to work outside the reach of the notice, "
                    + $"to interest or to charges, so it does not lower the claim.")));
        }
    }

    private static Reason OrderOfPayment(RemedyLaw law) =>
        Reason.Of(law.Order, $"Applied as the debtor directed; else interest first, then what fell due earliest, the unsecured before the "
            + $"secured. An invoice is taken to fall due in the order of its day.");

    // Each sum is applied when it comes; of two on one day, the directed one first, then as the entries stand.
    private static Entry[] InOrder(FactsAsOf facts)
    {
        var (payments, credits) = (facts.All<Paid>(), facts.All<Credited>());
        var receipts = new Entry[payments.Count + credits.Count];
        for (var i = 0; i < receipts.Length; i++)
            receipts[i] = i < payments.Count ? payments[i] : credits[i - payments.Count];
        if (receipts.Length < 2)
            return receipts;
        return InOrder(facts, receipts);
    }

    private static Entry[] InOrder(FactsAsOf facts, Entry[] receipts)
    {
        var place = new Dictionary<Entry, int>(receipts.Length, ReferenceEqualityComparer.Instance);
        for (var i = 0; i < receipts.Length; i++)
            place[receipts[i]] = i;
        Array.Sort(receipts, (a, b) =>
        {
            var byDay = (a.On.Latest ?? facts.AsOf).CompareTo(b.On.Latest ?? facts.AsOf);
            if (byDay != 0)
                return byDay;
            var (directedA, directedB) = (IsDirected(a), IsDirected(b));
            return directedA != directedB ? (directedA ? -1 : 1) : place[a].CompareTo(place[b]);
        });
        return receipts;
    }

    private static bool IsDirected(Entry receipt) => receipt is Paid { Toward: not null } or Credited { Toward: not null };
}
