using System.Diagnostics;
using SharpFuzz;

namespace Stringline.FuzzInput;

/// <summary>
/// Reads content from outside for afl-fuzz. <c>list</c> names the targets, <c>prepare TARGET FOLDER</c> writes what it begins with and its
/// words, <c>instrument FILE...</c> makes copies of libraries tell which ways they go, <c>run TARGET</c> is what afl-fuzz runs, and
/// <c>try TARGET FILE...</c> shows what becomes of single files.
/// </summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        switch (args)
        {
            case ["list"]:
                foreach (var target in Target.All)
                    Console.WriteLine(target.Name);
                return 0;
            case ["prepare", var name, var folder]:
                Seeds.Write(Target.Named(name), folder);
                return 0;
            case ["instrument", .. var files]:
                foreach (var file in files)
                    Fuzzer.Instrument(file, _ => true, Options.Value);
                return 0;
            case ["run", var name]:
                var fuzzed = Target.Named(name);
                Fuzzer.OutOfProcess.Run(stream => Bound.Within(fuzzed, Read(stream)));
                return 0;
            case ["try", var name, .. var files]:
                return Try(Target.Named(name), files);
            default:
                Console.Error.WriteLine("list | prepare TARGET FOLDER | instrument FILE... | run TARGET | try TARGET FILE...");
                return 2;
        }
    }

    private static byte[] Read(Stream stream)
    {
        using var all = new MemoryStream();
        stream.CopyTo(all);
        return all.ToArray();
    }

    private static int Try(Target target, string[] files)
    {
        var failed = 0;
        foreach (var file in files)
        {
            var watch = Stopwatch.StartNew();
            try
            {
                Bound.Within(target, File.ReadAllBytes(file));
                Console.WriteLine($"{file}: answered in {watch.ElapsedMilliseconds} ms");
            }
            catch (Exception e)
            {
                // Whatever it is: this is what was looked for, and the next file is tried too.
                failed++;
                Console.WriteLine($"{file}: {e}");
            }
        }

        return failed == 0 ? 0 : 1;
    }
}
