namespace Stringline.Law.Recording;

/// <summary>
/// Why a paper pays no homes fee (Gov. Code § 27388.1). The reason must stand on the first page or a cover page when the paper is
/// presented; else the fee is charged and may not come back. None fits an ordinary private claim of lien or its release.
/// </summary>
public sealed record HomesFeeExemption
{
    private HomesFeeExemption(string id, string section, string wording) => (Id, Section, Wording) = (id, section, wording);

    /// <summary>Stable id.</summary>
    public string Id { get; }

    /// <summary>The section.</summary>
    public string Section { get; }

    /// <summary>
    /// The statement for the face of the paper, in the words that counties print (tuolumnecounty.ca.gov, read 2026-11-25).
    /// </summary>
    public string Wording { get; }

    /// <summary>Recorded in connection with a transfer that pays documentary transfer tax.</summary>
    public static HomesFeeExemption TransferTax { get; } = new("transfer-tax", "Gov. Code § 27388.1(a)(2)",
        "Exempt from fee per GC 27388.1(a)(2); recorded concurrently in connection with a transfer subject to the imposition of "
        + "documentary transfer tax");

    /// <summary>Recorded in connection with a transfer of a dwelling to one who will live in it.</summary>
    public static HomesFeeExemption OwnerOccupier { get; } = new("owner-occupier", "Gov. Code § 27388.1(a)(2)",
        "Exempt from fee per GC 27388.1(a)(2); recorded concurrently in connection with a transfer of real property that is a residential "
        + "dwelling to an owner-occupier");

    /// <summary>The $225 of one transaction have been paid with other papers of it.</summary>
    public static HomesFeeExemption CapReached { get; } = new("cap-reached", "Gov. Code § 27388.1(a)(1)",
        "Exempt from fee per GC 27388.1(a)(1); fee cap of $225 reached");

    /// <summary>The paper is not about real property.</summary>
    public static HomesFeeExemption NotRealProperty { get; } = new("not-real-property", "Gov. Code § 27388.1(a)(1)",
        "Exempt from fee per GC 27388.1(a)(1); not related to real property");

    /// <summary>All of them.</summary>
    [Rule("Gov. Code § 27388.1(a)(2)")]
    public static IReadOnlyList<HomesFeeExemption> All { get; } = [TransferTax, OwnerOccupier, CapReached, NotRealProperty];
}
