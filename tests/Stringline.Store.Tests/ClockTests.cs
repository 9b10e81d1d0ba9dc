using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>
/// A clock that was set back or forward: nothing is lost, no moment stands before the one before it, and a clock out of all range is
/// refused before anything is written.
/// </summary>
public abstract class ClockTests : IDisposable
{
    private static readonly Instant Morning = Instant.FromUtc(2026, 6, 22, 16, 0);

    private readonly Lazy<Place> place;

    protected ClockTests(Func<Place> make) => place = new Lazy<Place>(make);

    private Place Place => place.Value;

    public void Dispose()
    {
        if (place.IsValueCreated)
            place.Value.Dispose();
        GC.SuppressFinalize(this);
    }

    [Theory]
    [InlineData(1969, 12, 31)]
    [InlineData(1999, 12, 31)]
    [InlineData(2200, 1, 2)]
    [InlineData(9999, 12, 30)]
    [Attack("clock set back, forward, at random, out of range")]
    public void A_clock_out_of_all_range_is_refused_before_anything_is_written(int year, int month, int day)
    {
        var journal = Place.Open();
        Place.Clock.Set(Morning);
        var id = Added(journal, "one").Job;
        var before = journal.Check();
        Place.Clock.Set(Instant.FromUtc(year, month, day, 12, 0));
        foreach (var write in (Action[])
            [
                () => journal.Append(id, 1, [Samples.Entry(Samples.Delivery(0))], "ana"),
                () => journal.Put(new KeyedJob("two", Samples.Bare()), "ana"),
                () => journal.Add(new KeyedJob("two", Samples.Bare()), "ana"),
                () => journal.PutMany([new KeyedJob("two", Samples.Bare())], "ana"),
            ])
        {
            var refused = Assert.Throws<StoreException>(write);
            Assert.Equal(StoreFault.Clock, refused.Fault);
            Assert.Contains($"{year}-{month:00}-{day:00} 12:00 UTC", refused.Message, StringComparison.Ordinal);
            Assert.Contains("nothing was written", refused.Message, StringComparison.Ordinal);
        }

        var after = journal.Check();
        Assert.True(after.IsWhole);
        Assert.Equal((before.Seal, before.Changes), (after.Seal, after.Changes));
    }

    [Fact]
    [Attack("clock set back, forward, at random, out of range")]
    public void A_clock_set_back_loses_no_entry_and_sets_none_before_the_one_before_it()
    {
        var journal = Place.Open();
        Place.Clock.Set(Morning);
        var id = Added(journal, "one").Job;
        var last = journal.Read(id)!.Rows[^1].At;
        var wrong = Morning - Duration.FromDays(6 * 365);
        Place.Clock.Set(wrong);
        Assert.IsType<AppendOutcome.Appended>(journal.Append(id, 1, [Samples.Entry(Samples.Delivery(0))], "ana"));
        Assert.Equal(new ClockBehind(wrong + Duration.FromSeconds(1), last), journal.ClockBehind);
        Added(journal, "two");
        Assert.Equal(last, journal.ClockBehind!.Recorded);
        journal.PutMany([new KeyedJob("one", journal.Read(id)!.Job), new KeyedJob("three", Samples.Long("Three", 3))], "ana");
        Assert.Equal(last, journal.ClockBehind!.Recorded);
        Assert.All(journal.ReadAll(JobsToRead.All).SelectMany(job => job.Rows), row => Assert.Equal(last, row.At));
        Assert.True(journal.Check().IsWhole);
    }

    [Fact]
    [Attack("clock set back, forward, at random, out of range")]
    public void A_clock_set_forward_and_right_again_goes_on_writing()
    {
        var journal = Place.Open();
        Place.Clock.Set(Morning + Duration.FromDays(3650));
        var id = Added(journal, "one").Job;
        Place.Clock.Set(Morning);
        Assert.IsType<AppendOutcome.Appended>(journal.Append(id, 1, [Samples.Entry(Samples.Delivery(0))], "ana"));
        Assert.Equal(Morning + Duration.FromSeconds(1), journal.ClockBehind!.Clock);
        Assert.True(journal.Check().IsWhole);
        Place.Clock.Set(Morning + Duration.FromDays(3651));
        Assert.IsType<AppendOutcome.Appended>(journal.Append(id, 2, [Samples.Entry(Samples.Delivery(1))], "ana"));
        Assert.Null(journal.ClockBehind);
    }

    [Fact]
    [Attack("clock set back, forward, at random, out of range")]
    public void Two_desks_whose_clocks_differ_by_seconds_are_not_told_so()
    {
        var journal = Place.Open();
        Place.Clock.Set(Morning);
        var id = Added(journal, "one").Job;
        Place.Clock.Set(Morning - Duration.FromSeconds(90));
        Assert.IsType<AppendOutcome.Appended>(journal.Append(id, 1, [Samples.Entry(Samples.Delivery(0))], "ana"));
        Assert.Null(journal.ClockBehind);
    }

    [Fact]
    [Attack("clock set back, forward, at random, out of range", 200)]
    public void Whatever_the_clock_does_the_moments_of_a_job_never_go_back()
    {
        var journal = Place.Open();
        var random = new Random(20260622);
        var id = Added(journal, "one").Job;
        for (var i = 0; i < 200; i++)
        {
            Place.Clock.Set(Morning + Duration.FromHours(random.Next(-100_000, 100_000)));
            Assert.IsType<AppendOutcome.Appended>(journal.Append(id, i + 1, [Samples.Entry(Samples.Delivery(i))], "ana"));
        }

        var moments = journal.Read(id)!.Rows.Select(row => row.At).ToList();
        Assert.Equal(201, moments.Count);
        Assert.Equal(moments.Order(), moments);
        Assert.True(journal.Check().IsWhole);
    }

    private static PutOutcome.Added Added(IJournal journal, string key) =>
        Assert.IsType<PutOutcome.Added>(journal.Add(new KeyedJob(key, Samples.Bare()), "ana"));
}

public sealed class SqliteClockTests() : ClockTests(() => new SqlitePlace());

[Slow(Slow.PostgreSql)]
public sealed class PostgresClockTests() : ClockTests(() => new PostgresPlace());
