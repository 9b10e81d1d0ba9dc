using System.Globalization;
using Stringline.Tables;
using Stringline.Tables.Sheets;
using Stringline.Law.Counting;
using Stringline.Law.Reasoning;
using Stringline.Store;

namespace Stringline.Office.Import;

/// <summary>Imports tables of an accounting system into a store: everything in one transaction, every row accounted for.</summary>
/// <param name="journal">The store.</param>
/// <param name="calendar">The days on which offices are closed.</param>
public sealed class SheetImport(IJournal journal, OpenDays calendar)
{
    /// <summary>What <see cref="ImportProgress.What"/> says of jobs that were made of the rows and compared with the store.</summary>
    public const string JobsGoneThrough = "jobs";

    /// <summary>What <see cref="ImportProgress.What"/> says of jobs that were written in the transaction.</summary>
    public const string JobsWritten = "jobs written";

    private const int Step = 1000;

    // Each round refuses the rows of the jobs that the journal would not take; the journal names at least one each time.
    private const int MostRounds = 50;

    /// <summary>Imports.</summary>
    /// <returns>What was done and what became of every row; where rows are refused, all others were imported.</returns>
    /// <exception cref="SheetException">A file cannot be taken at all, and nothing was written.</exception>
    /// <exception cref="StoreException">The store cannot be used, and nothing was written.</exception>
    public ImportReport Run(ImportRequest request, IProgress<ImportProgress>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(request);
        List<TableRows> tables = [.. request.Files.Select(file => new TableRows(file, request.Mapping, request.Stop))];
        var reading = new TableReading(progress);
        foreach (var table in tables.OrderBy(table => table.Header.Kind))
            reading.Read(table);
        var assumed = new HashSet<Sentence>();
        var build = new JobBuild(request, assumed, calendar);
        var payments = new JoblessPayments(journal, reading, build, calendar);
        payments.Apply();

        var ids = journal.Tips().ToDictionary(tip => tip.Key, tip => tip.Id, StringComparer.Ordinal);
        using var refused = new RefusedFiles(request.DryRun && !request.RefusedFilesOfDryRun ? [] : tables);
        for (var round = 0; round < MostRounds; round++)
        {
            var taken = new Taken();
            var jobs = Confirmed(Jobs(reading, build, ids, taken, progress), taken, request);
            var put = request.DryRun ? Look(jobs, ids) : journal.PutMany(jobs, request.Who, Written(progress, reading.Drafts.Count));
            if (put.Faults.Count == 0)
                return Report(tables, taken, put, payments.Across, assumed) with { RefusedFiles = refused.Finish(), NewJobs = taken.NewJobs,
                    Questions = taken.Questions.All };
            foreach (var faults in put.Faults.GroupBy(fault => fault.File))
                Refuse(reading.Drafts[faults.Key], faults.First());
        }

        throw new SheetException(
            string.Join(", ", request.Files), "", $"thousands of jobs that the journal refuses",
                $"rows that make up job files in order{ImportAsk.Look}");
    }

    // What is asked is known once the last job was made, while the transaction is still open: thrown then, it takes everything back.
    private static IEnumerable<KeyedJob> Confirmed(IEnumerable<KeyedJob> jobs, Taken taken, ImportRequest request)
    {
        foreach (var job in jobs)
            yield return job;
        List<ImportQuestion> open = request.DryRun
            ? [] : [.. taken.Questions.All.Where(question => !request.Confirmed.Contains(question.Id))];
        if (open.Count > 0)
        {
            throw new SheetException(
                string.Join(", ", request.Files.Select(Path.GetFileName)), "",
                Sentence.Of(string.Join(" ", open.Select(question => question.Text))),
                $"confirmed first: {new ImportConfirmed([.. open.Select(question => question.Id)])}");
        }
    }

    private IEnumerable<KeyedJob> Jobs(TableReading reading, JobBuild build, Dictionary<string, long> ids, Taken taken,
        IProgress<ImportProgress>? progress)
    {
        long done = 0;
        foreach (var draft in reading.Drafts.Values)
        {
            if (++done % Step == 0)
                progress?.Report(new ImportProgress(JobsGoneThrough, done, reading.Drafts.Count));
            var stored = ids.TryGetValue(draft.Key, out var id) ? journal.Read(id)?.Job : null;
            var job = build.Build(draft, stored, taken);

            // A new job for which every row of an invoice or payment is refused, and of which no table of jobs speaks, is not made.
            if (job is null
                || (stored is null && job.Entries.Count == 0 && draft.HeadRows.TrueForAll(row => row.Table.IsRefused(row.Line))))
                continue;

            if (stored is null)
                taken.NewJobs.Add(draft.Key);

            // Entries are only ever added, so a job with as many as before and the same head is as it was.
            if (stored is null || job.Entries.Count > stored.Entries.Count || (draft.HeadRows.Count > 0 && !JobBuild.Same(job, stored)))
                yield return new KeyedJob(draft.Key, job);
        }
    }

    // What PutMany would say, with the same reader, and without writing.
    private PutReport Look(IEnumerable<KeyedJob> jobs, Dictionary<string, long> ids)
    {
        long added = 0, extended = 0;
        var faults = new List<Fault>();
        foreach (var job in jobs)
        {
            var entries = job.Job.Entries.Select(entry => (ReadOnlyMemory<byte>)JournalText.Entry(entry)).ToList();
            var stored = ids.TryGetValue(job.Key, out var id) ? journal.Read(id)?.Job : null;
            var newHead = stored is null || !JobBuild.Same(job.Job, stored);
            if (JournalText.ReadAdded(job.Key, JournalText.Head(job.Job), entries, newHead, stored?.Entries.Count
                ?? 0) is JobFileResult.Refused refused)
                faults.AddRange(refused.Faults);
            else if (stored is not null)
                extended++;
            else
                added++;
        }

        return new PutReport(added, extended, 0, 0, faults);
    }

    private static void Refuse(JobDraft draft, Fault fault)
    {
        var why = $"the journal refuses job {draft.Key}: {fault.Path} {fault.Found}; it should be {fault.Expected}";
        foreach (var (table, line) in draft.HeadRows)
            table.Refuse(line, why);
        foreach (var row in draft.Invoices)
            row.Table.Refuse(row.Line, why);
        foreach (var row in draft.Payments)
            row.Table.Refuse(row.Line, why);
    }

    private static ImportReport Report(List<TableRows> tables, Taken taken, PutReport put, List<AcrossReport> across,
        HashSet<Sentence> assumed)
    {
        List<FileReport> files =
            [.. tables.Select(table => table.Report(taken.New.GetValueOrDefault(table), taken.Changed.GetValueOrDefault(table),
                taken.Unchanged.GetValueOrDefault(table)))];
        foreach (var file in files.Where(file => file.Accounted != file.Rows))
            throw new InvalidOperationException(
                string.Create(CultureInfo.InvariantCulture, $"Of {file.Rows} rows of {file.File}, {file.Accounted} are accounted for."));
        return new ImportReport(files, put.Added, put.Extended, put.Changes, across, [.. assumed]);
    }

    private sealed class RefusedFiles : IDisposable
    {
        private readonly List<RefusedFile> files = [];

        public RefusedFiles(List<TableRows> tables)
        {
            try
            {
                foreach (var table in tables)
                    files.Add(new RefusedFile(table));
            }
            catch
            {
                Dispose();
                throw;
            }
        }

        public IReadOnlyList<string> Finish() => [.. files.Select(file => file.Finish()).OfType<string>()];

        public void Dispose() => files.ForEach(file => file.Dispose());
    }

    private static Relay? Written(IProgress<ImportProgress>? progress, int total) => progress is null ? null : new Relay(progress, total);

    private sealed class Relay(IProgress<ImportProgress> progress, int total) : IProgress<StoreProgress>
    {
        public void Report(StoreProgress value) => progress.Report(new ImportProgress(JobsWritten, value.Done, total));
    }
}
