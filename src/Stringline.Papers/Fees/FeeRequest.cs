namespace Stringline.Papers.Fees;

/// <summary>What is to be recorded, as far as it changes the price.</summary>
public sealed record FeeRequest
{
    /// <summary>Printed sides, all of them.</summary>
    public required int Pages { get; init; }

    /// <summary>Titles on the first page.</summary>
    public int Titles { get; init; } = 1;

    /// <summary>Parcels.</summary>
    public int Parcels { get; init; } = 1;

    /// <summary>Names to be indexed.</summary>
    public int Names { get; init; } = 2;

    /// <summary>References to papers recorded before.</summary>
    public int References { get; init; }

    /// <summary>Pages not of 8½ by 11 inches.</summary>
    public int NonstandardPages { get; init; }

    /// <summary>Pages with type closer than Gov. Code § 27361(a)(1) allows.</summary>
    public int PenaltyPages { get; init; }

    /// <summary>Exempt from the homes and covenant fees on a ground shown on the face (Gov. Code § 27388.1(a)(2)).</summary>
    public bool Exempt { get; init; }

    /// <summary>
    /// Persons against whom an involuntary lien is recorded, counted for each address; empty where the office is not
    /// to be paid for a notice to them (Gov. Code § 27297.5).
    /// </summary>
    public IReadOnlyList<int> NamesAtEachAddress { get; init; } = [];

    /// <summary>Whether a conformed copy is asked for.</summary>
    public bool ConformedCopy { get; init; }
}
