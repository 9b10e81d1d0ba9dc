using System.Reflection;

namespace Stringline.Law.Tests.Habits;

/// <summary>Every section that a rule names is proved by a test that names it too.</summary>
public sealed class SectionsProvedTests
{
    private static IEnumerable<string> OfRules => RuleMarks.All.Select(r => r.Rule.Section).Distinct();

    [Fact]
    public void Every_section_of_a_rule_is_proved_by_a_test()
    {
        var missing = OfRules.Where(s => !RuleMarks.Proved.Contains(s)).Order(StringComparer.Ordinal).ToArray();
        Assert.True(missing.Length == 0, "No test proves: " + string.Join("; ", missing));
    }

    [Fact]
    public void Every_section_that_a_test_proves_is_that_of_a_rule()
    {
        var unknown = RuleMarks.Proved.Select(p => p.Key).Except(OfRules).ToArray();
        Assert.True(unknown.Length == 0, "No rule has: " + string.Join("; ", unknown));
    }

    [Fact]
    public void Only_tests_prove()
    {
        var others = typeof(RuleMarks).Assembly.GetTypes().SelectMany(t => t.GetMethods())
            .Where(m => m.GetCustomAttributes<ProvesAttribute>().Any() && !m.GetCustomAttributes<FactAttribute>().Any());
        Assert.Empty(others.Select(m => m.Name));
    }
}
