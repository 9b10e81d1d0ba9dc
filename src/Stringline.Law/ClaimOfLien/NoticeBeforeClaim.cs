using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.ClaimOfLien;

/// <summary>The order of preliminary notice and claim (Civ. Code § 8200(a)): "before recording a claim of lien".</summary>
internal static class NoticeBeforeClaim
{
    /// <summary>
    /// Whether the preliminary notice stood before the claim. One given afterwards, or still to be given, though in its own time, does not
    /// save the claim: our reading of "before"; no opinion was looked for, so that the claim is in doubt. Yes also where none is due.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="claim">The claim.</param>
    /// <param name="why">Why not; null where it did.</param>
    [Rule("Civ. Code § 8200(a)", Sure = Sure.OurReading)]
    public static bool Stood(FactsAsOf facts, ClaimRecorded claim, out Reason? why)
    {
        why = null;
        foreach (var recipient in Recipients.Of(facts))
        {
            // Toward a lender it is a matter of rank and of the stop payment notice, save where the lender alone is told (§ 8200(e)(2)).
            if (recipient.Who == PartyCapacity.ConstructionLender && !facts.HiredByOwner)
                continue;
            if (Giving.FirstGiven(facts.Numbers, facts.PreliminaryNotices, recipient.AnyOf, out var used) is not { } given)
            {
                if (Giving.FirstGiven(facts.Numbers, facts.PreliminaryNotices, recipient.Agents, out _) is not null)
                    continue;
                why = Reason.NotApplied("Civ. Code § 8200(a)", $"The claim was recorded {DaySpan.Of(claim.On)}, and the file shows no "
                    + $"preliminary notice to the {recipient.Words} before it. Give the notice, then record anew inside the time.", claim);
                return false;
            }

            if (given.Latest <= claim.On.Earliest)
                continue;
            why = Reason.NotApplied("Civ. Code § 8200(a)", $"The claim was recorded {DaySpan.Of(claim.On)}, and preliminary notice given "
                + $"to the {recipient.Words} {given}. The notice comes before the claim: record anew inside the time.", claim, used!);
            return false;
        }

        return true;
    }
}
