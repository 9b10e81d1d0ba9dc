namespace Stringline.Law.Counting;

/// <summary>Finds a place in what is put in order, without going through all of it.</summary>
internal static class Bisection
{
    /// <summary>The first place at which something holds that holds at all places after it too; the count where it holds at none.</summary>
    /// <param name="count">How many places there are.</param>
    /// <param name="holds">Whether it holds at a place.</param>
    public static int First(int count, Func<int, bool> holds)
    {
        var (low, high) = (0, count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (holds(middle))
                high = middle;
            else
                low = middle + 1;
        }

        return low;
    }
}
