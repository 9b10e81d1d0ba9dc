namespace Stringline.FuzzInput;

/// <summary>Two seconds of processor time for an input. The first few of a program may take longer: their code is compiled then.</summary>
internal static class Bound
{
    private const int Warm = 10;
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(2);

    private static int runs;

    /// <summary>Has an input answered.</summary>
    /// <exception cref="TimeoutException">It took too long.</exception>
    public static void Within(Target target, byte[] input)
    {
        var before = Environment.CpuUsage.TotalTime;
        target.Answer(input);
        var took = Environment.CpuUsage.TotalTime - before;
        if (++runs > Warm && took > Limit)
            throw new TimeoutException($"It took {took.TotalSeconds:0.0} seconds of the processor.");
    }
}
