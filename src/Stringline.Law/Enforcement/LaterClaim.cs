using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>
/// A claim recorded beside one that is in suit, such as an amended one: it has 90 days of its own, and no action enforces it yet.
/// </summary>
internal static class LaterClaim
{
    /// <summary>The finding <c>enforcement.later-claim-last-day</c>; null where there is no such claim.</summary>
    [Rule("Civ. Code § 8460(a)")]
    public static Finding? Finding(FactsAsOf facts, ClaimSuits suits, OpenDays calendar)
    {
        if (suits.Released == Verdict.Yes || suits.Leading is not { Standing: Standing.Kept } sued)
            return null;
        ClaimSuit? later = null;
        foreach (var suit in suits.Chain)
        {
            if (suit.Recorded.Earliest >= sued.Recorded.Earliest && !ReferenceEquals(suit, sued) && suit.Standing != Standing.Lost)
                later ??= suit;
        }

        if (later is null)
            return null;
        return Deadline.Of(later.Standing, later.Readings, calendar)
            .Finding("enforcement.later-claim-last-day", "Bring the later claim into the action",
            () =>
            [
                Reason.Of("Civ. Code § 8460(a)", $"The claim recorded {later.Recorded} has {later.DaysToSue(facts)} of its own. Bring it "
                    + $"into the action on the claim recorded {sued.Recorded} by a supplemental complaint by {later.FirstEnd}, and enter "
                    + $"it{ClaimKinds.ActionFiled.At("claim"):aside}; until the court has it, release nothing.", [later.Claim, sued.Claim]),
            ]);
    }
}
