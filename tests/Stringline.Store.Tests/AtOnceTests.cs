using System.Globalization;
using Stringline.Store.Upkeep;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>
/// Three who do the same at the same moment: each is answered "added", "unchanged" or refused in plain words, and the store is whole.
/// <c>bench/at-once</c> does it more often.
/// </summary>
public abstract class AtOnceTests(Func<Place> make)
{
    private const int Writers = 3;

    private static readonly int Times = Rounds.Of("STRINGLINE_AT_ONCE", 15);

    // Of the many ways to write each only a few times, where nobody asks for more.
    private static readonly int TimesEach = Rounds.Of("STRINGLINE_AT_ONCE", 2);

    // What only reads, so that no call is in neither list.
    private static readonly string[] Reading =
    [
        nameof(IJournal.Read), nameof(IJournal.Find), nameof(IJournal.ReadAll), nameof(IJournal.OfEach), nameof(IJournal.Tips),
            nameof(IJournal.ReadProof), nameof(IJournal.Search),
        nameof(IJournal.ReadAssessed), nameof(IJournal.Desk), nameof(IJournal.Steps), nameof(IJournal.StepTotals), nameof(IJournal.Watches),
            nameof(IJournal.StepsWritten), nameof(IJournal.Choices),
        nameof(IJournal.JobsOf), nameof(IJournal.AssessedOf), nameof(IJournal.Customers), nameof(IJournal.FindDamaged),
            nameof(IJournal.ReadSettings), nameof(IJournal.CountJobs),
        nameof(IJournal.CountAssessed), nameof(IJournal.Compare), nameof(IJournal.Check),
    ];

    public static TheoryData<string> EveryWrite => [.. Write.Every.Select(write => write.Name)];

    [Fact]
    public void Every_call_of_the_journal_is_known_to_write_or_to_read()
    {
        var calls = typeof(IJournal).GetMethods().Where(method => !method.IsSpecialName).Select(method => method.Name).Distinct();
        Assert.Equal(calls.Order(StringComparer.Ordinal), Reading.Concat(Write.Every.Select(write => write.Call)).Distinct()
            .Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(EveryWrite))]
    [Attack("three who write the same at once, also while the store is made")]
    public async Task Three_who_write_the_same_at_once_are_told_what_happened(string name)
    {
        var write = Write.Every.Single(one => one.Name == name);
        for (var round = 0; round < TimesEach; round++)
        {
            using var place = make();
            JobTip tip;
            using (var journal = Journals.Open(place.Address, SystemClock.Instance, OpenStore.OrMake))
            {
                Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob(Write.Job, Write.Filled()), "test"));
                tip = journal.Find(Write.Job)!.Tip;
            }

            var told = await AtOnce(OpenStore.MustExist, place, journal => write.Do(journal, tip));
            Assert.Equal(Math.Min(write.Added, Writers), told.Count(word => word == "added"));
            IsWhole(place);
        }

        AttackAttribute.Tried(TimesEach);
    }

    [Theory]
    [MemberData(nameof(EveryWrite))]
    [Attack("three who write the same at once, also while the store is made")]
    public async Task Three_who_write_the_same_at_once_while_the_store_is_being_made_are_told_what_happened(string name)
    {
        var write = Write.Every.Single(one => one.Name == name);
        foreach (var open in (OpenStore[])[OpenStore.OrMake, OpenStore.OrMakeOnWriting])
        {
            for (var round = 0; round < TimesEach; round++)
            {
                using var place = make();
                var told = await AtOnce(open, place, journal => write.Do(journal, null));
                Assert.True(told.Count(word => word == "added") <= write.Added, $"{name}: {string.Join(", ", told)}");
                IsWhole(place);
            }
        }

        AttackAttribute.Tried(2 * TimesEach);
    }

    [Theory]
    [InlineData("back up")]
    [InlineData("restore")]
    [InlineData("move")]
    [Attack("three who write the same at once, also while the store is made")]
    public async Task Three_who_keep_the_store_at_once_make_one_copy_or_are_refused(string what)
    {
        for (var round = 0; round < TimesEach; round++)
        {
            using var place = make();
            using var other = make();
            var folder = Scratch.Folder();
            ContentHash seal;
            using (var journal = Journals.Open(place.Address, SystemClock.Instance, OpenStore.OrMake))
            {
                Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob(Write.Job, Write.Filled()), "test"));
                seal = Backup.Make(journal, Path.Combine(folder, "made")).Seal;
            }

            var told = await AtOnce(OpenStore.MustExist, place, _ =>
            {
                try
                {
                    var check = what switch
                    {
                        "back up" => BackUp(place, Path.Combine(folder, "new")),
                        "restore" => Restore.From(Path.Combine(folder, "made"), other.Address, replace: false, SystemClock.Instance).Check,
                        _ => Move.To(place.Address, other.Address, SystemClock.Instance),
                    };
                    return check.Seal == seal ? "added" : "something else";
                }
                catch (StoreException e) when (e.Fault is not (StoreFault.Missing or StoreFault.Damaged))
                {
                    return "refused";
                }
            });
            Assert.DoesNotContain("something else", told);
            IsWhole(place);
            if (told.Contains("added"))
            {
                using var copy = Journals.Open(what == "back up"
                    ? Path.Combine(folder, "new") : other.Address, SystemClock.Instance, what == "back up"
                    ? OpenStore.ReadOnly : OpenStore.MustExist);
                Assert.Equal(seal, copy.Check().Seal);
            }
            else
            {
                IsWhole(other);
            }

            Directory.Delete(folder, recursive: true);
        }

        static CheckReport BackUp(Place place, string path)
        {
            using var journal = Journals.Open(place.Address, SystemClock.Instance);
            return Backup.Make(journal, path);
        }

        AttackAttribute.Tried(TimesEach);
    }

    private static async Task<string[]> AtOnce(OpenStore open, Place place, Func<IJournal, string> write)
    {
        using var start = new Barrier(Writers);
        return await Task.WhenAll(Enumerable.Range(0, Writers).Select(_ => Task.Run(() =>
        {
            // What is being made is opened together too; else only the writing is done together.
            var made = open != OpenStore.MustExist;
            if (made)
                start.SignalAndWait();
            using var journal = Journals.Open(place.Address, SystemClock.Instance, open);
            if (!made)
                start.SignalAndWait();
            return write(journal);
        })));
    }

    private static void IsWhole(Place place)
    {
        using var journal = Journals.Open(place.Address, SystemClock.Instance, OpenStore.OrMake);
        Assert.Empty(journal.Check().Broken);
    }

    [Fact]
    [Attack("three who write the same at once, also while the store is made")]
    public async Task Three_who_make_a_store_at_once_with_their_first_change_all_write_to_the_one()
    {
        for (var round = 0; round < Times; round++)
        {
            using var place = make();
            using var start = new Barrier(Writers);
            var outcomes = await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(() =>
            {
                using var journal = Journals.Open(place.Address, SystemClock.Instance, OpenStore.OrMakeOnWriting);
                start.SignalAndWait();
                return journal.Put(new KeyedJob(string.Create(CultureInfo.InvariantCulture, $"{writer}"), Samples.Long("x", 2)), "test");
            })));
            Assert.All(outcomes, outcome => Assert.IsType<PutOutcome.Added>(outcome));
            using var after = Journals.Open(place.Address, SystemClock.Instance);
            Assert.Equal(Writers, after.Check().Jobs);
            Assert.Empty(after.Check().Broken);
        }

        AttackAttribute.Tried(Times);
    }

    [Fact]
    [Attack("three who write the same at once, also while the store is made")]
    public async Task Three_who_add_the_same_new_jobs_add_them_once_also_while_the_store_is_being_made()
    {
        using var place = make();
        for (var round = 0; round < Times; round++)
        {
            List<KeyedJob> jobs =
                [.. Enumerable.Range(0, 3)
                    .Select(i => new KeyedJob(string.Create(CultureInfo.InvariantCulture, $"{round}-{i}"), Samples.Long("x", 2)))];
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
        Assert.Equal(3 * Times, check.Jobs);
        AttackAttribute.Tried(Times);
    }
}

[Slow(Slow.Lasting)]
public sealed class SqliteAtOnceTests() : AtOnceTests(() => new SqlitePlace());

[Slow(Slow.PostgreSql)]
public sealed class PostgresAtOnceTests() : AtOnceTests(() => new PostgresPlace());
