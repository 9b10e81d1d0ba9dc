namespace Stringline.Law.Reasoning;

/// <summary>A yes or no of law that the facts may leave open.</summary>
public enum Verdict
{
    /// <summary>Yes.</summary>
    Yes,

    /// <summary>No.</summary>
    No,

    /// <summary>The facts leave it open: both readings are shown and the safer is acted on.</summary>
    Open,
}
