namespace Stringline.Law.Facts;

/// <summary>The facts of a file cut to an earlier day, for measuring a paper by the day on which it was given.</summary>
internal static class EarlierFacts
{
    /// <summary>
    /// The facts of today without the work that was not surely furnished by a day, and without the payments directed to it.
    /// </summary>
    public static FactsAsOf WithWorkThrough(this FactsAsOf facts, LocalDate day)
    {
        var entries = new List<Entry>(facts.Known.Count);
        HashSet<string>? gone = null;
        HashSet<string>? left = null;
        foreach (var furnished in facts.Furnished)
        {
            if (furnished.Ref is { } name)
                _ = IsBy(furnished, day) ? (left ??= []).Add(name) : (gone ??= []).Add(name);
        }

        foreach (var entry in facts.Known)
        {
            var counts = entry switch
            {
                Furnished furnished => IsBy(furnished, day),
                Paid { Toward: { } toward } => !Only(toward),
                Credited { Toward: { } toward } => !Only(toward),
                _ => true,
            };
            if (counts)
                entries.Add(entry.Learned is null ? entry : entry with { Learned = null });
        }

        return new FactsAsOf(facts.Job with { Entries = entries }, facts.AsOf, facts.Numbers);

        bool Only(string name) => gone is not null && gone.Contains(name) && !(left is not null && left.Contains(name));
    }

    private static bool IsBy(Furnished furnished, LocalDate day) => furnished.Until.Latest is { } last && last <= day;
}
