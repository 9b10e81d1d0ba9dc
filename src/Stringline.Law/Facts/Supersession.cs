namespace Stringline.Law.Facts;

/// <summary>Which of the known entries count, once corrections and withdrawals are applied.</summary>
/// <remarks>
/// An entry replaced by another counts no more, and if the other is corrected in its turn, the last word stands for both. A withdrawal
/// takes back one entry only: a correction that is withdrawn replaces nothing, and what it had replaced counts again.
/// </remarks>
internal static class Supersession
{
    private enum Fate
    {
        Counts,
        Replaced,
        Withdrawn,
    }

    /// <summary>Takes out of the list what does not count.</summary>
    /// <param name="known">The entries known by a day. Those that replace each other in a circle all count for nothing.</param>
    public static void Apply(List<Entry> known)
    {
        Dictionary<string, int>? open = null;
        foreach (var entry in known)
        {
            if (entry.Supersedes is { } id)
                (open ??= [])[id] = open.GetValueOrDefault(id) + 1;
        }

        if (open is not null)
            Remove(known, open);
    }

    private static void Remove(List<Entry> known, Dictionary<string, int> open)
    {
        var fates = Fates(known, open);
        known.RemoveAll(entry => entry is Withdrawn
            || (entry.Id is { } id && open.ContainsKey(id) && fates.GetValueOrDefault(id, Fate.Replaced) != Fate.Counts));
    }

    // From the last word back: the fate of an entry is settled once that of everything which supersedes it is.
    private static Dictionary<string, Fate> Fates(List<Entry> known, Dictionary<string, int> superseders)
    {
        var byId = new Dictionary<string, Entry>();
        var settled = new Queue<Entry>();
        foreach (var entry in known)
        {
            if (entry.Id is { } id)
                byId[id] = entry;
            if (entry.Id is null || !superseders.ContainsKey(entry.Id))
                settled.Enqueue(entry);
        }

        var left = new Dictionary<string, int>(superseders);
        var done = new Dictionary<string, Fate>();
        var soFar = new Dictionary<string, Fate>();
        while (settled.TryDequeue(out var entry))
        {
            var own = entry.Id is { } name ? soFar.GetValueOrDefault(name) : Fate.Counts;
            if (entry.Id is { } id)
                done[id] = own;
            if (entry.Supersedes is not { } older)
                continue;
            soFar[older] = Worse(soFar.GetValueOrDefault(older), Effect(entry, own));
            if (--left[older] == 0 && byId.TryGetValue(older, out var next))
                settled.Enqueue(next);
        }

        return done;
    }

    private static Fate Effect(Entry later, Fate fate) => fate switch
    {
        Fate.Withdrawn => Fate.Counts,
        Fate.Counts => later is Withdrawn ? Fate.Withdrawn : Fate.Replaced,
        Fate.Replaced => Fate.Replaced,
        _ => throw new InvalidOperationException($"No such fate: {fate}."),
    };

    private static Fate Worse(Fate a, Fate b) =>
        a == Fate.Replaced || b == Fate.Replaced ? Fate.Replaced
        : a == Fate.Withdrawn || b == Fate.Withdrawn ? Fate.Withdrawn
        : Fate.Counts;
}
