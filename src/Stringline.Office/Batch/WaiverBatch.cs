using System.Collections.Concurrent;
using System.Security.Cryptography;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers;
using Stringline.Papers.Waiver;
using Stringline.Tables.Sheets.Reading;
using Stringline.Store;

namespace Stringline.Office.Batch;

/// <summary>
/// Makes the waivers of a table on all cores, one row after another as the cores get free, so that memory does not grow with their number.
/// A row that fails is reported and stops no other. What an earlier run made, and would come out the same, is left as it is.
/// </summary>
internal sealed class WaiverBatch
{
    private readonly WaiverSheet sheet;
    private readonly WaiverLedger ledger;
    private readonly bool replace;
    private readonly IJournal? store;
    private readonly LocalDate asOf;
    private readonly BatchReport report = new();
    private readonly ConcurrentBag<WaiverPress> presses = [];
    private readonly Dictionary<Guid, int> seen = [];

    private WaiverBatch(WaiverSheet sheet, WaiverLedger ledger, IJournal? store, LocalDate asOf, bool replace) =>
        (this.sheet, this.ledger, this.store, this.asOf, this.replace) = (sheet, ledger, store, asOf, replace);

    /// <summary>Makes them.</summary>
    /// <param name="sheet">The table.</param>
    /// <param name="folder">Where to; made if it is not there.</param>
    /// <param name="store">Where job numbers are looked up; null where the table has paths.</param>
    /// <param name="asOf">The day on which they are made.</param>
    /// <param name="replace">Whether files that no run into this folder made are replaced.</param>
    /// <param name="progress">Is told after each row.</param>
    public static Outcome<BatchReport> Run(WaiverSheet sheet, string folder, IJournal? store, LocalDate asOf, bool replace,
        IProgress<StoreProgress> progress)
    {
        try
        {
            using var ledger = WaiverLedger.Open(folder);
            var report = new WaiverBatch(sheet, ledger, store, asOf, replace).Run(progress);
            report.Write(folder);
            return new Outcome<BatchReport>.Done(report);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new Outcome<BatchReport>.Refused(
                [$"{folder} cannot be written to: {e.Message}\n  Name a folder that this user may write to and that no other run is "
                    + $"writing to. Papers that are whole stay there; the next run goes on from them."]);
        }
    }

    private BatchReport Run(IProgress<StoreProgress> progress)
    {
        var telling = new Lock();
        Parallel.ForEach(
            Partitioner.Create(Taken(), EnumerablePartitionerOptions.NoBuffering),
            new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount },
            taken =>
            {
                Do(taken);
                lock (telling)
                    progress.Report(new StoreProgress("Waivers", report.Done, sheet.Rows));
            });
        return report;
    }

    /// <summary>The rows with their names, and from a store their jobs. Only one thread at a time asks for the next.</summary>
    private IEnumerable<Taken> Taken()
    {
        var names = new WaiverNames();
        foreach (var row in sheet.Read())
        {
            var name = names.Next(row);
            if (row.Refusals.Count > 0)
                yield return new Taken(row, name, null, row.Refusals);
            else if (Twice(row) is { } line)
                yield return new Taken(row, name, null,
                    [new Refusal("row", new Place.InWords("the row"), $"It says the same as line {line}.",
                        $"Keep one of them: a second paper would sign away the same again.", "")]);
            else if (store is not null && !row.Job.EndsWith(".json", StringComparison.OrdinalIgnoreCase))
                yield return FromStore(row, name, store);
            else
                yield return new Taken(row, name, null, []);
        }
    }

    private int? Twice(WaiverRow row)
    {
        var key = new Guid(SHA256.HashData(CsvRecords.StrictUtf8.GetBytes($"{row.Job}\n{row.FormText}\n{row.Options}")).AsSpan(0, 16));
        if (seen.TryAdd(key, row.Line))
            return null;
        return seen[key];
    }

    private static Taken FromStore(WaiverRow row, string name, IJournal store)
    {
        try
        {
            return store.Find(row.Job) is { } stored
                ? new Taken(row, name, stored.Job, [])
                : new Taken(row, name, null,
                    [new Refusal("job-unknown", new Place.InWords("job"), $"The store has no job '{row.Job}'.",
                        $"Write a job's number in the store, or the path of a job file that ends in .json.", "")]);
        }
        catch (StoreException e)
        {
            return new Taken(row, name, null,
                [new Refusal("job-unreadable", new Place.InWords("job"), Sentence.Of(e.Message), $"See stringline store check.", "")]);
        }
    }

    private void Do(Taken taken)
    {
        var (row, name, _, _) = taken;
        try
        {
            if (taken.Refusals.Count > 0)
                report.AddRefused(row, taken.Refusals, Stale(name));
            else if ((taken.Job is { } job ? Write(row, name, job) : Write(row, name)) is { Count: > 0 } refusals)
                report.AddRefused(row, refusals, Stale(name));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            report.AddRefused(row,
                [new Refusal("not-written", new Place.InWords(name), Sentence.Of(e.Message),
                    $"Make room, or let this user write there, and run again: only what is missing is made.", "")], Stale(name));
        }
        catch (Exception e)
        {
            // Nothing is swallowed: the row is reported with the whole fault, and the exit status says that it is ours.
            report.AddFault(row, e, Stale(name));
        }
    }

    private IReadOnlyList<Refusal> Write(WaiverRow row, string name) => JobFileReader.ReadFile(Path.Combine(sheet.Folder, row.Job)) switch
    {
        JobFileResult.Read read => Write(row, name, read.Job),
        JobFileResult.Refused refused =>
            [.. refused.Faults.Select(f => new Refusal("job-file", new Place.InWords(f.Path.Length == 0 ? f.File : $"{f.File}: {f.Path}"),
                Sentence.Of(f.Found), Sentence.Of(f.Expected), ""))],
        _ => throw new InvalidOperationException("Neither read nor refused."),
    };

    private IReadOnlyList<Refusal> Write(WaiverRow row, string name, JobFile job)
    {
        var order = WaiverOrder.Of(row.Form ?? throw new ArgumentException("The row has no form.", nameof(row)), job,
            UseCases.Assess(job, asOf), row.Options);
        if (order.Outlook is { } outlook && order.Refusals.Any(r => r.Id == WaiverOrder.NotTyped))
            report.AddAsked(outlook);
        if (order.Refusals.Count > 0)
            return order.Refusals;
        if (ledger.Holds(name, order.Waiver.Fingerprint))
        {
            report.AddKept(order.Outlook);
            return [];
        }

        if (!presses.TryTake(out var press))
            press = new WaiverPress();
        var paper = press.Print(order.Waiver, asOf);
        presses.Add(press);
        var check = WaiverPress.Check(paper, order.Waiver);
        if (!check.Passed)
            return [.. check.Checks.Where(c => !c.Passed)
                .Select(c => new Refusal("preflight", new Place.InWords(c.Name), Sentence.Of(c.Words),
                    $"The paper does not meet what the statute wants; it is not handed over.", c.Section))];
        if (!replace && ledger.HasAnother(name, paper.Bytes.Span))
            return [new Refusal("in-the-way", new Place.InWords(name), $"A file of that name is there already with other content, and no "
                + $"run into this folder made it.",
                $"Move or rename that file, or name another folder "
                    + $"with {new OptionName("out")}; or add {new OptionName("replace")} to replace it.", "")];
        ledger.Put(name, paper, row, order);
        report.AddMade(order.Outlook);
        return [];
    }

    private string? Stale(string name) => ledger.HasFile(name) ? name : null;
}

/// <summary>A row as it is handed to a core.</summary>
/// <param name="Row">The row.</param>
/// <param name="Name">Its paper's file name.</param>
/// <param name="Job">Its job, where it comes from a store.</param>
/// <param name="Refusals">What is wrong with it already.</param>
internal sealed record Taken(WaiverRow Row, string Name, JobFile? Job, IReadOnlyList<Refusal> Refusals);
