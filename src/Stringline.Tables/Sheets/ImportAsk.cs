namespace Stringline.Tables.Sheets;

/// <summary>
/// What an import may be told beside the table, as a reason names it. Each door says it in its own words: the command line says what
/// <see cref="ToString"/> does.
/// </summary>
public sealed class ImportAsk
{
    private readonly string plain;

    private ImportAsk(string plain) => this.plain = plain;

    /// <summary>Who claims, and as what.</summary>
    public static ImportAsk Claimant { get; } = new("--claimant and --role");

    /// <summary>What the rows are.</summary>
    public static ImportAsk Kind { get; } = new("said with --as invoices or --as payments");

    /// <summary>Which header means what.</summary>
    public static ImportAsk Columns { get; } = new("other words can be given with --mapping");

    /// <summary>Which of several columns means something.</summary>
    public static ImportAsk Column { get; } = new("or say which in a mapping");

    /// <summary>Whether a day begins with its month.</summary>
    public static ImportAsk DayOrder { get; } = new("\"days\": \"day-first\" or \"month-first\" in a mapping");

    /// <summary>The county of all new jobs.</summary>
    public static ImportAsk County { get; } = new("--county");

    /// <summary>What the customer is on all new jobs.</summary>
    public static ImportAsk CustomerIs { get; } = new("--customer-is");

    /// <summary>The kind of work of all new jobs.</summary>
    public static ImportAsk Work { get; } = new("--work");

    /// <summary>Where a look shows more.</summary>
    public static ImportAsk Look { get; } = new("; see --dry-run");

    /// <inheritdoc/>
    public override string ToString() => plain;
}

/// <summary>That something is looked at and confirmed before it is written.</summary>
/// <param name="Ids">The ids of the questions.</param>
public sealed record ImportConfirmed(IReadOnlyList<string> Ids)
{
    /// <inheritdoc/>
    public override string ToString() =>
        $"look with --dry-run, and confirm what is right with {string.Join(" ", Ids.Select(id => "--confirm " + id))}";
}
