namespace Stringline.Store;

/// <summary>What came of comparing a store with a seal.</summary>
/// <param name="Broken">
/// What was rewritten, cut off or slipped in, at most <see cref="CheckReport.MostTold"/>; empty where all that was sealed stands as it was.
/// </param>
/// <param name="JobsSince">Jobs that were added since.</param>
/// <param name="ChangesSince">Changes that were recorded since.</param>
public sealed record SealReport(IReadOnlyList<BrokenLink> Broken, long JobsSince, long ChangesSince);
