using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>The days of a stop payment notice, private or public: to give it, to sue on it, to tell of the suit.</summary>
public static class StopPaymentDays
{
    /// <summary>Days from giving the notice before which no action may be brought.</summary>
    public const int DaysBeforeAction = 10;

    /// <summary>Days from the end of the time to give the notice within which the action must be brought.</summary>
    public const int DaysToSue = 90;

    /// <summary>Days from the action within which those who got the notice are told of it.</summary>
    public const int DaysToTellOfAction = 5;

    /// <summary>The sections that differ between private and public works.</summary>
    /// <param name="First">The first day to sue.</param>
    /// <param name="Last">The last day to sue.</param>
    /// <param name="Tell">Telling of the suit.</param>
    public sealed record Sections(string First, string Last, string Tell);

    /// <summary>The sections of a private work.</summary>
    public static Sections Private { get; } = new("Civ. Code § 8550(a)", "Civ. Code § 8550(b)", "Civ. Code § 8550(e)");

    /// <summary>The sections of a public work.</summary>
    public static Sections Public { get; } = new("Civ. Code § 9502(a)", "Civ. Code § 9502(b)", "Civ. Code § 9504");

    /// <summary>The findings <c>stop-payment-notice.action-first-day</c>, <c>.action-last-day</c> and <c>.tell-of-action</c>.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="timeToGive">Readings of the last day to give the notice; not rolled.</param>
    /// <param name="endKnown">Whether an end of that time is known.</param>
    /// <param name="endFirm">Whether an uncontested reading carries it.</param>
    /// <param name="sections">The sections.</param>
    /// <param name="calendar">The calendar.</param>
    [Rule("Civ. Code § 8550(a)")]
    [Rule("Civ. Code § 8550(b)")]
    [Rule("Civ. Code § 8550(e)")]
    [Rule("Civ. Code § 9502(a)")]
    [Rule("Civ. Code § 9502(b)")]
    [Rule("Civ. Code § 9504")]
    public static IEnumerable<Finding> ActionWindow(
        FactsAsOf facts, IReadOnlyList<Reading> timeToGive, bool endKnown, bool endFirm, Sections sections, OpenDays calendar)
    {
        var given = FirstGiven(facts, out var notice);
        if (given is { } on && notice is not null)
            yield return FirstDayToSue(facts, notice, on, sections);
        if (timeToGive.Count > 0)
            yield return LastDayToSue(facts, timeToGive, endKnown, endFirm, sections, calendar, given);
        if (given is null)
            yield break;
        foreach (var action in facts.All<ActionFiled>())
        {
            if (Days.Of(action.On) is { } filed)
            {
                List<Reading> readings = [Deadline.Own("five days after the action was filed", Period.LastDay(filed.Earliest, DaysToTellOfAction), calendar)];
                yield return Deadline.Finding("stop-payment-notice.tell-of-action", "Notice of the action on the stop payment notice",
                    Deadline.StandingOf(facts.AsOf, readings, null, endFirm: false), readings, calendar,
                    [Reason.Of(sections.Tell, $"Within five days after the action was filed, tell those to whom the stop payment notice was given. A miss that harms nobody is not fatal (Brewer Corp. v. Point Center Financial (2014) 223 Cal.App.4th 831).", [action])]);
                yield break;
            }
        }
    }

    /// <summary>The first stop payment notice given, and its day.</summary>
    public static Days? FirstGiven(FactsAsOf facts, out StopPaymentGiven? notice)
    {
        foreach (var given in facts.All<StopPaymentGiven>())
        {
            if (Days.Of(given.On) is { } on)
            {
                notice = given;
                return on;
            }
        }

        notice = null;
        return null;
    }

    private static Finding FirstDayToSue(FactsAsOf facts, StopPaymentGiven notice, Days on, Sections sections)
    {
        var first = on.Plus(DaysBeforeAction + 1);
        List<Reading> readings = first.IsExact
            ? [new Reading("after ten days from giving the notice", first.Earliest)]
            : [new Reading("notice given on its earliest day", first.Earliest), new Reading("notice given on its latest day", first.Latest)];
        return new Finding
        {
            Id = "stop-payment-notice.action-first-day",
            Title = "Action on the stop payment notice: first day",
            Standing = facts.AsOf >= first.Latest ? Standing.Open : facts.AsOf >= first.Earliest ? Standing.InDoubt : Standing.NotYet,
            Readings = readings,
            Band = Deadline.Band(readings),
            Why = [Reason.Of(sections.First, $"No action before ten days from giving the notice have passed; given {on}, so from {first.Latest}.", [notice])],
        };
    }

    private static Finding LastDayToSue(
        FactsAsOf facts, IReadOnlyList<Reading> timeToGive, bool endKnown, bool endFirm, Sections sections, OpenDays calendar, Days? given)
    {
        var readings = new List<Reading>(timeToGive.Count);
        foreach (var reading in timeToGive)
            readings.Add(Deadline.Own(reading.Name, Period.LastDay(reading.Day, DaysToSue), calendar));
        Days? filed = null;
        var early = false;
        foreach (var action in facts.All<ActionFiled>())
        {
            if (given is not { } on || Days.Of(action.On) is not { } brought)
                continue;
            var counts = IsOnTheNotice(on, brought);
            early |= counts == Verdict.Open;
            if (counts == Verdict.Yes)
                filed ??= brought;
        }

        var standing = given is null ? Standing.NotYet : Deadline.StandingOf(facts.AsOf, readings, filed, endFirm);
        if (early && standing is Standing.Open or Standing.Lost)
            standing = Standing.InDoubt;
        return Deadline.Finding("stop-payment-notice.action-last-day", "Action on the stop payment notice: last day", standing, readings, calendar,
            () => WhyLastDayToSue(facts, timeToGive, sections, given), endKnown);
    }

    // One filed before the notice is none on it; one filed inside the ten days may be thrown out as brought too early.
    private static Verdict IsOnTheNotice(Days given, Days brought) =>
        brought.Latest < given.Earliest ? Verdict.No
        : brought.Earliest < given.Latest.PlusDays(DaysBeforeAction + 1) ? Verdict.Open
        : Verdict.Yes;

    private static List<Reason> WhyLastDayToSue(FactsAsOf facts, IReadOnlyList<Reading> timeToGive, Sections sections, Days? given)
    {
        var why = new List<Reason>();
        foreach (var reading in timeToGive)
            why.Add(Reason.Of(sections.Last, $"On the reading «{reading.Name}» the time to give a stop payment notice ends {reading.Day}; the action must be brought within 90 days after that end, not after the giving, and the end is not rolled: {Period.LastDay(reading.Day, DaysToSue)}."));
        foreach (var action in facts.All<ActionFiled>())
        {
            if (given is not { } on || Days.Of(action.On) is not { } brought)
                continue;
            why.Add(IsOnTheNotice(on, brought) switch
            {
                Verdict.No => Reason.NotApplied(sections.First, $"The action filed {brought} was filed before the notice was given; it is none on the notice.", action),
                Verdict.Open => Reason.Of(sections.First, $"Action filed {brought}, when ten days from giving the notice had not surely passed: it may be thrown out as brought too early. One brought after them removes the doubt.", [action]),
                _ => Reason.Of(sections.Last, $"Action filed {brought}; it counts here if it is on the stop payment notice too.", [action]),
            });
        }

        return why;
    }
}
