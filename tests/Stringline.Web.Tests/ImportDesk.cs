using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Stringline.Office.Import;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>An open desk on an empty store that takes tables of at most 1 MiB.</summary>
public sealed partial class ImportDesk : IAsyncLifetime
{
    /// <summary>The largest table, in bytes.</summary>
    public const int Largest = 1024 * 1024;

    private readonly string folder = Scratch.Folder();
    private WebApplication desk = null!;

    /// <summary>Asks the desk; redirects are not followed.</summary>
    public HttpClient Browser { get; private set; } = null!;

    internal Desk Office => desk.Services.GetRequiredService<Desk>();

    internal IJournal Journal => desk.Services.GetRequiredService<IJournal>();

    internal WaitingTables Tables => desk.Services.GetRequiredService<WaitingTables>();

    internal TableLooks Looks => desk.Services.GetRequiredService<TableLooks>();

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        var clock = new StoppedClock(OpenDesk.Today.At(new LocalTime(12, 0))
            .InZoneLeniently(DateTimeZoneProviders.Tzdb["America/Los_Angeles"]).ToInstant());
        desk = DeskHost.Build(new DeskOptions(Path.Combine(folder, "office.stringline"), 0) { Who = "ana", LargestTable = Largest,
            Opening = OpenStore.OrMake }, clock);
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

    /// <summary>Sends a table, with the seal of the page first, as a browser would.</summary>
    public async Task<HttpResponseMessage> Send(string name, byte[] content, bool withSeal = true)
    {
        using var form = new MultipartFormDataContent();
        if (withSeal)
            form.Add(new StringContent(Seal().Match(await Page("/import")).Groups[1].Value), "\"__RequestVerificationToken\"");
        form.Add(new ByteArrayContent(content), "\"table\"", $"\"{name}\"");
        return await Browser.PostAsync(new Uri("/import", UriKind.Relative), form, TestContext.Current.CancellationToken);
    }

    /// <summary>Gives a table that is taken; the address of its page.</summary>
    public async Task<string> Give(string name, byte[] content)
    {
        using var answer = await Send(name, content);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return answer.Headers.Location!.ToString();
    }

    /// <summary>Presses a button of a page; whatever it is answered with.</summary>
    public async Task<string> PressAndRead(string address, string step, params IEnumerable<KeyValuePair<string, string>> fields)
    {
        var filled = fields.ToList();
        var shown = await Page(address.Split('?')[0]);
        if (Seen().Match(shown) is { Success: true } seen)
            filled.Add(new("Seen", WebUtility.HtmlDecode(seen.Groups[1].Value)));
        using var answer = await Browser.PostAsync(
            new Uri(address, UriKind.Relative),
            new FormUrlEncodedContent(
                [.. filled, new("step", step), new("__RequestVerificationToken", Seal().Match(shown).Groups[1].Value)]),
            TestContext.Current.CancellationToken);
        var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(answer.StatusCode is HttpStatusCode.OK or HttpStatusCode.Redirect, page);
        return page;
    }

    /// <summary>Presses a button that leads on.</summary>
    public async Task Press(string address, string step, params IEnumerable<KeyValuePair<string, string>> fields) =>
        Assert.Equal("", await PressAndRead(address, step, fields));

    /// <summary>Looks, with the columns as the page shows them where none is given; the page that tells.</summary>
    public async Task<string> Look(string address, params IEnumerable<KeyValuePair<string, string>> fields)
    {
        var filled = fields.ToList();
        if (filled.All(field => field.Key != "Kind"))
            filled.AddRange(Shown(await Page(address)));
        await Press(address, "look", filled);
        await Ended(address);
        return await Page(address);
    }

    /// <summary>Presses a button and waits until the work is done; the page that tells.</summary>
    public async Task<string> Do(string address, string step)
    {
        await Press(address, step);
        await Ended(address);
        return await Page(address);
    }

    /// <summary>Waits until a table is not worked on.</summary>
    public async Task Ended(string address)
    {
        for (var tries = 0; tries < 600 && State(address).IsRunning; tries++)
            await Task.Delay(50, TestContext.Current.CancellationToken);
        Assert.False(State(address).IsRunning);
    }

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

    /// <summary>What the whole journal holds: every job with its last hash.</summary>
    public string Fingerprint() => string.Join('\n', Journal.Tips().Select(tip => tip.ToString()));

    internal ImportState State(string address) => desk.Services.GetRequiredService<ImportRuns>().Find(address.Split('/')[2])!;

    // What a browser would send of the selects as they stand.
    private static IEnumerable<KeyValuePair<string, string>> Shown(string page) => Select().Matches(page)
        .Where(select => select.Groups[1].Value is "Kind" or "Days" || select.Groups[1].Value[0] == 'c')
        .Select(select => new KeyValuePair<string, string>(select.Groups[1].Value, Chosen().Match(select.Groups[2].Value).Groups[1].Value));

    [GeneratedRegex("<select[^>]* name=\"([^\"]+)\"[^>]*>(.*?)</select>", RegexOptions.Singleline)]
    private static partial Regex Select();

    [GeneratedRegex("<option value=\"([^\"]*)\" selected=\"selected\">")]
    private static partial Regex Chosen();

    [GeneratedRegex("name=\"Seen\" value=\"([^\"]*)\"")]
    private static partial Regex Seen();

    [GeneratedRegex("name=\"__RequestVerificationToken\" type=\"hidden\" value=\"([^\"]+)\"")]
    private static partial Regex Seal();
}
