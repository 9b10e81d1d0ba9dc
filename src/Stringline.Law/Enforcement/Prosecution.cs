using Stringline.Law.Bankruptcy;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>Serving the action and bringing it to trial (Civ. Code § 8462; Code Civ. Proc. §§ 583.310, 583.420).</summary>
internal static class Prosecution
{
    /// <summary>The findings <c>prosecution.service-last-day</c>, <c>prosecution.last-day</c> and <c>prosecution.five-years</c>.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, ActionFiled action, DaySpan filed, Stay? stay, OpenDays calendar)
    {
        var trial = OwnAction.Trial(facts, action);
        var served = OwnAction.Served(facts, action);
        yield return Service(facts, action, filed, served.Perhaps is null ? trial : served, calendar);
        yield return Trial(facts, action, filed, trial, calendar);
        yield return FiveYears(facts, action, filed, trial, stay, calendar);
    }

    [Rule("Code Civ. Proc. § 583.420")]
    private static Finding Service(FactsAsOf facts, ActionFiled action, DaySpan filed, OwnAction.First served, OpenDays calendar)
    {
        var years = facts.Numbers.On(Number.ServeAction, filed.Earliest);
        var last = years.LastDay(filed.Earliest);
        Reading[] readings = [Deadline.Own($"{years.Spelled} after the action was filed", last, calendar)];
        return Deadline.Of(served.Standing(facts.AsOf, readings, endFirm: false), readings, calendar)
            .Finding("prosecution.service-last-day", "Serve the action",
            () => [Reason.Of("Code Civ. Proc. § 583.420",
                $"If summons and complaint are not served within {years.Spelled}, by {last}, the court may dismiss the action.", [action])],
            () => served.Perhaps is null
                ? [new Question($"On which day was the summons served, and on whom?{ClaimKinds.ActionServed:aside}")]
                : [.. OwnAction.Ask(served, "the summons was served", ClaimKinds.ActionServed)]);
    }

    [Rule("Civ. Code § 8462")]
    private static Finding Trial(FactsAsOf facts, ActionFiled action, DaySpan filed, OwnAction.First trial, OpenDays calendar)
    {
        var years = facts.Numbers.On(Number.BringToTrial, filed.Earliest);
        var last = years.LastDay(filed.Earliest);
        Reading[] readings = [Deadline.Own($"{years.Spelled} after the action was filed", last, calendar)];
        return Deadline.Of(trial.Standing(facts.AsOf, readings, endFirm: false), readings, calendar)
            .Finding("prosecution.last-day", "Bring the action to trial",
            () => [Reason.Of("Civ. Code § 8462", $"If the action is not brought to trial within {years.Spelled}, by {last}, the court may "
                + $"dismiss it for want of prosecution.", [action])], () => [.. OwnAction.Ask(trial, "the trial began",
                ClaimKinds.TrialBegun)]);
    }

    /// <summary>
    /// Brought to trial within five years, else it is dismissed; a stay in the owner's bankruptcy may have held that time.
    /// </summary>
    [Rule("Code Civ. Proc. § 583.310")]
    private static Finding FiveYears(FactsAsOf facts, ActionFiled action, DaySpan filed, OwnAction.First trial, Stay? stay,
        OpenDays calendar)
    {
        var years = facts.Numbers.On(Number.BringToTrialAtMost, filed.Earliest);
        var last = years.LastDay(filed.Earliest);
        Reading[] readings = [Deadline.Own($"{years.Spelled} after the action was filed", last, calendar)];
        return Deadline.Of(trial.Standing(facts.AsOf, readings, endFirm: stay is null && filed.IsExact), readings, calendar)
            .Finding("prosecution.five-years", "Bring the action to trial: the outer limit",
            () => [Reason.Of("Code Civ. Proc. § 583.310",
                $"An action shall be brought to trial within {years.Spelled}, by {last}. A written agreement of the parties, or a time in "
                    + $"which the action was stayed or could not be tried, lengthens it (Code Civ. Proc. §§ 583.330, 583.340, from "
                    + $"memory).", [action])],
            () => trial.Perhaps is null && facts.AsOf > last
                ? [new Question($"Was the action brought to trial, and when?{ClaimKinds.TrialBegun:aside}")]
                : [.. OwnAction.Ask(trial, "the trial began", ClaimKinds.TrialBegun)]);
    }
}
