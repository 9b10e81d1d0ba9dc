namespace Stringline.LawWatch;

/// <summary>What became of a section.</summary>
internal enum Fate
{
    /// <summary>Its text differs, or it now stands in more or fewer versions.</summary>
    Changed,

    /// <summary>It is in the text no more.</summary>
    Gone,

    /// <summary>It stands among sections that are all kept, and is not.</summary>
    New,
}

/// <summary>A section that is not as it was kept.</summary>
/// <param name="Section">The section.</param>
/// <param name="Fate">What became of it.</param>
/// <param name="Kept">The versions that were kept; none of a new one.</param>
/// <param name="Now">The versions in the text; none of one that is gone.</param>
internal sealed record Difference(string Section, Fate Fate, IReadOnlyList<KeptSection> Kept, IReadOnlyList<CodeSection> Now)
{
    /// <summary>What differs, in the order of the kept sections; new ones last. A code of which the text has nothing is left out.</summary>
    public static IReadOnlyList<Difference> Between(IReadOnlyList<KeptSection> kept, IReadOnlyList<CodeSection> text)
    {
        var now = text.ToLookup(section => section.Section);
        var codes = text.Select(section => Codes.CodeOf(section.Section)).ToHashSet();
        var before = kept.ToLookup(section => section.Section);
        var known = before.Where(group => codes.Contains(Codes.CodeOf(group.Key)) && !IsSame(group, now[group.Key]))
            .Select(group => new Difference(
                group.Key, now.Contains(group.Key) ? Fate.Changed : Fate.Gone, [.. group], [.. now[group.Key]]));
        var added = now.Where(group => !before.Contains(group.Key) && Codes.IsInWholePart(group.Key))
            .Select(group => new Difference(group.Key, Fate.New, [], [.. group]));
        return [.. known, .. added];
    }

    private static bool IsSame(IEnumerable<KeptSection> kept, IEnumerable<CodeSection> now) =>
        kept.Select(version => version.Fingerprint).Distinct().Order(StringComparer.Ordinal)
            .SequenceEqual(now.Select(version => version.Fingerprint).Distinct().Order(StringComparer.Ordinal));
}
