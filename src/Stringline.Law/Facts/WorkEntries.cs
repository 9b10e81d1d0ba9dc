namespace Stringline.Law.Facts;

/// <summary>Labor, service, equipment or material furnished on a day or over a span.</summary>
public sealed record Furnished : Entry
{
    internal override EntryKind Kind => WorkKinds.Furnished;

    /// <summary>Last day of the span; the same as <see cref="Entry.On"/> for a single day.</summary>
    public required DayFact Until { get; init; }

    /// <summary>Price of what was furnished, in dollars and cents; null where it is not priced.</summary>
    public decimal? Amount { get; init; }

    /// <summary>What it was.</summary>
    public string? Text { get; init; }

    /// <summary>Reference by which payments may name it.</summary>
    public string? Ref { get; init; }

    /// <summary>The <see cref="ResidentialStructure.Id"/> of the residential structure it went into; null for the whole work.</summary>
    public string? Structure { get; init; }
}

/// <summary>The claimant will furnish no more.</summary>
public sealed record FurnishingEnded : Entry
{
    internal override EntryKind Kind => WorkKinds.FurnishingEnded;
}

/// <summary>A change order or extra.</summary>
public sealed record Change : Entry
{
    internal override EntryKind Kind => WorkKinds.Change;

    /// <summary>Dollars and cents added to the price; negative for a deduction.</summary>
    public required decimal Amount { get; init; }

    /// <summary>
    /// Whether it is in the direct contract or a modification of it (Civ. Code § 8432(a)); null where the file does not say.
    /// </summary>
    public bool? InDirectContract { get; init; }

    /// <summary>
    /// Whether the claimant knew, or was on notice, before the work that it is not in the direct contract (Civ. Code § 8432(a)); null where
    /// the file does not say.
    /// </summary>
    public bool? KnewOutside { get; init; }

    /// <summary>Whether it was agreed in writing (Civ. Code § 8430(c)).</summary>
    public required bool Agreed { get; init; }

    /// <summary>What it was for.</summary>
    public string? Text { get; init; }
}

/// <summary>The claimant knew, or had reason to know, that the work will not be commenced (Civ. Code § 8312).</summary>
public sealed record WorkWillNotCommence : Entry
{
    internal override EntryKind Kind => WorkKinds.WorkWillNotCommence;
}
