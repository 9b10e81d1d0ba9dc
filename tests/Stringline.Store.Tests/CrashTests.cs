using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>
/// A writer is killed (SIGKILL) at a random moment, again and again. What it was told is in the journal is in it afterwards, every chain is
/// whole, and no change is there by halves. This proves the death of a program, not the loss of power. <c>bench/crash COUNT</c> runs
/// it longer.
/// </summary>
[Slow(Slow.Crash)]
public sealed class CrashTests
{
    private const int Group = 3;
    private const int KillsOfOneStore = 10;
    private const int LongestLife = 30;
    private const int KillsBetweenWords = 250;

    [Fact]
    [Attack("writer killed while it appends")]
    public async Task Whatever_moment_a_writer_is_killed_at_nothing_acknowledged_is_lost_and_nothing_is_there_by_halves()
    {
        var kills = Rounds.Of("STRINGLINE_CRASHES", 200);
        var seed = Random.Shared.Next();
        var lanes = Math.Clamp(Environment.ProcessorCount, 1, 4);
        var counts = await Task.WhenAll(
            Enumerable.Range(0, lanes).Select(lane => Task.Run(() => Lane(new Random(seed + lane), (kills + lanes - 1) / lanes))));
        TestContext.Current.SendDiagnosticMessage($"{counts.Sum(c => c.Kills)} kills, {counts.Sum(c => c.Acknowledged)} acknowledged "
            + $"changes, {counts.Sum(c => c.Silent)} kills before the first, seed {seed}");
        Assert.True(counts.Sum(c => c.Kills) >= kills);
        Assert.True(counts.Sum(c => c.Acknowledged) > kills, "The writers were killed before they wrote; the test proves nothing.");
        AttackAttribute.Tried(kills);
    }

    private static async Task<(int Kills, int Acknowledged, int Silent)> Lane(Random random, int kills)
    {
        var (acknowledged, silent) = (0, 0);
        SqlitePlace? place = null;
        var tips = new Dictionary<long, JobTip>();
        var next = Writer.Start();
        try
        {
            for (var kill = 0; kill < kills; kill++)
            {
                if (kill % KillsOfOneStore == 0)
                {
                    place?.Dispose();
                    place = new SqlitePlace();
                    tips.Clear();
                }

                using var writer = next;
                next = Writer.Start();
                var told = await writer.LiveAndDie(place!.Address, fromFirst: random.Next(4) > 0, random.Next(LongestLife));
                foreach (var tip in told)
                    tips[tip.Id] = tip;
                acknowledged += told.Count;
                silent += told.Count == 0 ? 1 : 0;
                Inspect(place, told, tips);
                if ((kill + 1) % KillsBetweenWords == 0)
                    TestContext.Current.SendDiagnosticMessage(
                        $"{kill + 1} of {kills} kills of one lane, {acknowledged} acknowledged changes, none lost");
            }
        }
        finally
        {
            next.Dispose();
            place?.Dispose();
        }

        return (kills, acknowledged, silent);
    }

    private static void Inspect(SqlitePlace place, List<JobTip> told, Dictionary<long, JobTip> tips)
    {
        using var journal = Journals.Connect(place.Address, SystemClock.Instance, OpenStore.OrMake);
        Assert.Null(journal.FirstNotHeld(told));
        Assert.Null(journal.FirstNotHeld(tips.Values));
        Assert.Empty(journal.Check().Broken);
        Assert.All(journal.Tips(), tip => Assert.Equal(0, (tip.Sequence - 1) % Group));
    }

    /// <summary>The program that writes.</summary>
    private sealed class Writer : IDisposable
    {
        private readonly Process process;
        private readonly ConcurrentQueue<string> lines = new();
        private readonly TaskCompletionSource ready = new();
        private readonly TaskCompletionSource first = new();
        private readonly TaskCompletionSource ended = new();

        private Writer(Process process)
        {
            this.process = process;
            process.OutputDataReceived += (_, line) =>
            {
                if (line.Data is null)
                    ended.SetResult();
                else if (line.Data == "ready")
                    ready.SetResult();
                else
                {
                    lines.Enqueue(line.Data);
                    first.TrySetResult();
                }
            };
            process.BeginOutputReadLine();
        }

        // ./test publishes it compiled ahead of time, which starts three times faster than the one built with the tests.
        public static Writer Start()
        {
            SlowAttribute.Must(Slow.Crash);
            string[] command = Environment.GetEnvironmentVariable("STRINGLINE_CRASH_WRITER") is { Length: > 0 } published
                ? [Repository.Path(published)]
                : ["dotnet", Path.Combine(AppContext.BaseDirectory, "Stringline.Store.Crash.dll")];
            return new(Process.Start(
                new ProcessStartInfo(command[0], command[1..]) { RedirectStandardInput = true, RedirectStandardOutput = true })!);
        }

        /// <summary>
        /// Lets it write, kills it so many milliseconds after it was told to go, or after the first change it said was acknowledged, and
        /// gives all that it said was.
        /// </summary>
        public async Task<List<JobTip>> LiveAndDie(string path, bool fromFirst, int milliseconds)
        {
            await ready.Task.WaitAsync(TimeSpan.FromSeconds(60));
            await process.StandardInput.WriteLineAsync(path);
            await process.StandardInput.FlushAsync();
            if (fromFirst)
                await first.Task.WaitAsync(TimeSpan.FromSeconds(60));
            var watch = Stopwatch.StartNew();
            SpinWait.SpinUntil(() => watch.ElapsedMilliseconds >= milliseconds);
            Assert.False(process.HasExited, "The writer ended by itself.");
            process.Kill();
            await process.WaitForExitAsync();
            await ended.Task.WaitAsync(TimeSpan.FromSeconds(60));

            // Half a line is nothing that anybody was told.
            return [.. lines.Select(line => line.Split(' ')).Where(parts => parts is [_, _, _, "."]).Select(parts => new JobTip(
                long.Parse(parts[0], CultureInfo.InvariantCulture),
                "",
                "",
                long.Parse(parts[1], CultureInfo.InvariantCulture),
                ContentHash.TryParse(parts[2], out var hash) ? hash : throw new FormatException(parts[2])))];
        }

        public void Dispose()
        {
            if (!process.HasExited)
                process.Kill();
            process.Dispose();
        }
    }
}
