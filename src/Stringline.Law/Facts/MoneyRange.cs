namespace Stringline.Law.Facts;

/// <summary>Which amounts a field takes.</summary>
public enum MoneyRange
{
    /// <summary>Any, below zero too.</summary>
    Any,

    /// <summary>Zero or more.</summary>
    ZeroOrMore,

    /// <summary>Above zero.</summary>
    AboveZero,
}
