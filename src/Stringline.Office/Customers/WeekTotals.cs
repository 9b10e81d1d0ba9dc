namespace Stringline.Office.Customers;

/// <summary>
/// What is owed on a day, in courses laid on each other: what a recorded or given right holds, what can still be secured, and the rest.
/// </summary>
/// <param name="Day">The day.</param>
/// <param name="Held">Dollars and cents held.</param>
/// <param name="MaySecure">Dollars and cents not held that an open right can still secure.</param>
/// <param name="Unsecured">Dollars and cents that no right holds or can secure.</param>
internal sealed record WeekTotals(LocalDate Day, decimal Held, decimal MaySecure, decimal Unsecured)
{
    /// <summary>Dollars and cents owed.</summary>
    public decimal Owed => Held + MaySecure + Unsecured;

    /// <summary>The courses of some jobs on a day.</summary>
    public static WeekTotals Of(IEnumerable<Security> holds, LocalDate day)
    {
        var (owed, held, may) = (0m, 0m, 0m);
        foreach (var hold in holds)
        {
            owed += hold.Owed;
            held += hold.HeldOn(day);
            may += hold.MaySecureOn(day);
        }

        return new WeekTotals(day, held, may, owed - held - may);
    }
}
