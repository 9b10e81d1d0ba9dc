using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>What follows the action on a stop payment notice: telling of it, and bringing it to trial.</summary>
internal static class AfterSuing
{
    /// <summary>The findings <c>stop-payment-notice.tell-of-action</c> and <c>stop-payment-notice.prosecution-last-day</c>.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, ActionFiled action, IReadOnlyList<StopPaymentAction.Window> windows,
        StopPaymentLaw law, OpenDays calendar)
    {
        var filed = DaySpan.Of(action.On)!.Value;
        yield return Tell(facts, action, filed, windows, law, calendar);
        if (ReferenceEquals(law, StopPaymentLaw.Public) || action.Enforces.Contains(ActionOn.StopPaymentNotice))
            yield return Trial(facts, action, filed, law, calendar);
    }

    [Rule("Civ. Code § 8550(e)")]
    [Rule("Civ. Code § 9504")]
    private static Finding Tell(
        FactsAsOf facts, ActionFiled action, DaySpan filed, IReadOnlyList<StopPaymentAction.Window> windows, StopPaymentLaw law,
            OpenDays calendar)
    {
        var days = facts.Numbers.On(law.ToTell, filed.Earliest);
        List<Reading> readings = [Deadline.Own($"{days.Spelled} after the action was filed", days.LastDay(filed.Earliest), calendar)];
        var told = ToldAll(facts, windows, filed);
        return Deadline.Of(Deadline.StandingOf(facts.AsOf, readings, told, endFirm: false), readings, calendar)
            .Finding("stop-payment-notice.tell-of-action", "Notice of the action on the stop payment notice", Why, Ask);

        List<Reason> Why()
        {
            var why = new List<Reason>
            {
                Reason.Of(law.Tell, $"Within {days.Spelled} after the action was filed, tell those to whom the stop payment notice was "
                    + $"given. Leaving one out is not fatal where that harms nobody (Brewer Corp. v. Point Center Financial (2014) 223 "
                    + $"Cal.App.4th 831).", [action]),
            };
            foreach (var paper in facts.All<ActionTold>())
            {
                why.Add(paper.Manner is { } manner && !Giving.IsGood(manner)
                    ? Reason.NotApplied(law.Tell, $"Told {DaySpan.Of(paper.On)} in a manner in which no notice is given; it does not "
                        + $"count.", paper)
                    : Reason.Of(law.Tell,
                        $"Told {DaySpan.Of(paper.On)}: {string.Join(", ", paper.To.Select(id => facts.Job.Party(id)?.Name ?? id))}.",
                            [paper]));
            }

            foreach (var holder in Holders(windows))
            {
                if (ToldOn(facts, holder, filed) is null)
                    why.Add(Reason.Of(law.Tell, $"The file does not show that the {holder.Words} was told."));
            }

            return why;
        }

        IReadOnlyList<Question> Ask() =>
        [
            .. facts.All<ActionTold>().Where(static t => t.Manner is null)
                .Select(static t =>
                    new Question($"How were they told of the action?{NoticeKinds.ActionTold.At("manner"):aside}") { Corrects = t }),
        ];
    }

    private static IEnumerable<Holder> Holders(IReadOnlyList<StopPaymentAction.Window> windows)
    {
        var seen = new List<string>();
        foreach (var window in windows)
        {
            foreach (var holder in window.To)
            {
                if (seen.Contains(holder.Id))
                    continue;
                seen.Add(holder.Id);
                yield return holder;
            }
        }
    }

    // The day on which the last of them was told; null while one was not.
    private static DaySpan? ToldAll(FactsAsOf facts, IReadOnlyList<StopPaymentAction.Window> windows, DaySpan filed)
    {
        DaySpan? last = null;
        foreach (var holder in Holders(windows))
        {
            if (ToldOn(facts, holder, filed) is not { } on)
                return null;
            last = last is { } so ? DaySpan.Later(so, on) : on;
        }

        return last;
    }

    private static DaySpan? ToldOn(FactsAsOf facts, Holder holder, DaySpan filed)
    {
        DaySpan? first = null;
        foreach (var told in facts.All<ActionTold>())
        {
            if (Giving.CompleteOn(facts.Numbers, told.On, told.Manner, null) is not { } complete || told.On.Latest < filed.Earliest
                || !holder.IsReachedBy(told.To)
                || (told.Manner is { } manner && !Giving.IsGood(manner)))
                continue;
            if (first is not { } so || complete.Latest < so.Latest)
                first = complete;
        }

        return first;
    }

    [Rule("Civ. Code § 8554")]
    [Rule("Civ. Code § 9508")]
    private static Finding Trial(FactsAsOf facts, ActionFiled action, DaySpan filed, StopPaymentLaw law, OpenDays calendar)
    {
        var years = facts.Numbers.On(law.ToTrial, filed.Earliest);
        var last = years.LastDay(filed.Earliest);
        List<Reading> readings = [Deadline.Own($"{years.Spelled} after the action was filed", last, calendar)];
        var trial = OwnAction.Trial(facts, action);
        return Deadline.Of(trial.Standing(facts.AsOf, readings, endFirm: false), readings, calendar)
            .Finding("stop-payment-notice.prosecution-last-day", "Bring the action on the stop payment notice to trial",
            () => [Reason.Of(law.Trial, $"If the action is not brought to trial within {years.Spelled}, by {last}, the court may dismiss "
                + $"it for want of prosecution; a dismissal not expressly without prejudice ends the notice "
                + $"({law.Ends}).", [action])], () => [.. OwnAction.Ask(trial, "the trial began", ClaimKinds.TrialBegun)]);
    }
}
