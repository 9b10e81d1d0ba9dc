using System.Data.Common;
using System.Globalization;
using Dapper;
using Stringline.Tables;
using Stringline.Store.Search;
using Stringline.Store.Sql;

namespace Stringline.Store.Chain;

/// <summary>
/// Walks a store from the first change of the first job to the last attached paper, and says what is not as it was written.
/// </summary>
internal sealed class ChainCheck(Database database, DbConnection connection, DbTransaction snapshot, IProgress<StoreProgress>? progress)
{
    private const int TellEvery = 1000;

    private readonly List<BrokenLink> broken = [];
    private readonly HashSet<ContentHash> named = [];
    private readonly Dictionary<long, ContentHash> texts = [];
    private readonly WordSums words = new();
    private readonly SealHash seal = new();
    private bool journalIsWhole = true;
    private long jobs;
    private long changes;
    private long proofs;

    public CheckReport Walk()
    {
        Reading(StorePart.Journal, "the journal cannot be read to its end", Chains);
        Reading(StorePart.Journal, "the attached papers cannot be read to their end", Papers);
        Reading(StorePart.Journal, "the database file cannot be looked through", Files);
        Logs();
        Reading(StorePart.Guards, "what guards the journal cannot be read", Guards);
        Reading(StorePart.Settings, "the settings cannot be read", Settings);
        Reading(StorePart.Derived, "the texts by which jobs are found cannot be read to their end", SearchTable);
        Reading(StorePart.Derived, "the words by which jobs are found cannot be read to their end", Words);
        Reading(StorePart.Derived, "what assessments found cannot be read to its end", Assessments);
        return new CheckReport(jobs, changes, proofs, seal.Value(), broken) { JournalIsWhole = journalIsWhole };
    }

    // Damage of one part must not keep the others from being looked at. A server that does not answer is no damage.
    private void Reading(StorePart part, string trouble, Action read)
    {
        try
        {
            read();
        }
        catch (Exception e) when (
            DamagedRow.Is(e) || (e is DbException db && database.Translate(db).Fault is StoreFault.Damaged or StoreFault.Failed))
        {
            Tell(null, null, $"{trouble}: {e.Message}", part);
        }
    }

    private void Chains()
    {
        var told = connection.ExecuteScalar<long>("select jobs from store", transaction: snapshot);
        foreach (var (tip, rows) in RowReading.Jobs(connection, snapshot, JobsToRead.All))
        {
            while (++jobs < tip.Id)
                Tell(null, null, string.Create(CultureInfo.InvariantCulture, $"job number {jobs} is missing"));
            changes += rows.Count;
            seal.Add(tip);
            Chain(tip, rows);
            if (jobs % TellEvery == 0)
                progress?.Report(new StoreProgress("jobs checked", jobs, told));
        }

        if (jobs != told)
            Tell(null, null, string.Create(CultureInfo.InvariantCulture, $"the store counts {told} jobs, but the last has number {jobs}"));
    }

    private void Files()
    {
        foreach (var (fault, isDerived) in database.CheckFiles(connection))
            Tell(null, null, fault, isDerived ? StorePart.Derived : StorePart.Journal);
    }

    private void Logs()
    {
        foreach (var fault in database.CheckLogs())
            Tell(null, null, fault, StorePart.Log);
    }

    private void Guards()
    {
        foreach (var fault in database.CheckGuards(connection, snapshot))
            Tell(null, null, fault, StorePart.Guards);
        if (SealedAt.Fault(SealedAt.Kept(connection, snapshot)) is { } unproved)
            Tell(null, null, unproved, StorePart.Guards);
        var run = connection.Query<(long Number, string Name)>("select number, name from migrations order by number",
            transaction: snapshot);
        if (!run.SequenceEqual(Migrator.Scripts(database).Select(script => ((long)script.Number, script.Name))))
            Tell(null, null, "the list of versions to which the store was brought is not as it was written", StorePart.Guards);
    }

    private void Settings()
    {
        if (SettingsTable.Fault(connection, snapshot) is { } fault)
            Tell(null, null, fault, StorePart.Settings);
    }

    private void Assessments()
    {
        if (StepsTable.Written(connection, snapshot) < 0)
            Tell(null, null, "the count of how often steps were written is missing", StorePart.Derived);
        foreach (var (job, found) in DerivedCheck.Walk(connection, snapshot))
            Tell(null, null, string.Create(CultureInfo.InvariantCulture, $"job number {job}: {found}"), StorePart.Derived);
    }

    // Both ways: a word too few hides a job from a search, a word too many finds a wrong one.
    private void Words()
    {
        var standing = new WordSums();
        foreach (var (job, word) in database.Words(connection, snapshot))
            standing.Add(job, word);
        foreach (var job in words.Jobs.Union(standing.Jobs).Order())
        {
            if (!words.IsSame(job, standing))
                Tell(null, null,
                    string.Create(CultureInfo.InvariantCulture,
                        $"job number {job}: the words by which it is found are not those of the job"),
                    StorePart.Derived);
        }

        foreach (var fault in database.CheckWords(connection, snapshot))
            Tell(null, null, fault, StorePart.Derived);
    }

    private void Chain(JobTip tip, List<RawRow> rows)
    {
        var before = ChainHash.Beginning;
        var read = new List<JournalRow>(rows.Count);
        foreach (var raw in rows)
        {
            var sequence = read.Count + 1;
            if (raw.Sequence != sequence)
            {
                Tell(tip.Key, sequence, "the change is missing");
                return;
            }

            var hash = ChainHash.Of(before, tip.Id, tip.Key, raw);
            if (!hash.ToBytes().AsSpan().SequenceEqual(raw.Hash))
            {
                Tell(tip.Key, sequence, "the change, or the hash of it, is not as it was written");
                return;
            }

            if (raw.Read(out var fault) is not { } row)
            {
                Tell(tip.Key, sequence, fault ?? "it cannot be read");
                return;
            }

            foreach (var link in row.Proofs)
                named.Add(link.Hash);
            read.Add(row);
            before = hash;
        }

        if (tip.Sequence != read.Count || tip.Hash != before)
        {
            Tell(tip.Key, null, string.Create(
                CultureInfo.InvariantCulture,
                $"the job says that its last change is number {tip.Sequence}, "
                + $"but its chain ends with number {read.Count}, or in another hash"));
        }
        else
        {
            Content(tip, read);
        }
    }

    private void Content(JobTip tip, List<JournalRow> rows)
    {
        if (RowReading.Assemble(tip.Key, rows, []) is not JobFileResult.Read { Job: var job })
            Tell(tip.Key, null, "its changes make up no job file");
        else if (job.Name != tip.Name)
            Tell(tip.Key, null, $"the job is called \"{tip.Name}\", but its head says \"{job.Name}\"");
        else
            Found(tip, SearchTexts.Of(tip.Key, job));
    }

    private void Found(JobTip tip, SearchTexts by)
    {
        texts.Add(tip.Id, ContentHash.Of(System.Text.Encoding.UTF8.GetBytes(by.Lines)));
        words.AddAll(tip.Id, by.Words);
    }

    private void SearchTable()
    {
        using (var command = RowReading.Command(connection, snapshot, "select job, texts from search_texts"))
        using (var reader = command.ExecuteReader())
        {
            while (reader.Read())
            {
                var job = reader.GetInt64(0);
                if (!texts.Remove(job, out var hash) || hash != ContentHash.Of(System.Text.Encoding.UTF8.GetBytes(reader.GetString(1))))
                    Tell(null, null,
                        string.Create(CultureInfo.InvariantCulture,
                            $"job number {job}: the texts by which it is found are not those of the job"), StorePart.Derived);
            }
        }

        foreach (var job in texts.Keys.Order())
            Tell(null, null, string.Create(CultureInfo.InvariantCulture, $"job number {job} cannot be found by its texts"),
                StorePart.Derived);
    }

    private void Papers()
    {
        foreach (var (stored, kind, content) in ProofTable.All(connection, snapshot))
        {
            proofs++;
            var hash = ContentHash.Of(content);
            if (!hash.ToBytes().AsSpan().SequenceEqual(stored))
                Tell(null, null, $"the paper with the hash {Convert.ToHexStringLower(stored)} is not as it was attached");
            else if (ProofKinds.Recognise(content)?.Word() != kind)
                Tell(null, null, $"the paper with the hash {hash} is said to be {kind}, but is not");
            else if (!named.Remove(hash))
                Tell(null, null, $"the paper with the hash {hash} is attached to no entry");
            if (proofs % TellEvery == 0)
                progress?.Report(new StoreProgress("papers checked", proofs, 0));
        }

        foreach (var hash in named.Select(missing => missing.ToString()).Order(StringComparer.Ordinal))
            Tell(null, null, $"the paper with the hash {hash} is missing");
    }

    private void Tell(string? job, long? sequence, string found, StorePart part = StorePart.Journal)
    {
        journalIsWhole &= part != StorePart.Journal;
        if (broken.Count < CheckReport.MostTold)
            broken.Add(new BrokenLink(job, sequence, found) { Part = part });
    }
}
