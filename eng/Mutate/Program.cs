using System.Collections.Concurrent;
using System.Diagnostics;
using Stringline.Mutate;

// eng/mutate.sh [--workers N] [--file NAME] FOLDER...
const int SecondsOfPatience = 120;
string[] known = ["Counting", "Completion", "ClaimOfLien", "LienableAmount"];
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
        case "--worker":
            return Worker.Serve(Root());
        case var name when !name.StartsWith('-'):
            folders.Add(name);
            break;
        default:
            Console.Error.WriteLine($"mutate: {args[i]} is not understood. Use: eng/mutate.sh [--workers 1 to 64] [--file "
                + $"NAME.cs[:LINE,...]] [--list] FOLDER...");
            return 2;
    }
}

var root = Root();
if (folders.Count == 0)
    folders.AddRange(known);
foreach (var folder in folders.Where(f => !Directory.Exists(Path.Combine(root, "src", "Stringline.Law", f))))
{
    Console.Error.WriteLine($"mutate: src/Stringline.Law has no folder {folder}.");
    return 2;
}

var law = new LawCompiler(root);
if (list)
{
    foreach (var folder in folders)
    {
        foreach (var group in law.MutantsIn(folder).GroupBy(m => m.Kind))
            Console.WriteLine($"{folder} {group.Key} {group.Count()}");
    }

    return 0;
}

var clock = Stopwatch.StartNew();
var tries = Enumerable.Range(0, workers).Select(_ => new Worker { Patience = SecondsOfPatience }).ToArray();
try
{
    var table = new Table();
    foreach (var folder in folders)
    {
        // Without a change nothing may fail, else every figure below would be false.
        var (unchanged, how) = tries[0].Try(folder, -1);
        if (unchanged != Outcome.Survived)
            throw new InvalidOperationException($"{folder}: without any change {unchanged}: {how}");
        Console.WriteLine($"{folder}: {law.MutantsIn(folder).Count} mutants, {how}");
        var left = new ConcurrentQueue<int>(Enumerable.Range(0, law.MutantsIn(folder).Count)
            .Where(i => file is null || IsIn(file, law.MutantsIn(folder)[i])));
        var all = left.Count;
        var done = 0;
        Parallel.ForEach(tries, new ParallelOptions { MaxDegreeOfParallelism = workers }, worker =>
        {
            while (left.TryDequeue(out var number))
            {
                var mutant = law.MutantsIn(folder)[number];
                var (outcome, detail) = worker.Try(folder, number);
                lock (table)
                {
                    table.Add(folder, mutant, outcome);
                    if (outcome == Outcome.Survived || file is not null)
                        Console.WriteLine(
                            $"{outcome} {Path.GetFileName(mutant.Tree.FilePath)}:{mutant.Line} {mutant.Kind}: {mutant.Was} -> {mutant.Is}{(
                                outcome == Outcome.Survived ? "" : $" | {detail}")}");
                    if (++done % 50 == 0)
                        Console.WriteLine($"{folder}: {done} of {all} after {clock.Elapsed:mm\\:ss}");
                }
            }
        });
        // What a mutant left behind would make the figures false: without a change all must pass again.
        foreach (var worker in tries)
        {
            var (again, fault) = worker.Try(folder, -1);
            if (again != Outcome.Survived)
                throw new InvalidOperationException($"{folder}: after the run, without any change {again}: {fault}");
        }

        Console.WriteLine(table.Line(folder));
    }

    Console.WriteLine();
    table.Write(Console.Out, folders);
    return 0;
}
finally
{
    foreach (var worker in tries)
        worker.Dispose();
}

static string Root()
{
    var folder = AppContext.BaseDirectory;
    while (!File.Exists(Path.Combine(folder, "Stringline.slnx")))
        folder = Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(folder))
            ?? throw new InvalidOperationException("This does not run inside the repository.");
    return folder;
}

static bool IsIn(string file, Mutant mutant)
{
    var parts = file.Split(':');
    return Path.GetFileName(mutant.Tree.FilePath) == parts[0]
        && (parts.Length < 2 || parts[1].Split(',').Contains(mutant.Line.ToString(System.Globalization.CultureInfo.InvariantCulture)));
}
