namespace Stringline.Law.Facts;

/// <summary>Which entry another one names, corrections counted.</summary>
internal static class EntryNames
{
    /// <summary>Whether an id is that of an entry, or of one that the entry replaced in its turn.</summary>
    public static bool Names(this FactsAsOf facts, string id, Entry entry)
    {
        // No entry replaces itself for ever: a file has fewer corrections than entries.
        for (var left = facts.Job.Entries.Count; ; left--)
        {
            if (entry.Id == id || entry.Supersedes == id)
                return true;
            if (entry.Supersedes is not { } older || left <= 0 || Find(facts, older) is not { } before)
                return false;
            entry = before;
        }
    }

    private static Entry? Find(FactsAsOf facts, string id)
    {
        foreach (var entry in facts.Job.Entries)
        {
            if (entry.Id == id)
                return entry;
        }

        return null;
    }
}
