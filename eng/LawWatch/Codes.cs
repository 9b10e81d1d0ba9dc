using System.Globalization;
using System.Text.RegularExpressions;

namespace Stringline.LawWatch;

/// <summary>The codes of California that the rules cite, and how their sections are cited.</summary>
internal static partial class Codes
{
    // How a file or its folder begins, letters only, and how the rules cite that code.
    private static readonly (string Begins, string Cited)[] Names =
    [
        ("civ", "Civ. Code"),
        ("ccp", "Code Civ. Proc."), ("codeofcivilprocedure", "Code Civ. Proc."),
        ("bpc", "Bus. & Prof. Code"), ("businessandprofessions", "Bus. & Prof. Code"),
        ("pcc", "Pub. Contract Code"), ("publiccontract", "Pub. Contract Code"),
        ("gov", "Gov. Code"),
    ];

    /// <summary>The code of a file, by its name or by that of a folder it lies in; null where none of them names one.</summary>
    /// <param name="path">Its path below the folder that is read.</param>
    public static string? Of(string path) => path.Split('/', '\\').Reverse()
        .Select(name => string.Concat(name.Where(char.IsAsciiLetter)).ToLowerInvariant())
        .Select(name => Names.FirstOrDefault(code => name.StartsWith(code.Begins, StringComparison.Ordinal)).Cited)
        .FirstOrDefault(cited => cited is not null);

    /// <summary>How files may be named.</summary>
    public static string Expected => string.Join(", ", Names.Select(code => code.Begins).Where(begins => begins.Length == 3));

    /// <summary>The code of a section: <c>Civ. Code</c> of <c>Civ. Code § 8414</c>.</summary>
    public static string CodeOf(string section) => section[..section.IndexOf(" §", StringComparison.Ordinal)];

    /// <summary>
    /// Whether every section of its part is kept, so that one which is not kept is new: the works of improvement, Civ. Code §§ 8000-9566.
    /// </summary>
    public static bool IsInWholePart(string section) => WorksOfImprovement().Match(section) is { Success: true } match
        && decimal.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture) is >= 8000m and < 9567m;

    /// <summary>
    /// The whole sections that a citation names, its subdivisions left out: of <c>Civ. Code §§ 8060, 8416(c); Gov. Code § 27361</c>
    /// three. Of a range such as <c>8830-8834</c> every number, whether there is such a section or not.
    /// </summary>
    public static IEnumerable<string> SectionsIn(string citation) =>
        from Match match in Citation().Matches(citation)
        from Match number in Number().Matches(Subdivision().Replace(match.Groups[2].Value, ""))
        from section in Range(number.Groups[1].Value, number.Groups[4].Value)
        select $"{match.Groups[1].Value} § {section}";

    private static IEnumerable<string> Range(string from, string to) =>
        int.TryParse(from, CultureInfo.InvariantCulture, out var first) && int.TryParse(to, CultureInfo.InvariantCulture, out var last)
            ? Enumerable.Range(first, Math.Max(1, last - first + 1)).Select(number => number.ToString(CultureInfo.InvariantCulture))
            : to.Length > 0 ? [from, to] : [from];

    [GeneratedRegex(@"^Civ\. Code § (\d+(\.\d+)?)$")]
    private static partial Regex WorksOfImprovement();

    [GeneratedRegex(@"(Civ\. Code|Code Civ\. Proc\.|Bus\. & Prof\. Code|Pub\. Contract Code|Gov\. Code) §§? ([^;|A-Z]+)")]
    private static partial Regex Citation();

    [GeneratedRegex(@"(\d+(\.\d+)?[a-z]?)(-(\d+(\.\d+)?[a-z]?))?")]
    private static partial Regex Number();

    [GeneratedRegex(@"\([^)]*\)")]
    private static partial Regex Subdivision();
}
