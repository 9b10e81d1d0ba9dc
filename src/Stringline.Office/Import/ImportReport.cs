using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Tables;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;
using Stringline.Tables.Sheets.Columns;

namespace Stringline.Office.Import;

/// <summary>A row that was not taken.</summary>
/// <param name="Line">Its line in the file.</param>
/// <param name="Reasons">What is wrong, and what would be right.</param>
public sealed record RefusedRow(int Line, IReadOnlyList<Sentence> Reasons) : IPointer
{
    /// <summary>
    /// The reasons as the command line says them, with the row's cells as they stand, but that whatever a terminal would obey, or nobody
    /// could see, is spelled out.
    /// </summary>
    public string Why => Signs.Spelled(Name);

    /// <summary>The reasons in the words of a door.</summary>
    public string Say(Door door) => string.Join(" ", Reasons.Select(reason => LawText.Capital(door.Of(reason)) + "."));

    /// <summary>The reasons as the command line says them, as they stand.</summary>
    public string Name => Say(Door.OfFile);
}

/// <summary>A row that is no data and was left out, and as what.</summary>
/// <param name="Line">Its line in the file.</param>
/// <param name="As">In words: a totals row, the headers again.</param>
public sealed record IgnoredRow(int Line, string As)
{
    /// <inheritdoc cref="IgnoredRow"/>
    public string As { get; init; } = Signs.Spelled(As);
}

/// <summary>What became of the rows of one file. Every row of it is in exactly one of the counts.</summary>
public sealed record FileReport
{
    /// <summary>The file.</summary>
    public required string File { get; init; }

    /// <summary>What its rows are.</summary>
    public required TableKind Kind { get; init; }

    /// <summary>All rows of the file, blank ones and headers included.</summary>
    public required long Rows { get; init; }

    /// <summary>Rows that made a new job or entry.</summary>
    public required long New { get; init; }

    /// <summary>Rows that differ from what was imported before and made an entry that supersedes it, or a new head of a job.</summary>
    public required long Changed { get; init; }

    /// <summary>Rows that the store holds just so.</summary>
    public required long Unchanged { get; init; }

    /// <summary>Rows not taken, by line.</summary>
    public required IReadOnlyList<RefusedRow> Refused { get; init; }

    /// <summary>Blank rows.</summary>
    public required long Blank { get; init; }

    /// <summary>Totals, headers and what stands above them.</summary>
    public required IReadOnlyList<IgnoredRow> Ignored { get; init; }

    /// <summary>Headers of columns that mean nothing to the import.</summary>
    public required IReadOnlyList<string> ColumnsNotUsed { get; init; }

    /// <summary>Which header was taken for which column.</summary>
    public required IReadOnlyList<(Column Column, string Header)> Columns { get; init; }

    /// <summary>Rows without a day of furnishing, for which the invoice's day stands.</summary>
    public long DayOfInvoice { get; init; }

    /// <summary>Rows in the counts.</summary>
    public long Accounted => New + Changed + Unchanged + Refused.Count + Blank + Ignored.Count;
}

/// <summary>A payment that named no invoice and no job, and where the law put it.</summary>
/// <param name="File">The file.</param>
/// <param name="Line">Its line.</param>
/// <param name="Customer">Who paid.</param>
/// <param name="Received">The day.</param>
/// <param name="Amount">Dollars and cents.</param>
/// <param name="Parts">Job by job.</param>
public sealed record AcrossReport(string File, int Line, string Customer, LocalDate Received, decimal Amount,
    IReadOnlyList<AcrossPart> Parts);

/// <summary>A part of such a payment.</summary>
/// <param name="Job">The job's key.</param>
/// <param name="Amount">Dollars and cents.</param>
/// <param name="Why">The class of Civ. Code § 1479, Three.</param>
/// <param name="Due">Maturity of what it paid.</param>
/// <param name="Ref">What it paid.</param>
public sealed record AcrossPart(string Job, decimal Amount, AppliedTo Why, LocalDate Due, string? Ref)
{
    /// <summary>Why it is applied where it is, in words (Civ. Code § 1479, Three).</summary>
    public string Reason => Why switch
    {
        AppliedTo.InterestDue => $"interest due {LawText.IsoDay(Due)}",
        AppliedTo.Due => $"due, earliest maturity first ({LawText.IsoDay(Due)})",
        AppliedTo.NotYetDue => $"not yet due, earliest maturity first ({LawText.IsoDay(Due)})",
        _ => throw new InvalidOperationException($"No such class: {Why}."),
    };
}

/// <summary>What an import did, or would do.</summary>
/// <param name="Files">File by file.</param>
/// <param name="JobsAdded">New jobs.</param>
/// <param name="JobsExtended">Jobs to which something was written.</param>
/// <param name="Changes">Changes written to the journal, heads included; 0 in a dry run.</param>
/// <param name="Across">Payments applied over several jobs.</param>
/// <param name="Assumed">What was taken to be so for new jobs since no table says it.</param>
public sealed record ImportReport(
    IReadOnlyList<FileReport> Files, long JobsAdded, long JobsExtended, long Changes, IReadOnlyList<AcrossReport> Across,
        IReadOnlyList<Sentence> Assumed)
{
    /// <summary>What is asked before it is written; where it was written, what was confirmed.</summary>
    public IReadOnlyList<ImportQuestion> Questions { get; init; } = [];

    /// <summary>The files of refused rows that were written.</summary>
    public IReadOnlyList<string> RefusedFiles { get; init; } = [];

    /// <summary>The keys of the new jobs, in the order in which the tables name them.</summary>
    public IReadOnlyList<string> NewJobs { get; init; } = [];
}
