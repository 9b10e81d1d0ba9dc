using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// One way in which everything that the file or the law leaves open may turn out. A remedy is read in one world at a time, with every day
/// known; what is asked for the first time is chosen, and the next world makes the next choice, until all have been made.
/// </summary>
internal sealed class World(Matter matter)
{
    // Far more worlds than a file of the generator makes; a file that needs more is given up and counted.
    public const int Most = 4000;

    private readonly List<(string What, int Which, int Choice)> made = [];

    private readonly List<(int Choice, int Of)> path = [];

    public Matter Matter { get; } = matter;

    public JobFile Job => Matter.Job;

    public LocalDate AsOf => Matter.AsOf;

    /// <summary>Whether the license is lost on every reading: then every remedy is (Bus. &amp; Prof. Code § 7031(a), (c)).</summary>
    public bool LicenseLost => Matter.LicenseLost;

    /// <summary>Reads a remedy in every world.</summary>
    public Reading Everywhere(Func<World, Answer> remedy)
    {
        var reading = new Reading();
        path.Clear();
        do
        {
            made.Clear();
            reading.Add(remedy(this), AsOf);
            reading.GaveUp = reading.Worlds > Most;
        }
        while (!reading.GaveUp && ToNext());
        return reading;
    }

    /// <summary>What was chosen in the world read last, for one who has to understand an answer.</summary>
    public string Chosen => string.Join("; ", made.Select(m => $"{m.What} {m.Which}: {m.Choice}"));

    private bool ToNext()
    {
        while (path.Count > 0)
        {
            var (choice, of) = path[^1];
            if (choice + 1 < of)
            {
                path[^1] = (choice + 1, of);
                return true;
            }

            path.RemoveAt(path.Count - 1);
        }

        return false;
    }

    /// <summary>One of several ways; the same question has the same answer all through a world.</summary>
    public int Choose(string what, int which, int ways)
    {
        foreach (var (asked, of, choice) in made)
        {
            if (of == which && ReferenceEquals(asked, what))
                return choice;
        }

        if (made.Count == path.Count)
            path.Add((0, ways));
        var chosen = path[made.Count].Choice;
        made.Add((what, which, chosen));
        return chosen;
    }

    /// <summary>A question that a court, or a fact not told, may answer either way.</summary>
    public bool Either(string what, int which = -1) => favoring || Choose(what, which, 2) == 0;

    private bool favoring;

    /// <summary>
    /// Reads a condition that has a row of its own, where its doubts are told: here each is taken as it is best for the claimant, so
    /// that only what is surely
    /// wrong counts. Days in doubt stay in doubt.
    /// </summary>
    public T AtBest<T>(Func<World, T> condition)
    {
        var before = favoring;
        favoring = true;
        try
        {
            return condition(this);
        }
        finally
        {
            favoring = before;
        }
    }

    /// <summary>The fact as told; where it is not, either way.</summary>
    public bool Told(bool? fact, string what, int which = -1) => fact ?? Either(what, which);

    /// <summary>The day of an entry.</summary>
    public LocalDate On(Entry entry) => Day(entry.On, "on", entry.Index);

    /// <summary>The last day of a span of work.</summary>
    public LocalDate Until(Furnished work)
    {
        if (work.Until is DayFact.Exact(var day))
            return day;

        // A span whose two ends are one doubtful day is one day.
        return work.Until == work.On ? On(work) : Later(Day(work.Until, "until", work.Index), On(work));
    }

    private LocalDate Day(DayFact fact, string what, int which)
    {
        switch (fact)
        {
            case DayFact.Exact(var day):
                return day;
            case DayFact.Between between:
                var days = NodaTime.Period.DaysBetween(between.First, between.Last);
                return between.First.PlusDays(Choose(what, which, days + 1));
            default:
                return AsOf.PlusDays(-Back[Choose(what, which, Back.Length)]);
        }
    }

    // An unknown day is tried on these days before the day asked: near ones, those that the periods of the Code make, and one far back.
    private static readonly int[] Back = [0, 5, 12, 18, 25, 35, 50, 70, 85, 100, 130, 170, 200, 1000];

    public static LocalDate Later(LocalDate a, LocalDate b) => a > b ? a : b;

    public static LocalDate? Earlier(LocalDate? a, LocalDate? b) => a is { } x && b is { } y ? (x < y ? x : y) : a ?? b;

    public static LocalDate? Later(LocalDate? a, LocalDate? b) => a is { } x && b is { } y ? (x > y ? x : y) : a ?? b;

    /// <summary>
    /// Whether an act of that day was in time for a last day (Civ. Code § 10; Code Civ. Proc. §§ 12, 12a): on it, or on the roll; where
    /// only one list rolls, either way.
    /// </summary>
    public bool InTime(LocalDate act, LocalDate last, string what, int which = -1) =>
        act <= last || act <= PlainCalendar.RolledForCourts(last) || (act <= PlainCalendar.RolledOnAnyList(last) && Either(what, which));

    /// <summary>Whether the time has run out on the day asked. While a roll may still save it, either way.</summary>
    public bool IsOver(LocalDate last, string what, int which = -1) =>
        AsOf > last && (AsOf > PlainCalendar.RolledOnAnyList(last) || (!favoring && Either(what, which)));

    /// <summary>Whether one act came before another; of two on one day the right order is taken to have been kept.</summary>
    public static bool Before(LocalDate first, LocalDate second) => first <= second;
}
