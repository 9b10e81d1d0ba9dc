using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// Until when a public entity answers a claim: some days from its receipt or the day agreed on, and, where its governing body must approve
/// and does not meet by then, some days after its next meeting (Pub. Contract Code § 9204(d)(1)); under the older procedure other days, or
/// some days after the further documents that it asked for (§ 20104.2).
/// </summary>
internal sealed class EntitysTime
{
    private const string Old = "Pub. Contract Code § 20104.2";
    private const string Section = "Pub. Contract Code § 9204(d)(1)";

    private readonly DisputeClaimSent claim;
    private readonly OpenDays calendar;
    private readonly LocalDate asOf;
    private readonly NumberTable numbers;
    private readonly LocalDate from;
    private readonly List<Reading> readings = [];
    private readonly List<Reason> why = [];

    private EntitysTime(FactsAsOf facts, DisputeClaimSent claim, DaySpan sent, OpenDays calendar)
    {
        asOf = facts.AsOf;
        numbers = facts.Numbers;
        this.claim = claim;
        this.calendar = calendar;
        from = claim.Received ?? sent.Latest;
    }

    /// <summary>Readings of its last day, earliest first.</summary>
    public IReadOnlyList<Reading> Readings => readings;

    /// <summary>What moved it.</summary>
    public IReadOnlyList<Reason> Why => why;

    /// <summary>
    /// Whether the agency waits for documents that it asked for, so that, as the older procedure has it, no day is set yet.
    /// </summary>
    public bool IsWaiting { get; private set; }

    /// <summary>The last day that the documents set under the older procedure, not rolled; null where they set none.</summary>
    public LocalDate? ByDocuments { get; private set; }

    /// <summary>The time of one claim.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="claim">The claim.</param>
    /// <param name="sent">When it was sent.</param>
    /// <param name="law">Which procedure governs it.</param>
    /// <param name="calendar">The calendar.</param>
    public static EntitysTime Of(FactsAsOf facts, DisputeClaimSent claim, DaySpan sent, ClaimLaw law, OpenDays calendar)
    {
        var time = new EntitysTime(facts, claim, sent, calendar);
        if (law.IsNew != Verdict.No)
            time.AddNew(law.NewDays);
        if (law is { IsNew: not Verdict.Yes, IsOld: true })
            time.AddOld(law);
        time.readings.Sort(static (a, b) => a.Day.CompareTo(b.Day));
        return time;
    }

    /// <summary>The day to which the parties extended the entity's time; null where that is no later than its own.</summary>
    /// <param name="claim">The claim.</param>
    /// <param name="last">The last day of its own time.</param>
    [Rule(Section)]
    public static LocalDate? Extended(DisputeClaimSent claim, LocalDate last) => claim.ExtendedTo > last ? claim.ExtendedTo : null;

    [Rule(Section)]
    private void AddNew(NumberRow days)
    {
        var last = days.LastDay(from);
        if (Extended(claim, last) is { } agreed)
        {
            last = agreed;
            why.Add(Reason.Of(Section, $"The parties extended the entity's time to {agreed}.", [claim]));
            readings.Add(new Reading($"entity's statement, by the day agreed in writing", calendar.RollForwardOnAnyList(agreed)));
        }
        else
        {
            AddCounted(days);
        }

        if (claim.NextMeeting is not { } meeting)
            return;
        if (meeting <= last)
        {
            why.Add(Reason.NotApplied(Section, $"Its governing body meets {meeting}, within the time: it has no more of it.", claim));
            return;
        }

        var afterMeeting = numbers.On(Number.AfterMeeting, meeting);
        why.Add(Reason.Of(Section, $"Where its governing body must approve the statement and did not meet by {last}, the entity has "
            + $"until {afterMeeting.Spelled} after the next meeting, {meeting}.", [claim]));
        readings.Add(new Reading($"entity's statement, {afterMeeting.Spelled} after the next meeting of its governing body",
            calendar.RollForwardOnAnyList(afterMeeting.LastDay(meeting))));
    }

    /// <summary>
    /// Documents asked for within 30 days of receipt put the answer off: to 15 days after they came, 30 for a greater claim, or as many
    /// days as the claimant took, if those are more. Where the receipt is not told, whether they were asked for in time is open.
    /// </summary>
    [Rule(Old)]
    private void AddOld(ClaimLaw law)
    {
        var days = law.OldDays;
        if (claim.DocumentsAsked is not { } asked || asked > asOf)
        {
            AddCounted(days);
            return;
        }

        var toAsk = numbers.On(Number.AskForDocuments, from);
        var late = asked > toAsk.LastDay(from);
        if (late && claim.Received is not null)
        {
            why.Add(Reason.NotApplied(Old, $"Further documents were asked for {asked}, later than {toAsk} after receipt: that moves "
                + $"nothing.", claim));
            AddCounted(days);
            return;
        }

        if (late)
            AddCounted(days);
        var least = numbers.On(law.IsGreater ? Number.AfterDocumentsOnGreater : Number.AfterDocuments, claim.DocumentsGiven ?? asked);
        if (claim.DocumentsGiven is not { } given || given > asOf)
        {
            IsWaiting = true;
            why.Add(Reason.Of(Old, $"Asked {asked} for further documents, the claimant gives them; the agency answers "
                + $"within {least} after it receives them, or as many days as they took, if those are more.", [claim]));
            return;
        }

        var allowed = Math.Max(least.Count, NodaTime.Period.DaysBetween(asked, given));
        ByDocuments = given.PlusDays(allowed);
        why.Add(Reason.Of(Old, $"Further documents were asked for {asked} and received {given}: the agency answers "
            + $"within {allowed} days after that.", [claim]));
        readings.Add(new Reading($"entity's statement, {allowed} days after the further documents",
            calendar.RollForwardOnAnyList(given.PlusDays(allowed))));
    }

    private void AddCounted(NumberRow days)
    {
        var reading = new Reading(
            $"entity's statement, {days.Text} after receipt{(claim.Received is null
                ? (Sentence)$", which was not before {from:iso}" : $"")}",
            calendar.RollForwardOnAnyList(days.LastDay(from)));
        if (!readings.Contains(reading))
            readings.Add(reading);
    }
}
