using Stringline.Law.Facts;

namespace Stringline.Tables;

/// <summary>What came of reading a job file. The two cases are the only ones.</summary>
public abstract record JobFileResult
{
    private JobFileResult()
    {
    }

    /// <summary>The file is good.</summary>
    /// <param name="Job">What it holds.</param>
    public sealed record Read(JobFile Job) : JobFileResult;

    /// <summary>The file is refused as a whole; nothing of it may be used.</summary>
    /// <param name="Faults">The faults found, in the file’s order, at least one; of more than a hundred the first, and at the end how many
    /// more.</param>
    public sealed record Refused(IReadOnlyList<Fault> Faults) : JobFileResult;
}
