using System.Globalization;
using Dapper;
using Npgsql;
using Stringline.Tables;
using Stringline.Store.Chain;
using Stringline.Store.Sql;
using Stringline.Store.Upkeep;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>
/// A PostgreSQL server is stopped at once (<c>pg_ctl stop -m immediate</c>) in the midst of every kind of write, and started again. The
/// store is then the whole one of before or the whole one of after, nothing that was acknowledged is lost, and who wrote is told in plain
/// words. <c>bench/server-stops</c> does it at more moments.
/// </summary>
/// <param name="own">The server.</param>
[Slow(Slow.PostgreSql)]
public sealed class ServerStopTests(ServerStopTests.Server own) : IClassFixture<ServerStopTests.Server>, IDisposable
{
    // A write is stopped while it waits for a table that somebody else holds: in ./test for one that it comes to late, else for each in
    // turn.
    private static readonly string[] Tables =
        ["store", "settings", "jobs", "proofs", "changes", "search_texts", "assessed", "steps", "steps_written"];

    private static readonly int More = Rounds.Of("STRINGLINE_STOPS", 0);

    private static readonly Dictionary<string, Func<ServerStopTests, string, string>> Upkeep = new(StringComparer.Ordinal)
    {
        ["import 200 jobs"] = (_, address) =>
            In(address, journal =>
                journal.PutMany(
                    [.. Enumerable.Range(0, 200)
                        .Select(i => new KeyedJob(string.Create(CultureInfo.InvariantCulture, $"{i}"), Samples.Long("x", 5)))],
                        "test").Added == 200),
        ["assess all"] = (_, address) => In(address, journal =>
        {
            journal.WriteAssessed(journal.Tips().Select(Write.Found));
            return true;
        }),
        ["back up"] = (test, address) => In(address, journal =>
        {
            File.Delete(test.New);
            return Backup.Make(journal, test.New).IsWhole;
        }),
        ["restore"] = (test, address) => Restore.From(test.Made, address, replace: true, SystemClock.Instance).Check.IsWhole
            ? "added" : "refused",
        ["move"] = (test, address) => Move.To(test.Made, address + "_moved", SystemClock.Instance).IsWhole ? "added" : "refused",
        ["make a store"] = (_, address) => In(address + "_made", _ => true),
        ["bring an earlier version to this one"] = (_, address) => In(address, _ => true),
    };

    private readonly string folder = Scratch.Folder();
    private readonly OwnServer? server = own.Own;

    private static int schemas;

    public static TheoryData<string> Everything => [.. Write.Every.Select(write => write.Name), .. Upkeep.Keys];

    private string Made => Path.Combine(folder, "made");

    private string New => Path.Combine(folder, "new");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [MemberData(nameof(Everything))]
    [Attack("PostgreSQL stopped at once in the midst of every kind of write")]
    public async Task Stopped_in_the_midst_of_a_write_the_store_is_that_of_before_or_of_after(string what)
    {
        Assert.SkipWhen(server is null, "no PostgreSQL server can be made here: initdb and pg_ctl are missing");
        var whole = System.Diagnostics.Stopwatch.StartNew();
        var (address, before) = Prepare(what);
        whole.Restart();
        Assert.Equal("added", Do(what, address));
        var took = whole.Elapsed;
        var after = State(address);
        var stops = 0;
        foreach (var table in More > 0 ? Tables : Late(what) is { } late ? [late] : [])
        {
            var stopped = await StoppedAt(what, table, after);
            stops += stopped ? 1 : 0;
            Assert.True(stopped || More > 0, $"{what} does not need {table}: it was not stopped in its midst.");
        }

        for (var i = 0; i < 1 + More; i++)
        {
            (address, before) = Prepare(what);
            var writing = Task.Run(() => Told(what, address), TestContext.Current.CancellationToken);
            await Task.Delay(took * Random.Shared.NextDouble(), TestContext.Current.CancellationToken);
            server!.StopHard();
            server.Start();
            IsBeforeOrAfter(what, address, before, after, await writing);
            stops++;
        }

        TestContext.Current.SendDiagnosticMessage($"{what}: stopped {stops} times");
        AttackAttribute.Tried(stops);
    }

    // A table that a write comes to after others; null where it makes its tables itself, and can be met in its midst by chance only.
    private static string? Late(string what) => what switch
    {
        "assess all" or "write what was found" or "erase what was found" or "renew what is derived" => "steps",
        "write settings" => "settings",
        "seal" or "back up" or "bring an earlier version to this one" => "changes",
        "append a paper" => "proofs",
        "restore" or "move" or "make a store" => null,
        _ => "search_texts",
    };

    // Holds the table, so that the write waits in its midst; false where it does not need the table.
    private async Task<bool> StoppedAt(string what, string table, string after)
    {
        var (address, before) = Prepare(what);
        var schema = address.Split("Search Path=")[1].Split(';')[0];
        await using var holder = new NpgsqlConnection(server!.Connection + ";Pooling=False");
        await holder.OpenAsync(TestContext.Current.CancellationToken);
        await using var transaction = await holder.BeginTransactionAsync(TestContext.Current.CancellationToken);
        if (holder.ExecuteScalar<string>("select to_regclass(@table)::text", new { table = $"{schema}.{table}" }) is null)
            return false;
        holder.Execute($"lock table {schema}.{table} in access exclusive mode");
        var writing = Task.Run(() => Told(what, address), TestContext.Current.CancellationToken);

        // On a connection of its own: within a transaction a server shows who waits as it was when it was first asked.
        await using var looker = new NpgsqlConnection(server.Connection + ";Pooling=False");
        await looker.OpenAsync(TestContext.Current.CancellationToken);
        while (!writing.IsCompleted && looker.ExecuteScalar<long>("select count(*) from pg_stat_activity where wait_event_type = 'Lock'")
            == 0)
            await Task.Delay(5, TestContext.Current.CancellationToken);
        if (writing.IsCompleted)
        {
            await writing;
            return false;
        }

        server.StopHard();
        server.Start();
        IsBeforeOrAfter(what, address, before, after, await writing);
        return true;
    }

    // What it is told, and whether it may be in the store all the same.
    private (string Word, bool Maybe) Told(string what, string address)
    {
        try
        {
            return (Do(what, address), false);
        }
        catch (StoreException e)
        {
            Assert.Contains("is: ", e.Message, StringComparison.Ordinal);
            Assert.Contains(e.Fault, (StoreFault[])[StoreFault.Unreachable, StoreFault.Failed]);
            Assert.DoesNotContain("Exception", e.Message, StringComparison.Ordinal);
            return (e.Message, e.MaybeWritten);
        }
    }

    private string Do(string what, string address)
    {
        if (Upkeep.TryGetValue(what, out var upkeep))
            return upkeep(this, address);
        using var journal = Journals.Open(address, SystemClock.Instance);
        return Write.Every.Single(write => write.Name == what).Do(journal, journal.Find(Write.Job)!.Tip);
    }

    private void IsBeforeOrAfter(string what, string address, string before, string after, (string Word, bool Maybe) told)
    {
        if (what == "back up")
        {
            Assert.Equal(before, State(address));
            Assert.Equal(told.Word == "added", File.Exists(New));
            if (File.Exists(New))
                Assert.Equal(before.Split(" settings")[0], State(New).Split(" settings")[0]);
            File.Delete(New);
            return;
        }

        var now = State(address);

        // A move makes an empty store first, and may begin where one is: the same command again finishes.
        if (what == "move" && told.Word != "added" && now.Split("; ") is [var old, ['0', ' ', 'j', ..], "none"]
            && before.StartsWith(old + "; ", StringComparison.Ordinal))
        {
            Assert.Equal("added", Do(what, address));
            Assert.Equal(after, State(address));
            return;
        }

        if (told.Word == "added")
            Assert.Equal(after, now);
        else
            Assert.True(now == before
                || (now == after
                    && (told.Maybe || what is "restore" or "move" or "make a store" or "bring an earlier version to this one")),
                    $"{what}: {now}; before: {before}; after: {after}; told: {told.Word}");
    }

    // What stands at the address and beside it, all of it walked.
    private static string State(string address)
    {
        string? One(string at, OpenStore open)
        {
            try
            {
                using var journal = Journals.Open(at, SystemClock.Instance, open);
                var check = journal.Check();
                Assert.Empty(check.Broken);
                return string.Create(CultureInfo.InvariantCulture,
                    $"{check.Jobs} jobs, {check.Changes} changes, {check.Proofs} papers settings {journal.ReadSettings()} assessed {journal.CountAssessed("1", new LocalDate(2026, 6, 1)).Assessed} found {journal.Search("block", 1000).Count}");
            }
            catch (StoreException e) when (e.Fault is StoreFault.Missing)
            {
                return "none";
            }
            catch (StoreException e) when (e.Fault is StoreFault.EarlierVersion)
            {
                return "earlier";
            }
        }

        return address.StartsWith("postgres:", StringComparison.Ordinal)
            ? $"{One(address, OpenStore.ReadOnly)}; {One(address + "_moved", OpenStore.ReadOnly)}; {One(address + "_made",
                OpenStore.ReadOnly)}"
            : One(address, OpenStore.ReadOnly)!;
    }

    private static string In(string address, Func<IJournal, bool> write)
    {
        using var journal = Journals.Open(address, SystemClock.Instance, OpenStore.OrMake);
        return write(journal) ? "added" : "refused";
    }

    // A store of its own for each try: what was acknowledged in it before must be there after.
    private (string Address, string State) Prepare(string what)
    {
        var schema = string.Create(CultureInfo.InvariantCulture, $"s{++schemas}");

        // Last in the text, so that another name can be put behind it.
        var address = server!.Address("x").Replace(";Search Path=x", "", StringComparison.Ordinal) + ";Search Path=" + schema;
        if (what == "bring an earlier version to this one")
        {
            MakeVersion1(address);
        }
        else
        {
            using var journal = Journals.Open(address, SystemClock.Instance, OpenStore.OrMake);
            Assert.IsType<PutOutcome.Added>(journal.Put(new KeyedJob(Write.Job, Write.Filled()), "test"));
            Assert.Equal(20,
                journal.PutMany(Enumerable.Range(0, 20)
                    .Select(i => new KeyedJob(string.Create(CultureInfo.InvariantCulture, $"other {i}"), Samples.Long("x", 4))),
                    "test").Added);
            if (what is "erase what was found" or "renew what is derived")
                journal.WriteAssessed(journal.Tips().Select(Write.Found));
            File.Delete(Made);
            if (what is "restore" or "move")
            {
                journal.Put(new KeyedJob("in the backup", Samples.Long("x", 4)), "test");
                Backup.Make(journal, Made);
                journal.Put(new KeyedJob("not in the backup", Samples.Long("x", 3)), "test");
            }
        }

        return (address, State(address));
    }

    /// <summary>One server for all of it, since making one takes longer than stopping it.</summary>
    public sealed class Server : IDisposable
    {
        internal OwnServer? Own { get; } = OwnServer.Make();

        public void Dispose() => Own?.Dispose();
    }

    // A store of the first version with one job, by the statements of that version.
    private static void MakeVersion1(string address)
    {
        using var database = new PostgresDatabase((StoreAddress.OnServer)StoreAddress.Read(address));
        database.Run(connection =>
        {
            database.Prepare(connection, OpenStore.OrMake);
            Migrator.Bring(database, connection, Migrator.Scripts(database), 1, SystemClock.Instance);
        });
        var job = Samples.Long("x", 300);
        var rows = new NewRows(NewRows.Nothing(1, Write.Job, job.Name), "ana", SystemClock.Instance.GetCurrentInstant());
        rows.Head(JournalText.Head(job), null);
        foreach (var entry in job.Entries)
            rows.Entry(entry, JournalText.Entry(entry), []);
        var tip = rows.After(job.Name);
        database.Change((connection, transaction) =>
        {
            connection.Execute("update store set jobs = 1", transaction: transaction);
            connection.Execute("insert into jobs (id, key, name, sequence, hash) values (@Id, @Key, @Name, @Sequence, @hash)",
                new { tip.Id, tip.Key, tip.Name, tip.Sequence, hash = tip.Hash.ToBytes() }, transaction);
            foreach (var row in rows.Rows)
            {
                connection.Execute(
                    "insert into changes (job, sequence, at, who, kind, learned, supersedes, proofs, payload, hash) values (1, @Sequence, "
                        + "@At, @Who, @Kind, @Learned, @Supersedes, @Proofs, @Payload, @Hash)",
                    new { row.Sequence, row.At, row.Who, row.Kind, row.Learned, row.Supersedes, row.Proofs, row.Payload, row.Hash },
                    transaction);
            }

            return (true, true);
        });
    }
}
