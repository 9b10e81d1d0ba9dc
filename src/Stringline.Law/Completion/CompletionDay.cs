using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

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
        var awaitsAcceptance = facts.Job.Work.SubjectToAcceptanceBy is not null;

        foreach (var entry in facts.All<Completed>())
        {
            if (Days.Of(entry.On) is not { } day)
            {
                ruledOut.Add(Reason.NotApplied(Whole, $"The file says that the work was completed but not when; it counts once the day is entered.", entry));
                continue;
            }

            if (awaitsAcceptance && entry.By != CompletionTheory.Acceptance)
            {
                ruledOut.Add(Reason.NotApplied("Civ. Code § 8180(b)", $"Work that is subject to acceptance by a public authority is completed by the acceptance, whatever was finished before (A. J. Raisch Paving v. Mountain View Savings & Loan (1972) 28 Cal.App.3d 832).", entry));
                continue;
            }

            readings.Add(entry.By switch
            {
                CompletionTheory.Actual => Actual(entry, day),
                CompletionTheory.Occupation => Occupation(entry, day, stops),
                CompletionTheory.Cessation => ContendedCessation(entry, day),
                CompletionTheory.Acceptance => Acceptance(entry, day, awaitsAcceptance),
                _ => throw new InvalidOperationException($"No such theory: {entry.By}."),
            });
        }

        if (!awaitsAcceptance)
        {
            AddSixtyIdleDays(facts, stops, readings, ruledOut);
            AddNoticesOfCessation(notices, stops, readings, ruledOut);
        }

        AddWhatTheOwnerStates(notices, readings);
        RuleOutAfterCertain(readings, ruledOut, Whole);
        // A contested completion may fail, and then nothing is known of completion: it never moves the day to plan on later.
        if (!awaitsAcceptance && readings.All(r => r.Firmness == Firmness.Contested))
            AddFloor(facts, readings);
        readings.Sort(static (a, b) => a.On.Earliest != b.On.Earliest
            ? a.On.Earliest.CompareTo(b.On.Earliest)
            : string.CompareOrdinal(a.Name, b.Name));
        return new CompletionReadings(readings, ruledOut, awaitsAcceptance);
    }

    [Rule("Civ. Code § 8180(a)(1)")]
    private static CompletionReading Actual(Completed entry, Days day) =>
        new("actual completion", day, entry.Contested ? Firmness.Contested : Firmness.Certain,
            Reason.Of("Civ. Code § 8180(a)(1)", $"Actual completion of the whole work: {day}.", [entry]));

    /// <summary>Occupation or use by the owner completes the work only together with cessation of labor: the later of the two.</summary>
    [Rule("Civ. Code § 8180(a)(2)", Sure = Sure.OurReading)]
    private static CompletionReading Occupation(Completed entry, Days day, IReadOnlyList<LaborStop> stops)
    {
        const string Name = "completion by occupation";
        const string Section = "Civ. Code § 8180(a)(2)";
        foreach (var stop in stops)
        {
            if (stop.Resumed is { } resumed && resumed <= day.Latest)
                continue;
            var both = Days.Later(day, stop.Last);
            var firm = entry.Contested ? Firmness.Contested
                : stop.Resumed is not null || stop.OwnLabor is not null ? Firmness.Asserted
                : Firmness.Certain;
            return new CompletionReading(Name, both, firm,
                Reason.Of(Section, $"The owner occupied or used the work {day}, and labor ceased {stop.Last}: complete on the later of the two, {both}.", [entry, stop.Entry]));
        }

        return new CompletionReading(Name, day, entry.Contested ? Firmness.Contested : Firmness.Asserted,
            Reason.Of(Section, $"The owner occupied or used the work {day}. It completes the work only if labor had ceased; the file does not say when, so the earliest day is taken.", [entry]));
    }

    private static CompletionReading ContendedCessation(Completed entry, Days day) =>
        new("completion by cessation of labor", day, entry.Contested ? Firmness.Contested : Firmness.Asserted,
            Reason.Of("Civ. Code § 8180(a)(3)", $"The work is said to have been completed by cessation of labor {day}; the file should show the stop itself (labor-ceased).", [entry]));

    /// <summary>Acceptance by a public entity completes work that is subject to it; a private owner's acceptance is no completion.</summary>
    [Rule("Civ. Code § 8180(b)")]
    private static CompletionReading Acceptance(Completed entry, Days day, bool subjectToAcceptance) =>
        new("completion by acceptance", day,
            entry.Contested ? Firmness.Contested : subjectToAcceptance ? Firmness.Certain : Firmness.Asserted,
            subjectToAcceptance
                ? Reason.Of("Civ. Code § 8180(b)", $"The public authority accepted the work: {day}.", [entry])
                : Reason.Of("Civ. Code § 8180(b)", $"The work was accepted {day}. Acceptance counts only where the work is subject to acceptance by a public entity, which the file does not say; the day is kept as a reading.", [entry]));

    [Rule("Civ. Code § 8180(a)(3)")]
    private static void AddSixtyIdleDays(FactsAsOf facts, IReadOnlyList<LaborStop> stops, List<CompletionReading> readings, List<Reason> ruledOut)
    {
        const string Section = "Civ. Code § 8180(a)(3)";
        foreach (var stop in stops)
        {
            if (stop.SixtiethDay is not { } day)
            {
                ruledOut.Add(Reason.NotApplied(Section, $"Labor ceased {stop.Last} but resumed on {stop.Resumed!.Value}, before 60 continuous days had run.", stop.Entry));
                continue;
            }

            if (stop.OwnLabor is { } own)
            {
                readings.Add(new CompletionReading("60 days without labor, if our own later work does not count", day, Firmness.Contested,
                    Reason.Of(Section, $"Labor is said to have ceased {stop.Last}, which gives {day}; but the claimant's own work afterwards speaks against it.", [stop.Entry, own])));
            }
            else if (facts.AsOf < day.Latest && stop.Resumed is null)
            {
                readings.Add(new CompletionReading("60 days without labor, if it stays stopped", day, Firmness.Projected,
                    Reason.Of(Section, $"Labor ceased {stop.Last}; if it stays stopped the work is complete in law on the sixtieth day, {day}.", [stop.Entry])));
            }
            else
            {
                readings.Add(new CompletionReading("60 days without labor", day,
                    stop.Resumed is { } again && again <= day.Latest ? Firmness.Contested : Firmness.Certain,
                    Reason.Of(Section, $"Labor ceased {stop.Last} and did not resume within 60 continuous days: complete in law {day}.", [stop.Entry])));
            }
        }
    }

    [Rule("Civ. Code § 8180(a)(4)")]
    private static void AddNoticesOfCessation(IReadOnlyList<OwnersNotice> notices, IReadOnlyList<LaborStop> stops, List<CompletionReading> readings, List<Reason> ruledOut)
    {
        foreach (var notice in notices)
        {
            if (notice.Entry.Notice != OwnerNotice.Cessation || !notice.IsForWholeWork)
                continue;
            var verdict = notice.CessationIsEffective(stops, out var why);
            if (verdict == Verdict.No)
            {
                ruledOut.Add(why);
                continue;
            }

            readings.Add(new CompletionReading("recorded notice of cessation", notice.Recorded,
                // On some days of a doubt it has no effect at all, so it may fail as one that somebody disputes.
                verdict == Verdict.Yes ? Firmness.Certain : stops.Count > 0 ? Firmness.Contested : Firmness.Asserted,
                Reason.Of("Civ. Code § 8180(a)(4)", $"The owner recorded a notice of cessation {notice.Recorded}: complete in law that day.", [notice.Entry], why)));
        }
    }

    /// <summary>The completion that an owner's recorded notice of completion asserts. A wrong day does no harm to it where the true one is 15 days or less before recording.</summary>
    [Rule("Civ. Code § 8182(c)")]
    private static void AddWhatTheOwnerStates(IReadOnlyList<OwnersNotice> notices, List<CompletionReading> readings)
    {
        foreach (var notice in notices)
        {
            if (notice.Entry.Notice != OwnerNotice.Completion || !notice.IsForWholeWork)
                continue;
            var states = notice.Entry.States is { } day
                ? new Days(day, day)
                : new Days(notice.FirstCompletionServed(notice.Recorded.Earliest), notice.Recorded.Latest);
            readings.Add(new CompletionReading("completion as the owner's notice states", states, Firmness.Asserted,
                notice.Entry.States is null
                    ? Reason.Of("Civ. Code § 8182(a)", $"The owner recorded a notice of completion {notice.Recorded}; the file does not say which day it states, so any day is taken for which it takes effect: {states}.", [notice.Entry])
                    : Reason.Of("Civ. Code § 8182(b)", $"The owner's notice of completion, recorded {notice.Recorded}, states completion {states}.", [notice.Entry])));
        }
    }

    /// <summary>Completion is the first of the events that count, so a certain one rules out whatever is said to have come later.</summary>
    [Rule("Civ. Code § 8180(a)", Sure = Sure.OurReading)]
    internal static void RuleOutAfterCertain(List<CompletionReading> readings, List<Reason> ruledOut, string section)
    {
        CompletionReading? first = null;
        foreach (var reading in readings)
        {
            if (reading.Firmness == Firmness.Certain && (first is null || reading.On.Latest < first.On.Latest))
                first = reading;
        }

        if (first is null)
            return;
        for (var i = readings.Count - 1; i >= 0; i--)
        {
            var reading = readings[i];
            if (reading.On.Earliest > first.On.Latest)
            {
                ruledOut.Add(Reason.NotApplied(section, $"{Capital(reading.Name)} {reading.On} came after {first.Name} {first.On}; the first completion counts and later work does not reopen it.", [.. reading.Why.Facts]));
                readings.RemoveAt(i);
            }
            else if (reading.On.Latest > first.On.Latest)
            {
                readings[i] = reading with { On = new Days(reading.On.Earliest, first.On.Latest) };
            }
        }
    }

    /// <summary>Where nothing uncontested is known of completion: it can hardly have been before the claimant last furnished work. Our rule, so that a day to plan on exists.</summary>
    [Rule("Civ. Code § 8180(a)", Sure = Sure.OurReading)]
    private static void AddFloor(FactsAsOf facts, List<CompletionReading> readings)
    {
        if (facts.LastFurnished is not { } last || readings.Any(r => r.On.Earliest <= last.Earliest))
            return;
        var earliest = new Days(last.Earliest, last.Earliest);
        readings.Add(new CompletionReading("completion unknown: not before our own last work", earliest, Firmness.Floor,
            Reason.Of(Whole, $"The file says nothing of completion of the whole work that is not contested. It is taken to be no earlier than the claimant's own last work, {earliest}; it may be much later.", [facts.Furnished[^1]])));
    }

    /// <summary>The finding <c>completion.day</c>.</summary>
    public static Finding Finding(FactsAsOf facts, CompletionReadings completion)
    {
        var readings = new List<Reading>();
        foreach (var reading in completion.Open)
        {
            readings.Add(new Reading(reading.Name, reading.On.Earliest));
            if (!reading.On.IsExact)
                readings.Add(new Reading(reading.Name + ", at the latest", reading.On.Latest));
        }

        var sorted = Deadline.Sorted(readings);
        return new Finding
        {
            Id = "completion.day",
            Title = "Completion of the work",
            Standing = Standing(facts, completion),
            Readings = sorted,
            Band = sorted.Count == 0 ? null : Deadline.Band(sorted, completion.EndKnown),
            Explain = () => Why(facts, completion),
            Ask = () => Questions(facts, completion),
        };
    }

    private static Standing Standing(FactsAsOf facts, CompletionReadings completion)
    {
        if (!completion.EndKnown)
            return Reasoning.Standing.NotYet;
        // Several theories that give one day leave nothing in doubt, if the facts of one of them make it so.
        var day = completion.Open[0].On;
        if (!day.IsExact || completion.Open.Any(r => r.On != day) || completion.Open.All(r => r.Firmness != Firmness.Certain))
            return Reasoning.Standing.InDoubt;
        return completion.Open[0].On.Earliest <= facts.AsOf ? Reasoning.Standing.Done : Reasoning.Standing.NotYet;
    }

    private static List<Reason> Why(FactsAsOf facts, CompletionReadings completion)
    {
        var why = new List<Reason>();
        foreach (var reading in completion.Open)
            why.Add(reading.Why);
        if (completion.AwaitsAcceptance && completion.Open.Count == 0)
            why.Add(Reason.Of("Civ. Code § 8180(b)", $"The work waits for acceptance by {facts.Job.Work.SubjectToAcceptanceBy}; until then it is not complete."));
        else if (completion.Open.Count == 0)
            why.Add(Reason.Of(Whole, $"Nothing in the file completes the work."));
        why.AddRange(completion.RuledOut);
        return why;
    }

    private static List<Question> Questions(FactsAsOf facts, CompletionReadings completion)
    {
        var questions = new List<Question>();
        if (!completion.EndKnown && !completion.AwaitsAcceptance)
            questions.Add(new Question("Is the whole work complete, or has labor on it ceased, and on which day? Search the county index for a notice of completion or cessation."));
        if (completion.Open.Any(r => r.Name == "completion by occupation" && r.Firmness != Firmness.Certain) && facts.All<LaborCeased>().Count == 0)
            questions.Add(new Question("When did labor on the whole work cease? Occupation completes it only together with that (add labor-ceased)."));
        if (facts.All<LaborCeased>().Count > 0 && !facts.All<Completed>().Any(c => c.By == CompletionTheory.Actual))
            questions.Add(new Question("Was the work finished when labor ceased? Then the 90 days run from that day, and not from the sixtieth day after it (add completed, by actual).", Days: LaborStop.IdleDays));
        if (facts.All<Completed>().Any(c => c.By == CompletionTheory.Acceptance) && !completion.AwaitsAcceptance)
            questions.Add(new Question("Was the work subject to acceptance by a public entity? Then only the acceptance completes it (add work.subjectToAcceptanceBy)."));
        if (completion.Open.Any(r => r.Firmness == Firmness.Contested))
            questions.Add(new Question("What would prove the contested day of completion? If it fails and no other holds, the time has not begun to run."));
        return questions;
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
