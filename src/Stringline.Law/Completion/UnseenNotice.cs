using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Completion;

/// <summary>
/// A notice that the owner or the public entity may have recorded without the claimant's knowing. On public work nobody is told of it but
/// those who paid for it (Civ. Code § 9362); on private work a copy is sent to those alone who gave preliminary notice (§ 8190), and the
/// days of the bond notice run without it.
/// </summary>
/// <param name="Words">The reading.</param>
/// <param name="Recorded">The day of recording.</param>
/// <param name="Notice">Which notice.</param>
internal sealed record UnseenNotice(Sentence Words, LocalDate Recorded, OwnerNotice Notice)
{
    /// <summary>
    /// A notice of completion: the first and the last day on which it may have been recorded, for each completion of the file, until the
    /// county index was searched after the last of them. None where the file holds a notice of completion or acceptance: there is no other
    /// to look for.
    /// </summary>
    [Rule("Civ. Code § 9204(a)", Sure = Sure.OurReading)]
    [Rule("Civ. Code § 8182(a)", Sure = Sure.OurReading)]
    public static IReadOnlyList<UnseenNotice> OfCompletion(FactsAsOf facts, CompletionReadings completion,
        IReadOnlyList<OwnersNotice> owners, OpenDays calendar)
    {
        foreach (var notice in owners)
        {
            if (notice.Entry.Notice is OwnerNotice.Completion or OwnerNotice.Acceptance && notice.IsForWholeWork)
                return [];
        }

        List<UnseenNotice>? unseen = null;
        foreach (var reading in completion.Open)
        {
            // Of what only goes on, no part can be over before its earliest day.
            if (reading.Firmness == Firmness.Floor || (reading.Firmness == Firmness.Projected && reading.On.Earliest > facts.AsOf))
                continue;
            // The owner's own last day gets the benefit of every roll, since the claimant's time is then the shorter.
            var last = OwnersNotice.LatestToRecord(facts, reading.On.Latest, calendar);
            if (IndexSearches.AllAfter(facts, last))
                continue;
            (unseen ??= []).Add(new UnseenNotice($"if a notice was recorded unseen on the day of {reading.Words}", reading.On.Earliest,
                OwnerNotice.Completion));
            unseen.Add(new UnseenNotice($"if a notice was recorded unseen "
                + $"within {OwnersNotice.TimeToRecord(facts, reading.On.Latest)} after {reading.Words}", last, OwnerNotice.Completion));
        }

        return unseen ?? (IReadOnlyList<UnseenNotice>)[];
    }

    /// <summary>
    /// A notice of cessation: while labor has been stopped for 30 days, or was before it resumed, one may have been recorded on any day
    /// since the county index was last searched. It may be recorded under the State Contract Act too. None where the file holds one.
    /// </summary>
    [Rule("Civ. Code § 9202(a)", Sure = Sure.OurReading)]
    public static IReadOnlyList<UnseenNotice> OfCessation(FactsAsOf facts, IReadOnlyList<OwnersNotice> owners)
    {
        var stops = LaborStop.Of(facts);
        if (stops.Count == 0)
            return [];
        foreach (var notice in owners)
        {
            if (notice.Entry.Notice == OwnerNotice.Cessation)
                return [];
        }

        var searched = IndexSearches.LeastLate(facts)?.On.Earliest ?? LocalDate.MinIsoValue;
        List<UnseenNotice>? unseen = null;
        foreach (var stop in stops)
        {
            var first = LocalDate.Max(facts.Numbers.LastDay(LaborStop.ToRecordCessation(facts), stop.Last.Earliest), searched);
            var last = stop.Resumed is { } resumed ? LocalDate.Min(resumed.PlusDays(-1), facts.AsOf) : facts.AsOf;
            if (first > last)
                continue;
            (unseen ??= [])
                .Add(new UnseenNotice($"if a notice of cessation was recorded unseen on {first:iso}", first, OwnerNotice.Cessation));
            if (last > first)
                unseen.Add(new UnseenNotice($"if a notice of cessation was recorded unseen on {last:iso}", last, OwnerNotice.Cessation));
        }

        return unseen ?? (IReadOnlyList<UnseenNotice>)[];
    }

    /// <summary>Why they are planned for, and what they do.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="unseen">The notices of one kind, not empty.</param>
    /// <param name="section">The section that counts the days from the recording.</param>
    /// <param name="fromRecording">How long after the recording the time ends.</param>
    public static Reason Why(FactsAsOf facts, IReadOnlyList<UnseenNotice> unseen, string section, Number fromRecording)
    {
        var (from, to) = (unseen[0].Recorded, unseen[^1].Recorded);
        var days = facts.Numbers.On(fromRecording, to);
        if (unseen[0].Notice == OwnerNotice.Cessation)
        {
            var idle = facts.Numbers.On(LaborStop.ToRecordCessation(facts), from);
            return Reason.Of(section, $"Labor had been stopped for {idle}, so that a notice of cessation could be recorded "
                + $"(Civ. Code § 9202(a)), from {from} to {to} as far as the file says; it would end the time {days} later. The file shows "
                + $"no search of "
                + $"the county index after that: search it, and act today where the earlier day is past.", [.. facts.All<LaborCeased>()]);
        }

        var toRecord = OwnersNotice.TimeToRecord(facts, from);
        return facts.Job.Work.Kind == WorkKind.Public
            ? Reason.Of(section, $"A notice of completion may be recorded on or within {toRecord} after completion (Civ. Code § 9204(a)), "
                + $"from {from} to {to}, and would end the time {days} later. The entity tells only those who paid "
                + $"it {facts.Numbers.On(Number.FeeToBeTold, facts.AsOf)} with a stop payment notice (Civ. Code § 9362), and the file "
                + $"shows no search of the county index after {to}: search it, and act today where the earlier day is past.")
            : Reason.Of(section, $"A notice of completion may be recorded on or within {toRecord} after completion (Civ. Code § 8182(a)), "
                + $"from {from} to {to}, and would end the time {days} later, whether or not a copy was sent to the claimant. The file "
                + $"shows no search of the county index after {to}: search it, and act today where the earlier day is past.");
    }

    /// <summary>The question that a search answers.</summary>
    /// <param name="unseen">All the notices, not empty.</param>
    /// <param name="sorted">The readings of the last day.</param>
    public static Question Ask(IReadOnlyList<UnseenNotice> unseen, IReadOnlyList<Reading> sorted)
    {
        var last = unseen[0].Recorded;
        var (completion, cessation) = (false, false);
        foreach (var notice in unseen)
        {
            last = LocalDate.Max(last, notice.Recorded);
            completion |= notice.Notice == OwnerNotice.Completion;
            cessation |= notice.Notice == OwnerNotice.Cessation;
        }

        var what = completion && cessation ? "completion, acceptance or cessation" : completion ? "completion or acceptance" : "cessation";
        return new Question($"Was a notice of {what} recorded? Search the county index after {last} and enter the search or what it "
            + $"finds.{CompletionKinds.IndexSearched:aside}",
            Days: sorted.Count < 2 ? null : NodaTime.Period.DaysBetween(sorted[0].Day, sorted[^1].Day));
    }
}
