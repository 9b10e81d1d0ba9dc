using Stringline.Law.Facts;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Office.Tests;

/// <summary>The assessment of a whole store: only what can have changed, and the same as job by job.</summary>
public sealed class PortfolioTests : IDisposable
{
    private static readonly LocalDate Day = new(2026, 5, 1);

    private readonly string folder = Scratch.Folder();
    private readonly IJournal journal;
    private readonly Portfolio.Portfolio portfolio;

    public PortfolioTests()
    {
        journal = Journals.Open(Path.Combine(folder, "office.stringline"), SystemClock.Instance, OpenStore.OrMake);
        portfolio = new Portfolio.Portfolio(journal);
    }

    private static JobFile Job(int number) => new JobBuilder()
        .Notice("2026-03-10")
        .Furnished("2026-03-02", 900m + number, "INV-1")
        .Completed(JobBuilder.Day("2026-03-20").PlusDays(number % 40).ToString("uuuu-MM-dd", null))
        .Build();

    [Fact]
    public void A_second_run_assesses_nothing_and_a_new_entry_its_job_alone()
    {
        var put = journal.PutMany(Enumerable.Range(0, 500).Select(i => new KeyedJob($"J{i}", Job(i))), "ana");
        Assert.Equal(500, put.Added);
        Assert.Equal(500, portfolio.RefreshStale(Day, 2, stop: TestContext.Current.CancellationToken));
        Assert.Equal(0, portfolio.RefreshStale(Day, 2, stop: TestContext.Current.CancellationToken));

        var job = journal.Find("J77")!;
        var entry = new Paid { Index = 0, On = DayFact.On(new LocalDate(2026, 4, 1)), Amount = 100m };
        Assert.IsType<AppendOutcome.Appended>(journal.Append(job.Tip.Id, job.Tip.Sequence, [new JobChange.Happened(entry)], "ana"));
        Assert.Equal(1, portfolio.RefreshStale(Day, 2, stop: TestContext.Current.CancellationToken));
        Assert.Equal(journal.Find("J77")!.Tip.Sequence, journal.ReadAssessed(job.Tip.Id)!.Sequence);
        Assert.Equal(500, portfolio.RefreshStale(Day.PlusDays(1), 1, stop: TestContext.Current.CancellationToken));
    }

    [Fact]
    public void The_whole_store_gives_what_each_job_gives()
    {
        journal.PutMany(Enumerable.Range(0, 300).Select(i => new KeyedJob($"J{i}", Job(i))), "ana");
        portfolio.RefreshStale(Day, 2, stop: TestContext.Current.CancellationToken);
        foreach (var stored in journal.ReadAll(JobsToRead.All))
        {
            // The other way: through the history of the job, one by one.
            var alone = UseCases.Assess(stored.Job, Day);
            var kept = journal.ReadAssessed(stored.Tip.Id)!;
            Assert.Equal(alone.Next.FirstOrDefault(step => !step.Watch)?.ActBy, kept.ActBy);
            Assert.Equal(alone.Next.FirstOrDefault(step => !step.Watch)?.Finding ?? alone.Right.Id, kept.What);
            Assert.Equal(alone.Next.FirstOrDefault(step => !step.Watch)?.AtStake, kept.AtStake);
        }
    }

    [Fact]
    [Slow(Slow.Lasting)]
    public void Who_stops_reading_the_store_early_leaves_it_usable_and_an_error_in_the_work_comes_out()
    {
        journal.PutMany(Enumerable.Range(0, 2000).Select(i => new KeyedJob($"J{i}", Job(i))), "ana");
        Assert.Equal(["J0", "J1", "J2"], journal.OfEach(JobsToRead.All, 2, (tip, _) => tip.Key).Take(3));
        Assert.Equal(Enumerable.Range(0, 2000).Select(i => $"J{i}"), journal.OfEach(JobsToRead.All, 2, (tip, _) => tip.Key));
        var error = Assert.Throws<InvalidOperationException>(() =>
            journal.OfEach(JobsToRead.All, 2, (tip, _) => tip.Key == "J999" ? throw new InvalidOperationException("no") : tip.Key).Count());
        Assert.Equal("no", error.Message);
        Assert.Equal(2000, journal.OfEach(JobsToRead.All, 2, (tip, _) => tip.Key).Count());
    }

    public void Dispose()
    {
        journal.Dispose();
        Directory.Delete(folder, recursive: true);
    }
}
