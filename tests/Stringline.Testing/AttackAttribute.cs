using System.Globalization;
using System.Reflection;
using Xunit;
using Xunit.v3;

namespace Stringline.Testing;

/// <summary>
/// Names the attack that a test makes, as the first column of <c>docs/reliability.md</c> names it. Each time the test has passed, the
/// attack is counted in the folder that STRINGLINE_ATTACKS names, from which <c>eng/reliability.sh</c> makes the numbers of that page.
/// </summary>
/// <param name="name">The attack, word for word.</param>
/// <param name="times">How often one run of the test, or of one case of a theory, tries it; where it counts by itself, see
/// <see cref="Tried"/>.</param>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class AttackAttribute(string name, int times = 1) : BeforeAfterTestAttribute
{
    private static readonly Lock Writing = new();

    /// <summary>The attack.</summary>
    public string Name { get; } = name;

    /// <summary>How often one run tries it.</summary>
    public int Times { get; } = times;

    /// <summary>Says from within the test how often it has tried each of its attacks, where that is found only as it runs.</summary>
    /// <param name="times">How often.</param>
    public static void Tried(int times) => TestContext.Current.KeyValueStorage[Key] = times;

    private static string Key => "attacks of " + TestContext.Current.Test?.UniqueID;

    /// <inheritdoc/>
    public override void After(MethodInfo methodUnderTest, IXunitTest test)
    {
        if (Environment.GetEnvironmentVariable("STRINGLINE_ATTACKS") is not { Length: > 0 } folder
            || TestContext.Current.TestState?.Result is not TestResult.Passed)
            return;
        var times = TestContext.Current.KeyValueStorage.TryGetValue(Key, out var told) && told is int counted ? counted : Times;
        lock (Writing)
        {
            File.AppendAllText(Path.Join(folder, $"{Environment.ProcessId}.txt"),
                string.Create(CultureInfo.InvariantCulture, $"{times}\t{Name}\n"));
        }
    }
}
