using Stringline.Store.Upkeep;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>What lies at a store's path before, while and after a backup is put there; and who still has the old one open.</summary>
[Slow(Slow.Crash)]
public sealed class SwapTests : IDisposable
{
    private readonly string folder = Scratch.Folder();

    private string Store => Path.Combine(folder, "office");

    private string Made => Path.Combine(folder, "backup");

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    // The write-ahead log of another moment is played into whatever file stands beside it: https://www.sqlite.org/wal.html, "The WAL File".
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    [Attack("a stray log beside the place of a restore, backup or new store")]
    public void A_log_that_was_left_behind_is_set_aside_and_the_restored_store_is_the_backup(bool backup)
    {
        var seal = Filled();
        using (var journal = Journals.Open(Store, SystemClock.Instance))
        {
            journal.Put(new KeyedJob("later", Samples.Long("x", 40)), "test");
            File.Copy(Store + "-wal", Path.Combine(folder, "log"));
        }

        Assert.True(new FileInfo(Path.Combine(folder, "log")).Length > 4096);
        File.Delete(Store);
        File.Move(Path.Combine(folder, "log"), Store + "-wal");
        if (backup)
        {
            using var other = Journals.Open(Made, SystemClock.Instance, OpenStore.ReadOnly);
            Assert.Equal(seal, Backup.Make(other, Store).Seal);
        }
        else
        {
            Assert.Equal(Store + "_replaced_20260622_170000-wal", Assert.Single(Restored(replace: false).StrayLogs));
        }

        Assert.Equal(seal, SealOf(Store));
        Assert.Single(Directory.GetFiles(folder, "*-wal"));
    }

    [Fact]
    [Attack("a store made at the place of a restore while it runs")]
    public async Task A_restore_to_an_empty_place_leaves_what_a_desk_makes_there_meanwhile()
    {
        Filled();
        Task<StoreException> restoring;
        ContentHash there;
        using (var journal = Turned(out restoring))
        {
            journal.Put(new KeyedJob("of the desk", Samples.Bare()), "test");
            there = journal.Check().Seal;
        }

        Assert.Equal(StoreFault.Exists, (await restoring).Fault);
        Assert.Equal(there, SealOf(Store));
        Assert.Empty(Directory.GetDirectories(folder));

        // While the restore runs it is another's turn to make the store, and that one makes it.
        IJournal Turned(out Task<StoreException> restoring)
        {
            File.Delete(Store);
            using var turn = MakingTurn.Of(Store);
            restoring = Task.Run(() => Assert.Throws<StoreException>(() => Restored(replace: false)));
            Assert.True(SpinWait.SpinUntil(() => Directory.GetDirectories(folder, "*.part").Length > 0, TimeSpan.FromSeconds(60)));
            return Journals.Open(Store, SystemClock.Instance, OpenStore.OrMake);
        }
    }

    [Fact]
    [Attack("two backups to one place at once")]
    public void Of_two_that_make_one_file_at_once_the_second_is_told_that_something_is_there()
    {
        var refused = Assert.Throws<StoreException>(() => SqliteFile.Finish(Made, part =>
        {
            File.WriteAllText(part, "the second");
            File.WriteAllText(Made, "the first");
            return 0;
        }));
        Assert.Equal(StoreFault.Exists, refused.Fault);
        Assert.Equal("the first", File.ReadAllText(Made));
        Assert.Equal(["backup"], Directory.GetFileSystemEntries(folder).Select(Path.GetFileName));
    }

    [Fact]
    [Attack("restore over a store, or move of one, that somebody has open")]
    public void A_store_that_somebody_has_open_is_not_replaced()
    {
        var seal = Filled();
        using (var journal = Journals.Open(Store, SystemClock.Instance))
        {
            journal.Put(new KeyedJob("later", Samples.Bare()), "test");
            var later = journal.Check().Seal;
            var refused = Assert.Throws<StoreException>(() => Restored(replace: true));
            Assert.Equal(StoreFault.Busy, refused.Fault);
            Assert.Contains("close the desk", refused.Message, StringComparison.Ordinal);
            Assert.Equal(later, journal.Check().Seal);
            journal.Put(new KeyedJob("later still", Samples.Bare()), "test");
        }

        var first = Restored(replace: true);
        var second = Restored(replace: true);
        Assert.Equal((seal, seal), (first.Check.Seal, second.Check.Seal));
        Assert.NotEqual(first.SetAside, second.SetAside);
        Assert.DoesNotContain(Directory.GetFileSystemEntries(folder), file => file.EndsWith(".part", StringComparison.Ordinal));
    }

    [Fact]
    [Attack("another program writes while a restore sets the old store aside")]
    public async Task What_is_told_as_written_while_the_old_store_is_set_aside_is_in_one_of_both()
    {
        Filled();
        Task<bool>? writing = null;
        File.Copy(Made, Path.Combine(folder, "new"));
        var kept = SqliteSwap.Replace(Path.Combine(folder, "new"), Store, "_aside", () =>
        {
            writing = Task.Run(() =>
            {
                try
                {
                    using var journal = Journals.Open(Store, SystemClock.Instance);
                    return journal.Put(new KeyedJob("meanwhile", Samples.Bare()), "test") is PutOutcome.Added;
                }
                catch (StoreException)
                {
                    return false;
                }
            });
            Thread.Sleep(300);    // Gives it the time to try; what is told must hold however far it comes.
        });
        var told = await writing!;
        Assert.Equal(told, Has(Store) || Has(kept));

        static bool Has(string path)
        {
            using var journal = Journals.Open(path, SystemClock.Instance);
            Assert.Empty(journal.Check().Broken);
            return journal.Find("meanwhile") is not null;
        }
    }

    [Theory]
    [InlineData("moved")]
    [InlineData("deleted")]
    [InlineData("another in its place")]
    [InlineData("a copy in its place")]
    [Attack("store moved, deleted or replaced under an open program; a link above it turned elsewhere")]
    public void Nothing_is_written_into_a_store_that_was_taken_away(string how)
    {
        Filled();
        using var journal = Journals.Open(Store, SystemClock.Instance);
        journal.Put(new KeyedJob("before", Samples.Bare()), "test");
        var elsewhere = Path.Combine(folder, "elsewhere");
        if (how == "deleted")
            File.Delete(Store);
        else
            File.Move(Store, elsewhere);
        if (how == "another in its place")
            File.Copy(Made, Store);
        else if (how == "a copy in its place")
            File.Copy(elsewhere, Store);
        var there = File.Exists(Store) ? File.ReadAllBytes(Store) : null;
        Action[] writes =
        [
            () => journal.Put(new KeyedJob("after", Samples.Bare()), "test"),
            () => journal.Append(1, 1, [Samples.Entry(Samples.Delivery(9))], "test"),
            () => journal.PutMany([new KeyedJob("after", Samples.Bare())], "test"),
            () => journal.WriteSettings(null, "{}"),
            () => journal.Read(1),
        ];
        Assert.All(writes, write => Assert.Equal(StoreFault.Replaced, Assert.Throws<StoreException>(write).Fault));
        Assert.Equal(there, File.Exists(Store) ? File.ReadAllBytes(Store) : null);
    }

    [Fact]
    [Attack("link in place of the store")]
    public void A_link_is_followed_and_other_links_to_the_store_go_on_to_mean_the_same()
    {
        var seal = Filled();
        Directory.CreateDirectory(Path.Combine(folder, "disk"));
        var target = Path.Combine(folder, "disk", "real");
        File.Move(Store, target);
        File.CreateSymbolicLink(Store, target);
        var other = Path.Combine(folder, "other");
        File.CreateSymbolicLink(other, target);
        using (var journal = Journals.Open(Store, SystemClock.Instance))
            journal.Put(new KeyedJob("later", Samples.Bare()), "test");
        var restored = Restored(replace: true);
        Assert.StartsWith(target, restored.SetAside, StringComparison.Ordinal);
        Assert.Equal([seal, seal, seal], [SealOf(Store), SealOf(other), SealOf(target)]);
        Assert.Equal(target, File.ResolveLinkTarget(Store, returnFinalTarget: true)!.FullName);
    }

    // Every state that a kill can leave: let go, copied in part or in whole, its logs gone, the new one in place.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [Attack("restore broken off after each step, on a file and on a server")]
    public void Broken_off_after_any_step_the_whole_old_store_is_there_and_the_next_restore_cleans_up(int steps)
    {
        var seal = Filled();
        using (var journal = Journals.Open(Store, SystemClock.Instance))
            journal.Put(new KeyedJob("later", Samples.Bare()), "test");
        var old = SealOf(Store);
        using (var connection = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={Store};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "pragma journal_mode = delete";
            command.ExecuteNonQuery();
        }

        if (steps > 0)
        {
            var left = Directory.CreateDirectory(Path.Combine(folder, "stringline-0123456789abcdef.part")).FullName;
            File.WriteAllText(Path.Combine(left, "in-work"), "");
            File.Copy(Made, Path.Combine(left, "office"));
            File.WriteAllBytes(Path.Combine(left, "copy"), File.ReadAllBytes(Store)[..4096]);
        }

        if (steps > 1)
            File.Copy(Store, Store + "_replaced_20260101_000000");
        if (steps > 2)
            Assert.True(HardLink.Make(Store, Store + "_replaced_20260101_000001"));
        Assert.Equal(old, SealOf(Store));
        using (var journal = Journals.Open(Store, SystemClock.Instance))
            Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob("later still", Samples.Bare()), "test"));
        var restored = Restored(replace: true);
        Assert.Equal(seal, restored.Check.Seal);
        Assert.Equal(Math.Min(steps, 1), restored.Cleared.Count);
        Assert.Equal(steps > 1, File.Exists(Store + "_replaced_20260101_000000"));
        Assert.False(File.Exists(Store + "_replaced_20260101_000001"));
        Assert.DoesNotContain(Directory.GetFileSystemEntries(folder), file => file.EndsWith(".part", StringComparison.Ordinal));
    }

    // A restore makes a second name for the old store before it renames the new one over the first.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Attack("second name that a killed restore left; a kept store; names that only look so")]
    public void A_second_name_that_a_killed_restore_left_is_told_and_removed_by_the_next(bool restore)
    {
        var seal = Filled();
        File.Copy(Made, Path.Combine(folder, "new"));
        Assert.Throws<OperationCanceledException>(() =>
            SqliteSwap.Replace(Path.Combine(folder, "new"), Store, "_replaced_20260101_000000", () =>
                throw new OperationCanceledException()));
        var second = Store + "_replaced_20260101_000000";
        Assert.True(HardLink.IsSame(Store, second));

        // What looks nearly so: a whole copy, a name that somebody gave, and one by which the store was opened and written to.
        var (kept, own, opened) = (Store + "_replaced_20260102_000000", Path.Combine(folder, "own"), Store + "_replaced_20260103_000000");
        File.Copy(Store, kept);
        Assert.True(HardLink.Make(Store, own) && HardLink.Make(Store, opened));
        File.WriteAllText(opened + "-wal", "what was written");
        using (var journal = Journals.Open(Store, SystemClock.Instance, OpenStore.ReadOnly))
        {
            Assert.Equal(
                [new(second, LeftoverKind.SecondName), new(kept, LeftoverKind.Older), new(opened, LeftoverKind.SecondName)],
                Leftovers.Of(journal));
        }

        if (restore)
            Assert.Contains(second, Restored(replace: true).Cleared);
        else
            Assert.Equal(seal, SealOf(Store));
        Assert.False(File.Exists(second));
        Assert.All([kept, own, opened, opened + "-wal"], there => Assert.True(File.Exists(there), there));
        Assert.Equal(seal, SealOf(Store));
    }

    [Fact]
    [Attack("second name that a killed restore left; a kept store; names that only look so")]
    public void A_store_that_a_restore_kept_is_told_of_for_as_long_as_it_is_there()
    {
        Filled();
        var kept = Restored(replace: true).SetAside!;
        Assert.Equal([new(kept, LeftoverKind.Older)], Told());
        File.WriteAllText(Store + "_replaced_by_us", "");
        File.Delete(kept);
        Assert.Empty(Told());

        IReadOnlyList<Leftover> Told()
        {
            using var journal = Journals.Open(Store, SystemClock.Instance, OpenStore.ReadOnly);
            return Leftovers.Of(journal);
        }
    }

    [Fact]
    public void A_damaged_store_is_set_aside_byte_for_byte()
    {
        var seal = Filled();
        File.WriteAllText(Store, "no database");
        File.WriteAllText(Store + "-wal", "no log");
        var restored = Restored(replace: true);
        Assert.Equal(seal, restored.Check.Seal);
        Assert.Equal("no database", File.ReadAllText(restored.SetAside!));
        Assert.Equal("no log", File.ReadAllText(restored.SetAside + "-wal"));
        Assert.Equal(seal, SealOf(Store));
    }

    private ContentHash Filled()
    {
        using var journal = Journals.Open(Store, SystemClock.Instance, OpenStore.OrMake);
        journal.PutMany([new("a", Samples.Long("Alder 1", 6)), new("b", Samples.Bare())], "test");
        return Backup.Make(journal, Made).Seal;
    }

    private Restored Restored(bool replace)
    {
        var clock = new Place.Ticking();
        clock.Set(Instant.FromUtc(2026, 6, 22, 16, 59, 59));
        return Restore.From(Made, Store, replace, clock);
    }

    private static ContentHash SealOf(string path)
    {
        using var journal = Journals.Open(path, SystemClock.Instance);
        var report = journal.Check();
        Assert.Empty(report.Broken);
        return report.Seal;
    }
}
