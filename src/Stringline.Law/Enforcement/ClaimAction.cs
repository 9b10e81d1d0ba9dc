using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Enforcement;

/// <summary>Which action enforces which claim of lien, and what became of it.</summary>
internal static class ClaimAction
{
    /// <summary>
    /// Whether an action enforces a claim: not one brought before the claim was recorded, nor one on another thing or another claim. A
    /// small claims court gives money and forecloses nothing, so whether an action there does is in doubt.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="action">The action.</param>
    /// <param name="filed">The day it was filed.</param>
    /// <param name="claim">A recorded claim.</param>
    /// <param name="recorded">The day it was recorded.</param>
    /// <param name="unsure">The recorded claims that may not count.</param>
    [Rule("Civ. Code § 8460(a)")]
    [Rule("Code Civ. Proc. § 116.220")]
    public static Verdict Enforces(FactsAsOf facts, ActionFiled action, DaySpan filed, ClaimRecorded claim, DaySpan recorded,
        IReadOnlyList<ClaimRecorded> unsure)
    {
        if (filed.Latest < recorded.Earliest || !MayBeOn(action, ActionOn.Lien)
            || (action.Claim is { } named && !facts.Names(named, claim)))
            return Verdict.No;
        return action.SmallClaims || filed.Earliest < recorded.Latest || OwnerNotSued(facts, action, filed) is not null
            || MayBeOnAnother(facts, action, filed, unsure)
            ? Verdict.Open : Verdict.Yes;
    }

    /// <summary>
    /// Whether an action that names none of several claims recorded before it may be on one that does not count. "An action to enforce the
    /// lien" is one on a claim; on which, its complaint says and the file does not.
    /// </summary>
    [Rule("Civ. Code § 8460(a)", Sure = Sure.OurReading)]
    internal static bool MayBeOnAnother(FactsAsOf facts, ActionFiled action, DaySpan filed, IReadOnlyList<ClaimRecorded> unsure)
    {
        if (action.Claim is not null || unsure.Count == 0)
            return false;
        var several = -1;
        foreach (var claim in facts.All<ClaimRecorded>())
            several += claim.On.Earliest > filed.Latest ? 0 : 1;
        if (several < 1)
            return false;
        foreach (var claim in unsure)
        {
            if (!(claim.On.Earliest > filed.Latest))
                return true;
        }

        return false;
    }

    /// <summary>Whether an action is, or may be, on a thing: one that the file does not say may be on any.</summary>
    public static bool MayBeOn(ActionFiled action, ActionOn thing) => action.Enforces.Count == 0 || IsOn(action, thing);

    /// <summary>Whether the file says that an action is on a thing.</summary>
    public static bool IsOn(ActionFiled action, ActionOn thing)
    {
        foreach (var enforced in action.Enforces)
        {
            if (enforced == thing)
                return true;
        }

        return false;
    }

    /// <summary>
    /// An owner whom the action leaves out, where the file says who was sued: one who is not made a party in time is not bound by the
    /// judgment (Granahan v. Trenkenschu (2012) A131640, unpublished, not to be cited to a court, shows it).
    /// </summary>
    [Rule("Civ. Code § 8461", Sure = Sure.OurReading)]
    public static Party? OwnerNotSued(FactsAsOf facts, ActionFiled action, DaySpan filed)
    {
        if (action.Against.Count == 0)
            return null;
        foreach (var party in facts.Job.Parties)
        {
            if (party.Capacity == PartyCapacity.Owner && !(party.SoldOn <= filed.Earliest) && !IsAmong(action.Against, party.Id))
                return party;
        }

        return null;
    }

    private static bool IsAmong(IReadOnlyList<string> ids, string id)
    {
        foreach (var one in ids)
        {
            if (one == id)
                return true;
        }

        return false;
    }
}
