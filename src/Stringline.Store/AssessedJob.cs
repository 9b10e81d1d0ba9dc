using Stringline.Law.Reasoning;

namespace Stringline.Store;

/// <summary>What the last assessment of a job found, in short. Derived from the journal; it can be made anew at any time.</summary>
public sealed record AssessedJob
{
    /// <summary>The job's id.</summary>
    public required long Job { get; init; }

    /// <summary>Number of the job's last change that was looked at.</summary>
    public required long Sequence { get; init; }

    /// <summary>Version of the rules.</summary>
    public required string Rules { get; init; }

    /// <summary>The day on which the question was asked.</summary>
    public required LocalDate AsOf { get; init; }

    /// <summary>The nearest day to act; null where nothing is to be done.</summary>
    public LocalDate? ActBy { get; init; }

    /// <summary>Dollars and cents that hang on it; null where no amount is known.</summary>
    public decimal? AtStake { get; init; }

    /// <summary>Where the right stands whose day that is.</summary>
    public required Standing Standing { get; init; }

    /// <summary>Id of the finding that sets the day.</summary>
    public required string What { get; init; }

    /// <summary>Who hired the claimant; null where the file does not say.</summary>
    public string? Customer { get; init; }

    /// <summary>The county of the site.</summary>
    public string? County { get; init; }

    /// <summary>Who signs for the claimant; null where the file does not say.</summary>
    public string? Person { get; init; }

    /// <summary>Dollars and cents owed on the job, whether or not they may be claimed.</summary>
    public decimal Owed { get; init; }

    /// <summary>Dollars and cents of it that a recorded or given right holds.</summary>
    public decimal Held { get; init; }

    /// <summary>Dollars and cents of it that are not held but can still be secured by a right that is open.</summary>
    public decimal MaySecure { get; init; }

    /// <summary>What is to be done, most pressing first. Written with the job, read through <see cref="IJournal.Steps"/>.</summary>
    public IReadOnlyList<AssessedStep> Steps { get; init; } = [];

    /// <summary>The findings in short: JSON as UTF-8. The store keeps it as it is.</summary>
    public required ReadOnlyMemory<byte> Findings { get; init; }
}

/// <summary>A line of the desk's list.</summary>
/// <param name="Job">Where the job is now.</param>
/// <param name="Assessed">What its last assessment found.</param>
public sealed record DeskLine(JobTip Job, AssessedJob Assessed)
{
    /// <summary>Whether something was written to the job since it was assessed.</summary>
    public bool IsBehind => Assessed.Sequence != Job.Sequence;
}

/// <summary>Which lines of the desk's list are asked for: those with a day to act, nearest day first.</summary>
/// <param name="Limit">At most so many.</param>
public sealed record DeskPage(int Limit)
{
    /// <summary>Only jobs to act on by this day or before it; null for all.</summary>
    public LocalDate? Through { get; init; }

    /// <summary>The last line of the page before; null for the first page.</summary>
    public DeskLine? After { get; init; }
}
