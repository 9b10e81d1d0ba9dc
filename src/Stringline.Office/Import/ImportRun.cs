using System.Globalization;

namespace Stringline.Office.Import;

/// <summary>How far it has come, as a page shows it.</summary>
/// <param name="Words">In words.</param>
/// <param name="Share">Of the step that is being done, in hundredths; null where nobody knows.</param>
internal sealed record ToldProgress(string Words, int? Share);

/// <summary>A table that is being worked on.</summary>
/// <param name="id">The table's name in addresses.</param>
/// <param name="file">The file's name.</param>
/// <param name="isWriting">Whether it is written, and not only looked at.</param>
/// <param name="rows">About how many rows it has; 0 where nobody knows.</param>
internal sealed class ImportRun(string id, string file, bool isWriting, long rows) : IProgress<ImportProgress>, IDisposable
{
    private readonly CancellationTokenSource stop = new();
    private long read;
    private long jobs;
    private long allJobs;
    private long written;

    /// <summary>The table's name in addresses.</summary>
    public string Id => id;

    /// <summary>The file's name.</summary>
    public string File => file;

    /// <summary>Whether it is written, and not only looked at.</summary>
    public bool IsWriting => isWriting;

    /// <summary>Whether it was asked to stop.</summary>
    public CancellationToken Stopped => stop.Token;

    /// <summary>Asks it to stop; it stops at its next row or report, and what it has written is rolled back.</summary>
    public void Stop() => stop.Cancel();

    /// <inheritdoc/>
    public void Dispose() => stop.Dispose();

    /// <summary>How far it has come.</summary>
    public ToldProgress Progress()
    {
        var (all, through) = (Interlocked.Read(ref allJobs), Interlocked.Read(ref jobs));
        if (all == 0)
        {
            var done = Interlocked.Read(ref read);
            return new ToldProgress(
                $"Step 1 of 2: {JobWords.Count(done, "row", "rows")} read{(rows > 0
                    ? string.Create(CultureInfo.InvariantCulture, $" of about {Math.Max(rows, done):N0}") : "")}.",
                rows > 0 ? (int)Math.Min(99, done * 100 / rows) : null);
        }

        var last = isWriting ? string.Create(CultureInfo.InvariantCulture, $", {Interlocked.Read(ref written):N0} written") : "";
        return new ToldProgress(string.Create(CultureInfo.InvariantCulture,
            $"Step 2 of 2: {through:N0} of {all:N0} jobs gone through{last}."), (int)Math.Min(99, through * 100 / all));
    }

    /// <inheritdoc/>
    public void Report(ImportProgress value)
    {
        // Thrown through the transaction that is open, if one is: it is then given up.
        stop.Token.ThrowIfCancellationRequested();
        switch (value.What)
        {
            case SheetImport.JobsGoneThrough:
                Interlocked.Exchange(ref jobs, value.Done);
                Interlocked.Exchange(ref allJobs, value.Total);
                break;
            case SheetImport.JobsWritten:
                Interlocked.Exchange(ref written, value.Done);
                Interlocked.Exchange(ref allJobs, value.Total);
                break;
            default:
                Interlocked.Exchange(ref read, value.Done);
                break;
        }
    }
}
