namespace Stringline.Law.Sources;

/// <summary>How well a text of law, or a row made from one, is known.</summary>
public enum Sure
{
    /// <summary>The section, rule of court or bill that sets it was read.</summary>
    Read,

    /// <summary>The rule is a published opinion's, read in part.</summary>
    Opinion,

    /// <summary>From memory: check before relying on it.</summary>
    FromMemory,

    /// <summary>Our own reading, on the safer side: the text is silent, the law is open, or its current text was not read.</summary>
    OurReading,
}
