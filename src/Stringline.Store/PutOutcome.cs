using Stringline.Tables;
using Stringline.Law.Facts;

namespace Stringline.Store;

/// <summary>A job file and how the outside names it.</summary>
/// <param name="Key">One line of at most <see cref="Journals.LongestName"/> characters; unique in the store.</param>
/// <param name="Job">The job file.</param>
public sealed record KeyedJob(string Key, JobFile Job);

/// <summary>What came of bringing a store to a job file. The four cases are the only ones.</summary>
public abstract record PutOutcome
{
    private PutOutcome()
    {
    }

    /// <summary>The job is new.</summary>
    /// <param name="Job">Its id.</param>
    public sealed record Added(long Job) : PutOutcome;

    /// <summary>The job was there; what the file has beyond it was appended.</summary>
    /// <param name="Job">Its id.</param>
    /// <param name="Changes">How many changes.</param>
    public sealed record Extended(long Job, int Changes) : PutOutcome;

    /// <summary>The job was there, just so.</summary>
    /// <param name="Job">Its id.</param>
    public sealed record Unchanged(long Job) : PutOutcome;

    /// <summary>The file contradicts the journal, which erases nothing, or is not in order.</summary>
    /// <param name="Faults">Why; at least one.</param>
    public sealed record Refused(IReadOnlyList<Fault> Faults) : PutOutcome;
}

/// <summary>What came of bringing a store to many job files. Where one is refused, nothing was written.</summary>
/// <param name="Added">New jobs.</param>
/// <param name="Extended">Jobs to which something was appended.</param>
/// <param name="Unchanged">Jobs that were there just so.</param>
/// <param name="Changes">Changes written, heads included.</param>
/// <param name="Faults">Why some are refused; empty where everything was written.</param>
public sealed record PutReport(long Added, long Extended, long Unchanged, long Changes, IReadOnlyList<Fault> Faults);
