using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Completion;

/// <summary>Completion of public work (Civ. Code § 9200): by acceptance or by idle days; never by finishing or use alone.</summary>
public static class PublicCompletion
{
    private const string Section = "Civ. Code § 9200";

    /// <summary>The readings of completion.</summary>
    [Rule("Civ. Code § 9200(a)")]
    [Rule("Civ. Code § 9200(b)")]
    public static CompletionReadings Of(FactsAsOf facts, IReadOnlyList<OwnersNotice> owners)
    {
        var open = new List<CompletionReading>();
        var ruledOut = new List<Reason>();
        foreach (var entry in facts.All<Completed>())
        {
            if (DaySpan.Of(entry.On) is not { } day)
                continue;
            if (entry.By == CompletionTheory.Acceptance)
            {
                open.Add(new CompletionReading($"acceptance by the public entity", day, entry.Contested
                    ? Firmness.Contested : Firmness.Certain,
                    Reason.Of("Civ. Code § 9200(a)", $"The public entity accepted the work {day}.", [entry])));
            }
            else if (entry.By == CompletionTheory.Cessation)
            {
                open.Add(new CompletionReading($"completion by cessation of labor", day, entry.Contested
                    ? Firmness.Contested : Firmness.Asserted,
                    Reason.Of("Civ. Code § 9200(b)", $"The work is said to have been completed by cessation of labor {day}; the file "
                        + $"should show the stop itself{CompletionKinds.LaborCeased:aside}.", [entry])));
            }
            else
            {
                ruledOut.Add(Reason.NotApplied(Section, $"On public work neither finishing nor use completes the work in law; the "
                    + $"contention of {day} is passed over.", entry));
            }
        }

        var stops = LaborStop.Of(facts);
        foreach (var stop in stops)
        {
            var idle = facts.Numbers.On(Number.PublicIdleDays, stop.Last.Earliest);
            if (stop.CompletesOn is not { } day)
            {
                ruledOut.Add(Reason.NotApplied("Civ. Code § 9200(b)",
                    $"Labor ceased {stop.Last} but resumed before {idle.Count} continuous days had run.", stop.Entry));
                continue;
            }

            if (facts.Job.Work.StateContractAct == true)
            {
                ruledOut.Add(Reason.NotApplied("Civ. Code § 9200(b)", $"Labor ceased {stop.Last}, but the contract is under the State "
                    + $"Contract Act (Pub. Contract Code § 10100): idleness does not complete the work, only acceptance "
                    + $"does.", stop.Entry));
                continue;
            }

            // Where the file does not say which contract it is, idleness is never more than asserted.
            open.Add(new CompletionReading($"{idle.Text} without labor", day, IdleFirmness(facts, stop, day),
                Reason.Of("Civ. Code § 9200(b)", $"Labor ceased {stop.Last}; the {idle.Ordinal} continuous day is {day}. Not on a contract "
                    + $"under the State Contract Act "
                    + $"(Pub. Contract Code § 10100).", [stop.Entry])) { IsIdleness = true, LaborResumed = stop.Resumed is not null });
        }

        AddWhatTheEntityStates(owners, open);
        // What the entity's notice states is its own word; where labor is known to have stopped, it may have been accepted before.
        var told = stops.Count > 0 ? Firmness.Certain : Firmness.Asserted;
        var unknown = open.TrueForAll(r => r.Firmness > told || r.IsIdleness);
        CompletionDay.RuleOutAfterCertain(open, ruledOut, Section);
        if (unknown)
            AddFloor(facts, stops, open);
        open.Sort(static (a, b) => a.On.Earliest != b.On.Earliest
            ? a.On.Earliest.CompareTo(b.On.Earliest) : string.CompareOrdinal(a.Name, b.Name));
        return new CompletionReadings(open, ruledOut, AwaitsAcceptance: true);
    }

    /// <summary>
    /// The completion that the entity's recorded notice asserts. A wrong day does no harm to it where the true one is 15 days or less
    /// before recording.
    /// </summary>
    [Rule("Civ. Code § 9204(c)")]
    private static void AddWhatTheEntityStates(IReadOnlyList<OwnersNotice> owners, List<CompletionReading> open)
    {
        foreach (var notice in owners)
        {
            if (notice.Entry.Notice is not (OwnerNotice.Completion or OwnerNotice.Acceptance) || !notice.IsForWholeWork
                || notice.HasForm == Verdict.No)
                continue;
            var states = notice.Entry.States is { } day
                ? new DaySpan(day, day)
                : new DaySpan(notice.EarliestCompletionCovered(notice.Recorded.Earliest), notice.Recorded.Latest);
            open.Add(new CompletionReading($"acceptance as the {notice.Words} states", states, Firmness.Asserted,
                notice.Entry.States is null
                    ? Reason.Of("Civ. Code § 9204(a)", $"The public entity recorded a {notice.Words} {notice.Recorded}; the file does not "
                        + $"say which day it states, so any day is taken for which it is in time: {states}.", [notice.Entry])
                    : Reason.Of("Civ. Code § 9204(c)",
                        $"The public entity's {notice.Words}, recorded {notice.Recorded}, states completion {states}.",
                            [notice.Entry])) { ServedBy = notice.Entry.States is null ? notice : null });
        }
    }

    /// <summary>
    /// Where nothing uncontested is known of acceptance it may have been on any day since the work was surely still going on: nobody sends
    /// the claimant the resolution. Days without labor tell only when it was complete at the latest. Our rule, so that a day to plan on
    /// exists.
    /// </summary>
    [Rule("Civ. Code § 9200(a)", Sure = Sure.OurReading)]
    private static void AddFloor(FactsAsOf facts, IReadOnlyList<LaborStop> stops, List<CompletionReading> open)
    {
        if (LaborStop.AllLeftItUnfinished(stops) && open.Exists(static r => r.IsIdleness))
            return;
        if (CompletionFloor.Of(facts) is not { } floor || open.Exists(r => r.On.Earliest <= floor))
            return;
        open.Add(new CompletionReading($"acceptance unknown: not before the last work we know of", new DaySpan(floor, floor),
            Firmness.Floor,
            Reason.Of("Civ. Code § 9200(a)", $"The file does not say that the public entity accepted the work, and nobody need tell the "
                + $"claimant. Acceptance is taken to be no earlier than the last work the file knows of, {floor}; it may be much "
                + $"later.", [.. facts.Furnished.TakeLast(1)])));
    }

    private static Firmness IdleFirmness(FactsAsOf facts, LaborStop stop, DaySpan complete) =>
        facts.AsOf < complete.Latest ? Firmness.Projected
        : facts.Job.Work.StateContractAct == false && !(stop.Resumed <= complete.Latest) && stop.OwnLabor is null && stop.Against is null
        ? Firmness.Certain
        : Firmness.Asserted;

    /// <summary>The finding <c>completion.day</c>.</summary>
    public static Finding Finding(FactsAsOf facts, CompletionReadings completion)
    {
        var readings = Deadline.Sorted(completion.Open.SelectMany(r => r.On.IsExact
            ? (Reading[])[new Reading(r.Words, r.On.Earliest)]
            : [new Reading(r.Words, r.On.Earliest), new Reading($"{r.Words}, at the latest", r.On.Latest)]));
        var why = completion.Open.Select(r => r.Why).ToList();
        if (why.Count == 0)
            why.Add(Reason.Of(Section, $"The file does not say that the public entity accepted the work, nor that labor ceased "
                + $"for {facts.Numbers.On(Number.PublicIdleDays, facts.AsOf)}."));
        why.AddRange(completion.RuledOut);
        return new Finding
        {
            Id = "completion.day",
            Title = "Completion of the work",
            Standing = !completion.SaidComplete ? Standing.NotYet
                : readings.Count == 1 && completion.Open[0].Firmness == Firmness.Certain ? Standing.Done
                : Standing.InDoubt,
            Readings = readings,
            Band = readings.Count == 0 ? null : Deadline.BandOver(readings, completion.EndKnown),
            Why = why,
            Questions =
            [
                .. !completion.EndKnown
                    ? (Question[])[
                        new Question($"Has the public entity accepted the work, and on which day? Search its agenda and the county "
                            + $"index.{CompletionKinds.Completed:aside}")] : [],
                .. facts.Job.Work.StateContractAct is null && facts.All<LaborCeased>().Count > 0
                    ? (Question[])[
                        new Question($"Is the contract under the State Contract Act? Then idleness never completes the "
                            + $"work{HeadField.WorkStateContractAct:aside}.",
                            Days: facts.Numbers.On(Number.PublicIdleDays, facts.AsOf).Count)]
                    : [],
            ],
        };
    }
}
