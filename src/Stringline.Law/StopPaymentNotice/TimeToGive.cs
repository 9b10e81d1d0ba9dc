using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>
/// The time in which a stop payment notice may be given on public work (Civ. Code § 9356), on every reading the facts allow.
/// </summary>
public sealed class TimeToGive
{
    private const string Recorded = "Civ. Code § 9356(a)";
    private const string NotRecorded = "Civ. Code § 9356(b)";

    private TimeToGive(IReadOnlyList<Reading> readings, bool endFirm, IReadOnlyList<Reason> why, IReadOnlyList<Question> questions)
    {
        Readings = readings;
        EndFirm = endFirm;
        Why = why;
        Questions = questions;
    }

    /// <summary>The readings of its last day, earliest first.</summary>
    public IReadOnlyList<Reading> Readings { get; }

    /// <summary>Whether a certain completion, or a notice of cessation that surely counts, carries the latest end.</summary>
    public bool EndFirm { get; }

    /// <summary>The reasons.</summary>
    public IReadOnlyList<Reason> Why { get; }

    /// <summary>What would settle it.</summary>
    public IReadOnlyList<Question> Questions { get; }

    /// <summary>
    /// Before 30 days after a notice of completion, acceptance or cessation is recorded, else before 90 days after completion.
    /// No copy to the claimant is needed for the shorter time.
    /// </summary>
    [Rule("Civ. Code § 9356(a)")]
    [Rule("Civ. Code § 9356(b)")]
    public static TimeToGive Of(FactsAsOf facts, CompletionReadings completion, IReadOnlyList<OwnersNotice> owners, OpenDays calendar)
    {
        List<Reason> why = [];
        var readings = new List<Reading>();
        foreach (var reading in completion.Open)
        {
            var days = facts.Numbers.On(Number.GiveNoticeAfterCompletion, reading.On.Earliest);
            why.Add(Reason.Of(NotRecorded,
                $"On the reading «{reading.Words}», {days} after {reading.On.Earliest}: {days.LastDay(reading.On.Earliest)}.",
                    reading.Why));
            foreach (var completed in CandidateDays.Completions(reading, owners))
            {
                var last = facts.Numbers.LastDay(Number.GiveNoticeAfterCompletion, completed);
                if (last > ShortestIf(facts, reading, completed, owners))
                    continue;
                var name = completed == reading.On.Earliest
                    ? reading.Words : completed == reading.On.Latest ? $"{reading.Words}, at the latest" : reading.WordsOn(completed);
                readings.Add(Deadline.Own(name, last, calendar));
            }
        }

        var unseen = UnseenNotice.OfCompletion(facts, completion, owners, calendar);
        var ceasedUnseen = ShorteningOnly(facts, UnseenNotice.OfCessation(facts, owners), readings);
        foreach (var notice in unseen)
            readings.Add(Deadline.Own(notice.Words, facts.Numbers.LastDay(Number.GiveNoticeAfterRecording, notice.Recorded), calendar));
        foreach (var notice in ceasedUnseen)
            readings.Add(Deadline.Own(notice.Words, facts.Numbers.LastDay(Number.GiveNoticeAfterRecording, notice.Recorded), calendar));
        if (unseen.Count > 0)
            why.Add(UnseenNotice.Why(facts, unseen, Recorded, Number.GiveNoticeAfterRecording));
        if (ceasedUnseen.Count > 0)
            why.Add(UnseenNotice.Why(facts, ceasedUnseen, Recorded, Number.GiveNoticeAfterRecording));
        if (IdleUnderTheStateContractAct(facts) is { } caution)
            why.Add(caution);

        var fromRecording = new List<Reading>();
        var shortest = LocalDate.MaxIsoValue;
        var ceased = false;
        List<Question>? ofOne = null;
        foreach (var notice in owners)
        {
            if (notice.HasForm == Verdict.No)
            {
                why.Add(notice.PassedOver(Recorded));
                continue;
            }

            var days = facts.Numbers.On(Number.GiveNoticeAfterRecording, notice.Recorded.Earliest);
            var last = notice.Recorded.LastDay(facts.Numbers, Number.GiveNoticeAfterRecording);
            why.Add(Reason.Of(Recorded, $"A {notice.Words} was recorded {notice.Recorded}: {days} after it, {last}.", [notice.Entry]));
            if (!notice.IsForWholeWork)
            {
                why.Add(OfOneContract(notice));
                (ofOne ??= [])
                    .Add(new Question($"Does the {notice.Words} recorded {notice.Recorded} speak of the whole work, or of one contract "
                        + $"only?{OwnerKinds.OwnerRecorded.At("contractOf"):aside}") { Corrects = notice.Entry });
            }

            if (notice.HasForm == Verdict.Yes && SurelyCounts(facts, notice, completion))
            {
                shortest = LocalDate.Min(shortest, last.Latest);
                ceased |= notice.Entry.Notice == OwnerNotice.Cessation;
            }

            foreach (var recorded in CandidateDays.Ends(notice.Recorded))
                fromRecording.Add(Deadline.Own($"{days.Text} after the {notice.Words} of {recorded:iso}",
                    facts.Numbers.LastDay(Number.GiveNoticeAfterRecording, recorded), calendar));
        }

        // Where a recorded notice surely counts, it replaces the longer time; else both readings stand and the shorter is planned on.
        var sorted = Deadline.Sorted([.. readings.Where(r => r.Day <= shortest), .. fromRecording]);
        return new TimeToGive(sorted, completion.EndFirm || ceased, why,
            unseen.Count + ceasedUnseen.Count == 0
                ? ofOne ?? (IReadOnlyList<Question>)[] : [UnseenNotice.Ask([.. unseen, .. ceasedUnseen], sorted), .. ofOne ?? []]);
    }

    // A notice that nobody has seen is looked for because it can make the time shorter.
    private static IReadOnlyList<UnseenNotice> ShorteningOnly(FactsAsOf facts, IReadOnlyList<UnseenNotice> unseen, List<Reading> readings)
    {
        if (readings.Count == 0 || unseen.Count == 0)
            return unseen;
        var end = LocalDate.MinIsoValue;
        foreach (var reading in readings)
            end = LocalDate.Max(end, reading.Day);
        return [.. unseen.Where(n => facts.Numbers.LastDay(Number.GiveNoticeAfterRecording, n.Recorded) < end)];
    }

    /// <summary>
    /// The public works title knows no notice for one of several direct contracts: it speaks of completion and acceptance of the work of
    /// improvement, and of labor on it (Civ. Code §§ 9200, 9202, 9204). The entity may say that each contract is a work of its own: both
    /// readings stand.
    /// </summary>
    [Rule("Civ. Code § 9356(a)", Sure = Sure.OurReading)]
    private static Reason OfOneContract(OwnersNotice notice) => Reason.Of(Recorded,
        $"The {notice.Words} names one direct contract, and the section speaks of notices for the work of improvement: whether it ends the "
            + $"time is open, so plan on it.", [notice.Entry]);

    // The days of a notice that surely counts if the work was completed as one reading says: then that reading's longer time is gone,
    // whatever it does on another.
    private static LocalDate ShortestIf(FactsAsOf facts, CompletionReading reading, LocalDate completed, IReadOnlyList<OwnersNotice> owners)
    {
        var shortest = LocalDate.MaxIsoValue;
        foreach (var notice in owners)
        {
            if (notice.HasForm == Verdict.Yes && SurelyCountsIf(facts, notice, reading, new DaySpan(completed, completed)))
                shortest = LocalDate.Min(shortest, notice.Recorded.LastDay(facts.Numbers, Number.GiveNoticeAfterRecording).Latest);
        }

        return shortest;
    }

    private static bool SurelyCounts(FactsAsOf facts, OwnersNotice notice, CompletionReadings completion)
    {
        if (completion.Open.Count == 0)
            return SurelyCountsIf(facts, notice, null, null);
        foreach (var reading in completion.Open)
        {
            if (!SurelyCountsIf(facts, notice, reading, reading.On))
                return false;
        }

        return true;
    }

    private static bool SurelyCountsIf(FactsAsOf facts, OwnersNotice notice, CompletionReading? reading, DaySpan? completed) =>
        notice.IsForWholeWork && notice.Entry.Notice switch
    {
        OwnerNotice.Cessation => notice.CessationIsEffective(LaborStop.Of(facts), out _) == Verdict.Yes,
        OwnerNotice.Completion or OwnerNotice.Acceptance =>
            reading is null || completed is not { } days || IsEffectiveOnEvery(notice, reading, days),
        _ => throw new InvalidOperationException($"No such notice: {notice.Entry.Notice}."),
    };

    private static bool IsEffectiveOnEvery(OwnersNotice notice, CompletionReading reading, DaySpan completed)
    {
        foreach (var day in CandidateDays.Ends(completed))
        {
            foreach (var recorded in CandidateDays.Ends(notice.Recorded))
            {
                if (reading.GoesWith(notice, day, recorded) && notice.EffectIfCompletedOn(day, recorded) != Verdict.Yes)
                    return false;
            }
        }

        return true;
    }

    /// <summary>
    /// Idleness completes nothing under the State Contract Act (Civ. Code § 9200(b)), yet the section counts from "cessation or
    /// completion": no day is made of it, but a caution.
    /// </summary>
    [Rule("Civ. Code § 9356(b)", Sure = Sure.OurReading)]
    private static Reason? IdleUnderTheStateContractAct(FactsAsOf facts)
    {
        if (facts.Job.Work.StateContractAct != true || facts.All<LaborCeased>() is not { Count: > 0 } stops)
            return null;
        return Reason.Of(NotRecorded, $"Caution: labor ceased {DaySpan.Of(stops[^1].On)}. Idleness completes nothing on a contract under "
            + $"the State Contract Act, but the section counts from cessation or completion, and somebody may count "
            + $"the {facts.Numbers.On(Number.GiveNoticeAfterCompletion, stops[^1].On.Earliest ?? facts.AsOf)} from the idleness: give the "
            + $"notice early.", [stops[^1]]);
    }
}
