using System.Reflection;
using System.Text.RegularExpressions;

namespace Stringline.House.Tests;

/// <summary>
/// Money is decimal, to the cent. Floating point is for the geometry of a page and of a drawing, and never in the same method.
/// </summary>
public sealed partial class NoFloatNearMoneyTests
{
    private const BindingFlags Own =
        BindingFlags.DeclaredOnly | BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic;

    // Lengths on a page: points there, inches in the law.
    private static bool IsGeometry(Type type) => type.FullName!.StartsWith("Stringline.Papers.Layout.", StringComparison.Ordinal)
        || type.FullName.StartsWith("Stringline.Papers.Preflight.", StringComparison.Ordinal);

    private static IReadOnlyList<Type> Types { get; } =
        [.. Projects.References.Keys.SelectMany(project => Assembly.LoadFrom(Projects.Assembly(project)).GetTypes())
            .Where(t => !IsGeometry(t))];

    [Fact]
    public void Nothing_named_for_money_is_floating_point()
    {
        var named = Types.SelectMany(type => type.GetFields(Own).Select(field => (type, field.Name, field.FieldType))
            .Concat(type.GetProperties(Own).Select(property => (type, property.Name, property.PropertyType)))
            .Concat(Methods(type).SelectMany(method => method.GetParameters().Select(p => (type, p.Name ?? "", p.ParameterType)))));
        Assert.Empty(named.Where(member => IsFloat(member.Item3) && Money().IsMatch(member.Item2))
            .Select(member => $"{member.type.FullName}: {member.Item2}"));
    }

    [Fact]
    public void No_method_holds_a_sum_and_floating_point()
    {
        var mixed = Types.SelectMany(type => Methods(type).Where(method => Held(method).Any(IsFloat) && Held(method).Any(IsDecimal))
            .Select(method => $"{type.FullName}.{method.Name}")).ToList();
        Assert.Empty(mixed);
    }

    private static IEnumerable<MethodBase> Methods(Type type) => type.GetMethods(Own).Concat<MethodBase>(type.GetConstructors(Own));

    private static IEnumerable<Type> Held(MethodBase method) => method.GetParameters().Select(p => p.ParameterType)
        .Concat(method is MethodInfo { ReturnType: var type } ? [type] : [])
        .Concat(method.GetMethodBody()?.LocalVariables.Select(local => local.LocalType) ?? []);

    private static bool IsFloat(Type type) => Plain(type) is var plain && (plain == typeof(double) || plain == typeof(float));

    private static bool IsDecimal(Type type) => Plain(type) == typeof(decimal);

    private static Type Plain(Type type)
    {
        type = type.IsByRef ? type.GetElementType()! : type;
        return Nullable.GetUnderlyingType(type) ?? type;
    }

    [GeneratedRegex("amount|price|money|dollar|fee(?!d)|cents|owed|paid|balance|retention|retained|penalty|interest",
        RegexOptions.IgnoreCase)]
    private static partial Regex Money();
}
