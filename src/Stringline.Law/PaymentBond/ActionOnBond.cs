using Stringline.Law.Bankruptcy;
using Stringline.Law.Counting;
using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PaymentBond;

/// <summary>The actions of a file, weighed as actions on the payment bond.</summary>
internal static class ActionOnBond
{
    /// <summary>The finding <c>payment-bond.action-last-day</c>.</summary>
    public static Finding Finding(Outcome lastDay) => lastDay.Finding("payment-bond.action-last-day", "Action on the payment bond");

    /// <summary>Where bringing it stands.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="readings">Readings of the last day; empty while it does not run, and then an action is early enough.</param>
    /// <param name="endFirm">Whether an uncontested reading carries its end.</param>
    /// <param name="firstDay">The first day on which it may be brought; null where the law sets none.</param>
    /// <param name="stay">A stay in the surety's bankruptcy in the time to sue; null where there was none.</param>
    public static Standing StandingOf(FactsAsOf facts, IReadOnlyList<Reading> readings, bool endFirm, DaySpan? firstDay, StayedSuit? stay)
    {
        var best = readings.Count == 0 ? Standing.NotYet : Deadline.StandingOf(facts.AsOf, readings, null, endFirm);
        best = stay?.Unsued(best, facts.AsOf) ?? best;
        foreach (var action in facts.All<ActionFiled>())
        {
            if (!MayBeOnBond(action) || DaySpan.Of(action.On) is not { } brought)
                continue;
            var standing = readings.Count == 0 ? Standing.Kept : Deadline.StandingOf(facts.AsOf, readings, brought, endFirm);
            standing = stay?.Brought(standing, brought) ?? standing;
            if (standing == Standing.Kept && (IsEarly(brought, firstDay) || !SuesSurety(facts, action) || IsInTheWrongCourt(facts, action)))
                standing = Standing.InDoubt;
            var end = OwnAction.EndOf(facts, action, orders: false, out var surely);
            standing = end switch
            {
                null => standing,
                _ when !surely => Standing.InDoubt,
                { How: ActionEnd.Won or ActionEnd.Settled } => Standing.Done,
                { How: ActionEnd.LostAtTrial } => Standing.Lost,
                { How: ActionEnd.Dismissed, WithoutPrejudice: false } => Standing.Lost,
                _ => Standing.InDoubt,
            };
            if (standing is Standing.Kept or Standing.Done)
                return standing;
            // An action that was lost settles nothing while another may still be good.
            if (best != Standing.InDoubt)
                best = standing;
        }

        return best;
    }

    /// <summary>A stay in the bankruptcy of the surety, the only one who must be sued: its principal may be left out.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="readings">Readings of the last day.</param>
    public static StayedSuit? StayOf(FactsAsOf facts, IReadOnlyList<Reading> readings) =>
        (facts.LastFurnished ?? facts.FirstFurnished) is { } worked
        ? StayedSuit.Of(facts, BondServed.Sureties(facts), worked.Earliest, readings) : null;

    /// <summary>What is said of a bankruptcy of the surety, and of the principal, whom no action need name.</summary>
    [Rule("11 U.S.C. § 362(a)", Sure = Sure.FromMemory)]
    public static IEnumerable<Reason> WhyStayed(FactsAsOf facts, StayedSuit? stay, Standing standing)
    {
        if (stay is not null && standing != Standing.Done)
            yield return stay.Why;
        if ((facts.LastFurnished ?? facts.FirstFurnished) is not { } worked)
            yield break;
        foreach (var principal in BondServed.Principals(facts))
        {
            if (Stay.OfParty(facts, principal, worked.Earliest, facts.AsOf) is { } its)
                yield return Reason.Of("11 U.S.C. § 362(a)", $"{principal.Name}, the principal, is or was in bankruptcy "
                    + $"({its.Since}): leave it out of the suit while the stay lasts. The surety is sued without it, in the same time "
                    + $"(from memory).");
        }
    }

    /// <summary>Asks for a bankruptcy of the surety where the action would be lost.</summary>
    public static IEnumerable<Question> AskStay(StayedSuit? stay, Standing standing) =>
        stay is null && standing == Standing.Lost ? [StayedSuit.Ask("the surety")] : [];

    /// <summary>Whether it is on the bond, or the file does not say on what it is.</summary>
    public static bool MayBeOnBond(ActionFiled action) => action.Enforces.Count == 0 || action.Enforces.Contains(ActionOn.PaymentBond);

    private static bool IsEarly(DaySpan brought, DaySpan? firstDay) => firstDay is { } first && brought.Earliest < first.Latest;

    /// <summary>Whether it is against the surety, or the file does not say against whom it is.</summary>
    public static bool SuesSurety(FactsAsOf facts, ActionFiled action)
    {
        if (action.Against.Count == 0)
            return true;
        foreach (var surety in BondServed.Sureties(facts))
        {
            if (action.Against.Contains(surety.Id))
                return true;
        }

        return false;
    }

    /// <summary>An action on the federal bond lies in the federal district court, and a small claims court is none.</summary>
    [Rule("40 U.S.C. § 3133(b)(3)", Sure = Sure.FromMemory)]
    public static bool IsInTheWrongCourt(FactsAsOf facts, ActionFiled action) =>
        action.SmallClaims && facts.Job.Work.Kind == WorkKind.Federal;

    /// <summary>What is said of the actions.</summary>
    public static IEnumerable<Reason> Why(FactsAsOf facts, BondLaw law, DaySpan? firstDay)
    {
        foreach (var action in facts.All<ActionFiled>())
        {
            if (DaySpan.Of(action.On) is not { } brought)
                continue;
            if (!MayBeOnBond(action))
                yield return Reason.NotApplied(law.Action, $"The action filed {brought} is not on the payment bond.", action);
            else if (IsEarly(brought, firstDay))
                yield return Reason.Of(law.Action, $"Action filed {brought}, before the claimant had surely ceased to provide work "
                    + $"({firstDay}): it may be thrown out as brought too early.", [action]);
            else if (!SuesSurety(facts, action))
                yield return Reason.Of(law.Action, $"Action filed {brought}, but not against the surety: join it in time.", [action]);
            else
                yield return Reason.Of(law.Action, $"Action filed {brought}; it counts here if it is on the bond too.", [action]);
            if (MayBeOnBond(action) && OwnAction.EndOf(facts, action, orders: false, out var surely) is { } end)
                yield return surely ? Reason.Of(law.Action, $"The action ended {DaySpan.Of(end.On)}.", [end])
                    : Reason.Of(law.Action, $"An action ended {DaySpan.Of(end.On)}, and the file does not say which of several: it may be "
                        + $"this one.", [end]);
        }
    }

    /// <summary>What the file leaves open of them.</summary>
    public static IEnumerable<Question> Questions(FactsAsOf facts)
    {
        foreach (var action in facts.All<ActionFiled>())
        {
            if (!MayBeOnBond(action))
                continue;
            if (action.Enforces.Count == 0)
                yield return new Question($"Is the action on the payment bond too?{ClaimKinds.ActionFiled.At("enforces"):aside}") {
                    Corrects = action };
            if (OwnAction.EndOf(facts, action, orders: false, out var surely) is { } end && !surely)
                yield return new Question($"Which action was it that ended?{ClaimKinds.ActionEnded.At("of"):aside}") { Corrects = end };
            if (action.Against.Count == 0)
                yield return new Question($"Was the surety on the payment bond sued?{ClaimKinds.ActionFiled.At("against"):aside}") {
                    Corrects = action };
        }
    }
}
