using System.Globalization;
using System.Data.Common;
using Dapper;
using Stringline.Tables;
using Stringline.Store.Chain;
using Stringline.Store.Search;

namespace Stringline.Store.Sql;

/// <summary>Brings the store to job files, many in one transaction.</summary>
internal sealed class Putting(Database database, RecordingClock clock)
{
    private const int Batch = 1000;
    private const int MostFaults = 100;

    public PutOutcome Put(KeyedJob job, string who) => One(who, run => run.Put([job])[0]);

    /// <summary>Adds a job under a key that no job has.</summary>
    public PutOutcome Add(KeyedJob job, string who) => One(who, run => run.AddNew(job));

    private PutOutcome One(string who, Func<Run, PutOutcome> put)
    {
        Names.Checked(who, nameof(who));
        return database.Change(
            (connection, transaction) =>
            {
                var outcome = put(new Run(database, connection, transaction, who, new Moments(database, connection, transaction, clock)));
                return (outcome, outcome is PutOutcome.Added or PutOutcome.Extended);
            });
    }

    public PutReport PutMany(IEnumerable<KeyedJob> jobs, string who, IProgress<StoreProgress>? progress)
    {
        Names.Checked(who, nameof(who));
        return database.Change((connection, transaction) =>
        {
            var moments = new Moments(database, connection, transaction, clock);
            var run = new Run(database, connection, transaction, who, moments);
            var faults = new List<Fault>();
            long added = 0, extended = 0, unchanged = 0;
            foreach (var batch in jobs.Chunk(Batch))
            {
                foreach (var outcome in run.Put(batch))
                {
                    switch (outcome)
                    {
                        case PutOutcome.Added:
                            added++;
                            break;
                        case PutOutcome.Extended:
                            extended++;
                            break;
                        case PutOutcome.Unchanged:
                            unchanged++;
                            break;
                        case PutOutcome.Refused refused:
                            faults.AddRange(refused.Faults);
                            break;
                    }
                }

                if (faults.Count >= MostFaults)
                    break;
                progress?.Report(new StoreProgress("jobs written", added + extended + unchanged, 0));
            }

            return faults.Count > 0
                ? (new PutReport(0, 0, 0, 0, faults), false)
                : (new PutReport(added, extended, unchanged, run.Changes, []), run.Changes > 0);
        });
    }

    private sealed class Run(Database database, DbConnection connection, DbTransaction transaction, string who, Moments moments)
    {
        private static readonly DateTimeZone California = DateTimeZoneProviders.Tzdb["America/Los_Angeles"];

        private Instant? first;
        private bool isCounted;

        public long Changes { get; private set; }

        public List<PutOutcome> Put(KeyedJob[] jobs)
        {
            var outcomes = new List<PutOutcome>(jobs.Length);
            var writes = new List<JobWrite>(jobs.Length);
            var met = new HashSet<string>(StringComparer.Ordinal);
            var known = Known(Counted(jobs));
            var stored = known.Count == 0 ? null
                : RowReading.RowsOf(database, connection, transaction, [.. known.Values.Select(tip => tip.Id)]);
            var next = NextId(jobs.Count(job => !known.ContainsKey(job.Key)));
            foreach (var job in jobs)
            {
                if (!met.Add(job.Key))
                {
                    outcomes.Add(Refuse(job.Key, "the same key twice", "each job once"));
                    continue;
                }

                var (outcome, write) = known.TryGetValue(job.Key, out var tip) ? Extend(tip, job, stored![tip.Id]) : Add(next++, job);
                outcomes.Add(outcome);
                if (write is not null)
                    writes.Add(write);
            }

            // Refused jobs took ids that must not stay: the whole transaction is given up.
            if (!outcomes.Exists(outcome => outcome is PutOutcome.Refused) && writes.Count > 0)
                database.Write(connection, transaction, writes);
            Changes += writes.Sum(write => write.Rows.Count);
            return outcomes;
        }

        public PutOutcome AddNew(KeyedJob job)
        {
            // Who adds waits for the count of jobs first: of two who add under one key the second sees the job of the first.
            connection.ExecuteScalar<long>("select jobs from store" + database.ForUpdate, transaction: transaction);
            if (RowReading.Tip(connection, transaction, job.Key) is { } taken)
                return Refuse(job.Key, $"a key that the job \"{taken.Name}\" has", "a key that no job of the store has");
            var (outcome, write) = Add(NextId(1), job);
            if (write is not null)
                database.Write(connection, transaction, [write]);
            return outcome;
        }

        private (PutOutcome, JobWrite?) Add(long id, KeyedJob job)
        {
            if (Names.Fault(job.Key) is { } expected)
                return (Refuse(job.Key, "a key that cannot be kept", expected), null);
            var rows = new NewRows(NewRows.Nothing(id, job.Key, job.Job.Name), who, First());
            var head = JournalText.Head(job.Job);
            rows.Head(head, learned: null);
            var payloads = new List<ReadOnlyMemory<byte>>(job.Job.Entries.Count);
            foreach (var entry in job.Job.Entries)
            {
                var payload = JournalText.Entry(entry);
                payloads.Add(payload);
                rows.Entry(entry, payload, []);
            }

            return JournalText.ReadAdded(job.Key, head, payloads, newHead: true, known: 0) is JobFileResult.Refused refused
                ? (new PutOutcome.Refused(refused.Faults), null)
                : (new PutOutcome.Added(id),
                    new JobWrite(rows.After(job.Job.Name), IsNew: true, rows.Rows, SearchTexts.Of(job.Key, job.Job)));
        }

        // A new job is recorded no earlier than what was recorded last of the job before it.
        private Instant First()
        {
            if (first is { } known)
                return known;
            using var command = RowReading.Command(
                connection, transaction, "select max(at) from changes where job = (select max(id) from jobs)");
            first = moments.After(command.ExecuteScalar() is long at ? RawRow.Moment(Math.Clamp(at, 0, RawRow.LastMoment)) : null);
            return first.Value;
        }

        private (PutOutcome, JobWrite?) Extend(JobTip tip, KeyedJob job, IEnumerable<RawRow> changes)
        {
            var stored = RowReading.Job(database, tip, [.. changes]);
            var at = moments.After(stored.Rows[^1].At);
            var rows = new NewRows(tip, who, at);
            var head = JournalText.Head(job.Job);
            if (!stored.Rows.Last(row => row.Kind == ChangeKind.Head).Payload.Span.SequenceEqual(head))
                rows.Head(head, at.InZone(California).Date);
            var before = stored.Rows.Where(row => row.Kind == ChangeKind.Entry).ToList();
            if (job.Job.Entries.Count < before.Count)
                return (Refuse(job.Key,
                    string.Create(CultureInfo.InvariantCulture, $"{job.Job.Entries.Count} entries, where the journal has {before.Count}"),
                    "all of them, then the new ones: the journal erases nothing"), null);
            for (var i = 0; i < job.Job.Entries.Count; i++)
            {
                var entry = job.Job.Entries[i];
                var payload = JournalText.Entry(entry);
                if (i >= before.Count)
                    rows.Entry(entry, payload, []);
                else if (!before[i].Payload.Span.SequenceEqual(payload))
                    return (Differs(job.Key, i, before[i]), null);
            }

            if (rows.Rows.Count == 0)
                return (new PutOutcome.Unchanged(tip.Id), null);
            return RowReading.Assemble(
                tip.Key, stored.Rows, [.. rows.Rows.Select(row => row.Read(out _)!)]) is JobFileResult.Refused refused
                ? (new PutOutcome.Refused(refused.Faults), null)
                : (new PutOutcome.Extended(tip.Id, rows.Rows.Count),
                    new JobWrite(rows.After(job.Job.Name), IsNew: false, rows.Rows, SearchTexts.Of(job.Key, job.Job)));
        }

        // Who adds waits for the count of jobs before it looks: of two who add the same the second then sees what the first added. Entries
        // to jobs that are there wait for nobody who adds.
        private KeyedJob[] Counted(KeyedJob[] jobs)
        {
            var keys = jobs.Select(job => job.Key).ToHashSet(StringComparer.Ordinal);
            if (!isCounted && database.ForUpdate.Length > 0 && RowReading.CountOf(database, connection, transaction, keys) < keys.Count)
            {
                connection.ExecuteScalar<long>("select jobs from store" + database.ForUpdate, transaction: transaction);
                isCounted = true;
            }

            return jobs;
        }

        private Dictionary<string, JobTip> Known(KeyedJob[] jobs) =>
            connection.ExecuteScalar<long>("select jobs from store", transaction: transaction) == 0
            ? new Dictionary<string, JobTip>(StringComparer.Ordinal)
            : RowReading.TipsForUpdate(
                database, connection, transaction, [.. jobs.Select(job => job.Key).Distinct(StringComparer.Ordinal)]);

        // The count of jobs is a row that one writer at a time may change: so ids have no gap, and a job that is missing shows.
        private long NextId(int count) => count == 0
            ? 0
            : connection.ExecuteScalar<long>("update store set jobs = jobs + @count returning jobs", new { count },
                transaction) - count + 1;

        private static PutOutcome.Refused Differs(string key, int index, JournalRow stored) => new(
            [new Fault(
                key,
                string.Create(CultureInfo.InvariantCulture, $"entries[{index}]"),
                "an entry that differs from the one in the journal",
                "the entry as it stands there, " + System.Text.Encoding.UTF8.GetString(stored.Payload.Span)
                    + "; correct it with a new entry that supersedes it")]);

        private static PutOutcome.Refused Refuse(string key, string found, string expected) => new([new Fault(key, "", found, expected)]);
    }
}
