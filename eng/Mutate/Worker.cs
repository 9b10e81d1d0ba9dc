using System.Diagnostics;

namespace Stringline.Mutate;

/// <summary>A process of its own that tries one mutant after another, so that one that never ends can be stopped.</summary>
internal sealed class Worker : IDisposable
{
    private const int SecondsToStart = 900;

    private Process? process;
    private string? ready;

    /// <summary>Seconds after which a mutant counts as never ending.</summary>
    public required int Patience { get; init; }

    /// <summary>What becomes of a mutant; -1 stands for the law as it is.</summary>
    public (Outcome Outcome, string Detail) Try(string folder, int mutant)
    {
        if (process is null or { HasExited: true })
        {
            Dispose();
            Start();
        }

        // The first question about a folder makes its assembly and runs every test.
        var seconds = folder == ready ? Patience : SecondsToStart;
        ready = folder;
        process!.StandardInput.WriteLine($"{folder} {mutant}");
        var answer = process.StandardOutput.ReadLineAsync();
        if (!answer.Wait(TimeSpan.FromSeconds(seconds)))
        {
            Dispose();
            return (Outcome.TimedOut, "");
        }

        // A mutant that brings the whole process down is noticed by every test runner.
        if (answer.Result is not { } line)
            return (Outcome.Killed, "the process ended");
        var parts = line.Split(' ', 2);
        return (Enum.Parse<Outcome>(parts[0]), parts[1]);
    }

    private void Start()
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!, ["--worker"]) { RedirectStandardInput =
            true, RedirectStandardOutput = true };
        // A mutant that never stops gathering must not take the machine's memory; properties are tried less often than in ./test.
        start.Environment["DOTNET_GCHeapHardLimit"] = "0x60000000";
        start.Environment["DOTNET_TieredPGO"] = "0";
        start.Environment["CsCheck_Iter"] = "50";
        start.Environment["CsCheck_Threads"] = "1";
        process = Process.Start(start) ?? throw new InvalidOperationException("A worker does not start.");
        var answer = process.StandardOutput.ReadLineAsync();
        if (!answer.Wait(TimeSpan.FromSeconds(SecondsToStart)) || answer.Result != "ready")
            throw new InvalidOperationException("A worker does not get ready.");
    }

    /// <summary>The worker's side: reads folder and number, answers with outcome and detail.</summary>
    public static int Serve(string root)
    {
        var answers = Console.Out;
        // What a test writes must not be taken for an answer.
        Console.SetOut(TextWriter.Null);
        var law = new LawCompiler(root);
        var run = new TestRun(root);
        var (folder, all, switched, refused) = ("", Array.Empty<byte>(), new Dictionary<int, int>(), new Dictionary<int, string>());
        answers.WriteLine("ready");
        while (Console.In.ReadLine() is { } asked)
        {
            var parts = asked.Split(' ');
            var number = int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture);
            if (folder != parts[0])
            {
                folder = parts[0];
                all = law.Schemata(folder, out switched, out refused);
                run.Use(all, folder);
            }

            string? failure;
            if (number < 0)
            {
                failure = run.FirstFailure(-1, null);
            }
            else if (refused.TryGetValue(number, out var said))
            {
                answers.WriteLine($"{Outcome.DoesNotCompile} {said}");
                continue;
            }
            else if (switched.TryGetValue(number, out var member))
            {
                // What is worked out once and kept must be worked out anew by each mutant of the calendar, and no test tells that it needs
                // it.
                failure = Schemata.IsWorkedOutOnce(law.MutantsIn(folder)[number])
                    || (folder == "Counting" && Path.GetFileName(law.MutantsIn(folder)[number].Tree.FilePath) != "TimeLimit.cs")
                    ? run.FirstFailureAnew(all, number)
                    : run.FirstFailure(number, member);
            }
            else if (law.Compiled(law.MutantsIn(folder)[number], out said) is { } alone)
            {
                failure = run.FirstFailureAnew(alone, null);
            }
            else
            {
                answers.WriteLine($"{Outcome.DoesNotCompile} {said}");
                continue;
            }

            answers.WriteLine(failure is null ? $"{Outcome.Survived} {run.Count} tests"
                : $"{(failure.Contains(Schemata.NeverEnds, StringComparison.Ordinal)
                    ? Outcome.TimedOut : Outcome.Killed)} {failure.ReplaceLineEndings(" ")}");
        }

        return 0;
    }

    public void Dispose()
    {
        if (process is null)
            return;
        if (!process.HasExited)
            process.Kill(entireProcessTree: true);
        process.WaitForExit();
        process.Dispose();
        (process, ready) = (null, null);
    }
}
