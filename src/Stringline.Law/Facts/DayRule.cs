namespace Stringline.Law.Facts;

/// <summary>Which answers the day of an entry takes.</summary>
public enum DayRule
{
    /// <summary>A day, a day in doubt between two, or nobody knows.</summary>
    Any,

    /// <summary>A day, or a day in doubt: money needs one.</summary>
    Known,

    /// <summary>A day, a span of work from day to day, or a day in doubt.</summary>
    Span,
}
