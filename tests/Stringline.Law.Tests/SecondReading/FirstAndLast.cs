using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>When the claimant first and last furnished work, in one world.</summary>
internal static class FirstAndLast
{
    public static LocalDate? First(World w)
    {
        LocalDate? first = null;
        foreach (var work in w.Matter.Work)
            first = World.Earlier(first, w.On(work));
        return first;
    }

    public static LocalDate? Last(World w)
    {
        LocalDate? last = null;
        foreach (var work in w.Matter.Work)
            last = World.Later(last, w.Until(work));
        return last;
    }

    public static bool HasEnded(World w) => w.Matter.Of<FurnishingEnded>().Length > 0;

    /// <summary>The day on which the claimant had ceased to provide work: the last day of work, or the later end it tells of.</summary>
    public static LocalDate? Ceased(World w)
    {
        var ceased = Last(w);
        foreach (var ended in w.Matter.Of<FurnishingEnded>())
        {
            // That it ended, nobody knows when, says no more than the last day of work does.
            if (ended.On is DayFact.Unknown)
                continue;
            ceased = World.Later(ceased, w.On(ended));
        }

        return ceased;
    }
}
