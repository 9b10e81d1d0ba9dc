using Stringline.Law.Facts;

namespace Stringline.Papers.Writing;

/// <summary>The facts that are entered, by the names under which a person finds them on the screen "Enter a fact".</summary>
public static class EntryName
{
    /// <summary>The name of a kind of entry; null where there is no such kind.</summary>
    /// <param name="what">The kind's word in the job file.</param>
    public static string? Find(string what) => EntryKinds.Find(what)?.Title;

    /// <summary>The step of a sheet: where it is entered. What follows tells with what.</summary>
    /// <param name="what">The kind's word in the job file.</param>
    internal static string Enter(string what) => Find(what) is { } title
        ? $"Enter a fact, “{title}”: "
        : throw new ArgumentException($"No such kind of entry: {what}.", nameof(what));
}
