namespace Stringline.Store.Tests;

/// <summary>
/// Three who do the same at the same moment: each is answered "added", "unchanged" or refused in plain words, and the store is whole.
/// </summary>
public abstract class AtOnceTests(Func<Place> make)
{
    private const int Rounds = 15;
    private const int Writers = 3;

    [Fact]
    public async Task Three_who_make_a_store_at_once_with_their_first_change_all_write_to_the_one()
    {
        for (var round = 0; round < Rounds; round++)
        {
            using var place = make();
            using var start = new Barrier(Writers);
            var outcomes = await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(() =>
            {
                using var journal = Journals.Open(place.Address, SystemClock.Instance, OpenStore.OrMakeOnWriting);
                start.SignalAndWait();
                return journal.Put(new KeyedJob(FormattableString.Invariant($"{writer}"), Samples.Long("x", 2)), "test");
            })));
            Assert.All(outcomes, outcome => Assert.IsType<PutOutcome.Added>(outcome));
            using var after = Journals.Open(place.Address, SystemClock.Instance);
            Assert.Equal(Writers, after.Check().Jobs);
            Assert.Empty(after.Check().Broken);
        }
    }

    [Fact]
    public async Task Three_who_add_the_same_new_jobs_add_them_once_also_while_the_store_is_being_made()
    {
        using var place = make();
        for (var round = 0; round < Rounds; round++)
        {
            List<KeyedJob> jobs =
                [.. Enumerable.Range(0, 3).Select(i => new KeyedJob(FormattableString.Invariant($"{round}-{i}"), Samples.Long("x", 2)))];
            using var start = new Barrier(Writers);
            var reports = await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(() =>
            {
                start.SignalAndWait();
                using var journal = Journals.Open(place.Address, SystemClock.Instance, OpenStore.OrMake);
                return journal.PutMany(writer == 1 ? [.. jobs.AsEnumerable().Reverse()] : jobs, "test");
            })));
            Assert.All(reports, report => Assert.Empty(report.Faults));
            Assert.Equal((3, 6), (reports.Sum(report => report.Added), reports.Sum(report => report.Unchanged)));
        }

        using var after = Journals.Open(place.Address, SystemClock.Instance);
        var check = after.Check();
        Assert.Empty(check.Broken);
        Assert.Equal(3 * Rounds, check.Jobs);
    }
}

public sealed class SqliteAtOnceTests() : AtOnceTests(() => new SqlitePlace());

public sealed class PostgresAtOnceTests() : AtOnceTests(() => new PostgresPlace());
