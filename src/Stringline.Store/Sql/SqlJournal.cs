using System.Data.Common;
using Stringline.Law.Facts;
using Stringline.Store.Chain;
using Stringline.Store.Search;

namespace Stringline.Store.Sql;

/// <summary>The journal on either database.</summary>
internal sealed class SqlJournal(Database database, IClock clock) : IJournal
{
    private readonly RecordingClock recording = new(clock);
    private readonly DamagedJobs damaged = new();

    private readonly Lazy<IReadOnlyList<string>> logFaults = new(() => [.. database.CheckLogs()]);

    /// <summary>The database.</summary>
    public Database Database => database;

    /// <inheritdoc/>
    public string Name => database.Name;

    /// <inheritdoc/>
    public ClockBehind? ClockBehind => recording.Behind;

    /// <inheritdoc/>
    public IReadOnlyList<string> LogFaults => logFaults.Value;

    /// <inheritdoc/>
    public AppendOutcome Append(long job, long expectedSequence, IReadOnlyList<JobChange> changes, string who) =>
        new Appending(database, recording).Append(job, expectedSequence, changes, who);

    /// <inheritdoc/>
    public PutOutcome Add(KeyedJob job, string who) => new Putting(database, recording).Add(job, who);

    public PutOutcome Put(KeyedJob job, string who) => new Putting(database, recording).Put(job, who);

    /// <inheritdoc/>
    public PutReport PutMany(IEnumerable<KeyedJob> jobs, string who, IProgress<StoreProgress>? progress = null) =>
        new Putting(database, recording).PutMany(jobs, who, progress);

    /// <inheritdoc/>
    public StoredJob? Read(long job) => database.Run(connection =>
    {
        using var snapshot = database.BeginSnapshot(connection);
        return RowReading.Tip(connection, snapshot, job) is { } tip
            ? RowReading.Job(database, tip, RowReading.Rows(connection, snapshot, tip.Id)) : null;
    });

    /// <inheritdoc/>
    public StoredJob? Find(string key) => database.Run(connection =>
    {
        using var snapshot = database.BeginSnapshot(connection);
        return RowReading.Tip(connection, snapshot, key) is { } tip
            ? RowReading.Job(database, tip, RowReading.Rows(connection, snapshot, tip.Id)) : null;
    });

    /// <inheritdoc/>
    public IEnumerable<StoredJob> ReadAll(JobsToRead which) =>
        database.Stream((connection, snapshot) => RowReading.Jobs(connection, snapshot, which))
            .Select(job => RowReading.Job(database, job.Tip, job.Rows));

    /// <inheritdoc/>
    public IEnumerable<T> OfEach<T>(JobsToRead which, int cores, Func<JobTip, JobFile, T> work) => OnCores.Select(
        database.Stream((connection, snapshot) => RowReading.Payloads(connection, snapshot, which)),
        cores,
        job => work(job.Tip, RowReading.Job(database, job.Tip, job.Head, job.Entries)));

    /// <inheritdoc/>
    public IEnumerable<JobTip> Tips() => database.Stream(RowReading.Tips);

    /// <inheritdoc/>
    public Proof? ReadProof(ProofLink link)
    {
        if (database.Run(connection => ProofTable.Content(connection, null, link.Hash)) is not { } content)
            return null;
        return Proof.Of(link.Name, content) is ProofResult.Taken { Proof: var proof } && proof.Hash == link.Hash
            ? proof
            : throw new StoreException(
                StoreFault.Damaged, Name, $"a paper that is not what was attached ({link.Name}, {link.Hash})",
                "a store that `stringline store check` finds whole; restore the last backup that is");
    }

    /// <inheritdoc/>
    public IReadOnlyList<SearchHit> Search(string words, int limit)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(limit);
        var sought = Folding.Words(words).Distinct().ToList();
        if (sought.Count == 0)
            return [];
        return database.Run(connection =>
        {
            var hits = new List<SearchHit>();
            var met = new HashSet<long>();
            foreach (var (condition, words) in database.Seek(sought))
            {
                using var command = RowReading.Command(
                    connection,
                    null,
                    "select j.id, j.key, j.name, j.sequence, j.hash, s.texts from search_texts s join jobs j on j.id = s.job where "
                        + $"{condition} order by j.id limit @limit",
                    ("@words", words),
                    ("@limit", (long)limit));
                using var reader = command.ExecuteReader();
                while (hits.Count < limit && reader.Read())
                {
                    var tip = RowReading.TipAt(reader, 0);
                    if (met.Add(tip.Id))
                        hits.Add(new SearchHit(tip, SearchTexts.Where(reader.GetString(5), sought)));
                }

                if (hits.Count == limit)
                    break;
            }

            return hits;
        });
    }

    /// <inheritdoc/>
    public void WriteAssessed(IEnumerable<AssessedJob> jobs) => database.Change((connection, transaction) =>
    {
        database.WriteAssessed(connection, transaction, jobs);
        StepsTable.Mark(connection, transaction);
        return (true, true);
    });

    /// <inheritdoc/>
    public AssessedJob? ReadAssessed(long job) => database.Run(connection => AssessedTable.Read(connection, damaged, job));

    /// <inheritdoc/>
    public IReadOnlyList<DeskLine> Desk(DeskPage page) => database.Run(connection => AssessedTable.Desk(connection, damaged, page));

    /// <inheritdoc/>
    public IReadOnlyList<StepLine> Steps(StepQuery query) => database.Run(connection => StepsTable.Lines(connection, damaged, query));

    /// <inheritdoc/>
    public IReadOnlyList<StepTotal> StepTotals(StepFilter filter, IReadOnlyList<LocalDate> ends) =>
        Sound(connection => StepsTable.Totals(connection, filter, ends),
            [.. Enumerable.Repeat(new StepTotal(0, 0, 0m, 0m), ends.Count + 1)]);

    /// <inheritdoc/>
    public IReadOnlyList<WatchTotal> Watches(StepFilter filter, LocalDate through) =>
        Sound(connection => StepsTable.Watches(connection, filter, through), []);

    /// <inheritdoc/>
    public long StepsWritten() => database.Run(connection => StepsTable.Written(connection));

    /// <inheritdoc/>
    public StepChoices Choices(int limit) => database.Run(connection => StepsTable.Choices(connection, limit));

    /// <inheritdoc/>
    public IReadOnlyList<JobTip> JobsOf(string customer, int limit) =>
        database.Run(connection => AssessedTable.JobsOf(connection, customer, limit));

    /// <inheritdoc/>
    public IReadOnlyList<DeskLine> AssessedOf(string customer, int limit) =>
        database.Run(connection => AssessedTable.Of(connection, damaged, customer, limit));

    /// <inheritdoc/>
    public IReadOnlyList<CustomerTotal> Customers(LocalDate from, string after, int limit) =>
        Sound(connection => CustomerTable.Page(connection, from, after, limit), []);

    /// <inheritdoc/>
    public IReadOnlyList<long> DamagedMet => damaged.Met;

    /// <inheritdoc/>
    public IReadOnlyList<long> FindDamaged()
    {
        foreach (var (job, _) in database.Stream(DerivedCheck.Walk))
            damaged.Add(job);
        return damaged.Met;
    }

    /// <inheritdoc/>
    public void EraseAssessed(IReadOnlyList<long> jobs)
    {
        database.Change((connection, transaction) =>
        {
            AssessedTable.Erase(database, connection, transaction, jobs);
            StepsTable.Mark(connection, transaction);
            return (true, true);
        });
        damaged.Remove(jobs);
    }

    /// <inheritdoc/>
    public void Renew()
    {
        database.Change((connection, transaction) =>
        {
            database.Renew(connection, transaction);
            SearchFilling.Fill(database, connection, transaction);
            StepsTable.Mark(connection, transaction);
            return (true, true);
        });
        damaged.Remove(damaged.Met);
    }

    // Sums that cannot be made, since a row among them is damaged, are left empty for as long as it takes to make the row anew. Where every
    // row is sound the index from which they are summed is not, and it is made anew at once.
    private T Sound<T>(Func<DbConnection, T> sum, T otherwise)
    {
        try
        {
            return database.Run(sum);
        }
        catch (Exception e) when (DamagedRow.Is(e) || e is StoreException { Fault: StoreFault.Failed or StoreFault.Damaged })
        {
            if (FindDamaged().Count > 0)
                return otherwise;
            database.Change((connection, transaction) =>
            {
                database.RenewIndexes(connection, transaction);
                return (true, true);
            });
            try
            {
                return database.Run(sum);
            }
            catch (Exception again) when (DamagedRow.Is(again))
            {
                throw database.Translate(new DamagedRow($"sums that cannot be made ({again.Message})", again));
            }
        }
    }

    /// <inheritdoc/>
    public string? ReadSettings() => database.Run(connection => SettingsTable.Read(connection));

    /// <inheritdoc/>
    public bool WriteSettings(string? seen, string document) => database.Change((connection, transaction) =>
    {
        var written = SettingsTable.Write(connection, transaction, seen, document);
        return (written, written);
    });

    /// <inheritdoc/>
    public long CountJobs() => database.Run(connection =>
    {
        using var command = RowReading.Command(connection, null, "select jobs from store");
        return (long)command.ExecuteScalar()!;
    });

    /// <inheritdoc/>
    public (long Jobs, long Assessed) CountAssessed(string rules, LocalDate asOf) =>
        database.Run(connection => AssessedTable.Count(connection, rules, asOf));

    /// <inheritdoc/>
    public CheckReport Check(IProgress<StoreProgress>? progress = null) => database.Run(connection =>
    {
        using var snapshot = database.BeginSnapshot(connection);
        return new ChainCheck(database, connection, snapshot, progress).Walk();
    });

    /// <inheritdoc/>
    public Seal MakeSeal() =>
        database.Change((connection, transaction) => (Sealing.Make(database, connection, transaction, recording), true));

    /// <inheritdoc/>
    public SealReport Compare(Seal seal) => new SealComparison(seal).Against(database.Stream(SealRows.All));

    /// <summary>The first of some places at which this journal does not hold the same change; null where it holds them all.</summary>
    public JobTip? FirstNotHeld(IEnumerable<JobTip> tips) => database.Run(connection =>
    {
        using var command = RowReading.Command(
            connection, null, "select hash from changes where job = @job and sequence = @sequence", ("@job", 0L), ("@sequence", 0L));
        foreach (var tip in tips)
        {
            command.Parameters["@job"].Value = tip.Id;
            command.Parameters["@sequence"].Value = tip.Sequence;
            if (command.ExecuteScalar() is not byte[] { Length: ContentHash.Length } hash || ContentHash.From(hash) != tip.Hash)
                return tip;
        }

        return null;
    });

    /// <inheritdoc/>
    public void Dispose() => database.Dispose();
}
