using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Bankruptcy;

/// <summary>An action to pay money, against one who was in bankruptcy on some day of the time to bring it.</summary>
/// <param name="Stay">The stay.</param>
/// <param name="From">The first day from which the time can run.</param>
/// <param name="LastEnd">The last day to sue without the stay, on the latest reading, every argument for a roll included.</param>
internal sealed record StayedSuit(Stay Stay, LocalDate From, LocalDate LastEnd)
{
    /// <summary>The first of those to be sued who was in bankruptcy in the time to sue; null where none was.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="sued">Those to be sued.</param>
    /// <param name="from">The first day from which the time can run.</param>
    /// <param name="readings">Readings of the last day to sue.</param>
    public static StayedSuit? Of(FactsAsOf facts, IReadOnlyList<Party> sued, LocalDate from, IReadOnlyList<Reading> readings)
    {
        if (readings.Count == 0)
            return null;
        var lastEnd = LocalDate.MinIsoValue;
        foreach (var reading in readings)
            lastEnd = LocalDate.Max(lastEnd, reading.Rolled ?? reading.Day);
        foreach (var party in sued)
        {
            if (Stay.OfParty(facts, party, from, lastEnd) is { } stay)
                return new StayedSuit(stay, from, lastEnd);
        }

        return null;
    }

    /// <summary>Where bringing it stands while none is brought that counts: not lost as long as the time may have stood still.</summary>
    public Standing Unsued(Standing standing, LocalDate asOf) =>
        standing == Standing.Lost && Stay.MayStillRun(From, LastEnd, asOf) ? Standing.InDoubt : standing;

    /// <summary>Where an action stands by the day on which it was brought: void in the stay, and perhaps in time after it.</summary>
    public Standing Brought(Standing standing, DaySpan brought) => standing switch
    {
        Standing.Kept when Stay.MayHold(brought) => Standing.InDoubt,
        Standing.Lost when Stay.MayStillRun(From, LastEnd, brought.Earliest) => Standing.InDoubt,
        _ => standing,
    };

    /// <summary>Adds the last day to sue if the time stood still, where the action is not settled.</summary>
    public void AddTo(List<Reading> readings, Standing standing)
    {
        if (standing is not (Standing.Kept or Standing.Done) && Stay.LastDay(From, LastEnd) is { } later && later > LastEnd)
            readings.Add(new Reading($"if the time stood still in the bankruptcy", later));
    }

    /// <summary>Whether no end of the time is known.</summary>
    public bool HasNoEnd => Stay.Until is null;

    /// <summary>What the stay means for an action to pay money.</summary>
    [Rule("11 U.S.C. § 362(a)", Sure = Sure.FromMemory)]
    [Rule("11 U.S.C. § 108(c)", Sure = Sure.FromMemory)]
    public Reason Why => Stay.Until is { } until
        ? Reason.Of("11 U.S.C. § 108(c)", $"{Stay.Debtor.Name} was in bankruptcy from {Stay.Since} to {until}. A suit filed against it in "
            + $"the stay is void (11 U.S.C. § 362(a), from memory); the time to sue it may have stood still (Code Civ. Proc. § 356), and "
            + $"did not end sooner than {Stay.AfterTheStay} after notice that the stay had ended (from memory).")
        : Reason.Of("11 U.S.C. § 362(a)", $"Do not sue {Stay.Debtor.Name}: it is in bankruptcy since {Stay.Since}, and a suit against it "
            + $"is void and breaks the stay (from memory). Within the time to sue file the claim in its bankruptcy and ask there for "
            + $"relief from the stay; the time may stand still (Code Civ. Proc. § 356), and does not end sooner "
            + $"than {Stay.AfterTheStay} after notice that the stay has ended (11 U.S.C. § 108(c), from memory). Whoever else is to be "
            + $"sued is sued in time all the same.");

    /// <summary>
    /// The finding that the only one to be sued is in bankruptcy now, so that no action is brought at all; null where the stay is over or
    /// the action settled.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="id">Stable id.</param>
    /// <param name="action">The last day to sue.</param>
    public Finding? Instead(FactsAsOf facts, string id, Deadline action) =>
        !Stay.IsOn(facts.AsOf) || action.Standing is not (Standing.Open or Standing.InDoubt) ? null
            : action.Finding(id, "Do not sue: claim and relief from the stay in the bankruptcy", [Why]);

    /// <summary>Asks whether there was a bankruptcy, where the time to sue is over.</summary>
    public static Question Ask(string whom) =>
        new($"Was {whom} in bankruptcy on some day of the time to sue? Then the action may not be "
            + $"lost.{HeadField.PartiesBankruptSince:aside}");
}
