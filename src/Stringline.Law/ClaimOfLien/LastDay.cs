using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.ClaimOfLien;

/// <summary>The last day to record a claim of lien, on every open reading (Civ. Code §§ 8412, 8414).</summary>
/// <param name="Readings">The readings, earliest first; empty where the work is not complete and no day is known.</param>
/// <param name="EndKnown">Whether every open reading has an end.</param>
/// <param name="EndFirm">Whether an uncontested reading carries the latest end.</param>
public sealed record LastDay(IReadOnlyList<Reading> Readings, bool EndKnown, bool EndFirm)
{
    private Func<IReadOnlyList<Reason>>? explain;
    private IReadOnlyList<Reason>? why;

    /// <summary>
    /// Of a work of several residential structures: the readings of those whose time is over, while that of another runs
    /// (Civ. Code § 8448).
    /// </summary>
    public IReadOnlyList<Reading> Over { get; private init; } = [];

    // Every reading with the structure that it is of; null where the work is one.
    private List<(string? Structure, Reading Reading)>? ByStructure { get; init; }

    /// <summary>The readings against which a recorded claim is measured: those of the structure that it names, or else all.</summary>
    [Rule("Civ. Code § 8448(b)(1)")]
    public IReadOnlyList<Reading> ReadingsFor(ClaimRecorded claim)
    {
        if (ByStructure is null)
            return Readings;
        var named = claim.Structure is { } on && ByStructure.Any(p => p.Structure == on);
        return [.. ByStructure.Where(p => !named || p.Structure == claim.Structure || p.Structure is null).Select(p => p.Reading)];
    }

    /// <summary>The reasons, put together when first read.</summary>
    public IReadOnlyList<Reason> Why => why ??= explain?.Invoke() ?? [];

    /// <summary>The statutory last day on the earliest reading, or null.</summary>
    public LocalDate? Earliest => Readings.Count == 0 ? null : Readings[0].Day;

    /// <summary>Works out the last day on every reading of completion and of the owner's notices.</summary>
    [Rule("Civ. Code § 8412")]
    [Rule("Civ. Code § 8414(b)")]
    public static LastDay Of(FactsAsOf facts, CompletionReadings completion, IReadOnlyList<OwnersNotice> notices, OpenDays calendar) =>
        Of(facts, completion, notices, calendar, null) with
        {
            explain = () =>
            {
                var why = new List<Reason>();
                Of(facts, completion, notices, calendar, why);
                return why;
            },
        };

    /// <summary>The days alone, without their reasons: for asking what another answer would move.</summary>
    internal static LastDay WithoutReasons(FactsAsOf facts, CompletionReadings completion, IReadOnlyList<OwnersNotice> notices,
        OpenDays calendar) =>
        Of(facts, completion, notices, calendar, null);

    private static LastDay Of(FactsAsOf facts, CompletionReadings completion, IReadOnlyList<OwnersNotice> notices, OpenDays calendar,
        List<Reason>? why)
    {
        var after = TimeToClaim.AfterNotice(facts.Job.Claimant);
        var section = SectionOf(facts.Job.Claimant);
        var stops = LaborStop.Of(facts);
        var readings = new List<Reading>(2 * completion.Open.Count);
        List<(string? Structure, Reading Reading)>? byStructure = null;
        foreach (var reading in completion.Open)
        {
            var from = readings.Count;
            foreach (var completed in CandidateDays.Completions(reading, notices))
                AddReadings(facts, reading, completed, notices, stops, after, section, calendar, readings, why);
            if (reading.Structure is null && byStructure is null)
                continue;
            byStructure ??= [.. readings.Take(from).Select(static r => ((string?)null, r))];
            for (var i = from; i < readings.Count; i++)
                byStructure.Add((reading.Structure, readings[i]));
        }

        AddBeforeAcceptance(facts, completion, notices, stops, after, section, calendar, readings, why);
        why?.AddRange(completion.RuledOut);
        return byStructure is null
            ? new LastDay(Deadline.Sorted(readings), completion.EndKnown, completion.EndFirm)
            : OfStructures(byStructure, facts.AsOf, completion, why);
    }

    /// <summary>
    /// Work that only an acceptance completes is not complete while it waits for one. But the shorter time runs from the recording of a
    /// notice of cessation, by the words of the sections whatever completes the work; that such a notice does nothing there can be said, so
    /// it is in doubt.
    /// </summary>
    [Rule("Civ. Code § 8412(b)", Sure = Sure.OurReading)]
    [Rule("Civ. Code § 8414(b)(2)", Sure = Sure.OurReading)]
    private static void AddBeforeAcceptance(
        FactsAsOf facts, CompletionReadings completion, IReadOnlyList<OwnersNotice> notices, IReadOnlyList<LaborStop> stops,
        Number after, string section, OpenDays calendar, List<Reading> readings, List<Reason>? why)
    {
        if (completion.Open.Count > 0 || !Acceptance.Of(facts.Job.Work).IsNeeded)
            return;
        foreach (var notice in notices)
        {
            if (notice is { Entry: { Notice: OwnerNotice.Completion, ContractOf: not null }, ReachesClaimant: not Verdict.No })
                AddOfOneContract(notice);
            if (notice.Entry.Notice != OwnerNotice.Cessation || notice.ReachesClaimant == Verdict.No
                || notice.CessationIsEffective(stops, out var stopped) == Verdict.No)
                continue;
            foreach (var recorded in CandidateDays.Ends(notice.Recorded))
                readings.Add(Deadline.Own($"if the notice of cessation of {recorded:iso} ends the time before the acceptance",
                    facts.Numbers.LastDay(after, recorded), calendar));
            why?.Add(Reason.Of(section, $"Only the acceptance completes the work, but the section "
                + $"counts {facts.Numbers.On(after, notice.Recorded.Earliest)} from the recording of a notice of cessation, whatever "
                + $"completes it. One was recorded {notice.Recorded}: act by {notice.Recorded.LastDay(facts.Numbers, after).Earliest}.",
                [notice.Entry], stopped, notice.ReachWhy));
        }

        // That one contract may be complete while the whole work waits for its acceptance (Civ. Code § 8186).
        void AddOfOneContract(OwnersNotice notice)
        {
            foreach (var recorded in CandidateDays.Ends(notice.Recorded))
            {
                if (notice.Entry.States is not { } stated || notice.IsEffectiveIfCompletedOn(stated, recorded))
                    readings.Add(Deadline.Own($"if the notice of completion of one contract of {recorded:iso} ends the time before the "
                        + $"acceptance", facts.Numbers.LastDay(after, recorded), calendar));
            }

            why?.Add(Reason.Of("Civ. Code § 8186", $"Only the acceptance completes the whole work, but a notice of completion of one "
                + $"direct contract was recorded {notice.Recorded}: if it is good and the claimant's, act "
                + $"by {notice.Recorded.LastDay(facts.Numbers, after).Earliest}.", [notice.Entry], notice.ReachWhy));
        }
    }

    /// <summary>
    /// Of several structures the time for each runs by itself: what is over for one is passed over while that of another runs, and nothing
    /// is lost by it.
    /// </summary>
    [Rule("Civ. Code § 8448(b)(1)", Sure = Sure.OurReading)]
    private static LastDay OfStructures(List<(string? Structure, Reading Reading)> all, LocalDate asOf, CompletionReadings completion,
        List<Reason>? why)
    {
        var running = all.Where(p => p.Structure is null || asOf <= (p.Reading.Rolled ?? p.Reading.Day)).Select(p => p.Structure)
            .ToHashSet();
        Reading[] over = [.. all.Where(p => !running.Contains(p.Structure)).Select(p => p.Reading)];
        if (over.Length == all.Count)
            over = [];
        foreach (var reading in over)
            why?.Add(Reason.NotApplied("Civ. Code § 8448(b)(1)",
                $"On the reading «{reading.Words}» the time ended on {reading.Day}; that of another structure runs."));
        return new LastDay(Deadline.Sorted(all.Where(p => over.Length == 0 || running.Contains(p.Structure)).Select(p => p.Reading)),
            completion.EndKnown, completion.EndFirm) { Over = over, ByStructure = all };
    }

    private static string SectionOf(Claimant claimant) =>
        claimant.Role == ClaimantRole.DirectContractor ? "Civ. Code § 8412" : "Civ. Code § 8414(b)";

    private static void AddReadings(
        FactsAsOf facts, CompletionReading reading, LocalDate completed, IReadOnlyList<OwnersNotice> notices,
            IReadOnlyList<LaborStop> stops,
        Number after, string section, OpenDays calendar, List<Reading> readings, List<Reason>? why)
    {
        var name = reading.WordsOn(completed);
        var days = facts.Numbers.On(TimeToClaim.AfterCompletion(facts.Job.Claimant), completed);
        var unshortened = days.LastDay(completed);
        List<Reason>? children = why is null ? null :
        [
            reading.Why,
            Reason.Of(section, $"{days} after {completed}: {unshortened}."),
        ];
        var sure = unshortened;
        List<Reading>? inDoubt = null;
        foreach (var notice in notices)
        {
            var surely = true;
            foreach (var recorded in CandidateDays.Recordings(notice, completed))
            {
                if (!reading.GoesWith(notice, completed, recorded))
                    continue;
                var shortened = facts.Numbers.LastDay(after, recorded);
                var verdict = Shortens(facts, notice, completed, recorded, stops, children);
                // By the words of the section it does; that a notice of cessation does nothing on work that an acceptance completes can be
                // said.
                if (verdict == Verdict.Yes && notice.Entry.Notice == OwnerNotice.Cessation && Acceptance.IsByAcceptance(reading)
                    && facts.Job.Work.SubjectToAcceptanceBy is not null)
                    verdict = Verdict.Open;
                surely &= verdict == Verdict.Yes;
                if (verdict == Verdict.No || shortened >= unshortened)
                    continue;
                children?.Add(
                    Reason.Of(section, $"{facts.Numbers.On(after, recorded)} after the {notice.Words} was recorded "
                        + $"on {recorded}: {shortened}.", [notice.Entry]));
                (inDoubt ??= []).Add(Deadline.Own($"{name}, shortened by the {notice.Words} of {recorded:iso}", shortened, calendar));
            }

            if (surely)
                sure = LocalDate.Min(sure, facts.Numbers.LastDay(after, notice.Recorded.Latest));
        }

        readings.Add(Deadline.Own(name, sure, calendar));
        foreach (var doubtful in inDoubt ?? [])
        {
            if (doubtful.Day < sure)
                readings.Add(doubtful);
        }

        why?.Add(Reason.Of(section, $"On the reading «{name}» the last day is {sure}, statutory and not rolled.", [.. children ?? []]));
    }

    /// <summary>Whether an owner's notice shortens this claimant's time if the work was completed on a day.</summary>
    private static Verdict Shortens(FactsAsOf facts, OwnersNotice notice, LocalDate completed, LocalDate recorded,
        IReadOnlyList<LaborStop> stops, List<Reason>? why)
    {
        Verdict effective;
        var days = OwnersNotice.TimeToRecord(facts, completed);
        if (notice.Entry.Notice == OwnerNotice.Cessation)
        {
            effective = notice.CessationIsEffective(stops, out var reason);
            why?.Add(reason);
        }
        else if (!notice.IsForWholeWork)
        {
            // Its time runs from completion of that contract, which only the notice itself states: the owner's word, which a court may yet
            // find wrong.
            effective = notice.Entry.States is { } stated && notice.EffectIfCompletedOn(stated, recorded) == Verdict.No
                && !(notice.MayBeForWholeWork && notice.EffectIfCompletedOn(completed, recorded) != Verdict.No) ? Verdict.No : Verdict.Open;
            why?.Add(effective == Verdict.No
                ? Reason.NotApplied("Civ. Code § 8186", $"The {notice.Words} for one direct contract was recorded "
                    + $"on {recorded}, not within {OwnersNotice.TimeToRecord(facts, notice.Entry.States ?? completed)} after the "
                    + $"completion it states: no effect.", notice.Entry)
                : Reason.Of("Civ. Code § 8186", $"The {notice.Words} was recorded on {recorded} for one direct contract only; for those "
                    + $"under it the time runs from the recording.", [notice.Entry]));
        }
        else if (notice.EffectIfCompletedOn(completed, recorded) is not Verdict.No and var inTime)
        {
            effective = inTime;
            why?.Add(inTime == Verdict.Open
                ? Reason.Of("Civ. Code § 10", $"The notice of completion was recorded on {recorded}. The {days} after completion "
                    + $"on {completed} reach to that day only by a holiday that the courts do not keep, so whether it takes effect is "
                    + $"open: plan on the shorter time.", [notice.Entry])
                : recorded > OwnersNotice.LastDayToRecord(facts, completed)
                ? Reason.Of("Civ. Code § 8182(a)", $"The notice of completion was recorded on {recorded}, the first open day after "
                    + $"the {days.Ordinal} from completion on {completed}, a day on which the office was closed: planned on as if it takes "
                    + $"effect. That it came too late is the argument on the other side.", [notice.Entry])
                : Reason.Of("Civ. Code § 8182(a)",
                    $"The notice of completion was recorded on {recorded}, on or within {days} after completion on {completed}: it takes "
                        + $"effect.", [notice.Entry]));
        }
        else
        {
            effective = Verdict.No;
            why?.Add(recorded < completed
                ? Reason.NotApplied("Civ. Code § 8182(d)", $"The notice of completion was recorded on {recorded}, before completion "
                    + $"on {completed}: no effect (Munger & Munger v. McBratney (1955) 131 Cal.App.2d Supp. 866).", notice.Entry)
                : Reason.NotApplied("Civ. Code § 8182(d)",
                    $"The notice of completion was recorded on {recorded}, more than {days} after completion on {completed}: no effect; a "
                        + $"notice can only shorten the time (Fontana Paving v. Hedley Brothers (1995) 38 Cal.App.4th "
                        + $"146).", notice.Entry));
        }

        if (effective == Verdict.No)
            return Verdict.No;
        why?.Add(notice.ReachWhy);
        return (effective, notice.ReachesClaimant) switch
        {
            (_, Verdict.No) => Verdict.No,
            (Verdict.Yes, Verdict.Yes) => Verdict.Yes,
            _ => Verdict.Open,
        };
    }
}
