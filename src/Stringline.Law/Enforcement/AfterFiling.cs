using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.Enforcement;

/// <summary>What follows the filing of the action (Civ. Code §§ 8461, 8462).</summary>
public static class AfterFiling
{
    /// <summary>Days after the action within which the notice of pendency is recorded.</summary>
    public const int LisPendensDays = 20;

    /// <summary>Years from the action after which the court may dismiss for want of prosecution.</summary>
    public const int YearsToTrial = 2;

    /// <summary>The findings <c>lis-pendens.last-day</c> and <c>prosecution.last-day</c>; none where no action is filed.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, OpenDays calendar)
    {
        foreach (var action in facts.All<ActionFiled>())
        {
            if (Days.Of(action.On) is not { } filed)
                continue;
            yield return LisPendens(facts, action, filed, calendar);
            yield return Prosecution(facts, action, filed, calendar);
            yield break;
        }
    }

    [Rule("Civ. Code § 8461")]
    private static Finding LisPendens(FactsAsOf facts, ActionFiled action, Days filed, OpenDays calendar)
    {
        var last = Period.LastDay(filed.Earliest, LisPendensDays);
        var why = new List<Reason>
        {
            Reason.Of("Civ. Code § 8461", $"The claimant records a notice of pendency of the action on or before {last}; buyers and lenders are bound only from its recording.", [action]),
        };
        var done = facts.FirstDayOf<LisPendensRecorded>();
        foreach (var recorded in facts.All<LisPendensRecorded>())
            why.Add(Reason.Of("Civ. Code § 8461", $"Notice of pendency of action recorded {Days.Of(recorded.On)}.", [recorded]));

        List<Reading> readings = [Deadline.Own("20 days after the action was filed", last, calendar)];
        // A late notice still binds whoever comes after it.
        return Deadline.Finding("lis-pendens.last-day", "Notice of pendency of action", Deadline.StandingOf(facts.AsOf, readings, done, endFirm: false), readings, calendar, why);
    }

    [Rule("Civ. Code § 8462")]
    private static Finding Prosecution(FactsAsOf facts, ActionFiled action, Days filed, OpenDays calendar)
    {
        var last = Period.AddYears(filed.Earliest, YearsToTrial);
        List<Reading> readings = [Deadline.Own("two years after the action was filed", last, calendar)];
        return Deadline.Finding("prosecution.last-day", "Bring the action to trial", Deadline.StandingOf(facts.AsOf, readings, null, endFirm: false), readings, calendar,
            [Reason.Of("Civ. Code § 8462", $"If the action is not brought to trial within two years, by {last}, the court may dismiss it for want of prosecution.", [action])]);
    }
}
