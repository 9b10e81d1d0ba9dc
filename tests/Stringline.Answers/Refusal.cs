using Stringline.Tables;

namespace Stringline.Answers;

/// <summary>
/// What every refusal has: what is there, what would be right, no trace of the program, and no sign that a terminal obeys.
/// </summary>
internal static class Refusal
{
    // What is found is an excerpt and what is expected a sentence, whatever the file holds; a list of near names is the longest.
    private const int Longest = 4_000;

    /// <summary>Looks at one.</summary>
    /// <exception cref="InvalidOperationException">It is not as it should be.</exception>
    public static void Check(Fault fault)
    {
        var told = fault.ToString();
        Must.Hold(fault.Found.Length > 0 && fault.Expected.Length > 0, $"a refusal without words: {told}");
        Check(fault.Path + fault.Found + fault.Expected);
    }

    /// <summary>Looks at one in words alone, such as that of a row.</summary>
    /// <exception cref="InvalidOperationException">It is not as it should be.</exception>
    public static void Check(string told)
    {
        Must.Hold(told.Length <= Longest, $"a refusal of {told.Length} characters");
        Must.Hold(!told.Contains("   at Stringline", StringComparison.Ordinal), $"a refusal with a trace of the program: {told}");
        Must.Hold(!told.EnumerateRunes().Any(Signs.IsRefused), $"a refusal with a sign that cannot be seen: {told}");
    }
}
