using System.Collections.Concurrent;
using CsCheck;
using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Preflight;

namespace Stringline.Papers.Tests;

/// <summary>Draws papers and holds each value of a kind that is printed on them against those that may be.</summary>
internal static class PrintedValues
{
    private const int Papers = 300;

    /// <summary>
    /// Fails where a paper or its sheet prints a value that nobody knows of, and where too few were read to say anything.
    /// </summary>
    /// <param name="output">Where it is said how many were read.</param>
    /// <param name="what">The kind of value in the plural.</param>
    /// <param name="printed">The values in a text, each with the words around it.</param>
    /// <param name="known">The values that a paper may print.</param>
    public static void AreKnown<T>(ITestOutputHelper output, string what, Func<string, IEnumerable<(T Value, string Near)>> printed,
        Func<PaperDraw, Assessment, PacketOutcome.Made, HashSet<T>> known)
    {
        var faults = new ConcurrentDictionary<string, int>();
        var (made, read) = (0, 0);
        PaperDraws.Sums.Sample(
            drawn =>
            {
                var assessment = Assessment.Of(drawn.Job, drawn.AsOf, OpenDays.Statutory);
                if (PaperMaker.Make(drawn.Id, drawn.Job, assessment, drawn.Options) is not PacketOutcome.Made papers)
                    return;
                Interlocked.Increment(ref made);
                var allowed = known(drawn, assessment, papers);
                foreach (var file in papers.Files)
                {
                    foreach (var (value, near) in printed(ReadBack.Of(file.Bytes).Text))
                    {
                        Interlocked.Increment(ref read);
                        if (!allowed.Contains(value))
                            faults.AddOrUpdate($"{drawn.Id}, {file.Name}: {near}", 1, static (_, n) => n + 1);
                    }
                }
            },
            iter: Papers);
        output.WriteLine($"{made} papers made, {read} {what} read");
        Assert.True(made > Papers / 2 && read > made, $"{made} papers with {read} {what} are too few to say anything.");
        Assert.True(faults.IsEmpty, string.Join('\n', faults.OrderByDescending(f => f.Value).Take(60).Select(f => $"{f.Value,4} {f.Key}")));
    }
}
