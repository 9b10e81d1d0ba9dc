using Stringline.Law.Facts;
using Stringline.Tables.Sheets.Columns;

namespace Stringline.Office.Import;

/// <summary>What is to be imported, and what the tables do not say of jobs that the store does not have yet.</summary>
/// <param name="Files">The files, all taken in one transaction.</param>
/// <param name="Who">Who records it.</param>
public sealed record ImportRequest(IReadOnlyList<string> Files, string Who)
{
    /// <summary>How to read the columns.</summary>
    public ColumnMapping Mapping { get; init; } = ColumnMapping.None;

    /// <summary>Look and tell, write nothing.</summary>
    public bool DryRun { get; init; }

    /// <summary>Whether a dry run too writes the files of refused rows.</summary>
    public bool RefusedFilesOfDryRun { get; init; }

    /// <summary>
    /// Which questions of <see cref="ImportQuestions"/> a person has confirmed; where another is asked, nothing is written.
    /// </summary>
    public IReadOnlyCollection<string> Confirmed { get; init; } = [];

    /// <summary>Stops the reading of its files.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>Today, by which days far ahead or back are asked about; null where they are not.</summary>
    public LocalDate? Today { get; init; }

    /// <summary>Name of the claimant.</summary>
    public string? Claimant { get; init; }

    /// <summary>Its role.</summary>
    public ClaimantRole? Role { get; init; }

    /// <summary>County of sites for which the table names none.</summary>
    public string? County { get; init; }

    /// <summary>What customers are on the work where the table does not say.</summary>
    public PartyCapacity? CustomerIs { get; init; }

    /// <summary>Private, public or federal where the table does not say.</summary>
    public WorkKind? Work { get; init; }
}

/// <summary>How far an import has come.</summary>
/// <param name="What">What is being done, in words.</param>
/// <param name="Done">How much of it.</param>
/// <param name="Total">Of how much; 0 where nobody knows.</param>
public sealed record ImportProgress(string What, long Done, long Total);
