using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.ClaimOfLien;

/// <summary>Whether the claim was recorded, and when against its first and last day.</summary>
public static class RecordedClaim
{
    /// <summary>The recorded claim that counts: the last one not recorded too early; null where there is none.</summary>
    public static ClaimRecorded? ThatCounts(FactsAsOf facts, FirstDay firstDay)
    {
        ClaimRecorded? counts = null;
        foreach (var claim in facts.All<ClaimRecorded>())
        {
            if (Days.Of(claim.On) is { } recorded && !IsPremature(recorded, firstDay))
                counts = claim;
        }

        return counts;
    }

    /// <summary>A claim recorded before the claimant ceased is void; a new one may follow in time.</summary>
    [Rule("Civ. Code § 8414(a)", Sure = Sure.Opinion)]
    private static bool IsPremature(Days recorded, FirstDay firstDay) =>
        firstDay is { Ceased: Verdict.Yes, Day: { } first } && recorded.Latest < first.Earliest;

    /// <summary>The finding <c>claim-of-lien.last-day</c>.</summary>
    [Rule("Civ. Code § 8410")]
    public static Finding Finding(FactsAsOf facts, FirstDay firstDay, LastDay lastDay, IReadOnlyList<Question> whatWouldNarrow, OpenDays calendar)
    {
        var counts = ThatCounts(facts, firstDay);
        var why = new List<Reason>();
        foreach (var claim in facts.All<ClaimRecorded>())
        {
            if (Days.Of(claim.On) is { } recorded)
            {
                why.Add(IsPremature(recorded, firstDay)
                    ? Reason.NotApplied(firstDay.Why[0].Section, $"The claim recorded {recorded} was recorded before the claimant had ceased to provide work: void. A new claim may follow inside the time.", claim)
                    : Reason.Of("Civ. Code § 8410", $"Claim of lien recorded {recorded}.", [claim]));
            }
        }

        why.AddRange(lastDay.Why);
        if (lastDay.Readings.Count == 0)
            why.Add(Reason.Of("Civ. Code § 8414(b)", $"The work is not complete on any reading, so the time to record does not run yet."));
        return Deadline.Finding("claim-of-lien.last-day", "Claim of lien: last day to record",
            StandingOf(facts, counts, firstDay, lastDay), lastDay.Readings, calendar, why, lastDay.EndKnown, whatWouldNarrow);
    }

    private static Standing StandingOf(FactsAsOf facts, ClaimRecorded? counts, FirstDay firstDay, LastDay lastDay)
    {
        if (facts.All<ReleaseRecorded>().Count > 0)
            return Standing.Done;
        if (counts is not null && Days.Of(counts.On) is { } recorded)
            return lastDay.Readings.Count == 0 ? Standing.Kept : Deadline.StandingOf(facts.AsOf, lastDay.Readings, recorded, lastDay.EndFirm);
        if (!facts.HasFurnished || (firstDay is { Ceased: Verdict.Yes, Day: { } first } && facts.AsOf < first.Earliest))
            return Standing.NotYet;
        return lastDay.Readings.Count == 0 ? Standing.Open : Deadline.StandingOf(facts.AsOf, lastDay.Readings, null, lastDay.EndFirm);
    }
}
