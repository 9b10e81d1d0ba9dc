using System.Globalization;

namespace Stringline.Testing;

/// <summary>How often a property is tried.</summary>
public static class Times
{
    private static readonly int Most = int.TryParse(Environment.GetEnvironmentVariable("CsCheck_Iter"), NumberStyles.None,
        CultureInfo.InvariantCulture, out var most) ? most : int.MaxValue;

    /// <summary>
    /// The given number, or the one of the environment variable <c>CsCheck_Iter</c> where that is less. CsCheck heeds the variable only
    /// where a test names no number of its own; runs that repeat the tests very often, such as mutation runs, set it.
    /// </summary>
    public static int AtMost(int times) => Math.Min(times, Most);
}
