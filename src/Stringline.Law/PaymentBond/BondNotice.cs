using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PaymentBond;

/// <summary>Whether the preliminary notice leaves anything for the notice to surety and principal to do.</summary>
/// <param name="NotNeeded">Why no such notice is needed; null where it is.</param>
/// <param name="AfterIt">What is left once its time is over: lost, or narrowed to what the preliminary notice reaches, or in doubt.</param>
/// <param name="Why">Why it is worth giving; null where nothing is to be said.</param>
internal sealed record BondNoticeNeed(Reason? NotNeeded, Standing AfterIt, Reason? Why = null)
{
    /// <summary>What the preliminary notice leaves to do.</summary>
    [Rule("Civ. Code § 8612(a)")]
    [Rule("Civ. Code § 9560(a)")]
    public static BondNoticeNeed Of(FactsAsOf facts, Reach reach, BondLaw law)
    {
        var left = PreliminaryNoticeDays.InReachSoFar(facts, reach);
        return reach.Kind switch
        {
            ReachKind.NoneDue =>
                new(Reason.Of(law.Preliminary, $"No preliminary notice was due, so none is needed for the bond."), Standing.Lost),
            ReachKind.Whole when reach.GivenToAll => new(
                Reason.Of(law.Preliminary, $"Preliminary notice was given in time and covers everything furnished, so no other notice is "
                    + $"needed for the bond."), Standing.Lost),
            ReachKind.Whole => new(null, Standing.InDoubt, Missed(reach, law)),
            // A late preliminary notice limits the claim to what it reaches; the bond notice has no look-back (American Buildings v. Bay
            // Commercial Construction (2002) 99 Cal.App.4th 1193), so it is worth giving.
            ReachKind.Late => new(null, left, !reach.GivenToAll
                ? Missed(reach, law)
                : Reason.Of(law.Preliminary, $"The preliminary notice came too late for what was furnished "
                    + $"before {reach.From!.Value.Latest}. This notice still saves the bond claim for all of it.")),
            ReachKind.NotGiven => new(null, left),
            _ => throw new InvalidOperationException($"No such reach: {reach.Kind}."),
        };
    }

    private static Reason Missed(Reach reach, BondLaw law) => reach.Missing.Count == 0
        ? Reason.Of(law.Preliminary, $"The preliminary notice may not count toward everyone to whom it is "
            + $"due{new FindingId("preliminary-notice.last-day"):see}. This notice makes that good.")
        : Reason.Of(law.Preliminary,
            $"The preliminary notice missed the {string.Join(" and the ", reach.Missing.Select(m => m.Words))}. The section asks the one "
                + $"provided in its chapter, to all to whom it is due; this notice makes that good. Whether the gap is fatal to the claim "
                + $"on the bond is open.");
}

/// <summary>
/// The notice to surety and bond principal that saves a bond claim without a preliminary notice (Civ. Code §§ 8612, 9560).
/// </summary>
internal static class BondNotice
{
    /// <summary>The finding <c>payment-bond.notice-last-day</c>.</summary>
    public static Finding Finding(Outcome notice) =>
        notice.Finding("payment-bond.notice-last-day", "Notice of a claim on the payment bond");

    /// <summary>The last day to give it, and whether it was given or is needed.</summary>
    [Rule("Civ. Code § 8612(b)")]
    [Rule("Civ. Code § 9560(b)")]
    public static Outcome Of(
        FactsAsOf facts, BondNoticeNeed need, BondServed served, BondRight right, CompletionReadings completion,
            IReadOnlyList<OwnersNotice> notices, BondLaw law, OpenDays calendar)
    {
        if (need.NotNeeded is { } none)
            return new Outcome(Deadline.WithoutDay(right.Limit(Standing.Kept)),
                new Words(() => [.. right.Why, none], () => right.Questions));
        var readings = new List<Reading>();
        Read(facts, completion, notices, law, calendar, readings, null);
        var unseen = UnseenNotice.OfCompletion(facts, completion, notices, calendar);
        var ceased = law.CessationCounts ? UnseenNotice.OfCessation(facts, notices) : [];
        AddUnseen(facts, law, unseen, readings, calendar);
        AddUnseen(facts, law, ceased, readings, calendar);
        return new Outcome(
            Deadline.Of(right.Limit(StandingOf(facts, need, served, readings, completion.EndFirm)), readings, calendar,
                endKnown: completion.EndKnown),
            new Words(Why, Ask));

        List<Reason> Why()
        {
            List<Reason> why = [.. right.Why];
            if (need.Why is { } worth)
                why.Add(worth);
            Read(facts, completion, notices, law, calendar, [], why);
            if (readings.Count == 0)
                why.Add(Reason.Of(law.Section, $"The section sets an end and no beginning: the notice may be given at once, and its time "
                    + $"ends {facts.Numbers.On(law.FromNotice, facts.AsOf)} after a notice of completion is recorded, seen or unseen."));
            if (unseen.Count > 0)
                why.Add(UnseenNotice.Why(facts, unseen, law.Section, law.FromNotice));
            if (ceased.Count > 0)
                why.Add(UnseenNotice.Why(facts, ceased, law.Section, law.FromNotice));
            if (LateRoad(facts, law) is { } late)
                why.Add(late);
            why.AddRange(BondServed.Why(facts, law));
            return why;
        }

        List<Question> Ask() =>
            [.. right.Questions, .. BondServed.Questions(facts).Where(q => !right.Questions.Contains(q)), .. LateRoadQuestion(facts),
                .. unseen.Count + ceased.Count == 0
                    ? (Question[])[] : [UnseenNotice.Ask([.. unseen, .. ceased], Deadline.Sorted(readings))]];
    }

    /// <summary>
    /// The 15 days of a notice that nobody may have seen: they can only make the time shorter. Our reading, so that the day to plan on is
    /// safe.
    /// </summary>
    [Rule("Civ. Code § 8612(b)", Sure = Sure.OurReading)]
    [Rule("Civ. Code § 9560(b)", Sure = Sure.OurReading)]
    private static void AddUnseen(
        FactsAsOf facts, BondLaw law, IReadOnlyList<UnseenNotice> unseen, List<Reading> readings, OpenDays calendar)
    {
        var end = LocalDate.MinIsoValue;
        foreach (var reading in readings)
            end = LocalDate.Max(end, reading.Day);
        foreach (var notice in unseen)
        {
            var last = facts.Numbers.LastDay(law.FromNotice, notice.Recorded);
            if (last < end)
                readings.Add(Deadline.Own(notice.Words, last, calendar));
        }
    }

    private static Standing StandingOf(FactsAsOf facts, BondNoticeNeed need, BondServed served, List<Reading> readings, bool endFirm)
    {
        var standing = readings.Count == 0
            ? facts.HasFurnished ? Standing.Open : Standing.NotYet
            : Deadline.StandingOf(facts.AsOf, readings, null, endFirm);
        if (served.By is { } by && (readings.Count == 0 || Deadline.StandingOf(facts.AsOf, readings, new DaySpan(by, by)) == Standing.Kept))
            return Standing.Kept;
        if (served.From is { } from && (readings.Count == 0 || !Deadline.IsPast(from, readings)))
            return Standing.InDoubt;
        return standing == Standing.Lost ? need.AfterIt : standing;
    }

    private static void Read(
        FactsAsOf facts, CompletionReadings completion, IReadOnlyList<OwnersNotice> all, BondLaw law, OpenDays calendar,
            List<Reading> readings, List<Reason>? why)
    {
        var notices = all;
        foreach (var notice in all)
        {
            if (notice.HasForm != Verdict.No)
                continue;
            why?.Add(notice.PassedOver(law.Section));
            notices = [.. all.Where(static n => n.HasForm != Verdict.No)];
        }

        foreach (var reading in completion.Open)
        {
            foreach (var completed in CandidateDays.Completions(reading, notices))
                AddReadings(facts, reading, completed, notices, law, calendar, readings, why);
        }

        // A recorded notice is planned on even where nothing else is known of completion.
        foreach (var notice in completion.Open.Count == 0 ? notices : [])
        {
            if (notice.Entry.Notice != OwnerNotice.Completion && !law.CessationCounts)
                continue;
            foreach (var recorded in CandidateDays.Ends(notice.Recorded))
                AddDaysFromNotice(facts, notice, recorded, law, calendar, readings, why);
        }
    }

    /// <summary>
    /// The section asks that a notice of completion be recorded, and not that it be recorded in time: one that is early or late leaves both
    /// readings, the shorter to plan on.
    /// </summary>
    [Rule("Civ. Code § 8612(b)", Sure = Sure.OurReading)]
    [Rule("Civ. Code § 9560(b)", Sure = Sure.OurReading)]
    private static void AddReadings(
        FactsAsOf facts, CompletionReading reading, LocalDate completed, IReadOnlyList<OwnersNotice> notices, BondLaw law,
            OpenDays calendar, List<Reading> readings, List<Reason>? why)
    {
        var shortened = false;
        foreach (var notice in notices)
        {
            // Only a notice of completion of the whole work surely takes the longer time away; any other is planned on beside them.
            var isCompletion = notice.Entry.Notice == OwnerNotice.Completion;
            var surely = isCompletion && notice.IsForWholeWork && notice.HasForm == Verdict.Yes;
            foreach (var recorded in CandidateDays.Recordings(notice, completed))
            {
                if (!reading.GoesWith(notice, completed, recorded))
                    continue;
                surely &= notice.EffectIfCompletedOn(notice.CompletionToServe(completed), recorded) == Verdict.Yes;
                if (isCompletion || law.CessationCounts)
                    AddDaysFromNotice(facts, notice, recorded, law, calendar, readings, why);
            }

            shortened |= surely;
        }

        if (shortened)
            return;
        var name = reading.WordsOn(completed);
        var days = facts.Numbers.On(law.FromCompletion, completed);
        var plain = days.LastDay(completed);
        readings.Add(Deadline.Own($"{days.Text} after {name}", plain, calendar));
        why?.Add(Reason.Of(law.Section, $"On the reading «{name}» no notice of completion that surely counts is recorded: notice to surety "
            + $"and principal within {days}, by {plain}.", reading.Why));
    }

    private static void AddDaysFromNotice(
        FactsAsOf facts, OwnersNotice notice, LocalDate recorded, BondLaw law, OpenDays calendar, List<Reading> readings, List<Reason>? why)
    {
        var days = facts.Numbers.On(law.FromNotice, recorded);
        var last = days.LastDay(recorded);
        var reading = Deadline.Own($"{days.Text} after the {notice.Words} of {recorded:iso}", last, calendar);
        if (readings.Contains(reading))
            return;
        readings.Add(reading);
        why?.Add(Reason.Of(law.Section, $"The {notice.Words} was recorded on {recorded}: notice to surety and principal "
            + $"within {days}, by {last}.", [notice.Entry]));
    }

    // Whom the contractor itself, the owner or the public entity hired has no customer whose pay could close it.
    private static bool MayHaveSuchACustomer(FactsAsOf facts) =>
        facts.Hirer is null or { Capacity: PartyCapacity.Subcontractor or PartyCapacity.Supplier };

    /// <summary>
    /// The closing of the late road: for one without a direct contract with the contractor only, and of the road of (c) only.
    /// </summary>
    [Rule("Civ. Code § 8612(d)")]
    [Rule("Civ. Code § 9560(d)")]
    private static Reason? LateRoad(FactsAsOf facts, BondLaw law) => !MayHaveSuchACustomer(facts)
        ? null
        : Reason.Of(law.LateRoad, $"For one with no direct contract with the contractor the late notice may be closed where its customer, "
            + $"a subcontractor with a direct contract with the contractor, was paid all its progress payments but those disputed in good "
            + $"faith, or was terminated pursuant to the contract and paid so to that day. It does not fit a customer that works under "
            + $"another subcontractor; and it closes the road of subdivision (c) only, while (b) bears no such limit. Have counsel look at "
            + $"it.");

    private static IEnumerable<Question> LateRoadQuestion(FactsAsOf facts) => !MayHaveSuchACustomer(facts)
        ? []
        : [new Question($"Has {facts.Hirer?.Name ?? "the claimant's customer"} a direct contract with the contractor, and was it paid its "
            + $"undisputed progress payments, or terminated pursuant to the contract and paid to that day? Then the late bond notice may "
            + $"be closed.{MoneyKinds.HirerPaid:aside}")];
}
