using NodaTime.Text;

namespace Stringline.LawWatch;

/// <summary>What is told of a comparison.</summary>
internal static class Report
{
    /// <summary>The lines.</summary>
    /// <param name="kept">What was kept.</param>
    /// <param name="folder">The text that it was compared with.</param>
    /// <param name="found">What differs.</param>
    /// <param name="standing">What stands on which section.</param>
    public static IEnumerable<string> Lines(
        IReadOnlyList<KeptSection> kept, CodeFolder folder, IReadOnlyList<Difference> found, Standing standing)
    {
        foreach (var difference in found)
        {
            yield return $"{difference.Section} {Words(difference)}";
            foreach (var version in difference.Now)
                yield return $"  now      {version.History}";
            foreach (var kind in Standing.Kinds)
            {
                foreach (var name in standing.On(difference.Section, kind))
                    yield return $"  {kind,-8} {name}";
            }

            yield return "";
        }

        foreach (var file in folder.PassedOver)
            yield return $"{file}: passed over, since its name names no code that the rules cite.";
        var codes = folder.Sections.Select(section => Codes.CodeOf(section.Section)).ToHashSet();
        foreach (var code in kept.Select(section => Codes.CodeOf(section.Section)).Distinct().Where(code => !codes.Contains(code)))
            yield return $"{code}: not in this folder, so not compared.";
        var known = kept.Select(section => section.Section).ToHashSet();
        var there = folder.Sections.Select(section => section.Section).ToHashSet();
        var unknown = standing.Sections
            .Where(section => there.Contains(section) && !known.Contains(section) && !Codes.IsInWholePart(section))
            .Order(SectionOrder.Instance).ToList();
        if (unknown.Count > 0)
            yield return $"No text was kept of these, so they were not compared: {string.Join("; ", unknown)}.";
        var compared = known.Count(section => codes.Contains(Codes.CodeOf(section)));
        yield return $"{compared} sections compared: {Count(found, Fate.Changed)} changed, {Count(found, Fate.Gone)} gone, "
            + $"{Count(found, Fate.New)} new.";
    }

    private static int Count(IReadOnlyList<Difference> found, Fate fate) => found.Count(difference => difference.Fate == fate);

    private static string Words(Difference difference) => difference.Fate switch
    {
        Fate.Changed when difference.Kept.Count != difference.Now.Count =>
            $"changed: {Versions(difference.Now.Count)} now, {Versions(difference.Kept.Count)} in the text of {Day(difference)}",
        Fate.Changed => $"changed since the text of {Day(difference)}",
        Fate.Gone => $"gone since the text of {Day(difference)}",
        Fate.New => "new",
        _ => throw new InvalidOperationException($"No such fate: {difference.Fate}."),
    };

    private static string Versions(int count) => count == 1 ? "one version" : $"{count} versions";

    private static string Day(Difference difference) => LocalDatePattern.Iso.Format(difference.Kept.Max(version => version.TextOf));
}
