using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.DesignLien;

/// <summary>The action to enforce a recorded design professional's lien (Civ. Code § 8306(b)(2)).</summary>
internal static class DesignLienToSue
{
    /// <summary>
    /// The last day to sue. Civ. Code § 8306(b)(2) knows no credit, while § 8308(b)(4) lets § 8460 in: it is planned
    /// on the 90 days, and the credit shown as a later reading.
    /// </summary>
    [Rule("Civ. Code § 8306(b)(2)")]
    public static Outcome Of(FactsAsOf facts, ClaimSuits suits, OpenDays calendar)
    {
        var standing = suits.Released == Verdict.Open ? Standing.InDoubt : suits.StandingOn(facts.AsOf);
        standing = ReleaseBond.UnlessBonded(facts, suits.Leading!, standing, calendar);
        var readings = ActionDays.Readings(suits, standing);
        if (AfterCredit(facts, suits.Leading!, readings[^1].Day, calendar) is { } credit
            && standing is not (Standing.Kept or Standing.Done))
        {
            readings = [.. readings, credit];
            standing = standing == Standing.Lost && facts.AsOf <= (credit.Rolled ?? credit.Day) ? Standing.InDoubt : standing;
        }

        return new Outcome(Deadline.Of(standing, readings, calendar, endKnown: suits.Leading!.Stay is not { Until: null }), new Words(
            () =>
            [
                Reason.Of("Civ. Code § 8306(b)(2)",
                    $"The lien expires {facts.Numbers.On(Number.SueOnDesignLien, suits.Leading!.Recorded.Earliest)} after recording unless "
                        + $"an action to enforce it is commenced in that time, and on the commencement of the work "
                        + $"(Civ. Code § 8306(b)(1)). A notice of credit is planned on by nobody: § 8306 does not know "
                        + $"it.", [suits.Leading!.Claim]),
                .. WhyAction.Of(facts, suits, standing, calendar),
            ],
            () => WhyAction.Ask(facts, suits, standing, calendar)));
    }

    /// <summary>The finding <c>design-lien.enforcement-last-day</c>.</summary>
    public static Finding Finding(Outcome toSue) =>
        toSue.Finding("design-lien.enforcement-last-day", "Action to enforce the design professional's lien");

    private static Reading? AfterCredit(FactsAsOf facts, ClaimSuit leading, LocalDate without, OpenDays calendar)
    {
        Reading? latest = null;
        foreach (var credit in facts.All<CreditRecorded>())
        {
            var days = facts.Numbers.On(Number.SueAfterCredit, credit.Until);
            var day = days.LastDay(credit.Until);
            if (!Credit.IsOfEarlierClaim(credit, leading) && day > without && !(latest?.Day >= day))
                latest = Deadline.Own($"{days.Text} after the credit ends, if Civ. Code § 8460(b) applies", day, calendar);
        }

        return latest;
    }
}
