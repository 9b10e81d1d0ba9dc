using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Completion;

/// <summary>When the work of improvement was completed, on every reading the facts allow (Civ. Code § 8180).</summary>
public static class CompletionDay
{
    private const string Whole = "Civ. Code § 8180(a)";

    /// <summary>The readings of completion of a private work.</summary>
    [Rule("Civ. Code § 8180(a)")]
    public static CompletionReadings Of(FactsAsOf facts, IReadOnlyList<OwnersNotice> notices)
    {
        var stops = LaborStop.Of(facts);
        var readings = new List<CompletionReading>();
        var ruledOut = new List<Reason>();
        var acceptance = Acceptance.Of(facts.Job.Work);
        var several = Structures.AreSeveral(facts.Job.Work);

        foreach (var entry in facts.All<Completed>())
        {
            if (DaySpan.Of(entry.On) is not { } day)
                ruledOut.Add(Reason.NotApplied(Whole, $"The file says that the work was completed but not when; it counts once the day is "
                    + $"entered.", entry));
            else if (acceptance.RulesOut(entry) is { } passedOver)
                ruledOut.Add(passedOver);
            else
                readings.Add(several
                    ? Structures.OfOne(Contended(entry, day, stops, acceptance), entry, facts.Job.Work)
                    : Contended(entry, day, stops, acceptance));
        }

        if (!acceptance.IsNeeded)
        {
            AddIdleness(facts, stops, readings, ruledOut);
            AddNoticesOfCessation(notices, stops, readings, ruledOut);
        }

        var eitherWay = acceptance.IsCertainEitherWay(readings);
        acceptance.MakeConditional(readings);
        AddWhatTheOwnerStates(notices, readings);
        var before = NotBeforeCommencement(facts, readings, ruledOut);
        if (several)
            Structures.DropOthers(facts, readings, ruledOut);
        // Asked before the later ones are ruled out: who says that it was complete later says that it was not when labor stopped.
        var unknown = !acceptance.IsNeeded
            && readings.TrueForAll(r => r.Firmness == Firmness.Contested || r.IsIdleness || Acceptance.IsByAcceptance(r)
                || (r.IsOwnersWord && stops.Count > 0));
        RuleOutAfterCertain(readings, ruledOut, Whole);
        if (unknown)
            AddFloor(facts, stops, readings);
        readings.Sort(static (a, b) => a.On.Earliest != b.On.Earliest
            ? a.On.Earliest.CompareTo(b.On.Earliest)
            : string.CompareOrdinal(a.Name, b.Name));
        return new CompletionReadings(readings, ruledOut, acceptance.IsAsked)
        {
            MayStillWait = acceptance.HasNotCome(facts),
            IsCertainEitherWay = eitherWay,
            BeforeCommencement = before,
        };
    }

    private static CompletionReading Contended(Completed entry, DaySpan day, IReadOnlyList<LaborStop> stops, Acceptance acceptance) =>
        entry.By switch
    {
        CompletionTheory.Actual => Actual(entry, day),
        CompletionTheory.Occupation => Occupation(entry, day, stops),
        CompletionTheory.Cessation => ContendedCessation(entry, day),
        CompletionTheory.Acceptance => acceptance.Reading(entry, day),
        _ => throw new InvalidOperationException($"No such theory: {entry.By}."),
    };

    [Rule("Civ. Code § 8180(a)(1)")]
    private static CompletionReading Actual(Completed entry, DaySpan day) =>
        new($"actual completion", day, entry.Contested ? Firmness.Contested : Firmness.Certain,
            Reason.Of("Civ. Code § 8180(a)(1)", $"Actual completion of the whole work: {day}.", [entry]));

    /// <summary>Occupation or use by the owner completes the work only together with cessation of labor: the later of the two.</summary>
    [Rule("Civ. Code § 8180(a)(2)", Sure = Sure.OurReading)]
    private static CompletionReading Occupation(Completed entry, DaySpan day, IReadOnlyList<LaborStop> stops)
    {
        Sentence words = $"completion by occupation";
        const string Section = "Civ. Code § 8180(a)(2)";
        CompletionReading? first = null;
        foreach (var stop in stops)
        {
            if (stop.Resumed is { } resumed && resumed <= day.Latest)
                continue;
            var both = DaySpan.Later(day, stop.Last);
            var firm = entry.Contested ? Firmness.Contested
                : stop.Resumed is not null || stop.OwnLabor is not null || stop.Against is not null ? Firmness.Asserted
                : Firmness.Certain;
            var reading = new CompletionReading(words, both, firm,
                Reason.Of(Section, $"The owner occupied or used the work {day}, and labor ceased {stop.Last}: complete on the later of the "
                    + $"two, {both}.", [entry, stop.Entry]));
            // By a stop that nothing speaks against it was complete at the latest; by an earlier one, which comes first, it may have been
            // before.
            if (firm == Firmness.Certain)
                return first is null ? reading : reading with { On = new DaySpan(first.On.Earliest, both.Latest) };
            first ??= reading;
        }

        if (first is not null)
            return first;
        return new CompletionReading(words, day, entry.Contested ? Firmness.Contested : Firmness.Asserted,
            Reason.Of(Section, $"The owner occupied or used the work {day}. It completes the work only if labor had ceased; the file does "
                + $"not say when, so the earliest day is taken.", [entry]));
    }

    private static CompletionReading ContendedCessation(Completed entry, DaySpan day) =>
        new($"completion by cessation of labor", day, entry.Contested ? Firmness.Contested : Firmness.Asserted,
            Reason.Of("Civ. Code § 8180(a)(3)", $"The work is said to have been completed by cessation of labor {day}; the file should "
                + $"show the stop itself{CompletionKinds.LaborCeased:aside}.", [entry]));

    [Rule("Civ. Code § 8180(a)(3)")]
    private static void AddIdleness(FactsAsOf facts, IReadOnlyList<LaborStop> stops, List<CompletionReading> readings,
        List<Reason> ruledOut)
    {
        const string Section = "Civ. Code § 8180(a)(3)";
        foreach (var stop in stops)
        {
            var idle = facts.Numbers.On(Number.IdleDays, stop.Last.Earliest);
            if (stop.CompletesOn is not { } day)
            {
                ruledOut.Add(
                    Reason.NotApplied(Section,
                        $"Labor ceased {stop.Last} but resumed on {stop.Resumed!.Value}, before {idle.Count} continuous days had "
                            + $"run.", stop.Entry));
                continue;
            }

            if (stop.OwnLabor is { } own)
            {
                readings.Add(new CompletionReading($"{idle.Text} without labor, if our own later work does not count", day,
                    Firmness.Contested,
                    Reason.Of(Section, $"Labor is said to have ceased {stop.Last}, which gives {day}; but the claimant's own work "
                        + $"afterwards speaks against it.", [stop.Entry, own])) { IsIdleness = true });
                if (stop.CompletesAfterOwnLabor(facts) is { } later)
                {
                    readings.Add(new CompletionReading($"{idle.Text} without labor after our own last work", later,
                        facts.AsOf < later.Latest ? Firmness.Projected : Firmness.Asserted,
                        Reason.Of(Section, $"If the claimant's own work counts as labor, the {idle.Ordinal} continuous day without labor "
                            + $"is {later}.", [stop.Entry, own])) { IsIdleness = true });
                }
            }
            else if (facts.AsOf < day.Latest && stop.Resumed is null)
            {
                readings.Add(new CompletionReading($"{idle.Text} without labor, if it stays stopped", day, Firmness.Projected,
                    Reason.Of(Section, $"Labor ceased {stop.Last}; if it stays stopped the work is complete in law on "
                        + $"the {idle.Ordinal} day, {day}.", [stop.Entry])) { IsIdleness = true });
            }
            else
            {
                var why = Reason.Of(Section, $"Labor ceased {stop.Last} and did not resume within {idle.Count} continuous days: complete "
                    + $"in law {day}.", [stop.Entry]);
                readings.Add(new CompletionReading($"{idle.Text} without labor", day,
                    stop.Against is not null || (stop.Resumed is { } again && again <= day.Latest) ? Firmness.Contested : Firmness.Certain,
                    stop.Against is { } other
                        ? Reason.Of(Section, $"Labor is said to have ceased {stop.Last}, which gives {day}; but another entry tells of "
                            + $"labor within the {idle}.", [stop.Entry, other], why) : why)
                {
                    IsIdleness = true,
                    LaborResumed = stop.Resumed is not null,
                });
            }
        }
    }

    [Rule("Civ. Code § 8180(a)(4)")]
    private static void AddNoticesOfCessation(IReadOnlyList<OwnersNotice> notices, IReadOnlyList<LaborStop> stops,
        List<CompletionReading> readings, List<Reason> ruledOut)
    {
        foreach (var notice in notices)
        {
            if (notice.Entry.Notice != OwnerNotice.Cessation)
                continue;
            var verdict = notice.CessationIsEffective(stops, out var why);
            if (verdict == Verdict.No)
            {
                ruledOut.Add(why);
                continue;
            }

            readings.Add(new CompletionReading($"recorded notice of cessation", notice.Recorded,
                // On some days of a doubt it has no effect at all, so it may fail as one that somebody disputes.
                verdict == Verdict.Yes
                    ? Firmness.Certain : stops.Count > 0 || !notice.IsForWholeWork ? Firmness.Contested : Firmness.Asserted,
                Reason.Of("Civ. Code § 8180(a)(4)", $"The owner recorded a notice of cessation {notice.Recorded}: complete in law that "
                    + $"day.", [notice.Entry], why)) { IsIdleness = stops.Count > 0 });
        }
    }

    /// <summary>
    /// The completion that an owner's recorded notice of completion asserts. A wrong day does no harm to it where the true one is 15 days
    /// or less before recording.
    /// </summary>
    [Rule("Civ. Code § 8182(c)")]
    private static void AddWhatTheOwnerStates(IReadOnlyList<OwnersNotice> notices, List<CompletionReading> readings)
    {
        foreach (var notice in notices)
        {
            if (notice.Entry.Notice != OwnerNotice.Completion || !notice.IsForWholeWork)
                continue;
            var states = notice.Entry.States is { } day
                ? new DaySpan(day, day)
                : new DaySpan(notice.EarliestCompletionCovered(notice.Recorded.Earliest), notice.Recorded.Latest);
            readings.Add(new CompletionReading($"completion as the owner's notice states", states, notice.HasForm == Verdict.No
                ? Firmness.Contested : Firmness.Asserted,
                notice.Entry.States is null
                    ? Reason.Of("Civ. Code § 8182(a)", $"The owner recorded a notice of completion {notice.Recorded}; the file does not "
                        + $"say which day it states, so any day is taken for which it takes effect: {states}.", [notice.Entry])
                    : Reason.Of("Civ. Code § 8182(b)",
                        $"The owner's notice of completion, recorded {notice.Recorded}, states completion {states}.", [notice.Entry]))
            {
                IsOwnersWord = notice.HasForm != Verdict.No,
                ServedBy = notice.Entry.States is null ? notice : null,
            });
        }
    }

    /// <summary>
    /// Completion is the first of the events that count, so a certain one rules out whatever is said to have come later; but not the day
    /// that a recorded notice of the owner's asserts. Which day is true is a question of fact, and a signed and verified notice is the
    /// owner's side of it: if a court believes the owner, nothing cures a claim recorded after the shorter time.
    /// </summary>
    [Rule("Civ. Code § 8180(a)", Sure = Sure.OurReading)]
    internal static void RuleOutAfterCertain(List<CompletionReading> readings, List<Reason> ruledOut, string section)
    {
        RuleOutAfterCertain(readings, ruledOut, section, [.. Enumerable.Range(0, readings.Count)], null);
        Dictionary<string, List<int>>? ofStructure = null;
        for (var i = 0; i < readings.Count; i++)
        {
            if (readings[i].Structure is not { } structure)
                continue;
            ofStructure ??= new(StringComparer.Ordinal);
            if (!ofStructure.TryGetValue(structure, out var places))
                ofStructure.Add(structure, places = []);
            places.Add(i);
        }

        if (ofStructure is null)
            return;
        // Told in the order in which a certain completion of each is read, and taken out together, since their places are known.
        List<CompletionReading> removed = [];
        foreach (var structure in readings.Where(r => r is { Firmness: Firmness.Certain, Structure: not null }).Select(r => r.Structure!)
            .Distinct(StringComparer.Ordinal).ToList())
            removed.AddRange(RuledOutOf(readings, ruledOut, section, ofStructure[structure], structure));
        Remove(readings, removed);
    }

    // Of one structure a certain completion says nothing of the others; one of the whole work of each.
    private static void RuleOutAfterCertain(List<CompletionReading> readings, List<Reason> ruledOut, string section, List<int> places,
        string? structure) =>
        Remove(readings, RuledOutOf(readings, ruledOut, section, places, structure));

    // All at once: each taken out by itself moves all that follow it.
    private static void Remove(List<CompletionReading> readings, List<CompletionReading> removed)
    {
        if (removed.Count == 0)
            return;
        var gone = new HashSet<CompletionReading>(removed, ReferenceEqualityComparer.Instance);
        readings.RemoveAll(gone.Contains);
    }

    // Of the readings at some places, those that a certain one of a structure rules out; the others are cut to its day.
    private static List<CompletionReading> RuledOutOf(List<CompletionReading> readings, List<Reason> ruledOut, string section,
        List<int> places, string? structure)
    {
        CompletionReading? first = null;
        foreach (var place in places)
        {
            var reading = readings[place];
            if (reading.Firmness == Firmness.Certain && reading.Structure == structure
                && (first is null || reading.On.Latest < first.On.Latest))
                first = reading;
        }

        var removed = new List<CompletionReading>();
        if (first is null)
            return removed;
        if (first.LaborResumed)
            SayWhenItWasFinished(readings, first);
        for (var i = places.Count - 1; i >= 0; i--)
        {
            var reading = readings[places[i]];
            if (reading.On.Earliest > first.On.Latest)
            {
                if (reading.IsOwnersWord)
                    continue;
                ruledOut.Add(
                    Reason.NotApplied(section, $"{reading.Words:capital} {reading.On} came after {first.Words} {first.On}; the first "
                        + $"completion counts and later work does not reopen it.", [.. reading.Why.Facts]));
                removed.Add(reading);
            }
            else if (reading.On.Latest > first.On.Latest && !(reading.IsOwnersWord && reading.MayContradict(first.On)))
            {
                readings[places[i]] = reading with { On = new DaySpan(reading.On.Earliest, first.On.Latest) };
            }
        }

        return removed;
    }

    // Complete in law by sixty days without labor it went on; a later completion that is certain moves no time, but ends the work.
    private static void SayWhenItWasFinished(List<CompletionReading> readings, CompletionReading first)
    {
        LocalDate? finished = null;
        foreach (var reading in readings)
        {
            if (reading is { Firmness: Firmness.Certain, LaborResumed: false } && reading.Structure == first.Structure
                && !(finished <= reading.On.Latest))
                finished = reading.On.Latest;
        }

        for (var i = 0; finished is not null && i < readings.Count; i++)
        {
            if (readings[i].Firmness == Firmness.Certain && readings[i].Structure == first.Structure)
                readings[i] = readings[i] with { WentOnUntil = finished };
        }
    }

    /// <summary>
    /// Where nothing uncontested is known of completion: it can hardly have been before the last work that the file knows of. A contested
    /// completion may fail, and days without labor tell only when the work was complete at the latest: it may have been finished on the day
    /// on which labor stopped. Neither moves the day to plan on later. Our rule, so that a day to plan on exists.
    /// </summary>
    [Rule("Civ. Code § 8180(a)", Sure = Sure.OurReading)]
    private static void AddFloor(FactsAsOf facts, IReadOnlyList<LaborStop> stops, List<CompletionReading> readings)
    {
        if (facts.LastFurnished is null || CompletionFloor.Of(facts) is not { } known)
            return;
        if (LaborStop.AllLeftItUnfinished(stops) && readings.Exists(r => r.IsIdleness || r.IsOwnersWord))
            return;
        // A day of commencement that lies ahead is no less a floor.
        var floor = facts.Job.Work.Commenced is { } began ? LocalDate.Max(known, began) : known;
        if (readings.Exists(r => r.On.Earliest <= floor))
            return;
        var earliest = new DaySpan(floor, floor);
        readings.Add(new CompletionReading($"completion unknown: not before our own last work", earliest, Firmness.Floor,
            Reason.Of(Whole, $"The file says nothing of completion of the whole work that is not "
                + $"contested{(stops.Count > 0 ? ", nor that it was left unfinished when labor ceased" : "")}. It is taken to be no "
                + $"earlier than the last work that the file knows of, {earliest}; it may be much later.", [facts.Furnished[^1]])));
    }

    /// <summary>What is to be completed must have begun: a day before the work commenced at the site is none of completion.</summary>
    [Rule("Civ. Code § 8180(a)", Sure = Sure.OurReading)]
    private static bool NotBeforeCommencement(FactsAsOf facts, List<CompletionReading> readings, List<Reason> ruledOut)
    {
        if (facts.Job.Work.Commenced is not { } began)
            return false;
        var contradicts = false;
        var removed = new HashSet<CompletionReading>(ReferenceEqualityComparer.Instance);
        for (var i = readings.Count - 1; i >= 0; i--)
        {
            var reading = readings[i];
            if (reading.On.Earliest >= began)
                continue;
            contradicts = true;
            if (reading.On.Latest >= began)
            {
                readings[i] = reading with { On = new DaySpan(began, reading.On.Latest) };
                continue;
            }

            removed.Add(reading);
            ruledOut.Add(Reason.NotApplied(Whole, $"{reading.Words:capital} {reading.On} would be before the work began at the site "
                + $"on {began}.", [.. reading.Why.Facts]));
        }

        if (removed.Count > 0)
            readings.RemoveAll(removed.Contains);
        return contradicts;
    }

    /// <summary>The finding <c>completion.day</c>.</summary>
    public static Finding Finding(FactsAsOf facts, CompletionReadings completion)
    {
        var readings = new List<Reading>();
        foreach (var reading in completion.Open)
        {
            readings.Add(new Reading(reading.Words, reading.On.Earliest));
            if (!reading.On.IsExact)
                readings.Add(new Reading($"{reading.Words}, at the latest", reading.On.Latest));
        }

        var sorted = Deadline.Sorted(readings);
        return new Finding
        {
            Id = "completion.day",
            Title = "Completion of the work",
            Standing = Standing(facts, completion),
            Readings = sorted,
            Band = sorted.Count == 0 ? null : Deadline.BandOver(sorted, completion.EndKnown),
            Explain = () => Why(facts, completion),
            Ask = () => Questions(facts, completion),
        };
    }

    private static Standing Standing(FactsAsOf facts, CompletionReadings completion)
    {
        if (!completion.SaidComplete)
            return Reasoning.Standing.NotYet;
        // Several theories that give one day leave nothing in doubt, if the facts of one of them make it so.
        var day = completion.Open[0].On;
        if (!day.IsExact || completion.MayStillWait || completion.Open.Any(r => r.On != day)
            || completion.Open.All(r => r.Firmness != Firmness.Certain))
            return Reasoning.Standing.InDoubt;
        return completion.Open[0].On.Earliest <= facts.AsOf ? Reasoning.Standing.Done : Reasoning.Standing.NotYet;
    }

    private static List<Reason> Why(FactsAsOf facts, CompletionReadings completion)
    {
        var why = new List<Reason>();
        foreach (var reading in completion.Open)
            why.Add(reading.Why);
        if (completion.AwaitsAcceptance && completion.Open.Count == 0)
            why.Add(Reason.Of("Civ. Code § 8180(b)", $"The work waits for acceptance by {facts.Job.Work.SubjectToAcceptanceBy}; until then "
                + $"it is not complete."));
        else if (completion.Open.Count == 0)
            why.Add(Reason.Of(Whole, $"Nothing in the file completes the work."));
        why.AddRange(completion.RuledOut);
        return why;
    }

    private static List<Question> Questions(FactsAsOf facts, CompletionReadings completion)
    {
        var questions = new List<Question>();
        if (!completion.SaidComplete && !completion.AwaitsAcceptance)
            questions.Add(new Question($"Is the whole work complete, or has labor on it ceased, and on which day? Search the county index "
                + $"for a notice of completion or cessation."));
        if (facts.All<LaborCeased>().Count == 0
            && completion.Open.Any(static r => r.Why.Facts.Any(static f => f is Completed { By: CompletionTheory.Occupation })))
            questions.Add(
                new Question($"When did labor on the whole work cease? Occupation completes it only together with "
                    + $"that{CompletionKinds.LaborCeased:add}."));
        if (LaborStop.Of(facts) is { Count: > 0 } stops && !LaborStop.AllLeftItUnfinished(stops) && !facts.All<Completed>()
            .Any(c => c.By == CompletionTheory.Actual))
            questions.Add(FinishedWhenLaborCeased(facts));
        if (facts.All<Completed>().Any(c => c.By == CompletionTheory.Acceptance) && !completion.AwaitsAcceptance)
            questions.Add(new Question($"Was the work subject to acceptance by a public entity? Then only the acceptance completes "
                + $"it{HeadField.WorkSubjectToAcceptanceBy:add}."));
        if (facts.Job.Work is { SubjectToAcceptanceBy: { } authority, PublicTakesOver: null })
            questions.Add(
                new Question($"Does the public take over what is built, such as a street or a sewer, or does {authority} only approve "
                    + $"it?{HeadField.WorkPublicTakesOver:aside}"));
        foreach (var entry in Structures.AreSeveral(facts.Job.Work) ? facts.All<Completed>() : [])
        {
            if (entry.Structure is null)
                questions.Add(new Question($"Which of the structures was completed {DaySpan.Of(entry.On)}? Each is a work of its own, with "
                    + $"its own time to record a claim on it.{CompletionKinds.Completed.At("structure"):aside}") { Corrects = entry });
        }

        if (completion.BeforeCommencement)
            questions.Add(new Question($"Is the day on which the work began right? A completion is entered that would be before "
                + $"it.{HeadField.WorkCommenced:aside}"));
        if (completion.Open.Any(r => r.Firmness == Firmness.Contested))
            questions.Add(new Question($"What would prove the contested day of completion? If it fails and no other holds, the time has "
                + $"not begun to run."));
        return questions;
    }

    private static Question FinishedWhenLaborCeased(FactsAsOf facts)
    {
        var ceased = facts.All<LaborCeased>()[^1];
        var day = ceased.On.Earliest ?? facts.AsOf;
        var idle = facts.Numbers.On(Number.IdleDays, day);
        var toRecord = facts.Numbers.On(TimeToClaim.AfterCompletion(facts.Job.Claimant), day);
        return new($"Was the work finished when labor ceased? If so, the {toRecord} run from that day, and not from the {idle.Ordinal} day "
            + $"after it{CompletionKinds.Completed.Saying("by actual"):add}. If it was left unfinished, say "
            + $"so.{CompletionKinds.LaborCeased.At("unfinished"):aside}", Days: idle.Count)
        {
            Corrects = ceased,
        };
    }
}
