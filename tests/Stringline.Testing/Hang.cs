namespace Stringline.Testing;

/// <summary>
/// Runs what must come to an end, and keeps what the slowest took. In <c>./test</c> the limit is far above what anything takes on a busy
/// machine: it tells a hang, not a speed. In a long run two seconds of processor time are the limit, which other programs do not change.
/// </summary>
public static class Hang
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(60);
    private static readonly TimeSpan LimitOfProcessor = TimeSpan.FromSeconds(2);

    private static TimeSpan slowest;

    /// <summary>What the slowest took, in processor time of the whole program; in a long run nothing else goes on in it.</summary>
    public static TimeSpan Slowest => slowest;

    /// <summary>Runs it.</summary>
    /// <exception cref="TimeoutException">It did not end in time.</exception>
    public static T Never<T>(Func<T> work)
    {
        ArgumentNullException.ThrowIfNull(work);
        var before = Environment.CpuUsage.TotalTime;
        var running = Task.Factory.StartNew(work, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        if (!((IAsyncResult)running).AsyncWaitHandle.WaitOne(Limit))
            throw new TimeoutException($"It did not end within {Limit.TotalSeconds} seconds.");
        var answer = running.GetAwaiter().GetResult();
        var took = Environment.CpuUsage.TotalTime - before;
        if (LongRun.Is)
        {
            slowest = took > slowest ? took : slowest;
            if (took > LimitOfProcessor)
                throw new TimeoutException($"It took {took.TotalSeconds:0.0} seconds of the processor.");
        }

        return answer;
    }
}
