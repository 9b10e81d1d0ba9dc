namespace Stringline.Answers;

/// <summary>Says what does not hold. (Not the assertions of a test library: the program that is fuzzed runs without one.)</summary>
internal static class Must
{
    /// <summary>Ends with the words where it does not hold.</summary>
    /// <exception cref="InvalidOperationException">It does not hold.</exception>
    public static void Hold(bool it, string orElse)
    {
        if (!it)
            throw new InvalidOperationException(orElse);
    }
}
