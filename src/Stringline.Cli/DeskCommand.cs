using System.Diagnostics;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Stringline.Store;
using Stringline.Web;

namespace Stringline.Cli;

/// <summary>The command <c>desk</c>.</summary>
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
            say($"The desk is open at {address} on {desk.Services.GetRequiredService<Desk>().Journal.Name}. Stop it with Ctrl+C.");
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
