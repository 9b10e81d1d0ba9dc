using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>What is left of the money that a stop payment notice holds where the direct contractor's affidavit was not answered.</summary>
internal static class MoneyReleased
{
    /// <summary>
    /// The amount less what the entity releases at once, without further notice, because no counteraffidavit with its proof was served in
    /// time. What was claimed too much goes first. The bond and the debt are not touched (Civ. Code § 9414).
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="amount">What the notices hold.</param>
    /// <param name="answers">The affidavits that were served, and what was answered.</param>
    [Rule("Civ. Code § 9406(b)")]
    public static AmountHeld Limit(FactsAsOf facts, AmountHeld amount, IReadOnlyList<ReleaseAnswer> answers)
    {
        // Only what is held goes out; what a notice still to come could hold is another matter.
        if (answers.Count == 0 || amount is not { Outcome: { Standing: Standing.Kept or Standing.InDoubt } outcome, Dollars: var held })
            return amount;
        var isOrdered = facts.All<ReleaseOrdered>().Count > 0;
        var (free, all, inDoubt) = (0m, false, false);
        foreach (var (affidavit, lastDay, _) in answers)
        {
            if (lastDay.Standing == Standing.Lost)
            {
                free += affidavit.Amount ?? 0m;
                all |= affidavit.Amount is null;
            }

            inDoubt |= lastDay.Standing == Standing.InDoubt && !isOrdered;
        }

        var left = all ? 0m : held - Math.Clamp(free - Excess(facts, held), 0m, held);
        if (left == held && !inDoubt)
            return amount;
        var why = new List<Reason>(outcome.Why);
        if (left < held)
            why.Add(Reason.Of("Civ. Code § 9406(b)", $"No counteraffidavit with its proof was served in time: {held - left} of it goes "
                + $"out, and {left} is left. The claim on the payment bond and the debt live on (Civ. Code § 9414)."));
        if (inDoubt)
            why.Add(Reason.Of("Civ. Code § 9406(b)", $"Whether a counteraffidavit with its proof was served in time is open; without it "
                + $"the money demanded goes out at once."));
        return amount with
        {
            Outcome = outcome.Limited(left == 0 ? Standing.Lost : inDoubt ? Standing.InDoubt : outcome.Standing, why),
            Dollars = left,
        };
    }

    // How much more the notices state than they hold; nothing where a sum is not told.
    private static decimal Excess(FactsAsOf facts, decimal held)
    {
        var stated = 0m;
        foreach (var paper in facts.All<StopPaymentGiven>())
        {
            if (paper.Amount is not { } amount)
                return 0m;
            stated += Math.Max(0m, amount - StopPaymentReleases.ReducedBy(facts, paper));
        }

        return Math.Max(0m, stated - held);
    }
}
