using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>
/// The day on which the money that a stop payment notice would hold may be gone, which comes before the last day to give the notice.
/// </summary>
internal static class MoneyOut
{
    /// <summary>
    /// The finding <c>stop-payment-notice.money-out</c>: no notice reaches money that the disbursing officer has surrendered before the
    /// notice is RECEIVED, and the retention is due out 60 days after completion. Null where the notice needs no more giving, or nothing is
    /// known of completion.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="giving">Where giving a stop payment notice stands.</param>
    /// <param name="completion">The readings of completion.</param>
    /// <param name="owners">The entity's recorded notices.</param>
    /// <param name="calendar">The calendar.</param>
    [Rule("Civ. Code § 9360(a)")]
    [Rule("Pub. Contract Code § 7107(c)", Sure = Sure.OurReading)]
    public static Finding? Finding(FactsAsOf facts, Standing giving, CompletionReadings completion, IReadOnlyList<OwnersNotice> owners,
        OpenDays calendar)
    {
        if (!facts.HasFurnished || giving is not (Standing.Open or Standing.InDoubt) || completion.Open.Count == 0)
            return null;
        var earliest = completion.Open[0].On.Earliest;
        var days = facts.Numbers.On(Number.PublicRetention, earliest);
        List<Reading> readings =
            [new Reading($"the retention is due out, {days.Text} after completion", calendar.RollForwardOnAnyList(days.LastDay(earliest)))];
        foreach (var notice in owners)
        {
            if (notice.HasForm != Verdict.No)
            {
                var toGive = facts.Numbers.On(Number.GiveNoticeAfterRecording, notice.Recorded.Earliest);
                readings.Add(new Reading(
                    $"the time to give ends, {toGive.Text} after the {notice.Words}, and the money may go "
                        + $"out", toGive.LastDay(notice.Recorded.Earliest)));
            }
        }

        var sorted = Deadline.Sorted(readings);
        return new Finding
        {
            Id = "stop-payment-notice.money-out",
            Title = "Stop payment notice: the money may be gone",
            Standing = facts.AsOf < sorted[0].Day ? Standing.Open : Standing.InDoubt,
            IsDeadline = true,
            ActBy = calendar.LastOpenDayOnOrBefore(sorted[0].Day.PlusDays(-1)),
            Readings = sorted,
            Band = Deadline.BandOver(sorted, completion.EndKnown),
            Explain = () =>
            [
                Reason.Of("Civ. Code § 9360(a)", $"Nothing holds money that the disbursing officer actually surrenders before the notice "
                    + $"is received. Received counts here, and not mailed, though mail is given on deposit (Civ. Code § 8116): deliver it "
                    + $"by hand."),
                Reason.Of("Pub. Contract Code § 7107(c)", $"The entity's retention is due out by {readings[0].Day}, counted "
                    + $"from {earliest}; nothing forbids paying it sooner. After that a notice in time may catch nothing: have it received "
                    + $"before."),
            ],
        };
    }
}
