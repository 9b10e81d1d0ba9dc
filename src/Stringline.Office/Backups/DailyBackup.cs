using Microsoft.Extensions.Logging;
using Stringline.Office.Settings;
using Stringline.Store;
using Stringline.Store.Upkeep;

namespace Stringline.Office.Backups;

/// <summary>Makes one backup a day while the desk is open, proves it, and deletes those that need no longer be kept.</summary>
/// <param name="journal">The store.</param>
/// <param name="options">Its address, and whether to make any.</param>
/// <param name="clock">The clock: a backup's day is the real one, whatever day the desk is shown for.</param>
/// <param name="log">Where a failure is written too.</param>
internal sealed class DailyBackup(IJournal journal, DeskOptions options, IClock clock, ILogger<DailyBackup> log) : IBackgroundWork,
    IDisposable
{
    /// <summary>A last backup of more than so many days ago is warned of.</summary>
    public const int OldAfterDays = 2;

    // The desk opens first; and a day that turns is seen within the half hour.
    private static readonly TimeSpan First = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan Pause = TimeSpan.FromMinutes(30);

    private static readonly Action<ILogger, Exception?> NotMade = LoggerMessage.Define(LogLevel.Error, default, "No backup could be made.");

    private readonly Lock gate = new();
    private readonly SemaphoreSlim wake = new(0);
    private volatile string? trouble;

    /// <summary>Whether this desk makes any.</summary>
    public bool IsOn => options.Backups;

    /// <summary>How it stands with the backups: where they lie, the last one that was found whole, and what went wrong since.</summary>
    public BackupStanding Standing()
    {
        try
        {
            var folder = Folder();
            return new BackupStanding(folder.Path, folder.All() is [var last, ..] ? last : null, Now().Date, trouble);
        }
        catch (StoreException e)
        {
            return new BackupStanding(null, null, Now().Date, e.Message);
        }
    }

    /// <summary>Looks again at once, and not only when the pause is over.</summary>
    public void Wake() => wake.Release();

    /// <summary>Makes the backup of today where there is none yet, then deletes those that need not be kept.</summary>
    /// <returns>The one that was made; null where today's is there.</returns>
    /// <exception cref="StoreException">It could not be made, or an old one not be deleted.</exception>
    public DatedBackup? Run()
    {
        lock (gate)
        {
            var now = Now();
            var folder = Folder();
            if (folder.All().Any(one => one.At.Date == now.Date))
                return null;
            var made = folder.Make(journal, now);
            folder.Thin(now.Date);
            return made;
        }
    }

    /// <inheritdoc/>
    public async Task RunAsync(CancellationToken stopping)
    {
        if (!IsOn)
            return;
        for (var pause = First; ; pause = Pause)
        {
            await wake.WaitAsync(pause, stopping).ConfigureAwait(false);
            try
            {
                await Task.Run(Run, stopping).ConfigureAwait(false);
                trouble = null;
            }
            catch (Exception e) when (e is StoreException or IOException or UnauthorizedAccessException)
            {
                // Shown on the desk until it goes well again.
                trouble = e.Message;
                NotMade(log, e);
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose() => wake.Dispose();

    private BackupFolder Folder() => BackupPlace.Of(options.Store, OfficeSettings.Of(journal));

    private LocalDateTime Now() => Today.MomentInCalifornia(clock);
}
