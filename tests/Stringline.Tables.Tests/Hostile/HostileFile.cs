namespace Stringline.Tables.Tests.Hostile;

/// <summary>A file that is made to break its reader, or lies about itself.</summary>
/// <param name="Name">Its name, with its ending.</param>
/// <param name="How">How it is made, in words for the page of refusals.</param>
/// <param name="Make">Makes it.</param>
internal sealed record HostileFile(string Name, string How, Func<byte[]> Make)
{
    /// <summary>How many rows it gives; null where it is refused.</summary>
    public int? Rows { get; init; }

    /// <summary>All of them.</summary>
    public static IReadOnlyList<HostileFile> All { get; } = [.. HostileText.All, .. HostileSheets.All, .. HostileParts.All,
        .. HostileArchives.All, .. HostileOldBooks.All];
}
