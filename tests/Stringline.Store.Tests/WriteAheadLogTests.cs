using System.Buffers.Binary;
using Microsoft.Data.Sqlite;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>
/// A write-ahead log that an unclean end left and that was damaged since: SQLite takes it up to the first frame that does not fit and drops
/// what follows, which somebody was told is recorded (https://www.sqlite.org/fileformat2.html, "The Write-Ahead Log").
/// </summary>
[Slow(Slow.Fuzz)]
public sealed class WriteAheadLogTests : IDisposable
{
    private const int Header = 32;
    private const int Frame = 24 + 4096;

    private readonly string folder = Scratch.Folder();

    private string Store => Path.Combine(folder, "office");

    private string Copy => Path.Combine(folder, "copy");

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    [Attack("a left log that is whole, cut off, of two rounds, or being written")]
    public void A_log_that_was_left_and_is_whole_is_no_fault()
    {
        var (store, log) = Left();
        Lay(store, log);
        Assert.Equal(13, Checked().Jobs);
        Assert.True(Checked().IsWhole);

        // Cut off in the middle of a frame, as a kill leaves it: the entry was told to nobody.
        Lay(store, log[..^100]);
        Assert.True(Checked().IsWhole);

        // And with pages that were written before their change was kept.
        Lay(store, [.. log, .. new byte[3000]]);
        Assert.True(Checked().IsWhole);
    }

    [Fact]
    [Attack("a bit of a left log flipped", 20)]
    public void Wherever_a_bit_of_the_log_is_flipped_it_is_told_before_and_after_the_store_is_written_to()
    {
        var (store, log) = Left();
        var frames = (log.Length - Header) / Frame;
        for (var place = 0; place < 20; place++)
        {
            var flipped = (byte[])log.Clone();
            var at = place switch
            {
                0 => 17,                                    // A salt of the log.
                1 => 29,                                    // Its checksum.
                2 => Header + 9,                            // A salt of the first frame.
                3 => Header + ((frames - 1) * Frame) + 13,  // A salt of the last.
                4 => log.Length - 1,
                _ => Header + ((place - 5) * (log.Length - Header) / 15),
            };
            flipped[at] ^= 1;
            Lay(store, flipped);
            Told(place);

            // The next who writes takes the log up to the fault and goes on after it.
            using (var journal = Journals.Open(Copy, SystemClock.Instance))
                journal.Put(new KeyedJob("later", Samples.Bare()), "test");
            SqliteConnection.ClearAllPools();
            Assert.Equal(flipped, File.ReadAllBytes(Assert.Single(Directory.GetFiles(folder, "copy_damaged_log_*"))));
            Told(place);
        }

        void Told(int place)
        {
            var report = Checked();
            Assert.True(report.Broken.Any(link => link.Found.Contains("write-ahead log", StringComparison.Ordinal)),
                $"Not told: place {place}.");
        }
    }

    [Fact]
    [Attack("a left log that is whole, cut off, of two rounds, or being written")]
    public void Frames_of_an_earlier_round_of_the_log_are_no_fault()
    {
        using (var journal = Journals.Open(Store, SystemClock.Instance, OpenStore.OrMake))
        {
            journal.PutMany([.. Enumerable.Range(0, 60).Select(i => new KeyedJob($"long {i}", Samples.Long("x", 9)))], "test");
            using (var connection = new SqliteConnection($"Data Source={Store}"))
            {
                connection.Open();
                using var command = connection.CreateCommand();
                command.CommandText = "pragma wal_checkpoint(full)";
                command.ExecuteNonQuery();
            }

            journal.Put(new KeyedJob("after", Samples.Bare()), "test");
            Lay(File.ReadAllBytes(Store), File.ReadAllBytes(Store + "-wal"));
        }

        var log = File.ReadAllBytes(Copy + "-wal");
        var salts = Enumerable.Range(0, (log.Length - Header) / Frame)
            .Select(i => BinaryPrimitives.ReadUInt64BigEndian(log.AsSpan(Header + (i * Frame) + 8)));
        Assert.Equal(2, salts.Distinct().Count());
        Assert.True(Checked().IsWhole);

        // A frame of the new round of which only the head was written: the rest of it is still of the round before.
        var store = File.ReadAllBytes(Copy);
        var end = Header + (salts.TakeWhile(salt => salt == BinaryPrimitives.ReadUInt64BigEndian(log.AsSpan(16))).Count() * Frame);
        var cut = (byte[])log.Clone();
        cut.AsSpan(Header, 24).CopyTo(cut.AsSpan(end));
        cut[end + 7] = 9;       // The number of pages: it would be the end of a change.
        Lay(store, cut);
        Assert.True(Checked().IsWhole);

        // The same of the first frame of a round.
        for (var at = Header + Frame; at < end; at += Frame)
            log.AsSpan(end + 8, 8).CopyTo(log.AsSpan(at + 8));
        log[Header + 7] = 9;
        Lay(store, log);
        Assert.Equal(0, Checked().Broken.Count(link => link.Part == StorePart.Log));
    }

    // What is there while somebody writes is read by nobody else as damage.
    [Fact]
    [Attack("a left log that is whole, cut off, of two rounds, or being written")]
    public async Task A_store_that_is_being_written_to_is_no_fault()
    {
        using var journal = Journals.Open(Store, SystemClock.Instance, OpenStore.OrMake);
        using var stop = new CancellationTokenSource();
        var writing = Task.Run(() =>
        {
            for (var i = 0; !stop.IsCancellationRequested; i++)
                journal.Put(new KeyedJob($"job {i}", Samples.Long("x", 5)), "test");
        }, TestContext.Current.CancellationToken);
        for (var i = 0; i < 100; i++)
        {
            using var other = Journals.Open(Store, SystemClock.Instance);
            other.CountJobs();
        }

        await stop.CancelAsync();
        await writing;
        Assert.Empty(Directory.GetFiles(folder, "*damaged*"));
        Assert.True(journal.Check().IsWhole);
    }

    // A store and its log as they are at a moment at which somebody has the store open and dies.
    private (byte[] Store, byte[] Log) Left()
    {
        using (var journal = Journals.Open(Store, SystemClock.Instance, OpenStore.OrMake))
            journal.Put(new KeyedJob("first", Samples.Bare()), "test");
        SqliteConnection.ClearAllPools();
        using (var journal = Journals.Open(Store, SystemClock.Instance))
        {
            for (var i = 0; i < 12; i++)
                journal.Put(new KeyedJob($"job {i}", Samples.Bare()), "test");
            return (File.ReadAllBytes(Store), File.ReadAllBytes(Store + "-wal"));
        }
    }

    private void Lay(byte[] store, byte[] log)
    {
        SqliteConnection.ClearAllPools();
        foreach (var left in Directory.GetFiles(folder, "copy*"))
            File.Delete(left);
        File.WriteAllBytes(Copy, store);
        File.WriteAllBytes(Copy + "-wal", log);
    }

    private CheckReport Checked()
    {
        using var journal = Journals.Open(Copy, SystemClock.Instance, OpenStore.ReadOnly);
        return journal.Check();
    }
}
