using System.Collections.Concurrent;

namespace Stringline.Store.Sql;

/// <summary>
/// Works on a stream on several cores: one thread draws the items, workers work on them, and the results come in the order of the items.
/// </summary>
internal static class OnCores
{
    // So many items go to a worker at once, and so many such lots for each core may wait: memory does not grow with the stream.
    private const int Lot = 64;
    private const int LotsForEachCore = 4;

    /// <summary>The results. An error of the stream or of the work comes to whoever draws them.</summary>
    public static IEnumerable<TResult> Select<T, TResult>(IEnumerable<T> items, int cores, Func<T, TResult> work)
    {
        using var stop = new CancellationTokenSource();
        using var lots = new BlockingCollection<Task<TResult[]>>(cores * LotsForEachCore);
        var drawing = Task.Factory.StartNew(
            () => Draw(items, cores, work, lots, stop.Token), CancellationToken.None, TaskCreationOptions.LongRunning,
            TaskScheduler.Default);
        try
        {
            foreach (var lot in lots.GetConsumingEnumerable(CancellationToken.None))
            {
                foreach (var result in lot.GetAwaiter().GetResult())
                    yield return result;
            }
        }
        finally
        {
            // Whoever stops early waits for the thread that draws, which holds the connection.
            stop.Cancel();
            drawing.ContinueWith(static _ => { }, TaskScheduler.Default).GetAwaiter().GetResult();
        }

        drawing.GetAwaiter().GetResult();
    }

    private static void Draw<T, TResult>(
        IEnumerable<T> items, int cores, Func<T, TResult> work, BlockingCollection<Task<TResult[]>> lots, CancellationToken stop)
    {
        var workers = new ConcurrentExclusiveSchedulerPair(TaskScheduler.Default, cores).ConcurrentScheduler;
        try
        {
            foreach (var lot in items.Chunk(Lot))
                lots.Add(Task.Factory.StartNew(
                    () => Array.ConvertAll(lot, item => work(item)), CancellationToken.None, TaskCreationOptions.DenyChildAttach,
                    workers), stop);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            // Nobody wants the rest.
        }
        finally
        {
            lots.CompleteAdding();
        }
    }
}
