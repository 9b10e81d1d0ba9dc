using Stringline.Law.Bankruptcy;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>One recorded claim of lien and the action that enforces it, if any does.</summary>
/// <param name="Claim">The claim.</param>
/// <param name="Recorded">The day it was recorded.</param>
/// <param name="Readings">The last day to sue, 90 days after it, earliest first.</param>
/// <param name="Standing">Where the time to sue on this claim stands.</param>
/// <param name="Action">The action that enforces it best; null where none may.</param>
internal sealed record ClaimSuit(ClaimRecorded Claim, DaySpan Recorded, IReadOnlyList<Reading> Readings, Standing Standing,
    ActionFiled? Action)
{
    /// <summary>Which time to sue runs from the recording.</summary>
    public Number ToSue { get; private init; }

    /// <summary>That time, by the day of the recording.</summary>
    public NumberRow DaysToSue(FactsAsOf facts) => facts.Numbers.On(ToSue, Recorded.Earliest);

    /// <summary>How the action ended; null where it did not, as far as the file says.</summary>
    public ActionEnded? End { get; private init; }

    /// <summary>A stay in the owner's bankruptcy on some day of the time to sue; null where there was none.</summary>
    public Stay? Stay { get; private init; }

    /// <summary>Whether an action on it was brought in time, or settled.</summary>
    public bool IsSued => Standing is Standing.Kept or Standing.Done;

    /// <summary>Whether an action is pending on this claim, or may be.</summary>
    public bool IsPending => Action is not null && End is null && Standing is Standing.Kept or Standing.InDoubt;

    /// <summary>The first day after which, without an action, the time may be over.</summary>
    public LocalDate FirstEnd => Readings[0].Day;

    /// <summary>The day after which, without an action, nobody can say that the time runs.</summary>
    public LocalDate LastEnd => Readings[^1].Rolled ?? Readings[^1].Day;

    /// <summary>How a claim stands; null where its day is unknown.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="claim">A recorded claim.</param>
    /// <param name="toSue">The number of days in which to sue after recording.</param>
    /// <param name="unsure">The recorded claims that may not count.</param>
    /// <param name="calendar">The calendar.</param>
    public static ClaimSuit? Of(FactsAsOf facts, ClaimRecorded claim, Number toSue, IReadOnlyList<ClaimRecorded> unsure, OpenDays calendar)
    {
        if (DaySpan.Of(claim.On) is not { } recorded)
            return null;
        var days = facts.Numbers.On(toSue, recorded.Earliest);
        Reading[] readings = recorded.IsExact
            ? [Deadline.Own($"{days.Text} after recording", days.LastDay(recorded.Earliest), calendar)]
            : [Named(recorded.Earliest), Named(recorded.Latest)];
        if (!recorded.IsExact && readings[0].Day > readings[1].Day)
            Array.Reverse(readings);
        Reading Named(LocalDate day) => Deadline.Own($"recorded on {day:iso}", facts.Numbers.LastDay(toSue, day), calendar);

        return Of(facts, claim, recorded, readings, unsure, calendar, toSue);
    }

    /// <summary>The same by other last days, such as those after a credit.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="claim">A recorded claim.</param>
    /// <param name="recorded">The day it was recorded.</param>
    /// <param name="readings">The last day to sue, earliest first; not empty.</param>
    /// <param name="unsure">The recorded claims that may not count.</param>
    /// <param name="calendar">The calendar.</param>
    /// <param name="toSue">Which time to sue runs from the recording.</param>
    public static ClaimSuit Of(FactsAsOf facts, ClaimRecorded claim, DaySpan recorded, IReadOnlyList<Reading> readings,
        IReadOnlyList<ClaimRecorded> unsure, OpenDays calendar,
        Number toSue = Number.SueOnClaim)
    {
        var unsued = Unsued(facts.AsOf, readings);
        var best = new ClaimSuit(claim, recorded, readings, unsued, null) { ToSue = toSue };
        foreach (var action in facts.All<ActionFiled>())
        {
            if (DaySpan.Of(action.On) is { } filed && ClaimAction.Enforces(facts, action, filed, claim, recorded, unsure) is not Verdict.No
                and var enforces)
                best = Better(best, best.With(facts, action, filed, enforces, unsued, calendar));
        }

        return best.AfterOrder(facts).InStay(facts);
    }

    private ClaimSuit With(FactsAsOf facts, ActionFiled action, DaySpan filed, Verdict enforces, Standing unsued, OpenDays calendar)
    {
        var standing = InTime(filed, calendar);
        if (standing == Standing.Kept && enforces == Verdict.Open)
            standing = Standing.InDoubt;
        if (OwnAction.EndOf(facts, action, orders: true, out var surely) is not { } end)
            return this with { Action = action, Standing = standing };
        surely &= enforces == Verdict.Yes;
        var after = AfterEnd(end, standing, unsued);
        return this with { Action = action, End = end, Standing = surely || after == standing ? after : Standing.InDoubt };
    }

    /// <summary>
    /// In time by the ninetieth day, or by the day to which both the courts' holidays and the State's carry it: Mox, Inc. v. Leventhal
    /// (1928)
    /// 89 Cal.App. 253, of the section from which § 8460 comes. As far as one list alone carries it, it is in doubt.
    /// </summary>
    [Rule("Civ. Code § 10", Sure = Sure.Opinion)]
    private Standing InTime(DaySpan filed, OpenDays calendar) =>
        filed.Latest <= calendar.RollForwardOnBothLists(FirstEnd) ? Standing.Kept
        : filed.Earliest <= LastEnd ? Standing.InDoubt
        : Standing.Lost;

    private static Standing Unsued(LocalDate asOf, IReadOnlyList<Reading> readings) =>
        asOf <= readings[0].Day ? Standing.Open
        : asOf > (readings[^1].Rolled ?? readings[^1].Day) ? Standing.Lost
        : Standing.InDoubt;

    /// <summary>
    /// A judgment that no lien exists, and an order that dismisses the cause of action, cancel the claim; not one expressly without
    /// prejudice. Whether another action may follow it after the 90 days the Code does not say.
    /// </summary>
    [Rule("Civ. Code § 8490")]
    private static Standing AfterEnd(ActionEnded end, Standing inTime, Standing unsued) => end.How switch
    {
        ActionEnd.Won => inTime,
        ActionEnd.Settled => Standing.Done,
        ActionEnd.LostAtTrial or ActionEnd.ReleaseOrdered => Standing.Lost,
        ActionEnd.Dismissed => end.WithoutPrejudice switch
        {
            false => Standing.Lost,
            true => unsued == Standing.Open ? Standing.Open : Standing.InDoubt,
            null => Standing.InDoubt,
        },
        _ => throw new InvalidOperationException($"No such end: {end.How}."),
    };

    // An order on the owner's petition ends the claim, whether or not an action was ever brought on it.
    private ClaimSuit AfterOrder(FactsAsOf facts)
    {
        foreach (var ended in facts.All<ActionEnded>())
        {
            if (ended.How == ActionEnd.ReleaseOrdered && ended.Of is null && !(ended.On.Latest < Recorded.Earliest))
                return this with { Standing = Standing.Lost, End = ended };
        }

        return this;
    }

    /// <summary>
    /// While the owner is in bankruptcy the claim is not lost: the time to sue stood still (Pioneer Construction v. Global Investment
    /// (2011)
    /// 202 Cal.App.4th 161). A suit filed in the stay is void, so it is in doubt.
    /// </summary>
    [Rule("11 U.S.C. § 362(a)", Sure = Sure.Opinion)]
    private ClaimSuit InStay(FactsAsOf facts)
    {
        if (End is not null || Stay.Of(facts, PartyCapacity.Owner, Recorded.Earliest, LastEnd) is not { } stay)
            return this;
        var standing = Standing switch
        {
            Standing.Lost when stay.MayStillRun(Recorded.Latest, LastEnd, facts.AsOf) => Standing.InDoubt,
            Standing.Kept when Action is { } action && DaySpan.Of(action.On) is { } filed && stay.MayHold(filed) => Standing.InDoubt,
            _ => Standing,
        };
        return this with { Stay = stay, Standing = standing };
    }

    // The action that serves the claim best; of equals the one filed first.
    private static ClaimSuit Better(ClaimSuit a, ClaimSuit b) => a.Action is null || Rank(b.Standing) > Rank(a.Standing) ? b : a;

    private static int Rank(Standing standing) => Array.IndexOf(WorstFirst, standing);

    private static readonly Standing[] WorstFirst = [Standing.Lost, Standing.InDoubt, Standing.Open, Standing.Done, Standing.Kept];
}
