using Stringline.Office.Portfolio;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Stringline.Office.Backups;
using Stringline.Office.DemoOffice;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>The desk's own backups: one a day, told on its pages, tried by a drill.</summary>
[Slow(Slow.Lasting)]
public sealed class DailyBackupTests : IDisposable
{
    private static readonly LocalDate Day = new(2026, 7, 15);
    private readonly string folder = Scratch.Folder();

    private string Store => Path.Combine(folder, "office.stringline");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task One_a_day_is_made_and_told_and_an_old_one_is_warned_of()
    {
        var clock = new MovedClock(Noon(Day));
        await using var desk = await Open(clock);
        using var browser = await Browser(desk);
        var backup = desk.Services.GetRequiredService<DailyBackup>();
        Assert.Contains("There is no backup of this store yet", await Page(browser, "settings"), StringComparison.Ordinal);
        var made = backup.Run();
        Assert.NotNull(made);
        Assert.Null(backup.Run());
        Assert.Equal(Store + ".backups", Path.GetDirectoryName(made.Path));
        var settings = await Page(browser, "settings");
        Assert.Contains("12:00 p.m.", settings, StringComparison.Ordinal);
        Assert.Contains("Last good backup:", await Page(browser, ""), StringComparison.Ordinal);
        Assert.Contains(Store + ".backups", settings, StringComparison.Ordinal);
        clock.Now = Noon(Day.PlusDays(2));
        Assert.DoesNotContain("last good backup", await Page(browser, ""), StringComparison.Ordinal);
        clock.Now = Noon(Day.PlusDays(3));
        Assert.Contains("The last good backup was made on", await Page(browser, ""), StringComparison.Ordinal);
        Assert.NotNull(backup.Run());
        Assert.DoesNotContain("last good backup", await Page(browser, ""), StringComparison.Ordinal);
        Assert.Equal(2, Directory.GetFiles(Store + ".backups").Length);
    }

    [Fact]
    public async Task A_store_whose_log_lost_what_was_recorded_is_told_on_every_page()
    {
        DamagedLog.Lay(Store);
        await using var desk = await Open(new MovedClock(Noon(Day)));
        using var browser = await Browser(desk);
        foreach (var page in (string[])["", "calendar", "settings"])
            Assert.Contains("Something that was recorded may be missing", await Page(browser, page), StringComparison.Ordinal);
    }

    [Fact(Timeout = 120_000)]
    public async Task One_that_cannot_be_made_is_told_on_the_first_page_until_it_can_be()
    {
        File.WriteAllText(Store + ".backups", "a file where the folder should be");
        await using var desk = await Open(new MovedClock(Noon(Day)), backups: true);
        using var browser = await Browser(desk);
        var backup = desk.Services.GetRequiredService<DailyBackup>();
        backup.Wake();
        await Until(() => backup.Standing().Trouble is not null, TestContext.Current.CancellationToken);
        Assert.Contains("No backup could be made", await Page(browser, ""), StringComparison.Ordinal);
        File.Delete(Store + ".backups");
        backup.Wake();
        await Until(() => backup.Standing() is { Trouble: null, Last: not null }, TestContext.Current.CancellationToken);
        Assert.DoesNotContain("No backup could be made", await Page(browser, ""), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_command_finds_the_folder_that_the_office_named_and_tries_the_newest()
    {
        var named = Path.Combine(folder, "elsewhere");
        await using (var desk = await Open(new MovedClock(Noon(Day))))
        {
            desk.Services.GetRequiredService<Desk>().ChangeSettings(settings => settings with { BackupFolder = named });
            Assert.NotNull(desk.Services.GetRequiredService<DailyBackup>().Run());
        }

        Assert.Single(Directory.GetFiles(named));
        var drill = await Tool.Run(["store", "drill", "--store", Store]);
        Assert.True(drill.Status == 0, drill.Errors);
        Assert.Contains("it is whole", drill.Output, StringComparison.Ordinal);
        File.Delete(Store);
        Assert.Equal(1, (await Tool.Run(["store", "drill", "--store", Store])).Status);
        Assert.Equal(0, (await Tool.Run(["store", "drill", "--store", Store, "--from", named])).Status);
    }

    private static Instant Noon(LocalDate day) =>
        day.At(new LocalTime(12, 0)).InZoneLeniently(DateTimeZoneProviders.Tzdb["America/Los_Angeles"]).ToInstant();

    private static async Task<HttpClient> Browser(WebApplication desk)
    {
        var browser = new HttpClient { BaseAddress = new Uri(DeskHost.AddressOf(desk)) };
        await browser.GetStringAsync(new Uri(DeskHost.EntryOf(desk)), TestContext.Current.CancellationToken);
        return browser;
    }

    private static async Task<string> Page(HttpClient browser, string address) =>
        await browser.GetStringAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);

    private static async Task Until(Func<bool> holds, CancellationToken stop)
    {
        while (!holds())
            await Task.Delay(20, stop);
    }

    private async Task<WebApplication> Open(IClock clock, bool backups = false)
    {
        var desk = DeskHost.Build(new DeskOptions(Store, 0) { Who = "ana", Backups = backups }, clock);
        Assert.Empty(desk.Services.GetRequiredService<IJournal>().PutMany([.. DemoJobs.Of(Day).Take(3)], "demo").Faults);
        desk.Services.GetRequiredService<Portfolio>().RefreshStale(Day, 1);
        await desk.StartAsync(TestContext.Current.CancellationToken);
        return desk;
    }

    private sealed class MovedClock(Instant now) : IClock
    {
        public Instant Now { get; set; } = now;

        public Instant GetCurrentInstant() => Now;
    }
}
