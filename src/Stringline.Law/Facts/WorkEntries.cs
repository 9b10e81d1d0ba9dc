namespace Stringline.Law.Facts;

/// <summary>Labor, service, equipment or material furnished on a day or over a span.</summary>
public sealed record Furnished : Entry
{
    /// <summary>Last day of the span; the same as <see cref="Entry.On"/> for a single day.</summary>
    public required DayFact Until { get; init; }

    /// <summary>Price of what was furnished, in dollars and cents; null where it is not priced.</summary>
    public decimal? Amount { get; init; }

    /// <summary>What it was.</summary>
    public string? Text { get; init; }

    /// <summary>Reference by which payments may name it.</summary>
    public string? Ref { get; init; }
}

/// <summary>The claimant will furnish no more.</summary>
public sealed record FurnishingEnded : Entry;

/// <summary>A change order or extra.</summary>
public sealed record Change : Entry
{
    /// <summary>Dollars and cents added to the price; negative for a deduction.</summary>
    public required decimal Amount { get; init; }

    /// <summary>Whether it was agreed in writing (Civ. Code § 8430(c)).</summary>
    public required bool Agreed { get; init; }

    /// <summary>What it was for.</summary>
    public string? Text { get; init; }
}

/// <summary>The claimant knew, or had reason to know, that the work will not be commenced (Civ. Code § 8312).</summary>
public sealed record WorkWillNotCommence : Entry;
