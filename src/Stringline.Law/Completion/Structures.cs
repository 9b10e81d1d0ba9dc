using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Completion;

/// <summary>
/// A work that consists of two or more separate residential structures: each is a work of its own, and its completion is taken separately
/// for the time to record a claim on it (Civ. Code § 8448). A structure of many condominiums is one.
/// </summary>
internal static class Structures
{
    /// <summary>Whether the work is one of several structures.</summary>
    [Rule("Civ. Code § 8448(b)(1)")]
    public static bool AreSeveral(Work work) => work.ResidentialStructures is >= 2 || work.Structures.Count >= 2;

    /// <summary>The structure in words: its text, or its id; null where none is named.</summary>
    public static string? Words(Work work, string? id)
    {
        foreach (var structure in work.Structures)
        {
            if (structure.Id == id)
                return structure.Text ?? id;
        }

        return id;
    }

    /// <summary>A reading of completion, told of the structure that it is of; which one that is may not be known.</summary>
    public static CompletionReading OfOne(CompletionReading reading, Completed entry, Work work) => reading with
    {
        Words = Words(work, entry.Structure) is { } structure
            ? (Sentence)$"{reading.Words} of {structure}" : $"{reading.Words} of one of several structures",
        Structure = entry.Structure ?? $"completed {DaySpan.Of(entry.On)}",
    };

    /// <summary>
    /// Drops the completion of structures into which the claimant furnished nothing, where the file says of everything furnished into which
    /// it went: material counts for the structure in which it was used.
    /// </summary>
    [Rule("Civ. Code § 8448(b)(2)")]
    public static void DropOthers(FactsAsOf facts, List<CompletionReading> readings, List<Reason> ruledOut)
    {
        if (facts.Furnished.Count == 0)
            return;
        var into = new HashSet<string>(StringComparer.Ordinal);
        foreach (var furnished in facts.Furnished)
        {
            if (furnished.Structure is null)
                return;
            into.Add(furnished.Structure);
        }

        var removed = new HashSet<CompletionReading>(ReferenceEqualityComparer.Instance);

        for (var i = readings.Count - 1; i >= 0; i--)
        {
            var reading = readings[i];
            if (reading.Why.Facts is not [Completed { Structure: { } of }, ..] || into.Contains(of))
                continue;
            removed.Add(reading);
            ruledOut.Add(
                Reason.NotApplied("Civ. Code § 8448(b)(2)",
                    $"Nothing that the claimant furnished went into {Words(facts.Job.Work, of)}: its completion on {reading.On} starts no "
                        + $"time for this claimant.", [.. reading.Why.Facts]));
        }

        if (removed.Count > 0)
            readings.RemoveAll(removed.Contains);
    }
}
