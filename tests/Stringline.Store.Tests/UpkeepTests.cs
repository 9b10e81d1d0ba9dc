using Stringline.Store.Upkeep;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>Backup, restore, move and export, each proved by what it leaves.</summary>
public abstract class UpkeepTests : IDisposable
{
    private readonly string folder = Scratch.Folder();
    private readonly Lazy<Place> place;

    protected UpkeepTests(Func<Place> make) => place = new Lazy<Place>(make);

    private Place Place => place.Value;

    public void Dispose()
    {
        if (place.IsValueCreated)
            place.Value.Dispose();
        Directory.Delete(folder, recursive: true);
        GC.SuppressFinalize(this);
    }

    [Fact]
    public async Task A_backup_made_while_others_write_holds_all_that_was_there_when_it_began()
    {
        var journal = Filled();
        using var stop = new CancellationTokenSource();
        var writing = Task.Run(() =>
        {
            for (var i = 0; !stop.IsCancellationRequested; i++)
                journal.Put(new KeyedJob($"new {i}", Samples.Long("x", 2)), "other");
        }, TestContext.Current.CancellationToken);
        var before = journal.Check();
        var report = Backup.Make(journal, At("backup"));
        await stop.CancelAsync();
        await writing;
        Assert.True(report.IsWhole);
        Assert.True(report.Jobs >= before.Jobs);
        using var backup = Journals.Open(At("backup"), SystemClock.Instance, OpenStore.ReadOnly);
        foreach (var tip in journal.Tips().Where(tip => tip.Id <= before.Jobs))
            Assert.Null(JobFileDifference.Between(journal.Read(tip.Id)!.Job, backup.Read(tip.Id)!.Job));
        Assert.Equal(["backup"], Directory.GetFileSystemEntries(folder).Select(Path.GetFileName));
        Assert.Equal(StoreFault.Exists, Assert.Throws<StoreException>(() => Backup.Make(journal, At("backup"))).Fault);
    }

    [Fact]
    public void A_store_is_restored_only_where_none_is_or_where_it_may_be_replaced_and_then_it_is_kept()
    {
        var journal = Filled();
        var seal = Backup.Make(journal, At("backup")).Seal;
        journal.Put(new KeyedJob("later", Samples.Bare()), "test");
        var later = journal.Check().Seal;
        Assert.Equal(StoreFault.Exists,
            Assert.Throws<StoreException>(() => Restore.From(At("backup"), Place.Address, replace: false, Place.Clock)).Fault);
        Assert.Equal(later, journal.Check().Seal);
        journal.Dispose();
        var restored = Restore.From(At("backup"), Place.Address, replace: true, Place.Clock);
        Assert.Equal(seal, restored.Check.Seal);
        Assert.NotNull(restored.SetAside);
        Assert.Equal(seal, Place.Open(OpenStore.MustExist).Check().Seal);
        using var aside = Journals.Open(Aside(restored.SetAside), SystemClock.Instance);
        Assert.Equal(later, aside.Check().Seal);
    }

    [Fact]
    public void A_damaged_backup_is_not_restored()
    {
        using var journal = Filled();
        var seal = journal.Check().Seal;
        Backup.Make(journal, At("backup"));
        var bytes = File.ReadAllBytes(At("backup"));
        for (int at = 0, next; (next = bytes.AsSpan(at).IndexOf("Block, pallet 2"u8)) >= 0; at += next + 1)
            bytes[at + next] ^= 1;
        File.WriteAllBytes(At("backup"), bytes);
        Assert.Equal(StoreFault.Damaged,
            Assert.Throws<StoreException>(() => Restore.From(At("backup"), Place.Address, replace: true, Place.Clock)).Fault);
        Assert.Equal(seal, journal.Check().Seal);
    }

    [Fact]
    public void A_store_moved_to_SQLite_and_back_is_equal_down_to_the_exported_bytes()
    {
        Filled().Dispose();
        var there = At("moved.stringline");
        var moved = Move.To(Place.Address, there, Place.Clock);
        Assert.Equal(StoreFault.Exists, Assert.Throws<StoreException>(() => Move.To(Place.Address, there, Place.Clock)).Fault);
        using var back = Another();
        Assert.Equal(moved.Seal, Move.To(there, back.Address, Place.Clock).Seal);
        var journal = Place.Open(OpenStore.MustExist);
        var old = journal.Check();
        Assert.Equal((old.Seal, old.Jobs, old.Changes, old.Proofs), (moved.Seal, moved.Jobs, moved.Changes, moved.Proofs));
        using var copy = Journals.Open(there, SystemClock.Instance);
        Export.To(journal, At("one"));
        Export.To(copy, At("other"));
        Assert.Equal(Files(At("one")), Files(At("other")));
        Assert.Equal(journal.Search("alder", 100).Select(hit => hit.Job), copy.Search("alder", 100).Select(hit => hit.Job));
    }

    [Fact]
    public void A_damaged_store_is_not_moved()
    {
        Filled().Dispose();
        Place.Tamper("update changes set who = 'x' where job = 2 and sequence = 2");
        Place.EndTampering();
        Assert.Equal(StoreFault.Damaged, Assert.Throws<StoreException>(() => Move.To(Place.Address, At("moved"), Place.Clock)).Fault);
    }

    [Fact]
    public void What_is_exported_fills_a_new_store_with_the_same_jobs()
    {
        var journal = Filled();
        var exported = Export.To(journal, At("out"));
        Assert.Equal((5L, 2L), (exported.Jobs, exported.Papers));
        foreach (var job in journal.ReadAll(JobsToRead.All))
        {
            var file = Path.Combine(At("out"), "jobs", Uri.EscapeDataString(job.Tip.Key) + ".json");
            Assert.Null(JobFileDifference.Between(job.Job, Samples.Read(File.ReadAllBytes(file))));
        }

        foreach (var paper in Directory.GetFiles(Path.Combine(At("out"), "papers")))
            Assert.Equal(Path.GetFileNameWithoutExtension(paper), ContentHash.Of(File.ReadAllBytes(paper)).ToString());
        Assert.Equal(1 + 3, File.ReadAllLines(Path.Combine(At("out"), "papers.csv")).Length);
        Assert.Equal(StoreFault.Exists, Assert.Throws<StoreException>(() => Export.To(journal, At("out"))).Fault);
    }

    protected abstract Place Another();

    protected abstract string Aside(string kept);

    private string At(string name) => Path.Combine(folder, name);

    private static List<string> Files(string of) =>
        [.. Directory.GetFiles(of, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
        .Select(file => Path.GetRelativePath(of, file) + " " + ContentHash.Of(File.ReadAllBytes(file)))];

    private IJournal Filled()
    {
        var journal = Place.Open();
        journal.PutMany(
            [new("alder-court", Samples.Demo()), new("2026/114 \"Ösp\"", Samples.Long("Alder 2", 6)), new("..", Samples.Bare()),
                new("a b%20c", Samples.Bare()), new("木", Samples.Long("x", 1))],
            "test");
        Assert.IsType<AppendOutcome.Appended>(
            journal.Append(2, 7, [Samples.Entry(Samples.Delivery(7), Samples.Picture(1), Samples.Paper("p"))], "test"));
        Assert.IsType<AppendOutcome.Appended>(journal.Append(2, 8, [new JobChange.Proved(2, [Samples.Picture(1, "again.png")])], "test"));
        return journal;
    }
}

public sealed class SqliteUpkeepTests() : UpkeepTests(() => new SqlitePlace())
{
    protected override Place Another() => new SqlitePlace();

    protected override string Aside(string kept) => kept;
}

[Slow(Slow.PostgreSql)]
public sealed class PostgresUpkeepTests() : UpkeepTests(() => new PostgresPlace())
{
    protected override Place Another() => new PostgresPlace();

    protected override string Aside(string kept) => $"postgres:{PostgresPlace.Server};Search Path={kept["schema ".Length..]}";
}
