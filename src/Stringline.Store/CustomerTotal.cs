namespace Stringline.Store;

/// <summary>What one customer owes over all its jobs, and how it is held, as the last assessments found it.</summary>
/// <param name="Customer">Who hired the claimant, as the job files name it.</param>
/// <param name="Jobs">How many jobs.</param>
/// <param name="Owed">Dollars and cents owed.</param>
/// <param name="Held">Dollars and cents of it that a recorded or given right holds.</param>
/// <param name="MaySecure">Dollars and cents of it that are not held but can still be secured by a right that is open.</param>
public sealed record CustomerTotal(string Customer, long Jobs, decimal Owed, decimal Held, decimal MaySecure)
{
    /// <summary>Dollars and cents that no right of the assessments holds or can still secure.</summary>
    public decimal Unsecured => Owed - Held - MaySecure;

    /// <summary>On how many jobs the nearest day to act is past.</summary>
    public long Overdue { get; init; }

    /// <summary>The nearest day to act that is not past; null where there is none.</summary>
    public LocalDate? Next { get; init; }
}
