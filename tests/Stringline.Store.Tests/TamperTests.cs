namespace Stringline.Store.Tests;

/// <summary>Whatever is changed in the tables behind the journal's back, a check finds it.</summary>
public abstract class TamperTests : IDisposable
{
    private const int Jobs = 20;
    private const int Entries = 50;

    private static readonly (string Table, string Columns, string Key)[] Places =
    [
        ("changes", "at who kind learned supersedes proofs payload hash", "job sequence"),
        ("changes", "payload", "job sequence"),
        ("changes", "hash", "job sequence"),
        ("jobs", "key name sequence hash", "id"),
        ("proofs", "hash kind content", "hash"),
        ("search_texts", "texts", "job"),
        ("store", "jobs", "only_row"),
    ];

    private readonly Lazy<Place> place;
    private readonly int places;

    protected TamperTests(Func<Place> make, int places)
    {
        this.places = places;
        place = new Lazy<Place>(() =>
        {
            var made = make();
            using var journal = made.Open();
            Fill(journal);
            return made;
        });
    }

    protected Place Place => place.Value;

    public void Dispose()
    {
        if (place.IsValueCreated)
            place.Value.Dispose();
        GC.SuppressFinalize(this);
    }

    [Fact]
    public void A_byte_changed_anywhere_in_a_thousand_entries_and_their_papers_is_found()
    {
        var journal = Place.Open();
        Assert.Empty(journal.Check().Broken);
        var seed = Random.Shared.Next();
        var random = new Random(seed);
        for (var i = 0; i < places; i++)
        {
            var (table, columns, key) = Places[random.Next(Places.Length)];
            var column = columns.Split(' ')[random.Next(columns.Split(' ').Length)];
            var cell = Cell.Pick(Place, random, table, column, key.Split(' '));
            cell.Write(cell.Changed(random));
            Assert.False(journal.Check().IsWhole, $"Not found: {cell}, seed {seed}.");
            cell.Write(cell.Value);
        }

        Assert.Empty(journal.Check().Broken);
    }

    [Theory]
    [InlineData("delete from changes where job = 7 and sequence = 30", "key-7", 30L)]
    [InlineData("delete from changes where job = 7 and sequence >= 40", "key-7", null)]
    [InlineData("delete from changes where job = 7", "key-7", null)]
    [InlineData("update changes set payload = (select payload from changes where job = 7 and sequence = 12) where job = 7 and sequence = 13", "key-7", 13L)]
    [InlineData("update changes set job = 8, sequence = 99 where job = 7 and sequence = 51", "key-7", null)]
    [InlineData("update changes set who = 'nobody'", "key-1", 1L)]
    [InlineData("delete from proofs", null, null)]
    public void What_is_cut_out_moved_or_replaced_is_found_at_its_first_broken_link(string sql, string? job, long? sequence)
    {
        var journal = Place.Open();
        Place.Tamper(sql);
        var first = journal.Check().Broken[0];
        Assert.Equal((job, sequence), (first.Job, first.Sequence));
    }

    [Fact]
    public void A_job_cut_out_with_everything_of_it_is_missed()
    {
        var journal = Place.Open();
        Place.Tamper("delete from changes where job = 7; delete from search_texts where job = 7; delete from jobs where id = 7");
        Assert.Contains("job number 7 is missing", journal.Check().Broken.Select(link => link.Found));
    }

    private static void Fill(IJournal journal)
    {
        for (var job = 1; job <= Jobs; job++)
        {
            var id = Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob($"key-{job}", Samples.Bare($"Job {job}")), "ana")).Job;
            var changes = Enumerable.Range(0, Entries).Select(i => Samples.Entry(
                Samples.Delivery(i) with { Id = $"e{i}", Supersedes = i % 5 == 4 ? $"e{i - 1}" : null, Learned = i % 3 == 0 ? new LocalDate(2026, 5, 1) : null, Ref = null },
                i % 10 == 0 ? [Samples.Picture((job * 100) + i)] : []));
            Assert.IsType<AppendOutcome.Appended>(journal.Append(id, 1, [.. changes], "ben"));
        }
    }

    /// <summary>One value in a table.</summary>
    private sealed record Cell(Place Place, string Table, string Column, string[] Key, object[] Row, object Value)
    {
        public static Cell Pick(Place place, Random random, string table, string column, string[] key)
        {
            var rows = place.Rows($"select {string.Join(", ", key)}, {column} from {table} where {column} is not null order by {string.Join(", ", key)}");
            var row = rows[random.Next(rows.Count)];
            return new Cell(place, table, column, key, row[..key.Length], row[^1]);
        }

        public object Changed(Random random) => Value switch
        {
            byte[] bytes => Flip(bytes, random),
            string text => Misspell(text, random),
            long number => number ^ (1L << random.Next(20)),
            _ => throw new InvalidOperationException("No such value."),
        };

        private static byte[] Flip(byte[] bytes, Random random)
        {
            var copy = bytes.ToArray();
            copy[random.Next(copy.Length)] ^= (byte)(1 + random.Next(255));
            return copy;
        }

        private static string Misspell(string text, Random random)
        {
            var at = random.Next(text.Length);
            var letter = (char)('a' + random.Next(26));
            return text[..at] + (letter == text[at] ? '#' : letter) + text[(at + 1)..];
        }

        // A paper's hash is its key: changed, the row is found by what it was changed to.
        public void Write(object value)
        {
            var where = string.Join(" and ", Key.Select((name, i) => $"{name} = @k{i}"));
            var parameters = new Dictionary<string, object> { ["value"] = value };
            for (var i = 0; i < Key.Length; i++)
                parameters[$"k{i}"] = Row[i];
            Assert.Equal(1, Place.Tamper($"update {Table} set {Column} = @value where {where}", parameters));
            if (Key.IndexOf(Column) is >= 0 and var at)
                Row[at] = value;
        }

        public override string ToString() => $"{Table}.{Column} at {string.Join(", ", Row.Select(k => k is byte[] b ? Convert.ToHexString(b) : k))}";
    }
}

public sealed class SqliteTamperTests() : TamperTests(() => new SqlitePlace(), places: 500)
{
    [Fact]
    public void A_byte_changed_in_the_file_itself_is_found()
    {
        const int Places = 600;
        byte[] file;
        List<(int At, int Length)> stored = [];
        using (var connection = ((SqlitePlace)Place).Connect())
        {
            Place.Scalar<string>("pragma secure_delete = on; vacuum; pragma wal_checkpoint(truncate)");
            file = File.ReadAllBytes(Place.Address);
            foreach (var sql in (string[])["select payload from changes", "select hash from changes", "select content from proofs"])
                stored.AddRange(Place.Rows(sql).Select(row => (file.AsSpan().IndexOf((byte[])row[0]), ((byte[])row[0]).Length)).Where(found => found.Item1 >= 0));
        }

        var before = Everything();
        Assert.True(stored.Count > 2000, "Too few values were found in the file.");
        var seed = Random.Shared.Next();
        var random = new Random(seed);
        var live = 0;
        for (var i = 0; i < Places; i++)
        {
            var (start, length) = stored[random.Next(stored.Count)];
            var at = start + random.Next(length);
            Poke(at, (byte)(file[at] ^ (1 + random.Next(255))));

            // Free space in a page may hold an older copy of a row: that is no part of an entry, and SQL reads what it read before.
            if (Found())
                live++;
            else
                Assert.True(Everything() == before, $"Not found: byte {at} of the file, seed {seed}.");
            Poke(at, file[at]);
        }

        Assert.True(live > Places * 9 / 10, $"Only {live} of {Places} places were part of an entry.");

        Assert.False(Found());
    }

    private void Poke(int at, byte value)
    {
        using var stream = new FileStream(Place.Address, FileMode.Open, FileAccess.Write, FileShare.ReadWrite);
        stream.Position = at;
        stream.WriteByte(value);
    }

    private ContentHash Everything()
    {
        using var connection = ((SqlitePlace)Place).Connect();
        using var command = connection.CreateCommand();
        command.CommandText = "select payload, hash from changes union all select content, hash from proofs";
        using var reader = command.ExecuteReader();
        using var all = new MemoryStream();
        while (reader.Read())
        {
            all.Write(reader.GetFieldValue<byte[]>(0));
            all.Write(reader.GetFieldValue<byte[]>(1));
        }

        return ContentHash.Of(all.ToArray());
    }

    private bool Found()
    {
        using var journal = Journals.Open(Place.Address, SystemClock.Instance, OpenStore.ReadOnly);
        return !journal.Check().IsWhole;
    }
}

public sealed class PostgresTamperTests() : TamperTests(() => new PostgresPlace(), places: 150);
