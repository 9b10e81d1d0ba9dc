using System.Globalization;
using Stringline.Law.Reasoning;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>What assessments found, and the desk's list of it.</summary>
public abstract class AssessedTests : IDisposable
{
    private static readonly LocalDate Day = new(2026, 6, 1);

    private readonly Lazy<Place> place;

    protected AssessedTests(Func<Place> make) => place = new Lazy<Place>(make);

    public void Dispose()
    {
        if (place.IsValueCreated)
            place.Value.Dispose();
        GC.SuppressFinalize(this);
    }

    [Fact]
    public void The_desk_lists_jobs_by_the_day_to_act_page_by_page()
    {
        var journal = Filled(30);
        journal.WriteAssessed(
            journal.Tips().Select(tip => Found(tip) with { ActBy = tip.Id % 10 == 0 ? null : Day.PlusDays((int)(tip.Id * 7 % 11)) }));
        var expected = journal.Tips().Where(tip => tip.Id % 10 != 0).OrderBy(tip => tip.Id * 7 % 11).ThenBy(tip => tip.Id)
            .Select(tip => tip.Id).ToList();
        var listed = new List<long>();
        DeskLine? after = null;
        while (journal.Desk(new DeskPage(4) { After = after }) is { Count: > 0 } page)
        {
            listed.AddRange(page.Select(line => line.Job.Id));
            after = page[^1];
        }

        Assert.Equal(expected, listed);
        Assert.All(journal.Desk(new DeskPage(100) { Through = Day.PlusDays(3) }), line =>
            Assert.True(line.Assessed.ActBy <= Day.PlusDays(3)));
        Assert.Equal(expected.Count(id => id * 7 % 11 <= 3), journal.Desk(new DeskPage(100) { Through = Day.PlusDays(3) }).Count);
    }

    [Fact]
    public void What_was_found_reads_back_as_it_was_written_and_is_replaced_by_the_next()
    {
        var journal = Filled(1);
        var tip = journal.Tips().Single();
        foreach (var standing in Enum.GetValues<Standing>())
        {
            var found = Found(tip) with
            {
                Standing = standing, AtStake = standing == Standing.Done ? null : 84_250.07m, Owed = 90_000.01m, Held = 3m,
                MaySecure = 84_247.07m,
            };
            journal.WriteAssessed([found]);
            var read = journal.ReadAssessed(tip.Id)!;
            Assert.True(read.Findings.Span.SequenceEqual(found.Findings.Span));
            Assert.Equal(found with { Findings = read.Findings }, read);
        }

        Assert.Null(journal.ReadAssessed(2));
        Assert.Throws<ArgumentException>(() => journal.WriteAssessed([Found(tip) with { AtStake = 0.005m }]));
    }

    [Fact]
    public void Many_at_once_read_back_as_they_were_written_and_of_one_job_twice_the_last_counts()
    {
        var journal = Filled(45);
        var found = journal.Tips().Select((tip, i) => Found(tip) with
        {
            ActBy = i % 3 == 0 ? null : Day.PlusDays(i), AtStake = i % 4 == 0 ? null : 0.01m * i,
            Customer = i % 2 == 0 ? null : "Núñez & Daughters", Person = i % 5 == 0 ? "" : "R. Achterberg",
        }).ToList();
        journal.WriteAssessed(found);
        journal.WriteAssessed([.. found.Select(job => job with { Rules = "old" }), .. found]);
        foreach (var expected in found)
        {
            var read = journal.ReadAssessed(expected.Job)!;
            Assert.True(read.Findings.Span.SequenceEqual(expected.Findings.Span));
            Assert.Equal(expected with { Findings = read.Findings }, read);
        }
    }

    [Fact]
    public async Task Several_who_write_what_they_found_at_once_wait_for_each_other_and_mix_nothing()
    {
        var journal = Filled(40);
        var tips = journal.Tips().ToList();
        await Task.WhenAll(Enumerable.Range(0, 4).Select(writer => Task.Run(() =>
        {
            // Half of them write all jobs in bulk, half a few at a time; each has as many steps as its number says.
            for (var round = 0; round < 5; round++)
            {
                foreach (var some in tips.Chunk(writer % 2 == 0 ? 40 : 7))
                {
                    journal.WriteAssessed(some.Select(tip => Found(tip) with
                    {
                        Rules = writer.ToString(CultureInfo.InvariantCulture), Steps = [.. Enumerable.Repeat(Step(writer), writer + 1)],
                    }));
                }
            }
        })));

        var lines = journal.Steps(new StepQuery(StepFilter.None, Day, Day, 1000)).ToLookup(line => line.Job);
        foreach (var tip in tips)
        {
            var writer = int.Parse(journal.ReadAssessed(tip.Id)!.Rules, CultureInfo.InvariantCulture);
            Assert.Equal(Enumerable.Repeat(Step(writer), writer + 1), lines[tip.Id].Select(line => line.Step));
        }
    }

    private static AssessedStep Step(int writer) => new("claim-of-lien.last-day", $"act of {writer}", "Claim of lien", Day, Standing.Open);

    [Fact]
    public void Customers_are_summed_page_by_page_in_the_order_of_their_names()
    {
        var journal = Filled(30);
        journal.WriteAssessed(journal.Tips().Select(tip => Found(tip) with
        {
            Customer = tip.Id % 5 == 0 ? null : $"Customer {tip.Id % 5}", Owed = tip.Id * 10.01m, Held = tip.Id, MaySecure = tip.Id * 2m,
            ActBy = Day.PlusDays((int)tip.Id - 10),
        }));
        var totals = new List<CustomerTotal>();
        while (journal.Customers(Day, totals.Count == 0 ? "" : totals[^1].Customer, 3) is { Count: > 0 } page)
            totals.AddRange(page);
        Assert.Equal(["Customer 1", "Customer 2", "Customer 3", "Customer 4"], totals.Select(total => total.Customer));
        for (var rest = 1; rest <= 4; rest++)
        {
            // The ids 1 to 30 that leave this rest by 5: six of them, added by hand as 6 * rest + 5 * (0 + 1 + ... + 5).
            var sum = (6 * rest) + 75;
            var total = totals[rest - 1];
            Assert.Equal((6L, sum * 10.01m, (decimal)sum, sum * 2m), (total.Jobs, total.Owed, total.Held, total.MaySecure));
            Assert.Equal(rest < 10 ? 2L : 0L, total.Overdue);       // rest and rest + 5 lie below 10
            Assert.Equal(Day.PlusDays(rest), total.Next);           // rest + 10
            Assert.Equal([rest, rest + 5L, rest + 10L, rest + 15L, rest + 20L, rest + 25L], journal.AssessedOf(total.Customer, 100)
                .Select(line => line.Job.Id));
        }
    }

    [Fact]
    public void Settings_are_kept_as_written_and_not_over_what_the_writer_has_not_seen()
    {
        var journal = Filled(1);
        Assert.Null(journal.ReadSettings());
        Assert.True(journal.WriteSettings(null, """{"name":"Häuser & Söhne"}"""));
        Assert.Equal("""{"name":"Häuser & Söhne"}""", journal.ReadSettings());
        Assert.False(journal.WriteSettings(null, "{}"));
        Assert.Equal("""{"name":"Häuser & Söhne"}""", journal.ReadSettings());
        Assert.True(journal.WriteSettings(journal.ReadSettings(), "{}"));
        Assert.Equal("{}", journal.ReadSettings());
    }

    [Fact]
    public void Only_jobs_that_changed_since_or_were_assessed_otherwise_are_read_again()
    {
        var journal = Filled(5);
        journal.WriteAssessed(journal.Tips().Where(tip => tip.Id != 2).Select(Found));
        journal.Append(4, 1, [Samples.Entry(Samples.Delivery(0))], "test");
        Assert.Equal([2L, 4L], Ids(new JobsToRead { NotYetAssessed = ("1", Day) }));
        Assert.Equal([4L], Ids(new JobsToRead { NotYetAssessed = ("1", Day), After = 2 }));
        Assert.Equal(5, Ids(new JobsToRead { NotYetAssessed = ("2", Day) }).Length);
        Assert.Equal(5, Ids(new JobsToRead { NotYetAssessed = ("1", Day.PlusDays(1)) }).Length);
        Assert.Equal([4L], journal.Desk(new DeskPage(10)).Where(line => line.IsBehind).Select(line => line.Job.Id));

        long[] Ids(JobsToRead which) => [.. journal.ReadAll(which).Select(job => job.Tip.Id)];
    }

    private IJournal Filled(int jobs)
    {
        var journal = place.Value.Open();
        journal.PutMany(Enumerable.Range(1, jobs).Select(i => new KeyedJob($"k{i}", Samples.Bare())), "test");
        return journal;
    }

    private static AssessedJob Found(JobTip tip) => new()
    {
        Job = tip.Id,
        Sequence = tip.Sequence,
        Rules = "1",
        AsOf = Day,
        ActBy = Day.PlusDays(20),
        AtStake = 100m,
        Standing = Standing.Open,
        What = "claim-of-lien.last-day",
        Findings = "{\"a\":1}"u8.ToArray(),
    };
}

public sealed class SqliteAssessedTests() : AssessedTests(() => new SqlitePlace());

[Slow(Slow.PostgreSql)]
public sealed class PostgresAssessedTests() : AssessedTests(() => new PostgresPlace());
