namespace Stringline.Testing;

/// <summary>Runs what must come to an end. The limit is far above what anything takes, also where the machine is busy: it tells a hang, not a speed.</summary>
public static class Hang
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(20);

    /// <summary>Runs it.</summary>
    /// <exception cref="TimeoutException">It did not end.</exception>
    public static void Never(Action work)
    {
        ArgumentNullException.ThrowIfNull(work);
        var running = Task.Factory.StartNew(work, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        if (!((IAsyncResult)running).AsyncWaitHandle.WaitOne(Limit))
            throw new TimeoutException("It did not end within 20 seconds.");
        running.GetAwaiter().GetResult();
    }
}
