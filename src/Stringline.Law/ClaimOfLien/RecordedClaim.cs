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
            if (Days.Of(claim.On) is { } recorded && Premature(recorded, firstDay) != Verdict.Yes)
                counts = claim;
        }

        return counts;
    }

    /// <summary>
    /// Whether the claim that counts has been released. A release recorded before it concerns an earlier claim and does not end the
    /// right, unless it says that the debt is satisfied: Solit v. Tokai Bank (1999) 68 Cal.App.4th 1435; Santa Clara Land Title v.
    /// Nowack &amp; Associates (1991) 226 Cal.App.3d 1558.
    /// </summary>
    [Rule("Civ. Code § 8490", Sure = Sure.Opinion)]
    public static Verdict IsReleased(FactsAsOf facts, FirstDay firstDay)
    {
        var only = facts.All<ClaimRecorded>().Count < 2;
        var verdict = Verdict.No;
        foreach (var release in facts.All<ReleaseRecorded>())
        {
            if (only || ThatCounts(facts, firstDay) is not { } counts || Days.Of(counts.On) is not { } recorded)
                return Verdict.Yes;
            if (Days.Of(release.On) is { } released)
            {
                if (released.Earliest >= recorded.Latest)
                    return Verdict.Yes;
                if (released.Latest < recorded.Earliest)
                    continue;
            }

            verdict = Verdict.Open;
        }

        return verdict;
    }

    /// <summary>
    /// Whether a claim was recorded before the claimant ceased, and so is void; a new one may follow in time. Work entered after
    /// the claim shows that the claimant had not ceased, whether or not the file says that it has ceased since.
    /// </summary>
    [Rule("Civ. Code § 8414(a)", Sure = Sure.Opinion)]
    private static Verdict Premature(Days recorded, FirstDay firstDay) => firstDay.Day switch
    {
        { } first when recorded.Latest < first.Earliest => Verdict.Yes,
        { } first when recorded.Earliest < first.Latest => Verdict.Open,
        _ => Verdict.No,
    };

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
                why.Add(Premature(recorded, firstDay) switch
                {
                    Verdict.Yes => Reason.NotApplied(firstDay.Why[0].Section, $"The claim recorded {recorded} was recorded before the claimant had ceased to provide work: void. A new claim may follow inside the time.", claim),
                    Verdict.Open => Reason.Of(firstDay.Why[0].Section, $"Claim of lien recorded {recorded}. Whether the claimant had ceased to provide work by then is open; if it had not, the claim is void. A new claim inside the time removes the doubt.", [claim], [.. firstDay.Why]),
                    _ => Reason.Of("Civ. Code § 8410", $"Claim of lien recorded {recorded}.", [claim]),
                });
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
        if (IsReleased(facts, firstDay) is not Verdict.No and var released)
            return released == Verdict.Yes ? Standing.Done : Standing.InDoubt;
        if (counts is not null && Days.Of(counts.On) is { } recorded)
        {
            var standing = lastDay.Readings.Count == 0 ? Standing.Kept : Deadline.StandingOf(facts.AsOf, lastDay.Readings, recorded, lastDay.EndFirm);
            return standing == Standing.Kept && Premature(recorded, firstDay) == Verdict.Open ? Standing.InDoubt : standing;
        }

        if (!facts.HasFurnished || (firstDay is { Ceased: Verdict.Yes, Day: { } first } && facts.AsOf < first.Earliest))
            return Standing.NotYet;
        return lastDay.Readings.Count == 0 ? Standing.Open : Deadline.StandingOf(facts.AsOf, lastDay.Readings, null, lastDay.EndFirm);
    }
}
