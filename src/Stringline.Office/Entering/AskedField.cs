using Stringline.Law.Facts;

namespace Stringline.Office.Entering;

/// <summary>One field as a page shows it.</summary>
/// <param name="Asked">What is asked.</param>
/// <param name="Name">Its name on this page.</param>
/// <param name="Typed">What was typed.</param>
/// <param name="Fault">What is wrong with it; null where nothing is.</param>
/// <param name="Job">The job, for the parties and references to choose from.</param>
/// <param name="Offered">What is offered while typing.</param>
internal sealed record AskedField(Asked Asked, string Name, Typed Typed, string? Fault, JobFile Job, IReadOnlyList<string> Offered)
{
    /// <summary>What stands in it.</summary>
    public string Value => Typed[Name];

    /// <summary>The parties that can be chosen.</summary>
    public IReadOnlyList<Party> Parties => Asked.Among is { } capacity ? Job.In(capacity) : Job.Parties;

    /// <summary>What was furnished or charged under a reference.</summary>
    public IEnumerable<(string Ref, Entry Entry)> References => Job.Entries
        .Select(entry => (Ref: ReferenceOf(entry), Entry: entry))
        .Where(found => found.Ref is not null)
        .Select(found => (found.Ref!, found.Entry))
        .DistinctBy(found => found.Item1);

    /// <summary>The entries that can be chosen: those of the kind that count, and the one that is chosen.</summary>
    public IEnumerable<Entry> Entries
    {
        get
        {
            var replaced = Job.Entries.Select(entry => entry.Supersedes).OfType<string>().ToHashSet(StringComparer.Ordinal);
            return Job.Entries.Where(entry => entry.Id is { } id && EntryKinds.Of(entry).Name == Asked.EntryOf
                && (id == Value || !replaced.Contains(id)));
        }
    }

    /// <summary>The id of what is wrong with it, for the field that it describes; null where nothing is.</summary>
    public string? FaultId => Fault is null ? null : "fault-" + Name;

    private static string? ReferenceOf(Entry entry) => EntryKinds.Of(entry).Fields
        .OfType<Field.Text>().FirstOrDefault(field => field.Holds == TextHolds.OwnReference)?.Get(entry);
}
