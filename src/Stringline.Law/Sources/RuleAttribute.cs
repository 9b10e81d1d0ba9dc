namespace Stringline.Law.Sources;

/// <summary>
/// Marks a member as the home of a rule of law and names its section, so that a reader can go from a section to its rule
/// and its test. The table in <c>docs/sources-of-law.md</c> is made from these marks.
/// </summary>
/// <remarks>Since when it governs, and until when, the rows of <c>data/numbers.csv</c> say for the numbers that the section
/// fixes.</remarks>
/// <param name="section">The section, such as <c>Civ. Code § 8414(b)(2)</c>.</param>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Property | AttributeTargets.Class, AllowMultiple = true)]
public sealed class RuleAttribute(string section) : Attribute
{
    /// <summary>The section.</summary>
    public string Section { get; } = section;

    /// <summary>How sure.</summary>
    public Sure Sure { get; init; } = Sure.Read;
}
