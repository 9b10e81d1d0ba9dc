using Stringline.Law.Facts;
using Stringline.Store;

namespace Stringline.Web.Entering;

/// <summary>The papers that prove an entry, each with its address, and where another can be attached.</summary>
/// <param name="Papers">Name and address of each.</param>
/// <param name="Attach">The page on which one is attached.</param>
internal sealed record EntryProofs(IReadOnlyList<(string Name, string Address)> Papers, string Attach)
{
    /// <summary>The papers of an entry of a job, whenever they were attached.</summary>
    public static EntryProofs Of(StoredJob stored, Entry entry)
    {
        var job = stored.Tip.Id;
        var sequence = stored.RowOf(entry.Index).Sequence;
        var papers = stored.Rows
            .Where(row => row.Sequence == sequence || (row.Kind == ChangeKind.Proof && Proves(row) == sequence))
            .SelectMany(row => row.Proofs.Select((proof, number) => (proof.Name, $"/job/{job}/proof/{row.Sequence}/{number}")));
        return new EntryProofs([.. papers], $"/job/{job}/prove?entry={entry.Index}");
    }

    private static long? Proves(JournalRow row) => (long?)System.Text.Json.Nodes.JsonNode.Parse(row.Payload.Span)?["proves"];
}
