using System.Reflection;
using System.Runtime.Loader;

namespace Stringline.Mutate;

/// <summary>
/// Runs the built tests in this process against one form of the law library after another, each in a load context of its own, so
/// that nothing static outlives a mutant. A test is a public method marked Fact or Theory; its rows are InlineData and MemberData.
/// </summary>
internal sealed class TestRun
{
    private const BindingFlags Members = BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance;

    // Where a test last failed, the next mutant of the same file often fails too.
    private const int RememberedKillers = 12;

    private static readonly string[] TestAssemblies = ["Stringline.Law.Tests", "Stringline.Published"];

    private readonly Dictionary<string, byte[]> tests = [];
    private readonly List<TestName> names;
    private readonly LinkedList<TestName> killers = [];
    private Loaded? kept;
    private string folder = "";
    private readonly Dictionary<TestName, HashSet<int>> asked = [];

    /// <summary>Reads the built tests.</summary>
    /// <param name="root">The repository.</param>
    public TestRun(string root)
    {
        var folders =
            TestAssemblies.Select(name =>
                Path.Combine(root, "tests", name.Replace("Stringline.Published", "Published", StringComparison.Ordinal), "bin", "Release",
                    "net10.0")).ToArray();
        foreach (var (name, folder) in TestAssemblies.Append("Stringline.Testing").Zip([.. folders, folders[0]]))
            tests[name] = File.ReadAllBytes(Path.Combine(folder, name + ".dll"));
        // Some tests read files that lie beside them.
        AppContext.SetData("APP_CONTEXT_BASE_DIRECTORY", folders[0] + Path.DirectorySeparatorChar);
        AssemblyLoadContext.Default.Resolving += (context, name) => folders.Select(f => Path.Combine(f, name.Name + ".dll"))
            .FirstOrDefault(File.Exists) is { } path
            ? context.LoadFromAssemblyPath(path) : null;
        var law = File.ReadAllBytes(Path.Combine(folders[0], "Stringline.Law.dll"));
        var loaded = new Loaded(tests, law);
        names = [.. TestAssemblies.SelectMany(a =>
            loaded.Find(a).GetTypes().SelectMany(t => t.GetMethods(Members | BindingFlags.DeclaredOnly)
            .Where(m => m.CustomAttributes.Any(c => c.AttributeType.Name is "FactAttribute" or "TheoryAttribute"
                && !c.NamedArguments.Any(a => a is { MemberName: "Explicit", TypedValue.Value: true }))).Select(m => new TestName(a,
                t.FullName!, m.Name))))];
        loaded.Unload();
    }

    /// <summary>How many test methods there are.</summary>
    public int Count => names.Count;

    /// <summary>Takes an assembly with switched mutants for the questions to come.</summary>
    /// <param name="switched">The assembly.</param>
    /// <param name="changed">The folder whose mutants it holds.</param>
    public void Use(byte[] switched, string changed)
    {
        folder = changed;
        kept?.Unload();
        kept = new Loaded(tests, switched);
        killers.Clear();
        asked.Clear();
        if (changed == "Counting")
            return;
        // Which member each test asks. In the calendar what one test asked is kept for the others, so there it would not be seen.
        var hits = kept.Find("Stringline.Law").GetType(Schemata.SwitchType, throwOnError: true)!.GetField("Hits")!;
        foreach (var test in names.Where(n => !IsProperty(n)))
        {
            var members = new HashSet<int>();
            hits.SetValue(null, members);
            if (Fault(kept, test) is { } fault)
                throw new InvalidDataException($"Without any change {test.Type}.{test.Method} fails: {fault}");
            asked[test] = members;
        }

        hits.SetValue(null, null);
    }

    /// <summary>
    /// Runs the tests until one fails: the folder's own examples first, then the published decisions, then every other example,
    /// then the properties of the folder and of whole assessments.
    /// </summary>
    /// <param name="mutant">The mutant to switch to; -1 for none.</param>
    /// <returns>The name of the test that failed, and how; null where all passed.</returns>
    /// <param name="member">The member it changes, to leave out the examples that never ask it; null to run all.</param>
    public string? FirstFailure(int mutant, int? member) => FirstFailure(kept!, mutant, member);

    /// <summary>The same in a load context of its own, so that whatever is worked out once is worked out with the mutant.</summary>
    /// <param name="law">The assembly.</param>
    /// <param name="mutant">The mutant to switch to; null where the assembly has no switch.</param>
    public string? FirstFailureAnew(byte[] law, int? mutant)
    {
        var loaded = new Loaded(tests, law);
        try
        {
            return FirstFailure(loaded, mutant, null);
        }
        finally
        {
            loaded.Unload();
        }
    }

    private string? FirstFailure(Loaded loaded, int? mutant, int? member)
    {
        var own = $"Stringline.Law.Tests.{folder}";
        var control = mutant is null ? null : loaded.Find("Stringline.Law").GetType(Schemata.SwitchType, throwOnError: true)!;
        control?.GetField("Active")!.SetValue(null, mutant);
        var ticks = control?.GetField("Ticks")!;
        foreach (var test in killers.ToArray().Concat(Order(own)))
        {
            if (member is { } needed && asked.TryGetValue(test, out var members) && !members.Contains(needed))
                continue;
            ticks?.SetValue(null, 0L);
            if (Fault(loaded, test) is not { } fault)
                continue;
            killers.Remove(test);
            killers.AddFirst(test);
            if (killers.Count > RememberedKillers)
                killers.RemoveLast();
            return $"{test.Type}.{test.Method}: {fault}";
        }

        return null;
    }

    // Properties of another folder take long and seldom see more than the examples; leaving them out can only make the figures worse.
    private IEnumerable<TestName> Order(string own) => names
        .Select(n => (Name: n, Place: IsProperty(n)
            ? (IsOf(own, n) || IsOf("Stringline.Law.Tests", n) ? 3 : -1) : IsOf(own, n) ? 0 : n.Assembly == TestAssemblies[1] ? 1 : 2))
        .Where(n => n.Place >= 0).OrderBy(n => n.Place).Select(n => n.Name);

    private static bool IsProperty(TestName test) => test.Type.EndsWith("Properties", StringComparison.Ordinal);

    private static bool IsOf(string space, TestName test) =>
        test.Type.LastIndexOf('.') == space.Length && test.Type.StartsWith(space, StringComparison.Ordinal)
        || (space.Count(c => c == '.') > 2 && test.Type.StartsWith(space + ".", StringComparison.Ordinal));

    // How xunit marks the exception by which a test leaves itself out.
    private const string DynamicSkip = "$XunitDynamicSkip$";

    private static string? Fault(Loaded loaded, TestName test)
    {
        try
        {
            var type = loaded.Find(test.Assembly).GetType(test.Type, throwOnError: true)!;
            var method = type.GetMethod(test.Method, Members)!;
            foreach (var row in Rows(type, method))
            {
                var instance = method.IsStatic ? null : Activator.CreateInstance(type);
                (method.Invoke(instance, row) as Task)?.GetAwaiter().GetResult();
                (instance as IDisposable)?.Dispose();
            }

            return null;
        }
        catch (Exception failed) when (failed is not InvalidDataException)
        {
            // Whatever a test throws is its failure; that nothing fails without a change is asked first.
            var inner = failed.GetBaseException();
            // A test that leaves itself out, such as one that needs more draws than a mutation run makes, says nothing.
            if (inner.Message.StartsWith(DynamicSkip, StringComparison.Ordinal))
                return null;
            return $"{inner.GetType().Name} {inner.Message.Split('\n')[0]}";
        }
    }

    private static IEnumerable<object?[]> Rows(Type type, MethodInfo method)
    {
        if (method.CustomAttributes.All(c => c.AttributeType.Name != "TheoryAttribute"))
        {
            yield return [];
            yield break;
        }

        foreach (var data in method.CustomAttributes)
        {
            switch (data.AttributeType.Name)
            {
                case "InlineDataAttribute":
                    // One null alone is handed over as no array at all.
                    var given = data.ConstructorArguments[0].Value as IReadOnlyCollection<CustomAttributeTypedArgument>;
                    yield return Padded(method, given is null ? [null] : [.. given.Select(Value)]);
                    break;
                case "MemberDataAttribute":
                    var member = type.GetProperty((string)data.ConstructorArguments[0].Value!, Members)
                        ?? throw new InvalidDataException($"{type}.{method.Name}: only properties give data here.");
                    foreach (var row in (System.Collections.IEnumerable)member.GetValue(null)!)
                        yield return row as object?[] ?? (object?[])row.GetType()
                            .GetInterface("ITheoryDataRow")!.GetMethod("GetData")!.Invoke(row, null)!;
                    break;
                case var other when other.EndsWith("DataAttribute", StringComparison.Ordinal):
                    throw new InvalidDataException($"{type}.{method.Name}: {other} is not known here.");
            }
        }
    }

    private static object? Value(CustomAttributeTypedArgument argument) => argument switch
    {
        { Value: CustomAttributeTypedArgument inner } => Value(inner),
        { Value: IReadOnlyCollection<CustomAttributeTypedArgument> several } => Several(several, argument.ArgumentType.GetElementType()!),
        { Value: { } value, ArgumentType.IsEnum: true } => Enum.ToObject(argument.ArgumentType, value),
        _ => argument.Value,
    };

    private static Array Several(IReadOnlyCollection<CustomAttributeTypedArgument> values, Type of)
    {
        var array = Array.CreateInstance(of, values.Count);
        var i = 0;
        foreach (var value in values)
            array.SetValue(Value(value), i++);
        return array;
    }

    private static object?[] Padded(MethodInfo method, object?[] row)
    {
        // A parameter marked params takes whatever is left of the row.
        var last = method.GetParameters()[^1];
        if (last.IsDefined(typeof(ParamArrayAttribute))
            && (row.Length != method.GetParameters().Length || row[^1]?.GetType() != last.ParameterType))
        {
            var rest = row.Skip(last.Position).ToArray();
            var packed = Array.CreateInstance(last.ParameterType.GetElementType()!, rest.Length);
            rest.CopyTo(packed, 0);
            row = [.. row.Take(last.Position), packed];
        }

        return
        [
            .. method.GetParameters().Select((p, i) => i >= row.Length ? p.DefaultValue
                // An attribute holds no decimal; xunit makes one of the number that stands there.
                : row[i] is { } number and (int or double) && (p.ParameterType == typeof(decimal) || p.ParameterType == typeof(decimal?))
                ? Convert.ToDecimal(number, System.Globalization.CultureInfo.InvariantCulture)
                : row[i]),
        ];
    }

    private sealed record TestName(string Assembly, string Type, string Method);

    /// <summary>One form of the law library with the tests that use it.</summary>
    private sealed class Loaded : AssemblyLoadContext
    {
        private readonly Dictionary<string, byte[]> tests;
        private readonly Dictionary<string, Assembly> found = [];

        public Loaded(Dictionary<string, byte[]> tests, byte[] law)
            : base(isCollectible: true)
        {
            this.tests = tests;
            found["Stringline.Law"] = LoadFromStream(new MemoryStream(law));
        }

        public Assembly Find(string name)
        {
            if (!found.TryGetValue(name, out var assembly))
                found[name] = assembly = LoadFromStream(new MemoryStream(tests[name]));
            return assembly;
        }

        protected override Assembly? Load(AssemblyName assemblyName) =>
            found.ContainsKey(assemblyName.Name!) || tests.ContainsKey(assemblyName.Name!) ? Find(assemblyName.Name!) : null;
    }
}
