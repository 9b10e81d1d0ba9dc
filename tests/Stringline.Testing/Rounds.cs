using System.Globalization;

namespace Stringline.Testing;

/// <summary>How often a test repeats itself: a few times in <c>./test</c>, as often as a script of <c>bench/</c> asks for.</summary>
public static class Rounds
{
    /// <summary>The number in an environment variable, or the number where it says nothing.</summary>
    public static int Of(string variable, int otherwise) =>
        Environment.GetEnvironmentVariable(variable) is { Length: > 0 } asked ? int.Parse(asked, CultureInfo.InvariantCulture) : otherwise;
}
