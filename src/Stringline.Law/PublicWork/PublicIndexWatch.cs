using Stringline.Law.Facts;
using Stringline.Law.PaymentBond;
using Stringline.Law.Plan;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.PublicWork;

/// <summary>How often the county index is searched on public work, where nobody tells the claimant of a recorded notice (Civ. Code § 9362).</summary>
public static class PublicIndexWatch
{
    /// <summary>
    /// The finding <c>index-watch.next-day</c>: for the stop payment notice while it can be given, and for the bond notice where only that is left;
    /// null where neither is.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="stopPayment">The finding <c>stop-payment-notice.last-day</c>.</param>
    /// <param name="bond">The finding <c>payment-bond.notice-last-day</c>.</param>
    /// <param name="settings">What to reckon with.</param>
    /// <param name="calendar">The calendar.</param>
    [Rule("Civ. Code § 9356(a)", Sure = Sure.OurReading)]
    [Rule("Civ. Code § 9560(b)", Sure = Sure.OurReading)]
    public static Finding? Finding(FactsAsOf facts, Finding stopPayment, Finding bond, PlanSettings settings, OpenDays calendar)
    {
        if (!facts.HasFurnished)
            return null;
        if (!IndexWatch.IsOver(stopPayment))
            return IndexWatch.Watch(facts, new IndexWatch.Window("Civ. Code § 9356(a)", TimeToGive.DaysFromRecording), settings, calendar);
        return stopPayment.Standing == Standing.Lost && !IndexWatch.IsOver(bond)
            ? IndexWatch.Watch(facts, new IndexWatch.Window("Civ. Code § 9560(b)", BondNotice.DaysFromNotice), settings, calendar)
            : null;
    }
}
