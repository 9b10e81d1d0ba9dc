namespace Stringline.Law.Facts;

/// <summary>Money received.</summary>
public sealed record Paid : Entry
{
    /// <summary>Dollars and cents, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>Who paid.</summary>
    public string? From { get; init; }

    /// <summary>The <c>ref</c> to which it was directed; null where nobody directed it (Civ. Code § 1479).</summary>
    public string? Toward { get; init; }
}

/// <summary>A credit, return or back charge allowed.</summary>
public sealed record Credited : Entry
{
    /// <summary>Dollars and cents, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>What it was for.</summary>
    public string? Text { get; init; }
}

/// <summary>What a charge that is not for work was billed for.</summary>
public enum ChargeKind
{
    /// <summary>Interest.</summary>
    Interest,

    /// <summary>Finance or service charge.</summary>
    Finance,

    /// <summary>Delay, disruption or extended overhead.</summary>
    Delay,

    /// <summary>Lost profit.</summary>
    LostProfit,

    /// <summary>Attorney's fees.</summary>
    AttorneyFees,

    /// <summary>Anything else that is not work.</summary>
    Other,
}

/// <summary>Billed, but not for work: never part of a claim of lien.</summary>
public sealed record Charged : Entry
{
    /// <summary>Dollars and cents, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>For what.</summary>
    public required ChargeKind Of { get; init; }

    /// <summary>Reference by which payments may name it.</summary>
    public string? Ref { get; init; }
}

/// <summary>Retention withheld from the claimant.</summary>
public sealed record Retained : Entry
{
    /// <summary>Dollars and cents, positive.</summary>
    public required decimal Amount { get; init; }
}

/// <summary>The claimant gave a notice demanding payment due under its contract (Civ. Code § 8800).</summary>
public sealed record PaymentDemanded : Entry
{
    /// <summary>Dollars and cents demanded, positive.</summary>
    public required decimal Amount { get; init; }
}

/// <summary>Which money the hirer received.</summary>
public enum PaymentOf
{
    /// <summary>A progress payment.</summary>
    Progress,

    /// <summary>Retention.</summary>
    Retention,
}

/// <summary>The one who hired the claimant was paid for the claimant's work.</summary>
public sealed record HirerPaid : Entry
{
    /// <summary>The claimant's share of it, dollars and cents, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>Progress payment or retention.</summary>
    public required PaymentOf Of { get; init; }
}

/// <summary>An amount that the payer disputes in good faith.</summary>
public sealed record Disputed : Entry
{
    /// <summary>Dollars and cents in dispute, positive.</summary>
    public required decimal Amount { get; init; }

    /// <summary>What about.</summary>
    public string? Text { get; init; }
}

/// <summary>The claimant sent a claim under Civ. Code § 8850 by registered or certified mail.</summary>
public sealed record DisputeClaimSent : Entry
{
    /// <summary>Dollars and cents claimed, if money.</summary>
    public decimal? Amount { get; init; }

    /// <summary>The day the owner received it, if known.</summary>
    public LocalDate? Received { get; init; }
}
