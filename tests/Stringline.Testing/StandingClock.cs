namespace Stringline.Testing;

/// <summary>A clock that stands at noon of a day in California until it is set to another.</summary>
public sealed class StandingClock(LocalDate day) : IClock
{
    /// <summary>The day at which it stands.</summary>
    public LocalDate Day { get; set; } = day;

    /// <inheritdoc/>
    public Instant GetCurrentInstant() =>
        Day.At(new LocalTime(12, 0)).InZoneLeniently(DateTimeZoneProviders.Tzdb["America/Los_Angeles"]).ToInstant();
}
