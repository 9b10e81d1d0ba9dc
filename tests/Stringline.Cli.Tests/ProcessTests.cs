using System.Text.Json.Nodes;
using Stringline.Tables;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>The whole program from outside: arguments in; text, errors and exit status out.</summary>
[Slow(Slow.Lasting)]
public sealed class ProcessTests : IDisposable
{
    private readonly string root = Scratch.Folder();

    private static string Demo => Repository.Path("data/demo/alder-court.json");

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public async Task Assess_prints_a_page_for_people_and_ends_with_0()
    {
        var answer = await Tool.Run("assess", Demo, "--as-of", "2026-06-22");
        Assert.Equal((0, ""), (answer.Status, answer.Errors));
        Assert.StartsWith("Alder Court, building 2\nAs of 2026-06-22 (Mon)\nNot legal advice.", answer.Output, StringComparison.Ordinal);
        Assert.Contains("└─ ", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Assess_prints_JSON_for_programs()
    {
        var answer = await Tool.Run("assess", Demo, "--as-of", "2026-06-22", "--json");
        Assert.Equal((0, ""), (answer.Status, answer.Errors));
        var json = JsonNode.Parse(answer.Output)!;
        Assert.Equal("2026-06-22", json["asOf"]!.GetValue<string>());
        Assert.NotEmpty(json["findings"]!.AsArray());
    }

    [Fact]
    public async Task Assess_takes_today_where_no_day_is_given()
    {
        var before = Today.InCalifornia(SystemClock.Instance);
        var answer = await Tool.Run("assess", Demo, "--json");
        var asOf = JsonNode.Parse(answer.Output)!["asOf"]!.GetValue<string>();
        Assert.Contains(asOf, new[] { DayText.Write(before), DayText.Write(Today.InCalifornia(SystemClock.Instance)) });
    }

    [Theory]
    [InlineData("several-at-once", 7)]
    [InlineData("truncated", 1)]
    [InlineData("latin-1", 1)]
    [InlineData("day-that-does-not-exist", 1)]
    public async Task A_bad_file_ends_with_1_and_says_every_fault_on_standard_error(string name, int faults)
    {
        var answer = await Tool.Run("assess", Repository.Path($"tests/Stringline.Tables.Tests/Refusals/{name}.json"));
        Assert.Equal((1, ""), (answer.Status, answer.Output));
        Assert.Equal(faults, answer.Errors.Split('\n').Count(line => line.StartsWith("  should be: ", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_file_of_50_megabytes_ends_with_1()
    {
        var path = Path.Combine(root, "large.json");
        await using (var stream = File.Create(path))
            stream.SetLength(50_000_000);
        var answer = await Tool.Run("assess", path);
        Assert.Equal(
            (1, $"{path}\n  is:        a file of 50,000,000 bytes\n  should be: at most 16,777,216 bytes (16 MiB)\n"),
            (answer.Status, answer.Errors));
    }

    [Fact]
    public async Task A_file_that_is_not_there_ends_with_1()
    {
        var answer = await Tool.Run("assess", Path.Combine(root, "none.json"));
        Assert.Equal((1, ""), (answer.Status, answer.Output));
        Assert.Contains("no such file", answer.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData]
    [InlineData("asess", "job.json")]
    [InlineData("assess")]
    [InlineData("assess", "a.json", "b.json")]
    [InlineData("assess", "job.json", "--as-of", "tomorrow")]
    [InlineData("assess", "job.json", "--as-of", "2026-02-30")]
    [InlineData("assess", "job.json", "--as-of")]
    [InlineData("assess", "job.json", "--colour")]
    [InlineData("demo")]
    public async Task Wrong_usage_ends_with_2_and_prints_no_answer(params string[] args)
    {
        var answer = await Tool.Run(args);
        Assert.Equal((2, ""), (answer.Status, answer.Output));
        Assert.EndsWith("See stringline --help.\n", answer.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Help_carries_the_caution_and_ends_with_0()
    {
        var answer = await Tool.Run("--help");
        Assert.Equal(0, answer.Status);
        Assert.Contains(Law.Assessment.Caution, answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Schema_prints_the_committed_schema()
    {
        var answer = await Tool.Run("schema");
        Assert.Equal((0, File.ReadAllText(Repository.Path("data/job-file.schema.json"))), (answer.Status, answer.Output));
    }

    [Fact]
    public async Task Demo_writes_the_demo_jobs_and_says_where()
    {
        var answer = await Tool.Run("demo", "--out", Path.Combine(root, "demo"));
        var shipped = Directory.GetFiles(Repository.Path("data/demo"), "*.json");
        Assert.True(shipped.Length >= 5);
        Assert.Equal(0, answer.Status);
        Assert.Equal(shipped.Select(s => Path.Combine(root, "demo", Path.GetFileName(s))).Order(StringComparer.Ordinal),
            answer.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal));
        Assert.All(shipped, s => Assert.Equal(File.ReadAllBytes(s), File.ReadAllBytes(Path.Combine(root, "demo", Path.GetFileName(s)))));
    }

    [Fact]
    public async Task The_C_locale_gets_plain_ASCII_by_option()
    {
        var answer = await Tool.Run("assess", Demo, "--as-of", "2026-06-22", "--ascii");
        Assert.All(answer.Output, c => Assert.InRange(c, '\n', '~'));
    }
}
