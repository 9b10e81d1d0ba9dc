namespace Stringline.Store;

/// <summary>Which jobs a reading of the whole store gives, always in the order of their ids.</summary>
public sealed record JobsToRead
{
    /// <summary>All of them.</summary>
    public static JobsToRead All { get; } = new();

    /// <summary>Only jobs with a greater id.</summary>
    public long After { get; init; }

    /// <summary>Only jobs that were not yet assessed as they are now by these rules on this day; null for all.</summary>
    public (string Rules, LocalDate AsOf)? NotYetAssessed { get; init; }
}
