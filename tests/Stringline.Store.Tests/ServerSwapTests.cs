using Stringline.Store.Upkeep;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>A restore on a server that is broken off, and who still has the old store open.</summary>
[Slow(Slow.PostgreSql)]
public sealed class ServerSwapTests : IDisposable
{
    private readonly string folder = Scratch.Folder();
    private readonly PostgresPlace place = new();

    private string Made => Path.Combine(folder, "backup");

    public void Dispose()
    {
        place.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    [Attack("restore broken off after each step, on a file and on a server")]
    public void Broken_off_at_any_point_the_old_store_is_at_the_address()
    {
        var seal = Filled();
        using (var journal = Journals.Open(place.Address, SystemClock.Instance))
            journal.Put(new KeyedJob("later", Samples.Bare()), "test");
        var old = Seal();
        var points = 0;
        for (var broken = true; broken; points++)
        {
            var stop = new StopsAt(points);
            broken = false;
            try
            {
                Assert.Equal(seal, Restore.From(Made, place.Address, replace: true, SystemClock.Instance, stop).Check.Seal);
            }
            catch (OperationCanceledException)
            {
                broken = true;

                // The walk in its place comes after the swap: then the whole new one is there.
                var now = Seal();
                if (now == seal)
                    break;
                Assert.Equal(old, now);
            }

            Assert.Equal(0, place.Scalar<long>("select count(*) from pg_namespace where nspname = current_schema() || '_restoring'"));
        }

        Assert.True(points > 1, "Nothing was broken off.");
        Assert.Equal(seal, Seal());
        AttackAttribute.Tried(points);
    }

    [Fact]
    [Attack("restore broken off after each step, on a file and on a server")]
    public void What_a_killed_restore_left_is_told_and_removed_by_the_next()
    {
        var seal = Filled();
        var schema = place.Scalar<string>("select current_schema()");
        place.Scalar<object>($"create schema {schema}_restoring");
        place.Scalar<object>($"create table {schema}_restoring.half (a int)");

        // Whose it is must be sure before it is dropped.
        Assert.Equal(StoreFault.Exists,
            Assert.Throws<StoreException>(() => Restore.From(Made, place.Address, replace: true, SystemClock.Instance)).Fault);
        Assert.True(place.Scalar<bool>($"select to_regclass('{schema}_restoring.half') is not null"));
        place.Scalar<object>($"comment on schema {schema}_restoring is 'being restored by stringline'");
        Assert.Equal([new($"schema {schema}_restoring", LeftoverKind.Unfinished)], Told());
        var restored = Restore.From(Made, place.Address, replace: true, SystemClock.Instance);
        Assert.Equal([new(restored.SetAside!, LeftoverKind.Older)], Told());
        Assert.Equal([$"schema {schema}_restoring"], restored.Cleared);
        Assert.Equal(seal, restored.Check.Seal);
        Assert.NotNull(restored.SetAside);
        place.Scalar<object>($"drop schema {restored.SetAside["schema ".Length..]} cascade");
        Assert.Empty(Told());

        IReadOnlyList<Leftover> Told()
        {
            using var journal = Journals.Open(place.Address, SystemClock.Instance, OpenStore.ReadOnly);
            return Leftovers.Of(journal);
        }
    }

    [Fact]
    [Attack("a schema beside it that looks like an unfinished restore and is none")]
    public void The_tables_of_another_program_are_not_set_aside()
    {
        Filled();
        using var other = new PostgresPlace();
        var schema = other.Address.Split("Search Path=")[1].Split(';')[0];
        other.Scalar<object>($"create schema {schema}; create table {schema}.theirs (a int)");
        Assert.Equal(StoreFault.NotAStore,
            Assert.Throws<StoreException>(() => Restore.From(Made, other.Address, replace: true, SystemClock.Instance)).Fault);
        Assert.True(other.Scalar<bool>($"select to_regclass('{schema}.theirs') is not null"));
    }

    [Fact]
    [Attack("store moved, deleted or replaced under an open program; a link above it turned elsewhere")]
    public void Who_has_the_old_store_open_writes_nothing_into_the_new_one()
    {
        Filled();
        using var journal = Journals.Open(place.Address, SystemClock.Instance);
        journal.Put(new KeyedJob("before", Samples.Bare()), "test");
        var restored = Restore.From(Made, place.Address, replace: true, SystemClock.Instance);
        var seal = Seal();
        Action[] writes =
        [
            () => journal.Put(new KeyedJob("after", Samples.Bare()), "test"),
            () => journal.Append(1, 7, [Samples.Entry(Samples.Delivery(9))], "test"),
            () => journal.WriteSettings(null, "{}"),
        ];
        Assert.All(writes, write => Assert.Equal(StoreFault.Replaced, Assert.Throws<StoreException>(write).Fault));
        Assert.Equal(seal, Seal());
        place.Scalar<object>($"drop schema {restored.SetAside!["schema ".Length..]} cascade");
    }

    private ContentHash Filled()
    {
        using var journal = Journals.Open(place.Address, SystemClock.Instance, OpenStore.OrMake);
        journal.PutMany([new("a", Samples.Long("Alder 1", 6)), new("b", Samples.Bare())], "test");
        return Backup.Make(journal, Made).Seal;
    }

    private ContentHash Seal()
    {
        using var journal = Journals.Open(place.Address, SystemClock.Instance);
        var report = journal.Check();
        Assert.Empty(report.Broken);
        return report.Seal;
    }

    private sealed class StopsAt(int count) : IProgress<StoreProgress>
    {
        private int told;

        public void Report(StoreProgress value)
        {
            if (told++ == count)
                throw new OperationCanceledException();
        }
    }
}
