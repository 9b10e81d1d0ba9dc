using CsCheck;
using Stringline.Answers;
using Stringline.Testing;

namespace Stringline.Tables.Tests;

/// <summary>
/// Job files made bad, the same ones in each run: whatever is in them, the answer is a refusal in words, or a job that is assessed and
/// written back as it was read. This program runs with a heap of 600 MB at most (see its project file). bench/fuzz-input tries 2,000.
/// </summary>
[Slow(Slow.Fuzz)]
public sealed class BadJobFileTests(ITestOutputHelper output)
{
    private static readonly byte[][] Good =
        [.. Directory.GetFiles(Repository.Path("data/demo"), "*.json").Order(StringComparer.Ordinal).Select(File.ReadAllBytes)];

    private static readonly string[] Words =
    [
        "{", "}", "[", "]", ",", ":", "null", "true", "-0", "1e999", "1e-400", "99999999999999999999", "0.001", "922337203685477.5808",
        "\"\"", "\"\\u0000\"", "\"\\uD800\"", "\"\uFFFF\"", "\u202E", "\"2026-02-30\"", "\"9999-12-31\"", "\"0001-01-01\"",
        "\"-0001-01-01\"", "[\"2026-01-01\",\"9999-12-31\"]", "\"?\"", "\"supersedes\":\"e1\",", "\"id\":\"e1\",", "\"ref\":\"1\",",
        "\"what\":\"completed\",", "\"what\":\"paid\",", "\"amount\":-1,", "\"amount\":999999999999.99,", "\"kind\":\"federal\",",
        "\"county\":\"Yolo\",", "\"hiredBy\":\"owner\",", "/*", "//", "\uFEFF", "\u2028",
    ];

    [Fact]
    [Attack("job files made bad: damaged, cut, repeated, words of the format where they do not belong")]
    public void A_bad_job_file_is_refused_in_words_or_read_assessed_and_written_back()
    {
        var (refused, read) = (0, 0);
        BadFiles.Of(Good, Words).Sample(
            bytes => _ = Hang.Never(() => JobFileAnswer.Of(bytes)) ? Interlocked.Increment(ref read) : Interlocked.Increment(ref refused),
            print: Convert.ToBase64String,
            iter: LongRun.Of(400, all: 2_000));
        output.WriteLine(LongRun.Told("job files", refused, read));
        AttackAttribute.Tried(refused + read);
        Assert.True(refused > 200, $"{refused} refused");
        Assert.True(read > 20, $"{read} read");
    }

    [Fact]
    [Attack("what broke the program once")]
    public void Whatever_broke_once_is_answered() =>
        Assert.All(BadFiles.Kept("jobs"), kept => Hang.Never(() => JobFileAnswer.Of(kept.Content)));

    [Fact]
    public void The_heap_of_these_tests_is_bounded() =>
        Assert.True(GC.GetGCMemoryInfo().TotalAvailableMemoryBytes <= 600L * 1024 * 1024);
}
