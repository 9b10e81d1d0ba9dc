using Stringline.Law.Facts;

namespace Stringline.Law.Completion;

/// <summary>
/// The day before which the work cannot well have been completed, for files that know nothing certain of completion. Our rule, so that a
/// day to plan on exists.
/// </summary>
internal static class CompletionFloor
{
    /// <summary>
    /// The latest of the days on which the work of improvement was surely still to be done: its commencement, the claimant's last work, the
    /// end of its furnishing, and the last known day of labor on the whole work. Null where the file holds none of them.
    /// </summary>
    public static LocalDate? Of(FactsAsOf facts)
    {
        var floor = facts.LastFurnished?.Earliest;
        if (facts.Job.Work.Commenced is { } commenced && commenced <= facts.AsOf)
            floor = Later(floor, commenced);
        foreach (var ended in facts.All<FurnishingEnded>())
            floor = Later(floor, ended.On.Earliest);
        foreach (var ceased in facts.All<LaborCeased>())
            floor = Later(floor, ceased.Until is { } resumed && resumed <= facts.AsOf ? resumed : ceased.On.Earliest);
        return floor;
    }

    private static LocalDate? Later(LocalDate? so, LocalDate? day) => (so, day) switch
    {
        ({ } a, { } b) => LocalDate.Max(a, b),
        _ => so ?? day,
    };
}
