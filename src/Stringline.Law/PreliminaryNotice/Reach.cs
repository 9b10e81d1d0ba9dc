using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>What a preliminary notice, or its lack, leaves within reach of a claim of lien.</summary>
public enum ReachKind
{
    /// <summary>No notice is due from this claimant: all its work is within reach.</summary>
    NoneDue,

    /// <summary>Notice was given in time: all its work is within reach.</summary>
    Whole,

    /// <summary>Notice was given late: only work within the 20 days before it and afterwards is within reach.</summary>
    Late,

    /// <summary>Notice is due and was not given to a person without whom there is no lien.</summary>
    NotGiven,
}

/// <summary>How far back the claim of lien reaches (Civ. Code § 8204(a)).</summary>
/// <param name="Kind">Which case.</param>
/// <param name="From">
/// The day from which work is covered. For <see cref="ReachKind.NotGiven"/> the day that a notice given on the day of asking
/// would reach back to; null for <see cref="ReachKind.NoneDue"/>.
/// </param>
/// <param name="Given">The day notice was complete toward the owner and the direct contractor; null where it was not.</param>
/// <param name="Missing">Recipients not reached.</param>
/// <param name="InTimeByRollOnly">Whether the notice is in time only because a last day that is a holiday is left out (Civ. Code § 10; Code
/// Civ. Proc. § 12a).</param>
public sealed record Reach(ReachKind Kind, DaySpan? From, DaySpan? Given, IReadOnlyList<Recipient> Missing, bool InTimeByRollOnly)
{
    /// <summary>Nothing is left out: no notice is due, or what is asked for has no notice as a condition.</summary>
    public static Reach Everything { get; } = new(ReachKind.NoneDue, null, null, [], false);

    /// <summary>What was given to each to whom notice is due; empty where none is.</summary>
    public IReadOnlyList<RecipientReach> Each { get; init; } = [];

    /// <summary>What was given to lenders who came to be known only after the claimant's first day: no condition of the lien.</summary>
    public IReadOnlyList<RecipientReach> Later { get; init; } = [];

    /// <summary>Whether, though late by one end of a day in doubt, it may be in time by the other, and then covers everything.</summary>
    public bool MayBeInTime { get; init; }

    /// <summary>
    /// Whether a notice that was given may not count toward somebody, or reaches less far back toward a lender than toward the owner.
    /// </summary>
    public bool IsInDoubt { get; init; }

    /// <summary>
    /// The doubt with which a notice given on the day of asking covers everything furnished; null where that time is over.
    /// </summary>
    public NoticeDoubt? IfGivenToday { get; init; }

    /// <summary>
    /// The day by which the whole work was surely complete, so that nothing was furnished after it; null where none is sure.
    /// </summary>
    public LocalDate? Complete { get; init; }

    /// <summary>
    /// Whether each who was told late or not at all may have been told in time by a notice whose day nobody knows: then nothing is surely
    /// lost for want of notice.
    /// </summary>
    public bool MayHaveBeenGiven
    {
        get
        {
            var unknown = false;
            foreach (var each in Each)
            {
                if (each.Kind == ReachKind.Whole || !IsCondition(each))
                    continue;
                if (each.OnUnknownDay is null && each.Kind == ReachKind.NotGiven)
                    return false;
                unknown |= each.OnUnknownDay is not null;
            }

            return unknown;
        }
    }

    /// <summary>
    /// Whether the right surely hangs on notice to one of them: on private work on the owner's, and on the lenders' where nobody else is
    /// told; on public work on each.
    /// </summary>
    internal bool IsCondition(RecipientReach each) => Each[0].To.Who != PartyCapacity.Owner || each.To.Who == PartyCapacity.Owner;

    /// <summary>Whether everyone to whom notice is due was surely given it, and as far back as this reach goes.</summary>
    public bool GivenToAll => Kind == ReachKind.NoneDue || (Kind != ReachKind.NotGiven && Missing.Count == 0 && !IsInDoubt);

    /// <summary>
    /// The reach toward one party, such as a construction lender told on another day than the owner; this one where no notice is due to it.
    /// </summary>
    public Reach Toward(Party party) => Among(Each, party) ?? Among(Later, party) ?? this;

    private Reach? Among(IReadOnlyList<RecipientReach> recipients, Party party)
    {
        foreach (var reached in recipients)
        {
            if (reached.To.AnyOf.Contains(party))
            {
                return new Reach(reached.Kind, reached.From, reached.Given, reached.Kind == ReachKind.NotGiven
                    ? [reached.To] : [], reached.Doubt.HasFlag(NoticeDoubt.ByRoll))
                {
                    Each = [reached],
                    Complete = Complete,
                    MayBeInTime = reached.MayBeInTime,
                    IsInDoubt = reached.Kind != ReachKind.NotGiven && reached.Doubt != NoticeDoubt.None,
                };
            }
        }

        return null;
    }

    /// <summary>How far a notice reaches back. Never rolled: there is no act to do on the day reached.</summary>
    [Rule("Civ. Code § 8204(a)")]
    [Rule("Civ. Code § 9304")]
    internal static NumberRow LookBack(FactsAsOf facts, LocalDate given) =>
        facts.Numbers.On(facts.Job.Work.Kind == WorkKind.Public ? Number.PublicNoticeLookBack : Number.NoticeLookBack, given);

    /// <summary>The first day that a notice reaches, by each end of its own day.</summary>
    internal static DaySpan ReachedBy(FactsAsOf facts, DaySpan given)
    {
        var (first, last) =
            (LookBack(facts, given.Earliest).LookBack(given.Earliest), LookBack(facts, given.Latest).LookBack(given.Latest));
        return new DaySpan(LocalDate.Min(first, last), LocalDate.Max(first, last));
    }

    /// <summary>Whether work furnished no earlier than a day is surely within reach.</summary>
    public bool CertainlyCovers(LocalDate? earliestDay) => Kind switch
    {
        ReachKind.NoneDue or ReachKind.Whole => true,
        ReachKind.Late or ReachKind.NotGiven => earliestDay is { } day && From is { } from && day >= from.Latest,
        _ => throw new InvalidOperationException($"No such reach: {Kind}."),
    };

    /// <summary>Whether work furnished no later than a day may be within reach on some reading of the days in doubt.</summary>
    public bool PossiblyCovers(LocalDate? latestDay) => Kind switch
    {
        ReachKind.NoneDue or ReachKind.Whole => true,
        ReachKind.Late or ReachKind.NotGiven => latestDay is not { } day || (From is { } from && day >= from.Earliest),
        _ => throw new InvalidOperationException($"No such reach: {Kind}."),
    };
}
