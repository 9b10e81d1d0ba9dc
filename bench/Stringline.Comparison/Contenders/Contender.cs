using Stringline.Comparison.Jobs;

namespace Stringline.Comparison.Contenders;

/// <summary>One way to answer the six rules inside this process.</summary>
internal abstract class Contender
{
    public abstract string Name { get; }

    /// <summary>Answers every job; this is what is timed, and what it leaves in <paramref name="answers"/> is what is checked.</summary>
    public abstract void Answer(IReadOnlyList<ComparedJob> jobs, SixDays[] answers);
}
