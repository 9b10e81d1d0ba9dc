using Stringline.Tables;

namespace Stringline.Store;

/// <summary>What came of appending to a job. The four cases are the only ones; all but the first leave the job as it was.</summary>
public abstract record AppendOutcome
{
    private AppendOutcome()
    {
    }

    /// <summary>All changes are in the journal, durably.</summary>
    /// <param name="Sequence">Number of the last one.</param>
    /// <param name="Hash">Its hash.</param>
    public sealed record Appended(long Sequence, ContentHash Hash) : AppendOutcome;

    /// <summary>The job is not where the writer believed it: look at what was written since, and append again.</summary>
    /// <param name="Sequence">Where the job is.</param>
    /// <param name="Since">The changes after the expected one; empty where the job is behind it, as after a restore.</param>
    public sealed record SomeoneWroteFirst(long Sequence, IReadOnlyList<JournalRow> Since) : AppendOutcome;

    /// <summary>The job file as it would be is refused.</summary>
    /// <param name="Faults">Why; at least one.</param>
    public sealed record Refused(IReadOnlyList<Fault> Faults) : AppendOutcome;

    /// <summary>There is no such job.</summary>
    public sealed record NoSuchJob : AppendOutcome;
}
