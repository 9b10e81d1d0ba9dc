namespace Stringline.Law.Recording;

/// <summary>What is to be recorded, as far as it changes the price.</summary>
public sealed record FeeRequest
{
    /// <summary>What is recorded.</summary>
    public RecordedPaperKind Paper { get; init; } = RecordedPaperKind.ClaimOfLien;

    /// <summary>Printed sides, all of them: cover page and notary's certificate included.</summary>
    public required int Pages { get; init; }

    /// <summary>Titles on the first page.</summary>
    public int Titles { get; init; } = 1;

    /// <summary>Parcels.</summary>
    public int Parcels { get; init; } = 1;

    /// <summary>How they were counted; null where they were not read from a text.</summary>
    public ParcelCount? ParcelsTold { get; init; }

    /// <summary>Names to be indexed.</summary>
    public int Names { get; init; } = 2;

    /// <summary>References to papers recorded before.</summary>
    public int References { get; init; }

    /// <summary>Pages not of 8½ by 11 inches.</summary>
    public int NonstandardPages { get; init; }

    /// <summary>Pages with type closer than Gov. Code § 27361(a)(1) allows.</summary>
    public int PenaltyPages { get; init; }

    /// <summary>Why the homes and covenant fees are not due, as stated on the face or a cover page; null where they are.</summary>
    public HomesFeeExemption? Exemption { get; init; }

    /// <summary>
    /// Persons against whom an involuntary lien is recorded, counted for each address; empty where the office is not
    /// to be paid for a notice to them (Gov. Code § 27297.5).
    /// </summary>
    public IReadOnlyList<int> NamesAtEachAddress { get; init; } = [];

    /// <summary>
    /// Whether a copy went by first-class mail with a certificate of mailing: proof of that service does not stand in for the office's own
    /// notice, as that of registered or certified mail does (Gov. Code § 27297.5(b)(3), read in an excerpt).
    /// </summary>
    public bool ServedWithCertificateOfMailing { get; init; }

    /// <summary>Whether a conformed copy is asked for.</summary>
    public bool ConformedCopy { get; init; }

    /// <summary>The last day on which it may be recorded, where later than the day of the prices; null where none is known.</summary>
    public LocalDate? Until { get; init; }
}
