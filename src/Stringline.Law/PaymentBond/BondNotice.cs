using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.PaymentBond;

/// <summary>The notice to surety and bond principal that saves a bond claim without a preliminary notice (Civ. Code §§ 8612, 9560).</summary>
public static class BondNotice
{
    /// <summary>Days from the recording of a notice of completion.</summary>
    public const int DaysFromNotice = 15;

    /// <summary>Days from completion where no notice of completion is recorded.</summary>
    public const int DaysFromCompletion = 75;

    /// <summary>The section that governs, and whether a notice of cessation is counted as well, on the safer side.</summary>
    /// <param name="Section">The section.</param>
    /// <param name="LateRoad">The paragraph that closes the late road.</param>
    /// <param name="CessationCounts">Whether 15 days from a notice of cessation are planned on as well.</param>
    public sealed record Law(string Section, string LateRoad, bool CessationCounts);

    /// <summary>Private works: a notice of cessation is not named, so 75 days from completion run beside it.</summary>
    public static Law Private { get; } = new("Civ. Code § 8612(b)", "Civ. Code § 8612(d)", false);

    /// <summary>Public works: a notice of cessation is not named either; 15 days from it are the safe day.</summary>
    public static Law Public { get; } = new("Civ. Code § 9560(b)", "Civ. Code § 9560(d)", true);

    /// <summary>The finding <c>payment-bond.notice-last-day</c>.</summary>
    [Rule("Civ. Code § 8612(b)")]
    [Rule("Civ. Code § 8612(d)")]
    [Rule("Civ. Code § 9560(b)")]
    [Rule("Civ. Code § 9560(d)")]
    public static Finding Finding(
        FactsAsOf facts, Reason? notNeeded, CompletionReadings completion, IReadOnlyList<OwnersNotice> notices, Law law, OpenDays calendar)
    {
        if (notNeeded is not null)
        {
            return Deadline.Finding("payment-bond.notice-last-day", "Notice of a claim on the payment bond", Standing.Kept, [], calendar, [notNeeded]);
        }

        var readings = new List<Reading>();
        var why = new List<Reason>();
        foreach (var held in notices.Where(n => n.HasForm == Verdict.No))
            why.Add(held.PassedOver(law.Section));
        notices = why.Count == 0 ? notices : [.. notices.Where(n => n.HasForm != Verdict.No)];
        foreach (var reading in completion.Open)
        {
            foreach (var completed in DaysToTry.Completions(reading, notices))
                AddReadings(reading, completed, notices, law, calendar, readings, why);
        }

        // A recorded notice is planned on even where nothing else is known of completion.
        foreach (var notice in completion.Open.Count == 0 ? notices : [])
        {
            if (notice.Entry.Notice == OwnerNotice.Cessation && !law.CessationCounts)
                continue;
            foreach (var recorded in DaysToTry.Ends(notice.Recorded))
                AddFifteenDays(notice, recorded, law, calendar, readings, why);
        }

        why.Add(Reason.Of(law.LateRoad, $"For one with no direct contract with the contractor the late notice may be closed where the subcontractor it supplied was paid its undisputed progress payments, or was terminated and paid; have counsel look at it."));
        var given = facts.FirstDayOf<BondNoticeGiven>();
        foreach (var paper in facts.All<BondNoticeGiven>())
            why.Add(Reason.Of(law.Section, $"Notice given to surety and principal {Days.Of(paper.On)}.", [paper]));

        var standing = readings.Count == 0
            ? given is null ? Standing.NotYet : Standing.Kept
            : Deadline.StandingOf(facts.AsOf, readings, given, completion.EndFirm);
        return Deadline.Finding("payment-bond.notice-last-day", "Notice of a claim on the payment bond", standing, readings, calendar, why, completion.EndKnown,
            [new Question("Was the subcontractor that the claimant supplied paid its undisputed progress payments, or terminated and paid? Then the late bond notice may be closed.")]);
    }

    private static void AddReadings(
        CompletionReading reading, LocalDate completed, IReadOnlyList<OwnersNotice> notices, Law law, OpenDays calendar, List<Reading> readings, List<Reason> why)
    {
        var shortened = false;
        foreach (var notice in notices)
        {
            // Only a notice of completion of the whole work surely takes the 75 days away; any other is planned on beside them.
            var isCompletion = notice.Entry.Notice == OwnerNotice.Completion;
            var surely = isCompletion && notice.IsForWholeWork && notice.HasForm == Verdict.Yes;
            foreach (var recorded in DaysToTry.Recordings(notice, completed))
            {
                var counts = isCompletion ? notice.IsEffectiveIfCompletedOn(notice.CompletionToServe(completed), recorded) : law.CessationCounts;
                surely &= counts;
                if (counts)
                    AddFifteenDays(notice, recorded, law, calendar, readings, why);
            }

            shortened |= surely;
        }

        if (shortened)
            return;
        var name = reading.NameOn(completed);
        var plain = Period.LastDay(completed, DaysFromCompletion);
        readings.Add(Deadline.Own($"75 days after {name}", plain, calendar));
        why.Add(Reason.Of(law.Section, $"On the reading «{name}» no notice of completion that surely counts is recorded: notice to surety and principal within 75 days, by {plain}.", reading.Why));
    }

    private static void AddFifteenDays(OwnersNotice notice, LocalDate recorded, Law law, OpenDays calendar, List<Reading> readings, List<Reason> why)
    {
        var last = Period.LastDay(recorded, DaysFromNotice);
        var reading = Deadline.Own($"15 days after the {notice.Words} of {LawText.IsoDay(recorded)}", last, calendar);
        if (readings.Contains(reading))
            return;
        readings.Add(reading);
        why.Add(Reason.Of(law.Section, $"The {notice.Words} was recorded on {recorded}: notice to surety and principal within 15 days, by {last}.", [notice.Entry]));
    }
}
