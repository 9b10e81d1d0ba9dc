namespace Stringline.Law.Facts;

/// <summary>What a text of an entry is.</summary>
public enum TextHolds
{
    /// <summary>A text on one line.</summary>
    Line,

    /// <summary>A text of one or several lines.</summary>
    Lines,

    /// <summary>One of the 58 counties.</summary>
    County,

    /// <summary>The id of a party.</summary>
    Party,

    /// <summary>A reference given to work or a charge, by which a payment may name it.</summary>
    OwnReference,

    /// <summary>The reference of other work or of a charge.</summary>
    Reference,

    /// <summary>The id of another entry.</summary>
    Entry,

    /// <summary>The id of a residential structure of the work.</summary>
    Structure,
}
