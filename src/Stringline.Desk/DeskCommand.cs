using System.Diagnostics;
using Stringline.Desk.DemoOffice;
using Stringline.Desk.Web;
using Stringline.Store;

namespace Stringline.Desk;

/// <summary>The commands <c>desk</c> and <c>demo-office</c>.</summary>
internal static class DeskCommand
{
    /// <summary>Opens the desk and stays until it is stopped.</summary>
    /// <param name="options">How.</param>
    /// <param name="usualPort">Whether the port was not asked for, so that another may be taken where it is in use.</param>
    /// <param name="browser">Whether to show it in the user's browser.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="say">Tells the user.</param>
    public static async Task<Outcome<bool>> Open(DeskOptions options, bool usualPort, bool browser, IClock clock, Action<string> say)
    {
        WebApplication? desk = null;
        OpeningPage? page = null;
        try
        {
            desk = DeskHost.Build(options, clock);
            try
            {
                await desk.StartAsync().ConfigureAwait(false);
            }
            catch (IOException) when (usualPort)
            {
                await desk.DisposeAsync().ConfigureAwait(false);
                desk = DeskHost.Build(options with { Port = 0 }, clock);
                await desk.StartAsync().ConfigureAwait(false);
            }

            var address = DeskHost.EntryOf(desk);
            say($"The desk is open at {address} on {desk.Services.GetRequiredService<Office>().Journal.Name}. Stop it with Ctrl+C.");
            if (browser)
            {
                // On Windows nobody else can see what a program was started with.
                page = OperatingSystem.IsWindows() ? null : OpeningPage.To(address);
                if (page is not null)
                    desk.Services.GetRequiredService<StartSecret>().LetIn += page.Dispose;
                if (!(OperatingSystem.IsWindows() ? Show(address) : page is not null && Show(page.Path)))
                    say("No browser could be opened; copy the address into one.");
            }

            await desk.WaitForShutdownAsync().ConfigureAwait(false);
            return new Outcome<bool>.Done(true);
        }
        catch (StoreException e)
        {
            return new Outcome<bool>.Refused([e.Message]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new Outcome<bool>.Refused([$"The desk cannot be opened: {e.Message}\n  Name another --port or --store."]);
        }
        finally
        {
            page?.Dispose();
            if (desk is not null)
                await desk.DisposeAsync().ConfigureAwait(false);
        }
    }

    /// <summary>Makes the store of the demo office for a day, where it is not there yet.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="today">The day to which its jobs are relative.</param>
    /// <param name="jobs">How many jobs.</param>
    /// <param name="clock">The clock.</param>
    /// <returns>The store's path.</returns>
    public static Outcome<string> MakeDemoOffice(string folder, LocalDate today, int jobs, IClock clock)
    {
        try
        {
            OwnerOnly.Folder(folder);
            var path = Path.Combine(folder, $"office-{Exchange.DayText.Write(today)}.stringline");
            using var journal = Journals.Open(path, clock, OpenStore.OrMake);
            if (journal.CountJobs() == 0)
            {
                var report = journal.PutMany(DemoJobs.Of(today, jobs), "demo");
                if (report.Faults.Count > 0)
                    throw new InvalidOperationException("The demo office is refused: " + report.Faults[0]);
            }

            return new Outcome<string>.Done(path);
        }
        catch (StoreException e)
        {
            return new Outcome<string>.Refused([e.Message]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new Outcome<string>.Refused([$"{folder} cannot be written to: {e.Message}\n  Name a folder that this user may write to."]);
        }
    }

    private static bool Show(string place)
    {
        var start = OperatingSystem.IsWindows() ? new ProcessStartInfo(place) { UseShellExecute = true }
            : OperatingSystem.IsMacOS() ? new ProcessStartInfo("open", [place])
            : new ProcessStartInfo("xdg-open", [place]) { RedirectStandardError = true, RedirectStandardOutput = true };
        try
        {
            using var shown = Process.Start(start);
            return shown is not null;
        }
        catch (Exception e) when (e is System.ComponentModel.Win32Exception or FileNotFoundException)
        {
            return false;
        }
    }
}
