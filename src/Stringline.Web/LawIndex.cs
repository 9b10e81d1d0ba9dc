using System.Reflection;
using System.Text;
using Stringline.Law;
using Stringline.Law.Sources;

namespace Stringline.Web;

/// <summary>A section of the law and the rules that stand for it.</summary>
/// <param name="Section">The section.</param>
/// <param name="Anchor">Its anchor on the page of the law.</param>
/// <param name="Rules">The members that carry it, and how sure we are of each.</param>
internal sealed record LawSection(string Section, string Anchor, IReadOnlyList<(string Where, RuleAttribute Rule)> Rules)
{
    /// <summary>What the rules say, in plain words; empty where the members that carry them say it only in code.</summary>
    public IReadOnlyList<string> InWords =>
        [.. Rules.Select(rule => LawInWords.Of(rule.Where) ?? LawInWords.Of(rule.Where[..Math.Max(0, rule.Where.LastIndexOf('.'))]))
            .OfType<string>().Distinct()];

    /// <summary>The tests that prove it, as the table of the sources of law names them.</summary>
    public string Tests => LawInWords.TestsOf(Section);
}

/// <summary>Every section that the law library cites at a rule, read from the marks on its members.</summary>
internal static class LawIndex
{
    private static readonly Lazy<LawSection[]> Read = new(Load);
    private static readonly Lazy<HashSet<string>> Anchors = new(() => [.. Sections.Select(section => section.Anchor)]);

    /// <summary>The sections, in order of code and number.</summary>
    public static IReadOnlyList<LawSection> Sections => Read.Value;

    /// <summary>
    /// The anchor of a section, of the nearest one it is a part of, or of the first of its own parts; null where the library has no rule
    /// for it.
    /// </summary>
    public static string? AnchorOf(string section)
    {
        for (var part = section; part.Length > 0; part = WithoutLastPart(part))
        {
            if (Anchors.Value.Contains(Slug(part)))
                return Slug(part);
        }

        var whole = Slug(section) + "-";
        return Sections.FirstOrDefault(known => known.Anchor.StartsWith(whole, StringComparison.Ordinal))?.Anchor;
    }

    /// <summary>How sure, in words.</summary>
    public static string Words(Sure sure) => sure switch
    {
        Sure.Read => "read in the Code",
        Sure.Opinion => "from a published opinion, read in part",
        Sure.FromMemory => "from memory: check before relying on it",
        Sure.OurReading => "our own reading, on the safer side",
        _ => throw new ArgumentOutOfRangeException(nameof(sure), sure, "Not a degree of sureness."),
    };

    private static string WithoutLastPart(string section)
    {
        var open = section.LastIndexOf('(');
        return open > 0 && section.EndsWith(')') ? section[..open] : "";
    }

    private static string Slug(string section)
    {
        var slug = new StringBuilder(section.Length);
        foreach (var letter in section)
        {
            if (char.IsAsciiLetterOrDigit(letter))
                slug.Append(char.ToLowerInvariant(letter));
            else if (slug.Length > 0 && slug[^1] != '-')
                slug.Append('-');
        }

        return slug.ToString().TrimEnd('-');
    }

    private static LawSection[] Load()
    {
        const BindingFlags own =
            BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;
        return
        [
            .. typeof(Assessment).Assembly.GetTypes()
                .SelectMany(type => type.GetMembers(own).Where(member => member is not Type).Append(type))
                .SelectMany(member =>
                    member.GetCustomAttributes<RuleAttribute>(inherit: false).Select(rule => (Where: Name(member), Rule: rule)))
                .GroupBy(mark => Slug(mark.Rule.Section), StringComparer.Ordinal)
                .Select(group =>
                    new LawSection(group.First().Rule.Section, group.Key, [.. group.OrderBy(mark => mark.Where, StringComparer.Ordinal)]))
                .OrderBy(section => section.Section,
                    StringComparer.Create(System.Globalization.CultureInfo.InvariantCulture,
                        System.Globalization.CompareOptions.NumericOrdering)),
        ];
    }

    private static string Name(MemberInfo member)
    {
        var type = member as Type ?? member.DeclaringType!;
        var full = type.FullName!.Replace("Stringline.Law.", "", StringComparison.Ordinal);
        return member is Type ? full : $"{full}.{member.Name}";
    }
}
