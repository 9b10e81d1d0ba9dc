namespace Stringline.Testing;

/// <summary>Numbers drawn from a seed: the same seed gives the same numbers on every machine.</summary>
internal sealed class Drawing(ulong seed)
{
    private ulong state = seed;

    // SplitMix64 (Steele, Lea, Flood 2014), from memory.
    private ulong Next()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }

    /// <summary>A number from the first to the last, both included.</summary>
    public int From(int first, int last) => first + (int)(Next() % (ulong)(last - first + 1));

    /// <summary>True in so many of a hundred draws.</summary>
    public bool In100(int times) => From(0, 99) < times;

    /// <summary>One of these.</summary>
    public T Of<T>(params ReadOnlySpan<T> these) => these[From(0, these.Length - 1)];

    /// <summary>True, false, or not told.</summary>
    public bool? Maybe(int told = 50) => In100(told) ? In100(50) : null;
}
