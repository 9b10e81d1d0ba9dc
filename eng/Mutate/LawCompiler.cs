using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Stringline.Mutate;

/// <summary>Compiles the law library in memory, as it is or with one file changed.</summary>
internal sealed class LawCompiler
{
    private readonly CSharpCompilation compilation;
    private readonly Dictionary<string, IReadOnlyList<Mutant>> mutants = [];

    /// <summary>Reads the sources.</summary>
    /// <param name="root">The repository.</param>
    public LawCompiler(string root)
    {
        var nodaTime = Path.Combine(root, "tests", "Stringline.Law.Tests", "bin", "Release", "net10.0", "NodaTime.dll");
        var folder = Path.Combine(root, "src", "Stringline.Law");
        var options = new CSharpParseOptions(LanguageVersion.CSharp14);
        var generated = Path.Combine(folder, "obj", "Release", "net10.0");
        var files = Directory.GetFiles(folder, "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
                && !f.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Concat(Directory.GetFiles(generated, "Stringline.Law.*.cs"));
        var trees = files.Order(StringComparer.Ordinal).Select(f => CSharpSyntaxTree.ParseText(File.ReadAllText(f), options, f)).ToArray();
        var references = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(f => Path.GetFileName(f).StartsWith("System.", StringComparison.Ordinal) || Path.GetFileName(f) is "netstandard.dll"
                or "mscorlib.dll")
            .Append(nodaTime).Select(f => MetadataReference.CreateFromFile(f));
        compilation = CSharpCompilation.Create("Stringline.Law", trees, references, new CSharpCompilationOptions(
            OutputKind.DynamicallyLinkedLibrary, optimizationLevel: OptimizationLevel.Release, checkOverflow: true,
            nullableContextOptions: NullableContextOptions.Enable, deterministic: true, concurrentBuild: false));
    }

    /// <summary>Every mutant of the files directly or deeper in a folder of the law, always in the same order.</summary>
    public IReadOnlyList<Mutant> MutantsIn(string folder)
    {
        if (!mutants.TryGetValue(folder, out var found))
        {
            var part = $"{Path.DirectorySeparatorChar}Stringline.Law{Path.DirectorySeparatorChar}{folder}{Path.DirectorySeparatorChar}";
            mutants[folder] = found = [.. compilation.SyntaxTrees.Where(t => t.FilePath.Contains(part, StringComparison.Ordinal))
                .SelectMany(t => MutantFinder.Of(compilation.GetSemanticModel(t)))];
        }

        return found;
    }

    /// <summary>The assembly as it is, or with one change.</summary>
    /// <param name="mutant">The change; null for none.</param>
    /// <param name="refused">What the compiler says against it; null where it compiles.</param>
    public byte[]? Compiled(Mutant? mutant, out string? refused)
    {
        var changed = mutant is null ? compilation : compilation.ReplaceSyntaxTree(mutant.Tree, mutant.Changed());
        using var assembly = new MemoryStream();
        var result = changed.Emit(assembly);
        refused = result.Success
            ? null : result.Diagnostics.First(d => d.Severity == DiagnosticSeverity.Error).ToString().ReplaceLineEndings(" ");
        return result.Success ? assembly.ToArray() : null;
    }

    /// <summary>All mutants of a folder that can be switched, in one assembly.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="switched">Numbers of the mutants that are in it, each with the lowest number in its member, by which the member tells
    /// that it is asked.</param>
    /// <param name="refused">Numbers of those that the compiler refuses, with what it says.</param>
    public byte[] Schemata(string folder, out Dictionary<int, int> switched, out Dictionary<int, string> refused)
    {
        var all = MutantsIn(folder);
        switched = Enumerable.Range(0, all.Count).Where(i => Mutate.Schemata.Home(all[i]) is not null).ToDictionary(i => i);
        refused = [];
        while (true)
        {
            var changed =
                compilation.AddSyntaxTrees(
                    CSharpSyntaxTree.ParseText(Mutate.Schemata.SwitchSource, new CSharpParseOptions(LanguageVersion.CSharp14)));
            foreach (var file in switched.Keys.Order().Select(i => (Number: i, Mutant: all[i])).GroupBy(m => m.Mutant.Tree))
                changed = changed.ReplaceSyntaxTree(file.Key, Mutate.Schemata.With(file.Key, [.. file]));
            using var assembly = new MemoryStream();
            var result = changed.Emit(assembly);
            if (result.Success)
            {
                switched = switched.Keys.GroupBy(i => Mutate.Schemata.Home(all[i])!)
                    .SelectMany(g => g.Select(i => (Number: i, Member: g.Min()))).ToDictionary(m => m.Number, m => m.Member);
                return assembly.ToArray();
            }

            foreach (var error in result.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error))
            {
                var number = Mutate.Schemata.NumberAt(error.Location) ?? throw new InvalidDataException($"{folder}: {error}");
                refused.TryAdd(number, error.ToString().ReplaceLineEndings(" "));
                switched.Remove(number);
            }
        }
    }
}
