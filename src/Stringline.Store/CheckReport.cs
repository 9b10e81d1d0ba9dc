using System.Globalization;
namespace Stringline.Store;

/// <summary>The parts of a store, by what mends them.</summary>
public enum StorePart
{
    /// <summary>The journal and its papers: only a backup has them as they were.</summary>
    Journal,

    /// <summary>What keeps the journal from being edited: a store made anew has it.</summary>
    Guards,

    /// <summary>A log of which the database did not take all: what is missing must be entered again.</summary>
    Log,

    /// <summary>What is derived from the journal: it can be made anew.</summary>
    Derived,

    /// <summary>What the office has set: somebody has to set it anew.</summary>
    Settings,
}

/// <summary>Something in a store that is not as it was written.</summary>
/// <param name="Job">Key of the job; null where it is not about one job.</param>
/// <param name="Sequence">The change at which it shows; null where it is not about one change.</param>
/// <param name="Found">What is wrong.</param>
public sealed record BrokenLink(string? Job, long? Sequence, string Found)
{
    /// <summary>Of which part of the store it is.</summary>
    public StorePart Part { get; init; }

    /// <inheritdoc/>
    public override string ToString() => (Job, Sequence) switch
    {
        (null, _) => Found,
        (_, null) => $"job \"{Job}\": {Found}",
        _ => string.Create(CultureInfo.InvariantCulture, $"job \"{Job}\", change {Sequence}: {Found}"),
    };
}

/// <summary>What a check of a whole store gave.</summary>
/// <param name="Jobs">Jobs walked.</param>
/// <param name="Changes">Changes walked.</param>
/// <param name="Proofs">Attached papers read.</param>
/// <param name="Seal">A hash over the last hash of every job: two stores with the same seal hold the same journal.</param>
/// <param name="Broken">
/// What is wrong, first what was met first, at most <see cref="MostTold"/>; for each job only where its chain first breaks.
/// </param>
public sealed record CheckReport(long Jobs, long Changes, long Proofs, ContentHash Seal, IReadOnlyList<BrokenLink> Broken)
{
    /// <summary>At most so many faults are told; a check goes on counting to its end.</summary>
    public const int MostTold = 100;

    /// <summary>Whether the journal itself is whole: every change, every attached paper, and the file they lie in.</summary>
    public bool JournalIsWhole { get; init; } = true;

    /// <summary>Whether nothing is wrong.</summary>
    public bool IsWhole => Broken.Count == 0;
}
