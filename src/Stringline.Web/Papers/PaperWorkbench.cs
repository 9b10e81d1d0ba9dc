using Stringline.Papers;
using Stringline.Papers.Catalogue;

namespace Stringline.Web.Papers;

/// <summary>
/// Makes papers for the web, and keeps the last few in memory: what a page shows, what is opened and what is downloaded are then the same
/// bytes. Nothing is written to disk.
/// </summary>
internal sealed class PaperWorkbench
{
    private const int Kept = 12;

    private readonly Lock gate = new();
    private readonly LinkedList<(string Key, PacketOutcome Outcome)> made = new();

    /// <summary>Makes a paper for a job as it is now, or gives the one that was made from the same.</summary>
    public PacketOutcome Make(OpenJob job, PaperRequest request)
    {
        var key = $"{job.Id}/{request.Paper.Id}/{Law.Counting.LawText.IsoDay(job.AsOf)}{request.Query(job.Stored.Tip.Sequence)}";
        lock (gate)
        {
            for (var node = made.First; node is not null; node = node.Next)
            {
                if (node.Value.Key != key)
                    continue;
                made.Remove(node);
                made.AddFirst(node);
                return node.Value.Outcome;
            }
        }

        var outcome = PaperMaker.Make(request.Paper, job.Facts, job.Assessment, request.Options);
        lock (gate)
        {
            made.AddFirst((key, outcome));
            while (made.Count > Kept)
                made.RemoveLast();
        }

        return outcome;
    }
}
