namespace Stringline.Papers.Preflight;

/// <summary>Puts in order what is nearly so, as letters and words are: they are read as they were drawn.</summary>
internal static class Sorted
{
    /// <summary>Sorts by a number; what has the same number stays as it stands.</summary>
    public static void ByNearlySorted<T>(List<T> items, Func<T, double> key)
        where T : class
    {
        for (var i = 1; i < items.Count; i++)
        {
            var item = items[i];
            var number = key(item);
            var at = i;
            for (; at > 0 && key(items[at - 1]) > number; at--)
                items[at] = items[at - 1];
            items[at] = item;
        }
    }
}
