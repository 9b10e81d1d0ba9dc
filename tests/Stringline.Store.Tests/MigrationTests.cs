using System.Data.Common;
using Stringline.Tables;
using Stringline.Store.Chain;
using Stringline.Store.Sql;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>A store of every earlier version, with data in it, is brought to this one.</summary>
public abstract class MigrationTests : IDisposable
{
    private readonly Lazy<Place> place;

    protected MigrationTests(Func<Place> make) => place = new Lazy<Place>(make);

    protected Place Place => place.Value;

    public void Dispose()
    {
        if (place.IsValueCreated)
            place.Value.Dispose();
        GC.SuppressFinalize(this);
    }

    internal abstract Database Connect();

    [Fact]
    public void A_store_of_version_1_keeps_its_jobs_and_papers_and_can_be_searched()
    {
        var paper = Samples.Paper("article 7019");
        var demo = Samples.Demo();
        var tip = Make(1, demo, paper);
        var thrown = Assert.Throws<StoreException>(() => Place.Open(OpenStore.ReadOnly));
        Assert.Equal(StoreFault.EarlierVersion, thrown.Fault);
        var journal = Place.Open(OpenStore.MustExist);
        Assert.Equal(8, Place.Scalar<long>("select max(number) from migrations"));
        Assert.Null(Testing.JobFileDifference.Between(demo, journal.Find("alder-court")!.Job));
        Assert.Equal([tip], journal.Tips());
        Assert.Equal("alder-court", Assert.Single(journal.Search("alder court", 10)).Job.Key);
        var report = journal.Check();
        Assert.Empty(report.Broken);
        Assert.Equal((1L, 1L + demo.Entries.Count, 1L), (report.Jobs, report.Changes, report.Proofs));
        Assert.IsType<AppendOutcome.Appended>(
            journal.Append(tip.Id, tip.Sequence, [Samples.Entry(Samples.Delivery(0, 1m, "NEW"))], "test"));
    }

    [Fact]
    public void A_store_of_version_2_keeps_its_jobs_and_forgets_what_was_assessed_without_steps()
    {
        var demo = Samples.Demo();
        var tip = Make(2, demo, Samples.Paper("article 7019"));
        Place.Tamper("insert into assessed (job, sequence, rules, as_of, act_by, at_stake, standing, what, findings) values (1, 1, 'r', "
            + "'2026-06-01', '2026-06-20', 100, 'open', 'claim-of-lien.last-day', @findings)", new { findings = "[]"u8.ToArray() });
        var journal = Place.Open(OpenStore.MustExist);
        Assert.Equal([tip], journal.Tips());
        Assert.Null(Testing.JobFileDifference.Between(demo, journal.Find("alder-court")!.Job));
        Assert.Null(journal.ReadAssessed(1));
        Assert.Equal((1L, 0L), journal.CountAssessed("r", new LocalDate(2026, 6, 1)));
    }

    [Fact]
    public void A_store_of_version_3_keeps_its_jobs()
    {
        var demo = Samples.Demo();
        var tip = Make(3, demo, Samples.Paper("article 7019"));
        Assert.Equal([tip], Place.Open(OpenStore.MustExist).Tips());
    }

    [Fact]
    public void A_store_of_version_4_keeps_its_jobs_and_has_no_settings_yet()
    {
        var tip = Make(4, Samples.Demo(), Samples.Paper("article 7019"));
        var journal = Place.Open(OpenStore.MustExist);
        Assert.Equal([tip], journal.Tips());
        Assert.Null(journal.ReadSettings());
    }

    [Fact]
    public void A_store_of_version_5_keeps_its_jobs_and_lists_their_steps_by_day()
    {
        var tip = Make(5, Samples.Demo(), Samples.Paper("article 7019"));
        var journal = Place.Open(OpenStore.MustExist);
        Assert.Equal([tip], journal.Tips());
        Assert.Empty(journal.Steps(
            new StepQuery(StepFilter.None, new LocalDate(1, 1, 1), new LocalDate(9999, 12, 31), 10) { Watch = null }));
    }

    [Theory]
    [InlineData(6)]
    [InlineData(7)]
    public void A_store_of_version_6_or_7_keeps_its_jobs_and_settings_and_forgets_assessments_that_nothing_proves(int version)
    {
        var tip = Make(version, Samples.Demo(), Samples.Paper("article 7019"));
        Place.Tamper("insert into assessed (job, sequence, rules, as_of, act_by, at_stake, standing, what, findings) values (1, 1, 'r', "
            + "'2026-06-01', '2026-06-20', 100, 'open', 'claim-of-lien.last-day', @findings)", new { findings = "[]"u8.ToArray() });
        Place.Tamper(
            "insert into steps (job, ordinal, watch, lead, act_by, weight, priced, what, act, remedy, standing, customer, county, person) "
            + "values (1, 0, 0, 1, '2026-06-20', 100, 1, 'claim-of-lien.last-day', 'Record', 'Claim of lien', 'open', '', '', '')");
        Place.Tamper("insert into settings (id, document) values (1, '{\"name\":\"Yolo Block\"}')");
        var journal = Place.Open(OpenStore.MustExist);
        Assert.Equal([tip], journal.Tips());
        Assert.Empty(journal.Steps(
            new StepQuery(StepFilter.None, new LocalDate(1, 1, 1), new LocalDate(9999, 12, 31), 10) { Watch = null }));
        Assert.Null(journal.ReadAssessed(1));
        Assert.Equal("{\"name\":\"Yolo Block\"}", journal.ReadSettings());
    }

    [Fact]
    public void Every_earlier_version_is_tried_here()
    {
        using var database = Connect();
        Assert.Equal(8, Migrator.Scripts(database).Count);
    }

    [Fact]
    public void A_store_of_a_later_version_is_refused()
    {
        Place.Open();
        Place.Tamper("insert into migrations (number, name, at) values (99, 'later', 0)");
        var refused = Assert.Throws<StoreException>(() => Place.Open(OpenStore.MustExist));
        Assert.Equal(StoreFault.TooNew, refused.Fault);
        Assert.Contains("version 99", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Opening_twice_migrates_once_and_opening_nothing_makes_nothing()
    {
        Assert.Equal(StoreFault.Missing, Assert.Throws<StoreException>(() => Place.Open(OpenStore.MustExist)).Fault);
        Assert.Equal(StoreFault.Missing, Assert.Throws<StoreException>(() => Place.Open(OpenStore.ReadOnly)).Fault);
        Place.Open();
        Place.Open();
        Assert.Equal(8, Place.Scalar<long>("select count(*) from migrations"));
    }

    // The tables as versions 1 to 3 had them, filled by statements that are kept here for good: the program itself no longer writes that
    // version.
    protected JobTip Make(int version, Law.Facts.JobFile job, Proof paper)
    {
        using var database = Connect();
        database.Run(connection =>
        {
            database.Prepare(connection, OpenStore.OrMake);
            Migrator.Bring(database, connection, Migrator.Scripts(database), version, SystemClock.Instance);
        });
        var rows = new NewRows(NewRows.Nothing(1, "alder-court", job.Name), "ana", SystemClock.Instance.GetCurrentInstant());
        rows.Head(JournalText.Head(job), null);
        foreach (var entry in job.Entries)
            rows.Entry(entry, JournalText.Entry(entry), entry.Index == 0 ? [paper] : []);
        var tip = rows.After(job.Name);
        database.Change((connection, transaction) =>
        {
            Insert(connection, transaction, "update store set jobs = 1");
            Insert(connection, transaction, "insert into jobs (id, key, name, sequence, hash) values (@1, @2, @3, @4, @5)", tip.Id, tip.Key,
                tip.Name, tip.Sequence, tip.Hash.ToBytes());
            Insert(connection, transaction, "insert into proofs (hash, kind, content) values (@1, @2, @3)", paper.Hash.ToBytes(), "pdf",
                paper.Content.ToArray());
            foreach (var row in rows.Rows)
            {
                Insert(
                    connection,
                    transaction,
                    "insert into changes (job, sequence, at, who, kind, learned, supersedes, proofs, payload, hash) values (1, @1, "
                        + "@2, @3, @4, @5, @6, @7, @8, @9)",
                    row.Sequence, row.At, row.Who, row.Kind, row.Learned, row.Supersedes, row.Proofs, row.Payload, row.Hash);
            }

            return (true, true);
        });
        return tip;
    }

    private static void Insert(DbConnection connection, DbTransaction transaction, string sql, params object?[] values)
    {
        using var command = RowReading.Command(connection, transaction, sql);
        for (var i = 0; i < values.Length; i++)
        {
            var parameter = command.CreateParameter();
            parameter.ParameterName = $"@{i + 1}";
            parameter.Value = values[i] ?? DBNull.Value;
            if (values[i] is null)
                parameter.DbType = System.Data.DbType.String;
            command.Parameters.Add(parameter);
        }

        command.ExecuteNonQuery();
    }
}

public sealed class SqliteMigrationTests() : MigrationTests(() => new SqlitePlace())
{
    // A backup is kept for years; the program that restores it is of today.
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(7)]
    public void A_backup_of_an_earlier_version_is_restored_and_stays_as_it_is(int version)
    {
        var tip = Make(version, Samples.Demo(), Samples.Paper("article 7019"));
        var before = File.ReadAllBytes(Place.Address);
        using var other = new SqlitePlace();
        Assert.Equal(1, Upkeep.Restore.From(Place.Address, other.Address, replace: false, SystemClock.Instance).Check.Jobs);
        Assert.Equal([tip], other.Open(OpenStore.MustExist).Tips());
        Assert.Equal(before, File.ReadAllBytes(Place.Address));
    }

    internal override Database Connect() => new SqliteDatabase(Place.Address, OpenStore.OrMake);

    [Fact]
    public void What_is_no_store_is_refused_and_left_as_it_is()
    {
        File.WriteAllText(Place.Address,
            "These are my notes, and long enough to be more than the head of a database file is; a hundred bytes.");
        Assert.Equal(StoreFault.NotAStore, Assert.Throws<StoreException>(() => Place.Open()).Fault);
        Assert.StartsWith("These are my notes", File.ReadAllText(Place.Address), StringComparison.Ordinal);
        File.Delete(Place.Address);
        Place.Scalar<long>("create table recipes (name text)");
        Assert.Equal(StoreFault.NotAStore, Assert.Throws<StoreException>(() => Place.Open()).Fault);
        Assert.Equal(1, Place.Scalar<long>("select count(*) from sqlite_schema"));
        Assert.Equal(StoreFault.NotAStore,
            Assert.Throws<StoreException>(() => Journals.Open(Path.GetDirectoryName(Place.Address)!, SystemClock.Instance)).Fault);
    }
}

[Slow(Slow.PostgreSql)]
public sealed class PostgresMigrationTests() : MigrationTests(() => new PostgresPlace())
{
    internal override Database Connect() => new PostgresDatabase((StoreAddress.OnServer)StoreAddress.Read(Place.Address));

    [Theory]
    [InlineData("postgres:Host=127.0.0.1;Port=1;Username=app;Timeout=5", StoreFault.Unreachable)]
    [InlineData("postgres:Hast=nowhere", StoreFault.NotAllowed)]
    [InlineData("postgres:Host=db;Search Path=a,b", StoreFault.NotAllowed)]
    public void A_server_that_cannot_be_used_is_said_so(string address, StoreFault fault) =>
        Assert.Equal(fault, Assert.Throws<StoreException>(() => Journals.Open(address, SystemClock.Instance)).Fault);

    [Fact]
    public void No_message_shows_a_password()
    {
        var thrown = Assert.Throws<StoreException>(
            () => Journals.Open("postgres:Host=127.0.0.1;Port=1;Username=app;Password=opensesame;Timeout=5", SystemClock.Instance));
        Assert.DoesNotContain("opensesame", thrown.ToString(), StringComparison.Ordinal);
    }
}
