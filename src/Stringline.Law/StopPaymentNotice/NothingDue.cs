using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>
/// A stop payment notice claims only what is due for work provided through its day: where all of it was paid, none is to be given.
/// </summary>
internal static class NothingDue
{
    /// <summary>
    /// Why nothing is still to be given: everything furnished so far was paid or credited. The next delivery begins it anew. Null where
    /// something is due.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="amounts">The amounts by remedy.</param>
    [Rule("Civ. Code § 8502(c)")]
    [Rule("Civ. Code § 9352(c)")]
    internal static Reason? Why(FactsAsOf facts, Amounts amounts)
    {
        // Most jobs were not paid in full: what was owed is looked at only where something came in.
        if (facts.All<Paid>().Count + facts.All<Credited>().Count == 0
            || amounts.DemandOf(Remedy.StopPaymentNotice) != 0 || !(amounts.Of(Remedy.Debt) ?? amounts.Of(amounts.Main)!).IsPaid)
        {
            return null;
        }

        return Reason.Of(facts.Job.Work.Kind == WorkKind.Public ? "Civ. Code § 9352(c)" : "Civ. Code § 8502(c)",
            $"All furnished so far was paid or credited, and the notice claims only what is due for it. The next unpaid delivery opens it "
                + $"again.");
    }

    /// <summary>Whether it ends what stands so under an id.</summary>
    internal static bool Ends(string id, Standing standing) =>
        standing is Standing.Open or Standing.NotYet or Standing.InDoubt or Standing.Narrowed && IsToGive(id);

    private static bool IsToGive(string id) => id is "stop-payment-notice.last-day" or OwnersRow.Id or "stop-payment-notice.money-out"
        || id.StartsWith(LendersRows.IdOf(0), StringComparison.Ordinal);
}
