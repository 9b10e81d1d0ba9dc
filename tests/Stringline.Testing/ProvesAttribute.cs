namespace Stringline.Testing;

/// <summary>
/// Names the section of law that a test proves, word for word as the rule's own mark names it, so that a reader can go from
/// a section to its rule and its tests.
/// </summary>
/// <param name="section">The section, such as <c>Civ. Code § 8414(b)(2)</c>.</param>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class ProvesAttribute(string section) : Attribute
{
    /// <summary>The section.</summary>
    public string Section { get; } = section;
}
