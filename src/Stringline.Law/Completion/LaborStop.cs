using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Completion;

/// <summary>A stop of labor on the whole work (Civ. Code § 8180(a)(2) to (4)).</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Last">The last day of labor.</param>
/// <param name="Resumed">The day labor resumed; null while it is stopped.</param>
/// <param name="OwnLabor">An entry by which the claimant itself worked during the first 60 days of the stop; null where none did.</param>
public sealed record LaborStop(LaborCeased Entry, Days Last, LocalDate? Resumed, Furnished? OwnLabor)
{
    /// <summary>Continuous days without labor that complete the work.</summary>
    public const int IdleDays = 60;

    /// <summary>Continuous days without labor after which a notice of cessation may be recorded.</summary>
    public const int IdleDaysBeforeNotice = 30;

    /// <summary>The stops of the file whose day is known, earliest first.</summary>
    public static IReadOnlyList<LaborStop> Of(FactsAsOf facts) => facts.Stops ??= Found(facts);

    private static List<LaborStop> Found(FactsAsOf facts)
    {
        var ceased = facts.All<LaborCeased>();
        if (ceased.Count == 0)
            return [];
        var stops = new List<LaborStop>(ceased.Count);
        var belying = new BelyingStops(ceased);
        for (var i = 0; i < ceased.Count; i++)
        {
            if (Days.Of(ceased[i].On) is { } last)
                stops.Add(new LaborStop(ceased[i], last, ceased[i].Until, LaborDuring(facts, last, ceased[i].Until)) { Against = belying.Of(i, last) });
        }

        return stops;
    }

    /// <summary>Another stop of the file, by which there was labor within the first 60 days of this one; null where none says so.</summary>
    public LaborCeased? Against { get; private init; }

    /// <summary>Whether every stop left the work unfinished, so that it cannot have been complete on the day on which labor stopped.</summary>
    public static bool AllLeftItUnfinished(IReadOnlyList<LaborStop> stops)
    {
        foreach (var stop in stops)
        {
            if (stop.Entry.Unfinished != true)
                return false;
        }

        return stops.Count > 0;
    }

    /// <summary>The sixtieth continuous day without labor, if labor did not resume before it is over.</summary>
    [Rule("Civ. Code § 8180(a)(3)")]
    public Days? SixtiethDay
    {
        get
        {
            var day = Last.Plus(IdleDays);
            return Resumed is { } resumed && resumed <= day.Earliest ? null : day;
        }
    }

    /// <summary>The sixtieth day after the claimant's own last labor in a stop that it worked in; null where labor resumed before.</summary>
    [Rule("Civ. Code § 8180(a)(3)")]
    internal Days? SixtiethAfterOwnLabor(FactsAsOf facts)
    {
        var last = Last;
        foreach (var furnished in facts.Furnished)
        {
            if (furnished.On.Earliest <= last.Latest.PlusDays(IdleDays) && !(furnished.On.Earliest >= Resumed) && Days.Of(furnished.Until) is { } until)
                last = Days.Later(last, until);
        }

        var day = last.Plus(IdleDays);
        return Resumed <= day.Earliest ? null : day;
    }

    /// <summary>An entry by which the claimant itself worked after the stop and by a day; null where none did.</summary>
    internal Furnished? OwnLaborBy(FactsAsOf facts, LocalDate day) =>
        LaborBetween(facts, Last, day, Resumed);

    // A supplier's delivery is no labor; a contractor's or laborer's own work is.
    private static Furnished? LaborDuring(FactsAsOf facts, Days last, LocalDate? resumed) =>
        LaborBetween(facts, last, last.Latest.PlusDays(IdleDays), resumed);

    private static Furnished? LaborBetween(FactsAsOf facts, Days last, LocalDate end, LocalDate? resumed)
    {
        if (!facts.FurnishesLabor)
            return null;
        foreach (var furnished in facts.Furnished)
        {
            // On some day of a doubt it may have come after the stop, and then it speaks against it.
            if (furnished.Until.Latest > last.Earliest && furnished.On.Earliest <= end
                && (resumed is not { } again || furnished.On.Earliest < again))
            {
                return furnished;
            }
        }

        return null;
    }
}
