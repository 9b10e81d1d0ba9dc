namespace Stringline.Browser.Tests;

/// <summary>What a pass found wrong.</summary>
internal static class Found
{
    /// <summary>Fails where anything was found, and names all of it.</summary>
    public static void Nothing(string what, IEnumerable<string> found)
    {
        var all = found.ToList();
        Assert.True(all.Count == 0, $"{all.Count} {what}:\n{string.Join("\n", all)}");
    }
}
