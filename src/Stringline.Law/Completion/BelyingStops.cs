using Stringline.Law.Counting;
using Stringline.Law.Facts;

namespace Stringline.Law.Completion;

/// <summary>
/// Finds, for each stop of labor, the first other one that tells of labor in it: labor stopped again within the idle days, or was resumed
/// after another stop. A file may hold thousands, so none is looked for by going through all.
/// </summary>
internal sealed class BelyingStops
{
    private readonly IReadOnlyList<LaborCeased> all;

    // Of the stops whose day is known: their places, and the latest day of each and all before it.
    private readonly List<int> known = [];
    private readonly List<LocalDate> latestSoFar = [];

    // Of the stops after which labor was resumed: the days, earliest first, and for each the first place among them and the 2^n - 1 that
    // follow.
    private readonly LocalDate[] resumed;
    private readonly List<int[]> firstPlace = [];

    /// <summary>Puts the stops in order.</summary>
    /// <param name="all">The stops, earliest first.</param>
    public BelyingStops(IReadOnlyList<LaborCeased> all)
    {
        this.all = all;
        var back = new List<(LocalDate Day, int Place)>();
        for (var i = 0; i < all.Count; i++)
        {
            if (DaySpan.Of(all[i].On) is not { } on)
                continue;
            latestSoFar.Add(latestSoFar.Count == 0 ? on.Latest : LocalDate.Max(latestSoFar[^1], on.Latest));
            known.Add(i);
            if (all[i].Until is { } until)
                back.Add((until, i));
        }

        back.Sort();
        resumed = [.. back.Select(b => b.Day)];
        int[] places = [.. back.Select(b => b.Place)];
        for (var width = 1; places.Length > 0; width *= 2)
        {
            firstPlace.Add(places);
            if (2 * width > resumed.Length)
                break;
            var half = places;
            places = [.. Enumerable.Range(0, resumed.Length - (2 * width) + 1).Select(i => Math.Min(half[i], half[i + width]))];
        }
    }

    /// <summary>The first stop that tells of labor in one; null where none does.</summary>
    /// <param name="place">The place of the one.</param>
    /// <param name="last">Its day.</param>
    /// <param name="end">The last day on which labor tells against it.</param>
    public LaborCeased? Of(int place, DaySpan last, LocalDate end)
    {
        var found = Math.Min(StoppedAgain(place, last.Earliest, end),
            Resumed(all[place].Until is { } own ? LocalDate.Min(own.PlusDays(-1), end) : end, last.Earliest));
        return found < all.Count ? all[found] : null;
    }

    // The first that began in the stop. They stand in the order of their earliest days, so the first that may have been after its beginning
    // tells.
    private int StoppedAgain(int place, LocalDate after, LocalDate end)
    {
        var at = FirstAbove(latestSoFar, after);
        if (at < known.Count && known[at] == place)
            at++;
        if (at == known.Count)
            return all.Count;
        var again = all[known[at]].On;
        return again.Latest > after && again.Earliest <= end && !(again.Earliest >= all[place].Until) ? known[at] : all.Count;
    }

    // The first after which labor was resumed in the stop.
    private int Resumed(LocalDate upTo, LocalDate after)
    {
        var (from, to) = (FirstAbove(resumed, after), FirstAbove(resumed, upTo));
        if (from >= to)
            return all.Count;
        var level = int.Log2(to - from);
        return Math.Min(firstPlace[level][from], firstPlace[level][to - (1 << level)]);
    }

    private static int FirstAbove(IReadOnlyList<LocalDate> ascending, LocalDate day) =>
        Bisection.First(ascending.Count, place => ascending[place] > day);
}
