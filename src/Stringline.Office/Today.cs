namespace Stringline.Office;

/// <summary>The day it is in California. The only clock of the program.</summary>
internal static class Today
{
    /// <summary>The local date at the clock's moment.</summary>
    public static LocalDate InCalifornia(IClock clock) => MomentInCalifornia(clock).Date;

    /// <summary>The local date and time at the clock's moment.</summary>
    public static LocalDateTime MomentInCalifornia(IClock clock) =>
        clock.GetCurrentInstant().InZone(DateTimeZoneProviders.Tzdb["America/Los_Angeles"]).LocalDateTime;
}
