namespace Stringline.Comparison.Jobs;

/// <summary>
/// The facts of one job as the other engines get them: already sorted out of the job file, as day numbers (<see cref="Serial"/>),
/// 0 where a thing did not happen. It is also one row of the sheet.
/// </summary>
public sealed record PlainJob
{
    public required int Number { get; init; }

    /// <summary>Whether the claimant is a direct contractor, who has 60 days after the owner's notice and not 30.</summary>
    public required bool Direct { get; init; }

    public required int FirstFurnished { get; init; }

    /// <summary>The day the preliminary notice was given to all to whom it is due.</summary>
    public required int NoticeGiven { get; init; }

    /// <summary>The day the claimant ceased to provide work.</summary>
    public required int Ended { get; init; }

    public required int Completed { get; init; }

    /// <summary>The day the owner recorded a notice of completion.</summary>
    public required int OwnerRecorded { get; init; }

    /// <summary>The day the owner put the claimant's copy of it in the mail.</summary>
    public required int CopyMailed { get; init; }

    public required int ClaimRecorded { get; init; }

    public required int ActionFiled { get; init; }
}
