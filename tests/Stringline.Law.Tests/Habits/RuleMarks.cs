using System.Reflection;
using System.Text.RegularExpressions;
using Stringline.Law.Sources;

namespace Stringline.Law.Tests.Habits;

/// <summary>The marks that tie a section to its rules and its tests.</summary>
internal static partial class RuleMarks
{
    private const BindingFlags Everything =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    /// <summary>Every rule mark of the law library, with the member that bears it.</summary>
    public static IReadOnlyList<(string Where, RuleAttribute Rule)> All { get; } =
    [
        .. typeof(Assessment).Assembly.GetTypes()
            .SelectMany(t => t.GetMembers(Everything).Where(m => m is not Type).Prepend((MemberInfo)t)
                .SelectMany(m => m.GetCustomAttributes<RuleAttribute>(inherit: false)
                    .Select(r => (m == t ? t.FullName! : $"{t.FullName}.{m.Name}", r)))),
    ];

    /// <summary>Every section that a test of this assembly proves, with the tests.</summary>
    public static ILookup<string, string> Proved { get; } = typeof(RuleMarks).Assembly.GetTypes()
        .SelectMany(t => t.GetMethods(Everything)
            .SelectMany(m => m.GetCustomAttributes<ProvesAttribute>().Select(p => (p.Section, Test: $"{t.Name}.{m.Name}"))))
        .ToLookup(p => p.Section, p => p.Test);

    /// <summary>
    /// Whether a text has the shape of a citation, such as <c>Civ. Code § 8414(b)(2)</c> or <c>40 U.S.C. § 3133(b)(1)</c>.
    /// </summary>
    public static bool LooksLikeASection(string section) => Citation().IsMatch(section);

    [GeneratedRegex(@"^(Civ\. Code|Code Civ\. Proc\.|Gov\. Code|Bus\. & Prof\. Code|Pub\. Contract Code|Cal\. Rules of Court, rule|\d+ "
        + @"U\.S\.C\.) ?(§ )?\d+(\.\d+)?[a-z]?(\([a-zA-Z0-9]+\))*$")]
    private static partial Regex Citation();
}
