using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Mvc.Infrastructure;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Stringline.Office.Portfolio;
using Stringline.Office;
using Stringline.Web;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Browser.Tests;

/// <summary>A desk that is served from this process on a port of its own, on a store in a folder of its own.</summary>
internal sealed class ServedDesk : IAsyncDisposable
{
    private readonly string folder = Scratch.Folder();
    private readonly WebApplication desk;

    private ServedDesk(LocalDate today)
    {
        Clock = new StandingClock(today);
        desk = DeskHost.Build(new DeskOptions(Path.Combine(folder, "office.stringline"), 0) { Who = "ana" }, Clock);
    }

    /// <summary>Its clock.</summary>
    public StandingClock Clock { get; }

    /// <summary>Its address, with a slash at the end.</summary>
    public Uri Address => new(DeskHost.AddressOf(desk));

    /// <summary>The address that lets a browser in.</summary>
    public Uri Entry => new(DeskHost.EntryOf(desk));

    /// <summary>What it is made of.</summary>
    public IServiceProvider Services => desk.Services;

    /// <summary>The addresses of its pages, with <c>{id:long}</c> and the like where an address has a part of its own.</summary>
    public IReadOnlyList<string> Routes =>
        [.. desk.Services.GetRequiredService<IActionDescriptorCollectionProvider>().ActionDescriptors.Items
        .OfType<PageActionDescriptor>().Select(page => "/" + page.AttributeRouteInfo!.Template).Distinct()];

    /// <summary>Serves a desk with these jobs, every one assessed.</summary>
    public static async Task<ServedDesk> Start(LocalDate today, params IEnumerable<KeyedJob> jobs)
    {
        var served = new ServedDesk(today);
        Assert.Empty(served.desk.Services.GetRequiredService<IJournal>().PutMany(jobs, "demo").Faults);
        served.Assess();
        await served.desk.StartAsync();
        return served;
    }

    /// <summary>Assesses every job as of the clock's day, as the desk does by itself when a day begins.</summary>
    public void Assess() => desk.Services.GetRequiredService<Portfolio>().RefreshStale(Clock.Day, 1);

    /// <summary>What its whole journal holds: every job with its last hash.</summary>
    public string Fingerprint() => string.Join('\n', desk.Services.GetRequiredService<IJournal>().Tips());

    /// <summary>Holds the store as another program's transaction would, until it is let go.</summary>
    public IDisposable HoldStore()
    {
        var connection = new SqliteConnection($"Data Source={Path.Combine(folder, "office.stringline")};Pooling=False");
        connection.Open();
        using var begin = connection.CreateCommand();
        begin.CommandText = "begin immediate";
        begin.ExecuteNonQuery();
        return connection;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await desk.StopAsync();
        await desk.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }
}
