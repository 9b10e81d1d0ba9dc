namespace Stringline.Store;

/// <summary>
/// The clock of the computer was behind the journal: what was recorded got the moment of the journal, so that the order stays right.
/// </summary>
/// <param name="Clock">What the clock said.</param>
/// <param name="Recorded">The moment that the journal keeps: no earlier than that of the change before.</param>
public sealed record ClockBehind(Instant Clock, Instant Recorded);
