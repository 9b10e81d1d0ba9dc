using System.Data.Common;
using Dapper;
using Stringline.Exchange;
using Stringline.Store.Search;
using Stringline.Store.Sql;

namespace Stringline.Store.Chain;

/// <summary>Walks a store from the first change of the first job to the last attached paper, and says what is not as it was written.</summary>
internal sealed class ChainCheck(Database database, DbConnection connection, DbTransaction snapshot, IProgress<StoreProgress>? progress)
{
    private const int TellEvery = 1000;

    private readonly List<BrokenLink> broken = [];
    private readonly HashSet<ContentHash> named = [];
    private readonly SealHash seal = new();
    private long jobs;
    private long changes;
    private long proofs;

    public CheckReport Walk()
    {
        foreach (var fault in database.CheckFiles(connection))
            Tell(null, null, fault);
        var told = connection.ExecuteScalar<long>("select jobs from store", transaction: snapshot);
        foreach (var (tip, rows) in RowReading.Jobs(connection, snapshot, JobsToRead.All))
        {
            while (++jobs < tip.Id)
                Tell(null, null, FormattableString.Invariant($"job number {jobs} is missing"));
            changes += rows.Count;
            seal.Add(tip);
            Chain(tip, rows);
            if (jobs % TellEvery == 0)
                progress?.Report(new StoreProgress("jobs checked", jobs, told));
        }

        if (jobs != told)
            Tell(null, null, FormattableString.Invariant($"the store counts {told} jobs, but the last has number {jobs}"));
        SearchTable();
        Papers();
        return new CheckReport(jobs, changes, proofs, seal.Value(), broken);
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
            Tell(tip.Key, null, FormattableString.Invariant($"the job says that its last change is number {tip.Sequence}, but its chain ends with number {read.Count}, or in another hash"));
        else
            Content(tip, read);
    }

    private void Content(JobTip tip, List<JournalRow> rows)
    {
        if (RowReading.Assemble(tip.Key, rows, []) is not JobFileResult.Read { Job: var job })
            Tell(tip.Key, null, "its changes make up no job file");
        else if (job.Name != tip.Name)
            Tell(tip.Key, null, $"the job is called \"{tip.Name}\", but its head says \"{job.Name}\"");
        else
            texts.Add(tip.Id, ContentHash.Of(System.Text.Encoding.UTF8.GetBytes(SearchTexts.Of(tip.Key, job).Lines)));
    }

    private readonly Dictionary<long, ContentHash> texts = [];

    private void SearchTable()
    {
        using (var command = RowReading.Command(connection, snapshot, "select s.job, j.key, s.texts from search_texts s join jobs j on j.id = s.job"))
        using (var reader = command.ExecuteReader())
        {
            while (reader.Read())
            {
                if (texts.Remove(reader.GetInt64(0), out var hash) && hash != ContentHash.Of(System.Text.Encoding.UTF8.GetBytes(reader.GetString(2))))
                    Tell(reader.GetString(1), null, "the texts by which it is found are not those of the job");
            }
        }

        foreach (var job in texts.Keys.Order())
            Tell(null, null, FormattableString.Invariant($"job number {job} cannot be found by its texts"));
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

    private void Tell(string? job, long? sequence, string found)
    {
        if (broken.Count < CheckReport.MostTold)
            broken.Add(new BrokenLink(job, sequence, found));
    }
}
