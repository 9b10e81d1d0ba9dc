using System.Collections.Concurrent;
using Stringline.Mutate;

// eng/mutate [--workers N] [--file NAME] FOLDER...
string[] known = ["Time", "Completion", "ClaimOfLien", "LienableAmount"];
var workers = 2;
string? file = null;
var list = false;
var folders = new List<string>();
for (var i = 0; i < args.Length; i++)
{
    switch (args[i])
    {
        case "--workers" when i + 1 < args.Length && int.TryParse(args[i + 1], out workers) && workers is >= 1 and <= 64:
            i++;
            break;
        case "--file" when i + 1 < args.Length:
            file = args[++i];
            break;
        case "--list":
            list = true;
            break;
        case var name when !name.StartsWith('-'):
            folders.Add(name);
            break;
        default:
            Console.Error.WriteLine($"mutate: {args[i]} is not understood. Use: eng/mutate [--workers 1 to 64] [--file NAME.cs[:LINE,...]] [--list] FOLDER...");
            return 2;
    }
}

var root = AppContext.BaseDirectory;
while (!File.Exists(Path.Combine(root, "Stringline.slnx")))
    root = Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(root)) ?? throw new InvalidOperationException("This does not run inside the repository.");
if (folders.Count == 0)
    folders.AddRange(known);
foreach (var folder in folders.Where(f => !Directory.Exists(Path.Combine(root, "src", "Stringline.Law", f))))
{
    Console.Error.WriteLine($"mutate: src/Stringline.Law has no folder {folder}.");
    return 2;
}

var law = new LawCompiler(root, Path.Combine(root, "tests", "Stringline.Law.Tests", "bin", "Release", "net10.0", "NodaTime.dll"));
if (list)
{
    foreach (var folder in folders)
    {
        foreach (var group in law.MutantsIn(folder).GroupBy(m => m.Kind))
            Console.WriteLine($"{folder} {group.Key} {group.Count()}");
    }

    return 0;
}

var runs = Enumerable.Range(0, workers).Select(i => new TestRun(root, i)).ToArray();
foreach (var folder in folders)
{
    // Without a change nothing may fail, else every figure below would be false.
    if (law.Write(null, runs[0].Assembly) is { } fault || (fault = runs[0].Of(folder) == Outcome.Survived ? null : "a test fails without any change") is not null)
    {
        Console.Error.WriteLine($"mutate: {folder}: {fault}");
        return 1;
    }
}

var table = new Table();
foreach (var folder in folders)
{
    var mutants = law.MutantsIn(folder).Where(m => file is null || Wanted(file, m)).ToArray();
    var left = new ConcurrentQueue<Mutant>(mutants);
    var done = 0;
    Parallel.ForEach(runs, new ParallelOptions { MaxDegreeOfParallelism = workers }, run =>
    {
        while (left.TryDequeue(out var mutant))
        {
            var outcome = law.Write(mutant, run.Assembly) is null ? run.Of(folder) : Outcome.DoesNotCompile;
            lock (table)
            {
                table.Add(folder, mutant, outcome);
                done++;
                if (outcome == Outcome.Survived)
                    Console.WriteLine($"survived {Path.GetRelativePath(root, mutant.Tree.FilePath)}:{mutant.Line} {mutant.Kind}: {mutant.Was} -> {mutant.Is}");
                if (done % 25 == 0)
                    Console.WriteLine($"{folder}: {done} of {mutants.Length}");
            }
        }
    });
    Console.WriteLine(table.Line(folder));
}

Console.WriteLine();
table.Write(Console.Out, folders);
return 0;

static bool Wanted(string file, Mutant mutant)
{
    var parts = file.Split(':');
    return Path.GetFileName(mutant.Tree.FilePath) == parts[0]
        && (parts.Length < 2 || parts[1].Split(',').Contains(mutant.Line.ToString(System.Globalization.CultureInfo.InvariantCulture)));
}
