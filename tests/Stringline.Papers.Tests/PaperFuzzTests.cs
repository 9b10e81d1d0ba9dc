using System.Collections.Concurrent;
using CsCheck;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Counting;
using Stringline.Papers.Catalogue;
using Stringline.Testing;

namespace Stringline.Papers.Tests;

/// <summary>
/// Papers drawn at random for job files drawn at random. Each is made and passes its preflight, which is another library's reading,
/// or is refused in words; nothing escapes as an exception. <c>STRINGLINE_FUZZ_FILES</c> sets how many files (see bench/fuzz).
/// </summary>
[Slow(Slow.Fuzz)]
public sealed class PaperFuzzTests(ITestOutputHelper output)
{
    private const int Usual = 300;

    [Fact]
    public void A_random_paper_of_a_random_job_file_is_made_whole_or_refused_in_words()
    {
        var files = Environment.GetEnvironmentVariable("STRINGLINE_FUZZ_FILES") is { Length: > 0 } text
            ? int.Parse(text, CultureInfo.InvariantCulture) : Usual;
        var every = files > Usual;
        var counts = new ConcurrentDictionary<string, int>();
        var whole = 0;
        Gen.Select(PaperDraws.Files, PaperDraws.Options, Gen.Int[0, PaperCatalogue.All.Count - 1]).Sample(
            (file, options, drawn) =>
            {
                var assessment = Assessment.Of(file.Job, file.AsOf, OpenDays.Statutory);
                foreach (var paper in every ? PaperCatalogue.All : [PaperCatalogue.All[drawn]])
                {
                    counts.AddOrUpdate(every ? Caught(paper.Id, file.Job, assessment, options)
                        : Try(paper.Id, file.Job, assessment, options), 1, (_, n) => n + 1);
                }

                Interlocked.Increment(ref whole);
            },
            iter: files);
        output.WriteLine($"{whole} job files, {counts.Values.Sum()} papers asked for");
        foreach (var (what, count) in counts.OrderByDescending(c => c.Value))
            output.WriteLine($"{count,8}  {what}");
        Assert.DoesNotContain(counts.Keys, k => k.StartsWith("failed", StringComparison.Ordinal));
        Assert.True(whole >= files);
        Assert.True(counts.Keys.Count(k => k.StartsWith("made", StringComparison.Ordinal)) > 1,
            "Hardly anything was made; the files are too strange to try the papers.");
        Assert.True(counts.Keys.Any(k => k.StartsWith("refused", StringComparison.Ordinal)), "Nothing was refused.");
    }

    /// <summary>In a long run one failure hides no other: each kind is counted, and any fails the test in the end.</summary>
    private static string Caught(string id, JobFile job, Assessment assessment, PaperOptions options)
    {
        try
        {
            return Try(id, job, assessment, options);
        }
        catch (Exception e)
        {
            var text = (e.InnerException ?? e).Message.ReplaceLineEndings(" ");
            var place = e.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("src/", StringComparison.Ordinal))?.Trim();
            return $"failed: {id}: {text[..Math.Min(400, text.Length)]} {place}";
        }
    }

    private static string Try(string id, JobFile job, Assessment assessment, PaperOptions options)
    {
        switch (PaperMaker.Make(id, job, assessment, options))
        {
            case PacketOutcome.Made made:
                Assert.Equal(made.Files.Count, made.Preflight.Count);
                // A draft may show a letter that the typeface lacks: it cannot be read back, and the draft's reasons say so.
                var unreadable = options.Draft && made.InTheWay.Any(r => r.Id == "letters-missing");
                Assert.All(made.Preflight.SelectMany(r => r.Checks),
                    c => Assert.True(c.Passed
                    || (unreadable && c.Name is not ("no overlap" or "side margins" or "inside the page" or "pages")), $"{id}: {c}"));
                Assert.All(made.Files, f => Assert.True(f.Pages > 0 && f.Bytes.Length > 1000, $"{id}: {f.Name}"));
                Assert.All(made.Files.Where(f => f.IsSheet && made.Fee is not null),
                    f => Assert.True(f.Pages <= 2, $"{id}: a counter sheet of {f.Pages} pages"));
                if (!options.Draft)
                {
                    Assert.True(made.InTheWay.All(r => r.Id == "for-the-attorney"),
                        $"{id}: made in spite of {string.Join("; ", made.InTheWay)}");
                }

                return options.Draft ? "made as a draft" : "made";
            case PacketOutcome.Refused refused:
                Assert.NotEmpty(refused.Refusals);
                Assert.All(refused.Refusals, r => Assert.False(
                    string.IsNullOrWhiteSpace(r.Id) || string.IsNullOrWhiteSpace(r.Where.ToString())
                        || string.IsNullOrWhiteSpace(r.There.ToString())
                    || string.IsNullOrWhiteSpace(r.Right.ToString()), $"{id}: {r}"));
                Assert.DoesNotContain(refused.Refusals, r => r.Id == "preflight");
                return refused.Refusals.Any(r => r.Id is "law" or "right-lost") ? "refused: the law"
                    : refused.Refusals.Any(r => r.Id == "letters-missing") ? "refused: letters"
                    : refused.Refusals.Any(r => r.Id is "word-too-long" or "signer-too-long") ? "refused: too long"
                    : "refused: facts missing";
            case var other:
                throw new InvalidOperationException($"{id}: neither made nor refused: {other}");
        }
    }
}
