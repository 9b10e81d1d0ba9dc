using Stringline.Law.Bankruptcy;
using Stringline.Law.Counting;
using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>The actions of a file, weighed as actions on its stop payment notices.</summary>
internal sealed class ActionsOnNotice
{
    private readonly FactsAsOf facts;
    private readonly StopPaymentLaw law;
    private readonly IReadOnlyList<ActionFiled> actions;

    private ActionsOnNotice(FactsAsOf facts, StopPaymentLaw law, IReadOnlyList<ActionFiled> actions)
    {
        this.facts = facts;
        this.law = law;
        this.actions = actions;
    }

    /// <summary>The actions that are, or may be, on a stop payment notice.</summary>
    public static ActionsOnNotice Of(FactsAsOf facts, bool given, StopPaymentLaw law)
    {
        List<ActionFiled>? found = null;
        if (given)
        {
            foreach (var action in facts.All<ActionFiled>())
            {
                if (DaySpan.Of(action.On) is not null
                    && (action.Enforces.Count == 0 || action.Enforces.Contains(ActionOn.StopPaymentNotice)))
                    (found ??= []).Add(action);
            }
        }

        return new ActionsOnNotice(facts, law, found ?? (IReadOnlyList<ActionFiled>)[]);
    }

    /// <summary>
    /// The first action that is on one of the notices, or may be thrown out as brought too early on it; null where none is.
    /// </summary>
    public ActionFiled? First(IReadOnlyList<StopPaymentAction.Window> windows)
    {
        foreach (var action in actions)
        {
            foreach (var window in windows)
            {
                if (IsOn(window, action) != Verdict.No)
                    return action;
            }
        }

        return null;
    }

    // One filed before the notice is none on it; one filed inside the wait may be thrown out as brought too early.
    private static Verdict IsOn(StopPaymentAction.Window window, ActionFiled action)
    {
        var brought = DaySpan.Of(action.On)!.Value;
        return brought.Latest < window.On.Earliest ? Verdict.No
            : brought.Earliest < window.First.Latest ? Verdict.Open
            : Verdict.Yes;
    }

    /// <summary>Where bringing the action stands, over all the notices: each must be sued on after its own wait.</summary>
    public Standing StandingOf(IReadOnlyList<StopPaymentAction.Window> windows, IReadOnlyList<Reading> readings, bool endFirm,
        Standing without, StayedSuit? stay)
    {
        without = stay?.Unsued(without, facts.AsOf) ?? without;
        if (windows.Count == 0)
            return OnUnknownDay(readings, endFirm, without);
        Standing? all = null;
        foreach (var window in windows)
        {
            var one = StandingOf(window, readings, endFirm, without, stay);
            all = all is { } so && so != one ? Both(so, one) : one;
        }

        return all!.Value;
    }

    // Whether a notice whose day nobody knows was given long enough before the action is open.
    private Standing OnUnknownDay(IReadOnlyList<Reading> readings, bool endFirm, Standing without)
    {
        foreach (var action in actions)
        {
            if ((Ended(action) ?? Deadline.StandingOf(facts.AsOf, readings, DaySpan.Of(action.On), endFirm)) != Standing.Lost)
                return Standing.InDoubt;
        }

        return without;
    }

    private static Standing Both(Standing a, Standing b) => (a, b) switch
    {
        (Standing.Kept, Standing.Done) or (Standing.Done, Standing.Kept) => Standing.Kept,
        _ => Standing.InDoubt,
    };

    private Standing StandingOf(StopPaymentAction.Window window, IReadOnlyList<Reading> readings, bool endFirm, Standing without,
        StayedSuit? stay)
    {
        var best = without;
        foreach (var action in actions)
        {
            var on = IsOn(window, action);
            if (on == Verdict.No)
                continue;
            var standing = Ended(action) ?? Brought(window, action, on, readings, endFirm, stay);
            switch (standing)
            {
                case Standing.Kept or Standing.Done:
                    return standing;
                case Standing.InDoubt:
                    best = standing;
                    break;
                case Standing.Lost when Ended(action) is not null && best != Standing.InDoubt:
                    best = standing;
                    break;
                default:
                    break;
            }
        }

        return best;
    }

    private Standing Brought(StopPaymentAction.Window window, ActionFiled action, Verdict on, IReadOnlyList<Reading> readings, bool endFirm,
        StayedSuit? stay)
    {
        var brought = DaySpan.Of(action.On)!.Value;
        var standing = Deadline.StandingOf(facts.AsOf, readings, brought, endFirm);
        standing = stay?.Brought(standing, brought) ?? standing;
        return standing == Standing.Kept && (on != Verdict.Yes || !window.IsSure || !SuesAll(window, action)) ? Standing.InDoubt : standing;
    }

    /// <summary>On public works the entity and the direct contractor are sued both; on private works the one who holds the money.</summary>
    [Rule("Civ. Code § 9502(b)")]
    [Rule("Civ. Code § 8550(b)")]
    private bool SuesAll(StopPaymentAction.Window window, ActionFiled action)
    {
        if (action.Against.Count == 0)
            return true;
        if (ReferenceEquals(law, StopPaymentLaw.Public))
            return Sues(action, PartyCapacity.PublicEntity) && Sues(action, PartyCapacity.DirectContractor);
        foreach (var holder in window.To)
        {
            var named = holder.IsLender ? holder.IsReachedBy(action.Against) : Sues(action, PartyCapacity.Owner);
            if (!named)
                return false;
        }

        return true;
    }

    private bool Sues(ActionFiled action, PartyCapacity capacity)
    {
        foreach (var id in action.Against)
        {
            if (facts.Job.Party(id)?.Capacity == capacity)
                return true;
        }

        return false;
    }

    /// <summary>
    /// A notice ceases to be effective when the action on it is dismissed, unless expressly without prejudice, or is lost.
    /// </summary>
    [Rule("Civ. Code § 8556")]
    [Rule("Civ. Code § 9510")]
    private Standing? Ended(ActionFiled action)
    {
        if (OwnAction.EndOf(facts, action, orders: false, out var surely) is not { } end)
            return null;
        return !surely ? Standing.InDoubt : end.How switch
        {
            ActionEnd.Won or ActionEnd.Settled => Standing.Done,
            ActionEnd.LostAtTrial => Standing.Lost,
            ActionEnd.Dismissed => end.WithoutPrejudice == false ? Standing.Lost : Standing.InDoubt,
            _ => throw new InvalidOperationException($"No such end: {end.How}."),
        };
    }

    /// <summary>What is said of the actions.</summary>
    public IEnumerable<Reason> Why(IReadOnlyList<StopPaymentAction.Window> windows)
    {
        foreach (var action in facts.All<ActionFiled>())
        {
            if (DaySpan.Of(action.On) is not { } brought || windows.Count == 0)
                continue;
            if (!actions.Contains(action))
            {
                yield return Reason.NotApplied(law.Last, $"The action filed {brought} is not on a stop payment notice.", action);
                continue;
            }

            foreach (var window in windows)
            {
                yield return IsOn(window, action) switch
                {
                    Verdict.No =>
                        Reason.NotApplied(law.First, $"The action filed {brought} was filed before the notice to "
                            + $"the {window.Words} was given; it is none on it.", action),
                    Verdict.Open =>
                        Reason.Of(law.First, $"Action filed {brought}, when {window.Wait.Spelled} from giving the notice to "
                            + $"the {window.Words} had not surely passed: it may be thrown out as brought too early. One brought after "
                            + $"them removes the doubt.", [action]),
                    _ when !SuesAll(window, action) =>
                        Reason.Of(law.Last, $"Action filed {brought}, but not against all who must be "
                            + $"sued: {(ReferenceEquals(law, StopPaymentLaw.Public)
                                ? "the public entity and the direct contractor" : "the " + window.Words)}. Join them in time.", [action]),
                    _ => Reason.Of(law.Last, $"Action filed {brought}; it counts here if it is on the stop payment notice too.", [action]),
                };
            }

            if (OwnAction.EndOf(facts, action, orders: false, out var surely) is { } end && Ended(action) is { } standing)
            {
                if (!surely)
                {
                    yield return Reason.Of(law.Ends, $"An action ended {DaySpan.Of(end.On)}, and the file does not say which of several: "
                        + $"it may be this one.", [end]);
                    continue;
                }

                yield return standing switch
                {
                    Standing.Done =>
                        Reason.Of(law.Ends, $"The action ended {DaySpan.Of(end.On)} in the claimant's favor, or was settled.", [end]),
                    Standing.Lost =>
                        Reason.Of(law.Ends, $"The action ended {DaySpan.Of(end.On)} against the claimant, or was dismissed and not without "
                            + $"prejudice: the notice ceases to be effective, and the money is released.", [end]),
                    _ => Reason.Of(law.Ends, $"The action was dismissed {DaySpan.Of(end.On)}. That ends the notice unless the order "
                        + $"expressly says without prejudice; if it does, the notice holds, and a new action must be in time.", [end]),
                };
            }
        }
    }

    /// <summary>What the file leaves open.</summary>
    public List<Question> Questions()
    {
        var questions = new List<Question>();
        foreach (var action in actions)
        {
            if (action.Enforces.Count == 0)
                questions.Add(new Question($"Is the action on the stop payment notice too?{ClaimKinds.ActionFiled.At("enforces"):aside}") {
                    Corrects = action });
            if (action.Against.Count == 0)
                questions.Add(new Question(ReferenceEquals(law, StopPaymentLaw.Public)
                    ? (Sentence)$"Were the public entity and the direct contractor both sued?{ClaimKinds.ActionFiled.At("against"):aside}"
                    : $"Was everyone sued who holds money on a stop payment notice?{ClaimKinds.ActionFiled.At("against"):aside}") {
                    Corrects = action });
            var end = OwnAction.EndOf(facts, action, orders: false, out var surely);
            if (end is not null && !surely)
                questions.Add(new Question($"Which action was it that ended?{ClaimKinds.ActionEnded.At("of"):aside}") { Corrects = end });
            if (end is { How: ActionEnd.Dismissed, WithoutPrejudice: null })
                questions.Add(
                    new Question($"Does the order of dismissal say that it is without "
                        + $"prejudice?{ClaimKinds.ActionEnded.At("withoutPrejudice"):aside}") { Corrects = end });
        }

        return questions;
    }
}
