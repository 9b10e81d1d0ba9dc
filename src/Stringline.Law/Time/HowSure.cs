namespace Stringline.Law.Time;

/// <summary>How well a row of law is known.</summary>
public enum HowSure
{
    /// <summary>The section, rule or bill that sets it was read.</summary>
    Read,

    /// <summary>From memory: check before relying on it.</summary>
    FromMemory,

    /// <summary>The law is open, or its current text was not read; the row takes the safer side and its note says which.</summary>
    Open,
}
