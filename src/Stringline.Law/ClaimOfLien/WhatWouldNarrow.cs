using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.ClaimOfLien;

/// <summary>
/// The facts that, if known, would narrow the band of the last day to record, by how many days each moves it. Each is found by
/// asking again with the doubt settled, not by a guess.
/// </summary>
public static class WhatWouldNarrow
{
    /// <summary>The questions, the one that moves most first; empty where the band is one day.</summary>
    public static IReadOnlyList<Question> Questions(
        FactsAsOf facts, CompletionReadings completion, IReadOnlyList<OwnersNotice> notices, LastDay lastDay, OpenDays calendar)
    {
        if (lastDay.Readings.Count < 2)
            return [];
        var questions = new List<Question>();
        var ends = BandEnds.Of(facts, completion, notices, calendar);
        void Ask(Sentence text, BandEnds.Ends? settled, Entry? corrects = null)
        {
            if (Moved(lastDay, settled) is var days and > 0)
                questions.Add(new Question(text, Days: days) { Corrects = corrects });
        }

        for (var i = 0; i < completion.Open.Count; i++)
        {
            var reading = completion.Open[i];
            if (reading.Firmness != Firmness.Certain && !reading.IsOwnersWord)
                Ask($"Can «{reading.Words}» ({reading.On.Earliest}) be ruled out?", ends?.Without(i)
                    ?? EndsOf(Without(reading, facts, completion, notices, calendar)));
            if (!reading.On.IsExact)
                Ask($"On which day exactly was «{reading.Words}», {reading.On}?", ends?.On(i, reading.On.Latest)
                    ?? EndsOf(On(reading, reading.On.Latest, facts, completion, notices, calendar)));
        }

        foreach (var notice in notices)
        {
            if (notice.HasForm == Verdict.No)
                continue;
            OwnersNotice[] others = [.. notices.Where(n => n != notice)];
            var without = EndsOf(LastDay.WithoutReasons(facts, CompletionDay.Of(facts, others), others, calendar));
            if (notice.Entry.Lacks is { } lacks)
                Ask($"Is it settled that the {notice.Words} recorded {notice.Recorded} has no effect? It "
                    + $"lacks: {lacks}.{OwnerKinds.OwnerRecorded.At("heldIneffective"):aside}", without, notice.Entry);
            else if (notice.Entry.Notice == OwnerNotice.Cessation && !notice.IsForWholeWork)
                Ask($"Does the {notice.Words} recorded {notice.Recorded} speak of the whole work, or of one contract "
                    + $"only?{OwnerKinds.OwnerRecorded.At("contractOf"):aside}", without, notice.Entry);
            else if (!notice.IsForWholeWork)
                Ask($"Is it settled that the {notice.Words} recorded {notice.Recorded} has no effect? Only the notice itself says when "
                    + $"that contract was complete.{OwnerKinds.OwnerRecorded.At("heldIneffective"):aside}", without, notice.Entry);
            else if (Disputes(notice, facts, completion))
                Ask($"Is it settled that the {notice.Words} recorded {notice.Recorded} has no effect? Until then its day stands beside "
                    + $"that of the file.{OwnerKinds.OwnerRecorded.At("heldIneffective"):aside}", without, notice.Entry);
            foreach (var question in notice.Questions)
            {
                if (Moved(lastDay, without) is var days and > 0)
                    questions.Add(question with { Days = days });
            }
        }

        questions.Sort(static (a, b) => a.Days != b.Days ? b.Days!.Value.CompareTo(a.Days!.Value) : string.CompareOrdinal(a.Text, b.Text));
        return questions;
    }

    // Whether a notice says another thing than the file, so that only a court or the owner can settle which holds.
    private static bool Disputes(OwnersNotice notice, FactsAsOf facts, CompletionReadings completion) =>
        notice.Entry.Notice == OwnerNotice.Cessation
        ? notice.CessationIsEffective(LaborStop.Of(facts), out _) == Verdict.Open
        : completion.Open.Any(r => r.IsOwnersWord && r.Why.Facts.Contains(notice.Entry)
            && completion.Open.Any(o => o.Firmness == Firmness.Certain && o.On != r.On));

    private static LastDay Without(CompletionReading reading, FactsAsOf facts, CompletionReadings completion,
        IReadOnlyList<OwnersNotice> notices, OpenDays calendar) =>
        LastDay.WithoutReasons(facts, completion with { Open = [.. completion.Open.Where(r => r != reading)] }, notices, calendar);

    private static LastDay On(CompletionReading reading, LocalDate day, FactsAsOf facts, CompletionReadings completion,
        IReadOnlyList<OwnersNotice> notices, OpenDays calendar) =>
        LastDay.WithoutReasons(facts,
            completion with { Open = [.. completion.Open.Select(r => r == reading ? r with { On = new DaySpan(day, day) } : r)] }, notices,
                calendar);

    private static BandEnds.Ends? EndsOf(LastDay lastDay) =>
        lastDay.Earliest is { } earliest ? new BandEnds.Ends(earliest, lastDay.Readings[^1].Day) : null;

    // How far the ends of the band move when the doubt is settled.
    private static int Moved(LastDay before, BandEnds.Ends? after)
    {
        if (EndsOf(before) is not { } was || after is not { } now)
            return 0;
        var early = NodaTime.Period.DaysBetween(was.Earliest, now.Earliest);
        var late = NodaTime.Period.DaysBetween(now.Latest, was.Latest);
        return Math.Max(0, early) + Math.Max(0, late);
    }
}
