using System.Globalization;
using Stringline.Law.Facts;

namespace Stringline.Office.Import;

/// <summary>
/// The ids by which imported entries are known again: <c>invoice:INV-101</c>, and <c>invoice:INV-101#2</c> for the entry that supersedes
/// it. So a second import finds what the first made.
/// </summary>
internal sealed class EntryKeys
{
    private readonly Dictionary<string, Entry> byId = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Entry> byRef = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Entry> replacedBy = new(StringComparer.Ordinal);

    public EntryKeys(IReadOnlyList<Entry> entries)
    {
        foreach (var entry in entries)
            Add(entry);
    }

    /// <summary>The id of an invoice's first entry.</summary>
    public static string Invoice(string number) => "invoice:" + number;

    /// <summary>The id of a payment's first entry.</summary>
    public static string Payment(string key) => "payment:" + key;

    /// <summary>The id of the entry after <paramref name="versions"/> others of the same row.</summary>
    public static string Version(string id, int versions) =>
        versions == 0 ? id : id + "#" + (versions + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>Takes an entry.</summary>
    public void Add(Entry entry)
    {
        if (entry.Id is { } id)
            byId[id] = entry;
        if (entry.Supersedes is { } older)
            replacedBy[older] = entry;
        if (entry is Furnished { Ref: { } name })
            byRef[name] = entry;
        else if (entry is Charged { Ref: { } charged })
            byRef[charged] = entry;
    }

    /// <summary>The entries that imports made of one row, in order.</summary>
    public List<Entry> Of(string id)
    {
        var found = new List<Entry>(1);
        while (byId.TryGetValue(Version(id, found.Count), out var entry))
            found.Add(entry);
        return found;
    }

    /// <summary>The entry, whoever made it, that replaces or withdraws one; null where none does.</summary>
    public Entry? Replacing(Entry entry) => entry.Id is { } id ? replacedBy.GetValueOrDefault(id) : null;

    /// <summary>The entry with a reference; null where there is none.</summary>
    public Entry? WithRef(string name) => byRef.GetValueOrDefault(name);
}
