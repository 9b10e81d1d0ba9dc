namespace Stringline.Store;

/// <summary>Something in a store that is not as it was written.</summary>
/// <param name="Job">Key of the job; null where it is not about one job.</param>
/// <param name="Sequence">The change at which it shows; null where it is not about one change.</param>
/// <param name="Found">What is wrong.</param>
public sealed record BrokenLink(string? Job, long? Sequence, string Found)
{
    /// <inheritdoc/>
    public override string ToString() => (Job, Sequence) switch
    {
        (null, _) => Found,
        (_, null) => $"job \"{Job}\": {Found}",
        _ => FormattableString.Invariant($"job \"{Job}\", change {Sequence}: {Found}"),
    };
}

/// <summary>What a check of a whole store gave.</summary>
/// <param name="Jobs">Jobs walked.</param>
/// <param name="Changes">Changes walked.</param>
/// <param name="Proofs">Attached papers read.</param>
/// <param name="Seal">A hash over the last hash of every job: two stores with the same seal hold the same journal.</param>
/// <param name="Broken">What is wrong, first what was met first, at most <see cref="MostTold"/>; for each job only where its chain first breaks.</param>
public sealed record CheckReport(long Jobs, long Changes, long Proofs, ContentHash Seal, IReadOnlyList<BrokenLink> Broken)
{
    /// <summary>At most so many faults are told; a check goes on counting to its end.</summary>
    public const int MostTold = 100;

    /// <summary>Whether nothing is wrong.</summary>
    public bool IsWhole => Broken.Count == 0;
}
