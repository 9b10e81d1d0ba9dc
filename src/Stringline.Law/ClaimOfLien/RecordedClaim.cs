using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.ClaimOfLien;

/// <summary>Whether the claim was recorded, and when against its first and last day.</summary>
public static class RecordedClaim
{
    /// <summary>What became of the recorded claims.</summary>
    /// <param name="Counts">The claim that counts; null where there is none.</param>
    /// <param name="Keeping">The claim that an action keeps, which may be another.</param>
    /// <param name="Released">Whether it has been released.</param>
    public readonly record struct ClaimsOnRecord(ClaimRecorded? Counts, ClaimRecorded? Keeping, Verdict Released);

    /// <summary>
    /// The recorded claim that counts, of those not recorded too early: the last one recorded in time; else the last that may be in
    /// time; else the last. Null where there is none.
    /// </summary>
    public static ClaimRecorded? ThatCounts(FactsAsOf facts, FirstDay firstDay, LastDay lastDay)
    {
        ClaimRecorded? counts = null;
        var best = 0;
        foreach (var claim in facts.All<ClaimRecorded>())
        {
            if (Rank(facts, claim, firstDay, lastDay) is not { } rank || rank < best)
                continue;
            counts = claim;
            best = rank;
        }

        return counts;
    }

    /// <summary>
    /// Every recorded claim on which an action may be brought, earliest first: one recorded later leaves those before it in force until
    /// they are released. Those that may be in time, or else only the one that counts.
    /// </summary>
    public static IReadOnlyList<ClaimRecorded> InForce(FactsAsOf facts, FirstDay firstDay, LastDay lastDay, ClaimRecorded? counts)
    {
        if (counts is null || facts.All<ClaimRecorded>().Count < 2)
            return counts is null ? [] : [counts];
        var inForce = new List<ClaimRecorded>();
        foreach (var claim in facts.All<ClaimRecorded>())
        {
            if (Rank(facts, claim, firstDay, lastDay) is 1 or 2 && IsReleased(facts, claim) != Verdict.Yes)
                inForce.Add(claim);
        }

        return inForce.Count == 0 ? [counts] : inForce;
    }

    /// <summary>Of several recorded claims, those that are not released and may not count; empty where there is one.</summary>
    internal static IReadOnlyList<ClaimRecorded> Unsure(FactsAsOf facts, FirstDay firstDay, LastDay lastDay)
    {
        var claims = facts.All<ClaimRecorded>();
        if (claims.Count < 2)
            return [];
        var unsure = new List<ClaimRecorded>();
        foreach (var claim in claims)
        {
            if (Rank(facts, claim, firstDay, lastDay) != 2 && IsReleased(facts, claim) != Verdict.Yes)
                unsure.Add(claim);
        }

        return unsure;
    }

    /// <summary>Whether a recorded claim is surely good: recorded in time, and everything that it needs was there.</summary>
    internal static bool IsGood(FactsAsOf facts, ClaimRecorded claim, FirstDay firstDay, LastDay lastDay) =>
        DaySpan.Of(claim.On) is { } recorded && StandingOfRecorded(facts, claim, recorded, firstDay, lastDay) == Standing.Kept;

    // 2 recorded in time, 1 perhaps, 0 too late; null where it is no claim of mechanics lien that could count.
    private static int? Rank(FactsAsOf facts, ClaimRecorded claim, FirstDay firstDay, LastDay lastDay)
    {
        if (DaySpan.Of(claim.On) is not { } recorded || !WhichLien.MayBeMechanics(facts, claim)
            || WhereRecorded.WorkLiesThere(facts, claim) == Verdict.No
            || Premature(facts, recorded, firstDay) == Verdict.Yes || IsSpent(facts, recorded))
        {
            return null;
        }

        return StandingOfRecorded(facts, claim, recorded, firstDay, lastDay) switch { Standing.Kept => 2, Standing.InDoubt => 1, _ => 0 };
    }

    /// <summary>
    /// Whether the claim that counts has been released. A release recorded before it concerns an earlier claim and does not end the
    /// right, unless it says that the debt is satisfied; nor does the release of a claim that does not count, such as one recorded too
    /// early: Solit v. Tokai Bank (1999) 68 Cal.App.4th 1435; Santa Clara Land Title v. Nowack &amp; Associates (1991) 226 Cal.App.3d 1558.
    /// </summary>
    [Rule("Civ. Code § 8490", Sure = Sure.Opinion)]
    public static Verdict IsReleased(FactsAsOf facts, ClaimRecorded? counts)
    {
        var verdict = Verdict.No;
        foreach (var release in facts.All<ReleaseRecorded>())
        {
            if (release.Satisfied == true)
                return Verdict.Yes;
            if (release.Satisfied == false)
                continue;
            if (counts is not null && DaySpan.Of(counts.On) is { } recorded && DaySpan.Of(release.On) is { } released)
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

    // A claim that was released without the debt being satisfied is gone; the right to record another is not.
    private static bool IsSpent(FactsAsOf facts, DaySpan recorded)
    {
        foreach (var release in facts.All<ReleaseRecorded>())
        {
            // One on an unknown day may be of this claim, and then a new one must be recorded.
            if (release.Satisfied == false && !(release.On.Latest < recorded.Earliest))
                return true;
        }

        return false;
    }

    private static Standing StandingOfRecorded(FactsAsOf facts, ClaimRecorded claim, DaySpan recorded, FirstDay firstDay, LastDay lastDay)
    {
        var readings = lastDay.ReadingsFor(claim);
        var standing = readings.Count == 0 ? Standing.Kept : Deadline.StandingOf(facts.AsOf, readings, recorded, lastDay.EndFirm);
        return standing == Standing.Kept && !IsSound(facts, claim, recorded, firstDay) ? Standing.InDoubt : standing;
    }

    // In time is not all: recorded where the work lies, whole, after the preliminary notice and the service of its copy, and not too early.
    private static bool IsSound(FactsAsOf facts, ClaimRecorded claim, DaySpan recorded, FirstDay firstDay) =>
        Premature(facts, recorded, firstDay) == Verdict.No
        && WhichLien.Of(facts, claim) is not null
        && WhereRecorded.WorkLiesThere(facts, claim) == Verdict.Yes
        && NoticeBeforeClaim.Stood(facts, claim, out _)
        && ClaimContents.IsWhole(claim)
        && ServiceOfClaim.Of(facts, claim).Good != Verdict.No;

    /// <summary>
    /// Whether a claim was recorded before the claimant ceased, and so is void; a new one may follow in time. Work entered after
    /// the claim shows that the claimant had not ceased, whether or not the file says that it has ceased since. On the day of the last work
    /// it may have been recorded after it; and what was still done between that day and the one on which the furnishing is said to have
    /// ended is not told.
    /// </summary>
    [Rule("Civ. Code § 8414(a)", Sure = Sure.Opinion)]
    private static Verdict Premature(FactsAsOf facts, DaySpan recorded, FirstDay firstDay)
    {
        if (firstDay.Day is not { } first)
            return Verdict.No;
        if (recorded.Earliest < first.Latest || firstDay.MayNotBeCompleted)
        {
            var worked = first.Earliest.PlusDays(-1);
            if (facts.LastFurnished is { } last)
                worked = LocalDate.Min(worked, last.Earliest);
            return recorded.Latest < worked ? Verdict.Yes : Verdict.Open;
        }

        // A direct contractor records after it completes the direct contract (§ 8412); that it ceased only the completion of the whole may
        // tell.
        return facts.Job.Claimant.Role == ClaimantRole.DirectContractor
            && (firstDay.Ceased == Verdict.Open || recorded.Earliest < firstDay.CompletedOn)
            ? Verdict.Open : Verdict.No;
    }

    /// <summary>What the finding is called.</summary>
    internal const string Title = "Claim of lien: last day to record";

    /// <summary>The finding <c>claim-of-lien.last-day</c>.</summary>
    internal static Finding Finding(Outcome lastDay) => lastDay.Finding("claim-of-lien.last-day", Title);

    /// <summary>The last day to record, with what was recorded.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="firstDay">The first day to record.</param>
    /// <param name="lastDay">The last day to record.</param>
    /// <param name="claims">The recorded claims.</param>
    /// <param name="action">Where the action on the claim that counts stands: lost, the claim has expired (Civ. Code § 8460(a)).</param>
    /// <param name="whatWouldNarrow">Asks what would narrow the band; called when somebody reads the questions.</param>
    /// <param name="calendar">The calendar.</param>
    [Rule("Civ. Code § 8410")]
    public static Outcome Of(
        FactsAsOf facts, FirstDay firstDay, LastDay lastDay, ClaimsOnRecord claims, Standing action,
        Func<IReadOnlyList<Question>> whatWouldNarrow, OpenDays calendar) => new(
        Deadline.Of(StandingOf(facts, claims, action, firstDay, lastDay), lastDay.Readings, calendar, endKnown: lastDay.EndKnown),
        new Words(
            () => Why(facts, firstDay, lastDay),
            () => [.. whatWouldNarrow(), .. AboutReleases(facts), .. AboutClaims(facts, claims.Counts, calendar)]));

    private static List<Reason> Why(FactsAsOf facts, FirstDay firstDay, LastDay lastDay)
    {
        var why = new List<Reason>();
        foreach (var claim in facts.All<ClaimRecorded>())
        {
            if (!WhichLien.MayBeMechanics(facts, claim))
                why.Add(Reason.NotApplied("Civ. Code § 8308(a)", $"The claim recorded {DaySpan.Of(claim.On)} is one of a design "
                    + $"professional's lien and no claim of mechanics lien under Civ. Code § 8416; that one is recorded in its own time "
                    + $"(Civ. Code § 8310).", claim));
            else if (WhereRecorded.WorkLiesThere(facts, claim) != Verdict.Yes)
                why.Add(WhereRecorded.Why(facts, claim));
            else if (DaySpan.Of(claim.On) is { } recorded)
            {
                why.Add(Premature(facts, recorded, firstDay) switch
                {
                    Verdict.Yes =>
                        Reason.NotApplied(firstDay.Why[0].Section, $"The claim recorded {recorded} was recorded before the claimant had "
                            + $"ceased to provide work: void. A new claim may follow inside the time.", claim),
                    Verdict.Open =>
                        Reason.Of(firstDay.Why[0].Section, $"Claim of lien recorded {recorded}. Whether the claimant had ceased to provide "
                            + $"work by then is open; if it had not, the claim is void. A new claim inside the time removes the "
                            + $"doubt.", [claim], [.. firstDay.Why]),
                    _ => Reason.Of("Civ. Code § 8410", $"Claim of lien recorded {recorded}.", [claim]),
                });
                if (!NoticeBeforeClaim.Stood(facts, claim, out var afterwards))
                    why.Add(afterwards!);
                if (ClaimContents.Why(claim) is { } lacking)
                    why.Add(lacking);
                if (ServiceOfClaim.Of(facts, claim).Why is { } service)
                    why.Add(service);
            }
        }

        why.AddRange(lastDay.Why);
        if (lastDay.Readings.Count == 0)
            why.Add(Reason.Of("Civ. Code § 8414(b)", $"The work is not complete on any reading, so the time to record does not run yet."));
        return why;
    }

    /// <summary>
    /// A claim that has expired is as none while the time to record runs: a new one is recorded. One that may have expired is in doubt so
    /// long. Else where the claim that counts stands; and where none does, the time to record.
    /// </summary>
    [Rule("Civ. Code § 8460(a)")]
    private static Standing StandingOf(FactsAsOf facts, ClaimsOnRecord claims, Standing action, FirstDay firstDay, LastDay lastDay)
    {
        if (claims.Released is not Verdict.No and var released)
            return released == Verdict.Yes ? Standing.Done : Standing.InDoubt;
        if ((action == Standing.Kept ? claims.Keeping : claims.Counts) is { } counts && DaySpan.Of(counts.On) is { } recorded)
        {
            var another = action is Standing.Lost or Standing.InDoubt && TimeToRecord(facts, lastDay) != Standing.Lost;
            if (!another || action == Standing.InDoubt)
            {
                var standing = StandingOfRecorded(facts, counts, recorded, firstDay, lastDay);
                return another && standing == Standing.Kept ? Standing.InDoubt : standing;
            }
        }

        if (!facts.HasFurnished || (firstDay is { Ceased: Verdict.Yes, Day: { } first } && facts.AsOf < first.Earliest))
            return Standing.NotYet;
        return TimeToRecord(facts, lastDay);
    }

    private static Standing TimeToRecord(FactsAsOf facts, LastDay lastDay)
    {
        var standing = lastDay.Readings.Count == 0
            ? Standing.Open : Deadline.StandingOf(facts.AsOf, lastDay.Readings, null, lastDay.EndFirm);
        return lastDay.Over.Count > 0 ? Standing.InDoubt : standing;
    }

    private static IEnumerable<Question> AboutReleases(FactsAsOf facts) => facts.All<ReleaseRecorded>().Any(r => r.Satisfied is null)
        ? [new Question($"Does the recorded release say that the debt is satisfied? If it only gives up the claim, a new one may be "
            + $"recorded in time{ClaimKinds.ReleaseRecorded.At("satisfied"):aside}.")]
        : [];

    // What is to be asked of the recorded claims: in which county, how the copy was served, and whether the day is right.
    private static IEnumerable<Question> AboutClaims(FactsAsOf facts, ClaimRecorded? counts, OpenDays calendar)
    {
        foreach (var claim in facts.All<ClaimRecorded>())
        {
            if (!WhichLien.MayBeMechanics(facts, claim))
                continue;
            if (WhereRecorded.WorkLiesThere(facts, claim) == Verdict.Open)
                yield return WhereRecorded.Ask(claim);
            if (!ClaimContents.IsWhole(claim))
                yield return ClaimContents.Ask(claim);
            if (claim.On is DayFact.Exact { Day: var day } && calendar.WhyClosed(day) is { } closed)
                yield return new Question($"Is the day right on which the claim was recorded? {day} is closed at an office or "
                    + $"another: {closed}.{ClaimKinds.ClaimRecorded.At("on"):aside}") { Corrects = claim };
        }

        if (counts is not null && ServiceOfClaim.Of(facts, counts).Question is { } service)
            yield return service;
    }
}
