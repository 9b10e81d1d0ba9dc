using Stringline.Office.Portfolio;
using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Stringline.Office.DemoOffice;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>A desk that is open on a port of its own, with the demo office in a store of its own, every job assessed.</summary>
public sealed class OpenDesk : IAsyncLifetime
{
    /// <summary>The day that the desk takes for today.</summary>
    public static readonly LocalDate Today = new(2026, 7, 15);

    private readonly string folder = Scratch.Folder();
    private WebApplication desk = null!;

    /// <summary>Asks the desk; redirects are not followed.</summary>
    public HttpClient Browser { get; private set; } = null!;

    internal IServiceProvider Services => desk.Services;

    internal Uri Entry => new(DeskHost.EntryOf(desk));

    internal Desk Office => desk.Services.GetRequiredService<Desk>();

    internal IJournal Journal => desk.Services.GetRequiredService<IJournal>();

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        var clock = new StoppedClock(Today.At(new LocalTime(12, 0)).InZoneLeniently(DateTimeZoneProviders.Tzdb["America/Los_Angeles"])
            .ToInstant());
        desk = DeskHost.Build(new DeskOptions(Path.Combine(folder, "office.stringline"), 0) { Who = "ana" }, clock);
        Assert.Empty(Journal.PutMany(DemoJobs.Of(Today), "demo").Faults);
        desk.Services.GetRequiredService<Portfolio>().RefreshStale(Today, Environment.ProcessorCount);

        await desk.StartAsync(TestContext.Current.CancellationToken);
        Browser = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, CookieContainer = new CookieContainer() }) {
            BaseAddress = new Uri(DeskHost.AddressOf(desk)) };
        using var let = await Browser.GetAsync(new Uri(DeskHost.EntryOf(desk)), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Redirect, let.StatusCode);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        Browser.Dispose();
        await desk.StopAsync();
        await desk.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>The text of a page that answers 200.</summary>
    public async Task<string> Page(string address)
    {
        using var answer = await Browser.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }
}
