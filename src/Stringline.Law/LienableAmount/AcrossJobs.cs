using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Counting;

namespace Stringline.Law.LienableAmount;

/// <summary>Why a part of a payment went where it went (Civ. Code § 1479, Three).</summary>
public enum AppliedTo
{
    /// <summary>Interest due when the money came.</summary>
    InterestDue,

    /// <summary>What was due when the money came, earliest maturity first.</summary>
    Due,

    /// <summary>What fell due later, earliest maturity first.</summary>
    NotYetDue,
}

/// <summary>A part of a payment that names neither job nor invoice.</summary>
/// <param name="Job">Place of the job in the list that was asked about, from 0.</param>
/// <param name="Amount">Dollars and cents, above zero.</param>
/// <param name="Why">The class to which it went.</param>
/// <param name="Due">Maturity of what it paid.</param>
/// <param name="Ref">Reference of what it paid, if it has one.</param>
public sealed record AppliedPart(int Job, decimal Amount, AppliedTo Why, LocalDate Due, string? Ref);

/// <summary>What the law makes of a payment over several jobs of one debtor.</summary>
/// <param name="Parts">Where it went, in the order of law.</param>
/// <param name="Left">Dollars and cents for which nothing is owed on any of them.</param>
public sealed record AppliedPayment(IReadOnlyList<AppliedPart> Parts, decimal Left);

/// <summary>Applies money that one debtor pays without saying for what, over all its obligations to the claimant.</summary>
/// <remarks>
/// Not modeled: the trustee rule (Civ. Code § 1479, Two) and a creditor's own choice; both are entries of the job file that name an
/// invoice.
/// Open: a supplier that knows from which job the money comes may lose part of that job's lien if it counts it elsewhere
/// (H &amp; L Supply, Inc. v. Ewing (1967) 253 Cal.App.2d 283, rule from memory); whoever shows the answer must say so.
/// </remarks>
public static class AcrossJobs
{
    /// <summary>
    /// Interest due first; then by earliest maturity (Jessup Farms v. Baldwin (1983) 33 Cal.3d 639); at equal maturity the unsecured
    /// before the secured; inside one class ratably, odd cents to the largest remainders. What was received earlier on each job is
    /// taken off before.
    /// </summary>
    /// <param name="jobs">The debtor's jobs.</param>
    /// <param name="received">The day on which the money was received; what is not yet known by then takes no part.</param>
    /// <param name="amount">Dollars and cents, above zero.</param>
    /// <param name="calendar">The days on which offices are closed: what the notice reaches decides what is secured.</param>
    [Rule("Civ. Code § 1479")]
    public static AppliedPayment Of(IReadOnlyList<JobFile> jobs, LocalDate received, decimal amount, OpenDays calendar)
    {
        ArgumentNullException.ThrowIfNull(jobs);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(amount);
        var owed = new List<Item>();
        for (var i = 0; i < jobs.Count; i++)
        {
            var facts = new FactsAsOf(jobs[i], received);
            foreach (var obligation in Demand.Owed(facts, ReachOf(facts, calendar)))
            {
                if (obligation.Unpaid > 0)
                    owed.Add(new Item(i, obligation, Class(obligation, received)));
            }
        }

        var parts = new List<AppliedPart>();
        var left = amount;
        foreach (var ofOneClass in owed.GroupBy(o => (o.Why, o.Obligation.Due, o.Obligation.Secured)).OrderBy(g => g.Key.Why)
            .ThenBy(g => g.Key.Due).ThenBy(g => g.Key.Secured))
        {
            Item[] items = [.. ofOneClass];
            var shares = Ratably(left, items);
            for (var i = 0; i < items.Length; i++)
            {
                left -= shares[i];
                if (shares[i] > 0)
                    parts.Add(new AppliedPart(items[i].Job, shares[i], items[i].Why, items[i].Obligation.Due, items[i].Obligation.Ref));
            }
        }

        return new AppliedPayment(parts, left);
    }

    // On federal work no notice limits what is asked for first, so that its reach is of no account.
    private static Reach ReachOf(FactsAsOf facts, OpenDays calendar) =>
        facts.Job.Work.Kind == WorkKind.Private ? PreliminaryNoticeDays.ReachOf(facts, calendar) : PublicNotice.ReachOf(facts);

    private static AppliedTo Class(Obligation obligation, LocalDate received) =>
        obligation.Due > received ? AppliedTo.NotYetDue : obligation.IsInterest ? AppliedTo.InterestDue : AppliedTo.Due;

    private static decimal[] Ratably(decimal money, Item[] items)
    {
        var shares = new decimal[items.Length];
        var whole = Total.Of(items, static i => i.Obligation.Unpaid);
        money = Math.Min(money, whole);
        var remainders = new (decimal Odd, int Place)[items.Length];
        var given = 0m;
        for (var i = 0; i < items.Length; i++)
        {
            var exact = money * items[i].Obligation.Unpaid / whole;
            shares[i] = decimal.Floor(exact * 100m) / 100m;
            remainders[i] = (exact - shares[i], i);
            given += shares[i];
        }

        Array.Sort(remainders, static (a, b) => a.Odd != b.Odd ? b.Odd.CompareTo(a.Odd) : a.Place.CompareTo(b.Place));
        for (var next = 0; given < money; next++, given += 0.01m)
            shares[remainders[next].Place] += 0.01m;
        return shares;
    }

    private readonly record struct Item(int Job, Obligation Obligation, AppliedTo Why);
}
