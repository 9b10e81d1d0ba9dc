using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>
/// What follows the filing of the action that enforces the claim (Civ. Code §§ 8461, 8462; Code Civ. Proc. §§ 405.22, 583.310, 583.420).
/// </summary>
public static class AfterFiling
{
    /// <summary>The findings <c>lis-pendens.last-day</c> and <c>prosecution.*</c>; none where no action on the claim is pending.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, ClaimSuits suits, OpenDays calendar)
    {
        if (suits.Released == Verdict.Yes || suits.Leading is not { IsPending: true, Action: { } action } suit
            || DaySpan.Of(action.On) is not { } filed)
            return [];
        return WhilePending(facts, suit, action, filed, calendar);
    }

    private static IEnumerable<Finding> WhilePending(FactsAsOf facts, ClaimSuit suit, ActionFiled action, DaySpan filed, OpenDays calendar)
    {
        // A bond frees the land from the action too, so nothing more is recorded against it (Civ. Code § 8424(c)).
        if (ReleaseBond.Freeing(facts, suit) is null)
            yield return LisPendens.Finding(facts, action, filed, calendar);
        foreach (var finding in Prosecution.Findings(facts, action, filed, suit.Stay, calendar))
            yield return finding;
    }
}
