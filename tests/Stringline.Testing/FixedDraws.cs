using CsCheck;

namespace Stringline;

/// <summary>
/// Properties on the same draws each time, so that a test gives the same answer each time. With the environment variable
/// <c>STRINGLINE_DRAW=random</c> CsCheck draws anew and shrinks what fails; so is looked for what the fixed draws do not meet.
/// </summary>
/// <remarks>The namespace encloses those of the tests, so that these are found before CsCheck's own of the same name.</remarks>
public static class FixedDraws
{
    private const ulong Seed = 20_261_130;

    private static readonly bool AtRandom = Environment.GetEnvironmentVariable("STRINGLINE_DRAW") == "random";

    private static readonly ParallelOptions Threads = new()
    {
        MaxDegreeOfParallelism = int.TryParse(Environment.GetEnvironmentVariable("CsCheck_Threads"), out var threads) && threads > 0
            ? threads : -1,
    };

    /// <summary>Tries a property so many times.</summary>
    /// <exception cref="InvalidOperationException">It does not hold; tells the draw, and what failed within it.</exception>
    public static void Sample<T>(this Gen<T> gen, Action<T> assert, Func<T, string>? print = null, long iter = 100)
    {
        iter = Testing.Times.AtMost((int)iter);
        if (AtRandom)
        {
            Check.Sample(gen, assert, print: print, iter: iter);
            return;
        }

        Parallel.For(0, iter, Threads, i =>
        {
            T drawn;
            try
            {
                drawn = gen.Generate(new PCG((uint)i, Seed + (ulong)i), null, out _);
            }
            catch (CsCheckException)
            {
                // No value met the condition of the draw: as CsCheck does, it is passed over.
                return;
            }

            try
            {
                assert(drawn);
            }
            catch (Exception e)
            {
                throw new InvalidOperationException(
                    $"Draw {i}: {(print is null ? drawn?.ToString() : print(drawn))}{Environment.NewLine}{e.Message}", e);
            }
        });
    }

    /// <inheritdoc cref="Sample{T}"/>
    public static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> assert, Func<(T1, T2), string>? print = null,
        long iter = 100) =>
        gen.Sample(t => assert(t.Item1, t.Item2), print, iter);

    /// <inheritdoc cref="Sample{T}"/>
    public static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> assert, Func<(T1, T2, T3), string>? print = null,
        long iter = 100) =>
        gen.Sample(t => assert(t.Item1, t.Item2, t.Item3), print, iter);

    /// <inheritdoc cref="Sample{T}"/>
    public static void Sample<T1, T2, T3, T4>(
        this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> assert, Func<(T1, T2, T3, T4), string>? print = null, long iter = 100) =>
        gen.Sample(t => assert(t.Item1, t.Item2, t.Item3, t.Item4), print, iter);

    /// <inheritdoc cref="Sample{T}"/>
    public static void Sample<T1, T2, T3, T4, T5>(
        this Gen<(T1, T2, T3, T4, T5)> gen, Action<T1, T2, T3, T4, T5> assert, Func<(T1, T2, T3, T4, T5), string>? print = null,
            long iter = 100) =>
        gen.Sample(t => assert(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5), print, iter);

    /// <inheritdoc cref="Sample{T}"/>
    public static void Sample<T1, T2, T3, T4, T5, T6>(
        this Gen<(T1, T2, T3, T4, T5, T6)> gen, Action<T1, T2, T3, T4, T5, T6> assert, Func<(T1, T2, T3, T4, T5, T6), string>? print = null,
            long iter = 100) =>
        gen.Sample(t => assert(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5, t.Item6), print, iter);
}
