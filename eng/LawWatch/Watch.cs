namespace Stringline.LawWatch;

/// <summary>The two things that are done with the Legislature's text.</summary>
internal static class Watch
{
    /// <summary>Nothing differs.</summary>
    public const int Same = 0;

    /// <summary>Something differs.</summary>
    public const int Different = 1;

    private static string Fingerprints(string root) => Path.Combine(root, "data", "law-fingerprints.csv");

    /// <summary>Compares it with what was kept, and tells what differs.</summary>
    /// <param name="root">The repository.</param>
    /// <param name="folder">The text.</param>
    /// <param name="output">Where it is told.</param>
    /// <returns><see cref="Same"/> or <see cref="Different"/>.</returns>
    /// <exception cref="UnreadableException">Something cannot be read.</exception>
    public static int Compare(string root, string folder, TextWriter output)
    {
        var kept = KeptSection.Read(Fingerprints(root));
        var text = CodeFolder.Read(folder);
        var found = Difference.Between(kept, text.Sections);
        foreach (var line in Report.Lines(kept, text, found, Standing.Of(root)))
            output.WriteLine(line);
        return found.Count == 0 ? Same : Different;
    }

    /// <summary>
    /// Keeps the fingerprints of the sections that something stands on, and of every section of a part that is kept whole. What was kept of
    /// other sections stays.
    /// </summary>
    /// <param name="root">The repository.</param>
    /// <param name="folder">The text.</param>
    /// <param name="day">The Legislature's date of its last update.</param>
    /// <param name="source">Where it is from.</param>
    /// <param name="output">Where it is told.</param>
    /// <exception cref="UnreadableException">Something cannot be read.</exception>
    public static int Keep(string root, string folder, LocalDate day, string source, TextWriter output)
    {
        var needed = Standing.Of(root).Sections.ToHashSet();
        var now = CodeFolder.Read(folder).Sections
            .Where(section => needed.Contains(section.Section) || Codes.IsInWholePart(section.Section))
            .Select(section => new KeptSection(section.Section, section.Fingerprint, day, source)).Distinct().ToList();
        var replaced = now.Select(section => section.Section).ToHashSet();
        IReadOnlyList<KeptSection> before = File.Exists(Fingerprints(root)) ? KeptSection.Read(Fingerprints(root)) : [];
        var all = before.Where(section => !replaced.Contains(section.Section)).Concat(now)
            .OrderBy(section => section.Section, SectionOrder.Instance).ToList();
        File.WriteAllText(Fingerprints(root), KeptSection.Text(all));
        output.WriteLine($"{replaced.Count} sections kept from this text, {all.Count} fingerprints in all.");
        return Same;
    }
}
