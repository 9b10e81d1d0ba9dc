using Xunit;
using Xunit.v3;

namespace Stringline.Testing;

/// <summary>What keeps a test out of <c>./test quick</c>.</summary>
public enum Slow
{
    /// <summary>It looks at the desk in a browser.</summary>
    Browser,

    /// <summary>It needs a PostgreSQL server.</summary>
    PostgreSql,

    /// <summary>It feeds the program what is broken at random, or everything that can be broken one by one.</summary>
    Fuzz,

    /// <summary>It kills programs in the midst of their work.</summary>
    Crash,

    /// <summary>It takes seconds of the processor by itself: many draws, many jobs, many starts of the program.</summary>
    Lasting,
}

/// <summary>
/// Leaves the tests of an assembly, a class or a method to <c>./test</c>; <c>./test quick</c> goes by this trait and by nothing else. What
/// only such a test may use asks for it with <see cref="Must"/>, so that a test without the mark fails.
/// </summary>
/// <param name="kind">Why.</param>
[AttributeUsage(AttributeTargets.Assembly | AttributeTargets.Class | AttributeTargets.Method, AllowMultiple = true)]
public sealed class SlowAttribute(Slow kind) : Attribute, ITraitAttribute
{
    /// <summary>The trait's name.</summary>
    public const string Trait = "Slow";

    /// <summary>Why.</summary>
    public Slow Kind => kind;

    /// <inheritdoc/>
    public IReadOnlyCollection<KeyValuePair<string, string>> GetTraits() => [new(Trait, "yes"), new(Trait, kind.ToString())];

    /// <summary>Fails a test that is not marked with a kind; passes outside of tests.</summary>
    /// <param name="kind">The kind.</param>
    /// <exception cref="InvalidOperationException">The running test, or the test class that is made ready, has no such mark.</exception>
    public static void Must(Slow kind)
    {
        var context = TestContext.Current;
        var (name, traits) = context switch
        {
            { Test: { } test } => (test.TestDisplayName, test.Traits),
            { TestClass: { } made } => (made.TestClassName, made.Traits),
            _ => ("", null),
        };
        if (traits is not null && !(traits.TryGetValue(Trait, out var kinds) && kinds.Contains(kind.ToString())))
            throw new InvalidOperationException($"{name} must be marked [Slow(Slow.{kind})]: ./test quick runs what has no such mark.");
    }
}
