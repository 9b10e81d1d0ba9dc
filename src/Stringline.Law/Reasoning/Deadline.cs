using Stringline.Law.Counting;
using Stringline.Law.Numbers;

namespace Stringline.Law.Reasoning;

/// <summary>
/// A deadline of the claimant's own, as a rule works it out: no words but the names of the readings. A finding is made of it last. Two are
/// equal where their standings and days are and their readings are the same list.
/// </summary>
/// <param name="Standing">Where it stands.</param>
/// <param name="Readings">Every open reading of the last day, earliest first; may be empty.</param>
/// <param name="Band">The band over the readings; null where there is none.</param>
/// <param name="ActBy">The day to plan on; null where there is no reading.</param>
public readonly record struct Deadline(Standing Standing, IReadOnlyList<Reading> Readings, Band? Band, LocalDate? ActBy)
{
    /// <summary>A deadline with its band and its day to plan on.</summary>
    /// <param name="standing">Where it stands.</param>
    /// <param name="readings">Readings of the last day, in any order; may be empty.</param>
    /// <param name="calendar">The calendar.</param>
    /// <param name="endKnown">False where, on some reading, the time has not begun to run and no end is known.</param>
    public static Deadline Of(Standing standing, IReadOnlyList<Reading> readings, OpenDays calendar, bool endKnown = true)
    {
        var sorted = IsSorted(readings) ? readings : Sorted(readings);
        return sorted.Count == 0
            ? new Deadline(standing, sorted, null, null)
            : new Deadline(standing, sorted, BandOver(sorted, endKnown), ActByOf(sorted, calendar));
    }

    /// <summary>A deadline without a day.</summary>
    public static Deadline WithoutDay(Standing standing) => new(standing, [], null, null);

    /// <summary>The finding of it.</summary>
    /// <param name="id">Stable id.</param>
    /// <param name="title">What it is, in words.</param>
    /// <param name="why">The reasons.</param>
    /// <param name="questions">What the file does not answer.</param>
    public Finding Finding(string id, string title, IReadOnlyList<Reason> why, IReadOnlyList<Question>? questions = null) =>
        Finding(id, title, new Words(why, questions ?? []));

    /// <summary>The same, with reasons and questions that are put together when first read.</summary>
    internal Finding Finding(string id, string title, Func<IReadOnlyList<Reason>> explain, Func<IReadOnlyList<Question>>? ask = null) =>
        Finding(id, title, new Words(explain, ask));

    /// <summary>The same, in words that stand ready.</summary>
    internal Finding Finding(string id, string title, Words words) => new()
    {
        Id = id,
        Title = title,
        Standing = Standing,
        IsDeadline = true,
        Readings = Readings,
        Band = Band,
        ActBy = ActBy,
        Words = words,
    };

    /// <summary>
    /// A reading of a deadline of the claimant's own. The farthest roll that any list allows is shown beside it as an argument, never
    /// planned on: that of Code Civ. Proc. §§ 12a and 12b, and that of Civ. Code §§ 7 and 10 past a holiday on which only the courts sit.
    /// </summary>
    /// <param name="name">The reading.</param>
    /// <param name="lastDay">The statutory last day.</param>
    /// <param name="calendar">The calendar.</param>
    [Rule("Code Civ. Proc. § 12a")]
    [Rule("Code Civ. Proc. § 12b")]
    [Rule("Civ. Code § 7")]
    public static Reading Own(Sentence name, LocalDate lastDay, OpenDays calendar)
    {
        var rolled = calendar.RollForwardOnAnyList(lastDay);
        return new Reading(name, lastDay, rolled == lastDay ? null : rolled);
    }

    /// <summary>
    /// The readings of a period of months from a day: calendar months, and of six months 182 days where that gives another day
    /// (Gov. Code §§ 6803, 6804; Gonzales v. County of Los Angeles (1988) 199 Cal.App.3d 601 and Davis v. Thayer (1980) 113 Cal.App.3d 892
    /// differ).
    /// </summary>
    [Rule("Gov. Code § 6803")]
    [Rule("Gov. Code § 6804")]
    public static IEnumerable<Reading> Months(Sentence name, LocalDate trigger, NumberRow period, OpenDays calendar)
    {
        var months = period.LastDay(trigger);
        if (period.IsHalfYear && TimeLimit.LastDay(trigger, TimeLimit.HalfYearInDays) is var days && days != months)
            yield return Own($"{name}, counted as {TimeLimit.HalfYearInDays} days", days, calendar);
        yield return Own(name, months, calendar);
    }

    /// <summary>The day to plan on: the earliest reading's last day, moved back to a day that is open on every list.</summary>
    /// <param name="readings">At least one reading, in any order.</param>
    /// <param name="calendar">The calendar.</param>
    [Rule("Civ. Code § 10", Sure = Sure.OurReading)]
    public static LocalDate ActByOf(IReadOnlyList<Reading> readings, OpenDays calendar)
    {
        return calendar.LastOpenDayOnOrBefore(Earliest(readings));
    }

    private static LocalDate Earliest(IReadOnlyList<Reading> readings)
    {
        var earliest = readings[0].Day;
        foreach (var reading in readings)
            earliest = LocalDate.Min(earliest, reading.Day);
        return earliest;
    }

    // A finding has a handful of readings, which are sooner looked through than hashed.
    private const int Few = 16;

    /// <summary>Sorts readings by day, then by name, and drops a reading said twice.</summary>
    public static List<Reading> Sorted(IEnumerable<Reading> readings)
    {
        var sorted = readings.TryGetNonEnumeratedCount(out var count) ? new List<Reading>(count) : [];
        HashSet<Reading>? many = null;
        foreach (var reading in readings)
        {
            if (sorted.Count == Few)
                many ??= [.. sorted];
            if (many?.Add(reading) ?? !sorted.Contains(reading))
                sorted.Add(reading);
        }

        sorted.Sort(InOrder);
        return sorted;
    }

    private static int InOrder(Reading a, Reading b) =>
        a.Day != b.Day ? a.Day.CompareTo(b.Day) : string.CompareOrdinal(a.Name, b.Name);

    private static bool IsSorted(IReadOnlyList<Reading> readings)
    {
        for (var i = 1; i < readings.Count; i++)
        {
            if (InOrder(readings[i - 1], readings[i]) >= 0)
                return false;
        }

        return true;
    }

    /// <summary>The band over sorted readings.</summary>
    /// <param name="sorted">Readings, earliest first; not empty.</param>
    /// <param name="endKnown">False where, on some reading, the time has not begun to run and no end is known.</param>
    public static Band BandOver(IReadOnlyList<Reading> sorted, bool endKnown = true) =>
        new(sorted[0], endKnown ? sorted[^1] : null);

    /// <summary>Where a deadline of the claimant's own stands.</summary>
    /// <param name="asOf">The day of asking.</param>
    /// <param name="readings">Readings of the last day; not empty, in any order.</param>
    /// <param name="done">The day on which the act was done; null where it was not.</param>
    /// <param name="endFirm">Whether an uncontested reading carries the latest end: only then can it be lost.</param>
    public static Standing StandingOf(LocalDate asOf, IReadOnlyList<Reading> readings, DaySpan? done, bool endFirm = true)
    {
        var earliest = Earliest(readings);
        if (done is { } day)
        {
            if (day.Latest <= earliest)
                return Standing.Kept;
            return endFirm && IsPast(day.Earliest, readings) ? Standing.Lost : Standing.InDoubt;
        }

        if (asOf <= earliest)
            return Standing.Open;
        return endFirm && IsPast(asOf, readings) ? Standing.Lost : Standing.InDoubt;
    }

    /// <summary>Whether a day is past every reading, the argument for a roll included.</summary>
    public static bool IsPast(LocalDate day, IReadOnlyList<Reading> readings) => readings.All(r => day > (r.Rolled ?? r.Day));
}
