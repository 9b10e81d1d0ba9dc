using System.Diagnostics;
using Stringline.Office.DemoOffice;
using Stringline.Store;
using Stringline.Store.Upkeep;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>
/// The program is killed (SIGKILL) at a random moment while it imports, assesses, backs up or restores. The store at the address is then
/// the whole one of before or the whole one of after, and the same command run again finishes. This proves the death of a program, not the
/// loss of power. <c>bench/crash COUNT</c> runs it longer.
/// </summary>
[Slow(Slow.Crash)]
public sealed class KillTests : IDisposable
{
    private static readonly LocalDate Day = new(2026, 6, 22);

    private readonly string folder = Scratch.Folder();

    private string Store => Path.Combine(folder, "office");

    private string Made => Path.Combine(folder, "made");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("import")]
    [InlineData("assess")]
    [InlineData("backup")]
    [InlineData("restore")]
    [Attack("program killed while it imports, assesses, backs up, restores")]
    public async Task Killed_at_any_moment_the_store_is_whole_and_the_same_command_finishes(string what)
    {
        var kills = Rounds.Of("STRINGLINE_KILLS", 6);
        var seed = Random.Shared.Next();
        var random = new Random(seed);
        var (seal, other) = Prepare();
        string[] command = what switch
        {
            "import" => ["import", Table(), "--store", Store, "--claimant", "Sierra Block Supply, Inc.", "--role", "supplier",
                "--customer-is", "subcontractor", "--county", "Yolo"],
            "assess" => ["assess", "--all", "--anew", "--store", Store, "--as-of", "2026-06-22"],
            "backup" => ["store", "backup", "--store", Store, Path.Combine(folder, "new")],
            "restore" => ["store", "restore", "--replace", "--store", Store, Made],
            _ => throw new InvalidOperationException(what),
        };
        Reset();
        var whole = await Tool.Run(command);
        Assert.True(whole.Status == 0, whole.Errors);
        var after = Held(Store);
        var midway = 0;
        for (var kill = 0; kill < kills; kill++)
        {
            Reset();
            var died = await Kill(command, random.NextDouble() * whole.Took.TotalMilliseconds * 1.1);
            midway += died ? 1 : 0;
            var now = Held(Store);

            // What is added anew has another moment each time, and so another seal: as many jobs and changes, whole, are all of it.
            Assert.True(now.Seal == seal || now == after || (what == "import" && (now.Jobs, now.Changes) == (after.Jobs, after.Changes)),
                $"{what}, seed {seed}, kill {kill}: neither the store of before nor that of after");
            if (what == "backup" && File.Exists(Path.Combine(folder, "new")))
                Assert.Equal(seal, SealOf(Path.Combine(folder, "new")));
        }

        TestContext.Current.SendDiagnosticMessage($"{what}: {kills} kills, {midway} of them before its end, seed {seed}");
        Reset();
        var again = await Tool.Run(command);
        Assert.True(again.Status == 0, again.Errors);
        Assert.DoesNotContain(Directory.GetFileSystemEntries(folder), file => file.EndsWith(".part", StringComparison.Ordinal));

        // Each round begins with the store of before; what killed rounds left beside it stays.
        void Reset()
        {
            foreach (var end in (string[])["", "-wal", "-shm", "-journal"])
                File.Delete(Store + end);
            File.Copy(what == "restore" ? other : Made, Store);
            if (what == "backup")
                File.Delete(Path.Combine(folder, "new"));
            if (what == "restore")
                seal = SealOf(Store);
        }

        AttackAttribute.Tried(kills);
    }

    private static async Task<bool> Kill(string[] command, double milliseconds)
    {
        string[] tool = Tool.Published is { } published
            ? [published] : ["dotnet", Path.Combine(AppContext.BaseDirectory, "stringline.dll")];
        var start = new ProcessStartInfo(tool[0], [.. tool[1..], .. command]) { RedirectStandardOutput =
            true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var ended = process.WaitForExitAsync();
        await Task.WhenAny(ended, Task.Delay(TimeSpan.FromMilliseconds(milliseconds)));
        var midway = !process.HasExited;
        process.Kill();
        await process.WaitForExitAsync();
        return midway;
    }

    private (ContentHash Seal, string Other) Prepare()
    {
        using (var journal = Journals.Open(Store, SystemClock.Instance, OpenStore.OrMake))
        {
            Assert.Empty(journal.PutMany(DemoJobs.Of(Day, 20), "demo").Faults);
            Backup.Make(journal, Made);
            Assert.Empty(journal.PutMany([.. DemoJobs.Of(Day, 24).Skip(20)], "demo").Faults);
            Backup.Make(journal, Path.Combine(folder, "other"));
        }

        return (SealOf(Made), Path.Combine(folder, "other"));
    }

    private string Table()
    {
        var path = Path.Combine(folder, "table.csv");
        File.WriteAllLines(path, ["job number,job name,customer,invoice number,invoice date,amount,address,city,zip,county",
            .. Enumerable.Range(1, 60)
                .Select(i => $"N{i},New job {i},Fennimore Framing,I{i},03/02/2026,100.00,{i} Main Street,Davis,95616,Yolo")]);
        return path;
    }

    private static ContentHash SealOf(string path) => Held(path).Seal;

    private static (ContentHash Seal, long Jobs, long Changes) Held(string path)
    {
        using var journal = Journals.Open(path, SystemClock.Instance);
        var report = journal.Check();
        Assert.DoesNotContain(report.Broken, link => link.Part == StorePart.Journal);
        return (report.Seal, report.Jobs, report.Changes);
    }
}
