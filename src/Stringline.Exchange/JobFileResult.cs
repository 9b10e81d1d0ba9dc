using Stringline.Law.Facts;

namespace Stringline.Exchange;

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
    /// <param name="Faults">Every fault found, in the file's order; at least one.</param>
    public sealed record Refused(IReadOnlyList<Fault> Faults) : JobFileResult;
}
