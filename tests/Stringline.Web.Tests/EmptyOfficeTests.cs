using Stringline.Office.DemoOffice;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Web.Tests;

public sealed class EmptyOfficeTests
{
    private static readonly StoppedClock Noon = new(Instant.FromUtc(2026, 7, 15, 20, 0));

    [Fact]
    public async Task An_empty_office_leads_to_a_first_job()
    {
        var folder = Scratch.Folder();
        try
        {
            await using var desk = DeskHost.Build(new DeskOptions(Path.Combine(folder, "empty.stringline"), 0), Noon);
            await desk.StartAsync(TestContext.Current.CancellationToken);
            using var browser = new HttpClient();
            Assert.Contains("href=\"/jobs/new\"",
                await browser.GetStringAsync(new Uri(DeskHost.EntryOf(desk)), TestContext.Current.CancellationToken),
                    StringComparison.Ordinal);
            await desk.StopAsync(TestContext.Current.CancellationToken);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void A_store_that_cannot_be_opened_is_said_before_anything_is_served() =>
        Assert.Throws<StoreException>(() => DeskHost.Build(new DeskOptions(Directory.GetCurrentDirectory(), 0), Noon));

    [Theory]
    [InlineData(2026, 1, 1)]
    [InlineData(2026, 2, 28)]
    [InlineData(2027, 12, 31)]
    [InlineData(2028, 2, 29)]
    public void The_demo_office_has_forty_jobs_of_different_names_on_any_day(int year, int month, int day)
    {
        var jobs = DemoJobs.Of(new LocalDate(year, month, day)).ToList();
        Assert.Equal(40, jobs.Count);
        Assert.Equal(40, jobs.Select(job => job.Job.Name).Distinct().Count());
        Assert.Equal(8, jobs.Select(job => job.Job.Party(job.Job.Claimant.HiredBy)!.Name).Distinct().Count());
    }
}
