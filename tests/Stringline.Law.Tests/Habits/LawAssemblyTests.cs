using System.Reflection;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Habits;

/// <summary>How the law library is built, kept by reflection.</summary>
public sealed class LawAssemblyTests
{
    private static readonly Assembly Law = typeof(Assessment).Assembly;

    private static readonly Type[] Types = Law.GetTypes();

    private const BindingFlags All =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    [Fact]
    public void It_refers_to_nothing_but_NodaTime_and_the_framework()
    {
        var outside = Law.GetReferencedAssemblies().Select(a => a.Name!)
            .Where(name => name != "NodaTime" && !name.StartsWith("System.", StringComparison.Ordinal)
                && name is not ("System" or "netstandard" or "mscorlib"));
        Assert.Empty(outside);
    }

    [Fact]
    public void It_refers_to_no_part_of_the_framework_that_does_input_or_output()
    {
        string[] none = ["System.Console", "System.Net", "System.IO.FileSystem", "System.Data", "System.Diagnostics.Process"];
        Assert.DoesNotContain(Law.GetReferencedAssemblies(), a => none.Any(n => a.Name!.StartsWith(n, StringComparison.Ordinal)));
    }

    [Fact]
    public void No_field_property_or_method_knows_a_floating_point_number()
    {
        static bool Floats(Type type) =>
            type == typeof(double) || type == typeof(float) || type == typeof(Half)
            || (type.HasElementType && Floats(type.GetElementType()!))
            || (type.IsGenericType && type.GetGenericArguments().Any(Floats));
        var found = Types.SelectMany(t => t.GetFields(All).Where(f => Floats(f.FieldType)).Select(f => $"{t.Name}.{f.Name}")
            .Concat(t.GetMethods(All).Where(m => Floats(m.ReturnType) || m.GetParameters().Any(p => Floats(p.ParameterType)))
                .Select(m => $"{t.Name}.{m.Name}")));
        Assert.Empty(found);
    }

    [Fact]
    public void No_type_of_this_library_asks_a_clock()
    {
        Type[] clocks =
            [typeof(DateTime), typeof(DateTimeOffset), typeof(TimeZoneInfo), typeof(IClock), typeof(Instant), typeof(ZonedDateTime)];
        var found = Types.SelectMany(t => t.GetMethods(All)
            .SelectMany(m => m.GetParameters().Select(p => p.ParameterType).Append(m.ReturnType))
            .Concat(t.GetFields(All).Select(f => f.FieldType)))
            .Where(clocks.Contains);
        Assert.Empty(found);
    }

    [Fact]
    public void Every_public_type_is_closed_to_heirs_from_outside()
    {
        static bool IsClosed(Type type) => type.IsSealed || type.IsValueType || type.IsEnum
            || (type.IsAbstract && type.GetConstructors(All).Where(c => !c.IsStatic && !IsCopy(type, c))
                .All(c => c.IsPrivate || c.IsFamilyAndAssembly || c.IsAssembly));
        static bool IsCopy(Type type, ConstructorInfo made) => made.GetParameters() is [var only] && only.ParameterType == type;
        // A door says in its own words what stands in a sentence, and so has an heir of this one.
        Assert.Equal([typeof(Door)], Types.Where(t => t.IsVisible && !IsClosed(t)));
    }

    [Fact]
    public void No_public_instance_field_and_no_settable_public_property_lets_a_fact_or_finding_change()
    {
        static bool IsInit(PropertyInfo property) => property.SetMethod!.ReturnParameter.GetRequiredCustomModifiers()
            .Any(m => m.FullName == "System.Runtime.CompilerServices.IsExternalInit");
        var open = Types.Where(t => t.IsVisible)
            .SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly).Where(f => !t.IsEnum)
                .Select(f => $"{t.Name}.{f.Name}")
            .Concat(t.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
                .Where(p => p.SetMethod is { IsPublic: true } && !IsInit(p) && !t.IsValueType).Select(p => $"{t.Name}.{p.Name}")));
        Assert.Empty(open);
    }

    [Fact]
    public void Every_namespace_is_a_folder_of_the_law()
    {
        Assert.DoesNotContain(Types, t => t.IsVisible && t.Namespace?.StartsWith("Stringline.Law", StringComparison.Ordinal) != true);
    }

    [Fact]
    public void Every_rule_names_its_section()
    {
        Assert.NotEmpty(RuleMarks.All);
        Assert.All(RuleMarks.All, mark =>
            Assert.True(RuleMarks.LooksLikeASection(mark.Rule.Section), $"{mark.Where}: «{mark.Rule.Section}»"));
    }

    [Fact]
    public void A_class_of_helpers_by_another_name_is_not_made()
    {
        string[] never = ["Manager", "Helper", "Util", "Utils", "Utility", "Service"];
        Assert.Empty(Types.Where(t => never.Any(n => t.Name.EndsWith(n, StringComparison.Ordinal))).Select(t => t.FullName));
    }
}
