using System.Globalization;
using System.Text;
using Stringline.Testing;

namespace Stringline.Tables.Tests;

/// <summary>
/// Every refusal has a name, a file that provokes it (<c>Refusals/NAME.json</c>) and the exact words it must be answered
/// with (<c>Refusals/NAME.txt</c>). The page <c>docs/refusals.md</c> is made from them.
/// </summary>
public sealed class RefusalTests
{
    private static readonly string Folder = Repository.Path("tests/Stringline.Tables.Tests/Refusals");

    public static TheoryData<string> Names =>
        [.. Directory.GetFiles(Folder, "*.json").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_bad_file_is_refused_in_these_words(string name) =>
        Assert.Equal(File.ReadAllText(Path.Combine(Folder, name + ".txt")), Answer(name));

    [Fact]
    public void The_page_of_refusals_is_up_to_date()
    {
        var committed = Repository.Path("docs/refusals.md");
        var told = File.Exists(committed) ? File.ReadAllText(committed) : "";

        // What follows is made by the tests of tables.
        var page = Page() + (told.IndexOf("\n# What a table is refused for", StringComparison.Ordinal) is >= 0 and var at
            ? told[at..] : "");
        if (told == page)
            return;
        File.WriteAllText(Repository.Path("docs/refusals.received.md"), page);
        Assert.Fail("docs/refusals.md is stale: read docs/refusals.received.md and move it there.");
    }

    [Fact]
    public void A_file_of_50_megabytes_is_refused_by_its_length_before_it_is_read()
    {
        var path = Scratch.File("json");
        try
        {
            using (var stream = File.Create(path))
                stream.SetLength(50_000_000);
            var before = GC.GetAllocatedBytesForCurrentThread();
            var faults = Refused(JobFileReader.ReadFile(path));
            Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 100_000, "It was read.");
            Assert.Equal(
                new Fault(path, "", "a file of 50,000,000 bytes", "at most 16,777,216 bytes (16 MiB)"),
                Assert.Single(faults));
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void Bytes_over_the_limit_are_refused_wherever_they_come_from() =>
        Assert.Equal(
            "a file of 16,777,217 bytes",
            Assert.Single(Refused(JobFileReader.Read(new byte[JobFileReader.LargestFile + 1], "upload.json"))).Found);

    [Fact]
    public void A_file_that_is_not_there_and_a_folder_are_refused()
    {
        var missing = Scratch.File("none");
        Assert.Equal(
            new Fault(missing, "", "no such file", "the path of a job file"), Assert.Single(Refused(JobFileReader.ReadFile(missing))));
        Assert.Equal(
            new Fault(Folder, "", "a folder", "a job file"), Assert.Single(Refused(JobFileReader.ReadFile(Folder))));
    }

    [Fact]
    public void Every_truncation_of_the_demo_job_is_refused_with_one_fault()
    {
        var bytes = File.ReadAllBytes(Repository.Path("data/demo/alder-court.json"));
        var end = bytes.AsSpan().LastIndexOf((byte)'}');
        for (var length = 0; length <= end; length++)
            Assert.Single(Refused(JobFileReader.Read(bytes.AsMemory(0, length), "job.json")));
    }

    [Fact]
    [Slow(Slow.Fuzz)]
    public void No_changed_byte_of_the_demo_job_makes_the_reader_fail()
    {
        var bytes = File.ReadAllBytes(Repository.Path("data/demo/alder-court.json"));
        foreach (var change in (byte[])[0x00, 0x22, 0x2C, 0x5C, 0x7D, 0x80, 0xFF])
        {
            for (var at = 0; at < bytes.Length; at++)
            {
                var changed = (byte[])bytes.Clone();
                changed[at] = change;
                if (JobFileReader.Read(changed, "job.json") is JobFileResult.Refused refused)
                    Assert.NotEmpty(refused.Faults);
            }
        }
    }

    private static string Answer(string name)
    {
        var faults = Refused(JobFileReader.Read(File.ReadAllBytes(Path.Combine(Folder, name + ".json")), name + ".json"));
        return string.Join('\n', faults) + "\n";
    }

    private static IReadOnlyList<Fault> Refused(JobFileResult result) => Assert.IsType<JobFileResult.Refused>(result).Faults;

    private static string Page()
    {
        var page = new StringBuilder("""
            # What a job file is refused for

            Made from the files in `tests/Stringline.Tables.Tests/Refusals`; a test fails when this page is stale.
            A file is taken whole or refused whole: nothing is ignored, guessed or repaired. Where the text is JSON, every
            fault is told at once, in the file's order. Beyond these, a file over 16 MiB is refused by its length,
            and the 101st `owner-recorded`, the 201st construction lender and the 1,001st party of a job by their count.

            """);
        foreach (var name in Names.Select(row => row.Data))
        {
            var title = name.Replace('-', ' ');
            page.Append(CultureInfo.InvariantCulture,
                $"\n## {char.ToUpperInvariant(title[0])}{title[1..]}\n\n```text\n{Answer(name)}```\n");
        }

        return page.ToString();
    }
}
