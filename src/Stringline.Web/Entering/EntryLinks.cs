using Stringline.Law.Facts;

namespace Stringline.Web.Entering;

/// <summary>Where an entry is corrected or taken back. One without an id cannot be: its page says what to do.</summary>
internal static class EntryLinks
{
    /// <summary>The page on which it is corrected.</summary>
    public static string Correct(long job, Entry entry) => entry.Id is { } id
        ? $"/job/{job}/enter?supersedes={Uri.EscapeDataString(id)}"
        : $"/job/{job}/enter?unnamed={entry.Index}";

    /// <summary>The page on which it is taken back.</summary>
    public static string TakeBack(long job, Entry entry) => entry.Id is { } id
        ? $"/job/{job}/enter?what=withdrawn&supersedes={Uri.EscapeDataString(id)}"
        : $"/job/{job}/enter?unnamed={entry.Index}";
}
