namespace Stringline.Papers.Fees;

/// <summary>
/// A county recorder's published prices as they were read. Amounts are dollars and cents;
/// null means the page read does not say.
/// </summary>
public sealed record RecorderOffice
{
    /// <summary>The county, such as <c>Yolo</c>.</summary>
    public required string County { get; init; }

    /// <summary>The first day on which these prices are in force; null where they were in force when they were read.</summary>
    public LocalDate? ValidFrom { get; init; }

    /// <summary>Where the office is: the county seat, from memory.</summary>
    public string? Seat { get; init; }

    /// <summary>Recording and indexing the first page of one title (Gov. Code §§ 27361, 27361.4), without fraud and homes fees.</summary>
    public decimal? Base { get; init; }

    /// <summary>Each further page (Gov. Code § 27361(a)(1)).</summary>
    public decimal? ExtraPage { get; init; }

    /// <summary>Real estate fraud fee on a mechanics lien (Gov. Code § 27388); 0 where the county's list leaves it out.</summary>
    public decimal? Fraud { get; init; }

    /// <summary>
    /// Fraud fee on the papers of the county's own list where that list leaves mechanics liens out; the list was not read whole, so a
    /// paper other than a claim of lien may be on it. Null where the fee on a mechanics lien is the list's fee.
    /// </summary>
    public decimal? FraudOnOthers { get; init; }

    /// <summary>Whether the homes fee (Gov. Code § 27388.1) is counted for each parcel.</summary>
    public bool? ParcelsCounted { get; init; }

    /// <summary>Restrictive covenant fee (Gov. Code § 27388.2).</summary>
    public decimal? Covenant { get; init; }

    /// <summary>Each ten names, or part of ten, after the first ten (Gov. Code § 27361.8).</summary>
    public decimal? NamesPerTen { get; init; }

    /// <summary>Each reference to a recorded paper beyond the first (Gov. Code § 27361.2).</summary>
    public decimal? FurtherReference { get; init; }

    /// <summary>Notice of involuntary lien (Gov. Code §§ 27297.5, 27387): the first group of names at one address.</summary>
    public decimal? NoticeFirst { get; init; }

    /// <summary>The same: each further group.</summary>
    public decimal? NoticeNext { get; init; }

    /// <summary>Names in a group; 1 where every name is charged.</summary>
    public int NoticeGroup { get; init; } = 1;

    /// <summary>Conformed copy, flat.</summary>
    public decimal? ConformedCopy { get; init; }

    /// <summary>Conformed copy, each page.</summary>
    public decimal? ConformedPerPage { get; init; }

    /// <summary>Hours, as far as the page read gives them.</summary>
    public string? Hours { get; init; }

    /// <summary>The page read; <c>from memory</c> for a county of which no schedule was read.</summary>
    public string? Source { get; init; }

    /// <summary>The date the page bears, in words.</summary>
    public string? DateOnPage { get; init; }

    /// <summary>The day it was read; null for a row from memory.</summary>
    public LocalDate? DateRead { get; init; }

    /// <summary>Whether no page of the office was read, so that the person must call.</summary>
    public bool IsFromMemory => DateRead is null;

    /// <summary>What must be known about the row.</summary>
    public string? Note { get; init; }

    /// <summary>The office's name.</summary>
    public string Name => County == "San Francisco"
        ? "Recorder of the City and County of San Francisco"
        : $"County Recorder, {County} County";
}
