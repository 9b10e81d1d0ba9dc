using Microsoft.Extensions.Logging;
using Stringline.Store;

namespace Stringline.Office.Portfolio;

/// <summary>
/// Brings the portfolio up to date when the desk opens, when the day turns, and when another program has written to the store.
/// </summary>
internal sealed class PortfolioRefresh(Portfolio portfolio, DeskDay day, ILogger<PortfolioRefresh> log)
    : IBackgroundWork, IProgress<PortfolioProgress>, IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(30);
    // One core stays free for whoever is looking at the desk meanwhile.
    private static readonly int Cores = Math.Max(1, Environment.ProcessorCount - 1);
    private static readonly Action<ILogger, Exception?> NotAssessed =
        LoggerMessage.Define(LogLevel.Error, default, "The portfolio could not be assessed.");
    private readonly SemaphoreSlim wake = new(0);
    private volatile PortfolioProgress? progress;
    private volatile string? trouble;

    /// <summary>How far it has come; null where nothing is being assessed.</summary>
    public PortfolioProgress? Progress => progress;

    /// <summary>Why the last attempt stopped; null where it went well.</summary>
    public string? Trouble => trouble;

    /// <summary>Begins at once, and not only when the pause is over.</summary>
    public void Wake() => wake.Release();

    /// <summary>Says that a job was written to and could not be assessed after it, and tries again.</summary>
    public void FellBehind(Exception why)
    {
        Tell(why);
        Wake();
    }

    // Shown on every page until it goes well again.
    private void Tell(Exception why)
    {
        trouble = why is StoreException ? why.Message : $"Stringline itself failed ({why.Message}); please report it.";
        NotAssessed(log, why);
    }

    /// <inheritdoc/>
    void IProgress<PortfolioProgress>.Report(PortfolioProgress value) => progress = value;

    /// <inheritdoc/>
    public async Task RunAsync(CancellationToken stopping)
    {
        // Off the thread that starts the desk: the desk opens at once, and its page says how far this has come.
        await Task.Yield();
        while (!stopping.IsCancellationRequested)
        {
            try
            {
                await Task.Run(() => portfolio.RefreshStale(day.Today, Cores, this, stopping), stopping).ConfigureAwait(false);
                trouble = null;
            }
            catch (OperationCanceledException) when (stopping.IsCancellationRequested)
            {
                return;
            }
            catch (Exception e)
            {
                Tell(e);
            }
            finally
            {
                progress = null;
            }

            await wake.WaitAsync(Pause, stopping).ConfigureAwait(false);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => wake.Dispose();
}
