namespace Stringline.Law.Counting;

/// <summary>Sums of dollars and cents.</summary>
internal static class Total
{
    /// <summary>The sum of an amount over some things; zero where there are none.</summary>
    /// <remarks>Written out, since the framework's sum over decimals is compiled anew at every start of the program.</remarks>
    public static decimal Of<T>(IEnumerable<T> things, Func<T, decimal> amount)
    {
        var sum = 0m;
        foreach (var thing in things)
            sum += amount(thing);
        return sum;
    }
}
