using Stringline.Law.Reasoning;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>
/// What is to be done on each job: written with its assessment, listed, filtered and summed. Expected sums are made here, in memory.
/// </summary>
public abstract class StepsTests : IDisposable
{
    private static readonly LocalDate Day = new(2026, 6, 1);
    private static readonly LocalDate Never = new(9999, 12, 31);
    private static readonly string[] Customers = ["Núñez & Daughters", "=1+1", "Zeta"];

    private readonly Lazy<Place> place;

    protected StepsTests(Func<Place> make) => place = new Lazy<Place>(make);

    public void Dispose()
    {
        if (place.IsValueCreated)
            place.Value.Dispose();
        GC.SuppressFinalize(this);
    }

    [Fact]
    public void Steps_are_listed_by_day_and_of_one_day_by_dollars()
    {
        var (journal, jobs) = Filled(40);
        StepFilter[] filters = [StepFilter.None, new() { Customer = Customers[0] }, new() { Remedy = "Claim of lien", County = "Yolo" }];
        foreach (var filter in filters)
        {
            foreach (var watch in (bool?[])[false, true, null])
            {
                var expected = jobs.Where(job => Passes(job, filter))
                    .SelectMany(job => job.Steps.Select((step, ordinal) => (job.Job, step, ordinal)))
                    .Where(s => (watch is null || s.step.Watch == watch) && (filter.Remedy is null || s.step.Remedy == filter.Remedy)
                        && s.step.ActBy >= Day && s.step.ActBy <= Day.PlusDays(9))
                    .OrderBy(s => s.step.ActBy).ThenByDescending(s => s.step.AtStake ?? 0).ThenBy(s => s.Job).ThenBy(s => s.ordinal)
                    .Select(s => (s.Job, s.step)).ToList();
                var first = journal.Steps(new StepQuery(filter, Day, Day.PlusDays(9), 5) { Watch = watch });
                var rest = journal.Steps(new StepQuery(filter, Day, Day.PlusDays(9), 1000) { Watch = watch, Skip = 5 });
                Assert.Equal(expected, first.Concat(rest).Select(line => (line.Job, line.Step)));
            }
        }
    }

    [Fact]
    public void Totals_count_every_step_and_the_dollars_of_a_job_once_where_its_first_step_lies()
    {
        var (journal, jobs) = Filled(40);
        LocalDate[] ends = [Day, Day.PlusDays(6)];
        var totals = journal.StepTotals(StepFilter.None, ends);
        (LocalDate From, LocalDate Through)[] spans =
            [(new LocalDate(1, 1, 1), ends[0]), (ends[0].PlusDays(1), ends[1]), (ends[1].PlusDays(1), Never)];
        Assert.Equal(spans.Length, totals.Count);
        foreach (var ((from, through), total) in spans.Zip(totals))
        {
            bool In(AssessedStep step) => !step.Watch && step.ActBy >= from && step.ActBy <= through;
            var leads = jobs.Select(job => job.Steps.FirstOrDefault(step => !step.Watch)).OfType<AssessedStep>().Where(In).ToList();
            Assert.Equal(new StepTotal(
                jobs.Sum(job => job.Steps.Count(In)), leads.Count, leads.Sum(step => step.AtStake ?? 0),
                leads.Sum(step => step.Owed ?? 0)), total);
        }
    }

    [Fact]
    public void Watches_are_gathered_by_county_and_choices_are_each_value_once()
    {
        var (journal, jobs) = Filled(40);
        var expected = jobs.Where(job => job.Steps.Any(step => step.Watch && step.ActBy <= Day.PlusDays(5))).GroupBy(job => job.County!)
            .Select(county => new WatchTotal(county.Key, county.Count(), county.Min(job => job.Steps.First(step => step.Watch).ActBy)))
            .OrderBy(total => total.County, StringComparer.Ordinal);
        Assert.Equal(expected, journal.Watches(StepFilter.None, Day.PlusDays(5)).OrderBy(total => total.County, StringComparer.Ordinal));
        var choices = journal.Choices(100);
        Assert.Equal(Customers.Order(StringComparer.Ordinal), choices.Customers);
        Assert.Equal(["Kern", "Yolo"], choices.Counties);
        Assert.Equal([.. Customers.Order(StringComparer.Ordinal).Take(2)], journal.Choices(2).Customers);
    }

    [Fact]
    public void Assessing_again_replaces_the_steps_and_is_marked()
    {
        var (journal, jobs) = Filled(3);
        var before = journal.StepsWritten();
        Assert.Equal(before, journal.StepsWritten());
        journal.WriteAssessed([jobs[0] with { Steps = [] }]);
        Assert.NotEqual(before, journal.StepsWritten());
        Assert.DoesNotContain(
            journal.Steps(new StepQuery(StepFilter.None, new LocalDate(1, 1, 1), Never, 100)), line => line.Job == jobs[0].Job);
        Assert.Equal((3L, 3L), journal.CountAssessed("1", Day));
        Assert.Equal((3L, 0L), journal.CountAssessed("2", Day));
        Assert.Equal(jobs.Where(job => job.Customer == Customers[1]).Select(job => job.Job), journal.JobsOf(Customers[1], 10)
            .Select(tip => tip.Id));
    }

    private static bool Passes(AssessedJob job, StepFilter filter) =>
        (filter.Customer is null || job.Customer == filter.Customer) && (filter.County is null || job.County == filter.County);

    private (IJournal Journal, List<AssessedJob> Jobs) Filled(int count)
    {
        var journal = place.Value.Open();
        journal.PutMany(Enumerable.Range(1, count).Select(i => new KeyedJob($"k{i}", Samples.Bare())), "test");
        var jobs = journal.Tips().Select(tip => new AssessedJob
        {
            Job = tip.Id,
            Sequence = tip.Sequence,
            Rules = "1",
            AsOf = Day,
            Standing = Standing.Open,
            What = "lien-right",
            Customer = Customers[(int)(tip.Id % 3)],
            County = tip.Id % 2 == 0 ? "Yolo" : "Kern",
            Person = "M. Quint",
            Steps = [.. Steps((int)tip.Id)],
            Findings = "[]"u8.ToArray(),
        }).ToList();
        journal.WriteAssessed(jobs);
        return (journal, jobs);
    }

    private static IEnumerable<AssessedStep> Steps(int job)
    {
        if (job % 4 == 0)
            yield return new("index-watch.next-day", "Search", "Claim of lien", Day.PlusDays(job % 8), Standing.Open) { Watch = true,
                Reading = "no search yet" };
        for (var i = 0; i < job % 3; i++)
        {
            yield return new($"claim-{i}", "Record", i == 0 ? "Claim of lien" : "Payment bond", Day.PlusDays((job * 5 % 13) + i - 2),
                Standing.InDoubt)
            {
                AtStake = job % 5 == 0 ? null : job * 7 % 11 * 100.01m,
                Owed = job % 5 == 0 ? null : job * 13 % 17 * 100.03m,
                Stakes = job % 5 == 0 ? "no amount yet" : "owed $1.00",
                Left = i == 0 ? "arguable" : null,
                Outlook = i == 0 ? "Planned day past." : null,
                Section = "Civ. Code § 8414",
            };
        }
    }
}

public sealed class SqliteStepsTests() : StepsTests(() => new SqlitePlace());

[Slow(Slow.PostgreSql)]
public sealed class PostgresStepsTests() : StepsTests(() => new PostgresPlace());
