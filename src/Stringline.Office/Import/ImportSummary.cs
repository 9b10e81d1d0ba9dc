using Stringline.Tables.Sheets.Columns;
using Stringline.Law.Counting;

namespace Stringline.Office.Import;

/// <summary>What an import did or would do, as far as a page shows it. Every row of the file is in exactly one of the counts.</summary>
internal sealed record ImportSummary
{
    private const int MostRefused = 50;
    private const int MostPayments = 20;
    private const int MostJobs = 50;

    /// <summary>What the rows are.</summary>
    public required TableKind Kind { get; init; }

    /// <summary>All rows of the file.</summary>
    public required long Rows { get; init; }

    /// <summary>Rows that make a new job or entry.</summary>
    public required long New { get; init; }

    /// <summary>Rows that supersede what was imported before.</summary>
    public required long Changed { get; init; }

    /// <summary>Rows that the store holds just so.</summary>
    public required long Unchanged { get; init; }

    /// <summary>Rows refused.</summary>
    public required long Refused { get; init; }

    /// <summary>Blank rows.</summary>
    public required long Blank { get; init; }

    /// <summary>Rows left out, and as what.</summary>
    public required IReadOnlyList<ToldIgnored> Ignored { get; init; }

    /// <summary>The first refused rows.</summary>
    public required IReadOnlyList<ToldRow> FirstRefused { get; init; }

    /// <summary>Rows without a day of furnishing.</summary>
    public required long DayOfInvoice { get; init; }

    /// <summary>New jobs.</summary>
    public required long JobsAdded { get; init; }

    /// <summary>Jobs to which something is added.</summary>
    public required long JobsExtended { get; init; }

    /// <summary>Changes written to the journal; 0 where it was a look.</summary>
    public required long Changes { get; init; }

    /// <summary>Keys of the first new jobs.</summary>
    public required IReadOnlyList<string> NewJobs { get; init; }

    /// <summary>The first payments that name neither job nor invoice.</summary>
    public required IReadOnlyList<ToldPayment> Payments { get; init; }

    /// <summary>How many such payments there are.</summary>
    public required long AllPayments { get; init; }

    /// <summary>What was taken to be so since no column says it.</summary>
    public required IReadOnlyList<string> Assumed { get; init; }

    /// <summary>What is asked before it is written. A look that was kept by an earlier version asked nothing.</summary>
    public IReadOnlyList<ImportQuestion> Questions { get => field ?? []; init; }

    /// <summary>The rows in the counts; the same as <see cref="Rows"/>.</summary>
    public long Accounted => New + Changed + Unchanged + Refused + Blank + Ignored.Sum(row => row.Count);

    /// <summary>What a report of one file says.</summary>
    public static ImportSummary Of(ImportReport report)
    {
        var file = report.Files[0];
        return new ImportSummary
        {
            Kind = file.Kind,
            Rows = file.Rows,
            New = file.New,
            Changed = file.Changed,
            Unchanged = file.Unchanged,
            Refused = file.Refused.Count,
            Blank = file.Blank,
            Ignored = [.. file.Ignored.GroupBy(row => row.As)
                .Select(group => new ToldIgnored(group.Key, group.Count(), group.First().Line))],
            FirstRefused = [.. file.Refused.Take(MostRefused).Select(row => new ToldRow(row.Line, DeskWords.Of(row)))],
            DayOfInvoice = file.DayOfInvoice,
            JobsAdded = report.JobsAdded,
            JobsExtended = report.JobsExtended,
            Changes = report.Changes,
            NewJobs = [.. report.NewJobs.Take(MostJobs)],
            Payments = [.. report.Across.Take(MostPayments).Select(ToldPayment.Of)],
            AllPayments = report.Across.Count,
            Questions = report.Questions,
            Assumed = [.. report.Assumed.Select(DeskWords.Of)],
        };
    }
}

/// <summary>A row that was not taken.</summary>
/// <param name="Line">Its line in the file.</param>
/// <param name="Why">What is wrong, and what would be right, in the words of a page.</param>
internal sealed record ToldRow(int Line, string Why);

/// <summary>Rows that were left out.</summary>
/// <param name="As">As what.</param>
/// <param name="Count">How many.</param>
/// <param name="FirstLine">The line of the first.</param>
internal sealed record ToldIgnored(string As, long Count, int FirstLine);

/// <summary>A payment that the law applies over a customer's jobs (Civ. Code § 1479).</summary>
/// <param name="Line">Its line.</param>
/// <param name="Customer">Who paid.</param>
/// <param name="Received">The day, in words.</param>
/// <param name="Amount">Dollars and cents.</param>
/// <param name="Parts">Job by job.</param>
internal sealed record ToldPayment(int Line, string Customer, string Received, decimal Amount, IReadOnlyList<ToldPart> Parts)
{
    /// <summary>Of a report.</summary>
    public static ToldPayment Of(AcrossReport across) => new(
        across.Line,
        across.Customer,
        LawText.Day(across.Received),
        across.Amount,
        [.. across.Parts.Select(part => new ToldPart(part.Job, part.Ref, part.Amount, part.Reason))]);
}

/// <summary>A part of such a payment.</summary>
/// <param name="Job">The job's key.</param>
/// <param name="Ref">What it pays.</param>
/// <param name="Amount">Dollars and cents.</param>
/// <param name="Why">In words, why there.</param>
internal sealed record ToldPart(string Job, string? Ref, decimal Amount, string Why);
