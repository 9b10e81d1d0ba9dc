using Stringline.Testing;
using System.Data.Common;

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
    [Attack("one byte of the journal’s own tables changed")]
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
        AttackAttribute.Tried(places);
    }

    [Theory]
    [InlineData("delete from changes where job = 7 and sequence = 30", "key-7", 30L)]
    [InlineData("delete from changes where job = 7 and sequence >= 40", "key-7", null)]
    [InlineData("delete from changes where job = 7", "key-7", null)]
    [InlineData("update changes set payload = (select payload from changes where job = 7 and sequence = 12) "
        + "where job = 7 and sequence = 13", "key-7", 13L)]
    [InlineData("update changes set job = 8, sequence = 99 where job = 7 and sequence = 51", "key-7", null)]
    [InlineData("update changes set who = 'nobody'", "key-1", 1L)]
    [InlineData("delete from proofs", null, null)]
    [Attack("what was cut out, moved or replaced")]
    public void What_is_cut_out_moved_or_replaced_is_found_at_its_first_broken_link(string sql, string? job, long? sequence)
    {
        var journal = Place.Open();
        Place.Tamper(sql);
        var first = journal.Check().Broken[0];
        Assert.Equal((job, sequence), (first.Job, first.Sequence));
    }

    /// <summary>Of one byte of these nothing that anybody is shown depends.</summary>
    private static readonly string[] ShownNowhere =
    [
        "migrations.at",            // when a version of this program first opened the store
        "search_docsize.origin",
        // where the index of words will look for words that a job loses: it finds too much then, and that is found
        "steps_written.times",      // only grows; a desk that is open compares it with what it saw last
    ];

    [Fact]
    [Attack("a value of each column of each table changed")]
    public void A_byte_changed_in_any_column_of_any_table_is_found_and_what_is_derived_is_mended()
    {
        var seed = Random.Shared.Next();
        var random = new Random(seed);
        using var small = Another();
        var journal = small.Open();
        Fill(journal, jobs: 4, entries: 6);
        Derive(journal);
        Assert.True(journal.WriteSettings(null, """{"name":"Yolo Block"}"""));
        journal.MakeSeal();
        Assert.Empty(journal.Check().Broken);
        var tried = new HashSet<string>(StringComparer.Ordinal);
        var cells = 0;
        var searched = Searched(small);
        foreach (var (table, column, key) in Columns(small))
        {
            if (ShownNowhere.Contains($"{table}.{column}") || !Cell.HasAny(small, table, column))
                continue;
            for (var i = 0; i < 3; i++)
            {
                cells++;
                var cell = Cell.Pick(small, random, table, column, key);
                if (!cell.TryWrite(cell.Changed(random)))
                    continue;
                tried.Add(table);
                var report = journal.Check();
                if (report.IsWhole && table.StartsWith("search_", StringComparison.Ordinal) && Searched(small) == searched)
                {
                    // A row of the index's own books on which no answer depends.
                    cell.Write(cell.Value);
                    continue;
                }

                Assert.False(report.IsWhole, $"Not found: {cell}, seed {seed}.");
                if (report.JournalIsWhole && report.Broken.All(link => link.Part == StorePart.Derived))
                {
                    journal.Renew();
                    Derive(journal);
                    Assert.True(journal.Check().IsWhole, $"Not mended: {cell}, seed {seed}: {string.Join("; ", journal.Check().Broken)}");
                }
                else
                {
                    cell.Write(cell.Value);
                }
            }
        }

        Assert.Empty(journal.Check().Broken);
        AttackAttribute.Tried(cells);
        Assert.Superset(new HashSet<string>(
            ["store", "jobs", "changes", "proofs", "search_texts", "assessed", "steps", "settings", "migrations"]), tried);
    }

    [Theory]
    [InlineData("delete from steps where job = 2 and ordinal = 1", true)]
    [InlineData("delete from assessed where job = 2", true)]
    [InlineData("delete from steps_written", true)]
    [InlineData("update steps set act_by = '2031-01-01' where job = 3", true)]
    [InlineData("update steps set standing = 'xxx' where job = 3", true)]
    [InlineData("update assessed set customer = 'Somebody else' where job = 3", true)]
    [InlineData("update assessed set act_by = null where job = 3", true)]
    [InlineData("update steps set ordinal = 7 where job = 3 and ordinal = 1", true)]
    [InlineData("update steps set job = 4, ordinal = 9 where job = 3 and ordinal = 1", true)]
    [InlineData("delete from search_texts where job = 3", true)]
    [InlineData("update search_texts set texts = 'no tab' where job = 3", true)]
    [InlineData("delete from migrations where number = 3", false)]
    [InlineData("update settings set document = '{\"name\":\"Somebody else\"}'", false)]
    [Attack("what was cut out, moved or replaced")]
    public void A_derived_row_that_is_missing_moved_or_replaced_is_found_and_mended(string sql, bool isDerived)
    {
        using var small = Another();
        var journal = small.Open();
        Fill(journal, jobs: 4, entries: 2);
        Derive(journal);
        Assert.True(journal.WriteSettings(null, """{"name":"Yolo Block"}"""));
        Assert.Empty(journal.Check().Broken);
        small.Tamper(sql);
        var report = journal.Check();
        Assert.False(report.IsWhole);
        Assert.True(report.JournalIsWhole);
        journal.Renew();
        Derive(journal);
        Assert.Equal(isDerived, journal.Check().IsWhole);
    }

    [Fact]
    public void Damaged_derived_rows_show_nothing_stop_nothing_and_are_named()
    {
        using var small = Another();
        var journal = small.Open();
        Fill(journal, jobs: 4, entries: 2);
        Derive(journal);
        var query = new StepQuery(StepFilter.None, new LocalDate(1, 1, 1), new LocalDate(9999, 12, 31), 100) { Watch = null };
        Assert.Equal(8, journal.Steps(query).Count);
        Assert.Empty(journal.FindDamaged());
        small.Tamper("update steps set standing = 'xxx' where job = 3 and ordinal = 0; update steps set act_by = "
            + "'garbage' where job = 4 and ordinal = 1");
        small.Tamper("update assessed set at_stake = 1 where job = 2; update steps set weight = 9223372036854775807, lead = 1");
        Assert.DoesNotContain(journal.Steps(query), line => line.Job is 3);
        Assert.Null(journal.ReadAssessed(2));
        Assert.DoesNotContain(journal.Desk(new DeskPage(100)), line => line.Job.Id == 2);
        Assert.NotEmpty(journal.StepTotals(StepFilter.None, [new LocalDate(2026, 6, 1), new LocalDate(2026, 7, 1)]));
        Assert.NotNull(journal.Watches(StepFilter.None, new LocalDate(9999, 12, 31)));
        Assert.NotNull(journal.Customers(new LocalDate(2026, 6, 1), "", 10));
        Assert.Equal([1, 2, 3, 4], journal.FindDamaged());
        Assert.Equal([1, 2, 3, 4], journal.DamagedMet);
        journal.EraseAssessed(journal.DamagedMet);
        Assert.Empty(journal.DamagedMet);
        Derive(journal);
        Assert.Equal(8, journal.Steps(query).Count);
        Assert.True(journal.Check().IsWhole);
    }

    // What every word finds, by a program that has just been started.
    private static string Searched(Place place)
    {
        using var journal = Journals.Open(place.Address, SystemClock.Instance);
        var words = place.Rows("select texts from search_texts order by job")
            .SelectMany(row => ((string)row[0]).Split(['\n', '\t', ' ', '-'])).Distinct();
        return string.Join('\n',
            words.Select(word => word + ": " + string.Join(' ', journal.Search(word, 100).Select(hit => hit.Job.Key))));
    }

    protected abstract Place Another();

    /// <summary>Every column of every table that the schema lists, with the columns that name a row of it.</summary>
    protected abstract IEnumerable<(string Table, string Column, string[] Key)> Columns(Place place);

    private static void Derive(IJournal journal) => journal.WriteAssessed(journal.Tips().Select(tip => new AssessedJob
    {
        Job = tip.Id,
        Sequence = tip.Sequence,
        Rules = "rules",
        AsOf = new LocalDate(2026, 6, 1),
        ActBy = new LocalDate(2026, 6, 20),
        AtStake = 84_250.07m,
        Standing = Stringline.Law.Reasoning.Standing.Open,
        What = "claim-of-lien.last-day",
        Customer = "Marlpit Lumber Co.",
        County = "Yolo",
        Person = "Ana Ruiz",
        Owed = 90_000m,
        Findings = "{}"u8.ToArray(),
        Steps =
        [
            Step("Record the claim of lien", new LocalDate(2026, 6, 20)) with { AtStake = 84_250.07m, Owed = 90_000m, Stakes = "All of it",
                Section = "Civ. Code § 8412" },
            Step("Search the index", new LocalDate(2026, 6, 8)) with { Watch = true, Reading = "a reading", Left = "alive",
                Outlook = "Until then" },
        ],
    }));

    private static AssessedStep Step(string act, LocalDate day) =>
        new("claim-of-lien.last-day", act, "Claim of lien", day, Stringline.Law.Reasoning.Standing.Open);

    [Fact]
    [Attack("what was cut out, moved or replaced")]
    public void A_job_cut_out_with_everything_of_it_is_missed()
    {
        var journal = Place.Open();
        Place.Tamper("delete from changes where job = 7; delete from search_texts where job = 7; delete from jobs where id = 7");
        Assert.Contains("job number 7 is missing", journal.Check().Broken.Select(link => link.Found));
    }

    private static void Fill(IJournal journal, int jobs = Jobs, int entries = Entries)
    {
        for (var job = 1; job <= jobs; job++)
        {
            var id = Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob($"key-{job}", Samples.Bare($"Job {job}")), "ana")).Job;
            var changes = Enumerable.Range(0, entries).Select(i => Samples.Entry(
                Samples.Delivery(i) with
                {
                    Id = $"e{i}", Supersedes = i % 5 == 4 ? $"e{i - 1}" : null, Learned = i % 3 == 0 ? new LocalDate(2026, 5, 1) : null,
                    Ref = null,
                },
                i % 10 == 0 ? [Samples.Picture((job * 100) + i)] : []));
            Assert.IsType<AppendOutcome.Appended>(journal.Append(id, 1, [.. changes], "ben"));
        }
    }

    /// <summary>One value in a table.</summary>
    private sealed record Cell(Place Place, string Table, string Column, string[] Key, object[] Row, object Value)
    {
        public static Cell Pick(Place place, Random random, string table, string column, string[] key)
        {
            var rows = place.Rows($"select {string.Join(", ", key)}, {column} from {table} "
                + $"where {column} is not null and {NotEmpty(column)} order by {string.Join(", ", key)}");
            var row = rows[random.Next(rows.Count)];
            return new Cell(place, table, column, key, row[..key.Length], row[^1]);
        }

        public static bool HasAny(Place place, string table, string column) =>
            place.Rows($"select 1 from {table} where {column} is not null and {NotEmpty(column)} limit 1").Count > 0;

        // A text or content of no length has no byte to change.
        // Nor is the one row in which the index of words keeps averages for an order that nobody asks for
        // (https://www.sqlite.org/fts5.html, 9.3).
        private static string NotEmpty(string column) => $"length(cast({column} as text)) > 0" + (column == "block" ? " and id > 1" : "");

        /// <summary>False where the table itself does not take the value.</summary>
        public bool TryWrite(object value)
        {
            try
            {
                Write(value);
                return true;
            }
            catch (DbException)
            {
                return false;
            }
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

        public override string ToString() =>
            $"{Table}.{Column} at {string.Join(", ", Row.Select(k => k is byte[] b ? Convert.ToHexString(b) : k))}";
    }
}

[Slow(Slow.Fuzz)]
public sealed class SqliteTamperTests() : TamperTests(() => new SqlitePlace(), places: 500)
{
    protected override Place Another() => new SqlitePlace();

    // The tables of the index of words are SQLite's own, and named in its schema as any other.
    protected override IEnumerable<(string Table, string Column, string[] Key)> Columns(Place place)
    {
        foreach (var table in place.Rows("select name from sqlite_schema where type = 'table' and sql not like 'create virtual%' and "
            + "name not like 'sqlite!_%' escape '!' order by name").ConvertAll(row => (string)row[0]))
        {
            var columns = place.Rows($"select name, pk from pragma_table_info('{table}') order by pk, cid")
                .ConvertAll(row => (Name: (string)row[0], Key: (long)row[1]));
            foreach (var (name, _) in columns)
                yield return (table, name, [.. columns.Where(column => column.Key > 0).Select(column => column.Name)]);
        }
    }

    [Fact]
    [Attack("one byte of the store’s file changed", 600)]
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
                stored.AddRange(Place.Rows(sql).Select(row => (file.AsSpan().IndexOf((byte[])row[0]), ((byte[])row[0]).Length))
                    .Where(found => found.Item1 >= 0));
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

[Slow(Slow.PostgreSql)]
public sealed class PostgresTamperTests() : TamperTests(() => new PostgresPlace(), places: 150)
{
    protected override Place Another() => new PostgresPlace();

    protected override IEnumerable<(string Table, string Column, string[] Key)> Columns(Place place)
    {
        var keys = place.Rows("""
            select k.table_name, k.column_name from information_schema.key_column_usage k
            join information_schema.table_constraints t using (constraint_schema, constraint_name)
            where k.table_schema = current_schema and t.constraint_type = 'PRIMARY KEY' order by k.ordinal_position
            """).ToLookup(row => (string)row[0], row => (string)row[1]);
        foreach (var row in place.Rows("select table_name, column_name, data_type from information_schema.columns where table_schema = "
            + "current_schema order by 1, ordinal_position"))
        {
            // Lexemes are not changed byte by byte: how they stand against the words of the job is tried by statements.
            if ((string)row[2] != "tsvector")
                yield return ((string)row[0], (string)row[1], [.. keys[(string)row[0]]]);
        }
    }

    [Theory]
    [InlineData("update search_texts set words = array_to_tsvector(array['zzz']) where job = 2")]
    [InlineData("update search_texts set words = words || array_to_tsvector(array['zzz']) where job = 2")]
    [Attack("what was cut out, moved or replaced")]
    public void A_word_by_which_a_job_is_found_wrongly_is_found(string sql)
    {
        var journal = Place.Open();
        Place.Tamper(sql);
        Assert.Contains("the words by which it is found", Assert.Single(journal.Check().Broken).Found, StringComparison.Ordinal);
        journal.Renew();
        Assert.True(journal.Check().IsWhole);
    }
}
