using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;

namespace Stringline.Law.Completion;

/// <summary>A stop of labor on the whole work (Civ. Code § 8180(a)(2) to (4)).</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Last">The last day of labor.</param>
/// <param name="Resumed">The day labor resumed; null while it is stopped.</param>
/// <param name="OwnLabor">An entry by which the claimant itself worked during the days that complete the work; null where none did.</param>
public sealed record LaborStop(LaborCeased Entry, DaySpan Last, LocalDate? Resumed, Furnished? OwnLabor)
{
    /// <summary>How many continuous days without labor complete the work.</summary>
    [Rule("Civ. Code § 8180(a)(3)")]
    [Rule("Civ. Code § 9200(b)")]
    internal static Number ToComplete(FactsAsOf facts) =>
        facts.Job.Work.Kind == WorkKind.Public ? Number.PublicIdleDays : Number.IdleDays;

    /// <summary>After how many continuous days without labor a notice of cessation may be recorded.</summary>
    [Rule("Civ. Code § 8188(a)")]
    [Rule("Civ. Code § 9202(a)")]
    internal static Number ToRecordCessation(FactsAsOf facts) =>
        facts.Job.Work.Kind == WorkKind.Public ? Number.PublicIdleDaysBeforeNotice : Number.IdleDaysBeforeNotice;

    // The day on which the idle days are over, if labor does not resume.
    private DaySpan Over { get; init; }

    /// <summary>The stops of the file whose day is known, earliest first.</summary>
    public static IReadOnlyList<LaborStop> Of(FactsAsOf facts) => facts.Once(Found);

    private static List<LaborStop> Found(FactsAsOf facts)
    {
        var ceased = facts.All<LaborCeased>();
        if (ceased.Count == 0)
            return [];
        var stops = new List<LaborStop>(ceased.Count);
        var belying = new BelyingStops(ceased);
        var idle = ToComplete(facts);
        for (var i = 0; i < ceased.Count; i++)
        {
            if (DaySpan.Of(ceased[i].On) is not { } last)
                continue;
            var over = last.LastDay(facts.Numbers, idle);
            stops.Add(new LaborStop(ceased[i], last, ceased[i].Until, LaborBetween(facts, last, over.Latest, ceased[i].Until))
            {
                Over = over,
                Against = belying.Of(i, last, over.Latest),
            });
        }

        return stops;
    }

    /// <summary>
    /// Another stop of the file, by which there was labor within the days that complete the work; null where none says so.
    /// </summary>
    public LaborCeased? Against { get; private init; }

    /// <summary>
    /// Whether every stop left the work unfinished, so that it cannot have been complete on the day on which labor stopped.
    /// </summary>
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
    public DaySpan? CompletesOn => Resumed is { } resumed && resumed <= Over.Earliest ? null : Over;

    /// <summary>
    /// The sixtieth day after the claimant's own last labor in a stop that it worked in; null where labor resumed before.
    /// </summary>
    [Rule("Civ. Code § 8180(a)(3)")]
    internal DaySpan? CompletesAfterOwnLabor(FactsAsOf facts)
    {
        var idle = ToComplete(facts);
        var last = Last;
        foreach (var furnished in facts.Furnished)
        {
            if (furnished.On.Earliest <= last.LastDay(facts.Numbers, idle).Latest && !(furnished.On.Earliest >= Resumed)
                && DaySpan.Of(furnished.Until) is { } until)
                last = DaySpan.Later(last, until);
        }

        var day = last.LastDay(facts.Numbers, idle);
        return Resumed <= day.Earliest ? null : day;
    }

    /// <summary>An entry by which the claimant itself worked after the stop and by a day; null where none did.</summary>
    internal Furnished? OwnLaborBy(FactsAsOf facts, LocalDate day) =>
        LaborBetween(facts, Last, day, Resumed);

    // A supplier's delivery is no labor; a contractor's or laborer's own work is.
    private static Furnished? LaborBetween(FactsAsOf facts, DaySpan last, LocalDate end, LocalDate? resumed)
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
