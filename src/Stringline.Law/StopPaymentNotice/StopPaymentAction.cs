using System.Globalization;
using Stringline.Law.Bankruptcy;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>The action on the stop payment notices of a file: its first and its last day, telling of it, and its end.</summary>
/// <param name="Windows">The days on which notices that count were given, each with its own first day.</param>
/// <param name="LastDay">The last day to bring it; null where no time to bring it is known.</param>
/// <param name="Stay">The bankruptcy in which it cannot be brought; null where there is none.</param>
/// <param name="Brought">The first that was brought on them; null where none was.</param>
internal sealed record StopPaymentAction(
    IReadOnlyList<StopPaymentAction.Window> Windows, Outcome? LastDay, StayedSuit? Stay, ActionFiled? Brought)
{
    /// <summary>The notices given on one day, to one or several holders: each has a first day of its own.</summary>
    /// <param name="On">The day.</param>
    /// <param name="Paper">One of the notices.</param>
    /// <param name="To">To whom they were given.</param>
    /// <param name="First">The first day on which an action on them may be brought.</param>
    /// <param name="Wait">How long after the notice none may be.</param>
    internal sealed record Window(DaySpan On, StopPaymentGiven Paper, List<Holder> To, DaySpan First, NumberRow Wait)
    {
        /// <summary>Whether one of them surely counts, whoever it went to.</summary>
        public bool IsSure { get; set; }

        /// <summary>To whom they were given.</summary>
        public string Words => string.Join(", ", To.Select(h => h.Words));
    }

    /// <summary>The action as the facts have it.</summary>
    public static StopPaymentAction Of(
        FactsAsOf facts, IReadOnlyList<HolderServed> served, Outcome toGive, TimeOfGiving time, StopPaymentLaw law, OpenDays calendar)
    {
        var windows = WindowsOf(facts, law, served, time, out var given, out var undated);
        var actions = ActionsOnNotice.Of(facts, given, law);
        StayedSuit? stay = null;
        var last = time.Readings.Count == 0 ? null
            : LastDayToSue(facts, toGive, time, windows, given, undated, actions, law, calendar, out stay);
        return new StopPaymentAction(windows, last, stay, actions.First(windows));
    }

    /// <summary>
    /// The findings <c>stop-payment-notice.action-first-day</c>, <c>.action-last-day</c>, <c>.tell-of-action</c> and
    /// <c>.prosecution-last-day</c>.
    /// </summary>
    public IEnumerable<Finding> Findings(FactsAsOf facts, StopPaymentLaw law, OpenDays calendar)
    {
        for (var i = 0; i < Windows.Count; i++)
            yield return FirstDayToSue(facts, Windows[i], i, Windows.Count, law);
        if (LastDay is not null)
            yield return LastDay.Finding("stop-payment-notice.action-last-day", "Action on the stop payment notice: last day");
        if (LastDay is not null && Stay?.Instead(facts, "stop-payment-notice.stay-last-day", LastDay.Deadline) is { } instead
            && HoldersInStay.IsWhole(facts, Windows))
            yield return instead;
        if (Brought is null)
            yield break;
        foreach (var finding in AfterSuing.Findings(facts, Brought, Windows, law, calendar))
            yield return finding;
    }

    private static List<Window> WindowsOf(
        FactsAsOf facts, StopPaymentLaw law, IReadOnlyList<HolderServed> served, TimeOfGiving time, out bool given, out bool undated)
    {
        var windows = new List<Window>();
        (given, undated) = (false, false);
        foreach (var holder in served)
        {
            var (onUnknownDay, dated) = (false, false);
            foreach (var service in holder.Counting(time))
            {
                given = true;
                if (service.On is not { } on)
                {
                    onUnknownDay = true;
                    continue;
                }

                dated = true;
                var same = windows.Find(w => w.On == on);
                if (same is null)
                    {
                    windows.Add(same = new Window(on, service.Paper, [holder.Holder],
                        on.LastDay(facts.Numbers, law.BeforeAction).Plus(1), facts.Numbers.On(law.BeforeAction, on.Latest)));
                }
                else if (!same.To.Contains(holder.Holder))
                    same.To.Add(holder.Holder);
                same.IsSure |= service.Counts == Verdict.Yes;
            }

            undated |= onUnknownDay && !dated;
        }

        windows.Sort(static (a, b) => a.On.Latest != b.On.Latest
            ? a.On.Latest.CompareTo(b.On.Latest) : a.On.Earliest.CompareTo(b.On.Earliest));
        return windows;
    }

    [Rule("Civ. Code § 8550(a)")]
    [Rule("Civ. Code § 9502(a)")]
    private static Finding FirstDayToSue(FactsAsOf facts, Window window, int place, int of, StopPaymentLaw law)
    {
        var first = window.First;
        List<Reading> readings = first.IsExact
            ? [new Reading($"after {window.Wait.Spelled} from giving the notice", first.Earliest)]
            : [new Reading($"notice given on its earliest day", first.Earliest),
                new Reading($"notice given on its latest day", first.Latest)];
        return new Finding
        {
            Id = place == 0
                ? "stop-payment-notice.action-first-day"
                : string.Create(CultureInfo.InvariantCulture, $"stop-payment-notice.action-first-day.{place + 1}"),
            Title = of == 1
                ? "Action on the stop payment notice: first day" : $"Action on the stop payment notice to the {window.Words}: first day",
            Standing = facts.AsOf >= first.Latest ? Standing.Open : facts.AsOf >= first.Earliest ? Standing.InDoubt : Standing.NotYet,
            Readings = readings,
            Band = Deadline.BandOver(readings),
            Explain = () =>
                [Reason.Of(law.First, $"No action before {window.Wait.Spelled} from giving the notice have passed; given to "
                    + $"the {window.Words} {window.On}, so from {first.Latest}.", [window.Paper])],
        };
    }

    [Rule("Civ. Code § 8550(b)")]
    [Rule("Civ. Code § 9502(b)")]
    private static Outcome LastDayToSue(
        FactsAsOf facts, Outcome toGive, TimeOfGiving time, List<Window> windows, bool given, bool undated, ActionsOnNotice actions,
            StopPaymentLaw law, OpenDays calendar,
        out StayedSuit? stay)
    {
        var readings = new List<Reading>(time.Readings.Count);
        foreach (var reading in time.Readings)
            readings.Add(Deadline.Own(reading.Words, facts.Numbers.LastDay(law.ToSue, reading.Day), calendar));
        var stayed = stay = HoldersInStay.Of(facts, windows, readings);
        var without = Deadline.StandingOf(facts.AsOf, readings, null, time.EndFirm);
        var standing = given ? actions.StandingOf(windows, readings, time.EndFirm, without, stay)
            : toGive.Standing == Standing.Lost || without == Standing.Lost ? Standing.Lost
            : without == Standing.Open ? Standing.NotYet : Standing.InDoubt;
        // A holder was given one on a day that nobody knows: whether that wait lay between it and the action is open.
        if (undated && standing == Standing.Kept)
            standing = Standing.InDoubt;
        stay?.AddTo(readings, standing);
        return new Outcome(
            Deadline.Of(standing, readings, calendar, endKnown: time.EndKnown && stayed is not { HasNoEnd: true }),
            new Words(
                () => [.. HoldersInStay.Why(facts, stayed, standing, windows),
                    .. WhyLastDayToSue(facts, toGive, time, windows, given, actions, law)],
                () => given ? [.. actions.Questions(), .. HoldersInStay.Questions(stayed, standing, law)] : []));
    }

    [Rule("Civ. Code § 8550(d)")]
    [Rule("Civ. Code § 9502(d)")]
    private static List<Reason> WhyLastDayToSue(
        FactsAsOf facts, Outcome toGive, TimeOfGiving time, List<Window> windows, bool given, ActionsOnNotice actions, StopPaymentLaw law)
    {
        var why = new List<Reason>();
        if (!given && toGive.Standing == Standing.Lost)
            why.Add(Reason.Of(law.Last, $"No stop payment notice that counts was given in its time, so there is none to sue on.",
                [.. toGive.Why]));
        foreach (var reading in time.Readings)
            why.Add(Reason.Of(law.Last, $"On the reading «{reading.Words}» the time to give a stop payment notice "
                + $"ends {reading.Day}; the action must be brought within {facts.Numbers.On(law.ToSue, reading.Day)} after that end, not "
                + $"after the giving, and the end is not rolled: {facts.Numbers.LastDay(law.ToSue, reading.Day)}."));
        why.Add(ReferenceEquals(law, StopPaymentLaw.Public) ? EntityAndContractor : EffectEnds);
        why.AddRange(actions.Why(windows));
        return why;
    }

    private static readonly Reason EffectEnds =
        Reason.Of("Civ. Code § 8550(d)", $"Without an action in that time the notice ceases to be effective, and the money is released.");

    [Rule("Civ. Code § 9500")]
    private static Reason EntityAndContractor { get; } =
    Reason.Of("Civ. Code § 9502(d)", $"Without an action in that time, against the public entity and the direct contractor, the notice "
        + $"ceases to be effective, and the money is released. No claim need be filed with the entity before (Civ. Code § 9500(b)).");
}
