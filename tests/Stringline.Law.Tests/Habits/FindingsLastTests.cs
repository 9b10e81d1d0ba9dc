using System.Reflection;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Habits;

/// <summary>Rules give typed results, and findings are made of them last: no rule takes one, alone or in a list.</summary>
public sealed class FindingsLastTests
{
    private const BindingFlags All =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    // What puts an assessment together, and what reads a finished one: what is to be done, and what is left of a right. The list only
    // shrinks.
    private static readonly string[] MayTakeThem = ["Assessment", "Composition", "Plan.NextSteps", "Plan.Outlook", "Reasoning.Finding"];

    [Fact]
    public void No_rule_takes_a_finding() =>
        Assert.Empty(Takers.Where(t => !MayTakeThem.Contains(t.Type)).Select(t => t.Name).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Whoever_may_take_one_does() =>
        Assert.Equal(
            MayTakeThem, Takers.Select(t => t.Type).Where(MayTakeThem.Contains).Distinct().Order(StringComparer.Ordinal));

    // Private methods, constructors and local functions too, each under the type in whose text it stands.
    private static IEnumerable<(string Type, string Name)> Takers => typeof(Assessment).Assembly.GetTypes()
        .SelectMany(type => type.GetMethods(All).Concat<MethodBase>(type.GetConstructors(All)))
        .Where(method => method.GetParameters().Any(p => IsOfFindings(p.ParameterType)))
        .Select(method => (Type: Outermost(method.DeclaringType!).FullName!["Stringline.Law.".Length..], method.Name))
        .Select(taker => (taker.Type, $"{taker.Type}.{taker.Name}"));

    private static Type Outermost(Type type) => type.DeclaringType is { } outer ? Outermost(outer) : type;

    private static bool IsOfFindings(Type type) =>
        type == typeof(Finding)
        || (type.HasElementType && IsOfFindings(type.GetElementType()!))
        || (type.IsGenericType && type.GetGenericArguments().Any(IsOfFindings));
}
