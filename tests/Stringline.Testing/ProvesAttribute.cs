namespace Stringline.Testing;

/// <summary>Marks a test as the proof of a rule of law by naming its section, as the rule itself does.</summary>
/// <param name="section">The section, such as <c>Civ. Code § 8414(b)(2)</c>.</param>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class ProvesAttribute(string section) : Attribute
{
    /// <summary>The section.</summary>
    public string Section { get; } = section;
}
