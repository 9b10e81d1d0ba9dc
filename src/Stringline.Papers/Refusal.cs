namespace Stringline.Papers;

/// <summary>Why a packet is not made.</summary>
/// <param name="Id">Stable id, such as <c>owner-missing</c>.</param>
/// <param name="Where">The place in the job file, as a JSON path; or the finding.</param>
/// <param name="There">What is there.</param>
/// <param name="Right">What would be right, and what to do.</param>
/// <param name="Section">The section that asks for it; empty where none does.</param>
public sealed record Refusal(string Id, string Where, string There, string Right, string Section)
{
    /// <summary>The kind of entry that would mend it, by its word in the job file; null where no one entry would.</summary>
    public string? Enter { get; init; }

    /// <summary>The refusal in one sentence after another.</summary>
    public override string ToString() => Section.Length == 0 ? $"{Where}: {There} {Right}" : $"{Where}: {There} {Right} ({Section})";
}
