using System.Diagnostics;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>A disk that is full, or may only be read: real ones, mounted for the test, which needs root.</summary>
[Slow(Slow.Lasting)]
public sealed class DiskTests : IDisposable
{
    private readonly string folder = Scratch.Folder();
    private readonly List<string> mounted = [];

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        foreach (var mount in mounted)
            Run("umount", "-l", mount);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    [Attack("disk full")]
    public void On_a_full_disk_the_writer_is_told_and_what_was_acknowledged_stays()
    {
        var disk = Mount("-t", "tmpfs", "-o", "size=2m", "tmpfs");
        using var journal = Journals.Open(Path.Combine(disk, "office.stringline"), SystemClock.Instance, OpenStore.OrMake);
        var id = Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob("a", Samples.Bare()), "test")).Job;
        long sequence = 1;
        var full = Assert.Throws<StoreException>(() =>
        {
            for (var i = 0; i < 1000; i++)
            {
                var entry = Samples.Entry(Samples.Delivery(i), Samples.Paper(new string((char)('a' + (i % 26)), 40_000 + i)));
                sequence = Assert.IsType<AppendOutcome.Appended>(journal.Append(id, sequence, [entry], "test")).Sequence;
            }
        });
        Assert.Equal(StoreFault.Full, full.Fault);
        Assert.Contains("should be: a disk with room", full.Message, StringComparison.Ordinal);
        Assert.True(sequence > 5, "The disk was full before anything was written.");
        Assert.Equal(sequence, journal.Read(id)!.Tip.Sequence);
        Assert.Empty(journal.Check().Broken);
        Assert.Equal(0, Run("mount", "-o", "remount,size=16m", disk).Status);
        Assert.IsType<AppendOutcome.Appended>(
            journal.Append(id, sequence, [Samples.Entry(Samples.Delivery(2000), Samples.Paper(new string('z', 100_000)))], "test"));
        Assert.Empty(journal.Check().Broken);
    }

    [Fact]
    [Attack("disk full")]
    public void A_backup_that_does_not_fit_leaves_nothing_behind()
    {
        using var place = new SqlitePlace();
        var journal = place.Open();
        var id = Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob("a", Samples.Bare()), "test")).Job;
        journal.Append(id, 1, [Samples.Entry(Samples.Delivery(0), Samples.Paper(new string('z', 3_000_000)))], "test");
        var disk = Mount("-t", "tmpfs", "-o", "size=1m", "tmpfs");
        var full = Assert.Throws<StoreException>(() => Upkeep.Backup.Make(journal, Path.Combine(disk, "backup")));
        Assert.Equal(StoreFault.Full, full.Fault);
        Assert.StartsWith(Path.Combine(disk, "backup"), full.Message, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(disk));
    }

    [Fact]
    [Attack("disk only to be read")]
    public void On_a_disk_that_may_only_be_read_the_writer_is_told_and_nothing_is_changed()
    {
        var disk = Mount("-t", "tmpfs", "-o", "size=4m", "tmpfs");
        var address = Path.Combine(disk, "office.stringline");
        using (var journal = Journals.Open(address, SystemClock.Instance, OpenStore.OrMake))
            journal.Put(new KeyedJob("a", Samples.Bare()), "test");
        using (var journal = Journals.Open(address, SystemClock.Instance))
            Upkeep.Backup.Make(journal, Path.Combine(disk, "backup"));
        Assert.Equal(0, Run("mount", "-o", "remount,ro", disk).Status);
        var refused = Assert.Throws<StoreException>(() =>
        {
            using var journal = Journals.Open(address, SystemClock.Instance);
            journal.Append(1, 1, [Samples.Entry(Samples.Delivery(0))], "test");
        });
        Assert.True(refused.Fault is StoreFault.ReadOnly or StoreFault.NotAllowed, refused.Message);
        using (var backup = Journals.Open(Path.Combine(disk, "backup"), SystemClock.Instance, OpenStore.ReadOnly))
            Assert.Empty(backup.Check().Broken);
        Assert.Equal(0, Run("mount", "-o", "remount,rw", disk).Status);
        using (var journal = Journals.Open(address, SystemClock.Instance))
        {
            Assert.Equal(1, journal.Read(1)!.Tip.Sequence);
            Assert.IsType<AppendOutcome.Appended>(journal.Append(1, 1, [Samples.Entry(Samples.Delivery(0))], "test"));
        }
    }

    private string Mount(params string[] what)
    {
        var place = Directory.CreateDirectory(Path.Combine(folder, $"disk{mounted.Count}")).FullName;
        var (status, errors) = Run("mount", [.. what, place]);
        if (status != 0)
            Assert.Skip("This user may not mount a disk, so there is none to fill or to lock: " + errors.Trim());
        mounted.Add(place);
        return place;
    }

    private static (int Status, string Errors) Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
        var errors = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, errors);
    }
}
