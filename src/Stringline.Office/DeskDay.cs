namespace Stringline.Office;

/// <summary>The day on which the desk answers.</summary>
/// <param name="clock">The clock.</param>
/// <param name="asOf">The day it takes for today; null for today in California.</param>
internal sealed class DeskDay(IClock clock, LocalDate? asOf)
{
    /// <summary>Today.</summary>
    public LocalDate Today => asOf ?? Office.Today.InCalifornia(clock);

    /// <summary>Whether it is a day that was asked for and not the real one.</summary>
    public bool IsFixed => asOf is not null;
}
