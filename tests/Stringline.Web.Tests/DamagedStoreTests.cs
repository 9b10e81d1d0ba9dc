using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Stringline.Office.Portfolio;
using Stringline.Office.DemoOffice;
using Stringline.Office.Settings;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>
/// A row that is derived from the journal, or the settings, is damaged under an open desk: no page and no download stops for it, and each
/// says so.
/// </summary>
[Slow(Slow.Lasting)]
public sealed class DamagedStoreTests : IAsyncLifetime
{
    private static readonly string[] Pages =
        ["/", "/calendar", "/customers", "/searches?county=Yolo", "/settings", "/job/3", "/search?for=court", "/?only=now"];
    private static readonly string[] Files = ["/desk.csv", "/desk.xlsx", "/calendar.ics"];

    private readonly string folder = Scratch.Folder();
    private WebApplication desk = null!;
    private HttpClient browser = null!;

    private static Instant Noon =>
        OpenDesk.Today.At(new LocalTime(12, 0)).InZoneLeniently(DateTimeZoneProviders.Tzdb["America/Los_Angeles"]).ToInstant();

    private string Store => Path.Combine(folder, "office.stringline");

    private Portfolio Portfolio => desk.Services.GetRequiredService<Portfolio>();

    private IJournal Journal => desk.Services.GetRequiredService<IJournal>();

    public async ValueTask InitializeAsync()
    {
        desk = DeskHost.Build(new DeskOptions(Store, 0) { Who = "ana" }, new StoppedClock(Noon));
        Assert.Empty(Journal.PutMany(DemoJobs.Of(OpenDesk.Today), "demo").Faults);
        Portfolio.RefreshStale(OpenDesk.Today, 1);
        await desk.StartAsync(TestContext.Current.CancellationToken);
        browser = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, CookieContainer = new CookieContainer() }) {
            BaseAddress = new Uri(DeskHost.AddressOf(desk)) };
        using var let = await browser.GetAsync(new Uri(DeskHost.EntryOf(desk)), TestContext.Current.CancellationToken);
    }

    public async ValueTask DisposeAsync()
    {
        browser.Dispose();
        await desk.StopAsync();
        await desk.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("update steps set standing = 'xxx' where job = 3")]
    [InlineData("update steps set act_by = '2026-13-45' where job = 3")]
    [InlineData("update steps set act_by = 'garbage' where job = 3")]
    [InlineData("update steps set act_by = '2031-01-01' where job = 3")]
    [InlineData("update steps set lead = 1, weight = 9223372036854775807")]
    [InlineData("update assessed set act_by = 'garbage', customer = 'x' where job = 3")]
    [InlineData("delete from steps_written")]
    [InlineData("update search_texts set texts = 'no tab'")]
    [Attack("a damaged row or settings under an open desk")]
    public async Task No_page_and_no_download_stops_for_a_damaged_derived_row_and_it_is_made_anew(string damage)
    {
        var list = await Text("/desk.csv");
        var calendar = await Text("/calendar.ics");
        Tamper(damage);
        foreach (var address in Pages)
            await Text(address);
        foreach (var address in Files)
            Assert.NotEmpty(await Text(address));

        // The next day begins with a look through everything.
        Portfolio.RefreshStale(OpenDesk.Today.PlusDays(1), 1, stop: TestContext.Current.CancellationToken);
        Portfolio.RefreshStale(OpenDesk.Today, 1, stop: TestContext.Current.CancellationToken);
        Assert.Equal(list, await Text("/desk.csv"));
        Assert.Equal(calendar, await Text("/calendar.ics"));
        Portfolio.RefreshAnew(OpenDesk.Today, 1);
        Assert.True(Journal.Check().IsWhole);
    }

    [Fact]
    [Attack("a damaged row or settings under an open desk")]
    public async Task A_download_that_meets_a_damaged_row_has_it_made_anew_and_the_pages_say_so()
    {
        var list = await Text("/desk.csv");
        Tamper("update steps set act = 'Do nothing' where job = 3");
        Assert.Contains("is being made anew", await Text("/calendar"), StringComparison.Ordinal);
        Assert.Equal(list, await Text("/desk.csv"));
        Assert.Contains("was damaged, and was made anew", await Text("/"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("insert or replace into settings values (1, '{\"x\":')")]
    [InlineData("insert or replace into settings values (1, '{\"plan\":{\"mailBacklogDays\":1}}')")]
    [Attack("a damaged row or settings under an open desk")]
    public async Task Damaged_settings_stop_no_page_and_are_mended_on_the_page_of_settings(string damage)
    {
        Tamper(damage);
        foreach (var address in Pages)
            Assert.True((await Text(address)).Contains("What the office had set is damaged", StringComparison.Ordinal), address);
        foreach (var address in Files)
            await Text(address);
        Assert.True(OfficeSettings.Of(Journal).AreDamaged);
        Assert.Equal(StorePart.Settings, Assert.Single(Journal.Check().Broken).Part);
        Assert.True(Journal.WriteSettings(Journal.ReadSettings(), OfficeSettings.Of(Journal).Document()));
        Assert.DoesNotContain("What the office had set is damaged", await Text("/"), StringComparison.Ordinal);
        Assert.True(Journal.Check().IsWhole);
    }

    [Fact]
    public async Task An_entry_made_by_a_clock_that_was_set_back_is_kept_and_every_page_says_so()
    {
        using (var later = Journals.Open(Store, new StoppedClock(Noon + Duration.FromDays(90))))
            Assert.IsType<PutOutcome.Added>(later.Add(new KeyedJob("later", DemoJobs.Of(OpenDesk.Today).First().Job), "ben"));
        Assert.DoesNotContain("The clock of this computer", await Text("/"), StringComparison.Ordinal);
        var office = desk.Services.GetRequiredService<Desk>();
        Assert.IsType<PutOutcome.Added>(office.Add(new KeyedJob("now", DemoJobs.Of(OpenDesk.Today).First().Job)));
        Assert.Contains("The clock of this computer says Wed July 15, 2026", await Text("/"), StringComparison.Ordinal);
        Assert.True(Journal.Check().IsWhole);
    }

    private async Task<string> Text(string address)
    {
        using var answer = await browser.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.True(answer.StatusCode is HttpStatusCode.OK, $"{address}: {answer.StatusCode}");
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    private void Tamper(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={Store};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        Assert.True(command.ExecuteNonQuery() > 0);
    }
}
