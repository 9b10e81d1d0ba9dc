using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Stringline.Mutate;

/// <summary>Compiles the law library in memory, as it is or with one file changed.</summary>
internal sealed class LawCompiler
{
    private readonly CSharpCompilation compilation;

    /// <summary>Reads the sources.</summary>
    /// <param name="root">The repository.</param>
    /// <param name="nodaTime">The assembly that the law uses.</param>
    public LawCompiler(string root, string nodaTime)
    {
        var folder = Path.Combine(root, "src", "Stringline.Law");
        var options = new CSharpParseOptions(LanguageVersion.CSharp14);
        var generated = Path.Combine(folder, "obj", "Release", "net10.0");
        var files = Directory.GetFiles(folder, "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal) && !f.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Concat(Directory.GetFiles(generated, "Stringline.Law.*.cs"));
        var trees = files.Order(StringComparer.Ordinal).Select(f => CSharpSyntaxTree.ParseText(File.ReadAllText(f), options, f)).ToArray();
        var references = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(f => Path.GetFileName(f).StartsWith("System.", StringComparison.Ordinal) || Path.GetFileName(f) is "netstandard.dll" or "mscorlib.dll")
            .Append(nodaTime).Select(f => MetadataReference.CreateFromFile(f));
        compilation = CSharpCompilation.Create("Stringline.Law", trees, references, new CSharpCompilationOptions(
            OutputKind.DynamicallyLinkedLibrary, optimizationLevel: OptimizationLevel.Release, checkOverflow: true,
            nullableContextOptions: NullableContextOptions.Enable, deterministic: true, concurrentBuild: false));
    }

    /// <summary>Every mutant of the files directly or deeper in a folder of the law.</summary>
    public IEnumerable<Mutant> MutantsIn(string folder)
    {
        var part = $"{Path.DirectorySeparatorChar}Stringline.Law{Path.DirectorySeparatorChar}{folder}{Path.DirectorySeparatorChar}";
        return compilation.SyntaxTrees.Where(t => t.FilePath.Contains(part, StringComparison.Ordinal))
            .SelectMany(t => MutantFinder.Of(compilation.GetSemanticModel(t)));
    }

    /// <summary>Writes the assembly.</summary>
    /// <param name="mutant">The change; null for none.</param>
    /// <param name="path">Where to.</param>
    /// <returns>Null, or what the compiler says against it; then nothing is written.</returns>
    public string? Write(Mutant? mutant, string path)
    {
        var changed = mutant is null ? compilation : compilation.ReplaceSyntaxTree(mutant.Tree, mutant.Changed());
        using var assembly = new MemoryStream();
        var result = changed.Emit(assembly);
        if (!result.Success)
            return result.Diagnostics.First(d => d.Severity == DiagnosticSeverity.Error).ToString();
        File.WriteAllBytes(path, assembly.ToArray());
        return null;
    }
}
