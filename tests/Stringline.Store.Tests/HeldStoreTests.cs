using Microsoft.Data.Sqlite;
using Stringline.Store.Upkeep;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>A store that is open: whether its address still leads to it, and that nobody replaces or moves it meanwhile.</summary>
public sealed class HeldStoreTests : IDisposable
{
    private readonly string folder = Scratch.Folder();

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    [Attack("store moved, deleted or replaced under an open program; a link above it turned elsewhere")]
    public void Nothing_is_written_where_a_link_above_the_store_was_turned_elsewhere()
    {
        var (one, two, address) = TwoBehindALink();
        using var journal = Journals.Open(address, SystemClock.Instance);
        journal.Put(new KeyedJob("before", Samples.Bare()), "test");
        Turn(two);
        Action[] uses =
        [
            () => journal.Put(new KeyedJob("after", Samples.Bare()), "test"),
            () => journal.Append(1, 1, [Samples.Entry(Samples.Delivery(9))], "test"),
            () => journal.WriteSettings(null, "{}"),
            () => journal.Read(1),
        ];
        Assert.All(uses, use => Assert.Equal(StoreFault.Replaced, Assert.Throws<StoreException>(use).Fault));
        Assert.Equal(["first", "before"], Keys(Path.Combine(one, "office")));
        Assert.Equal(["first"], Keys(Path.Combine(two, "office")));

        // Turned back it is the same store again.
        Turn(one);
        Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob("again", Samples.Bare()), "test"));
    }

    // Connections that one journal has let go are used by the next one of the same address.
    [Fact]
    [Attack("store moved, deleted or replaced under an open program; a link above it turned elsewhere")]
    public void What_is_told_as_written_after_a_link_was_turned_is_where_the_address_leads()
    {
        var (one, two, address) = TwoBehindALink();
        using var journal = Journals.Open(address, SystemClock.Instance);
        journal.Put(new KeyedJob("before", Samples.Bare()), "test");
        Turn(two);
        try
        {
            using var later = Journals.Open(address, SystemClock.Instance);
            later.Put(new KeyedJob("after", Samples.Bare()), "test");
            Assert.Equal(["first", "after"], Keys(address));
        }
        catch (StoreException e)
        {
            Assert.Equal(StoreFault.Replaced, e.Fault);
        }

        Assert.Equal(["first", "before"], Keys(Path.Combine(one, "office")));
    }

    [Theory]
    [InlineData(OpenStore.OrMake)]
    [InlineData(OpenStore.OrMakeOnWriting)]
    [Attack("restore over a store, or move of one, that somebody has open")]
    public void Whoever_made_a_store_holds_it_as_one_who_found_it(OpenStore open)
    {
        var address = Path.Combine(folder, "office");
        var made = Path.Combine(folder, "backup");
        using (var journal = Journals.Open(address, SystemClock.Instance, open))
        {
            journal.Put(new KeyedJob("first", Samples.Bare()), "test");
            Backup.Make(journal, made);
            Idle();
            Refused(() => Restore.From(made, address, replace: true, SystemClock.Instance));
            Refused(() => Move.To(address, Path.Combine(folder, "moved"), SystemClock.Instance));
            Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob("second", Samples.Bare()), "test"));
        }

        Assert.Equal(["first", "second"], Keys(address));
        Assert.Equal(2, Move.To(address, Path.Combine(folder, "moved"), SystemClock.Instance).Jobs);
        Assert.Equal(1, Restore.From(made, address, replace: true, SystemClock.Instance).Check.Jobs);

        void Refused(Action use)
        {
            var refused = Assert.Throws<StoreException>(use);
            Assert.Equal(StoreFault.Busy, refused.Fault);
            Assert.Contains("close the desk", refused.Message, StringComparison.Ordinal);
            Idle();
        }

        // As the pool does by itself with connections that nobody has used for some minutes.
        static void Idle() => SqliteConnection.ClearAllPools();
    }

    [Fact]
    [Attack("store moved, deleted or replaced under an open program; a link above it turned elsewhere")]
    public void One_made_with_its_first_change_and_then_deleted_is_not_made_again()
    {
        var address = Path.Combine(folder, "office");
        using var journal = Journals.Open(address, SystemClock.Instance, OpenStore.OrMakeOnWriting);
        journal.Put(new KeyedJob("first", Samples.Bare()), "test");
        File.Delete(address);
        Assert.Equal(StoreFault.Replaced,
            Assert.Throws<StoreException>(() => journal.Put(new KeyedJob("second", Samples.Bare()), "test")).Fault);
        Assert.Equal(StoreFault.Replaced, Assert.Throws<StoreException>(() => journal.CountJobs()).Fault);
        Assert.False(File.Exists(address));
    }

    private (string One, string Two, string Address) TwoBehindALink()
    {
        string[] folders = [Path.Combine(folder, "one"), Path.Combine(folder, "two")];
        foreach (var place in folders)
        {
            Directory.CreateDirectory(place);
            using var journal = Journals.Open(Path.Combine(place, "office"), SystemClock.Instance, OpenStore.OrMake);
            journal.Put(new KeyedJob("first", Samples.Bare()), "test");
        }

        Turn(folders[0]);
        return (folders[0], folders[1], Path.Combine(folder, "link", "office"));
    }

    private void Turn(string target)
    {
        var link = Path.Combine(folder, "link");
        if (Directory.Exists(link))
            Directory.Delete(link);
        Directory.CreateSymbolicLink(link, target);
    }

    private static IEnumerable<string> Keys(string path)
    {
        using var journal = Journals.Open(path, SystemClock.Instance, OpenStore.ReadOnly);
        return [.. journal.Tips().Select(tip => tip.Key)];
    }
}
