using System.Collections.Concurrent;
using System.Globalization;
using Stringline.Tables;
using Stringline.Law;
using Stringline.Law.Reasoning;
using Stringline.Papers;
using Stringline.Tables.Sheets.Reading;

namespace Stringline.Office.Batch;

/// <summary>What came of a run: counts, and the rows that were refused. Many threads write to it.</summary>
internal sealed class BatchReport
{
    /// <summary>Name of the report of refused rows.</summary>
    public const string FileName = "refused.csv";

    /// <summary>The heads of the report.</summary>
    public static readonly string[] Heads = ["line", "job", "form", "where", "there", "right", "section", "old-paper-still-there"];

    private readonly ConcurrentBag<(int Line, int Place, string Text)> refusals = [];
    private readonly Lock summing = new();
    private int made;
    private int kept;
    private int refused;
    private int faults;

    /// <summary>Papers made.</summary>
    public int Made => made;

    /// <summary>Papers that stood there already.</summary>
    public int Kept => kept;

    /// <summary>Rows refused, those included on which the program itself failed.</summary>
    public int Refused => refused;

    /// <summary>Rows on which the program itself failed.</summary>
    public int Faults => faults;

    /// <summary>What the papers give away that were made or stood there already.</summary>
    public WaiverSums Given { get; private set; } = WaiverSums.None;

    /// <summary>What those would give away that wait until that figure is typed in their rows.</summary>
    public WaiverSums Asked { get; private set; } = WaiverSums.None;

    /// <summary>How many rows are done.</summary>
    public int Done => made + kept + refused;

    /// <summary>A paper was made.</summary>
    public void AddMade(WaiverOutlook? outlook)
    {
        Interlocked.Increment(ref made);
        Give(outlook);
    }

    /// <summary>A paper stood there already.</summary>
    public void AddKept(WaiverOutlook? outlook)
    {
        Interlocked.Increment(ref kept);
        Give(outlook);
    }

    /// <summary>A paper waits until what it gives away is typed.</summary>
    public void AddAsked(WaiverOutlook outlook)
    {
        lock (summing)
            Asked = Asked.With(outlook);
    }

    private void Give(WaiverOutlook? outlook)
    {
        if (outlook is null)
            return;
        lock (summing)
            Given = Given.With(outlook);
    }

    /// <summary>A row is refused.</summary>
    /// <param name="row">The row.</param>
    /// <param name="why">Why.</param>
    /// <param name="stale">Name of a paper of an earlier run that this row no longer stands for; or null.</param>
    public void AddRefused(WaiverRow row, IReadOnlyList<Refusal> why, string? stale)
    {
        Interlocked.Increment(ref refused);
        for (var i = 0; i < why.Count; i++)
        {
            refusals.Add((row.Line, i, CsvLine.Of(
                row.Line.ToString(CultureInfo.InvariantCulture), row.Job, row.FormText, BatchWords.Of(why[i].Where),
                    why[i].There.ToString(),
                BatchWords.Of(why[i].Right), why[i].Section, stale ?? "")));
        }
    }

    /// <summary>The program failed on a row; the others go on.</summary>
    public void AddFault(WaiverRow row, Exception fault, string? stale)
    {
        Interlocked.Increment(ref faults);
        AddRefused(row,
            [new Refusal("own-fault", new Place.InWords("the program"), Sentence.Of(fault.ToString()),
                $"Stringline itself failed on this row; the row is not to blame. Please report it.", "")], stale);
    }

    /// <summary>Writes the report; with nothing refused it has its heads alone.</summary>
    public void Write(string folder)
    {
        var temporary = Path.Combine(folder, ".stringline-" + FileName);
        File.WriteAllText(temporary, CsvLine.Of(Heads)
            + string.Concat(refusals.OrderBy(r => r.Line).ThenBy(r => r.Place).Select(r => r.Text)), CsvRecords.StrictUtf8);
        File.Move(temporary, Path.Combine(folder, FileName), overwrite: true);
    }
}
