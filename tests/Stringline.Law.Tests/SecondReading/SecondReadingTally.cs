using System.Collections.Concurrent;
using System.Globalization;
using Stringline.Law.Counting;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>What the two readers say of the drawn files, in numbers; run by name, it proves nothing by itself.</summary>
public sealed class SecondReadingTally
{
    [Fact(Explicit = true)]
    public void Tell()
    {
        var files = int.Parse(Environment.GetEnvironmentVariable("SECOND_READING_FILES") ?? "20000", CultureInfo.InvariantCulture);
        var only = Environment.GetEnvironmentVariable("SECOND_READING_ONLY") is { Length: > 0 } named ? named : null;
        var parted = new ConcurrentBag<Disagreement>();
        var standings = new ConcurrentDictionary<(string, Standing), int>();
        var doubts = new ConcurrentDictionary<(string, May), int>();
        var notRead = new ConcurrentDictionary<(string, Standing), int>();
        long worlds = 0;
        var gaveUp = 0;
        Parallel.For(0, files, i =>
        {
            var (job, asOf) = RemedyJobGen.Of((ulong)i);
            foreach (var finding in Assessment.Of(job, asOf, Law.Counting.OpenDays.Statutory).Findings)
            {
                if (SecondReader.Of(finding.Id, job.Work.Kind) is null)
                    notRead.AddOrUpdate(($"{job.Work.Kind} {finding.Id}", finding.Standing), 1, (_, n) => n + 1);
            }

            Comparison.Of((ulong)i, job, asOf, parted.Add, (finding, reading) =>
            {
                standings.AddOrUpdate((finding.Id, finding.Standing), 1, (_, n) => n + 1);
                Interlocked.Add(ref worlds, reading.Worlds);
                if (reading.GaveUp)
                    Interlocked.Increment(ref gaveUp);
                if (finding.Standing == Standing.InDoubt && reading.Sure)
                    doubts.AddOrUpdate((finding.Id, reading.May), 1, (_, n) => n + 1);
            });
        });
        var output = TestContext.Current.TestOutputHelper!;
        output.WriteLine($"{files} files, {worlds} worlds, given up {gaveUp}");
        foreach (var id in standings.Keys.Select(k => k.Item1).Distinct().Order(StringComparer.Ordinal))
        {
            output.WriteLine(id + ": " + string.Join(", ", standings.Where(s => s.Key.Item1 == id).Select(s => $"{s.Key.Item2} {s.Value}"))
                + " | sure but in doubt: " + string.Join(", ",
                    doubts.Where(s => s.Key.Item1 == id).Select(s => $"{s.Key.Item2} {s.Value}")));
        }

        foreach (var id in notRead.Keys.Select(k => k.Item1).Distinct().Order(StringComparer.Ordinal))
            output.WriteLine("not read: " + id + ": " + string.Join(", ",
                notRead.Where(s => s.Key.Item1 == id).Select(s => $"{s.Key.Item2} {s.Value}")));
        output.WriteLine($"parted: {parted.Count}");
        foreach (var group in parted.Where(d => only is null
            || d.Id + d.Kind == only).GroupBy(d => (d.Id, d.Kind, d.Kind == "standing"
                ? d.Library + " / " + d.Checker.Split(' ')[0] : "")).OrderByDescending(g => g.Count()))
        {
            output.WriteLine("");
            output.WriteLine($"== {group.Key.Id} {group.Key.Kind} {group.Key.Item3}: {group.Count()}");
            foreach (var d in group.OrderBy(d => d.Seed).Take(only is null ? 3 : 9))
            {
                var (job, asOf) = RemedyJobGen.Of(d.Seed);
                output.WriteLine($"{d.Library} | {d.Checker} | as of {LawText.IsoDay(asOf)}, seed {d.Seed}");
                var small = Shrunk.Of(job, asOf, d);
                output.WriteLine(Told.Of(small));
                foreach (var reading in Assessment.Of(small, asOf, Law.Counting.OpenDays.Statutory).Find(d.Id)!.Readings)
                    output.WriteLine($"    library: {reading}");
                if (SecondReader.Of(d.Id, job.Work.Kind) is not null)
                    output.WriteLine(Comparison.Worlds(small, asOf, d.Id));
            }
        }
    }

    /// <summary>Everything that the library says of one drawn file, run by name, with SECOND_READING_SEED.</summary>
    [Fact(Explicit = true)]
    public void Show()
    {
        var (job, asOf) =
            RemedyJobGen.Of(ulong.Parse(Environment.GetEnvironmentVariable("SECOND_READING_SEED") ?? "0", CultureInfo.InvariantCulture));
        var output = TestContext.Current.TestOutputHelper!;
        output.WriteLine($"{LawText.IsoDay(asOf)} {Told.Of(job)}");
        foreach (var finding in Assessment.Of(job, asOf, Law.Counting.OpenDays.Statutory).Findings)
        {
            var days = string.Join(", ", finding.Readings.Select(r => $"{LawText.IsoDay(r.Day)} {r.Name}"));
            output.WriteLine(
                $"{finding.Id}: {finding.Standing.Word()} act by {(finding.ActBy is { } day ? LawText.IsoDay(day) : "-")} [{days}]");
        }
    }
}
