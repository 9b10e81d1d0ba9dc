using System.Diagnostics;

namespace Stringline.Mutate;

/// <summary>Runs tests against one copy of the law library, in a folder of its own, until one fails.</summary>
internal sealed class TestRun
{
    private const string LawTests = "Stringline.Law.Tests";
    private const string PublishedTests = "Stringline.Published";

    private readonly string lawTests;
    private readonly string published;

    /// <summary>Copies the built tests.</summary>
    /// <param name="root">The repository.</param>
    /// <param name="worker">The number of the folder.</param>
    public TestRun(string root, int worker)
    {
        // Inside the repository, since some tests look for its files.
        var folder = Path.Combine(root, "out", "mutate", $"worker-{worker}");
        lawTests = Copy(Path.Combine(root, "tests", LawTests, "bin", "Release", "net10.0"), Path.Combine(folder, "law"));
        published = Copy(Path.Combine(root, "tests", "Published", "bin", "Release", "net10.0"), Path.Combine(folder, "published"));
    }

    /// <summary>Where the law library is put for the tests.</summary>
    public string Assembly => Path.Combine(lawTests, "Stringline.Law.dll");

    /// <summary>Seconds after which a run counts as never ending.</summary>
    public int Patience { get; init; } = 60;

    /// <summary>The examples of the folder itself first, then the published decisions, then every other example, then the properties with fewer tries.</summary>
    public Outcome Of(string folder)
    {
        File.Copy(Assembly, Path.Combine(published, "Stringline.Law.dll"), overwrite: true);
        var own = $"{LawTests}.{folder}*";
        string[] properties = ["-class-", "*Properties"];
        var outcome = Run(lawTests, LawTests, ["-namespace", own, .. properties]);
        if (outcome == Outcome.Survived)
            outcome = Run(published, PublishedTests);
        if (outcome == Outcome.Survived)
            outcome = Run(lawTests, LawTests, ["-namespace-", own, .. properties]);
        if (outcome == Outcome.Survived)
            outcome = Run(lawTests, LawTests, "-class", "*Properties");
        return outcome;
    }

    private Outcome Run(string folder, string name, params string[] filter)
    {
        var start = new ProcessStartInfo(Path.Combine(folder, name), [.. filter, "-stopOnFail", "-noLogo", "-noColor", "-maxThreads", "1"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder,
        };
        // A change that never stops gathering must not take the machine's memory.
        start.Environment["DOTNET_GCHeapHardLimit"] = "0x40000000";
        start.Environment["CsCheck_Iter"] = "100";
        start.Environment["DOTNET_TieredPGO"] = "0";
        start.Environment["DOTNET_DbgEnableMiniDump"] = "0";
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{start.FileName} does not start.");
        var text = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(TimeSpan.FromSeconds(Patience)))
        {
            process.Kill(entireProcessTree: true);
            process.WaitForExit();
            return Outcome.TimedOut;
        }

        if (process.ExitCode != 0)
            return Outcome.Killed;
        // A run without a test would let every mutant live unseen.
        return text.Result.Contains(" Total: 0", StringComparison.Ordinal) || !text.Result.Contains(" Total: ", StringComparison.Ordinal)
            ? throw new InvalidOperationException($"{name} ran no test with {string.Join(' ', filter)}: {text.Result} {errors.Result}")
            : Outcome.Survived;
    }

    private static string Copy(string from, string to)
    {
        if (!Directory.Exists(from))
            throw new InvalidOperationException($"{from} is missing: build the tests first (dotnet build -c Release).");
        if (Directory.Exists(to))
            Directory.Delete(to, recursive: true);
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        return to;
    }
}
