namespace Stringline.Papers.Preflight;

/// <summary>One check of a finished paper.</summary>
/// <param name="Name">What was looked at, such as <c>side margins</c>.</param>
/// <param name="Passed">Whether it is as it must be.</param>
/// <param name="Words">What was found, and what would be right.</param>
/// <param name="Section">The section that asks for it; empty where it is our own care.</param>
public sealed record PreflightCheck(string Name, bool Passed, string Words, string Section);

/// <summary>What the check of a paper found.</summary>
/// <param name="Paper">The paper's file name.</param>
/// <param name="Checks">The checks in their order.</param>
public sealed record PreflightReport(string Paper, IReadOnlyList<PreflightCheck> Checks)
{
    /// <summary>Whether every check passed.</summary>
    public bool Passed => Checks.All(c => c.Passed);

    /// <summary>The check with that name, or null where it was not called for.</summary>
    public PreflightCheck? Check(string name) => Checks.FirstOrDefault(c => c.Name == name);

    /// <summary>The report as lines of text.</summary>
    public override string ToString() =>
        string.Join('\n', Checks.Select(c => $"{Paper}: {c.Name}: {(c.Passed ? "good" : "NOT GOOD")}: {c.Words}"));
}
