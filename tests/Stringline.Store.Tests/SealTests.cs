using Stringline.Store.Chain;
using Stringline.Store.Sql;
using Stringline.Store.Upkeep;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>
/// A seal that is kept outside of the store: any number of entries later it still says whether what stood then stands now, and names what
/// was cut off, forged with a chain that is right in itself, slipped in, or dated by a clock that was set back.
/// </summary>
public abstract class SealTests : IDisposable
{
    private const int Jobs = 6;
    private const int Entries = 5;

    private static readonly Instant Morning = Instant.FromUtc(2026, 6, 22, 16, 0);

    private readonly Lazy<Place> place;

    protected SealTests(Func<Place> make) => place = new Lazy<Place>(make);

    protected Place Place => place.Value;

    public void Dispose()
    {
        if (place.IsValueCreated)
            place.Value.Dispose();
        GC.SuppressFinalize(this);
    }

    internal abstract void Unguard();

    [Fact]
    public void A_seal_stays_comparable_after_any_number_of_later_entries_as_a_file_and_as_a_line()
    {
        var journal = Filled();
        var seals = new List<Seal>();
        for (var round = 0; round < 5; round++)
        {
            seals.Add(journal.MakeSeal());
            for (var job = 1; job <= Jobs; job++)
                Append(journal, job, 1 + Entries + round);
            Assert.IsType<PutOutcome.Added>(journal.Add(new KeyedJob($"new-{round}", Samples.Long("New", 2)), "ben"));
        }

        for (var round = 0; round < 5; round++)
        {
            foreach (var seal in Both(seals[round]))
            {
                var report = journal.Compare(seal);
                Assert.Empty(report.Broken);
                Assert.Equal((5 - round, (5 - round) * (Jobs + 3)), (report.JobsSince, report.ChangesSince));
            }
        }
    }

    [Fact]
    [Attack("history rewritten, against a seal kept outside")]
    public void A_chain_forged_from_any_change_on_passes_the_check_and_is_named_by_the_seal()
    {
        var journal = Filled();
        var seal = journal.MakeSeal();
        Append(journal, 3, 1 + Entries);
        for (var from = 1; from <= 1 + Entries; from++)
        {
            var back = Forge(3, from, "somebody else");
            Assert.True(journal.Check().IsWhole);
            var named = Assert.Single(journal.Compare(seal).Broken);
            Assert.Equal(("key-3", from), (named.Job, named.Sequence));
            Assert.Contains("rewritten", named.Found, StringComparison.Ordinal);
            Assert.Contains("rewritten", Assert.Single(journal.Compare(Both(seal)[1]).Broken).Found, StringComparison.Ordinal);
            back();
        }

        Assert.Empty(journal.Compare(seal).Broken);
        Forge(3, 2 + Entries, "who wrote after the seal");
        Assert.All(Both(seal), one => Assert.Empty(journal.Compare(one).Broken));
    }

    [Theory]
    [InlineData("delete from changes where job = 4 and sequence > 3", "key-4", 4L)]
    [InlineData("delete from changes where job = 4", "key-4", 1L)]
    [InlineData("delete from changes where job = 6; delete from search_texts where job = 6; delete from jobs where id "
        + "= 6; update store set jobs = 5", "key-6", null)]
    [InlineData("delete from changes where job = 2; delete from search_texts where job = 2; delete from jobs where id = 2", "key-2", null)]
    [Attack("history rewritten, against a seal kept outside")]
    public void What_was_cut_off_is_named(string sql, string job, long? sequence)
    {
        var journal = Filled();
        var seal = journal.MakeSeal();
        Place.Tamper(sql);
        var named = journal.Compare(seal).Broken[0];
        Assert.Equal((job, sequence), (named.Job, named.Sequence));
        Assert.Contains("missing", named.Found, StringComparison.Ordinal);
        Assert.Contains("missing", journal.Compare(Both(seal)[1]).Broken[0].Found, StringComparison.Ordinal);
    }

    [Fact]
    [Attack("history rewritten, against a seal kept outside")]
    public void An_older_copy_in_the_place_of_the_store_is_named()
    {
        var journal = Filled();
        using var older = new SqlitePlace();
        Backup.Make(journal, older.Address);
        Append(journal, 2, 1 + Entries);
        var seal = journal.MakeSeal();
        var named = Assert.Single(older.Open(OpenStore.ReadOnly).Compare(seal).Broken);
        Assert.Equal(("key-2", 2L + Entries), (named.Job, named.Sequence));
        Assert.Contains("1 are missing", Assert.Single(older.Open(OpenStore.ReadOnly).Compare(Both(seal)[1]).Broken).Found,
            StringComparison.Ordinal);
    }

    [Fact]
    [Attack("history rewritten, against a seal kept outside")]
    public void A_clock_set_back_after_the_seal_dates_nothing_before_it()
    {
        var journal = Filled();
        var seal = journal.MakeSeal();
        Place.Clock.Set(Morning - Duration.FromDays(2000));
        Append(journal, 1, 1 + Entries);
        Assert.IsType<PutOutcome.Added>(journal.Add(new KeyedJob("new", Samples.Bare()), "ben"));
        Assert.NotNull(journal.ClockBehind);
        Assert.All(Both(seal), one => Assert.Empty(journal.Compare(one).Broken));
        Assert.All([journal.Read(1)!.Rows[^1], journal.Read(Jobs + 1)!.Rows[0]], row => Assert.True(row.At > seal.At));
    }

    [Fact]
    [Attack("history rewritten, against a seal kept outside")]
    public void What_says_that_it_was_recorded_before_the_seal_and_was_not_there_is_named()
    {
        var journal = Filled();
        var seal = journal.MakeSeal();
        Place.Tamper("update store set sealed = ''");
        Place.Clock.Set(Morning - Duration.FromDays(2000));
        Append(journal, 1, 1 + Entries);
        Assert.IsType<PutOutcome.Added>(journal.Add(new KeyedJob("new", Samples.Bare()), "ben"));
        Assert.True(journal.Check().IsWhole);
        var named = journal.Compare(seal).Broken;
        Assert.Equal([("key-1", 2L + Entries), ("new", 1L)], named.Select(link => (link.Job, link.Sequence ?? 0)));
        Assert.All(named, link => Assert.Contains("clock was set back", link.Found, StringComparison.Ordinal));
        Assert.Contains(journal.Compare(Both(seal)[1]).Broken, link => link.Found.Contains("1 were slipped in", StringComparison.Ordinal));
    }

    [Fact]
    public void A_seal_holds_for_the_store_moved_to_another_database()
    {
        var journal = Filled();
        var seal = journal.MakeSeal();
        journal.Dispose();
        using var there = new SqlitePlace();
        Move.To(Place.Address, there.Address, Place.Clock);
        there.Clock.Set(Morning - Duration.FromDays(2000));
        var moved = there.Open();
        Append(moved, 1, 1 + Entries);
        Assert.All(Both(seal), one => Assert.Empty(moved.Compare(one).Broken));
    }

    [Fact]
    public void A_change_of_next_year_is_not_in_the_line_but_in_the_file()
    {
        var journal = Filled();
        Place.Clock.Set(Morning + Duration.FromDays(365));
        Append(journal, 5, 1 + Entries);
        Place.Clock.Set(Morning + Duration.FromHours(1));
        var seal = journal.MakeSeal();
        Assert.Equal(1, seal.NotInLine);
        Append(journal, 1, 1 + Entries);
        Assert.All(Both(seal), one => Assert.Empty(journal.Compare(one).Broken));
        Forge(5, 2 + Entries, "somebody else");
        Assert.Equal(("key-5", 2L + Entries), (journal.Compare(seal).Broken.Single() is var named ? named.Job : "", named.Sequence));
    }

    [Fact]
    [Attack("history rewritten, against a seal kept outside")]
    public void The_guards_of_the_journal_are_missed_where_they_were_taken_off()
    {
        var journal = Filled();
        Unguard();
        var report = journal.Check();
        Assert.False(report.IsWhole);
        Assert.True(report.JournalIsWhole);
        Assert.All(report.Broken, link => Assert.Equal(StorePart.Guards, link.Part));
        Assert.Contains(report.Broken, link => link.Found.Contains("it keeps the journal from being edited", StringComparison.Ordinal));
        Assert.Contains(report.Broken, link => link.Found.Contains("that this program does not make", StringComparison.Ordinal));
    }

    // The two ways in which a seal is kept.
    private static IReadOnlyList<Seal> Both(Seal seal)
    {
        var file = SealFile.Read(SealFile.Write(seal), out var fault);
        Assert.Null(fault);
        var line = Seal.ReadLine(seal.Line(), out fault);
        Assert.Null(fault);
        return [file!, line!];
    }

    // A chain that is right in itself, with everything that hangs on it: what somebody can make who has this program and all rights.
    private Action Forge(long job, long from, string who)
    {
        using var database = Connect();
        var stood = database.Run(connection => RowReading.Rows(connection, null, job));
        var tip = database.Run(connection => RowReading.Tip(connection, null, job))!;
        var before = ChainHash.Beginning;
        foreach (var row in stood)
        {
            var forged = row.Sequence >= from ? row with { Who = row.Sequence == from ? who : row.Who } : row;
            before = ChainHash.Of(before, job, tip.Key, forged);
            Put(job, forged with { Hash = before.ToBytes() });
        }

        Place.Tamper("update jobs set hash = @hash where id = @job", new { hash = before.ToBytes(), job });
        return () =>
        {
            foreach (var row in stood)
                Put(job, row);
            Place.Tamper("update jobs set hash = @hash where id = @job", new { hash = tip.Hash.ToBytes(), job });
        };
    }

    private void Put(long job, RawRow row) =>
        Place.Tamper("update changes set who = @Who, hash = @Hash where job = @job and sequence = @Sequence",
            new { row.Who, row.Hash, job, row.Sequence });

    internal abstract Database Connect();

    private static void Append(IJournal journal, long job, long sequence) =>
        Assert.IsType<AppendOutcome.Appended>(journal.Append(job, sequence, [Samples.Entry(Samples.Delivery((int)sequence))], "ben"));

    private IJournal Filled()
    {
        var journal = Place.Open();
        Place.Clock.Set(Morning);
        for (var job = 1; job <= Jobs; job++)
            Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob($"key-{job}", Samples.Long($"Job {job}", Entries)), "ana"));
        return journal;
    }
}

public sealed class SqliteSealTests() : SealTests(() => new SqlitePlace())
{
    internal override Database Connect() => new SqliteDatabase(Place.Address, OpenStore.MustExist);

    internal override void Unguard() => Place.Scalar<string>(
        "drop trigger changes_are_not_edited; drop index steps_by_day; create trigger t before insert on assessed begin "
            + "select raise(abort, 'no'); end");
}

[Slow(Slow.PostgreSql)]
public sealed class PostgresSealTests() : SealTests(() => new PostgresPlace())
{
    internal override Database Connect() => new PostgresDatabase((StoreAddress.OnServer)StoreAddress.Read(Place.Address));

    internal override void Unguard() => Place.Scalar<string>(
        "drop trigger changes_stay on changes; alter table proofs disable trigger proofs_stay; create rule t as on "
            + "delete to steps do instead nothing");
}

/// <summary>The texts of a seal.</summary>
public sealed class SealTextTests
{
    private static readonly Seal Sample = new(Instant.FromUtc(2026, 6, 22, 23, 14, 6), 2, 9, "0123456789abcdef0123456789abcdef")
    {
        Each = [new SealedJob("2026/114 \"Ösp\"", 2, ContentHash.Of("a"u8), "a1b2c3d4"),
            new SealedJob("..", 1, ContentHash.Of("b"u8), "ffff")],
    };

    [Fact]
    [Attack("a seal mistyped or changed")]
    public void A_line_reads_back_and_with_one_character_wrong_it_is_refused_or_the_same()
    {
        var line = Sample.Line();
        Assert.Equal(Sample with { Each = null }, Seal.ReadLine(line, out _));
        Assert.Equal(Sample with { Each = null }, Seal.ReadLine("  " + line.Replace(" ", "  ", StringComparison.Ordinal) + "\n", out _));
        for (var at = 0; at < line.Length; at++)
        {
            foreach (var wrong in "0a7 Z")
            {
                var typed = line[..at] + wrong + line[(at + 1)..];
                if (Seal.ReadLine(typed, out var fault) is { } read)
                    Assert.Equal(Sample with { Each = null }, read);
                else
                    Assert.NotNull(fault);
            }
        }

        AttackAttribute.Tried(line.Length * 5);
    }

    [Fact]
    [Attack("a seal mistyped or changed")]
    public void A_file_reads_back_and_with_one_byte_changed_or_cut_it_is_refused_or_the_same()
    {
        var file = SealFile.Write(Sample);
        AssertSame(SealFile.Read(file, out _));
        AssertSame(SealFile.Read(
            System.Text.Encoding.UTF8.GetBytes(System.Text.Encoding.UTF8.GetString(file).ReplaceLineEndings("\r\n")), out _));
        for (var at = 0; at < file.Length; at++)
        {
            foreach (var flip in (byte[])[1, 4, 32, 128])
            {
                var changed = file.ToArray();
                changed[at] ^= flip;
                if (SealFile.Read(changed, out var fault) is { } read)
                    AssertSame(read);
                else
                    Assert.NotNull(fault);
            }

            // Cut after the first line it is a line, which says as much as a line says.
            if (SealFile.Read(file.AsSpan(0, at), out _) is { } cut)
                Assert.True(cut.Each is null ? cut == Sample with { Each = null } : at == file.Length - 1);
        }

        AttackAttribute.Tried(file.Length * 5);
    }

    private static void AssertSame(Seal? read)
    {
        Assert.Equal(Sample.Each, read?.Each);
        Assert.Equal(Sample with { Each = null }, read! with { Each = null });
    }
}
