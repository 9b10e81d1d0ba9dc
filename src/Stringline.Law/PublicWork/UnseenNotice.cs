using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.PublicWork;

/// <summary>A notice of completion that the public entity may have recorded without the claimant's knowing: nobody is told of it but those who paid for it (Civ. Code § 9362).</summary>
/// <param name="Name">The reading.</param>
/// <param name="Recorded">The day of recording.</param>
internal sealed record UnseenNotice(string Name, LocalDate Recorded)
{
    /// <summary>
    /// The first and the last day on which it may have been recorded, for each completion of the file, until the county index was searched after
    /// the last of them. None where the file holds a notice of completion or acceptance: there is no other to look for.
    /// </summary>
    [Rule("Civ. Code § 9204(a)", Sure = Sure.OurReading)]
    public static IReadOnlyList<UnseenNotice> Of(FactsAsOf facts, CompletionReadings completion, IReadOnlyList<OwnersNotice> owners, OpenDays calendar)
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
            // The entity's own last day gets the benefit of every roll, since the claimant's time is then the shorter.
            var last = calendar.RollForwardOnAnyList(Period.LastDay(reading.On.Latest, OwnersNotice.RecordingDays));
            if (WasSearchedAfter(facts, last))
                continue;
            (unseen ??= []).Add(new UnseenNotice($"if a notice was recorded unseen on the day of {reading.Name}", reading.On.Earliest));
            unseen.Add(new UnseenNotice($"if a notice was recorded unseen within 15 days after {reading.Name}", last));
        }

        return unseen ?? (IReadOnlyList<UnseenNotice>)[];
    }

    private static bool WasSearchedAfter(FactsAsOf facts, LocalDate last)
    {
        foreach (var search in facts.All<IndexSearched>())
        {
            if (search.On.Earliest > last)
                return true;
        }

        return false;
    }

    /// <summary>Why it is reckoned with.</summary>
    public static Reason Why(IReadOnlyList<UnseenNotice> unseen, string section, int days) => Reason.Of(
        section,
        $"A notice of completion may be recorded on or within 15 days after completion (Civ. Code § 9204(a)), from {unseen[0].Recorded} to {unseen[^1].Recorded}, and would end the time {days} days later. The entity tells only those who paid it $10 with a stop payment notice (Civ. Code § 9362), and the file shows no search of the county index after {unseen[^1].Recorded}: search it, and act today where the earlier day is past.");

    /// <summary>The question that a search answers.</summary>
    public static Question Ask(IReadOnlyList<UnseenNotice> unseen, IReadOnlyList<Reading> sorted) => new(
        $"Was a notice of completion or acceptance recorded? Search the county index after {LawText.Day(unseen[^1].Recorded)} and enter the search or what it finds. (index-searched)",
        Days: sorted.Count < 2 ? null : NodaTime.Period.DaysBetween(sorted[0].Day, sorted[^1].Day));
}
