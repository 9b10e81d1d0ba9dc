namespace Stringline.Web.Tests;

/// <summary>A clock that stands.</summary>
internal sealed class StoppedClock(Instant at) : IClock
{
    /// <inheritdoc/>
    public Instant GetCurrentInstant() => at;
}
