using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>The recorded claims that are in force, each with its own action: the right is the best of them.</summary>
public sealed class ClaimSuits
{
    private readonly ClaimSuit[] chain;

    private ClaimSuits(ClaimRecorded? counts, Verdict released, ClaimSuit[] chain, ClaimSuit? leading)
    {
        Counts = counts;
        Released = released;
        this.chain = chain;
        Leading = leading;
    }

    /// <summary>The recorded claim that counts; null where there is none.</summary>
    public ClaimRecorded? Counts { get; }

    /// <summary>Whether the claim that counts has been released.</summary>
    public Verdict Released { get; }

    /// <summary>
    /// The claim on which the right rests now: the one sued on, else the earliest that still runs. Null where none is in force.
    /// </summary>
    internal ClaimSuit? Leading { get; }

    /// <summary>Whether the claim on which the right rests is itself surely good: the one sued on; while none is, any of them.</summary>
    internal bool IsOnGoodClaim { get; private init; } = true;

    /// <summary>The claims that still matter, earliest first: a claim that had expired before the next was recorded is left out.</summary>
    internal IReadOnlyList<ClaimSuit> Chain => chain;

    /// <summary>
    /// The recorded claims, released ones left out, that may not count: an action that names none of several may be on one of them.
    /// </summary>
    internal IReadOnlyList<ClaimRecorded> Unsure { get; private init; } = [];

    /// <summary>
    /// The claim that keeps the right by its recording: the one that is sued on where that one may not count, for its action keeps no
    /// other; else the one that counts.
    /// </summary>
    internal ClaimRecorded? Keeping => Leading is { Action: not null } leading && IsAmong(Unsure, leading) ? leading.Claim : Counts;

    /// <summary>The recorded claims without their actions.</summary>
    internal RecordedClaim.ClaimsOnRecord OnRecord => new(Counts, Keeping, Released);

    /// <summary>Whether the claim is one of several and may not count.</summary>
    internal bool IsUnsure(ClaimSuit suit) => IsAmong(Unsure, suit);

    /// <summary>Looks at every claim in force.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="counts">The recorded claim that counts.</param>
    /// <param name="firstDay">The first day to record.</param>
    /// <param name="lastDay">The last day to record.</param>
    /// <param name="calendar">The calendar.</param>
    public static ClaimSuits Of(FactsAsOf facts, ClaimRecorded? counts, FirstDay firstDay, LastDay lastDay, OpenDays calendar)
    {
        if (counts is null)
            return new ClaimSuits(null, RecordedClaim.IsReleased(facts, null), [], null);
        var unsure = RecordedClaim.Unsure(facts, firstDay, lastDay);
        var suits = Of(facts, counts, RecordedClaim.IsReleased(facts, counts), RecordedClaim.InForce(facts, firstDay, lastDay, counts),
            unsure, calendar);
        if (suits.Leading is not { } leading)
            return suits;
        foreach (var suit in suits.chain)
        {
            if ((leading.Action is null || suit == leading) && RecordedClaim.IsGood(facts, suit.Claim, firstDay, lastDay))
                return suits;
        }

        return new ClaimSuits(suits.Counts, suits.Released, suits.chain, leading) { IsOnGoodClaim = false, Unsure = suits.Unsure };
    }

    /// <summary>The same for claims that are known to be in force.</summary>
    internal static ClaimSuits Of(FactsAsOf facts, ClaimRecorded counts, Verdict released, IReadOnlyList<ClaimRecorded> inForce,
        IReadOnlyList<ClaimRecorded> unsure, OpenDays calendar,
        Number toSue = Number.SueOnClaim)
    {
        var suits = new List<ClaimSuit>(inForce.Count);
        foreach (var claim in inForce)
        {
            if (ClaimSuit.Of(facts, claim, toSue, unsure, calendar) is not { } suit)
                continue;
            suits.RemoveAll(before => HadExpired(facts, before, suit));
            suits.Add(suit);
        }

        ClaimSuit? leading = null;
        foreach (var suit in suits)
        {
            if (leading is null || (suit is { Action: not null, Standing: not Standing.Lost } && leading.Action is null)
                || (suit.IsSued && (!leading.IsSued || (IsAmong(unsure, leading) && !IsAmong(unsure, suit)))))
                leading = suit;
        }

        return new ClaimSuits(counts, released, [.. suits], leading) { Unsure = unsure };
    }

    private static bool IsAmong(IReadOnlyList<ClaimRecorded> claims, ClaimSuit suit)
    {
        foreach (var claim in claims)
        {
            if (ReferenceEquals(claim, suit.Claim))
                return true;
        }

        return false;
    }

    /// <summary>
    /// A claim that had expired before another was recorded concerns that one no more (Coast Central Credit Union v. Superior Court (1989)
    /// 209 Cal.App.3d 703), unless the later says that it amends it.
    /// </summary>
    [Rule("Civ. Code § 8460(a)", Sure = Sure.Opinion)]
    private static bool HadExpired(FactsAsOf facts, ClaimSuit before, ClaimSuit later) =>
        before.Standing == Standing.Lost && before.LastEnd < later.Recorded.Earliest
        && !(later.Claim.Amends is { } amended && facts.Names(amended, before.Claim));

    /// <summary>
    /// Where the time to sue stands over all of them. While an earlier claim is not released the owner will say that a later one is the
    /// same claim and that the time ran from the first: kept only by an action in the time of the first, lost only when the last is over.
    /// </summary>
    internal Standing StandingOn(LocalDate asOf)
    {
        var first = chain[0];
        if (chain.Length == 1 || first.Standing is Standing.Kept or Standing.Done)
            return first.Standing;
        var (allLost, sued) = (true, false);
        foreach (var suit in chain)
        {
            if (suit.Standing == Standing.Kept && suit.Action!.On.Latest <= first.FirstEnd)
                return Standing.Kept;
            allLost &= suit.Standing == Standing.Lost;
            sued |= suit.Action is not null;
        }

        return allLost ? Standing.Lost : asOf <= first.FirstEnd && !sued ? Standing.Open : Standing.InDoubt;
    }
}
