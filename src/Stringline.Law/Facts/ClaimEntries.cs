namespace Stringline.Law.Facts;

/// <summary>A copy of the claim of lien was served (Civ. Code § 8416(c)).</summary>
public sealed record ClaimServed : Entry
{
    /// <summary>Party ids served.</summary>
    public required IReadOnlyList<string> To { get; init; }

    /// <summary>How.</summary>
    public required Manner Manner { get; init; }

    /// <summary>Article number of the mailing.</summary>
    public string? Article { get; init; }
}

/// <summary>A claim of mechanics lien was recorded.</summary>
public sealed record ClaimRecorded : Entry
{
    /// <summary>The county in which it was recorded; null for the county of the site (Civ. Code § 8060).</summary>
    public string? County { get; init; }

    /// <summary>The demand it states, dollars and cents.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}

/// <summary>The county index was searched for the owner's notices and nothing unknown was found.</summary>
public sealed record IndexSearched : Entry;

/// <summary>A notice of credit was recorded (Civ. Code § 8460(b)).</summary>
public sealed record CreditRecorded : Entry
{
    /// <summary>The day the credit ends.</summary>
    public required LocalDate Until { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}

/// <summary>An action to enforce was filed.</summary>
public sealed record ActionFiled : Entry
{
    /// <summary>Court.</summary>
    public string? Court { get; init; }

    /// <summary>Case number.</summary>
    public string? Case { get; init; }
}

/// <summary>A notice of pendency of action was recorded (Civ. Code § 8461).</summary>
public sealed record LisPendensRecorded : Entry
{
    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}

/// <summary>The owner demanded a release (Civ. Code § 8482).</summary>
public sealed record ReleaseDemanded : Entry
{
    /// <summary>Recorder's instrument number of the claim it names.</summary>
    public string? Instrument { get; init; }
}

/// <summary>A release of the claim of lien was recorded.</summary>
public sealed record ReleaseRecorded : Entry
{
    /// <summary>Whether it says that the debt is satisfied; false where it only gives up the claim; null where the file does not say.</summary>
    public bool? Satisfied { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}

/// <summary>A lien release bond was recorded (Civ. Code § 8424).</summary>
public sealed record ReleaseBondRecorded : Entry
{
    /// <summary>The day notice of it, with a copy, was given to the claimant (Civ. Code § 8424(c)); null where the file does not say.</summary>
    public LocalDate? NoticeGiven { get; init; }

    /// <summary>Amount of the bond, dollars and cents.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Recorder's instrument number.</summary>
    public string? Instrument { get; init; }
}
