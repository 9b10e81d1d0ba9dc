using System.Collections;
using System.Reflection;
using CsCheck;
using Stringline.Law.Facts;
using Stringline.Testing;

namespace Stringline.Tables.Tests;

/// <summary>
/// The round trip proves only what the generator makes. So every fact that the law knows is made by it in some sample: a property added
/// tomorrow fails here until it is generated, and then in the round trip until it is read and written.
/// </summary>
public sealed class GeneratorTests
{
    private static readonly Type[] Facts =
    [
        .. typeof(Entry).Assembly.GetTypes()
            .Where(type => type is { IsPublic: true, IsClass: true, IsAbstract: false, Namespace: "Stringline.Law.Facts" }
                && IsRecord(type) && !type.IsAssignableTo(typeof(IPointer))),
    ];

    [Fact]
    public void Every_fact_that_the_law_knows_is_said_in_some_generated_file()
    {
        // Drawn from one fixed beginning, so that a rare fact is met in every run or in none.
        var said = new HashSet<string>();
        var draw = new PCG(1, 20_260_101);
        var missing = Facts.SelectMany(type => Settable(type).Select(property => Name(type, property))).ToHashSet();
        for (var i = 0; i < 20_000 && missing.Count > 0; i++)
        {
            Note(JobFileGen.Job.Generate(draw, null, out _), said);
            missing.ExceptWith(said);
        }

        Assert.Empty(missing.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_facts_looked_for_are_those_of_the_job_file()
    {
        Assert.Contains(typeof(Party), Facts);
        Assert.Contains(typeof(ResidentialStructure), Facts);
        Assert.Contains(typeof(LicenseSpan), Facts);
        Assert.Equal(EntryKinds.All.Count, Facts.Count(type => type.IsSubclassOf(typeof(Entry))));
    }

    private static bool IsRecord(Type type) => type.GetMethod("<Clone>$") is not null;

    private static IEnumerable<PropertyInfo> Settable(Type type) =>
        type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.SetMethod is not null);

    private static string Name(Type type, PropertyInfo property) => $"{type.Name}.{property.Name}";

    /// <summary>Notes every property that says something: a value that is not null, not false, and not an empty list.</summary>
    private static void Note(object fact, HashSet<string> said)
    {
        foreach (var property in Settable(fact.GetType()))
        {
            var value = property.GetValue(fact);
            if (value is null or false or ICollection { Count: 0 })
                continue;
            said.Add(Name(fact.GetType(), property));
            if (value is IEnumerable items and not string)
            {
                foreach (var item in items.Cast<object>().Where(item => Facts.Contains(item.GetType())))
                    Note(item, said);
            }
            else if (Facts.Contains(value.GetType()))
            {
                Note(value, said);
            }
        }
    }
}
