using Stringline.Law;
using Stringline.Law.Facts;

namespace Stringline.Papers.Catalogue;

/// <summary>The job at the moment at which its papers are looked at: its facts, and what the law makes of them.</summary>
/// <param name="job">The facts.</param>
/// <param name="assessment">What the law makes of them.</param>
/// <param name="options">What was told with the request for a paper; null where none was asked for.</param>
public sealed class Occasion(JobFile job, Assessment assessment, PaperOptions? options = null)
{
    private FactsAsOf? known;

    /// <summary>The facts.</summary>
    public JobFile Job => job;

    /// <summary>What the law makes of them.</summary>
    public Assessment Assessment => assessment;

    /// <summary>What was told with the request.</summary>
    public PaperOptions Options { get; } = options ?? PaperOptions.None;

    /// <summary>The entries as known on the day of the assessment.</summary>
    public FactsAsOf Known => known ??= new FactsAsOf(job, assessment.AsOf);

    /// <summary>Whether an entry of that kind is in the file, known by that day or not.</summary>
    internal bool Has<T>()
        where T : Entry => job.All<T>().Any();
}
